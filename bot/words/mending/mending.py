"""Words that somebody mends while speaking: the walk past each word that may take back what was said before it."""

from collections.abc import Callable, Sequence

from bot.words.lookup.items import Item, places

TAKES_BACK = frozenset(("no", "i mean", "undo", "second thought"))
# kept: the items before this place as they are meant so far, to be changed; → the place from where to go on
Mend = Callable[[Sequence[Item], int, list[Item]], int]


def mend_each(items: Sequence[Item], openers: frozenset[str], mend: Mend) -> list[Item]:
    """The items as they were meant, `mend` asked at each word of these meanings that was not mended away before."""
    kept: list[Item] = []
    end = 0
    for at in places(items, openers):
        if at >= end:
            kept.extend(items[end:at])
            end = mend(items, at, kept)
    return [*kept, *items[end:]]
