"""What one horse does to another, and what is told of one of them: never of the wrong one."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "options"),
    [
        ("encina", "Estrella le ha pegado una coz a Canela y está temblando", {"Estrella", "Canela"}),
        ("encina", "Paloma está con Canela en el prado, está mojada", {"Paloma", "Canela"}),
        ("encina", "Nube se peleó con Trueno y tiene una rozadura", {"Nube", "Trueno"}),
        ("oak", "Willow kicked Fig and she's shaking", {"Willow", "Fig"}),
        ("oak", "Willow fought with Fig, has a rub on her shoulder", {"Willow", "Fig"}),
        ("oak", "Willow followed Fig in, sweating", {"Willow", "Fig"}),
        ("chenaie", "Noisette a mordu Filou et transpire", {"Noisette", "Filou"}),
        ("chenaie", "Noisette a mordu Filou, elle transpire", {"Noisette", "Filou"}),
    ],
)
def test_which_of_the_two_is_asked(name: str, text: str, options: set[str]) -> None:
    """Either may be meant."""
    heard = said(text, name)

    assert not any(hasattr(event, "sign") for event in heard.events)
    assert heard.ask is not None
    assert set(heard.ask.options) == options


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        # the word agrees with one of them, or the subject goes on, or the other one is taken up
        ("encina", "Moro ha mordido a Canela y está sudado", [("Moro", "sweating")]),
        ("encina", "Moro ha mordido a Canela y está sudada", [("Canela", "sweating")]),
        ("encina", "Moro está con Canela en el prado, está empapada", [("Canela", "wet")]),
        ("oak", "Willow kicked Fig and is shaking", [("Willow", "shivering")]),
        ("oak", "Willow bit Fig and is sweaty", [("Willow", "sweating")]),
        ("oak", "Willow kicked Fig, who is shaking", [("Fig", "shivering")]),
        ("oak", "Willow kicked Fig. Fig is shaking", [("Fig", "shivering")]),
        ("chenaie", "Noisette s'est collée contre Filou, qui tremble", [("Filou", "shivering")]),
        # who it is and not the other, said at last
        ("encina", "ni Canela ni Nube, la que tiembla es Paloma", [("Paloma", "shivering")]),
        ("encina", "no son ni Canela ni Nube, es Paloma la que tiembla", [("Paloma", "shivering")]),
        ("encina", "confundí a Moro con Trueno, el mojado es Moro", [("Moro", "wet")]),
        ("oak", "not Otto or Fig, the one shivering is Willow", [("Willow", "shivering")]),
        ("chenaie", "c'est pas Noisette, celle qui tremble c'est Perle", [("Perle", "shivering")]),
        # one thought, and another of another
        ("encina", "llego a las cinco a montar a Nube, Canela está muy caliente", [("Canela", "hot")]),
        ("encina", "le hicieron trace a Canela, Moro tiene una rozadura", [("Canela", "trace"), ("Moro", "rubbed")]),
        ("encina", "a Moro déjenmelo sin manta de aquí en adelante, Nube ya puede llevar manta", [
            ("Moro", True), ("Nube", False),
        ]),
        ("encina", "quiero que ande siempre al natural, Nube se robó mi torta", []),
        ("encina", "mojados hasta los huesos Moro y Nube", [("Moro", "wet"), ("Nube", "wet")]),
        ("encina", "Moro está bien, ni frío ni calor, Nube sin manta", [("Moro", "comfortable"), ("Nube", ())]),
        ("oak", "coming at five to ride Otto, Fig is sweating", [("Fig", "sweating")]),
        ("chenaie", "je monte Noisette à 17h, Filou transpire", [("Filou", "sweating")]),
        # a list is told of both
        ("oak", "Willow and Fig are wet", [("Willow", "wet"), ("Fig", "wet")]),
        ("encina", "a Canela y a Nube las noto frías", [("Canela", "cold"), ("Nube", "cold")]),
    ],
)  # fmt: skip
def test_what_tells_is_heeded(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Where the words tell which, nobody is asked."""
    assert told(said(text, name)) == expected


def test_a_word_that_a_horse_is_called_by_is_one_of_the_two() -> None:
    """Lucero, written as the star that it may be, is asked about beside the other."""
    heard = said("lucero le dio una coz a Estrella y está temblando", "encina")

    assert heard.ask is not None
    assert set(heard.ask.options) == {"Lucero", "Estrella"}
