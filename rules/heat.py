"""Heat: the balance of a dressed horse; its margins and the fill it needs; axes (case, scenario, hour).

Heat made, less the least evaporation, must leave through tissue, hair, cloth and the air around. The effective
temperature at which it just does so is the critical one: the lower with vessels shut and hair on end, the upper
with vessels open and hair laid flat.
"""

from dataclasses import dataclass
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from rules import parameters as p
from rules.dressed import COVERED_ZONES, PATCH_OF_ZONE, Cases
from rules.exchange import Floats
from rules.paths import Around, Cloth, Paths, between, cloth, hair_left, open_skin, paths, surroundings, through, wide
from rules.weather import Air
from rules.wetness import Water, follow, per_hour

Flags = NDArray[np.bool_]

# A C library hands freed memory back above twice the largest block it has seen freed, so a balance would fetch its
# arrays anew, page by page, every time: half its cost. One larger block (never touched, so never real) ends that.
np.empty(31 * 2**20, np.uint8)


@dataclass(frozen=True)
class Margins:
    """What the balance says, axes (case, scenario, hour); NaN where it could not judge.

    cold: effective temperature less the dressed horse's lower critical one; heat: its upper critical
    temperature less the effective one [K]; positive is well. fill_low, fill_high: the band of fill [g/m2] that
    keeps both non-negative; low is inf where no fill is enough; high is inf where none is too much and −inf
    where even none is. For a bare horse the band is 0 where it is well bare, else a plain turnout's.
    tolerance: what a hardy horse may lack [K].

    The rest is what they are made of. temperature [°C], wind [m/s], rain [mm/h] at the horse; effective: the
    temperature that sun and sky make of it. conductance, conductance_warm: of the whole skin [W/m2/K];
    air_layer, clothes: resistances [m2 K/W]. flow: lost at the least, made: what it must make [W/m2], extra:
    that is more than it makes, of maintenance [%]. hair: water in all the hair, of its volume; cloth: water in
    the cloth, of what it holds; drying: heat that wet clothes take [W/m2].
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


def balance(cases: Cases, air: Air, step_h: float = 1.0) -> Margins:
    """Every case through every scenario and hour; water in hair and cloth is carried from hour to hour."""
    around = surroundings(cases, air)
    sweat = np.maximum(surplus(cases, around), 0.0)
    water = follow(cases.soaking, air, per_hour(sweat), step_h)
    return judged(cases, around, water)


def judged(cases: Cases, around: Around, water: Water) -> Margins:
    """The margins of every hour with the water that hair and cloth hold in it."""
    bodies, filled, drying = cases.bodies, cloth_share(cases, water), drying_heat(cases, water)
    left, worn = hair_left(cases, water), cloth(cases, around, filled)
    shut, opened = (_end(cases, around, left, worn, drying, warm) for warm in (0.0, 1.0))
    drop = wide(bodies.core) - around.effective
    cold = shut.must_leave / shut.conductance - drop
    heat = drop - opened.must_leave / opened.conductance
    lacking = np.maximum(0.0, shut.conductance * drop - shut.must_leave)
    least, most = (_fill(cases, worn, _needed(cases, end, drop)) for end in (shut, opened))
    bare = wide(cases.clothed) == 0
    return Margins(
        cold=cold,
        heat=heat,
        fill_low=np.where(bare & (cold >= 0), 0.0, np.maximum(least, 0.0)),
        fill_high=_most_fill(bare, heat, most),
        tolerance=wide(bodies.tolerance * bodies.heat) / shut.conductance,
        temperature=around.temperature,
        wind=around.wind,
        rain=around.rain,
        effective=around.effective,
        conductance=shut.conductance,
        conductance_warm=opened.conductance,
        air_layer=around.air_layer,
        clothes=np.where(bare, 0.0, worn.resistance),
        flow=shut.conductance * drop,
        made=wide(bodies.heat) + lacking,
        extra=100 * lacking / wide(bodies.maintenance),
        hair=_hair_share(cases, water),
        cloth=filled,
        drying=drying,
        water=water,
    )


class _End(NamedTuple):
    """One end of what an animal can do: its ways out, the conductance of its skin, the heat that must leave."""

    ways: Paths
    conductance: Floats
    must_leave: Floats


def _end(cases: Cases, around: Around, left: Floats, worn: Cloth, drying: Floats, warm: float) -> _End:
    posture = between(cases, warm)
    ways = paths(cases, around, left, posture)
    must_leave = wide(cases.bodies.heat) - posture.evaporation - drying
    return _End(ways, through(cases, ways, worn.resistance), must_leave)


def _most_fill(bare: Flags, heat: Floats, most: Floats) -> Floats:
    """A bare horse that is well may wear what a plain turnout's warmth allows, at least none."""
    too_warm = np.where(bare, heat < 0, most < 0)
    return np.where(too_warm, -np.inf, np.maximum(most, 0.0)) + 0 * heat


