"""The animal as the balance sees it."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.horse import Horse, body, hardy, tissue, weight_kg

HORSE = Horse("Maple")


def test_a_tape_weighs_a_horse() -> None:
    """Girth and length in centimetres give kilograms."""
    assert weight_kg(190, 165) == pytest.approx(501.4, abs=0.1)


def test_a_fit_adult_is_known_in_watts() -> None:
    """500 kg: 5.1 m², 138 W/m², a fifth of it breathed and sweated away at the least."""
    found = body(HORSE)
    assert found.area == pytest.approx(5.09)
    assert found.heat == pytest.approx(137.8, abs=0.1)
    assert found.evaporation == pytest.approx(0.2 * found.heat)
    assert found.tissue_warm < found.tissue_cold


def test_a_body_clip_halves_the_cold_a_horse_is_let_stand() -> None:
    """It has no hair to raise."""
    shorn = replace(HORSE, clip="hunter", clip_age_days=10.0)
    assert body(shorn).tolerance == pytest.approx(body(HORSE).tolerance / 2)


@pytest.mark.parametrize(
    "changed",
    [
        {"age_years": 24.0},
        {"age_years": 1.0},
        {"condition": 4.0},
        {"condition": 3.0},
        {"sick": True},
        {"hay_feed": "low"},
    ],
    ids=str,
)
def test_the_frail_get_no_tolerance(changed: dict[str, object]) -> None:
    """Old, young, thin, sick, short of hay: held to the strict balance."""
    frail = replace(HORSE, **changed)  # type: ignore[arg-type]
    assert not hardy(frail)
    assert body(frail).tolerance == 0 < body(HORSE).tolerance


def test_hay_warms() -> None:
    """Ad lib hay makes more heat than maintenance, little hay less."""
    low, normal, full = (body(replace(HORSE, hay_feed=feed)) for feed in ("low", "normal", "ad lib"))
    assert low.heat < normal.heat < full.heat
    assert low.maintenance == normal.maintenance == full.maintenance


def test_flesh_insulates() -> None:
    """Each point of condition counts."""
    assert tissue(500, 3) < tissue(500, 5) < tissue(500, 7)


def test_ponies_old_and_sick_horses_are_less_sure() -> None:
    """A wider band where fewer were measured."""
    usual = body(HORSE).unsure_k
    for other in (replace(HORSE, species="pony"), replace(HORSE, age_years=25), replace(HORSE, sick=True)):
        assert body(other).unsure_k > usual


def test_a_foal_runs_hot() -> None:
    """Newborns make more heat than their weight would have, and stand a little warmer."""
    foal = Horse("Foal", age_years=0.02, weight_kg=50)
    assert body(foal).heat >= 109
    assert body(foal).core > body(HORSE).core
    assert body(replace(foal, sick=True)).heat == pytest.approx(0.75 * body(foal).heat)


@given(st.floats(15, 1500), st.floats(1, 9), st.floats(0, 65))
def test_every_possible_animal_has_a_body(weight: float, condition: float, age: float) -> None:
    """From a newborn miniature to a shire, all numbers are positive."""
    found = body(Horse("Any", weight_kg=weight, condition=condition, age_years=age))
    assert min(found.area, found.heat, found.evaporation, found.tissue_cold, found.diameter) > 0


@pytest.mark.parametrize(
    ("field", "value"), [("weight_kg", 5.0), ("weight_kg", 5000.0), ("condition", 0.0), ("age_years", -1.0)]
)
def test_the_impossible_is_refused_by_name(field: str, value: float) -> None:
    """A slip in the barn file does not become a cold horse."""
    with pytest.raises(ValueError, match=r"Maple: .* cannot be"):
        body(replace(HORSE, **{field: value}))  # type: ignore[arg-type]
