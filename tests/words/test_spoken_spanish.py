"""Spanish as it is spoken: in Andalucía, in Mexico, on the phone; each way of saying it is the same report."""

from pathlib import Path

import pytest

from bot.barn import load
from tests.words.saying import said, said_in, told


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        # what a horse has on its body, and how a piece is that it wears
        ("Canela trae el lomo mojado", [("Canela", "wet")]),
        ("Canela trae todo el pelo empapado", [("Canela", "wet")]),
        ("la nube tiene el lomo mojado", [("Nube", "wet")]),
        ("trueno lleva el cuello sudado", [("Trueno", "sweating")]),
        ("Moro trae frías las patas", [("Moro", "cold")]),
        ("Canela lleva el impermeable empapado", [("canela-impermeable", "soaked")]),
        ("Nube trae la manta roja rota", [("nube-manta", "torn")]),
        ("Canela con el impermeable mojado", [("canela-impermeable", "wet")]),
        ("Moro con la 100 mojado", [("Moro", ("moro-100",)), ("Moro", "wet")]),
        ("Canela lleva el impermeable", [("Canela", ("canela-impermeable",))]),
        # the same of another; a verb without a subject goes on
        ("Canela está sudada y Moro igual", [("Canela", "sweating"), ("Moro", "sweating")]),
        ("Canela no está sudada. Moro igual, gracias", [("Canela", "comfortable"), ("Moro", "comfortable")]),
        ("monté a Canela una hora, está otra vez afuera en el prado", [("Canela",), ("Canela", "field")]),
        # where to, and in what
        ("saqué a Trueno al prado con el impermeable puesto", [
            ("Trueno", ("trueno-impermeable",)), ("Trueno", "field"),
        ]),
        # written by ear, and without its d
        ("e eskilao a Moro, corte hunter", [("Moro", "hunter")]),
        ("he eskilao a Nube entera", [("Nube", "full")]),
        ("saqué al moro y a la paloma al prado", [("Moro", "field"), ("Paloma", "field")]),
        # what had to be done was done
        ("tuve que ponerle el polar a Nube", [("Nube", ("nube-polar",))]),
        ("le tuve que quitar la 100 a Moro", [("Moro", ())]),
        ("hubo que meter a Lucero", [("Lucero", "stall")]),
        ("dejé a Canela en el prado con el impermeable", [("Canela", ("canela-impermeable",)), ("Canela", "field")]),
        ("Canela y Moro trabajaron, ya están otra vez afuera", [
            ("Canela",), ("Moro",), ("Canela", "field"), ("Moro", "field"),
        ]),
        ("monté a Canela y la solté en el prado con el impermeable", [
            ("Canela",), ("Canela", ("canela-impermeable",)), ("Canela", "field"),
        ]),
        # to each its own
        ("le puse la gorda a Canela y la 100 a Moro", [("Canela", ("canela-gorda",)), ("Moro", ("moro-100",))]),
        ("a Canela le puse la gorda y a Moro la 100", [("Canela", ("canela-gorda",)), ("Moro", ("moro-100",))]),
        ("a Canela le puse la gorda, a Moro la 100", [("Canela", ("canela-gorda",)), ("Moro", ("moro-100",))]),
        ("Moro lleva la 100, Canela la gorda", [("Moro", ("moro-100",)), ("Canela", ("canela-gorda",))]),
        ("le quité la 100 a Moro y le puse la gorda a Canela", [("Moro", ()), ("Canela", ("canela-gorda",))]),
        ("Paloma está sudada, le puse la gorda de Canela", [("Paloma", "sweating"), ("Paloma", ("canela-gorda",))]),
        # lent, as the barn calls it, where the horse has none such of its own
        ("le puse el forro azul a Trueno", [("Trueno", ("canela-forro",))]),
        ("Estrella lleva la manta roja", [("Estrella", ("nube-manta",))]),
        # how its own is, of a horse in another's
        ("a Moro le he puesto la 200 porque la suya está rota", [("Moro", ("reserva-200",)), ("moro-100", "torn")]),
        ("Moro lleva la 200, que la suya estaba empapada", [("Moro", ("reserva-200",)), ("moro-100", "soaked")]),
        ("a Moro le puse la 200 y la suya está mojada", [("Moro", ("reserva-200",))]),
        # the south, and Mexico
        ("l'he metío er forro a Canela", [("Canela", ("canela-forro",))]),
        ("er moro y la nube ya han dao la clase", [("Moro",), ("Nube",)]),
        ("la manta der moro está rajá", [("moro-100", "torn")]),
        ("Moro no paraba de sudar", [("Moro", "sweating")]),
        # a standing order, of whom a sentence before it spoke; what is said of another stays
        ("Al Trueno siempre le da calor, no me lo tapen", [("Trueno", True)]),
        ("que a Moro ya no lo tapen nunca, en pelo todo el invierno", [("Moro", True)]),
        ("a Canela ya no me la dejen pelona", [("Canela", False)]),
        ("a partir de hoy ponedle manta a Paloma", [("Paloma", False)]),
        ("de ahora en adelante sí se le pone cobija a Moro", [("Moro", False)]),
        ("A Paloma no le pongan manta. Le quité la 100 a Moro", [("Paloma", True), ("Moro", ())]),
        ("Moro ya está, Paloma ya está lista", [(("Moro", "Paloma"),)]),
        ("ya está la vieja Canela", [(("Canela",),)]),
        # a longer phrase that says more begins in the last word of another
        ("Trueno un poco caliente de más", [("Trueno", "hot")]),
        ("Canela y Nube andan bien de temperatura", [("Canela", "comfortable"), ("Nube", "comfortable")]),
        # what was just denied is so of another, "sí" with its accent and without
        ("Paloma no suda pero Trueno sí", [("Paloma", "comfortable"), ("Trueno", "sweating")]),
        ("Paloma no tiene frío, Moro si, un poco", [("Paloma", "comfortable"), ("Moro", "cold")]),
        ("Paloma sin sudar, Moro si", [("Paloma", "comfortable")]),
        # where somebody looked, and to whom he went
        ("revisé en los boxes: Moro sudado, Paloma fría", [
            ("Moro", "sweating", "stall"), ("Paloma", "cold", "stall"),
        ]),
        ("en la caballeriza Moro sudado, en el corral Nube fría, Paloma bien", [
            ("Moro", "sweating", "stall"), ("Nube", "cold"), ("Paloma", "comfortable"),
        ]),
        ("estuve con la Nube y tiembla", [("Nube", "shivering")]),
        ("saque al trueno y al moro pal corral", [("Trueno", "field"), ("Moro", "field")]),
        # a jacket that is a horse's
        ("la chaqueta de Paloma está mojada", [("paloma-impermeable", "wet")]),
        ("le quité la chamarra a Nube", [("Nube", ())]),
        # clipped, whatever it is called; asked as thumbs spell it
        ("trasquilamos a Moro, hunter", [("Moro", "hunter")]),
        ("acabo de rapar a Trueno entero", [("Trueno", "full")]),
        ("acaban de esquilar a Moro de caza", [("Moro", "hunter")]),
        ("hemos terminado de esquilar a Canela, entera", [("Canela", "full")]),
        ("esquilé a Paloma a manta", [("Paloma", "blanket")]),
        ("ba a nebar en la noche?", [("forecast",)]),
        ("que mantas siguen secandose", [("drying",)]),
        ("qué cosas se te pueden preguntar?", [("help",)]),
        ("qué queda secándose", [("drying",)]),
        # told with two verbs, as with one
        ("acabamos de sacar a Moro al prado", [("Moro", "field")]),
        ("hemos vuelto a meter a Moro", [("Moro", "stall")]),
        ("le volví a quitar la 100 a Moro", [("Moro", ())]),
        ("acaban de ponerle la gorda a Canela", [("Canela", ("canela-gorda",))]),
        ("la gorda de Canela está seca, se la he vuelto a poner", [
            ("canela-gorda", "dry"), ("Canela", ("canela-gorda",)),
        ]),
        ("por fin conseguí ponerle la 100 a Moro", [("Moro", ("moro-100",))]),
        ("no pude ponerle la 100 a Moro", []),
        ("acabo de dar cuerda a Trueno", [("Trueno",)]),
        ("Canela ha vuelto a sudar", [("Canela", "sweating")]),
        ("canela viene de la pista sudada", [("Canela", "sweating", "after work")]),
        ("cambié a Moro y a Canela antes de comer", [(("Moro", "Canela"),)]),
        ("cambié a Canela la gorda por la impermeable", [("Canela", ("canela-impermeable",))]),
        # of the horse or of its rug: the word agrees with one of them
        ("le quité la 100 a Moro, está mojado", [("Moro", ()), ("Moro", "wet")]),
        ("le quité la gorda a Canela, está mojada", [("Canela", ()), ("canela-gorda", "wet")]),
        ("Moro lleva la 100 y está seca", [("Moro", ("moro-100",)), ("moro-100", "dry")]),
        ("Moro lleva la 100 y está seco", [("Moro", ("moro-100",)), ("Moro", "comfortable")]),
        ("le quité el forro a Canela, ya está seca", [("Canela", ()), ("Canela", "comfortable")]),
        # how it is in what it wears, and what it goes out in
        ("Canela tenía frío pero con la gorda ya está bien", [
            ("Canela", ("canela-gorda",)), ("Canela", "comfortable"),
        ]),
        ("con la gorda Canela suda", [("Canela", ("canela-gorda",)), ("Canela", "sweating")]),
        ("Canela fuera con la gorda", [("Canela", ("canela-gorda",)), ("Canela", "field")]),
        ("Trueno lleva debajo de la de cuadra el forro de Canela", [("Trueno", ("canela-forro", "trueno-cuadra"))]),
        ("saqué a Trueno con la de fuera", [("Trueno", ("trueno-impermeable",)), ("Trueno", "field")]),
        ("solté a Moro y a Canela juntos", [("Moro", "field"), ("Canela", "field")]),
        # likened; listed behind which they are; on its way to the wash
        ("Canela sudada como un pollo", [("Canela", "sweating")]),
        ("ya están los de arriba: Moro y Canela", [(("Moro", "Canela"),)]),
        ("la gorda de Canela pal lavado", [("canela-gorda", "washing")]),
        ("Moro bajo la lluvia empapado", [("Moro", "wet")]),
        # put right while speaking
        ("Trueno está frío, no perdón, el que está frío es Moro", [("Moro", "cold")]),
        ("Trueno está sudado, no, la que está sudada es Canela", [("Canela", "sweating")]),
        ("Trueno bien, no perdón, Moro tiembla", [("Trueno", "comfortable"), ("Moro", "shivering")]),
        ("la que está empapada es Paloma", [("Paloma", "wet")]),
        ("le puse el forro a Canela, ay no, la gorda 🤦‍♀️", [("Canela", ("canela-gorda",))]),
        ("borra mi mensaje anterior", [()]),
        ("lo último lo puse mal yo, bórrenlo", [()]),
        # the south, the plural, the past
        ("terminaos tos menos el Moro", [(("Lucero", "Canela", "Trueno", "Nube", "Paloma", "Estrella"),)]),
        ("sudando como cochinos Moro y Trueno", [("Moro", "sweating"), ("Trueno", "sweating")]),
        ("hecha toda la ronda de la noche", [("all",)]),
        ("le quité la 100 a Moro porque tenía mucho calor, espero que no os importe", [("Moro", ()), ("Moro", "hot")]),
        ("Moro sudado, doma", [("Moro", "sweating", "after work")]),
        ("Trueno saltó el portón, está sudado", [("Trueno", "sweating")]),
        # without its article
        ("quité forro Lucero", [("Lucero", ())]),
        ("correa rota manta roja", [("nube-manta", "strap broken")]),
        ("gorda canela correa rota", [("canela-gorda", "strap broken")]),
        ("gorda canela mojada", [("canela-gorda", "wet")]),
        ("100 moro lavando", [("moro-100", "washing")]),
        ("gorda canela sudada", [("Canela", "sweating")]),
        ("Moro bien, lo que sí la manta roja tiene la correa cortada", [
            ("Moro", "comfortable"), ("nube-manta", "strap broken"),
        ]),
        ("su hermana Paloma tiembla", [("Paloma", "shivering")]),
        ("Paloma anda con puro impermeable", [("Paloma", ("paloma-impermeable",))]),
    ],
)  # fmt: skip
def test_spoken_spanish_is_understood(text: str, expected: list[tuple[object, ...]]) -> None:
    """Exactly that, and nothing beside it."""
    assert told(said(text, "encina")) == expected


