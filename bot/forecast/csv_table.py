"""A forecast as CSV: one row an hour, times with an offset."""

import csv
from collections import Counter
from collections.abc import Iterator
from datetime import datetime
from io import StringIO

from bot.forecast.hours import COLUMNS, HOUR
from bot.forecast.readings import Column, Note, Parsed, Unreadable, gridded, instant
from bot.problems import did_you_mean

MAY_LACK = ("gust_ms", "cloud_pct", "solar_wm2", "rain_probability_pct")
NOTHING = ("", "na", "nan", "null", "none", "-")
MAX_FAULTS = 5  # told one by one; the rest as a number


def parse(body: bytes) -> Parsed:
    """The table's hours. Unreadable where it is no such table; single wrong cells and rows become notes and NaN."""
    try:
        rows = csv.reader(StringIO(body.decode("utf-8-sig")), strict=False)
        header = [name.strip() for name in next(rows, [])]
        _check(header)
        table = _Table(header)
        for row in rows:
            if any(cell.strip() for cell in row):
                table.add(rows.line_num, row)
    except (UnicodeDecodeError, csv.Error) as error:
        raise Unreadable(f"it is no CSV text: {error}") from None
    if len({at % HOUR for at in table.columns["temperature_c"]}) > 1:
        table.faults.append("rows between its hours are left out; one row an hour is wanted")
    hours, notes = gridded(_on_the_hour(table.columns))
    return Parsed(hours, (*table.notes(), *notes))


def _check(header: list[str]) -> None:
    for name in ("time", "temperature_c"):
        if name not in header:
            raise Unreadable(f"its first line has no column '{name}'; it begins with '{','.join(header)[:40]}'")


class _Table:
    """Rows as they come: cells by column and time, and what was wrong with them."""

    def __init__(self, header: list[str]) -> None:
        self.header = header
        self.columns: dict[str, Column] = {name: {} for name in COLUMNS if name in header}
        self.faults = [
            f"unknown column '{name}'{did_you_mean(name, COLUMNS)}"
            for name in header
            if name not in ("time", "", *COLUMNS)
        ]

    def add(self, line: int, row: list[str]) -> None:
        cells = dict(zip(self.header, row))
        at = instant(cells.get("time", ""))
        if at is None:
            self.faults.append(_time_fault(line, cells.get("time", "")))
            return
        at_s = int(at.timestamp())
        if at_s in self.columns["temperature_c"]:
            self.faults.append(f"line {line}: the same hour again; the later row counts")
        for name, column in self.columns.items():
            column[at_s] = self.value(line, name, cells.get(name, "").strip())

    def value(self, line: int, name: str, text: str) -> float | None:
        if text.casefold() in NOTHING:
            return None
        try:
            return float(text)
        except ValueError:
            self.faults.append(f"line {line}: {name} is '{text[:20]}', no number")
            return None

    def notes(self) -> Iterator[Note]:
        yield from map(Note, self.faults[:MAX_FAULTS])
        if len(self.faults) > MAX_FAULTS:
            yield Note(f"and {len(self.faults) - MAX_FAULTS} more faults of its rows")


def _time_fault(line: int, text: str) -> str:
    try:
        datetime.fromisoformat(text.strip())
    except ValueError:
        return f"line {line}: '{text[:30]}' is no time such as 2026-11-26T07:00:00-05:00"
    return f"line {line}: time '{text[:30]}' has no offset such as -05:00"


def _on_the_hour(columns: dict[str, Column]) -> dict[str, Column]:
    """Rows between whole hours of UTC (zones at half past) are shared between the two hours they touch.

    A row of the odd minutes counts only where no other does: the grid is hourly.
    """
    past = Counter(at % HOUR for at in columns["temperature_c"])  # seconds past the hour
    if not any(past):
        return columns
    usual = max(past, key=lambda seconds: (past[seconds], -seconds))
    return {name: _shifted(column, usual, greatest=name == "gust_ms") for name, column in columns.items()}


def _shifted(column: Column, into: int, *, greatest: bool) -> Column:
    """Values at `into` seconds past each hour, brought to the whole hour by both neighbours' shares."""
    kept = {at - into: value for at, value in column.items() if at % HOUR == into}
    if not into:
        return kept
    made: Column = {}
    for at, later in kept.items():
        earlier = kept.get(at - HOUR)
        if earlier is None or later is None:
            made[at] = None
        else:
            share = into / HOUR
            made[at] = max(earlier, later) if greatest else share * earlier + (1 - share) * later
    return made
