"""Replay: a season of recorded hours through the very same plan, beside a chart, always bare and one heavy rug."""

import sys
from collections.abc import Callable, Mapping
from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import numpy as np

from bot.barn import Barn
from bot.forecast import file as weather_file
from bot.forecast.readings import Note, Unreadable
from bot.problems import WrongInput
from bot.season import airport, choosing
from bot.season.living import Choose, Course, Story, course, live
from bot.season.report import Season, WayReport
from bot.season.tally import tally
from bot.season.then import moved
from bot.season.wardrobe import wardrobe
from rules.weather import Floats, Hours

WAYS: Mapping[str, Choose] = {
    "Haybell": choosing.haybell,
    "chart on the wall": choosing.chart,
    "always bare": choosing.bare,
    "one heavy rug": choosing.heavy,
}
HOUR_S = 3600
TOLD_NOTES = 6
Told = Callable[[float], None]


def run(
    barn: Barn,
    weather: Path,
    start: date | None = None,
    end: date | None = None,
    told: Told | None = None,
    today: date | None = None,
) -> Season:
    """The season that a file of recorded hours (EPW or CSV) holds, or the part of it between two local days.

    The barn is today's (default: the clock's) moved to that year: the same ages, and clips of that autumn.
    told is called with the share that is done, 0 to 1; without it a bar is drawn on standard error where that is a
    terminal. WrongInput where the file cannot be read or has no hours of those days.
    """
    try:
        body = weather.read_bytes()
        parsed = airport.parse(body) if airport.is_one(body) else weather_file.parse(body)[1]
    except OSError as error:
        raise WrongInput(f"{weather}: {error.strerror or error}; name a file of recorded hours (EPW or CSV)") from None
    except Unreadable as error:
        raise WrongInput(f"{weather}: {error}") from None
    first, last = _span(barn, parsed.hours, weather, start, end)
    then = moved(barn, today or datetime.now(UTC).astimezone(barn.zone).date(), first.date(), last.date())
    return replay(then, parsed.hours, first, last, weather.name, _plainly(parsed.notes, first, last), told or bar)


def replay(
    barn: Barn,
    hours: Hours,
    start: datetime,
    end: datetime,
    source: str = "",
    notes: tuple[str, ...] = (),
    told: Told = lambda share: None,
    ways: Mapping[str, Choose] = WAYS,
) -> Season:
    """Every way of choosing through the rounds that lie between two instants (aware)."""
    through = course(choosing.with_heavy(barn), hours, start, end)
    if not through.windows:
        raise WrongInput(f"no whole window between {start:%Y-%m-%d %H:%M} and {end:%Y-%m-%d %H:%M}: give more days")
    without = course(barn, hours, start, end)
    stories = {}
    for k, (name, choose) in enumerate(ways.items()):
        where = through if choose is choosing.heavy else without
        stories[name] = live(where, choose, _part(told, k, len(ways), len(through.windows)))
    advice = wardrobe(without, stories["Haybell"]) if "Haybell" in stories else None
    return replace(_report(without, stories, source, notes), wardrobe=advice)


def _part(told: Told, k: int, ways: int, windows: int) -> Callable[[int], None]:
    """Progress of the k-th way as progress of all."""
    return lambda behind: told((k + behind / windows) / ways)


