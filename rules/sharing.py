"""Sharing: spares across the barn, exactly: no piece on two horses in the same window.

Each horse brings bids: its cheapest sequence for every way of using the spares that are in dispute. Choosing one
bid a horse at the least total cost is a set packing, solved exactly with HiGHS (Huangfu and Hall 2018,
Mathematical Programming Computation 10, 119-142). Only what two horses really want in the same window comes into
dispute, so most mornings nothing is solved at all.
"""

from collections import Counter
from collections.abc import Callable, Iterable, Sequence
from typing import Any, Protocol, TypeVar

Take = tuple[str, int]  # a spare's id, a window


class Bid(Protocol):
    """One sequence of a horse: what it costs [cold degree-hours], and which spares it takes when."""

    @property
    def cost(self) -> float: ...  # noqa: D102
    @property
    def takes(self) -> frozenset[Take]: ...  # noqa: D102


B = TypeVar("B", bound=Bid)


def settle(bids_of: Callable[[int, frozenset[Take]], Sequence[B]], horses: int) -> list[B]:
    """One bid for each horse, the cheapest together, no spare twice in a window.

    bids_of(horse, disputed): that horse's cheapest bid for every use of the disputed takes, of which at least one
    has none of them. The dispute grows until the chosen bids agree; a choice that is best while some clashes are
    overlooked, and has none of those, is best of all.
    """
    disputed: frozenset[Take] = frozenset()
    while True:
        chosen = assign([bids_of(horse, disputed) for horse in range(horses)], disputed)
        clashes = doubled(chosen)
        if not clashes:
            return chosen
        disputed |= clashes


def doubled(chosen: Iterable[Bid]) -> frozenset[Take]:
    """What two of these bids take: the same spare in the same window."""
    counts = Counter(take for bid in chosen for take in bid.takes)
    return frozenset(take for take, times in counts.items() if times > 1)


def assign(bids: Sequence[Sequence[B]], disputed: frozenset[Take]) -> list[B]:
    """The cheapest bid of each horse such that nothing disputed is taken twice."""
    cheapest = [min(own, key=lambda bid: bid.cost) for own in bids]
    if not doubled(cheapest) & disputed:
        return cheapest
    torn = [i for i, own in enumerate(bids) if any(bid.takes & disputed for bid in own)]
    solved = dict(zip(torn, _solve([bids[i] for i in torn], disputed)))
    return [solved.get(i, bid) for i, bid in enumerate(cheapest)]


def _solve(bids: Sequence[Sequence[B]], disputed: frozenset[Take]) -> list[B]:
    """One bid a horse by mixed-integer programming: minimise Σ cost, each horse one bid, each take at most once."""
    model = _quiet_model()
    model.setOptionValue("threads", 1)  # so small a problem only waits for a second one
    model.setOptionValue("mip_rel_gap", 0.0)
    model.setOptionValue("mip_abs_gap", 1e-9)
    chosen = [[model.addBinary(obj=bid.cost) for bid in own] for own in bids]
    takers: dict[Take, list[Any]] = {}
    for own, variables in zip(bids, chosen):
        model.addConstr(model.qsum(variables) == 1)
        for bid, variable in zip(own, variables):
            for take in bid.takes & disputed:
                takers.setdefault(take, []).append(variable)
    for variables in takers.values():
        model.addConstr(model.qsum(variables) <= 1)
    model.run()
    value = model.getSolution().col_value
    return [max(zip(own, of), key=lambda pair: value[pair[1].index])[0] for own, of in zip(bids, chosen)]


def _quiet_model() -> Any:
    """An empty model that prints nothing: HiGHS greets on standard output unless silenced before its callbacks."""
    import highspy  # here, for most plans never need it

    class Quiet(highspy.Highs):
        def enableCallbacks(self) -> None:  # noqa: N802 its own name
            self.silent()
            super().enableCallbacks()  # type: ignore[no-untyped-call]

    return Quiet()  # type: ignore[no-untyped-call]
