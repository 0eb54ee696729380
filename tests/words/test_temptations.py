"""What tempts a careless reader: others of a horse's name, longings, things of a horse's and of the speaker's."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text"),
    [
        # family, beasts, and what people wear
        ("chenaie", "ma petite-nièce Perle a 40 de fièvre"),
        ("chenaie", "notre chien Filou grelotte sous le banc"),
        ("chenaie", "mon beau-frère Ulysse est malade comme tout"),
        ("chenaie", "un blouson Tempête traîne par terre, il est trempé"),
        ("chenaie", "mes chaussettes Ulysse sont trempées"),
        ("oak", "my goddaughter Willow has a temperature"),
        ("oak", "our cat Otto was sick all night, he's shivering"),
        ("oak", "my Otto helmet is soaked"),
        ("encina", "nuestra perra Canela está empapada"),
        ("encina", "mi cuñado Lucero tirita de fiebre"),
        # one of that name, somewhere else, or long ago
        ("chenaie", "dans mon ancien poney-club on avait une Étoile, elle tremblait sans arrêt"),
        ("chenaie", "ma sœur a un Ulysse aussi, il tousse"),
        ("chenaie", "une jument nommée Perle est morte de colique"),
        ("chenaie", "mon premier poney s'appelait Caramel, il transpirait tout le temps"),
        ("chenaie", "Perle, celle de mon ancien club, grelottait"),
        ("chenaie", "le Filou de chez ma cousine tousse"),
        ("oak", "my sister has a Tucker too, he's coughing"),
        ("oak", "a mare called Willow was sweating at the show"),
        ("oak", "Otto from my old yard used to shiver"),
        ("oak", "my first pony was called Otto, he shivered all winter"),
        ("encina", "conozco otra Canela que está esquilada entera"),
        ("encina", "un poni llamado Moro murió de cólico"),
    ],
)
def test_others_bear_a_horse_s_name(name: str, text: str) -> None:
    """Whatever they have, no horse of the barn has it."""
    heard = said(text, name)
    assert (told(heard), heard.ask) == ([], None)


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("chenaie", "notre vieux Filou grelotte", [("Filou", "shivering")]),
        ("chenaie", "mon gros Ulysse est trempé", [("Ulysse", "wet")]),
        ("chenaie", "la jument Perle tousse", [("Perle", "unwell")]),
        ("chenaie", "ma sœur dit que Perle tremble", [("Perle", "shivering")]),
        ("chenaie", "ma sœur a vu Perle, elle tousse", [("Perle", "unwell")]),
        ("chenaie", "le chien dort, Perle tremble", [("Perle", "shivering")]),
        ("oak", "my friend says Otto is coughing", [("Otto", "unwell")]),
        ("oak", "poor old Tucker is shivering", [("Tucker", "shivering")]),
        ("oak", "Tucker an Otto shivering", [("Tucker", "shivering"), ("Otto", "shivering")]),
        ("encina", "mi hija montó a Nube", [("Nube",)]),
        ("encina", "dice mi prima Canela está sudada", [("Canela", "sweating")]),
    ],
)
def test_the_horse_itself_is_heard_beside_people(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Fond words before a name, and whoever saw it, change nothing."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text", "wishes"),
    [
        ("chenaie", "vivement avril qu'Ulysse puisse rester tout nu", 0),
        ("chenaie", "je rêve de laisser Perle nue", 0),
        ("chenaie", "un jour Ulysse vivra nu au pré", 0),
        ("chenaie", "quel dommage que Perle ne puisse pas rester nue", 0),
        ("chenaie", "l'hiver prochain on laisse Ulysse à poil", 0),
        ("oak", "roll on summer so Otto can stay bare", 0),
        ("oak", "one day we'll leave Otto naked", 0),
        ("oak", "shame Otto can't stay bare", 0),
        ("encina", "qué ganas de dejar a Moro sin manta", 0),
        ("encina", "el verano que viene Moro se queda sin manta", 0),
        ("chenaie", "je voudrais qu'Ulysse reste nu à partir de maintenant", 1),
        ("oak", "keep Otto bare from now on please", 1),
        ("chenaie", "laissez Ulysse nu s'il vous plaît", 1),
    ],
)
def test_a_longing_is_no_wish_for_now(name: str, text: str, wishes: int) -> None:
    """Nobody takes a rug off because spring will come."""
    assert len(said(text, name).events) == wishes


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("chenaie", "il faudrait mettre la 200, Perle grelotte"),
        ("chenaie", "on aurait dû la rentrer, Perle tremble"),
    ],
)
def test_danger_behind_a_plan_stands_for_itself(name: str, text: str) -> None:
    """What should be done, and then why: a horse and a sign with nothing beside them."""
    assert told(said(text, name)) == [("Perle", "shivering")]


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        # whose it is, and where
        ("chenaie", "l'abreuvoir à Caramel est gelé", []),
        ("chenaie", "la mangeoire à Perle et Filou est trempée", []),
        ("chenaie", "le box de Perle et Caramel est inondé", []),
        ("chenaie", "la porte de chez Ulysse est gelée", []),
        ("chenaie", "chez Caramel et Perle c'est trempé", []),
        ("chenaie", "j'ai raclé devant chez Filou, c'était gelé", []),
        ("chenaie", "il fait froid chez Ulysse", []),
        ("chenaie", "les oreilles à Caramel sont gelées", [("Caramel", "cold")]),
        ("chenaie", "la 250 de Perle est chez Caramel, elle est mouillée", [("perle-outdoor", "wet")]),
        ("chenaie", "tout va bien chez Perle", [("Perle", "comfortable")]),
        ("chenaie", "je suis passée chez Perle, elle est trempée", [("Perle", "wet")]),
        ("chenaie", "passé chez Ulysse, il grelotte", [("Ulysse", "shivering")]),
        ("chenaie", "donné du foin à Ulysse, il est trempé", [("Ulysse", "wet")]),
        # the thing goes on
        ("chenaie", "la selle à Perle est restée dehors, elle est trempée", []),
        ("chenaie", "le tapis d'Ulysse est au séchoir, il est encore humide", []),
        ("chenaie", "le tapis de Perle est au séchoir, elle est trempée", [("Perle", "wet")]),
        ("oak", "Otto's haynet is outside, it's soaked", []),
        ("oak", "Otto's haynet is outside, he's soaked", [("Otto", "wet")]),
        ("encina", "la silla de Moro está fuera, está húmeda", []),
        # and what is the speaker's
        ("chenaie", "Perle est rentrée. Mes chaussettes sèchent, elles sont trempées", [("Perle", "stall")]),
        ("chenaie", "Ulysse est au pré. Mon manteau est sur la porte, il est trempé", [("Ulysse", "field")]),
        ("chenaie", "Perle est au pré, mes bottes fuient. Elle est trempée", [("Perle", "field"), ("Perle", "wet")]),
        ("chenaie", "Ulysse et Filou sont rentrés, Yann a laissé ses gants dehors, ils sont trempés", [
            ("Ulysse", "stall"), ("Filou", "stall"),
        ]),
        ("oak", "Otto and Tucker are in. My gloves are on the rail, they're soaked", [
            ("Otto", "stall"), ("Tucker", "stall"),
        ]),
        ("oak", "Otto is in. Sam left his wellies out, they're soaked", [("Otto", "stall")]),
        ("oak", "Otto is out. My boots leak. He's soaked", [("Otto", "field"), ("Otto", "wet")]),
        ("encina", "Canela está dentro. Mi chaqueta está colgada, está empapada", [("Canela", "stall")]),
        ("encina", "Canela y Nube están dentro. Mis guantes se secan, están mojados", [
            ("Canela", "stall"), ("Nube", "stall"),
        ]),
    ],
)  # fmt: skip
def test_what_is_told_of_a_thing_is_told_of_no_horse(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Buckets freeze, floors are wet; what only animals do is the horse's, and so is what does not agree."""
    heard = said(text, name)
    assert (told(heard), heard.ask) == (expected, None)


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        # of somebody else
        ("chenaie", "Ulysse a été longé par Chloé, qui est rentrée frigorifiée et trempée", [("Ulysse",)]),
        ("chenaie", "Perle est au box avec la jument d'Inès, celle qui grelotte", [("Perle", "stall")]),
        ("chenaie", "Filou est au pré avec un cheval de passage qui tousse", [("Filou", "field")]),
        ("chenaie", "j'ai rentré Ulysse avec Yann, qui tremblait de froid", [("Ulysse", "stall")]),
        ("chenaie", "Perle a mangé le foin, qui était trempé", []),
        ("chenaie", "le monsieur à qui appartient Ulysse est malade", []),
        ("oak", "Otto was ridden by Jo, who came back soaked", [("Otto",)]),
        ("oak", "Bramble is in the field with Jo's mare, the one who coughs", [("Bramble", "field")]),
        ("oak", "whoever brought Otto in is freezing", []),
        ("encina", "Moro lo montó Inés, que volvió helada", [("Moro",)]),
        ("encina", "Lucero está en el prado con la yegua de Sara, la que tose", [("Lucero", "field")]),
        # of the horse it stands beside
        ("chenaie", "Ulysse est avec Filou, qui tousse", [("Filou", "unwell")]),
        ("chenaie", "Caramel, qui est avec Perle, est trempé", [("Caramel", "wet")]),
        ("chenaie", "Perle et Filou, qui sont au pré, grelottent", [("Perle", "shivering"), ("Filou", "shivering")]),
        ("chenaie", "c'est Filou qui tremble, pas Caramel", [("Filou", "shivering")]),
        (
            "chenaie",
            "Perle a été rentrée par Yann, qui dit que Filou tousse",
            [("Perle", "stall"), ("Filou", "unwell")],
        ),
        ("oak", "Tucker is next to Otto, who is cold", [("Otto", "cold")]),
        ("oak", "told Priya about Otto, who is shivering", [("Otto", "shivering")]),
        ("encina", "Moro está junto a Nube, que tirita", [("Nube", "shivering")]),
        ("encina", "avisa a Lola que está tiritando la Canela", [("Canela", "shivering")]),
        ("encina", "hay que cambiar a Canela, que está empapada", [("Canela", "wet")]),
    ],
)
def test_who_is_whoever_stands_right_before(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Not the horse that the sentence began with."""
    heard = said(text, name)
    assert (told(heard), heard.ask) == (expected, None)


@pytest.mark.parametrize(
    ("name", "text", "styles"),
    [
        ("chenaie", "Perle est tondue en chasse, ma voisine a fait la sienne en intégrale", ["hunter"]),
        ("chenaie", "on a tondu Ulysse en trace, les voisins ont fait les leurs en chasse", ["trace"]),
        ("chenaie", "Ulysse est tondu en trace, celui d'à côté en intégrale", ["trace"]),
        ("chenaie", "Ulysse tondu en trace et Filou en intégrale", ["trace", "full"]),
        ("oak", "Otto has a trace clip, my friend did hers in a full clip", ["trace"]),
        ("oak", "Otto has a bib clip, the one next door is full clipped", ["bib"]),
        ("encina", "esquilé a Moro entero, mi primo esquiló el suyo de caza", ["full"]),
    ],
)
def test_somebody_else_s_clip_is_none_of_the_barn_s(name: str, text: str, styles: list[str]) -> None:
    """Theirs, of a horse that is not here."""
    assert [getattr(event, "style", None) for event in said(text, name).events] == styles


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("chenaie", "la couette du petit est trempée", []),
        ("chenaie", "le cheval des voisins est sur la route, un petit gris tout trempé", []),
        ("chenaie", "quelqu'un a laissé la couverture d'Étoile devant chez moi... bref, Perle est rentrée", [
            ("Perle", "stall"),
        ]),
        ("chenaie", "qu'est-ce qui sèche encore, à part mes chaussettes ?", [("drying",)]),
        ("oak", "what's still drying, apart from my coat?", [("drying",)]),
        ("oak", "someone left the gate open again, anyway, Otto is in", [("Otto", "stall")]),
        ("encina", "¿qué sigue secándose, aparte de mis botas?", [("drying",)]),
    ],
)  # fmt: skip
def test_what_is_nobody_s_here_hides_nothing(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """A child's quilt, a strange pony, the speaker's jeans; what is told or asked beside them is heard."""
    heard = said(text, name)
    assert (told(heard), heard.ask) == (expected, None)
