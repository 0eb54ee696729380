"""Who is meant: names that are words, names with marks, short names, slips of the finger. Never a guess."""

from pathlib import Path

import pytest

from bot.barn import Garment, Horse, demo_path, load
from bot.words.lookup.items import Item
from bot.words.lookup.names import budget, roster
from bot.words.named.their_horse import both_called_so
from tests.words.corpus import barn, subjects
from tests.words.saying import said, said_in


@pytest.mark.parametrize(
    ("where", "text", "horse"),
    [
        ("odd", "Mr. Darcy sweaty", "Mr. Darcy"),
        ("odd", "mr darcy sweaty", "Mr. Darcy"),
        ("odd", "dartagnan is cold", "D'Artagnan"),
        ("odd", "D’Artagnan's wet", "D'Artagnan"),
        ("odd", "jean pierre sweaty", "Jean-Pierre"),
        ("odd", "r2d2 wet", "R2D2"),
        ("odd", "duke sweaty", "The Duke of York"),
        ("odd", "nandu shivering", "Ñandú"),
        ("odd", "Sparkle shivering", "🦄 Sparkle"),
        ("odd", "Will is shivering", "Will"),
        ("odd", "May is cold", "May"),
        ("hard", "<b>Bo</b>by is wet", "<b>Bo</b>by"),
        ("hard", "misty sweaty", "Misty"),
        ("hard", "Star is shivering", "Star"),
        ("hard", "starlight wet", "Starlight"),
        ("oak", "brambel shivering", "Bramble"),
        ("oak", "lady gray cold", "Lady Grey"),
        ("oak", "LadyGrey cold", "Lady Grey"),
        ("oak", "Sunday is shivering", "Sunday"),
        ("chenaie", "etoile transpire", "Étoile"),
    ],
)
def test_a_horse_is_known_however_it_is_written(where: str, text: str, horse: str) -> None:
    """Case, accents, marks and small slips do not matter."""
    assert subjects(said(text, where).events) == {horse}


@pytest.mark.parametrize(
    ("where", "text", "options"),
    [
        ("hard", "bela shivering", ("Bella",)),
        ("hard", "bell is shivering", ("Bella", "Belle")),
        ("hard", "bell is cold behind the elbow", ("Bella", "Belle")),
        ("hard", "bell is naked", ("Bella", "Belle")),
        ("hard", "musty is shivering", ("Misty", "Dusty")),
        ("odd", "Lady sweaty", ("Lady Grey",)),
        ("odd", "Grey is shivering", ("Lady Grey",)),
        ("oak", "Sunday looks cold", ("Sunday",)),
        ("encina", "lucro sudado otra vez", ("Lucero",)),
        ("encina", "coro tiritando", ("Moro",)),
        ("sol", "rato sudado otra vez", ("Rayo",)),
    ],
)
def test_what_is_not_sure_is_asked(where: str, text: str, options: tuple[str, ...]) -> None:
    """Two names as near, part of a name, a day that is also a horse: people choose."""
    heard = said(text, where)

    assert heard.events == ()
    assert heard.ask is not None
    assert set(heard.ask.options) == set(options)


@pytest.mark.parametrize("text", ["turned Sorrel out", "actually turned sorrel out", "no, sorrel is bare"])
def test_a_rare_word_is_a_name_where_a_horse_is_called_so(text: str) -> None:
    """Of Old Sorrel: people say Sorrel, and mean no plant."""
    assert subjects(said_in(load(demo_path()), text, "Theo").events) == {"Old Sorrel"}


@pytest.mark.parametrize("text", ["Quil and Fenel shivering", "Fenel, Quil shivering", "quil n fennel sweaty"])
def test_a_list_is_not_cut_short_by_a_slip_that_is_a_word_of_another_language(text: str) -> None:
    """French for "that he" is one slip from Quill: who speaks English is heard in English, and asked about Quill."""
    here = load(demo_path())
    dot = next(person for person in here.people if person.language == "en")
    heard = said_in(here, text, dot.name)

    assert subjects(heard.events) == {"Fennel"}
    assert heard.ask is not None
    assert heard.ask.options == ("Quill",)


@pytest.mark.parametrize(
    ("where", "text"),
    [
        ("hard", "misty and cold this morning"),
        ("hard", "it's dusty, wet it down"),
        ("hard", "a star is born"),
        ("hard", "the bell is broken"),
        ("hard", "it will rain all day, so cold"),
        ("hard", "patch up the fence"),
        ("hard", "that patch is frozen solid"),
        ("hard", "this patch is soaked"),
        ("hard", "damp patch on the ceiling"),
        ("hard", "that latch is frozen solid"),
        ("hard", "the bell is piping hot"),
        ("hard", "the patch is damp, it went through the wash"),
        ("odd", "it may be cold"),
        ("odd", "will do"),
        ("odd", "hope it's not too cold"),
        ("odd", "ice on the trough"),
        ("odd", "Grey sky today, cold"),
        ("oak", "see you on Sunday, it will be wet"),
        ("oak", "the willow by the gate is soaked"),
        ("sol", "la manta negra está mojada"),
        ("sol", "la luna está fría"),
        ("tilleuls", "la neige est mouillée"),
        ("tilleuls", "belle journée, bien froide"),
    ],
)
def test_a_word_of_the_language_is_not_a_horse(where: str, text: str) -> None:
    """Weather, trees and days stay weather, trees and days."""
    assert said(text, where).chatter


