"""One horse's days from the ledger: what it wore, what people saw, and what was changed; for owner, bill and vet."""

import csv
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from io import StringIO
from zoneinfo import ZoneInfo

from bot.barn import Barn
from bot.events import Entry, Seen
from bot.record import harmless
from bot.state import State, apply, as_filed

Wear = tuple[str, ...]
CSV_COLUMNS = ("date", "time", "horse", "what", "wear", "sign", "who", "temperature_c", "wind_ms", "rain_mm")


@dataclass(frozen=True)
class Moment:
    """Something on a horse's record. what: "wears" (its clothes were changed) or "sign".

    wear: what it wore from then on, None: nobody knows. The weather of a sign's hour: °C, m/s, mm; None not known.
    """

    at: datetime
    what: str
    wear: Wear | None
    who: str
    sign: str = ""
    temperature_c: float | None = None
    wind_ms: float | None = None
    rain_mm: float | None = None


@dataclass(frozen=True)
class Day:
    """A local day of one horse. wore: what it had on at some time of the day, in order."""

    date: date
    moments: tuple[Moment, ...]
    wore: tuple[Wear | None, ...]

    @property
    def changes(self) -> int:
        """How often its clothes were changed."""
        return sum(m.what == "wears" for m in self.moments)

    @property
    def signs(self) -> tuple[str, ...]:
        """What people saw."""
        return tuple(m.sign for m in self.moments if m.what == "sign")


def moments(barn: Barn, entries: Iterable[Entry], horse: str) -> list[Moment]:
    """Everything on one horse's record, oldest first; what was undone is not on it."""
    zone = ZoneInfo(barn.timezone)
    state = as_filed(barn)
    found = []
    for entry in sorted((e for e in entries if e.undone_by is None), key=lambda e: (e.at, e.number)):
        before = _wear(state, horse)
        state = apply(state, entry)
        at, wear = entry.at.astimezone(zone), _wear(state, horse)
        if wear != before:
            found.append(Moment(at, "wears", wear, entry.who))
        if isinstance(entry.event, Seen) and entry.event.horse == horse:
            found.append(_seen(at, entry.who, entry.event))
    return found


def _wear(state: State, horse: str) -> Wear | None:
    now = state.horses.get(horse)
    return now.wear if now else None


def _seen(at: datetime, who: str, event: Seen) -> Moment:
    columns: Mapping[str, Sequence[float | None]] = event.air.columns if event.air else {}
    last = {name: values[-1] if values else None for name, values in columns.items()}
    weather = (last.get("temperature_c"), last.get("wind_ms"), last.get("rain_mm"))
    return Moment(at, "sign", event.wore, who, event.sign, *weather)


def days(barn: Barn, entries: Iterable[Entry], horse: str, first: date, last: date) -> list[Day]:
    """One horse's days, first and last included."""
    record = moments(barn, entries, horse)
    wear = next((now.wear for name, now in as_filed(barn).horses.items() if name == horse), None)
    found = []
    for n in range((last - first).days + 1):
        day = first + timedelta(days=n)
        before = [m for m in record if m.what == "wears" and m.at.date() < day]
        of_day = tuple(m for m in record if m.at.date() == day)
        began = before[-1].wear if before else wear
        found.append(Day(day, of_day, (began, *(m.wear for m in of_day if m.what == "wears"))))
    return found


def changes(barn: Barn, entries: Sequence[Entry], first: date, last: date) -> dict[str, int]:
    """How often each horse's clothes were changed between two days, both included: what a boarding barn bills."""
    zone = ZoneInfo(barn.timezone)
    counts: Counter[str] = Counter({horse.name: 0 for horse in barn.horses})
    state = as_filed(barn)
    for entry in sorted((e for e in entries if e.undone_by is None), key=lambda e: (e.at, e.number)):
        after = apply(state, entry)
        if first <= entry.at.astimezone(zone).date() <= last:
            moved = (n for n, now in after.horses.items() if now.wear is not None and now.wear != _wear(state, n))
            counts.update(moved)
        state = after
    return dict(counts)


def as_text(horse: str, found: Sequence[Day]) -> str:
    """One horse's days in lines: what it wore at each day's end, changes and signs; days without news run together."""
    lines = [horse]
    before: tuple[Wear | None, bool] | None = None
    for day in found:
        wear, news = day.wore[-1], bool(day.moments)
        if news or before != (wear, news):
            signs = f"; seen {', '.join(day.signs)}" if day.signs else ""
            lines.append(f"{day.date:%d %b}  {said(wear)}{signs}")
        before = wear, news
    return "\n".join(lines) + "\n"


def said(wear: Wear | None) -> str:
    """What it wears, in one cell."""
    return "not known" if wear is None else " + ".join(wear) or "bare"


def as_csv(horse: str, found: Iterable[Day]) -> str:
    """One horse's record as a spreadsheet, one row a moment; text that a spreadsheet would run is kept text."""
    out = StringIO()
    rows = csv.writer(out, lineterminator="\n")
    rows.writerow(CSV_COLUMNS)
    for m in (m for day in found for m in day.moments):
        wear = "" if m.wear is None else said(m.wear)
        numbers = ("" if v is None else v for v in (m.temperature_c, m.wind_ms, m.rain_mm))
        texts = map(harmless, (horse, m.what, wear, m.sign, m.who))
        rows.writerow([m.at.date().isoformat(), f"{m.at:%H:%M}", *texts, *numbers])
    return out.getvalue()
