"""A report stays one whatever greeting stands before it or behind; a plan, hearsay or a memory makes none of it."""

import pytest

from tests.words.saying import said, told

BARN = {"en": "oak", "es": "encina", "fr": "chenaie"}
REPORTS = {
    "en": {
        "Otto is cold": ("Otto", "cold"),
        "Otto is sweating": ("Otto", "sweating"),
        "Otto's sheet is soaked": ("otto-sheet", "soaked"),
        "Otto is in his heavy": ("Otto", ("otto-heavy",)),
        "brought Otto in": ("Otto", "stall"),
        "Otto is fine": ("Otto", "comfortable"),
        "can't find Otto's heavy": ("otto-heavy", "missing"),
    },
    "es": {
        "Canela tiene frío": ("Canela", "cold"),
        "Canela está sudando": ("Canela", "sweating"),
        "el impermeable de Canela está empapado": ("canela-impermeable", "soaked"),
        "metí a Canela": ("Canela", "stall"),
        "Canela está bien": ("Canela", "comfortable"),
        "no encuentro el impermeable de Canela": ("canela-impermeable", "missing"),
    },
    "fr": {
        "Étoile a froid": ("Étoile", "cold"),
        "Étoile transpire": ("Étoile", "sweating"),
        "la grosse d'Étoile est trempée": ("etoile-grosse", "soaked"),
        "j'ai rentré Étoile": ("Étoile", "stall"),
        "Étoile va bien": ("Étoile", "comfortable"),
        "je trouve pas la grosse d'Étoile": ("etoile-grosse", "missing"),
    },
}
AROUND = {
    "en": [
        "morning all, {}", "sorry for the late message, {}", "just so you know {}", "heads up: {}", "btw {}",
        "ok so {}", "hi Nora, {}", "Nora, {}", "before i forget, {}", "not urgent but {}", "good news, {}",
        "bad news: {}", "i'm at the barn, {}", "farrier's here. {}", "at 9 {}", "this morning {}", "{} this morning",
        "{} now", "{} fyi", "{} Nora", "{}, thought you should know", "{} 😬", "{}!!", "{}. coffee anyone?",
        "{}. back at 4", "{}, off home now", "{} and it's raining",
    ],
    "es": [
        "buenos días a todos, {}", "perdón por la hora, {}", "para que lo sepáis {}", "aviso: {}", "por cierto {}",
        "bueno, {}", "Carmen, {}", "antes de que se me olvide, {}", "buenas noticias, {}", "no es urgente pero {}",
        "estoy en la cuadra, {}", "ha venido el herrador. {}", "a las 9 {}", "esta mañana {}", "{} esta mañana",
        "{}, para que lo sepáis", "{} 😬", "{}!!", "{}. alguien quiere café?", "{}. vuelvo a las 4",
        "{}, me voy a casa", "{} y está lloviendo",
    ],
    "fr": [
        "bonjour à tous, {}", "désolé pour l'heure, {}", "pour info {}", "info : {}", "au fait {}", "bon, {}",
        "Hélène, {}", "avant que j'oublie, {}", "bonne nouvelle, {}", "pas urgent mais {}", "je suis à l'écurie, {}",
        "le maréchal est là. {}", "à 9h {}", "ce matin {}", "{} ce matin", "{}, pour info", "{} 😬", "{} !!",
        "{}. quelqu'un veut un café ?", "{}. je reviens à 16h", "{}, je rentre chez moi", "{} et il pleut",
    ],
}  # fmt: skip
SIGNS = {
    "en": ["Otto was cold", "Otto was sweating", "Otto's sheet was soaked", "Otto was rubbed raw"],
    "es": ["Canela tenía frío", "Canela sudaba", "el impermeable de Canela estaba empapado"],
    "fr": ["Étoile avait froid", "Étoile transpirait", "la grosse d'Étoile était trempée"],
}
NO_REPORT = {
    "en": [
        "apparently {}", "rumour has it {}", "i heard {}", "my cousin reckons {}", "{}, or so i'm told", "i dreamt {}",
        "{} in the film", "{} when we bought him", "{} last winter", "{} the other day", "{} last night",
        "{} at his old yard", "what if {}", "let's say {}", "let's hope {}", "unless {}", "i doubt {}",
        "not sure if {}", "it's not true that {}", "do you think {}", "remember when {}", "every time {}",
        "whenever {}", "in case {}", "{} in that photo", "i bet {}",
    ],
    "es": [
        "por lo visto {}", "dicen que {}", "me han dicho que {}", "mi prima dijo que {}", "soñé que {}",
        "{} en la película", "{} cuando la compramos", "{} el invierno pasado", "{} el otro día", "{}, o eso dicen",
        "anoche {}", "y si {}", "supongamos que {}", "ojalá {}", "dudo que {}", "no sé si {}", "no es verdad que {}",
        "te acuerdas cuando {}", "cada vez que {}", "por si {}", "{} en esa foto", "apuesto a que {}",
    ],
    "fr": [
        "il paraît que {}", "on m'a dit que {}", "ma cousine a dit que {}", "le bruit court que {}",
        "j'ai rêvé que {}", "{} dans le film", "{} quand on l'a achetée", "{} l'hiver dernier", "{} l'autre jour",
        "hier soir {}", "et si {}", "supposons que {}", "je doute que {}", "je sais pas si {}",
        "c'est pas vrai que {}", "tu te souviens quand {}", "à chaque fois que {}", "au cas où {}",
        "{} sur cette photo", "je parie que {}",
    ],
}  # fmt: skip


@pytest.mark.parametrize(("language", "frame"), [(key, frame) for key, frames in AROUND.items() for frame in frames])
def test_small_talk_around_a_report_changes_nothing_of_it(language: str, frame: str) -> None:
    """The same one fact, in the greeting of whoever writes."""
    for text, expected in REPORTS[language].items():
        assert told(said(frame.format(text), BARN[language])) == [expected], frame.format(text)


@pytest.mark.parametrize(("language", "frame"), [(key, frame) for key, frames in NO_REPORT.items() for frame in frames])
def test_what_only_looks_like_a_report_is_none(language: str, frame: str) -> None:
    """Hearsay, dreams, memories, conditions, doubts, pictures."""
    for text in SIGNS[language]:
        assert not said(frame.format(text), BARN[language]).events, frame.format(text)
