"""Heat: the balance of a dressed horse; its margins and the fill it needs; axes (case, scenario, hour).

Heat made, less the least evaporation, must leave through tissue, hair, cloth and the air around. The effective
temperature at which it just does so is the critical one: the lower with vessels shut and hair on end, the upper
with vessels open and hair laid flat.
"""

from dataclasses import dataclass
from typing import NamedTuple

import numpy as np

from rules import parameters as p
from rules.dressed import COVERED_ZONES, EXTREMITIES, OPEN_ZONES, PATCH_OF_ZONE, Cases
from rules.exchange import Floats, Stream, convection, radiation, stream
from rules.weather import Air
from rules.wetness import Water, follow, per_hour


@dataclass(frozen=True)
class Margins:
    """What the balance says, axes (case, scenario, hour); NaN where it could not judge.

    cold: effective temperature less the dressed horse's lower critical one; heat: its upper critical
    temperature less the effective one [K]; positive is well. fill_low, fill_high: the band of fill [g/m2] that
    keeps both non-negative; low is inf where no fill is enough; high is inf where none is too much and −inf
    where even none is. tolerance: what a hardy horse may lack [K].
    The rest is what they are made of. temperature [°C], wind [m/s], rain [mm/h] at the horse; effective: the
    temperature that sun and sky make of it. conductance, conductance_warm: of the whole skin [W/m2/K];
    air_layer, clothes: resistances [m2 K/W]. flow: lost at the least, made: what it must make [W/m2], extra:
    that is more than it makes, of maintenance [%]. hair: of the open hair's volume, cloth: of its capacity that
    is water; drying: heat that wet clothes take [W/m2].
    """

    cold: Floats
    heat: Floats
    fill_low: Floats
    fill_high: Floats
    tolerance: Floats
    temperature: Floats
    wind: Floats
    rain: Floats
    effective: Floats
    conductance: Floats
    conductance_warm: Floats
    air_layer: Floats
    clothes: Floats
    flow: Floats
    made: Floats
    extra: Floats
    hair: Floats
    cloth: Floats
    drying: Floats
    water: Water


class Around(NamedTuple):
    """The air around each case, axes (case, scenario, hour)."""

    temperature: Floats
    wind: Floats
    rain: Floats
    air_layer: Floats
    effective: Floats


class Posture(NamedTuple):
    """How the animal holds its heat: tissue [m2 K/W], shape (case,); extremities: times as much on legs and head;
    hair: how much of the open hair's depth stands.
    """

    tissue: Floats
    extremities: float
    hair: float


class Paths(NamedTuple):
    """Ways out: through open skin as split now, and as split when clothed [W/m2/K]; and what lies below and
    above the clothes in the two covered zones [m2 K/W].
    """

    open: Floats
    open_clothed: Floats
    beside_clothes: tuple[Floats, Floats]


def balance(cases: Cases, air: Air, step_h: float = 1.0) -> Margins:
    """Every case through every scenario and hour; water in hair and cloth is carried from hour to hour."""
    around = surroundings(cases, air)
    sweat = np.maximum(_surplus(cases, around), 0.0)
    water = follow(cases.soaking, air, per_hour(sweat), step_h)
    return judged(cases, around, water)


def surroundings(cases: Cases, air: Air) -> Around:
    """The air around each case: boundary layer and effective temperature."""
    place = cases.soaking.place
    powers = stream(air.wind)
    diameter = cases.bodies.diameter[:, None, None]
    convective = convection(Stream(powers.slow[place], powers.fast[place]), diameter)
    temperature = air.temperature[place]
    layer = 1 / (radiation(air.temperature)[place] + convective)
    warmed = np.minimum(p.SUN_MOST, layer * (cases.shade[:, None, None] * air.sun[place]))
    cooled = np.minimum(p.SKY_MOST, layer * air.sky[place])
    # rain that nobody knows leaves nothing to judge
    rain = air.rain[place]
    return Around(temperature, air.wind[place], rain, layer, temperature + warmed - cooled + 0 * rain)


