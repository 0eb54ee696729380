"""What the rules are told: barn, state and hours → Question; a sign → Evidence; a Plan → the sheet people see.

The only place that knows time zones and arrays. Translation only: whatever decides something about a horse
belongs in `rules`.
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

import numpy as np

from bot import rounds
from bot.barn import Barn
from bot.barn import Garment as FiledGarment
from bot.barn import Horse as FiledHorse
from bot.events import Seen, Where
from bot.sheet import Sheet, Window
from bot.state import CALM, GarmentNow, HorseNow, State
from rules.drying import ready_h
from rules.garment import Garment
from rules.horse import Horse, weight_kg
from rules.offset import Learned, in_common, schooled
from rules.question import Costs, Piece, Question, Rail, Stay, Wearer, Wishes
from rules.site import DryingLook, drying, in_room_h
from rules.weather import Floats, Hours, Site

HOUR, DAY = timedelta(hours=1), timedelta(days=1)
DRYING_HOURS = 72  # how far ahead a wet garment's drying is followed
DANGER_LASTS = timedelta(hours=24)  # a horse seen shivering or cold is not planned bare for a day
UNWELL_LASTS = timedelta(hours=48)
WET_LASTS = timedelta(hours=3)
SAID_AHEAD = timedelta(hours=2)  # "Maple stays in", said shortly before a round, is about that round's window
USUAL_KG = {"horse": 500.0, "pony": 250.0, "donkey": 180.0}  # where the file gives no weight; invented middle values
USUAL_SIZE_IN = {"horse": 75.0, "pony": 63.0, "donkey": 57.0}
OUT_OF_SERVICE = frozenset({"washing", "torn", "strap broken", "missing"})

Cut = Callable[[int, int], Hours]  # (POSIX second of the first hour, number of hours) → Hours on exactly that grid


def question(
    barn: Barn,
    state: State,
    cut: Cut,
    windows: Sequence[Window],
    now: datetime,
    learned: Mapping[str, Learned],
    told: Sheet | None = None,
) -> Question:
    """Everything the plan of `windows` depends on, seen from `now`: hours that have passed count no more.

    told: the sheet people go by, where there is one; the plan departs from it only for a real gain.
    """
    first = max(windows[0].start, now)
    start = first.astimezone(UTC).replace(minute=0, second=0, microsecond=0)
    count = -((start - windows[-1].end) // HOUR)
    share = shares(windows, first, start, count)
    return Question(
        hours=cut(int(start.timestamp()), count),
        site=in_common(learned.values()).at(site(barn)),
        share=share,
        wearers=tuple(
            replace(wearer(horse, state, windows, start, learned.get(horse.name)), told=wear_told(told, horse, windows))
            for horse in barn.horses
        ),
        pieces=tuple(piece(barn, garment, state, start) for garment in barn.garments),
        rails=rails(barn, state),
        costs=Costs(**barn.costs.model_dump(exclude_none=True)),
    )


def shares(windows: Sequence[Window], first: datetime, start: datetime, count: int) -> Floats:
    """The fraction of each hour from `start` that lies in each window and not before `first`, shape (window, hour)."""
    edges = start.timestamp() + 3600.0 * np.arange(count + 1)
    begins = np.array([max(w.start, first).timestamp() for w in windows])[:, None]
    ends = np.array([w.end.timestamp() for w in windows])[:, None]
    overlap = np.minimum(edges[1:], ends) - np.maximum(edges[:-1], begins)
    share: Floats = np.clip(overlap / 3600.0, 0.0, 1.0)
    return share


def wear_told(told: Sheet | None, filed: FiledHorse, windows: Sequence[Window]) -> tuple[tuple[str, ...] | None, ...]:
    """What people were told that a horse wears in each window; None where they were told nothing."""
    if told is None:
        return ()
    said = {
        window.start: horse.windows[index].wear
        for horse in told.horses
        if horse.horse == filed.name
        for index, window in enumerate(told.windows)
        if not horse.windows[index].as_found
    }
    return tuple(said.get(window.start) for window in windows)


def site(barn: Barn) -> Site:
    """Where the barn stands."""
    return Site(barn.place.latitude, barn.place.longitude, barn.place.elevation_m, barn.place.exposure)


def rails(barn: Barn, state: State) -> tuple[Rail, ...]:
    """The drying places, in the file's order, with what hands have found of how long things take there."""
    return tuple(
        Rail(p.name)
        if p.follows
        else Rail(p.name, p.temperature_c, p.humidity_pct, learned_factor=drying_factor(barn, state, place))
        for place, p in enumerate(barn.drying)
    )


def drying_factor(barn: Barn, state: State, place: int) -> float:
    """How much longer than computed things take to dry in a room; 1 where nobody has felt any, and outdoors."""
    room = barn.drying[place]
    if not state.hung or room.temperature_c is None or room.humidity_pct is None:
        return 1.0
    hang_here = {g.id: garment(g) for g in barn.garments if rail(barn, g) == place}
    looks = [
        DryingLook(
            in_room_h(hang_here[h.garment], h.water, room.temperature_c, room.humidity_pct),
            (h.looked - h.since) / HOUR,
            h.found == "dry",
        )
        for h in state.hung
        if h.garment in hang_here
    ]
    return drying(looks).value


def piece(barn: Barn, filed: FiledGarment, state: State, start: datetime) -> Piece:
    """One garment with its condition at `start`."""
    now = state.garments.get(filed.id, GarmentNow(filed.state))
    out = now.state in OUT_OF_SERVICE
    return Piece(
        garment=garment(filed, start.date()),
        water="dry" if out or now.state == "in service" else now.state,  # type: ignore[arg-type]
        since_h=max(0.0, (start - now.since) / HOUR) if now.since else 0.0,
        rail=rail(barn, filed),
        in_service=not out,
        leaks=filed.waterproof and filed.id in state.soaked_through,
        rubs=state.rubs.get(filed.id, frozenset()),
    )


