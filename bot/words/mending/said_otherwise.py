"""How it is, mended while speaking: "Tucker is cold, no sorry, hot" is hot, and was never cold."""

from collections.abc import Sequence

from bot.words.lookup.items import WETNESS, Item, predicate, some_mean
from bot.words.mending.mending import TAKES_BACK, mend_each
from bot.words.thoughts.clauses import soft

SMALL = (*TAKES_BACK, "polite", "it", "is", "article")
PAUSES = frozenset(",…-–—")
WHERE = ("place stall", "place field", "inwards", "outwards")
REACH = 5  # words between how it was said to be and how it is


def said_otherwise(items: Sequence[Item]) -> list[Item]:
    """The items as they were meant: what was said first of how it is gives way to what is said after "no, …"."""
    return mend_each(items, TAKES_BACK, _mend)


def _mend(items: Sequence[Item], at: int, kept: list[Item]) -> int:
    how = _said_after(items, at)
    first = _said_first(kept) if how else None
    if first is None or not _of_one_kind(kept[first], items[how], excused=items[at].has("polite")):
        return at
    kept[first:] = [items[how]]
    return how + 1


def _said_first(kept: Sequence[Item]) -> int | None:
    """The place of how or where it was said to be, last before "no", and not denied."""
    for at in range(len(kept) - 1, max(len(kept) - REACH, -1), -1):
        if _tells(kept[at]):
            near = kept[max(0, at - REACH) : at]
            return None if some_mean(near, "not", "stopped") else at
        if not (soft(kept[at]) or kept[at].text in PAUSES):
            return None
    return None


def _said_after(items: Sequence[Item], at: int) -> int:
    """Where how it is stands, behind the word that mends and nothing but small ones; 0 where nothing is mended."""
    before = items[at - 1] if at else items[at]
    if items[at].has("is", "was", "link", "very", "not behind") or before.text == "?" or before.has("and"):
        return 0
    paused = at > 0 and items[at - 1].mark
    for how in range(at + 1, min(len(items), at + REACH)):
        item = items[how]
        if _tells(item):
            plainly = not items[at].has("not") or (paused and how > at + 1)
            return how if plainly and _ends_there(items, how + 1) else 0
        small = item.has(*SMALL) or (item.has("she") and not items[at].has("polite"))
        if not (item.text in PAUSES or (small and not item.horses and not item.has("not behind"))):
            return 0
    return 0


def _tells(item: Item) -> bool:
    return predicate(item) or item.has(*WHERE)


def _ends_there(items: Sequence[Item], at: int) -> bool:
    """Whether nothing of its own begins with it: "pardon, trempé de partout"; not "no, wet hay"."""
    behind = items[at] if at < len(items) else None
    return behind is None or behind.mark or behind.has("no", "polite", "time", "body", "under", "but", "in", "and")


def _of_one_kind(one: Item, other: Item, *, excused: bool) -> bool:
    """Two words of which one can take the other's place; "sorry" may only excuse what is told beside it."""
    if one.has(*WHERE) or other.has(*WHERE):
        return one.has(*WHERE) and other.has(*WHERE)
    if one.kinds("state") or other.kinds("state"):
        return bool(one.kinds("state") and other.kinds("state"))
    return not excused or one.has(*WETNESS) == other.has(*WETNESS)
