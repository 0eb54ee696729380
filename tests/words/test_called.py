"""People and animals that bear the name of a horse of the barn."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text"),
    [
        # called so
        ("encina", "mi prima tiene una gatita que se llama Paloma y está malísima"),
        ("encina", "la potra de mi cuñado también se llama Estrella, la pobre está con cólico"),
        ("encina", "mi nieta se llama Estrella y tiene fiebre"),
        ("encina", "la alumna nueva se llama Paloma y está tiritando"),
        ("encina", "en la otra hípica hay un castrado que se llama Lucero y está con cólico"),
        ("oak", "my aunt has a little dog called Clementine and she's really ill"),
        ("oak", "my nephew's pony is called Tucker too, he's shivering"),
        ("oak", "our teacher is called Clementine and she is poorly"),
        ("chenaie", "ma voisine a une chatte qui s'appelle Perle, elle est très malade"),
        ("chenaie", "la jument de mon oncle s'appelle aussi Étoile, elle grelotte"),
        # said beside it
        ("encina", "el perro de Ramón, Lucero, está tiritando"),
        ("encina", "nuestra gata Estrella está empapada"),
        ("encina", "los perros, Moro y Lucero, están empapados"),
        ("oak", "the dog next door, Tucker, is shivering"),
        ("oak", "the cats Otto and Fig are soaked"),
        ("oak", "my gran, Clementine, is poorly"),
        ("chenaie", "notre chien Caramel grelotte"),
        ("oak", "my Fig beetle is sick"),
        ("oak", "our little Willow hamster is shivering"),
        # another one
        ("encina", "hay otra Paloma en el pueblo, que está con cólico"),
        ("oak", "the other Clementine, the goat, is shivering"),
    ],
)
def test_what_somebody_else_s_is_called_is_no_horse_of_the_barn(name: str, text: str) -> None:
    """A dog, an aunt, a cousin's pony: whoever it is, nothing is told of the horse of that name."""
    assert said(text, name).chatter


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("encina", "la nueva se llama Paloma y está tiritando", [("Paloma", "shivering")]),
        ("encina", "la perra y Paloma están empapadas", [("Paloma", "wet")]),
        ("encina", "la otra vez Paloma bien, hoy Paloma está fría", [("Paloma", "cold")]),
        ("encina", "mi perra Estrella está mala y Estrella, la yegua, suda", [("Estrella", "sweating")]),
        ("oak", "my daughter called, Clementine is shivering", [("Clementine", "shivering")]),
        ("oak", "my cousin who has Otto on loan says he's shivering", [("Otto", "shivering")]),
        ("oak", "the dog is fine, Fig's shivering", [("Fig", "shivering")]),
        ("chenaie", "le chien est trempé, Caramel grelotte", [("Caramel", "shivering")]),
    ],
)
def test_the_horse_itself_beside_people_and_animals(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Who is spoken of beside it takes nothing from it."""
    assert told(said(text, name)) == expected
