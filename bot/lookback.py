"""Look back: a question about weeks that takes longer than a reply may, worked out beside the talk, then answered.

The wish is kept with the barn, so that it outlives a restart. One look answers all who wait for it.
"""

import logging
import threading
from collections.abc import Callable, Sequence
from concurrent.futures import Future
from datetime import datetime, timedelta

from bot.barn import Person
from bot.daybook import DayBook
from bot.events import Asked
from bot.message import Incoming, Outgoing
from bot.season.closet import WEEKS, Closet, look_back
from bot.season.closet_told import told
from bot.voice import for_person

LOG = logging.getLogger(__name__)
WISHES = "look back"

Work = Callable[[], Closet]
Aside = Callable[[Work], "Future[Closet]"]


def at_once(work: Work) -> "Future[Closet]":
    """Done before this returns: in a terminal nobody else is kept waiting."""
    future: Future[Closet] = Future()
    _settle(future, work)
    return future


def beside(work: Work) -> "Future[Closet]":
    """Done in a thread that nobody waits for when the bot is stopped."""
    future: Future[Closet] = Future()
    threading.Thread(target=_settle, args=(future, work), daemon=True).start()
    return future


def _settle(future: "Future[Closet]", work: Work) -> None:
    try:
        future.set_result(work())
    except Exception as error:
        future.set_exception(error)


class LookBack:
    """What people of one barn wait for. aside: how the work is done."""

    def __init__(self, book: DayBook, aside: Aside) -> None:
        self.book = book
        self.aside = aside
        self._look: Future[Closet] | None = None

    def wish(self, incoming: Incoming, person: Person, asked: Sequence[Asked]) -> None:
        """Remember who wants to know what, within the message's own commit."""
        if asked:
            to = person.name if incoming.private else "group"
            new = [{"who": person.name, "to": to, "reply_to": incoming.key, "horse": one.horse} for one in asked]
            self.book.mailbox.set(WISHES, [*self._wishes(), *new])

    def tick(self, now: datetime) -> None:
        """Begin the work that is wished for; answer what is worked out."""
        wishes = self._wishes()
        if not wishes:
            return
        if self._look is None:
            self._look = self.aside(self._work(now))
        if self._look.done():
            look, self._look = self._look, None
            with self.book.together():
                self.book.mailbox.set(WISHES, [])
                for wish in wishes:
                    text = self._text(look, self.book.barn.person(wish["who"]), wish["horse"])
                    self.book.say(Outgoing("answer", text, to=wish["to"], reply_to=wish["reply_to"]), now)

    def _wishes(self) -> list[dict[str, str]]:
        return self.book.mailbox.setting(WISHES) or []

    def _work(self, now: datetime) -> Work:
        """Everything the look needs is taken now: the thread reads no store."""
        barn, entries = self.book.barn, self.book.ledger.entries()
        sheets = self.book.ledger.sheets(now - timedelta(weeks=WEEKS))
        return lambda: look_back(barn, entries, sheets, now)

    def _text(self, look: "Future[Closet]", person: Person | None, horse: str | None) -> str:
        tongue = for_person(self.book.barn, person)
        fault = look.exception()
        if fault is None:
            return told(look.result(), tongue, horse)
        LOG.error("%s: the look back failed (%s: %s)", self.book.barn.barn, type(fault).__name__, fault)
        return tongue.say("closet failed")
