"""Pricing: what every allowed outfit of every horse costs in every window; the heavy part, all cases at once.

Each window is balanced by itself over its own hours, from the water that the horse brings into it: dry under clothes
that shed rain, or wet as a horse is that stood bare in the weather of the windows before (mean of the scenarios).
Clothes put on are dry within, or as reported in the first window. So a sequence needs two prices an outfit, not one
for each history; what a sound rug gathers over several windows (little) is left out.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from rules import parameters as p
from rules import wish
from rules.day import Steps, discomfort
from rules.dressed import Cases, Dressed, cases
from rules.drying import ready_h
from rules.heat import Margins, balance, extra_hay_kg
from rules.outfit import Outfit, Setting, allowed
from rules.outlook import Outlook, outlooks
from rules.question import Piece, Question, Stay, Wearer
from rules.reason import Reason
from rules.weather import Air, Floats, at_horse, scenarios

Indices = np.ndarray[tuple[int, ...], np.dtype[np.int_]]
BATCH = 64  # horses balanced at once: arrays that fit a cache, and memory that does not grow with the barn
DRY, WET = 0, 1  # how a horse comes into a window: under clothes that shed rain, or from standing bare in the weather
WET_SHARE = 0.35  # of the skin lies outside a rug: what is wet of a horse that comes in under one (1 - BODY_SHARE)
NOTICED_WATER = 0.005  # of the hair's volume: less makes no second price
SOAKING_MM = 1.0  # over a window: more makes clothes that do not shed rain unfit for the next
LAYER, GRAM = 0.05, 0.0005  # cold degree-hours for each layer and g/m² of fill: ties go to less clothing
STRANGE = 0.01  # for each g/m² away from what is worn, where no forecast helps to choose
CHILLY_K = 5.0  # a cold margin, tolerance included, below which wet skin is a hardship and not a wash
FORBIDDEN = 1e4  # cold degree-hours: dearer than any weather, yet finite, for bare must stay possible


@dataclass(frozen=True)
class Stand:
    """All cases of one window, offset included; axes (case, hour) of the central scenario, strict balance.

    hours: their indices in the question. worst_cold, worst_heat: least margin of the window, tolerance included,
    (case, scenario); weight: of the scenarios. hay: kg a day for each per cent of extra heat, (case,).
    discomfort: (case,).
    """

    hours: Indices
    weight: Floats
    share: Floats
    cold: Floats
    heat: Floats
    tolerance: Floats
    extra: Floats
    hay: Floats
    fill_low: Floats
    fill_high: Floats
    worst_cold: Floats
    worst_heat: Floats
    discomfort: Floats


@dataclass(frozen=True)
class Priced:
    """One horse: outfits[window], cases[window] with axes (came in DRY or WET, outfit), and its way's edges."""

    wearer: Wearer
    outfits: tuple[tuple[Outfit, ...], ...]
    cases: tuple[Indices, ...]
    stands: tuple[Stand, ...]
    steps: Steps
    refused: tuple[Reason, ...]
    total_hours: int

    def came(self, window: int, path: Sequence[int]) -> int:
        """Whether the horse comes into a window DRY or WET after these outfits."""
        return comes_in(self.outfits[window - 1][path[window - 1]]) if window else DRY


Prices = dict[str, Priced]


def comes_in(outfit: Outfit) -> int:
    """How a horse comes out of a window that it stood in this outfit."""
    return DRY if outfit.sheds_rain else WET


def price(question: Question, only: frozenset[str] | None = None) -> Prices:
    """Margins and cost of every allowed outfit in every window, by horse; `only` restricts to these horses."""
    wearers = [w for w in question.wearers if only is None or w.horse.name in only]
    views, ready = outlooks(question), ready_h(question)
    prices: Prices = {}
    for first in range(0, len(wearers), BATCH):
        drafts = [Draft(wearer) for wearer in wearers[first : first + BATCH]]
        for window, every, margins in balances(question, drafts, views, ready):
            stand = _summary(question, window, drafts, every, margins)
            for draft in drafts:
                draft.stands.append(stand)
        prices |= {draft.wearer.horse.name: draft.priced(question, views) for draft in drafts}
    return prices


