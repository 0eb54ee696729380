"""Everything that goes wrong between a barn and its chat in a winter: nothing lost, nothing doubled unsaid."""

import asyncio
import os
import random
import sqlite3
import time
from collections.abc import Awaitable, Callable
from contextlib import closing
from dataclasses import replace
from signal import SIGTERM
from typing import Any

import pytest

from tests.faults.conftest import Barn, Row
from tests.whole.local_bot_api import GROUP, Fault

Inject = Callable[[Barn], Awaitable[int]]
FAULTS: dict[str, Inject] = {}


def fault(name: str) -> Callable[[Inject], Inject]:
    """A fault by name: the function injects it while people speak, and gives how often."""

    def kept(inject: Inject) -> Inject:
        FAULTS[name] = inject
        return inject

    return kept


def answers(name: str, method: str, times: int, what: Fault) -> None:
    """A fault that is one method's answer, so many times, in the midst of reports."""

    async def inject(barn: Barn) -> int:
        barn.say(3)
        await asyncio.sleep(0.05)
        barn.api.fail(method, what, times)
        for _ in range(times):
            barn.say(2)
            await asyncio.sleep(0.02)
        return times

    FAULTS[name] = inject


HTML = b"<html>Bad gateway</html>"
answers("asking: 401 unauthorized", "getUpdates", 3, Fault(401, "Unauthorized"))
answers("asking: 404 not found", "getUpdates", 2, Fault(404, "Not Found"))
answers("asking: 409 another poller", "getUpdates", 2, Fault(409, "Conflict"))
answers("asking: 429 too many requests", "getUpdates", 1, Fault(429, "Too Many Requests", {"retry_after": 1}))
answers("asking: 500 from the server", "getUpdates", 3, Fault(500, "Internal Server Error"))
answers("asking: 502 from a proxy", "getUpdates", 3, Fault(502, body=HTML))
answers("asking: an answer that is no JSON", "getUpdates", 2, Fault(200, body=HTML))
answers("asking: JSON of another shape", "getUpdates", 2, Fault(200, body=b'{"ok":true,"result":[{"a":1}]}'))
answers("asking: cut before the answer", "getUpdates", 3, Fault(silent=True))
answers("asking: the answer waits for a second", "getUpdates", 1, Fault(late_s=1))
answers("sending: 429 too many requests", "sendMessage", 1, Fault(429, "Too Many Requests", {"retry_after": 1}))
answers("sending: 500 from the server", "sendMessage", 3, Fault(500, "Internal Server Error"))
answers("sending: 401 unauthorized", "sendMessage", 2, Fault(401, "Unauthorized"))
answers("sending: 404 not found", "sendMessage", 2, Fault(404, "Not Found"))
answers("sending: 502 from a proxy, not delivered", "sendMessage", 1, Fault(502, body=HTML))
answers("sending: 504 from a proxy, delivered", "sendMessage", 1, Fault(504, body=HTML, done=True))
answers("sending: cut, not delivered", "sendMessage", 1, Fault(400, silent=True))
answers("sending: cut, delivered", "sendMessage", 1, Fault(silent=True))
answers("sending: an answer that is no JSON, delivered", "sendMessage", 1, Fault(200, body=HTML))


@fault("sending: delivered, the answer too late")
async def too_late(barn: Barn) -> int:
    """The trap of the doubled daily post."""
    assert barn.telegram
    send = barn.telegram._requests[1]
    send._patience = replace(send._patience, silence=0.3)
    barn.say(2)
    barn.api.fail("sendMessage", Fault(late_s=0.8), 2)
    barn.say(2)
    return 2


@fault("process: killed in a burst")
async def killed(barn: Barn) -> int:
    """Wherever it was just then."""
    await barn.end()
    for pause in (0.0, 0.03, 0.06):
        await barn.spawn()
        await barn.api.until(lambda: any(m == "getMe" for m, _ in barn.api.calls))
        barn.api.calls.clear()
        barn.say(15)
        await asyncio.sleep(pause)
        await barn.end()
    await barn.spawn()
    return 3


@fault("process: stopped politely in a burst")
async def stopped(barn: Barn) -> int:
    """SIGTERM, as a supervisor sends it."""
    await barn.end()
    await barn.spawn()
    await barn.api.until(lambda: any(m == "getMe" for m, _ in barn.api.calls))
    barn.say(40)
    await asyncio.sleep(0.05)
    await asyncio.wait_for(barn.end(SIGTERM), 10)
    await barn.spawn()
    return 1


@fault("network: the server is gone for a second")
async def gone(barn: Barn) -> int:
    """Tack-room internet."""
    barn.say(5)
    await barn.api.stop()
    barn.say(5)
    await asyncio.sleep(1)
    await barn.api.start()
    return 1


@fault("updates: delivered again and again")
async def again(barn: Barn) -> int:
    """A confirmation that got lost."""
    barn.say(5)
    updates = list(barn.api.pending)
    await asyncio.sleep(0.2)
    for number in range(3):
        barn.api.pending.extend(update | {"update_id": update["update_id"] + 0} for update in updates)
        barn.api.confirmed = 0
        barn.say(number)
        await asyncio.sleep(0.05)
    return 3


