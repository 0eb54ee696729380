"""What is the speaker's: a horse, or a thing that people wear."""

import pytest

from tests.words.saying import said, told

OWNERS = {"encina": "Lola", "chenaie": "Margaux"}


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("encina", "me he traído el anorak de Iván porque la mía está calada"),
        ("encina", "uso los guantes de Carmen, que los míos están mojados"),
        ("encina", "la sudadera de Iván está empapada y la mía también"),
        ("encina", "he colgado el impermeable de Iván, el mío está roto"),
        ("encina", "el mío está empapado"),  # Canela is a mare
        ("encina", "me he puesto el forro azul de Iván, qué calentito"),
        ("encina", "llevo puesto el forro azul y sigo helada"),
        ("chenaie", "j'ai emprunté la veste de Yann parce que la mienne est trempée"),
        ("chenaie", "le blouson de Yann est déchiré, le mien aussi"),
    ],
)
def test_my_jacket_is_no_horse(name: str, text: str) -> None:
    """What was spoken of last tells what "mine" is; and what the speaker wears, no horse does."""
    assert said(text, name, OWNERS[name]).chatter


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("encina", "la mía está empapada", [("Canela", "wet")]),
        ("encina", "Trueno está empapado y la mía también", [("Trueno", "wet"), ("Canela", "wet")]),
        ("encina", "tengo los guantes mojados y la mía está tiritando", [("Canela", "shivering")]),
        ("encina", "en el prado la mía está empapada", [("Canela", "wet")]),
        ("encina", "a la mía le he puesto la gorda", [("Canela", ("canela-gorda",))]),
        ("encina", "el mío está sudando", [("Canela", "sweating")]),
        ("encina", "me he quitado los guantes y le he puesto la gorda a Canela", [("Canela", ("canela-gorda",))]),
        ("chenaie", "Perle est trempée, la mienne aussi", [("Perle", "wet"), ("Noisette", "wet")]),
    ],
)
def test_my_own_horse_is_one(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Told of by itself, behind a horse, or with what no thing does."""
    assert told(said(text, name, OWNERS[name])) == expected


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("encina", "Moro está seco, la que está empapada es una servidora", [("Moro", "comfortable")]),
        ("encina", "Canela ya no tirita, la que tirita soy yo", [("Canela", "comfortable")]),
        ("encina", "Trueno está bien, el enfermo es Iván", [("Trueno", "comfortable")]),
        ("encina", "Nube seca, el que está sudado es Iván", [("Nube", "comfortable")]),
        ("encina", "aquí la única que tiembla es la menda, Nube está bien", [("Nube", "comfortable")]),
        ("encina", "pobre Iván, está tiritando, Nube en cambio tan a gusto", [("Nube", "comfortable")]),
        ("encina", "el que está sudado es Moro", [("Moro", "sweating")]),
        ("encina", "la que tirita es Nube, y yo voy en manga corta", [("Nube", "shivering")]),
        ("chenaie", "Perle va bien, celle qui grelotte c'est moi", [("Perle", "comfortable")]),
        ("chenaie", "Caramel m'a fait suer ce matin", []),
    ],
)
def test_who_says_so_may_be_who_shivers(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Picked out, the speaker or another is told of, and not the horse before."""
    heard = said(text, name, OWNERS[name])
    assert (told(heard), heard.ask) == (expected, None)