def balances(
    question: Question, drafts: Sequence["Draft"], views: Sequence[Outlook], ready: Mapping[str, float | None]
) -> Iterator[tuple[int, Cases, Margins]]:
    """Window by window every case of these horses and its margins; the drafts learn which cases are theirs."""
    worlds = scenarios(question.hours, question.site)
    stays = list(dict.fromkeys(stay for draft in drafts for stay in draft.wearer.stays))
    air = at_horse(worlds, question.hours, question.site, stays)
    for window, view in enumerate(views):
        for draft in drafts:
            draft.open(question, window, view, ready)
        every = _cases(question, window, drafts, stays)
        margins = balance(every, _slice(air, np.flatnonzero(question.share[window] > 0)))
        for draft in drafts:
            bare = int(draft.cases[-1][WET, 0])
            draft.water = margins.water.hair_end[2:4, bare] @ worlds.weight / every.soaking.depth[2:4, bare]
        yield window, every, margins


class Draft:
    """One horse's prices while they are being made, window after window.

    water: what a bare horse carries on [share of hair volume].
    """

    def __init__(self, wearer: Wearer) -> None:
        self.wearer = wearer
        self.outfits: list[tuple[Outfit, ...]] = []
        self.cases: list[Indices] = []
        self.stands: list[Stand] = []
        self.refused: dict[str | None, Reason] = {}
        self.water = np.zeros(2)
        self.offset, self.spread = wearer.offset_c, wearer.offset_sd_c

    def open(self, question: Question, window: int, view: Outlook, ready: Mapping[str, float | None]) -> None:
        """What may be worn in this window."""
        place = self.wearer.stays[window].place
        start = float(view.hours[0]) if view.hours else 0.0
        setting = Setting(place, start, view.gust.value if view.gust else 0.0, ready)
        outfits, refused = allowed(self.wearer, _within_reach(question, self.wearer), setting)
        self.outfits.append(tuple(sorted(outfits, key=lambda o: (len(o.pieces), o.fill_g))))
        for reason in refused:
            self.refused.setdefault(reason.garment, reason)

    def priced(self, question: Question, views: Sequence[Outlook]) -> Priced:
        """The finished prices."""
        return Priced(
            self.wearer,
            tuple(self.outfits),
            tuple(self.cases),
            tuple(self.stands),
            _steps(self, question, views),
            tuple(self.refused.values()),
            len(question.hours),
        )


def _within_reach(question: Question, wearer: Wearer) -> list[Piece]:
    """The horse's own pieces and the spares, without those that an infected horse has on."""
    shut = {g for w in question.wearers if w.horse.infected and w is not wearer for g in w.wears or ()}
    name = wearer.horse.name
    return [p for p in question.pieces if p.garment.horse in (None, name) and p.garment.id not in shut]


def _cases(question: Question, window: int, drafts: Sequence["Draft"], stays: Sequence[Stay]) -> Cases:
    """Every case of one window; each draft is given the indices of its own."""
    dressed: list[Dressed] = []
    hair: list[tuple[Floats, Floats]] = []
    for draft in drafts:
        draft.cases.append(_list_cases(draft, window, stays.index(draft.wearer.stays[window]), dressed, hair))
    every = as_felt(cases(dressed, question.site, question.day_of_year), _each(drafts, "offset"))
    if window == 0:
        return every
    brought = np.array(hair).reshape(len(every), 4).T * every.soaking.depth
    return replace(every, soaking=replace(every.soaking, hair=brought))


def _each(drafts: Sequence["Draft"], name: str) -> Floats:
    """A number of the horse for each case of the window that was opened last."""
    counts = [int(d.cases[-1].max() - d.cases[-1].min()) + 1 for d in drafts]
    return np.repeat([float(getattr(d, name)) for d in drafts], counts)