@fault("updates: numbers begin anew anywhere")
async def anew(barn: Barn) -> int:
    """After a quiet week Telegram draws a new number."""
    barn.say(3)
    await barn.api.until(barn.answered)
    barn.api.pending.clear()
    for number in (77_000_000, 5_000_000_000):
        barn.api._updates = iter(range(number, number + 100))  # type: ignore[assignment]
        barn.say(3)
        await asyncio.sleep(0.1)
    return 2


SPOILED: tuple[dict[str, Any], ...] = (
    {"message": {"message_id": 1}},
    {"message": None},
    {"message": {"message_id": 1, "chat": {"id": GROUP}, "from": {}, "text": "x", "date": "yesterday"}},
    {"message": {"message_id": 1, "chat": {"id": "x"}, "from": {"id": "y"}, "text": ["z"], "date": 1}},
    {"callback_query": {"id": 5, "from": {"id": 1001}}},
    {"callback_query": []},
    {"my_chat_member": {"chat": {"id": GROUP}}},
    {"message": {"chat": {"id": GROUP}, "from": {"id": 1001}, "text": "no number"}},
    {"message": {"message_id": 2, "chat": {"id": GROUP}, "migrate_to_chat_id": "nowhere"}},
    {"a_kind_nobody_knows": {"x": 1}},
    {},
)


@fault("updates: of no known shape")
async def spoiled(barn: Barn) -> int:
    """Each between two reports."""
    for update in SPOILED:
        barn.say(1)
        barn.api.update(**update)
    barn.say(1)
    return len(SPOILED)


@fault("updates: a message that breaks something inside")
async def breaking(barn: Barn) -> int:
    """It is set aside; its neighbours in the same batch are not."""
    for _ in range(3):
        barn.say(2)
        barn.api.say(1001, "spoil")
    barn.say(1)
    return 3


@fault("updates: edits that change nothing")
async def edits(barn: Barn) -> int:
    """Telegram tells of reactions and previews as edits."""
    for _ in range(5):
        text = f"report {len(barn.said)}."
        barn.said.append(text)
        number = barn.api.say(1001, text)
        barn.api.edit(1001, number, text)
    return 5


@fault("group: becomes a supergroup in the middle")
async def moves(barn: Barn) -> int:
    """Every id changes."""
    barn.say(3)
    await barn.api.until(barn.answered)
    new = GROUP - 5
    barn.api.gone[GROUP] = new
    barn.say(3)
    barn.api.update(message=barn.api.message(1001, "", GROUP, 999) | {"migrate_to_chat_id": new})
    for _ in range(3):
        text = f"report {len(barn.said)}."
        barn.said.append(text)
        barn.api.say(1001, text, chat=new)
    return 1


@fault("disk: full for a while")
async def full(barn: Barn) -> int:
    """Nothing is confirmed that cannot be kept."""
    assert barn.telegram
    store = barn.telegram.rooms[0].served.store
    (pages,) = store.conn.execute("PRAGMA page_count").fetchone()
    store.conn.execute(f"PRAGMA max_page_count = {pages}")
    for _ in range(20):
        barn.say(5)
        await asyncio.sleep(0.05)
    store.conn.execute("PRAGMA max_page_count = 100000")
    return 1


@fault("disk: another program holds the file")
async def held(barn: Barn) -> int:
    """Somebody looks into it with a tool of their own."""

    def hold() -> None:
        with closing(sqlite3.connect(barn.path, isolation_level=None)) as other:
            other.execute("BEGIN IMMEDIATE")
            time.sleep(0.5)
            other.execute("ROLLBACK")

    holding = asyncio.create_task(asyncio.to_thread(hold))
    await asyncio.sleep(0.1)
    barn.say(3)
    await holding
    return 1


@fault("flood: one person writes without end")
async def flood(barn: Barn) -> int:
    """Others are answered all the same."""
    barn.say(200, who=1003)
    barn.say(3, who=1001)
    return 1


@pytest.mark.parametrize("name", FAULTS)
async def test_nothing_is_lost_and_nothing_doubled(name: str, barn: Barn, table: list[Row]) -> None:
    """Whatever happens, every report is recorded once and answered; an answer twice says that it may be a repeat."""
    await barn.start()
    times = await FAULTS[name](barn)
    barn.say(2)
    took = await barn.settled()
    row = barn.count(name, times, took)
    table.append(row)
    assert (row.lost, row.doubled) == (0, 0)


@pytest.mark.skipif("HAYBELL_LONG" not in os.environ, reason="takes minutes; HAYBELL_LONG=1 runs it")
async def test_fifty_kills_in_a_burst_of_five_hundred(barn: Barn, table: list[Row]) -> None:
    """Ten reports, a kill, fifty times, at any point of starting, reading and answering."""
    for _ in range(50):
        await barn.spawn()
        barn.say(10)
        await asyncio.sleep(0.5 + random.uniform(0, 0.5))
        await barn.end()
    await barn.spawn()
    took = await barn.settled(120)
    row = barn.count("process: killed fifty times in a burst of 500", 50, took)
    table.append(row)
    assert (row.lost, row.doubled) == (0, 0)


def test_there_are_many_kinds_of_fault() -> None:
    """A winter has more than twenty."""
    assert len(FAULTS) >= 20
