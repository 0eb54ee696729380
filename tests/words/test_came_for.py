"""A horse named only in passing, or beside which another stands, is told nothing of."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("encina", "al ir a por Paloma he visto que Moro tiene una rozadura", [("Moro", "rubbed")]),
        ("encina", "he bajado a por Nube y Trueno está empapado", [("Trueno", "wet")]),
        ("encina", "estoy con Nube y Trueno tiene frío", [("Trueno", "cold")]),
        ("encina", "iba con Nube de paseo y Trueno sudando en el prado", [("Trueno", "sweating")]),
        ("encina", "estaba cepillando a Nube y resulta que Moro tiene cólico", [("Moro", "unwell")]),
        ("encina", "de camino a por Nube le he quitado la gorda a Canela", [("Canela", ())]),
        ("encina", "he ido a por Nube y a Canela le he puesto el impermeable", [("Canela", ("canela-impermeable",))]),
        ("encina", "he ido a por Nube y el forro de Canela está roto", [("canela-forro", "torn")]),
        ("encina", "he montado a Nube y Moro está sudando en el prado", [("Nube",), ("Moro", "sweating")]),
        ("oak", "came for Fig and Otto is freezing", [("Otto", "cold")]),
        ("oak", "popped in to see Fig and Otto is soaked", [("Otto", "wet")]),
        ("oak", "was brushing Fig when I noticed Otto is sweaty", [("Otto", "sweating")]),
        ("oak", "popped out for Fig and brought Otto in too", [("Otto", "stall")]),
        ("oak", "Fig was calling for Otto, who's trembling", [("Otto", "shivering")]),
        ("oak", "went to get Fig and put Otto in his heavy", [("Otto", ("otto-heavy",))]),
        ("chenaie", "je venais pour Étoile et Caramel grelotte", [("Caramel", "shivering")]),
        ("chenaie", "en sortant Étoile j'ai vu que Caramel a froid", [("Caramel", "cold")]),
        ("chenaie", "je brossais Étoile et Caramel s'est mis à trembler", [("Caramel", "shivering")]),
        # what goes on of the one, or of both
        ("encina", "he bajado a por Nube y está empapada", [("Nube", "wet")]),
        ("encina", "fui a por Nube y Trueno y están empapados", [("Nube", "wet"), ("Trueno", "wet")]),
        ("encina", "he mirado a Nube y Trueno bien", [("Nube", "comfortable"), ("Trueno", "comfortable")]),
        ("encina", "he montado a Nube y está sudando", [("Nube", "sweating", "after work")]),
        ("oak", "checked Fig and Otto, both are freezing", [("Fig", "cold"), ("Otto", "cold")]),
        ("oak", "brought Fig and Otto in", [("Fig", "stall"), ("Otto", "stall")]),
        ("chenaie", "je suis allée chercher Étoile et elle tremble", [("Étoile", "shivering")]),
        # beside whom
        ("oak", "next to Fig, Otto is sweating", [("Otto", "sweating")]),
        ("oak", "Otto is standing next to Fig, shivering", [("Otto", "shivering")]),
        ("oak", "put Otto in the box next to Fig", [("Otto", "stall")]),
        ("oak", "Otto is rubbed behind his elbow", [("Otto", "rubbed")]),
        ("encina", "Nube está al lado de Moro, sudando", [("Nube", "sweating")]),
        ("encina", "he metido a Nube en el box al lado de Moro", [("Nube", "stall")]),
        ("encina", "he sacado a Nube junto a Moro al prado", [("Nube", "field"), ("Moro", "field")]),
        ("chenaie", "derrière Étoile, Caramel transpire", [("Caramel", "sweating")]),
    ],
)
def test_who_was_only_passed_or_come_for_is_told_nothing_of(
    name: str, text: str, expected: list[tuple[object, ...]]
) -> None:
    """One went for a horse, and saw another."""
    heard = said(text, name)
    assert (told(heard), heard.ask) == (expected, None)


@pytest.mark.parametrize(
    ("name", "text", "options"),
    [
        ("encina", "he ido a ver a Moro y a Trueno y está sudando", {"Moro", "Trueno"}),
        ("encina", "Moro va con Trueno y está tiritando", {"Moro", "Trueno"}),
        ("oak", "went to see Fig and Otto and he's sweating", {"Fig", "Otto"}),
        ("chenaie", "je suis allé voir Étoile et Perle et elle transpire", {"Étoile", "Perle"}),
    ],
)
def test_which_of_two_that_were_visited_is_asked(name: str, text: str, options: set[str]) -> None:
    """A verb or a pronoun for one, behind two."""
    heard = said(text, name)
    assert heard.events == ()
    assert heard.ask is not None
    assert set(heard.ask.options) == options
