"""Everyday turns of Spanish, of Spain and the Americas: what is looked for, clipped, wished, asked, and how much."""

import pytest

from tests.words.saying import said, told

Rows = list[tuple[object, ...]]
BARN = ("Lucero", "Canela", "Trueno", "Nube", "Paloma", "Estrella", "Moro")


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        # where somebody looked, before what is gone
        ("no encuentro por ningún lado la manta roja", [("nube-manta", "missing")]),
        ("no aparece por ninguna parte el forro de Lucero", [("lucero-forro", "missing")]),
        ("no sale por ningún lado la gorda de Canela", [("canela-gorda", "missing")]),
        # back from where it was
        ("ya regresó de la costurera la manta roja", [("nube-manta", "in service")]),
        ("la manta roja ya salió de la lavadora", [("nube-manta", "in service")]),
        ("le pusieron la hebilla nueva a la manta roja", [("nube-manta", "in service")]),
        ("ya le cambiaron la correa a la manta roja", [("nube-manta", "in service")]),
        # a clip given, its name behind the verb
        ("a Canela le hicieron hunter", [("Canela", "hunter")]),
        ("hoy le hicimos trace a Trueno", [("Trueno", "trace")]),
        ("a Paloma le hicieron blanket", [("Paloma", "blanket")]),
        ("han esquilado a Paloma en blanket", [("Paloma", "blanket")]),
        ("acabé de esquilar a Lucero completico", [("Lucero", "full")]),
        ("le pasé la máquina a Moro, pecho y cuello", [("Moro", "bib")]),
        ("a Moro lo rasuraron de panza y cuello", [("Moro", "trace")]),
        ("Nube ya no trae esquila", [("Nube", "none")]),
        # how much, denied and told
        ("Moro no está nada sudado", [("Moro", "comfortable")]),
        ("Canela no tiene nada de frío", [("Canela", "comfortable")]),
        ("Lucero está más caliente de la cuenta", [("Lucero", "hot")]),
        ("Trueno nada bien", [("Trueno", "unwell")]),
        ("tiene la cruz y el pecho y el cuello mojados Moro", [("Moro", "wet")]),
        # done, driven out, tied up
        ("Canela y Nube ya están arregladas", [(("Canela", "Nube"),)]),
        ("me he ocupado de Moro", [(("Moro",),)]),
        ("terminé la vuelta", [("all",)]),
        ("me falta Moro, lo demás ya está", [(("Lucero", "Canela", "Trueno", "Nube", "Paloma", "Estrella"),)]),
        ("eché al Moro y al Lucero al potrero", [("Moro", "field"), ("Lucero", "field")]),
        ("amarré a Nube en su caballeriza", [("Nube", "stall")]),
        ("están todos dentro", [(name, "stall") for name in BARN]),
        ("echamos pa dentro a Nube", [("Nube", "stall")]),
        ("metidos Nube y Moro", [("Nube", "stall"), ("Moro", "stall")]),
        ("le eché al Moro la 100", [("Moro", ("moro-100",))]),
        # for good
        ("de ahora en adelante el Moro siempre sin capa", [("Moro", True)]),
        ("desde mañana Canela sin nada siempre", [("Canela", True)]),
        ("no le pongáis más mantas a Moro", [("Moro", True)]),
        ("a Moro sí hay que mantearlo", [("Moro", False)]),
        ("no quiero que Moro lleve manta, por favor", [("Moro", True)]),
        ("esta temporada Moro va sin manta", [("Moro", True)]),
        ("quiero que Canela vuelva a llevar manta", [("Canela", False)]),
        # what goes on of the same, what is another's, what is the others'
        ("he cogido a Nube y la he metido", [("Nube", "stall")]),
        ("Lucero no sale hoy, se queda en el box", [("Lucero", "stall")]),
        ("Paloma se ha mojado porque se salió de la cuadra", [("Paloma", "wet")]),
        ("el forro azul huele a rancio y está húmedo", [("canela-forro", "damp")]),
        ("Canela tiene rozaduras en la cruz y Moro en los hombros", [("Canela", "rubbed"), ("Moro", "rubbed")]),
        ("ya estoy con Moro, los demás hechos", [(BARN[:-1],)]),
        ("Moro y los demás hechos", [("all",)]),
        ("he desvestido a todos", [(name, ()) for name in BARN]),
        ("Moro no está frío, al contrario, está que arde", [("Moro", "hot")]),
        ("Moro no parece tener frío", [("Moro", "comfortable")]),
        # asked
        ("¿por qué tan abrigada Canela hoy?", [("Canela", "why")]),
        ("por qué tan tapado Moro si hace calor", [("Moro", "why")]),
        ("a Moro qué manta le pongo", [("Moro", "today")]),
        ("dime qué le pongo a Moro", [("Moro", "today")]),
        ("¿está lista la manta roja?", [("nube-manta", "drying")]),
        ("¿está seca la manta roja o le falta?", [("nube-manta", "drying")]),
        ("a cuántos grados amanecemos", [("forecast",)]),
    ],
)
def test_it_is_understood(text: str, expected: Rows) -> None:
    """Exactly that, and nothing beside it."""
    assert told(said(text, "encina")) == expected


@pytest.mark.parametrize(
    "text",
    [
        "no encuentro por ningún lado mis guantes",
        "se voló la lona del galpón otra vez",
        "se rompió la lona de la cuadra",
        "hicieron total caso omiso",
        "le dieron completa la ración a Moro",
        "cuando acabe de esquilar a Moro entero os aviso",
        "el Moro siempre sin capa",
        "hay que tapar a Moro",
        "lo demás ya lo vemos mañana",
        "me ocupé de la comida",
        "eché al perro del potrero",
        "amarré al perro en la caballeriza",
        "ya está lista la manta roja",
        "qué capa más linda la de Moro",
        "por qué tan triste Moro",
        "nada bien el partido",
        "Moro es muy friolento",
        "la Paloma está bien bonita",
        "solo falta ponerle la manta roja a Nube",
        "no quiero que Moro lleve el ronzal",
        "si Moro no lleva manta ponedle una",
        "dime la hora",
    ],
)
def test_what_only_sounds_so_is_left_alone(text: str) -> None:
    """Gloves, tarpaulins, dogs, plans, praise."""
    assert said(text, "encina").chatter
