"""The barn at an instant, as plain values: each horse, each garment, the plan that stands."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import UTC, date, datetime, tzinfo
from typing import TYPE_CHECKING

from bot.events import Entry, GarmentWord, RecheckSet, Seen, Style, Where

if TYPE_CHECKING:
    from rules.acclimatised import Weeks


@dataclass(frozen=True)
class HorseNow:
    """One horse at an instant. wear None: nobody said. signs: every sign that stands, oldest first.

    quiet: each round ticked done, as if it had been called comfortable in what it wore until then. weeks: the weather
    that it lived through; no report but the barn's own record, so no part of what makes two states equal.
    """

    wear: tuple[str, ...] | None = None
    wear_at: datetime | None = None
    placed: Where | None = None
    placed_at: datetime | None = None
    clip: Style = "none"
    clip_on: date | None = None
    clips: tuple[tuple[datetime, Style], ...] = ()  # each clip and from when on, oldest first
    keep_bare: bool = False
    signs: tuple[Entry, ...] = ()
    quiet: tuple[Entry, ...] = ()
    explained: frozenset[int] = frozenset()  # numbers of signs that something else than clothes explains
    worked_at: datetime | None = None
    unwell_at: datetime | None = None
    recheck: Entry | None = None  # the open RecheckSet
    weeks: "Weeks | None" = field(default=None, compare=False)

    def last(self, *signs: str) -> Entry | None:
        """The latest standing entry with one of these signs (any sign where none is named)."""
        for entry in reversed(self.signs):
            event = entry.event
            if isinstance(event, Seen) and (not signs or event.sign in signs):
                return entry
        return None

    def clipped_at(self, at: datetime) -> "HorseNow":
        """The same horse with the clip it had at an instant."""
        past = [(style, on.date()) for on, style in self.clips if on <= at]
        if past:
            return replace(self, clip=past[-1][0], clip_on=past[-1][1])
        return replace(self, clip="none", clip_on=None) if self.clips else self


@dataclass(frozen=True)
class GarmentNow:
    """One garment at an instant. since None: as the file says."""

    state: GarmentWord
    since: datetime | None = None


@dataclass(frozen=True)
class Hung:
    """A piece that was wet from an instant on, and what a hand found it to be later: how long drying takes here."""

    garment: str
    water: GarmentWord
    since: datetime
    looked: datetime
    found: GarmentWord


@dataclass(frozen=True)
class Standing:
    """The plan that stands: the latest post, as changed since, and who is done."""

    number: int  # the ledger number of the Posted entry
    round: str
    day: date
    start: datetime
    end: datetime
    wear: Mapping[str, tuple[str, ...]]
    done: frozenset[str] = frozenset()
    nudged: bool = False
    done_by: Mapping[str, str] = field(default_factory=dict)  # horse → who said so
    at: datetime | None = None  # when it was posted
    before: "Standing | None" = None  # the round that people still go by until this one starts


@dataclass(frozen=True)
class State:
    """The barn at an instant."""

    horses: Mapping[str, HorseNow]
    garments: Mapping[str, GarmentNow]
    standing: Standing | None = None
    posted: frozenset[tuple[str, date]] = frozenset()
    rubs: Mapping[str, frozenset[str]] = field(default_factory=dict)  # garment id → horses it rubs
    soaked_through: frozenset[str] = frozenset()  # ids: said soaked, and not since that they are in service again
    hung: tuple[Hung, ...] = ()
    zone: tzinfo = UTC  # the barn's own: what is said at nine in the evening counts for that day

    def after(self, weeks: "Weeks | None") -> "State":
        """The same barn once its horses have lived through this weather; None: nobody knows."""
        return replace(self, horses={name: replace(now, weeks=weeks) for name, now in self.horses.items()})

    def wearing(self) -> dict[str, tuple[str, ...] | None]:
        """What each horse is recorded as wearing."""
        return {name: now.wear for name, now in self.horses.items()}

    def rechecks(self) -> list[tuple[str, RecheckSet]]:
        """The open rechecks, earliest due first."""
        found = [
            (name, now.recheck.event)
            for name, now in self.horses.items()
            if now.recheck and isinstance(now.recheck.event, RecheckSet)
        ]
        return sorted(found, key=lambda item: item[1].due)
