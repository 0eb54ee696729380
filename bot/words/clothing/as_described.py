"""The piece of clothing that some words describe: its kind, its fill, its colours, what it is called."""

from collections.abc import Iterable, Sequence

from bot.words.lookup.items import Item, some_mean
from bot.words.lookup.names import Roster
from bot.words.lookup.piece import RUGS, Piece, colour

BLUE, NAVY = "blue", "navy"
JOINS = ("de", "a", "d'", "with", "con")  # of "de estrellas", "à pois"

# what each weight means, in g/m² of fill, both ends included
WEIGHTS = {"heavy": (300.0, 1000.0), "medium": (150.0, 299.0), "light": (0.0, 149.0)}


def piece_of(run: Sequence[Item], numbers: Sequence[float], roster: Roster) -> Piece:
    """The piece of these words. numbers: those among them that may be a fill, g/m²."""
    # a nickname that is a trade word ("fleece") may as well mean any such piece
    ids = next((i.pieces for i in run if i.pieces and not (i.kinds("kind") or i.kinds("weight") or i.has("rug"))), ())
    kinds = {kind for i in run for kind in i.kinds("kind")}
    weights = [weight for i in run for weight in i.kinds("weight")]
    rug = not kinds and some_mean(run, "rug")
    fill = (numbers[0], numbers[0]) if numbers else WEIGHTS[weights[0]] if weights else None
    if rug or (not kinds and weights):
        kinds = set(RUGS)
    said = " ".join(i.raw for i in run)
    others = [i for i in run if not i.pieces] if ids else ()
    plainly = Piece(said, frozenset(kinds), fill, _bag(others, roster))
    fitting = tuple(g for g in ids if plainly.fits(roster.garments[g], roster.bags[g]))
    if ids and not (kinds and not fitting and any(i.pieces and i.has("spare") for i in run)):
        # a nickname narrows; what else was said must fit too: "el polar de repuesto" is no turnout called so
        sorts = frozenset(kinds) or frozenset(roster.garments[g].kind for g in fitting or ids)
        return Piece(said, sorts, fill, _bag(run, roster), ids=fitting or ids)
    spare = some_mean(run, "spare")
    called = frozenset(i.text for i in run if i.kinds("weight")) | frozenset(weights)
    several = any(i.text.endswith("s") and (i.kinds("kind") or i.kinds("weight") or i.has("rug")) for i in run)
    return Piece(
        said,
        frozenset(kinds),
        fill,
        _bag(run, roster),
        spare=spare,
        rug=rug and fill is None,
        called=called,
        several=several,
    )


def _bag(run: Iterable[Item], roster: Roster) -> frozenset[str]:
    """The words that a piece must have among its own names: colours, and what only names tell.

    "Azul marino", "bleu marine", "navy blue" are one colour.
    """
    kindless = not any(i.kinds("kind") or i.kinds("weight") or i.has("rug") for i in run)
    bare = roster.nouns if kindless else frozenset[str]()
    told = (i for i in run if i.has("colour") or i.text in bare or _only_a_name(i, roster))
    words = {word for i in told for word in i.text.split() if word not in JOINS}
    navy = any(colour(word) == NAVY for word in words)
    return frozenset(word for word in words if not (navy and colour(word) == BLUE))


def _only_a_name(item: Item, roster: Roster) -> bool:
    """As in "the spare pony rug", "the 57" of a piece called spare-pony-57; a number that is no rug's fill."""
    if item.number in roster.fills:
        return False
    return item.text in roster.words and (not item.means or item.has("a horse"))
