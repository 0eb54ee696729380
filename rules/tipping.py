"""Tipping: what would change the advice for one horse: a few reports more, another offset, other weather.

Nothing is estimated here. Each answer is the very same plan made once more with one thing shifted, and each number of
reports the very same learning with so many reports more. Only this horse is planned anew; the others keep the spares
that the plan gives them.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from functools import cached_property

import numpy as np

from rules import parameters as p
from rules.day import Take, cheapest, without
from rules.decision import worst
from rules.offset import Common, Evidence, Schooling, schooled
from rules.outlook import outlooks
from rules.plan import share_out
from rules.pricing import Priced, price
from rules.question import Question, Wearer
from rules.stand import Indices
from rules.weather import Hours

Wear = tuple[str, ...]

MOST_REPORTS = 6
OFFSET_STEP_K, AIR_STEP_K, MOST_AIR_STEPS = 0.5, 1.0, 10
WIND_STEP_MS, GUST_STEP_MS, MOST_GUST_MS = 2.0, 3.0, 30.0  # a gust adds half as much again as the mean; a storm at most
STEADY_RAIN_MM = 1.0  # in an hour
DRY_MM = 0.5  # less over a window is no rain that decides anything
LIKE_K = 0.25  # clothes that differ by less are the same to the horse
SEEN = 0.05  # a smaller difference of a barn's number moves nothing that is worth a try


class By(StrEnum):
    """What is shifted until another outfit is chosen."""

    COLD_SAID = "more reports of cold"  # amount: how many; hour: the one they are like
    SWEATING_SAID = "more reports of sweating"
    FEELS_MORE = "feels the cold more"  # amount: by so much more than it does now [K]
    FEELS_LESS = "feels the cold less"
    COLDER = "colder"  # amount: all hours by so much [K]
    WARMER = "warmer"
    RAIN = "rain"  # amount: in each hour of the window [mm]
    DRY = "dry"
    WIND = "wind"  # amount: the strongest gust of the window then [m/s]
    WIND_AS_TOLD = "wind as forecast"  # amount: what the barn has learned of it instead, see `rules.offset.Common`
    FILL_AS_COMPUTED = "fill as computed"
    BORNE_AS_COMPUTED = "cold borne as computed"
    STALL_AS_COMPUTED = "stalls as computed"
    REGROWTH_AS_COMPUTED = "coats grow back as computed"


@dataclass(frozen=True, slots=True)
class Turn:
    """What would change the advice, by how much, and to what: garment ids, skin outward.

    hour: index into the question's hours, where one stands for the kind of hour meant.
    """

    by: By
    amount: float
    wear: Wear
    hour: int | None = None


@dataclass(frozen=True)
class Choice:
    """One horse's choice in one window of a question. KeyError where the question has no such horse.

    Shifted, it is chosen as for a new round: nobody counts as told, so nothing is held on to for having been said.
    """

    question: Question
    horse: str
    window: int = 0

    @cached_property
    def wear(self) -> Wear:
        """What the plan has it wear."""
        return self._priced.outfits[self.window][self._path(self._priced)[self.window]].ids

    @cached_property
    def wearer(self) -> Wearer:
        """The horse as it was asked about, of which nobody was told anything."""
        found = {w.horse.name: w for w in self.question.wearers}[self.horse]
        return replace(found, told=())

    def warmth(self, wear: Wear) -> float:
        """Cold margin that it would have at the worst hour [K]; NaN for what it may not wear or nobody could judge."""
        stand, row = self._priced.stands[self.window], self._row
        cases = [int(case) for outfit, case in zip(self._priced.outfits[self.window], row) if outfit.ids == wear]
        found = worst(stand.cold[cases[0]], stand) if cases else None
        return np.nan if found is None else found.value

    def again(self, wearer: Wearer | None = None, **other: object) -> Wear:
        """What it would wear if it were another horse, or other things were asked: fields of `Question`."""
        mine = wearer or self.wearer
        wearers = tuple(mine if w.horse.name == self.horse else w for w in self.question.wearers)
        priced = self._price(replace(self.question, wearers=wearers, **other))  # type: ignore[arg-type]
        return priced.outfits[self.window][self._path(priced)[self.window]].ids

    def seen(self, sign: str) -> tuple[Evidence, int] | None:
        """A sign on it at the worst hour for it in what it is to wear, and that hour; None where none is judged."""
        stand = self._priced.stands[self.window]
        case = int(self._row[self._path(self._priced)[self.window]])
        hour = worst((stand.heat if sign == "sweating" else stand.cold)[case], stand)
        if hour is None:
            return None
        at = int(np.searchsorted(stand.hours, hour.hour))
        offset, less = self.wearer.offset_c, self.wearer.bears_less_c
        cold, heat = float(stand.cold[case, at]) + offset, float(stand.heat[case, at]) - offset
        bears = float(stand.tolerance[case, at]) + less
        return Evidence(0, sign, cold, heat, bears_c=bears, bare=not self.wear), hour.hour

    @property
    def _row(self) -> Indices:
        """The case of each outfit of the window."""
        row: Indices = self._priced.cases[self.window][self._priced.came(self.window, self._path(self._priced))]
        return row

    def _path(self, priced: Priced) -> tuple[int, ...]:
        return cheapest(without(priced.steps, self._lent)).path

    def _price(self, question: Question) -> Priced:
        return price(question, frozenset({self.horse}))[self.horse]

    @cached_property
    def _priced(self) -> Priced:
        return self._price(self.question)

    @cached_property
    def _lent(self) -> frozenset[Take]:
        """The spares that others have: what people were told of them, else what the plan gives them.

        None where this horse would want none.
        """
        others = [w for w in self.question.wearers if w.horse.name != self.horse]
        if not self._priced.steps.wanted or not others:
            return frozenset()
        told = [(g, window) for w in others for window, wear in enumerate(w.told) for g in wear or ()]
        if all(len(w.told) == len(self.question.share) and None not in w.told for w in others):
            return frozenset(told)
        ways = share_out(price(self.question), self.question)
        return frozenset(take for name, way in ways.items() if name != self.horse for take in way.takes)


def by_reports(choice: Choice, schooling: Schooling) -> Iterator[Turn]:
    """How many more reports of cold, and of sweating, at the worst hour of the window would change what it wears.

    A horse that was called cold is dressed for a day, whatever was learned; so it is here.
    """
    for by, sign, side in ((By.COLD_SAID, "cold", 1), (By.SWEATING_SAID, "sweating", -1)):
        seen = choice.seen(sign)
        if seen is None:
            continue
        report, hour = seen

        def told(times: int, report: Evidence = report, chilly: bool = sign == "cold") -> Wear:  # noqa: FBT001
            wearer = schooled(choice.wearer, schooling.after(report, times))
            return choice.again(replace(wearer, must_clothe=wearer.must_clothe or chilly))

        for times, wear in _first(choice, MOST_REPORTS, told, side):
            yield Turn(by, times, wear, hour)


def by_offset(choice: Choice) -> Iterator[Turn]:
    """How much more, and less, the horse would have to feel the cold [K], within what an offset may be."""
    wearer = choice.wearer
    for by, side in ((By.FEELS_MORE, 1), (By.FEELS_LESS, -1)):

        def felt(steps: int, side: int = side) -> Wear:
            return choice.again(replace(wearer, offset_c=wearer.offset_c + side * steps * OFFSET_STEP_K))

        room = int((p.OFFSET_MOST - side * wearer.offset_c) / OFFSET_STEP_K)
        for steps, wear in _first(choice, room, felt, side):
            yield Turn(by, steps * OFFSET_STEP_K, wear)


def by_weather(choice: Choice) -> Iterator[Turn]:
    """How much colder or warmer, with rain or without, in how strong a wind it would wear something else."""
    hours = choice.question.hours
    for by, side in ((By.COLDER, 1), (By.WARMER, -1)):

        def in_air(steps: int, side: int = side) -> Wear:
            return _under(choice, replace(hours, temperature_c=hours.temperature_c - side * steps * AIR_STEP_K))

        for steps, wear in _first(choice, MOST_AIR_STEPS, in_air, side):
            yield Turn(by, steps * AIR_STEP_K, wear)
    yield from _by_rain(choice)
    yield from _by_wind(choice)


def by_barn(choice: Choice, schooling: Schooling) -> Iterator[Turn]:
    """Which of the numbers that the barn's horses have in common decide this: without it, something else is worn."""
    common, usual = schooling.common, Common()
    for by, name in (
        (By.WIND_AS_TOLD, "wind"),
        (By.FILL_AS_COMPUTED, "fill_gives_c"),
        (By.BORNE_AS_COMPUTED, "bears_less_c"),
        (By.STALL_AS_COMPUTED, "stall_warmer_c"),
        (By.REGROWTH_AS_COMPUTED, "regrowth"),
    ):
        found, computed = getattr(common, name), getattr(usual, name)
        if abs(found - computed) < SEEN:
            continue
        without_it = replace(schooling, common=replace(common, **{name: computed}))
        site = without_it.common.at(choice.question.site)
        wearer = schooled(choice.wearer, without_it.learned())
        wear = choice.again(wearer, site=site)
        if wear != choice.wear:
            yield Turn(by, found, wear)


