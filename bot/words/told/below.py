"""What a hand finds under a piece is told of the horse: "passé la main sous la couverture : bien chaud, bien sec"."""

from collections.abc import Sequence

from bot.words.lookup.items import Item, predicate
from bot.words.thoughts.clauses import Clause

UNDER = (" sous", " under", " debajo de", " bajo")  # "touché la 250, sèche" is of the piece


def felt_dry_below(items: Sequence[Item], at: int, heard: Clause | None) -> bool:
    """Whether "dry" at this place is what was found under the piece, told here or in the thought before.

    Not where another piece lies there: "la couverture sous l'imper est sèche".
    """
    if not items[at].has("dry"):
        return False
    piece = max((k for k, i in enumerate(items[:at]) if i.piece is not None), default=-1)
    if not all(
        i.mark or predicate(i) or i.has("very", "and", "it", "is", "link", "time") for i in items[piece + 1 : at]
    ):
        return False  # "sous l'imper de Lune la doudoune est sèche"
    if piece >= 0:
        return hand_under(items[:at])
    return heard is not None and heard.has("felt") and hand_under(heard.items)


def hand_under(items: Sequence[Item]) -> bool:
    """As in "stuck a hand in under Otto's liner": one piece, and a hand under it."""
    pieces = [k for k, i in enumerate(items) if i.piece is not None]
    if len(pieces) != 1:
        return False
    under = next((i for i in reversed(items[: pieces[0]]) if not i.has("article", "her")), None)
    if under is None:
        return False
    return under.text.endswith(UNDER) if under.has("felt") else under.has("under") and not under.has("in", "has")
