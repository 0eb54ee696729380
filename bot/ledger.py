"""Events appended, never edited; one message counts once; the sheet of each post kept beside."""

import zlib
from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import UTC, datetime
from functools import cache
from typing import Any

from pydantic import TypeAdapter, ValidationError

from bot.events import KINDS, Entry, Event, Undo
from bot.problems import Failed
from bot.store import Store


class Ledger:
    """A barn's events in the order they were told. The whole list is kept in memory: a winter is a few thousand."""

    def __init__(self, store: Store) -> None:
        self.store = store
        self._entries: list[Entry] = []
        self._loaded_at: int | None = None  # Store.rollbacks when `_entries` was read

    def append(self, at: datetime, who: str, key: str, events: Sequence[Event], text: str = "") -> list[Entry]:
        """Record events, all or none. A message that already stands adds nothing and gives []: tell all of it at once.

        at: aware. key: the message's key, "" for the bot's own, which is never taken as a repeat.
        """
        added: list[Entry] = []
        with self.store.transaction():
            entries = self._all()
            if self._stands(key, events):
                return []
            for part, event in enumerate(events):
                row = (_iso(at), who, key, part, event.kind, _dump(event), text)
                number = self.store.conn.execute(
                    "INSERT INTO entries (at, who, key, part, kind, event, text) VALUES (?, ?, ?, ?, ?, ?, ?)", row
                ).lastrowid
                assert number is not None  # an INSERT always has one
                added.append(Entry(number, at.astimezone(UTC), who, key, event, text))
            entries.extend(added)
        return added

    def undo(self, at: datetime, who: str, key: str, numbers: Sequence[int], text: str = "") -> list[Entry]:
        """Take back entries by recording an Undo; what an undone Undo had taken back stands again.

        Gives the entries that were taken back. Numbers unknown or already undone are passed over; where none is left
        nothing is recorded.
        """
        with self.store.transaction():
            entries = self._all()
            back = [e for e in entries if e.number in set(numbers) and e.undone_by is None]
            added = self.append(at, who, key, [Undo(tuple(e.number for e in back))], text) if back else []
            if not added:
                return []
            by = added[0].number
            for entry in back:
                self._mark(entry, by)
                freed = [e for e in entries if e.undone_by == entry.number]
                anew = {e.key for e in freed if self._stands(e.key, [e.event])}  # told again meanwhile
                for one in freed:
                    if one.key not in anew:
                        self._mark(one, None)
        return back

    def entries(self, since: datetime | None = None) -> list[Entry]:
        """Every entry, oldest first, undone ones too; since: aware, only those from then on."""
        found = self._all()
        return list(found) if since is None else [e for e in found if e.at >= since]

    def latest(self, count: int) -> list[Entry]:
        """The last entries, oldest first."""
        return self._all()[-count:]

    def by_key(self, key: str) -> list[Entry]:
        """The entries that one message made."""
        return [e for e in self._all() if e.key == key]

    def keep_sheet(self, number: int, text: str) -> None:
        """Keep the plan as posted (`sheet.dump`) beside the entry of its post."""
        with self.store.transaction():
            self.store.conn.execute(
                "INSERT OR REPLACE INTO sheets VALUES (?, ?)", (number, zlib.compress(text.encode()))
            )

    def sheet(self, number: int) -> str | None:
        """The plan kept beside this entry (`sheet.load` reads it)."""
        row = self.store.conn.execute("SELECT sheet FROM sheets WHERE number = ?", (number,)).fetchone()
        return zlib.decompress(row[0]).decode() if row else None

    def sheets(self, since: datetime) -> list[str]:
        """The plans kept beside entries from then on, oldest first."""
        first = next((e.number for e in self._all() if e.at >= since), None)
        if first is None:
            return []
        rows = self.store.conn.execute("SELECT sheet FROM sheets WHERE number >= ? ORDER BY number", (first,))
        return [zlib.decompress(sheet).decode() for (sheet,) in rows]

    def each_sheet(self, most: int) -> Iterator[bytes]:
        """The last so many plans kept, oldest first, one at a time."""
        rows = self.store.conn.execute(
            "SELECT sheet FROM sheets WHERE number > coalesce((SELECT number FROM sheets ORDER BY number DESC "
            "LIMIT 1 OFFSET ?), 0) ORDER BY number",
            (most,),
        )
        return (zlib.decompress(sheet) for (sheet,) in rows)

    def latest_sheet(self) -> str | None:
        """The plan kept last."""
        row = self.store.conn.execute("SELECT sheet FROM sheets ORDER BY number DESC LIMIT 1").fetchone()
        return zlib.decompress(row[0]).decode() if row else None

    def _stands(self, key: str, events: Sequence[Event]) -> bool:
        if not key or all(isinstance(event, Undo) for event in events):
            return False
        found = self.store.conn.execute(
            "SELECT 1 FROM entries WHERE key = ? AND key <> '' AND kind <> 'undo' AND undone_by IS NULL LIMIT 1", (key,)
        )
        return found.fetchone() is not None

    def _mark(self, entry: Entry, by: int | None) -> None:
        self.store.conn.execute("UPDATE entries SET undone_by = ? WHERE number = ?", (by, entry.number))
        place = next(i for i, e in enumerate(self._entries) if e.number == entry.number)
        self._entries[place] = replace(entry, undone_by=by)

    def _all(self) -> list[Entry]:
        """The list in memory, read again where a write was taken back since."""
        if self._loaded_at != self.store.rollbacks:
            rows = self.store.conn.execute(
                "SELECT number, at, who, key, kind, event, text, undone_by FROM entries ORDER BY number"
            )
            self._entries = [_entry(*row) for row in rows]
            self._loaded_at = self.store.rollbacks
        return self._entries


def _iso(at: datetime) -> str:
    return at.astimezone(UTC).isoformat()


@cache
def _adapter(kind: str) -> TypeAdapter[Any]:
    return TypeAdapter(KINDS[kind])


def _dump(event: Event) -> str:
    return _adapter(event.kind).dump_json(event).decode()


def _entry(number: int, at: str, who: str, key: str, kind: str, event: str, text: str, undone_by: int | None) -> Entry:
    try:
        fact: Event = _adapter(kind).validate_json(event)
    except (KeyError, ValidationError) as error:
        raise Failed(
            f"ledger entry {number} ({kind}) cannot be read; bring back a copy with `haybell restore`"
        ) from error
    return Entry(number, datetime.fromisoformat(at), who, key, fact, text, undone_by)
