"""What holds for any text at all, not only for messages somebody thought of."""

import sys

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.barn import Barn
from bot.events import Asked, Done, Event, Undo
from bot.state import State, as_filed
from bot.words import Reference, read
from bot.words.lookup.lexicon import lexicon
from bot.words.reading import LONGEST
from tests.words.corpus import barn, subjects

OAK = barn("oak")
NOW = as_filed(OAK)
WORDS = sorted(
    {
        word
        for language in ("en", "es", "fr")
        for rows in lexicon(language).phrases.values()
        for phrase, _ in rows
        for word in phrase
    }
)
NAMES = [name for horse in OAK.horses for name in horse.names] + [g.id for g in OAK.garments]
MARKS = [",", ".", "!", "?", ":", "\n", "✅", "-", "+", "12", "200 g", "7:30", "'s"]

babble = st.lists(st.sampled_from(WORDS + MARKS), max_size=14).map(" ".join)
talk = st.lists(st.one_of(st.sampled_from(NAMES), st.sampled_from(WORDS), st.sampled_from(MARKS)), max_size=14).map(
    " ".join
)


WORDY = 400  # words of a message so long that it is read in one language only


def steps(text: str) -> int:
    """How many functions are called to read a message: its cost, without a clock."""
    called = 0

    def count(frame: object, event: str, value: object) -> None:
        nonlocal called
        called += event == "call"

    read(text, OAK.people[0], OAK, NOW)  # names, phrases and slips are laid out once
    before = sys.getprofile()
    sys.setprofile(count)
    try:
        read(text, OAK.people[0], OAK, NOW)
    finally:
        sys.setprofile(before)
    return called


def grows(said: str) -> float:
    """How much more it costs to read this said over and over, when it is said twice as often."""
    times = min(1 + WORDY // (1 + said.count(" ")), LONGEST // (2 * (len(said) + 1)))  # all of it is read
    return steps(f"{said} " * 2 * times) / steps(f"{said} " * times)


def said_of(text: str, reply: Reference | None = None) -> tuple[Event, ...]:
    """The facts in a message of the manager of the English barn."""
    return read(text, OAK.people[0], OAK, NOW, reply).events


@given(st.text(max_size=200))
def test_no_text_is_too_strange_to_be_read(text: str) -> None:
    """Any text is read, and is a fact, an ask or chatter."""
    heard = read(text, OAK.people[0], OAK, NOW)

    assert heard.chatter == (not heard.events and heard.ask is None)


@given(talk)
def test_names_and_words_in_any_order_are_read(text: str) -> None:
    """No order of names, words and marks stops the reading, in a conversation or out of it."""
    about = Reference(horses=("Tucker",), garments=("tucker-sheet",))
    for reply in (None, about):
        assert read(text, OAK.people[0], OAK, NOW, reply) == read(text, OAK.people[0], OAK, NOW, reply)


@pytest.mark.parametrize(
    "said",
    ["200", "took Tucker's sheet off and put the liner on", "not the liner, no, the sheet.", "correction", "Tucker,"],
)
def test_what_is_said_twice_as_often_costs_twice_as_much(said: str) -> None:
    """No more than in proportion to its length: the first three once took three times as long."""
    assert grows(said) < 2.2


@settings(max_examples=20)
@given(st.lists(st.sampled_from(NAMES + WORDS + MARKS), min_size=1, max_size=5).map(" ".join))
def test_nothing_costs_more_than_in_proportion_to_its_length(said: str) -> None:
    """Any words of the tables, in any order."""
    assert grows(said) < 2.3


@settings(max_examples=300)
@given(babble)
def test_who_is_not_named_is_not_acted_on(text: str) -> None:
    """Words of the trade without a name move no horse and no garment, save where all are spoken of."""
    everyone = {horse.name for horse in OAK.horses}
    acted = {getattr(event, "horse", None) for event in said_of(text)} - {None}

    assert not acted or acted == everyone or _called_by_a_word(text, OAK)


def _called_by_a_word(text: str, where: Barn) -> bool:
    """A horse whose name is a word of a table ("Sunday") may be meant by that word."""
    return any(horse.name.casefold() in text.casefold().split() for horse in where.horses)


@given(
    st.sampled_from(["hi all", "good morning", "thanks", "just checked", "ok so", "hello team"]),
    st.sampled_from(["thanks", "will check again later", "😊", "coffee is on"]),
)
def test_small_talk_around_a_report_does_not_change_the_horse(before: str, after: str) -> None:
    """The same horse and sign are understood with a greeting before and chatter after."""
    alone = said_of("Tucker is shivering")

    assert said_of(f"{before}, Tucker is shivering. {after}") == alone


@given(st.sampled_from([horse.name for horse in OAK.horses if horse.name != "Sunday"]), st.integers(0, 3))
def test_a_slip_of_the_finger_never_becomes_another_horse(name: str, at: int) -> None:
    """A name with two neighbouring letters swapped is that horse, asked about, or nobody."""
    letters = list(name)
    at = min(at, len(letters) - 2)
    letters[at], letters[at + 1] = letters[at + 1], letters[at]

    assert subjects(said_of("".join(letters) + " is shivering")) <= {name}


def test_what_is_not_a_report_of_the_horse_is_no_event(oak: Barn, oak_now: State) -> None:
    """Questions to people, plans and conditions about a named horse stay silent."""
    for text in (
        "is Tucker sweaty?",
        "Tucker will be cold tonight",
        "if Tucker is cold add a liner",
        "Tucker for sale",
    ):
        assert all(isinstance(e, Asked | Undo | Done) for e in read(text, oak.people[0], oak, oak_now).events)
