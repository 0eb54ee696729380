"""What a reply means: to a question the bot put, to a post, to a report that was wrong."""

import pytest

from bot.barn import Barn
from bot.events import Done, Event, GarmentIs, Placed, Seen, Undo, Wearing
from bot.state import State
from bot.words import Ask, Heard, Reference, read

SHEET = Ask("garment", "sheet", ("tucker-sheet", "otto-sheet"), (GarmentIs("", "wet"),))
BRAMBLE = Ask("horse", "brambles", ("Bramble",), (Seen("", "shivering"),))
WARM = Ask("sign", "warm", ("hot", "comfortable"), (Seen("Otto", ""),))  # type: ignore[arg-type]


def said(text: str, barn: Barn, now: State, **about: object) -> Heard:
    """What the manager says in reply to a message about these things."""
    return read(text, barn.people[0], barn, now, Reference(**about))  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("text", "ask", "events"),
    [
        ("1", SHEET, (GarmentIs("tucker-sheet", "wet"),)),
        ("the second", SHEET, (GarmentIs("otto-sheet", "wet"),)),
        ("the plaid one", SHEET, (GarmentIs("otto-sheet", "wet"),)),
        ("Otto", SHEET, (GarmentIs("otto-sheet", "wet"),)),
        ("Tucker's", SHEET, (GarmentIs("tucker-sheet", "wet"),)),
        ("otto-sheet", SHEET, (GarmentIs("otto-sheet", "wet"),)),
        ("both", SHEET, (GarmentIs("tucker-sheet", "wet"), GarmentIs("otto-sheet", "wet"))),
        ("neither", SHEET, ()),
        ("yes", BRAMBLE, (Seen("Bramble", "shivering"),)),
        ("brambel!", BRAMBLE, (Seen("Bramble", "shivering"),)),
        ("too hot", WARM, (Seen("Otto", "hot"),)),
        ("fine", WARM, (Seen("Otto", "comfortable"),)),
    ],
)
def test_a_short_answer_completes_the_first_message(
    text: str, ask: Ask, events: tuple[Event, ...], oak: Barn, oak_now: State
) -> None:
    """A number, a name, a colour: what was asked about is now told."""
    assert said(text, oak, oak_now, ask=ask).events == events


def test_a_new_report_in_reply_to_an_ask_is_a_new_report(oak: Barn, oak_now: State) -> None:
    """Who answers with something else is heard saying something else."""
    assert said("Fig is shivering", oak, oak_now, ask=SHEET).events == (Seen("Fig", "shivering"),)


@pytest.mark.parametrize("text", ["thanks", "3", "no idea", "good morning"])
def test_what_is_no_answer_changes_nothing(text: str, oak: Barn, oak_now: State) -> None:
    """Thanks in reply to a question is thanks."""
    assert said(text, oak, oak_now, ask=SHEET).events == ()


@pytest.mark.parametrize(
    ("text", "events"),
    [
        ("done", (Done(("Fig",)),)),
        ("✅", (Done(("Fig",)),)),
        ("shivering", (Seen("Fig", "shivering"),)),
        ("she's fine", (Seen("Fig", "comfortable"),)),
        ("in", (Placed("Fig", "stall"),)),
        ("took the stable rug off", (Wearing("Fig", ()),)),
        ("thanks!", ()),
    ],
)
def test_a_reply_takes_its_horse_from_the_message_answered(
    text: str, events: tuple[Event, ...], oak: Barn, oak_now: State
) -> None:
    """A message about one horse needs no name in its answers."""
    assert said(text, oak, oak_now, horses=("Fig",)).events == events


def test_done_in_reply_to_the_whole_post_is_all_done(oak: Barn, oak_now: State) -> None:
    """One word closes the round."""
    everyone = tuple(horse.name for horse in oak.horses)

    assert said("done", oak, oak_now, horses=everyone).events == (Done("all"),)


def test_a_sign_in_reply_to_several_horses_is_asked_about(oak: Barn, oak_now: State) -> None:
    """The horse is never guessed from a list."""
    heard = said("sweaty", oak, oak_now, horses=("Fig", "Otto"))

    assert heard.events == ()
    assert heard.ask is not None
    assert heard.ask.options == ("Fig", "Otto")


def test_a_reply_about_a_garment_is_about_that_garment(oak: Barn, oak_now: State) -> None:
    """As in "Dry now" needs no more."""
    assert said("dry now", oak, oak_now, garments=("clem-liner",)).events == (GarmentIs("clem-liner", "dry"),)


@pytest.mark.parametrize("text", ["no, Otto", "I meant Otto", "sorry, Otto", "Otto, not Tucker"])
def test_the_wrong_horse_is_put_right(text: str, oak: Barn, oak_now: State) -> None:
    """The last report is taken back and told of the horse that was meant."""
    heard = said(text, oak, oak_now, last=(Seen("Tucker", "sweating"),))

    assert heard.events == (Undo(), Seen("Otto", "sweating"))


def test_the_wrong_horse_wore_no_piece_of_the_others(oak: Barn, oak_now: State) -> None:
    """What Tucker was said to wear is taken back; Otto is not put into Tucker's sheet."""
    heard = said("No, Otto", oak, oak_now, last=(Wearing("Tucker", ("tucker-sheet",)),))

    assert heard.events == (Undo(),)


def test_the_speakers_own_horse_is_theirs(oak: Barn, oak_now: State) -> None:
    """An owner of one horse need not name it."""
    priya = next(p for p in oak.people if p.name == "Priya")

    assert read("my horse is shivering", priya, oak, oak_now).events == (Seen("Willow", "shivering"),)


def test_mine_are_done_is_of_the_speakers_own(oak: Barn, oak_now: State) -> None:
    """An owner ticks her own off; who has none has none done."""
    priya, sam = (next(p for p in oak.people if p.name == name) for name in ("Priya", "Sam"))

    assert read("mine are all done", priya, oak, oak_now).events == (Done(("Willow",)),)
    assert read("mine are all done", sam, oak, oak_now).events == ()


@pytest.mark.parametrize(("text", "left"), [("the liner", ("grey-sheet",)), ("2", ("grey-liner",))])
def test_which_of_her_rugs_came_off_is_asked(text: str, left: tuple[str, ...], oak: Barn, oak_now: State) -> None:
    """As in "took one of Lady Grey's rugs off": the answer names it, and she is left in the other."""
    heard = said("took one of Lady Grey's rugs off", oak, oak_now)

    assert heard.events == ()
    assert heard.ask is not None
    assert said(text, oak, oak_now, ask=heard.ask).events == (Wearing("Lady Grey", left),)
