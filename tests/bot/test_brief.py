"""What the rules are told of a barn: hours shared among windows, places, clothes as they are, signs that count."""

from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot import rounds
from bot.barn import Barn, Garment, demo_path, load
from bot.brief import (
    USUAL_SIZE_IN,
    age_years,
    garment,
    garment_ready,
    lately,
    piece,
    question,
    shares,
    wear_told,
    wearer,
    weight,
    where,
    where_now,
)
from bot.events import Entry, GarmentIs, Placed, Seen
from bot.forecast import from_file, unknown_hours
from bot.planning import Planner, cutter
from bot.sheet import Window
from bot.state import State, apply, as_filed
from tests.november import WEATHER

HOUR = timedelta(hours=1)
DEMO = load(demo_path())
MORNING = Window("morning", datetime(2026, 11, 26, 12, tzinfo=UTC), datetime(2026, 11, 26, 21, 30, tzinfo=UTC))
EVENING = Window("evening", datetime(2026, 11, 26, 21, 30, tzinfo=UTC), datetime(2026, 11, 27, 12, tzinfo=UTC))


def told(event: object, at: datetime, state: State | None = None, number: int = 1) -> State:
    """The demo barn after one more word."""
    return apply(state or as_filed(DEMO), Entry(number, at, "Inés", "g:1", event))  # type: ignore[arg-type]


# ── hours ────────────────────────────────────────────────────────────────────────────────────────────────────────────


