"""The one door to the rules: price(question), then choose(prices, question) → Plan."""

from collections.abc import Sequence
from dataclasses import dataclass, field

import numpy as np

from rules.caution import Check as Check
from rules.caution import cautions, check
from rules.day import Way, ways, without
from rules.decision import Decision, decide, worst
from rules.drying import ready_h
from rules.explain import Row, rows
from rules.explain import worn as worn
from rules.missing import Missing as Missing
from rules.missing import missing
from rules.outlook import outlooks
from rules.pricing import Priced, Prices
from rules.pricing import price as price
from rules.question import Question, WaterState
from rules.reason import Code, Reason, Unit
from rules.sharing import settle
from rules.stand import Stand
from rules.weather import Floats
from rules.why import reasons

HEAVIEST_G = 600.0  # of fill: more is not made, so a band ends here


@dataclass(frozen=True)
class Dress:
    """What one horse wears for one window, and why.

    wear: garment ids, skin outward. as_found: no outfit is advised, for nobody said what the horse wears and no hour
    could be judged; wear is empty then. Margins in K at the worst judged hour, offset included, strict balance;
    None where no hour could be judged. fill_band: the fill [g/m²] that keeps both margins non-negative
    through the window, low to high; None where none does or none judged. extra_energy: per cent of
    maintenance; extra_hay: kg a day. unjudged: hour indices no forecast covered. cold_by_hour, heat_by_hour:
    margins [K] for the window's hours, NaN elsewhere, shape (hour,), central scenario. chance_cold, chance_hot: that
    some hour is colder than the horse bears, or too warm, over scenarios and an offset not yet sure.
    """

    wear: tuple[str, ...]
    fill_g: float
    change: bool
    cold_margin_c: float | None
    cold_hour: int | None
    heat_margin_c: float | None
    heat_hour: int | None
    fill_band_g: tuple[float, float] | None
    extra_energy_pct: float
    extra_hay_kg: float
    unjudged: tuple[int, ...]
    cold_by_hour: Floats
    heat_by_hour: Floats
    chance_cold: float = 0.0
    chance_hot: float = 0.0
    as_found: bool = False
    why: tuple[Reason, ...] = ()
    cautions: tuple[Reason, ...] = ()


@dataclass(frozen=True)
class Drying:
    """A garment that is not dry at hour 0. ready_h: hours from hour 0 until dry; None: not within the forecast."""

    garment: str
    water: WaterState
    rail: int | None
    ready_h: float | None


@dataclass(frozen=True)
class Plan:
    """One outfit a horse and window: dresses[horse name] has one Dress a window, in the question's order.

    refused: for each horse, each piece that it is not to wear in the first window, with the reason: why it may not be
    worn, or what its best outfit lacks ("why not the heavy?").
    """

    dresses: dict[str, tuple[Dress, ...]]
    missing: tuple[Missing, ...] = ()
    checks: tuple[Check, ...] = ()
    drying: tuple[Drying, ...] = ()
    refused: dict[str, tuple[Reason, ...]] = field(default_factory=dict)


def plan(question: Question) -> Plan:
    """The plan for all horses of the question."""
    return choose(price(question), question)


def choose(prices: Prices, question: Question) -> Plan:
    """The best sequence of each priced horse, no spare on two; horses left out of `prices` keep what they wear."""
    found = share_out(prices, question)
    views = outlooks(question)
    decisions = {
        name: [decide(priced, w, found[name].path, view) for w, view in enumerate(views)]
        for name, priced in prices.items()
    }
    every = [decision for own in decisions.values() for decision in own]
    return Plan(
        dresses={
            name: tuple(_dress(priced, found[name].path, d) for d in decisions[name]) for name, priced in prices.items()
        },
        missing=missing(question, every),
        checks=tuple(look for d in every if (look := check(d))),
        drying=drying(question),
        refused={name: _refused(priced, found[name].path) for name, priced in prices.items()},
    )


