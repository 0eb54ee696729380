"""Events are told once, kept for ever, and taken back only by another event."""

from collections.abc import Iterator
from contextlib import closing
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.events import (
    KINDS,
    Air,
    Changed,
    Clipped,
    Done,
    Enrolled,
    Event,
    FileSays,
    GarmentIs,
    Nudged,
    Placed,
    Posted,
    RecheckSet,
    Seen,
    Struck,
    Undo,
    Wearing,
    Wished,
    Worked,
)
from bot.ledger import Ledger
from bot.problems import Failed
from bot.store import Store

NOW = datetime(2026, 11, 26, 12, 12, tzinfo=UTC)
SWEATS = Seen("Maple", "sweating")

EVERY_KIND: tuple[Event, ...] = (
    Seen("Maple", "sweating", where="field", wore=("a", "b"), air=Air(NOW, {"temperature_c": [1.5, None]})),
    Seen("<b>Bo</b> 'x\"; DROP TABLE entries; --", "hot", wore=()),
    GarmentIs("maple-liner", "strap broken"),
    Wearing("Maple", ("a", "b")),
    Wearing("Maple", ()),
    Done("all"),
    Done(("Maple", "Pip")),
    Clipped("Maple", "hunter"),
    Placed("Maple", "stall"),
    Wished("Maple", keep_bare=True),
    Worked("Maple"),
    Undo((1, 2)),
    Posted("morning", date(2026, 11, 26), NOW, NOW + timedelta(hours=9), {"Maple": ("a",), "Pip": ()}),
    Changed("morning", date(2026, 11, 26), {"Maple": ("a",)}, "report"),
    RecheckSet("Maple", "shivering", NOW, 1),
    Nudged("morning", date(2026, 11, 26)),
    FileSays("clip", "Maple", "trace", date(2026, 10, 28)),
    FileSays("wearing", "Maple", ["a"]),
    Enrolled("horses", "Fern", {"name": "Fern", "weight_kg": 500}, None),
    Struck("garments", "maple-liner", {"id": "maple-liner"}),
)


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    """A barn's file on disk."""
    with closing(Store.open(tmp_path / "barn.sqlite")) as opened:
        yield opened


@pytest.fixture
def ledger(store: Store) -> Ledger:
    """An empty ledger."""
    return Ledger(store)


def test_every_kind_of_event_comes_back_as_it_was_told(store: Store, ledger: Ledger) -> None:
    """Dates, tuples, weather and names with quotes in them."""
    told = [entry for event in EVERY_KIND for entry in ledger.append(NOW, "Inés", "", [event], "so she said")]
    assert Ledger(store).entries() == told
    assert {type(e) for e in EVERY_KIND} | {KINDS["question"]} == set(KINDS.values())


def test_the_same_message_counts_once(ledger: Ledger) -> None:
    """However often it is delivered."""
    first = ledger.append(NOW, "Inés", "1:7", [SWEATS, Done("all")])
    assert len(first) == 2
    assert ledger.append(NOW, "Inés", "1:7", [SWEATS, Done("all")]) == []
    assert ledger.entries() == first


def test_what_the_bot_records_by_itself_is_never_a_repeat(ledger: Ledger) -> None:
    """It has no message to be known by."""
    assert [len(ledger.append(NOW, "haybell", "", [SWEATS])) for _ in range(3)] == [1, 1, 1]


def test_undo_leaves_the_event_and_marks_it(store: Store, ledger: Ledger) -> None:
    """Nothing is erased: who took what back can be read for ever."""
    (seen,) = ledger.append(NOW, "Inés", "1:7", [SWEATS])
    (back,) = ledger.undo(NOW, "Theo", "1:8", [seen.number])
    assert back.number == seen.number
    kept, undo = Ledger(store).entries()
    assert kept.undone_by == undo.number
    assert undo.event == Undo((seen.number,))
    assert ledger.entries() == [kept, undo]


