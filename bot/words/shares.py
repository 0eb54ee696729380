"""What each of several horses gets, each named behind its own piece: "le puse la capa a Lola y el forro a Mora"."""

from collections.abc import Collection, Sequence
from dataclasses import replace

from bot.words.items import Item
from bot.words.outfits import Change
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
    return bool(piece.owners) and horse not in piece.owners and all(owner in wearers for owner in piece.owners)


def another_gets_one(rest: Sequence[Item], before: Sequence[Item]) -> bool:
    """As in "(a Lola le puse la capa verde) y a Canela la negra": to whom, and a piece of hers."""
    if len(rest) < 2 or not rest[0].has("toward"):
        return False
    piece = rest[1].piece
    named = {n for i in before for n in (*i.horses, *(i.piece.owners if i.piece is not None else ()))}
    return piece is not None and len(piece.owners) == 1 and piece.owners[0] not in named
