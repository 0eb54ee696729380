"""The account of an hour: nothing made, nothing lost."""

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.dressed import Dressed, cases
from rules.heat import balance
from rules.horse import Horse
from rules.settled import account
from tests.laboratory import HORSE, SHEET, air, hours, last, pieces, site, turnout

CLIPPED = Horse("Clip", clip="full", clip_age_days=10)
BARN = [
    Dressed(HORSE),
    Dressed(HORSE, pieces(SHEET)),
    Dressed(CLIPPED, pieces(turnout(300, "full"))),
    Dressed(Horse("Dot", species="donkey", weight_kg=180), pieces(turnout(100))),
]
EVERYONE = cases(BARN, site(), 330)


@settings(max_examples=50, deadline=None)
@given(st.floats(-35, 36), st.floats(0, 15), st.floats(0, 4), st.floats(0, 100), st.floats(0, 800))
def test_the_balance_closes(temperature: float, wind: float, rain: float, cloud: float, sun: float) -> None:
    """In every weather and outfit, what is made leaves, to a millionth of a watt."""
    found = account(EVERYONE, air(hours(temperature, wind, rain=rain, cloud=cloud, sun=sun, count=3)))
    leaves = found.evaporated + found.through_clothes + found.through_open + found.drying
    assert np.abs(found.made - leaves).max() < 1e-6


def test_the_posture_agrees_with_the_margins() -> None:
    """Vessels are shut where the cold margin is negative, open where the heat margin is, and between in between."""
    for temperature in (-30.0, -5.0, 8.0, 30.0):
        weather = air(hours(temperature, 1.0, count=1))
        found, margins = account(EVERYONE, weather), balance(EVERYONE, weather)
        np.testing.assert_array_equal(found.posture == 0, margins.cold < 0)
        np.testing.assert_array_equal(found.posture == 1, margins.heat < 0)


def test_the_cold_is_paid_in_heat_and_the_warmth_in_sweat() -> None:
    """More is made only below the lower critical temperature, more evaporates only above the upper."""
    freezing, mild, hot = (account(EVERYONE, air(hours(t, 1.0, count=1))) for t in (-30.0, 10.0, 32.0))
    assert last(freezing.made) > last(mild.made) == last(hot.made)
    assert last(hot.evaporated) > last(mild.evaporated) > last(freezing.evaporated)


def test_skin_is_warmer_under_a_rug_than_beside_it() -> None:
    """And of a believable temperature: cool in the cold, near the core in the heat."""
    found = account(EVERYONE, air(hours(-5.0, 3.0, count=1)))
    assert found.skin_under[2, 0, 0] > found.skin_open[1, 0, 0] > 15
    assert np.isnan(found.skin_under[0]).all()
    assert (account(EVERYONE, air(hours(34.0, count=1))).skin_open[:2] > 36).all()


def test_an_unknown_hour_has_no_account() -> None:
    """NaN, and the hours beside it are settled."""
    weather = air(hours(0.0, 2.0, count=3))
    weather.temperature[:, :, 1] = np.nan
    made = account(EVERYONE, weather).made
    assert np.isnan(made[:, :, 1]).all()
    assert np.isfinite(made[:, :, [0, 2]]).all()
