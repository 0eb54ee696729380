"""What each of several horses gets, each named behind its own piece: "le puse la capa a Lola y el forro a Mora"."""

from collections.abc import Collection, Sequence
from dataclasses import replace

from bot.words.change import Change
from bot.words.items import Item
from bot.words.piece import Piece


def share_of(horse: str, wearers: Collection[str], change: Change) -> Change:
    """The change without the pieces that are said to go to, or come from, the others."""
    if len(wearers) < 2:
        return change
    add, remove, whole = (
        [piece for piece in pieces if not _of_the_others(piece, horse, wearers)]
        for pieces in (change.add, change.remove, change.whole)
    )
    return replace(change, add=add, remove=remove, whole=whole)


def _of_the_others(piece: Piece, horse: str, wearers: Collection[str]) -> bool:
    if piece.several:
        return False  # "took Pip and Ned's sheets off"
    return bool(piece.owners) and horse not in piece.owners and all(owner in wearers for owner in piece.owners)


def another_gets_one(rest: Sequence[Item], before: Sequence[Item]) -> bool:
    """As in "(a Lola le puse la capa verde) y a Canela la negra", "(Moro lleva la gorda,) Canela la negra"."""
    to_whom = len(rest) > 1 and rest[0].has("toward")
    told = rest[1] if to_whom else rest[0] if rest else None
    piece = told.piece if told is not None else None
    if told is None or piece is None or len(piece.owners) != 1:
        return False
    named = {n for i in before for n in (*i.horses, *(i.piece.owners if i.piece is not None else ()))}
    return piece.owners[0] not in named and (to_whom or _named_first(piece, rest[1:2]))


def _named_first(piece: Piece, behind: Sequence[Item]) -> bool:
    """A horse and then its piece, and no more: "Canela la negra"; not "la negra de Canela"."""
    return piece.led and all(i.mark or i.has("and") for i in behind)
