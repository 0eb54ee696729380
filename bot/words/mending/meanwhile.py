"""A "while" between two whole thoughts: "brought Fennel in while June is cold" tells of June, and supposes nothing."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.lookup.items import Item, places, predicate, some_mean
from bot.words.mending.another import DEEDS, tells_of_another, told_at_once, whole_before

WHILE, SUPPOSES = frozenset(("meanwhile",)), frozenset(("when", "meanwhile"))
REACH = 12  # words of a thought
HOW = 4  # words that tell how one is
NOT_YET = ("plan", "if", "when", "keep", "guess", "habit", "some day")  # what may wait for it


def told_meanwhile(items: Sequence[Item]) -> Sequence[Item]:
    """The items with a "but" in place of each "while" that sets what is told of one beside what is told of another."""
    joins = {at for at in places(items, WHILE) if _joins_two(items, at) or _heads_two(items, at)}
    return [_but(item) if at in joins else item for at, item in enumerate(items)] if joins else items


def _joins_two(items: Sequence[Item], at: int) -> bool:
    """As in "June is cold, while Fennel is fine"."""
    pause = at > 0 and items[at - 1].text == ","
    before = whole_before(items[: at - 1] if pause else items[:at])
    return _surely(before) and at + 1 < len(items) and tells_of_another(before, items, at + 1)


def _heads_two(items: Sequence[Item], at: int) -> bool:
    """As in "while June is cold, Fennel is fine"; "while June is cold Fennel stays in" waits for it."""
    if (at and not items[at - 1].mark) or at + 1 >= len(items) or not told_at_once(items, at + 1):
        return False
    named = [k for k in range(at + 2, min(at + REACH, len(items))) if items[k].horse or items[k].piece is not None]
    return any(_sets_beside(items, at + 1, k) for k in named)


def _sets_beside(items: Sequence[Item], first: int, other: int) -> bool:
    pause = items[other - 1].text == ","
    before = whole_before(items[first : other - 1 if pause else other])
    if len(before) < other - first - pause or some_mean(before, *DEEDS) or not _surely(before):
        return False
    return any(predicate(i) for i in items[other + 1 : other + HOW]) and tells_of_another(before, items, other)


def _surely(before: Sequence[Item]) -> bool:
    """Whether it is so, or was done; "don't take her heavy off (while June is cold)" waits for it."""
    waits = some_mean(before, *NOT_YET) or (some_mean(before, "not") and some_mean(before, *DEEDS))
    return bool(before) and not waits


def _but(item: Item) -> Item:
    return replace(item, means=item.means - SUPPOSES | {"but"})
