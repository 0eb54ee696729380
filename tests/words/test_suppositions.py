"""What is only supposed, wished, planned, asked of people or told of another day or person is no report."""

from itertools import product

import pytest

from bot.state import as_filed
from bot.words import read
from tests.words.corpus import barn
from tests.words.saying import said
from tests.words.test_denials import NAMES, SIGNS

FRAMES = {
    "oak": (
        "if {n} is {s} call me", "if {n} gets {s} take it off", "hope {n} isn't {s} tonight",
        "I hope {n} is not {s}", "is {n} {s}?", "was {n} {s} yesterday?", "{n} was {s} yesterday",
        "last week {n} was {s}", "{n} will be {s} in that", "{n} might be {s} later", "wonder if {n} is {s}",
        "can you check whether {n} is {s}", "make sure {n} isn't {s}", "{n} would be {s} in the heavy",
        "{n} always gets {s} in spring", "let me know if {n} is {s}", "don't want {n} to get {s}",
        "{n} used to get {s}", "when {n} is {s} he needs the cooler", "tell Sam if {n} is {s}",
        "unless {n} is {s} leave it", "{n} could get {s} with that on", "I dreamt {n} was {s}",
        "before {n} gets {s}", "so that {n} doesn't get {s}", "afraid {n} gets {s}", "anyone know if {n} is {s}?",
        "{n}'s owner is {s}", "{n}'s rider is {s}", "when {n} was young he was {s}", "{n} was {s} when he was a baby",
        "aged four {n} was {s}", "{n} was {s} at three years old", "her first winter here {n} was {s}",
        "in 2019 {n} was {s}", "aged two, {n} was {s} all the time",
    ),
    "encina": (
        "si {n} está {s} avisadme", "si {n} se pone {s} quitadle la manta", "espero que {n} no esté {s}",
        "¿está {n} {s}?", "ayer {n} estaba {s}", "la semana pasada {n} estaba {s}", "{n} va a estar {s} con eso",
        "a ver si {n} está {s}", "mirad si {n} está {s}", "que {n} no esté {s}", "en verano {n} siempre está {s}",
        "cuando {n} está {s} hay que secarlo", "no quiero que {n} esté {s}", "ojalá {n} no esté {s}",
        "a lo mejor {n} está {s}", "quizá {n} esté {s}", "{n} estaría {s} con la gorda",
        "cuando {n} era potro estaba {s}", "{n} estaba {s} cuando era pequeño",
        "avisad si veis a {n} {s}", "el dueño de {n} está {s}", "soñé que {n} estaba {s}",
        "con cuatro años {n} estaba {s}", "{n}, a los dos años, estaba {s}", "en su primer invierno {n} estaba {s}",
        "cuando {n} tenía cinco años estaba {s}", "allá por 2019 {n} estaba {s}",
    ),
    "chenaie": (
        "si {n} est {s} appelez moi", "si jamais {n} est {s} on enlève", "j'espère que {n} n'est pas {s}",
        "est ce que {n} est {s} ?", "hier {n} était {s}", "la semaine dernière {n} était {s}",
        "{n} va être {s} avec ça", "regardez si {n} est {s}", "{n} risque d'être {s}",
        "quand {n} est {s} il faut le sécher", "je ne veux pas que {n} soit {s}", "pourvu que {n} ne soit pas {s}",
        "peut être que {n} est {s}", "{n} serait {s} avec la grosse", "dis moi si {n} est {s}",
        "quand {n} était jeune il était {s}", "{n} était toujours {s} quand elle était pouliche",
        "quand elle était petite, {n} était {s}", "du temps où {n} était en club il était {s}",
        "le propriétaire de {n} est {s}", "j'ai rêvé que {n} était {s}", "au cas où {n} serait {s}",
        "à quatre ans {n} était {s}", "quand {n} avait trois ans il était {s}", "son premier hiver ici {n} était {s}",
        "en 2019 {n} était {s}",
    ),
}  # fmt: skip


@pytest.mark.parametrize("name", FRAMES)
def test_a_sign_supposed_is_no_sign(name: str) -> None:
    """Every frame with every sign is met with silence, shivering among them."""
    here = barn(name)
    now, (horse, _) = as_filed(here), NAMES[name]
    heard = {}
    for frame, sign in product(FRAMES[name], SIGNS[name]):
        said = read(frame.format(n=horse, s=sign), here.people[0], here, now)
        heard[said.heard] = (said.events, said.ask)
    assert {text: told for text, told in heard.items() if any(told)} == {}


