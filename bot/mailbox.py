"""Inbox and outbox: nothing heard is lost, nothing said twice; and the few values a barn keeps beside its ledger."""

import json
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from typing import Any

from pydantic import TypeAdapter

from bot.message import Outgoing
from bot.store import Store

STARTS_ALLOWED = 3  # a message still waiting at this many starts is taken to be what kills the process
PAUSE_UNKNOWN = timedelta(seconds=15)  # before a message of unknown fate is sent once more
KEPT_DAYS = 30  # how long what was sent can be answered
KEPT_UPDATES = 10_000  # how many handled updates are remembered; Telegram redelivers for a day at most

LEAVING = "('waiting', 'unknown')"
FREE = f"""state IN {LEAVING} AND (addressee, urgent) NOT IN
    (SELECT addressee, urgent FROM outbox WHERE state IN {LEAVING} AND not_before > ?)"""
OUTGOING: TypeAdapter[Outgoing] = TypeAdapter(Outgoing)


@dataclass(frozen=True)
class Waiting:
    """An update that was heard and not yet acted on. raw: JSON as the chat sent it."""

    update_id: int
    raw: str


@dataclass(frozen=True)
class Letter:
    """A message on its way. parts: pieces of it already in the chat. repeat: an earlier sending may have arrived."""

    id: int
    outgoing: Outgoing
    parts: int = 0
    repeat: bool = False


@dataclass(frozen=True)
class Queues:
    """How many are where, for the health file."""

    waiting: int
    quarantined: int
    unsent: int
    failed: int


class Inbox:
    """Updates as they came, committed before the chat hears that we have them."""

    def __init__(self, store: Store) -> None:
        self.store = store

    def hold(self, updates: Iterable[tuple[int, str]]) -> int:
        """Keep (update id, raw JSON) pairs; one that is known already is passed over. Gives how many were new."""
        with self.store.transaction():
            before = self.store.conn.total_changes
            self.store.conn.executemany("INSERT OR IGNORE INTO inbox (update_id, raw) VALUES (?, ?)", updates)
            return self.store.conn.total_changes - before

    def waiting(self, limit: int = 100) -> list[Waiting]:
        """The oldest updates nobody has acted on, in the order they came."""
        rows = self.store.conn.execute(
            "SELECT update_id, raw FROM inbox WHERE state = 'waiting' ORDER BY arrival LIMIT ?", (limit,)
        )
        return [Waiting(*row) for row in rows]

    def handled(self, update_id: int) -> None:
        """Acted on: forget what it said, remember that it came. Call it in the transaction of what it caused."""
        with self.store.transaction():
            self.store.conn.execute("UPDATE inbox SET state = 'done', raw = '' WHERE update_id = ?", (update_id,))

    def quarantine(self, update_id: int, why: str) -> None:
        """Set aside, whole, an update that cannot be acted on."""
        with self.store.transaction():
            self.store.conn.execute(
                "UPDATE inbox SET state = 'quarantined', why = ? WHERE update_id = ?", (why, update_id)
            )

    def suspect(self) -> list[int]:
        """At a start: set aside the update that was first in line at too many starts, for it may be what kills us.

        Gives the update ids set aside.
        """
        with self.store.transaction():
            first = self.waiting(limit=1)
            if not first:
                return []
            (starts,) = self.store.conn.execute(
                "UPDATE inbox SET starts = starts + 1 WHERE update_id = ? RETURNING starts", (first[0].update_id,)
            ).fetchone()
            if starts <= STARTS_ALLOWED:
                return []
            self.quarantine(first[0].update_id, f"still waiting at {starts} starts")
            return [first[0].update_id]

    def heard(self, key: str, digest: str) -> bool:
        """Whether this message was heard before with the very same text; if not, it is from now on."""
        with self.store.transaction():
            changed = self.store.conn.execute(
                "INSERT INTO heard VALUES (?, ?) ON CONFLICT (key) DO UPDATE SET digest = excluded.digest "
                "WHERE digest <> excluded.digest",
                (key, digest),
            ).rowcount
        return changed == 0


