"""The tables of a barn's file, oldest change first. An applied step is never renamed, reordered or edited.

Imported only where a file is opened for writing, so that reading costs no start-up time.
"""

import sys

_IDLE = sys.modules.setdefault("pandas", None)  # type: ignore[arg-type]  # loaded where installed, never used: 36 MB
from sqlite_utils import Database  # noqa: E402
from sqlite_utils.migrations import Migrations  # noqa: E402

if _IDLE is None:
    del sys.modules["pandas"]

__all__ = ["STEPS", "Database"]

STEPS = Migrations("haybell")


@STEPS()
def m001_first_tables(db: Database) -> None:
    """The ledger with its sheets; what came in; what goes out; and a few kept values."""
    for table in (_ENTRIES, _SHEETS, _INBOX, _HEARD, _OUTBOX, _SENT, _KEPT):
        db.execute(table)
    db.execute(_ENTRIES_ONCE)
    db.execute("CREATE INDEX inbox_waiting ON inbox (arrival) WHERE state = 'waiting'")
    db.execute(
        "CREATE INDEX outbox_unsent ON outbox (addressee, urgent DESC, turn, id) WHERE state IN ('waiting', 'unknown')"
    )
    db.execute("CREATE INDEX outbox_held ON outbox (not_before) WHERE state IN ('waiting', 'unknown')")


_ENTRIES = """
CREATE TABLE entries (
  number INTEGER PRIMARY KEY,
  at TEXT NOT NULL,               -- ISO, UTC
  who TEXT NOT NULL,
  key TEXT NOT NULL,              -- the message's key, '' for the bot's own
  part INTEGER NOT NULL,          -- place of the event within its message
  kind TEXT NOT NULL,
  event TEXT NOT NULL,            -- JSON
  text TEXT NOT NULL,
  undone_by INTEGER REFERENCES entries (number)
) STRICT"""

# an undo needs no such guard: what is undone already cannot be undone again
_ENTRIES_ONCE = """
CREATE UNIQUE INDEX entries_once ON entries (key, part) WHERE key <> '' AND kind <> 'undo' AND undone_by IS NULL"""

_SHEETS = """
CREATE TABLE sheets (
  number INTEGER PRIMARY KEY REFERENCES entries (number),
  sheet BLOB NOT NULL             -- JSON, deflated
) STRICT"""

_INBOX = """
CREATE TABLE inbox (
  arrival INTEGER PRIMARY KEY,
  update_id INTEGER NOT NULL UNIQUE,
  raw TEXT NOT NULL,              -- JSON; emptied once handled
  state TEXT NOT NULL DEFAULT 'waiting',    -- waiting | done | quarantined
  starts INTEGER NOT NULL DEFAULT 0,        -- how often a start found it still waiting
  why TEXT NOT NULL DEFAULT ''
) STRICT"""

_HEARD = """
CREATE TABLE heard (
  key TEXT PRIMARY KEY,
  digest TEXT NOT NULL
) STRICT"""

_OUTBOX = """
CREATE TABLE outbox (
  id INTEGER PRIMARY KEY,
  at TEXT NOT NULL,               -- ISO, UTC
  addressee TEXT NOT NULL,        -- 'group', or a person's name
  urgent INTEGER NOT NULL,
  turn INTEGER NOT NULL DEFAULT 0,          -- 1: after the others' answers
  message TEXT NOT NULL,          -- JSON, without the picture
  picture BLOB,                   -- emptied once sent
  state TEXT NOT NULL DEFAULT 'waiting',    -- waiting | sending | unknown | sent | failed
  parts INTEGER NOT NULL DEFAULT 0,         -- pieces already sent of a message that needs several
  unknowns INTEGER NOT NULL DEFAULT 0,      -- sendings whose outcome nobody knows
  not_before TEXT NOT NULL DEFAULT '',
  why TEXT NOT NULL DEFAULT ''
) STRICT"""

_SENT = """
CREATE TABLE sent (
  key TEXT PRIMARY KEY,           -- the message's key in the chat
  outbox INTEGER NOT NULL REFERENCES outbox (id)
) STRICT"""

_KEPT = """
CREATE TABLE kept (
  name TEXT PRIMARY KEY,
  value BLOB NOT NULL
) STRICT"""
