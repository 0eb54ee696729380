"""What a barn may rely on when the signs of all its horses teach how the model errs there."""

from dataclasses import replace

import numpy as np
import pytest

from rules import parameters as p
from rules.offset import WINDS, Common, Evidence, learn
from rules.shared import common

DAY = 86_400
NOW = 60 * DAY
PEOPLE = ("Inés", "Theo", "Ruth")
Herd = tuple[tuple[Evidence, ...], ...]


def herd(
    *,
    windier: float = 1.0,
    fill_gives: float = 0.0,
    bears: float = 5.0,
    stall_warmer: float = 0.0,
    regrowth: float = 1.0,
    horses: int = 6,
    people: tuple[str, ...] = PEOPLE,
) -> Herd:
    """Signs of horses each with an offset of its own, in a barn of that wind and fill, that bear 5 K by the model.

    Each m/s takes 1 K of cold margin; comfort is 12 K wide; people see it through a blur. Every other sign is of a
    horse in its stall, which is as draughty; the first two are clipped, and what is computed to grow back of their
    coats takes 0.2 K more each day.
    """
    rng = np.random.default_rng(5)

    def sign(j: int, k: int) -> Evidence:
        wind, fill, room, blur = rng.uniform(0, 8), 100.0 * rng.integers(0, 4), rng.uniform(-6, 12), rng.logistic(0, 1)
        stall, grown = k % 4 < 2, 0.1 * k * (j < 2)
        less = windier * wind - fill_gives * fill / 100 + (j - 2.5) - blur - stall_warmer * stall
        less += (1 - regrowth) * grown
        cold, heat = room - less + bears, 12 - room + less
        said = "shivering" if cold < -3 else "cold" if cold < 0 else "sweating" if heat < 0 else "comfortable"
        winds = tuple((room - factor * wind, 12 - room + factor * wind) for factor in WINDS)
        return Evidence(
            k * DAY // 2, said, room - wind, 12 - room + wind, who=people[k % len(people)], bears_c=5.0,
            winds=winds, fill_g=fill, stall=stall, shorn=(-grown, grown),
        )  # fmt: skip

    return tuple(tuple(sign(j, k) for k in range(60)) for j in range(horses))


def test_a_barn_of_which_nobody_spoke_is_as_computed():
    """No sign, no change."""
    assert common(((), (), ()), NOW) == Common()


def test_each_of_the_five_says_how_sure_it_is():
    """As unsure as barns differ where nobody spoke; surer with every sign, and less so of half as many."""
    nothing, some, many = Common(), common(tuple(own[:20] for own in herd()), NOW), common(herd(), NOW)
    for sd in ("wind_sd", "fill_sd_c", "bears_sd_c", "stall_sd_c", "regrowth_sd"):
        assert getattr(many, sd) < getattr(some, sd) < getattr(nothing, sd)


def test_a_barn_that_is_as_computed_stays_so():
    """Signs that the model expected move none of the five far."""
    found = common(herd(), NOW)
    assert found.wind == pytest.approx(1.0, abs=0.25)
    assert found.fill_gives_c == pytest.approx(0.0, abs=0.6)
    assert found.bears_less_c < 2
    assert found.stall_warmer_c == pytest.approx(0.0, abs=1.0)
    assert found.regrowth == pytest.approx(1.0, abs=0.3)


def test_a_windy_barn_and_a_calm_one_are_found():
    """From horses found cold, or not, on windy days."""
    assert common(herd(windier=2.0), NOW).wind > 1.4
    assert common(herd(windier=0.5), NOW).wind < 0.75


def test_fill_that_gives_more_or_less_than_computed_is_found():
    """By about a degree for each hundred grams."""
    assert common(herd(fill_gives=1.2), NOW).fill_gives_c > 0.5
    assert common(herd(fill_gives=-1.2), NOW).fill_gives_c < -0.5