class Outbox:
    """Messages recorded before they are sent, each with how far its sending got."""

    def __init__(self, store: Store) -> None:
        self.store = store

    def put(self, outgoing: Outgoing, at: datetime) -> int:
        """Record a message to be sent. Call it in the transaction of what caused it."""
        body = OUTGOING.dump_json(outgoing, exclude={"picture"}).decode()
        with self.store.transaction():
            number = self.store.conn.execute(
                "INSERT INTO outbox (at, addressee, urgent, message, picture) VALUES (?, ?, ?, ?, ?)",
                (_iso(at), outgoing.to, outgoing.urgent, body, outgoing.picture),
            ).lastrowid
        assert number is not None  # an INSERT always has one
        return number

    def lanes(self, now: datetime) -> list[str]:
        """The addressees for whom something may be sent now."""
        rows = self.store.conn.execute(f"SELECT DISTINCT addressee FROM outbox WHERE {FREE}", (_iso(now),))
        return [addressee for (addressee,) in rows]

    def next_letter(self, addressee: str, now: datetime) -> Letter | None:
        """What goes to them next: urgent first, else in order; None where nothing may be sent now.

        While a message waits for another try, later ones to the same addressee wait behind it, but for urgent ones.
        """
        row = self.store.conn.execute(
            f"SELECT id, message, picture, parts, unknowns FROM outbox WHERE addressee = ? AND {FREE} "
            "ORDER BY urgent DESC, id LIMIT 1",
            (addressee, _iso(now)),
        ).fetchone()
        return row and Letter(row[0], _outgoing(row[1], row[2]), row[3], repeat=row[4] > 0)

    def unsent(self, now: datetime) -> list[tuple[int, Outgoing]]:
        """All that may be sent now as pairs (id, message), urgent first, else in order."""
        rows = self.store.conn.execute(
            f"SELECT id, message, picture FROM outbox WHERE {FREE} ORDER BY urgent DESC, id", (_iso(now),)
        )
        return [(number, _outgoing(body, picture)) for number, body, picture in rows]

    def sending(self, *ids: int) -> None:
        """About to leave: should the process end now, their fate is unknown."""
        self._set(ids, "state = 'sending'")

    def part(self, number: int, key: str | None) -> None:
        """One piece of a message is in the chat."""
        with self.store.unhurried():
            self.store.conn.execute("UPDATE outbox SET parts = parts + 1 WHERE id = ?", (number,))
            self._remember(number, key)

    def sent(self, number: int, key: str | None = None) -> None:
        """All of it is in the chat. key: its (last) message there."""
        with self.store.unhurried():
            self._remember(number, key)
            self._set([number], "state = 'sent', picture = NULL")

    def waits(self, number: int, until: datetime) -> None:
        """Surely not sent: try again, not before `until`."""
        self._set([number], "state = 'waiting', not_before = ?", _iso(until))

    def unknown(self, number: int, now: datetime) -> bool:
        """Nobody knows whether it arrived: once more after a pause; a second time it is left at that.

        Gives whether it will be sent again.
        """
        with self.store.transaction():
            (unknowns,) = self.store.conn.execute(
                "UPDATE outbox SET state = 'unknown', unknowns = unknowns + 1, not_before = ? WHERE id = ? "
                "RETURNING unknowns",
                (_iso(now + PAUSE_UNKNOWN), number),
            ).fetchone()
            if unknowns > 1:
                self._set([number], "state = 'sent', picture = NULL, why = 'sent twice, both of unknown fate'")
        return bool(unknowns <= 1)

    def failed(self, number: int, why: str) -> None:
        """It cannot be sent, and trying again would not help."""
        self._set([number], "state = 'failed', picture = NULL, why = ?", why)

    def doubt(self, now: datetime) -> int:
        """At a start: what was leaving when the process ended is of unknown fate. Gives how many."""
        with self.store.transaction():
            found = self.store.conn.execute("SELECT id FROM outbox WHERE state = 'sending'").fetchall()
            for (number,) in found:
                if self.unknown(number, now):  # the pause was the time we were away
                    self._set([number], "not_before = ''")
        return len(found)

    def message(self, key: str) -> Outgoing | None:
        """The message of ours that has this key in the chat: what an answer to it is about."""
        row = self.store.conn.execute(
            "SELECT message FROM outbox JOIN sent ON sent.outbox = outbox.id WHERE sent.key = ?", (key,)
        ).fetchone()
        return _outgoing(row[0], None) if row else None

    def next_at(self) -> datetime | None:
        """When the first message that is held back may be sent."""
        (first,) = self.store.conn.execute(
            f"SELECT min(not_before) FROM outbox WHERE state IN {LEAVING} AND not_before <> ''"
        ).fetchone()
        return datetime.fromisoformat(first) if first else None

    def _remember(self, number: int, key: str | None) -> None:
        if key:
            self.store.conn.execute("INSERT OR REPLACE INTO sent VALUES (?, ?)", (key, number))

    def _set(self, ids: Sequence[int], change: str, *values: Any) -> None:
        with self.store.unhurried():
            self.store.conn.executemany(f"UPDATE outbox SET {change} WHERE id = ?", [(*values, i) for i in ids])


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
    """All of a barn's post in one hand, over one store. kept: the values beside it."""

    def __init__(self, store: Store) -> None:
        super().__init__(store)
        self.kept = Kept(store)

    def begin(self, now: datetime) -> list[int]:
        """What a start has to settle: unknown sendings, a message that kills, old rows. Gives updates set aside."""
        with self.store.transaction():
            self.doubt(now)
            self._tidy(now)
            return self.suspect()

    def setting(self, name: str) -> Any:
        """A small value as JSON keeps it; None where it was never set."""
        found = self.kept.get(f"setting:{name}")
        return None if found is None else json.loads(found)

    def set(self, name: str, value: Any) -> None:
        """Keep a small value."""
        self.kept.put(f"setting:{name}", json.dumps(value).encode())

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
        old = _iso(now - timedelta(days=KEPT_DAYS))
        over = "SELECT id FROM outbox WHERE at < ? AND state IN ('sent', 'failed')"
        self.store.conn.execute(f"DELETE FROM sent WHERE outbox IN ({over})", (old,))
        self.store.conn.execute(f"DELETE FROM outbox WHERE id IN ({over})", (old,))
        self.store.conn.execute(
            "DELETE FROM inbox WHERE state = 'done' AND arrival <= (SELECT max(arrival) FROM inbox) - ?",
            (KEPT_UPDATES,),
        )


def _outgoing(body: str, picture: bytes | None) -> Outgoing:
    return replace(OUTGOING.validate_json(body), picture=picture)


def _iso(at: datetime) -> str:
    return at.astimezone(UTC).isoformat(timespec="microseconds")
