"""Numbers as people read them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.units import Measures, known

US, METRIC, FRENCH = Measures("us"), Measures("metric"), Measures("metric", ",", "\u00a0%")


def said(text: str) -> str:
    """A quantity with plain spaces."""
    return text.replace("\u00a0", " ")


@pytest.mark.parametrize(
    ("celsius", "us", "metric"),
    [
        (0.0, "32°F", "0 °C"),
        (-0.2, "32°F", "0 °C"),
        (-17.8, "0°F", "−18 °C"),
        (-40.0, "−40°F", "−40 °C"),
        (100.0, "212°F", "100 °C"),
    ],
)
def test_a_temperature_is_shifted_and_scaled(celsius: float, us: str, metric: str) -> None:
    """Freezing is 32°F; both scales meet at −40; nought is nought and never minus nought."""
    assert (said(US.temperature(celsius)), said(METRIC.temperature(celsius))) == (us, metric)


@pytest.mark.parametrize(("kelvin", "us"), [(0.0, "0°F"), (5.0, "9°F"), (-5.0, "−9°F")])
def test_a_difference_is_scaled_and_never_shifted(kelvin: float, us: str) -> None:
    """Five degrees to spare are nine in Fahrenheit, and none are none."""
    assert US.difference(kelvin) == us


def test_wind_water_and_weight_by_their_definitions() -> None:
    """A statute mile is 1,609.344 m, an inch 25.4 mm, a pound 0.45359237 kg (exact by definition)."""
    assert said(US.wind(1609.344 / 3600 * 40)) == "40 mph"
    assert said(METRIC.wind(10)) == "36 km/h"
    assert said(US.water(25.4)) == "1.0 in"
    assert said(US.water(2.54)) == "0.10 in"
    assert said(US.weight(0.45359237 * 3)) == "3 lb"
    assert said(METRIC.weight(1.5)) == "1.5 kg"


def test_fill_and_size_are_said_as_labels_say_them_in_both_units() -> None:
    """Grams of fill and inches of size everywhere."""
    assert said(US.fill(100)) == said(METRIC.fill(100)) == "100 g"
    assert said(US.fills(200, 300)) == "200–300 g"
    assert said(US.fills(200, 200.2)) == "200 g"
    assert said(METRIC.size(57.09)) == "57 in"


def test_each_language_has_its_own_point() -> None:
    """French readers see a comma and a space before the sign."""
    assert said(FRENCH.water(0.4)) == "0,4 mm"
    assert said(FRENCH.percent(40)) == "40 %"


@given(st.floats(allow_nan=True, allow_infinity=True) | st.none())
def test_what_is_not_a_number_is_not_known(value: float | None) -> None:
    """NaN and infinity are never shown to anybody."""
    found = known(value)
    assert found is None or abs(found) < float("inf")


@given(st.floats(-100, 100))
def test_no_quantity_breaks_across_a_line(value: float) -> None:
    """Number and unit hold together until the text is laid out."""
    for measures in (US, FRENCH):
        for shown in (measures.temperature(value), measures.wind(abs(value)), measures.water(abs(value))):
            assert " " not in shown