@given(
    st.sampled_from(["America/New_York", "Europe/London", "Australia/Lord_Howe", "Asia/Kathmandu", "UTC"]),
    st.datetimes(datetime(2026, 1, 2), datetime(2027, 12, 30), timezones=st.just(UTC)),  # noqa: DTZ001
)
@settings(max_examples=150, deadline=None)
def test_the_shares_of_a_window_are_its_length(zone: str, now: datetime) -> None:
    """Over any clock change: each window's hours add up to its length, and no hour is given out twice."""
    barn = DEMO.model_copy(update={"timezone": zone})
    windows = rounds.windows(barn, now)
    start = windows[0].start.astimezone(UTC).replace(minute=0)
    count = -((start - windows[-1].end) // HOUR)
    share = shares(windows, windows[0].start, start, count)
    lengths = [(w.end.astimezone(UTC) - w.start.astimezone(UTC)) / HOUR for w in windows]
    assert share.shape == (len(windows), count)
    assert share.sum(axis=1) == pytest.approx(lengths)
    assert share.sum(axis=0).max() <= 1 + 1e-9


def test_hours_that_have_passed_count_no_more() -> None:
    """At a quarter past ten the morning has six and a quarter hours left."""
    now = datetime(2026, 11, 26, 15, 15, tzinfo=UTC)
    share = shares([MORNING, EVENING], now, datetime(2026, 11, 26, 15, tzinfo=UTC), 21)
    assert share[0, 0] == pytest.approx(0.75)
    assert share.sum(axis=1) == pytest.approx([6.25, 14.5])


def test_the_question_covers_the_windows_to_the_hour(barn: Barn) -> None:
    """Rounds at seven and half past four: the hours reach from the first to the last that is touched."""
    asked = question(barn, as_filed(barn), cutter(None), [MORNING, EVENING], MORNING.start, {})
    assert asked.hours.start_s == int(MORNING.start.timestamp())
    assert len(asked.hours) == 24
    assert [w.horse.name for w in asked.wearers] == [h.name for h in barn.horses]
    assert np.isnan(asked.hours.temperature_c).all()


# ── places ───────────────────────────────────────────────────────────────────────────────────────────────────────────


def place(state: State, window: Window, name: str = "Maple") -> str:
    """Where the demo barn's horse is in a window."""
    return where(DEMO.horse(name), state.horses[name], window)


def test_the_routine_holds_until_somebody_says_otherwise() -> None:
    """Field by day, stall by night."""
    assert (place(as_filed(DEMO), MORNING), place(as_filed(DEMO), EVENING)) == ("field", "stall")


@pytest.mark.parametrize("hours_before", [1.5, 0.0, -3.0])
def test_a_word_about_a_round_holds_for_that_round_only(hours_before: float) -> None:
    """Maple stays in, said shortly before the round or during it; the evening has its own routine."""
    state = told(Placed("Maple", "stall"), MORNING.start - hours_before * HOUR)
    assert place(state, MORNING) == "stall"
    assert place(told(Placed("Maple", "field"), MORNING.start), EVENING) == "stall"


def test_a_word_about_tonight_says_nothing_of_this_morning() -> None:
    """Said yesterday afternoon, it was about yesterday."""
    assert place(told(Placed("Maple", "stall"), MORNING.start - 16 * HOUR), MORNING) == "field"


def test_where_a_horse_is_now(barn: Barn) -> None:
    """In the round that is running."""
    assert where_now(barn, as_filed(barn), "Maple", MORNING.start + HOUR) == "field"
    assert where_now(barn, as_filed(barn), "Maple", EVENING.start + HOUR) == "stall"


# ── clothes ──────────────────────────────────────────────────────────────────────────────────────────────────────────


@pytest.mark.parametrize("word", ["washing", "torn", "strap broken", "missing"])
def test_what_is_out_of_use_is_not_worn(word: str) -> None:
    """Washed, torn, broken, lost: no plan counts on it."""
    state = told(GarmentIs("maple-liner", word), MORNING.start)  # type: ignore[arg-type]
    assert not piece(DEMO, DEMO.garment("maple-liner"), state, MORNING.start).in_service


def test_a_wet_garment_hangs_where_the_file_says_since_somebody_said_so() -> None:
    """Two hours on the rail are two hours dried; where the file names no place it is the first."""
    state = told(GarmentIs("sparrow-medium", "wet"), MORNING.start - 2 * HOUR)
    wet = piece(DEMO, DEMO.garment("sparrow-medium"), state, MORNING.start)
    assert (wet.water, wet.since_h, wet.rail, wet.in_service) == ("wet", 2.0, 1, True)
    assert piece(DEMO, DEMO.garment("juniper-liner"), state, MORNING.start).rail == 0


def test_when_a_wet_garment_is_ready() -> None:
    """In the heated tack room within a day, hanging outdoors with no forecast nobody can say, and dry is ready."""
    state = told(GarmentIs("juniper-liner", "wet"), MORNING.start)
    ready = garment_ready(DEMO, state, "juniper-liner", MORNING.start, unknown_hours)
    assert ready is not None
    assert MORNING.start < ready < MORNING.start + 24 * HOUR
    hanging = told(GarmentIs("sparrow-medium", "wet"), MORNING.start)
    assert garment_ready(DEMO, hanging, "sparrow-medium", MORNING.start, unknown_hours) is None
    assert garment_ready(DEMO, state, "maple-sheet", MORNING.start, unknown_hours) is None


def test_what_people_were_told_is_told_to_the_rules(barn: Barn) -> None:
    """Window by window; None where they were told nothing."""
    at = MORNING.start - HOUR
    told_ = Planner(barn).sheet(as_filed(barn), from_file(WEATHER / "morning.csv", at), [MORNING], at)
    worn = told_.horse("Maple").windows[0].wear
    assert wear_told(told_, barn.horse("Maple"), [MORNING, EVENING]) == (worn, None)
    assert wear_told(None, barn.horse("Maple"), [MORNING]) == ()


def test_a_clip_counts_from_its_day_on() -> None:
    """Quill was clipped on 15 November: not the day before, but from that morning, whatever the hour."""
    quill, state = DEMO.horse("Quill"), as_filed(DEMO)
    clips = [
        wearer(quill, state, [MORNING], datetime(2026, 11, day, 12, tzinfo=UTC), None).horse.clip for day in (13, 15)
    ]
    assert clips == ["none", "full"]


# ── horses ───────────────────────────────────────────────────────────────────────────────────────────────────────────


def test_weight_is_given_or_taped_or_usual(barn: Barn) -> None:
    """520 kg as the file says; Juniper by the tape; where nothing is given a usual weight of the species."""
    assert weight(barn.horse("Maple")) == 520
    assert weight(barn.horse("Juniper")) == pytest.approx(186**2 * 162 / 11880)  # Carroll and Huntington 1988
    assert weight(barn.horse("Pip").model_copy(update={"weight_kg": None})) == 250


@pytest.mark.parametrize(
    ("born", "years"), [(2009, 17.57), (date(2025, 4, 30), 1.58), (None, 10.0), (date(2030, 1, 1), 0.0)]
)
def test_age_in_years(born: int | date | None, years: float) -> None:
    """A bare year counts from the first of May."""
    assert age_years(born, date(2026, 11, 26)) == pytest.approx(years, abs=0.01)


def test_sizes_in_inches_or_centimetres() -> None:
    """As the label says, or measured; a usual size where the file gives none."""
    labelled, measured, silent = (
        garment(Garment(id="rug", kind="sheet", **size)).size_in for size in ({"size_in": 75}, {"size_cm": 145}, {})
    )
    assert labelled == 75
    assert measured == pytest.approx(57.09, abs=0.01)
    assert silent == USUAL_SIZE_IN["horse"]


def test_danger_counts_until_a_calmer_sign_or_a_day() -> None:
    """A horse seen shivering is not planned bare before somebody says it is well."""
    at = MORNING.start
    state = told(Seen("Pip", "shivering"), at)
    assert lately(state.horses["Pip"], at + HOUR, 24 * HOUR, "shivering")
    assert not lately(state.horses["Pip"], at + 25 * HOUR, 24 * HOUR, "shivering")
    calm = told(Seen("Pip", "comfortable"), at + HOUR, state, 2)
    assert not lately(calm.horses["Pip"], at + 2 * HOUR, 24 * HOUR, "shivering")
    rubbed = told(Seen("Pip", "rubbed"), at + HOUR, state, 2)
    assert lately(rubbed.horses["Pip"], at + 2 * HOUR, 24 * HOUR, "shivering")


def test_the_autumn_hour_that_comes_twice_is_counted_twice() -> None:
    """1 November 2026 in New York: from 00:30 to 03:00 by the clock are three and a half hours."""
    zone = ZoneInfo("America/New_York")
    night = Window("night", datetime(2026, 11, 1, 0, 30, tzinfo=zone), datetime(2026, 11, 1, 3, tzinfo=zone))
    share = shares([night], night.start, datetime(2026, 11, 1, 4, tzinfo=UTC), 4)
    assert share.sum() == pytest.approx(3.5)
