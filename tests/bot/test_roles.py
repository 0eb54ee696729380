"""Who may report what: the table, and the two fine points that outrank it."""

import pytest

from bot.barn import Barn, Person
from bot.events import KINDS, Clipped, Done, Event, GarmentIs, Placed, Seen, Undo, Wished
from bot.roles import MAY, judge, may
from bot.words import Ask, Heard
from tests.words.corpus import barn as barn_of_corpus

WILLOW, TUCKER = Seen("Willow", "sweating"), Seen("Tucker", "sweating")


@pytest.fixture
def oak() -> Barn:
    """A barn where Willow is Priya's and Tucker is nobody's."""
    return barn_of_corpus("oak")


def called(name: str, barn: Barn) -> Person | None:
    """Somebody of the barn by name; None for a stranger."""
    return next((p for p in barn.people if p.name == name), None)


def judged(who: str, barn: Barn, *events: Event) -> Heard:
    """What is left of these facts when this person says them."""
    return judge(Heard("", events=events), called(who, barn), barn)


@pytest.mark.parametrize(
    ("who", "event", "allowed"),
    [
        ("Nora", Clipped("Tucker", "full"), True),
        ("Sam", TUCKER, True),
        ("Sam", Done("all"), True),
        ("Sam", Clipped("Tucker", "full"), False),
        ("Sam", Wished("Willow", True), False),
        ("Priya", WILLOW, True),
        ("Priya", Clipped("Willow", "trace"), True),
        ("Priya", Wished("Willow", True), True),
        ("Priya", GarmentIs("willow-heavy", "wet"), True),
        ("Priya", GarmentIs("tucker-sheet", "wet"), False),
        ("Priya", GarmentIs("spare-sheet", "wet"), False),
        ("Priya", Done("all"), False),
        ("Priya", Done(("Willow",)), True),
        ("Priya", Done(("Willow", "Tucker")), False),
        ("Priya", Placed("Tucker", "field"), False),
        ("Priya", Undo(), True),
        ("a stranger", WILLOW, False),
        ("a stranger", Undo(), False),
    ],
)
def test_everybody_reports_what_is_theirs_to_report(who: str, event: Event, allowed: bool, oak: Barn) -> None:
    """Managers everything, grooms the day's work, owners their own horses, strangers nothing."""
    assert may(event, called(who, oak), oak) is allowed


def test_of_a_round_told_of_several_an_owner_is_heard_of_her_own(oak: Barn) -> None:
    """The others' are refused; of none of hers, all of it is."""
    both = judged("Priya", oak, Done(("Willow", "Tucker")))

    assert both.events == (Done(("Willow",)),)
    assert both.refused is not None and both.refused.needs == "groom"
    assert judged("Priya", oak, Done(("Tucker", "Otto"))).events == ()


@pytest.mark.parametrize("sign", ["shivering", "unwell"])
def test_danger_outranks_roles(sign: str, oak: Barn) -> None:
    """An owner who sees another's horse shiver is heard; a stranger's word is refused, not recorded."""
    event = Seen("Tucker", sign)  # type: ignore[arg-type]

    assert judged("Priya", oak, event).events == (event,)
    assert judged("a stranger", oak, event).events == ()


def test_the_allowed_part_is_kept_and_the_rest_says_who_may(oak: Barn) -> None:
    """One message, two horses: the owner's own is taken, the other names the least role that may."""
    heard = judged("Priya", oak, WILLOW, TUCKER)

    assert heard.events == (WILLOW,)
    assert heard.refused is not None
    assert (heard.refused.reason, heard.refused.needs, heard.refused.event) == ("not allowed", "groom", TUCKER)


@pytest.mark.parametrize(
    ("who", "event", "needs"),
    [
        ("Priya", Clipped("Tucker", "full"), "manager"),
        ("Priya", Done("all"), "groom"),
        ("Sam", Clipped("Willow", "full"), "owner"),
        ("Sam", Clipped("Tucker", "full"), "manager"),
        ("a stranger", TUCKER, "groom"),
        ("a stranger", WILLOW, "groom"),  # of a horse that has an owner
        ("a stranger", Clipped("Willow", "full"), "owner"),
    ],
)
def test_a_refusal_names_the_least_role_that_may(who: str, event: Event, needs: str, oak: Barn) -> None:
    """People are told whom to ask."""
    refused = judged(who, oak, event).refused

    assert refused is not None
    assert refused.needs == needs


def test_chatter_of_a_stranger_is_chatter(oak: Barn) -> None:
    """Nobody is refused for saying good morning."""
    heard = judge(Heard("good morning", chatter=True), None, oak)

    assert heard.chatter
    assert heard.refused is None


def test_nobody_is_asked_what_they_may_not_answer(oak: Barn) -> None:
    """An ask about horses that are not the owner's own is refused, not put."""
    ask = Ask("garment", "sheet", ("tucker-sheet", "otto-sheet"), (GarmentIs("", "wet"),))

    assert judge(Heard("the sheet is wet", ask=ask), called("Priya", oak), oak).ask is None
    assert judge(Heard("the sheet is wet", ask=ask), called("Sam", oak), oak).ask == ask


def test_talk_of_some_rug_refuses_nobody(oak: Barn) -> None:
    """It may be any horse's, or none of the barn's; of one horse's clothes an owner is told who may."""
    some = Ask("garment", "sheet", ("tucker-sheet", "otto-sheet"), (GarmentIs("", "wet"),))
    ones = Ask("garment", "strap", ("otto-heavy", "otto-sheet"), (GarmentIs("", "strap broken"),))
    priya = called("Priya", oak)

    assert judge(Heard("left a wet sheet on the saddle", ask=some), priya, oak).refused is None
    refused = judge(Heard("Otto's strap is broken", ask=ones), priya, oak).refused
    assert refused is not None and refused.needs == "groom"


def test_every_kind_people_can_say_has_a_row() -> None:
    """A new kind of event needs its row in the table."""
    recorded_by_the_barn = {"posted", "changed", "recheck", "nudged", "file"}

    assert set(MAY) == set(KINDS) - recorded_by_the_barn
