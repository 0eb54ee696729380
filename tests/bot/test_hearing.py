"""One message: what it means here, what is recorded and answered; nothing is written yet."""

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.asks import FRESH, Asks, ask_from_json, ask_to_json
from bot.barn import Barn, demo_path, load
from bot.events import Done, Entry, Event, GarmentIs, Posted, RecheckSet, Seen, Undo, Wearing
from bot.hearing import (
    Decision,
    Scene,
    corrected,
    decide,
    digest,
    meant,
    reference,
    speaker,
    strangers,
    understood,
    wore,
)
from bot.mailbox import Mailbox
from bot.message import Incoming, Sender
from bot.sheet import Sheet
from bot.state import State, apply, as_filed
from bot.store import Store
from bot.words import Ask, Reference

DEMO = load(demo_path())
ASK = Ask("garment", "liner", ("maple-liner", "otis-liner"), (GarmentIs("", "wet"), Wearing("Maple", ("", "x"))))


@pytest.fixture
def noon(sheet: Sheet) -> datetime:
    """In the middle of the morning's window."""
    return sheet.windows[0].start.replace(hour=12)


@pytest.fixture
def scene(farm: Barn, state: State, sheet: Sheet) -> Scene:
    """The farm after the morning's post."""
    return Scene(farm, state, sheet, None, "en")


@pytest.fixture
def message(noon: datetime) -> Callable[..., Incoming]:
    """Builds a message of Theo's at noon."""

    def build(text: str = "", **facts: object) -> Incoming:
        return replace(Incoming("g:9", Sender(None, "Theo"), text, noon), **facts)  # type: ignore[arg-type]

    return build


@pytest.fixture
def hear(scene: Scene, message: Callable[..., Incoming]) -> Callable[..., Decision]:
    """What a message of Theo's leads to."""

    def heard(text: str = "", reply: Reference | None = None, **facts: object) -> Decision:
        incoming, theo = message(text, **facts), scene.barn.people[0]
        return decide(incoming, theo, understood(incoming, theo, scene, reply), scene)

    return heard


# ── what one message leads to ────────────────────────────────────────────────────────────────────────────────────────


def test_a_shiver_is_recorded_with_its_second_look(hear: Callable[..., Decision], noon: datetime) -> None:
    """One message: the sign, the look in half an hour, the advice."""
    found = hear("Pip shivering")
    assert [type(e) for e in found.events] == [Seen, RecheckSet]
    assert [(one.kind, one.reply_to) for one in found.say] == [("alert", "g:9")]


def test_a_shiver_told_privately_is_everybodys_business(hear: Callable[..., Decision]) -> None:
    """The group hears of it, and who told of it is answered where they wrote."""
    found = hear("Pip shivering", private=True)
    assert [(one.kind, one.to, one.reply_to) for one in found.say] == [
        ("alert", "group", None),
        ("alert", "Theo", "g:9"),
    ]


def test_a_private_question_is_answered_privately(hear: Callable[..., Decision]) -> None:
    """Where it was put."""
    assert hear("what is Maple in today?", private=True).say[0].to == "Theo"
    assert hear("what is Maple in today?").say[0].to == "group"


def test_a_question_back_carries_its_choices_and_what_it_waits_for(hear: Callable[..., Decision]) -> None:
    """The choices are buttons; the rest of the message waits for one of them."""
    found = hear("liner soaked")
    (ask,) = found.say
    assert ask.kind == "ask"
    assert [b.data for row in ask.buttons for b in row] == [f"pick:{n}" for n in range(1, len(found.ask.options) + 1)]  # type: ignore[union-attr]
    assert reference(ask.about).ask == found.ask


def test_a_sign_is_recorded_with_where_and_in_what(hear: Callable[..., Decision]) -> None:
    """Otis was told to wear liner and sheet; nobody said otherwise. In half an hour somebody looks again."""
    sign, look = hear("Otis sweaty").events
    assert isinstance(sign, Seen)
    assert isinstance(look, RecheckSet)
    assert (sign.where, sign.wore, sign.air) == ("field", ("otis-liner", "otis-sheet"), None)


