"""A hole, how big it is, and in what: "un trou gros comme le poing dans la bleue", "a rip a foot long in the heavy"."""

from collections.abc import Sequence

from bot.words.heard.holes import HOLES
from bot.words.lookup.items import NOTHING, Item, predicate
from bot.words.lookup.piece import Piece

FAR = 9  # words from the hole to what it is in
OTHERS = ("is", "was", "subject", "she", "not", "put on", "took off", "but", "and", "plan")


def holed(items: Sequence[Item], at: int) -> Piece | None:
    """The piece that a hole is said to be in, behind how big it is; None where nobody says so, or of another thing."""
    if HOLES.isdisjoint(items[at].text.split()):
        return None
    joins = NOTHING
    for item in items[at + 1 : at + FAR]:
        if item.piece is not None:
            return item.piece if joins is not NOTHING else None
        if item.mark or item.horses or item.person or _of_another(item):
            return None
        if item.has("in", "on", "of") and not item.has("article"):
            joins = item
        elif item.has("body"):
            joins = NOTHING  # "à l'épaule de la mauve"
        elif joins is not NOTHING and not item.has("article", "her"):
            if joins.has("in", "on"):
                return None  # "un trou dans la clôture derrière la bleue"
            joins = NOTHING  # "un accroc de 10 cm sur la bleue"
    return None


def _of_another(item: Item) -> bool:
    """Of what something else is said; "bien moche" and "l'épaule" are no more than how it looks, and where."""
    return not item.has("very", "article") and (predicate(item) or item.has(*OTHERS))
