"""A consistent copy while the bot runs; and back again, checked before it replaces."""

import os
import sqlite3
from contextlib import ExitStack, closing
from datetime import UTC, datetime
from pathlib import Path

from bot.problems import Failed, WrongInput
from bot.store import OURS, Store, claim, private, told


def backup(path: Path, dest: Path) -> Path:
    """Copy a barn's file as it is at one instant, also while its owner writes. Gives where the copy is.

    dest: a file, or a folder (the copy then has the file's own name). The copy appears whole or not at all, and an
    older copy is replaced only by a sound one.
    """
    if not path.exists():
        raise WrongInput(f"{path}: nothing has been kept yet, so there is nothing to copy")
    place = dest / path.name if dest.is_dir() else dest
    if place.exists() and place.samefile(path):
        raise WrongInput(f"{place}: that is the data itself; choose another place for the copy")
    beside = place.with_name(place.name + ".part")
    with told(dest):
        _fresh(beside)
        try:
            with closing(sqlite3.connect(f"{path.absolute().as_uri()}?mode=ro", uri=True)) as source:
                _copy(source, beside)
            _sound(beside)
            beside.replace(place)
        finally:
            beside.unlink(missing_ok=True)
    return place


def restore(source: Path, path: Path, now: datetime | None = None) -> str:
    """Put a copy in the place of a barn's file; what was there is kept beside it. Gives a line that says where.

    Failed, and nothing changed, where the copy is damaged, no data file, from a newer version, of another barn, or
    where a running bot owns the file.
    """
    if not source.is_file():
        raise WrongInput(f"{source}: no such file; give the file that `haybell backup` made")
    beside = path.with_name(path.name + ".part")
    with told(source), ExitStack() as tidy:
        private(path)
        tidy.enter_context(closing(claim(path)))
        tidy.callback(_away, beside)
        _fresh(beside)
        with closing(sqlite3.connect(f"{source.absolute().as_uri()}?mode=ro", uri=True)) as found:
            _copy(found, beside)
        _proven(beside, source, path.name)
        kept = _exchange(path, beside, now or datetime.now(UTC))
    return f"restored {path}" + (f"; what was there is kept as {kept}" if kept else "")


def _fresh(path: Path) -> None:
    """An empty file for this user only."""
    path.unlink(missing_ok=True)
    os.close(os.open(path, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600))


def _copy(source: sqlite3.Connection, to: Path) -> None:
    with closing(sqlite3.connect(to)) as copy:
        source.backup(copy)
        copy.execute("PRAGMA journal_mode = DELETE")  # one file, without others beside it


def _sound(path: Path) -> None:
    with closing(sqlite3.connect(path)) as conn:
        if conn.execute("PRAGMA integrity_check").fetchone() != ("ok",):
            raise sqlite3.DatabaseError("malformed")


def _proven(copy: Path, source: Path, whose: str) -> None:
    """Sound, ours, of a version we can read, and of this barn. whose: the name of the barn's file."""
    _sound(copy)
    with closing(sqlite3.connect(copy)) as conn:
        if conn.execute("PRAGMA application_id").fetchone() != (OURS,):
            raise Failed(f"{source}: not a data file of haybell; nothing was changed")
        said = conn.execute("SELECT value FROM kept WHERE name = 'whose'").fetchone()
    if said and bytes(said[0]).decode() != whose:
        raise Failed(f"{source}: belongs to another barn ({bytes(said[0]).decode()}); nothing was changed")
    Store.open(copy).close()  # brings an older one up to date, refuses a newer one
    with closing(sqlite3.connect(copy)) as conn:
        conn.execute("PRAGMA journal_mode = DELETE")


def _exchange(path: Path, copy: Path, now: datetime) -> Path | None:
    """The copy into place, the old file aside with what SQLite keeps beside it."""
    kept = path.with_name(f"{path.name}-before-restore-{now:%Y%m%dT%H%M%S}") if path.stat().st_size else None
    for beside in ("", "-wal", "-shm"):
        old = Path(f"{path}{beside}")
        if old.exists():
            old.replace(f"{kept}{beside}") if kept else old.unlink()
    copy.replace(path)
    return kept


def _away(beside: Path) -> None:
    for left in ("", "-wal", "-shm", "-owner"):
        Path(f"{beside}{left}").unlink(missing_ok=True)
