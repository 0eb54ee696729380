"""What is due now: each round's post once per local day, across clock changes and restarts. Pure: the clock is a value.

A round's local time is taken on every local date: a time that the clock skips in spring becomes the first instant
after the gap, a time that comes twice in autumn is its first. Instants are compared in UTC only.
"""

from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from functools import cache, lru_cache
from itertools import pairwise
from typing import Literal
from zoneinfo import ZoneInfo

from bot.barn import Barn, Round
from bot.sheet import Window

DAY = timedelta(days=1)


LATE_AFTER = timedelta(minutes=5)


@dataclass(frozen=True)
class DuePost:
    """A round whose post is due. day: its local date. missed: its window is half over, so only a line is said."""

    window: Window
    day: date
    standing: Literal["on time", "late", "missed"]

    @property
    def key(self) -> tuple[str, date]:
        """What makes it once only."""
        return (self.window.round, self.day)


def windows(barn: Barn, at: datetime, hours: float = 24) -> list[Window]:
    """The windows that begin within `hours` from `at`, after the one in progress if it is less than half over.

    at: aware.
    """
    at = at.astimezone(UTC)  # clock times of one zone compare wrongly in a repeated hour
    until = at + timedelta(hours=hours)
    around = [window for _, window in _rounds(barn, at, days=int(hours // 24) + 2)]
    return [w for w in around if at <= w.start < until or (w.start < at < w.end and not _half_over(w, at))]


def current(barn: Barn, at: datetime) -> Window:
    """The window that `at` lies in."""
    at = at.astimezone(UTC)
    return next(window for _, window in _rounds(barn, at) if window.start <= at < window.end)


def posts_at(barn: Barn, window: Window) -> datetime:
    """When the post for a window appears."""
    return window.start.astimezone(UTC) - timedelta(minutes=barn.posting.lead_min)


def due(barn: Barn, now: datetime, posted: frozenset[tuple[str, date]], since: datetime | None = None) -> list[DuePost]:
    """Every round of the last two days that should have been posted by `now` and was not, oldest first.

    posted: the keys of every post made and of every miss that was told. A barn that never posted has missed nothing
    before the window it is in. since: aware; posts that fell due before it are not owed (a script's first line).
    """
    now = now.astimezone(UTC)
    found = [(day, w) for day, w in _rounds(barn, now) if posts_at(barn, w) <= now]
    if since is not None:
        found = [(day, w) for day, w in found if posts_at(barn, w) >= since]
    if not posted:
        found = [(day, w) for day, w in found if w.end > now]
    clocks = {round_.name: round_.at for round_ in barn.rounds}
    began = min(((day, clocks.get(name, time())) for name, day in posted), default=(date.min, time()))
    open_ = [(day, w) for day, w in found if (w.round, day) not in posted and (day, clocks[w.round]) > began]
    owed = [DuePost(w, day, _standing(barn, w, now)) for day, w in open_]
    # at a first start with a list to begin with, nobody waits for an older one
    return [one for one in owed if posted or one.standing != "missed"] or owed


def _standing(barn: Barn, window: Window, now: datetime) -> Literal["on time", "late", "missed"]:
    if _half_over(window, now):
        return "missed"
    return "late" if now - posts_at(barn, window) > LATE_AFTER else "on time"


def quiet(barn: Barn, now: datetime) -> bool:
    """Whether `now` lies in the quiet hours."""
    clock = now.astimezone(ZoneInfo(barn.timezone)).time()
    start, end = barn.posting.quiet_from, barn.posting.quiet_to
    return start <= clock < end if start <= end else clock >= start or clock < end


def local(day: date, clock: time, zone: ZoneInfo) -> datetime:
    """The one instant at which `clock` strikes on `day`, in the zone; the first after a gap that swallows it."""
    naive = datetime.combine(day, clock)
    instant = naive.replace(tzinfo=zone).astimezone(UTC)
    if instant.astimezone(zone).replace(tzinfo=None) == naive:
        return instant.astimezone(zone)
    return _after_gap(instant, zone).astimezone(zone)


def _after_gap(instant: datetime, zone: ZoneInfo) -> datetime:
    """The end of the gap near `instant` (UTC), to the second: between a time before it and one after."""
    before, after = instant - DAY, instant + DAY
    was = before.astimezone(zone).utcoffset()
    while after - before > timedelta(seconds=1):
        middle = before + (after - before) / 2
        middle = middle.replace(microsecond=0)
        if middle.astimezone(zone).utcoffset() == was:
            before = middle
        else:
            after = middle
    return after


def _half_over(window: Window, now: datetime) -> bool:
    start, end = window.start.astimezone(UTC), window.end.astimezone(UTC)
    return (now.astimezone(UTC) - start) * 2 >= end - start


def _rounds(barn: Barn, at: datetime, days: int = 2) -> tuple[tuple[date, Window], ...]:
    """(local date, window) from two days before `at` to `days` after it, in order."""
    return _between(barn.rounds, barn.timezone, at.astimezone(ZoneInfo(barn.timezone)).date(), days)


@lru_cache(maxsize=64)
def _between(rounds: tuple[Round, ...], timezone: str, today: date, days: int) -> tuple[tuple[date, Window], ...]:
    starts = sorted(
        (start.astimezone(UTC), round_.name, day)
        for day in (today + DAY * n for n in range(-2, days + 1))
        for round_, start in _starts(rounds, timezone, day)
    )
    zone = ZoneInfo(timezone)
    return tuple(
        (day, Window(name, start.astimezone(zone), end.astimezone(zone)))
        for (start, name, day), (end, _, _) in pairwise(starts)
        if start < end
    )


@cache
def _starts(rounds: tuple[Round, ...], timezone: str, day: date) -> tuple[tuple[Round, datetime], ...]:
    zone = ZoneInfo(timezone)
    return tuple((round_, local(day, round_.at, zone)) for round_ in rounds)
