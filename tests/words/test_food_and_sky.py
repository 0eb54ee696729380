"""Words that a horse is called as well, said of food and of the sky."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("encina", "viene una nube negra enorme, con frío y todo"),
        ("encina", "con calor y todo han venido a montar"),
        ("encina", "qué luna más fría hay esta noche"),
        ("encina", "¡qué trueno! está todo temblando"),
        ("encina", "alguien trae canela para el bizcocho? está frío"),
        ("encina", "una leche con canela caliente y a casa"),
        ("encina", "le echo canela al arroz, que está soso y frío"),
        ("chenaie", "un café noisette bien chaud avant de rentrer"),
        ("chenaie", "la crêpe au caramel est froide"),
        # wood, and months
        ("oak", "Wet willow in the stove"),
        ("oak", "soggy willow for the fire"),
        ("encina", "canela mojada en la lumbre, no prende"),
        ("chenaie", "Noisette mouillée dans le poêle, ça fume"),
        ("odd", "Everyone bare in May"),
        ("odd", "They were all naked back in May"),
    ],
)
def test_food_and_weather_are_no_horses(name: str, text: str) -> None:
    """What is in the coffee, and what belongs to a cloud."""
    assert said(text, name).chatter


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("encina", "me tomo un café y canela está tiritando", [("Canela", "shivering")]),
        ("oak", "wet willow in the field", [("Willow", "wet")]),
        ("encina", "Canela mojada en el prado", [("Canela", "wet")]),
        ("chenaie", "Noisette mouillée au pré", [("Noisette", "wet")]),
        ("odd", "May is bare", [("May", ())]),
        ("encina", "el café con canela está frío y Canela está sudada", [("Canela", "sweating")]),
        ("encina", "le he dado pan a canela, está sudando", [("Canela", "sweating")]),
        ("encina", "canela está fría", [("Canela", "cold")]),
        ("encina", "nube tiene frío", [("Nube", "cold")]),
        ("encina", "lucero y moro sudados y todos los demás bien", [
            ("Lucero", "sweating"), ("Moro", "sweating"),
            *((n, "comfortable") for n in ("Canela", "Trueno", "Nube", "Paloma", "Estrella")),
        ]),
        ("chenaie", "fini mon café, noisette tremble", [("Noisette", "shivering")]),
    ],
)  # fmt: skip
def test_horses_called_as_food_or_weather_is(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """A cup of coffee before a name takes nothing from it."""
    assert told(said(text, name)) == expected
