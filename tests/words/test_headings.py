"""A list under a heading, as managers write it: each line tells what the heading says."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Shivering:\n- Otto\n- Fig", [("Otto", "shivering"), ("Fig", "shivering")]),
        ("oak", "Clipped today:\n- Willow, trace\n- Otto, bib", [("Willow", "trace"), ("Otto", "bib")]),
        ("oak", "Clips:\nOtto - bib\nWillow - trace", [("Otto", "bib"), ("Willow", "trace")]),
        ("oak", "Wet rugs:\nOtto's heavy\nTucker's liner", [("otto-heavy", "wet"), ("tucker-liner", "wet")]),
        ("oak", "Gone to the wash:\n1. the plaid\n2. Fig's heavy", [
            ("otto-sheet", "washing"), ("fig-heavy", "washing"),
        ]),
        ("oak", "Out in the field\n- Otto\n- Fig", [("Otto", "field"), ("Fig", "field")]),
        ("oak", "Ridden today:\n\n- Otto\n- Fig\n\nTorn:\n- Otto's heavy", [
            ("Otto",), ("Fig",), ("otto-heavy", "torn"),
        ]),
        ("oak", "Torn: the plaid, Tucker's liner", [("otto-sheet", "torn"), ("tucker-liner", "torn")]),
        ("oak", "Clipped today: Willow trace and Otto bib", [("Willow", "trace"), ("Otto", "bib")]),
        ("oak", "Soaked through, the plaid", [("otto-sheet", "soaked")]),
        ("oak", "Strap broken, Otto's heavy", [("otto-heavy", "strap broken")]),
        ("oak", "Bare from now on, please:\n- Otto\n- Fig", [("Otto", True), ("Fig", True)]),
        ("oak", "After the lesson:\n- Otto sweaty\n- Fig fine", [
            ("Otto", "sweating", "after work"), ("Fig", "comfortable", "after work"),
        ]),
        ("encina", "Después del paseo:\n* Canela, sudadísima\n* Moro, a gusto", [
            ("Canela", "sweating", "after work"), ("Moro", "comfortable", "after work"),
        ]),
        ("encina", "Han dado clase hoy:\n1. Lucero\n2. Canela", [("Lucero",), ("Canela",)]),
        ("encina", "Sin manta:\nMoro\nCanela", [("Moro", ()), ("Canela", ())]),
        ("encina", "Puesto: Canela forro", [("Canela", ("canela-forro",))]),
        ("encina", "Tiritando:\n- Canela\n- Moro", [("Canela", "shivering"), ("Moro", "shivering")]),
        ("encina", "Esquilados hoy:\n- Lucero: hunter\n- Moro: trace", [("Lucero", "hunter"), ("Moro", "trace")]),
        ("chenaie", "Tontes faites aujourd'hui :\n- Perle : chasse\n- Filou : trace", [
            ("Perle", "hunter"), ("Filou", "trace"),
        ]),
        ("chenaie", "En sueur ce matin :\n- Perle\n- Filou", [("Perle", "sweating"), ("Filou", "sweating")]),
    ],
)  # fmt: skip
def test_each_line_tells_what_its_heading_says(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """With bullets, with numbers, or with a name and nothing else on each line; until the next heading."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    "text",
    [
        "To check:\n- Otto\n- Fig",
        "Cold tonight:\n- Otto\n- Fig",
        "To clip on Friday:\n- Otto\n- Fig",
        "Not clipped yet:\n- Otto",
        "If shivering, bring in:\n- Otto\n- Fig",
        "Wet last winter:\n- Otto's heavy",
        "Who is sweating?\n- Otto\n- Fig",
        "Shopping, wet as it is:\n- hay\n- boots",
        "To buy:\n- canela\n- azúcar",
        "Soaked, the plaid?",
        "Soaked, the plaid is the last thing I'd use",
        "Torn: one pair of gloves, Otto's owner is cross",
        "Clipped today:\n- Otto wants new boots\n- Fig goes to the show",
    ],
)
def test_under_what_is_still_to_come_nothing_is_told(text: str) -> None:
    """Nor under weather and questions; nor by a line that says something else."""
    assert not said(text).events


def test_a_line_that_tells_something_itself_is_told_for_itself() -> None:
    """In the end somebody is fine."""
    text = "Sweating this morning:\n- Otto\n- Fig fine"
    assert told(said(text)) == [("Otto", "sweating"), ("Fig", "comfortable")]
