"""Clothes worn together as one cover."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.garment import BARE, Garment, fill_resistance, holds_kg, layers, leak

SHEET = Garment("sheet", "sheet", waterproof=True)
LINER = Garment("liner", "liner", 100)
TURNOUT = Garment("turnout", "turnout", 200, waterproof=True)
STABLE_RUG = Garment("stable", "stable", 300)
NECK = Garment("neck", "neck", 50, neck="full", waterproof=True)
ROUNDING = 1e-9  # of floats: a grain of fill is smaller than the last digit of the sum


def test_nothing_worn_is_bare() -> None:
    """No piece, or only a neck cover without a rug, covers nothing."""
    assert layers([]) == BARE == layers([NECK])


def test_fill_adds_up_and_is_pressed() -> None:
    """The label's grams add up; what lies below is pressed by what lies above."""
    worn = layers([LINER, TURNOUT])
    assert worn.fill == 300
    assert 280 < worn.loft < 300


@given(st.floats(0, 600), st.floats(1, 600))
def test_each_gram_gives_less_than_the_one_before(fill: float, more: float) -> None:
    """Resistance grows with fill, ever more slowly."""
    assert fill_resistance(fill + more) > fill_resistance(fill)
    assert fill_resistance(fill + more) - fill_resistance(fill) <= fill_resistance(more) * (1 + ROUNDING)


def test_a_sheet_over_a_liner_keeps_out_wind_and_rain() -> None:
    """The shell counts, wherever the fill is."""
    alone, under_sheet = layers([LINER]), layers([LINER, SHEET])
    assert not alone.shell
    assert under_sheet.shell
    assert under_sheet.leak < 0.05 < alone.leak


def test_a_shell_nobody_proofs_again_leaks_more_each_year() -> None:
    """Sound for its first year, then worse, and never worse than one that has failed."""
    new, year, old, ancient = (leak(replace(TURNOUT, proofed_years=years)) for years in (0.0, 1.0, 4.0, 40.0))
    assert new == year < old < ancient == leak(TURNOUT, leaking=True)


def test_a_shell_that_lost_its_proofing_leaks() -> None:
    """A leaking turnout lets rain through, though less than a stable rug."""
    assert leak(TURNOUT) < leak(TURNOUT, leaking=True) < leak(STABLE_RUG)
    assert layers([TURNOUT], leaks=frozenset({"turnout"})).leak > layers([TURNOUT]).leak


@pytest.mark.parametrize(("piece", "covered"), [("none", 0.0), ("half", 0.5), ("full", 1.0)])
def test_a_neck_covers_what_it_covers(piece: str, covered: float) -> None:
    """Fixed to the rug, or as a piece of its own."""
    fixed = Garment("combo", "turnout", 200, waterproof=True, neck=piece)  # type: ignore[arg-type]
    assert layers([fixed]).neck == covered


def test_a_neck_piece_covers_the_neck() -> None:
    """With a rug under it; its own fill is not counted for the back."""
    worn = layers([TURNOUT, NECK])
    assert worn.neck == 1.0
    assert worn.fill == 200
    assert layers([TURNOUT, Garment("hood", "neck")]).neck == 1.0  # though its own neck is not said


def test_thicker_clothes_hold_more_water() -> None:
    """Several times the weight of the filling."""
    assert holds_kg(SHEET) < holds_kg(LINER) < holds_kg(STABLE_RUG)
