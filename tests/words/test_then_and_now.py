"""Yesterday otherwise than today, and one horse otherwise than another."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Otto was shivering yesterday, today he is fine", ("Otto", "comfortable")),
        ("oak", "Otto was shivering yesterday evening. He is not shivering any more", ("Otto", "comfortable")),
        ("oak", "Otto was fine yesterday and today he's sweating", ("Otto", "sweating")),
        ("oak", "Otto was cold last night now he's fine", ("Otto", "comfortable")),
        ("oak", "Otto's sheet was soaked yesterday, it's dry now", ("otto-sheet", "dry")),
        ("encina", "ayer Canela estaba bien y hoy tirita", ("Canela", "shivering")),
        ("encina", "anoche Canela tiritaba ahora está bien", ("Canela", "comfortable")),
        ("encina", "ayer el impermeable de Canela estaba empapado; hoy ya está seco", ("canela-impermeable", "dry")),
        ("chenaie", "Étoile tremblait hier, aujourd'hui tout va bien", ("Étoile", "comfortable")),
        ("chenaie", "la grosse d'Étoile était trempée hier, là elle est sèche", ("etoile-grosse", "dry")),
    ],
)
def test_only_how_it_is_now_is_news(name: str, text: str, expected: tuple[object, ...]) -> None:
    """What was so yesterday only says whom "she" means."""
    assert told(said(text, name)) == [expected]


def test_what_was_yesterday_alone_is_no_news() -> None:
    """Nor is what follows it of something else."""
    assert said("Otto was shivering yesterday").chatter
    assert said("Otto won his class yesterday! Soaked, but happy").chatter


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Otto is sweating but not Tucker", [("Otto", "sweating"), ("Tucker", "comfortable")]),
        ("oak", "Otto is sweating but Tucker isn't", [("Otto", "sweating"), ("Tucker", "comfortable")]),
        ("encina", "Canela suda pero no Moro", [("Canela", "sweating"), ("Moro", "comfortable")]),
        ("chenaie", "Étoile transpire mais pas Filou", [("Étoile", "sweating"), ("Filou", "comfortable")]),
        ("chenaie", "Étoile a trop chaud, mais elle ne transpire pas encore", [("Étoile", "hot")]),
        ("chenaie", "Étoile a chaud sans transpirer", [("Étoile", "hot")]),
    ],
)
def test_of_whom_it_is_not_so(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """What is denied of one is told of that one, and takes nothing from the other."""
    assert told(said(text, name)) == expected


def test_it_is_the_piece_and_he_the_horse() -> None:
    """One after the other, with no more than a comma between."""
    heard = said("took the sheet off Otto, its soaked, hes in his heavy now")

    assert told(heard) == [("otto-sheet", "soaked"), ("Otto", ("otto-heavy",))]


def test_the_same_of_anothers_piece_and_of_her_own() -> None:
    """The word for it is left out."""
    assert told(said("Otto's sheet is wet and so is Clem's")) == [("otto-sheet", "wet"), ("clem-sheet", "wet")]
    assert told(said("Otto is soaked and so is his sheet")) == [("Otto", "wet"), ("otto-sheet", "soaked")]


def test_two_pieces_swapped_for_one() -> None:
    """What stood before "for" came off."""
    heard = said("swapped Lady Grey's liner and sheet for the spare sheet")

    assert told(heard) == [("Lady Grey", ("spare-sheet",))]


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "took Lady Grey's liner and sheet off", ("Lady Grey", ())),
        ("oak", "Lady Grey's liner and sheet off, spare sheet on", ("Lady Grey", ("spare-sheet",))),
        ("oak", "Clem's sheet off, liner and spare sheet on", ("Clementine", ("clem-liner", "spare-sheet"))),
        ("oak", "Clem's liner off, sheet on now", ("Clementine", ("clem-sheet",))),
    ],
)
def test_all_that_is_listed_came_off_or_went_on(name: str, text: str, expected: tuple[object, ...]) -> None:
    """Both of "her liner and sheet", not only the last."""
    assert told(said(text, name)) == [expected]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Otto was sweaty so turned him out in just the sheet", [("Otto", ("otto-sheet",)), ("Otto", "field")]),
        ("Otto had his heavy on for the rain, off again now", [("Otto", ())]),
        ("turned Otto out for an hour, back in now", [("Otto", "stall")]),
        ("Otto soaked, no rug on, brought him in", [("Otto", "wet"), ("Otto", ()), ("Otto", "stall")]),
    ],
)
def test_how_it_stands_at_the_end(text: str, expected: list[tuple[object, ...]]) -> None:
    """The last word on where he is and what he wears."""
    rows = told(said(text))
    assert [row for row in rows if row in expected] == expected
    assert sum(len(row) == 2 and isinstance(row[1], tuple) for row in rows) <= 1
