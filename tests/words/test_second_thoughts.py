"""What somebody takes back in the same message is never acted on; what is said instead is."""

import pytest

from tests.words.saying import said, told

REST = ("Tucker", "Willow", "Bramble", "Fig", "Lady Grey", "Sunday", "Clementine")


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        # another horse
        ("oak", "Tucker sweaty, no wait, that's Otto", [("Otto", "sweating")]),
        ("oak", "Tucker sweaty no wait otto", [("Otto", "sweating")]),
        ("oak", "Otto's shivering wait no that's Fig, Otto is fine", [("Fig", "shivering"), ("Otto", "comfortable")]),
        ("oak", "Tucker hot. no hang on thats sunday", [("Sunday", "hot")]),
        ("oak", "Tucker soaking wet. sorry no, the one that's wet is Otto", [("Otto", "wet")]),
        ("oak", "put the sheet on Otto, sorry, wrong horse, Tucker", [("Tucker", ("tucker-sheet",))]),
        ("encina", "Canela sudada, digo Trueno", [("Trueno", "sweating")]),
        ("encina", "Canela está empapada, no perdón, el que está empapado es Trueno", [("Trueno", "wet")]),
        ("chenaie", "Filou tremble, je confonds, c'est Ulysse", [("Ulysse", "shivering")]),
        ("oak", "Tucker soaking wet. no sorry Otto's the wet one", [("Otto", "wet")]),
        ("oak", "Tucker is cold. oh, not Tucker", []),
        # another sign, another piece
        ("oak", "Tucker is cold, no sorry, hot", [("Tucker", "hot")]),
        ("oak", "Tucker is shivering. scratch that, he's fine", [("Tucker", "comfortable")]),
        ("oak", "Otto in his sheet, no wait, his heavy", [("Otto", ("otto-heavy",))]),
        ("oak", "Otto's sheet is wet, no hang on, it's Tucker's", [("tucker-sheet", "wet")]),
        ("chenaie", "Filou a froid euh non chaud", [("Filou", "hot")]),
        # left out after all
        ("oak", "everyone done. oh wait, not Otto", [(REST,)]),
        # nothing was said before, or nothing is said instead
        ("oak", "no wait, Otto is shivering", [("Otto", "shivering")]),
        ("oak", "Otto cold, no sorry can't come friday", [("Otto", "cold")]),
        ("oak", "Tucker sweating oh no", [("Tucker", "sweating")]),
        ("oak", "oops wrong horse, undo that", [()]),
        ("oak", "disregard that last one of mine, wrong pony 🤦", [()]),
        ("oak", "delete that last message from me please", [()]),
        ("oak", "ignore the last thing I sent", [()]),
        ("oak", "ignore that last one from Sam", []),
        ("oak", "forget that last one of mine, kids were playing with the phone", [()]),
        ("oak", "delete my last message, I was half asleep", [()]),
        ("oak", "ignore my last message, Tucker is fine", [("Tucker", "comfortable")]),
        ("encina", "borra mi último mensaje, se me fue el dedo", [()]),
        ("chenaie", "efface le dernier, mon gamin jouait avec", [()]),
        ("encina", "borra ese último de mi parte, me equivoqué de caballo", [()]),
        ("chenaie", "oubliez ce dernier message de ma part, mauvais cheval", [()]),
    ],
)
def test_a_second_thought_stands_for_the_first(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """In the words people correct themselves with."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    "text", ["Tucker soaking wet. no sorry Otto's something", "Tucker's rug is off, no my mistake, Otto is something"]
)
def test_where_nobody_can_tell_what_was_meant_the_old_name_is_not_acted_on(text: str) -> None:
    """Silence harms less than the wrong horse."""
    assert not said(text, "oak").events


def test_who_always_mixes_two_up_reports_nothing() -> None:
    """Words of a second thought with no first one."""
    assert said("je confonds toujours Filou et Ulysse", "chenaie").chatter


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        # who it is instead, with a verb and no more
        ("oak", "Tucker is shivering by the trough. sorry no, Willow is! can't see a thing", [("Willow", "shivering")]),
        ("oak", "Tucker is sweating. No, Otto is, Tucker is fine", [("Otto", "sweating"), ("Tucker", "comfortable")]),
        ("oak", "Tucker is sweating, nope, Otto is", [("Otto", "sweating")]),
        ("oak", "Tucker is sweating. Sorry, Otto is", [("Otto", "sweating")]),
        ("oak", "Tucker is sweating. my bad it's Otto not Tucker", [("Otto", "sweating")]),
        ("oak", "Tucker is sweating. oh sorry it isn't Tucker, it's Otto", [("Otto", "sweating")]),
        ("oak", "Tucker is sweating. Otto I mean", [("Otto", "sweating")]),
        ("oak", "Tucker shivering!! no Otto!", [("Otto", "shivering")]),
        ("oak", "Tucker is in. sorry no, Otto is", [("Otto", "stall")]),
        ("oak", "Tucker done. sorry no, Otto done", [(("Otto",),)]),
        ("oak", "Otto's sheet is soaked. sorry no, Tucker's is", [("tucker-sheet", "soaked")]),
        ("oak", "Otto's sheet is soaked. I meant the heavy not the sheet", [("otto-heavy", "soaked")]),
        ("oak", "he's not sweaty, Otto is", [("Otto", "sweating")]),
        ("encina", "Moro está tiritando. Perdón, no, Lucero sí", [("Lucero", "shivering")]),
        ("encina", "Moro está sudando. Perdón, es Lucero, no Moro", [("Lucero", "sweating")]),
        ("encina", "He metido a Moro. Perdón, a Lucero", [("Lucero", "stall")]),
        ("chenaie", "Ulysse transpire. Pardon c'est Perle pas Ulysse", [("Perle", "sweating")]),
        ("chenaie", "Ulysse transpire. Perle je veux dire", [("Perle", "sweating")]),
        # it is not so after all, or all of it is taken back
        ("oak", "Tucker is sweating. wait no he isn't", [("Tucker", "comfortable")]),
        ("oak", "Tucker is sweating. no he isn't", [("Tucker", "comfortable")]),
        ("oak", "Tucker isn't sweating. no he isn't", [("Tucker", "comfortable")]),
        ("oak", "Tucker done, no wait he's not", []),
        ("oak", "Tucker is sweating. scratch that", []),
        ("encina", "Moro está sudando. Borra eso", []),
        ("chenaie", "Ulysse transpire. Efface ça", []),
        # what says no such thing
        ("oak", "Tucker is sweating. Not Otto", [("Tucker", "sweating")]),
        ("oak", "Tucker is sweating. No Otto today", [("Tucker", "sweating")]),
        ("oak", "Tucker is in. No Otto", [("Tucker", "stall")]),
        ("oak", "Tucker is sweating. Sorry, Otto is too", [("Tucker", "sweating"), ("Otto", "sweating")]),
        ("oak", "Tucker is sweating. sorry Otto was busy", [("Tucker", "sweating")]),
        ("oak", "Tucker done. Oh wait, Otto done too", [(("Tucker", "Otto"),)]),
    ],
)
def test_what_is_taken_back_is_not_told(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Whom it was said of first, and whatever is not so."""
    heard = said(text, name)
    assert (told(heard), heard.ask) == (expected, None)


@pytest.mark.parametrize(
    "text",
    [
        "undo that please, I had the wrong horse, sorry",
        "undo that please I was looking at the wrong mare",
        "delete that, wrong barn",
        "cancel that, thought it was Otto",
        "undo that, it was the wrong blanket",
        "sorry wrong group, undo that",
        "can you undo that, I typed the wrong name",
        "cancel it, I have the wrong horse",
        "cancel that, I mixed the two up",
        "scrap that, I misread the tag",
        "scratch that, I can't spell",
        "undo that, half asleep here",
        "forget that, my brain isn't working",
        "undo that - no glasses on",
        "could you undo my last please",
        "please remove my last entry, I was in the wrong stall",
        "undo that please and thank you",
    ],
)
def test_what_is_to_be_undone_is_said_with_its_reason(text: str) -> None:
    """A please, a "can you", a mistake and whose."""
    assert [e.kind for e in said(text, "oak").events] == ["undo"]


@pytest.mark.parametrize(
    "text",
    [
        "delete my number please, wrong Jess",
        "undo the wrong strap and it all falls off",
        "sorry I'm late, ignore that",
        "forget that, no lesson today",
        "cancel the farrier please, wrong day",
        "can you undo Otto's leg straps please",
        "cancel it, we've no shavings left",
        "cancel that, I can't make it on time",
        "scrap that, we have a lesson at two",
        "farrier at 9, scratch that",
        "cancel that, count me out",
        "cancel the hack, I can't see a thing",
    ],
)
def test_what_else_is_undone_or_called_off_takes_nothing_back(text: str) -> None:
    """Straps, numbers, lessons."""
    assert said(text, "oak").chatter
