"""Hours cut, padded and written as plain numbers."""

import math
from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime
from typing import Any

import numpy as np

from bot.events import Air
from rules.weather import Floats, Hours

HOUR = 3600
AIR_HOURS = 24  # how far back a sign's weather is kept

COLUMNS = (
    "temperature_c",
    "humidity_pct",
    "wind_ms",
    "gust_ms",
    "rain_mm",
    "snow_mm",
    "cloud_pct",
    "solar_wm2",
    "rain_probability_pct",
)
NAMES = (*COLUMNS, "spread_c", "spread_wind")


def unknown_hours(start_s: int, n: int) -> Hours:
    """`n` hours of which nothing is known."""
    return Hours(start_s, **{name: np.full(n, np.nan) for name in COLUMNS})


def window(hours: Hours, start_s: int, n: int) -> Hours:
    """Exactly the `n` hours from `start_s` (a whole hour); NaN where `hours` has none."""
    begin = (start_s - hours.start_s) // HOUR
    low, high = max(0, begin), max(0, min(len(hours), begin + n))

    def cut(column: Floats) -> Floats:
        made = np.full(n, np.nan)
        if high > low:
            made[low - begin : high - begin] = column[low:high]
        return made

    return replace(_each(hours, cut), start_s=start_s)


def to_air(hours: Hours, at: datetime) -> Air | None:
    """The hours that end with the hour of `at`, at most 24, for the ledger; None where that hour is not known."""
    last_s = int(at.timestamp()) // HOUR * HOUR
    first_s = max(hours.start_s, last_s - (AIR_HOURS - 1) * HOUR)
    n = (last_s - first_s) // HOUR + 1
    if n <= 0 or last_s >= hours.start_s + len(hours) * HOUR:
        return None
    begin = (first_s - hours.start_s) // HOUR
    cut = {name: column[begin : begin + n] for name in NAMES if (column := getattr(hours, name)) is not None}
    columns = {name: _plain(column) for name, column in cut.items()}
    return Air(datetime.fromtimestamp(first_s, UTC), columns)


def from_air(air: Air) -> Hours:
    """The hours that a ledger entry keeps; a column it does not have is not known."""
    n = max((len(column) for column in air.columns.values()), default=0)
    known = {name: np.array(column, float) for name, column in air.columns.items() if name in NAMES}
    return _with(unknown_hours(int(air.start.timestamp()), n), known)


def _plain(column: Floats) -> list[float | None]:
    return [None if math.isnan(value) else value for value in np.round(column, 3).tolist()]


def _each(hours: Hours, change: Callable[[Floats], Floats]) -> Hours:
    columns = {name: getattr(hours, name) for name in NAMES}
    return _with(hours, {name: change(column) for name, column in columns.items() if column is not None})


def _with(hours: Hours, columns: dict[str, Any]) -> Hours:
    return replace(hours, **columns)
