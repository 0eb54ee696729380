"""Messages recorded before they are sent, each with how far its sending got; what may have arrived says so."""

from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta

from pydantic import TypeAdapter

from bot.message import Outgoing
from bot.store import Store

PAUSE_UNKNOWN = timedelta(seconds=15)  # before a message of unknown fate is sent once more
TALK = frozenset({"answer", "ask", "react"})  # said twice after a power cut, these harm nobody
LEAVING = "('waiting', 'unknown')"
FREE = f"""state IN {LEAVING} AND (addressee, urgent) NOT IN
    (SELECT addressee, urgent FROM outbox WHERE state IN {LEAVING} AND not_before > ?)"""

OUTGOING: TypeAdapter[Outgoing] = TypeAdapter(Outgoing)


@dataclass(frozen=True)
class Letter:
    """A message on its way. parts: pieces of it already in the chat. repeat: an earlier sending may have arrived."""

    id: int
    outgoing: Outgoing
    parts: int = 0
    repeat: bool = False


class Outbox:
    """What the bot says, from the barn's day to the chat."""

    def __init__(self, store: Store) -> None:
        self.store = store

    def put(self, outgoing: Outgoing, at: datetime) -> int:
        """Record a message to be sent. Call it in the transaction of what caused it."""
        body = OUTGOING.dump_json(outgoing, exclude={"picture"}).decode()
        with self.store.transaction():
            if outgoing.edits:
                self._supersede(outgoing.edits)
            number = self.store.conn.execute(
                "INSERT INTO outbox (at, addressee, urgent, message, picture) VALUES (?, ?, ?, ?, ?)",
                (iso(at), outgoing.to, outgoing.urgent, body, outgoing.picture),
            ).lastrowid
        assert number is not None  # an INSERT always has one
        return number

    def last(self) -> int:
        """The number of the message recorded last."""
        return int(self.store.conn.execute("SELECT coalesce(max(id), 0) FROM outbox").fetchone()[0])

    def after_the_others(self, since: int) -> None:
        """What was recorded after `since` goes when everybody else has been answered; alarms as ever."""
        with self.store.transaction():
            self.store.conn.execute("UPDATE outbox SET turn = 1 WHERE id > ? AND urgent = 0", (since,))

    def lanes(self, now: datetime) -> list[str]:
        """The addressees for whom something may be sent now."""
        rows = self.store.conn.execute(f"SELECT DISTINCT addressee FROM outbox WHERE {FREE}", (iso(now),))
        return [addressee for (addressee,) in rows]

    def next_letter(self, addressee: str, now: datetime) -> Letter | None:
        """What goes to them next: urgent first, else in order; None where nothing may be sent now.

        While a message waits for another try, later ones to the same addressee wait behind it, but for urgent ones.
        """
        row = self.store.conn.execute(
            f"SELECT id, message, picture, parts, unknowns FROM outbox WHERE addressee = ? AND {FREE} "
            "ORDER BY urgent DESC, turn, id LIMIT 1",
            (addressee, iso(now)),
        ).fetchone()
        return row and Letter(row[0], _outgoing(row[1], row[2]), row[3], repeat=row[4] > 0)

    def unsent(self, now: datetime) -> list[tuple[int, Outgoing]]:
        """All that may be sent now as pairs (id, message), urgent first, else in order."""
        rows = self.store.conn.execute(
            f"SELECT id, message, picture FROM outbox WHERE {FREE} ORDER BY urgent DESC, turn, id", (iso(now),)
        )
        return [(number, _outgoing(body, picture)) for number, body, picture in rows]

    def sending(self, letter: Letter) -> None:
        """About to leave: should the process end now, its fate is unknown. A post knows that even after a power cut."""
        if letter.outgoing.kind in TALK:
            self._set(letter.id, "state = 'sending'")
        else:
            with self.store.transaction():
                self._set(letter.id, "state = 'sending'")

    def part(self, number: int, key: str | None) -> None:
        """One piece of a message is in the chat."""
        self._remember(number, key)
        self._set(number, "parts = parts + 1")

    def sent(self, number: int, key: str | None = None) -> None:
        """All of it is in the chat. key: its (last) message there."""
        self._remember(number, key)
        self._set(number, "state = 'sent', picture = NULL")

    def waits(self, number: int, until: datetime) -> None:
        """Surely not sent: try again, not before `until`."""
        self._set(number, "state = 'waiting', not_before = ?", iso(until))

    def unknown(self, number: int, now: datetime) -> bool:
        """Nobody knows whether it arrived: once more after a pause; a second time it is left at that.

        Gives whether it will be sent again.
        """
        with self.store.transaction():
            (unknowns,) = self.store.conn.execute(
                "UPDATE outbox SET state = 'unknown', unknowns = unknowns + 1, not_before = ? WHERE id = ? "
                "RETURNING unknowns",
                (iso(now + PAUSE_UNKNOWN), number),
            ).fetchone()
            if unknowns > 1:
                self._set(number, "state = 'sent', picture = NULL, why = 'sent twice, both of unknown fate'")
        return bool(unknowns <= 1)

    def failed(self, number: int, why: str) -> None:
        """It cannot be sent, and trying again would not help."""
        self._set(number, "state = 'failed', picture = NULL, why = ?", why)

    def doubt(self, now: datetime) -> int:
        """At a start: what was leaving when the process ended is of unknown fate. Gives how many."""
        with self.store.transaction():
            found = self.store.conn.execute("SELECT id FROM outbox WHERE state = 'sending'").fetchall()
            for (number,) in found:
                if self.unknown(number, now):  # the pause was the time we were away
                    self._set(number, "not_before = ''")
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

    def _supersede(self, key: str) -> None:
        """Of several changes of one message's buttons that wait, the last is enough."""
        self.store.conn.execute(
            "UPDATE outbox SET state = 'sent', why = 'a later one took its place' "
            "WHERE state = 'waiting' AND json_extract(message, '$.edits') = ?",
            (key,),
        )

    def _remember(self, number: int, key: str | None) -> None:
        if key:
            self.store.mark("INSERT OR REPLACE INTO sent VALUES (?, ?)", (key, number))

    def _set(self, number: int, change: str, *values: str) -> None:
        self.store.mark(f"UPDATE outbox SET {change} WHERE id = ?", (*values, number))


def _outgoing(body: str, picture: bytes | None) -> Outgoing:
    return replace(OUTGOING.validate_json(body), picture=picture)


def iso(at: datetime) -> str:
    """An instant as the tables have it: UTC, one length, so that text sorts by time."""
    return at.astimezone(UTC).isoformat(timespec="microseconds")
