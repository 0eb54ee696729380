"""The clock: late is late, never skipped; one barn's trouble is its own; what hangs is ended."""

import asyncio
import logging
import time
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from bot import schedule
from bot.forecast import Fetched
from bot.message import Incoming
from bot.pulse import SILENCE, Pulse, health_path, read_health, well
from bot.schedule import Schedule
from bot.served import Served
from bot.store import Store
from tests.whole.stand_in import a_barn


class Counting:
    """A day that only counts how often it was looked at."""

    def __init__(self) -> None:
        self.ticks = 0

    def tick(self, now: datetime) -> None:
        """Count."""
        self.ticks += 1

    def hear(self, incoming: Incoming) -> None:
        """Nobody speaks here."""


class Failing(Counting):
    """A day that breaks."""

    def tick(self, now: datetime) -> None:
        """Count, and break."""
        super().tick(now)
        raise ZeroDivisionError("a fault inside")


def serve(*days: Counting, store: Store | None = None) -> tuple[Served, ...]:
    """A barn for each day."""
    return tuple(
        Served(a_barn(f"Barn {n}", chat=-n - 1), store or Store.memory(), lambda day=day: day)  # type: ignore[misc]
        for n, day in enumerate(days)
    )


@asynccontextmanager
async def running(barns: tuple[Served, ...], pulse: Pulse) -> AsyncIterator[list[Served]]:
    """The clock for these barns; gives who was told to look into the outbox."""
    poked: list[Served] = []
    clock = Schedule(barns, pulse, poked.append)
    clock.start()
    try:
        yield poked
    finally:
        clock.stop()
        await asyncio.sleep(0)


@pytest.fixture(autouse=True)
def quick(monkeypatch: pytest.MonkeyPatch) -> None:
    """A minute is a moment."""
    monkeypatch.setattr(schedule, "TICK_S", 0.05)
    monkeypatch.setattr(schedule, "REPORT_S", 0.05)


@pytest.fixture
def pulse() -> Pulse:
    """Just started."""
    return Pulse(datetime.now(UTC))


async def until(true: Callable[[], bool]) -> None:
    """Wait a little."""
    end = time.monotonic() + 8
    while not true():
        assert time.monotonic() < end
        await asyncio.sleep(0.01)


async def test_every_barn_is_looked_at_again_and_again(pulse: Pulse) -> None:
    """And its outbox after it."""
    days = Counting(), Counting()
    async with running(serve(*days), pulse) as poked:
        await until(lambda: min(day.ticks for day in days) >= 3)
        assert len(poked) >= 6
        assert pulse.ticked


async def test_work_that_is_late_is_done_late(pulse: Pulse) -> None:
    """T5: a busy moment when the hour strikes must not cost the post; the scheduler's habit is to drop it."""
    day = Counting()
    async with running(serve(day), pulse):
        time.sleep(1.4)
        await until(lambda: day.ticks >= 1)
    assert schedule.ALWAYS["misfire_grace_time"] is None


async def test_one_barn_s_fault_is_logged_and_its_own(pulse: Pulse, caplog: pytest.LogCaptureFixture) -> None:
    """The others' rounds go on, and it is tried again."""
    bad, good = Failing(), Counting()
    with caplog.at_level(logging.ERROR):
        async with running(serve(bad, good), pulse):
            await until(lambda: min(bad.ticks, good.ticks) >= 3)
    assert "a fault inside" in caplog.text
    assert all(record.exc_info is None for record in caplog.records)


async def test_a_first_post_waits_for_its_forecast_but_not_for_ever(
    pulse: Pulse, monkeypatch: pytest.MonkeyPatch
) -> None:
    """With the weather at hand it says more; with a dead line it is said all the same."""
    monkeypatch.setattr(schedule, "FIRST_FORECAST_S", 0.3)
    asked = []

    def slow(*_: object) -> Fetched:
        asked.append(time.monotonic())
        time.sleep(0.6)
        return Fetched(None, ())

    monkeypatch.setattr(schedule, "refresh", slow)
    day = Counting()
    async with running(serve(day), pulse):
        began = time.monotonic()
        await until(lambda: day.ticks >= 1)
        assert asked
        assert time.monotonic() - began > 0.25
        await asyncio.sleep(0.4)  # the thread ends


async def test_the_health_file_says_what_is_well(pulse: Pulse, tmp_path: Path) -> None:
    """Times and numbers, nothing personal; for this user only."""
    store = Store.open(tmp_path / "barn.sqlite")
    pulse.polled = pulse.reached = datetime.now(UTC)
    async with running(serve(Counting(), store=store), pulse):
        await until(lambda: (read_health(tmp_path / "barn.sqlite") or {}).get("last_tick") is not None)
        found = read_health(tmp_path / "barn.sqlite")
        assert found
        assert well(found, datetime.now(UTC))
        assert not well(found, datetime.now(UTC) + SILENCE)
        assert found["queues"] == {"waiting": 0, "quarantined": 0, "unsent": 0, "failed": 0}
        assert health_path(tmp_path / "barn.sqlite").stat().st_mode & 0o077 == 0
    store.close()


def test_no_health_file_is_no_health(tmp_path: Path) -> None:
    """Before the first start."""
    assert read_health(tmp_path / "barn.sqlite") is None


@pytest.mark.parametrize("what", ["polled", "ticked"])
async def test_what_is_stuck_is_ended_for_the_supervisor(
    what: str, pulse: Pulse, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A task that died in silence looks healthy from outside; a server that cannot be reached is no reason."""
    ended: list[int] = []
    monkeypatch.setattr("bot.schedule.os._exit", ended.append)
    now = datetime.now(UTC)
    pulse.started = now - SILENCE * 3
    pulse.polled = pulse.ticked = now
    clock = Schedule((), pulse, lambda _: None)
    await clock.watch()
    assert ended == []
    setattr(pulse, what, now - SILENCE - timedelta(seconds=1))
    await clock.watch()
    assert ended == [schedule.EXIT_STUCK]
