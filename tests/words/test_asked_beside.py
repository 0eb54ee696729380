"""A question to the bot beside something else: both are heard, and a question to people hides no report."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "what's Otto in tonight, Sam's not answering", [("Otto", "today")]),
        ("oak", "how's Fig, couldn't get down there today", [("Fig", "state")]),
        ("oak", "who's left, I've got ten minutes", [("left",)]),
        ("oak", "just off the tractor, who's left?", [("left",)]),
        ("oak", "finished the haynets, what's Otto wearing tonight?", [("Otto", "today")]),
        ("oak", "Otto's in, who's left?", [("left",), ("Otto", "stall")]),
        ("oak", "what's Otto in tonight, he's shivering", [("Otto", "today"), ("Otto", "shivering")]),
        ("oak", "brought Otto in, Sam are you coming for Fig?", [("Otto", "stall")]),
        ("oak", "Otto's soaked, Sam did you bring Fig in?", [("Otto", "wet")]),
        ("oak", "are you coming for Otto, he's sweating", [("Otto", "sweating")]),
        ("encina", "¿qué lleva Moro hoy?, no me coge nadie el teléfono", [("Moro", "today")]),
        ("chenaie", "qui reste à faire, j'ai dix minutes", [("left",)]),
    ],
)
def test_each_part_is_heard(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """The question whoever writes why, the report though a question stands beside it."""
    heard = said(text, name)
    assert (told(heard), heard.ask) == (expected, None)


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "is Otto sweating, I can't see from here"),
        ("oak", "Sam are you coming for Fig, it's late"),
        ("oak", "snow on thursday, what a pain"),
        ("encina", "dan nieve para el jueves, qué pereza"),
        ("chenaie", "Quelle couverture me conseillez-vous d'acheter, plutôt 200 ou 300 grammes ?"),
    ],
)
def test_what_is_asked_of_people_stays_with_them(name: str, text: str) -> None:
    """And so does talk that only begins like a question."""
    assert said(text, name).chatter
