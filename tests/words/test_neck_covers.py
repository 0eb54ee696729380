"""A neck that is worn, and a neck that is hers."""

from pathlib import Path

import pytest

from bot.barn import load
from tests.words.saying import said_in, told

DEMO = load(Path(__file__).parents[2] / "demo_barn.yaml")
COVERED = ("Juniper", ("juniper-heavy", "juniper-neck"))
ALL_OF_HERS = ("Juniper", ("juniper-liner", "juniper-heavy", "juniper-neck"))
WITHOUT = ("Juniper", ("juniper-liner", "juniper-medium"))


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Juniper in heavy and neck", COVERED),
        ("Juniper: heavy, neck", COVERED),
        ("Juniper in heavy+neck", COVERED),
        ("Juniper en grosse avec l'encolure", COVERED),
        ("neck and heavy on Juniper", ALL_OF_HERS),
        ("heavy & neck on Juniper, sheet on Maple", ALL_OF_HERS),
        ("put the neck on Juniper with her heavy", ALL_OF_HERS),
        ("took Juniper's neck off, left the rest", WITHOUT),
        ("j'ai enlevé l'encolure de Juniper", WITHOUT),
    ],
)
def test_a_neck_told_with_a_rug_or_put_on_is_her_cover(text: str, expected: tuple[object, ...]) -> None:
    """What she wears, from the skin outward."""
    assert told(said_in(DEMO, text))[0] == expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Juniper's sheet wet and neck damp", [("juniper-sheet", "wet"), ("Juniper", "wet")]),
        ("Juniper's neck is soaked", [("Juniper", "wet")]),
        ("Juniper's sheet, neck and shoulders rubbed", [("Juniper", "rubbed")]),
        ("Juniper sweaty under her heavy and neck", [("Juniper", "sweating")]),
        ("Maple's liner damp at the neck", [("maple-liner", "damp")]),
        ("took mud off Juniper's neck", []),
        ("put cream on Juniper's neck", []),
    ],
)
def test_any_other_neck_is_the_horses(text: str, expected: list[tuple[object, ...]]) -> None:
    """How she is, where her rug is wet, or nothing."""
    assert told(said_in(DEMO, text)) == expected
