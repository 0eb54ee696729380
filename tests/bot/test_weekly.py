"""The note to owners on Sunday evening."""

from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from io import StringIO
from pathlib import Path

import pytest

from bot import weekly
from bot.barn import Barn
from bot.barn_day import BarnDay
from bot.beyond import Lately
from bot.chat.script import Line
from bot.chat.terminal import Terminal, play
from bot.state import as_filed
from bot.store import Store

SUNDAY = datetime(2026, 11, 29, 23, 30, tzinfo=UTC)  # 18:30 in Vermont


@pytest.fixture
def store() -> Store:
    """A barn's data in memory."""
    return Store.memory()


@pytest.fixture
def weekend(barn: Barn, store: Store, tmp_path: Path) -> Callable[..., str]:
    """What a terminal prints from one instant to another when these things are said; no forecast is needed."""

    def transcript(first: datetime, until: datetime, *said: tuple[str, str]) -> str:
        out = StringIO()
        core = BarnDay(barn, store, lambda at: None)
        lines = [Line(first, who, text) for who, text in said] or [Line(first, "Theo", "hello")]
        play(Terminal(core, barn.zone, tmp_path, out=out), lines, until, lambda path, at: None)
        return out.getvalue()

    return transcript


def test_each_owner_hears_of_their_own_horses_once(weekend: Callable[..., str]) -> None:
    """At six on Sunday evening, privately, with what was seen and a picture; not again on Monday."""
    text = weekend(SUNDAY - timedelta(hours=6), SUNDAY + timedelta(hours=16), ("Inés", "Maple sweaty"))

    assert text.count("haybell (to Ruth):\nYour horses") == 1
    note = text.partition("2026-11-29 18:00 haybell (to Ruth):")[2].partition("(to Walt)")[0]
    assert "Seen: Sun 29 Nov sweating" in note
    assert "[picture:" in note
    assert "Otter" not in note


def test_a_restart_on_sunday_evening_tells_nobody_twice(weekend: Callable[..., str]) -> None:
    """What was sent is remembered with the barn's data."""
    first = weekend(SUNDAY - timedelta(hours=2), SUNDAY, ("Inés", "Maple sweaty"))
    again = weekend(SUNDAY + timedelta(minutes=1), SUNDAY + timedelta(hours=1))

    assert "Your horses" in first
    assert "Your horses" not in again


@pytest.mark.parametrize(
    ("hours", "sent"),
    [(-0.6, False), (-0.5, True), (2.9, True), (3.1, False), (11.1, True), (17.6, False), (-24, False), (72, False)],
)
def test_it_goes_out_on_sunday_evening_or_the_morning_after_and_never_in_quiet_hours(
    barn: Barn, hours: float, sent: bool
) -> None:
    """From 18:00; quiet from 21:30 to 05:30; on Monday until noon where nothing ran on Sunday."""
    assert (weekly.due(barn, SUNDAY + timedelta(hours=hours)) is not None) is sent


def test_a_week_without_anything_on_record_is_not_written_about(barn: Barn) -> None:
    """A barn that has only just begun sends no empty notes."""
    evening = weekly.due(barn, SUNDAY)

    assert evening is not None
    assert list(weekly.notes(barn, as_filed(barn), Lately(), evening, SUNDAY)) == []


def test_a_week_is_called_by_its_sunday(barn: Barn) -> None:
    """Sunday evening and the Monday morning after it are one week, also over New Year."""
    monday = datetime(2027, 1, 4, 14, 0, tzinfo=UTC)
    evening, morning = weekly.due(barn, monday - timedelta(hours=15)), weekly.due(barn, monday)

    assert evening is not None
    assert evening == morning
    assert weekly.week(evening) == "2026-W53"
