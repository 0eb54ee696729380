"""What a barn has learned of itself moves its plans: wind, what fill gives, how much cold is borne."""

from dataclasses import replace

import numpy as np
import pytest

from rules.garment import Garment
from rules.horse import Horse
from rules.plan import Dress, plan
from rules.question import Piece, Question, Stay, Wearer
from rules.weather import Hours, Site

FILLS = (0.0, 50.0, 100.0, 200.0, 300.0)


def asked(air_c: float, wind_ms: float = 5.0, **learned: float) -> Question:
    """One horse in the field for half a day, a turnout of each fill at hand."""
    n = 12
    dry = np.zeros(n)
    hours = Hours(
        start_s=1_764_000_000, temperature_c=np.full(n, air_c), humidity_pct=np.full(n, 70.0),
        wind_ms=np.full(n, wind_ms), gust_ms=np.full(n, wind_ms), rain_mm=dry, snow_mm=dry,
        cloud_pct=np.full(n, 100.0), solar_wm2=dry, rain_probability_pct=dry,
    )  # fmt: skip
    pieces = tuple(
        Piece(Garment(f"{fill:.0f} g", "turnout", fill, waterproof=True, rear="leg straps", horse="A"))
        for fill in FILLS
    )
    wearer = Wearer(Horse("A"), (Stay("field"),), **learned)
    return Question(hours, Site(44.0, -72.0, 100.0, "open"), np.ones((1, n)), (wearer,), pieces)


def dress(question: Question) -> Dress:
    """What the plan puts on it."""
    return plan(question).dresses["A"][0]


@pytest.mark.parametrize("air", [-8.0, -4.0, 0.0])
def test_a_barn_where_it_blows_harder_dresses_warmer(air: float) -> None:
    """And one in a hollow more lightly, or as light."""
    question = asked(air)
    calm, usual, windy = (
        dress(replace(question, site=replace(question.site, wind_factor=f))).fill_g for f in (0.5, 1, 3)
    )
    assert calm <= usual <= windy
    assert calm < windy


@pytest.mark.parametrize("air", [-8.0, -4.0, 0.0])
def test_where_horses_are_let_bear_less_they_wear_more(air: float) -> None:
    """The margin that people read stays that of what is worn."""
    usual, less = dress(asked(air)), dress(asked(air, bears_less_c=8.0))
    assert less.fill_g > usual.fill_g
    assert less.chance_cold <= 1.0


def test_where_fill_gives_more_less_of_it_is_worn() -> None:
    """And the margin says so."""
    usual, more = dress(asked(-20.0)), dress(asked(-20.0, fill_gives_c=2.0))
    assert more.fill_g <= usual.fill_g
    same = asked(-20.0, fill_gives_c=2.0)
    one = tuple(piece for piece in same.pieces if piece.garment.fill_g == usual.fill_g)
    found = dress(replace(same, pieces=one))
    assert found.cold_margin_c is not None
    assert usual.cold_margin_c is not None
    assert found.cold_margin_c == pytest.approx(usual.cold_margin_c + 2.0 * usual.fill_g / 100, abs=1e-6)


def test_nothing_learned_changes_nothing() -> None:
    """A barn that is as computed."""
    assert dress(asked(-15.0)).fill_g == dress(asked(-15.0, bears_less_c=0.0, fill_gives_c=0.0)).fill_g
