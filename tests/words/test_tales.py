"""Tales, plans and what is said for effect: what they speak of is not so now, and what stands beside them is."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "we had one that shredded every rug we owned"),
        ("oak", "I once had a mare, all her rugs were torn"),
        ("oak", "mice have chewed all the blankets"),
        ("oak", "read about a horse who shivered to death"),
        ("oak", "rode a Fig once, he bucked like mad"),
        ("oak", "Otto's to come in at four"),
        ("oak", "Otto comes in at four"),
        ("oak", "all done in tonight, early bed for me"),
        ("oak", "Otto was a sickly foal"),
        ("oak", "Tucker was always cold as a yearling, he was such a sickly baby"),
        ("encina", "Moro era un potro con tos"),
        ("chenaie", "Perle était une pouliche fragile, toujours malade"),
        ("encina", "tuvimos una que rompía todas las mantas"),
        ("chenaie", "on avait une jument qui déchirait toutes les couvertures"),
    ],
)
def test_a_tale_is_no_report(name: str, text: str) -> None:
    """Of another horse, of another day, of the speaker."""
    assert said(text, name).chatter


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Otto's heavy has a tear you could drive a truck through", [("otto-heavy", "torn")]),
        ("oak", "Otto's so wet you could wring him out", [("Otto", "wet")]),
        ("oak", "Otto's sheet is so wet you can wring it out", [("otto-sheet", "wet")]),
        ("oak", "Otto's sheet is at home with me in the wash, back on Sunday", [("otto-sheet", "washing")]),
        ("oak", "Otto's sheet is at mine, still wet", [("otto-sheet", "wet")]),
        ("oak", "was out with the yearling, Otto was sweating", [("Otto", "sweating")]),
        ("oak", "Otto was sick as a foal, now he's fine", [("Otto", "comfortable")]),
        ("oak", "Otto came in at four", [("Otto", "stall")]),
        ("encina", "la gorda de Canela está en mi casa lavándose, la traigo el domingo", [("canela-gorda", "washing")]),
        ("chenaie", "la grosse d'Étoile a un trou on pourrait y passer la tête", [("etoile-grosse", "torn")]),
    ],
)  # fmt: skip
def test_how_much_and_where_change_nothing(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """What one could do with it tells how torn it is; whose house it hangs in is no matter."""
    heard = said(text, name)
    assert (told(heard), heard.ask) == (expected, None)
