"""Stand: every case of one window summed up, and one horse's outfits through all windows.

Axes are (case, hour) of the central scenario, or (case, scenario); offsets are in every margin.
"""

from dataclasses import dataclass

import numpy as np

from rules import parameters as p
from rules.day import discomfort
from rules.dressed import Cases
from rules.heat import Margins, extra_hay_kg
from rules.outfit import Outfit
from rules.question import Costs, Piece, Wearer
from rules.weather import Floats

Indices = np.ndarray[tuple[int, ...], np.dtype[np.int_]]
CHILLY_K = 5.0  # a cold margin, tolerance included, below which wet skin is a hardship and not a wash


@dataclass(frozen=True)
class Stand:
    """All cases of one window, strict balance; axes (case, hour) of the central scenario.

    hours: their indices in the question; share: how much of each lies in the window. weight: of the scenarios.
    worst_cold, worst_heat: least margin of the window, tolerance included, (case, scenario). hay: kg a day for each
    per cent of extra heat, discomfort: expected cost of the window [cold degree-hours], (case,).
    """

    hours: Indices
    weight: Floats
    share: Floats
    cold: Floats
    heat: Floats
    tolerance: Floats
    extra: Floats
    hay: Floats
    fill_low: Floats
    fill_high: Floats
    worst_cold: Floats
    worst_heat: Floats
    discomfort: Floats


@dataclass(frozen=True)
class Stood:
    """One horse: outfits[window], and cases[window] with axes (came in DRY or WET, outfit) into stands[window].

    reach: the pieces that it might ever wear.
    """

    wearer: Wearer
    outfits: tuple[tuple[Outfit, ...], ...]
    cases: tuple[Indices, ...]
    stands: tuple[Stand, ...]
    reach: tuple[Piece, ...]


def summed_up(every: Cases, margins: Margins, share: Floats, *, weight: Floats, spread: Floats, costs: Costs) -> Stand:
    """All cases of one window.

    share: (hour,) of the whole question, the window's part of each hour; margins have only those it has a part in.
    weight: of the scenarios. spread: how unsure the horse's offset is [K], (case,).
    """
    hours = np.flatnonzero(share > 0)
    eased = margins.cold + margins.tolerance
    cost = discomfort(
        eased,
        margins.heat,
        _wet(every, margins, eased),
        weights=weight,
        share=share[None, hours],
        sd=spread,
        costs=costs,
    )
    return Stand(
        hours=hours,
        share=share[hours],
        weight=weight,
        cold=margins.cold[:, 0].copy(),
        heat=margins.heat[:, 0].copy(),
        tolerance=margins.tolerance[:, 0].copy(),
        extra=margins.extra[:, 0].copy(),
        hay=extra_hay_kg(every, np.ones(len(every))),
        fill_low=margins.fill_low[:, 0].copy(),
        fill_high=margins.fill_high[:, 0].copy(),
        worst_cold=np.fmin.reduce(eased, axis=2, initial=np.nan),
        worst_heat=np.fmin.reduce(margins.heat, axis=2, initial=np.nan),
        discomfort=cost[:, 0],
    )


def _wet(every: Cases, margins: Margins, eased: Floats) -> Floats:
    """1 where hair over the back is wet and the horse near to being cold; axes (case, scenario, hour)."""
    under = margins.water.hair[0] / every.soaking.depth[0][:, None, None]
    hair = np.where(every.clothed[:, None, None] > 0, under, margins.hair)
    return ((hair > p.COAT_SEEN_WET) & (eased < CHILLY_K)).astype(np.float64)
