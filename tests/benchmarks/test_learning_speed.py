"""How long learning takes, and ten days of a season. Measured and printed, never asserted: --benchmark-enable -s."""

from datetime import UTC, datetime, timedelta
from typing import Any

from bot.barn import Barn
from bot.replay import replay
from rules.offset import WINDS, Evidence, learn
from rules.shared import common
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


def test_what_twelve_horses_share_after_a_winter(benchmark: Any) -> None:
    """A hundred signs each from three people; asked anew once a day."""
    signs = ("comfortable", "cold", "hot", "comfortable")
    winds = tuple((4 - factor, 9 + factor) for factor in WINDS)
    herd = tuple(
        tuple(
            Evidence(
                k * DAY, signs[(j + k) % 4], 3, 10, who=("Inés", "Theo", "Ruth")[k % 3], winds=winds, fill_g=k % 300
            )
            for k in range(100)
        )
        for j in range(12)
    )
    assert benchmark(common.__wrapped__, herd, 100 * DAY).wind > 0


def test_ten_days_of_a_season_four_ways(benchmark: Any, barn: Barn) -> None:
    """Twelve horses through twenty rounds, with the wardrobe's advice."""
    hours, end = inland(START, 10, 1), START + timedelta(days=10)
    season = benchmark.pedantic(replay, (barn, hours, START, end), rounds=1)
    assert len(season.ways) == 4
