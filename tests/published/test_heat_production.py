"""Heat that a standing animal makes, and what the cold costs it."""

import pytest

from rules.horse import Horse, body
from tests.laboratory import HORSE, last, margins
from tests.published.check import Check, between, each, near

WATT_IN_MJ_A_DAY = 86_400 / 1e6
SHETLAND = Horse("Pip", species="pony", weight_kg=150, coat="heavy")
WEANLING = Horse("Wren", weight_kg=250, age_years=0.6, hay_feed="ad lib")


def watt(horse: Horse) -> float:
    return body(horse).heat * body(horse).area


def nrc_1989_mcal(kg: float) -> float:
    return watt(Horse("Any", weight_kg=kg)) / 0.87 / 48.42


def per_kelvin(horse: Horse) -> float:
    """Extra energy [% of maintenance] for each kelvin colder, well below what the animal bears."""
    warmer, colder = (last(margins(horse, temperature=t, count=1).extra) for t in (-29.0, -31.0))
    return (colder - warmer) / 2


def times_basal() -> float:
    severe = margins(HORSE, temperature=-40.0, count=1)
    return last(severe.made) / body(HORSE).heat


def loss_per_kelvin(temperature: float) -> float:
    """Heat lost [W/m²] for each kelvin colder, short coat, vessels shut."""
    warmer, colder = (
        last(margins(HORSE, day=196, temperature=t, count=1).flow) for t in (temperature, temperature - 1)
    )
    return colder - warmer


CHECKS = [
    Check(
        "heat of a standing horse, 500 kg",
        "independent",
        between(127, 142),
        lambda: body(HORSE).heat,
        "Morgan 1995, 1998",
        "W/m²",
    ),
    Check(
        "the same by weight",
        "independent",
        near(1.43, 0.1),
        lambda: watt(HORSE) / 500,
        "Pagan and Hintz 1986, at zero speed",
        "W/kg",
    ),
    Check(
        "the same in the field",
        "independent",
        near(0.118, 0.008),
        lambda: watt(HORSE) * WATT_IN_MJ_A_DAY / 500,
        "performance horses, n = 60, 0.118 MJ ME/kg/d ± SD",
        "MJ/kg/d",
    ),
    Check(
        "maintenance of 400 kg",
        "independent",
        near(13.4, 0.7),
        lambda: nrc_1989_mcal(400),
        "NRC 1989: 1.4 + 0.03 kg, from memory",
        "Mcal/d",
    ),
    Check(
        "maintenance of 600 kg",
        "independent",
        near(19.4, 1.0),
        lambda: nrc_1989_mcal(600),
        "NRC 1989: 1.4 + 0.03 kg, from memory",
        "Mcal/d",
    ),
    Check(
        "Shetland mares in winter",
        "independent",
        between(15.0, 24.6),
        lambda: watt(SHETLAND) * WATT_IN_MJ_A_DAY,
        "Brinkmann et al. 2014",
        "MJ/d",
    ),
    Check(
        "Shetland mares in a summer field",
        "independent",
        near(63.4, 15.0),
        lambda: watt(SHETLAND) * WATT_IN_MJ_A_DAY,
        "Brinkmann et al. 2014",
        "MJ/d",
        miss="the model's animals stand; it knows nothing of a day's grazing and playing",
    ),
    Check(
        "newborn foal of 50 kg",
        "independent",
        between(176, 220, 18),
        lambda: watt(Horse("Foal", weight_kg=50, age_years=0.01)),
        "healthy Thoroughbred foals, day 2 to 7 (Ousey's group)",
        "W",
    ),
    Check(
        "heat at −40 °C, of that at rest",
        "calibration",
        between(1.42, 1.70, 0.05),
        times_basal,
        "McBride et al. 1985 to Cymbaluk 1994",
        "×",
        miss="severe cold costs our winter coat less than it cost the measured ones",
    ),
    Check(
        "cost of each degree, adult in winter coat",
        "independent",
        between(1.8, 2.5, 0.3),
        lambda: per_kelvin(HORSE),
        "Cymbaluk 1994; extension 1 % a °F",
        "%/K",
        miss="our winter coat is the better insulator of the two that would fit −15 °C; hay is advised too low",
    ),
    Check(
        "cost of each degree, adult in short coat",
        "independent",
        near(2.4, 0.5),
        lambda: 100 * loss_per_kelvin(0.0) / body(HORSE).maintenance,
        "Morgan 1995: 3 W/m²K of 127",
        "%/K",
    ),
    Check(
        "cost of each degree, growing",
        "independent",
        between(0.7, 1.8, 0.3),
        lambda: per_kelvin(WEANLING),
        "Cymbaluk 1990, Autio et al. 2008",
        "%/K",
    ),
    Check(
        "dry loss for each degree, short coat",
        "calibration",
        between(2.78, 3.0, 0.8),
        lambda: loss_per_kelvin(0.0),
        "Morgan et al. 1995, 1997",
        "W/m²/K",
    ),
]


@pytest.mark.parametrize("check", each(CHECKS))
def test_heat_is_made_as_it_was_measured(check: Check) -> None:
    """Heat at rest and in the cold agrees with what was measured on living animals."""
    assert check.holds()
