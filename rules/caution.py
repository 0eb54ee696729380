"""Caution: what is unsafe or needs hands, as reasons with numbers, and which horses want a hand under the rug.

The model is calibrated, not validated: where its margin is thin or the horse is not yet known, somebody looks.
All thresholds are common practice or plain prudence, no source.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from rules.decision import MATERIAL_K, Decision
from rules.outfit import STRAP_GUST_MS
from rules.outlook import Peak
from rules.reason import Code, Reason, Unit

CHANCE = 0.25  # of being cold, or hot, that calls for a hand: more than the harshest scenario alone (one in six)
UNSURE_K = 3.6  # spread of what is known of a horse from which the model is called unsure: a pony, not a clip
THIN_K = 3.0  # margin within which an unsure model matters
HAY_PCT = 10.0  # extra heat from which more hay is worth fetching
SEVERE_PCT = 40.0  # extra heat at which shivering must be looked for
ICE_C = -2.0  # air at which water freezes over
LAYERS = 3


@dataclass(frozen=True)
class Check:
    """A horse that wants a hand under the rug, and when (hour index)."""

    horse: str
    hour: int
    reason: Reason


def cautions(decision: Decision) -> tuple[Reason, ...]:
    """What to mind with this outfit in this window, the gravest first."""
    return (*_danger(decision), *_wet(decision), *_clothes(decision), *_care(decision))


def check(decision: Decision) -> Check | None:
    """The one look that this horse wants in this window, if any."""
    name, cold, heat = decision.wearer.horse.name, decision.cold, decision.heat
    if cold is None or heat is None:
        return None
    if decision.chance_cold >= CHANCE and decision.chance_cold >= decision.chance_hot:
        return Check(name, cold.hour, _at(Code.HAND_CHECK_COLD, cold))
    if decision.chance_hot >= CHANCE:
        return Check(name, heat.hour, _at(Code.HAND_CHECK_WARM, heat))
    spread = decision.wearer.offset_sd_c
    if spread >= UNSURE_K and min(decision.eased, heat.value) < THIN_K:
        hour = cold.hour if decision.eased <= heat.value else heat.hour
        return Check(name, hour, Reason(Code.HAND_CHECK_UNSURE, hour, spread, Unit.KELVIN))
    return None


def _danger(decision: Decision) -> Iterable[Reason]:
    if decision.cold is not None and decision.eased < -MATERIAL_K:
        yield _at(Code.NOTHING_REACHES, decision.cold)
    if decision.wearer.must_clothe or decision.extra_pct >= SEVERE_PCT:
        yield Reason(Code.VET_IF_SHIVERING)


def _wet(decision: Decision) -> Iterable[Reason]:
    if decision.wet and decision.outfit.pieces:
        yield Reason(Code.DRY_FIRST if decision.window == 0 else Code.WET_COAT)


def _clothes(decision: Decision) -> Iterable[Reason]:
    gust = decision.outlook.gust
    if decision.outfit.outdoor and decision.stay.place == "field" and gust and gust.value >= STRAP_GUST_MS:
        yield Reason(Code.STRAPS_IN_WIND, gust.hour, gust.value, Unit.WIND)
    if len(decision.outfit.body) >= LAYERS:
        yield Reason(Code.SLIPPING_LAYERS, value=float(len(decision.outfit.body)), unit=Unit.COUNT)
    if decision.later_heat is not None and decision.later_heat.value < 0:
        yield _at(Code.TAKE_OFF_AT_ROUND, decision.later_heat)


def _care(decision: Decision) -> Iterable[Reason]:
    if decision.extra_pct >= HAY_PCT:
        yield Reason(Code.MORE_HAY, value=decision.extra_pct, unit=Unit.PERCENT)
    coldest = decision.outlook.coldest
    if coldest is not None and coldest.value <= ICE_C:
        yield Reason(Code.OFFER_WATER, coldest.hour, coldest.value, Unit.CELSIUS)


def _at(code: Code, margin: Peak) -> Reason:
    return Reason(code, margin.hour, margin.value, Unit.KELVIN)
