"""What the balance costs, beside the floor: one pass of numpy.exp over as many elements. Printed, never asserted."""

import numpy as np
import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from rules.dressed import Cases, Dressed, cases
from rules.heat import balance
from rules.horse import Horse
from rules.question import Stay
from rules.weather import Air, Hours
from tests.laboratory import SOLSTICE_NIGHT, air, pieces, site, turnout

CLIPS = ("none", "trace", "hunter", "full")
STAYS = (Stay("field"), Stay("field", "shed", "in shelter"), Stay("stall"))


def mixed_weather(count: int = 34) -> Hours:
    """A day and a half of cold, wind and showers that may come or not."""
    hour = np.arange(count)
    return Hours(
        SOLSTICE_NIGHT,
        temperature_c=5 * np.sin(hour / 4),
        humidity_pct=80 + 10 * np.cos(hour / 4),
        wind_ms=5 + 3 * np.sin(hour / 3),
        gust_ms=9 + 5 * np.sin(hour / 3),
        rain_mm=np.maximum(0, np.sin(hour / 2)),
        snow_mm=np.zeros(count),
        cloud_pct=50 + 50 * np.sin(hour / 5),
        solar_wm2=np.full(count, np.nan),
        rain_probability_pct=40 + 30 * np.sin(hour / 2),
    )


def barn(horses: int, outfits: int = 12) -> list[Dressed]:
    """So many horses, each bare and in eleven turnouts."""
    rugs = [(), *(pieces(turnout(40 * number)) for number in range(outfits - 1))]
    return [
        Dressed(Horse(f"horse {n}", weight_kg=400 + n % 200, clip=CLIPS[n % 4], clip_age_days=20), rug, n % len(STAYS))  # type: ignore[arg-type]
        for n in range(horses)
        for rug in rugs
    ]


@pytest.fixture(scope="module")
def outdoors() -> Air:
    return air(mixed_weather(), *STAYS)


def table(horses: int) -> Cases:
    return cases(barn(horses), site(), 330)


@pytest.mark.parametrize("horses", [10, 40, 160])
def test_balance(benchmark: BenchmarkFixture, outdoors: Air, horses: int) -> None:
    """All outfits of so many horses, all scenarios, 34 hours, in batches of forty as pricing takes them."""
    batches = [table(min(horses, 40))] * max(1, horses // 40)
    found = benchmark(lambda: [balance(batch, outdoors).cold for batch in batches][-1])
    benchmark.extra_info["elements"] = found.size * len(batches)
    assert np.isfinite(found).all()


@pytest.mark.parametrize("horses", [10, 40, 160])
def test_floor(benchmark: BenchmarkFixture, outdoors: Air, horses: int) -> None:
    """numpy.exp over the same number of elements."""
    size = len(table(horses)) * outdoors.wind.shape[1] * outdoors.wind.shape[2]
    values = np.linspace(-1, 1, size)
    assert benchmark(np.exp, values).size == size


def test_cases(benchmark: BenchmarkFixture) -> None:
    """480 cases as arrays, warm."""
    rows = barn(40)
    assert len(benchmark(cases, rows, site(), 330)) == len(rows)
