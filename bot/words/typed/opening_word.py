"""A word of the tables, one letter from a name, that opens what only a horse does: "termine tremble" of an Hermine."""

from dataclasses import replace

from bot.words.lookup.items import Item, meanings_of, places
from bot.words.lookup.names import Roster

ALIVE = frozenset(("sign shivering", "sign sweating"))  # what no food does, nor any thing
LEAST = 5  # letters
# what may as well open that: "still shivering", "she shivers", "Ruth's shivering"
MAY_OPEN = frozenset((
    "link", "very", "a little", "time", "not", "no", "she", "it", "is", "was", "all", "everyone", "both", "and", "but",
    "polite", "i", "too", "the rest", "body", "question", "after", "work", "place field", "place stall", "found",
))  # fmt: skip


def perhaps_names(items: list[Item], roster: Roster) -> list[Item]:
    """The items, each such word with whom it may name: asked about, never taken."""
    if ALIVE.isdisjoint(meanings_of(items)):
        return items
    for at in places(items, ALIVE):
        word = items[at - 1] if at else None
        if word is None or not (at == 1 or items[at - 2].mark) or not _may_be_one(word):
            continue
        horses, apart = roster.near(word.text)
        if apart == 1:
            items[at - 1] = replace(word, horses=horses, sure=False, exact=False)
    return items


def _may_be_one(word: Item) -> bool:
    return len(word.text) >= LEAST and bool(word.means) and not word.horses and word.means.isdisjoint(MAY_OPEN)
