"""What surrounds a choice: worst hours, chances, and what would have been easiest."""

from statistics import NormalDist

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.decision import Decision, chance, decide, mean, worst
from rules.outlook import Peak, outlooks
from rules.plan import price, share_out
from rules.stand import Stand
from tests.stable import ask, joined, liner, sheet, turnout, unknown, wearer, weather

WARDROBE = [sheet(), turnout(200), liner()]


def stand(sky=None) -> Stand:
    return price(ask(sky or weather(), [wearer()], []))["Maple"].stands[0]


def decision(sky, horse=None, pieces=WARDROBE, window: int = 0) -> Decision:
    question = ask(sky, [horse or wearer()], pieces)
    prices = price(question)
    path = share_out(prices, question)["Maple"].path
    return decide(prices["Maple"], window, path, outlooks(question)[window])


def test_the_worst_hour_is_named_by_its_place_in_the_question():
    of_night = price(ask(weather(), [wearer()], []))["Maple"].stands[1]
    margins = np.arange(12.0)[::-1]
    assert worst(margins, of_night) == Peak(0.0, 23)


def test_hours_not_known_are_neither_worst_nor_in_the_mean():
    margins = np.array([3.0, np.nan, 1.0, *[5.0] * 9])
    assert worst(margins, stand()) == Peak(1.0, 2)
    assert mean(margins, stand()) == pytest.approx(np.nanmean(margins))
    assert worst(np.full(12, np.nan), stand()) is None
    assert mean(np.full(12, np.nan), stand()) == 0.0


@settings(max_examples=40, deadline=None)
@given(st.floats(-8, 8), st.floats(0.2, 4))
def test_the_chance_of_being_cold_is_the_normal_one_where_all_scenarios_agree(margin: float, sd: float):
    """Beside the standard library's normal distribution (exact)."""
    dry = stand(weather(-5.0))
    assert chance(dry, np.full(len(dry.weight), margin), sd) == pytest.approx(NormalDist(margin, sd).cdf(0.0))


def test_the_chance_weighs_scenarios():
    in_doubt = stand(weather(2.0, rain=1.0, chance=40.0))
    cold_if_wet = np.where(np.arange(6) < 3, 50.0, -50.0)
    expected = in_doubt.weight[3:].sum()
    assert chance(in_doubt, cold_if_wet, 1.0) == pytest.approx(expected)
    assert chance(in_doubt, np.full(6, np.nan), 1.0) == 0.0


def test_where_nothing_was_forecast_nothing_is_claimed():
    found = decision(unknown(), wearer(wears=("maple-200",)))
    assert found.cold is found.heat is found.bare is None
    assert found.eased == np.inf
    assert (found.chance_cold, found.chance_hot, found.extra_pct) == (0.0, 0.0, 0.0)
    assert found.unjudged == tuple(range(12))


def test_what_would_be_easiest_leaves_work_and_wishes_aside():
    horse = wearer(clip="trace", wears=("maple-150",))
    found = decision(weather(-8.0, 3.0), horse, [turnout(150), turnout(200)])
    assert found.outfit.ids == ("maple-150",)
    assert found.easiest.ids == ("maple-200",)
    assert 0 < found.saving < 4.5


def test_a_change_is_one_from_what_it_wears_or_wore_the_window_before():
    sky = joined(weather(-10.0, 5.0, hours=12), weather(12.0, 1.0, hours=12))
    day, night = (decision(sky, wearer(clip="trace", wears=("maple-200",)), window=w) for w in (0, 1))
    assert not day.changes
    assert night.changes
    assert night.before == {"maple-200"}
    assert decision(sky, wearer(wears=None)).changes


def test_the_same_clothes_are_followed_into_the_next_window():
    """So that a rug that will be too much is told to come off."""
    sky = joined(weather(-10.0, 5.0, hours=12), weather(14.0, 1.0, hours=12))
    found = decision(sky, wearer(clip="trace"))
    assert found.later_heat is not None
    assert found.later_heat.value < 0 <= found.heat.value
    assert decision(weather(5.0)).later_heat is None


def test_own_pieces_that_cannot_be_used_are_known():
    found = decision(weather(-5.0), pieces=[turnout(200, in_service=False), liner(water="wet"), turnout(100, None)])
    assert {piece.garment.id for piece in found.absent} == {"maple-200", "maple-liner"}


def test_an_infected_horses_spare_is_on_nobody_elses_list():
    horses = [wearer("Maple"), wearer("Pip", infected=True, wears=("spare-100",))]
    prices = price(ask(weather(-5.0), horses, [turnout(100, None)]))
    assert [len(outfits) for outfits in prices["Maple"].outfits] == [1, 1]
    assert [len(outfits) for outfits in prices["Pip"].outfits] == [2, 2]
