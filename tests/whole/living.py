"""The demo barn's own day in a group over real HTTP, on a clock that the test owns; times as in tests/november.py."""

import asyncio
import json
from collections.abc import AsyncIterator, Callable
from contextlib import ExitStack, asynccontextmanager, closing
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from bot.barn import Barn
from bot.barn_day import BarnDay
from bot.chat.rooms import Room
from bot.chat.telegram import Telegram
from bot.forecast import Forecast
from bot.message import Incoming
from bot.pulse import Pulse
from bot.served import Served
from bot.store import Store, data_path
from tests.november import November
from tests.whole.local_bot_api import GROUP, TOKEN, LocalBotApi, Sent

THEO, INES, RUTH, MAELLE, WALT, PRIYA = range(1001, 1007)
STEP = timedelta(minutes=5)


@dataclass
class Clock(November):
    """What time it is in the barn, and the last good forecast."""

    barn: Barn
    now: datetime = field(init=False)
    forecast: Forecast | None = None

    def __post_init__(self) -> None:
        self.now = self.at("0:00")


class OnOurClock(BarnDay):
    """The barn's day; whatever time the door says it is, it is what the test's clock says."""

    def __init__(self, barn: Barn, store: Store, clock: Clock) -> None:
        super().__init__(barn, store, lambda now: clock.forecast, since=clock.at("0:00"))
        self.clock = clock

    def tick(self, now: datetime) -> None:
        """See BarnDay."""
        super().tick(self.clock.now)

    def hear(self, incoming: Incoming) -> None:
        """See BarnDay."""
        super().hear(replace(incoming, at=self.clock.now))


@dataclass
class Living:
    """People's group with Haybell in it. Everything that follows from what is done has been sent when it returns."""

    api: LocalBotApi
    telegram: Telegram
    clock: Clock

    @property
    def room(self) -> Room:
        """The barn's room."""
        return self.telegram.rooms[0]

    @property
    def day(self) -> OnOurClock:
        """The barn's day."""
        found = self.room.served.day
        assert isinstance(found, OnOurClock)
        return found

    async def until(self, clock: str) -> list[Sent]:
        """Let time pass; what was sent on the way."""
        before = len(self.api.sent)
        while self.clock.now < self.clock.at(clock):
            self.clock.now = min(self.clock.now + STEP, self.clock.at(clock))
            assert self.room.served.tick(self.clock.now)
            self.room.courier.poke()
            await self.settled()
        return self.api.sent[before:]

    async def says(self, clock: str, who: int, text: str, **more: Any) -> list[Sent]:
        """Somebody writes (see `LocalBotApi.say`); what was sent because of it."""
        return await self._after(clock, lambda: self.api.say(who, text, **more))

    async def taps(self, clock: str, who: int, post: Sent, label: str) -> list[Sent]:
        """Somebody presses the button whose text has these words; what was sent because of it."""
        (data,) = [b["callback_data"] for b in self.buttons(post) if label in b["text"]]
        return await self._after(clock, lambda: self.api.tap(who, post.message_id, data, chat=post.chat))

    async def edits(self, clock: str, who: int, number: int, text: str) -> list[Sent]:
        """Somebody corrects what they wrote; what was sent because of it."""
        return await self._after(clock, lambda: self.api.edit(who, number, text))

    async def _after(self, clock: str, act: Callable[[], object]) -> list[Sent]:
        """Somebody does something at this time; what was sent because of it."""
        self.clock.now = self.clock.at(clock)
        before = len(self.api.sent)
        act()
        await self.settled()
        return self.api.sent[before:]

    def buttons(self, post: Sent) -> list[dict[str, str]]:
        """The buttons under one of our messages as people see them now."""
        markup = self.api.buttons[post.chat, post.message_id]
        return [button for row in json.loads(markup or '{"inline_keyboard": []}')["inline_keyboard"] for button in row]

    def ticks(self, post: Sent) -> list[str]:
        """The buttons that bear a tick."""
        return [b["text"] for b in self.buttons(post) if b["text"].startswith("✓")]

    def post(self) -> Sent:
        """The last round's post."""
        return next(s for s in reversed(self.api.sent) if s.fields.get("reply_markup") and "CHANGE" in s.text)

    async def settled(self) -> None:
        """Wait until nothing is on its way in either direction."""
        await self.api.until(self._at_rest)

    def _at_rest(self) -> bool:
        queues = self.room.mailbox.queues()
        errands = self.telegram.office._errands
        return not (self.api.pending or queues.waiting or queues.unsent or self.room._settle or errands)


@asynccontextmanager
async def living(api: LocalBotApi, folder: Path, clock: Clock) -> AsyncIterator[Living]:
    """The barn served until the end of the block; its file stays, so that the next block is a restart."""
    with ExitStack() as files:
        store, own = (files.enter_context(closing(Store.open(data_path(n, folder)))) for n in (clock.barn.barn, "own"))
        served = Served(clock.barn, store, lambda: OnOurClock(clock.barn, store, clock))
        telegram = Telegram([served], TOKEN, api.url, own, Pulse(datetime.now(UTC)))
        running = asyncio.create_task(telegram.run())
        try:
            found = Living(api, telegram, clock)
            await api.until(lambda: any(method == "setMyCommands" for method, _ in api.calls))
            await found.settled()
            yield found
        finally:
            telegram.stopped.set()
            await running


def in_group(sent: list[Sent]) -> list[str]:
    """What the group was written."""
    return [s.text for s in sent if s.chat == GROUP and s.method == "sendMessage"]


def to(who: int, sent: list[Sent]) -> list[str]:
    """What somebody was written privately."""
    return [s.text for s in sent if s.chat == who and s.method == "sendMessage"]