def _list_cases(
    draft: Draft, window: int, place: int, dressed: list[Dressed], hair: list[tuple[Floats, Floats]]
) -> Indices:
    """Append this horse's cases; shape (came in DRY or WET, outfit). Outfits that feel alike share a case."""
    wearer, rows = draft.wearer, []
    wet = window > 0 and bool(draft.water.max() > NOTICED_WATER)
    for came in (DRY, WET) if wet else (DRY,):
        known: dict[tuple[object, ...], int] = {}
        row = []
        for outfit in draft.outfits[window]:
            worn = outfit.pieces if window == 0 else tuple(replace(p, water="dry") for p in outfit.pieces)
            feel = tuple(_feel(piece) for piece in worn)
            if feel not in known:
                known[feel] = len(dressed)
                dressed.append(Dressed(wearer.horse, worn, place, wearer.wet_hair and window == 0))
                hair.append(_hair(draft.water, came, bare=not worn))
            row.append(known[feel])
        rows.append(row)
    return np.array(rows if wet else rows * 2, dtype=np.int_)


def _feel(piece: Piece) -> tuple[object, ...]:
    g = piece.garment
    return (g.kind, g.fill_g, g.waterproof, g.neck, piece.leaks, piece.water)


def _hair(water: Floats, came: int, *, bare: bool) -> tuple[Floats, Floats]:
    """Water [share of volume] in hair that clothes will cover, and in open hair, at the window's beginning."""
    under = water if came == WET else 0 * water
    if came == DRY and bare:
        return under, WET_SHARE * water
    return under, water


def as_felt(every: Cases, offset: Floats) -> Cases:
    """A horse that feels the cold by so much more stands as if its core were that much farther from the air."""
    return replace(every, bodies=replace(every.bodies, core=every.bodies.core + offset))


def _slice(air: Air, hours: Indices) -> Air:
    return Air(*(getattr(air, name)[:, :, hours] for name in Air.__dataclass_fields__))


def _summary(question: Question, window: int, drafts: Sequence["Draft"], every: Cases, margins: Margins) -> Stand:
    hours = np.flatnonzero(question.share[window] > 0)
    share, weight = question.share[window][hours], scenarios(question.hours, question.site).weight
    eased = margins.cold + margins.tolerance
    cost = discomfort(
        eased,
        margins.heat,
        _wet(every, margins, eased),
        weights=weight,
        share=share[None, :],
        sd=_each(drafts, "spread"),
        costs=question.costs,
    )
    return Stand(
        hours=hours,
        share=share,
        weight=weight,
        cold=margins.cold[:, 0].copy(),
        heat=margins.heat[:, 0].copy(),
        tolerance=margins.tolerance[:, 0].copy(),
        extra=margins.extra[:, 0].copy(),
        hay=extra_hay_kg(every, np.ones(len(every))),
        fill_low=margins.fill_low[:, 0].copy(),
        fill_high=margins.fill_high[:, 0].copy(),
        worst_cold=np.fmin.reduce(eased, axis=2, initial=np.nan),
        worst_heat=np.fmin.reduce(margins.heat, axis=2, initial=np.nan),
        discomfort=cost[:, 0],
    )


def _wet(every: Cases, margins: Margins, eased: Floats) -> Floats:
    """1 where hair over the back is wet and the horse near to being cold; axes (case, scenario, hour)."""
    under = margins.water.hair[0] / every.soaking.depth[0][:, None, None]
    hair = np.where(every.clothed[:, None, None] > 0, under, margins.hair)
    return ((hair > p.COAT_SEEN_WET) & (eased < CHILLY_K)).astype(np.float64)


# --- from outfit to outfit


