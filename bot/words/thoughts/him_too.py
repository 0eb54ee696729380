"""A pronoun in a list: in "lunged Storm then turned him and Biscuit out" he is the horse named last before."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.lookup.items import Item, places

PRONOUN = frozenset(("she",))


def listed_again(items: Sequence[Item]) -> list[Item]:
    """The items with that horse in the pronoun's place; the same where it may be another."""
    found = list(items)
    for at in places(items, PRONOUN):
        last = _named_last(items, at) if _opens_list(items, at) else None
        if last is not None and last.horses != items[at + 2].horses:
            found[at] = replace(last, means=frozenset())
    return found


def _opens_list(items: Sequence[Item], at: int) -> bool:
    """As in "him and Biscuit"; not "her and Biscuit's rug", which may be two things."""
    if items[at].has("subject") or at + 2 >= len(items):
        return False
    return items[at + 1].has("and") and items[at + 2].horse and not _owns(items, at + 2)


def _named_last(items: Sequence[Item], at: int) -> Item | None:
    """The horse named last before this place; None where it stands in a list itself."""
    last = next((k for k in range(at - 1, -1, -1) if items[k].horses), -1)
    joined = last > 0 and (items[last - 1].has("and") or items[last - 1].text == ",")
    return items[last] if last >= 0 and items[last].horse and not joined else None


def _owns(items: Sequence[Item], at: int) -> bool:
    """Whether something of this horse is meant, not the horse."""
    return at + 1 < len(items) and (items[at + 1].text == "'s" or items[at + 1].piece is not None)
