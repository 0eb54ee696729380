"""How long the barn file, a forecast file and the forecast in force take. Printed, never asserted."""

from datetime import UTC, datetime
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bot.barn import Barn, demo_path, load
from bot.forecast import LastGood, from_file, latest, refresh

NOW = datetime(2026, 11, 26, 11, 15, tzinfo=UTC)
FORECAST = Path(__file__).parents[2] / "bot" / "demo" / "morning.csv"


def test_loading_the_demo_barn(benchmark: BenchmarkFixture) -> None:
    """Twelve horses and forty garments, read and checked."""
    assert len(benchmark(load, demo_path()).horses) == 12


def test_loading_a_barn_of_four_hundred_horses(benchmark: BenchmarkFixture, tmp_path: Path) -> None:
    """Grows with the file, not with its square."""
    text, _, horses = demo_path().read_text(encoding="utf-8").partition("horses:\n")
    made = "".join(f"  - {{name: Horse {k}, coat: average, born: 2010, weight_kg: 500}}\n" for k in range(400))
    clothes = "".join(f"  - {{id: g{k}, horse: Horse {k % 400}, kind: sheet, size_in: 75}}\n" for k in range(1600))
    path = tmp_path / "big.yaml"
    path.write_text(f"{text}horses:\n{made}garments:\n{clothes}", encoding="utf-8")
    assert len(benchmark(load, path).garments) == 1600
    assert horses


def test_reading_a_forecast_file(benchmark: BenchmarkFixture) -> None:
    """Three days of hours."""
    assert len(benchmark(from_file, FORECAST, NOW).hours) == 72


def test_the_forecast_in_force(benchmark: BenchmarkFixture, barn: Barn, services: object) -> None:
    """What every reply asks for: nothing is fetched, nothing is parsed again."""
    kept = LastGood()
    assert refresh(barn, kept, NOW).source == "open-meteo"
    found = benchmark(latest, kept, barn, NOW)
    assert found is not None


@pytest.mark.parametrize("name", ["metno_complete_london.json", "nws_detailed_forecast.json"])
def test_parsing_a_recorded_answer(benchmark: BenchmarkFixture, samples: Path, name: str) -> None:
    """Done once an answer."""
    assert len(benchmark(from_file, samples / name).hours) > 100
