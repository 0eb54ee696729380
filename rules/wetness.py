"""Wetness: water into hair and cloth and out again, hour by hour; when a garment on the rail is dry.

Axes are (case, scenario, hour); hair has a leading axis of patches: covered hair, covered clipped hair, open
hair, open clipped hair. Water is in kg per square metre of that patch, rates in kg/m2/h.
"""

from dataclasses import dataclass
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from rules import parameters as p
from rules.exchange import Floats, evaporation
from rules.garment import Garment, holds_kg
from rules.question import WaterState
from rules.weather import Air

Indices = NDArray[np.int_]
# Stores of water: four patches of hair, within the cloth, outside its shell.
COVERED, OPEN, CLOTHES = slice(0, 2), slice(2, 4), slice(4, 6)
WITHIN, OUTSIDE, STORES = 4, 5, 6


class Amount(NamedTuple):
    """Water in a garment [kg/m2]: in a film outside its shell, and within."""

    film: float
    within: float


@dataclass(frozen=True)
class Soaking:
    """What can take up water, axes (case,) and (patch, case).

    place: row of the air; depth of hair [mm]; holds, film: most water within the cloth and outside the shell;
    leak: share of rain that comes through; wicking: 1 or 0; exposed: rain on the open hair, of that on a
    bare horse's; hair, within, outside: water at the start.
    """

    place: Indices
    depth: Floats
    holds: Floats
    film: Floats
    leak: Floats
    wicking: Floats
    exposed: Floats
    hair: Floats
    within: Floats
    outside: Floats


@dataclass(frozen=True)
class Water:
    """Water through the hours: hair (patch, case, scenario, hour), the rest (case, scenario, hour).

    hair, within: mean of each hour [kg/m2]; inner, outer: what dries off the cloth at the skin and off
    the outside of the shell [kg/m2/h]. *_end: what is left after the last hour.
    """

    hair: Floats
    within: Floats
    inner: Floats
    outer: Floats
    hair_end: Floats
    within_end: Floats
    outside_end: Floats


def catch(rain: Floats, wind: Floats) -> Floats:
    """Water that bare hair takes from rain [mm/h] in wind [m/s], per square metre of it [kg/m2/h].

    Drizzle runs off, steady rain gets in, driven rain most of all; more rain or wind never brings less.
    """
    steady = rain / (rain + p.CATCH_RAIN)
    driven = steady * wind / (wind + p.CATCH_WIND)
    taken = p.CATCH_DRIZZLE + (p.CATCH_STEADY - p.CATCH_DRIZZLE) * steady + (p.CATCH_DRIVEN - p.CATCH_STEADY) * driven
    return np.asarray(p.RAIN_ON_BODY * taken * rain)


def per_hour(heat: float | Floats) -> Floats:
    """Water that heat [W/m2] turns to vapour [kg/m2/h]."""
    return np.asarray(heat * 3600 / p.LATENT_HEAT)


def follow(soaking: Soaking, air: Air, sweat: Floats, step_h: float = 1.0) -> Water:
    """Water in hair and cloth over all hours and all cases at once.

    sweat [kg/m2/h] comes from inside, shape (case, scenario, hour). An hour that the forecast does not know
    brings no rain and blows nothing dry. Within a step every rate is constant, so the step is exact.
    """
    rates, sweated = _Rates.of(soaking, air), np.ascontiguousarray(np.moveaxis(np.nan_to_num(sweat), 2, 0))
    most = np.concatenate((p.COAT_MOST_WATER * soaking.depth, soaking.holds[None], soaking.film[None]))[:, :, None]
    start = np.concatenate((soaking.hair, soaking.within[None], soaking.outside[None]))[:, :, None]
    level = np.repeat(start, sweat.shape[1], axis=2)
    means, dried = np.empty((len(sweated), *level.shape)), np.empty((len(sweated), 2, *level.shape[1:]))
    for hour, sweat_now in enumerate(sweated):
        comes, goes = rates.comes(hour, sweat_now), rates.goes(hour)
        free = level + (comes - goes) * step_h  # what would be left, were there no bottom and no brim
        over = np.maximum(free[CLOTHES] - most[CLOTHES], 0.0)
        free[COVERED] += over[0]  # soaked cloth drips into the hair below
        end = np.minimum(np.maximum(free, 0.0), most)
        means[hour] = _mean(level, end, free)
        dried[hour] = comes[CLOTHES] + (level[CLOTHES] - end[CLOTHES] - over) / step_h
        level = end
    return Water(
        hair=_by_case(means[:, :WITHIN]),
        within=_by_case(means[:, WITHIN]),
        inner=_by_case(dried[:, 0]),
        outer=_by_case(dried[:, 1]),
        hair_end=level[:WITHIN],
        within_end=level[WITHIN],
        outside_end=level[OUTSIDE],
    )