def judged(cases: Cases, around: Around, water: Water) -> Margins:
    """The margins of every hour with the water that hair and cloth hold in it."""
    bodies = cases.bodies
    soaked = _soaked(cases, water)
    cloth = water.within / np.where(cases.soaking.holds > 0, cases.soaking.holds, 1.0)[:, None, None]
    clothes = _clothes(cases, around, cloth)
    drying = _drying(cases, water)
    shut, opened = _paths(cases, around, soaked, _cold(cases)), _paths(cases, around, soaked, _warm(cases))
    conductance, conductance_warm = _through(cases, shut, clothes), _through(cases, opened, clothes)
    core, made = _wide(bodies.core), _wide(bodies.heat)
    must_leave = made - _wide(bodies.evaporation) - drying
    must_leave_warm = made - _wide(bodies.evaporation_warm) - drying
    drop = core - around.effective
    flow = conductance * drop
    lacking = np.maximum(0.0, flow - must_leave)
    cold, heat = must_leave / conductance - drop, drop - must_leave_warm / conductance_warm
    low, high = _band(cases, around, cloth, (shut, opened), (must_leave, must_leave_warm), drop)
    bare = _wide(cases.clothed) == 0
    return Margins(
        cold=cold,
        heat=heat,
        fill_low=np.where(bare & (cold >= 0), 0.0, low),
        fill_high=np.where(bare & (heat < 0), -np.inf, np.where(bare, np.maximum(high, 0.0), high)) + 0 * heat,
        tolerance=_wide(bodies.tolerance) * made / conductance,
        temperature=around.temperature,
        wind=around.wind,
        rain=around.rain,
        effective=around.effective,
        conductance=conductance,
        conductance_warm=conductance_warm,
        air_layer=around.air_layer,
        clothes=clothes,
        flow=flow,
        made=made + lacking,
        extra=100 * lacking / _wide(bodies.maintenance),
        hair=water.hair[2] / _wide(cases.soaking.depth[2]),
        cloth=cloth,
        drying=drying,
        water=water,
    )


def extra_hay_kg(cases: Cases, extra: Floats) -> Floats:
    """Hay [kg a day] that pays for extra heat [% of maintenance], shape (case, …)."""
    rate = cases.bodies.area * cases.bodies.maintenance * 86_400 / 1e6 / p.HAY_ENERGY / 100
    return np.asarray(extra * rate.reshape(-1, *(1,) * (extra.ndim - 1)))


def _wide(each: Floats) -> Floats:
    """(case,) as (case, scenario, hour)."""
    return each[:, None, None]


def _cold(cases: Cases) -> Posture:
    return Posture(cases.bodies.tissue_cold, float(p.EXTREMITY_TISSUE), 1.0)


def _warm(cases: Cases) -> Posture:
    return Posture(cases.bodies.tissue_warm, 1.0, float(p.COAT_WARM))


def _surplus(cases: Cases, around: Around) -> Floats:
    """Heat [W/m2] that a dry horse cannot give off without sweating; negative: what it could still give off."""
    paths = _paths(cases, around, np.ones((4, 1, 1, 1)), _warm(cases))
    leaving = _through(cases, paths, _clothes(cases, around, np.zeros((1, 1, 1))))
    made = _wide(cases.bodies.heat - cases.bodies.evaporation_warm)
    return np.asarray(made - leaving * (_wide(cases.bodies.core) - around.effective))


def _soaked(cases: Cases, water: Water) -> Floats:
    """By how much water divides the insulation of hair, (patch, case, scenario, hour); 1 is dry."""
    return 1 + water.hair / (cases.soaking.depth[:, :, None, None] * p.COAT_HALVING_WATER)


def _drying(cases: Cases, water: Water) -> Floats:
    """Heat that wet clothes take from the horse [W/m2 of the whole skin]."""
    covered = _wide(cases.share[list(COVERED_ZONES)].sum(axis=0))
    taken = p.INNER_HEAT_SHARE * water.inner + p.OUTER_HEAT_SHARE * water.outer
    return np.asarray(covered * taken * p.LATENT_HEAT / 3600)


def _clothes(cases: Cases, around: Around, cloth: Floats) -> Floats:
    """Resistance of the clothes [m2 K/W], a plain turnout's without fill where the horse is bare."""
    base, fill = _cloth_wind(cases, around)
    return np.asarray(_wide(cases.base) * base + _wide(cases.filling) * (1 - p.CLOTH_WET_LOSS * cloth) * fill)


