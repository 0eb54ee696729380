"""A sign → Evidence: what the horse's margins were in that hour, in what it really wore.

Facts come from the ledger (wear, weather); the margins are today's model's, so a better model re-reads the past.
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, timedelta

import numpy as np

from bot.barn import Barn
from bot.barn import Horse as FiledHorse
from bot.brief import garment, horse, site, where
from bot.events import Entry, Seen, Style
from bot.forecast import from_air
from bot.rounds import current
from bot.state import HorseNow, State
from rules.dressed import Dressed
from rules.lived import last_hour
from rules.offset import WINDS, Common, Evidence, Learned, Schooling, prior_sd, silence_says
from rules.question import Piece, Stay
from rules.shared import common

NEW_COAT, NEW_COAT_SOUTH = 9, 3  # months: a horse in a new winter coat is partly another horse
WARM = frozenset({"sweating", "hot"})

ABOUT_IT = timedelta(hours=3)  # a word said so near a round was about what was found there

Pair = tuple[float, float]  # on the cold side and on the warm side
Margins = tuple[float, float, float, tuple[Pair, ...], float, Pair]
# a sign and the clip of that hour → its margins: only a cache
Known = dict[tuple[int, str, Style, date | None], Margins]


@dataclass(frozen=True)
class Lesson:
    """One sign and what it taught: the margin [K] on the side the sign speaks of, the shift [K] of the offset."""

    at: datetime
    who: str
    sign: str
    margin_c: float
    shift_c: float


def lessons(barn: Barn, state: State, filed: FiledHorse, now_s: int, known: Known) -> list[Lesson]:
    """What each of a horse's signs taught, oldest first."""
    found = list(evidence(barn, filed, state.horses[filed.name], known))
    shifts = learned(barn, state, filed, now_s, known).shifts[: len(found)]
    return [
        Lesson(entry.at, entry.who, one.sign, one.heat_margin_c if one.sign in WARM else one.cold_margin_c, shift)
        for (entry, one), shift in zip(found, shifts, strict=True)
    ]


def learned(barn: Barn, state: State, filed: FiledHorse, now_s: int, known: Known) -> Learned:
    """What all of a horse's standing signs teach, seen from `now_s`."""
    return schooling(barn, state, filed, now_s, known).learned()


def herd(barn: Barn, state: State, now_s: int, known: Known) -> dict[str, Learned]:
    """What has been learned of each horse."""
    barns = shared(barn, state, now_s, known)
    return {filed.name: schooling(barn, state, filed, now_s, known, barns).learned() for filed in barn.horses}


def schooling(
    barn: Barn, state: State, filed: FiledHorse, now_s: int, known: Known, barns: Common | None = None
) -> Schooling:
    """All that a horse's offset is learned from, seen from `now_s`: signs first, then the rounds without a remark.

    barns: what all horses have in common, where it is known already.
    """
    now = state.horses[filed.name]
    at = datetime.fromtimestamp(now_s, UTC)
    said = (e for _, e in evidence(barn, filed, now, known))
    return Schooling(
        evidence=(*said, *silences(barn, filed, now, now_s, known)),
        now_s=now_s,
        widen_at_s=tuple(widening(barn, now)),
        prior_sd_c=prior_sd(horse(filed, now, at)),
        common=shared(barn, state, now_s, known) if barns is None else barns,
    )


def shared(barn: Barn, state: State, now_s: int, known: Known) -> Common:
    """How the model errs on most horses here, from what was said before today: one word moves no other horse."""
    today = datetime.fromtimestamp(now_s, barn.zone).replace(hour=0, minute=0, second=0, microsecond=0)
    signs = tuple(
        tuple(one for entry, one in evidence(barn, filed, state.horses[filed.name], known) if entry.at < today)
        for filed in barn.horses
    )
    return common(signs, int(today.timestamp()))


def evidence(barn: Barn, filed: FiledHorse, now: HorseNow, known: Known) -> Iterable[tuple[Entry, Evidence]]:
    """Each sign that could be weighed, oldest first, with what it was worth."""
    for entry in now.signs:
        found = weigh(barn, filed, now, entry, known)
        if found is not None:
            yield entry, found


