"""Wind at the horse, the air layer that it thins, the hair that it blows through."""

import math
from itertools import pairwise

import numpy as np
import pytest
import thermofeel

from rules import parameters as p
from rules.exchange import convection, radiation
from rules.horse import Horse
from tests.laboratory import HORSE, SHEET, case, cold, last, margins
from tests.published.check import HOLDS, Check, between, each, near

CLIPPED = Horse("Clip", clip="full", clip_age_days=1)
HEAVY = Horse("Ice", coat="heavy")
REYNOLDS = 0.65 / 1.33e-5  # of a 0.65 m trunk, for each m/s


def air_layer(wind: float) -> float:
    return 1 / float(radiation(0.0) + convection(wind))


def nusselt(wind: float) -> float:
    return float(convection(wind)) * 0.65 / 0.0243


def outer_layers(wind: float, horse: Horse = HORSE) -> float:
    """Hair and air of the open trunk [m²K/W]."""
    depth = float(case(horse).soaking.depth[2, 0])
    hold = float(case(horse).hair_wind[0])
    return p.COAT_PER_MM * depth / (1 + hold * wind) + air_layer(wind)


def under_a_sheet(wind: float) -> float:
    """Hair, gap and air of the covered trunk [m²K/W]."""
    depth = float(case().soaking.depth[0, 0])
    clothes = last(margins(HORSE, SHEET, wind=wind, count=1).clothes)
    return p.COAT_FLATTENED * p.COAT_PER_MM * depth + clothes + air_layer(wind)


def fur_in_a_gale() -> float:
    """Heat through hair at 23 m/s, of that in calm, under an air layer that the tunnel kept."""
    return 1 + float(case(HEAVY).hair_wind[0]) * 23


def colder_as_the_wind_chill_says() -> float:
    """A clipped horse's hours from the mildest to the worst are in the order of the wind chill."""
    hours = [(5.0, 6.0), (0.0, 6.0), (-5.0, 6.0), (-5.0, 12.0), (-10.0, 12.0), (-20.0, 12.0)]
    chill = [float(thermofeel.calculate_wind_chill(np.array([t + 273.15]), np.array([v]))[0]) for t, v in hours]
    margin = [cold(CLIPPED, temperature=t, wind=float(p.WIND_OPEN) * v, count=1) for t, v in hours]
    return all(a > b for a, b in pairwise(chill)) and all(a > b for a, b in pairwise(margin))


CHECKS = [
    Check("air layer, calm", "exact", near(0.133, 0.002), lambda: air_layer(0.0), "free convection 3 W/m²K", "m²K/W"),
    Check("air layer, 1 m/s", "exact", near(0.096, 0.002), lambda: air_layer(1.0), "cylinder correlation", "m²K/W"),
    Check("air layer, 5 m/s", "exact", near(0.040, 0.002), lambda: air_layer(5.0), "cylinder correlation", "m²K/W"),
    Check("air layer, 10 m/s", "exact", near(0.024, 0.002), lambda: air_layer(10.0), "cylinder correlation", "m²K/W"),
    Check(
        "convection at 2 m/s against a bare sheep's",
        "independent",
        near(1.0, 0.2),
        lambda: nusselt(2.0) / (0.095 * (2 * REYNOLDS) ** 0.684),
        "McArthur and Monteith 1980, wind tunnel",
        "×",
    ),
    Check(
        "convection at 5 m/s against a whole sheep's",
        "independent",
        near(1.0, 0.2),
        lambda: nusselt(5.0) / (0.029 * (5 * REYNOLDS) ** 0.80),
        "McArthur and Monteith 1980, wind tunnel",
        "×",
    ),
    Check(
        "wind at 1.5 m over farmland",
        "exact",
        near(round(math.log(1.5 / 0.1) / math.log(10 / 0.1), 3), 0.01),
        lambda: float(p.WIND_OPEN),
        "log profile, roughness 0.1 m",
        "of 10 m",
    ),
    Check(
        "hair and air at 16 km/h, of calm",
        "calibration",
        near(0.62, 0.05),
        lambda: outer_layers(4.44) / outer_layers(0.0),
        "NRC beef cattle, 2 cm of hair, from memory",
        "×",
    ),
    Check(
        "hair and air at 32 km/h, of calm",
        "independent",
        near(0.24, 0.05),
        lambda: outer_layers(8.89) / outer_layers(0.0),
        "NRC beef cattle, 2 cm of hair, from memory",
        "×",
        miss="cattle hair loses all its hold in a gale; ours thins steadily, as caribou fur does",
    ),
    Check(
        "caribou fur, heat at 23 m/s, of calm",
        "calibration",
        between(2.0, 3.0),
        fur_in_a_gale,
        "Lentz and Hart 1960",
        "×",
    ),
    Check(
        "a sheet in dry cold, calm: resistance added",
        "calibration",
        near(0.0, 0.03),
        lambda: under_a_sheet(0.0) - outer_layers(0.0),
        "sheep in jute coats: no appreciable gain",
        "m²K/W",
    ),
    Check(
        "the same at 16 km/h",
        "independent",
        near(0.0, 0.03),
        lambda: under_a_sheet(4.47) - outer_layers(4.47),
        "sheep in jute coats: none to 10 mph",
        "m²K/W",
    ),
    Check(
        "cold of a clipped horse follows the wind chill",
        "ordering",
        HOLDS,
        colder_as_the_wind_chill_says,
        "thermofeel, wind chill of 2001",
    ),
]


@pytest.mark.parametrize("check", each(CHECKS))
def test_wind_takes_what_it_was_measured_to_take(check: Check) -> None:
    """The air layer and the hair thin in wind as in tunnels."""
    assert check.holds()
