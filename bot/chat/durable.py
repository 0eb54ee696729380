"""Telegram's updates, committed before anyone acts on them and before Telegram hears that we have them.

The library keeps fetched updates in memory and confirms them at once: a kill would lose them. It also ends polling
for good at a 401 or 404, and asks again without a pause at an update it cannot read. Here the raw updates are kept
first and the library sees only their numbers.
"""

import asyncio
import json
import logging
import os
import random
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from http import HTTPStatus
from typing import Any, NoReturn

from telegram import Bot
from telegram.error import NetworkError, RetryAfter, TelegramError

from bot.chat.wire import FateUnknown, NotSent, Patience, Silence, Wire
from bot.pulse import Pulse

LOG = logging.getLogger(__name__)

os.environ.setdefault("PTB_TIMEDELTA", "1")  # the library's waits as timedelta, as it will have them one day

POLL_S = 25  # how long the server may hold an empty answer
ALLOWED = ("message", "edited_message", "callback_query", "my_chat_member")  # said each time: else the last bot's stays
YIELDS = 12  # turns of the loop left to those who act on updates and answer, before the server is asked again
FIRST_PAUSE_S = 0.5
LONGEST_PAUSE_S = 30.0

Update = dict[str, Any]
Hold = Callable[[list[Update]], None]


class InboxRequest(Wire):
    """Fetches updates: gives them to `hold`, which commits them, and passes on only their numbers."""

    def __init__(self, hold: Hold) -> None:
        super().__init__(1, Patience(silence=10, whole=30, with_file=30))
        self._hold = hold

    async def do_request(self, *args: Any, **kwargs: Any) -> tuple[int, bytes]:
        """See Wire. What cannot be held is not confirmed: Telegram sends it again."""
        code, payload = await super().do_request(*args, **kwargs)
        if code != HTTPStatus.OK:
            return code, payload
        updates = _updates(payload)
        if updates:
            self._hold(updates)
        numbers = [{"update_id": update["update_id"]} for update in updates]
        return code, json.dumps({"ok": True, "result": numbers}).encode()


class SendRequest(Wire):
    """Says of every failed request whether it may have had its effect."""

    def __init__(self) -> None:  # long, for a patient wait leaves fewer sendings of unknown fate
        super().__init__(16, Patience(silence=15, whole=30, with_file=75))

    async def do_request(self, *args: Any, **kwargs: Any) -> tuple[int, bytes]:
        """See Wire."""
        code, payload = await super().do_request(*args, **kwargs)
        if code >= HTTPStatus.INTERNAL_SERVER_ERROR:
            if _refusal(payload):
                raise NotSent(f"the server answered {code}")
            raise FateUnknown(f"something on the way answered {code}")
        return code, payload


async def poll(bot: Bot, pulse: Pulse) -> NoReturn:
    """Fetch updates for ever; whatever fails is tried again after a pause that grows to half a minute."""
    offset, pause = None, 0.0
    while True:
        try:
            got = await bot.get_updates(offset=offset, timeout=POLL_S, allowed_updates=ALLOWED)
        except TelegramError as error:
            pulse.polled = datetime.now(UTC)
            pause = _pause(error, pause)
            LOG.warning("no updates: %s; again in %.0f s", error_line(error), pause)
            await asyncio.sleep(pause)
        else:
            pulse.polled = pulse.reached = datetime.now(UTC)
            pause = 0.0
            for _ in range(YIELDS if got else 0):
                await asyncio.sleep(0)
            if got:
                offset = max(update.update_id for update in got) + 1


def error_line(error: BaseException) -> str:
    """One line for the log: the kind of error and what it said."""
    return " ".join(f"{type(error).__name__}: {error}".split())[:300]


def asked_to_wait(error: RetryAfter) -> timedelta:
    """How long the server wants to be left alone, and a little more."""
    after = error.retry_after
    return (after if isinstance(after, timedelta) else timedelta(seconds=after)) + timedelta(seconds=0.5)


def _pause(error: TelegramError, before: float) -> float:
    if isinstance(error, RetryAfter):
        return asked_to_wait(error).total_seconds()
    if isinstance(error, Silence):  # it was waited for long enough
        return 0.0
    return min(LONGEST_PAUSE_S, max(FIRST_PAUSE_S, before * 2)) * random.uniform(0.9, 1.1)


def _updates(payload: bytes) -> list[Update]:
    """The updates of an answer. NetworkError where it is no such answer: it is then asked for again."""
    try:
        updates = json.loads(payload)["result"]
        if all(isinstance(update["update_id"], int) for update in updates):
            return list(updates)
    except (ValueError, KeyError, TypeError) as error:
        raise NetworkError("an answer that is no list of updates") from error
    raise NetworkError("an update without a number")


def _refusal(payload: bytes) -> bool:
    """Whether the Bot API itself says that it did not do it, and not a machine on the way."""
    try:
        return json.loads(payload).get("ok") is False
    except (ValueError, AttributeError):
        return False