def _steps(draft: Draft, question: Question, views: Sequence[Outlook]) -> Steps:
    """The edges of this horse's way: discomfort of the window, and what it takes to get there."""
    edges = [_first(draft, question, views[0])] if views else []
    edges += [_later(draft, window, question, views) for window in range(1, len(views))]
    return Steps(tuple(edges), tuple(tuple(o.spares for o in outfits) for outfits in draft.outfits))


def _stay_cost(draft: Draft, window: int, question: Question, view: Outlook) -> Floats:
    """What standing the window costs, axes (came in DRY or WET, outfit)."""
    stand, wearer = draft.stands[window], draft.wearer
    outfits, index = draft.outfits[window], draft.cases[window]
    hours = float(np.sum(stand.share[~np.isnan(stand.cold[index[DRY, 0]])]))
    place = wearer.stays[window].place
    wishes = [wish.price(wearer, o, view, place, question.costs, hours) for o in outfits]
    clothing = [question.costs.rug * hours * bool(o.pieces) + LAYER * len(o.pieces) + GRAM * o.fill_g for o in outfits]
    told = wearer.told[window] if window < len(wearer.told) else None
    retold = [question.costs.retell * (told is not None and set(o.ids) != set(told)) for o in outfits]
    cost = stand.discomfort[index] + np.array(wishes) + np.array(clothing) + np.array(retold)
    cost[:, 0] += FORBIDDEN * (wearer.vet_clothes or (wearer.must_clothe and _helps(stand, index[DRY])))
    if not hours:
        before = _fill_worn(draft, question)
        cost += STRANGE * np.array([abs(o.fill_g - before) for o in outfits])
    return np.asarray(cost)


def _helps(stand: Stand, index: Indices) -> bool:
    """Whether some clothes would make this horse warmer than bare without making it sweat."""
    cold, heat = stand.worst_cold[index, 0], stand.worst_heat[index, 0]
    return bool(np.any((cold[1:] > cold[0]) & (heat[1:] >= 0)))


def _fill_worn(draft: Draft, question: Question) -> float:
    worn = draft.wearer.wears or ()
    return sum(p.garment.fill_g for p in question.pieces if p.garment.id in worn)


def _first(draft: Draft, question: Question, view: Outlook) -> Floats:
    wears = draft.wearer.wears
    outfits = draft.outfits[0]
    change = [question.costs.change * (wears is not None and set(o.ids) != set(wears)) for o in outfits]
    borrow = [question.costs.borrow * len(o.spares - set(wears or ())) for o in outfits]
    cost = _stay_cost(draft, 0, question, view)[DRY] + np.array(change) + np.array(borrow)
    return np.asarray(cost[None, :])


def _later(draft: Draft, window: int, question: Question, views: Sequence[Outlook]) -> Floats:
    before, now = draft.outfits[window - 1], draft.outfits[window]
    came = np.array([comes_in(o) for o in before])
    cost = _stay_cost(draft, window, question, views[window])[came]
    names = {o.ids: i for i, o in enumerate(before)}
    same = np.array([names.get(o.ids, -1) for o in now])[None, :] == np.arange(len(before))[:, None]
    cost = cost + question.costs.change * ~same
    spares = sorted({s for o in now for s in o.spares})
    if spares:
        takes, had = _table(now, spares), _table(before, spares)
        cost = cost + question.costs.borrow * ((1 - had) @ takes.T)
    view = views[window - 1]
    if draft.wearer.stays[window - 1].place == "field" and view.rain + view.wet_snow >= SOAKING_MM:
        cost = np.where(_soaked(before, now), np.inf, cost)
    return np.asarray(cost)


def _table(outfits: Sequence[Outfit], spares: Sequence[str]) -> Floats:
    return np.array([[float(s in o.spares) for s in spares] for o in outfits])


def _soaked(before: Sequence[Outfit], now: Sequence[Outfit]) -> Floats:
    """Which outfits would take a piece that has just been rained through."""
    wet = [frozenset(o.ids) if not o.sheds_rain else frozenset() for o in before]
    return np.array([[bool(pieces & set(o.ids)) for o in now] for pieces in wet])
