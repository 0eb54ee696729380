"""The cost of standing in an outfit, and the best way through the windows."""

from itertools import product

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.day import Steps, cheapest, discomfort, ways
from rules.question import Costs

COSTS = Costs(cold=1.0, hot=1.5, wet_skin=2.0)


def cost_of(cold: float, heat: float = 30.0, *, wet: float = 0.0, sd: float = 0.0, hours: int = 10) -> float:
    """Discomfort of one case at constant margins through one window."""
    block = np.ones((1, 1, hours))
    cost = discomfort(
        cold * block, heat * block, wet * block,
        weights=np.ones(1), share=np.ones((1, hours)), sd=np.array([sd]), costs=COSTS,
    )  # fmt: skip
    return float(cost[0, 0])


def test_comfort_costs_nothing():
    assert cost_of(3.0) == 0.0


def test_a_degree_too_cold_for_ten_hours_is_ten_degree_hours():
    assert cost_of(-1.0) == pytest.approx(10.0)


def test_a_degree_too_warm_costs_half_as_much_again():
    assert cost_of(5.0, heat=-1.0) == pytest.approx(15.0)


def test_a_wet_skin_in_the_cold_costs_by_the_hour():
    assert cost_of(3.0, wet=1.0) == pytest.approx(20.0)


def test_an_hour_nobody_can_judge_costs_nothing():
    assert cost_of(np.nan, np.nan) == 0.0


def test_half_an_hour_in_the_window_counts_half():
    share = np.array([[1.0, 0.5], [0.0, 0.5]])
    cold = np.full((1, 1, 2), -2.0)
    cost = discomfort(cold, -cold, 0 * cold, weights=np.ones(1), share=share, sd=np.zeros(1), costs=COSTS)
    assert cost[0] == pytest.approx([3.0, 1.0])


def test_a_barely_warm_horse_costs_something_where_the_model_is_unsure():
    assert cost_of(1.0, sd=2.0) > cost_of(1.0, sd=0.5) == 0.0


def test_scenarios_count_by_their_weight():
    cold = np.array([[[-4.0], [4.0]]])
    cost = discomfort(
        cold, 30 + cold, 0 * cold, weights=np.array([0.25, 0.75]), share=np.ones((1, 1)), sd=np.zeros(1), costs=COSTS
    )
    assert cost.item() == pytest.approx(1.0)


def test_the_expectation_over_an_unsure_offset_is_near_the_normal_one():
    """E max(0, -(m + z sd)) for m = 1, sd = 2: sd φ(m/sd) - m Φ(-m/sd) = 0.396 (closed form, computed here)."""
    assert cost_of(1.0, sd=2.0, hours=1) == pytest.approx(0.396, abs=0.05)


def steps_from(costs: list[list[float]], change: float, spares: list[list[str]] | None = None) -> Steps:
    """Outfits numbered alike in all windows; a change of number costs `change`; hour 0 wears number 0."""
    sizes = [len(window) for window in costs]
    edges = [np.array([costs[0]]) + change * (np.arange(sizes[0]) != 0)]
    for before, now in zip(sizes, costs[1:]):
        edges.append(np.array([now]) + change * (np.arange(before)[:, None] != np.arange(len(now))))
    takes = spares or [[""] * size for size in sizes]
    taken = (tuple(frozenset({(s, w)} if s else ()) for s in window) for w, window in enumerate(takes))
    return Steps(tuple(edges), tuple(taken))


def test_a_small_gain_is_not_worth_a_change():
    assert cheapest(steps_from([[3.0, 0.0], [0.0, 3.0]], change=4.0)).path == (0, 0)


def test_a_large_gain_is_worth_going_there_and_back():
    assert cheapest(steps_from([[0.0, 9.0], [30.0, 0.0], [0.0, 9.0]], change=4.0)).path == (0, 1, 0)


def test_of_equal_ways_the_first_outfit_is_kept():
    """Outfits are listed with less clothing first."""
    assert cheapest(steps_from([[1.0, 1.0, 1.0]], change=0.0)).path == (0,)


COST_TABLES = st.integers(1, 3).flatmap(
    lambda outfits: st.lists(
        st.lists(st.integers(0, 12).map(float), min_size=outfits, max_size=outfits), min_size=1, max_size=4
    )
)


def all_ways(steps: Steps) -> dict[tuple[int, ...], float]:
    found = {}
    for path in product(*(range(edge.shape[1]) for edge in steps.edges)):
        rows = (0, *path)
        found[path] = sum(edge[rows[w], rows[w + 1]] for w, edge in enumerate(steps.edges))
    return found


@settings(max_examples=80, deadline=None)
@given(COST_TABLES, st.integers(0, 6).map(float))
def test_the_best_sequence_is_the_best_of_all_sequences(costs: list[list[float]], change: float):
    steps = steps_from(costs, change)
    best = cheapest(steps)
    everything = all_ways(steps)
    assert best.cost == pytest.approx(min(everything.values()))
    assert everything[best.path] == pytest.approx(best.cost)


@settings(max_examples=80, deadline=None)
@given(COST_TABLES, st.integers(0, 6).map(float), st.data())
def test_each_use_of_disputed_spares_is_offered_at_its_best_price(costs, change, data):
    """Every use cheaper than doing without is offered, at the cost that trying everything finds."""
    name = st.sampled_from(["", "a", "b"])
    spares = [["", *(data.draw(name) for _ in window[1:])] for window in costs]
    steps = steps_from(costs, change, spares)
    offered = {way.takes: way.cost for way in ways(steps, steps.wanted)}
    best: dict[frozenset[tuple[str, int]], float] = {}
    for path, cost in all_ways(steps).items():
        takes = frozenset(take for w, now in enumerate(path) for take in steps.takes[w][now])
        best[takes] = min(cost, best.get(takes, np.inf))
    plain = best[frozenset()]
    worth = {takes: cost for takes, cost in best.items() if not takes or cost < plain}
    assert offered.keys() >= worth.keys()
    assert all(offered[takes] == pytest.approx(best[takes]) for takes in offered)


def test_a_barn_full_of_like_spares_does_not_swamp_the_choice():
    """Ten spares over four windows can be used in 14,641 ways; the most promising are offered, the best among them."""
    spares = [["", *(f"spare {i}" for i in range(10))]] * 4
    steps = steps_from([[20.0, *(float(i) for i in range(10))]] * 4, 1.0, spares)
    offered = ways(steps, steps.wanted)
    assert len(offered) <= 301
    assert min(way.cost for way in offered) == pytest.approx(cheapest(steps).cost)
    assert any(not way.takes for way in offered)