def test_what_a_horse_has_on(state: State, noon: datetime) -> None:
    """Before the round begins: as recorded; then what the post says; a later word counts for itself."""
    assert state.standing is not None
    posted = replace(state, standing=replace(state.standing, at=state.standing.start - timedelta(minutes=45)))
    assert wore(posted, "Otis", state.standing.start - timedelta(minutes=1)) is None
    assert wore(posted, "Otis", noon) == ("otis-liner", "otis-sheet")
    tonight = Posted("evening", noon.date(), state.standing.end, state.standing.end + timedelta(hours=14), {"Otis": ()})
    evening = apply(posted, Entry(6, noon.replace(hour=15, minute=45), "haybell", "", tonight))
    assert wore(evening, "Otis", noon.replace(hour=16)) == ("otis-liner", "otis-sheet"), "until the evening round"
    assert wore(evening, "Otis", noon.replace(hour=17)) == ()
    said = apply(posted, Entry(5, state.standing.start - timedelta(minutes=20), "Inés", "g:1", Wearing("Otis", ())))
    assert wore(said, "Otis", noon) == ()
    before = apply(posted, Entry(5, state.standing.start - timedelta(hours=9), "Inés", "g:1", Wearing("Otis", ())))
    assert wore(before, "Otis", noon) == ("otis-liner", "otis-sheet")


# ── taps ─────────────────────────────────────────────────────────────────────────────────────────────────────────────


@pytest.mark.parametrize(("tap", "done"), [("done:*", "all"), ("done:0", ("Maple",)), ("done:3", ("Pip",))])
def test_a_tap_on_done(hear: Callable[..., Decision], tap: str, done: object) -> None:
    """All, or the horse of that number; the button itself is the answer."""
    found = hear(tap=tap, reply=Reference(posted=1))
    assert found.events == (Done(done),)  # type: ignore[arg-type]
    assert found.say == ()


@pytest.mark.parametrize("tap", ["done:99", "done:-1", "done:", "done:x", "pick:1", "nonsense", "", "::"])
def test_a_tap_that_means_nothing_does_nothing(hear: Callable[..., Decision], tap: str) -> None:
    """Old or broken buttons harm nobody."""
    found = hear(tap=tap)
    assert (found.events, found.undo, found.ask) == ((), False, None)


@given(st.text(max_size=30))
def test_no_tap_breaks_anything(tap: str) -> None:
    """Whatever a chat sends back."""
    at = datetime(2026, 11, 26, 12, tzinfo=DEMO.zone)
    incoming = Incoming("g:1", Sender(1001, "Theo"), "", at, tap=tap)
    understood(incoming, DEMO.people[0], Scene(DEMO, as_filed(DEMO), None, None, "en"), None)


# ── undo ─────────────────────────────────────────────────────────────────────────────────────────────────────────────


def rows(at: datetime, *said: tuple[str, str, Event]) -> list[Entry]:
    """A ledger of (who, key, event)."""
    return [Entry(n, at, who, key, event) for n, (who, key, event) in enumerate(said, 1)]


@pytest.fixture
def told(noon: datetime) -> list[Entry]:
    """Inés reported twice, Theo once, the bot set a call."""
    return rows(
        noon,
        ("Inés", "g:1", GarmentIs("maple-liner", "wet")),
        ("Inés", "g:2", Seen("Maple", "cold")),
        ("Inés", "g:2", Seen("Otis", "cold")),
        ("Theo", "g:3", GarmentIs("otis-liner", "wet")),
        ("haybell", "", RecheckSet("Maple", "cold", noon)),
    )