def test_undo_twice_is_undo_once(ledger: Ledger) -> None:
    """A second undo of the same finds nothing and records nothing."""
    (seen,) = ledger.append(NOW, "Inés", "1:7", [SWEATS])
    ledger.undo(NOW, "Inés", "1:8", [seen.number])
    assert ledger.undo(NOW, "Inés", "1:9", [seen.number, 99]) == []
    assert len(ledger.entries()) == 2


def test_an_undo_can_be_undone(ledger: Ledger) -> None:
    """What it had taken back stands again."""
    seen = ledger.append(NOW, "Inés", "1:7", [SWEATS, Done("all")])
    ledger.undo(NOW, "Inés", "1:8", [e.number for e in seen])
    undo = ledger.entries()[-1]
    ledger.undo(NOW, "Inés", "1:9", [undo.number])
    assert [e.undone_by is None for e in ledger.entries()] == [True, True, False, True]


def test_a_corrected_message_is_told_anew(ledger: Ledger) -> None:
    """After its first version was taken back its key is free, as often as it is edited."""
    for sign in ("hot", "sweating", "comfortable"):
        numbers = [e.number for e in ledger.by_key("1:7") if e.undone_by is None]
        ledger.undo(NOW, "haybell", "", numbers)
        assert len(ledger.append(NOW, "Inés", "1:7", [Seen("Maple", sign)])) == 1  # type: ignore[arg-type]
    standing = [e.event for e in ledger.entries() if e.undone_by is None and not isinstance(e.event, Undo)]
    assert standing == [Seen("Maple", "comfortable")]


def test_what_a_failed_transaction_told_was_never_told(store: Store, ledger: Ledger) -> None:
    """Neither on disk nor in memory, and its key is free."""
    ledger.append(NOW, "Inés", "1:6", [SWEATS])
    with pytest.raises(RuntimeError), store.transaction():  # noqa: PT012
        ledger.append(NOW, "Inés", "1:7", [SWEATS])
        raise RuntimeError
    assert len(ledger.entries()) == 1
    assert len(ledger.append(NOW, "Inés", "1:7", [SWEATS])) == 1


def test_entries_since_an_instant(ledger: Ledger) -> None:
    """For the log of a day."""
    for hour in range(3):
        ledger.append(NOW + timedelta(hours=hour), "Inés", "", [SWEATS])
    assert len(ledger.entries(NOW + timedelta(hours=1))) == 2


def test_the_plan_as_posted_is_kept_beside_its_post(ledger: Ledger) -> None:
    """The question why speaks of what people saw, also after a restart."""
    (first,) = ledger.append(NOW, "haybell", "", [Nudged("morning", NOW.date())])
    (second,) = ledger.append(NOW, "haybell", "", [Nudged("evening", NOW.date())])
    assert ledger.latest_sheet() is None
    ledger.keep_sheet(first.number, '{"barn": "Hänsel"}')
    ledger.keep_sheet(second.number, "{}")
    assert ledger.sheet(first.number) == '{"barn": "Hänsel"}'
    assert ledger.latest_sheet() == "{}"
    assert ledger.sheet(99) is None


def test_an_entry_that_cannot_be_read_is_named(store: Store, ledger: Ledger) -> None:
    """One line with its number."""
    ledger.append(NOW, "Inés", "", [SWEATS])
    store.conn.execute("UPDATE entries SET event = '{}'")
    with pytest.raises(Failed, match=r"ledger entry 1 \(sign\) cannot be read"):
        Ledger(store).entries()


@given(st.lists(st.tuples(st.sampled_from(["tell", "undo"]), st.integers(0, 6)), max_size=30))
@settings(deadline=None, max_examples=60)
def test_memory_and_disk_never_differ(acts: list[tuple[str, int]]) -> None:
    """Whatever is told, repeated and taken back."""
    store = Store.memory()
    ledger = Ledger(store)
    for act, number in acts:
        if act == "tell":
            ledger.append(NOW, "Inés", f"1:{number}", [SWEATS])
        else:
            ledger.undo(NOW, "Inés", f"2:{number}", [number])
        assert ledger.entries() == Ledger(store).entries()
    keys = [e.key for e in ledger.entries() if e.undone_by is None and e.key.startswith("1:")]
    assert len(keys) == len(set(keys))
    store.close()
