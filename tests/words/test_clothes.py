"""Which piece is meant, and what a horse wears after the change that is told. Never a guess."""

from dataclasses import replace

import pytest

from bot.barn import demo_path, load
from bot.events import GarmentIs, Wearing
from bot.state import as_filed
from bot.words import read
from tests.words.corpus import barn
from tests.words.saying import said, said_in, told


@pytest.mark.parametrize(
    ("text", "garment"),
    [
        ("tucker-sheet wet", "tucker-sheet"),
        ("Tucker's sheet is wet", "tucker-sheet"),
        ("tuckers sheet wet", "tucker-sheet"),
        ("the sheet of Tucker is wet", "tucker-sheet"),
        ("green rug wet", "tucker-250"),
        ("Tucker's 250 is wet", "tucker-250"),
        ("Tucker's medium is wet", "tucker-250"),
        ("the big blue is wet", "willow-heavy"),
        ("Willow's thick liner is wet", "willow-thick-liner"),
        ("Willow's 200 g liner is wet", "willow-thick-liner"),
        ("Willow's heavy is wet", "willow-heavy"),
        ("the spare 200 is wet", "spare-200-75"),
        ("Fig is fine, her cooler is wet", "fig-cooler"),
        ("the spare sheet that was hanging on Otto's door is wet", "spare-sheet"),
        ("the heavy that was on Otto is wet", "otto-heavy"),
        ("Otto's heavy, which hung on the gate, is wet", "otto-heavy"),
        ("Lady Grey's rug is wet", "grey-sheet"),  # a liner is no rug
    ],
)
def test_a_piece_is_known_by_name_number_weight_and_owner(text: str, garment: str) -> None:
    """People describe clothes as they see them."""
    assert GarmentIs(garment, "wet") in said(text).events


@pytest.mark.parametrize(
    ("text", "options"),
    [
        ("Willow's liner is wet", {"willow-thin-liner", "willow-thick-liner"}),
        ("Fig's rug is wet", {"fig-stable", "fig-heavy"}),  # although she wears one of them
        ("the 400 or the plaid sheet is wet", None),
        ("Tucker's cooler is wet", {"tucker-sheet", "tucker-250", "tucker-liner"}),
        ("Tucker's fly sheet is wet", {"tucker-sheet"}),
        ("put the fly rug on Otto", {"otto-sheet", "otto-heavy"}),
        ("put Otto's dry one on Fig", {"otto-heavy", "otto-sheet"}),
        ("Fig's heavy is soaked, put Otto's dry one on her", {"otto-heavy", "otto-sheet"}),
        ("Tucker's wet one is on the rail", {"tucker-sheet", "tucker-250", "tucker-liner"}),
        ("Tucker's red rug is wet", {"tucker-250", "tucker-sheet"}),
        ("the neck cover is wet", None),
    ],
)
def test_where_several_would_fit_it_asks(text: str, options: set[str] | None) -> None:
    """With choices where there are some, and no fact either way (None: one piece only, no ask)."""
    heard = said(text)

    assert (set(heard.ask.options) if heard.ask else None) == options


@pytest.mark.parametrize(
    "text", ["Zeus's sheet is wet", "Nora's blanket is wet", "my sheet is wet", "the wet sheet music"]
)
def test_other_peoples_linen_is_no_business_of_the_barn(text: str) -> None:
    """A horse that is not here, a person, a bed."""
    assert said(text).events == ()


@pytest.mark.parametrize(
    ("text", "horse", "wear"),
    [
        ("put the liner on Clem", "Clementine", ("clem-liner", "clem-sheet")),
        ("took the liner off Lady Grey", "Lady Grey", ("grey-sheet",)),
        ("Lady Grey in just her sheet", "Lady Grey", ("grey-sheet",)),
        ("rugs off Lady Grey", "Lady Grey", ()),
        ("put the heavy on Fig", "Fig", ("fig-heavy",)),  # in place of the stable rug
        ("swapped Fig's stable rug for the heavy", "Fig", ("fig-heavy",)),
        ("spare 200 on Bramble", "Bramble", ("spare-200-75",)),
        ("Sunday in the 150 with neck cover", "Sunday", ("sunday-turnout", "sunday-neck")),
        ("Otto is naked", "Otto", ()),
        ("took Fig's stable rug off, she's in her cooler now", "Fig", ("fig-cooler",)),
        ("Fig back in the cooler today, it's cooler now", "Fig", ("fig-cooler",)),
    ],
)
def test_a_change_is_told_as_the_whole_outfit(text: str, horse: str, wear: tuple[str, ...]) -> None:
    """From the skin outward, with what was worn before."""
    assert said(text).events == (Wearing(horse, wear),)


