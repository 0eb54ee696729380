"""How long it takes to find what would change the advice for one horse. Measured, never asserted; in warm caches."""

import pytest

from rules.offset import DAY_S, Evidence, Schooling
from rules.tipping import Choice, by_barn, by_offset, by_reports, by_weather
from tests.benchmarks.test_plan_speed import SKIES, barn

SIGNS = tuple(Evidence(day * DAY_S, "comfortable", 3.0, 8.0, who=("Inés", "Theo")[day % 2]) for day in range(60))


@pytest.mark.parametrize("horses", [1, 12, 40])
def test_what_would_change_the_advice_for_one_of_so_many_horses(benchmark, horses):
    """Reports, offset, weather and the barn's numbers, sixty signs learned anew each time; spares for all."""
    question = barn(horses, SKIES["rain in doubt"])
    school = Schooling(SIGNS, 60 * DAY_S, voices=("Inés", "Theo"))

    def ask() -> int:
        choice = Choice(question, "horse 0")
        return len([*by_reports(choice, school), *by_offset(choice), *by_weather(choice), *by_barn(choice, school)])

    print(f"{horses} horses: {benchmark(ask)} turns")