@dataclass(frozen=True)
class _Rates:
    """What weather brings to each store of water and takes from it, axes (hour, place, scenario) [kg/m2/h].

    Hair that is being rained on does not dry meanwhile, so more wind in the rain never leaves it drier.
    """

    soaking: Soaking
    on_hair: Floats
    on_cloth: Floats
    off_hair: Floats
    off_cloth: Floats

    @classmethod
    def of(cls, soaking: Soaking, air: Air) -> "_Rates":
        rain, melted = _by_hour(air.rain), p.RAIN_ON_BODY * p.DRY_SNOW_WETS * _by_hour(air.snow)
        warmed = evaporation(air.temperature, air.humidity, air.wind, heat=float(p.HAIR_DRYING_HEAT))
        return cls(
            soaking,
            on_hair=catch(rain, _by_hour(air.wind)) + melted,
            on_cloth=p.RAIN_ON_BODY * rain + melted,
            off_hair=np.where(rain > p.RAIN_TRACE, 0.0, _by_hour(warmed)),
            off_cloth=_by_hour(evaporation(air.temperature, air.humidity, air.wind)),
        )

    def comes(self, hour: int, sweat: Floats) -> Floats:
        """Rain from outside and sweat from inside, (store, case, scenario)."""
        soaking, on_cloth = self.soaking, self.on_cloth[hour][self.soaking.place]
        sweat = sweat * (soaking.holds > 0)[:, None]  # a bare horse's dries at once
        comes = np.empty((STORES, *sweat.shape))
        comes[COVERED] = p.SWEAT_INTO_HAIR * sweat
        comes[OPEN] = self.on_hair[hour][soaking.place] * soaking.exposed[:, None]
        comes[WITHIN] = soaking.leak[:, None] * on_cloth + (1 - p.SWEAT_INTO_HAIR) * sweat
        comes[OUTSIDE] = on_cloth
        return comes

    def goes(self, hour: int) -> Floats:
        """What air and the horse's warmth can dry, (store, case, scenario)."""
        off_cloth = self.off_cloth[hour][self.soaking.place]
        goes = np.empty((STORES, *off_cloth.shape))
        under = np.where(self.soaking.wicking > 0, float(p.COOLER_DRYING_HEAT), float(p.COVERED_DRYING_HEAT))
        goes[COVERED] = per_hour(under)[:, None]
        goes[OPEN] = self.off_hair[hour][self.soaking.place]
        goes[WITHIN] = per_hour(p.CLOTH_DRYING_HEAT)
        goes[OUTSIDE] = off_cloth
        return goes


def _mean(start: Floats, end: Floats, free: Floats) -> Floats:
    """Mean of a store over a step: straight until it is empty or full, level from then on."""
    moved, would_move = end - start, free - start
    would_move[would_move == 0] = 1.0
    return np.asarray(end - moved * moved / (2 * would_move))


def _by_hour(field: Floats) -> Floats:
    """(place, scenario, hour) as (hour, place, scenario); nothing where nobody knows."""
    return np.nan_to_num(np.moveaxis(field, -1, 0))


def _by_case(field: Floats) -> Floats:
    """(hour, …, case, scenario) as (…, case, scenario, hour)."""
    return np.ascontiguousarray(np.moveaxis(field, 0, -1))


def amount(garment: Garment, water: WaterState, *, leaks: bool = False) -> Amount:
    """Water in a garment reported as dry, damp, wet or soaked [kg/m2].

    A sound waterproof piece that is damp or wet is so outside its shell; soaked means wet through. Anything
    else holds its water within.
    """
    if water == "dry":
        return Amount(0.0, 0.0)
    if garment.waterproof and not leaks and water != "soaked":
        return Amount(p.SHELL_FILM * (p.WET if water == "damp" else 1.0), 0.0)
    share = {"damp": float(p.DAMP), "wet": float(p.WET), "soaked": 1.0}[water]
    return Amount(float(p.SHELL_FILM) if garment.waterproof else 0.0, share * holds_kg(garment))


def dry_after_h(
    garment: Garment, water: WaterState, temperature: Floats, humidity: Floats, air_ms: Floats, *, leaks: bool = False
) -> float:
    """Hours until a garment hung on a rail is dry: 0 if it is, inf if not within the hours given.

    temperature [°C], humidity [%] and air_ms [m/s] of the air at the rail, shape (hour,). The rate is the
    constant one of wet cloth in moving air; hours not known dry nothing.
    """
    held = sum(amount(garment, water, leaks=leaks)) - p.DRY_ENOUGH * holds_kg(garment)
    if held <= 0:
        return 0.0
    dried = np.cumsum(np.nan_to_num(evaporation(temperature, humidity, air_ms)))
    hour = int(np.searchsorted(dried, held))
    if hour == len(dried):
        return float("inf")
    before = dried[hour - 1] if hour else 0.0
    return float(hour + (held - before) / (dried[hour] - before))
