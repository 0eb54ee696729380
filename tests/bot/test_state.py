"""The barn as it is: file and events folded; undo is leaving out, and nothing said can break it."""

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.barn import Barn, demo_path, load
from bot.events import (
    GARMENT_WORDS,
    SIGNS,
    STYLES,
    Changed,
    Clipped,
    Done,
    Entry,
    Event,
    FileSays,
    GarmentIs,
    Nudged,
    Placed,
    Posted,
    RecheckSet,
    Seen,
    Wearing,
    Wished,
    Worked,
)
from bot.ledger import Ledger
from bot.state import State, apply, as_filed, fold
from bot.store import Store

BARN = load(demo_path())
NAMES = [h.name for h in BARN.horses]
IDS = [g.id for g in BARN.garments]
SEVEN = datetime(2026, 11, 26, 12, tzinfo=UTC)
DAY = date(2026, 11, 26)
PLAN = {"Maple": ("maple-liner", "maple-sheet"), "Otter": ("otter-light",), "Birch": (), "Pip": ("pip-sheet",)}
POST = Posted("morning", DAY, SEVEN, SEVEN + timedelta(hours=9), PLAN)

horses = st.sampled_from([*NAMES, "Nobody", ""])
garments = st.sampled_from([*IDS, "no-such-rug"])
wear = st.lists(garments, max_size=3).map(tuple)
plans = st.dictionaries(horses, wear, max_size=4)
instants = st.datetimes(datetime(2026, 1, 1), datetime(2027, 12, 31), timezones=st.just(UTC))  # noqa: DTZ001
rounds = st.sampled_from(["morning", "evening", "noon"])
days = st.dates(date(2026, 11, 1), date(2026, 12, 31))
events = st.one_of(
    st.builds(Seen, horses, st.sampled_from(SIGNS), st.sampled_from(["turnout", "after work"]), wore=st.none() | wear),
    st.builds(GarmentIs, garments, st.sampled_from(GARMENT_WORDS)),
    st.builds(Wearing, horses, wear),
    st.builds(Done, st.just("all") | st.lists(horses).map(tuple)),
    st.builds(Clipped, horses, st.sampled_from(STYLES)),
    st.builds(Placed, horses, st.sampled_from(["field", "stall"])),
    st.builds(Wished, horses, st.booleans()),
    st.builds(Worked, horses),
    st.builds(Posted, rounds, days, instants, instants, plans),
    st.builds(Changed, rounds, days, plans),
    st.builds(RecheckSet, horses, st.sampled_from(SIGNS), instants, st.integers(0, 3)),
    st.builds(Nudged, rounds, days),
    st.builds(FileSays, st.just("clip"), horses, st.sampled_from(STYLES), st.none() | days),
    st.builds(FileSays, st.just("keep_bare"), horses, st.booleans()),
    st.builds(FileSays, st.just("wearing"), horses, wear.map(list)),
    st.builds(FileSays, st.just("where"), horses, st.just({"morning": "field"})),
    st.builds(FileSays, st.just("state"), garments, st.sampled_from(GARMENT_WORDS)),
)
told = st.lists(st.tuples(instants, events), max_size=25)


def entries(*said: Event, at: datetime = SEVEN, every: timedelta = timedelta(minutes=10)) -> list[Entry]:
    """Events told one after the other by Inés."""
    return [Entry(n, at + n * every, "Inés", f"g:{n}", event) for n, event in enumerate(said, start=1)]


def after(*said: Event) -> State:
    """The demo barn after these."""
    return fold(BARN, entries(*said))


# ── whatever is said ─────────────────────────────────────────────────────────────────────────────────────────────────


@given(told)
@settings(max_examples=60)
def test_nothing_that_can_be_said_breaks_the_barn(said: list[tuple[datetime, Event]]) -> None:
    """Unknown horses, unknown rugs, any date: the barn has the same horses and rugs afterwards."""
    state = fold(BARN, [Entry(n, at, "Inés", f"g:{n}", event) for n, (at, event) in enumerate(said, 1)])
    assert list(state.horses) == NAMES
    assert list(state.garments) == IDS


@given(told, st.data())
@settings(max_examples=60)
def test_undo_is_as_if_never_said(said: list[tuple[datetime, Event]], data: st.DataObject) -> None:
    """Whichever entries are undone, the barn is the barn without them."""
    rows = [Entry(n, at, "Inés", f"g:{n}", event) for n, (at, event) in enumerate(said, 1)]
    gone = data.draw(st.sets(st.sampled_from([e.number for e in rows]))) if rows else set()
    undone = [replace(e, undone_by=999) if e.number in gone else e for e in rows]
    assert fold(BARN, undone) == fold(BARN, [e for e in rows if e.number not in gone])


