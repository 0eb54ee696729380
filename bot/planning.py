"""From a state and a forecast to the sheet for some windows; remembers what each sign taught and what was priced."""

import time
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime

from bot.barn import Barn
from bot.brief import Cut, question
from bot.draft import sheet
from bot.evidence import Known, Lesson, herd, lessons
from bot.forecast import Forecast, unknown_hours, window
from bot.sheet import Sheet, Source, Window
from bot.state import State
from rules.offset import Learned
from rules.plan import Plan, choose, price
from rules.question import Question
from rules.weather import Hours

NO_FORECAST = Source(source=None, stale=True)


def cutter(forecast: Forecast | None) -> Cut:
    """Cuts a forecast to an exact grid; without a forecast every hour is unknown."""

    def cut(start_s: int, count: int) -> Hours:
        return unknown_hours(start_s, count) if forecast is None else window(forecast.hours, start_s, count)

    return cut


@dataclass
class Planner:
    """Plans one barn. Holds caches only: two planners of one barn give the same sheet."""

    barn: Barn
    known: Known = field(default_factory=dict)

    def sheet(
        self,
        state: State,
        forecast: Forecast | None,
        windows: Sequence[Window],
        now: datetime,
        told: Sheet | None = None,
    ) -> Sheet:
        """The plan for `windows` as seen from `now`, on a sheet. told: the sheet that people go by so far."""
        began = time.perf_counter()
        asked = self.question(state, forecast, windows, now, told)
        plan = self.plan(asked)
        took_ms = 1000 * (time.perf_counter() - began)
        source = NO_FORECAST if forecast is None else forecast.source_at(now)
        notes = () if forecast is None else forecast.notes
        return sheet(self.barn, asked, plan, windows, now, source, notes, took_ms)

    def question(
        self,
        state: State,
        forecast: Forecast | None,
        windows: Sequence[Window],
        now: datetime,
        told: Sheet | None = None,
    ) -> Question:
        """What the rules are asked."""
        return question(self.barn, state, cutter(forecast), windows, now, self.learned(state, now), told)

    def plan(self, asked: Question) -> Plan:
        """The plan itself."""
        return choose(price(asked), asked)

    def lessons(self, state: State, horse: str, now: datetime) -> list[Lesson]:
        """What each of a horse's signs taught."""
        return lessons(self.barn, state, self.barn.horse(horse), int(now.timestamp()), self.known)

    def learned(self, state: State, now: datetime) -> dict[str, Learned]:
        """What has been learned of each horse."""
        return herd(self.barn, state, int(now.timestamp()), self.known)
