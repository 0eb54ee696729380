"""EPW, a year of hours for building simulation: measured weather to replay.

Times are local standard time and the hour that *ends*: temperature, humidity, wind and sky are instants at its end, sun
and rain are of the hour before it (EnergyPlus documentation, "Auxiliary Programs", EPW data dictionary). Missing values
have their own numbers. A typical year is glued from months of several years: it is laid out as one winter, from July
to June.
"""

import csv
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from io import StringIO

from bot.forecast.hours import HOUR
from bot.forecast.readings import Column, Note, Parsed, Unreadable, gridded, number, rain_or_snow

HEADER_LINES = 8
TYPICAL_WINTER = 2025  # a glued year begins in July of this one: neither it nor the next has a 29 February

# ours → column of the row, first number that means missing, seconds between the hour's beginning and the row's time
FIELDS = {
    "temperature_c": (6, 99.9, 0),
    "humidity_pct": (8, 999.0, 0),
    "wind_ms": (21, 999.0, 0),
    "cloud_pct": (22, 99.0, 0),
    "solar_wm2": (13, 9999.0, HOUR),
}
RAIN, RAIN_HOURS, RAIN_MISSING, LONGEST_SUM = 33, 34, 999.0, 24
TENTHS = 10.0  # sky cover is told in tenths


def parse(body: bytes) -> Parsed:
    """The hours of an EPW file. Unreadable where it is none."""
    try:
        lines = list(csv.reader(StringIO(body.decode("utf-8", "replace"))))
        zone_h = float(lines[0][8])
    except (csv.Error, IndexError, ValueError):
        raise Unreadable("its first line is no EPW location with a time zone") from None
    rows = [row for row in lines[HEADER_LINES:] if len(row) > FIELDS["cloud_pct"][0]]
    years = {row[0].strip() for row in rows}
    glued = len(years) > 1
    readings: dict[str, Column] = {name: {} for name in FIELDS}
    total: Column = {}
    for row in rows:
        end = _end(row, zone_h, glued=glued)
        if end is None:
            continue
        for name, (k, missing, late) in FIELDS.items():
            value = _value(row, k, missing)
            readings[name][end - late] = value if value is None or name != "cloud_pct" else TENTHS * value
        total |= dict(_rain(row, end))
    rain, snow = rain_or_snow(total, readings["temperature_c"])
    end = max(total, default=0)  # what falls is not told beyond
    readings["temperature_c"] = {at: t for at, t in readings["temperature_c"].items() if at <= end}
    hours, notes = gridded(readings | {"rain_mm": rain, "snow_mm": snow})
    note = Note(f"a typical year of {len(years)} years' months, laid out from July {TYPICAL_WINTER}")
    return Parsed(hours, (note, *notes) if glued else notes)


def _end(row: list[str], zone_h: float, *, glued: bool) -> int | None:
    """POSIX seconds at which the row's hour ends."""
    try:
        year, month, day, hour = (int(float(cell)) for cell in row[:4])
        if glued:
            year = TYPICAL_WINTER + (month < 7)
        local = datetime(year, month, day, tzinfo=UTC) + timedelta(hours=hour - zone_h)
        return int(local.timestamp()) // HOUR * HOUR
    except (ValueError, OverflowError):
        return None


def _value(row: list[str], k: int, missing: float) -> float | None:
    try:
        value = number(float(row[k]))
    except (ValueError, IndexError):
        return None
    return None if value is None or value >= missing else value


def _rain(row: list[str], end: int) -> Iterator[tuple[int, float | None]]:
    """The hours before `end` that the row's depth is the sum of, an equal share each."""
    depth, spell = _value(row, RAIN, RAIN_MISSING), _value(row, RAIN_HOURS, 99.0)
    n = int(spell) if spell and 1 <= spell <= LONGEST_SUM else 1
    for k in range(1, n + 1):
        yield end - k * HOUR, None if depth is None else depth / n