@given(told)
@settings(max_examples=40)
def test_one_by_one_is_all_at_once(said: list[tuple[datetime, Event]]) -> None:
    """The state that grows with each entry is the state of a restart."""
    state = as_filed(BARN)
    rows = [Entry(n, at, "Inés", f"g:{n}", event) for n, (at, event) in enumerate(said, 1)]
    for row in rows:
        state = apply(state, row)
    assert state == fold(BARN, rows)


@given(told)
@settings(max_examples=25, deadline=None)
def test_the_barn_on_disk_is_the_barn_in_memory(said: list[tuple[datetime, Event]]) -> None:
    """Every event comes back from the ledger as it went in."""
    store = Store.memory()
    ledger = Ledger(store)
    for n, (at, event) in enumerate(said):
        ledger.append(at, "Inés", f"g:{n}", [event])
    assert fold(BARN, Ledger(store).entries()) == fold(BARN, ledger.entries())


@given(st.permutations([
    Seen("Maple", "sweating"), GarmentIs("otter-light", "wet"), Wearing("Birch", ()), Placed("Quill", "field"),
    Wished("Tansy", keep_bare=True), Clipped("Fennel", "bib"), Worked("Juniper"),
]))  # fmt: skip
def test_facts_about_different_things_come_in_any_order(said: list[Event]) -> None:
    """Two people who report at once need not agree who was first."""
    usual = {event: Entry(n, SEVEN, "Inés", f"g:{n}", event) for n, event in enumerate(sorted(said, key=repr), 1)}
    assert fold(BARN, [usual[event] for event in said]) == fold(BARN, usual.values())


# ── who is done ──────────────────────────────────────────────────────────────────────────────────────────────────────


@given(st.data())
def test_done_by_and_by_is_done_at_once(data: st.DataObject) -> None:
    """However the names are split, when all were named all are done and wear what the post said."""
    order = data.draw(st.permutations(list(PLAN)))
    cuts = sorted(data.draw(st.sets(st.integers(1, len(order) - 1))))
    parts = [tuple(order[a:b]) for a, b in zip([0, *cuts], [*cuts, len(order)])]
    split, whole = after(POST, *map(Done, parts)), after(POST, Done("all"))
    assert split.standing is not None
    assert whole.standing is not None
    assert split.standing.done == whole.standing.done == frozenset(PLAN)
    assert split.wearing() == whole.wearing()


def test_nothing_is_done_that_nobody_said() -> None:
    """A post alone dresses no horse."""
    assert after(POST).wearing() == as_filed(BARN).wearing()


def test_done_is_kept_by_whom_the_change_leaves_alone() -> None:
    """A new plan for Otter takes only Otter's tick away; that of another round none."""
    state = after(POST, Done("all"), Changed("morning", DAY, {"Otter": ()}), Changed("evening", DAY, {"Pip": ()}))
    assert state.standing is not None
    assert state.standing.done == frozenset(PLAN) - {"Otter"}
    assert state.standing.wear["Otter"] == ()
    assert state.standing.wear["Pip"] == ("pip-sheet",)


def test_done_after_a_missed_round_dresses_nobody() -> None:
    """There was no post to go by."""
    missed = Posted("evening", DAY, SEVEN, SEVEN + timedelta(hours=9))
    assert after(POST, missed, Done("all")).wearing() == as_filed(BARN).wearing()


# ── a second look ────────────────────────────────────────────────────────────────────────────────────────────────────

LOOK = RecheckSet("Pip", "shivering", SEVEN + timedelta(minutes=30))


@pytest.mark.parametrize("sign", SIGNS)
def test_any_sign_ends_a_second_look(sign: str) -> None:
    """Somebody looked at the horse."""
    assert after(LOOK).rechecks() == [("Pip", LOOK)]
    assert after(LOOK, Seen("Pip", sign)).rechecks() == []  # type: ignore[arg-type]


def test_a_sign_on_another_horse_does_not() -> None:
    """Nobody looked at Pip."""
    assert after(LOOK, Seen("Maple", "comfortable")).rechecks() == [("Pip", LOOK)]


def test_a_further_call_counts_only_while_a_second_look_is_open() -> None:
    """The sign was taken back: the call that the bot set meanwhile goes with it."""
    further = replace(LOOK, step=1)
    assert after(LOOK, further).rechecks() == [("Pip", further)]
    rows = entries(LOOK, further)
    assert fold(BARN, [replace(rows[0], undone_by=3), rows[1]]).rechecks() == []


# ── what explains a sign ─────────────────────────────────────────────────────────────────────────────────────────────

SWEAT = Seen("Maple", "sweating", wore=("maple-sheet",))


