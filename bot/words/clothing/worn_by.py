"""Whose it is that another wears: "that's Ned's sheet Pip's got on", "the sheet on Pip is Ned's"."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.lookup.items import NOTHING, Item

WEARS = Item("wears", "wears", frozenset({"wears"}))
REACH = 3  # words of "'s got on"
ENDS = ("time", "polite", "hour", "link", "but", "and")  # "… by the way", "… at the moment"


def worn_by(items: Sequence[Item]) -> list[Item]:
    """The items with such a thought told as any other: "Pip wears Ned's sheet"."""
    found: list[Item] = []
    end = 0
    for at in (k for k, i in enumerate(items) if i.piece is not None):
        if at < end:
            continue
        told = _it_is(items, at) or _is_hers(items, at)
        if told is not None:
            first, last, wearer, piece = told
            found.extend((*items[end:first], wearer, WEARS, piece))
            end = last
    return [*found, *items[end:]]


def _it_is(items: Sequence[Item], at: int) -> tuple[int, int, Item, Item] | None:
    """As in "that's Ned's sheet Pip's got on", "c'est l'imper de Max que porte Lune"."""
    piece = items[at].piece
    if piece is None or not piece.owners or not at or not items[at - 1].has("is"):
        return None
    first = at - 1 - (at > 1 and items[at - 2].has("it", "relative"))
    wearer, end = _wearer(items, at + 1)
    opens = first == 0 or not (items[first - 1].horses or items[first - 1].has("not", "question", "what"))
    opens = opens and (bool(wearer.horses) or any(i.horses for i in items[:first]))
    return (first, end, wearer, items[at]) if end and opens and _ends(items, end) else None


def _is_hers(items: Sequence[Item], at: int) -> tuple[int, int, Item, Item] | None:
    """As in "the sheet on Pip is Ned's", "la manta que lleva Moro es la morada de Lola"."""
    piece = items[at].piece
    if piece is None or piece.owners:
        return None
    wearer, end = _wearer(items, at + 1)
    rest = [*items[end : end + REACH + 1], NOTHING, NOTHING, NOTHING]
    if not end or not rest[0].has("is"):
        return None
    if rest[1].piece is not None:
        return (at, end + 2, wearer, rest[1]) if _ends(items, end + 2) else None
    if not (rest[1].horse and rest[2].text == "'s" and _ends(items, end + 3)):
        return None
    hers = piece._replace(owners=rest[1].horses, said=f"{rest[1].raw} {piece.said}")
    return at, end + 3, wearer, replace(items[at], piece=hers)


def _wearer(items: Sequence[Item], at: int) -> tuple[Item, int]:
    """Who has it on, from this place on, and behind which word that is said; 0 where nobody is told."""
    at += at < len(items) and items[at].has("relative")
    who, then = [*items[at : at + 2], NOTHING, NOTHING][:2]
    if who.has("wears", "on") and then.horse:
        return then, at + 2  # "que porte Lune", "on Pip"
    if not (who.horse or (who.has("she") and who.has("subject"))):
        return NOTHING, 0
    for k in range(at + 1, min(len(items), at + 1 + REACH)):
        if items[k].has("wears") or (items[k].has("ask wearing") and items[k].has("mounted", "in")):
            return who, k + 1
        if items[k].has("was", "not") or not items[k].has("is", "has"):
            break
    return NOTHING, 0


def _ends(items: Sequence[Item], at: int) -> bool:
    return at >= len(items) or items[at].mark or items[at].has(*ENDS)
