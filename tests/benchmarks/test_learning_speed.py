"""How long learning takes, and ten days of a season. Measured and printed, never asserted: --benchmark-enable -s."""

from datetime import UTC, datetime, timedelta
from typing import Any

from bot.barn import Barn
from bot.replay import replay
from rules.offset import Evidence, learn
from tests.hidden_herd import inland

DAY = 86_400
START = datetime(2025, 12, 1, 5, tzinfo=UTC)


def fifty_signs() -> list[Evidence]:
    """One horse's winter of reports, from three people."""
    signs = ("comfortable", "cold", "hot")
    return [Evidence(k * DAY, signs[k % 3], 4, 9, who=("Inés", "Theo", "Ruth")[k % 3]) for k in range(50)]


def test_one_horse_of_fifty_signs(benchmark: Any) -> None:
    """Its offset and what each sign moved."""
    signs = fifty_signs()
    assert len(benchmark(learn, signs, 50 * DAY).shifts) == 50


def test_ten_days_of_a_season_four_ways(benchmark: Any, barn: Barn) -> None:
    """Twelve horses through twenty rounds, with the wardrobe's advice."""
    hours, end = inland(START, 10, 1), START + timedelta(days=10)
    season = benchmark.pedantic(replay, (barn, hours, START, end), rounds=1)
    assert len(season.ways) == 4
