"""Closet: what a barn's own past says of its clothes: never worn, missed, what was seen in them, what to buy first.

A look at all of it takes seconds in a large barn: whoever talks to people does it beside the talk.
"""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from typing import Any

import numpy as np

from bot.barn import Barn
from bot.brief import OUT_OF_SERVICE
from bot.events import Enrolled, Entry, Seen
from bot.season.living import Story, hours_of
from bot.season.past import Past, past
from bot.season.wardrobe import Wardrobe, wardrobe
from bot.state import State

WEEKS = 26  # looked back on where nobody says how far: a winter
NEEDED_DAYS = 21  # with fewer no advice: neither the weather nor the barn has shown what it does
NEW_FOR = timedelta(days=NEEDED_DAYS)  # a piece so lately on the list may still find its use
FELT = {"cold": "cold", "shivering": "cold", "hot": "warm", "sweating": "warm", "rubbed": "rubbed"}
BARE = ""


@dataclass(frozen=True)
class Closet:
    """What some weeks of record say. days: of which plan and weather are known; first, last: local days.

    coldest_c, warmest_c: air of these hours. worn: garment → rounds. reports: garment ("" is bare) → "cold", "warm" or
    "rubbed" → how often so reported in it. never_worn: at no round. out: garment → why it is out of service now.
    leaking: said soaked, and not since that they are in service again. advice: None where the record is too short.
    """

    barn: str
    first: date
    last: date
    days: int
    rounds: int
    coldest_c: float
    warmest_c: float
    worn: Mapping[str, int] = field(default_factory=dict)
    reports: Mapping[str, Mapping[str, int]] = field(default_factory=dict)
    never_worn: tuple[str, ...] = ()
    out: Mapping[str, str] = field(default_factory=dict)
    leaking: tuple[str, ...] = ()
    advice: Wardrobe | None = None

    def as_json(self) -> dict[str, Any]:
        """Plain values."""
        told = self.advice
        return {
            "barn": self.barn,
            "from": self.first.isoformat(),
            "to": self.last.isoformat(),
            "days": self.days,
            "days_needed": NEEDED_DAYS,
            "rounds": self.rounds,
            "air_c": [round(self.coldest_c, 1), round(self.warmest_c, 1)] if self.days else None,
            "rounds_worn": dict(self.worn),
            "reports": {garment or "bare": dict(seen) for garment, seen in self.reports.items()},
            "never_worn": list(self.never_worn),
            "leaking": list(self.leaking),
            "missed": [a.as_json() for a in told.missed] if told else None,
            "advice": [a.as_json() for a in told.advice] if told else None,
            "cold_hours_left": round(told.cold_h, 1) if told else None,
            "hot_hours_left": round(told.hot_h, 1) if told else None,
        }


def look_back(barn: Barn, entries: Sequence[Entry], sheets: Iterable[str], now: datetime, weeks: int = WEEKS) -> Closet:
    """The last weeks of a barn. sheets: of these weeks, as the ledger keeps them, oldest first."""
    since = now - timedelta(weeks=weeks)
    found = past(barn, entries, sheets, since, now)
    judged, air = _known(found)
    windows, today = found.course.windows, now.astimezone(barn.zone).date()
    days = int(judged // 24)
    told = wardrobe(found.course, Story(worn=[dict(w) for w in found.worn]), found.at_hand) if _enough(days) else None
    worn = Counter(g for each in found.worn for wear in each.values() for g in wear)
    reports = _reports(found.lately, found.state)
    missed = {a.garment for a in told.missed} if told else set()
    return Closet(
        barn=barn.barn,
        first=windows[0].start.astimezone(barn.zone).date() if windows else today,
        last=windows[-1].start.astimezone(barn.zone).date() if windows else today,
        days=days,
        rounds=len(windows),
        coldest_c=float(np.nanmin(air)) if days else np.nan,
        warmest_c=float(np.nanmax(air)) if days else np.nan,
        worn=dict(worn),
        reports=reports,
        never_worn=_never_worn(barn, worn.keys() | reports.keys() | missed, found.lately, now),
        out={g: now.state for g, now in found.state.garments.items() if now.state in OUT_OF_SERVICE},
        leaking=tuple(g.id for g in barn.garments if g.waterproof and g.id in found.state.soaked_through),
        advice=told,
    )


def _enough(days: int) -> bool:
    return days >= NEEDED_DAYS


def _known(found: Past) -> tuple[float, "np.ndarray[tuple[int], np.dtype[np.float64]]"]:
    """How many hours of the rounds the weather is known of, and the air of these [°C]."""
    skies = [hours_of(found.course, window) for window in found.course.windows]
    air = np.concatenate([np.zeros(0), *(hours.temperature_c for _, hours, _ in skies)])
    share = np.concatenate([np.zeros(0), *(share for _, _, share in skies)])
    known = ~np.isnan(air) & (share > 0)
    return float(share[known].sum()), air[known]


def _reports(entries: Iterable[Entry], state: State) -> dict[str, dict[str, int]]:
    """How often horses were reported cold, too warm or rubbed in each garment; sweat that work explains is left out."""
    explained = {number for now in state.horses.values() for number in now.explained}
    found: dict[str, Counter[str]] = {}
    for entry in entries:
        event = entry.event
        if not isinstance(event, Seen) or event.wore is None or event.sign not in FELT:
            continue
        felt = FELT[event.sign]
        if felt == "warm" and entry.number in explained:
            continue
        for garment in event.wore or (BARE,):
            found.setdefault(garment, Counter())[felt] += 1
    return {garment: dict(seen) for garment, seen in found.items()}


def _never_worn(barn: Barn, used: Iterable[str], entries: Iterable[Entry], now: datetime) -> tuple[str, ...]:
    """The pieces that no round and no report had on a horse, but coolers, which no round tells of, and new ones."""
    new = {
        e.event.name
        for e in entries
        if isinstance(e.event, Enrolled) and e.event.section == "garments" and now - e.at < NEW_FOR
    }
    idle = {g.id for g in barn.garments if g.kind != "cooler"} - set(used) - new
    return tuple(g.id for g in barn.garments if g.id in idle)
