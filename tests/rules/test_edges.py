"""What it costs to go from one outfit to the next and to stand the window in it."""

import numpy as np
import pytest

from rules.edges import FORBIDDEN
from rules.plan import price
from rules.question import Costs
from tests.stable import FIELD, STALL, ask, joined, sheet, turnout, unknown, wearer, weather

MILD = weather(-1.0, 1.0)


def edges(sky, horse=None, pieces=(), **costs: float):
    """The edges of Maple, and where each outfit stands in each window."""
    free = {"change": 0.0, "borrow": 0.0, "rug": 0.0, "retell": 0.0} | costs
    priced = price(ask(sky, [horse or wearer()], list(pieces), costs=Costs(**free)))["Maple"]
    return priced.steps.edges, [[o.ids for o in outfits] for outfits in priced.outfits]


def test_a_change_is_charged_once_and_keeping_nothing():
    (first, second), (names, later) = edges(MILD, pieces=[sheet()], change=4.0)
    bare, dressed = names.index(()), names.index(("maple-sheet",))
    assert first[0, dressed] - first[0, bare] > 3.9
    assert second[dressed, later.index(())] - second[bare, later.index(())] == pytest.approx(4.0)


def test_where_nobody_said_what_it_wears_the_first_change_is_free():
    (first, _), (names, _) = edges(MILD, wearer(wears=None), [sheet()], change=4.0)
    assert abs(first[0, names.index(("maple-sheet",))] - first[0, names.index(())]) < 1.0


def test_a_spare_is_charged_when_it_is_taken_and_not_while_it_is_kept():
    (first, second), (names, later) = edges(weather(-3.0, 3.0), pieces=[turnout(200, None)], borrow=5.0)
    spare = names.index(("spare-200",))
    fresh, kept = second[names.index(()), later.index(("spare-200",))], second[spare, later.index(("spare-200",))]
    assert fresh - kept == pytest.approx(5.0)
    assert first.shape == (1, 2)


def test_hours_in_clothes_are_charged_by_the_hour():
    (first, _), (names, _) = edges(MILD, pieces=[sheet()], rug=1.0)
    assert first[0, names.index(("maple-sheet",))] - first[0, names.index(())] == pytest.approx(12.0, abs=0.2)


def test_departing_from_what_people_were_told_costs_something():
    told = (("maple-sheet",), None)
    (first, _), (names, _) = edges(MILD, wearer(told=told), [sheet()], retell=3.0)
    (free, _), _ = edges(MILD, wearer(), [sheet()], retell=3.0)
    assert (first - free)[0, names.index(())] == pytest.approx(3.0)
    assert (first - free)[0, names.index(("maple-sheet",))] == pytest.approx(0.0)


def test_cloth_rained_through_is_barred_from_the_next_window_whatever_it_goes_under():
    open_weave = turnout(200, waterproof=False)
    sky = joined(weather(3.0, 4.0, rain=1.0, hours=12), weather(-2.0, 2.0, hours=12))
    (_, second), (names, later) = edges(sky, wearer("Maple", FIELD, STALL), [open_weave, sheet()])
    wet = ("maple-200",)
    assert np.isinf(second[names.index(wet), later.index(wet)])
    assert np.isfinite(second[names.index(()), later.index(wet)])
    assert np.isfinite(second[names.index(wet), later.index(())])


def test_a_dry_window_bars_nothing():
    (_, second), _ = edges(weather(3.0), pieces=[turnout(200, waterproof=False), sheet()])
    assert np.isfinite(second).all()


@pytest.mark.parametrize("facts", [{"must_clothe": True}, {"vet_clothes": True}])
def test_bare_is_as_good_as_forbidden_in_danger_where_clothes_help(facts):
    (first, _), (names, _) = edges(weather(0.0, 3.0), wearer(**facts), [turnout(100)])
    assert first[0, names.index(())] >= FORBIDDEN


def test_without_any_forecast_the_nearest_to_what_is_worn_is_cheapest():
    """Its own 200 is torn; the 150 comes nearest."""
    pieces = [turnout(200, in_service=False), turnout(150), turnout(350)]
    (first, _), (names, _) = edges(unknown(), wearer(wears=("maple-200",)), pieces)
    assert names[int(np.argmin(first[0]))] == ("maple-150",)