def rail(barn: Barn, filed: FiledGarment) -> int | None:
    """Where a piece hangs to dry: the place the file names, else the first; None where there is none."""
    names = [place.name for place in barn.drying]
    return names.index(filed.dries) if filed.dries in names else (0 if names else None)


def garment(filed: FiledGarment, day: date | None = None) -> Garment:
    """The file's garment as the rules see it. day: for the age of its proofing."""
    return Garment(
        id=filed.id,
        kind=filed.kind,
        fill_g=filed.fill_g,
        size_in=USUAL_SIZE_IN["horse"] if filed.size is None else filed.size,
        waterproof=filed.waterproof,
        neck=filed.neck,
        rear=filed.rear,
        horse=filed.horse,
        denier=filed.denier,
        proofed_years=max((day - filed.proofed).days, 0) / 365.25 if day and filed.proofed else 0.0,
    )


def wearer(
    filed: FiledHorse, state: State, windows: Sequence[Window], start: datetime, learned: Learned | None
) -> Wearer:
    """One horse as asked about at `start`."""
    now = state.horses[filed.name].clipped_at(start + DAY)  # a clip counts on the whole of its day, not before
    asked = Wearer(
        horse=horse(filed, now, start),
        stays=tuple(stay(filed, now, window) for window in windows),
        wears=now.wear,
        wishes=Wishes(keep_bare=now.keep_bare, **filed.wishes.model_dump()),
        wet_hair=lately(now, start, WET_LASTS, "wet"),
        must_clothe=lately(now, start, DANGER_LASTS, "shivering", "cold"),
        vet_clothes=filed.vet_orders == "clothe",
    )
    return schooled(asked, learned or Learned())


def horse(filed: FiledHorse, now: HorseNow, start: datetime) -> Horse:
    """The file's horse at `start`, as the rules see it."""
    clip_age = None
    if now.clip != "none" and now.clip_on is not None:
        clip_age = float(max(0, (start.date() - now.clip_on).days))
    return Horse(
        name=filed.name,
        species=filed.species,
        age_years=age_years(filed.born, start.date()),
        weight_kg=weight(filed),
        condition=filed.condition,
        coat=filed.coat,
        clip=now.clip,
        clip_age_days=clip_age,
        hay_feed=filed.hay_feed,
        size_in=USUAL_SIZE_IN[filed.species] if filed.size is None else filed.size,
        sick=filed.vet_orders == "sick" or lately(now, start, UNWELL_LASTS, "unwell"),
        infected=filed.skin_infection,
        colour=filed.colour,
        used_to_c=used_to_c(now, start),
    )


def used_to_c(now: HorseNow, at: datetime) -> float:
    """How much more a horse feels the cold at an instant for the weeks behind it [K]; 0 where they are not known."""
    return round(now.weeks.shift_c(at.timestamp()), 2) if now.weeks else 0.0


def age_years(born: date | int | None, day: date) -> float:
    """Age in years; ten where the file gives none. A bare year counts from 1 May, a usual time to be foaled."""
    if born is None:
        return 10.0
    birthday = date(born, 5, 1) if isinstance(born, int) else born
    return max(0.0, (day - birthday).days / 365.25)


def weight(filed: FiledHorse) -> float:
    """Weight in kg: given, else from the tape, else a usual one of the species."""
    if filed.weight_kg is not None:
        return filed.weight_kg
    if filed.girth_cm is not None and filed.length_cm is not None:
        return float(weight_kg(filed.girth_cm, filed.length_cm))
    return USUAL_KG[filed.species]


def stay(filed: FiledHorse, now: HorseNow, window: Window) -> Stay:
    """Where a horse spends a window: what somebody said of it, else the file's routine."""
    return Stay(place=where(filed, now, window), shelter=filed.shelter, hay=filed.hay, feeding_h=filed.feeding_h)


def where(filed: FiledHorse, now: HorseNow, window: Window) -> Where:
    """Field or stall in a window. What chat said holds until a round comes for which the file has its own word."""
    routine = filed.where.get(window.round)
    if now.placed is not None and now.placed_at is not None and now.placed_at < window.end:
        fresh = now.placed_at >= window.start - SAID_AHEAD
        if fresh or routine is None:
            return now.placed
    return routine or next(iter(filed.where.values()), None) or "field"


def lately(now: HorseNow, start: datetime, lasts: timedelta, *signs: str) -> bool:
    """Whether the latest of these signs is recent and no calmer sign has followed."""
    entry = now.last(*signs)
    if entry is None or start - entry.at > lasts:
        return False
    latest = now.last()
    return latest is not None and (latest.number == entry.number or not _calm(latest.event))


def _calm(event: object) -> bool:
    return isinstance(event, Seen) and event.sign in CALM


def where_now(barn: Barn, state: State, name: str, at: datetime) -> Where:
    """Where a horse is at `at`."""
    return where(barn.horse(name), state.horses[name], rounds.current(barn, at))


def garment_ready(barn: Barn, state: State, name: str, at: datetime, cut: Cut) -> datetime | None:
    """When a garment is dry where it hangs; None where it is dry, out of use, or nobody can say."""
    start = at.astimezone(UTC).replace(minute=0, second=0, microsecond=0)
    asked = Question(
        hours=cut(int(start.timestamp()), DRYING_HOURS),
        site=site(barn),
        share=np.ones((1, DRYING_HOURS)),
        wearers=(),
        pieces=(piece(barn, barn.garment(name), state, start),),
        rails=rails(barn, state),
    )
    left = ready_h(asked).get(name)
    return None if left is None else start + left * HOUR
