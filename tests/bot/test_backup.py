"""A copy while the bot runs; back again only when it is proven."""

import sqlite3
import stat
import threading
from collections.abc import Iterator
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot.backup import backup, restore
from bot.events import Seen
from bot.ledger import Ledger
from bot.problems import Failed, WrongInput
from bot.store import SCHEMA, Store, data_path

NOW = datetime(2026, 11, 26, 12, 12, tzinfo=UTC)


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A barn's file."""
    return data_path("Windrow Farm", tmp_path / "data")


@pytest.fixture
def store(path: Path) -> Iterator[Store]:
    """The file, in use, with one event."""
    with closing(Store.open(path)) as opened:
        tell(opened, "1:1")
        yield opened


def tell(store: Store, key: str) -> None:
    """Record something."""
    Ledger(store).append(NOW, "Inés", key, [Seen("Maple", "hot")])


def count(path: Path) -> int:
    """How many events a file holds."""
    with closing(sqlite3.connect(path)) as conn:
        found: int = conn.execute("SELECT count(*) FROM entries").fetchone()[0]
    return found


def test_a_copy_is_whole_while_the_bot_writes(path: Path, store: Store, tmp_path: Path) -> None:
    """Taken in the middle of a busy minute, it is sound and holds what was committed before."""
    stop = threading.Event()

    def busy() -> None:
        number = 2
        while not stop.is_set():
            tell(store, f"1:{number}")
            number += 1

    writer = threading.Thread(target=busy)
    writer.start()
    try:
        copies = [backup(path, tmp_path / f"copy{n}.sqlite") for n in range(5)]
    finally:
        stop.set()
        writer.join()
    for copy in copies:
        assert count(copy) >= 1
        with closing(sqlite3.connect(copy)) as conn:
            assert conn.execute("PRAGMA integrity_check").fetchone() == ("ok",)
        assert stat.S_IMODE(copy.stat().st_mode) == 0o600
        assert not list(tmp_path.glob(f"{copy.name}-*"))


def test_a_folder_as_destination_keeps_the_name(path: Path, store: Store, tmp_path: Path) -> None:
    """`haybell backup barn.yaml /mnt/stick`."""
    assert backup(path, tmp_path) == tmp_path / path.name


def test_nothing_to_copy_is_said(tmp_path: Path) -> None:
    """Before the first start."""
    with pytest.raises(WrongInput, match="nothing has been kept yet"):
        backup(tmp_path / "none.sqlite", tmp_path)


def test_the_data_is_not_copied_onto_itself(path: Path, store: Store) -> None:
    """A slip of the hand."""
    with pytest.raises(WrongInput, match="the data itself"):
        backup(path, path)


def test_a_destination_that_cannot_be_written_is_said(path: Path, store: Store, tmp_path: Path) -> None:
    """One line."""
    with pytest.raises(Failed):
        backup(path, tmp_path / "no such folder" / "copy.sqlite")


def test_restoring_brings_the_copy_s_facts_and_keeps_what_was_there(path: Path, store: Store, tmp_path: Path) -> None:
    """Nothing is thrown away by putting something back."""
    copy = backup(path, tmp_path / "copy.sqlite")
    tell(store, "1:2")
    store.close()
    line = restore(copy, path, NOW)
    assert count(path) == 1
    (kept,) = path.parent.glob("*-before-restore-*[0-9]")
    assert str(kept) in line
    assert count(kept) == 2
    with closing(Store.open(path)) as again:
        assert len(Ledger(again).entries()) == 1


def test_restoring_into_an_empty_place(path: Path, store: Store, tmp_path: Path) -> None:
    """On a new computer."""
    copy = backup(path, tmp_path / "copy.sqlite")
    fresh = data_path("Windrow Farm", tmp_path / "elsewhere")
    restore(copy, fresh, NOW)
    assert count(fresh) == 1


def test_nothing_is_restored_under_a_running_bot(path: Path, store: Store, tmp_path: Path) -> None:
    """Its memory would no longer agree with its file."""
    copy = backup(path, tmp_path / "copy.sqlite")
    tell(store, "1:2")
    with pytest.raises(Failed, match="already running"):
        restore(copy, path, NOW)
    assert count(path) == 2


@pytest.mark.parametrize(
    ("spoil", "said"),
    [
        (lambda copy: copy.write_bytes(b"x" * 5000), "damaged"),
        (lambda copy: copy.write_bytes(copy.read_bytes()[:-8192]), "damaged"),
        (lambda copy: run(copy, f"PRAGMA user_version = {SCHEMA + 1}"), "newer haybell"),
        (lambda copy: run(copy, "PRAGMA application_id = 1"), "not a data file"),
        (lambda copy: run(copy, "UPDATE kept SET value = x'41' WHERE name = 'whose'"), "another barn"),
    ],
    ids=["garbage", "cut short", "newer", "not ours", "another barn"],
)
def test_a_copy_that_is_not_proven_replaces_nothing(
    path: Path, store: Store, tmp_path: Path, spoil: object, said: str
) -> None:
    """The file in use stays byte for byte."""
    copy = backup(path, tmp_path / "copy.sqlite")
    store.close()
    spoil(copy)  # type: ignore[operator]
    before = path.read_bytes()
    with pytest.raises(Failed, match=said):
        restore(copy, path, NOW)
    assert path.read_bytes() == before
    assert not list(path.parent.glob("*.part*"))


def run(path: Path, statement: str) -> None:
    """Change a file behind everyone's back."""
    with closing(sqlite3.connect(path)) as conn:
        conn.execute(statement)
        conn.commit()
