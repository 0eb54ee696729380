"""What is only supposed, wished, planned, asked of people or told of another day or person is no report."""

from itertools import product

import pytest

from bot.state import as_filed
from bot.words import read
from tests.words.corpus import barn
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
        "{n}'s owner is {s}", "{n}'s rider is {s}",
    ),
    "encina": (
        "si {n} está {s} avisadme", "si {n} se pone {s} quitadle la manta", "espero que {n} no esté {s}",
        "¿está {n} {s}?", "ayer {n} estaba {s}", "la semana pasada {n} estaba {s}", "{n} va a estar {s} con eso",
        "a ver si {n} está {s}", "mirad si {n} está {s}", "que {n} no esté {s}", "en verano {n} siempre está {s}",
        "cuando {n} está {s} hay que secarlo", "no quiero que {n} esté {s}", "ojalá {n} no esté {s}",
        "a lo mejor {n} está {s}", "quizá {n} esté {s}", "{n} estaría {s} con la gorda",
        "avisad si veis a {n} {s}", "el dueño de {n} está {s}", "soñé que {n} estaba {s}",
    ),
    "chenaie": (
        "si {n} est {s} appelez moi", "si jamais {n} est {s} on enlève", "j'espère que {n} n'est pas {s}",
        "est ce que {n} est {s} ?", "hier {n} était {s}", "la semaine dernière {n} était {s}",
        "{n} va être {s} avec ça", "regardez si {n} est {s}", "{n} risque d'être {s}",
        "quand {n} est {s} il faut le sécher", "je ne veux pas que {n} soit {s}", "pourvu que {n} ne soit pas {s}",
        "peut être que {n} est {s}", "{n} serait {s} avec la grosse", "dis moi si {n} est {s}",
        "le propriétaire de {n} est {s}", "j'ai rêvé que {n} était {s}", "au cas où {n} serait {s}",
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
