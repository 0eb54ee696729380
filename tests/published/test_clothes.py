"""What clothes add, and what twice as many add."""

import math

import pytest

from rules.exchange import convection, radiation
from rules.garment import fill_resistance
from rules.settled import account
from tests.laboratory import HORSE, SHEET, air, case, hours, last, margins, turnout
from tests.published.check import HOLDS, Check, between, each, near


def skin(fill: float | None) -> float:
    """Mean skin [°C] of a trunk at −23 °C and 12.8 km/h after an hour under so much fill (None: bare)."""
    rugs = () if fill is None else (SHEET if fill == 0 else turnout(fill),)
    found = account(case(HORSE, *rugs), air(hours(-23.0, 2.4, count=1)))
    return last(found.skin_open if fill is None else found.skin_under)


def warmer_with_more() -> float:
    return skin(None) < skin(0) < skin(200) < skin(400)


def less_each_time() -> float:
    return skin(400) - skin(200) < skin(200) - skin(0)


def wind_leaves(wind: float) -> float:
    """Resistance of a rug of about one clo and its air layer in wind, of that in nearly still air."""

    def whole(v: float) -> float:
        layer = 1 / float(radiation(5.0) + convection(v))
        return last(margins(HORSE, turnout(100), wind=v, count=1).clothes) + layer

    return whole(wind) / whole(0.15)


def iso_9920(wind: float) -> float:
    """What wind leaves of a standing person's clothing and air layer, of that at 0.15 m/s."""
    return math.exp(-0.281 * (wind - 0.15) + 0.044 * (wind - 0.15) ** 2)


def jute() -> float:
    """Outer resistance of a covered, of that of a bare animal after a day of cold rain and wind."""
    coated, bare = (
        margins(HORSE, *rug, temperature=3.0, wind=4.5, rain=1.0, humidity=98.0, count=12) for rug in ((SHEET,), ())
    )
    tissue = 0.0994
    return (1 / last(coated.conductance) - tissue) / (1 / last(bare.conductance) - tissue)


CHECKS = [
    Check(
        "100 g/m² of filling",
        "calibration",
        between(0.06, 0.19),
        lambda: fill_resistance(100),
        "battings, fleece to loose batts",
        "m²K/W",
    ),
    Check(
        "150 g/m² against a lofted quilt of 4.5 tog",
        "independent",
        between(0.0, 0.45),
        lambda: fill_resistance(150),
        "BS 5335; grams from memory; an upper bound",
        "m²K/W",
    ),
    Check(
        "a 100 g turnout and its air in wind of 2 m/s, of still",
        "calibration",
        near(round(iso_9920(2.0), 3), 0.1),
        lambda: wind_leaves(2.0),
        "ISO 9920, clothed people",
        "×",
    ),
    Check(
        "a 100 g turnout and its air in wind of 3.5 m/s, of still",
        "independent",
        near(round(iso_9920(3.5), 3), 0.1),
        lambda: wind_leaves(3.5),
        "ISO 9920, clothed people",
        "×",
    ),
    Check(
        "covered, of bare, in cold rain and wind",
        "calibration",
        between(1.4, 1.8, 0.2),
        jute,
        "sheep in jute coats",
        "×",
    ),
    Check(
        "skin at −23 °C: none, sheet, 200 g, 400 g",
        "ordering",
        HOLDS,
        warmer_with_more,
        "Hammer and Gunkelman 2020, n = 4",
    ),
    Check(
        "the second 200 g add less than the first",
        "ordering",
        HOLDS,
        less_each_time,
        "Hammer and Gunkelman 2020, n = 4",
    ),
]


@pytest.mark.parametrize("check", each(CHECKS))
def test_clothes_do_what_they_were_measured_to_do(check: Check) -> None:
    """Fill, shell and wind on clothes agree with textile and animal trials."""
    assert check.holds()
