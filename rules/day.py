"""Day: the cost of an outfit over a window, and the best sequence with a price for each change.

Costs are cold degree-hours: an hour at one degree colder than the horse bears costs one. What heat, wet skin, a
change and a borrowed piece are worth beside it stands in `question.Costs`, and a barn may change it.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from rules.question import Costs
from rules.weather import Floats

Take = tuple[str, int]  # a spare's id, a window
Labels = dict[tuple[frozenset[Take], int], tuple[float, tuple[int, ...]]]  # what is taken, outfit → cost, path
MOST_WAYS = 300  # partial sequences of one horse
# Gauss-Hermite points of three: exact for a normal spread up to the fifth power (Abramowitz and Stegun 1964, 25.4.46)
SPREAD = ((-np.sqrt(3.0), 1 / 6), (0.0, 2 / 3), (np.sqrt(3.0), 1 / 6))


def discomfort(
    cold: Floats, heat: Floats, wet: Floats, *, weights: Floats, share: Floats, sd: Floats, costs: Costs
) -> Floats:
    """Expected discomfort of each case in each window [cold degree-hours], shape (case, window).

    cold, heat: margins [K] with offset and tolerance in them, axes (case, scenario, hour); NaN costs nothing.
    wet: 1 where the skin is wet in the cold, same axes. weights: (scenario,), sum 1. share: (window, hour).
    sd: how unsure the horse's offset is [K], (case,); colder by as much as it is less warm, so one spread serves both.
    """
    cost = costs.wet_skin * wet
    for z, weight in SPREAD:
        shift = z * sd[:, None, None]
        cost += weight * (costs.cold * np.fmax(-cold - shift, 0.0) + costs.hot * np.fmax(shift - heat, 0.0))
    by_hour = np.einsum("csh,s->ch", cost, weights)
    return np.asarray(by_hour @ share.T)


@dataclass(frozen=True)
class Way:
    """One way through the windows: what it costs, which spares it takes when, and its outfit in each window."""

    cost: float
    takes: frozenset[Take]
    path: tuple[int, ...]


@dataclass(frozen=True)
class Steps:
    """One horse's way through the windows.

    edges[w][before, now]: what it costs to go from outfit `before` of window w - 1 to outfit `now` of window w and
    to stand the window in it; inf: not allowed. edges[0] has one row, what the horse wears at hour 0.
    takes[w][now]: the spares that this outfit keeps from other horses, and in which windows: the one it is worn in,
    and the next where it comes back wet.
    """

    edges: tuple[Floats, ...]
    takes: tuple[tuple[frozenset[Take], ...], ...]

    @cached_property
    def to_go(self) -> tuple[Floats, ...]:
        """For each window and outfit the least cost of all later windows (dynamic programming, backwards)."""
        ahead = [np.zeros(self.edges[-1].shape[1])]
        for edge in self.edges[:0:-1]:
            ahead.append((edge + ahead[-1]).min(axis=1))
        return tuple(reversed(ahead))

    @cached_property
    def wanted(self) -> frozenset[Take]:
        """Everything that some outfit of this horse would take."""
        return frozenset(take for window in self.takes for takes in window for take in takes)


def cheapest(steps: Steps) -> Way:
    """The best sequence, spares as if nobody else wanted them; of equal ones the first outfit."""
    path: list[int] = []
    cost, row = 0.0, 0
    for edge, ahead in zip(steps.edges, steps.to_go):
        now = int(np.argmin(edge[row] + ahead))
        cost += float(edge[row, now])
        path.append(now)
        row = now
    return Way(cost, _takes(steps, path), tuple(path))


def ways(steps: Steps, disputed: frozenset[Take]) -> list[Way]:
    """The best sequence for every way of using what is disputed that is worth more than doing without it.

    Partial sequences are kept apart by what they take, and left only when even the best rest would make them dearer
    than the best sequence that takes nothing disputed: exact, save in a barn with so many like spares that more than
    MOST_WAYS remain, of which the most promising are kept.
    """
    if not steps.wanted & disputed:
        return [cheapest(steps)]
    plain = cheapest(without(steps, disputed))
    labels: Labels = {(frozenset(), 0): (0.0, ())}
    for window, (edge, ahead) in enumerate(zip(steps.edges, steps.to_go)):
        grown: Labels = {}
        for (taken, row), (cost, path) in labels.items():
            for now in np.flatnonzero(cost + edge[row] + ahead <= plain.cost).tolist():
                takes = taken | (steps.takes[window][now] & disputed)
                so_far = cost + float(edge[row, now])
                if so_far < grown.get((takes, now), (np.inf, ()))[0]:
                    grown[takes, now] = (so_far, (*path, now))
        labels = _most_promising(grown, ahead)
    best: dict[frozenset[Take], tuple[float, tuple[int, ...]]] = {}
    for (takes, _), found in labels.items():
        best[takes] = min(best.get(takes, (np.inf, ())), found)
    dear = [Way(cost, _takes(steps, path), path) for takes, (cost, path) in best.items() if takes]
    return [plain, *dear]


def _most_promising(labels: Labels, ahead: Floats) -> Labels:
    """All of them, or of too many those whose best end is cheapest."""
    if len(labels) <= MOST_WAYS:
        return labels
    ordered = sorted(labels.items(), key=lambda item: item[1][0] + ahead[item[0][1]])
    return dict(ordered[:MOST_WAYS])


def _takes(steps: Steps, path: Sequence[int]) -> frozenset[Take]:
    return frozenset(take for w, now in enumerate(path) for take in steps.takes[w][now])


def without(steps: Steps, disputed: frozenset[Take]) -> Steps:
    """The same choices, those that take any of this forbidden."""
    edges = tuple(
        np.where([not takes.isdisjoint(disputed) for takes in window], np.inf, edge)
        for edge, window in zip(steps.edges, steps.takes)
    )
    return Steps(edges, steps.takes)
