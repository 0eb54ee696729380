"""The forecast in force: the newest good answer at hand, with its age, and its faults in words. It never fetches."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta, tzinfo
from pathlib import Path

from bot.barn import Barn, forecast_file
from bot.forecast import file
from bot.forecast.age import covers, sound, too_old
from bot.forecast.asking import place_key
from bot.forecast.comparing import disagreement
from bot.forecast.hours import HOUR
from bot.forecast.last_good import LastGood, Read
from bot.forecast.providers import PROVIDERS
from bot.forecast.readings import Note, Parsed, Unreadable
from bot.problems import WrongInput
from bot.sheet import Source
from rules.weather import Hours

AHEAD = timedelta(hours=48)  # faults of later hours touch no plan yet
WANTED = timedelta(hours=24)  # what a plan is made for
AT_HAND = timedelta(hours=3)  # how old another provider's answer may be to be compared


@dataclass(frozen=True)
class Forecast:
    """Hours and where they are from. notes: faults in plain words, in the barn's own time. age_min: when chosen."""

    hours: Hours
    source: str
    fetched_at: datetime
    age_min: int = 0
    stale: bool = False
    notes: tuple[str, ...] = ()
    attribution: str = ""
    issued: datetime | None = None

    def source_at(self, now: datetime) -> Source:
        """What a plan made at `now` says of its forecast."""
        age = max(0, int((now - self.fetched_at) / timedelta(minutes=1)))
        stale = self.stale or too_old(self.issued, self.fetched_at, now)
        return Source(self.source, self.fetched_at, age, stale, self.attribution)


def latest(last_good: LastGood, barn: Barn, now: datetime) -> Forecast | None:
    """The forecast in force: of those not stale and whole the newest, else the best there is; None where none is."""
    found = [(source, read) for source in barn.forecast if (read := _read(last_good, barn, source))]
    if not found:
        return None
    source, best = max(found, key=lambda pair: _worth(pair[1], now))
    others = [
        (name, read.parsed.hours)
        for name, read in found
        if name != source and not _stale(read, now) and now - read.answer.fetched_at <= AT_HAND
    ]
    notes = [f"{name} {said}" for name, hours in others if (said := disagreement(best.parsed.hours, hours, now))]
    return _forecast(source, best.parsed, best.answer.fetched_at, now, barn.zone, notes)


def from_file(path: Path, now: datetime | None = None) -> Forecast:
    """The forecast of a file, as good as new whenever it is read. WrongInput where it holds none.

    Notes speak of hours in the zone of `now`; without it, they speak of the whole file, in UTC.
    """
    try:
        source, parsed = file.parse(file.read(path))
    except Unreadable as error:
        raise WrongInput(f"{path}: no forecast: {error}") from None
    return _forecast(source, parsed, now or datetime.now(UTC), now, now.tzinfo if now else UTC, ())


def _read(last_good: LastGood, barn: Barn, source: str) -> Read | None:
    provider = PROVIDERS.get(source)
    read = last_good.read(source, provider.parse if provider else lambda body: file.parse(body)[1])
    return read if read and read.answer.place == place_key(barn.place) else None


def _worth(read: Read, now: datetime) -> tuple[bool, bool, datetime]:
    """Not stale before stale, whole before gappy, newer before older."""
    return not _stale(read, now), sound(read.parsed, now), read.answer.fetched_at


def _stale(read: Read, now: datetime) -> bool:
    return too_old(read.parsed.issued, read.answer.fetched_at, now) or not covers(read.parsed.hours, now)


def _forecast(
    source: str, parsed: Parsed, fetched_at: datetime, now: datetime | None, zone: tzinfo | None, notes: Iterable[str]
) -> Forecast:
    provider = PROVIDERS.get(source)
    said = [*_reach(parsed.hours, now, zone), *(_worded(note, now, zone) for note in parsed.notes), *notes]
    stale = now is not None and (too_old(parsed.issued, fetched_at, now) or not covers(parsed.hours, now))
    return Forecast(
        hours=parsed.hours,
        source="file" if forecast_file(source) else source,
        fetched_at=fetched_at,
        age_min=max(0, int((now - fetched_at) / timedelta(minutes=1))) if now else 0,
        stale=stale,
        notes=tuple(text for text in said if text),
        attribution=provider.ATTRIBUTION if provider else "",
        issued=parsed.issued,
    )


def _reach(hours: Hours, now: datetime | None, zone: tzinfo | None) -> Iterator[str]:
    """Where the hours do not hold all that a plan wants."""
    if now is None:
        return
    begin, end = hours.start_s, hours.start_s + HOUR * len(hours)
    if begin > now.timestamp():
        yield f"the forecast begins only {_clock(begin, now, zone)}"
    if end < (now + WANTED).timestamp():
        yield f"the forecast ends {_clock(end, now, zone)}"


def _worded(note: Note, now: datetime | None, zone: tzinfo | None) -> str:
    """A note with its hours in words; empty where they are long gone or far ahead."""
    hours = sorted(note.hours)
    if now is not None:
        low, high = now.timestamp() - HOUR, (now + AHEAD).timestamp()
        hours = [at for at in hours if low < at < high]
    if not note.hours:
        return note.text
    spells = [_span(first, last + HOUR, now, zone) for first, last in _spells(hours)]
    more = f" and {len(spells) - 3} more spells" if len(spells) > 3 else ""
    return f"{note.text}: {', '.join(spells[:3])}{more} ({len(hours)} h)" if hours else ""


def _spells(hours: list[int]) -> list[tuple[int, int]]:
    """First and last of each run of hours."""
    starts = [at for k, at in enumerate(hours) if not k or hours[k - 1] != at - HOUR]
    ends = [at for k, at in enumerate(hours) if k + 1 == len(hours) or hours[k + 1] != at + HOUR]
    return list(zip(starts, ends))


def _span(begin_s: int, end_s: int, now: datetime | None, zone: tzinfo | None) -> str:
    begin, end = _clock(begin_s, now, zone), _clock(end_s, now, zone)
    return f"{begin}–{end.removeprefix(begin[:-5])}" if begin[:-5] else f"{begin}–{end}"


def _clock(at_s: int, now: datetime | None, zone: tzinfo | None) -> str:
    """An hour in local time; with its date where that is not today's."""
    at = datetime.fromtimestamp(at_s, zone)
    today = now is not None and now.astimezone(zone).date() == at.date()
    return f"{at:%H:%M}" if today else f"{at:%Y-%m-%d %H:%M}"
