"""What a barn has heard before makes its next message quicker to read, and changes nothing of it."""

import random

import pytest

from bot.barn import load
from bot.events import Seen
from bot.state import as_filed
from bot.words import read
from tests.words.corpus import HERE as CORPUS
from tests.words.others import SETS, file_of, messages
from tests.words.saying import said

SOME = 40  # of a set


@pytest.mark.parametrize("name", SETS)
def test_a_message_means_the_same_in_a_barn_that_has_heard_it_all(name: str) -> None:
    """Read in order in one barn, and each again in another order in the same barn and in a barn just loaded."""
    old, new = load(file_of(f"{name}.yaml")), load(file_of(f"{name}.yaml"))
    texts = [message.text for message in messages(name)]
    before = {text: read(text, old.people[0], old, as_filed(old)) for text in texts}
    for text in random.Random(7).sample(texts, SOME):
        assert before[text] == read(text, old.people[0], old, as_filed(old)), text
        assert before[text] == read(text, new.people[0], new, as_filed(new)), text


def test_a_word_said_by_itself_still_begins_its_phrase() -> None:
    """As in "sheet off Fig" and then "off her feed", which is another thing."""
    assert said("sheet off Fig").events
    assert [e.sign for e in said("Willow is off her feed").events if isinstance(e, Seen)] == ["unwell"]


def test_what_one_barn_heard_is_not_heard_in_another() -> None:
    """Willow is a horse in one barn only."""
    elsewhere = load(CORPUS / "encina.yaml")
    assert said("Willow is shivering").events
    assert not read("Willow is shivering", elsewhere.people[0], elsewhere, as_filed(elsewhere)).events
