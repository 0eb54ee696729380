"""A climate chamber for tests: one horse, steady weather, and what the balance says of the last hour."""

from dataclasses import replace

import numpy as np

from rules.dressed import Cases, Dressed, cases
from rules.garment import Garment
from rules.heat import Margins, balance
from rules.horse import Horse
from rules.parameters import WIND_OPEN
from rules.question import Piece, Stay, WaterState
from rules.weather import Air, Exposure, Hours, Site, at_horse, scenarios

JANUARY, JULY = 15, 196  # days of the year
FIELD = Stay("field")
SOLSTICE_NIGHT = 1_766_293_200  # 2025-12-21 05:00 UTC, midnight in Vermont
HORSE = Horse("Maple")
SHEET = Garment("sheet", "sheet", waterproof=True)


def turnout(fill_g: float, neck: str = "none") -> Garment:
    """A waterproof turnout of so much fill."""
    return Garment(f"turnout {fill_g:g} {neck}", "turnout", fill_g, waterproof=True, neck=neck)  # type: ignore[arg-type]


def pieces(*garments: Garment, water: WaterState = "dry") -> tuple[Piece, ...]:
    """Garments as worn from the skin outward."""
    return tuple(Piece(garment, water) for garment in garments)


def site(latitude: float = 44.5, exposure: Exposure = "open") -> Site:
    """A barn in Vermont, or at another latitude."""
    return Site(latitude, -72.3, 500, exposure)


def hours(
    temperature: float = 0.0,
    wind: float = 0.0,
    *,
    rain: float = 0.0,
    snow: float = 0.0,
    humidity: float = 85.0,
    cloud: float = 100.0,
    sun: float = 0.0,
    count: int = 6,
) -> Hours:
    """Steady weather: wind [m/s] as it is at the horse's height on an open site, rain and snow [mm/h] certain."""
    one = np.ones(count)
    at_ten_metres = wind / WIND_OPEN * one
    sure = (100.0 if rain + snow > 0 else 0.0) * one
    return Hours(
        SOLSTICE_NIGHT,
        temperature * one,
        humidity * one,
        at_ten_metres,
        at_ten_metres,
        rain * one,
        snow * one,
        cloud * one,
        sun * one,
        sure,
    )


def air(weather: Hours, *stays: Stay, where: Site | None = None) -> Air:
    """What reaches a horse of it."""
    place = where or site()
    return at_horse(scenarios(weather, place), weather, place, stays or (FIELD,))


def case(horse: Horse = HORSE, *garments: Garment, day: float = JANUARY, where: Site | None = None) -> Cases:
    """One horse in dry clothes."""
    return cases([Dressed(horse, pieces(*garments))], where or site(), day)


def soaked(one: Cases, share: float) -> Cases:
    """The same with hair that holds water, as a share of its volume."""
    return replace(one, soaking=replace(one.soaking, hair=share * one.soaking.depth))


def margins(
    horse: Horse = HORSE, *garments: Garment, day: float = JANUARY, stay: Stay = FIELD, **weather: float
) -> Margins:
    """The balance of one horse in steady weather."""
    return balance(case(horse, *garments, day=day), air(hours(**weather), stay))  # type: ignore[arg-type]


def last(values: np.ndarray) -> float:
    """The last hour of the central scenario."""
    return float(values[0, 0, -1])


def cold(horse: Horse = HORSE, *garments: Garment, **conditions: float) -> float:
    """Cold margin [K] at the end of steady weather."""
    return last(margins(horse, *garments, **conditions).cold)  # type: ignore[arg-type]


def heat(horse: Horse = HORSE, *garments: Garment, **conditions: float) -> float:
    """Heat margin [K] at the end of steady weather."""
    return last(margins(horse, *garments, **conditions).heat)  # type: ignore[arg-type]
