"""What somebody did first, of no horse, and what was done or seen next."""

import pytest

from tests.words.saying import said, told

OFF = [("Clementine", ())]
TORN = [("canela-gorda", "torn")]


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "I popped in and took Clementine's sheet off", OFF),
        ("oak", "did the hay and took Clementine's sheet off", OFF),
        ("oak", "I did the mucking out then took Clementine's sheet off", OFF),
        ("oak", "fed the chickens and took Clementine's sheet off", OFF),
        ("oak", "did the yard and put Otto's sheet on", [("Otto", ("otto-sheet",))]),
        ("oak", "got Otto in finally, he dragged me through the bog", [("Otto", "stall")]),
        (
            "oak",
            "Clementine was cold, left her in her sheet",
            [("Clementine", "cold"), ("Clementine", ("clem-sheet",))],
        ),
        ("oak", "if anybody is making coffee I will love you, Otto's sheet is still damp", [("otto-sheet", "damp")]),
        (
            "encina",
            "Moro temblaba así que le puse la fina y lo metí dentro",
            [("Moro", "shivering"), ("Moro", ("moro-100",)), ("Moro", "stall")],
        ),
        ("encina", "he pasado antes de llevar a los niños al cole y la gorda de Canela está rota", TORN),
        (
            "encina",
            "buscaba yo las tijeras, que no sé dónde las mete, y he visto que la gorda de Canela está rota",
            TORN,
        ),
    ],
)
def test_what_comes_second_is_heard(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Exactly that."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "did the girls put Otto's sheet on"),
        ("oak", "did the vet come and see Otto"),
        ("oak", "if it rains tonight, Otto's sheet is still damp"),
        ("oak", "will go up before lunch and Otto's sheet is torn I bet"),
        ("encina", "paso antes de ir al cole y le quito la gorda a Canela"),
        ("chenaie", "Perle grelotte tout le temps quand elle était pouliche, paraît-il"),
        ("chenaie", "Perle grelottait quand elle était petite"),
    ],
)
def test_what_was_asked_planned_or_long_ago_is_not(name: str, text: str) -> None:
    """Nothing."""
    assert not told(said(text, name))


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("encina", "se le rompió la gorda a Canela", TORN),
        ("encina", "a Canela se le ha roto la gorda", TORN),
        ("encina", "se le ha roto la correa de la gorda a Canela", [("canela-gorda", "strap broken")]),
        ("encina", "se le rompió el coche a Iván", []),
        ("oak", "took Otto's leg straps up a hole", []),
        ("oak", "little otto is cold", [("Otto", "cold")]),
        ("oak", "Otto is hot as a stove", [("Otto", "hot")]),
        ("encina", "no quiero que Canela vaya en pelo", [("Canela", False)]),
        ("encina", "quiero que Canela vaya en pelo", [("Canela", True)]),
        ("encina", "no dejéis a Canela sin manta", [("Canela", False)]),
        ("chenaie", "j'aime pas que Perle soit nue", [("Perle", False)]),
        ("encina", "quillo to hecho", [("all",)]),
        ("oak", "both of Willow's rugs are soaked", [("willow-light", "soaked"), ("willow-heavy", "soaked")]),
        ("encina", "Canela suda enseguida", []),
        ("chenaie", "Perle transpire pour un rien", []),
        ("chenaie", "Perle est tombée mais elle n'a rien", []),
        ("chenaie", "Perle n'a rien sur le dos", [("Perle", ())]),
        ("oak", "Otto doesn't feel the cold", []),
        ("encina", "le quité el forro de debajo de la gorda a Canela", [("Canela", ("canela-gorda",))]),
        ("encina", "Canela perdió la gorda", [("canela-gorda", "missing")]),
        ("oak", "Otto was shivering this morning, not now", [("Otto", "comfortable")]),
        ("encina", "Canela temblaba esta mañana, ahora ya no", [("Canela", "comfortable")]),
        ("oak", "Perle ne tremble plus", []),
        ("oak", "Otto ne tremble plus", [("Otto", "comfortable")]),
        ("oak", "is it goin to rain", [("forecast",)]),
        ("oak", "Otto kicked out and tore his sheet", [("otto-sheet", "torn")]),
        ("oak", "Otto's heavy has vanished off its hook", [("otto-heavy", "missing")]),
        ("oak", "Lady Grey: sheet off, liner only", [("Lady Grey", ("grey-liner",))]),
        ("oak", "liner under the sheet for Lady Grey", [("Lady Grey", ("grey-liner", "grey-sheet"))]),
        ("oak", "put the liner on Lady Grey and nothing else", [("Lady Grey", ("grey-liner",))]),
        ("oak", "Lady Grey has her sheet on over the liner", [("Lady Grey", ("grey-liner", "grey-sheet"))]),
    ],
)
def test_what_is_said_every_day_is_understood(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Exactly that."""
    assert told(said(text, name)) == expected
