"""Readings from any source, laid on the hourly grid: what is impossible or missing becomes NaN and is noted.

A reading belongs to the hour that begins at its time; sources that count otherwise shift before they come here.
"""

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any

import numpy as np

from bot.forecast.hours import COLUMNS, HOUR
from rules.weather import Floats, Hours

MAX_HOURS = 40 * 366 * 24

Column = dict[int, float | None]  # POSIX seconds of the hour's beginning → value
Readings = Mapping[str, Column]

SNOW_BELOW_C = (
    1.0  # air at which half of what falls is snow (Jennings et al. 2018, Nature Communications 9:1148; memory)
)


class Unreadable(Exception):
    """Bytes that are no forecast; one line says why."""


@dataclass(frozen=True)
class Note:
    """A fault of a forecast, and the hours (POSIX seconds) it touches."""

    text: str
    hours: tuple[int, ...] = ()


@dataclass(frozen=True)
class Parsed:
    """What a source said. issued: when its model run was issued, None where it does not say."""

    hours: Hours
    notes: tuple[Note, ...] = ()
    issued: datetime | None = None


@dataclass(frozen=True)
class Bounds:
    """What a value can be on this earth; edge: how far outside is only rounding, and is brought back in."""

    name: str
    unit: str
    low: float
    high: float
    edge: float = 0.0


# Beyond every record of the World Meteorological Organization's archive of extremes, or beyond the scale itself.
BOUNDS = {
    "temperature_c": Bounds("temperature", "°C", -70, 57),
    "humidity_pct": Bounds("humidity", "%", 0, 100, 5),
    "wind_ms": Bounds("wind", "m/s", 0, 75, 0.1),
    "gust_ms": Bounds("gusts", "m/s", 0, 114, 0.1),
    "rain_mm": Bounds("rain", "mm in an hour", 0, 305, 0.1),
    "snow_mm": Bounds("snow", "mm of water in an hour", 0, 60, 0.1),
    "cloud_pct": Bounds("cloud", "%", 0, 100, 5),
    "solar_wm2": Bounds("sun", "W/m²", 0, 1450, 20),
    "rain_probability_pct": Bounds("chance of rain", "%", 0, 100, 5),
}
# without one of them an hour is not judged
NEEDED = ("temperature_c", "humidity_pct", "wind_ms", "rain_mm", "snow_mm")


def gridded(readings: Readings) -> tuple[Hours, tuple[Note, ...]]:
    """The grid from the first to the last hour with a temperature, and notes on what it lacks. Unreadable: none."""
    known = [at for at, value in readings.get("temperature_c", {}).items() if number(value) is not None]
    if not known:
        raise Unreadable("it holds no temperatures")
    first, last = min(known), max(known)
    n = (last - first) // HOUR + 1
    if n > MAX_HOURS:
        raise Unreadable(f"its times run from {_day(first)} to {_day(last)}")
    told = {name: _laid(readings.get(name, {}), first, n) for name in COLUMNS}
    absurd: list[Note] = []
    columns = {name: _possible(name, column, first, absurd) for name, column in told.items()}
    if np.isnan(columns["temperature_c"]).all():
        raise Unreadable("none of its temperatures can be")
    return Hours(first, **columns), (*absurd, *_gaps(told, first))


def on_grid(column: Column, hours: Hours) -> Floats | None:
    """One more column on the grid of `hours`, NaN where it has no value; None where it has none at all."""
    made = _laid(column, hours.start_s, len(hours))
    return None if np.isnan(made).all() else made


def number(value: Any) -> float | None:
    """A finite number, else None: text, true, null, infinity and not-a-number are none."""
    if isinstance(value, bool) or not isinstance(value, int | float):
        return None
    try:
        found = float(value)
    except OverflowError:
        return None
    return found if math.isfinite(found) else None


def whole_hour(at: datetime) -> int:
    """POSIX seconds of the hour in which an aware instant lies."""
    return int(at.timestamp()) // HOUR * HOUR


def instant(text: Any) -> datetime | None:
    """An aware instant from ISO text; None where it is none or has no offset."""
    if not isinstance(text, str):
        return None
    try:
        at = datetime.fromisoformat(text.strip())
        return at.astimezone(UTC) if at.tzinfo else None
    except (ValueError, OverflowError):
        return None


def rain_or_snow(total: Column, temperature: Column) -> tuple[Column, Column]:
    """(rain, snow) of what falls where a source does not say which: by the air."""
    rain: Column = {}
    snow: Column = {}
    for at, value in total.items():
        air = number(temperature.get(at))
        cold = air is not None and air < SNOW_BELOW_C
        rain[at], snow[at] = (value and 0.0, value) if cold else (value, value and 0.0)
    return rain, snow


def _laid(column: Column, first: int, n: int) -> Floats:
    made = np.full(n, np.nan)
    for at, value in column.items():
        k = (at - first) // HOUR
        if 0 <= k < n and (found := number(value)) is not None:
            made[k] = found
    return made


def _possible(name: str, column: Floats, first: int, notes: list[Note]) -> Floats:
    bounds = BOUNDS[name]
    with np.errstate(invalid="ignore"):
        absurd = (column < bounds.low - bounds.edge) | (column > bounds.high + bounds.edge)
    if absurd.any():
        worst = column[absurd][np.argmax(np.abs(column[absurd]))]
        text = f"{bounds.name} of {worst:,.0f} {bounds.unit} cannot be, left out"
        notes.append(Note(text, _at(absurd, first)))
    return np.where(absurd, np.nan, np.clip(column, bounds.low, bounds.high)) + 0.0  # + 0.0: no negative zero


def _gaps(told: Mapping[str, Floats], first: int) -> Iterable[Note]:
    """The hours that cannot be judged because something was not told, by what it is."""
    unknown = np.array([np.isnan(told[name]) for name in NEEDED])
    for lacking in sorted({tuple(column) for column in unknown.T.tolist() if any(column)}, reverse=True):
        names = [BOUNDS[name].name for name, lacks in zip(NEEDED, lacking) if lacks]
        hours = _at(np.equal(unknown.T, lacking).all(axis=1), first)
        yield Note("no values" if all(lacking) else "no " + ", ".join(names), hours)


def _at(which: Any, first: int) -> tuple[int, ...]:
    return tuple(first + int(k) * HOUR for k in np.flatnonzero(which))


def _day(at: int) -> str:
    try:
        return f"{datetime.fromtimestamp(at, UTC):%Y-%m-%d}"
    except (ValueError, OverflowError, OSError):
        return "no date at all"
