"""How country people, the very correct and foreigners say it; and what only sounds like it."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        # foreigners
        ("oak", "Hello, I check Otto now and he is shivering very much, please somebody come", [("Otto", "shivering")]),
        ("oak", "I was riding Otto this morning, he was very good boy", [("Otto",)]),
        ("oak", "sorry I did mistake, please delete what I wrote before", [()]),
        # the very correct
        (
            "oak",
            "I should like to record that Otto received a blanket clip on Saturday afternoon.",
            [("Otto", "blanket")],
        ),
        ("oak", "Kindly note that Otto's sheet is torn at the shoulder.", [("otto-sheet", "torn")]),
        ("encina", "Anule mi último mensaje, por favor.", [()]),
        ("encina", "le ruego que anule lo anterior", [()]),
        ("encina", "haga el favor de borrar mi mensaje anterior", [()]),
        ("encina", "les ruego que Canela permanezca siempre sin manta alguna", [("Canela", True)]),
        ("encina", "el forro azul de Canela se halla aún algo húmedo", [("canela-forro", "damp")]),
        ("encina", "a Canela me la dejéis siempre sin manta", [("Canela", True)]),
        ("encina", "ya he acabado la lista entera todos hechos", [("all",)]),
        ("encina", "Canela deja de ir a pelo", [("Canela", False)]),
        ("encina", "al pasar por delante de Moro lo oigo toser feo", [("Moro", "unwell")]),
        ("chenaie", "La liste de ce soir est achevée pour l'ensemble des chevaux", [("all",)]),
        ("chenaie", "je vous prie d'effacer ce que j'ai écrit", [()]),
        ("chenaie", "la grosse d'Étoile est encore quelque peu humide", [("etoile-grosse", "damp")]),
        ("chenaie", "Perle : à partir de maintenant on la couvre comme les autres", [("Perle", False)]),
        # the country
        ("oak", "somebody tell sam that Otto's heavy has a broken belly strap", [("otto-heavy", "strap broken")]),
        ("oak", "Otto's heavy nobbut damp", [("otto-heavy", "damp")]),
        ("oak", "Nay. Scrub that.", [()]),
        ("encina", "La gorda de Canela, esgarrá", [("canela-gorda", "torn")]),
        ("encina", "Ya está apañao to el ganao", [("all",)]),
        ("encina", "he pelao a Canela de babero", [("Canela", "bib")]),
        ("encina", "Ya he soltao al prao al Trueno y al Moro", [("Trueno", "field"), ("Moro", "field")]),
        ("encina", "Canela, en cueros siempre", [("Canela", True)]),
        ("chenaie", "Elle tremble plus, la Perle, la v'là ravigotée", [("Perle", "comfortable")]),
        ("chenaie", "elle transpire plus, Perle", [("Perle", "comfortable")]),
        ("chenaie", "Filou, il est point bien", [("Filou", "unwell")]),
        # what is asked in passing
        ("encina", "hace mucho frio esta noche o que", [("forecast",)]),
    ],
)
def test_each_is_understood_in_his_own_words(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Exactly that."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "somebody's left the sheet out in the rain and it's soaking wet"),
        ("encina", "alguien se ha dejado el impermeable fuera y está empapado"),
        ("encina", "he colgado el impermeable en el guadarnés, está chorreando"),
    ],
)
def test_a_wet_piece_that_may_be_several_is_asked_about(name: str, text: str) -> None:
    """One of them was hung up, and is wet: which, nobody said."""
    ask = said(text, name).ask
    assert ask is not None
    assert ask.about == "garment"


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "somebody tell sam to put the heavy on Otto"),
        ("oak", "Otto gets a full clip on Monday"),
        ("oak", "Tucker had a lesson with the Saturday kids the other month"),
        ("encina", "he colgado el impermeable en el guadarnés, está lloviendo"),
        ("encina", "el ganado de mi primo está apañado"),
        ("encina", "ya he acabado la lista de la compra"),
        ("chenaie", "la liste des courses est faite"),
    ],
)
def test_what_only_sounds_like_it_is_left_alone(name: str, text: str) -> None:
    """The weather, other people's cattle, the shopping."""
    assert said(text, name).chatter