def share_out(prices: Prices, question: Question) -> dict[str, Way]:
    """Each priced horse's way through the windows. Spares on horses that are not priced stay where they are."""
    windows = range(len(question.share))
    worn = (g for w in question.wearers if w.horse.name not in prices for g in w.wears or ())
    taken = frozenset((g, window) for g in worn for window in windows)
    steps = [without(priced.steps, taken) if taken else priced.steps for priced in prices.values()]
    return dict(zip(prices, settle(lambda horse, disputed: ways(steps[horse], disputed), len(steps))))


def drying(question: Question) -> tuple[Drying, ...]:
    """Every garment that is not dry, and when it will be."""
    ready = ready_h(question)
    wet = (piece for piece in question.pieces if piece.garment.id in ready)
    return tuple(Drying(p.garment.id, p.water, p.rail, ready[p.garment.id]) for p in wet)


def explain(question: Question, horse: str) -> list[Row]:
    """The hour table behind the decision for one horse. KeyError where the question has no such horse."""
    prices = price(question)
    return rows(question, prices[horse], share_out(prices, question)[horse].path)


def _dress(priced: Priced, path: Sequence[int], decision: Decision) -> Dress:
    window, stand = decision.window, priced.stands[decision.window]
    case = int(priced.cases[window][priced.came(window, path), path[window]])
    total, cold, heat = priced.total_hours, decision.cold, decision.heat
    return Dress(
        wear=decision.outfit.ids,
        fill_g=decision.outfit.fill_g,
        change=decision.changes,
        cold_margin_c=cold.value if cold else None,
        cold_hour=cold.hour if cold else None,
        heat_margin_c=heat.value if heat else None,
        heat_hour=heat.hour if heat else None,
        fill_band_g=_band(stand, case),
        extra_energy_pct=decision.extra_pct,
        extra_hay_kg=decision.extra_pct * float(stand.hay[case]),
        unjudged=decision.unjudged,
        cold_by_hour=_by_hour(stand, stand.cold[case], total),
        heat_by_hour=_by_hour(stand, stand.heat[case], total),
        chance_cold=decision.chance_cold,
        chance_hot=decision.chance_hot,
        as_found=decision.as_found,
        why=reasons(decision),
        cautions=cautions(decision),
    )


def _band(stand: Stand, case: int) -> tuple[float, float] | None:
    """The fill that keeps both margins through the window [g/m²]; an endless upper end is cut at HEAVIEST_G."""
    known = ~np.isnan(stand.fill_low[case]) & ~np.isnan(stand.fill_high[case])
    if not known.any():
        return None
    low, high = float(stand.fill_low[case][known].max()), float(stand.fill_high[case][known].min())
    if low > min(high, HEAVIEST_G):
        return None
    return low, min(high, HEAVIEST_G)


def _by_hour(stand: Stand, margin: Floats, total: int) -> Floats:
    everywhere = np.full(total, np.nan)
    everywhere[stand.hours] = margin
    return everywhere


def _refused(priced: Priced, path: Sequence[int]) -> tuple[Reason, ...]:
    """Why not the others, in the first window: what may not be worn, and of what may, what its best outfit lacks."""
    if not priced.stands:
        return ()
    outfits, cost = priced.outfits[0], priced.steps.edges[0][0]
    named = {reason.garment for reason in priced.refused[0]} | set(outfits[path[0]].ids)
    found = list(priced.refused[0])
    for at in np.argsort(cost, kind="stable").tolist():
        for garment in outfits[at].ids:
            if garment not in named:
                named.add(garment)
                found.append(_lacks(priced.stands[0], int(priced.cases[0][0, at]), garment))
    return tuple(found)


def _lacks(stand: Stand, case: int, garment: str) -> Reason:
    heat, cold = worst(stand.heat[case], stand), worst(stand.cold[case], stand)
    if heat is not None and heat.value < 0:
        return Reason(Code.TOO_WARM, heat.hour, heat.value, Unit.KELVIN, garment)
    if cold is not None and cold.value < 0:
        return Reason(Code.TOO_COLD, cold.hour, cold.value, Unit.KELVIN, garment)
    return Reason(Code.NOT_WORTH_A_CHANGE, garment=garment)
