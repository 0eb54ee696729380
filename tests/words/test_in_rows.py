"""Horses in a table of few words: each row is told in full; what is to come, or asked, is none."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Otto heavy, Fig bare, Tucker liner + sheet", [
            ("Otto", ("otto-heavy",)), ("Fig", ()), ("Tucker", ("tucker-liner", "tucker-sheet")),
        ]),
        ("oak", "Otto: stall, heavy, fine", [
            ("Otto", ("otto-heavy",)), ("Otto", "comfortable", "stall"),
        ]),
        ("oak", "Otto stall; Fig field", [("Otto", "stall"), ("Fig", "field")]),
        ("encina", "Canela gorda\nMoro 100\nTrueno nada", [
            ("Canela", ("canela-gorda",)), ("Moro", ("moro-100",)), ("Trueno", ()),
        ]),
        ("encina", "Nube cuadra; Paloma prado; Canela forro y gorda", [
            ("Nube", "stall"), ("Paloma", "field"), ("Canela", ("canela-forro", "canela-gorda")),
        ]),
        ("encina", "Paloma: prado, impermeable, tiembla\nMoro: box, 100", [
            ("Paloma", ("paloma-impermeable",)), ("Paloma", "field"), ("Paloma", "shivering"),
            ("Moro", ("moro-100",)), ("Moro", "stall"),
        ]),
        ("encina", "Canela - sudada - gorda quitada\nMoro - seco - 100", [
            ("Canela", "sweating"), ("Canela", ()), ("Moro", "comfortable"),
        ]),
        ("chenaie", "Perle 250, Filou nu, Caramel imper + 200", [
            ("Perle", ("perle-outdoor",)), ("Filou", ()), ("Caramel", ("caramel-200", "caramel-impermeable")),
        ]),
        ("chenaie", "Ulysse : pré, imper, RAS", [
            ("Ulysse", ("ulysse-impermeable",)), ("Ulysse", "field"), ("Ulysse", "comfortable"),
        ]),
        ("chenaie", "- Caramel 200\n- Perle box\nMerci !", [("Caramel", ("caramel-200",)), ("Perle", "stall")]),
        ("encina", "Puesto ahora:\nCanela → gorda\nMoro → nada", [("Canela", ("canela-gorda",)), ("Moro", ())]),
        ("chenaie", "Couvertures :\nPerle 250\nFilou pré", [("Perle", ("perle-outdoor",)), ("Filou", "field")]),
        ("encina", "Mantas para mañana:\nCanela gorda\nMoro 100", []),
        ("encina", "Esta noche:\nCanela gorda\nMoro 100", []),
        ("encina", "Canela con gorda, Trueno nada, Moro con la 100", [
            ("Canela", ("canela-gorda",)), ("Trueno", ()), ("Moro", ("moro-100",)),
        ]),
        ("chenaie", "Perle 250 ok, Filou nu ok", [
            ("Perle", ("perle-outdoor",)), ("Perle", "comfortable"), ("Filou", ()), ("Filou", "comfortable"),
        ]),
        ("encina", "Dejo puesto: Canela gorda, Moro 100", [("Canela", ("canela-gorda",)), ("Moro", ("moro-100",))]),
        ("oak", "Otto / heavy / torn\nFig / cooler / dry", [("otto-heavy", "torn"), ("fig-cooler", "dry")]),
        ("chenaie", "Ulysse / imper / déchiré", [("ulysse-impermeable", "torn")]),
        ("oak", "Hay nets tonight\nOtto 2\nTucker 3 soaked", []),
        ("encina", "8:00\nPaloma bien\nNube media mojada", [("Paloma", "comfortable"), ("nube-manta", "wet")]),
        ("encina", "8:00\nMoro bien\nPaloma media mojada", [("Moro", "comfortable"), ("Paloma", "wet")]),
        # one row is none, nor is anything of another sort
        ("oak", "Otto heavy", []),
        ("oak", "Otto grey, Fig bay", []),
        ("encina", "Canela gorda, Moro flaco", []),
        ("encina", "Canela gorda, Nube gorda", []),
        ("encina", "Canela 2, Moro 1", []),
        ("chenaie", "Perle 3, Caramel 200 euros", []),
        # whether it is off, torn or wet is told as it was
        ("oak", "Tucker liner, Otto heavy soaked", [("tucker-liner", "soaked"), ("otto-heavy", "soaked")]),
        ("oak", "Otto heavy\nTucker sheet\nboth soaked", [("tucker-sheet", "soaked")]),
        # a stall, or a rug for it
        ("oak", "Fig stable, Otto heavy", []),
        ("encina", "Trueno cuadra, Canela prado", [("Trueno", "stall"), ("Canela", "field")]),
        ("chenaie", "Caramel : 200 trempée", [("caramel-200", "soaked")]),
        # to come, supposed, asked
        ("oak", "tomorrow: Otto heavy, Fig sheet", []),
        ("oak", "for tonight:\nOtto heavy\nFig cooler", []),
        ("oak", "Otto heavy, Fig sheet?", []),
        ("encina", "Mañana: Canela gorda, Moro 100", []),
        ("encina", "Si llueve: Canela gorda, Moro 100", []),
        ("chenaie", "Perle 250, Caramel 200, ça vous va ?", []),
        ("chenaie", "Perle 250, Caramel 200. C'est le plan pour demain.", []),
    ],
)  # fmt: skip
def test_each_row_is_told_of_its_horse(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    assert sorted(told(said(text, name)), key=str) == sorted(expected, key=str)
