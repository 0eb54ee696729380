"""From a state and a forecast to the sheet for some windows; remembers what each sign taught and what was priced."""

import time
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta

from bot import rounds
from bot.barn import Barn
from bot.brief import Cut, question
from bot.draft import sheet
from bot.evidence import Known, Lesson, herd, lessons, schooling, shared
from bot.forecast import Forecast, unknown_hours, window
from bot.sheet import Sheet, Source, Window
from bot.state import State
from bot.tips import Tips
from rules.offset import Common, Learned
from rules.plan import Plan, choose, price
from rules.question import Question
from rules.tipping import Choice, by_barn, by_offset, by_reports, by_weather
from rules.weather import Hours

HOUR = timedelta(hours=1)
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

    def common(self, state: State, now: datetime) -> Common:
        """What all horses of the barn have in common."""
        return shared(self.barn, state, int(now.timestamp()), self.known)

    def tips(
        self, state: State, forecast: Forecast | None, told: Sheet | None, horse: str, now: datetime, who: str = ""
    ) -> Tips:
        """What would change what a horse is to wear in the window that runs: reports, weather, the barn's own numbers.

        told: the sheet that people go by; None: nobody was told anything yet. who: whose reports they would be, in turn
        with somebody else's.
        """
        return self._tips(self._choice(state, forecast, told, horse, now), state, now, who)

    def all_tips(self, state: State, forecast: Forecast | None, told: Sheet | None, horse: str, now: datetime) -> Tips:
        """The same, and how much more or less the horse would have to feel the cold."""
        choice = self._choice(state, forecast, told, horse, now)
        tips = self._tips(choice, state, now)
        return replace(tips, turns=(*tips.turns, *by_offset(choice)))

    def _tips(self, choice: Choice, state: State, now: datetime, who: str = "") -> Tips:
        asked, filed = choice.question, self.barn.horse(choice.horse)
        school = schooling(self.barn, state, filed, int(now.timestamp()), self.known)
        others = [person.name for person in self.barn.people if person.name != who]
        school = replace(school, voices=((who, *others) if who else (*others, ""))[:2])
        turns = *by_reports(choice, school), *by_weather(choice), *by_barn(choice, school)
        start = datetime.fromtimestamp(asked.hours.start_s, UTC)
        clock = tuple(start + k * HOUR for k in range(len(asked.hours)))
        return Tips(choice.wear, turns, clock, len({*school.voices} - {""}))

    def _choice(self, state: State, forecast: Forecast | None, told: Sheet | None, horse: str, now: datetime) -> Choice:
        ahead = [w for w in told.windows if w.end > now] if told else []
        windows = ahead or rounds.windows(self.barn, now)
        return Choice(self.question(state, forecast, windows, now, told), horse)
