"""The US National Weather Service: public domain, United States only; wants a contact and at most four decimals.

Two steps: a point's grid square, then that square's raw values. Values stand for ISO 8601 intervals with equal
neighbours merged: amounts are of the whole interval and are shared out, all else holds in each of its hours.
Wind is the greatest prevailing wind. Snow is told as depth, so what falls is parted by it and by the air. No sun.
"""

import re
from collections.abc import Iterator
from datetime import timedelta
from typing import Any
from urllib.parse import urlsplit

from bot.barn import Place
from bot.forecast.answers import Request, Requests, degrees, inner, json_object, rows
from bot.forecast.hours import HOUR
from bot.forecast.readings import Column, Note, Parsed, Unreadable, gridded, instant, number, rain_or_snow, whole_hour

NAME = "nws"
ATTRIBUTION = "Data from the US National Weather Service"
BASE = "https://api.weather.gov"
NEEDS_CONTACT = True

LAYERS = {
    "temperature": "temperature_c",
    "relativeHumidity": "humidity_pct",
    "windSpeed": "wind_ms",
    "windGust": "gust_ms",
    "skyCover": "cloud_pct",
    "probabilityOfPrecipitation": "rain_probability_pct",
}
AMOUNT = "quantitativePrecipitation"
SNOW_DEPTH = "snowfallAmount"
WATER_IN_SNOW = 0.1  # ten to one, the rule of thumb of the trade; no source

# unit → factor and offset to ours; units not named here are ours already
UNITS = {
    "km_h-1": (1 / 3.6, 0.0),
    "degF": (5 / 9, -32 * 5 / 9),
    "K": (1.0, -273.15),
    "kt": (0.514444, 0.0),
    "m": (1000.0, 0.0),
    "cm": (10.0, 0.0),
    "in": (25.4, 0.0),
}
PERIOD = re.compile(r"P(?:(\d{1,4})W)?(?:(\d{1,4})D)?(?:T(?:(\d{1,5})H)?(?:(\d{1,6})M)?(?:\d+S)?)?")
POINT_GOOD_FOR = timedelta(days=1)  # the grid moves now and then
PROBLEMS = "https://api.weather.gov/problems/"
LONGEST = 24 * 16  # hours of one interval; a longer one is a fault


def ask(place: Place, contact: str | None) -> Requests:
    """The point, then its grid square."""
    path = f"/points/{degrees(place.latitude)},{degrees(place.longitude)}"
    point = yield Request(path, good_for=POINT_GOOD_FOR)
    yield Request(grid_path(point))


def grid_path(point: bytes) -> str:
    """Where a point's raw values are, as a path: the host is the one asked, whatever the answer says."""
    address = inner(json_object(point), "properties").get("forecastGridData")
    path = urlsplit(address).path if isinstance(address, str) and address.isascii() and address.isprintable() else ""
    if not re.fullmatch(r"/gridpoints/[A-Z0-9]+/-?\d+,-?\d+", path):
        raise Unreadable("the point has no forecast grid; is the barn in the United States?")
    return path


def recognises(found: dict[str, Any]) -> bool:
    """Whether this object has the shape of an answer."""
    properties = inner(found, "properties")
    return (
        "values" in inner(properties, "temperature")
        or "periods" in properties
        or str(found.get("type")).startswith(PROBLEMS)
    )


def parse(body: bytes) -> Parsed:
    """The hours of a grid square's raw values. Unreadable where it is none."""
    found = json_object(body)
    properties = inner(found, "properties")
    if "periods" in properties:
        raise Unreadable("an hourly text forecast, without amounts of rain; save the point's forecastGridData instead")
    if not inner(properties, "temperature"):
        raise Unreadable(f"it has no grid values{_problem(found)}")
    notes: list[Note] = []
    readings = {ours: _repeated(inner(properties, theirs), theirs, notes) for theirs, ours in LAYERS.items()}
    total = _shared(inner(properties, AMOUNT), AMOUNT, notes)
    depth = _shared(inner(properties, SNOW_DEPTH), SNOW_DEPTH, notes)
    readings["rain_mm"], readings["snow_mm"] = _parted(total, depth, readings["temperature_c"])
    hours, more = gridded(readings)
    return Parsed(hours, (*notes, *more), instant(properties.get("updateTime")))


def _problem(found: dict[str, Any]) -> str:
    title, detail = found.get("title"), found.get("detail")
    return f": {title}: {str(detail)[:200]}" if isinstance(title, str) else ""


def _intervals(layer: dict[str, Any], name: str, notes: list[Note]) -> Iterator[tuple[int, int, float | None]]:
    """(first hour, hours, value in our unit) of a layer."""
    factor, offset = UNITS.get(str(layer.get("uom", "")).rpartition(":")[2], (1.0, 0.0))
    for row in rows(layer.get("values")):
        when, _, length = str(row.get("validTime", "") if isinstance(row, dict) else "").partition("/")
        at, hours = instant(when), whole_hours(length)
        if at is None or not hours:
            notes.append(Note(f"{name}: '{when[:30]}/{length[:20]}' is no interval of hours"))
            continue
        value = number(row.get("value"))
        yield whole_hour(at), hours, None if value is None else value * factor + offset


def whole_hours(period: str) -> int | None:
    """The hours of an ISO 8601 duration such as P1DT2H, a part of one counted as one; None: none or beyond reason."""
    found = PERIOD.fullmatch(period)
    if not found:
        return None
    weeks, days, hours, minutes = (int(part or 0) for part in found.groups())
    total = -(-timedelta(weeks=weeks, days=days, hours=hours, minutes=minutes) // timedelta(hours=1))
    return total if 0 < total <= LONGEST else None


def _repeated(layer: dict[str, Any], name: str, notes: list[Note]) -> Column:
    return {at + k * HOUR: value for at, hours, value in _intervals(layer, name, notes) for k in range(hours)}


def _shared(layer: dict[str, Any], name: str, notes: list[Note]) -> Column:
    return {
        at + k * HOUR: None if value is None else value / hours
        for at, hours, value in _intervals(layer, name, notes)
        for k in range(hours)
    }


def _parted(total: Column, depth: Column, temperature: Column) -> tuple[Column, Column]:
    """(rain, snow): by the air, and where snow lies although it is mild, its own water as well."""
    rain, snow = rain_or_snow(total, temperature)
    for at, value in total.items():
        lying = min(value or 0.0, WATER_IN_SNOW * max(0.0, depth.get(at) or 0.0))
        if value is not None and lying > (snow[at] or 0.0):
            rain[at], snow[at] = value - lying, lying
    return rain, snow