AT_AN_AGE = {
    "oak": (
        "aged four Tucker is shivering",
        "at 24 years old Tucker is shivering",
        "Tucker, his first winter here, is {s}",
    ),
    "encina": (
        "con cuatro años Trueno está {s}",
        "Trueno, con 26 años, está {s}",
        "es su primer invierno, Trueno está {s}",
    ),
    "chenaie": ("à quatre ans Caramel est {s}", "à 26 ans Caramel est {s}"),
}


@pytest.mark.parametrize("name", AT_AN_AGE)
def test_how_old_it_is_now_leaves_what_is_so_now(name: str) -> None:
    """An age dates only what is told as past."""
    here = barn(name)
    now = as_filed(here)
    messages = [text.format(s=SIGNS[name][0]) for text in AT_AN_AGE[name]]
    assert [text for text in messages if not read(text, here.people[0], here, now).events] == []


ONLY_SPOKEN_OF = {
    "oak": (
        "will put the heavy on Otto later", "Otto needs his heavy on", "can someone take the sheet off Otto?",
        "should I put Otto's heavy on?", "if it rains put the sheet on Otto", "please put the heavy on Otto",
        "put the heavy on Otto tonight please", "Otto will need his sheet", "take the sheet off Otto at noon",
        "don't take the sheet off Otto", "forgot to put the heavy on Otto", "Otto wore his heavy yesterday",
        "yesterday we took the sheet off Otto", "about to put the heavy on Otto", "who took the sheet off Otto?",
        "Otto's heavy is on the rack", "put Otto's heavy on the rack", "I want a new heavy for Otto",
        "selling Otto's heavy, any takers", "Otto hates his heavy", "Otto's heavy fits Fig",
        "remember to take Otto's sheet off", "you can take the sheet off Otto when it stops",
        "going to swap Otto's sheet for the heavy later", "Otto's heavy off tomorrow", "leave the heavy on Otto",
        "Fig could wear Otto's sheet", "by summer they're all naked", "come spring Otto is naked",
    ),
    "encina": (
        "luego le pongo la gorda a Canela", "ponedle la gorda a Canela", "¿le quito la gorda a Canela?",
        "si llueve ponedle el impermeable a Canela", "hay que ponerle la gorda a Canela",
        "mañana le quito la gorda a Canela", "ayer le quité la gorda a Canela", "no le quitéis la gorda a Canela",
        "se me olvidó ponerle la gorda a Canela", "quién le ha quitado la gorda a Canela",
        "Canela necesita la gorda", "la gorda de Canela está en el guadarnés", "vendo la gorda de Canela",
        "iba a ponerle la gorda a Canela", "acordaos de quitarle la gorda a Canela", "Canela odia la gorda",
    ),
    "chenaie": (
        "je mettrai la grosse à Étoile ce soir", "mettez la grosse à Étoile", "je lui enlève la grosse à Étoile ?",
        "s'il pleut mettez l'imper à Étoile", "faut mettre la grosse à Étoile",
        "demain j'enlève la grosse à Étoile", "hier j'ai enlevé la grosse à Étoile",
        "n'enlevez pas la grosse à Étoile", "j'ai oublié de mettre la grosse à Étoile",
        "qui a enlevé la grosse à Étoile", "Étoile a besoin de la grosse", "la grosse d'Étoile est à la sellerie",
        "je vends la grosse d'Étoile", "j'allais mettre la grosse à Étoile", "pensez à enlever la grosse à Étoile",
        "Étoile déteste la grosse",
    ),
}  # fmt: skip


@pytest.mark.parametrize("name", ONLY_SPOKEN_OF)
def test_clothes_only_spoken_of_change_nothing(name: str) -> None:
    """What is to be put on, was yesterday, is for sale or on the rack."""
    here = barn(name)
    now = as_filed(here)
    heard = [read(text, here.people[0], here, now) for text in ONLY_SPOKEN_OF[name]]
    assert [said.heard for said in heard if said.ask or any(e.kind != "question" for e in said.events)] == []


