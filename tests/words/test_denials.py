"""What is denied is never taken as said: no cold, no sweat, no piece on or off, in any of the three languages."""

from itertools import product

import pytest

from bot.events import Seen, Wearing
from bot.state import as_filed
from bot.words import read
from tests.words.corpus import barn
from tests.words.saying import said, told

SIGNS = {
    "oak": ("sweaty", "shivering", "cold", "too hot", "rubbed"),
    "encina": ("sudado", "tiritando", "frío", "acalorado", "rozado"),
    "chenaie": ("en sueur", "en train de trembler", "froid", "trop chaud"),
}
DENIALS = {
    "oak": (
        "{n} is not {s}", "{n} isn't {s}", "{n} not {s}", "{n} is not {s} any more", "{n} is no longer {s}",
        "{n} no longer {s}", "{n} isn't {s} now", "neither {n} nor {m} is {s}", "{n} isn't really {s}",
        "checked {n}, not {s}", "{n} was {s} but isn't now",
    ),
    "encina": (
        "{n} no está {s}", "{n} ya no está {s}", "no está {s} {n}", "ni {n} ni {m} están {s}s", "{n} no está nada {s}",
        "{n} tampoco está {s}", "he tocado a {n} y no está {s}", "no está {n} {s}", "{n} {s} no está",
        "{n} comiendo, {s} no está", "{n} {s} no está, la verdad", "{s} no está {n}",
    ),
    "chenaie": (
        "{n} n'est pas {s}", "{n} est pas {s}", "{n} n'est plus {s}", "{n} est plus {s}", "{n} pas {s}",
        "{n} n'est plus du tout {s}", "j'ai touché {n}, pas {s}",
    ),
}  # fmt: skip
NAMES = {"oak": ("Otto", "Fig"), "encina": ("Lucero", "Moro"), "chenaie": ("Perle", "Filou")}


@pytest.mark.parametrize("name", DENIALS)
def test_a_sign_denied_is_no_sign(name: str) -> None:
    """Every frame with every sign: comfortable, or asked about, or silence."""
    here = barn(name)
    now, (first, second) = as_filed(here), NAMES[name]
    told = {}
    for frame, sign in product(DENIALS[name], SIGNS[name]):
        text = frame.format(n=first, m=second, s=sign)
        heard = read(text, here.people[0], here, now)
        told[text] = [e.sign for e in heard.events if isinstance(e, Seen) and e.sign != "comfortable"]
    assert {text: signs for text, signs in told.items() if signs} == {}


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "I haven't taken the sheet off Otto"),
        ("oak", "did not put the sheet on Otto"),
        ("oak", "Otto's sheet isn't off yet"),
        ("oak", "nobody put the heavy on Otto"),
        ("encina", "no le he quitado la gorda a Canela"),
        ("encina", "no le puse el forro a Lucero"),
        ("encina", "Canela no lleva la gorda puesta todavía"),
        ("chenaie", "j'ai pas enlevé l'imper d'Ulysse"),
        ("chenaie", "je n'ai pas mis l'imper à Ulysse"),
        ("chenaie", "on lui a pas encore mis son imper, à Ulysse"),
    ],
)
def test_a_change_denied_changes_nothing(name: str, text: str) -> None:
    """The horse is in what it was in."""
    assert not [e for e in said(text, name).events if isinstance(e, Wearing)]


@pytest.mark.parametrize(
    ("name", "text", "sign"),
    [
        ("oak", "Otto's sweating? no he's just wet from the trough", "wet"),
        ("oak", "Otto's fine. no he's not, he's sweating", "sweating"),
        ("oak", "no, Otto's shivering", "shivering"),
        ("encina", "no, está mojado Moro", "wet"),
        ("chenaie", "Filou transpire ? non il est mouillé", "wet"),
        ("oak", "no sweat on Otto", "comfortable"),
        ("oak", "Otto's no longer sweating", "comfortable"),
        ("encina", "no lo veo sudado a Moro", "comfortable"),
    ],
)
def test_a_no_that_answers_denies_nothing_behind_it(name: str, text: str, sign: str) -> None:
    """It answers what was asked; what follows is so."""
    told = [e.sign for e in said(text, name).events if isinstance(e, Seen)]
    assert told == [sign]


@pytest.mark.parametrize(
    ("name", "text", "sign"),
    [
        ("oak", "Otto cool but not cold", "comfortable"),
        ("oak", "Otto is a bit chilly but not cold", "comfortable"),
        ("oak", "Otto's ears are cold but he's not cold", "comfortable"),
        ("oak", "Otto's cold but not shivering", "cold"),
        ("encina", "Moro fresquito pero no frío", "comfortable"),
        ("encina", "Moro está frío, no sudado", "cold"),
        ("encina", "Moro no está frío, está helado", "cold"),
        ("chenaie", "Filou frais mais pas froid", "comfortable"),
        ("chenaie", "Filou a froid mais ne tremble pas", "cold"),
    ],
)
def test_what_is_taken_back_is_not_so(name: str, text: str, sign: str) -> None:
    """Cool but not cold is right as it is; that another sign is not there takes nothing back."""
    heard = said(text, name)

    assert [getattr(event, "sign", None) for event in heard.events] == [sign]


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("encina", "ni el lucero ni la canela están sudados", [("Lucero", "comfortable"), ("Canela", "comfortable")]),
        ("oak", "neither Otto's sheet nor his heavy is dry", [("otto-heavy", "damp")]),  # the sheet is left out
        ("oak", "it wasn't Otto's sheet that tore", []),
        ("encina", "no es la gorda de Canela la que está rota", []),
        ("encina", "la gorda de Canela no está mojada", [("canela-gorda", "dry")]),
        ("encina", "ni el impermeable de Canela ni la gorda están secos", [("canela-gorda", "damp")]),
    ],
)
def test_neither_is_no_sign_and_takes_nothing_off(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """What is denied is not told as so, and no piece comes off."""
    assert told(said(text, name)) == expected
