"""How a horse fares through the hours, as a thread between two fence rails.

The lower rail is where it begins to be too cold, the upper where it begins to be too warm. A thread between them is at
ease; what hangs below the lower rail is hatched, what rises over the upper is filled solid. A soft ribbon along the
thread says how unsure the estimate is; a gap, that no forecast covered the hour. Position tells, colour only agrees.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from bot.board.canvas import Canvas, Point
from bot.units import known

OUT_K = 5.0  # degrees outside the rails at which the drawing ends
SEEN = 3.0  # pixels by which the least bit beyond a rail shows


@dataclass(frozen=True)
class Fence:
    """Where a strip stands. top, bottom: the strip's edges; rails at a quarter from each. hour: width of an hour."""

    left: float
    top: float
    bottom: float
    hour: float

    @property
    def upper(self) -> float:
        """The rail of too warm."""
        return self.top + 0.24 * (self.bottom - self.top)

    @property
    def lower(self) -> float:
        """The rail of too cold."""
        return self.bottom - 0.28 * (self.bottom - self.top)

    def x(self, hour: float) -> float:
        """Where an hour begins."""
        return self.left + hour * self.hour

    def y(self, cold: float, heat: float) -> float:
        """The height of a pair of margins [K]: on a rail where one of them is 0."""
        if cold < 0 and cold <= heat:
            return self.lower + SEEN + min(-cold, OUT_K) / OUT_K * (self.bottom - self.lower - SEEN)
        if heat < 0:
            return self.upper - SEEN - min(-heat, OUT_K) / OUT_K * (self.upper - self.top - SEEN)
        share = 0.5 if cold + heat <= 0 else cold / (cold + heat)
        return self.lower + share * (self.upper - self.lower)


@dataclass(frozen=True)
class Thread:
    """Margins [K] for each hour of the strip, None where not judged; sd: how unsure they are [K].

    start, end: hours between which it is drawn; a window may begin or end within an hour.
    """

    cold: Sequence[float | None]
    heat: Sequence[float | None]
    sd: float = 0.0
    start: float = 0.0
    end: float = 24.0

    def runs(self) -> Iterator[list[tuple[int, float, float]]]:
        """Stretches of judged hours: (hour, cold, heat)."""
        run: list[tuple[int, float, float]] = []
        for hour, (cold, heat) in enumerate(zip(self.cold, self.heat)):
            c, h = known(cold), known(heat)
            if c is not None and h is not None:
                run.append((hour, c, h))
            elif run:
                yield run
                run = []
        if run:
            yield run


def rails(canvas: Canvas, fence: Fence, first: float, last: float) -> None:
    """Two rails from one hour to another, a post at each end."""
    for y in (fence.upper, fence.lower):
        canvas.line([(fence.x(first), y), (fence.x(last), y)], canvas.inks.line, 2)
    for hour in (first, last):
        post(canvas, fence, hour)


def post(canvas: Canvas, fence: Fence, hour: float, *, round_here: bool = False) -> None:
    """A fence post; a taller one where a round is."""
    x, top, half = fence.x(hour), fence.upper - 5, 2.0
    if round_here:
        top, half = fence.top - 16, 3.0
    point = [(x - half, top + 4), (x, top), (x + half, top + 4)]
    canvas.area([*point, (x + half, fence.bottom), (x - half, fence.bottom)], canvas.inks.line)


def thread(canvas: Canvas, fence: Fence, drawn: Thread) -> None:
    """The thread with its ribbon, and the shapes of too cold and too warm."""
    for run in drawn.runs():
        spread = min(known(drawn.sd) or 0.0, OUT_K)
        edges = path(fence, drawn, run, spread), path(fence, drawn, run, -spread)
        canvas.area([*edges[0], *reversed(edges[1])], canvas.inks.band)
    for run in drawn.runs():
        points = path(fence, drawn, run)
        beyond(canvas, points, fence.lower, above=False)
        beyond(canvas, points, fence.upper, above=True)
        canvas.line(points, canvas.inks.ink, 2.5)


def path(fence: Fence, drawn: Thread, run: Sequence[tuple[int, float, float]], shift: float = 0.0) -> list[Point]:
    """The run as points at the middle of its hours, its ends drawn out to whole hours or to the window's edge."""
    heights = [(hour + 0.5, fence.y(cold + shift, heat - shift)) for hour, cold, heat in run]
    (first, y0), (last, y1) = heights[0], heights[-1]
    begins, ends = max(first - 0.5, drawn.start), min(last + 0.5, drawn.end)
    between = [(fence.x(h), y) for h, y in heights if begins < h < ends]
    return [(fence.x(begins), y0), *between, (fence.x(ends), y1)] if begins < ends else []


def height(fence: Fence, drawn: Thread, hour: float) -> float | None:
    """How high the thread is at an hour; None where there is none."""
    k = int(hour)
    if not 0 <= k < min(len(drawn.cold), len(drawn.heat)):
        return None
    cold, heat = known(drawn.cold[k]), known(drawn.heat[k])
    return None if cold is None or heat is None else fence.y(cold, heat)


def beyond(canvas: Canvas, points: Sequence[Point], rail: float, *, above: bool) -> None:
    """The shapes between a rail and what lies beyond it: hatched below, solid above."""
    side = -1 if above else 1
    for part in outside([(x, (y - rail) * side) for x, y in points]):
        shape = [(x, rail + d * side) for x, d in part]
        closed = [(shape[0][0], rail), *shape, (shape[-1][0], rail)]
        if above:
            canvas.area(closed, canvas.inks.warm)
        else:
            canvas.hatch(closed, canvas.inks.cold)


def outside(points: Sequence[Point]) -> Iterator[list[Point]]:
    """The parts of a path whose distance is positive, cut where it crosses nought."""
    part: list[Point] = []
    for (x0, d0), (x1, d1) in pairwise(points):
        if d0 > 0:
            part = part or [(x0, d0)]
        if (d0 > 0) != (d1 > 0):
            crossing = (x0 + (x1 - x0) * d0 / (d0 - d1), 0.0)
            part.append(crossing)
            if d1 <= 0:
                yield part
                part = []
        if d1 > 0:
            part.append((x1, d1))
    if part:
        yield part
