"""What somebody takes back in the same message is never acted on; what is said instead is."""

import pytest

from tests.words.test_turns_of_speech import said, told

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
