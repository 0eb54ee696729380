"""Whether a whole thought has been told, and one of another horse begins: for words that stand between the two."""

from collections.abc import Iterable, Sequence
from itertools import takewhile

from bot.words.lookup.items import NOTHING, Item, of_clothes, predicate, some_mean

DEEDS = (
    "put on", "took off", "took", "swapped", "brought in", "turned out", "worked", "clipped", "state missing",
    "state found", "hung",
)  # fmt: skip
DONE = frozenset((*DEEDS, "brought"))
STANDS = ("bare", "inwards", "outwards", "done", "place stall", "place field", "wears")
DRESSED = ("wears", "ask wearing", "in", "has")
NEAR = 5  # words of a deed
FAR = 40  # words before it that are looked at, so that time is linear


def whole_before(items: Sequence[Item]) -> list[Item]:
    """The last thought of these, from its first word; none if something is missing from it."""
    near = reversed(items[-FAR:])
    before = list(takewhile(lambda i: not (i.mark or i.has("and", "but", "too")), near))[::-1]
    return before if _names(before) and _whole(before) else []


def tells_of_another(before: Sequence[Item], items: Sequence[Item], at: int) -> bool:
    """Whether something is told from here on, and of none that is named before."""
    if items[at].horse or items[at].piece is not None:
        return told_at_once(items, at) and _names(before).isdisjoint(_names([items[at]]))
    others = _names(takewhile(lambda i: not i.mark, items[at + 1 : at + 1 + NEAR]))
    return bool(others) and _names(before).isdisjoint(others)


def _names(items: Iterable[Item]) -> set[str]:
    items = list(items)
    owners = {name for i in items if i.piece is not None for name in i.piece.owners}
    return owners | {name for i in items if i.sure for name in i.horses}


def _whole(before: Sequence[Item]) -> bool:
    """Whether something was told of them: how they are, where, what they wear, or what was done with them."""
    how = any(predicate(i) for i in before) or some_mean(before, "strap", "broken", *STANDS, *DEEDS)
    dressed = some_mean(before, *DRESSED) and any(i.piece is not None for i in before)
    return how or dressed or any(led(before, k) for k in range(len(before)))


def told_at_once(items: Sequence[Item], at: int) -> bool:
    """As in "June is cold", "Fennel bare", "Maple's liner is …": right behind the name, or the piece."""
    then = items[at + 1] if at + 1 < len(items) else NOTHING
    piece = items[at].piece
    if piece is not None:
        return bool(piece.owners) and (then.has("is", "was") or of_clothes(then))
    return then.has("is", "was", "bare", "wears", "stays", "not") or predicate(then) or then.text == "'s"


def led(items: Sequence[Item], at: int) -> bool:
    """As in "brought Fennel in", "turned Sorrel out"."""
    behind = items[at + 1 : at + 4]
    moved = items[at].has("brought") and some_mean(behind, "inwards", "outwards")
    return moved and any(i.horses for i in behind)