@pytest.mark.parametrize(
    "said",
    [
        (replace(SWEAT, setting="after work"),),
        (Worked("Maple"), SWEAT),
        (SWEAT, Worked("Maple")),  # mentioned a few minutes later
        (GarmentIs("maple-sheet", "soaked"), SWEAT),
        (Seen("Maple", "unwell"), SWEAT),
    ],
)
def test_a_sign_that_something_else_explains(said: tuple[Event, ...]) -> None:
    """Ridden, soaked or ill: it says nothing about the clothes."""
    now = after(*said).horses["Maple"]
    sign = now.last("sweating")
    assert sign is not None
    assert sign.number in now.explained


@pytest.mark.parametrize(
    "said",
    [
        (SWEAT,),
        (Seen("Maple", "comfortable"), Worked("Maple")),
        (Worked("Otter"), SWEAT),
        (GarmentIs("maple-liner", "soaked"), SWEAT),
    ],
)
def test_a_sign_that_nothing_else_explains(said: tuple[Event, ...]) -> None:
    """Another horse's work, a wet rug on the rail: no excuse."""
    assert after(*said).horses["Maple"].explained == frozenset()


def test_work_told_hours_later_explains_nothing() -> None:
    """Ridden in the afternoon, it did not sweat in the morning for that."""
    rows = entries(SWEAT, Worked("Maple"), every=timedelta(hours=3))
    assert fold(BARN, rows).horses["Maple"].explained == frozenset()


def test_a_rub_is_remembered_of_every_piece_worn() -> None:
    """They are not put on this horse again, but may go on another."""
    state = after(
        Seen("Maple", "rubbed", wore=("maple-liner", "maple-sheet")), Seen("Pip", "rubbed", wore=("pip-sheet",))
    )
    assert state.rubs == {"maple-liner": {"Maple"}, "maple-sheet": {"Maple"}, "pip-sheet": {"Pip"}}


# ── dates ────────────────────────────────────────────────────────────────────────────────────────────────────────────


def test_a_clip_said_in_the_evening_is_of_that_day() -> None:
    """At nine in Vermont it is tomorrow in Greenwich."""
    late = datetime(2026, 11, 27, 2, tzinfo=UTC)
    now = fold(BARN, [Entry(1, late, "Walt", "g:1", Clipped("Otter", "trace"))]).horses["Otter"]
    assert (now.clip, now.clip_on) == ("trace", DAY)


def test_the_later_clip_of_file_and_chat_counts() -> None:
    """The file dates Quill's full clip to 15 November: an earlier word does not undo it, a later one does."""
    early, late = (datetime(2026, 11, day, 15, tzinfo=UTC) for day in (1, 20))
    assert fold(BARN, [Entry(1, early, "Theo", "g:1", Clipped("Quill", "bib"))]).horses["Quill"].clip == "full"
    assert fold(BARN, [Entry(1, late, "Theo", "g:1", Clipped("Quill", "none"))]).horses["Quill"].clip == "none"


def test_the_clip_of_any_past_hour_is_known() -> None:
    """Before its clip a horse was not clipped; what was said today does not change yesterday."""
    now = after(Clipped("Tansy", "full")).horses["Tansy"]
    assert now.clipped_at(datetime(2026, 10, 30, tzinfo=UTC)).clip == "none"
    assert now.clipped_at(datetime(2026, 11, 20, tzinfo=UTC)).clip == "blanket"
    assert now.clipped_at(SEVEN + timedelta(days=1)).clip == "full"


@pytest.mark.parametrize(
    ("chat", "file", "fact"),
    [
        (Wished("Maple", keep_bare=True), FileSays("keep_bare", "Maple", value=False), ("keep_bare", False)),
        (Wearing("Maple", ("maple-medium",)), FileSays("wearing", "Maple", []), ("wear", ())),
        (Placed("Maple", "stall"), FileSays("where", "Maple", {"morning": "field"}), ("placed", None)),
        (Clipped("Maple", "full"), FileSays("clip", "Maple", "none"), ("clip", "none")),
    ],
)
def test_whichever_of_file_and_chat_came_later(chat: Event, file: Event, fact: tuple[str, object]) -> None:
    """An edit of the file is a word like any other, of its own day."""
    name, value = fact
    assert getattr(after(chat, file).horses["Maple"], name) == value
    assert getattr(after(file, chat).horses["Maple"], name) != value


def test_a_garment_back_in_service_is_dry() -> None:
    """Mended, washed or found, it may be worn."""
    assert after(GarmentIs("pip-light", "in service")).garments["pip-light"].state == "dry"


def test_the_file_is_where_the_barn_begins(barn: Barn) -> None:
    """Before anybody spoke: what the file says is worn, clipped and torn."""
    state = as_filed(barn)
    assert state.horses["Maple"].wear == ("maple-sheet",)
    assert state.horses["Pip"].wear is None
    assert state.horses["Birch"].keep_bare
    assert state.garments["pip-light"].state == "torn"