def surplus(cases: Cases, around: Around) -> Floats:
    """Heat [W/m2] that a dry horse cannot give off without sweating; negative: what it could still give off."""
    warm = between(cases, 1.0)
    ways = paths(cases, around, np.ones((4, 1, 1, 1)), warm)
    leaving = through(cases, ways, cloth(cases, around, np.zeros((1, 1, 1))).resistance)
    return np.asarray(
        wide(cases.bodies.heat) - warm.evaporation - leaving * (wide(cases.bodies.core) - around.effective)
    )


def cloth_share(cases: Cases, water: Water) -> Floats:
    """How full of water the clothes are, 0 to 1."""
    holds = np.where(cases.soaking.holds > 0, cases.soaking.holds, 1.0)
    return water.within / wide(holds)


def drying_heat(cases: Cases, water: Water) -> Floats:
    """Heat that wet clothes take from the horse [W/m2 of the whole skin]."""
    covered = wide(cases.share[list(COVERED_ZONES)].sum(axis=0))
    taken = p.INNER_HEAT_SHARE * water.inner + p.OUTER_HEAT_SHARE * water.outer
    return np.asarray(covered * taken * p.LATENT_HEAT / 3600)


def extra_hay_kg(cases: Cases, extra: Floats) -> Floats:
    """Hay [kg a day] that pays for extra heat [% of maintenance], shape (case, …)."""
    a_day = cases.bodies.area * cases.bodies.maintenance * 86_400 / 1e6 / p.HAY_ENERGY / 100
    return np.asarray(extra * a_day.reshape(-1, *(1,) * (extra.ndim - 1)))


def _hair_share(cases: Cases, water: Water) -> Floats:
    """Water of all the hair's volume."""
    depth = cases.soaking.depth[list(PATCH_OF_ZONE)] * cases.share
    held = np.einsum("zc,zcsh->csh", cases.share, water.hair[list(PATCH_OF_ZONE)])
    return np.asarray(held / wide(depth.sum(axis=0)))


def _needed(cases: Cases, end: _End, drop: Floats) -> Floats:
    """Resistance of the clothes [m2 K/W] with which just so much heat leaves: the greater root of a quadratic.

    inf where open skin alone gives off more; −inf where no warmth of clothes is little enough.
    """
    share, other = (wide(cases.share_clothed[zone]) for zone in COVERED_ZONES)
    first, second = end.ways.beside_clothes
    with np.errstate(divide="ignore", invalid="ignore"):
        leaving = end.must_leave / drop - open_skin(cases.share_clothed, end.ways)
        half = (first + second - (share + other) / leaving) / 2
        root = np.sqrt(half**2 - first * second + (share * second + other * first) / leaving) - half
    return np.where(drop <= 0, -np.inf, np.where(leaving <= 0, np.inf, root))


def _fill(cases: Cases, worn: Cloth, clothes: Floats) -> Floats:
    """Fill as labelled [g/m2] that gives clothes their resistance; inf where no fill does, negative where the
    cloth alone has more.
    """
    dry = (clothes - worn.base) / worn.left
    most = p.FILL_RESISTANCE * p.FILL_SATURATION
    with np.errstate(divide="ignore", invalid="ignore"):
        loft = np.where(dry < most, dry / (p.FILL_RESISTANCE - dry / p.FILL_SATURATION), np.inf)
    pressed = np.where(cases.loft > 0, cases.fill / np.where(cases.loft > 0, cases.loft, 1.0), 1.0)
    loft = np.where(np.isneginf(dry), -np.inf, np.where(np.isnan(dry), np.nan, loft))
    return loft * wide(pressed)