@pytest.mark.parametrize(
    "text",
    ["put Tucker's liner on the rack", "please put the heavy on Otto", "Otto needs his heavy", "love Otto's heavy"],
)
def test_a_rack_a_wish_and_praise_change_no_outfit(text: str) -> None:
    """Nothing was put on anybody."""
    assert said(text).events == ()


@pytest.mark.parametrize(
    ("worn", "text", "events"),
    [
        # of two such the one that was on is the one that came off, and what "it" is behind it
        (("willow-thick-liner", "willow-heavy"), "took Willow's liner off, it's soaked", (
            Wearing("Willow", ("willow-heavy",)), GarmentIs("willow-thick-liner", "soaked"),
        )),
        (("willow-thin-liner", "willow-heavy"), "j'ai enlevé la sous-couverture de Willow, elle est déchirée", (
            Wearing("Willow", ("willow-heavy",)), GarmentIs("willow-thin-liner", "torn"),
        )),
        # and what stays on is one that was on
        (("willow-thin-liner", "willow-heavy"), "j'ai retiré la 360 de Willow, elle garde que la sous-couv", (
            Wearing("Willow", ("willow-thin-liner",)),
        )),
        # with two such on, somebody must say which
        (("willow-thin-liner", "willow-thick-liner"), "took Willow's liner off", ()),
        (("willow-thin-liner", "willow-thick-liner"), "took Willow's liners off", (Wearing("Willow", ()),)),
    ],
)  # fmt: skip
def test_only_what_was_on_can_have_come_off(worn: tuple[str, ...], text: str, events: tuple[object, ...]) -> None:
    """What the horse wears tells which piece is meant, and what is spoken of next."""
    here = barn("oak")
    now = as_filed(here)
    now = replace(now, horses={**now.horses, "Willow": replace(now.horses["Willow"], wear=worn)})

    assert read(text, here.people[0], here, now).events == events


@pytest.mark.parametrize(
    ("text", "name", "events"),
    [
        ("tartan of Otto wet", "oak", (GarmentIs("otto-sheet", "wet"),)),
        ("grosse remise à Étoile, elle est réparée", "chenaie", (
            Wearing("Étoile", ("etoile-grosse",)), GarmentIs("etoile-grosse", "in service"),
        )),
        ("remis la réserve 150 à Perle, elle est sèche", "chenaie", (
            Wearing("Perle", ("reserve-150",)), GarmentIs("reserve-150", "dry"),
        )),
    ],
)  # fmt: skip
def test_what_was_moved_is_what_is_spoken_of_next(text: str, name: str, events: tuple[object, ...]) -> None:
    """Whose it is else changes nothing of it."""
    assert said(text, name).events == events


@pytest.mark.parametrize("text", ["la mediana azul marino está seca", "the navy blue medium is dry"])
def test_navy_is_one_colour(text: str) -> None:
    """Said in two words in any language; that another piece is blue does not matter."""
    here = load(demo_path())
    assert said_in(here, text).events == (GarmentIs("maple-medium", "dry"),)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("fig has her stable on now, took the heavy off", [("Fig", ("fig-stable",))]),
        ("Fig: heavy off, stable on", [("Fig", ("fig-stable",))]),
        ("took Fig's stable off", [("Fig", ())]),
        ("Fig wearing her stable", [("Fig", ("fig-stable",))]),
        ("Fig in just her stable", [("Fig", ("fig-stable",))]),
        ("put Fig's heavy over her stable", [("Fig", ("fig-stable", "fig-heavy"))]),
        ("ripped Fig's stable", [("fig-stable", "torn")]),
        ("Fig's stable is in the wash", [("fig-stable", "washing")]),
        ("Fig was sweating under her stable", [("Fig", "sweating")]),
        # where she stands
        ("Fig is in her stable", [("Fig", "stall")]),
        ("Fig back in the stable", [("Fig", "stall")]),
        ("Fig just in her stable", [("Fig", "stall")]),
        ("Fig was sweating in her stable", [("Fig", "sweating", "stall")]),
        ("took Fig out of her stable", [("Fig", "field")]),
        # and what is done there
        ("cleaned Fig's stable on Monday", []),
        ("Fig's in the stable on the end", []),
        ("lights in the stable on again, Fig awake", []),
        ("ripped Fig's stable door", []),
        ("turned the stable lights off", []),
        ("Fig's stable is soaked", []),
    ],
)
def test_a_stable_is_worn_where_it_is_put_on_or_off(text: str, expected: list[tuple[object, ...]]) -> None:
    """As short for the stable rug; anywhere else it is where a horse stands."""
    heard = said(text, "oak")
    assert (told(heard), heard.ask) == (expected, None)


