"""Horses told by their kind: the barn's own, and those of other people and other places, which are nobody's here."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text"),
    [
        # whose: they have them, theirs, somebody's
        ("tilleuls", "mon cousin a quatre poneys qui grelottent"),
        ("chenaie", "à Vielsalm ils ont deux poneys malades, quelle misère"),
        ("chenaie", "ils ont cinq poneys au Brûly, tous trempés"),
        ("chenaie", "leurs chevaux toussent"),
        ("oak", "her ponies are all coughing"),
        ("oak", "the neighbours' ponies are sweating"),
        ("oak", "my cousin's ponies are shivering"),
        ("oak", "my sister has three ponies coughing"),
        ("encina", "mi cuñada tiene tres ponis enfermos"),
        ("encina", "sus caballos tosen"),
        # where: at somebody's, in another place, next door
        ("chenaie", "chez mes parents les poneys sont trempés"),
        ("chenaie", "chez Ludivine une jument grelotte"),
        ("chenaie", "chez mon frère, les chevaux toussent"),
        ("chenaie", "à l'écurie d'à côté tous les chevaux sont malades"),
        ("chenaie", "au club de Huy les poneys toussent"),
        ("chenaie", "il paraît que les poneys du manège de Huy toussent"),
        ("chenaie", "à l'autre écurie, tous toussent"),
        ("oak", "they've got strangles over at Doyle's, horses coughing everywhere"),
        ("oak", "there's a cough at Hartley, horses all coughing"),
        ("oak", "over at Hartley the ponies are all poorly"),
        ("oak", "a mare at Sarah's is shivering"),
        ("oak", "at my old barn the horses are coughing"),
        ("encina", "en la hípica de Toledo los ponis tosen"),
        # how many: more than the barn has, or some that were only seen
        ("chenaie", "j'ai vu trois poneys trempés sur la nationale"),
        ("oak", "saw six ponies soaked by the road"),
        ("encina", "había dos ponis tiritando junto al río"),
    ],
)
def test_horses_of_others_are_nobody_s_here(name: str, text: str) -> None:
    """They cough and shiver as the barn's own do, and no horse of the barn has it from them."""
    assert said(text, name).chatter


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("chenaie", "chez nous les poneys toussent", [("Filou", "unwell")]),
        ("chenaie", "les poneys sont trempés", [("Filou", "wet")]),
        ("chenaie", "je reviens de Huy, les poneys sont trempés", [("Filou", "wet")]),
        (
            "chenaie",
            "Perle est sèche, les chevaux du voisin sont trempés, ils grelottent",
            [("Perle", "comfortable")],
        ),
        ("chenaie", "elle a rentré les poneys", [("Filou", "stall")]),
        ("chenaie", "ma fille a monté les poneys", [("Filou",)]),
        ("chenaie", "la voisine dit que les poneys tremblent", [("Filou", "shivering")]),
        ("oak", "at ours the ponies are soaked", [("Bramble", "wet")]),
        ("oak", "our ponies are shivering", [("Bramble", "shivering")]),
        ("encina", "mis padres tienen cuatro ponis enfermos, la Canela tose", [("Canela", "unwell")]),
    ],
)
def test_the_barn_s_own_are_told_by_their_kind(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Whoever else is spoken of, and wherever the speaker has been."""
    heard = said(text, name)
    assert (told(heard), heard.ask) == (expected, None)
