"""MET Norway's Locationforecast 2.0: worldwide, NLOD and CC BY 4.0; wants a contact and at most four decimals.

Instants at their time, amounts for the hours that follow; hourly for two and a half days, then by six hours. No sun
and no amount of snow: the symbol says what falls. Gusts, chances and percentiles only in the Nordic countries.
"""

from dataclasses import replace
from itertools import pairwise
from math import log
from typing import Any

from bot.barn import Place
from bot.forecast.answers import Request, Requests, degrees, inner, json_object, rows
from bot.forecast.hours import COLUMNS, HOUR
from bot.forecast.readings import (
    Column,
    Parsed,
    Unreadable,
    gridded,
    instant,
    number,
    on_grid,
    rain_or_snow,
    whole_hour,
)
from rules.weather import Floats, Hours

NAME = "met-norway"
ATTRIBUTION = "Data from MET Norway (api.met.no, CC BY 4.0)"
BASE = "https://api.met.no"
NEEDS_CONTACT = True

INSTANTS = {
    "air_temperature": "temperature_c",
    "relative_humidity": "humidity_pct",
    "wind_speed": "wind_ms",
    "wind_speed_of_gust": "gust_ms",
    "cloud_area_fraction": "cloud_pct",
}
PERIODS = (("next_1_hours", 1), ("next_6_hours", 6))
LONGEST_STEP = 6 * HOUR
P10_TO_P90 = 2 * 1.2816  # standard deviations between these percentiles of a normal distribution
CALM_MS = 0.5  # below it the ratio of two winds means nothing

Steps = list[tuple[int, dict[str, Any]]]


def ask(place: Place, contact: str | None) -> Requests:
    """One request."""
    query = {"lat": degrees(place.latitude), "lon": degrees(place.longitude)}
    if place.elevation_m:
        query["altitude"] = f"{place.elevation_m:.0f}"
    yield Request("/weatherapi/locationforecast/2.0/complete", query)


def recognises(found: dict[str, Any]) -> bool:
    """Whether this object has the shape of an answer."""
    return "timeseries" in inner(found, "properties")


def parse(body: bytes) -> Parsed:
    """The hours of an answer. Unreadable where it is none."""
    properties = inner(json_object(body), "properties")
    steps = [
        (at, inner(step, "data")) for step in rows(properties.get("timeseries")) if (at := _time(step)) is not None
    ]
    if not steps:
        raise Unreadable("it has no time series")
    readings: dict[str, Column] = {name: {} for name in COLUMNS}
    for theirs, ours in INSTANTS.items():
        readings[ours] = _between([(at, number(inner(data, "instant", "details").get(theirs))) for at, data in steps])
    total, kinds, chance = _periods(steps)
    readings["rain_mm"], readings["snow_mm"] = _parted(total, kinds, readings["temperature_c"])
    readings["rain_probability_pct"] = chance
    end = max(total, default=0)  # what falls is not told beyond
    readings["temperature_c"] = {at: t for at, t in readings["temperature_c"].items() if at <= end}
    hours, notes = gridded(readings)
    hours = replace(hours, spread_c=_spread_c(steps, hours), spread_wind=_spread_wind(steps, hours))
    return Parsed(hours, notes, instant(inner(properties, "meta").get("updated_at")))


def _time(step: Any) -> int | None:
    at = instant(step.get("time")) if isinstance(step, dict) else None
    return None if at is None else whole_hour(at)


def _between(points: list[tuple[int, float | None]]) -> Column:
    """Every hour from step to step; straight between two that are up to six hours apart."""
    column: Column = dict(points)
    for (begin, first), (end, last) in pairwise(points):
        if first is not None and last is not None and HOUR < end - begin <= LONGEST_STEP:
            for at in range(begin + HOUR, end, HOUR):
                column[at] = first + (last - first) * (at - begin) / (end - begin)
    return column


def _spread_c(steps: Steps, hours: Hours) -> Floats | None:
    air = _percentiles(steps, "air_temperature")
    return on_grid({at: max(0.0, high - low) / P10_TO_P90 for at, (low, high) in air.items()}, hours)


def _spread_wind(steps: Steps, hours: Hours) -> Floats | None:
    wind = _percentiles(steps, "wind_speed")
    ratios = {at: max(high, CALM_MS) / max(low, CALM_MS) for at, (low, high) in wind.items()}
    return on_grid({at: log(max(1.0, ratio)) / P10_TO_P90 for at, ratio in ratios.items()}, hours)


def _percentiles(steps: Steps, name: str) -> dict[int, tuple[float, float]]:
    """The ensemble's 10th and 90th percentile by hour, where the answer has them."""
    found = {}
    for at, data in steps:
        details = inner(data, "instant", "details")
        low, high = number(details.get(f"{name}_percentile_10")), number(details.get(f"{name}_percentile_90"))
        if low is not None and high is not None:
            found[at] = low, high
    return found


def _periods(steps: Steps) -> tuple[Column, dict[int, str], Column]:
    """What falls, what it is and its chance, by hour: an hour's own value before a share of six hours'."""
    total: Column = {}
    kinds: dict[int, str] = {}
    chance: Column = {}
    for at, data in steps:
        period, length = next(((p, n) for p, n in PERIODS if inner(data, p)), ("", 0))
        details = inner(data, period, "details")
        amount = number(details.get("precipitation_amount"))
        for hour in range(at, at + length * HOUR, HOUR):
            if hour not in total or length == 1:
                total[hour] = None if amount is None else amount / length
                kinds[hour] = str(inner(data, period, "summary").get("symbol_code", ""))
                chance[hour] = number(details.get("probability_of_precipitation"))
    return total, kinds, chance


def _parted(total: Column, kinds: dict[int, str], temperature: Column) -> tuple[Column, Column]:
    """(rain, snow): by the symbol, and by the air where it names neither."""
    rain, snow = rain_or_snow(total, temperature)
    for at, kind in kinds.items():
        value = total[at]
        part = 1.0 if "snow" in kind else 0.5 if "sleet" in kind else 0.0 if "rain" in kind else None
        if part is not None and value is not None:
            rain[at], snow[at] = value * (1 - part), value * part
    return rain, snow
