"""Words as thumbs and dialects write them mean what they would in a dictionary's spelling."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Tucker's dry an warm underneath", [("Tucker", "comfortable")]),
        ("tucker's sweaty an otto's the same", [("Tucker", "sweating"), ("Otto", "sweating")]),
        ("Fig in an he's shivering", [("Fig", "stall"), ("Fig", "shivering")]),
        ("took the sheet off Clem its soakin", [("Clementine", ()), ("clem-sheet", "soaked")]),
        ("checked Otto's heavy, its still wet", [("otto-heavy", "wet")]),
        ("tucker's drookit an his liner's soaked", [("Tucker", "wet"), ("tucker-liner", "soaked")]),
        ("tucker's no sweaty ony mair", [("Tucker", "comfortable")]),
        ("Fig is cold, Tucker to", [("Fig", "cold"), ("Tucker", "cold")]),
        ("took the sheet off tucker n put the green 1 on him", [("Tucker", ("tucker-250",))]),
        ("whit's a'body wearin the nicht?", [("today",)]),
    ],
)
def test_what_sounds_alike_is_read_as_it_was_meant(text: str, expected: list[tuple[object, ...]]) -> None:
    """What "an" and "its" stand for, and words as Scots say them."""
    assert told(said(text)) == expected


@pytest.mark.parametrize(
    "text",
    [
        "an otter ran past, its wet nose shining",
        "that new rug has lost its cold weather fill",
        "Otto snorts at everything",
        "Otto wormed",
        "bring Tucker a torch, the diesel gelled",
        "the dog wants its dry bed",
        "an old sheet would do",
    ],
)
def test_an_article_and_a_thing_of_its_own_stay_what_they_are(text: str) -> None:
    """Nothing is told of any horse."""
    assert said(text).chatter


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("took the sheet off Clem, it's soaked", [("Clementine", ()), ("clem-sheet", "soaked")]),
        ("sheet off Clem it's torn", [("Clementine", ()), ("clem-sheet", "torn")]),
        ("put the sheet on Clem, it's wet", [("Clementine", ("clem-sheet",))]),  # the weather, perhaps
        ("Tucker's liner is torn. put the sheet on Clem, it's ripped", [
            ("tucker-liner", "torn"), ("Clementine", ("clem-sheet",)), ("clem-sheet", "torn"),
        ]),
        ("sheets off Clem and Fig, it's soaked", [("Clementine", ()), ("Fig", ("fig-stable",))]),
    ],
)  # fmt: skip
def test_it_is_the_piece_just_moved(text: str, expected: list[tuple[object, ...]]) -> None:
    """Never a piece spoken of before, and no horse."""
    assert told(said(text)) == expected


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "Otto hoses, please someone, the paddock is a mess"),
        ("oak", "Fig's paving needs weeding"),
        ("encina", "Canela llamadas perdidas del veterinario"),
        ("encina", "deja a Trueno y a Nube atados que viene el herrador"),
        ("encina", "los papeles de Canela estan en las casas nuevas"),
        ("chenaie", "Filou a mangé la motte"),
    ],
)
def test_a_frequent_word_is_no_slip_of_the_trades(name: str, text: str) -> None:
    """Hoses are no holes, calls no galls: what looks like a word of the tables, but is one of its own."""
    assert not said(text, name).events


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "swapped fig 2 his hvy cos its gonna b cold l8r", [("Fig", ("fig-heavy",))]),
        ("oak", "otto proper swty 2day", [("Otto", "sweating")]),
        ("oak", "otto shvrng pls some1 come", [("Otto", "shivering")]),
        ("oak", "ottos hvy is trn", [("otto-heavy", "torn")]),
        ("oak", "is it gna rain 2moro", [("forecast",)]),
        ("oak", "got 2 go 2 the dentist l8r m8", []),
        ("oak", "fed otto 2 scoops", []),
        ("encina", "moro perfe, seco y calentito", [("Moro", "comfortable")]),
        ("encina", "paloma tien frio n l prado", [("Paloma", "cold")]),
        ("encina", "le e qitao la mnta a nube xq staba sudada", [("Nube", ()), ("Nube", "sweating")]),
        ("encina", "todo perfe x aki", []),
        ("encina", "perfe grax", []),
        ("chenaie", "perle tb, ri1 a dire", [("Perle", "comfortable")]),
        ("chenaie", "ulysse tranble ds le pré", [("Ulysse", "shivering")]),
        ("chenaie", "il va geler 2main ?", [("forecast",)]),
        ("chenaie", "ct tro bi1 le cours", []),
    ],
)
def test_numbers_for_sounds_and_dropped_vowels(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """As thumbs text; a number of things stays a number."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Tucker has nothng on", [("Tucker", ())]),
        ("oak", "Otto is not shiverng any mroe", [("Otto", "comfortable")]),
        ("oak", "tuckerrs sheet is soaked", [("tucker-sheet", "soaked")]),
        ("oak", "put Tucker in thw feild", [("Tucker", "field")]),
        ("oak", "taken tuckers sheet of, he was boiling", [("Tucker", ()), ("Tucker", "hot")]),
        ("oak", "Tucker is warm, but not sweating", [("Tucker", "hot")]),
        ("oak", "Tucker is nice and warm, not sweating", [("Tucker", "comfortable")]),
        ("encina", "metida Canela enel box", [("Canela", "stall")]),
        ("encina", "la manta de Lucero está en la lavadira", [("lucero-manta", "washing")]),
        ("chenaie", "Étoile ne trenble plus", [("Étoile", "comfortable")]),
        ("chenaie", "jai rentrré Caramel au bos", [("Caramel", "stall")]),
    ],
)
def test_a_slip_of_a_thumb_is_read_as_it_was_meant(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """A letter left out, written twice, swapped, or its neighbour on the keys; a space that was not hit."""
    assert told(said(text, name)) == expected
