"""One barn being served: its memory never knows more than its file; its group is followed."""

from datetime import UTC, datetime

import pytest

from bot.served import Served
from bot.store import Store
from tests.whole.local_bot_api import GROUP
from tests.whole.stand_in import StandIn, a_barn

NOW = datetime(2026, 11, 26, 12, 12, tzinfo=UTC)


@pytest.fixture
def served() -> Served:
    """A barn in memory."""
    barn, store = a_barn(), Store.memory()
    return Served(barn, store, lambda: StandIn(barn, store))


def test_after_a_write_was_taken_back_the_day_is_made_anew(served: Served) -> None:
    """What a failed commit had already put into memory must not be believed."""
    before = served.day
    assert served.day is before
    with pytest.raises(RuntimeError), served.store.transaction():
        raise RuntimeError
    assert served.day is not before
    assert served.day is served.day


def test_a_fault_in_the_clock_s_work_stays_inside(served: Served, monkeypatch: pytest.MonkeyPatch) -> None:
    """It is logged in one line, and the next tick tries again."""

    def broken(self: StandIn, now: datetime) -> None:
        raise ValueError("a fault inside")

    monkeypatch.setattr(StandIn, "tick", broken)
    assert not served.tick(NOW)
    monkeypatch.undo()
    assert served.tick(NOW)


def test_a_moved_group_is_followed_until_the_file_says_another(served: Served) -> None:
    """The file's own change of group counts more than an old move."""
    assert served.group == GROUP
    served.group_is(-9)
    assert served.group == -9
    moved = a_barn(chat=-7)
    other = Served(moved, served.store, lambda: StandIn(moved, served.store))
    assert other.group == -7