def test_undo_means_all_of_ones_last_message(farm: Barn, told: list[Entry], message: Callable[..., Incoming]) -> None:
    """Both horses of it; and the one before when that is gone already."""
    ines, undo = farm.people[1], message("undo")
    assert meant(undo, ines, told, ()) == [2, 3]
    assert meant(undo, ines, [replace(e, undone_by=9) if e.number in (2, 3) else e for e in told], ()) == [1]


def test_a_reply_says_which(farm: Barn, told: list[Entry], message: Callable[..., Incoming]) -> None:
    """A manager may mean anybody's, another only their own."""
    theo, ines = farm.people[:2]
    assert meant(message("undo"), theo, told, [1]) == [1]
    assert meant(message("undo"), ines, told, [1]) == [1]
    assert meant(message("undo"), ines, told, [4]) == []


def test_a_correction_is_of_what_is_fresh(farm: Barn, told: list[Entry], message: Callable[..., Incoming]) -> None:
    """No, Ned: said hours later it corrects nothing."""
    ines, soon = farm.people[1], message("no, Ned")
    assert len(corrected(soon, ines, told, ())) == 2
    assert corrected(replace(soon, at=soon.at + FRESH + timedelta(seconds=1)), ines, told, ()) == ()
    assert corrected(soon, None, told, ()) == ()


def test_undo_is_no_fact(hear: Callable[..., Decision]) -> None:
    """It is done, not recorded as said."""
    found = hear("undo")
    assert found.undo
    assert not [e for e in found.events if isinstance(e, Undo)]


# ── who speaks ───────────────────────────────────────────────────────────────────────────────────────────────────────


def test_a_person_is_known_by_the_chats_number_or_the_typed_name(barn: Barn) -> None:
    """Whoever has a number is known by nothing else: a display name can be anybody's."""
    assert speaker(barn, Sender(1002, "x")).name == "Inés"  # type: ignore[union-attr]
    assert speaker(barn, Sender(999, "Theo")) is None
    assert speaker(barn, Sender(None, "Theo")).name == "Theo"  # type: ignore[union-attr]
    assert speaker(barn, Sender(None, "Sam")) is None


def test_a_stranger_is_greeted_once_and_danger_always_told(scene: Scene, message: Callable[..., Incoming]) -> None:
    """Once greeted they are left in peace, except that a shivering horse is everybody's business."""
    report, danger = (understood(message(t), None, scene, None) for t in ("Maple sweaty", "Pip shivering"))
    said = [
        list(strangers(message("x"), heard, scene.barn, "en", greeted))
        for heard, greeted in ((report, lambda: False), (report, lambda: True), (danger, lambda: True))
    ]
    assert [[one.kind for one in each] for each in said] == [["answer"], [], ["alert"]]


# ── questions that stay open ─────────────────────────────────────────────────────────────────────────────────────────


def test_an_open_question_is_kept_whole(noon: datetime) -> None:
    """With the events that wait for its answer; until it is answered, or ten minutes have passed."""
    asks = Asks(Mailbox(Store.memory()))
    assert asks.open("Theo", noon) is None
    asks.put("Theo", ASK, noon)
    assert asks.open("Theo", noon + FRESH) == ASK
    assert asks.open("Theo", noon + FRESH + timedelta(seconds=1)) is None
    assert asks.open("Inés", noon) is None
    asks.settle("Theo")
    assert asks.open("Theo", noon) is None


def test_a_question_is_the_same_read_back() -> None:
    """From the outbox too, for whoever replies to it later."""
    assert ask_from_json(ask_to_json(ASK)) == ASK


@given(st.text(), st.text())
def test_two_versions_of_a_message_are_told_apart(first: str, second: str) -> None:
    """Every character counts, also those no keyboard has; a tap is not the text that looks like it."""
    at = datetime(2026, 11, 26, 12, tzinfo=UTC)
    one, two = (Incoming("g:1", Sender(None, "x"), text, at) for text in (first, second))
    assert (digest(one) == digest(two)) == (first == second)
    assert digest(one) != digest(replace(one, text="", tap=first or "x"))
