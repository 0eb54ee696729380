"""What water does to hair, and how fast it leaves."""

import numpy as np
import psychrolib
import pytest

from rules.exchange import convection, evaporation, saturation_pa
from rules.garment import Garment
from rules.heat import balance
from rules.horse import body
from rules.paths import between as posture
from rules.paths import hair_left, open_skin, paths, surroundings
from rules.wetness import dry_after_h, per_hour
from tests.laboratory import HORSE, JULY, air, case, hours, last, soaked
from tests.published.check import HOLDS, Check, between, each, near

psychrolib.SetUnitSystem(psychrolib.SI)
STABLE_RUG = Garment("s", "stable", 200)


def wet_margin(share: float, temperature: float = 0.0, wind: float = 0.0, day: float = 15) -> float:
    """Cold margin [K] with so much of the hair's volume water, in air that dries nothing."""
    found = balance(soaked(case(day=day), share), air(hours(temperature, wind, humidity=100, count=1)))
    return float(found.cold[0, 0, 0])


def shift(share: float) -> float:
    """By how much wet hair raises the critical temperature [K]."""
    return wet_margin(0.0) - wet_margin(share)


def heat_of_the_soaked() -> float:
    """Heat made by a soaked animal at freezing, of that at rest."""
    found = balance(soaked(case(day=JULY), 0.11), air(hours(0.0, humidity=100, count=1)))
    return last(found.made) / body(HORSE).heat


def halving() -> float:
    """Heat through hair and air with 11 % of its volume water, of that when dry."""
    one, weather = case(), air(hours(0.0, humidity=100, count=1))
    wet = hair_left(one, balance(soaked(one, 0.11), weather).water)
    no_tissue = posture(one, 0.0)._replace(tissue=np.zeros((1, 1, 1)))
    dripping, dry = (paths(one, surroundings(one, weather), f, no_tissue) for f in (wet, np.ones((4, 1, 1, 1))))
    return last(open_skin(one.share, dripping)) / last(open_skin(one.share, dry))


def worse_together() -> float:
    wet_windy, wet_still, dry_windy = wet_margin(0.11, wind=5), wet_margin(0.11), wet_margin(0.0, wind=5)
    return wet_windy < wet_still and wet_windy < dry_windy


def drying_h(share: float) -> float:
    """Hours on a rail for so much of the water that a stable rug holds."""
    long = np.ones(2000)
    state = {0.5: "wet", 1.0: "soaked"}[share]
    return dry_after_h(STABLE_RUG, state, 15 * long, 60 * long, 0.5 * long)  # type: ignore[arg-type]


def grams(temperature: float, humidity: float, wind: float, heat: float = 0.0) -> float:
    return 1000 * float(evaporation(temperature, humidity, wind, heat))


def against_psychrolib(temperature: float) -> float:
    return float(saturation_pa(temperature)) / psychrolib.GetSatVapPres(temperature)


def by_the_wet_bulb() -> float:
    """In a gale radiation is nothing: water leaves by the heat that flows to the psychrometric wet bulb."""
    flows = float(convection(30.0)) * (20.0 - psychrolib.GetTWetBulbFromRelHum(20.0, 0.5, 101325))
    return grams(20.0, 50.0, 30.0) / (1000 * float(per_hour(flows)))


CHECKS = [
    *(
        Check(
            f"saturation pressure at {t} °C",
            "independent",
            near(1.0, 0.005),
            lambda t=t: against_psychrolib(t),
            "psychrolib (ASHRAE)",
            "×",
        )
        for t in (-20, -5, 5, 20, 35)
    ),
    Check(
        "evaporation in a gale by the wet bulb",
        "independent",
        near(1.0, 0.06),
        by_the_wet_bulb,
        "psychrolib (ASHRAE)",
        "×",
    ),
    *(
        Check(
            f"evaporation at {t} °C, {rh} %, {v} m/s",
            "exact",
            near(value, max(2.0, round(0.05 * value))),
            lambda t=t, rh=rh, v=v: grams(t, rh, v),
            "Lewis' relation, solved apart from this code",
            "g/m²h",
        )
        for t, rh, v, value in ((5, 90, 2, 12), (10, 80, 2, 30), (15, 60, 2, 76), (20, 65, 0.1, 31), (20, 50, 2, 115))
    ),
    Check(
        "what 50 W/m² dries",
        "exact",
        near(73, 0.5),
        lambda: 1000 * float(per_hour(50.0)),
        "latent heat",
        "g/m²h",
    ),
    Check(
        "heat through hair with 11 % water, of dry",
        "calibration",
        near(2.0, 0.3),
        halving,
        "caribou fur, Lentz and Hart 1960",
        "×",
    ),
    Check(
        "critical temperature raised by a wet coat, 3 % water",
        "calibration",
        between(5.6, 8.3, 3.0),
        lambda: shift(0.03),
        "extension: 10 to 15 °F",
        "K",
    ),
    Check(
        "critical temperature of a soaked winter coat",
        "calibration",
        near(15.5, 8),
        lambda: -wet_margin(0.11),
        "wet beef cattle, 59 to 60 °F",
        "°C",
        miss="by half a degree: rain leaves cattle the hold of a summer coat, ours half of a winter coat's",
    ),
    Check(
        "heat of a soaked short-coated animal at 0 °C",
        "independent",
        between(1.39, 1.56, 0.2),
        heat_of_the_soaked,
        "steers in water and shower, Degen and Young 1993",
        "×",
    ),
    Check(
        "wet and windy is worse than either",
        "ordering",
        HOLDS,
        worse_together,
        "sheep in jute coats; lambs, Alexander 1962",
    ),
    Check(
        "twice the water takes twice the time",
        "independent",
        near(2.0, 0.1),
        lambda: drying_h(1.0) / drying_h(0.5),
        "Fourt et al. 1951: one rate for all fabrics",
        "×",
    ),
]


@pytest.mark.parametrize("check", each(CHECKS))
def test_water_does_what_it_was_measured_to_do(check: Check) -> None:
    """Wet hair insulates less and dries no faster than was measured."""
    assert check.holds()
