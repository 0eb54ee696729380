"""When wet clothes are dry again on the rail where they hang."""

from dataclasses import replace

from rules.drying import ready_h
from rules.question import Rail
from tests.stable import ask, liner, sheet, unknown, wearer, weather

WARM, LOFT = Rail("tack room", 20.0, 45.0), Rail("loft")


def hours(piece, *rails: Rail, sky=None) -> float | None:
    question = replace(ask(sky or weather(4.0, 2.0, hours=48), [wearer()], [piece]), rails=rails)
    return ready_h(question).get(piece.garment.id, 0.0)


def test_what_is_dry_is_ready_now():
    assert hours(liner(), WARM) == 0.0


def test_a_warm_room_dries_sooner_than_a_loft_in_november():
    warm, loft = (hours(liner(water="damp", rail=0), rail) for rail in (WARM, LOFT))
    assert warm is not None
    assert loft is None or warm < loft


def test_wetter_takes_longer():
    damp, wet = (hours(liner(100, water=water, rail=0), WARM) for water in ("damp", "wet"))
    assert damp is not None
    assert wet is None or damp < wet


def test_hours_on_the_rail_before_the_question_count():
    fresh, hung = (hours(liner(water="damp", since_h=since, rail=0), WARM) for since in (0.0, 1.0))
    assert fresh is not None
    assert hung is not None
    assert abs(fresh - hung - 1.0) < 0.01


def test_where_nobody_said_which_rail_the_slowest_is_assumed():
    assert hours(liner(water="damp"), WARM, LOFT) == hours(liner(water="damp", rail=1), WARM, LOFT)


def test_a_rail_that_proved_slower_is_believed():
    slow = replace(WARM, learned_factor=1.5)
    usual, learned = (hours(liner(water="damp", rail=0), rail) for rail in (WARM, slow))
    assert usual is not None
    assert learned is not None
    assert abs(learned - 1.5 * usual) < 1e-9


def test_outdoors_without_a_forecast_nobody_can_say():
    assert hours(sheet(water="soaked", rail=0), LOFT, sky=unknown()) is None


def test_a_still_room_does_not_wait_for_a_forecast():
    assert hours(sheet(water="wet", rail=0), WARM, sky=unknown()) is not None
