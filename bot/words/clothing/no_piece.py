"""Words of clothes that tell of something else where they stand: a lamp, a neck, how the weather is."""

from collections.abc import Sequence

from bot.words.lookup.items import WETNESS, Item, some_mean


def lamp(items: Sequence[Item], end: int) -> bool:
    """As in "the light over Otto's stall", "the light in the barn": nothing that is worn."""
    behind = items[end : end + 4]
    there = behind[:1] and behind[0].has("over", "in", "beside")
    return bool(there) and some_mean(behind, "place stall", "place field")


def how_it_is(run: Sequence[Item], before: Item | None) -> bool:
    """As in "it is cooler today"."""
    if before is None or not before.has("is") or before.has("has", "wears") or before.text == "'s":
        return False
    return len(run) == 1 and not run[0].pieces


def neck_of_hers(items: Sequence[Item], at: int, end: int) -> bool:
    """As in "húmedo por el cuello": where it is wet."""
    if not all(i.kinds("kind") == ["neck"] for i in items[at:end]) or (end < len(items) and items[end].has("of")):
        return False
    wet = some_mean(items[max(0, at - 4) : at], *WETNESS)
    return wet and items[at - 1].has("article", "her", "in", "after")
