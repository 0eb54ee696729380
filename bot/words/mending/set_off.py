"""What is set off between two pauses and only joins: "Otto's sheet, on the other hand, is soaked"."""

from collections.abc import Sequence

from bot.words.lookup.items import Item, all_mean, places, predicate
from bot.words.thoughts.sentences import ENDS

JOINS = frozenset(("but", "meanwhile"))
THEN = frozenset(("yesterday", "told by", "tells", "elsewhere"))
ONLY_WHEN = ("yesterday", "elsewhere", "told by", "tells", "time", "link", "she", "i", "was", "polite")
LONGEST = 5  # words that only say when


def without_what_is_set_off(items: Sequence[Item]) -> Sequence[Item]:
    """The items without such words, where how the one before them is, or does, comes behind them."""
    items = _with_when(items)
    found: list[Item] = []
    end = 0
    for at in places(items, JOINS):
        if at > end + 1 and at + 2 < len(items) and _set_off(items, at):
            found.extend(items[end : at - 1])
            end = at + 2
    return [*found, *items[end:]] if end else items


def _with_when(items: Sequence[Item]) -> Sequence[Item]:
    """The items without the pause behind what only says when it was, or who said so: "yesterday, they say, Pip …"."""
    pauses: set[int] = set()
    for at in places(items, THEN):
        opens = at == 0 or items[at - 1].text in ENDS or at - 1 in pauses
        end = next((k for k in range(at + 1, min(at + LONGEST, len(items))) if items[k].mark), len(items))
        said = items[at:end]
        if opens and end < len(items) and items[end].text == "," and all_mean(said, *ONLY_WHEN):
            pauses.add(end)
    return [item for at, item in enumerate(items) if at not in pauses] if pauses else items


def _set_off(items: Sequence[Item], at: int) -> bool:
    subject, verb = items[at - 2], items[at + 2]
    told = verb.has("is", "was", "has", "ask wearing", "wears", "needs", "stays") or predicate(verb)
    of_it = bool(subject.horses or subject.piece is not None) and not (verb.horses or verb.has("she", "it"))
    return items[at - 1].text == items[at + 1].text == "," and of_it and told
