"""Hourly airport tables as the flights-data packages give them: °F, mph, inches, a row an hour, faults and all."""

import csv
from io import StringIO

from bot.forecast.readings import Column, Note, Parsed, gridded, instant, rain_or_snow
from bot.units import MM_PER_INCH, MPH_PER_MS

COLUMNS = ("time_hour", "temp", "humid", "wind_speed", "wind_gust", "precip")
MISSING = ("", "NA", "NaN")


def is_one(body: bytes) -> bool:
    """Whether a file's first line has the columns of such a table."""
    header = body[:500].split(b"\n")[0].decode("utf-8", "replace").replace('"', "").strip().split(",")
    return set(COLUMNS) <= set(header)


def parse(body: bytes) -> Parsed:
    """The table's hours; several airports in one table are told apart by `origin`, of which the first counts."""
    rows = list(csv.DictReader(StringIO(body.decode("utf-8-sig", "replace"))))
    first = rows[0].get("origin") if rows else None
    own = [row for row in rows if row.get("origin") == first]
    air = {at: None if f is None else (f - 32) / 1.8 for at, f in _column(own, "temp").items()}
    fell = {at: None if inches is None else inches * MM_PER_INCH for at, inches in _column(own, "precip").items()}
    rain, snow = rain_or_snow(fell, air)
    wind, gust = ({at: None if v is None else v / MPH_PER_MS for at, v in _column(own, name).items()}
                  for name in ("wind_speed", "wind_gust"))  # fmt: skip
    hours, notes = gridded(
        {"temperature_c": air, "humidity_pct": _column(own, "humid"), "wind_ms": wind, "gust_ms": gust,
         "rain_mm": rain, "snow_mm": snow}
    )  # fmt: skip
    others = [Note(f"the table has more than one airport; only {first} was read")] if len(own) < len(rows) else []
    return Parsed(hours, (*others, *notes))


def _column(rows: list[dict[str, str]], name: str) -> Column:
    """One column by POSIX seconds; None where the cell says nothing."""
    found: Column = {}
    for row in rows:
        at = instant((row.get("time_hour") or "").replace("Z", "+00:00").replace(" ", "T"))
        if at is not None:
            found[int(at.timestamp()) // 3600 * 3600] = _number(row.get(name) or "")
    return found


def _number(cell: str) -> float | None:
    try:
        return None if cell.strip() in MISSING else float(cell)
    except ValueError:
        return None
