"""A list under a heading, as managers write it: each line tells what the heading says."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Shivering:\n- Otto\n- Fig", [("Otto", "shivering"), ("Fig", "shivering")]),
        ("oak", "Done so far 🐴\n1. Otto\n2. Fig", [(("Otto", "Fig"),)]),
        ("oak", "Ridden today:\n– Otto (hack, 40 min)\n– Fig (lesson w/ Sue)", [("Otto",), ("Fig",)]),
        ("oak", "To be ridden tomorrow:\n– Otto (hack, 40 min)\n– Fig", []),
        ("encina", "ESQUILA\n- Lucero: completo, terminado 11:15\nOTROS\n- Moro: mojado", [
            ("Lucero", "full"), ("Moro", "wet"),
        ]),
        ("oak", "In:\nOtto\nFig\nOut:\nTucker", [("Otto", "stall"), ("Fig", "stall"), ("Tucker", "field")]),
        ("encina", "Dentro:\nCanela\nMoro\nFuera:\nNube", [("Canela", "stall"), ("Moro", "stall"), ("Nube", "field")]),
        ("oak", "Off: Clem's sheet, Fig's stable rug\nOn: Fig's heavy", [
            ("Clementine", ()), ("Fig", ("fig-heavy",)),
        ]),
        ("encina", "Cosidas y listas:\n- manta roja\n- forro azul", [
            ("nube-manta", "in service"), ("canela-forro", "in service"),
        ]),
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
        "Tomorrow:\n- Otto: heavy\n- Fig bare",
        "For tonight:\nOtto bare\nFig in his heavy",
        "For tonight: Otto bare, Fig in his heavy",
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


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("encina", "Mañana:\n- Canela: gorda\n- Moro sin manta"),
        ("encina", "Para esta noche: Moro sin manta, Canela con la gorda"),
        ("chenaie", "Pour demain :\nPerle nue\nFilou nu"),
        ("chenaie", "Pour ce soir, Perle nue"),
    ],
)
def test_under_another_day_nothing_is_so_yet(name: str, text: str) -> None:
    """Nor under the night to come, where somebody writes for whom it is."""
    assert not said(text, name).events


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "For tonight: Otto is shivering", [("Otto", "shivering")]),
        ("encina", "Para esta noche le he puesto la gorda a Canela", [("Canela", ("canela-gorda",))]),
        ("encina", "Mañana:\nviene el herrador\nMoro tiembla", [("Moro", "shivering")]),
        ("chenaie", "Ce matin :\nPerle nue\nFilou nu", [("Perle", ()), ("Filou", ())]),
    ],
)
def test_what_is_so_now_is_told_all_the_same(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Of this morning, with a verb of its own, or behind a line of another sort."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Changed:\nOtto -> sheet\nFig => heavy", [("Otto", ("otto-sheet",)), ("Fig", ("fig-heavy",))]),
        ("oak", "Round 2, top field\nOtto: heavy\nFig: cooler", [
            ("Otto", ("otto-heavy",)), ("Fig", ("fig-cooler",)),
        ]),
        ("oak", "They're now in\nOtto: heavy\nFig: nothing", [("Otto", ("otto-heavy",)), ("Fig", ())]),
        ("encina", "Cambiados ya:\nCanela -> gorda\nMoro -> 100", [
            ("Canela", ("canela-gorda",)), ("Moro", ("moro-100",)),
        ]),
        ("encina", "Llevan ahora:\nCanela, la gorda\nMoro, nada", [("Canela", ("canela-gorda",)), ("Moro", ())]),
        ("chenaie", "Fait :\nPerle > 250\nFilou > polaire", [
            ("Perle", ("perle-outdoor",)), ("Filou", ("filou-polaire",)),
        ]),
        ("chenaie", "Tour 7h\n- Étoile : transpire\n- Perle : RAS\n- Ulysse : imper humide", [
            ("Étoile", "sweating"), ("Perle", "comfortable"), ("ulysse-impermeable", "damp"),
        ]),
        ("oak", "Rugs for sale:\nOtto: heavy\nFig: cooler", []),
        ("oak", "To pack for the show\nOtto - heavy\nFig - cooler", []),
        ("oak", "If it snows:\nOtto: heavy\nFig: stable rug", []),
        ("oak", "Plan for tonight\nOtto: heavy\nFig: cooler", []),
        ("oak", "Still to change:\nOtto\nFig", []),
        ("encina", "Mantas en venta:\nCanela: gorda\nMoro: 100", []),
        ("encina", "Para el concurso\nCanela: gorda\nMoro: 100", []),
        ("encina", "Plan de esta noche\nCanela: gorda\nMoro: 100", []),
        ("chenaie", "À commander\nPerle : 250\nCaramel : 200", []),
        ("chenaie", "S'il gèle :\nPerle : 250\nCaramel : 200", []),
        ("chenaie", "Plan de ce soir\nPerle : 250\nCaramel : 200", []),
        ("oak", "Rugs for sale:\nOtto: heavy\nFig: sweaty", [("Fig", "sweating")]),
        ("oak", "Ready for the show?\nOtto: heavy\nFig: cooler", []),
        ("oak", "Should be in:\nOtto: heavy\nFig: cooler", []),
        ("oak", "Rug loans\nOtto: heavy\nFig: cooler", []),
        ("oak", "Fields from Monday\nOtto -> top field\nFig -> paddock", []),
        ("chenaie", "Prés à partir de lundi\nPerle -> pré du haut\nFilou -> pré du bas", []),
    ],
)  # fmt: skip
def test_the_heading_says_whether_it_is_worn_now(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """A round, a place, a time or what was done; under anything else, who has which piece tells nothing."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Otto: fine\nthe new horse - sweaty", [("Otto", "comfortable")]),
        ("oak", "green rug - dry\nhosepipe - soaked", [("tucker-250", "dry")]),
        ("encina", "Moro: bien\nel caballo nuevo - sudado", [("Moro", "comfortable")]),
        ("chenaie", "Perle : bien\nle nouveau : en sueur", [("Perle", "comfortable")]),
        ("oak", "Otto: in\nears: cold", [("Otto", "stall"), ("Otto", "cold")]),
        ("oak", "Otto: in\nUpdate: sweaty now", [("Otto", "stall"), ("Otto", "sweating")]),
    ],
)
def test_a_row_of_what_is_not_ours_tells_nothing_of_the_row_above(
    name: str, text: str, expected: list[tuple[object, ...]]
) -> None:
    """But a part of the horse, or how it is by now, does."""
    assert told(said(text, name)) == expected
