"""The barn's own past: its ledger and its sheets as posted, as a course to look back on.

The weather of an hour is what the last forecast before its end said of it: sheets tell of the hours ahead of them, a
sign and a round ticked done of the day behind them. What could not be put on is what the round's sheet said, or the
one that a word during the round brought about.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

import numpy as np
from pydantic import TypeAdapter

from bot.barn import Barn
from bot.events import Air, Done, Entry, Seen
from bot.evidence import herd
from bot.forecast import from_air, unknown_hours
from bot.forecast.hours import COLUMNS, HOUR
from bot.hearing import wore
from bot.season.hindsight import AtHand, Away
from bot.season.living import Course, Wear
from bot.sheet import DryingSheet, SkyHour, Window
from bot.state import ROUND_AFTER, State, apply, as_filed, fold
from rules.reason import Code, Reason
from rules.weather import Hours

ELSEWHERE = "on another horse"
NOT_THERE = frozenset({Code.NOT_DRY, Code.OUT_OF_SERVICE, Code.RUBS})
SECOND = timedelta(seconds=1)


@dataclass(frozen=True)
class Refused:
    """Of a horse on a sheet, what is asked here."""

    horse: str
    refused: tuple[Reason, ...] = ()


@dataclass(frozen=True)
class Posted:
    """Of a sheet as posted, what is asked here: to read all of it takes three times as long."""

    made_at: datetime
    windows: tuple[Window, ...]
    sky: tuple[SkyHour, ...]
    horses: tuple[Refused, ...]
    drying: tuple[DryingSheet, ...] = ()


POSTED = TypeAdapter(Posted)


@dataclass(frozen=True)
class Past:
    """Rounds that are over. worn: by window, horses of which nobody knows left out. state: the barn as it is now.

    lately: what was told in these weeks and stands, oldest first.
    """

    course: Course
    worn: tuple[Mapping[str, Wear], ...]
    at_hand: AtHand
    state: State
    lately: tuple[Entry, ...]


def past(barn: Barn, entries: Iterable[Entry], sheets: Iterable[str], since: datetime, now: datetime) -> Past:
    """What the rounds from `since` to `now` left on record. sheets: as the ledger keeps them, oldest first."""
    standing = sorted((e for e in entries if e.undone_by is None), key=lambda e: (e.at, e.number))
    posted = [s for s in map(POSTED.validate_json, sheets) if since <= s.made_at <= now]  # a clock may have gone wrong
    lately = [entry for entry in standing if since <= entry.at <= now]
    rounds = {s.windows[0].start: s for s in reversed(posted) if s.windows}  # as posted
    rounds |= {s.windows[0].start: s for s in posted if s.windows and s.made_at <= s.windows[0].start + ROUND_AFTER}
    last = [s for _, s in sorted(rounds.items()) if s.windows[0].end <= now]
    windows = tuple(s.windows[0] for s in last)
    told = [max(s.made_at, s.windows[0].start) for s in last]
    course = Course(barn, recorded(posted, lately), windows)
    states = _states(barn, standing, {*told, *(w.end - SECOND for w in windows)})
    worn = tuple(_worn(barn, states[w.end - SECOND], w.end - SECOND) for w in windows)
    state = fold(barn, standing).after(course.weeks)
    return Past(
        course=course,
        worn=worn,
        at_hand=AtHand(
            states=[states[at].after(course.weeks) for at in told],
            away=[_away(barn, s, states[at], w) for s, at, w in zip(last, told, worn)],
            absent=[frozenset(h.name for h in barn.horses) - {h.horse for h in s.horses} for s in last],
            learned=herd(barn, state, int(now.timestamp()), {}),
        ),
        state=state,
        lately=tuple(lately),
    )


def _states(barn: Barn, standing: Sequence[Entry], instants: Iterable[datetime]) -> dict[datetime, State]:
    """The barn at each instant, from entries in the order of their time."""
    state, found, at = as_filed(barn), {}, 0
    for instant in sorted(instants):
        while at < len(standing) and standing[at].at <= instant:
            state, at = apply(state, standing[at]), at + 1
        found[instant] = state
    return found


def _worn(barn: Barn, state: State, at: datetime) -> dict[str, Wear]:
    known = ((horse.name, wore(state, horse.name, at)) for horse in barn.horses)
    return {name: wear for name, wear in known if wear is not None}


def _away(barn: Barn, sheet: Posted, state: State, worn: Mapping[str, Wear]) -> Away:
    """What the sheet refused each horse because it was not there, and the spares that another one wore, with why."""
    wet = {d.garment: d.state for d in sheet.drying}
    spares = {g.id for g in barn.garments if g.horse is None}
    taken = {g: name for name, wear in worn.items() for g in wear if g in spares}
    found = {}
    for horse in sheet.horses:
        gone = {r.garment: _why(r, wet, state) for r in horse.refused if r.garment and r.code in NOT_THERE}
        found[horse.horse] = gone | {g: ELSEWHERE for g, name in taken.items() if name != horse.horse}
    return found


def _why(reason: Reason, wet: Mapping[str, str], state: State) -> str:
    """Why a piece was not there, as a state of a garment, or as the sign it leaves."""
    if reason.code is Code.RUBS:
        return "rubbed"
    now = state.garments.get(reason.garment or "")
    return wet.get(reason.garment or "", now.state if now else "missing")


# --- the weather


def recorded(sheets: Iterable[Posted], entries: Iterable[Entry]) -> Hours:
    """Every hour that a sheet or an entry tells of; a later word on an hour counts, what it leaves open does not."""
    pieces = [(s.made_at, _sky(s.sky)) for s in sheets if s.sky]
    pieces += [(entry.at, from_air(air)) for entry in entries for air in _airs(entry)]
    if not pieces:
        return unknown_hours(0, 0)
    start = min(hours.start_s for _, hours in pieces)
    end = max(hours.start_s + HOUR * len(hours) for _, hours in pieces)
    found = unknown_hours(start, (end - start) // HOUR)
    for _, hours in sorted(pieces, key=lambda piece: piece[0]):
        begin = (hours.start_s - start) // HOUR
        for name in COLUMNS:
            told, here = getattr(hours, name), getattr(found, name)[begin : begin + len(hours)]
            here[:] = np.where(np.isnan(told), here, told)
    return found


def _airs(entry: Entry) -> Iterator[Air]:
    if isinstance(entry.event, Seen | Done) and entry.event.air is not None:
        yield entry.event.air


def _sky(sky: Sequence[SkyHour]) -> Hours:
    """The hours of a sheet, which follow each other without a gap."""
    return from_air(Air(sky[0].at, {name: [getattr(hour, name) for hour in sky] for name in COLUMNS}))
