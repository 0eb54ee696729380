"""A message as requests to Telegram: cut where it must be, buttons last, the picture after the text."""

from hypothesis import given
from hypothesis import strategies as st

from bot.chat.pieces import LONGEST_TEXT, Address, chunks, pieces, split_key, utf16
from bot.message import Button, Outgoing

GROUP = Address(-5)


@given(st.text(st.characters(exclude_categories=["Cs"]), max_size=400), st.integers(4, 60))
def test_no_piece_is_too_long_and_no_letter_is_lost(text: str, longest: int) -> None:
    """In units as Telegram counts them: a horse's head is two."""
    found = chunks(text, longest)
    assert all(0 < utf16(piece) <= longest for piece in found)
    assert "".join("".join(found).split()) == "".join(text.split())


def test_a_cut_falls_between_lines_where_it_can() -> None:
    """A horse's line is not torn apart."""
    assert chunks("aaaa\nbbbb\ncccc", 9) == ["aaaa\nbbbb", "cccc"]
    assert chunks("a" * 10, 8) == ["aaaa", "aaaa", "aa"]


def test_buttons_are_under_the_last_piece_and_the_anchor_at_the_first() -> None:
    """Where the thumb is, and where the question was."""
    buttons = ((Button("all done", "d"),),)
    first, second, picture = pieces(
        Outgoing("post", "a" * LONGEST_TEXT + "\nb", buttons=buttons, reply_to="-5:7", picture=b"x"), GROUP
    )
    assert (first.reply_to, second.reply_to) == (7, None)
    assert (first.buttons, second.buttons) == ((), buttons)
    assert (picture.picture, picture.text) == (b"x", "")


def test_a_reply_in_another_chat_hangs_on_nothing() -> None:
    """Message numbers of one chat mean nothing in another."""
    (piece,) = pieces(Outgoing("answer", "a", reply_to="-6:7"), GROUP)
    assert piece.reply_to is None


def test_a_key_names_a_message_or_a_tap() -> None:
    """Taps have no message of their own; a terminal's keys are no chat's."""
    assert split_key("-5:7") == (-5, 7)
    assert split_key("-5:tap-99") == (-5, None)
    assert split_key("terminal:out:3") == (None, None)
    assert split_key(None) == (None, None)
