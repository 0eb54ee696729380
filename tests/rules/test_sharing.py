"""A spare is on one horse at a time, and the barn as a whole is as well off as it can be."""

from dataclasses import dataclass
from itertools import product

from hypothesis import given, settings
from hypothesis import strategies as st

from rules.sharing import doubled, settle


@dataclass(frozen=True)
class Offer:
    """What a horse would pay for a way of using spares."""

    cost: float
    takes: frozenset[tuple[str, int]] = frozenset()


def offers(plain: float, **takes: float) -> list[Offer]:
    """Bids over one window: without a spare, and with each spare alone."""
    return [Offer(plain), *(Offer(cost, frozenset({(spare, 0)})) for spare, cost in takes.items())]


def cheapest_of_each_use(all_offers: list[list[Offer]]):
    """What `settle` asks: for what is disputed, the cheapest offer of every way to use it."""

    def bids(horse: int, disputed: frozenset[tuple[str, int]]) -> list[Offer]:
        best: dict[frozenset[tuple[str, int]], Offer] = {}
        for offer in all_offers[horse]:
            use = offer.takes & disputed
            if use not in best or offer.cost < best[use].cost:
                best[use] = offer
        return list(best.values())

    return bids


def total(chosen: list[Offer]) -> float:
    return sum(offer.cost for offer in chosen)


def by_trying_everything(all_offers: list[list[Offer]]) -> float:
    return min(total(list(combo)) for combo in product(*all_offers) if not doubled(combo))


def test_the_one_spare_goes_to_the_horse_that_needs_it_more():
    """Both would be better in the spare; Pip, clipped, gains 20 degree-hours and Ned only 3."""
    barn = [offers(5.0, spare=2.0), offers(22.0, spare=2.0)]
    ned, pip = settle(cheapest_of_each_use(barn), 2)
    assert pip.takes == {("spare", 0)}
    assert not ned.takes


def test_a_horse_that_gives_way_takes_its_second_best_spare():
    barn = [offers(10.0, heavy=1.0, light=3.0), offers(10.0, heavy=1.0)]
    first, second = settle(cheapest_of_each_use(barn), 2)
    assert first.takes == {("light", 0)}
    assert second.takes == {("heavy", 0)}


def test_one_spare_may_serve_two_horses_in_two_windows():
    """By day on the one, by night on the other: nothing is doubled."""
    barn = [[Offer(9.0), Offer(1.0, frozenset({("spare", 0)}))], [Offer(9.0), Offer(1.0, frozenset({("spare", 1)}))]]
    assert total(settle(cheapest_of_each_use(barn), 2)) == 2.0


SPARES = ("a", "b", "c")
OFFER = st.builds(
    Offer,
    st.integers(0, 20).map(float),
    st.frozensets(st.tuples(st.sampled_from(SPARES), st.integers(0, 1)), min_size=1, max_size=2),
)
HORSE = st.tuples(st.integers(0, 20).map(lambda c: Offer(float(c))), st.lists(OFFER, max_size=4)).map(
    lambda both: [both[0], *both[1]]
)


@settings(max_examples=60, deadline=None)
@given(st.lists(HORSE, min_size=1, max_size=4))
def test_no_other_sharing_is_cheaper_and_no_spare_is_doubled(barn: list[list[Offer]]):
    """Against every combination there is, on small barns."""
    chosen = settle(cheapest_of_each_use(barn), len(barn))
    assert not doubled(chosen)
    assert abs(total(chosen) - by_trying_everything(barn)) < 1e-6


def test_the_solver_says_nothing(capfd):
    """What a command prints as JSON must stay JSON."""
    barn = [offers(5.0, spare=2.0), offers(22.0, spare=2.0)]
    settle(cheapest_of_each_use(barn), 2)
    assert capfd.readouterr() == ("", "")