@pytest.mark.parametrize(
    "text", ["patch is frozen solid, poor lad", "I think that patch is frozen solid", "that patch is shivering"]
)
def test_a_horse_is_as_cold_as_a_thing_where_nothing_points_at_it(text: str) -> None:
    """A word that only points makes a thing of a name, where things are so too."""
    assert subjects(said(text, "hard").events) == {"Patch"}


@pytest.mark.parametrize(("name", "slips"), [("pip", 0), ("otto", 1), ("maple", 1), ("willow", 2)])
def test_short_names_forgive_less(name: str, slips: int) -> None:
    """Three letters must be exact; longer names may be a slip or two away."""
    assert budget(name) == slips


def test_a_barn_is_learned_once() -> None:
    """The names of a barn are not read anew for every message."""
    assert roster(barn("oak")) is roster(barn("oak"))


def test_both_of_a_name_are_the_two_that_share_it() -> None:
    """As in "both Bens done", of Big Ben and Little Ben; where three share it, nobody is meant."""
    said = [Item("both", "both", means=frozenset({"both", "all"})), Item("bens", "bens")]
    two = both_called_so(said, {"ben": ("Big Ben", "Little Ben")})
    three = both_called_so(said, {"ben": ("Big Ben", "Little Ben", "Ben Nevis")})

    assert two[1].horses == ("Big Ben", "Little Ben")
    assert three == said


def test_a_name_of_the_other_sex_is_asked_about() -> None:
    """Nobody's finger slips from o to a: "canelo" may be a horse that is not here."""
    heard = said("canelo está tiritando", "encina")

    assert not heard.events
    assert heard.ask is not None
    assert heard.ask.options == ("Canela",)


@pytest.mark.parametrize(
    ("text", "told"),
    [("kico sudado", 1), ("Kico y yo hemos entrenado", 1), ("kiko sudado", 0), ("el kiosco mojado", 0)],
)
def test_a_k_is_heard_as_it_is_meant(text: str, told: int) -> None:
    """What sounds as the name is the name; another man's is not."""
    here = barn("encina").model_copy(update={"horses": (*barn("encina").horses, Horse(name="Quico"))})

    assert len(said_in(here, text).events) == told


@pytest.mark.parametrize(
    ("text", "options"),
    [("la niña está sudando", ("Nina",)), ("la niña está en clase", None), ("Nina está sudando", None)],
)
def test_an_n_with_its_tilde_is_another_letter(text: str, options: tuple[str, ...] | None) -> None:
    """A girl is no Nina: asked where only a horse can stand, silence elsewhere."""
    here = barn("encina").model_copy(update={"horses": (*barn("encina").horses, Horse(name="Nina"))})
    heard = said_in(here, text)

    assert (heard.ask.options if heard.ask else None) == options
    assert bool(heard.events) == text.startswith("Nina")


@pytest.mark.parametrize(
    ("text", "asked", "events"),
    [
        ("Copine grelotte", True, 0),
        ("copine frottée à l'épaule", True, 0),
        ("la copine a froid", False, 0),  # somebody
        ("ma copine grelotte", False, 0),
        ("les copins grelottent", False, 0),  # many, though the horse is called so
        ("copin grelotte", False, 1),
    ],
)
def test_a_word_for_people_may_be_a_slip_of_a_name(text: str, asked: bool, events: int) -> None:
    """Where no article makes it somebody; and a plural lost no apostrophe in French."""
    here = barn("chenaie").model_copy(update={"horses": (*barn("chenaie").horses, Horse(name="Copin"))})
    heard = said_in(here, text)

    assert (heard.ask is not None, len(heard.events)) == (asked, events)


@pytest.mark.parametrize(
    ("text", "told"),
    [("el mate está frío", 0), ("el mate se enfrió", 0), ("Mate está frío", 1), ("el mate está sudando", 1)],
)
def test_what_is_drunk_and_eaten_is_cold_without_being_a_horse(text: str, told: int) -> None:
    """A horse may be called so all the same."""
    here = barn("encina").model_copy(update={"horses": (*barn("encina").horses, Horse(name="Mate"))})

    assert len(said_in(here, text).events) == told


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("la polaire de dimanche est trempée", True),
        ("retrouvé la polaire de dimanche derrière le tracteur", True),
        ("la polaire de dimanche dernier est trempée", False),
        ("la polaire de dimanche soir est trempée", False),
        ("la lessive de dimanche est trempée", False),
        ("la sortie de dimanche est annulée", False),
    ],
)
def test_a_rug_is_a_horses_and_no_days(text: str, meant: bool) -> None:
    """A horse that is called as a day owns what it wears; washing and outings are of the day."""
    here = barn("chenaie")
    horse, piece = Horse(name="Dimanche"), Garment(id="dimanche-polaire", horse="Dimanche", kind="cooler")
    here = here.model_copy(update={"horses": (*here.horses, horse), "garments": (*here.garments, piece)})
    events = said_in(here, text).events

    assert [getattr(event, "garment", None) for event in events] == (["dimanche-polaire"] if meant else [])


