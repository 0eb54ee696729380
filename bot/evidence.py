"""A sign → Evidence: what the horse's margins were in that hour, in what it really wore.

Facts come from the ledger (wear, weather); the margins are today's model's, so a better model re-reads the past.
"""

from collections.abc import Iterable
from datetime import UTC, timedelta

import numpy as np

from bot.barn import Barn
from bot.barn import Horse as FiledHorse
from bot.brief import garment, horse, site
from bot.events import Entry, Seen
from bot.forecast import from_air
from bot.state import HorseNow, State
from rules.dressed import Dressed
from rules.lived import live
from rules.offset import Evidence, Learned, learn
from rules.question import Piece, Stay

Known = dict[int, Evidence | None]  # ledger number → what it taught; a cache that an undo never needs to clear


def learned(barn: Barn, state: State, filed: FiledHorse, now_s: int, known: Known) -> Learned:
    """What all of a horse's standing signs teach, seen from `now_s`."""
    now = state.horses[filed.name]
    return learn([e for _, e in evidence(barn, filed, now, known)], now_s, widening(now))


def evidence(barn: Barn, filed: FiledHorse, now: HorseNow, known: Known) -> Iterable[tuple[Entry, Evidence]]:
    """Each sign that could be weighed, oldest first, with what it was worth."""
    for entry in now.signs:
        if entry.number not in known:
            known[entry.number] = weigh(barn, filed, now, entry)
        found = known[entry.number]
        if found is not None:
            yield entry, found


def widening(now: HorseNow) -> list[int]:
    """Instants (POSIX s) from which earlier evidence says less: the clip, an illness."""
    days = [] if now.clip_on is None or now.clip == "none" else [now.clip_on]
    clips = [int(_noon(day)) for day in days]
    ill = [int(e.at.timestamp()) for e in now.signs if isinstance(e.event, Seen) and e.event.sign == "unwell"]
    return sorted(clips + ill)


def _noon(day: object) -> float:
    from datetime import date, datetime, time

    assert isinstance(day, date)
    return datetime.combine(day, time(12), UTC).timestamp()


def weigh(barn: Barn, filed: FiledHorse, now: HorseNow, entry: Entry) -> Evidence | None:
    """One sign as evidence; None where the weather or the clothes of that hour are not known."""
    event = entry.event
    if not isinstance(event, Seen) or event.air is None or event.wore is None:
        return None
    cold, heat, bears = margins(barn, filed, now, event)
    if not np.isfinite(cold) or not np.isfinite(heat):
        return None
    return Evidence(
        at_s=int(entry.at.timestamp()),
        sign=event.sign,
        cold_margin_c=cold,
        heat_margin_c=heat,
        explained=entry.number in now.explained,
        who=entry.who,
        bears_c=bears,
    )


def margins(barn: Barn, filed: FiledHorse, now: HorseNow, event: Seen) -> tuple[float, float, float]:
    """Cold and heat margin [K], offset left out, of the last hour of the sign's air in what was worn; and what the
    horse may lack and still be fine.
    """
    assert event.air is not None
    assert event.wore is not None
    hours, start = from_air(event.air), event.air.start
    pieces = {g.id: Piece(garment(g)) for g in barn.garments if g.id in event.wore}
    then = horse(filed, now, start + timedelta(hours=len(hours)))
    dressed = Dressed(then, tuple(pieces[g] for g in event.wore if g in pieces))
    stay = Stay(event.where or "field", filed.shelter, filed.hay)
    lived = live([dressed], [stay], hours, site(barn), start.timetuple().tm_yday)
    return float(lived.cold[0, -1]), float(lived.heat[0, -1]), float(lived.tolerance[0, -1])
