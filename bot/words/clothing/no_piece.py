"""Words of clothes that tell of something else where they stand: a lamp, a neck, how the weather is."""

from collections.abc import Sequence

from bot.words.clothing.as_described import piece_of
from bot.words.lookup.items import WETNESS, Item, of_clothes, predicate, some_mean
from bot.words.lookup.names import Roster


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


def half(run: Sequence[Item], before: Item | None, after: Item | None, roster: Roster) -> bool:
    """As in "Tortita medio fresca": half of how she is; not "Tortita media mojada", where she has one."""
    if len(run) > 1 or not run[0].has("nearly") or before is None or after is None:
        return False
    if not (before.horses and predicate(after)):
        return False
    hers = of_clothes(after) and run[0].text == "media" and before.horse  # "half" has one form before how she is
    return not (hers and any(g in roster.owned[before.horses[0]] for g in roster.fitting(piece_of(run, (), roster))))
