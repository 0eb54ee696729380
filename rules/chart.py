"""Chart: what a plain temperature chart, as barns pin it on the wall, says to put on. Haybell is measured against it.

It knows the air temperature and whether a horse is clipped, nothing of wind, rain, sun, age, feed or the horse itself.
Fills are the middle of the ranges that such charts give: the unclipped column follows a husbandry table for "not
clipped" horses down to −5 °C, the clipped one common practice; below that both are common practice, no source. Charts
give an unclipped horse more than the balance finds it needs.
"""

from bisect import bisect_right
from dataclasses import dataclass


@dataclass(frozen=True)
class Advice:
    """What the chart says: fill [g/m²], None for bare; whether with a neck cover."""

    fill_g: float | None
    neck: bool = False


_FROM_C = (-10.0, -5.0, 0.0, 5.0, 10.0, 15.0)
_UNCLIPPED = (Advice(300), Advice(300), Advice(250), Advice(200), Advice(100), Advice(0), Advice(None))
_CLIPPED = (
    Advice(550, neck=True),
    Advice(350, neck=True),
    Advice(300),
    Advice(200),
    Advice(150),
    Advice(0),
    Advice(None),
)
_CLIPPED_STYLES = frozenset({"trace", "blanket", "hunter", "full"})


def advice(air_c: float, clip: str) -> Advice:
    """The chart's row for the coldest air of the window [°C] and its column for the clip."""
    column = _CLIPPED if clip in _CLIPPED_STYLES else _UNCLIPPED
    return column[bisect_right(_FROM_C, air_c)]


def gap_g(advised: Advice, fill_g: float | None, *, neck: bool) -> float:
    """How far an outfit is from the chart's word [g/m²]; fill_g None: bare. The nearest is what people take."""
    if (advised.fill_g is None) != (fill_g is None):
        return 75.0 + (advised.fill_g or 0.0) + (fill_g or 0.0)
    return abs((advised.fill_g or 0.0) - (fill_g or 0.0)) + 25.0 * (advised.neck != neck)
