"""Decision: one horse, one window and what it is to wear, with the numbers that reasons and cautions weigh."""

from dataclasses import dataclass
from math import erf, sqrt

import numpy as np

from rules.outfit import BARE, Outfit
from rules.outlook import Outlook, Peak
from rules.pricing import Priced
from rules.question import Piece, Stay, Wearer
from rules.stand import Stand
from rules.weather import Floats

MATERIAL_K = 2.0  # colder than this beyond tolerance is worth a garment; less, a hand under the rug


@dataclass(frozen=True)
class Decision:
    """What was chosen and what surrounds it.

    before: the outfit of the window before, None where nobody said what the horse wears and no hour since was judged.
    cold, heat: worst strict margins [K] of what is worn, bare: worst margin of the bare horse, tolerance included; None
    where no hour could be judged. tolerance: at the cold hour [K]. chance_cold, chance_hot: 0 to 1. easiest: what would
    be most comfortable if changing and wishes were free, and what it would save [cold degree-hours]. later_heat: worst
    heat margin in the same outfit through the next window. wet: the horse comes in wet. unjudged: hours no forecast
    covered.
    absent: own pieces that could not be used. as_found: nobody said what the horse wears and nothing is known of the
    weather: taking it off would be a guess.
    """

    wearer: Wearer
    window: int
    stay: Stay
    outlook: Outlook
    outfit: Outfit
    before: frozenset[str] | None
    cold: Peak | None
    heat: Peak | None
    tolerance: float
    bare: Peak | None
    chance_cold: float
    chance_hot: float
    extra_pct: float
    easiest: Outfit
    saving: float
    later_heat: Peak | None
    wet: bool
    unjudged: tuple[int, ...]
    absent: tuple[Piece, ...]
    as_found: bool

    @property
    def changes(self) -> bool:
        """Whether somebody has to change clothes; so too where nobody said what the horse wears."""
        return not self.as_found and self.before != frozenset(self.outfit.ids)

    @property
    def eased(self) -> float:
        """The cold margin with what a hardy horse may lack [K]; inf where nothing could be judged."""
        return np.inf if self.cold is None else self.cold.value + self.tolerance


def decide(priced: Priced, window: int, path: tuple[int, ...], view: Outlook) -> Decision:
    """One window of one horse's way through the windows."""
    wearer, stand = priced.wearer, priced.stands[window]
    outfits, chosen = priced.outfits[window], priced.outfits[window][path[window]]
    came = priced.came(window, path)
    row = priced.cases[window][came]
    case = int(row[path[window]])
    cold = worst(stand.cold[case], stand)
    cost = stand.discomfort[row]
    easiest = int(np.argmin(cost))
    return Decision(
        wearer=wearer,
        window=window,
        stay=wearer.stays[window],
        outlook=view,
        outfit=chosen,
        before=_before(priced, window, path),
        cold=cold,
        heat=worst(stand.heat[case], stand),
        tolerance=0.0 if cold is None else float(stand.tolerance[case, _at(stand, cold)]),
        bare=worst(stand.cold[row[0]] + stand.tolerance[row[0]], stand),
        chance_cold=chance(stand, stand.worst_cold[case], wearer.offset_sd_c),
        chance_hot=chance(stand, stand.worst_heat[case], wearer.offset_sd_c),
        extra_pct=mean(stand.extra[case], stand),
        easiest=outfits[easiest],
        saving=float(cost[path[window]] - cost[easiest]),
        later_heat=_later_heat(priced, window, chosen),
        wet=wearer.wet_hair if window == 0 else int(row[path[window]]) != int(priced.cases[window][0][path[window]]),
        unjudged=tuple(stand.hours[np.isnan(stand.cold[case])].tolist()),
        absent=_absent(priced, window),
        as_found=_left_as_found(priced, window, path),
    )


def worst(margin: Floats, stand: Stand) -> Peak | None:
    """The least margin of a window and its hour; None where no hour could be judged."""
    known = ~np.isnan(margin)
    if not known.any():
        return None
    at = int(np.argmin(np.where(known, margin, np.inf)))
    return Peak(float(margin[at]), int(stand.hours[at]))


def mean(values: Floats, stand: Stand) -> float:
    """Mean over the judged hours of a window, 0 where there are none."""
    known = ~np.isnan(values)
    return float(np.average(values[known], weights=stand.share[known])) if known.any() else 0.0


def chance(stand: Stand, least: Floats, sd: float) -> float:
    """Chance that the least margin [K] is below zero, over scenarios (scenario,) and an offset unsure by sd [K]."""
    known = ~np.isnan(least)
    if not known.any():
        return 0.0
    below = np.array([_normal(-value / max(sd, 0.1)) for value in least[known]])
    return float(below @ stand.weight[known] / stand.weight[known].sum())


def _normal(z: float) -> float:
    return 0.5 * (1 + erf(z / sqrt(2)))


def _at(stand: Stand, peak: Peak) -> int:
    return int(np.searchsorted(stand.hours, peak.hour))


def _before(priced: Priced, window: int, path: tuple[int, ...]) -> frozenset[str] | None:
    if window and not _left_as_found(priced, window - 1, path):
        return frozenset(priced.outfits[window - 1][path[window - 1]].ids)
    return None if priced.wearer.wears is None else frozenset(priced.wearer.wears)


def _left_as_found(priced: Priced, window: int, path: tuple[int, ...]) -> bool:
    stand, bare = priced.stands[window], not priced.outfits[window][path[window]].pieces
    return bare and bool(np.isnan(stand.cold).all()) and _before(priced, window, path) is None


def _later_heat(priced: Priced, window: int, outfit: Outfit) -> Peak | None:
    """Through the next window in the same clothes, where they may be worn there."""
    if window + 1 >= len(priced.stands) or outfit == BARE:
        return None
    same = [j for j, other in enumerate(priced.outfits[window + 1]) if other.ids == outfit.ids]
    stand = priced.stands[window + 1]
    return worst(stand.heat[priced.cases[window + 1][0][same[0]]], stand) if same else None


def _absent(priced: Priced, window: int) -> tuple[Piece, ...]:
    refused = {reason.garment for reason in priced.refused[window]}
    return tuple(p for p in priced.reach if p.garment.horse is not None and p.garment.id in refused)