def _cloth_wind(cases: Cases, around: Around) -> tuple[Floats, Floats]:
    """What wind leaves of the gap under clothes and of their fill: a shell keeps it out of the fill."""
    shell = _wide(cases.shell) > 0
    open_weave = 1 / (1 + p.OPEN_WEAVE_WIND * around.wind)
    return np.where(shell, 1 / (1 + p.RUG_GAP_WIND * around.wind), open_weave), np.where(shell, 1.0, open_weave)


def _paths(cases: Cases, around: Around, soaked: Floats, posture: Posture) -> Paths:
    """Ways out of the animal without its clothes' resistance."""
    tissue, hold = _wide(posture.tissue), _wide(cases.hair_wind) * around.wind
    grown = p.COAT_PER_MM * cases.soaking.depth
    now, clothed = 0.0, 0.0
    for zone in OPEN_ZONES:
        patch = PATCH_OF_ZONE[zone]
        hair = _wide(posture.hair * grown[patch]) / (1 + hold)
        skin = tissue * (posture.extremities if zone in EXTREMITIES else 1.0)
        resistance = skin + (hair + around.air_layer) / soaked[patch]
        now = now + _wide(cases.share[zone]) / resistance
        clothed = clothed + _wide(cases.share_clothed[zone]) / resistance
    draught = 1 + np.where(_wide(cases.shell) > 0, 0.0, p.OPEN_WEAVE_HAIR) * hold
    first, second = (
        tissue + _wide(p.COAT_FLATTENED * grown[patch]) / (draught * soaked[patch]) + around.air_layer
        for patch in COVERED_ZONES
    )
    return Paths(np.asarray(now), np.asarray(clothed), (first, second))


def _through(cases: Cases, paths: Paths, clothes: Floats) -> Floats:
    """Conductance of the whole skin [W/m2/K]."""
    total = paths.open
    for zone in COVERED_ZONES:
        total = total + _wide(cases.share[zone]) / (paths.beside_clothes[zone] + clothes)
    return total


def _band(
    cases: Cases,
    around: Around,
    cloth: Floats,
    paths: tuple[Paths, Paths],
    must_leave: tuple[Floats, Floats],
    drop: Floats,
) -> tuple[Floats, Floats]:
    """Fill [g/m2] from which the horse is not cold, and up to which it is not too warm."""
    low = _fill(cases, around, cloth, _needed(cases, paths[0], must_leave[0], drop))
    high = _fill(cases, around, cloth, _needed(cases, paths[1], must_leave[1], drop))
    return np.maximum(low, 0.0), np.where(high < 0, -np.inf, high)


def _needed(cases: Cases, paths: Paths, must_leave: Floats, drop: Floats) -> Floats:
    """Resistance of the clothes [m2 K/W] with which just so much heat leaves: the greater root of a quadratic.

    inf where open skin alone gives off more; −inf where no warmth of clothes is little enough.
    """
    share, other = (_wide(cases.share_clothed[zone]) for zone in COVERED_ZONES)
    first, second = paths.beside_clothes
    with np.errstate(divide="ignore", invalid="ignore"):
        through = must_leave / drop - paths.open_clothed
        half = (first + second - (share + other) / through) / 2
        root = -half + np.sqrt(half**2 - first * second + (share * second + other * first) / through)
    return np.where(drop <= 0, -np.inf, np.where(through <= 0, np.inf, root))


def _fill(cases: Cases, around: Around, cloth: Floats, clothes: Floats) -> Floats:
    """Fill as labelled [g/m2] that gives clothes their resistance; inf where no fill does, negative where the
    cloth alone has more.
    """
    base, fill = _cloth_wind(cases, around)
    filling = (clothes - _wide(cases.base) * base) / ((1 - p.CLOTH_WET_LOSS * cloth) * fill)
    most = p.FILL_RESISTANCE * p.FILL_SATURATION
    with np.errstate(divide="ignore", invalid="ignore"):
        loft = np.where(filling < most, filling / (p.FILL_RESISTANCE - filling / p.FILL_SATURATION), np.inf)
        loft = np.where(np.isneginf(filling), -np.inf, np.where(np.isnan(filling), np.nan, loft))
    pressed = np.where(cases.loft > 0, cases.fill / np.where(cases.loft > 0, cases.loft, 1.0), 1.0)
    return loft * _wide(pressed)
