"""Weight from a tape, the surface that loses heat, the donkey that grows no coat."""

import pytest

from rules.coat import coat
from rules.horse import Horse, surface_m2, weight_kg
from tests.laboratory import site
from tests.published.check import HOLDS, Check, between, each, near


def donkeys_coat_never_changes() -> float:
    donkey = Horse("Dot", species="donkey", weight_kg=180)
    return len({coat(donkey, site(), day).depth_mm for day in range(1, 366)}) == 1


CHECKS = [
    Check(
        "weight, girth 190 cm, length 165 cm",
        "exact",
        near(501.4, 1),
        lambda: weight_kg(190, 165),
        "Carroll and Huntington 1988",
        "kg",
    ),
    Check(
        "weight, girth 75 in, length 65 in",
        "independent",
        near(1108, 11),
        lambda: weight_kg(75 * 2.54, 65 * 2.54) / 0.45359237,
        "extension: girth² × length / 330",
        "lb",
    ),
    Check(
        "weight by girth alone, 190 cm",
        "independent",
        near(549, 55),
        lambda: weight_kg(190, 165),
        "Marcenac and Aublet: 80 × girth³",
        "kg",
    ),
    Check(
        "surface of 500 kg",
        "calibration",
        between(5.0, 6.6),
        lambda: surface_m2(500),
        "Hodgson et al. 1993 to Meeh, both from memory",
        "m²",
    ),
    Check("a donkey's coat is the same all year", "ordering", HOLDS, donkeys_coat_never_changes, "Osthaus et al. 2018"),
]


@pytest.mark.parametrize("check", each(CHECKS))
def test_a_body_is_as_it_was_measured(check: Check) -> None:
    """Weight, surface and coat agree with what was published on them."""
    assert check.holds()
