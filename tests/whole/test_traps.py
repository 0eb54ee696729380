"""The ten traps of a bot on this library and this scheduler; each test here or named here fails without its cure.

T1 a kill loses what was fetched            here, and tests/faults
T2 a 401 or 404 ends polling for good       here
T3 one unreadable update is a hot loop      here
T4 a cron trigger skips and doubles days    tests/bot/test_rounds.py: every zone's clock changes
T5 a late job is dropped                    tests/bot/test_schedule.py: work that is late
T6 the log holds the token                  tests/whole/test_telegram.py: the token is in no log
T7 a late answer doubles the daily post     here
T8 concurrency loses the order              here
T9 an edit counts as a second report        here
T10 privacy mode: nothing arrives           tests/whole/test_telegram.py: in privacy mode
"""

import asyncio
import os
import sys
import time
from pathlib import Path

import pytest

from bot import outbox
from bot.chat import durable, rooms
from bot.message import Outgoing
from tests.whole.conftest import Serving
from tests.whole.local_bot_api import GROUP, Fault, LocalBotApi
from tests.whole.stand_in import a_barn

ROOT = Path(__file__).parents[2]
INES = 1002


@pytest.fixture(autouse=True)
def short_pauses(monkeypatch: pytest.MonkeyPatch) -> None:
    """What takes minutes in the tack room takes moments here."""
    monkeypatch.setattr(durable, "FIRST_PAUSE_S", 0.02)
    monkeypatch.setattr(outbox, "PAUSE_UNKNOWN", outbox.PAUSE_UNKNOWN / 50)
    monkeypatch.setattr(rooms, "SETTLE_S", 1e6)
    monkeypatch.setattr(rooms, "SETTLE_LATEST_S", 1e6)


async def test_t1_a_kill_loses_nothing_that_was_fetched(api: LocalBotApi, tmp_path: Path) -> None:
    """Fifty messages, a kill in their midst: every one is answered after the restart."""
    said = [f"report {number}." for number in range(50)]
    env = os.environ | {"PYTHONPATH": str(ROOT), "HAYBELL_RATE": "off"}
    command = (sys.executable, "-m", "tests.whole.stand_in", str(tmp_path / "barn.sqlite"), api.url)
    first = await asyncio.create_subprocess_exec(*command, env=env, cwd=ROOT)
    for text in said:
        api.say(INES, text)
    await api.until(lambda: len(api.texts()) >= 5, 20)
    first.kill()
    await first.wait()
    second = await asyncio.create_subprocess_exec(*command, env=env, cwd=ROOT)
    try:
        await api.until(lambda: all(any(text in answer for answer in api.texts()) for text in said), 20)
    finally:
        second.kill()
        await second.wait()


@pytest.mark.parametrize("code", [401, 404])
async def test_t2_a_refusal_does_not_end_polling(code: int, api: LocalBotApi, serving: Serving, tmp_path: Path) -> None:
    """The process would stay alive, look healthy, and never hear again."""
    async with serving(api, tmp_path, a_barn()):
        api.say(INES, "before")
        await api.until(lambda: api.texts() == ["noted before"])
        api.fail("getUpdates", Fault(code, "no"), 3)
        api.say(INES, "after")
        await api.until(lambda: api.texts() == ["noted before", "noted after"])


async def test_t3_an_unreadable_update_is_set_aside_once(
    api: LocalBotApi, serving: Serving, tmp_path: Path, caplog: pytest.LogCaptureFixture
) -> None:
    """It would be fetched a thousand times a second, and nothing after it ever answered."""
    async with serving(api, tmp_path, a_barn()):
        api.update(
            message={"message_id": 1, "date": 0, "chat": {"id": GROUP}, "from": {"first_name": "x"}, "text": "y"}
        )
        api.update(my_chat_member={"chat": {"id": GROUP}})
        api.say(INES, "after")
        await api.until(lambda: api.texts()[-1:] == ["noted after"])
        await asyncio.sleep(0.2)
        assert len(caplog.records) < 10
        assert api.pending == []


async def test_t7_a_late_answer_does_not_double_the_post_unsaid(
    api: LocalBotApi, serving: Serving, tmp_path: Path
) -> None:
    """Delivered, but the answer never came: once more, saying so; and not a third time."""
    async with serving(api, tmp_path, a_barn()) as telegram:
        api.fail("sendMessage", Fault(done=True, silent=True), 5)
        telegram.rooms[0].mailbox.put(Outgoing("post", "the morning's list"), telegram.pulse.started)
        telegram.poke(telegram.rooms[0].served)
        await api.until(lambda: len(api.texts()) == 2)
        await asyncio.sleep(1)
        first, second = api.texts()
        assert first == "the morning's list"
        assert second.startswith("This may be a repeat")
        assert second.endswith(first)


async def test_t8_a_burst_is_answered_in_order(api: LocalBotApi, serving: Serving, tmp_path: Path) -> None:
    """First Maple, then no, Juniper: the second must not be read first."""
    said = [f"report {number}" for number in range(200)]
    async with serving(api, tmp_path, a_barn()):
        for text in said:
            api.say(INES, text)
        await api.until(lambda: len(api.texts()) == 200, 20)
    assert api.texts() == [f"noted {text}" for text in said]


async def test_t9_a_correction_replaces_what_it_corrects(api: LocalBotApi, serving: Serving, tmp_path: Path) -> None:
    """One report stands, not two; an edit that changes no word is nothing."""
    async with serving(api, tmp_path, a_barn()) as telegram:
        number = api.say(INES, "Maple sweaty")
        api.edit(INES, number, "Juniper sweaty")
        api.edit(INES, number, "Juniper sweaty")
        api.say(INES, "end")
        await api.until(lambda: api.texts()[-1:] == ["noted end"])
        entries = telegram.rooms[0].served.day.ledger.entries()  # type: ignore[attr-defined]
        standing = [e.text for e in entries if e.undone_by is None and e.event.kind == "sign"]
        assert standing == ["Juniper sweaty", "end"]
        assert api.texts() == ["noted Maple sweaty", "noted Juniper sweaty", "noted end"]


async def test_a_stop_takes_no_longer_than_a_moment(api: LocalBotApi, serving: Serving, tmp_path: Path) -> None:
    """Also with the server gone and messages unsent: they wait in the outbox."""
    async with serving(api, tmp_path, a_barn()) as telegram:
        api.say(INES, "one")
        await api.until(lambda: api.texts())
        await api.stop()
        telegram.rooms[0].mailbox.put(Outgoing("answer", "later"), telegram.pulse.started)
        telegram.poke(telegram.rooms[0].served)
        await asyncio.sleep(0.1)
        began = time.monotonic()
    assert time.monotonic() - began < 10
