"""A pronoun in a list: in "lunged Storm then turned him and Biscuit out" he is the horse named last before."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.items import Item, meanings_of

LISTS = frozenset(("she", "and"))


def listed_again(items: Sequence[Item]) -> list[Item]:
    """The items with that horse in the pronoun's place; the same where it may be another."""
    found = list(items)
    if LISTS - meanings_of(items):
        return found
    last: Item | None = None
    for at, item in enumerate(items):
        if last is not None and "she" in item.means and _one_of_list(items, at, last):
            found[at] = replace(last, means=frozenset())
        elif item.horses:
            joined = at > 0 and (items[at - 1].has("and") or items[at - 1].text == ",")
            last = item if item.horse and not joined else None
    return found


def _one_of_list(items: Sequence[Item], at: int, last: Item) -> bool:
    """As in "him and Biscuit" of another; not "her and Biscuit's rug", which may be two things."""
    if items[at].has("subject") or at + 1 >= len(items):
        return False
    other = items[at + 2] if items[at + 1].has("and") and at + 2 < len(items) else None
    return other is not None and other.horse and other.horses != last.horses and not _owns(items, at + 2)


def _owns(items: Sequence[Item], at: int) -> bool:
    """Whether something of this horse is meant, not the horse."""
    return at + 1 < len(items) and (items[at + 1].text == "'s" or items[at + 1].piece is not None)
