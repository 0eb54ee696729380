"""The barn's file: private, owned by one, never damaged; what is wrong is said in one line."""

import os
import signal
import sqlite3
import stat
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot import migrations
from bot.problems import Failed
from bot.store import SCHEMA, Store, data_path

ROOT = Path(__file__).parents[2]


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A barn's file in a folder that is not there yet."""
    return data_path("Windrow Farm", tmp_path / "data")


def keep(store: Store, name: str) -> None:
    """Write something small."""
    store.conn.execute("INSERT INTO kept VALUES (?, x'00')", (name,))


def names(store: Store) -> set[str]:
    """What was written that way."""
    return {name for (name,) in store.conn.execute("SELECT name FROM kept WHERE name <> 'whose'")}


@given(st.text())
def test_any_barn_name_makes_a_safe_file_name(name: str) -> None:
    """Slashes, dots, emoji, nothing at all: one plain file in the folder."""
    found = data_path(name, Path("data"))
    assert found.parent == Path("data")
    assert found.name.isascii()
    assert len(found.name) < 80
    assert not set(found.name) & set('/\\:*?"<>| ')


def test_barns_that_differ_only_in_signs_have_files_of_their_own() -> None:
    """Exclamation and question mark make two barns."""
    assert len({data_path(name, Path("d")) for name in ("Hof 1!", "Hof 1?", "hof 1", "厩舎", "馬")}) == 5


def test_data_is_readable_by_its_owner_only(path: Path) -> None:
    """People's names and messages are nobody else's business."""
    with closing(Store.open(path)) as store:
        with store.transaction():
            keep(store, "a")
        files = list(path.parent.iterdir())
        assert {stat.S_IMODE(f.stat().st_mode) for f in files} == {0o600}
        assert stat.S_IMODE(path.parent.stat().st_mode) == 0o700


def test_every_commit_reaches_the_disk(path: Path) -> None:
    """WAL and a full sync: a power cut takes nothing that was answered."""
    with closing(Store.open(path)) as store:
        assert store.conn.execute("PRAGMA journal_mode").fetchone() == ("wal",)
        store.mark("INSERT INTO kept VALUES (?, x'00')", ("a",))
        assert store.conn.execute("PRAGMA synchronous").fetchone() == (2,)


def test_a_transaction_is_all_or_nothing(path: Path) -> None:
    """What fails in the middle has not begun; one inside another joins it."""
    with closing(Store.open(path)) as store:
        with pytest.raises(RuntimeError), store.transaction():  # noqa: PT012
            keep(store, "a")
            with store.transaction():
                keep(store, "b")
            raise RuntimeError
        assert names(store) == set()
        assert store.rollbacks == 1


def test_an_attempt_fails_alone(path: Path) -> None:
    """A spoiled message does not take its neighbours with it."""
    with closing(Store.open(path)) as store:
        with store.transaction():
            keep(store, "a")
            with pytest.raises(RuntimeError), store.attempt():  # noqa: PT012
                keep(store, "b")
                raise RuntimeError
        assert names(store) == {"a"}


def test_a_second_process_is_refused_in_one_line(path: Path) -> None:
    """Two bots on the same data would answer twice."""
    code = f"from pathlib import Path; from bot.store import Store; Store.open(Path({str(path)!r}))"
    with closing(Store.open(path)):
        run = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=False)
    assert "another haybell is already running on this data" in run.stderr.splitlines()[-1]


def test_the_owner_s_place_is_free_again_after_a_kill(path: Path) -> None:
    """No lock file has to be removed by hand."""
    code = (
        f"from pathlib import Path; from bot.store import Store; s = Store.open(Path({str(path)!r}))\n"
        "with s.transaction(): s.conn.execute(\"INSERT INTO kept VALUES ('a', x'00')\")\n"
        "print('open', flush=True); input()"
    )
    child = subprocess.Popen([sys.executable, "-c", code], cwd=ROOT, stdin=subprocess.PIPE, stdout=subprocess.PIPE)
    assert child.stdout
    assert child.stdout.readline() == b"open\n"
    child.send_signal(signal.SIGKILL)
    child.communicate()
    with closing(Store.open(path)) as store:
        assert names(store) == {"a"}


def test_others_may_read_while_the_owner_writes(path: Path) -> None:
    """`haybell show` works beside `haybell serve`."""
    assert Store.read(path) is None
    with closing(Store.open(path)) as store:
        with store.transaction():
            keep(store, "a")
        reader = Store.read(path)
        assert reader
        assert names(reader) == {"a"}
        with pytest.raises(Failed, match="may not be written"), reader.transaction():
            keep(reader, "b")
        reader.close()


def test_a_damaged_file_is_left_as_it_is(path: Path) -> None:
    """One line that says what to do; not a byte changed."""
    Store.open(path).close()
    for spoiled in (b"garbage" * 1000, path.read_bytes()[:5000], path.read_bytes()[:-4096] + b"\xff" * 4096):
        path.write_bytes(spoiled)
        for use in (Store.open, Store.read):
            with pytest.raises(Failed, match="haybell restore") as told:
                use(path)
            assert len(str(told.value).splitlines()) == 1
        assert path.read_bytes() == spoiled


