"""What a barn learns of itself: how long things dry, how hard the wind blows."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules import parameters as p
from rules.garment import Garment
from rules.offset import Evidence
from rules.site import DryingLook, Factor, drying, in_room_h, wind

looks = st.builds(DryingLook, st.floats(0.5, 60), st.floats(0.1, 200), st.booleans())
LINER = Garment("liner", "liner", 200)
DAY = 86_400


def test_a_barn_of_which_nothing_is_known_is_as_computed():
    """No look, no change."""
    assert drying([]).value == pytest.approx(1, abs=0.05)


def test_a_room_in_which_things_are_found_still_wet_dries_slower():
    """Five liners felt wet when they should long have been dry."""
    assert drying([DryingLook(10, 16, dry=False)] * 5).value > 1.3


def test_a_room_in_which_things_are_found_dry_early_dries_faster():
    """Five liners felt dry at half the time."""
    assert drying([DryingLook(10, 5, dry=True)] * 5).value < 0.8


def test_finding_a_thing_dry_the_next_day_says_nothing_new():
    """It was due long before."""
    assert drying([DryingLook(6, 24, dry=True)] * 5).value == pytest.approx(1, abs=0.1)


@given(st.lists(looks, max_size=30))
def test_the_factor_stays_within_its_bounds(found: list[DryingLook]):
    """Whatever hands say."""
    factor = drying(found)
    assert p.FACTOR_LEAST <= factor.value <= p.FACTOR_MOST
    assert 0 < factor.sd <= 1


@given(st.lists(looks, max_size=10), looks)
def test_one_more_thing_found_wet_never_makes_a_room_faster(found: list[DryingLook], look: DryingLook):
    """Nor one more found dry slower."""
    before = drying(found).value
    wet, dry = (drying([*found, DryingLook(look.expected_h, look.after_h, dry=d)]).value for d in (False, True))
    assert wet >= before - 1e-9
    assert dry <= before + 1e-9


def test_a_warm_dry_room_is_expected_to_dry_sooner():
    """And a dry piece needs no time."""
    assert 0 < in_room_h(LINER, "wet", 20, 40) < in_room_h(LINER, "wet", 10, 70)
    assert in_room_h(LINER, "dry", 20, 40) == 0


def herd(windier: float, *, horses: int = 6, colder: float = 0.0) -> dict[float, list[list[Evidence]]]:
    """Signs of horses that lose 1 K of cold margin for each m/s, at a barn where it blows `windier` times as hard."""
    rng = np.random.default_rng(4)
    # (wind, room in calm, what people make of it)
    days = [[(rng.uniform(0, 9), rng.uniform(3, 9), rng.logistic(0, 1.5)) for _ in range(40)] for _ in range(horses)]

    def signs(own: list[tuple[float, float, float]], factor: float) -> list[Evidence]:
        people = ("Inés", "Theo", "Ruth")
        told = ["cold" if room - windier * v - colder < blur else "comfortable" for v, room, blur in own]
        return [
            Evidence(k * DAY, sign, room - factor * v, 20 - room + factor * v, who=people[k % 3])
            for k, (sign, (v, room, _)) in enumerate(zip(told, own))
        ]

    return {factor: [signs(own, factor) for own in days] for factor in (0.5, 0.7, 1.0, 1.4, 2.0, 3.0)}


def test_a_ridge_where_most_horses_are_cold_in_wind_is_found_windier():
    """And a hollow calmer; a barn that is as the forecast says is left alone."""
    windy, as_told, calm = (wind(herd(f), 30 * DAY).value for f in (2.0, 1.0, 0.5))
    assert windy > 1.5
    assert as_told == pytest.approx(1.0, abs=0.25)
    assert calm < 0.8


def test_horses_that_feel_the_cold_in_any_weather_do_not_make_a_barn_windy():
    """What they have in calm as well as in wind is their own affair."""
    assert wind(herd(1.0, colder=2.0), 30 * DAY).value == pytest.approx(1.0, abs=0.25)


def test_a_barn_where_nobody_spoke_keeps_the_forecasts_wind():
    """Unsure by as much as barns differ."""
    silent = wind({f: [[]] for f in (0.5, 1.0, 2.0)}, DAY)
    assert silent.value == pytest.approx(Factor().value, abs=0.05)
