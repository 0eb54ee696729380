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
        # another thing, told by who has it; a mood is no comfort
        ("encina", "el forro de Lucero está seco. La toalla de Pilar no, esa chorrea", [("lucero-forro", "dry")]),
        ("encina", "el forro de Lucero está seco. la moto de mi hija no, está empapada", [("lucero-forro", "dry")]),
        ("encina", "la manta roja está colgada. La de mi vecina no, sigue chorreando", []),
        ("encina", "la manta roja está colgada, sigue chorreando", [("nube-manta", "soaked")]),
        ("chenaie", "l'imper d'Ulysse est sec. La serviette de Marie non, celle-là est trempée", [
            ("ulysse-impermeable", "dry"),
        ]),
        ("encina", "Paloma encantada, se ha comido la zanahoria", []),
        ("encina", "Paloma encantada bajo su manta", [("Paloma", "comfortable")]),
        # what is on is all; what came off is no place
        ("encina", "Trueno con el impermeable puesto", [("Trueno", ("trueno-impermeable",))]),
        ("encina", "Lucero fuera la manta, solo el forro", [("Lucero", ("lucero-forro",))]),
        ("encina", "Quitado el forro a Lucero", [("Lucero", ())]),
        ("encina", "Moro lleva ya la 100", [("Moro", ("moro-100",))]),
        ("encina", "Moro lleva ya un rato tiritando", [("Moro", "shivering")]),
        ("encina", "Ronda de esta mañana terminada", [("all",)]),
        ("chenaie", "la tournée de ce matin est faite", [("all",)]),
        # where it comes from, and what was done on a day that is over
        ("encina", "acabada la clase Moro salió sudado", [("Moro", "sweating", "after work")]),
        ("chenaie", "le cours fini, Ulysse est sorti en sueur", [("Ulysse", "sweating", "after work")]),
        ("chenaie", "Perle a été tondue entièrement mardi", [("Perle", "full")]),
        ("chenaie", "Perle sera tondue entièrement mardi", []),
        ("chenaie", "Perle était tondue en chasse le dimanche", []),
        ("chenaie", "tout va bien, Perle est faite pour ça", []),
        ("chenaie", "Perle est faite pour ce soir", [(("Perle",),)]),
        ("chenaie", "le tondeur est venu hier : Perle a une tonte de chasse", [("Perle", "hunter")]),
        ("chenaie", "Perle : tonte bib faite ce matin", [("Perle", "bib")]),
        ("chenaie", "tonte bib de Perle demain", []),
        # how it was, how it is, and a heading
        ("chenaie", "Perle a eu vraiment froid cette nuit", [("Perle", "cold")]),
        ("chenaie", "j'ai eu vraiment froid cette nuit", []),
        ("chenaie", "Étoile se porte parfaitement bien", [("Étoile", "comfortable")]),
        ("encina", "Cambio: Trueno va con el impermeable", [("Trueno", ("trueno-impermeable",))]),
        ("encina", "mañana: Trueno va con el impermeable", []),
        ("encina", "Nube tumbándose y mordiéndose los flancos", [("Nube", "unwell")]),
        ("encina", "Nube revolcándose en el barro", []),
        ("encina", "a Nube ya podéis volver a ponerle manta siempre que haga falta", [("Nube", False)]),
        # asked of the bot, behind a sigh
        ("chenaie", "coincée au bureau 😩 comment va Perle ?", [("Perle", "state")]),
        ("encina", "por qué le toca la gorda a Canela habiendo sol?", [("Canela", "canela-gorda", "why")]),
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
