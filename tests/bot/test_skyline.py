"""The weather of a window in one line that explains the day."""

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from typing import Any

import pytest

from bot.barn import Barn
from bot.sheet import Sheet, SkyHour, Window
from bot.skyline import skyline
from bot.voice import voice

HOUR = timedelta(hours=1)


@pytest.fixture
def line(sheet: Sheet, farm: Barn) -> Callable[..., str]:
    """The line for four hours from seven, each as given (metric, English); what is not given is calm, dry and 5 °C."""

    def said(*hours: dict[str, Any], language: str = "en") -> str:
        start = sheet.windows[0].start
        quiet = SkyHour(start, 5.0, 1.0, 2.0, 0.0, 0.0, 0.0)
        given = [*hours, *[{}] * (4 - len(hours))]
        sky = tuple(replace(quiet, at=start + k * HOUR, **h) for k, h in enumerate(given))
        window = Window("morning", start, start + 4 * HOUR)
        told = skyline(replace(sheet, sky=sky), window, voice(farm, language, "metric"))
        return told.replace("\u00a0", " ")

    return said


def test_a_quiet_day_is_said_to_be_quiet(line: Callable[..., str]) -> None:
    """Dry and calm are news too."""
    assert line() == "5 °C throughout, dry, calm."


def test_the_way_of_the_temperature_ends_at_the_hour_that_matters(line: Callable[..., str]) -> None:
    """Up to the warmest, down to the coldest, or up and then down, with the hour."""
    assert line({}, {"temperature_c": 9.0}).startswith("5 °C, up to 9 °C at 08:00")
    assert line({}, {}, {"temperature_c": -3.0}).startswith("5 °C, down to −3 °C at 09:00")
    both = line({}, {"temperature_c": 9.0}, {}, {"temperature_c": -3.0})
    assert both.startswith("5 °C, up to 9 °C, then −3 °C at 10:00")


def test_rain_and_snow_are_told_apart_with_amount_and_hour(line: Callable[..., str]) -> None:
    """Snow is told as the water it holds."""
    assert "rain from 08:00 (2.5 mm)" in line({}, {"rain_mm": 2.0}, {"rain_mm": 0.5})
    assert "snow from 09:00 (3 mm of water)" in line({}, {}, {"snow_mm": 3.0})
    assert "rain and snow all along (4 mm)" in line(*[{"rain_mm": 0.5, "snow_mm": 0.5}] * 4)


def test_a_trace_of_rain_is_dry_and_a_chance_is_a_chance(line: Callable[..., str]) -> None:
    """A tenth of a millimetre wets nobody; four in ten is worth a word."""
    assert "dry" in line({"rain_mm": 0.1})
    assert "40% chance of rain about 08:00" in line({}, {"rain_probability_pct": 40.0})
    assert "dry" in line({"rain_probability_pct": 20.0})


def test_gusts_are_told_where_straps_matter_else_the_wind(line: Callable[..., str]) -> None:
    """The worst hour with its number."""
    assert line({}, {"gust_ms": 20.0}).endswith("gusts 72 km/h at 08:00.")
    assert line({"wind_ms": 6.0}).endswith("wind 22 km/h.")


def test_what_is_not_known_is_not_said(line: Callable[..., str]) -> None:
    """No number is made up; where nothing at all is known, that is said."""
    unknown = {"temperature_c": None, "wind_ms": None, "gust_ms": float("nan"), "rain_mm": None, "snow_mm": None}
    assert line(*[unknown | {"temperature_c": 5.0}] * 4) == "5 °C throughout."
    assert line(*[unknown] * 4) == "The weather of these hours is not known."


def test_it_is_said_in_every_language(line: Callable[..., str]) -> None:
    """The same facts."""
    assert line({}, {"gust_ms": 20.0}, language="es") == "5 °C todo el tiempo, seco, rachas de 72 km/h a las 08:00."
    assert line({}, {"gust_ms": 20.0}, language="fr") == "5 °C tout du long, sec, rafales à 72 km/h vers 08:00."
