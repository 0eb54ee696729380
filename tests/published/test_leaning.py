"""How much of the answer rests on numbers that nobody measured on a horse."""

import pytest

from rules.parameters import ALL
from tests.published.check import Check
from tests.published.leaning import answers, instead, swing, table

CHECKS: list[Check] = []


@pytest.fixture(scope="module")
def swings() -> dict[str, tuple[float, float]]:
    return {name: swing(name) for name in ALL}


def test_a_coat_is_what_a_bare_horse_leans_on(swings: dict[str, tuple[float, float]]) -> None:
    """Insulation for each millimetre of hair moves the bare horse's answer the most, by more than 10 K."""
    most = max(swings, key=lambda name: swings[name][0])
    assert most == "COAT_PER_MM"
    assert swings[most][0] > 10


def test_a_rug_leans_on_flesh_and_fill_and_not_on_hair(swings: dict[str, tuple[float, float]]) -> None:
    """For the clipped horse under 200 g, tissue and fill lead, and the depth of a winter coat is nothing."""
    leading = sorted(swings, key=lambda name: -swings[name][1])[:4]
    assert {"FILL_RESISTANCE", "TISSUE_COLD"} <= set(leading)
    assert swings["COAT_WINTER_AVERAGE"][1] < 1


def test_trying_another_number_leaves_no_trace() -> None:
    """After a trial the rules are what they were."""
    before = answers()
    with instead("CORE", 37.2):
        assert answers() != before
    assert answers() == before


def test_the_table_names_the_numbers_that_matter() -> None:
    """Two dozen lines at most, the heaviest first."""
    lines = table(5).splitlines()
    assert len(lines) == 7
    assert "COAT_PER_MM" in lines[2]
