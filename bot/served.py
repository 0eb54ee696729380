"""One barn being served: its day, its post, its group; what goes wrong in it stays in it."""

import logging
from collections.abc import Callable
from datetime import datetime
from typing import Protocol

from bot.barn import Barn
from bot.forecast import LastGood
from bot.mailbox import Mailbox
from bot.memory import hand_back
from bot.message import Incoming
from bot.problems import Failed
from bot.store import Store

LOG = logging.getLogger(__name__)


class Day(Protocol):
    """What a barn does at an instant and with a message; `bot.barn_day.BarnDay` is it."""

    def tick(self, now: datetime) -> None:
        """Whatever is due."""

    def hear(self, incoming: Incoming) -> None:
        """One message or tap."""


class Served:
    """A barn, its store and its day. make: the day anew from what the store holds. last_good: its kept forecasts."""

    def __init__(self, barn: Barn, store: Store, make: Callable[[], Day], last_good: LastGood | None = None) -> None:
        self.filed = barn
        self.store = store
        self.mailbox = Mailbox(store)
        self.last_good = last_good or LastGood(self.mailbox.kept)
        self._make = make
        self._day = make()
        self._good = store.rollbacks  # as many rollbacks as the day has seen

    @property
    def barn(self) -> Barn:
        """The barn's list as its day has it by now; as the file has it where a day keeps none."""
        return getattr(self._day, "barn", self.filed)

    @property
    def day(self) -> Day:
        """The day; made anew after a write was taken back, for its memory may then hold what the store does not."""
        if self._good != self.store.rollbacks:
            self._day = self._make()
            self._good = self.store.rollbacks
        return self._day

    def tick(self, now: datetime) -> bool:
        """Let the barn do what is due; faults are logged and tried again next time. Gives whether all went well."""
        try:
            self.day.tick(now)
        except Failed as error:
            LOG.error("%s: %s", self.barn.barn, error)
        except Exception as error:
            LOG.error("%s: the clock's work failed: %s", self.barn.barn, describe(error))
            self._day = self._make()
        else:
            return True
        return False

    def rest(self) -> None:
        """Nobody speaks just now: what the last minute took of memory is given back."""
        self.store.rest()
        hand_back()

    @property
    def group(self) -> int | None:
        """The group's id, as the file has it or as it became when the group changed its kind."""
        kept = self.mailbox.setting("group")
        if kept and kept["was"] == self.barn.chat:
            return int(kept["is"])
        return self.barn.chat

    def group_is(self, new: int) -> None:
        """The group has a new id from now on."""
        self.mailbox.set("group", {"was": self.barn.chat, "is": new})


def describe(error: BaseException) -> str:
    """One line for the log: the kind of error, what it said, and the place in our code."""
    place, trace = "", error.__traceback__
    while trace:
        place, trace = f"{trace.tb_frame.f_code.co_name}:{trace.tb_lineno}", trace.tb_next
    return " ".join(f"{type(error).__name__}: {error} (in {place})".split())[:300]
