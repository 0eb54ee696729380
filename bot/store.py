"""One SQLite file a barn: opened, migrated, one owner, one transaction at a time.

WAL with a full sync at each commit: what has been answered survives a kill and a power cut.
"""

import hashlib
import os
import re
import sqlite3
import sys
import threading
import unicodedata
from collections.abc import Iterator, Sequence
from contextlib import closing, contextmanager, suppress
from pathlib import Path

from bot.problems import Failed

SCHEMA = 1  # number of steps in bot/migrations.py
OURS = 0x48415942  # application_id of every file this program made: "HAYB"


def data_path(barn_name: str, data_dir: Path | None = None) -> Path:
    """Where a barn's file is: a safe name from any barn's name, in `data_dir` or the user's data folder.

    The digest keeps two barns apart whose names differ only in what a file name cannot hold.
    """
    if data_dir is None:
        from platformdirs import user_data_path  # not paid for where --data is given

        data_dir = user_data_path("haybell")
    plain = unicodedata.normalize("NFKD", barn_name).encode("ascii", "ignore").decode().lower()
    slug = re.sub(r"[^a-z0-9]+", "-", plain).strip("-")[:40] or "barn"
    digest = hashlib.sha256(barn_name.encode("utf-8", "surrogatepass")).hexdigest()[:8]
    return data_dir / f"{slug}-{digest}.sqlite"


class Store:
    """An open file: `conn` for statements, `transaction()` around every write.

    May be used from any thread; a transaction belongs to one thread at a time. rollbacks: how many writes were taken
    back, so that a cache above knows when to forget.
    """

    def __init__(self, conn: sqlite3.Connection, path: Path | None, owner: "Owner | None" = None) -> None:
        self.conn = conn
        self.path = path
        self.rollbacks = 0
        self._owner = owner
        self._turn = threading.RLock()

    @classmethod
    def open(cls, path: Path) -> "Store":
        """The barn's file, made or migrated where needed, and owned by this process until closed.

        Failed where another process owns it, it is damaged, of a newer version, or cannot be written: it is then left
        as it was.
        """
        with told(path):
            private(path)
            owner = claim(path)
            try:
                return cls(_ready(path), path, owner)
            except BaseException:
                owner.close()
                raise

    @classmethod
    def read(cls, path: Path) -> "Store | None":
        """The barn's file for reading beside its owner; None where nothing has been kept yet."""
        if not path.exists() or path.stat().st_size == 0:
            return None
        with told(path):
            conn = _connect_for_reading(path)
            version = _checked(conn, path)
            if version == SCHEMA:
                return cls(conn, path)
            with closing(conn):  # an older file: brought up to date in memory, the file stays as it is
                store = cls(sqlite3.connect(":memory:", isolation_level=None, check_same_thread=False), path)
                conn.backup(store.conn)
            _migrate(store.conn)
            return store

    @classmethod
    def memory(cls) -> "Store":
        """A store that lasts as long as the process."""
        conn = sqlite3.connect(":memory:", isolation_level=None, check_same_thread=False)
        _migrate(conn)
        return cls(conn, None)

    @contextmanager
    def transaction(self) -> Iterator[None]:
        """All writes inside are one commit, or none of them happened. One within another joins it."""
        with self._turn:
            if self.conn.in_transaction:
                yield
                return
            with told(self.path):
                self.conn.execute("BEGIN IMMEDIATE")
                try:
                    yield
                    self.conn.execute("COMMIT")
                except BaseException:
                    self.rollbacks += 1
                    if self.conn.in_transaction:
                        self.conn.execute("ROLLBACK")
                    raise

    @contextmanager
    def attempt(self) -> Iterator[None]:
        """A part of a transaction that may fail by itself: its writes are then taken back, the rest stands."""
        with self._turn, told(self.path):
            self.conn.execute("SAVEPOINT attempt")
            try:
                yield
            except BaseException:
                self.rollbacks += 1
                if self.conn.in_transaction:  # an error may have ended all of it
                    self.conn.execute("ROLLBACK TO attempt")
                    self.conn.execute("RELEASE attempt")
                raise
            self.conn.execute("RELEASE attempt")

    def mark(self, statement: str, *rows: Sequence[object]) -> None:
        """A write, once for each row, that survives a kill at once, and a power cut from the next commit on.

        It waits for no disk: for marks that only say how far something got, and for what the next commit settles.
        """
        with self._turn, told(self.path):
            if self.conn.in_transaction:
                self.conn.executemany(statement, rows)
                return
            self.conn.execute("PRAGMA synchronous = NORMAL")
            try:
                self.conn.executemany(statement, rows)
            finally:
                self.conn.execute("PRAGMA synchronous = FULL")

    def rest(self) -> None:
        """Nothing is asked of it for a while: let go of what it keeps in memory of the file."""
        with self._turn, told(self.path):
            self.conn.execute("PRAGMA shrink_memory")

    def close(self) -> None:
        """Give the file back."""
        with self._turn:
            self.conn.close()
            if self._owner:
                self._owner.close()


@contextmanager
def told(path: Path | None) -> Iterator[None]:
    """What SQLite or the system says, as one line for people."""
    try:
        yield
    except (sqlite3.Error, OSError) as error:
        raise Failed(f"{path or 'the data in memory'}: {_plainly(str(error))}") from error


