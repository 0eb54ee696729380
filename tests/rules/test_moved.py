"""Whom a new forecast or report moves."""

from dataclasses import replace

from rules.moved import matters, moved
from rules.plan import plan
from tests.stable import ask, sheet, turnout, wearer, weather

WARDROBE = [sheet(), turnout(200), sheet("Pip"), turnout(200, "Pip")]
HORSES = [wearer("Maple"), wearer("Pip", clip="full")]


def told(temperature: float, rain: float = 0.0, wind: float = 2.0):
    return plan(ask(weather(temperature, wind, rain=rain), HORSES, WARDROBE))


def test_the_same_forecast_moves_nobody():
    assert moved(told(3.0), told(3.0)) == []


def test_rain_and_wind_move_the_bare_horse_and_only_it():
    """Pip, clipped, has its turnout on in either case."""
    before, after = told(1.0), told(1.0, rain=1.5, wind=9.0)
    moves = moved(before, after)
    assert {m.horse for m in moves} == {"Maple"}
    assert moves[0].before == ()
    assert moves[0].after
    assert moves[0].cold_moved_c is not None


def test_the_order_in_which_pieces_are_named_is_no_move():
    dress = told(-8.0).dresses["Pip"][0]
    two = replace(dress, wear=("a", "b"))
    assert not matters(two, replace(two, wear=("b", "a")))
    assert matters(two, replace(two, wear=("b",)))


def test_a_horse_that_only_one_plan_knows_is_not_moved():
    before, after = told(1.0), told(1.0, rain=1.5, wind=9.0)
    assert moved(replace(before, dresses={}), after) == []
