"""Acclimatised: what the air of the last three weeks did to a horse, beyond the season that its coat stands for.

A horse takes some 10 to 21 days to get used to colder air (University of Maryland Extension, advice to owners); no
trial says by how much. So the size is assumed, small and bounded. The season itself stands in `rules/coat.py`: only
what the weather of these weeks was milder or colder than that season is counted here, never the season again.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from functools import lru_cache
from math import exp, isfinite

from rules import parameters as p
from rules.coat import YEAR, winter

DAY_S = 86_400
DAYS = 21  # how far back the memory goes
KNOWN_DAYS = 7  # with fewer of them known, nothing is said
HOURS_OF_A_DAY = 18  # known, before a day has a mean

# what each of the days before today weighs; all that lies farther back is taken to have been as the season is
_WEIGHT = tuple((1 - exp(-1 / p.ACCLIMATISES_IN)) * exp(-k / p.ACCLIMATISES_IN) for k in range(DAYS))


@dataclass(frozen=True)
class Weeks:
    """The mean air [°C] of past days, by day of UTC counted from 1970 on, at a latitude; any day may be missing."""

    latitude: float = 45.0
    air_c: Mapping[int, float] = field(default_factory=dict)

    def shift_c(self, at_s: float) -> float:
        """How much more than the model's horse one feels the cold on the day of an instant [POSIX s], in K.

        Positive after weeks milder than the season, negative after colder ones; 0 where fewer than a week of the days
        before is known. The day itself does not count, so that it is one number all day. At the most
        ACCLIMATISED_MILD more and ACCLIMATISED_COLD less: a horse may have spent a cold spell under clothes.
        """
        today = int(at_s // DAY_S)
        known = [(k, self.air_c[today - 1 - k]) for k in range(DAYS) if today - 1 - k in self.air_c]
        if len(known) < KNOWN_DAYS:
            return 0.0
        milder = sum(_WEIGHT[k] * (air - usual_c(self.latitude, today - 1 - k)) for k, air in known)
        return float(min(max(p.ACCLIMATISED_BY * milder, -p.ACCLIMATISED_COLD), p.ACCLIMATISED_MILD))


@lru_cache(maxsize=4096)
def usual_c(latitude: float, day: int) -> float:
    """Mean air [°C] that the model's horse is used to on a day (counted from 1970 on): as its coat has the season."""
    of_year = 1 + day % YEAR
    return float(p.USED_TO_SUMMER + (p.USED_TO_WINTER - p.USED_TO_SUMMER) * winter(latitude, of_year))


def day_means(hours: Iterable[tuple[float, float]]) -> dict[int, float]:
    """Mean air [°C] by day of UTC counted from 1970 on, of (POSIX s, °C) pairs, one an hour; a day of which fewer
    than HOURS_OF_A_DAY are known is left out.
    """
    total: dict[int, tuple[int, float]] = {}
    for at_s, air in hours:
        if isfinite(air):
            count, warmth = total.get(int(at_s // DAY_S), (0, 0.0))
            total[int(at_s // DAY_S)] = count + 1, warmth + air
    return {day: warmth / count for day, (count, warmth) in total.items() if count >= HOURS_OF_A_DAY}
