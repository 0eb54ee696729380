"""A whole morning told in one breath: the report in it is heard, and a tale of another day or place is none."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        (
            "oak",
            "so I'm late because the bus broke down and the dog was sick in the car, and then I get to the gate and "
            "I see Tucker shivering",
            [("Tucker", "shivering")],
        ),
        (
            "oak",
            "my phone died halfway up the hill and the cat got out again, anyway, Fig's heavy is torn",
            [("fig-heavy", "torn")],
        ),
        (
            "oak",
            "the kids were screaming and I'd left the lights on, turns out Clementine's liner is soaking wet",
            [("clem-liner", "soaked")],
        ),
        (
            "oak",
            "only came for my gloves and talked to the vicar about his hip for an hour, but Otto was stood by the gate "
            "shivering, a tremble all down his sides, and the vicar thought so too",
            [("Otto", "shivering")],
        ),
        ("oak", "the bus was late, and when I got in I took Lady Grey's sheet off", [("Lady Grey", ("grey-liner",))]),
        (
            "oak",
            "I'm not blaming anybody because he always does it to himself, Otto's sheet has a rip in it",
            [("otto-sheet", "torn")],
        ),
        ("oak", "busy day, but I took Lady Grey's sheet off", [("Lady Grey", ("grey-liner",))]),
        ("oak", "stripped Lady Grey, all but the sheet", [("Lady Grey", ("grey-sheet",))]),
        (
            "encina",
            "Salgo de casa sin paraguas y me pongo como una sopa, y cuando por fin llego me encuentro a Canela "
            "tiritando en la puerta",
            [("Canela", "shivering")],
        ),
        (
            "encina",
            "No veáis qué mañana, la caldera, el gato, mi suegra llamando cada diez minutos por lo del bautizo del "
            "pequeño, y voy a por la carretilla y en eso miro y la gorda de Canela está rota de punta a punta, que la "
            "estrenó en octubre",
            [("canela-gorda", "torn")],
        ),
        (
            "encina",
            "Llevo toda la mañana con el fontanero y mi suegra, pero oye, he sacado a Moro al prado",
            [("Moro", "field")],
        ),
        (
            "encina",
            "Venía con prisa por lo del dentista y cuando por fin llego le he puesto el impermeable a Trueno",
            [("Trueno", ("trueno-impermeable",))],
        ),
        ("chenaie", "vous n'allez pas me croire, la grosse d'Étoile est trempée", [("etoile-grosse", "soaked")]),
        (
            "chenaie",
            "La petite du samedi ne voulait pas descendre, elle pleurait presque, ça fait que Perle a travaillé une "
            "heure de plus",
            [("Perle",)],
        ),
        ("chenaie", "j'ai mis la grosse à Étoile et je suis rentrée", [("Étoile", ("etoile-grosse",))]),
        (
            "chenaie",
            "Je traverse la cour, le chat manque de me faire tomber, la voisine appelle pour ses poules, et là je vois "
            "Perle qui tremble au fond du pré, j'ai même pas bu mon café",
            [("Perle", "shivering")],
        ),
    ],
)  # fmt: skip
def test_what_a_tale_leads_up_to_is_heard(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Exactly that: what stands before it, and behind, is of nobody here."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "if the bus is late again and I see Otto shivering I'll put his heavy on"),
        ("oak", "if it rains tonight, Otto's sheet is soaked"),
        ("oak", "if it rains, Otto is cold"),
        ("oak", "if the wind gets up, Otto is sweating"),
        ("encina", "si llueve, Canela está empapada"),
        ("chenaie", "s'il gèle, Perle a froid"),
        ("chenaie", "s'il pleut, Perle a froid"),
        ("oak", "tomorrow I come up early and I see Otto first"),
        ("oak", "my friend's yard is a mess, she told me all about it, and I see Otto's rug is on sale there"),
        ("encina", "Si mañana vengo con tiempo y veo a Canela sudando le quito la gorda"),
        ("encina", "En la hípica de mi prima tienen a todos tiritando porque nadie pone una manta"),
        ("oak", "I meant to put Fig's heavy on before I left but the traffic was awful and I never got there"),
        ("oak", "I remember the winter of the big snow, Otto was shivering every night and I slept in the tack room"),
        ("oak", "my aunt has hers at a posh place with a spa and she says they are all sweating under two rugs each"),
        (
            "encina",
            "Mi cuñada tiene los suyos en una cuadra de lujo y dice que están todos sudando porque les ponen dos",
        ),
        ("encina", "Me acuerdo del invierno de la nevada, Canela tiritaba cada noche"),
        ("chenaie", "Si demain j'arrive tôt et que je vois Perle trembler je la couvre"),
        ("chenaie", "Chez ma cousine le facteur mord les chiens, ils les ont tous malades"),
    ],
)
def test_a_tale_of_another_day_or_place_is_no_report(name: str, text: str) -> None:
    """Silence."""
    assert said(text, name).chatter