def test_somebody_else_s_database_is_left_alone(path: Path) -> None:
    """A file of another program is not taken over."""
    path.parent.mkdir(parents=True)
    with closing(sqlite3.connect(path)) as other:
        other.execute("CREATE TABLE theirs (x)")
    before = path.read_bytes()
    with pytest.raises(Failed, match="not a data file of haybell"):
        Store.open(path)
    assert path.read_bytes() == before


def test_a_file_of_a_newer_version_is_refused(path: Path) -> None:
    """An older program would not understand it, and must not harm it."""
    Store.open(path).close()
    with closing(sqlite3.connect(path)) as newer:
        newer.execute(f"PRAGMA user_version = {SCHEMA + 1}")
    before = path.read_bytes()
    for use in (Store.open, Store.read):
        with pytest.raises(Failed, match="newer haybell"):
            use(path)
    assert path.read_bytes() == before


def test_a_full_disk_changes_nothing_and_ends_by_itself(path: Path) -> None:
    """What cannot be kept is not half kept; with room again it goes on."""
    with closing(Store.open(path)) as store:
        pages = store.conn.execute("PRAGMA page_count").fetchone()[0]
        store.conn.execute(f"PRAGMA max_page_count = {pages}")
        with pytest.raises(Failed, match="disk is full; nothing was changed"), store.transaction():  # noqa: PT012
            keep(store, "a")
            store.conn.execute("INSERT INTO kept VALUES ('big', zeroblob(1000000))")
        assert names(store) == set()
        store.conn.execute(f"PRAGMA max_page_count = {pages + 1000}")
        with store.transaction():
            keep(store, "b")
        assert names(store) == {"b"}


@pytest.mark.skipif(os.geteuid() == 0, reason="the superuser may write anywhere")
def test_a_folder_that_cannot_be_written_is_said(path: Path) -> None:
    """Before six in the morning."""
    path.parent.mkdir(parents=True, mode=0o500)
    with pytest.raises(Failed, match="may not be written"):
        Store.open(path)


def test_a_file_that_cannot_be_written_is_said(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The same line for whatever reason the system has."""
    Store.open(path).close()
    connect = sqlite3.connect
    monkeypatch.setattr(
        "bot.store.sqlite3.connect",
        lambda name, **how: (
            connect(f"{Path(name).as_uri()}?mode=ro", uri=True, **how) if name == path else connect(name, **how)
        ),
    )
    with pytest.raises(Failed, match="may not be written"):
        Store.open(path)


class TestMigrating:
    """An older file is brought up to date with a copy of it beside until the new one is proven."""

    @pytest.fixture
    def older(self, path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
        """A file of today, seen by a program one step ahead."""
        with closing(Store.open(path)) as store, store.transaction():
            keep(store, "a")
        steps = migrations.Migrations("haybell")
        for step in migrations.STEPS._migrations:
            steps(name=step.name)(step.fn)
        monkeypatch.setattr(migrations, "STEPS", steps)
        monkeypatch.setattr("bot.store.SCHEMA", SCHEMA + 1)
        return path

    def test_the_old_facts_are_in_the_new_file(self, older: Path) -> None:
        """And the copy has gone."""
        migrations.STEPS(name="next")(lambda db: db.execute("CREATE TABLE more (x)"))
        with closing(Store.open(older)) as store:
            assert names(store) == {"a"}
            assert store.conn.execute("SELECT count(*) FROM more").fetchone() == (0,)
        assert not list(older.parent.glob("*-before-*"))

    def test_a_step_that_fails_leaves_the_old_file(self, older: Path) -> None:
        """And its copy beside it."""

        def half(db: object) -> None:
            store_db = db.conn  # type: ignore[attr-defined]
            store_db.execute("DELETE FROM kept")
            raise sqlite3.OperationalError("no such thing")

        migrations.STEPS(name="next")(half)
        with pytest.raises(Failed, match="no such thing"):
            Store.open(older)
        with closing(sqlite3.connect(older)) as conn:
            assert ("a",) in conn.execute("SELECT name FROM kept").fetchall()
            assert conn.execute("PRAGMA user_version").fetchone() == (SCHEMA,)
        assert list(older.parent.glob("*-before-*"))

    def test_reading_an_older_file_does_not_touch_it(self, older: Path) -> None:
        """It is brought up to date in memory."""
        migrations.STEPS(name="next")(lambda db: db.execute("CREATE TABLE more (x)"))
        before = older.read_bytes()
        reader = Store.read(older)
        assert reader
        assert names(reader) == {"a"}
        assert reader.conn.execute("SELECT count(*) FROM more").fetchone() == (0,)
        reader.close()
        assert older.read_bytes() == before


def test_the_version_counts_the_steps() -> None:
    """A step without a new version number would never be run."""
    assert len(migrations.STEPS._migrations) == SCHEMA
