"""One horse in one outfit is a case."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.coat import CLIPS
from rules.dressed import COVERED_ZONES, Dressed, cases
from rules.garment import Garment
from rules.horse import Horse
from rules.question import Piece
from tests.laboratory import HORSE, SHEET, case, pieces, site, turnout

LINER = Garment("liner", "liner", 100)
NECK = Garment("neck", "neck", neck="full")


def covered(*garments: Garment) -> float:
    return float(case(HORSE, *garments).share[list(COVERED_ZONES)].sum())


@given(st.sampled_from(sorted(CLIPS)), st.sampled_from([(), (SHEET,), (turnout(100, "full"),)]))
def test_a_skin_is_a_whole(clip: str, rug: tuple[Garment, ...]) -> None:
    """The zones of every horse in every outfit add up to one skin."""
    horse = Horse("Any", clip=clip, clip_age_days=5)  # type: ignore[arg-type]
    one = case(horse, *rug)
    assert one.share.sum() == pytest.approx(1)
    assert one.share_clothed.sum() == pytest.approx(1)
    assert (one.share >= -1e-12).all()


def test_a_rug_covers_two_thirds_and_a_neck_the_rest_of_the_trunk() -> None:
    """Bare, rug, half neck, full neck, a neck piece."""
    assert covered() == 0
    assert covered(SHEET) == pytest.approx(0.65)
    assert covered(turnout(0, "half")) == pytest.approx(0.725)
    assert covered(turnout(0, "full")) == covered(SHEET, NECK) == pytest.approx(0.80)


def test_a_hunter_clip_under_a_rug_is_mostly_under_the_rug() -> None:
    """The clipped part of the trunk is what the rug covers."""
    share = case(replace(HORSE, clip="hunter", clip_age_days=3.0), SHEET).share[:, 0]
    assert share[1] > 0.55 > share[3]


def test_a_damp_liner_brings_its_water_along() -> None:
    """Within; a rained-on turnout brings it outside."""
    outfit = (Piece(LINER, "damp"), Piece(turnout(100), "wet"))
    soaking = cases([Dressed(HORSE, outfit)], site(), 15).soaking
    assert 0 < soaking.within[0] < 0.2 * soaking.holds[0]
    assert soaking.outside[0] == soaking.film[0] > 0


def test_a_soaked_neck_piece_does_not_overfill_the_rug() -> None:
    """What is soaked through holds what the cloth over the back can hold, no more."""
    outfit = (Piece(SHEET, "soaked"), Piece(NECK, "soaked"))
    soaking = cases([Dressed(HORSE, outfit)], site(), 15).soaking
    assert soaking.within[0] == soaking.holds[0]


def test_a_horse_seen_wet_begins_wet() -> None:
    """Its hair holds what a person calls wet."""
    wet, dry = (cases([Dressed(HORSE, (), 0, seen)], site(), 15).soaking.hair for seen in (True, False))
    assert (wet > 0).all()
    assert (dry == 0).all()


def test_cases_keep_their_order_and_their_place() -> None:
    """The flat axis is the list as it was given."""
    barn = [Dressed(HORSE, pieces(turnout(grams)), place) for place, grams in enumerate((300, 0, 100))]
    table = cases(barn, site(), 15)
    assert table.fill.tolist() == [300, 0, 100]
    assert table.soaking.place.tolist() == [0, 1, 2]
    assert len(table) == 3


def test_no_cases_are_no_trouble() -> None:
    """An empty barn is an empty table."""
    assert len(cases([], site(), 15)) == 0
