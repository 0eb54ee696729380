"""Turns that Spanish and French share: who makes whom wet, how far a rug came down, what the frost is."""

import pytest

from tests.words.corpus import barn
from tests.words.saying import said, said_in, told

Rows = list[tuple[object, ...]]


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        # frost is weather; a mare may be frozen
        ("chenaie", "Perle n'a pas froid malgré cette gelée", [("Perle", "comfortable")]),
        ("chenaie", "Étoile va bien, malgré les gelées blanches", [("Étoile", "comfortable")]),
        ("chenaie", "avec la gelée de cette nuit Perle est restée au box", [("Perle", "stall")]),
        ("chenaie", "grosse gelée ce matin, Perle a froid", [("Perle", "cold")]),
        ("chenaie", "Perle est gelée ce matin", [("Perle", "cold")]),
        ("encina", "Canela no está fría pese a la helada", [("Canela", "comfortable")]),
        ("encina", "Paloma helada pese al sol", [("Paloma", "cold")]),
        # pulled so far it is on still
        ("encina", "a Lucero le bajé la manta hasta la grupa", []),
        ("encina", "Nube suda, le he quitado la manta hasta media espalda", [("Nube", "sweating")]),
        ("encina", "le saqué la manta a Lucero hasta la noche", [("Lucero", ())]),
        ("encina", "Lucero está sudado hasta las orejas", [("Lucero", "sweating")]),
        ("chenaie", "j'ai retiré la couverture d'Ulysse jusqu'aux reins", []),
        ("chenaie", "Ulysse est trempé jusqu'au garrot", [("Ulysse", "wet")]),
        # what the speaker has on
        ("encina", "vengo con el polar chorreando", []),
        ("encina", "tengo la sudadera toda mojada", []),
        ("encina", "tengo el polar de Nube empapado", [("nube-polar", "soaked")]),
        ("encina", "el polar está empapado", [("nube-polar", "soaked")]),
        ("chenaie", "j'ai la polaire toute trempée", []),
        ("chenaie", "la polaire est trempée", [("filou-polaire", "soaked")]),
        # took it off her: the piece spoken of last, and no thing
        ("chenaie", "Noisette a sué dans son outdoor, je lui ai enlevée", [
            ("Noisette", "sweating"), ("Noisette", ()),
        ]),
        ("chenaie", "l'imper d'Ulysse est trempé, on le lui a retiré", [
            ("ulysse-impermeable", "soaked"), ("Ulysse", ()),
        ]),
        ("chenaie", "Perle a chaud avec sa 250, je la lui ai ôtée", [("Perle", "hot"), ("Perle", ())]),
        ("chenaie", "Perle avait une écharde, je la lui ai retirée", []),
        ("chenaie", "Perle a chaud avec sa 250, sa selle frottait, je la lui ai enlevée", [("Perle", "hot")]),
        # done: the others of the list as well, and what stands behind "all is well"
        ("encina", "hechos Canela y los demás", [("all",)]),
        ("encina", "listas Nube, Canela y el resto ya", [("all",)]),
        ("encina", "hecha Nube y los demás no", [(("Nube",),)]),
        ("chenaie", "faits Ulysse, Perle et les autres", [("all",)]),
        ("chenaie", "c'est tout bon, Perle et Noisette sont faites", [(("Perle", "Noisette"),)]),
        ("chenaie", "tout va bien, Perle est faite", [(("Perle",),)]),
        ("chenaie", "c'est tout bon, Perle est trempée", [("Perle", "wet")]),
        ("chenaie", "c'est tout bon, les poneys sont tous faits", [(("Filou",),)]),
        ("chenaie", "tout est fait, les poneys sont tous faits", [("all",)]),
        # in a book or a film
        ("chenaie", "j'ai enfin relu l'Iliade, Ulysse est trempé tout du long", []),
        ("chenaie", "on a regardé le film hier, Perle est toute mouillée", []),
        ("chenaie", "j'ai fini le foin, Ulysse est trempé", [("Ulysse", "wet")]),
        ("chenaie", "j'ai lu le roman, Ulysse tremble", [("Ulysse", "shivering")]),
        ("chenaie", "j'ai vu Ulysse, il est trempé", [("Ulysse", "wet")]),
        ("encina", "en la novela Estrella está empapada", []),
        ("encina", "he visto a Estrella, está empapada", [("Estrella", "wet")]),
        ("oak", "watched the film last night, Willow is soaked in it", []),
        ("oak", "finished the hay, Willow is soaked", [("Willow", "wet")]),
        # who makes another wet
        ("encina", "Lucero ha empapado a Canela", [("Canela", "wet")]),
        ("encina", "Lucero ha mojado a Canela y Nube con el cubo", [("Canela", "wet"), ("Nube", "wet")]),
        ("encina", "la lluvia ha calado a Moro", [("Moro", "wet")]),
        ("encina", "Lucero ha empapado el heno", []),
        ("encina", "Moro ha mojado a mi hija", []),
        ("encina", "Moro se ha mojado", [("Moro", "wet")]),
        ("encina", "Moro ha empapado la manta de Lucero", [("lucero-manta", "soaked")]),
        ("chenaie", "Ulysse a trempé Perle", [("Perle", "wet")]),
        ("chenaie", "Ulysse a mouillé son foin", []),
        ("chenaie", "Ulysse a trempé son imper", [("ulysse-impermeable", "soaked")]),
    ],
)  # fmt: skip
def test_it_is_told_of_whom_it_is(name: str, text: str, expected: Rows) -> None:
    """And of nobody else."""
    heard = said(text, name)
    assert (told(heard), heard.ask) == (expected, None)


@pytest.mark.parametrize(
    ("name", "text", "options"),
    [
        ("tilleuls", "dune tremble sous son imper", ("Lune",)),
        ("chenaie", "caramels grelotte ce soir", ("Caramel",)),
    ],
)
def test_a_word_of_the_language_a_letter_from_a_name_is_asked_about(
    name: str, text: str, options: tuple[str, ...]
) -> None:
    """Where only a horse can stand."""
    heard = said(text, name)
    assert (heard.events, heard.ask and heard.ask.options) == ((), options)


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("tilleuls", "la dune tremble sous le vent"),
        ("tilleuls", "dune part il fait froid"),
        ("chenaie", "caramels mous et thé bien chaud"),
        ("chenaie", "des caramels froids"),
    ],
)
def test_and_is_itself_anywhere_else(name: str, text: str) -> None:
    """As sweets are, and sand."""
    heard = said(text, name)
    assert (heard.events, heard.ask) == ((), None)


@pytest.mark.parametrize(
    ("text", "asked"), [("lapin grelotte", True), ("le lapin grelotte", False), ("du lapin froid", False)]
)
def test_a_beast_may_be_a_slip_of_a_name(text: str, asked: bool) -> None:
    """Where only a horse can stand it is asked about."""
    here = barn("chenaie")
    horses = tuple(h.model_copy(update={"name": "Lupin"}) if h.name == "Perle" else h for h in here.horses)
    heard = said_in(here.model_copy(update={"horses": horses}), text)

    assert (heard.events, heard.ask is not None) == ((), asked)
