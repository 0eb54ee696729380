"""Wetness: water into hair and cloth and out again, hour by hour; when a garment on the rail is dry.

Axes are (case, scenario, hour); hair has a leading axis of patches: covered hair, covered clipped hair, open
hair, open clipped hair. Water is in kg per square metre of that patch, rates in kg/m2/h.
"""

from dataclasses import dataclass
from typing import NamedTuple

import numpy as np

from rules import parameters as p
from rules.exchange import Floats, evaporation
from rules.garment import Garment, holds_kg
from rules.question import WaterState
from rules.weather import Air

Indices = np.ndarray[tuple[int], np.dtype[np.int_]]
COVERED, OPEN = slice(0, 2), slice(2, 4)


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


class Step(NamedTuple):
    """One store of water over one step: its mean and end, what dried [per hour], what ran over."""

    mean: Floats
    end: Floats
    dried: Floats
    over: Floats


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


@dataclass(frozen=True)
class _Rates:
    """What each place of the air brings and takes, axes (hour, place, scenario) [kg/m2/h].

    Hair that is being rained on does not dry meanwhile, so more wind in the rain never leaves it drier.
    """

    hair_in: Floats
    hair_out: Floats
    cloth_in: Floats
    film_out: Floats

    @classmethod
    def of(cls, air: Air) -> "_Rates":
        wet = np.nan_to_num(air.rain)
        raining = wet > p.RAIN_TRACE
        hair_out = evaporation(air.temperature, air.humidity, air.wind, heat=float(p.HAIR_DRYING_HEAT))
        film_out = evaporation(air.temperature, air.humidity, air.wind)
        snow = p.RAIN_ON_BODY * p.DRY_SNOW_WETS * np.nan_to_num(air.snow)
        fields = (
            catch(wet, np.nan_to_num(air.wind)) + snow,
            np.where(raining, 0.0, np.nan_to_num(hair_out)),
            p.RAIN_ON_BODY * wet + snow,
            np.nan_to_num(film_out),
        )
        return cls(*(np.ascontiguousarray(np.moveaxis(field, 2, 0)) for field in fields))


def follow(soaking: Soaking, air: Air, sweat: Floats, step_h: float = 1.0) -> Water:
    """Water in hair and cloth over all hours and all cases at once.

    sweat [kg/m2/h] comes from inside, shape (case, scenario, hour). An hour that the forecast does not know
    brings no rain and blows nothing dry. Within a step every rate is constant, so the step is exact.
    """
    rates, place = _Rates.of(air), soaking.place
    cases, ways, hours = sweat.shape
    sweated = np.moveaxis(np.nan_to_num(sweat), 2, 0)
    hair = np.repeat(soaking.hair[:, :, None], ways, axis=2)
    within, outside = (np.repeat(start[:, None], ways, axis=1) for start in (soaking.within, soaking.outside))
    mean_hair, mean_within = np.empty((4, cases, ways, hours)), np.empty((cases, ways, hours))
    inner, outer = np.empty_like(mean_within), np.empty_like(mean_within)
    for hour in range(hours):
        film = _film(soaking, outside, rates.cloth_in[hour][place], rates.film_out[hour][place], step_h)
        cloth = _cloth(soaking, within, rates.cloth_in[hour][place], sweated[hour], step_h)
        under = _under(soaking, hair[COVERED], sweated[hour], cloth.over / step_h, step_h)
        bare = _bare(soaking, hair[OPEN], rates.hair_in[hour][place], rates.hair_out[hour][place], step_h)
        mean_hair[COVERED, :, :, hour], mean_hair[OPEN, :, :, hour] = under.mean, bare.mean
        mean_within[:, :, hour], inner[:, :, hour], outer[:, :, hour] = cloth.mean, cloth.dried, film.dried
        hair, within, outside = np.concatenate((under.end, bare.end)), cloth.end, film.end
    return Water(mean_hair, mean_within, inner, outer, hair, within, outside)


def _film(soaking: Soaking, outside: Floats, rain: Floats, goes: Floats, step_h: float) -> Step:
    """Water outside a shell: rain, blown dry."""
    return _step(outside, rain, goes, soaking.film[:, None], step_h)


def _bare(soaking: Soaking, hair: Floats, rain: Floats, goes: Floats, step_h: float) -> Step:
    """Open hair: rain, dried by air and warmth; what it cannot hold runs off."""
    most = p.COAT_MOST_WATER * soaking.depth[OPEN, :, None]
    return _step(hair, rain * soaking.exposed[:, None], goes, most, step_h)


def _cloth(soaking: Soaking, within: Floats, rain: Floats, sweat: Floats, step_h: float) -> Step:
    """Water within the cloth: through the shell and off the skin; dried by the horse's warmth."""
    worn = soaking.holds[:, None] > 0
    comes = np.where(worn, soaking.leak[:, None] * rain + (1 - p.SWEAT_INTO_HAIR) * sweat, 0.0)
    return _step(within, comes, per_hour(p.CLOTH_DRYING_HEAT), soaking.holds[:, None], step_h)


def _under(soaking: Soaking, hair: Floats, sweat: Floats, dripping: Floats, step_h: float) -> Step:
    """Hair under clothes: wetted by sweat and by what soaked cloth passes on; dried through the cloth."""
    heat = np.where(soaking.wicking > 0, float(p.COOLER_DRYING_HEAT), float(p.COVERED_DRYING_HEAT))
    most = p.COAT_MOST_WATER * soaking.depth[COVERED, :, None]
    comes = np.where(soaking.holds[:, None] > 0, p.SWEAT_INTO_HAIR * sweat + dripping, 0.0)
    return _step(hair, comes, per_hour(heat)[:, None], most, step_h)


def _step(store: Floats, comes: Floats, goes: Floats, most: Floats, step_h: float) -> Step:
    left = store + (comes - goes) * step_h
    end = np.minimum(np.maximum(left, 0.0), most)
    over = np.maximum(left - most, 0.0)
    dried = (store - end - over) / step_h + comes
    # straight until it is empty or full, level from then on
    moved = left - store
    sloping = np.divide(end - store, moved, out=np.ones_like(moved), where=moved != 0)
    return Step(end - sloping * (end - store) / 2, end, dried, over)


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
