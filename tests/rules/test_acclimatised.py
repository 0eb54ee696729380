"""Horses get used to the weather of their weeks: a little, bounded, and never the season twice.

Nobody measured by how much. What is held here are directions, bounds and what happens without knowledge.
"""

from datetime import UTC, date, datetime, timedelta

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules import parameters as p
from rules.acclimatised import DAY_S, DAYS, KNOWN_DAYS, Weeks, day_means, usual_c
from rules.heat import balance
from rules.horse import Horse
from rules.plan import plan
from rules.question import Piece, Question, Stay, Wearer
from rules.weather import Air
from tests.laboratory import air as outdoors
from tests.laboratory import case, hours, site, turnout

VERMONT = 44.5
EPOCH = date(1970, 1, 1)
AIR = st.floats(-40, 40)
ANY_DAYS = st.dictionaries(st.integers(1, DAYS), AIR, max_size=DAYS)  # days ago → its mean air


def number(day: date) -> int:
    """Days from 1970 on."""
    return (day - EPOCH).days


def noon(day: date) -> float:
    return datetime(day.year, day.month, day.day, 12, tzinfo=UTC).timestamp()


def before(day: date, *air_c: float, latitude: float = VERMONT) -> Weeks:
    """The days up to `day`, the last one its yesterday."""
    return Weeks(latitude, {number(day) - len(air_c) + k: air for k, air in enumerate(air_c)})


JANUARY, OCTOBER = date(2026, 1, 20), date(2026, 10, 12)


def as_the_season(day: date, latitude: float = VERMONT) -> list[float]:
    """Three weeks of just the air that the model's horse is used to."""
    return [usual_c(latitude, number(day) - DAYS + k) for k in range(DAYS)]


@pytest.mark.parametrize("latitude", [VERMONT, -VERMONT, 0.0, 62.0])
@pytest.mark.parametrize("day", [date(2026, month, 15) for month in range(1, 13)], ids=lambda day: f"{day:%b}")
def test_weather_as_the_season_has_it_changes_nothing(day: date, latitude: float) -> None:
    """The coat stands for the season already: it is not counted twice, in any month, north or south."""
    assert before(day, *as_the_season(day, latitude), latitude=latitude).shift_c(noon(day)) == pytest.approx(0.0)


def test_a_warm_spell_in_january_lets_the_next_cold_be_felt_more() -> None:
    """Eleven days of 10 °C after a January as usual."""
    usual = as_the_season(JANUARY)
    assert before(JANUARY, *usual[:10], *[10.0] * 11).shift_c(noon(JANUARY)) > 0.5


def test_the_first_cold_snap_of_october_finds_horses_used_to_mild_air() -> None:
    """After warm weeks the cold is felt more; once it has lasted a fortnight, no more."""
    warm = [17.0] * DAYS
    first = before(OCTOBER, *warm, 2.0).shift_c(noon(OCTOBER))
    lasted = before(OCTOBER, *warm, *[2.0] * 14).shift_c(noon(OCTOBER))
    assert first > 0.5
    assert lasted < 0 < first


def test_weeks_of_deep_cold_let_horses_bear_more() -> None:
    """Alberta's: but never more than the bound, for they may have stood in rugs."""
    deep = before(JANUARY, *[-25.0] * DAYS).shift_c(noon(JANUARY))
    assert deep == -p.ACCLIMATISED_COLD


def test_what_was_lately_weighs_more_than_what_was_long_ago() -> None:
    """A mild week that ended yesterday against one that ended a fortnight ago."""
    usual = as_the_season(JANUARY)
    lately = before(JANUARY, *usual[:14], *[10.0] * 7).shift_c(noon(JANUARY))
    long_ago = before(JANUARY, *[10.0] * 7, *usual[7:]).shift_c(noon(JANUARY))
    assert lately > 1.5 * long_ago > 0


@given(ANY_DAYS)
def test_it_stays_small(days: dict[int, float]) -> None:
    """Whatever the weather was, a horse is moved by 2 K at the most, and by 1 K where it would be dressed less."""
    weeks = Weeks(VERMONT, {number(JANUARY) - ago: air for ago, air in days.items()})
    assert -1.0 <= weeks.shift_c(noon(JANUARY)) <= 2.0


@given(st.dictionaries(st.integers(1, DAYS), AIR, max_size=KNOWN_DAYS - 1))
def test_less_than_a_week_of_hours_says_nothing(days: dict[int, float]) -> None:
    """A barn that has just begun plans as if it had no memory."""
    assert Weeks(VERMONT, {number(JANUARY) - ago: air for ago, air in days.items()}).shift_c(noon(JANUARY)) == 0.0


