"""Coat: how deep the hair stands by date, latitude, kind and clip, and how much of each part is clipped."""

from dataclasses import dataclass
from math import exp2
from typing import NamedTuple

from rules import parameters as p
from rules.horse import CoatClass, Horse
from rules.weather import Site

YEAR = 365.25


class Clipped(NamedTuple):
    """Share of each part that the blades take."""

    body: float
    neck: float
    rest: float


# Geometric estimates from the usual drawings of each clip; no primary source.
CLIPS: dict[str, Clipped] = {
    "none": Clipped(0.0, 0.0, 0.0),
    "bib": Clipped(0.05, 0.35, 0.0),
    "trace": Clipped(0.25, 0.35, 0.05),
    "blanket": Clipped(0.50, 1.0, 0.20),
    "hunter": Clipped(0.93, 1.0, 0.30),
    "full": Clipped(1.0, 1.0, 0.90),
}
WINTER_DEPTH: dict[CoatClass, p.Parameter] = {
    "fine": p.COAT_WINTER_FINE,
    "average": p.COAT_WINTER_AVERAGE,
    "heavy": p.COAT_WINTER_HEAVY,
}


@dataclass(frozen=True, slots=True)
class Coat:
    """The hair of one animal: depth [mm] where it grew and where it was clipped, its hold on wind [s/m]."""

    depth_mm: float
    clipped_mm: float
    clipped: Clipped
    wind: float


def coat(horse: Horse, site: Site, day_of_year: float) -> Coat:
    """The coat on a day of the year (from 1, may run past the year's end) at the site's latitude."""
    day = _northern(site.latitude, day_of_year)
    grown = depth_mm(horse, abs(site.latitude), day)
    cut = CLIPS[horse.clip] if horse.clip_age_days is not None else CLIPS["none"]
    regrown = p.COAT_CLIPPED + site.regrowth * regrowth_mm(day, horse.clip_age_days or 0.0)
    dense = horse.coat == "heavy" and horse.species != "donkey"
    return Coat(grown, min(grown, regrown), cut, float(p.COAT_DENSE_WIND if dense else p.COAT_WIND))


def _northern(latitude: float, day_of_year: float) -> float:
    """The day of a northern year that is as far into its winter as this one is here; may run past the year's end."""
    return day_of_year if latitude >= 0 else day_of_year + YEAR / 2


def winter(latitude: float, day_of_year: float) -> float:
    """How much of a full winter the coats here stand in, 0 to 1, on a day of the year, north or south."""
    return _seasons(latitude) * winter_share(_northern(latitude, day_of_year))


def _seasons(latitude: float) -> float:
    """How far apart summer and winter are for a coat, 0 at the equator, near 1 where winters are dark."""
    return 1 - exp2(-((latitude / p.COAT_LATITUDE) ** 2))


def depth_mm(horse: Horse, latitude: float, day: float) -> float:
    """Depth of the unclipped coat [mm] by degrees from the equator and day of a northern year.

    Grows from mid August to the winter solstice, holds, and is shed from mid February to mid May. Donkeys
    grow no winter coat (Osthaus et al. 2018).
    """
    if horse.species == "donkey":
        return float(p.COAT_DONKEY)
    most = WINTER_DEPTH[horse.coat] - p.COAT_SUMMER
    return p.COAT_SUMMER + most * _seasons(latitude) * winter_share(day)


def winter_share(day: float) -> float:
    """How much of the winter coat stands, 0 to 1, on a day of a northern year."""
    of_year = (day - 1) % YEAR + 1
    if of_year < p.COAT_SHEDS_FROM or of_year >= p.COAT_FULL_FROM:
        return 1.0
    if of_year < p.COAT_SHED_BY:
        return float((p.COAT_SHED_BY - of_year) / (p.COAT_SHED_BY - p.COAT_SHEDS_FROM))
    return max(0.0, (of_year - p.COAT_GROWS_FROM) / (p.COAT_FULL_FROM - p.COAT_GROWS_FROM))


def regrowth_mm(day: float, age_days: float) -> float:
    """Hair grown back [mm] on a day of a northern year after a clip so many days ago; a year at most."""
    grown, left, at = 0.0, min(max(age_days, 0.0), YEAR), day
    while left > 0:
        rate, since = _season(at)
        step = min(left, since)
        grown, left, at = grown + rate * step, left - step, at - step
    return grown


def _season(day: float) -> tuple[float, float]:
    """Growth [mm/d] just before this day, and for how many days back it has held."""
    of_year = (day - 1) % YEAR
    starts = (
        (p.COAT_FULL_FROM - 1, p.REGROWTH_WINTER),
        (p.COAT_GROWS_FROM - 1, p.REGROWTH_AUTUMN),
        (p.COAT_SHEDS_FROM - 1, p.REGROWTH_SUMMER),
    )
    for start, rate in starts:
        if of_year > start:
            return float(rate), of_year - start
    return float(p.REGROWTH_WINTER), of_year + YEAR - (p.COAT_FULL_FROM - 1)