def _span(barn: Barn, hours: Hours, weather: Path, start: date | None, end: date | None) -> tuple[datetime, datetime]:
    """From the first local day to the end of the last; without them all that the file has."""
    zone = ZoneInfo(barn.timezone)
    begins = datetime.fromtimestamp(hours.start_s, UTC).astimezone(zone)
    ends = begins.astimezone(UTC) + timedelta(hours=len(hours))
    first = datetime.combine(start, time(), zone) if start else begins
    last = datetime.combine(end + timedelta(days=1), time(), zone) if end else ends.astimezone(zone)
    first, last = max(first, begins), min(last, ends.astimezone(zone))
    inside = slice(int(first.timestamp()) - hours.start_s, int(last.timestamp()) - hours.start_s)
    known = ~np.isnan(hours.temperature_c[inside.start // HOUR_S : inside.stop // HOUR_S])
    if first >= last or not known.any():
        has = f"{begins:%Y-%m-%d} to {ends.astimezone(zone):%Y-%m-%d}"
        raise WrongInput(f"{weather}: has hours from {has}, none of the days asked for; change --from or --to")
    return first, last


def _plainly(notes: tuple[Note, ...], first: datetime, last: datetime) -> tuple[str, ...]:
    """What is wrong with the record between two instants, the greatest fault first, one line each."""
    lines = []
    for note in sorted(notes, key=lambda n: -len(n.hours)):
        hours = [at for at in note.hours if first.timestamp() <= at < last.timestamp()]
        since = f" ({len(hours)} h, first {datetime.fromtimestamp(hours[0], UTC):%Y-%m-%d %H:%M} UTC)" if hours else ""
        if hours or not note.hours:
            lines.append(f"{note.text}{since}")
    more = [f"and {len(lines) - TOLD_NOTES} more faults of the record"] if len(lines) > TOLD_NOTES else []
    return (*lines[:TOLD_NOTES], *more)


def _report(through: Course, stories: Mapping[str, Story], source: str, notes: tuple[str, ...]) -> Season:
    zone = ZoneInfo(through.barn.timezone)
    first = through.windows[0].start.astimezone(zone).date()
    last = (through.windows[-1].end.astimezone(zone) - timedelta(seconds=1)).date()
    one = next(iter(stories.values()))
    day = _day_of(np.concatenate(one.at_s), zone, first)
    judged = ~np.isnan(one.column("cold")).any(axis=0)
    air = np.concatenate([through.cut(int(at[0]), len(at)).temperature_c for at in one.at_s])
    share = np.concatenate(one.share)
    days = (last - first).days + 1
    coldest, warmest = (_by_day(air, day, days, most) for most in (np.fmin, np.fmax))
    return Season(
        barn=through.barn.barn,
        units=through.barn.units,
        first=first,
        last=last,
        coldest=coldest,
        warmest=warmest,
        ways=tuple(_way(through, name, story, day, days) for name, story in stories.items()),
        source=source,
        notes=notes,
        unjudged_h=float(share[~judged].sum()),
    )


def _day_of(at_s: Floats, zone: ZoneInfo, first: date) -> "np.ndarray[tuple[int], np.dtype[np.int_]]":
    """Local day of each hour, counted from the first."""
    at = (datetime.fromtimestamp(s, UTC).astimezone(zone).date() for s in at_s.tolist())
    return np.array([(day - first).days for day in at], dtype=np.int_)


def _by_day(values: Floats, day: "np.ndarray[tuple[int], np.dtype[np.int_]]", days: int, most: np.ufunc) -> Floats:
    found = np.full(days, np.nan)
    inside = (day >= 0) & (day < days)
    most.at(found, day[inside], values[inside])
    return found


def _way(
    through: Course, name: str, story: Story, day: "np.ndarray[tuple[int], np.dtype[np.int_]]", days: int
) -> WayReport:
    """One way's counts; cold is what is beyond the lack that a hardy horse bears."""
    cold = story.column("cold") + story.column("tolerance")
    heat, wet = story.column("heat"), story.column("wet")
    share = np.concatenate(story.share)
    horses = through.barn.horses
    counts = {
        horse.name: tally(cold[k], heat[k], wet[k], share, [worn[horse.name] for worn in story.worn])
        for k, horse in enumerate(horses)
    }
    inside = (day >= 0) & (day < days)
    by_day = [
        np.bincount(day[inside], ((strain < 0) * share)[:, inside].sum(axis=0), minlength=days).astype(np.float64)
        for strain in (cold, heat)
    ]
    return WayReport(name, counts, *by_day)


def bar(share: float) -> None:
    """A bar on standard error, where somebody looks at it."""
    if not sys.stderr.isatty():
        return
    width = 40
    full = int(width * share)
    end = "\n" if share >= 1 else ""
    sys.stderr.write(f"\r[{'#' * full}{'.' * (width - full)}] {100 * share:3.0f}%{end}")
    sys.stderr.flush()
