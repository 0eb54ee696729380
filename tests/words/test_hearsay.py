"""What nobody in particular says, what is only planned, and what somebody tells of long ago are no reports."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "apparently Otto is cold"),
        ("oak", "I've been told that Otto was rubbed raw at his last place"),
        ("oak", "they say Otto's sheet is soaked"),
        ("oak", "I heard Otto was sweating"),
        ("oak", "Ruth's cousin reckons Otto was sweaty"),
        ("oak", "according to the hay guy Otto was cold"),
        ("oak", "it's not true that Otto is sweating"),
        ("encina", "por lo visto Canela está sudando"),
        ("encina", "me han dicho que Canela tenía frío"),
        ("encina", "según el del pienso Canela estaba sudando"),
        ("encina", "me contó Paco que Canela sudó mucho"),
        ("encina", "no es verdad que Canela tenga frío"),
        ("chenaie", "il paraît qu'Étoile transpire"),
        ("chenaie", "on m'a dit qu'Étoile avait froid"),
        ("chenaie", "le bruit court que la grosse d'Étoile est trempée"),
    ],
)
def test_hearsay_is_no_report(name: str, text: str) -> None:
    """Nobody saw it."""
    assert said(text, name).chatter


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("apparently Otto is shivering", ("Otto", "shivering")),
        ("they say Otto is off his feed", ("Otto", "unwell")),
        ("Kit says Otto is sweaty", ("Otto", "sweating")),
        ("I checked on Otto at noon and he was cold", ("Otto", "cold")),
    ],
)
def test_danger_and_what_somebody_passes_on_are_reports(text: str, expected: tuple[object, ...]) -> None:
    """Better looked at for nothing."""
    assert told(said(text)) == [expected]


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "remind me to wash Otto's sheet"),
        ("oak", "note to self: put the heavy on Otto"),
        ("oak", "forgot to wash Otto's sheet"),
        ("oak", "too cold to put a sheet on Otto"),
        ("oak", "Kit says to put the heavy on Otto"),
        ("oak", "a mare like Otto should be left bare all winter"),
        ("oak", "you looked like Otto after a mud bath, soaked and shivering"),
        ("oak", "the woman at the feed store told me her Otto was shivering all weekend"),
        ("encina", "mi hermana dice que el domingo pasado vio a Canela tiritando"),
        ("chenaie", "selon mon cousin, une jument comme Étoile devrait rester nue tout l'hiver"),
        ("chenaie", "chez ma sœur, leur jument Étoile est malade depuis hier"),
    ],
)
def test_plans_likenesses_and_other_peoples_horses_are_no_reports(name: str, text: str) -> None:
    """However near to one they come."""
    assert said(text, name).chatter


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "sweating like Otto after stacking all that hay"),
        ("oak", "remember Otto in the big snow, sweating with nothing on"),
        ("oak", "Otto was sweating in that film, or so they say"),
        ("oak", "still to do: put the heavy on Otto"),
        ("oak", "the mare across the road is shivering in a soaked sheet"),
        ("encina", "Canela suda siempre que ve al veterinario"),
        ("encina", "cuando entre Canela al box, ponedle el impermeable"),
        ("chenaie", "consignes pour ce soir : Étoile en grosse, Filou sans rien"),
        ("chenaie", "mes biscottes sont ouvertes. elles sont toutes humides"),
    ],
)
def test_memories_lists_and_habits_are_no_reports(name: str, text: str) -> None:
    """Nor is what is told of things."""
    assert said(text, name).chatter


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "homework: Otto is wet, translate into French"),
        ("oak", "as the song goes, Otto is cold outside"),
        ("oak", "vet bill: Otto, colic call out, 180"),
        ("oak", "thanks for putting the heavy on Otto last night"),
        ("encina", "el cartel de la puerta dice Canela tiene frío"),
        ("encina", "la Canela de la otra cuadra está tiritando"),
        ("chenaie", "légende : Étoile, trempée et heureuse"),
        ("chenaie", "la Perle de l'autre écurie grelotte"),
    ],
)
def test_what_is_only_quoted_or_of_another_barn_is_no_report(name: str, text: str) -> None:
    """A song, a bill, a sign on the door, a horse called so elsewhere."""
    assert said(text, name).chatter


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        ("oak", "Sam checked Otto and he was cold", ("Otto", "cold")),
        ("encina", "Iván revisó a Canela y tenía frío", ("Canela", "cold")),
        ("chenaie", "Yann a contrôlé Étoile et elle avait froid", ("Étoile", "cold")),
    ],
)
def test_what_somebody_found_out_by_looking_is_a_report(name: str, text: str, expected: tuple[object, ...]) -> None:
    """Who looked is not who only says so."""
    assert told(said(text, name)) == [expected]


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", 'the vet\'s bill is in: "Otto, shivering, call-out and exam, 62"'),
        ("oak", 'my poem begins "Otto is cold and Tucker is wet"'),
        ("encina", "no se me va de la cabeza lo de «tiembla, Canela, tiembla bajo la luna»"),
        ("chenaie", "devoir de mon fils : « Étoile transpire, Étoile transpirait »"),
    ],
)
def test_what_stands_between_quotation_marks_is_no_report(name: str, text: str) -> None:
    """But what somebody is quoted to say of a horse is."""
    assert said(text, name).chatter


def test_what_somebody_says_in_quotation_marks_is_heard() -> None:
    """The marks change nothing there."""
    assert told(said('Sam says "Otto is cold"')) == [("Otto", "cold")]


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "Otto was cold last night"),
        ("encina", "anoche Canela estaba empapada"),
        ("chenaie", "hier soir Étoile était toute mouillée, c'était bien la peine de la brosser"),
    ],
)
def test_how_it_was_last_night_is_no_report_of_now(name: str, text: str) -> None:
    """It would be put down to what is worn now."""
    assert said(text, name).chatter


def test_what_was_done_last_night_is_so_still() -> None:
    """A clip stays, and so does what was put on."""
    assert told(said("gave Otto a trace clip last night")) == [("Otto", "trace")]
    assert told(said("put the heavy on Otto last night")) == [("Otto", ("otto-heavy",))]


def test_what_strangers_tell_of_danger_that_is_over_is_no_report() -> None:
    """Of our own people it is heard all the same."""
    assert said("someone at the feed shop reckons Otto was shivering at the show").chatter
    assert told(said("Sam said Otto was shivering")) == [("Otto", "shivering")]
