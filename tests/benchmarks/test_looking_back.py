"""How long a look back on a barn's weeks takes. Measured and printed, never asserted: --benchmark-enable -s."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from typing import Any

from bot.barn import Barn
from bot.draft import sky
from bot.events import Entry, Posted
from bot.planning import Planner
from bot.season.closet import look_back
from bot.sheet import Sheet, dump
from bot.state import as_filed
from tests.barn_group import Group
from tests.hidden_herd import inland

WEEKS = 8
DAY = timedelta(days=1)


def winter(barn: Barn) -> tuple[list[Entry], list[str], datetime]:
    """Both rounds of each day: one real plan, told again every day under that day's weather."""
    group = Group(barn)
    planner, state = Planner(barn), as_filed(barn)
    hours = inland(group.at("26 0:00"), 7 * WEEKS + 2, 1)
    entries: list[Entry] = []
    sheets: list[str] = []
    one = {c: planner.sheet(state, group.forecast, windows(barn, group.at(c)), group.at(c)) for c in ("7:00", "16:30")}
    for day in range(7 * WEEKS):
        for sheet in one.values():
            made = moved(sheet, day * DAY, hours)
            window = made.windows[0]
            wear = {h.horse: h.windows[0].wear for h in made.horses}
            posted = Posted(window.round, window.start.date(), window.start, window.end, wear)
            entries.append(Entry(len(entries) + 1, made.made_at, "haybell", "", posted))
            sheets.append(dump(made))
    return entries, sheets, group.at("26 7:00") + 7 * WEEKS * DAY


def windows(barn: Barn, at: datetime) -> Sequence[Any]:
    """The windows from one instant on."""
    from bot.rounds import windows as rounds

    return rounds(barn, at)


def moved(sheet: Sheet, by: timedelta, hours: Any) -> Sheet:
    """A sheet of another day, with that day's sky."""
    from bot.forecast import window

    clock = [hour.at + by for hour in sheet.sky]
    then = window(hours, int(clock[0].timestamp()), len(clock))
    moved_on = tuple(replace(w, start=w.start + by, end=w.end + by) for w in sheet.windows)
    return replace(sheet, made_at=sheet.made_at + by, windows=moved_on, sky=sky(then, clock))


def test_eight_weeks_looked_back_on(benchmark: Any, barn: Barn) -> None:
    """Twelve horses: reading the sheets, every outfit through every hour, each horse's best ways."""
    entries, sheets, now = winter(barn)
    closet = benchmark.pedantic(look_back, (barn, entries, sheets, now), rounds=1)
    assert closet.advice is not None
