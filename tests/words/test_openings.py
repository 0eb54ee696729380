"""What opens a speech says nothing of a horse: "no, Otto is cold", "so Otto is in his heavy"."""

import pytest

from tests.words.saying import said, told

SAYINGS = {
    "oak": {
        "Otto is cold": ("Otto", "cold"),
        "Otto's in his heavy": ("Otto", ("otto-heavy",)),
        "Tucker's sheet is soaked": ("tucker-sheet", "soaked"),
        "brought Fig in": ("Fig", "stall"),
        "rode Tucker": ("Tucker",),
        "Clem is bare": ("Clementine", ()),
    },
    "encina": {
        "Canela tiene frío": ("Canela", "cold"),
        "Moro está sudando": ("Moro", "sweating"),
        "metí a Lucero": ("Lucero", "stall"),
        "Paloma va sin manta": ("Paloma", ()),
    },
    "chenaie": {
        "Étoile a froid": ("Étoile", "cold"),
        "Perle est nue": ("Perle", ()),
        "j'ai rentré Caramel": ("Caramel", "stall"),
        "j'ai monté Ulysse": ("Ulysse",),
    },
}
OPENINGS = {
    "oak": ("no, ", "No wait, ", "nope, ", "sorry, ", "actually ", "hi all, ", "9am: ", "handover: ", "- ", "1) "),
    "encina": ("no, ", "perdón, ", "en realidad ", "ojo, ", "relevo: ", "dejo el turno: ", "PD: "),
    "chenaie": ("non, ", "non ", "pardon, ", "en fait ", "consignes : ", "au fait, ", "9h : "),
}


@pytest.mark.parametrize(("name", "opening"), [(name, one) for name, every in OPENINGS.items() for one in every])
def test_what_opens_a_speech_changes_nothing(name: str, opening: str) -> None:
    """A correction, a greeting, an hour, a mark of a list."""
    for text, expected in SAYINGS[name].items():
        assert told(said(opening + text, name)) == [expected], opening + text


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "No Otto is cold", [("Otto", "cold")]),
        ("oak", "no rug on Otto", [("Otto", ())]),
        ("oak", "no, Otto's in the heavy, not the sheet", [("Otto", ("otto-heavy",))]),
        ("encina", "No metí a Lucero", []),
        ("encina", "a Lucero le cambié el forro por la de 200", [("Lucero", ("lucero-manta",))]),
    ],
)
def test_no_before_a_name_denies_nothing_and_before_a_verb_it_may(
    name: str, text: str, expected: list[tuple[object, ...]]
) -> None:
    """Spanish denies what it says behind "no"; nobody denies a horse so."""
    assert told(said(text, name)) == expected
