"""Paths: the ways heat takes out of a dressed animal: tissue, hair, cloth and air, zone by zone of the skin.

Axes are (case, scenario, hour). Resistances in m2 K/W, conductances in W/m2/K of the whole skin.
"""

from typing import NamedTuple

import numpy as np

from rules import parameters as p
from rules.dressed import COVERED_PATCHES, COVERED_ZONES, EXTREMITIES, OPEN_PATCHES, OPEN_TRUNK, Cases
from rules.exchange import Floats, Stream, convection, radiation, stream
from rules.weather import Air
from rules.wetness import Water


class Around(NamedTuple):
    """The air around each case: temperature [°C], wind [m/s], rain [mm/h], resistance of the air layer, and the
    effective temperature [°C] that sun and sky make of it.
    """

    temperature: Floats
    wind: Floats
    rain: Floats
    air_layer: Floats
    effective: Floats


class Posture(NamedTuple):
    """How animals hold their heat: tissue of the trunk; extremities: times as much on legs and head; hair: how much
    of the open hair's depth stands; evaporation [W/m2]. Each broadcasts with (case, scenario, hour).
    """

    tissue: Floats
    extremities: Floats
    hair: Floats
    evaporation: Floats


class Cloth(NamedTuple):
    """Clothes in their wind and water: resistance without fill, resistance of the fill, all that is left of a
    dry, still square metre's; a plain turnout's where the horse is bare.
    """

    base: Floats
    filling: Floats
    left: Floats

    @property
    def resistance(self) -> Floats:
        """Of the whole of it."""
        return self.base + self.filling


class Paths(NamedTuple):
    """Ways out, each with grown and with clipped hair: conductance of a square metre of open trunk and neck, of legs
    and head; and the resistance that lies below and above the clothes.
    """

    trunk: tuple[Floats, Floats]
    extremities: tuple[Floats, Floats]
    beside_clothes: tuple[Floats, Floats]


def wide(each: Floats) -> Floats:
    """(case,) as (case, scenario, hour)."""
    return each[:, None, None]


def surroundings(cases: Cases, air: Air) -> Around:
    """The air around each case."""
    place = cases.soaking.place
    powers = stream(air.wind)
    convective = convection(Stream(powers.slow[place], powers.fast[place]), wide(cases.bodies.diameter))
    layer = 1 / (radiation(air.temperature)[place] + convective)
    warmed = np.minimum(p.SUN_MOST, layer * (wide(cases.shade) * air.sun[place]))
    cooled = layer * air.sky[place]
    temperature, rain = air.temperature[place], air.rain[place]
    unknown_rain = 0 * rain  # NaN where nobody knows it: then there is nothing to judge
    return Around(temperature, air.wind[place], rain, layer, temperature + warmed - cooled + unknown_rain)


def between(cases: Cases, warm: Floats | float) -> Posture:
    """The posture between shut vessels with hair on end (0) and open vessels with hair laid flat (1)."""
    bodies = cases.bodies

    def mix(cold: Floats | float, hot: Floats | float) -> Floats:
        return np.asarray(cold + (hot - cold) * warm)

    return Posture(
        tissue=mix(wide(bodies.tissue_cold), wide(bodies.tissue_warm)),
        extremities=mix(float(p.EXTREMITY_TISSUE), 1.0),
        hair=mix(1.0, float(p.COAT_WARM)),
        evaporation=mix(wide(bodies.evaporation), wide(bodies.evaporation_warm)),
    )


def hair_left(cases: Cases, water: Water) -> Floats:
    """What its water leaves of the insulation of hair, (patch, case, scenario, hour); 1 is dry."""
    return 1 / (1 + water.hair / (cases.soaking.depth[:, :, None, None] * p.COAT_HALVING_WATER))


def cloth(cases: Cases, around: Around, filled: Floats) -> Cloth:
    """The clothes where their share `filled` of what they can hold is water. A shell keeps wind out of the fill."""
    shell = wide(cases.shell) > 0
    weave = 1 / (1 + p.OPEN_WEAVE_WIND * around.wind)
    left = (1 - p.CLOTH_WET_LOSS * filled) * np.where(shell, 1.0, weave)
    gap = np.where(shell, 1 / (1 + p.RUG_GAP_WIND * around.wind), weave)
    return Cloth(wide(cases.base) * gap, wide(cases.filling) * left, left)


def paths(cases: Cases, around: Around, left: Floats, posture: Posture) -> Paths:
    """The ways out but for the clothes, through hair of which water has left so much (see hair_left)."""
    hold = wide(cases.hair_wind) * around.wind
    grown = p.COAT_PER_MM * cases.soaking.depth
    outer = [
        (posture.hair * wide(grown[patch]) / (1 + hold) + around.air_layer) * left[patch] for patch in OPEN_PATCHES
    ]
    far = posture.tissue * posture.extremities
    draught = 1 + np.where(wide(cases.shell) > 0, 0.0, float(p.OPEN_WEAVE_HAIR)) * hold
    flat = [wide(p.COAT_FLATTENED * grown[patch]) * left[patch] / draught for patch in COVERED_PATCHES]
    near = posture.tissue + around.air_layer
    return Paths(
        trunk=(1 / (posture.tissue + outer[0]), 1 / (posture.tissue + outer[1])),
        extremities=(1 / (far + outer[0]), 1 / (far + outer[1])),
        beside_clothes=(near + flat[0], near + flat[1]),
    )


def open_skin(share: Floats, ways: Paths) -> Floats:
    """Conductance of all open skin, where its zones have that share, (zone, case), of the whole."""
    return trunk_skin(share, ways) + _sum(share, EXTREMITIES, ways.extremities)


def trunk_skin(share: Floats, ways: Paths) -> Floats:
    """The same of open trunk and neck alone."""
    return _sum(share, OPEN_TRUNK, ways.trunk)


def _sum(share: Floats, zones: tuple[int, int], conductances: tuple[Floats, Floats]) -> Floats:
    first, second = zones
    return np.asarray(wide(share[first]) * conductances[0] + wide(share[second]) * conductances[1])


def through(cases: Cases, ways: Paths, clothes: Floats) -> Floats:
    """Conductance of the whole skin under clothes of that resistance."""
    total = open_skin(cases.share, ways)
    for zone in COVERED_ZONES:
        total = total + wide(cases.share[zone]) / (ways.beside_clothes[zone] + clothes)
    return total
