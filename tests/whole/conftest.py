"""A local Bot API server for every test that carries messages."""

import asyncio
from collections.abc import AsyncIterator, Callable
from contextlib import AbstractAsyncContextManager, ExitStack, asynccontextmanager, closing
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot import board, mailbox
from bot.barn import Barn
from bot.chat import rooms
from bot.chat.telegram import Telegram
from bot.pulse import Pulse
from bot.store import Store, data_path
from tests.whole.living import Clock, Living, living
from tests.whole.local_bot_api import TOKEN, LocalBotApi
from tests.whole.stand_in import served

Serving = Callable[..., AbstractAsyncContextManager[Telegram]]


@pytest.fixture
async def api() -> AsyncIterator[LocalBotApi]:
    """A Bot API server on this machine."""
    async with LocalBotApi() as server:
        yield server


@asynccontextmanager
async def in_telegram(api: LocalBotApi, folder: Path, *barns: Barn) -> AsyncIterator[Telegram]:
    """These barns with their stand-in days, served until the end of the block; their files stay."""
    with ExitStack() as files:
        stores = [files.enter_context(closing(Store.open(data_path(barn.barn, folder)))) for barn in barns]
        own = files.enter_context(closing(Store.open(data_path("telegram", folder))))
        days = [served(barn, store) for barn, store in zip(barns, stores, strict=True)]
        telegram = Telegram(days, TOKEN, api.url, own, Pulse(datetime.now(UTC)))
        running = asyncio.create_task(telegram.run())
        try:
            yield telegram
        finally:
            telegram.stopped.set()
            await running


@pytest.fixture
def serving(monkeypatch: pytest.MonkeyPatch) -> Serving:
    """Serve barns in this process, with sending limits lifted."""
    monkeypatch.setenv("HAYBELL_RATE", "off")
    return in_telegram


@pytest.fixture
def clock(barn: Barn, monkeypatch: pytest.MonkeyPatch) -> Clock:
    """The demo barn's Thursday morning, before anything; the door settles at once, and pictures are drawn elsewhere."""
    monkeypatch.setenv("HAYBELL_RATE", "off")
    monkeypatch.setattr(rooms, "SETTLE_S", 0.01)
    monkeypatch.setattr(mailbox, "KEPT_DAYS", 10**5)  # whatever the machine's own clock says of this November
    monkeypatch.setattr(board, "draw", lambda *_, **__: b"\x89PNG")
    found = Clock(barn)
    found.weather("morning.csv", "5:50")
    found.now = found.at("6:10")
    return found


@pytest.fixture
async def group(api: LocalBotApi, tmp_path: Path, clock: Clock) -> AsyncIterator[Living]:
    """The demo barn in its group, the morning's list just posted."""
    async with living(api, tmp_path, clock) as found:
        await found.until("6:20")
        yield found
