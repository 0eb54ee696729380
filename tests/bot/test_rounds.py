"""Each round's post once a local day: over clock changes, restarts and late starts. The clock is a value."""

from datetime import UTC, date, datetime, time, timedelta
from functools import cache
from itertools import pairwise
from zoneinfo import ZoneInfo, available_timezones

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.barn import Barn, Horse, Place, Posting, Round
from bot.rounds import current, due, local, posts_at, quiet, windows

TICK = timedelta(seconds=20)
DAY = timedelta(days=1)
ZONES = sorted(zone for zone in available_timezones() if zone != "localtime")

INSTANTS = st.integers(1_767_225_600, 1_830_297_600).map(lambda s: datetime.fromtimestamp(s, UTC))  # two years


def barn(zone: str = "America/New_York", *times: str, lead_min: int = 45) -> Barn:
    """A barn with rounds at these local times."""
    rounds = tuple(Round(name=f"r{at}", at=time.fromisoformat(at)) for at in times or ("07:00", "16:30"))
    return Barn(
        barn="Windrow Farm",
        timezone=zone,
        place=Place(latitude=44.5, longitude=-72.3),
        rounds=rounds,
        posting=Posting(lead_min=lead_min),
        horses=(Horse(name="Maple"),),
    )


def new_york(text: str) -> datetime:
    """A local instant."""
    return datetime.fromisoformat(text).replace(tzinfo=ZoneInfo("America/New_York"))


def names(found: list) -> list[tuple[str, str]]:
    """What is due and how."""
    return [(one.window.round, one.standing) for one in found]


def changes(zone: ZoneInfo, start: datetime, days: int) -> list[date]:
    """The local dates on which the zone's clock changes."""
    found, offset = [], start.astimezone(zone).utcoffset()
    for n in range(days * 4):
        at = (start + timedelta(hours=6 * (n + 1))).astimezone(zone)
        if at.utcoffset() != offset:
            found.append(at.date())
            offset = at.utcoffset()
    return found


@cache
def zones_that_change() -> dict[str, list[date]]:
    """One of all zones whose clocks agree for two years, with the dates of its changes."""
    start, found, seen = datetime(2026, 1, 1, tzinfo=UTC), {}, set()
    for name in ZONES:
        zone = ZoneInfo(name)
        clock = tuple((start + timedelta(days=4 * n)).astimezone(zone).utcoffset() for n in range(183))
        if len(set(clock)) > 1 and clock not in seen:
            seen.add(clock)
            found[name] = changes(zone, start, 730)
    return found


def play(farm: Barn, start: datetime, end: datetime, step: timedelta = timedelta(minutes=5)) -> list[tuple[str, date]]:
    """Every post made when somebody looks at the clock every few minutes."""
    posted: list[tuple[str, date]] = []
    now = start
    while now < end:
        for one in due(farm, now, frozenset(posted), since=start):
            assert one.standing != "missed"
            posted.append(one.key)
        now += step
    return posted


@pytest.mark.parametrize("clock", ["00:30", "02:30", "12:00"])
def test_every_zone_s_clock_changes_neither_lose_nor_double_a_post(clock: str) -> None:
    """All zones, two years, on every day with a change and its neighbours; the skipped and the repeated hour too."""
    for name, days in zones_that_change().items():
        farm = barn(name, clock, "19:00")
        for day in days:
            begin = datetime.combine(day - DAY, time(3), UTC)
            posted = play(farm, begin, begin + 3 * DAY, timedelta(minutes=30))
            assert len(posted) == len(set(posted)), (name, day)
            whole = {(f"r{clock}", day), ("r19:00", day)}
            assert whole <= set(posted), (name, day, posted)


@given(
    zone=st.sampled_from(ZONES),
    first=INSTANTS,
    times=st.lists(st.integers(0, 23), min_size=1, max_size=4, unique=True),
    lead_min=st.integers(0, 60),
    steps=st.lists(st.integers(1, 55), min_size=200, max_size=200),
)
@settings(max_examples=60, deadline=None)
def test_restarts_at_any_minute_neither_lose_nor_double(
    zone: str, first: datetime, times: list[int], lead_min: int, steps: list[int]
) -> None:
    """Looking at the clock at irregular minutes, from what the ledger holds, posts each round once a date."""
    farm = barn(zone, *(f"{hour:02d}:00" for hour in times), lead_min=lead_min)
    now = start = first
    posted: list[tuple[str, date]] = []
    for minutes in steps:
        posted += [one.key for one in due(farm, now, frozenset(posted), since=start)]
        now += timedelta(minutes=minutes)
    assert len(posted) == len(set(posted))
    dates = [day for _, day in posted]
    for day in {d for d in dates if min(dates) < d < max(dates)}:  # whole days between the first and the last
        starts = {local(day, r.at, ZoneInfo(zone)).astimezone(UTC) for r in farm.rounds}
        assert len([key for key in posted if key[1] == day]) == len(starts)


def test_a_post_appears_ahead_of_its_round() -> None:
    """45 minutes before seven, not a tick sooner."""
    farm, at = barn(), new_york("2026-11-26 06:15")
    assert due(farm, at - TICK, frozenset(), since=at - DAY / 4) == []
    assert names(due(farm, at, frozenset(), since=at - DAY / 4)) == [("r07:00", "on time")]


def test_a_post_is_made_once() -> None:
    """What the ledger has is not due."""
    farm, at = barn(), new_york("2026-11-26 06:15")
    posted = frozenset({("r07:00", date(2026, 11, 26))})
    assert due(farm, at + TICK, posted) == []


