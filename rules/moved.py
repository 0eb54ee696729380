"""Moved: two plans compared: whom a new forecast or report moves, in which window, and by how much.

A plan does not waver between two like outfits: a change costs `Costs.change`, and departing from what people were told
(`Wearer.told`) costs `Costs.retell`. That is the whole hysteresis: so many cold degree-hours must be gained, under the
new forecast, before a horse is moved. Two margins under two forecasts say nothing of that (a sheet in the rain and bare
in the dry may come out alike), so every move that is left is told.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Protocol

from rules.plan import Plan


class Told(Protocol):
    """What is compared of a Dress, or of a sheet's copy of one."""

    @property
    def wear(self) -> tuple[str, ...]: ...  # noqa: D102
    @property
    def as_found(self) -> bool: ...  # noqa: D102


@dataclass(frozen=True)
class Move:
    """One horse that wears something else than before in one window; by how much its margins moved [K].

    None where one of the plans could not judge.
    """

    horse: str
    window: int
    before: tuple[str, ...]
    after: tuple[str, ...]
    cold_moved_c: float | None
    heat_moved_c: float | None


def moved(before: Plan, after: Plan) -> list[Move]:
    """Every horse of both plans whose clothes differ in the same window, in the order of the later plan."""
    return list(_moves(before, after))


def matters(was: Told, now: Told) -> bool:
    """Whether people must be told: other pieces, in whatever order they were named, or the first that are judged."""
    return not now.as_found and (was.as_found or set(was.wear) != set(now.wear))


def _moves(before: Plan, after: Plan) -> Iterable[Move]:
    for horse, dresses in after.dresses.items():
        for window, (was, now) in enumerate(zip(before.dresses.get(horse, ()), dresses)):
            if matters(was, now):
                cold = _shift(was.cold_margin_c, now.cold_margin_c)
                heat = _shift(was.heat_margin_c, now.heat_margin_c)
                yield Move(horse, window, was.wear, now.wear, cold, heat)


def _shift(was: float | None, now: float | None) -> float | None:
    return None if was is None or now is None else now - was