def test_a_cold_stable_and_a_warm_one_are_found():
    """From horses found cold, or warm, in their stalls and not outside."""
    assert common(herd(stall_warmer=-4.0), NOW).stall_warmer_c < -2
    assert common(herd(stall_warmer=4.0), NOW).stall_warmer_c > 2


def test_clipped_coats_that_do_not_grow_back_are_found():
    """From clipped horses found cold the more, the longer ago the clip is."""
    assert common(herd(regrowth=0.0), NOW).regrowth < 0.5


def test_a_barn_whose_people_call_horses_cold_where_fit_ones_should_bear_it_is_listened_to():
    """What horses are let lack is taken back, for all of them."""
    assert common(herd(bears=0.0), NOW).bears_less_c > 2.5


@pytest.mark.parametrize("few", [herd(windier=0.5, horses=2), herd(windier=0.5, people=("Inés",))])
def test_two_horses_or_one_person_are_no_barn(few: Herd):
    """Then it may be the horses, or the one who looks at them."""
    assert common(few, NOW) == Common()


def test_one_of_two_people_cannot_make_the_barn_calmer_nor_its_fill_warmer():
    """What would dress every horse more lightly must stand without any one person."""
    kind = herd(windier=0.5, fill_gives=1.2, stall_warmer=4.0, regrowth=2.0, people=("Inés", "Theo"))
    found = common(kind, NOW)
    assert found.wind >= 1
    assert found.fill_gives_c <= 0
    assert found.stall_warmer_c <= 0
    assert found.regrowth <= 1


def test_a_person_who_calls_every_horse_sweating_makes_no_barn_calmer_than_the_others_find_it():
    """Ten rounds of it, on every horse."""
    honest = herd()
    lies = tuple(
        (*own, *(replace(one, sign="sweating", who="Ben", at_s=one.at_s + 3600) for one in own[:10])) for own in honest
    )
    told, lied = common(honest, NOW), common(lies, NOW)
    assert lied.wind >= min(told.wind, 1.0) - 0.01
    assert lied.fill_gives_c <= max(told.fill_gives_c, 0.0) + 0.01
    assert lied.stall_warmer_c <= max(told.stall_warmer_c, 0.0) + 0.01
    assert lied.regrowth <= max(told.regrowth, 1.0) + 0.01


def test_the_order_of_horses_and_signs_does_not_matter():
    """Nor does asking twice."""
    one = herd(windier=0.6)
    other = tuple(tuple(reversed(own)) for own in reversed(one))
    first, second = common(one, NOW), common(other, NOW)
    assert first.wind == pytest.approx(second.wind, rel=1e-3)
    assert first.fill_gives_c == pytest.approx(second.fill_gives_c, abs=1e-2)
    assert first.bears_less_c == pytest.approx(second.bears_less_c, abs=1e-2)


def test_what_is_shared_stays_within_its_bounds():
    """Whatever people say."""
    mad = tuple(tuple(replace(one, sign="shivering") for one in own) for own in herd(windier=3.0))
    found = common(mad, NOW)
    assert WINDS[0] <= found.wind <= WINDS[-1]
    assert abs(found.fill_gives_c) <= p.FILL_GIVES_MOST
    assert 0 <= found.bears_less_c <= p.BEARS_LESS_MOST
    assert abs(found.stall_warmer_c) <= p.STALL_MOST
    assert 0 <= found.regrowth <= p.REGROWTH_MOST


def test_signs_from_after_the_moment_asked_about_are_left_out():
    """What was known on a past day can be asked for."""
    assert common(herd(windier=2.0), 0) == Common()


def test_a_horse_of_a_calm_barn_is_not_taken_for_hardy():
    """What the wind explains is no longer the horse's own: its offset is nearer to what it is."""
    calm = herd(windier=0.5)
    for j, own in enumerate(calm):
        known, blind = learn(own, NOW, common=Common(wind=0.5)).mean_c, learn(own, NOW).mean_c
        assert abs(known - (j - 2.5)) < max(abs(blind - (j - 2.5)), 1.2)
