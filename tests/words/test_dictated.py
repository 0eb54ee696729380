"""A message said to a telephone: the marks said aloud are marks; where nobody dictates, they are words."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "on my way back comma Otto is cold period took the sheet off Bramble period", [
            ("Otto", "cold"), ("Bramble", ()),
        ]),
        ("encina", "estoy en un semáforo punto Canela está sudando por el cuello coma Moro bien punto besos", [
            ("Canela", "sweating"), ("Moro", "comfortable"),
        ]),
        ("chenaie", "je suis en voiture virgule Filou a froid point Perle est nue point à demain", [
            ("Filou", "cold"), ("Perle", ()),
        ]),
    ],
)  # fmt: skip
def test_marks_said_aloud_are_marks(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Two of them or more, and no more of them written."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("encina", "Canela está en su punto, Moro también está en su punto", [
            ("Canela", "comfortable"), ("Moro", "comfortable"),
        ]),
        ("encina", "que coma algo Moro, tiene frío", [("Moro", "cold")]),
        ("chenaie", "Filou a froid, c'est le point noir", [("Filou", "cold")]),
    ],
)  # fmt: skip
def test_a_word_is_a_word(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Behind an article, or where no other is said."""
    assert told(said(text, name)) == expected
