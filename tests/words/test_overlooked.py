"""Danger that no grammar catches is still heard; what only speaks of danger is not."""

import pytest

from bot.barn import demo_path, load
from tests.words.saying import said_in

BARN = load(demo_path())


@pytest.mark.parametrize(
    "text",
    [
        "Had to bring Otter in, shivering",
        "Otter brought in shivering like mad poor lad",
        "rentré Otter qui grelottait",
        "Otter needs a rug, he's shivering",
        "otter needs a blanket he is shivering",
        "Otter necesita manta, está temblando",
        "Otter a besoin d'une couverture, il tremble",
        "hi, the new kid here, Otter is shivering what do I do??",
    ],
)
def test_shivering_is_heard_however_it_is_said(text: str) -> None:
    """One horse named for certain, and the word: somebody must look."""
    found = [(e.horse, e.sign) for e in said_in(BARN, text).events if e.kind == "sign"]  # type: ignore[attr-defined]
    assert found == [("Otter", "shivering")]


@pytest.mark.parametrize(
    "text",
    [
        "if otter is shivering call me",
        "is otter shivering?",
        "otter was shivering last winter",
        "my hands are shivering holding Otter",
        "nobody saw Otter shivering",
        "tell me when Otter starts shivering",
        "Pip and Otter's owner is shivering",
        "Otter needs a rug, I'm shivering",
        "put a rug on Otter if he's shivering",
        "gotta get Otter a rug, shivering just thinking of it",
        "Otter should have a rug or he'll be shivering",
    ],
)
def test_talk_of_shivering_is_no_report(text: str) -> None:
    """Suppositions, questions, the past, people."""
    events = said_in(BARN, text).events
    assert [e for e in events if e.kind == "sign"] == []