SPEAKERS_OWN = (
    "hoy a las cinco monto yo a Nube, que nadie la toque", "esta tarde saco a Lucero al prado",
    "a Canela la monto a las cuatro", "trabajo yo a Moro y os digo", "galopo a Trueno esta tarde si no os importa",
    "esta tarde llevo a Lucero al prado",
    "a las ocho le quito yo la gorda a Canela", "esta noche destapo a Paloma", "LUEGO SALTO CON ESTRELLA",
)  # fmt: skip
SOMEBODY_ELSES = (
    ("esta tarde montó Iván a Nube", "worked"), ("Iván monto a Nube", "worked"), ("monto Iván a Nube", "worked"),
    ("Moro trabajo una hora", "worked"), ("Trueno salto muy bien hoy", "worked"), ("mi hija monto a Nube", "worked"),
    ("llevo un rato mirando a Moro, está sudado", "sign"),
    ("Iván saco a Lucero al prado", "place"), ("ya entro Trueno", "place"), ("monté a Nube a las cinco", "worked"),
)  # fmt: skip


def test_what_the_speaker_does_later_today_is_not_done() -> None:
    """Thumbs leave the accent out of "montó"; "monto yo" never had one."""
    here = barn("encina")
    now = as_filed(here)
    assert [t for t in SPEAKERS_OWN if read(t, here.people[0], here, now).events] == []
    heard = [(t, [e.kind for e in read(t, here.people[0], here, now).events]) for t, _ in SOMEBODY_ELSES]
    assert heard == [(text, [kind]) for text, kind in SOMEBODY_ELSES]


LOOKED_FOR = (
    ("oak", "can't find Fig's cooler anywhere??", "fig-cooler"),
    ("oak", "omg i cant find the plaid sheet anyplace?! its gone", "otto-sheet"),
    ("sol", "no encuentro la cobija de Rayo por ningún lado??", "rayo-cobija"),
    ("tilleuls", "je trouve plus l'imper de Neige nulle part ??", "neige-imper"),
)
ONLY_ASKED_FOR = (
    ("oak", "you can't find Fig's cooler anywhere?"),
    ("oak", "can't find Fig's cooler? It is behind the door"),
    ("oak", "has anyone seen Fig's cooler anywhere?"),
    ("sol", "no encuentras la cobija de Rayo por ningún lado?"),
    ("tilleuls", "tu trouves plus l'imper de Neige nulle part ?"),
)


@pytest.mark.parametrize(("name", "text", "garment"), LOOKED_FOR)
def test_who_looked_everywhere_tells_that_it_is_gone_even_with_question_marks(
    name: str, text: str, garment: str
) -> None:
    """Dismay is written with question marks as well."""
    events = said(text, name).events
    assert [(getattr(e, "garment", ""), getattr(e, "state", "")) for e in events] == [(garment, "missing")]


@pytest.mark.parametrize(("name", "text"), ONLY_ASKED_FOR)
def test_asking_others_whether_they_found_it_reports_nothing(name: str, text: str) -> None:
    """Whether somebody else looked, or where it may be, says nothing of where it is."""
    assert said(text, name).chatter


OAK_TURNS = (
    ("stuck my hand in under Fig's heavy and she's cold", [("Fig", "cold")]),
    ("reached up under Fig's heavy and she is sweating", [("Fig", "sweating")]),
    ("Fig is hot her chest is like a toaster", [("Fig", "hot")]),
    ("the plaid sheet is sopping wet you could wring a bucket out of it", [("otto-sheet", "soaked")]),
    ("for want of anything better, Otto is wearing his sheet", [("Otto", ("otto-sheet",))]),
    ("the kitchen is like an icebox, Fig", []),
    ("put my hand in under the fence and Fig bit me", []),
)


@pytest.mark.parametrize(("text", "expected"), OAK_TURNS)
def test_a_hand_in_under_a_rug_wears_nothing_and_likeness_tells_how_it_is(
    text: str, expected: list[tuple[object, object]]
) -> None:
    """One fact each, of the horse or the piece; none of kitchens and fences."""
    events = said(text, "oak").events
    found = [
        (getattr(e, "horse", None) or getattr(e, "garment", ""),
         getattr(e, "sign", None) or getattr(e, "state", None) or getattr(e, "wear", None))
        for e in events
    ]  # fmt: skip
    assert found == expected
