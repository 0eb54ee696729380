"""Why something is wanted of a horse or a piece, told behind it, is a report; what only sounds so is none."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("encina", "hay que cambiar a Canela, está empapada", [("Canela", "wet")]),
        ("encina", "cambiadle la manta a Lucero que está sudando", [("Lucero", "sweating")]),
        ("encina", "echadle un ojo a Trueno, que está sudado", [("Trueno", "sweating")]),
        ("encina", "voy a quitarle el impermeable a Paloma porque está asada", [("Paloma", "hot")]),
        ("encina", "chicos, hay que secar a Canela y a Nube, están empapadas", [("Canela", "wet"), ("Nube", "wet")]),
        # of the piece, where only that was spoken of, or what agrees tells
        ("encina", "no uséis la manta roja, tiene una correa rota", [("nube-manta", "strap broken")]),
        ("encina", "voy a colgar la manta roja, está chorreando", [("nube-manta", "soaked")]),
        ("encina", "hay que cambiarle el impermeable a Canela, está mojado", [("canela-impermeable", "wet")]),
        ("encina", "hay que cambiarle el impermeable a Canela, está mojada", [("Canela", "wet")]),
        ("oak", "I'm going to change Otto, he's soaked", [("Otto", "wet")]),
        ("oak", "please check on Otto, he's cold", [("Otto", "cold")]),
        ("oak", "take Otto's sheet off, he's sweating", [("Otto", "sweating")]),
        ("oak", "someone needs to mend Otto's sheet because it's ripped", [("otto-sheet", "torn")]),
        ("oak", "I'll take the sheet off Otto, it's soaked", [("otto-sheet", "soaked")]),
        ("oak", "will change Otto and Fig, they're both soaked", [("Otto", "wet"), ("Fig", "wet")]),
        ("chenaie", "faut changer Noisette, elle transpire", [("Noisette", "sweating")]),
        ("chenaie", "je vais changer Filou parce qu'il est trempé", [("Filou", "wet")]),
        ("chenaie", "il faut recoudre l'imper d'Ulysse, il est déchiré", [("ulysse-impermeable", "torn")]),
    ],
)
def test_a_reason_is_told(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """What is to be done is none, why it is to be done is what somebody saw."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("encina", "hay que cambiar a Canela si está sudando"),
        ("encina", "voy a montar a Canela, está preciosa"),
        ("encina", "voy a cambiar a Canela, estoy empapada"),
        ("encina", "voy a cambiar a Canela, está mojado el prado"),
        ("encina", "hay que limpiar la cuadra de Canela, está mojada"),
        ("encina", "hay que arreglar el bebedero de Canela, está roto"),
        ("encina", "hay que cambiarle el impermeable a Trueno, está empapado"),
        ("oak", "must muck out Otto's stall, it's wet"),
        ("oak", "will bring Otto in, it's cold"),
        ("oak", "will change Otto and Fig, it's freezing"),
        ("oak", "would love to ride Otto, he's fine now"),
        ("oak", "going to clean the trough in Otto's field, it's freezing"),
        ("chenaie", "faut rentrer Filou, il fait froid"),
        ("chenaie", "faut nettoyer le box de Filou, il est trempé"),
        ("chenaie", "faut rentrer Filou, c'est trempé"),
    ],
)
def test_what_is_no_reason_is_left_alone(name: str, text: str) -> None:
    """The weather, the speaker, another thing, what is only supposed, and what may be of either of two."""
    assert said(text, name).chatter
