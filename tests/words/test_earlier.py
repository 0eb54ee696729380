"""Words of what is to come tell when it was, beside what is done: "j'ai rentré Caramel tout à l'heure"."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("chenaie", "j'ai rentré Caramel tout à l'heure", [("Caramel", "stall")]),
        ("chenaie", "tout à l'heure on a rentré Caramel", [("Caramel", "stall")]),
        ("encina", "luego metí a Lucero", [("Lucero", "stall")]),
        ("encina", "luego le he puesto el polar a Nube", [("Nube", ("nube-polar",))]),
        ("oak", "brought Fig in later on", [("Fig", "stall")]),
    ],
)
def test_what_is_done_is_told(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """The verb says that it is over."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("chenaie", "on rentre Caramel tout à l'heure"),
        ("encina", "luego meto a Lucero"),
        ("encina", "saque a Lucero luego"),
        ("oak", "bring Fig in later"),
        ("oak", "put on Otto's sheet later"),
        ("oak", "Luca says he brought Fig in later"),
    ],
)
def test_what_is_to_come_is_not(name: str, text: str) -> None:
    """A plan, an order."""
    assert said(text, name).chatter
