"""What a barn learns of itself: how long things dry."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules import parameters as p
from rules.garment import Garment
from rules.site import DryingLook, drying, in_room_h

looks = st.builds(DryingLook, st.floats(0.5, 60), st.floats(0.1, 200), st.booleans())
LINER = Garment("liner", "liner", 200)


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