def silences(barn: Barn, filed: FiledHorse, now: HorseNow, now_s: int, known: Known) -> list[Evidence]:
    """The rounds of the last weeks that were ticked done while nobody said a word of this horse: weak signs of comfort.

    It stood where it had stood until then.
    """
    found = []
    for entry in now.quiet:
        says = silence_says(now_s - entry.at.timestamp())
        if not says or any(abs(entry.at - sign.at) < ABOUT_IT for sign in now.signs):
            continue
        stood = where(filed, now, current(barn, entry.at - ABOUT_IT))
        one = weigh(barn, filed, now, replace(entry, event=replace(entry.event, where=stood)), known)  # type: ignore[call-arg]
        if one is not None:
            found.append(replace(one, weight=says))
    return found


def widening(barn: Barn, now: HorseNow) -> list[int]:
    """Instants (POSIX s) from which earlier evidence says less: clips, an illness, a new winter coat."""
    clips = [int(at.timestamp()) for at, style in now.clips if style != "none"]
    ill = [int(e.at.timestamp()) for e in now.signs if isinstance(e.event, Seen) and e.event.sign == "unwell"]
    return sorted(clips + ill + _autumns(barn, now))


def _autumns(barn: Barn, now: HorseNow) -> list[int]:
    """The beginning of each autumn after a horse's first sign, up to the one after its last."""
    if not now.signs:
        return []
    month = NEW_COAT if barn.place.latitude >= 0 else NEW_COAT_SOUTH
    years = range(now.signs[0].at.year, now.signs[-1].at.year + 2)
    return [int(datetime(year, month, 1, tzinfo=UTC).timestamp()) for year in years]


def weigh(barn: Barn, filed: FiledHorse, now: HorseNow, entry: Entry, known: Known) -> Evidence | None:
    """One sign as evidence; None where the weather or the clothes of that hour are not known."""
    event, then = entry.event, now.clipped_at(entry.at)
    if not isinstance(event, Seen) or event.air is None or event.wore is None:
        return None
    key = entry.number, filed.name, then.clip, then.clip_on
    if key not in known:
        known[key] = margins(barn, filed, then, event)
    cold, heat, bears, winds, fill, shorn = known[key]
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
        bare=not event.wore,
        winds=winds,
        fill_g=fill,
        stall=event.where == "stall",
        shorn=shorn,
    )


def margins(barn: Barn, filed: FiledHorse, now: HorseNow, event: Seen) -> Margins:
    """Of the last hour of the sign's air in what was worn, offset left out [K]: cold and heat margin, what the horse
    may lack and still be fine, both margins in other winds; the fill it wore [g/m²]; and what both margins would be
    more had nothing grown back of a clipped coat [K].
    """
    assert event.air is not None
    assert event.wore is not None
    hours, start = from_air(event.air), event.air.start
    pieces = {g.id: Piece(garment(g, start.date())) for g in barn.garments if g.id in event.wore}
    then = horse(filed, now, start + timedelta(hours=len(hours)))
    outfit = tuple(pieces[g] for g in event.wore if g in pieces)
    stay = Stay(event.where or "field", filed.shelter, filed.hay, filed.feeding_h)
    day = start.timetuple().tm_yday
    usual = WINDS.index(1.0)
    coats = [then, replace(then, clip_age_days=0.0)] if then.clip_age_days else [then]
    found = last_hour([Dressed(coat, outfit) for coat in coats], [stay], hours, site(barn), day, np.array(WINDS))
    cold, heat, bears = found[:, 0]
    shorn_c, shorn_h, _ = found[:, -1, usual]
    winds = tuple(zip(cold.tolist(), heat.tolist(), strict=True))
    fill = sum(piece.garment.fill_g for piece in outfit)
    shorn = float(shorn_c - cold[usual]), float(shorn_h - heat[usual])
    return float(cold[usual]), float(heat[usual]), float(bears[usual]), winds, fill, shorn
