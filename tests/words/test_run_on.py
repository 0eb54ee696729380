"""Two thoughts with no mark between them, or only "also": each horse keeps its own."""

from itertools import permutations

import pytest

from tests.words.saying import said, told

THOUGHTS = {
    "oak": {
        "Otto is cold": ("Otto", "cold"),
        "Tucker is sweating": ("Tucker", "sweating"),
        "Otto is in his stall": ("Otto", "stall"),
        "Lady Grey is wet": ("Lady Grey", "wet"),
        "Clem is bare": ("Clementine", ()),
        "Willow isn't cold": ("Willow", "comfortable"),
        "put the sheet on Bramble": ("Bramble", ("bramble-sheet",)),
    },
    "encina": {
        "Canela tiene frío": ("Canela", "cold"),
        "Moro está sudando": ("Moro", "sweating"),
        "metí a Lucero": ("Lucero", "stall"),
        "Paloma sin manta": ("Paloma", ()),
        "he montado a Nube": ("Nube",),
    },
    "chenaie": {
        "Étoile a froid": ("Étoile", "cold"),
        "Filou transpire": ("Filou", "sweating"),
        "j'ai rentré Caramel": ("Caramel", "stall"),
        "Perle est nue": ("Perle", ()),
        "j'ai monté Ulysse": ("Ulysse",),
    },
}
JOINED = {
    "oak": (" ", " also ", " and ", "\n", " while ", ", while ", " although ", " / "),
    "encina": (" ", " también ", " y ", " mientras que ", ", mientras ", " aunque "),
    "chenaie": (" ", " aussi ", " et ", " alors que ", " bien que "),
}


@pytest.mark.parametrize(("name", "joined"), [(name, by) for name, joins in JOINED.items() for by in joins])
def test_each_horse_keeps_its_own(name: str, joined: str) -> None:
    """Whatever joins them, or nothing."""
    for one, other in permutations(THOUGHTS[name], 2):
        both = {THOUGHTS[name][one], THOUGHTS[name][other]}
        if THOUGHTS[name][one][0] != THOUGHTS[name][other][0]:
            assert set(told(said(one + joined + other, name))) == both, one + joined + other


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Otto is cold Tucker also", [("Otto", "cold"), ("Tucker", "cold")]),
        ("encina", "Canela está mojada y Moro también", [("Canela", "wet"), ("Moro", "wet")]),
        ("chenaie", "Étoile est trempée, Filou aussi", [("Étoile", "wet"), ("Filou", "wet")]),
    ],
)
def test_too_behind_a_name_is_the_same_of_another(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """With nothing of its own behind it."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "while Otto is cold, Tucker is fine", [("Otto", "cold"), ("Tucker", "comfortable")]),
        ("encina", "aunque Canela tiene frío Moro está bien", [("Canela", "cold"), ("Moro", "comfortable")]),
        ("oak", "while Otto is cold keep Tucker in", []),
        ("oak", "don't take Otto's heavy off while Tucker is cold", []),
        ("encina", "mientras que Canela esté sudando no le pongas nada", []),
    ],
)
def test_while_tells_of_two_or_supposes(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """One set beside another is told of; what is to be done meanwhile is no report."""
    assert told(said(text, name)) == expected


def test_sweat_here_and_rain_there_leave_nothing_open() -> None:
    """A slash is an "or" only between two words for the same horse."""
    assert told(said("Otto is sweating / Tucker is wet", "oak")) == [("Otto", "sweating"), ("Tucker", "wet")]
    assert said("Otto is sweating / wet", "oak").ask


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Otto is cold brought him in", [("Otto", "cold"), ("Otto", "stall")]),
        ("oak", "Otto isn't cold any more took his heavy off", [("Otto", "comfortable"), ("Otto", ())]),
        ("encina", "Canela está sudando la metí", [("Canela", "sweating"), ("Canela", "stall")]),
    ],
)
def test_what_was_done_to_her_follows_how_she_is(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """A pronoun behind it is the horse just told of."""
    assert told(said(text, name)) == expected
