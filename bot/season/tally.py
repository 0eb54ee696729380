"""Tally: how a season went for one horse, and for all of them."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Any

import numpy as np

from rules.weather import Floats


@dataclass(frozen=True)
class Tally:
    """Counts of one or more horses over some days.

    judged_h: hours that could be judged. cold_h, hot_h: of these, hours colder or warmer than a horse bears; cold_kh,
    hot_kh: how much, in degree-hours. wet_h: hours with wet skin in the cold. changes: of clothes. garments: worn.
    """

    judged_h: float = 0.0
    cold_h: float = 0.0
    hot_h: float = 0.0
    cold_kh: float = 0.0
    hot_kh: float = 0.0
    wet_h: float = 0.0
    changes: int = 0
    days: float = 0.0
    garments: frozenset[str] = frozenset()

    @property
    def stress_h(self) -> float:
        """Hours too cold or too warm."""
        return self.cold_h + self.hot_h

    @property
    def changes_a_week(self) -> float:
        """Changes of clothes a week, of all horses of the tally."""
        return 7 * self.changes / self.days if self.days else 0.0

    def as_json(self) -> dict[str, Any]:
        """Rounded, for people's scripts."""
        return {
            "judged_hours": round(self.judged_h, 1),
            "cold_hours": round(self.cold_h, 1),
            "hot_hours": round(self.hot_h, 1),
            "cold_degree_hours": round(self.cold_kh, 1),
            "hot_degree_hours": round(self.hot_kh, 1),
            "wet_skin_hours": round(self.wet_h, 1),
            "changes": self.changes,
            "changes_per_week": round(self.changes_a_week, 2),
            "garments_in_use": len(self.garments),
        }


def tally(cold: Floats, heat: Floats, wet: Floats, share: Floats, worn: Sequence[tuple[str, ...]]) -> Tally:
    """One horse's count. cold, heat: room in K, below nought is strain; wet: 0 or 1; all (hour,), NaN not judged.

    share: how much of each hour counts, (hour,). worn: what it wore, window by window.
    """
    judged = ~np.isnan(cold) & ~np.isnan(heat)
    counts = np.where(judged, share, 0.0)
    cold_k, heat_k = np.fmax(-cold, 0.0), np.fmax(-heat, 0.0)
    return Tally(
        judged_h=float(counts.sum()),
        cold_h=float(counts[cold_k > 0].sum()),
        hot_h=float(counts[heat_k > 0].sum()),
        cold_kh=float(np.where(judged, cold_k * counts, 0.0).sum()),
        hot_kh=float(np.where(judged, heat_k * counts, 0.0).sum()),
        wet_h=float(np.where(judged, wet * counts, 0.0).sum()),
        changes=sum(a != b for a, b in pairwise(worn)),
        days=float(share.sum()) / 24,
        garments=frozenset(g for wear in worn for g in wear),
    )


def together(tallies: Iterable[Tally]) -> Tally:
    """All horses as one; days are not added up."""
    found = list(tallies)
    return Tally(
        judged_h=sum(t.judged_h for t in found),
        cold_h=sum(t.cold_h for t in found),
        hot_h=sum(t.hot_h for t in found),
        cold_kh=sum(t.cold_kh for t in found),
        hot_kh=sum(t.hot_kh for t in found),
        wet_h=sum(t.wet_h for t in found),
        changes=sum(t.changes for t in found),
        days=max((t.days for t in found), default=0.0),
        garments=frozenset().union(*(t.garments for t in found)),
    )
