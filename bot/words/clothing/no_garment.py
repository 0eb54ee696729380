"""What only sounds like a garment of the barn's: a roof's tarpaulin, bed linen, a child's quilt, a grey pony."""

from collections.abc import Sequence
from itertools import takewhile

from bot.words.lookup.items import Item, some_mean
from bot.words.lookup.names import Roster
from bot.words.lookup.piece import Piece
from bot.words.thoughts.sentences import ENDS, REACH


def of_nothing_here(piece: Piece, before: Sequence[Item], items: Sequence[Item], at: int, end: int) -> bool:
    """Whether the words around this description, or that describe it, say that it is of something else.

    before: what is found before it. The description stands in the items from `at` up to `end`.
    """
    if len(before) > 1 and before[-1].text == "'s" and _of_nobody_here(before[-2]):
        return True  # "Ruth's blanket", or that of a horse that is not here
    thing = None if piece.ids else _whose(items[end : end + 3])
    if thing is not None and (
        _somebody(thing) or _covers_it(piece, thing) or not (_heard(thing) or named_beside(items, at))
    ):
        return True
    return _some_horse(before, items[at:end], piece)


def named_beside(items: Sequence[Item], at: int) -> bool:
    """Whether the sentence names a horse; else "la lona del pajar" is of a thing unknown."""
    ahead = takewhile(lambda i: i.text not in ENDS, reversed(items[max(0, at - REACH) : at]))
    behind = takewhile(lambda i: i.text not in ENDS, items[at : at + REACH])
    return any(i.horses for i in (*ahead, *behind))


def kept_by(mine: tuple[str, ...], piece: Piece, roster: Roster) -> bool:
    """Whether a horse of the speaker's has such a piece; "ma couette" of who has none for the stall is her own."""
    return any(roster.garments[garment].horse in mine for garment in roster.fitting(piece))


def _some_horse(before: Sequence[Item], run: Sequence[Item], piece: Piece) -> bool:
    """As in "un petit gris", "a little grey": a coat colour, and how big or old; of no particular one."""
    sized = some_mean(run, "young") and some_mean((*before[-1:], *run[:1]), "some")
    return sized and not (piece.ids or piece.kinds or piece.rug or piece.spare or piece.fill)


def _whose(behind: Sequence[Item]) -> Item | None:
    """As in "(lona) del tractor": of what it is, where that has an article; a horse of the barn needs none."""
    joins = list(takewhile(lambda i: i.has("of", "article", "my"), behind))
    whose = any(i.has("of") and not i.has("toward") for i in joins) and some_mean(joins, "article", "my")
    return behind[len(joins)] if whose and len(joins) < len(behind) else None


def _covers_it(piece: Piece, thing: Item) -> bool:
    """As in "la lona del galpón": what keeps rain off a roof, not off a horse; "la manta del box" may be hers."""
    return piece.kinds == {"sheet"} and thing.has("place stall") and not thing.horses


def _somebody(item: Item) -> bool:
    """As in "la couette de la petite", "of my daughter": a child's, for all the barn knows."""
    return not (item.horses or item.pieces) and item.has("young", "kin")


def _heard(item: Item) -> bool:
    heard = item.means or item.horses or item.pieces or item.person or item.mark or item.number is not None
    return bool(heard)


def _of_nobody_here(whose: Item) -> bool:
    return not whose.horses and (not whose.means or (whose.has("i") and not whose.has("subject", "everyone")))
