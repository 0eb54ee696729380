"""Horses named only to tell of somebody or something else: nothing is told of them; what is told of others stays."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text"),
    [
        # where a thing is, and how that is
        ("oak", "Willow bark is in the tack room, cold"),
        ("oak", "Fig's bucket is on the rail, freezing"),
        ("oak", "Willow's hay is in the barn, soaked"),
        ("oak", "Fig jam's in the tack room, cold"),
        # whoever has to do with a horse
        ("oak", "Tucker's trainer is ill, the lesson is off"),
        ("oak", "Willow's new saddle fitter is sick"),
        ("oak", "Otto's half leaser is coughing and won't come"),
        ("oak", "Fig's exercise rider is off with a fever"),
        ("oak", "Tucker and Otto's owner is shivering"),
        ("oak", "Bramble's little girl is soaked, find her a towel"),
        ("oak", "Otto's trainer was here, she's ill"),
        ("oak", "the man who leases Otto has a fever"),
        ("oak", "the woman who owns Fig is shivering by the stove"),
        ("encina", "la chica que alquila a Moro está enferma"),
        ("encina", "el que monta a Lucero está con fiebre"),
        ("encina", "la potra de Canela tiene cólico en otra finca"),
        ("chenaie", "la dame qui a Noisette en demi-pension est malade"),
        ("chenaie", "celle qui monte Caramel tousse"),
        ("chenaie", "la demi-pensionnaire de Perle est malade"),
        ("chenaie", "dans l'ancienne écurie d'Ulysse il y a des coliques"),
        ("oak", "my kid is wearing Otto's sheet"),
        # another horse, told by one of these
        ("oak", "the mare next to Tucker's old stall at Ashdown has strangles"),
        ("oak", "the gelding I had before Otto is unwell"),
        ("oak", "the stallion Willow was bred to is ill"),
        ("oak", "the mare behind Fig in the lesson was sweating"),
        ("oak", "Tucker's old barn has strangles"),
        ("oak", "swept Tucker's stall and put shavings in Otto's stall"),
        ("oak", "Tucker's halter is in Otto's stall"),
        ("oak", "Otto's old stallmate at Ashdown is shivering"),
        ("oak", "two stalls down from Fig there was one colicking at the show"),
        ("encina", "el caballo que tenía antes de Lucero está enfermo"),
        ("encina", "la yegua con la que estaba Moro tiene cólico"),
        ("chenaie", "le cheval que j'avais avant Perle est malade"),
        ("chenaie", "le cheval derrière Ulysse au concours était en sueur"),
    ],
)
def test_who_is_named_in_passing_has_nothing_told_of_it(name: str, text: str) -> None:
    """Its people, its neighbours, whoever stood where it stood."""
    assert said(text, name).chatter


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        # one that another is compared with, the one a hand was under, and the speaker
        (
            "chenaie",
            "Filou transpire plus que Ulysse au concours de Huy, et pourtant il broute",
            [("Filou", "sweating")],
        ),
        (
            "oak",
            "was mending the rail behind Tucker and stuck a hand in under Otto's liner. He's sweating",
            [("Otto", "sweating")],
        ),
        ("encina", "Canela no tiembla, el que tiembla soy yo aquí fuera", [("Canela", "comfortable")]),
        ("encina", "Canela no tiembla, el que tiembla es Trueno", [("Canela", "comfortable"), ("Trueno", "shivering")]),
        ("oak", "Tucker is grand, the one who's shivering is me", [("Tucker", "comfortable")]),
        ("chenaie", "Filou est bien, celle qui grelotte c'est moi", [("Filou", "comfortable")]),
        # people told by their day
        ("oak", "Tucker had a lesson with the Saturday kids", [("Tucker",)]),
        ("oak", "Tucker did a lesson with the kids on Thursday", []),
        ("encina", "Moro hizo una clase con los chicos del jueves", [("Moro",)]),
        ("encina", "a Moro le dio mucho calor", [("Moro", "hot")]),
        ("encina", "Moro agarró calor", [("Moro", "comfortable")]),
        ("encina", "de hoy en más Moro va sin manta", [("Moro", True)]),
        # the weather it was in, and who else was
        ("oak", "Tucker got caught in that downpour and he's soaked", [("Tucker", "wet")]),
        ("oak", "the farrier got caught in that storm and he's soaked", []),
        # where one stands, told by another
        ("oak", "Tucker next to Otto is sweating", [("Tucker", "sweating")]),
        ("oak", "Willow, next to Fig, is shivering", [("Willow", "shivering")]),
        ("oak", "Next to Fig, Willow is shivering", [("Willow", "shivering")]),
        ("oak", "Willow, unlike Fig, is cold", [("Willow", "cold")]),
        ("oak", "Otto in the stall across from Fig has rub marks", [("Otto", "rubbed", "stall")]),
        ("oak", "Otto in the field behind Fig's is soaked", [("Otto", "wet")]),
        ("encina", "Lucero al lado de Moro está sudando", [("Lucero", "sweating")]),
        ("encina", "Lucero, junto a Moro, está tiritando", [("Lucero", "shivering")]),
        ("encina", "pasé por el box de Moro y Canela estaba tiritando", [("Canela", "shivering")]),
        ("chenaie", "Perle, à côté d'Ulysse, grelotte", [("Perle", "shivering")]),
        ("chenaie", "Perle derrière Ulysse transpire", [("Perle", "sweating")]),
        # in whose stall or field it stands
        ("oak", "Willow is in Fig's stall", [("Willow", "stall")]),
        ("oak", "turned Willow out in Otto's field", [("Willow", "field")]),
        ("oak", "Willow in Fig's stall is shivering", [("Willow", "shivering", "stall")]),
        ("oak", "went past Otto's stall on my way out and Fig was shivering in hers", [("Fig", "shivering", "stall")]),
        ("oak", "passed Otto's field, Fig was shivering in hers", [("Fig", "shivering")]),
        ("oak", "I'm in Fig's stall, she's shivering", [("Fig", "shivering", "stall")]),
        ("encina", "pasé por el box de Moro y Lucero estaba tiritando en el suyo", [("Lucero", "shivering", "stall")]),
        ("chenaie", "passé devant le box d'Ulysse et Perle grelottait dans le sien", [("Perle", "shivering", "stall")]),
        (
            "chenaie",
            "Ulysse va bien dans son box, Perle grelotte dans le sien",
            [
                ("Ulysse", "comfortable", "stall"),
                ("Perle", "shivering", "stall"),
            ],
        ),
        # a piece, and where or on whose it was
        ("oak", "Otto's heavy is on the gate by Fig, drenched", [("otto-heavy", "soaked")]),
        ("oak", "Otto's heavy is over the gate next to Fig, still damp", [("otto-heavy", "damp")]),
        ("oak", "Otto is on the gate by Fig, soaked", [("Otto", "wet")]),
        ("oak", "Willow's bucket is on the rail, she's soaked", [("Willow", "wet")]),
        ("oak", "found Otto's sheet in Fig's stall, soaked", [("otto-sheet", "soaked")]),
        ("oak", "Otto's sheet fell in Fig's poop, soaked", [("otto-sheet", "soaked")]),
        ("oak", "lent Otto's heavy to Mary for her gelding, he's soaked", []),
        ("oak", "took Otto's sheet off the hook", []),
        ("oak", "fixed the light over Otto's stall, Fig is cold", [("Fig", "cold")]),
        ("oak", "Ruth's kid threw up on Otto's sheet, it's in the wash", [("otto-sheet", "washing")]),
        # in a place of another's
        ("oak", "turned Tucker out in Otto's paddock", [("Tucker", "field")]),
        ("oak", "Tucker's in Otto's stall", [("Tucker", "stall")]),
        ("oak", "Tucker is shivering in Otto's stall", [("Tucker", "shivering", "stall")]),
        ("oak", "Otto's in Tucker's field, brought Fig in", [("Otto", "field"), ("Fig", "stall")]),
        # a part of it that shivers, and who stands there
        ("chenaie", "les pattes de Perle tremblent", [("Perle", "shivering")]),
        ("chenaie", "les babines de Perle tremblent", [("Perle", "shivering")]),
        ("chenaie", "du côté de Perle elle grelotte", [("Perle", "shivering")]),
        ("oak", "Otto's poor haunches are shaking", [("Otto", "shivering")]),
        ("oak", "Otto's near hind is shaking", [("Otto", "shivering")]),
        ("oak", "stood by Otto, shivering", [("Otto", "shivering")]),
        ("encina", "al lado de Moro, está temblando", [("Moro", "shivering")]),
        # of itself after all
        ("oak", "stood next to Otto, he's soaked", [("Otto", "wet")]),
        ("oak", "the mare Willow is shivering", [("Willow", "shivering")]),
        ("oak", "Otto's owner found him, Otto is ill", [("Otto", "unwell")]),
        ("oak", "Tucker's trainer says Otto is shivering", [("Otto", "shivering")]),
        ("oak", "the girl saw Otto is sweating", [("Otto", "sweating")]),
        ("oak", "Tucker's half asleep but sweaty", [("Tucker", "sweating")]),
        ("oak", "Tucker's old and cold", [("Tucker", "cold")]),
        ("oak", "Tucker's poor old legs are shaking", [("Tucker", "shivering")]),
        ("oak", "Otto's new stall is soaked, he's shivering", [("Otto", "shivering", "stall")]),
        ("encina", "he visto por la ventana que Moro está tiritando", [("Moro", "shivering")]),
        ("encina", "ay chicos que Canela tiene rozaduras", [("Canela", "rubbed")]),
        ("encina", "he pasado por el box de Moro y está tiritando", [("Moro", "shivering")]),
    ],
)
def test_what_is_told_of_one_stays_with_it(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Whoever stands beside it, and whoever tells of it."""
    heard = said(text, name)
    assert (told(heard), heard.ask) == (expected, None)


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "the mare next to Tucker is shivering"),
        ("encina", "la yegua de al lado de Moro está tiritando"),
        ("chenaie", "la jument à côté de Perle grelotte"),
    ],
)
def test_a_neighbour_that_shivers_is_asked_about(name: str, text: str) -> None:
    """It may be one of the barn's, and in danger."""
    heard = said(text, name)
    assert heard.events == ()
    assert heard.ask is not None


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Tobias put the heavy on Willow", ("Willow", ("willow-heavy",))),
        ("bringing Otto in from field 2", ("Otto", "stall")),
        ("brought Otto in from the field", ("Otto", "stall")),
    ],
)
def test_who_did_it_and_where_from_change_nothing(text: str, expected: tuple[object, ...]) -> None:
    """Somebody of another yard put the rug on; the field is where the horse was."""
    assert told(said(text)) == [expected]
