"""Ways of saying a thing, a class a row: what is understood of each, in the barn of Oak Lane."""

import pytest

from tests.words.corpus import barn
from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        # what she had on tells which piece it is, and is no change of clothes
        ("the liner that Tucker had on is wet", [("tucker-liner", "wet")]),
        ("the sheet Otto had on is soaked", [("otto-sheet", "soaked")]),
        # of two names the doubtful one is left out
        ("Tucker and maybe Otto shivering", [("Tucker", "shivering")]),
        ("Tucker y quizás Otto tiritando", [("Tucker", "shivering")]),
        ("Tucker et peut-être Otto grelottent", [("Tucker", "shivering")]),
        # a day is wet, only a horse is soaked
        ("sunday is absolutely soaked", [("Sunday", "wet")]),
        # one more layer, and a layer instead
        ("Clementine has her liner on as well", [("Clementine", ("clem-liner", "clem-sheet"))]),
        ("Lady Grey has been changed into her sheet", [("Lady Grey", ("grey-sheet",))]),
        # an answer with "nope" in it
        ("Tucker nope still shivering", [("Tucker", "shivering")]),
        # mended while speaking
        ("Tucker's sheet is wet, no, his liner", [("tucker-liner", "wet")]),
        ("Otto in his sheet, no sorry his heavy", [("Otto", ("otto-heavy",))]),
        ("Tucker's sheet is wet, I mean Otto's", [("otto-sheet", "wet")]),
        ("Otto in his sheet, no neck", [("Otto", ("otto-sheet",))]),
        ("Otto in his sheet, not the heavy", [("Otto", ("otto-sheet",))]),
        # one horse in another's clothes
        ("Tucker is wearing Otto's sheet", [("Tucker", ("otto-sheet",))]),
        ("Otto's plaid sheet is on Tucker", [("Tucker", ("otto-sheet",))]),
        # a wish beside a danger
        ("keep Tucker in he's shivering", [("Tucker", "shivering")]),
        # a denial denied, a list behind a colon, offs and ons in a row
        ("Tucker hasn't stopped shivering", [("Tucker", "shivering")]),
        ("wet: tucker-sheet, otto-sheet", [("tucker-sheet", "wet"), ("otto-sheet", "wet")]),
        ("Otto: sheet on, heavy off", [("Otto", ("otto-sheet",))]),
        # whose rug a mark was under, and words drawn out
        ("sweat marks under Otto's rug", [("Otto", "sweating")]),
        ("Tucker is soooo sweaty", [("Tucker", "sweating")]),
        # danger is heard through much talk, one horse named before it
        ("Tucker looks like hes shivering really bad can someone go out im in class", [("Tucker", "shivering")]),
        # a day that is over, and lunch
        ("Sunday was hot wasn't it", []),
        ("Sunday lunch sorted", []),
        # everyday questions
        ("is there much wind in the morning?", [("forecast",)]),
        ("when will Otto's heavy be dry", [("otto-heavy", "drying")]),
        ("who have we got left", [("left",)]),
        ("how low is it going tonight", [("forecast",)]),
        ("the plan for Otto", [("Otto", "today")]),
    ],
)
def test_a_way_of_saying_it_is_understood(text: str, expected: list[tuple[object, ...]]) -> None:
    """Exactly that, and nothing beside it."""
    assert told(said(text)) == expected


@pytest.mark.parametrize(
    "text",
    [
        "keep Tucker dry",  # how he is to be
        "nearly put the sheet on Tucker",
        "forgot to put the sheet on Tucker",
        "Tucker pulled Otto's sheet off again",
        "sunday is wet",  # the day
        "sunday was soaked",
        "Tucker the barn cat is sick",
        "Willow was brilliant today",
        "is Tucker warm enough tonight?",
        "she's sweating?",
    ],
)
def test_what_only_sounds_like_a_report_is_left_alone(text: str) -> None:
    """Wishes, days, other animals, praise, questions to people."""
    assert said(text).chatter


@pytest.mark.parametrize(
    "text", ["she's shivering", "the bay mare is shivering by the gate", "está tiritando", "elle grelotte"]
)
def test_who_shivers_and_is_not_named_is_asked_about(text: str) -> None:
    """One of them may be in danger: every horse is a choice."""
    heard = said(text)
    assert heard.ask is not None
    assert (heard.ask.about, len(heard.ask.options)) == ("horse", len(barn("oak").horses))
