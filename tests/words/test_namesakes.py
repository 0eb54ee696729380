"""People are called as horses are: what such a person is, says and does is told of no horse of that name."""

import pytest

from tests.words.corpus import subjects
from tests.words.saying import said


@pytest.mark.parametrize(
    ("where", "text"),
    [
        ("oak", "Dentist Otto phoned in sick, they'll send another"),
        ("oak", "our new farrier Otto is shivering in his van"),
        ("oak", "Otto the barber was sweating"),
        ("oak", "Tucker the bus driver is soaked"),
        ("oak", "Clem, our receptionist, is sick"),
        ("encina", "Moro el panadero está temblando"),
        ("chenaie", "Ulysse le boucher est malade"),
        ("oak", "Otto the plumber is soaked"),
        ("oak", "Tucker, our new vet, is sick"),
        ("oak", "Tucker (the physio) is off her food, no sessions today"),
        ("oak", "Otto from the tack shop is sick"),
        ("oak", "Otto over at the co-op is unwell"),
        ("oak", "Willow is out sick"),
        ("oak", "Willow emailed, she's sick"),
        ("oak", "Mrs. Tucker was soaked"),
        ("encina", "La herradora Canela está enferma"),
        ("encina", "Moro el fontanero está temblando"),
        ("encina", "Paloma de la tienda está mala"),
        ("encina", "Paloma está de baja con fiebre"),
        ("encina", "Paloma ha escrito que está mala"),
        ("chenaie", "La monitrice Perle est malade"),
        ("chenaie", "Ulysse, notre maréchal, est malade"),
        ("chenaie", "Ulysse de la coop est malade"),
        ("chenaie", "Perle a téléphoné, elle est malade"),
    ],
)
def test_people_who_bear_a_horses_name_are_ill_without_it(where: str, text: str) -> None:
    """Their trade, where they are from, or what no horse does, tells them."""
    assert said(text, where).chatter


@pytest.mark.parametrize(
    ("where", "text", "horses"),
    [
        ("oak", "Otto says Fig is sweating", {"Fig"}),
        ("oak", "Otto (farrier Otto haha) reckons Fig is cold", {"Fig"}),
        ("oak", "Willow told me that Fig's shivering", {"Fig"}),
        ("oak", "Willow checked Fig, all dry", {"Fig"}),
        ("oak", "Willow saw Fig sweating", {"Fig"}),
        ("oak", "according to Willow Fig is shivering", {"Fig"}),
        ("oak", "Willow brought Fig in", {"Fig"}),
        ("oak", "Willow turned out Fig", {"Fig"}),
        ("oak", "Willow rode Fig, she is sweaty", {"Fig"}),
        ("oak", "Willow had Fig in the lesson", {"Fig"}),
        ("oak", "Willow's done with Fig", {"Fig"}),
        ("encina", "Paloma dice que Moro está sudado", {"Moro"}),
        ("encina", "Paloma me ha dicho que Moro tiembla", {"Moro"}),
        ("encina", "según Paloma, Moro está sudado", {"Moro"}),
        ("encina", "Paloma le quitó la manta a Moro", {"Moro"}),
        ("encina", "Paloma montó a Moro", {"Moro"}),
        ("chenaie", "Perle dit que Filou transpire", {"Filou"}),
        ("chenaie", "Perle m'a dit que Filou tremble", {"Filou"}),
        ("chenaie", "d'après Perle, Filou transpire", {"Filou"}),
        ("chenaie", "Perle a rentré Filou", {"Filou"}),
    ],
)
def test_who_tells_of_a_horse_or_sees_to_it_is_no_horse(where: str, text: str, horses: set[str]) -> None:
    """Of the horse that is told of, and of nobody else."""
    heard = said(text, where)
    assert (subjects(heard.events), heard.ask) == (horses, None)


@pytest.mark.parametrize(
    ("where", "text", "horses"),
    [
        ("oak", "farrier's here. Otto is sweating", {"Otto"}),
        ("oak", "called the vet Otto is shivering", {"Otto"}),
        ("oak", "the vet says Otto is sick", {"Otto"}),
        ("oak", "dentist done with Otto, he's fine", {"Otto"}),
        ("oak", "Otto from the back field is shivering", {"Otto"}),
        ("oak", "Otto, my sister's pony, is shivering", {"Otto"}),
        ("oak", "Otto turned out Fig brought in", {"Otto", "Fig"}),
        ("oak", "Otto checked Fig checked all good", {"Otto", "Fig"}),
        ("oak", "Otto worked Fig too", {"Otto", "Fig"}),
        ("oak", "Otto says he's sweating under that thing", {"Otto"}),
        ("encina", "vino el herrador y Moro sudaba", {"Moro"}),
        ("encina", "he llamado al veterinario, Moro está malo", {"Moro"}),
        ("chenaie", "appelé le véto Perle tremble", {"Perle"}),
        ("chenaie", "le maréchal est passé, Perle a transpiré", {"Perle"}),
    ],
)
def test_a_horse_stays_one_where_people_are_spoken_of(where: str, text: str, horses: set[str]) -> None:
    """A vet beside a horse's name makes nobody of it."""
    assert subjects(said(text, where).events) == horses


def test_the_same_name_behind_such_a_person_is_asked_about() -> None:
    """Whether it is still the farrier who is ill, nobody can tell."""
    heard = said("Farrier Otto called. Otto is sick, so Tuesday it is")
    assert heard.events == ()
    assert heard.ask is not None and heard.ask.options == ("Otto",)


@pytest.mark.parametrize(
    ("where", "text", "horses"),
    [
        ("oak", "my dog Otto is soaked", set()),
        ("oak", "the barn cat Willow is shivering", set()),
        ("oak", "Otto the goat got out, he's in the field", set()),
        ("encina", "mi perro Moro está temblando de miedo", set()),
        ("encina", "la gata Paloma está mala", set()),
        ("chenaie", "mon chat Filou est malade", set()),
        ("chenaie", "Filou c'est le chien, il est mouillé", set()),
        ("oak", "tell Willow Otto's cold", {"Otto"}),
        ("oak", "told Willow that Otto's sweating", {"Otto"}),
        ("chenaie", "j'ai dit à Perle que Filou transpire", {"Filou"}),
        ("oak", "the dog is barking and Otto is sweating", {"Otto"}),
        ("oak", "a dog chased Otto, he's sweating", {"Otto"}),
        ("oak", "told you Otto and Fig were cold", {"Otto", "Fig"}),
    ],
)
def test_a_dog_of_that_name_is_no_horse_nor_is_who_is_told(where: str, text: str, horses: set[str]) -> None:
    """Animals of another kind, and whoever hears of a horse."""
    heard = said(text, where)
    assert (subjects(heard.events), heard.ask) == (horses, None)


def test_lower_case_weather_of_a_morning_is_weather() -> None:
    """Storm last night, all soaked: nobody is."""
    assert said("orage hier soir, tout est trempé", "tilleuls").chatter
    assert said("misty this morning, cold and damp", "hard").chatter
