"""Several pieces, or several horses, told of at once: each has what is said of all."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "put Tucker's liner and Otto's sheet in the wash", [
            ("tucker-liner", "washing"), ("otto-sheet", "washing"),
        ]),
        ("oak", "can't find Tucker's liner or Otto's sheet", [("tucker-liner", "missing"), ("otto-sheet", "missing")]),
        ("oak", "Tucker's liner and Otto's sheet are damp", [("tucker-liner", "damp"), ("otto-sheet", "damp")]),
        ("oak", "which rugs are damp?", [("drying",)]),
        ("encina", "no encuentro el forro de Lucero ni la gorda de Canela", [
            ("lucero-forro", "missing"), ("canela-gorda", "missing"),
        ]),
        ("oak", "Otto (cold), Fig (not cold)", [("Otto", "cold"), ("Fig", "comfortable")]),
        ("encina", "tanto Canela como Moro tienen frío", [("Canela", "cold"), ("Moro", "cold")]),
    ],
)  # fmt: skip
def test_each_has_what_is_told_of_all(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Joined by "and", "or", brackets."""
    assert told(said(text, name)) == expected


def test_a_sign_over_the_name_of_no_horse_is_told_of_nobody() -> None:
    """Least of all of those above it."""
    assert told(said("sweating: Otto. cold: Zorgle")) == [("Otto", "sweating")]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Otto sweats", [("Otto", "sweating")]),
        ("Otto in the box shivers very much", [("Otto", "shivering", "stall")]),
        ("if Otto sweats take it off", []),
        ("Otto always sweats", []),
        ("my cousin's horse sweats", []),
    ],
)
def test_sweats_is_of_now_where_nothing_supposes_it(text: str, expected: list[tuple[object, ...]]) -> None:
    """As people say it whose own language has no "is sweating"."""
    assert told(said(text)) == expected