@pytest.mark.parametrize(
    "text",
    [
        "igual Canela está sudada",
        "igual mañana Moro está sudado",
        "Canela está igual que siempre de guapa",
        "tuve que llevar a mi hija al médico, hacía un sol",
        "al final tuve que poner la lavadora",
        "no paraba de llover y el sol sin salir",
        "l'he dicho ar veterinario que venga a ver a Canela mañana",
        "hace un frío que tiembla hasta el río",
        "monté a caballo ayer y está otra vez lloviendo",
        "la silla de Moro está bien, la suya está rota",
        "a Canela le va a hacer falta manta para enero",
        "Trueno ya está muy viejo",
        "ya está grande la Paloma",
        "Moro ya está hecho un señor",
        "a Canela no me la tapen con la gorda",
        "hoy sí le pongan cobija a Moro",
        "mi primo anda pelón",
        "qué manta más calentita lleva Moro",
        "que manta tan mojada",
        "que cobijas le gustan a Moro",
        "mi chaqueta está empapada",
        "Moro me rompió la chamarra",
        "la chaqueta de Iván está mojada",
        "acabo de pelar la naranja entera",
        "qué se puede pedir para cenar?",
        "fui con frío toda la mañana",
        "Iván está en la cuadra",
        "mi tía Paloma está con fiebre",
        "mi hermana Canela está enferma y no sube",
        "con el trueno de anoche se fue la luz",
        "Moro saltó la valla",
        "la noche anterior no dormí",
        "aún no han terminado de esquilar a Canela entera",
        "la lona del tractor está rota",
        "hechas las camas: Moro y Canela",
        "acabo de montar la mesa",
        "volví a casa con Moro en la cabeza",
        "brisa viene de la playa",
        "se ha volado la capa de la tómbola",
    ],
)
def test_what_only_sounds_so_is_left_alone(text: str) -> None:
    """Perhapses, errands, the weather."""
    assert said(text, "encina").chatter