@pytest.mark.parametrize(
    ("clock", "standing"),
    [
        ("06:19", "on time"),
        ("06:30", "late"),
        ("07:30", "late"),
        ("11:44", "late"),
        ("11:45", "missed"),
        ("15:00", "missed"),
    ],
)
def test_a_late_start_posts_late_until_the_window_is_half_over(clock: str, standing: str) -> None:
    """From 7:00 to 16:30 the half is at 11:45; after that only a line says what was missed."""
    posted = frozenset({("r16:30", date(2026, 11, 25))})
    assert names(due(barn(), new_york(f"2026-11-26 {clock}"), posted)) == [("r07:00", standing)]


def test_after_days_away_every_missed_round_is_named_once() -> None:
    """The last two days; older ones concern nobody."""
    posted = frozenset({("r07:00", date(2026, 11, 20))})
    found = due(barn(), new_york("2026-11-26 06:20"), posted)
    assert names(found)[-1] == ("r07:00", "on time")
    assert {standing for _, standing in names(found)[:-1]} == {"missed"}
    told = posted | {one.key for one in found}
    assert due(barn(), new_york("2026-11-26 06:21"), told) == []


def test_a_barn_that_never_posted_has_missed_nothing_before_its_first_window() -> None:
    """Its first start may say at most that the window it is in had no post."""
    assert names(due(barn(), new_york("2026-11-26 14:00"), frozenset())) == [("r07:00", "missed")]


def test_a_time_that_the_clock_skips_becomes_the_first_after_the_gap() -> None:
    """2:30 on the spring day in New York is three o'clock."""
    found = local(date(2026, 3, 8), time(2, 30), ZoneInfo("America/New_York"))
    assert found.astimezone(UTC) == datetime(2026, 3, 8, 7, 0, tzinfo=UTC)
    assert found.time() == time(3, 0)


def test_a_time_that_comes_twice_is_its_first() -> None:
    """1:30 on the autumn day in New York is the one in summer time."""
    found = local(date(2026, 11, 1), time(1, 30), ZoneInfo("America/New_York"))
    assert found.astimezone(UTC) == datetime(2026, 11, 1, 5, 30, tzinfo=UTC)


def test_the_repeated_hour_is_told_apart_by_instant_not_by_clock() -> None:
    """A round at half past one on the autumn day: an hour later the clock shows the same again."""
    farm, zone = barn("America/New_York", "01:30", "09:00", lead_min=60), ZoneInfo("America/New_York")
    first, again = (datetime(2026, 11, 1, 1, 30, tzinfo=zone, fold=fold) for fold in (0, 1))
    assert current(farm, again.astimezone(UTC) - timedelta(minutes=1)).round == "r01:30"
    assert names(due(farm, first, frozenset(), since=first - DAY / 4)) == [("r01:30", "late")]
    assert again.astimezone(UTC) - posts_at(farm, current(farm, first)) == timedelta(hours=2)
    assert [w.round for w in windows(farm, again)] == ["r01:30", "r09:00"]


def test_a_gap_at_midnight_does_not_skip_the_day() -> None:
    """In Santiago the spring day has no midnight."""
    zone = ZoneInfo("America/Santiago")
    (day,) = changes(zone, datetime(2026, 8, 1, tzinfo=UTC), 90)
    assert local(day, time(0, 0), zone).time() == time(1, 0)
    assert local(day, time(0, 0), zone).date() == day


def test_the_plan_s_windows_are_those_of_the_next_day_and_the_one_begun() -> None:
    """In the morning's first half the morning still counts; in its second it does not."""
    early = windows(barn(), new_york("2026-11-26 09:00"))
    assert [(w.round, w.start.hour) for w in early] == [("r07:00", 7), ("r16:30", 16), ("r07:00", 7)]
    late = windows(barn(), new_york("2026-11-26 12:00"))
    assert [(w.round, w.start.day) for w in late] == [("r16:30", 26), ("r07:00", 27)]


@given(
    zone=st.sampled_from(ZONES),
    at=INSTANTS,
    times=st.lists(st.integers(0, 23), min_size=1, max_size=5, unique=True),
)
@settings(max_examples=200, deadline=None)
def test_windows_follow_each_other_without_gaps(zone: str, at: datetime, times: list[int]) -> None:
    """Each ends where the next begins, and the current one holds the instant, whatever the clocks do."""
    farm, now = barn(zone, *(f"{hour:02d}:00" for hour in times)), at
    found = windows(farm, now)
    assert all(a.end == b.start for a, b in pairwise(found))
    assert all(w.start.astimezone(UTC) < w.end.astimezone(UTC) for w in found)
    inside = current(farm, now)
    assert inside.start <= now < inside.end
    assert all(w.start - posts_at(farm, w) == timedelta(minutes=45) for w in found)


@pytest.mark.parametrize(("clock", "expected"), [("21:29", False), ("21:30", True), ("02:00", True), ("05:30", False)])
def test_quiet_hours_run_over_midnight(clock: str, expected: bool) -> None:
    """From half past nine to half past five, by the barn's own clock."""
    assert quiet(barn(), new_york(f"2026-11-26 {clock}")) is expected


def test_a_first_start_with_a_list_to_post_speaks_of_no_older_one() -> None:
    """At ten to four the evening's list is due; the morning's, never promised, is not said to be missed."""
    assert names(due(barn(), new_york("2026-11-26 15:50"), frozenset())) == [("r16:30", "on time")]
