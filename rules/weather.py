"""Hours: a forecast as arrays on an hourly grid, and what reaches the horse of it."""

from collections.abc import Sequence
from dataclasses import dataclass, fields
from typing import Literal, Protocol

import numpy as np
from numpy.typing import NDArray

from rules import parameters as p
from rules.exchange import KELVIN
from rules.exchange import Floats as Floats
from rules.sun import elevation, likely_solar

Exposure = Literal["ridge", "open", "sheltered"]
HOURS_A_DAY = 24.0


@dataclass(frozen=True)
class Site:
    """Where the barn stands. latitude, longitude in degrees (north and east positive); elevation in m.

    What the barn has learned of it: wind_factor: how much harder than the forecast's the wind blows here, beside
    `exposure`; stall_warmer_c: how much warmer a stall is than usual [K]; regrowth: times as fast as usual clipped
    coats grow back.
    """

    latitude: float
    longitude: float
    elevation_m: float
    exposure: Exposure
    wind_factor: float = 1.0
    stall_warmer_c: float = 0.0
    regrowth: float = 1.0


@dataclass(frozen=True)
class Hours:
    """A forecast on a gapless hourly grid; every array has shape (hour,); NaN is 'not known'.

    start_s: POSIX seconds (UTC) of the first hour, a whole hour. Hour k is [start + k h, start + (k+1) h).
    temperature, humidity, wind and cloud are instants at the hour's beginning; gust is the hour's greatest;
    rain and snow (water equivalent) are the hour's sums in mm; solar is the hour's mean in W/m²;
    wind and gust in m/s at 10 m. rain_probability_pct: chance of more than 0.1 mm in the hour.
    spread_c, spread_wind: standard deviation of temperature [K] and of log wind by hour, from a provider's
    own ensemble; None where the provider has none (the rules then take theirs by lead time).
    """

    start_s: int
    temperature_c: Floats
    humidity_pct: Floats
    wind_ms: Floats
    gust_ms: Floats
    rain_mm: Floats
    snow_mm: Floats
    cloud_pct: Floats
    solar_wm2: Floats
    rain_probability_pct: Floats
    spread_c: Floats | None = None
    spread_wind: Floats | None = None

    def __len__(self) -> int:
        return len(self.temperature_c)


class Whereabouts(Protocol):
    """Where a horse is kept: place "field" or "stall", shelter "none", "trees" or "shed", hay "outside" …"""

    @property
    def place(self) -> str:
        """In the field or in a stall."""

    @property
    def shelter(self) -> str:
        """What stands in the field: none, trees or a shed."""

    @property
    def hay(self) -> str:
        """Where it eats: outside, in shelter, or none."""

    @property
    def feeding_h(self) -> float:
        """Hours of the day for which its hay lasts."""


@dataclass(frozen=True)
class Scenarios:
    """Ways the forecast may come out: weight (scenario,) sums to 1; the rest (scenario, hour); central first.

    temperature [°C]; wind and gust at 10 m [m/s]; rain and snow [mm in the hour].
    """

    weight: Floats
    temperature: Floats
    wind: Floats
    gust: Floats
    rain: Floats
    snow: Floats


@dataclass(frozen=True)
class Air:
    """What reaches a horse, axes (place, scenario, hour); NaN where the forecast does not say.

    temperature [°C], humidity [%], wind at horse height [m/s]; rain: liquid water [mm/h], melted wet snow
    included; snow: dry snow [mm/h]; sun: on a square metre of skin, before colour, and sky: lost to a clear
    sky from the part of the skin that sees it [W/m2].
    """

    temperature: Floats
    humidity: Floats
    wind: Floats
    rain: Floats
    snow: Floats
    sun: Floats
    sky: Floats


Z = np.sqrt(3.0)  # three-point Gauss-Hermite: exact for moments to the fifth
HARSHNESS = ((0.0, 2 / 3), (1.0, 1 / 6), (-1.0, 1 / 6))


def scenarios(hours: Hours, site: Site) -> Scenarios:
    """A small exact set: rain comes or not, by as forecast, harsher (colder, windier), milder.

    Spreads are the provider's own where it has them, else by lead time. Three scenarios where no hour's rain
    is in doubt, else six.
    """
    lead = np.arange(len(hours), dtype=np.float64)
    cold = _or_else(hours.spread_c, p.SPREAD_NOW + p.SPREAD_PER_HOUR * lead)
    gale = _or_else(hours.spread_wind, p.SPREAD_WIND_NOW + p.SPREAD_WIND_PER_HOUR * lead)
    rows = [
        (share * weight, hours.temperature_c - side * Z * cold, np.exp(side * Z * gale), falls)
        for share, falls in _rain_worlds(hours)
        for side, weight in HARSHNESS
    ]
    factor = np.stack([row[2] for row in rows])
    falls = np.stack([row[3] for row in rows])
    return Scenarios(
        weight=np.array([row[0] for row in rows]),
        temperature=np.stack([row[1] for row in rows]),
        wind=hours.wind_ms * factor,
        gust=hours.gust_ms * factor,
        rain=falls * (hours.rain_mm + np.where(hours.temperature_c > p.WET_SNOW_ALL, _little(hours), 0.0)),
        snow=falls * (hours.snow_mm + np.where(hours.temperature_c > p.WET_SNOW_ALL, 0.0, _little(hours))),
    )


def _or_else(given: Floats | None, usual: Floats) -> Floats:
    return usual if given is None else np.where(np.isnan(given), usual, given)


