"""A raw update in our own words: only what is needed is read, so that little can spoil it."""

from contextlib import suppress
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.chat.incoming import Moved, incoming, moved, origin, parsed, plain, raw, topic

NOW = datetime(2026, 11, 26, 12, 12, tzinfo=UTC)
GROUP = {"id": -5, "type": "supergroup"}
INES = {"id": 1002, "is_bot": False, "first_name": "Inés", "last_name": "Álvarez"}


def message(**more: Any) -> dict[str, Any]:
    """A message in the group."""
    body = {"message_id": 7, "date": int(NOW.timestamp()), "chat": GROUP, "from": INES, "text": "Maple sweaty"}
    return {"update_id": 1, "message": body | more}


def test_a_message_is_who_what_when_and_where() -> None:
    """The key is the chat's own numbering."""
    found = incoming(message(), NOW)
    assert found
    assert (found.key, found.text, found.at, found.private, found.edited) == ("-5:7", "Maple sweaty", NOW, False, False)
    assert (found.sender.id, found.sender.name) == (1002, "Inés Álvarez")


def test_an_edit_is_marked_and_has_the_message_s_key() -> None:
    """T9: a correction taken for a second report would count twice."""
    update = message()
    found = incoming({"update_id": 2, "edited_message": update["message"] | {"text": "Juniper sweaty"}}, NOW)
    assert found
    assert found.edited
    assert found.key == "-5:7"


def test_a_reply_s_anchor_is_kept() -> None:
    """What it is about stands in the message it answers."""
    found = incoming(message(reply_to_message={"message_id": 3}), NOW)
    assert found
    assert found.reply_to == "-5:3"


def test_every_tap_has_a_key_of_its_own() -> None:
    """Two people pressing one button are two reports."""
    tap = {"from": INES, "data": "done", "message": {"message_id": 3, "chat": GROUP}}
    keys = set()
    for number in ("1", "2"):
        found = incoming({"update_id": 1, "callback_query": tap | {"id": number}}, NOW)
        assert found
        assert (found.tap, found.reply_to) == ("done", "-5:3")
        keys.add(found.key)
    assert len(keys) == 2


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("/done Maple", "done Maple"),
        ("/done@haybell_bot Maple", "done Maple"),
        ("/all_done", "all done"),
        ("/start", "help"),
        ("/help", "help"),
        ("half/half", "half/half"),
    ],
)
def test_a_command_is_plain_words(said: str, meant: str) -> None:
    """Whoever can only write commands can say everything."""
    assert plain(said) == meant


@pytest.mark.parametrize(
    "more",
    [{"text": ""}, {"text": "   "}, {"text": None}, {"from": INES | {"is_bot": True}}, {"from": {}}],
    ids=["empty", "blank", "a sticker", "another bot", "nobody"],
)
def test_what_has_no_words_of_a_person_is_nothing(more: dict[str, Any]) -> None:
    """No answer to a thumb, no talk between bots."""
    assert incoming(message(**more), NOW) is None


@pytest.mark.parametrize("date", [0, None, "x", 10**15, (NOW + timedelta(days=9)).timestamp()])
def test_an_absurd_date_is_now(date: Any) -> None:
    """A server's broken clock must not date a report."""
    found = incoming(message(date=date), NOW)
    assert found
    assert found.at == NOW


def test_what_was_said_offline_is_dated_when_it_was_said() -> None:
    """A report from the far field, delivered an hour later."""
    found = incoming(message(date=int((NOW - timedelta(hours=1)).timestamp())), NOW)
    assert found
    assert found.at == NOW - timedelta(hours=1)


def test_a_move_is_told_from_either_side() -> None:
    """One of the two service messages may never come."""
    assert moved(message(migrate_to_chat_id=-9)) == Moved(-5, -9)
    assert moved(message(migrate_from_chat_id=-4)) == Moved(-4, -5)
    assert moved(message()) is None


def test_only_a_real_topic_counts() -> None:
    """Replies carry thread numbers that are none; the general topic has no usable one."""
    assert topic(message(message_thread_id=7, is_topic_message=True)) == 7
    assert topic(message(message_thread_id=1, is_topic_message=True)) is None
    assert topic(message(message_thread_id=7)) is None


KEYS = st.sampled_from(
    ["message", "edited_message", "callback_query", "my_chat_member", "chat", "from", "id", "type", "text", "date",
     "message_id", "data", "reply_to_message", "migrate_to_chat_id", "is_topic_message", "message_thread_id"]
)  # fmt: skip
VALUES = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(max_size=20),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(KEYS, inner, max_size=5),
    max_leaves=20,
)


@given(st.dictionaries(KEYS, VALUES, max_size=6))
@settings(deadline=None, max_examples=300)
def test_no_update_can_do_more_than_be_refused(update: dict[str, Any]) -> None:
    """Whatever a server sends is read, or refused with an ordinary error; the inbox keeps it as it was."""
    assert parsed(raw(update)) == update
    for read in (origin, moved, topic, lambda u: incoming(u, NOW)):
        with suppress(ValueError, TypeError, KeyError, AttributeError, OverflowError):
            read(update)


def test_what_should_be_an_object_and_is_not_moves_nothing() -> None:
    """Found by noise: an update whose chat is a word stopped everything that came after it."""
    assert moved({"message": {"chat": "\0", "text": []}}) is None
    assert origin({"callback_query": {"message": "x", "from": INES}}).chat is None


def test_half_a_character_is_kept_as_a_question_mark() -> None:
    """Found by noise: half an emoji could not be written to the inbox."""
    kept = parsed(raw(message(text="Maple \ude00 sweaty \U0001f984")))
    assert kept["message"]["text"] == "Maple ? sweaty \U0001f984"
