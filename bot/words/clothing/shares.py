"""What each of several horses gets, each named behind its own piece: "le puse la capa a Lola y el forro a Mora"."""

from collections.abc import Collection
from dataclasses import replace

from bot.words.clothing.change import Change
from bot.words.lookup.piece import Piece


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
