"""What somebody mends in the same message: which horse, how it is, where it is. Only the second is told."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        # what somebody says who has mixed them up
        ("oak", "Tucker is sweaty, I meant Willow", [("Willow", "sweating")]),
        ("oak", "Tucker is sweaty... no sorry my mistake, it's Willow", [("Willow", "sweating")]),
        ("oak", "Tucker is sweaty, no, keep mixing them up, it's Otto", [("Otto", "sweating")]),
        ("oak", "Tucker sweaty. Oops, wrong horse, Otto", [("Otto", "sweating")]),
        ("oak", "Tucker sweaty, not Tucker sorry, Otto", [("Otto", "sweating")]),
        ("oak", "fig's boiling, no sorry that's otto, fig is fine", [("Otto", "hot"), ("Fig", "comfortable")]),
        ("sol", "Rayo está sudado, quise decir Luna", [("Luna", "sweating")]),
        ("sol", "Rayo tiembla... no perdón, me confundo, es la Luna", [("Luna", "shivering")]),
        ("chenaie", "perle crève de chaud... oups dsl je les confonds, c ulysse", [("Ulysse", "hot")]),
        ("chenaie", "Perle tremble euh non Ulysse", [("Ulysse", "shivering")]),
        ("chenaie", "Perle transpire, je me suis trompée c'est Ulysse", [("Ulysse", "sweating")]),
        ("chenaie", "Perle a froid, erreur, c'est Ulysse qui a froid", [("Ulysse", "cold")]),
        # where it was put, and whose piece it is
        ("chenaie", "Perle est au box, j'ai inversé, c'est Filou", [("Filou", "stall")]),
        ("chenaie", "j'ai enlevé la couv de Perle, non, de Noisette", [("Noisette", ())]),
        ("chenaie", "mis la réserve 150 à Perle, pardon, à Ulysse", [("Ulysse", ("reserve-150",))]),
        ("oak", "put the spare sheet on Otto, sorry, on Willow", [("Willow", ("spare-sheet",))]),
        ("oak", "Otto's sheet is wet, wait no, Tucker's", [("tucker-sheet", "wet")]),
        # a word of the language is the horse of that name where it is who was meant
        ("chenaie", "Perle a chaud, ah non je me trompe c'est caramel", [("Caramel", "hot")]),
        ("oak", "Tucker is cold, no sorry its bramble", [("Bramble", "cold")]),
        # how it is, and where
        ("oak", "Otto is cold no sorry hot", [("Otto", "hot")]),
        ("oak", "Otto's sheet is dry, oops, damp", [("otto-sheet", "damp")]),
        ("oak", "Otto is out, no, in", [("Otto", "stall")]),
        ("chenaie", "Perle transpire euh non tremble dsl", [("Perle", "shivering")]),
        ("chenaie", "l'imper d'Ulysse est trempé oups humide", [("ulysse-impermeable", "damp")]),
        ("chenaie", "Perle a froid, non elle va bien", [("Perle", "comfortable")]),
        ("chenaie", "Perle est au box, non elle est au pré", [("Perle", "field")]),
        # which piece, without a pause
        ("chenaie", "l'imper d'Ulysse est humide nan celui d'Étoile", [("etoile-impermeable", "damp")]),
        ("oak", "Otto's sheet is soaked sorry Tucker's", [("tucker-sheet", "soaked")]),
        ("chenaie", "Étoile porte l'imper, non, où j'ai la tête, sa grosse", [("Étoile", ("etoile-grosse",))]),
        # which one it is, and who or which it is not
        ("oak", "it's not Tucker who's shivering, it's Fig", [("Fig", "shivering")]),
        ("oak", "it isn't Otto's heavy that is ripped, it's Fig's heavy", [("fig-heavy", "torn")]),
        ("oak", "not Otto, it's Willow who is sweaty", [("Willow", "sweating")]),
        ("oak", "it's the plaid sheet I put on Otto", [("Otto", ("otto-sheet",))]),
        ("encina", "no es Moro el que tiembla, es Lucero", [("Lucero", "shivering")]),
        ("encina", "no es Moro quien tiene frío sino Nube", [("Nube", "cold")]),
        ("chenaie", "c'est pas Filou qui tousse c'est Perle", [("Perle", "unwell")]),
        ("chenaie", "fausse alerte, Filou tousse pas c'était Perle", [("Perle", "unwell")]),
        ("chenaie", "Filou tremble pas c'est Ulysse", [("Filou", "comfortable"), ("Ulysse", "shivering")]),
        ("oak", "Otto isn't shivering it's Fig", [("Otto", "comfortable"), ("Fig", "shivering")]),
        ("chenaie", "non c'est pas Filou qui tremble, c'est Ulysse, et Perle va bien", [
            ("Ulysse", "shivering"), ("Perle", "comfortable"),
        ]),
        ("chenaie", "c'est pas Filou que j'ai rentré c'est Ulysse", [("Ulysse", "stall")]),
        ("chenaie", "euh c'est la réserve 150 que j'ai mise à Ulysse", [("Ulysse", ("reserve-150",))]),
        ("chenaie", "c'est pas l'imper que j'ai mis à Étoile c'est la grosse", [("Étoile", ("etoile-grosse",))]),
    ],
)  # fmt: skip
def test_what_was_meant_is_told(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Exactly that, and nothing of what was said first."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Tucker is cold, not Willow", [("Tucker", "cold")]),
        ("oak", "Tucker is sweaty, sorry. Willow and Otto fine", [
            ("Tucker", "sweating"), ("Willow", "comfortable"), ("Otto", "comfortable"),
        ]),
        ("oak", "Tucker is cold, actually Willow is too", [("Tucker", "cold"), ("Willow", "cold")]),
        ("oak", "is Tucker cold? no, Willow", []),
        ("oak", "riding Tucker tomorrow, no sorry, Willow", []),
        ("chenaie", "Perle va bien, désolé pour Ulysse", [("Perle", "comfortable")]),
        ("chenaie", "Perle a froid, non c'est pas un caramel ce poney", [("Perle", "cold")]),
        ("chenaie", "Perle tremble, oh non Ulysse aussi", [("Perle", "shivering"), ("Ulysse", "shivering")]),
        ("chenaie", "je confonds toujours Perle et Ulysse", []),
        ("chenaie", "Perle non, Ulysse oui", []),
        ("chenaie", "c'est Perle qui tremble et non Ulysse", [("Perle", "shivering")]),
        ("chenaie", "l'imper d'Ulysse est mouillé et non celui d'Étoile", [("ulysse-impermeable", "wet")]),
        ("chenaie", "Perle est mouillée et non trempée", [("Perle", "wet")]),
        ("sol", "Rayo está sudado, no Luna", [("Rayo", "sweating")]),
        ("oak", "Otto is cold, no sweat", [("Otto", "cold")]),
        ("oak", "Otto's cold, sorry cold hands so can't type", [("Otto", "cold")]),
        ("chenaie", "Perle sèche, non transpirante", [("Perle", "comfortable")]),
        ("chenaie", "Perle a froid désolée, trempée", [("Perle", "cold"), ("Perle", "wet")]),
        ("chenaie", "Perle a froid ? non chaud", []),
        ("chenaie", "Perle au pré, pas au box", [("Perle", "field")]),
        ("oak", "it's not Otto who's cold", [("Otto", "comfortable")]),
        ("oak", "it's not only Otto that's cold", [("Otto", "cold")]),
        ("oak", "Otto's sheet is torn, not Fig's", [("otto-sheet", "torn")]),
        ("oak", "it's not Otto who's cold, Willow is hot", [("Otto", "comfortable"), ("Willow", "hot")]),
        ("chenaie", "c'est pas que Filou qui a froid", [("Filou", "cold")]),
        ("chenaie", "Filou tousse plus du tout", []),
        ("chenaie", "Filou tousse pas mal", [("Filou", "unwell")]),
        ("chenaie", "Filou tremble plus que jamais", [("Filou", "shivering")]),
        ("chenaie", "Filou tremble pas, c'est moi", [("Filou", "comfortable")]),
        ("chenaie", "c'est pas Filou qui a mangé la carotte, c'est Perle", []),
        ("chenaie", "c'est la grosse que je voulais mettre à Étoile", []),
        ("chenaie", "c'est pas la grosse qu'il faut mettre à Étoile c'est l'imper", []),
    ],
)  # fmt: skip
def test_what_else_stands_behind_such_words_is_no_mending(
    name: str, text: str, expected: list[tuple[object, ...]]
) -> None:
    """Excuses, denials and more that is told leave the first as it was."""
    assert told(said(text, name)) == expected