PLAIN = {
    "disk is full": "the disk is full; nothing was changed. Free some space, it then goes on by itself",
    "no space left": "the disk is full; nothing was changed. Free some space, it then goes on by itself",
    "readonly": "may not be written; give this user the right to write the file and its folder",
    "read-only": "may not be written; give this user the right to write the file and its folder",
    "permission denied": "may not be written; give this user the right to write the file and its folder",
    "unable to open": "cannot be opened; check that the folder exists and that this user may write there",
    "locked": "in use by another program; try again when it has ended",
    "malformed": "damaged; it was left as it is. Bring back a copy with `haybell restore`",
    "not a database": "damaged or not a data file; it was left as it is. Bring back a copy with `haybell restore`",
}


def _plainly(said: str) -> str:
    found = next((plain for word, plain in PLAIN.items() if word in said.lower()), None)
    return found or f"{said}; if it stays so, bring back a copy with `haybell restore`"


def private(path: Path) -> None:
    """Make a file and its folder, readable by this user only, where they are not there."""
    path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    if not path.exists():
        os.close(os.open(path, os.O_CREAT | os.O_WRONLY, 0o600))


class Owner:
    """The right to a barn's file, until closed; the system takes it back when the process dies."""

    def __init__(self, lock: int) -> None:
        self._lock = lock

    def close(self) -> None:
        """Give it up."""
        if self._lock >= 0:
            os.close(self._lock)
            self._lock = -1


def claim(path: Path) -> Owner:
    """Own a barn's file by a lock on a file beside it; Failed where another process does."""
    beside = path.with_name(path.name + "-owner")
    private(beside)
    lock = os.open(beside, os.O_RDWR)
    try:
        _lock(lock)
    except OSError as error:
        os.close(lock)
        raise Failed(
            f"{path}: another haybell is already running on this data; stop it first, or use another --data"
        ) from error
    return Owner(lock)


def _lock(file: int) -> None:
    """Lock an open file for this process, at once or OSError. A lock of SQLite's own would cost 100 kB a barn."""
    if sys.platform == "win32":
        import msvcrt

        msvcrt.locking(file, msvcrt.LK_NBLCK, 1)
    else:
        import fcntl

        fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)


def _ready(path: Path) -> sqlite3.Connection:
    """A connection to a checked and migrated file."""
    with closing(_connect(path)) as conn:
        version = _checked(conn, path)
        conn.execute("PRAGMA journal_mode = WAL")
        conn.execute("BEGIN IMMEDIATE")  # what cannot be written is found now, not at six in the morning
        conn.execute(f"PRAGMA user_version = {version}")
        conn.execute("COMMIT")
        if version < SCHEMA:
            _migrate_safely(conn, path, version)
        conn.execute("INSERT OR IGNORE INTO kept VALUES ('whose', ?)", (path.name.encode(),))
    return _connect(path)  # afresh: what checking and migrating took of memory is given back


def _connect(path: Path) -> sqlite3.Connection:
    conn = sqlite3.connect(path, timeout=5, isolation_level=None, check_same_thread=False, cached_statements=16)
    conn.execute("PRAGMA synchronous = FULL")
    conn.execute("PRAGMA foreign_keys = ON")
    conn.execute("PRAGMA cache_size = -64")  # KiB: a hundred barns share a small computer
    return conn


def _connect_for_reading(path: Path) -> sqlite3.Connection:
    address = path.absolute().as_uri() + "?mode=ro"
    conn = sqlite3.connect(address, uri=True, timeout=5, isolation_level=None, check_same_thread=False)
    try:
        conn.execute("PRAGMA user_version").fetchone()
    except sqlite3.OperationalError:  # a folder that cannot be written, and no owner: nothing can change under us
        conn.close()
        conn = sqlite3.connect(address + "&immutable=1", uri=True, isolation_level=None, check_same_thread=False)
    return conn


def _checked(conn: sqlite3.Connection, path: Path) -> int:
    """How many steps the file has seen. Failed where it is not ours, damaged, or from a newer version."""
    (version,) = conn.execute("PRAGMA user_version").fetchone()
    (ours,) = conn.execute("PRAGMA application_id").fetchone()
    (tables,) = conn.execute("SELECT count(*) FROM sqlite_master").fetchone()
    if tables and ours != OURS:
        raise Failed(f"{path}: not a data file of haybell; it was left as it is. Choose another --data")
    if version > SCHEMA:
        raise Failed(f"{path}: written by a newer haybell; it was left as it is. Update this one")
    (sound,) = conn.execute("PRAGMA quick_check(1)").fetchone()
    if sound != "ok":
        raise sqlite3.DatabaseError("malformed")
    return int(version)


def _migrate_safely(conn: sqlite3.Connection, path: Path, version: int) -> None:
    """Migrate with a copy of the old file beside, kept until the new one is proven and put back if it is not."""
    kept = path.with_name(f"{path.name}-before-{SCHEMA}") if version else None
    if kept:
        private(kept)
        with closing(sqlite3.connect(kept)) as copy:
            conn.backup(copy)
    try:
        _migrate(conn)
        if conn.execute("PRAGMA integrity_check").fetchone() != ("ok",):
            raise Failed(f"{path}: could not be brought to this version")
    except BaseException:
        if kept:
            with closing(sqlite3.connect(kept)) as copy:
                copy.backup(conn)
        raise
    if kept:
        with suppress(OSError):
            kept.unlink()


def _migrate(conn: sqlite3.Connection) -> None:
    from bot.migrations import STEPS, Database

    STEPS.apply(Database(conn))
    conn.execute(f"PRAGMA application_id = {OURS}")
    conn.execute(f"PRAGMA user_version = {SCHEMA}")
