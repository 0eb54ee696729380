"""Every language says everything: one contract, each phrasebook."""

import re
from pathlib import Path
from typing import get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.events import GARMENT_WORDS, SIGNS, STYLES, Where
from bot.words.said import LANGUAGES, Phrasebook, fields, fill, phrasebook
from rules.garment import Kind
from rules.reason import Code

BOT = Path(__file__).parents[2] / "bot"
VALUES = {"value": "7", "at": "7 am", "garment": "liner"}


@pytest.fixture(params=LANGUAGES)
def book(request: pytest.FixtureRequest) -> Phrasebook:
    """Each language in turn."""
    return phrasebook(request.param)


@pytest.mark.parametrize("code", Code)
def test_every_reason_has_a_sentence_with_and_without_its_numbers(book: Phrasebook, code: Code) -> None:
    """Whatever the rules say, a person reads it; a number nobody knows is left out, not shown as a gap."""
    full, bare = fill(book.reasons[code], **VALUES), fill(book.reasons[code], value=None, at=None, garment=None)
    for said in (full, bare):
        assert said.strip() == said
        assert said
        assert not re.search(r"[\[\]{}]|  | ,|\(\)|None", said), said


@pytest.mark.parametrize(
    ("part", "words"),
    [
        ("signs", SIGNS),
        ("states", GARMENT_WORDS),
        ("styles", STYLES),
        ("kinds", get_args(Kind)),
        ("short_kinds", get_args(Kind)),
        ("places", get_args(Where)),
    ],
)
def test_every_word_of_an_event_has_its_word(book: Phrasebook, part: str, words: tuple[str, ...]) -> None:
    """Signs, states, clips, clothes and places are all said, and nothing else is."""
    assert set(getattr(book, part)) == set(words)


def test_the_same_sentences_take_the_same_values_in_every_language(book: Phrasebook) -> None:
    """A translation neither loses a name nor waits for one that never comes."""
    english = phrasebook("en")
    assert set(book.lines) == set(english.lines)
    for name, line in english.lines.items():
        assert fields(book.lines[name]) == fields(line), name
    for code, sentence in english.reasons.items():
        assert fields(book.reasons[code]) == fields(sentence), code


def test_other_languages_are_not_english_left_standing(book: Phrasebook) -> None:
    """Sentences of some length differ from the English ones."""
    if book.language == "en":
        return
    english = phrasebook("en")
    same = [n for n, line in english.lines.items() if book.lines[n] == line and len(re.findall(r"[a-z]{3,}", line)) > 4]
    assert same == []


def test_no_sentence_is_missing_and_none_is_left_over() -> None:
    """Each sentence that the code asks for is there, and each that is there is asked for somewhere."""
    code = "\n".join(p.read_text() for p in BOT.rglob("*.py") if "said" not in p.parts)
    asked = set(re.findall(r"say\(\s*f?\"([^\"{}]+)\"", code))
    known = set(phrasebook("en").lines)
    assert asked - known == set()
    assert [name for name in known if not re.search(f"[\"']{name}[\"']", code) and not _made(name)] == []


def _made(name: str) -> bool:
    """Names put together from an event's word."""
    made = ("ask ", "role ", "update ", "board ")
    return name.startswith(made) or name.endswith(" first")


def test_safety_is_told_in_every_language_and_marked_as_common_practice(book: Phrasebook) -> None:
    """The same number of topics; the mark names the veterinarian."""
    assert len(book.safety) == len(phrasebook("en").safety)
    assert re.search("veterin|vétérin", book.lines["common practice"])


def test_days_and_months_are_whole(book: Phrasebook) -> None:
    """Seven days and twelve months, no two alike."""
    assert len(set(book.days)) == 7
    assert len(set(book.months)) == 12


@given(st.text())
def test_a_name_is_never_read_as_a_template(name: str) -> None:
    """A horse called {0}, {at} or [x] is shown as it is called."""
    assert fill("{horse}[ at {at}]", horse=name, at=None) == name
    assert fill("{horse}[ at {at}]", horse=name, at="7") == f"{name} at 7"


def test_a_language_nobody_has_yet_falls_back_to_english() -> None:
    """No post fails for want of a phrasebook."""
    assert phrasebook("sv").language == "en"
