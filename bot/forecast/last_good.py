"""The last good answer of each source: all that a reply may use. It never fetches.

Answers are kept as bytes on a shelf that outlives the process; what they say is read once and remembered.
"""

import json
import zlib
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from datetime import datetime
from typing import Protocol

from bot.forecast.readings import Parsed, Unreadable

SHELF_NAME = "forecast "


class Shelf(Protocol):
    """Named bytes that last: the store's, or a dict for a process that forgets."""

    def get(self, name: str, /) -> bytes | None:
        """The bytes last put under this name; None where there are none."""
        ...

    def put(self, name: str, value: bytes, /) -> None:
        """Keep these bytes under this name instead of the old ones."""
        ...


class Forgetful(dict[str, bytes]):
    """A shelf that lasts as long as the process."""

    def put(self, name: str, value: bytes) -> None:
        """Keep until the process ends."""
        self[name] = value


@dataclass(frozen=True)
class Answer:
    """One answer of a source. place: where it is for. expires, last_modified: for the next asking."""

    place: str
    fetched_at: datetime
    body: bytes = field(repr=False)
    expires: datetime | None = None
    last_modified: str | None = None


@dataclass(frozen=True)
class Read:
    """An answer without its bytes, with what they say."""

    answer: Answer
    parsed: Parsed


class LastGood:
    """The answers of one barn's sources."""

    def __init__(self, shelf: Shelf | None = None) -> None:
        self.shelf: Shelf = Forgetful() if shelf is None else shelf
        self._read: dict[str, tuple[bytes, Read | None]] = {}

    def get(self, source: str) -> Answer | None:
        """The source's last good answer as it came; None where there is none that can be read back."""
        kept = self.shelf.get(SHELF_NAME + source)
        return None if kept is None else _load(kept)

    def put(self, source: str, answer: Answer) -> None:
        """Keep an answer instead of the source's last one."""
        self.shelf.put(SHELF_NAME + source, _dump(answer))

    def read(self, source: str, parse: Callable[[bytes], Parsed]) -> Read | None:
        """The source's last good answer with what it says, parsed once; None where there is none."""
        kept = self.shelf.get(SHELF_NAME + source)
        if kept is None:
            return None
        head = kept.partition(b"\n")[0]
        if source not in self._read or self._read[source][0] != head:
            self._read[source] = head, _read(kept, parse)
        return self._read[source][1]


def _read(kept: bytes, parse: Callable[[bytes], Parsed]) -> Read | None:
    answer = _load(kept)
    try:
        return Read(replace(answer, body=b""), parse(answer.body)) if answer else None
    except Unreadable:  # kept by an older version that read it otherwise
        return None


def _dump(answer: Answer) -> bytes:
    """One line of JSON, unlike that of any other answer, then the body as it came."""
    head = {
        "sum": zlib.crc32(answer.body),
        "place": answer.place,
        "fetched_at": answer.fetched_at.isoformat(),
        "expires": answer.expires and answer.expires.isoformat(),
        "last_modified": answer.last_modified,
    }
    return json.dumps(head).encode() + b"\n" + answer.body


def _load(kept: bytes) -> Answer | None:
    head, _, body = kept.partition(b"\n")
    try:
        said = json.loads(head)
        expires = said["expires"] and datetime.fromisoformat(said["expires"])
        return Answer(said["place"], datetime.fromisoformat(said["fetched_at"]), body, expires, said["last_modified"])
    except (ValueError, KeyError, TypeError):
        return None
