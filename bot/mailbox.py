"""All of a barn's post in one hand: inbox, outbox, and the few values a barn keeps beside its ledger."""

import json
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from bot.inbox import Inbox
from bot.outbox import Outbox, iso
from bot.store import Store

KEPT_DAYS = 30  # how long what was sent can be answered
KEPT_UPDATES = 10_000  # how many handled updates are remembered; Telegram redelivers for a day at most


@dataclass(frozen=True)
class Queues:
    """How many are where, for the health file."""

    waiting: int
    quarantined: int
    unsent: int
    failed: int


class Kept:
    """Named values: the providers' last good answers, the group's id after a move, what has been said once."""

    def __init__(self, store: Store) -> None:
        self.store = store

    def get(self, name: str) -> bytes | None:
        """The value, None where there is none."""
        row = self.store.conn.execute("SELECT value FROM kept WHERE name = ?", (name,)).fetchone()
        return bytes(row[0]) if row else None

    def put(self, name: str, value: bytes) -> None:
        """Keep a value in place of the one before."""
        with self.store.transaction():
            self.store.conn.execute("INSERT OR REPLACE INTO kept VALUES (?, ?)", (name, value))


class Mailbox(Inbox, Outbox):
    """Over one store, so that an event, its answer and its inbox mark are one commit. kept: the values beside."""

    def __init__(self, store: Store) -> None:
        super().__init__(store)
        self.kept = Kept(store)

    def begin(self, now: datetime) -> None:
        """What a start has to settle: sendings of unknown fate, old rows."""
        with self.store.transaction():
            self.doubt(now)
            self._tidy(now)

    def setting(self, name: str) -> Any:
        """A small value as JSON keeps it; None where it was never set."""
        found = self.kept.get(f"setting:{name}")
        return None if found is None else json.loads(found)

    def set(self, name: str, value: Any) -> None:
        """Keep a small value."""
        self.kept.put(f"setting:{name}", json.dumps(value).encode())

    def posted(self, key: str) -> None:
        """A round's post is in the chat; its buttons are under this message."""
        self.set("post", key)

    def post(self) -> str | None:
        """The message in the chat that bears the buttons of the last post."""
        found: str | None = self.setting("post")
        return found

    def queues(self) -> Queues:
        """How many are where."""
        (waiting, quarantined) = self.store.conn.execute(
            "SELECT total(state = 'waiting'), total(state = 'quarantined') FROM inbox WHERE state <> 'done'"
        ).fetchone()
        (unsent, failed) = self.store.conn.execute(
            "SELECT total(state IN ('waiting', 'sending', 'unknown')), total(state = 'failed') FROM outbox "
            "WHERE state <> 'sent'"
        ).fetchone()
        return Queues(int(waiting), int(quarantined), int(unsent), int(failed))

    def _tidy(self, now: datetime) -> None:
        old = iso(now - timedelta(days=KEPT_DAYS))
        over = "SELECT id FROM outbox WHERE at < ? AND state IN ('sent', 'failed')"
        self.store.conn.execute(f"DELETE FROM sent WHERE outbox IN ({over})", (old,))
        self.store.conn.execute(f"DELETE FROM outbox WHERE id IN ({over})", (old,))
        self.store.conn.execute(
            "DELETE FROM inbox WHERE state = 'done' AND arrival <= (SELECT max(arrival) FROM inbox) - ?",
            (KEPT_UPDATES,),
        )