def _by_rain(choice: Choice) -> Iterator[Turn]:
    """Steady rain through the window where none is forecast and it is not freezing; none where there is some."""
    hours = choice.question.hours
    inside = choice.question.share[choice.window] > 0
    view = outlooks(choice.question)[choice.window]
    if view.rain + view.wet_snow < DRY_MM:
        by, amount, where = By.RAIN, STEADY_RAIN_MM, inside & (hours.temperature_c > 0)
        fall, chance = np.fmax(hours.rain_mm, STEADY_RAIN_MM), 100.0
    else:
        by, amount, where, fall, chance = By.DRY, 0.0, inside, np.zeros(len(hours)), 0.0
    if not where.any():
        return
    likely = np.where(where, chance, hours.rain_probability_pct)
    wear = _under(choice, replace(hours, rain_mm=np.where(where, fall, hours.rain_mm), rain_probability_pct=likely))
    if wear != choice.wear:
        yield Turn(by, amount, wear)


def _by_wind(choice: Choice) -> Iterator[Turn]:
    hours, gust = choice.question.hours, outlooks(choice.question)[choice.window].gust
    if gust is None:
        return

    def blown(steps: int) -> Wear:
        wind, gusts = hours.wind_ms + steps * WIND_STEP_MS, hours.gust_ms + steps * GUST_STEP_MS
        return _under(choice, replace(hours, wind_ms=wind, gust_ms=gusts))

    most = int((MOST_GUST_MS - gust.value) / GUST_STEP_MS)
    for steps, wear in _first(choice, most, blown):
        yield Turn(By.WIND, gust.value + steps * GUST_STEP_MS, wear, gust.hour)


def _under(choice: Choice, hours: Hours) -> Wear:
    return choice.again(hours=hours)


def _first(choice: Choice, most: int, wear_after: Callable[[int], Wear], side: int = 0) -> Iterator[tuple[int, Wear]]:
    """The least number of steps after which something else is worn, and what; nothing where `most` are not enough.

    side: 1 where only warmer clothes count, −1 only lighter ones, 0 any others. By bisection: between a number of
    steps that changes nothing and one that does.
    """
    now = choice.warmth(choice.wear)

    def other(wear: Wear) -> bool:
        return wear != choice.wear and (not side or side * (choice.warmth(wear) - now) > LIKE_K)

    if most < 1 or not other(found := wear_after(most)):
        return
    same, enough = 0, most
    while enough - same > 1:
        middle = (same + enough) // 2
        wear = wear_after(middle)
        same, enough, found = (same, middle, wear) if other(wear) else (middle, enough, found)
    yield enough, found


def nearest(turns: Sequence[Turn]) -> dict[Wear, list[Turn]]:
    """The turns by what would be worn, in their order."""
    found: dict[Wear, list[Turn]] = {}
    for turn in turns:
        found.setdefault(turn.wear, []).append(turn)
    return found
