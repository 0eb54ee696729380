"""One horse in what is another's: it is of the one that wears it, whatever stands first; who lacks one lends none."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "that's Otto's sheet Tucker's got on by the way", [("Tucker", ("otto-sheet",))]),
        ("oak", "that is Fig's cooler Tucker is wearing", [("Tucker", ("fig-cooler",))]),
        ("oak", "the sheet on Tucker is Otto's", [("Tucker", ("otto-sheet",))]),
        ("oak", "Tucker's in Fig's cooler if anyone's looking for it", [("Tucker", ("fig-cooler",))]),
        ("oak", "if anyone needs it, Fig's cooler is on Tucker", [("Tucker", ("fig-cooler",))]),
        ("oak", "Tucker's in his sheet just in case", [("Tucker", ("tucker-sheet",))]),
        ("oak", "Tucker's soaked so he's got Fig's cooler on", [("Tucker", "wet"), ("Tucker", ("fig-cooler",))]),
        ("oak", "Tucker's cosy, he's in Fig's heavy", [("Tucker", "comfortable"), ("Tucker", ("fig-heavy",))]),
        (
            "oak",
            "Tucker's fine, that's Fig's heavy he's got on",
            [("Tucker", "comfortable"), ("Tucker", ("fig-heavy",))],
        ),
        ("oak", "Tucker had Fig's heavy on, swapped it for his sheet", [("Tucker", ("tucker-sheet",))]),
        ("oak", "Tucker's in his sheet, sorted his feed too", [("Tucker", ("tucker-sheet",))]),
        ("encina", "es la gorda de Canela la que lleva Moro", [("Moro", ("canela-gorda",))]),
        ("encina", "la manta que lleva puesta Moro es la gorda de Canela", [("Moro", ("canela-gorda",))]),
        ("encina", "Moro está mojado, lleva la gorda de Canela", [("Moro", "wet"), ("Moro", ("canela-gorda",))]),
        ("encina", "Moro lleva la gorda de Canela por si alguien la busca", [("Moro", ("canela-gorda",))]),
        ("encina", "Canela lleva la gorda por si acaso", [("Canela", ("canela-gorda",))]),
        ("chenaie", "c'est la grosse d'Étoile que porte Ulysse", [("Ulysse", ("etoile-grosse",))]),
        ("chenaie", "Ulysse a la grosse d'Étoile si quelqu'un la cherche", [("Ulysse", ("etoile-grosse",))]),
        ("chenaie", "j'ai mis la grosse à Étoile au cas où", [("Étoile", ("etoile-grosse",))]),
    ],
)
def test_who_wears_it_is_told(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """In what order it may be said, and whom "he" is."""
    heard = said(text, name)
    assert (told(heard), heard.ask) == (expected, None)


@pytest.mark.parametrize(
    "text",
    [
        "that's not Otto's sheet Tucker's got on",
        "that's Otto's sheet Tucker ripped up last year",
        "is that Otto's sheet Tucker's got on?",
        "that's Fig's cooler he's got on",
        "he's in Fig's cooler",
        "Tucker's in his sheet if it rains",
        "put the sheet on Tucker just in case",
        "someone had put Otto's sheet on Tucker, I've sorted it",
        "Tucker was in Fig's heavy, sorted now",
        "Tucker had Fig's heavy on, swapped it back",
    ],
)
def test_nobody_wears_what_is_only_spoken_of(text: str) -> None:
    """Denied, asked, long ago, of nobody named; a condition, and what may be asked for."""
    assert said(text, "oak").chatter


def test_of_one_that_has_none_no_spare_is_borrowed() -> None:
    """Otto has no 200: what Tucker is in is asked."""
    heard = said("Tucker is in Otto's 200", "oak")
    assert heard.events == ()
    assert heard.ask is not None and heard.ask.options == ("otto-heavy", "otto-sheet")