@given(ANY_DAYS, st.integers(1, DAYS), st.floats(0, 30))
def test_a_colder_past_never_lets_the_cold_be_felt_more(days: dict[int, float], ago: int, colder: float) -> None:
    """Any one day, by any amount."""
    mild = {number(JANUARY) - at: air for at, air in days.items()}
    day = number(JANUARY) - ago
    cold = mild | ({day: mild[day] - colder} if day in mild else {})
    assert Weeks(VERMONT, cold).shift_c(noon(JANUARY)) <= Weeks(VERMONT, mild).shift_c(noon(JANUARY)) + 1e-12


@given(ANY_DAYS, st.integers(0, 24 * 3600 - 1), st.floats(-40, 40))
def test_it_is_one_number_all_day(days: dict[int, float], second: int, today_c: float) -> None:
    """The morning's plan and the evening's speak of the same horse; today and what is ahead do not count."""
    past = {number(JANUARY) - ago: air for ago, air in days.items()}
    midnight = number(JANUARY) * DAY_S
    ahead = {number(JANUARY): today_c, number(JANUARY) + 1: today_c}
    assert Weeks(VERMONT, past | ahead).shift_c(midnight + second) == Weeks(VERMONT, past).shift_c(midnight)


def test_missing_days_count_as_the_season_has_them() -> None:
    """Half the days known of a mild spell: in the same direction, less sure, so less."""
    whole = {number(JANUARY) - ago: 10.0 for ago in range(1, DAYS + 1)}
    half = {day: air for day, air in whole.items() if day % 2}
    assert 0 < Weeks(VERMONT, half).shift_c(noon(JANUARY)) < Weeks(VERMONT, whole).shift_c(noon(JANUARY))


def test_a_day_has_a_mean_where_most_of_its_hours_are_known() -> None:
    """Of a day known only from noon on nobody can tell how cold it was."""
    start = number(JANUARY) * DAY_S
    whole = [(start + 3600.0 * k, 4.0) for k in range(24)]
    holes = [(at + DAY_S, np.nan if k in (3, 4, 17) else 6.0) for k, (at, _) in enumerate(whole)]
    afternoon = [(at + 2 * DAY_S, 9.0) for at, _ in whole[12:]]
    assert day_means([*whole, *holes, *afternoon]) == {number(JANUARY): 4.0, number(JANUARY) + 1: 6.0}


def test_both_critical_temperatures_move_together() -> None:
    """Used to mild air a horse is cold sooner and too warm later, by as much."""
    weather = outdoors(hours(5.0, 2.0))
    usual, mild = (heat_of(Horse("Maple", used_to_c=shift), weather) for shift in (0.0, 1.0))
    assert usual[0] - mild[0] == pytest.approx(1.0)
    assert mild[1] - usual[1] == pytest.approx(1.0)


def heat_of(horse: Horse, weather: Air) -> tuple[float, float]:
    """Cold and heat margin [K] of the last hour under 100 g."""
    found = balance(case(horse, turnout(100)), weather)
    return float(found.cold[0, 0, -1]), float(found.heat[0, 0, -1])


@given(st.floats(-25, 15), st.floats(-1, 2), st.floats(0, 2))
def test_a_colder_past_asks_for_no_warmer_clothes(air_c: float, shift: float, less: float) -> None:
    """Over any steady day, the fill that the plan chooses never grows with what the horse got used to."""
    used, unused = fill(air_c, shift - less), fill(air_c, shift)
    assert used <= unused


def fill(air_c: float, shift: float) -> float:
    """What the plan puts on one horse that has three weights; less than nothing where it goes bare."""
    rugs = tuple(Piece(turnout(g)) for g in (100, 200, 300))
    asked = Question(
        hours(air_c, 2.0, count=12),
        site(),
        np.ones((1, 12)),
        (Wearer(Horse("Maple", used_to_c=shift), (Stay("field"),)),),
        rugs,
    )
    (dress,) = plan(asked).dresses["Maple"]
    return dress.fill_g if dress.wear else -1.0


def test_a_mild_january_can_change_the_advice() -> None:
    """Somewhere between bare and heavy there is a day on which it tips a choice: it is not said for nothing."""
    assert any(fill(air, 1.0) > fill(air, 0.0) for air in np.arange(-20.0, 10.0, 1.0))


def test_time_goes_on() -> None:
    """Three weeks after a spell has ended nothing of it is left."""
    spell = {number(JANUARY) - ago: 15.0 for ago in range(1, 10)}
    since = {number(JANUARY) + k: usual_c(VERMONT, number(JANUARY) + k) for k in range(DAYS)}
    at = noon(JANUARY + timedelta(days=DAYS))
    assert Weeks(VERMONT, spell | since).shift_c(at) == pytest.approx(0.0)
