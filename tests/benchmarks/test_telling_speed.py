"""How long a round's post, its JSON and its picture take for the demo barn; printed, not asserted."""

from datetime import UTC, datetime
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bot import board
from bot.barn import Barn, load
from bot.forecast import from_file
from bot.planning import Planner
from bot.post import plan_json, round_post
from bot.rounds import windows
from bot.sheet import Sheet
from bot.state import State, as_filed

ROOT = Path(__file__).parents[2]
NOW = datetime(2026, 11, 26, 11, 15, tzinfo=UTC)


@pytest.fixture(scope="module")
def planned() -> tuple[Barn, State, Sheet]:
    """The demo barn's morning, planned."""
    barn = load(ROOT / "demo_barn.yaml")
    state, forecast = as_filed(barn), from_file(ROOT / "bot" / "demo" / "morning.csv", NOW)
    return barn, state, Planner(barn).sheet(state, forecast, windows(barn, NOW), NOW)


def test_the_post(planned: tuple[Barn, State, Sheet], benchmark: BenchmarkFixture) -> None:
    """Twelve horses in words."""
    barn, state, sheet = planned
    assert benchmark(round_post, sheet, barn, state, "fr", "metric")


def test_the_json(planned: tuple[Barn, State, Sheet], benchmark: BenchmarkFixture) -> None:
    """Twelve horses, two windows."""
    barn, _, sheet = planned
    assert benchmark(plan_json, sheet, barn)


def test_the_picture(planned: tuple[Barn, State, Sheet], benchmark: BenchmarkFixture) -> None:
    """Drawn twice as large, shrunk, packed."""
    barn, _, sheet = planned
    assert benchmark(board.draw, sheet, barn, "us", "en")
