"""Site: what a barn learns of itself, whatever the horse: how long things take to dry here.

Same shape as the offset: evidence in, a bounded estimate out, exact on a grid, all of it weighed every time. How hard
the wind blows here is learned from the horses, in `rules.shared`.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from rules import parameters as p
from rules.drying import STILL_ROOM_MS
from rules.garment import Garment
from rules.question import WaterState
from rules.weather import Floats
from rules.wetness import dry_after_h

_LOG: Floats = np.linspace(np.log(p.FACTOR_LEAST), np.log(p.FACTOR_MOST), 61)  # (factor,)


@dataclass(frozen=True)
class Factor:
    """How much more than computed: 1 is as computed; sd of its logarithm."""

    value: float = 1.0
    sd: float = float(p.FACTOR_PRIOR)


@dataclass(frozen=True)
class DryingLook:
    """Somebody felt a piece on the rail. expected_h: hours it should take, after_h: since it was hung up; both > 0."""

    expected_h: float
    after_h: float
    dry: bool


@lru_cache(maxsize=512)
def in_room_h(garment: Garment, water: WaterState, temperature_c: float, humidity_pct: float) -> float:
    """Hours that a piece should take to dry in a room that stays as it is; inf: longer than ten days."""
    like = np.ones(240)
    return dry_after_h(garment, water, temperature_c * like, humidity_pct * like, STILL_ROOM_MS * like)


def drying(looks: Sequence[DryingLook]) -> Factor:
    """How much longer than computed things take to dry in one place.

    Nobody sees the moment: dry says that it took at most so long, still wet that it takes longer.
    """
    told = [(x.after_h / x.expected_h, x.dry) for x in looks if 0 < x.expected_h < np.inf and x.after_h > 0]
    if not told:
        return _told(_prior())
    took, dry = np.log([ratio for ratio, _ in told])[:, None], np.array([dry for _, dry in told])[:, None]
    dried = 0.5 + 0.5 * np.tanh((took - _LOG) / (2 * p.DRYING_NOISE))
    chance = (1 - p.WRONG_REPORTS) * np.where(dry, dried, 1 - dried) + p.WRONG_REPORTS / 2
    return _told(_prior() + np.log(chance).sum(axis=0))


def _prior() -> Floats:
    return np.asarray(-0.5 * (_LOG / p.FACTOR_PRIOR) ** 2)


def _told(log: Floats) -> Factor:
    weight = np.exp(log - log.max())
    weight /= weight.sum()
    mean = float(weight @ _LOG)
    return Factor(float(np.exp(mean)), float(weight @ (_LOG - mean) ** 2) ** 0.5)