def _rain_worlds(hours: Hours) -> list[tuple[float, Floats]]:
    """(weight, (hour,) 1 where something falls) of the worlds, the likelier first."""
    amount = hours.rain_mm + hours.snow_mm
    told = np.where(amount > p.RAIN_TRACE, 1.0, 0.0)
    given = hours.rain_probability_pct / 100
    contradicts = np.isnan(given) | ((told > 0) & (given < p.RAIN_UNLIKELY))  # then the amount is believed
    chance = np.where(contradicts, told, given)
    doubtful = (chance >= p.RAIN_UNLIKELY) & (chance < p.RAIN_SURE)
    surely = np.where(chance >= p.RAIN_SURE, 1.0, 0.0)
    if not doubtful.any():
        return [(1.0, surely)]
    water = np.maximum(np.nan_to_num(amount[doubtful]), p.RAIN_TRACE)
    comes = float(np.average(chance[doubtful], weights=water))
    worlds = [(comes, np.where(doubtful, 1.0, surely)), (1 - comes, surely)]
    return sorted(worlds, key=lambda world: -world[0])


def _little(hours: Hours) -> Floats:
    """What falls in an hour of which the forecast says that something may, and no amount [mm]."""
    return np.where(hours.rain_mm + hours.snow_mm <= p.RAIN_TRACE, float(p.RAIN_IF_ANY), 0.0)


def at_horse(scenarios: Scenarios, hours: Hours, site: Site, stays: Sequence[Whereabouts]) -> Air:
    """What reaches a horse in each place where it may stay, axes (stay, scenario, hour)."""
    outside = _outside(scenarios, hours, site)
    each = [_within(outside, stay, site) for stay in stays]
    return Air(*(np.stack([getattr(air, f.name) for air in each]) for f in fields(Air)))


def along(air: Air, routine: NDArray[np.int_]) -> Air:
    """The air of horses that move: routine (horse, hour) names the place of `air` it is in, hour by hour."""
    hour = np.arange(routine.shape[1])
    return Air(*(np.moveaxis(getattr(air, f.name)[routine, :, hour], 2, 1).copy() for f in fields(Air)))


def _outside(scenarios: Scenarios, hours: Hours, site: Site) -> Air:
    """The open field at horse height, axes (scenario, hour)."""
    exposure = {"ridge": p.WIND_RIDGE, "open": p.WIND_OPEN, "sheltered": p.WIND_SHELTERED}[site.exposure]
    over = np.maximum(0.0, np.nan_to_num(scenarios.gust - scenarios.wind))
    wet = np.clip((scenarios.temperature - p.WET_SNOW_FROM) / (p.WET_SNOW_ALL - p.WET_SNOW_FROM), 0.0, 1.0)
    cloud = np.where(np.isnan(hours.cloud_pct), float(p.UNKNOWN_CLOUD), hours.cloud_pct / 100)
    times: Floats = hours.start_s + 3600.0 * (np.arange(len(hours), dtype=np.float64) + 0.5)
    likely = likely_solar(elevation(site.latitude, site.longitude, times), cloud)
    solar = np.where(np.isnan(hours.solar_wm2), likely, hours.solar_wm2)
    overcast = np.where(scenarios.rain + scenarios.snow > p.RAIN_TRACE, 1.0, cloud)  # whatever a provider says
    like = np.zeros_like(scenarios.temperature)
    return Air(
        temperature=scenarios.temperature,
        humidity=hours.humidity_pct + like,
        wind=site.wind_factor * exposure * (scenarios.wind + p.GUST_SHARE * over),
        rain=scenarios.rain + wet * scenarios.snow,
        snow=(1 - wet) * scenarios.snow,
        sun=p.SUN_ON_BODY * solar + like,
        sky=p.SKY_ON_BODY * sky_loss(scenarios.temperature, overcast),
    )


def sky_loss(temperature: Floats, cloud: Floats) -> Floats:
    """Net longwave loss of a level surface at air temperature [W/m2] under cloud [0 to 1] (Swinbank 1963)."""
    kelvin = temperature + KELVIN
    clear = p.STEFAN_BOLTZMANN * kelvin**4 - p.SKY_CLEAR * kelvin**6
    return np.asarray(np.maximum(0.0, clear) * (1 - p.SKY_CLOUD * cloud))


def _within(outside: Air, stay: Whereabouts, site: Site) -> Air:
    if stay.place == "stall":
        return _stall(outside, p.STALL_WARMER + site.stall_warmer_c)
    used = 0.0 if stay.shelter == "none" else _time_in_shelter(stay)
    wind, rain, sky = (p.TREES_WIND, p.TREES_RAIN, p.TREES_SKY) if stay.shelter == "trees" else (p.SHED_WIND, 0.0, 0.0)
    return Air(
        temperature=outside.temperature,
        humidity=outside.humidity,
        wind=outside.wind * (1 - used * (1 - wind)),
        rain=outside.rain * (1 - used * (1 - rain)),
        snow=outside.snow * (1 - used * (1 - rain)),
        sun=outside.sun * (1 - used * (1 - sky)),
        sky=outside.sky * (1 - used * (1 - sky)),
    )


def _time_in_shelter(stay: Whereabouts) -> float:
    """Share of the time: where the hay is while it lasts, whatever stands in the field; then as a horse without hay."""
    fed = {"outside": 0.0, "in shelter": float(p.SHELTER_WITH_HAY), "none": float(p.SHELTER_WITHOUT_HAY)}[stay.hay]
    lasts = stay.feeding_h / HOURS_A_DAY
    return lasts * fed + (1 - lasts) * p.SHELTER_WITHOUT_HAY


def _stall(outside: Air, warmer: float) -> Air:
    """Still, dry air, so much warmer than outdoors [K]; unknown where the weather outside is."""
    none = outside.temperature * 0
    return Air(
        temperature=outside.temperature + warmer,
        humidity=outside.humidity,
        wind=none + p.STALL_WIND,
        rain=none,
        snow=none,
        sun=none,
        sky=none,
    )
