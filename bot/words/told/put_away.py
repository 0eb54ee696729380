"""What is brought somewhere and is no horse, a sheet or the tractor; or in with a horse: where, nobody says."""

from collections.abc import Sequence
from itertools import pairwise

from bot.words.lookup.items import Item
from bot.words.thoughts.clauses import Clause
from bot.words.thoughts.hers import PLACES
from bot.words.thoughts.no_report import WITH
from bot.words.told.telling import Telling

TOLD_MOVES = ("brought", "turned out", "brought in", "stays")
LED = ("brought", "fetched", "led", "walked", "came")


def in_with_another(items: Sequence[Item]) -> bool:
    """As in "put Fennel in with Quill": where that is, nobody says; but "brought Fennel in with Quill"."""
    if any(i.text in LED for i in items):
        return False
    threes = zip(items, items[1:], items[2:], strict=False)
    return any(i.text == "in" and by.text in WITH and bool(other.horses) for i, by, other in threes)


def put_away(clause: Clause, telling: Telling) -> bool:
    """As in "(her sheet is soaked,) hung it in her stall", "… je l'ai mise dans son box": where the piece is."""
    if clause.horses or clause.has("brought in", "turned out"):
        return False
    it = any(i.has("it") and not i.has("she") for i in clause.items)
    whose = [k for k, (i, place) in enumerate(pairwise(clause.items)) if i.has("her") and place.has(*PLACES)]
    her = any(i.has("she") and k not in whose for k, i in enumerate(clause.items))
    left = clause.has("brought") and bool(whose) and not her
    return clause.has("hung") or (telling.last == "piece" and (it or left))


def a_thing_is_moved(items: Sequence[Item]) -> bool:
    """As in "j'ai rentré le tracteur", "brought the washing in"."""
    threes = zip(items, items[1:], items[2:], strict=False)
    moved = (thing for verb, the, thing in threes if verb.has(*TOLD_MOVES) and the.has("article"))
    return any(thing.has("i", "thing", "idiom") and not (thing.has("she") or thing.horses) for thing in moved)
