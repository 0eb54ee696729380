"""Whether another horse gets a piece of its own: "(a Lola le puse la verde) y a Canela la negra"."""

from collections.abc import Sequence

from bot.words.lookup.items import Item
from bot.words.lookup.piece import Piece


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
