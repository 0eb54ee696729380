"""Outlook: what the weather of one window brings, in the few numbers that reasons and cautions speak of."""

from dataclasses import dataclass

import numpy as np

from rules.question import Question
from rules.weather import Floats

WET_SNOW_FROM_C = -2.0  # colder snow is shaken off a coat
CLEAR_CLOUD_PCT = 30.0  # less is a clear sky


@dataclass(frozen=True)
class Peak:
    """A greatest or least value and the hour it falls in."""

    value: float
    hour: int


@dataclass(frozen=True)
class Outlook:
    """One window at the site. None where the forecast says nothing of it.

    coldest, warmest [°C]; gust: strongest at 10 m, the mean wind where gusts are not told [m/s]; rain, wet_snow: sums
    [mm]; chance: the greatest hourly chance of rain [%]; clear_night: the coldest clear dark hour [°C].
    """

    hours: tuple[int, ...]
    coldest: Peak | None
    warmest: Peak | None
    gust: Peak | None
    wettest: Peak | None
    rain: float
    wet_snow: float
    chance: Peak | None
    clear_night: Peak | None


def outlooks(question: Question) -> list[Outlook]:
    """One for each window of the question."""
    return [_outlook(question, share) for share in question.share]


def _outlook(question: Question, share: Floats) -> Outlook:
    sky = question.hours
    inside = share > 0
    gust = np.fmax(sky.gust_ms, sky.wind_ms)
    wet_snow = np.where(sky.temperature_c > WET_SNOW_FROM_C, sky.snow_mm, 0.0)
    dark_and_clear = inside & (sky.solar_wm2 < 1) & (sky.cloud_pct < CLEAR_CLOUD_PCT)
    return Outlook(
        hours=tuple(np.flatnonzero(inside).tolist()),
        coldest=_lowest(sky.temperature_c, inside),
        warmest=_highest(sky.temperature_c, inside),
        gust=_highest(gust, inside),
        wettest=_highest(sky.rain_mm + wet_snow, inside),
        rain=float(np.nansum(sky.rain_mm * share)),
        wet_snow=float(np.nansum(wet_snow * share)),
        chance=_highest(sky.rain_probability_pct, inside),
        clear_night=_lowest(sky.temperature_c, dark_and_clear),
    )


def _lowest(values: Floats, inside: "np.ndarray[tuple[int], np.dtype[np.bool_]]") -> Peak | None:
    found = _highest(-values, inside)
    return None if found is None else Peak(-found.value, found.hour)


def _highest(values: Floats, inside: "np.ndarray[tuple[int], np.dtype[np.bool_]]") -> Peak | None:
    known = inside & ~np.isnan(values)
    if not known.any():
        return None
    hour = int(np.argmax(np.where(known, values, -np.inf)))
    return Peak(float(values[hour]), hour)
