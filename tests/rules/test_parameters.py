"""Every thermal number: where it comes from, and that it stands once."""

import re
from pathlib import Path

import pytest

from rules import parameters
from rules.parameters import ALL, Parameter

RULES = Path(parameters.__file__).parent


@pytest.mark.parametrize("name", sorted(ALL))
def test_every_number_says_where_it_comes_from(name: str) -> None:
    """Unit, source and standing are given, and the value lies in its own range."""
    number = ALL[name]
    assert number.low <= number <= number.high
    assert number.unit
    assert len(number.source) > 8
    assert number.standing in {"measured", "transferred", "assumed", "derived"}


def test_a_number_is_a_float_in_formulas() -> None:
    """It multiplies and adds as any number does."""
    assert parameters.CORE + 1 == 39.0
    assert isinstance(parameters.CORE * 2, float)


def test_a_number_outside_its_own_range_is_refused() -> None:
    """A slip of the keyboard does not become physics."""
    with pytest.raises(ValueError, match="lies outside"):
        Parameter(38.0, 40.0, 41.0, "°C", "nobody at all", "assumed")


def test_every_number_is_used() -> None:
    """A parameter that no formula reads would only pretend to matter."""
    text = "\n".join(file.read_text() for file in RULES.glob("*.py") if file.name != "parameters.py")
    unused = [name for name in ALL if not re.search(rf"\bp\.{name}\b", text)]
    assert not unused


def test_most_is_not_measured_and_says_so() -> None:
    """The list is honest: what nobody measured on a horse outnumbers what somebody did."""
    standings = [number.standing for number in ALL.values()]
    assert standings.count("measured") < len(standings) / 3
