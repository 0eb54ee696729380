"""Windows through a season, one after the other: what is chosen is worn, and what got wet hangs to dry."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta
from functools import cached_property

import numpy as np

from bot import brief
from bot.barn import Barn
from bot.forecast.hours import window as cut
from bot.rounds import windows as rounds_from
from bot.sheet import Window
from bot.state import GarmentNow, State, as_filed
from rules.acclimatised import Weeks, day_means
from rules.dressed import Dressed
from rules.lived import Carried, Lived
from rules.lived import live as live_window
from rules.weather import Floats, Hours, Site

Wear = tuple[str, ...]
HOUR = timedelta(hours=1)
Sky = tuple[datetime, Hours, Floats]  # first whole hour, the hours of a window, how much of each lies in it
HORIZON = timedelta(hours=24)


@dataclass(frozen=True)
class Course:
    """A barn and the recorded hours it goes through; windows from the first round to the last."""

    barn: Barn
    hours: Hours
    windows: tuple[Window, ...]

    @property
    def site(self) -> Site:
        """Where the barn stands."""
        return brief.site(self.barn)

    @cached_property
    def weeks(self) -> Weeks:
        """The days of the whole record, those before the first window too."""
        at_s = self.hours.start_s + 3600 * np.arange(len(self.hours))
        return Weeks(self.barn.place.latitude, day_means(zip(at_s.tolist(), self.hours.temperature_c.tolist())))

    def cut(self, start_s: int, count: int) -> Hours:
        """The recorded hours from an instant on; NaN outside the record."""
        return cut(self.hours, start_s, count)


@dataclass(frozen=True)
class Moment:
    """A round: the season so far as a state, and which window begins."""

    course: Course
    state: State
    k: int

    @property
    def window(self) -> Window:
        """The window that begins."""
        return self.course.windows[self.k]

    @property
    def ahead(self) -> tuple[Window, ...]:
        """The windows that begin within a day."""
        near = self.window.start + HORIZON
        return tuple(w for w in self.course.windows[self.k : self.k + 24] if w.start < near)


Choose = Callable[[Moment], Mapping[str, Wear]]  # what each horse is to wear from now on


@dataclass
class Story:
    """How a season went. worn: by window; the arrays have axes (horse, hour) and meet window by window.

    at_s: beginning of each hour, POSIX seconds, and share: how much of it counts, (hour,): an hour in which a round
    falls stands twice, with a part each time.
    """

    worn: list[dict[str, Wear]] = field(default_factory=list)
    lived: list[Lived] = field(default_factory=list)
    at_s: list[Floats] = field(default_factory=list)
    share: list[Floats] = field(default_factory=list)

    def column(self, name: str) -> Floats:
        """One of Lived's arrays over the whole season, (horse, hour)."""
        return np.concatenate([getattr(one, name) for one in self.lived], axis=1)


def course(barn: Barn, hours: Hours, start: datetime, end: datetime) -> Course:
    """The windows that lie between two instants (aware)."""
    found = rounds_from(barn, start, hours=(end - start) / HOUR)
    return Course(barn, hours, tuple(w for w in found if start <= w.start and w.end <= end))


def live(through: Course, choose: Choose, told: Callable[[int], None] = lambda k: None) -> Story:
    """The season when `choose` is asked at every round. told: is called with the number of windows behind."""
    state, story, carried = as_filed(through.barn).after(through.weeks), Story(), None
    for k, window in enumerate(through.windows):
        wear = dict(choose(Moment(through, state, k)))
        same = [wear[horse.name] == state.horses[horse.name].wear for horse in through.barn.horses]
        state = dressed(state, wear, window.start)
        start, hours, share = hours_of(through, window)
        lived = _through(through, state, window, hours, carried, same)
        story.worn.append(wear)
        story.lived.append(lived)
        story.at_s.append(start.timestamp() + 3600.0 * np.arange(len(hours), dtype=np.float64))
        story.share.append(share)
        state, carried = _after(state, through.barn, lived, window.end), lived.carried
        told(k + 1)
    return story


def hours_of(through: Course, window: Window) -> Sky:
    """The recorded hours of one window."""
    start = window.start.astimezone(UTC).replace(minute=0, second=0, microsecond=0)
    count = -((start - window.end) // HOUR)
    share = brief.shares([window], window.start, start, count)[0]
    return start, through.cut(int(start.timestamp()), count), share


def _through(
    through: Course, state: State, window: Window, hours: Hours, carried: Carried | None, same: list[bool]
) -> Lived:
    """Every horse through one window in what the state says it wears."""
    barn = through.barn
    pieces = {filed.id: brief.piece(barn, filed, state, window.start) for filed in barn.garments}
    stays = [brief.stay(filed, state.horses[filed.name], window) for filed in barn.horses]
    dressed = [
        Dressed(
            brief.horse(filed, state.horses[filed.name], window.start),
            tuple(pieces[g] for g in state.horses[filed.name].wear or ()),
            place,
        )
        for place, filed in enumerate(barn.horses)
    ]
    day = window.start.astimezone(UTC).timetuple().tm_yday
    return live_window(dressed, stays, hours, through.site, float(day), carried, same)


def dressed(state: State, wear: Mapping[str, Wear], at: datetime) -> State:
    """The state once everybody wears this; what comes off the rail is dry, for nothing else was to be chosen."""
    worn = {g for now in state.horses.values() for g in now.wear or ()}
    dry = {g: GarmentNow("dry", at) for own in wear.values() for g in own if g not in worn}
    horses = {name: replace(now, wear=wear[name], wear_at=at) for name, now in state.horses.items()}
    return replace(state, horses=horses, garments={**state.garments, **dry})


def _after(state: State, barn: Barn, lived: Lived, at: datetime) -> State:
    """The state when somebody has felt every piece that was worn: it is as wet as it is, from now on."""
    felt: dict[str, GarmentNow] = {}
    for horse, clothes in zip(barn.horses, lived.clothes):
        felt |= {g: GarmentNow(water, at) for g, water in zip(state.horses[horse.name].wear or (), clothes)}
    return replace(state, garments={**state.garments, **felt})