def test_a_plural_of_the_language_is_no_name_that_lost_its_apostrophe() -> None:
    """Only English names have an "s" behind them: "nubes sudada" may be Nube, and is asked about."""
    heard = said("nubes sudada en su cuadra", "encina")

    assert not heard.events
    assert heard.ask is not None and heard.ask.options == ("Nube",)


@pytest.mark.parametrize(
    ("text", "horses"),
    [
        ("Priya's two are in", {"Willow", "Fig"}),
        ("Priya's pair came in soaked", {"Willow", "Fig"}),
        ("stripped Priya's two", {"Willow", "Fig"}),
        ("Sam's two are in", set[str]()),  # who has none
        ("Priya's two kids are soaked", set[str]()),
        ("Priya's two rugs are wet", set[str]()),
    ],
)
def test_all_that_are_somebodys_are_told_by_how_many_they_are(text: str, horses: set[str]) -> None:
    """Of somebody who has two."""
    here = barn("oak")
    hers = tuple(h.model_copy(update={"owner": "Priya"} if h.name in ("Willow", "Fig") else {}) for h in here.horses)
    here = here.model_copy(update={"horses": hers})
    assert subjects(said_in(here, text).events) == horses


def test_a_word_that_sounds_like_a_name_is_asked_about(tmp_path: Path) -> None:
    """Whom somebody means who writes "samba", of a barn with a Zamba: nobody knows."""
    (tmp_path / "barn.yaml").write_text(
        "barn: Los Olmos\ntimezone: Europe/Madrid\nplace: {latitude: 42, longitude: -3}\n"
        "rounds: [{name: mañana, at: '07:30'}]\npeople: [{name: Ana, role: manager, language: es}]\n"
        "horses: [{name: Zamba}, {name: Trigo}]\n",
        encoding="utf-8",
    )
    here = load(tmp_path / "barn.yaml")
    heard = said_in(here, "samba tiembla un buen")

    assert heard.events == ()
    assert heard.ask
    assert heard.ask.options == ("Zamba",)


@pytest.mark.parametrize(
    "text",
    [
        "the birch is wet", "the birch by the arena is dry and dead", "the bramble by the ring is soaked",
        "the otter in the pond is wet", "my grandpa is cold all the time, unlike Grandpa the horse",
        "Grandpa came by the barn",
    ],
)  # fmt: skip
def test_a_thing_or_a_person_of_that_name_is_no_horse(text: str) -> None:
    """A tree with its article, somebody's own grandfather, who comes by."""
    here = load(demo_path())
    assert said_in(here, text).chatter


@pytest.mark.parametrize("text", ["Birch is wet", "the birch sheet is wet", "Grandpa is cold"])
def test_the_horse_of_that_name_still_is(text: str) -> None:
    """Without an article, or in front of a piece."""
    here = load(demo_path())
    assert not said_in(here, text).chatter


@pytest.mark.parametrize(("text", "meant"), [("el mío está sudado", True), ("¿traes pan? el mío está frío", False)])
def test_mine_is_the_speakers_horse_where_nothing_else_was_spoken_of(text: str, meant: bool) -> None:
    """Bread is cold as well; who asks has no horse, or one."""
    here = barn("encina")
    owner = next(h.owner for h in here.horses if h.owner)
    assert bool(subjects(said_in(here, text, owner).events)) == meant


@pytest.mark.parametrize(
    ("name", "text", "word"),
    [
        ("chenaie", "Caramele en sueur ce matin", "Caramele"),
        ("chenaie", "Tour 7h\n- Caramele : transpire", "Caramele"),
        ("chenaie", "Ulisse grelotte dans le pré", ""),
        ("chenaie", "perce tremble de froid", "perce"),
        ("encina", "canelo tirita", "canelo"),
        ("oak", "Tuckera is shivering", "Tuckera"),
    ],
)
def test_another_sex_or_another_word_is_asked_about(name: str, text: str, word: str) -> None:
    """It may be a horse that is not here; a plain slip of the finger is taken."""
    heard = said(text, name)
    assert (heard.ask.word if heard.ask else "") == word
    assert bool(heard.events) != bool(word)


@pytest.mark.parametrize("text", ["je perce, je tremble de froid", "ça perce", "toujours en sueur ?"])
def test_a_word_that_does_not_open_what_only_a_horse_does_is_a_word(text: str) -> None:
    """Nobody is asked about."""
    assert said(text, "chenaie").chatter
