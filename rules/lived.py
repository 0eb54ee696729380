"""Lived: what horses went through in what they wore, hour by hour, the water carried from each round to the next.

The plan looks ahead at many outfits; this looks at the one that was worn, with the weather that came. Axes are
(horse, hour), in the order of the horses given.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from rules import parameters as p
from rules.dressed import Cases, Dressed, as_felt, cases
from rules.heat import balance
from rules.question import Piece, Stay, WaterState
from rules.weather import Floats, Hours, Scenarios, Site, at_horse
from rules.wetness import COVERED, OPEN, Soaking, Water

Flags = np.ndarray[tuple[int], np.dtype[np.bool_]]


@dataclass(frozen=True)
class Carried:
    """Water when a round comes: hair (patch, horse), in cloth and outside shells (horse,) [kg/m2]; was bare or not."""

    hair: Floats
    within: Floats
    outside: Floats
    bare: Flags


@dataclass(frozen=True)
class Lived:
    """How it went, (horse, hour); NaN where the weather is not known.

    cold, heat: margins of the strict balance [K], offsets left out where none were given; tolerance: what a hardy
    horse may lack [K]. wet: 1 where hair is so wet that a person would say so. carried: the water at the end.
    clothes: for each horse what a hand finds at the end of each piece it wore, skin outward.
    """

    cold: Floats
    heat: Floats
    tolerance: Floats
    wet: Floats
    carried: Carried
    clothes: tuple[tuple[WaterState, ...], ...]


def as_recorded(hours: Hours) -> Scenarios:
    """The weather that came, as the only scenario."""
    once = (hours.temperature_c, hours.wind_ms, hours.gust_ms, hours.rain_mm, hours.snow_mm)
    return Scenarios(np.ones(1), *(column[None] for column in once))


def live(
    dressed: Sequence[Dressed],
    stays: Sequence[Stay],
    hours: Hours,
    site: Site,
    day_of_year: float,
    before: Carried | None = None,
    same: Sequence[bool] = (),
    felt: Floats | None = None,
) -> Lived:
    """One window: each horse in its clothes and its stay.

    dressed: `place` is an index of `stays`. before: the water from the window before, the same horses in the same
    order; same: whether each still wears what it wore then. felt: how much more each feels the cold than estimated
    [K], (horse,); None: as estimated.
    """
    asked = cases(dressed, site, day_of_year)
    if felt is not None:
        asked = as_felt(asked, felt)
    if before is not None:
        asked = replace(asked, soaking=_carried_on(asked.soaking, before, np.array(same)))
    found = balance(asked, at_horse(as_recorded(hours), hours, site, stays))
    left = _left(asked, found.water)
    return Lived(
        cold=found.cold[:, 0],
        heat=found.heat[:, 0],
        tolerance=found.tolerance[:, 0],
        wet=_seen_wet(asked, found.water) + 0.0 * found.cold[:, 0],
        carried=left,
        clothes=tuple(
            _found(one.outfit, within, outside)
            for one, within, outside in zip(dressed, left.within / np.maximum(asked.soaking.holds, 1e-9), left.outside)
        ),
    )


def last_hour(
    dressed: Sequence[Dressed], stays: Sequence[Stay], hours: Hours, site: Site, day_of_year: float, winds: Floats
) -> Floats:
    """Cold and heat margin and tolerance of the last hour [K], had the wind blown `winds` times as hard.

    Axes (margin, horse, wind).
    """
    blown, still = winds[:, None], np.ones((len(winds), 1))
    blown_so = Scenarios(
        weight=winds / winds.sum(),
        temperature=still * hours.temperature_c,
        wind=blown * hours.wind_ms,
        gust=blown * hours.gust_ms,
        rain=still * hours.rain_mm,
        snow=still * hours.snow_mm,
    )
    found = balance(cases(dressed, site, day_of_year), at_horse(blown_so, hours, site, stays))
    return np.stack([margin[:, :, -1] for margin in (found.cold, found.heat, found.tolerance)])


def _carried_on(soaking: Soaking, before: Carried, same: Flags) -> Soaking:
    """The water at the start: as it was where nothing changed; hair keeps its own under other clothes."""
    bare = soaking.holds == 0
    hair = before.hair.copy()
    put_on, taken_off = before.bare & ~bare, ~before.bare & bare
    hair[:2, put_on] = before.hair[2:, put_on]
    trunk = float(p.BODY_SHARE)
    hair[2:, taken_off] = trunk * before.hair[:2, taken_off] + (1 - trunk) * before.hair[2:, taken_off]
    return replace(
        soaking,
        hair=np.minimum(hair, p.COAT_MOST_WATER * soaking.depth),
        within=np.where(same, before.within, soaking.within),
        outside=np.where(same, before.outside, soaking.outside),
    )


def _left(asked: Cases, water: Water) -> Carried:
    bare: Flags = asked.soaking.holds == 0
    return Carried(water.hair_end[:, :, 0], water.within_end[:, 0], water.outside_end[:, 0], bare)


def _seen_wet(asked: Cases, water: Water) -> Floats:
    """1 where a hand on the trunk finds wet hair: under the clothes, or of a bare horse."""
    wet = water.hair[:, :, 0] > p.COAT_SEEN_WET * asked.soaking.depth[:, :, None]
    bare = (asked.soaking.holds == 0)[:, None]
    return np.where(bare, wet[OPEN].any(axis=0), wet[COVERED].any(axis=0)).astype(np.float64)


def _found(outfit: Sequence[Piece], within: float, outside: float) -> tuple[WaterState, ...]:
    """What a hand finds of each piece: a sound shell may be wet outside only. within: of what they hold, 0 to 1."""
    inside: WaterState = (
        "soaked" if within > p.SOAKED else "wet" if within > p.WET else "damp" if within > p.DAMP else "dry"
    )
    film: WaterState = "wet" if outside > p.WET * p.SHELL_FILM else "dry"
    return tuple(film if inside == "dry" and piece.garment.waterproof else inside for piece in outfit)
