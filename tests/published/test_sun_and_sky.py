"""What the sun gives and a clear night takes."""

from datetime import UTC, datetime

import astral
import numpy as np
import pytest
from astral.sun import elevation as astral_elevation

from rules.horse import Horse
from rules.sun import elevation, likely_solar
from tests.laboratory import HORSE, last, margins
from tests.published.check import Check, between, each, near

VERMONT = astral.Observer(44.5, -72.3)
DARK = Horse("Ink", colour="dark")


def posix(*when: int) -> float:
    return datetime(*when, tzinfo=UTC).timestamp()  # type: ignore[arg-type]


def against_astral(*when: int) -> float:
    """Elevation [degrees] less astral's, over Vermont, refraction left out."""
    theirs = astral_elevation(VERMONT, datetime(*when, tzinfo=UTC), with_refraction=False)  # type: ignore[arg-type]
    return float(elevation(44.5, -72.3, np.array([posix(*when)]))[0] - theirs)


def in_the_sun(horse: Horse, sun: float, wind: float) -> float:
    """How much warmer [K] bright sun makes the air feel."""
    shaded, lit = (last(margins(horse, temperature=0.0, wind=wind, sun=s, count=1).effective) for s in (0.0, sun))
    return lit - shaded


def clear_night(temperature: float) -> float:
    """How much colder [K] a clear sky makes calm air feel, against an overcast one."""
    cloudy, clear = (last(margins(temperature=temperature, cloud=c, count=1).effective) for c in (100.0, 0.0))
    return cloudy - clear


CHECKS = [
    *(
        Check(
            f"height of the sun, {year}-{month:02}-{day:02} {hour} UTC",
            "independent",
            near(0.0, 0.2),
            lambda when=(year, month, day, hour): against_astral(*when),
            "astral (NOAA's formulas)",
            "° off",
        )
        for year, month, day, hour in ((2025, 12, 21, 17), (2026, 3, 20, 14), (2026, 6, 21, 20))
    ),
    Check(
        "height of the sun at noon of the winter solstice, 44.5° N",
        "exact",
        near(90 - 44.5 - 23.44, 0.2),
        lambda: float(elevation(44.5, 0.0, np.array([posix(2025, 12, 21, 11, 58)]))[0]),
        "geometry",
        "°",
    ),
    Check(
        "clear-sky sunlight with the sun at the zenith",
        "exact",
        near(1035, 5),
        lambda: float(likely_solar(np.array([90.0]), np.array([0.0]))[0]),
        "Haurwitz 1945, from memory",
        "W/m²",
    ),
    Check(
        "bright sun, 600 W/m², at 8 m/s, black",
        "independent",
        between(3.0, 5.0),
        lambda: in_the_sun(DARK, 600.0, 8.0),
        "NRC beef: 3 to 5 K",
        "K",
    ),
    Check(
        "bright sun in calm",
        "calibration",
        between(3.0, 5.0),
        lambda: in_the_sun(HORSE, 600.0, 0.5),
        "NRC beef: 3 to 5 K; capped",
        "K",
    ),
    Check(
        "clear calm night at −5 °C",
        "calibration",
        near(5.0, 2.0),
        lambda: clear_night(-5.0),
        "CSIRO 1990 via NRC: about 5 K",
        "K",
    ),
]


@pytest.mark.parametrize("check", each(CHECKS))
def test_sun_and_sky_count_as_they_were_measured(check: Check) -> None:
    """The sun stands where astronomy says, and warms as much as was measured."""
    assert check.holds()