@pytest.mark.parametrize(
    ("text", "where", "garment"),
    [
        ("put a new strap on the green rug", "oak", "tucker-250"),
        ("put a new buckle on Otto's sheet", "oak", "otto-sheet"),
        ("put new leg straps on Otto's sheet", "oak", "otto-sheet"),
        ("on a remis une sangle à l'imper de Caramel", "chenaie", "caramel-impermeable"),
        ("le puse una correa nueva al forro azul", "encina", "canela-forro"),
    ],
)
def test_a_strap_put_on_a_rug_dresses_nobody(text: str, where: str, garment: str) -> None:
    """The rug is mended; who wears it is another matter."""
    assert said(text, where).events == (GarmentIs(garment, "in service"),)


@pytest.mark.parametrize(
    ("text", "wear"),
    [
        ("took Tansy's 200 off and put her cooler on", None),
        ("swapped Tansy's 200 for her cooler", None),
        ("took Tansy's 220 off and put her cooler on", ("tansy-cooler",)),
        ("took Tansy's 200 off and put her sheet on", ("tansy-sheet",)),
    ],
)
def test_what_stays_on_is_not_guessed(text: str, wear: tuple[str, ...] | None) -> None:
    """She wears a 220: whether that came off as "her 200", nobody knows, but a sheet takes its place."""
    here = load(demo_path())
    heard = said_in(here, text)

    assert [e.wear for e in heard.events if isinstance(e, Wearing)] == ([wear] if wear is not None else [])


@pytest.mark.parametrize(
    ("text", "garment"),
    [
        ("the cooler of reserve is damp", "spare-sheet"),
        ("the cooler is damp", "fig-cooler"),
        ("the cooler of Fig is damp", "fig-cooler"),
    ],
)
def test_a_nickname_within_which_a_longer_one_begins_is_not_meant(text: str, garment: str) -> None:
    """As where one is called "the cooler" and another "cooler of reserve"."""
    here = barn("oak")
    called = {"fig-cooler": ("the cooler",), "spare-sheet": ("cooler of reserve",)}
    garments = tuple(g.model_copy(update={"also": called.get(g.id, g.also)}) for g in here.garments)
    here = here.model_copy(update={"garments": garments})

    assert said_in(here, text).events == (GarmentIs(garment, "damp"),)


@pytest.mark.parametrize(
    ("text", "garment"),
    [
        ("el polar de repuesto está húmedo", "nube-polar"),
        ("la manta de repuesto está húmeda", "reserva-200"),
        ("la de repuesto está húmeda", "reserva-200"),
    ],
)
def test_a_spare_of_another_kind_is_not_the_one_called_the_spare(text: str, garment: str) -> None:
    """As where the spare turnout is called "la de repuesto", and a cooler belongs to nobody as well."""
    here = barn("encina")
    changed = {"nube-polar": {"horse": None}, "reserva-200": {"also": ("la de repuesto",)}}
    garments = tuple(g.model_copy(update=changed.get(g.id, {})) for g in here.garments)
    here = here.model_copy(update={"garments": garments})

    assert said_in(here, text).events == (GarmentIs(garment, "damp"),)


@pytest.mark.parametrize("text", ["Fig is in Otto's cooler, hers is wet", "Fig has Otto's cooler on, hers is soaked"])
def test_hers_behind_anothers_cooler_may_be_her_cooler(text: str) -> None:
    """Her rugs, and what is of the kind spoken of."""
    here = barn("oak")
    coolers = (
        g.model_copy(update={"id": "otto-cooler", "horse": "Otto"}) for g in here.garments if g.id == "fig-cooler"
    )
    here = here.model_copy(update={"garments": (*here.garments, *coolers)})
    heard = said_in(here, text)
    assert heard.ask is not None and set(heard.ask.options) == {"fig-cooler", "fig-stable", "fig-heavy"}