@pytest.mark.parametrize("text", ["le puse la manta roja a Moro", "le puse el forro azul de Trueno"])
def test_what_may_be_of_her_own_or_lent_is_asked(text: str) -> None:
    """Another horse's rug of a kind that this one has as well; a horse's own that is another's."""
    heard = said(text, "encina")
    assert not heard.events
    assert heard.ask
    assert heard.ask.about == "garment"


@pytest.mark.parametrize("text", ["mono temblando", "moño tiene frío", "el mono está sudado"])
def test_praise_that_shivers_may_be_a_horse(text: str) -> None:
    """A word one letter from a name, where only a horse can stand."""
    heard = said(text, "encina")
    assert not heard.events
    assert heard.ask
    assert heard.ask.options == ("Moro",)


def test_both_are_two() -> None:
    """Of a barn that has three of them, both are two that nobody named: none is said to be wet."""
    heard = said("los dos impermeables están mojados", "encina")
    assert not heard.events
    assert [getattr(event, "garment", "") for event in said("los dos forros están mojados", "encina").events] == [
        "lucero-forro", "canela-forro",
    ]  # fmt: skip


def test_a_day_has_no_ears(tmp_path: Path) -> None:
    """A horse called as a day is meant where a part of the body is cold; where none is, the day."""
    (tmp_path / "barn.yaml").write_text(
        "barn: Los Chopos\ntimezone: Europe/Madrid\nplace: {latitude: 42, longitude: -3}\n"
        "rounds: [{name: mañana, at: '07:30'}]\npeople: [{name: Ana, role: manager, language: es}]\n"
        "horses: [{name: Domingo}, {name: Lola}]\n",
        encoding="utf-8",
    )
    here = load(tmp_path / "barn.yaml")
    heard = [
        said_in(here, text)
        for text in ("domingo frío de las orejas, lola sudada", "domingo frío de las ancas", "domingo frío y lluvioso")
    ]
    assert [told(one) for one in heard] == [[("Domingo", "cold"), ("Lola", "sweating")], [("Domingo", "cold")], []]


