"""How long a plan takes. Measured and printed, never asserted: run with --benchmark-enable -s.

The floor is one pass of numpy.exp over as many elements as there are cases × scenarios × hours in the question.
"""

from time import perf_counter

import numpy as np
import pytest

from rules.horse import ClipStyle
from rules.outlook import outlooks
from rules.plan import choose, plan, price
from rules.pricing import Draft, balances, within_reach
from rules.question import Question
from rules.weather import Hours
from tests.stable import FIELD, STALL, ask, joined, liner, sheet, turnout, wearer, weather

CLIPS: tuple[ClipStyle, ...] = ("none", "none", "trace", "full")
SKIES: dict[str, Hours] = {
    "dry": joined(weather(-3.0, 5.0, hours=9), weather(-8.0, 2.0, hours=15)),
    "rain in doubt": joined(
        weather(4.0, 6.0, rain=0.6, chance=60.0, hours=9), weather(1.0, 8.0, chance=20.0, hours=15)
    ),
}


def barn(horses: int, sky: Hours) -> Question:
    """Horses with a sheet, two turnouts and a liner each, and four spare turnouts for all; field by day."""
    names = [f"horse {i}" for i in range(horses)]
    stable = [
        wearer(name, FIELD, STALL if i % 2 else FIELD, clip=CLIPS[i % 4], age_years=4.0 + i % 20)
        for i, name in enumerate(names)
    ]
    own = [p for n in names for p in (sheet(n), turnout(100, n), turnout(250, n), liner(150, n))]
    return ask(sky, stable, own + [turnout(300 + i, None) for i in range(4)])


def elements(question: Question) -> tuple[int, int, int]:
    """Outfits priced (one horse, one outfit, one window), distinct cases, and cases × scenarios × hours."""
    reach = within_reach(question)
    drafts = [Draft(w, reach(w)) for w in question.wearers]
    cold = [margins.cold for _, _, margins in balances(question, drafts, outlooks(question), {})]
    outfits = sum(len(own) for draft in drafts for own in draft.outfits)
    return outfits, sum(len(c) for c in cold), sum(c.size for c in cold)


def best_of(times: int, run: object, *args: object) -> float:
    """The shortest of some runs [ms]."""
    found = []
    for _ in range(times):
        began = perf_counter()
        run(*args)  # type: ignore[operator]
        found.append(1000 * (perf_counter() - began))
    return min(found)


@pytest.mark.parametrize("sky", SKIES, ids=str)
def test_a_plan_for_forty_horses_and_two_windows(benchmark, sky):
    """All outfits, all scenarios, both windows, spares shared, reasons given; warm."""
    question = barn(40, SKIES[sky])
    told = benchmark(plan, question)
    assert len(told.dresses) == 40
    outfits, cases, size = elements(question)
    floor = best_of(20, np.exp, np.full(size, -1.0))
    prices = price(question)
    heavy, light = best_of(10, price, question), best_of(10, choose, prices, question)
    print(
        f"\n40 horses, {sky}: {outfits} outfits in {cases} cases, {size:,} elements; price {heavy:.0f} ms, "
        f"choose {light:.0f} ms; one pass of exp {floor:.2f} ms, so price is {heavy / floor:.0f} passes"
    )


def test_the_cost_of_a_reply(benchmark):
    """One report touches one horse: only that horse is priced again."""
    question = barn(40, SKIES["rain in doubt"])
    kept = price(question)
    found = benchmark(lambda: choose(kept | price(question, frozenset({"horse 3"})), question))
    assert len(found.dresses) == 40


@pytest.mark.parametrize("horses", [10, 40, 160, 640])
def test_time_grows_with_the_number_of_horses_and_no_faster(benchmark, horses):
    question = barn(horses, SKIES["dry"])
    benchmark.pedantic(plan, args=(question,), rounds=2, iterations=1, warmup_rounds=1)
    print(f"\n{horses} horses: {best_of(2, plan, question) / horses:.2f} ms a horse")
