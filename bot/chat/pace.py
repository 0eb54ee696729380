"""Telegram's limits: 30 messages a second in all, 20 a minute in a group, with room kept for alarms; and people's."""

import os
import time
from collections import defaultdict, deque

from aiolimiter import AsyncLimiter

IN_ALL = 25  # a second; Telegram's own is about 30
IN_A_GROUP = 19  # a minute; Telegram's own is 20
FOR_ALARMS = 4  # of those, kept free of everything else
ONE_PERSON = 20  # messages a minute before others are answered first
PRIVATELY = 50  # a minute; Telegram's own is about one a second


class Pace:
    """When the next message to a chat may leave."""

    def __init__(self) -> None:
        self._all = AsyncLimiter(IN_ALL, 1)
        self._chats: dict[tuple[int, bool], AsyncLimiter] = {}
        self.limited = os.environ.get("HAYBELL_RATE", "").lower() != "off"

    def may(self, chat: int, *, urgent: bool) -> bool:
        """Whether there is room now."""
        return not self.limited or all(one.has_capacity() for one in self._buckets(chat, urgent))

    async def take(self, chat: int, *, urgent: bool) -> None:
        """Wait for room and take it."""
        if self.limited:
            for one in self._buckets(chat, urgent):
                await one.acquire()

    def _buckets(self, chat: int, urgent: bool) -> list[AsyncLimiter]:  # noqa: FBT001 (passed on from a keyword)
        rate = IN_A_GROUP if chat < 0 else PRIVATELY
        whole = self._chats.setdefault((chat, True), AsyncLimiter(rate, 60))
        common = self._chats.setdefault((chat, False), AsyncLimiter(rate - FOR_ALARMS, 60))
        return [self._all, whole] if urgent else [self._all, whole, common]


class Pressing:
    """Who writes more than a person does: they are heard, and answered after the others."""

    def __init__(self) -> None:
        self._times: defaultdict[int | None, deque[float]] = defaultdict(lambda: deque(maxlen=ONE_PERSON))

    def too_many(self, sender: int | None) -> bool:
        """Whether this message is more than a minute's share of its sender."""
        now, times = time.monotonic(), self._times[sender]
        full = len(times) == ONE_PERSON and now - times[0] < 60
        times.append(now)
        return full
