"""What people ask beyond the plan, answered in the group: hand-over, handling, pictures, weeks."""

from collections.abc import Callable
from datetime import datetime
from io import StringIO
from pathlib import Path

import pytest

from bot.answer import safety
from bot.barn import Barn, Person
from bot.barn_day import BarnDay
from bot.chat.script import Line
from bot.chat.terminal import Terminal, midnight, play
from bot.forecast import from_file
from bot.state import as_filed
from bot.store import Store
from bot.words import read
from bot.words.heard.topics import TOPICS
from bot.words.said import LANGUAGES, phrasebook

MORNING = Path(__file__).parents[2] / "bot" / "demo" / "morning.csv"
Said = Callable[..., str]


@pytest.fixture
def told(barn: Barn, tmp_path: Path) -> Said:
    """A Thursday played in a terminal: lines "15:00 Theo: handover"; gives everything that was printed."""

    def transcript(*lines: str) -> str:
        day = datetime(2026, 11, 26, tzinfo=barn.zone)
        spoken = []
        for line in lines:
            clock, _, said = line.partition(" ")
            who, _, text = said.partition(": ")
            spoken.append(Line(day.replace(hour=int(clock[:2]), minute=int(clock[3:])), who, text))
        forecast = from_file(MORNING, day.replace(hour=5))
        out = StringIO()
        core = BarnDay(barn, Store.memory(), lambda at: forecast, since=midnight(day))
        play(Terminal(core, barn.zone, tmp_path, out=out), spoken, spoken[-1].at, lambda path, at: None)
        return out.getvalue()

    return transcript


def test_a_change_of_shift_hears_who_is_done_and_what_is_broken(told: Said) -> None:
    """One word, and the next groom knows where the round stands; nothing is done that nobody said."""
    text = told("07:20 Inés: Maple done", "11:00 Theo: handover").partition("Theo: handover")[2]

    assert "Done: Maple." in text
    assert "still to do" in text
    assert "Otter's rain sheet: strap broken" in text


@pytest.mark.parametrize(
    ("who", "question", "part"),
    [
        ("Ruth", "which strap first?", "Chest first"),
        ("Theo", "how do I put a rug on", "Chest first"),
        ("Theo", "rubs?", "withers"),
        ("Inés", "¿qué correa primero?", "Primero el pecho"),
        ("Maëlle", "frottements ?", "garrot"),
    ],
)
def test_handling_is_told_in_the_askers_language(told: Said, who: str, question: str, part: str) -> None:
    """Order of straps, rub points and the like, marked as common practice, the veterinarian first."""
    text = told(f"09:00 {who}: {question}").rpartition(question)[2]

    assert part in text
    assert any(word in text for word in ("veterinarian", "veterinario", "vétérinaire"))


def test_a_picture_of_a_horse_is_sent_on_request(told: Said, tmp_path: Path) -> None:
    """Its last days with margins, outfits and signs."""
    text = told("08:40 Inés: Maple sweaty", "15:00 Ruth: picture of Maple").partition("Ruth: picture")[2]

    shown = Path(text.partition("[picture: ")[2].partition("]")[0])
    assert shown.parent == tmp_path
    assert shown.read_bytes().startswith(b"\x89PNG")


def test_a_horses_week_tells_what_it_wore_and_what_people_saw(told: Said) -> None:
    """As asked by anybody of the barn, in their own language."""
    text = told("08:40 Inés: Maple sweaty", "15:00 Ruth: how was Maple this week?", "15:02 Maëlle: la semaine de Maple")

    assert "Seen: Thu 26 Nov sweating" in text
    assert "Vu : jeu. 26 nov. transpire" in text


@pytest.mark.parametrize(
    "chatter",
    [
        "Maple rubs",
        "the handover of the keys is at nine",
        "I like that picture of Maple in the snow",
        "which strap broke",
        "layers",
        "the straps?! again",
        "how was your week?",
    ],
)
def test_talk_that_only_sounds_like_such_a_question_is_none(barn: Barn, chatter: str) -> None:
    """Only a phrase that is the whole message asks beyond the plan."""
    heard = read(chatter, barn.person("Theo"), barn, as_filed(barn))

    assert not any(getattr(event, "topic", None) for event in heard.events)


def test_the_contracts_words_stay_as_they_are(barn: Barn) -> None:
    """A question beyond the plan is still of one of the seven kinds, and shows nothing else."""
    theo: Person | None = barn.person("Theo")
    asked = [read(t, theo, barn, as_filed(barn)).events[0].as_json() for t in ("handover", "rubs?", "Maple's week")]

    assert asked == [
        {"kind": "question", "about": "left"},
        {"kind": "question", "about": "help"},
        {"kind": "question", "about": "state", "horse": "Maple"},
    ]


def test_every_language_knows_every_topic() -> None:
    """What can be asked in one language can be asked, and is answered, in each."""
    for language, table in TOPICS.items():
        assert set(table) == set(TOPICS["en"]), language
    handling = set(TOPICS["en"]) - {"handover", "picture", "week", "wardrobe"}
    for language in LANGUAGES:
        told = {topic: safety(topic, language) for topic in phrasebook("en").safety}
        assert set(told) == handling
        assert set(told.values()) == {safety(topic, language) for topic in phrasebook(language).safety}
