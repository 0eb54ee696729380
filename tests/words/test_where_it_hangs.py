"""Where a wet piece was put is not where the horse is; and what "it" is behind a piece."""

import pytest

from tests.words.saying import said, told

OTTO, LOLA, ETOILE = ("otto-sheet", "soaked"), ("canela-impermeable", "soaked"), ("etoile-grosse", "soaked")


@pytest.mark.parametrize(
    "text",
    [
        "Otto's sheet is soaked, hung it in his stall",
        "Otto's sheet is soaked, put it in his stall",
        "Otto's sheet is soaked, left it in his stable",
        "Otto's sheet is soaked, it's hanging in his stable",
    ],
)
def test_a_piece_left_in_the_stall_brings_no_horse_in(text: str) -> None:
    """Only how the piece is."""
    assert told(said(text)) == [OTTO]


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Otto was cold and his sheet is soaked, I hung it in his stall", [("Otto", "cold"), OTTO]),
        ("encina", "Canela tenía frío y su impermeable está empapado, lo colgué en su box", [("Canela", "cold"), LOLA]),
        ("encina", "el impermeable de Canela está empapado, lo dejé en su box", [LOLA]),
        (
            "chenaie",
            "Étoile avait froid et sa grosse est trempée, je l'ai pendue dans son box",
            [("Étoile", "cold"), ETOILE],
        ),
        ("chenaie", "la grosse d'Étoile est trempée, je l'ai mise dans son box", [ETOILE]),
    ],
)
def test_a_sign_was_not_seen_where_the_piece_hangs(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """The sign is of the field, as it is where nothing is said."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text", "place"),
    [
        ("oak", "Otto's sheet is soaked, put him in his stall", ("Otto", "stall")),
        ("oak", "Otto's sheet is soaked so I brought him in", ("Otto", "stall")),
        ("chenaie", "la grosse d'Étoile est trempée, j'ai rentré Étoile au box", ("Étoile", "stall")),
    ],
)
def test_but_whoever_is_led_in_stands_there(name: str, text: str, place: tuple[object, ...]) -> None:
    """The piece, and where the horse is."""
    assert told(said(text, name))[1] == place


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Otto's in his sheet, it's soaked", [("Otto", ("otto-sheet",)), OTTO]),
        ("Otto in his sheet which is soaked", [("Otto", ("otto-sheet",)), OTTO]),
        ("put Otto's sheet on, it's wet", [("Otto", ("otto-sheet",))]),
        ("put Otto's sheet on, it's soaking out", [("Otto", ("otto-sheet",))]),
    ],
)
def test_it_is_the_piece_that_is_soaked_and_the_sky_that_is_wet(text: str, expected: list[tuple[object, ...]]) -> None:
    """Nobody says of the weather that it is soaked, but for "out"."""
    assert told(said(text)) == expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [("put Otto in with Fig", []), ("Otto's in with Fig", []), ("brought Otto in with Fig", [("Otto", "stall")])],
)
def test_in_with_another_is_no_place(text: str, expected: list[tuple[object, ...]]) -> None:
    """Which field or stall that is, nobody says."""
    assert told(said(text)) == expected