def test_a_barns_own_word_for_a_kind_is_heard_of_its_other_horses(tmp_path: Path) -> None:
    """Where one turnout is called a capa, another's only turnout is one too; of two it is asked."""
    (tmp_path / "barn.yaml").write_text(
        "barn: Los Sauces\ntimezone: America/Argentina/Salta\nplace: {latitude: -25, longitude: -65}\n"
        "rounds: [{name: tarde, at: '18:00'}]\npeople: [{name: Ana, role: manager, language: es}]\n"
        "horses: [{name: Tero}, {name: Sauce}, {name: Jarilla}]\n"
        "garments:\n- {id: tero-capa, horse: Tero, kind: turnout, fill_g: 200}\n"
        "- {id: sauce-media, horse: Sauce, kind: turnout, fill_g: 150}\n"
        "- {id: sauce-box, horse: Sauce, kind: stable, fill_g: 150}\n"
        "- {id: jarilla-media, horse: Jarilla, kind: turnout, fill_g: 150}\n"
        "- {id: jarilla-gruesa, horse: Jarilla, kind: turnout, fill_g: 300}\n",
        encoding="utf-8",
    )
    here = load(tmp_path / "barn.yaml")
    heard = [said_in(here, f"la capa de {name} está mojada") for name in ("Tero", "Sauce", "Jarilla")]
    assert [told(one) for one in heard] == [[("tero-capa", "wet")], [("sauce-media", "wet")], []]
    assert heard[2].ask
    assert heard[2].ask.options == ("jarilla-media", "jarilla-gruesa")


def test_a_colour_that_does_not_agree_is_a_horse(tmp_path: Path) -> None:
    """A feminine rug has no masculine colour: the word before it, written small, is who wears it."""
    (tmp_path / "barn.yaml").write_text(
        "barn: La Vega\ntimezone: Europe/Madrid\nplace: {latitude: 42, longitude: -3}\n"
        "rounds: [{name: mañana, at: '07:30'}]\npeople: [{name: Ana, role: manager, language: es}]\n"
        "horses: [{name: Rojo, wearing: [rojo-media]}, {name: Blanca, wearing: [blanca-media]}]\n"
        "garments:\n- {id: rojo-media, horse: Rojo, kind: turnout, fill_g: 200}\n"
        "- {id: blanca-media, horse: Blanca, kind: turnout, fill_g: 200}\n",
        encoding="utf-8",
    )
    here = load(tmp_path / "barn.yaml")
    texts = ("rojo manta fuera", "rojo media mojada", "blanca manta fuera", "manta roja fuera", "manta rojo fuera")
    heard = [said_in(here, text) for text in texts]
    assert [told(one) for one in heard] == [[("Rojo", ())], [("rojo-media", "wet")], [], [], []]
