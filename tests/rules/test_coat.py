"""How deep the hair stands."""

from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.coat import CLIPS, YEAR, coat, regrowth_mm, winter_share
from rules.horse import Horse
from tests.laboratory import JANUARY, JULY, site

HORSE = Horse("Maple")
CLIPPED = replace(HORSE, clip="hunter", clip_age_days=0.0)
NOVEMBER = 319


def depth(horse: Horse = HORSE, day: float = JANUARY, latitude: float = 44.5) -> float:
    return coat(horse, site(latitude), day).depth_mm


def test_a_coat_grows_for_winter_and_is_shed_for_summer() -> None:
    """Short in July, half way in October, full at the solstice, half shed in April."""
    assert depth(day=JULY) == pytest.approx(6.0)
    assert depth(day=JULY) < depth(day=290) < depth(day=356)
    assert depth(day=93) < depth(day=JANUARY)


@given(st.floats(1, 366))
def test_the_south_has_its_winter_half_a_year_later(day: float) -> None:
    """A coat at 44° S is a coat at 44° N half a year on."""
    assert depth(day=day, latitude=-44.5) == pytest.approx(depth(day=day + YEAR / 2), abs=1e-6)


def test_near_the_equator_no_winter_coat_grows() -> None:
    """Without a short day there is nothing to grow it for."""
    assert depth(latitude=2.0) == pytest.approx(6.0, abs=0.2)
    assert depth(latitude=25.0) < depth(latitude=50.0)


def test_the_breed_makes_the_coat() -> None:
    """Fine, average, heavy: in winter apart, in summer alike."""
    fine, average, heavy = (replace(HORSE, coat=kind) for kind in ("fine", "average", "heavy"))
    assert depth(fine) < depth(average) < depth(heavy)
    assert depth(fine, JULY) == depth(heavy, JULY)


def test_a_heavy_coat_holds_better_in_wind() -> None:
    """It is double, with wool below; a donkey's is not, whatever the file calls it."""
    heavy, average, donkey = (
        coat(horse, site(), JANUARY).wind
        for horse in (replace(HORSE, coat="heavy"), HORSE, Horse("Dot", species="donkey", coat="heavy"))
    )
    assert heavy < average == donkey


def test_a_donkey_grows_no_winter_coat() -> None:
    """The same depth in every month, whatever the file calls its coat."""
    donkey = Horse("Dot", species="donkey", coat="heavy")
    assert {depth(donkey, day) for day in range(1, 366, 10)} == {10.0}


def test_a_clip_takes_what_its_drawing_shows() -> None:
    """Each style takes at least what the one before takes, part by part; a hunter clip leaves the legs."""
    styles = [CLIPS[name] for name in ("none", "bib", "trace", "blanket", "hunter", "full")]
    for less, more in pairwise(styles):
        assert all(a <= b for a, b in zip(less, more, strict=True))
    assert CLIPS["hunter"].rest < 0.5 < CLIPS["full"].rest


def test_clipped_hair_is_short_and_grows_back() -> None:
    """2 mm the day after; by six weeks of autumn as deep again as a summer coat, never deeper than the rest."""
    fresh = coat(CLIPPED, site(), NOVEMBER)
    later = coat(replace(CLIPPED, clip_age_days=42.0), site(), NOVEMBER)
    ages_ago = coat(replace(CLIPPED, clip_age_days=400.0), site(), NOVEMBER)
    assert fresh.clipped_mm == pytest.approx(2.0)
    assert 8 < later.clipped_mm < 12
    assert ages_ago.clipped_mm == ages_ago.depth_mm


def test_little_grows_back_after_the_solstice() -> None:
    """Three weeks in January bring less than one in November."""
    assert regrowth_mm(JANUARY + 10, 21) < regrowth_mm(NOVEMBER, 7)


@given(st.floats(1, 366), st.floats(0, 400), st.floats(0, 60))
def test_hair_only_ever_grows_back(day: float, age: float, more: float) -> None:
    """A clip longer ago is never the shorter for it."""
    assert regrowth_mm(day, age + more) >= regrowth_mm(day, age) - 1e-9


@given(st.floats(-400, 800))
def test_the_year_closes(day: float) -> None:
    """The share of the winter coat is between none and all, and the same a year later."""
    assert 0 <= winter_share(day) <= 1
    assert winter_share(day) == pytest.approx(winter_share(day + YEAR), abs=1e-6)


def test_no_clip_date_means_no_clip() -> None:
    """A style without a day is a plan, not a clip."""
    assert coat(replace(HORSE, clip="full", clip_age_days=None), site(), JANUARY).clipped == CLIPS["none"]
