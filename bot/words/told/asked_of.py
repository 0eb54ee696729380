"""Of which horse or piece something is asked, and whether nothing else is."""

from collections.abc import Sequence

from bot.words.lookup.items import Item
from bot.words.thoughts.clauses import soft
from bot.words.told.telling import Telling


def horse_of(items: Sequence[Item]) -> str | None:
    """The horse named first, or whose piece is; None where none is named."""
    names = [i.horses[0] for i in items if i.horse]
    names += [name for i in items if i.piece for name in i.piece.owners]
    return names[0] if names else None


def garment_of(items: Sequence[Item], telling: Telling, horse: str | None) -> str | None:
    """The one garment that is meant; None where it may be several, or none is named."""
    piece = next((i.piece for i in items if i.piece), None)
    found = telling.meant(piece, horse).ids if piece else ()
    return found[0] if len(found) == 1 else None


def plainly(items: Sequence[Item], *meanings: str) -> bool:
    """Nothing but small words, names, pieces and these."""
    small = ("question", "asked", "i", "first", "second", "third")  # "in two layers"
    return all(
        soft(i) or i.horses or i.piece or i.person or i.kinds("weight") or i.has(*small, *meanings) for i in items
    )
