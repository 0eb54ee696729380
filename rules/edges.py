"""Edges: what it costs one horse to go from one outfit to the next and to stand the window in it."""

from collections.abc import Sequence

import numpy as np

from rules import wish
from rules.day import Steps, Take
from rules.outfit import Outfit
from rules.outlook import Outlook
from rules.question import Question, Wishes
from rules.stand import Indices, Stand, Stood
from rules.weather import Floats

Flags = np.ndarray[tuple[int, ...], np.dtype[np.bool_]]
NO_WISHES = Wishes()
NOTHING: frozenset[Take] = frozenset()
DRY, WET = 0, 1  # how a horse comes into a window: under clothes that shed rain, or from standing bare in the weather
SOAKING_MM = 1.0  # over a window: more makes clothes that do not shed rain unfit for the next
LAYER, GRAM = 0.05, 0.0005  # cold degree-hours for each layer and g/m² of fill: ties go to less clothing
STRANGE = 0.01  # for each g/m² away from what is worn, where no forecast helps to choose
FORBIDDEN = 1e4  # cold degree-hours: dearer than any weather, yet finite, for bare must stay possible


def comes_in(outfit: Outfit) -> int:
    """How a horse comes out of a window that it stood in this outfit."""
    return DRY if outfit.sheds_rain else WET


def steps(stood: Stood, question: Question, views: Sequence[Outlook]) -> Steps:
    """The edges of this horse's way: discomfort of the window, and what it takes to get there."""
    edges = [_first(stood, question, views[0])] if views else []
    edges += [_later(stood, window, question, views) for window in range(1, len(views))]
    takes = (tuple(_takes(stood, w, o, view) for o in stood.outfits[w]) for w, view in enumerate(views))
    return Steps(tuple(edges), tuple(takes))


def _takes(stood: Stood, window: int, outfit: Outfit, view: Outlook) -> frozenset[Take]:
    """Which spares this outfit keeps from others when: in its window, and in the next where they come back wet."""
    if not outfit.spares:
        return NOTHING
    soaked = not outfit.sheds_rain and _soaking(stood, window, view)
    return frozenset((spare, w) for spare in outfit.spares for w in (window, window + 1)[: 1 + soaked])


def _soaking(stood: Stood, window: int, view: Outlook) -> bool:
    """Whether clothes that do not shed rain are wet through after this window."""
    return stood.wearer.stays[window].place == "field" and view.rain + view.wet_snow >= SOAKING_MM


def _stay_cost(stood: Stood, window: int, question: Question, view: Outlook) -> Floats:
    """What standing the window costs, axes (came in DRY or WET, outfit)."""
    stand, wearer = stood.stands[window], stood.wearer
    outfits, index = stood.outfits[window], stood.cases[window]
    hours = float(np.sum(stand.share[~np.isnan(stand.cold[index[DRY, 0]])]))
    worn = np.array([(len(o.pieces), o.fill_g) for o in outfits]).T
    cost = stand.discomfort[index] + LAYER * worn[0] + GRAM * worn[1] + question.costs.rug * hours * (worn[0] > 0)
    if wearer.wishes != NO_WISHES:
        place = wearer.stays[window].place
        cost = cost + [wish.price(wearer, o, view, place, question.costs, hours) for o in outfits]
    told = wearer.told[window] if window < len(wearer.told) else None
    if told is not None:
        cost = cost + question.costs.retell * ~_is(outfits, told)
    cost[:, 0] += FORBIDDEN * (wearer.vet_clothes or (wearer.must_clothe and _helps(stand, index[DRY])))
    if not hours:
        cost = cost + STRANGE * np.abs(worn[1] - _fill_worn(stood))
    return np.asarray(cost)


def _is(outfits: Sequence[Outfit], wear: Sequence[str]) -> Flags:
    """Which of the outfits is this one, in whatever order it was named."""
    named = set(wear)
    return np.array([named == set(o.ids) for o in outfits])


def _helps(stand: Stand, index: Indices) -> bool:
    """Whether some clothes would make this horse warmer than bare without making it sweat."""
    cold, heat = stand.worst_cold[index, 0], stand.worst_heat[index, 0]
    return bool(np.any((cold[1:] > cold[0]) & (heat[1:] >= 0)))


def _fill_worn(stood: Stood) -> float:
    worn = stood.wearer.wears or ()
    return sum(p.garment.fill_g for p in stood.reach if p.garment.id in worn)


def _first(stood: Stood, question: Question, view: Outlook) -> Floats:
    wears, outfits = stood.wearer.wears, stood.outfits[0]
    cost = _stay_cost(stood, 0, question, view)[DRY]
    if wears is not None:
        cost = cost + question.costs.change * ~_is(outfits, wears)
    has = set(wears or ())
    return np.asarray(cost + [question.costs.borrow * len(o.spares - has) for o in outfits])[None, :]


def _later(stood: Stood, window: int, question: Question, views: Sequence[Outlook]) -> Floats:
    before, now = stood.outfits[window - 1], stood.outfits[window]
    came = np.array([comes_in(o) for o in before])
    cost = _stay_cost(stood, window, question, views[window])[came]
    names = {o.ids: i for i, o in enumerate(before)}
    same = np.array([names.get(o.ids, -1) for o in now])[None, :] == np.arange(len(before))[:, None]
    cost = cost + question.costs.change * ~same
    spares = sorted({s for o in now for s in o.spares})
    if spares:
        takes, had = _table(now, spares), _table(before, spares)
        cost = cost + question.costs.borrow * ((1 - had) @ takes.T)
    if _soaking(stood, window - 1, views[window - 1]):
        cost = np.where(_soaked(before, now), np.inf, cost)
    return np.asarray(cost)


def _table(outfits: Sequence[Outfit], spares: Sequence[str]) -> Floats:
    return np.array([[float(s in o.spares) for s in spares] for o in outfits])


def _soaked(before: Sequence[Outfit], now: Sequence[Outfit]) -> Flags:
    """Which outfits would take a piece that has just been rained through."""
    wet = [frozenset(o.ids) if not o.sheds_rain else frozenset() for o in before]
    return np.array([[bool(pieces & set(o.ids)) for o in now] for pieces in wet])
