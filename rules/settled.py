"""Settled: the account of each hour: how warm the animal set itself, and where its heat went, to the last watt.

Between the critical temperatures an animal opens and shuts its vessels until the balance closes; below, it makes
more heat; above, it sweats or pants. For reading (`explain`) and for proof, not for choosing.
"""

from dataclasses import dataclass

import numpy as np

from rules.dressed import COVERED_ZONES, OPEN_TRUNK, Cases
from rules.exchange import Floats
from rules.heat import balance, cloth_share, drying_heat
from rules.paths import (
    Around,
    Posture,
    between,
    cloth,
    hair_left,
    open_skin,
    paths,
    surroundings,
    through,
    trunk_skin,
    wide,
)
from rules.weather import Air
from rules.wetness import Water

HALVINGS = 50  # of a bracket one wide: the posture is found to 1e-15, the balance to 1e-9 W/m2


@dataclass(frozen=True)
class Account:
    """One hour's heat, axes (case, scenario, hour) [W/m2 of the whole skin]; NaN where it could not judge.

    posture: 0 vessels shut, 1 open; made = evaporated + through_clothes + through_open + drying.
    skin_under, skin_open: mean temperature of the skin of trunk and neck under clothes and in the open [°C]; NaN
    where there is none.
    """

    posture: Floats
    made: Floats
    evaporated: Floats
    through_clothes: Floats
    through_open: Floats
    drying: Floats
    skin_under: Floats
    skin_open: Floats


def account(cases: Cases, air: Air) -> Account:
    """Where the heat of every hour went. The posture is a bracketed root: the loss grows with it."""
    around = surroundings(cases, air)
    water = balance(cases, air).water
    drying = drying_heat(cases, water)
    made = wide(cases.bodies.heat) + 0 * around.effective
    low, high = np.zeros_like(made), np.ones_like(made)
    for _ in range(HALVINGS):
        middle = (low + high) / 2
        too_much = _leaving(cases, around, water, between(cases, middle)) + drying > made
        low, high = np.where(too_much, low, middle), np.where(too_much, middle, high)
    warm = np.where(high <= 0.5**HALVINGS, 0.0, np.where(low >= 1 - 0.5**HALVINGS, 1.0, (low + high) / 2))
    posture = between(cases, warm)
    under, bare, trunk = _losses(cases, around, water, posture)
    leaving, least = under + bare + drying, posture.evaporation
    more = np.where(warm == 0, leaving + least - made, 0.0)
    return Account(
        posture=warm + 0 * made,
        made=made + more,
        evaporated=np.where(warm == 1, np.maximum(least, made - leaving), least + 0 * made),
        through_clothes=under,
        through_open=bare,
        drying=drying,
        skin_under=_skin(cases, posture, under, COVERED_ZONES),
        skin_open=_skin(cases, posture, trunk, OPEN_TRUNK),
    )


def _losses(cases: Cases, around: Around, water: Water, posture: Posture) -> tuple[Floats, Floats, Floats]:
    """Heat through clothes, through all open skin, and through that of trunk and neck [W/m2]."""
    ways = paths(cases, around, hair_left(cases, water), posture)
    worn = cloth(cases, around, cloth_share(cases, water)).resistance
    drop = wide(cases.bodies.core) - around.effective
    whole = through(cases, ways, worn)
    bare = open_skin(cases.share, ways)
    return (whole - bare) * drop, bare * drop, trunk_skin(cases.share, ways) * drop


def _leaving(cases: Cases, around: Around, water: Water, posture: Posture) -> Floats:
    """All that leaves but for the drying of clothes [W/m2]."""
    under, bare, _ = _losses(cases, around, water, posture)
    return under + bare + posture.evaporation


def _skin(cases: Cases, posture: Posture, flow: Floats, zones: tuple[int, ...]) -> Floats:
    """Mean skin temperature of these zones of the trunk [°C] under the heat that leaves through them."""
    share = wide(cases.share[list(zones)].sum(axis=0))
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.asarray(wide(cases.bodies.core) - posture.tissue * flow / share)
