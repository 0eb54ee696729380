"""Open-Meteo's forecast: no key, for non-commercial use, CC BY 4.0.

Temperature, humidity, wind and cloud are instants; rain, snow, gusts, sun and the chance of rain are of the hour
*before* their time, so they move one hour back here. Snowfall is in centimetres of snow, 7 cm being 10 mm of water
(the provider's documentation, "Hourly Parameter Definition").
"""

from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from typing import Any

from bot.barn import Place
from bot.forecast.answers import Request, Requests, degrees, inner, json_object, rows
from bot.forecast.hours import HOUR
from bot.forecast.readings import Column, Parsed, Unreadable, gridded, number, rain_or_snow, whole_hour

NAME = "open-meteo"
ATTRIBUTION = "Weather data by Open-Meteo.com (CC BY 4.0)"
BASE = "https://api.open-meteo.com"
NEEDS_CONTACT = False

DAYS = 4
PAST_DAYS = 1  # a sign is weighed against up to a day before it

# theirs → ours, and how many seconds after the hour's beginning they date it
NAMES = {
    "temperature_2m": ("temperature_c", 0),
    "relative_humidity_2m": ("humidity_pct", 0),
    "wind_speed_10m": ("wind_ms", 0),
    "cloud_cover": ("cloud_pct", 0),
    "wind_gusts_10m": ("gust_ms", HOUR),
    "rain": ("rain_mm", HOUR),
    "showers": ("showers", HOUR),
    "snowfall": ("snow_mm", HOUR),
    "shortwave_radiation": ("solar_wm2", HOUR),
    "precipitation_probability": ("rain_probability_pct", HOUR),
}
WATER_PER_SNOW = 10 / 7  # mm of water in a centimetre of snow

# unit as written in the answer → factor and offset to ours
UNITS: dict[str, tuple[float, float]] = {
    "km/h": (1 / 3.6, 0.0),
    "mp/h": (0.44704, 0.0),
    "mph": (0.44704, 0.0),
    "kn": (0.514444, 0.0),
    "°F": (5 / 9, -32 * 5 / 9),
    "inch": (25.4, 0.0),
}
SNOW_UNITS = {"cm": (WATER_PER_SNOW, 0.0), "inch": (2.54 * WATER_PER_SNOW, 0.0)}


def ask(place: Place, contact: str | None) -> Requests:
    """One request: the hours of yesterday and the next days."""
    query = {
        "latitude": degrees(place.latitude),
        "longitude": degrees(place.longitude),
        "hourly": ",".join(NAMES),
        "wind_speed_unit": "ms",
        "timeformat": "unixtime",
        "timezone": "GMT",
        "past_days": str(PAST_DAYS),
        "forecast_days": str(DAYS),
    }
    if place.elevation_m:
        query["elevation"] = f"{place.elevation_m:.0f}"
    yield Request("/v1/forecast", query)


def recognises(found: dict[str, Any]) -> bool:
    """Whether this object has the shape of an answer."""
    return "hourly" in found or "generationtime_ms" in found or {"error", "reason"} <= found.keys()


def parse(body: bytes) -> Parsed:
    """The hours of an answer, whatever units and times it was asked for. Unreadable where it is none."""
    found = json_object(body)
    if found.get("error"):
        raise Unreadable(f"it refuses: {str(found.get('reason'))[:200]}")
    hourly, units = inner(found, "hourly"), inner(found, "hourly_units")
    times = [_time(value, found) for value in rows(hourly.get("time"))]
    if not any(at is not None for at in times):
        raise Unreadable("it has no hours; an answer to hourly=… is wanted")

    def column(theirs: str, late: int = HOUR) -> Column:
        given = zip(times, rows(hourly.get(theirs)))
        change = _unit(units.get(theirs), theirs)
        return {at - late: change(value) for at, value in given if at is not None}

    given = {ours: column(theirs, late) for theirs, (ours, late) in NAMES.items()}
    showers = given.pop("showers")
    given["rain_mm"] = {at: _sum(value, showers.get(at, 0.0)) for at, value in given["rain_mm"].items()}
    if not (given["rain_mm"] and given["snow_mm"]):  # asked for all that falls as one number
        given |= _parted(column("precipitation"), given["snow_mm"], given["temperature_c"])
    given["temperature_c"].pop(max(at for at in times if at is not None), None)  # its rain would be in the next hour's
    return Parsed(*gridded(given))


def _time(value: Any, found: dict[str, Any]) -> int | None:
    """POSIX seconds: as asked for, or local text whose offset stands once for the whole answer."""
    if (seconds := number(value)) is not None:
        return int(seconds) // HOUR * HOUR
    try:
        local = datetime.fromisoformat(value).replace(tzinfo=UTC)
        offset = timedelta(seconds=number(found.get("utc_offset_seconds")) or 0.0)
        return whole_hour(local - offset)
    except (TypeError, ValueError, OverflowError):
        return None


def _unit(unit: Any, theirs: str) -> Callable[[Any], float | None]:
    """From the unit the answer names to ours."""
    table = SNOW_UNITS if theirs == "snowfall" else UNITS
    usual = SNOW_UNITS["cm"] if theirs == "snowfall" else (1.0, 0.0)
    factor, offset = table.get(unit, usual) if isinstance(unit, str) else usual

    def change(value: Any) -> float | None:
        found = number(value)
        return None if found is None else found * factor + offset

    return change


def _sum(one: float | None, other: float | None) -> float | None:
    return None if one is None or other is None else one + other


def _parted(total: Column, snow: Column, temperature: Column) -> dict[str, Column]:
    """All that falls, parted into rain and snow: by the snow told, else by the air."""
    if any(value is not None for value in snow.values()):
        rain = {at: None if value is None else max(0.0, value - (snow.get(at) or 0.0)) for at, value in total.items()}
        return {"rain_mm": rain, "snow_mm": snow}
    rain, snow = rain_or_snow(total, temperature)
    return {"rain_mm": rain, "snow_mm": snow}
