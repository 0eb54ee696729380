"""News amid talk of other things: it is told as if it stood alone, and the talk is told of no horse."""

import pytest

from tests.words.saying import said, told

REPORTS = {
    "oak": (
        "Otto is cold", "Tucker is sweating", "brought Fig in", "Lady Grey is wet", "Clem is bare",
        "Willow isn't cold any more", "put the sheet on Bramble", "Otto's sheet is soaked", "turned Sunday out",
        "rode Fig", "Tucker is in his sheet", "Bramble's medium has a rip", "I've put Otto in his heavy",
        "Otto and Fig are done",
    ),
    "encina": (
        "Canela tiene frío", "Moro está sudando", "metí a Lucero", "he montado a Nube", "le he puesto el polar a Nube",
        "la impermeable de Canela está empapada", "le he quitado la gorda a Canela", "saqué a Estrella al prado",
        "Trueno ya no tiembla", "Lucero y Moro hechos",
    ),
    "chenaie": (
        "Étoile a froid", "Filou transpire", "j'ai rentré Caramel", "Perle est nue", "j'ai monté Ulysse",
        "l'imper d'Étoile est trempé", "j'ai enlevé la grosse d'Étoile", "j'ai mis la polaire à Filou",
        "Tempête est trempée", "Noisette ne tremble plus", "Caramel et Perle sont faits", "Ulysse porte son imper",
    ),
}  # fmt: skip
BEFORE = {
    "oak": (
        "I had the worst day at work", "my car won't start again", "the farrier was an hour late", "we're out of bread",
        "the kids have a day off tomorrow", "the wind nearly took the roof off", "the telly packed up last night",
        "the shop had no carrots", "my back is killing me",
    ),
    "encina": (
        "qué día llevo en el trabajo", "el coche no arranca otra vez", "el herrador ha llegado tarde", "no queda pan",
        "los niños no tienen cole mañana", "he perdido el móvil en la paja", "me duele la espalda",
    ),
    "chenaie": (
        "quelle journée au boulot", "ma voiture démarre pas", "le maréchal avait une heure de retard",
        "il n'y a plus de pain", "les enfants n'ont pas école demain", "la télé est en panne", "j'ai mal au dos",
    ),
}  # fmt: skip
AFTER = {
    "oak": ("I'm off to the shop", "see you tomorrow", "my hands are frozen", "who wants coffee", "my coat is soaked"),
    "encina": ("me voy a la tienda", "hasta mañana", "tengo las manos heladas", "quién quiere café"),
    "chenaie": ("je file au magasin", "à demain", "j'ai les mains gelées", "qui veut du café", "ma veste est trempée"),
}


FIRST = [(name, f"{talk}{{}}{report}", report) for name in REPORTS for talk in BEFORE[name] for report in REPORTS[name]]
THEN = [(name, f"{report}{{}}{talk}", report) for name in REPORTS for talk in AFTER[name] for report in REPORTS[name]]


