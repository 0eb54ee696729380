"""Updates as they came, committed before the chat hears that we have them; each acted on once."""

from collections.abc import Iterable
from dataclasses import dataclass

from bot.store import Store

STARTS_ALLOWED = 3  # an update still first in line at more starts than this is taken to be what kills the process


@dataclass(frozen=True)
class Waiting:
    """An update that was heard and not yet acted on. raw: JSON as the chat sent it."""

    update_id: int
    raw: str


class Inbox:
    """What people said, from the chat to the barn's day."""

    def __init__(self, store: Store) -> None:
        self.store = store

    def hold(self, updates: Iterable[tuple[int, str]]) -> None:
        """Keep (update id, raw JSON) pairs; one that is known already is passed over.

        Safe from a kill at once; from a power cut with the next commit, which has to come before they are confirmed.
        """
        self.store.mark("INSERT OR IGNORE INTO inbox (update_id, raw) VALUES (?, ?)", *updates)

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
        """Once after a start, just before acting: set aside the update that was first in line at too many starts.

        It may be what kills us.

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