@pytest.mark.parametrize("between", [". ", ", ", "\n"], ids=["a full stop", "a comma", "a line"])
@pytest.mark.parametrize(
    "messages", [FIRST, THEN], ids=["what somebody complains of first", "where one is off to then"]
)
def test_talk_beside_it_changes_no_news(messages: list[tuple[str, str, str]], between: str) -> None:
    """Before it and behind it, whatever parts the two."""
    for name, message, report in messages:
        heard = said(message.format(between), name)
        assert (told(heard), heard.ask) == (told(said(report, name)), None), message.format(between)


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "I did the barrow and the water and I've just brought Fig in", [("Fig", "stall")]),
        ("oak", "had the worst bacon roll of my life anyway Otto is cold", [("Otto", "cold")]),
        ("oak", "I should get a medal Otto is rubbed on his withers", [("Otto", "rubbed")]),
        ("oak", "stuck in traffic for an hour bot who's left to do because I lost my list", [("left",)]),
        ("oak", "Otto is cold who wants coffee", [("Otto", "cold")]),
        ("encina", "me duelen hasta las pestañas le he puesto el polar a Nube", [("Nube", ("nube-polar",))]),
        ("encina", "Canela y Moro listos ahora paro un poco que me llama mi madre", [(("Canela", "Moro"),)]),
        ("chenaie", "il y a des sangliers dans le maïs du voisin j'ai rentré Caramel", [("Caramel", "stall")]),
        ("chenaie", "je rentre de la coop le bot il reste qui à changer parce que j'ai perdu ma feuille", [("left",)]),
    ],
)
def test_no_mark_is_needed_between(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """As people type who never use one."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "could one of you lovely people put the sheet on Bramble"),
        ("oak", "honestly I really very much doubt Otto is cold"),
        ("oak", "the wife of the new farrier told me Otto was cold"),
        ("oak", "none of the new grooms brought Fig in"),
        ("encina", "según el del pienso nuevo Trueno estaba sudando"),
        ("chenaie", "hier à la même heure Filou était trempé"),
    ],
)
def test_what_leads_to_it_still_says_that_it_is_no_news(name: str, text: str) -> None:
    """A request, a doubt, hearsay, another day."""
    assert said(text, name).chatter


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Otto's sheet, on the other hand, is soaked, you could fish in it", [("otto-sheet", "soaked")]),
        ("encina", "la impermeable de Canela, en cambio, está empapada", [("canela-impermeable", "soaked")]),
        ("chenaie", "l'imper d'Étoile, en revanche, est trempé, on pourrait y pêcher", [
            ("etoile-impermeable", "soaked"),
        ]),
        ("oak", "Yesterday, Otto was cold", []),
        ("encina", "Ayer, según me contaron, Trueno sudó bastante", []),
        ("chenaie", "super 😂 Étoile et Perle vont bien", [("Étoile", "comfortable"), ("Perle", "comfortable")]),
        ("oak", "the telly has packed up, I rather miss it… Otto is in his heavy now", [("Otto", ("otto-heavy",))]),
    ],
)  # fmt: skip
def test_what_only_joins_parts_nothing(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Words set off between two pauses, a face and three dots before a capital."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Fig is fine. Our dog's been clipped. He's shivering", [("Fig", "comfortable")]),
        ("oak", "Otto's sheet is damp. I've lost count since Sam stood on me", [("otto-sheet", "damp")]),
        ("oak", "Otto is cold. strap on my rucksack snapped", [("Otto", "cold")]),
        ("oak", "Otto's heavy is soaked. wet snow then ice then rain", [("otto-heavy", "soaked")]),
        ("oak", "Tucker is cold. Otto next door - that's the spaniel - is shivering", [("Tucker", "cold")]),
        ("encina", "Canela tiene frío. Mi hijo ha perdido el chubasquero azul", [("Canela", "cold")]),
        ("encina", "Moro no está sudado. he perdido el forro del casco", [("Moro", "comfortable")]),
        ("chenaie", "Filou va bien. Mon fils a de la fièvre ; il grelotte sous sa couette", [("Filou", "comfortable")]),
        ("chenaie", "Perle est nue. j'ai pendu mon manteau dans le box de Filou, il l'a mâchouillé", [("Perle", ())]),
        ("chenaie", "Caramel au box. J'ai rentré le tracteur", [("Caramel", "stall")]),
    ],
)  # fmt: skip
def test_what_happens_to_others_happens_to_no_horse(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Dogs, children, coats and straps of one's own, behind news of a horse."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    "text",
    [
        "Fig is fine. I know she's not mine but Otto was stood by the trough shivering",
        "Fig va bien. Otto grelotte dans son box je fais quoi ??",
    ],
)
def test_danger_is_heard_beside_other_news(text: str) -> None:
    """Shivering that no grammar catches, in a sentence of its own."""
    assert ("Otto", "shivering") in [fact[:2] for fact in told(said(text))]


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "it's so wet the vet slid in, so cold my Otto is shivering", ("Otto", "shivering")),
        ("oak", "thanks for looking after Otto, he is shivering", ("Otto", "shivering")),
        ("oak", "lost count, Otto is shivering", ("Otto", "shivering")),
        ("oak", "got soaked getting Otto in, he is shivering", ("Otto", "shivering")),
        ("oak", "Otto is ill text the vet", ("Otto", "unwell")),
        ("oak", "Otto is ill have you rung the vet", ("Otto", "unwell")),
        ("oak", "Otto, the spaniel ran under him, is shivering", ("Otto", "shivering")),
        ("encina", "se congela la Nube", ("Nube", "cold")),
        ("chenaie", "coup de tonnerre, Ulysse tremble", ("Ulysse", "shivering")),
    ],
)
def test_a_turn_of_speech_hides_no_danger(name: str, text: str, expected: tuple[str, str]) -> None:
    """Whatever else the words right before it may begin."""
    assert expected in [fact[:2] for fact in told(said(text, name))]


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("encina", "Lucero del vecino tiembla"),
        ("chenaie", "Ulysse du voisin tremble"),
        ("oak", "Otto, my spaniel, is shivering"),
    ],
)
def test_one_of_that_name_elsewhere_is_none_of_ours(name: str, text: str) -> None:
    """A neighbour's, a dog."""
    assert said(text, name).chatter
