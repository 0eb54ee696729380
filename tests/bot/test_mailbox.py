"""Nothing heard is lost, nothing said twice."""

from collections.abc import Iterator
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from bot.inbox import STARTS_ALLOWED
from bot.mailbox import KEPT_DAYS, Mailbox
from bot.message import Button, Outgoing
from bot.outbox import PAUSE_UNKNOWN
from bot.store import Store

NOW = datetime(2026, 11, 26, 12, 12, tzinfo=UTC)
LATER = NOW + PAUSE_UNKNOWN


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    """A barn's file on disk."""
    with closing(Store.open(tmp_path / "barn.sqlite")) as opened:
        yield opened


@pytest.fixture
def box(store: Store) -> Mailbox:
    """An empty mailbox."""
    return Mailbox(store)


def say(text: str, **more: object) -> Outgoing:
    """An answer to the group."""
    return Outgoing("answer", text, **more)  # type: ignore[arg-type]


def free(box: Mailbox, at: datetime = NOW) -> list[str]:
    """What may be sent now."""
    return [outgoing.text for _, outgoing in box.unsent(at)]


class TestInbox:
    """What people said."""

    def test_updates_wait_in_the_order_they_came(self, box: Mailbox) -> None:
        """Not by their numbers: after a quiet week Telegram begins anew anywhere."""
        box.hold([(900, "a"), (17, "b")])
        box.hold([(18, "c")])
        assert [one.raw for one in box.waiting()] == ["a", "b", "c"]

    def test_an_update_delivered_twice_waits_once(self, box: Mailbox) -> None:
        """Also when it was handled long ago."""
        box.hold([(1, "a"), (1, "a")])
        box.handled(1)
        box.hold([(1, "a")])
        assert box.waiting() == []

    def test_what_was_handled_is_no_longer_readable(self, box: Mailbox, store: Store) -> None:
        """The ledger has what matters; the raw message is forgotten."""
        box.hold([(1, "secret")])
        box.handled(1)
        assert store.conn.execute("SELECT raw FROM inbox").fetchone() == ("",)

    def test_a_spoiled_update_is_set_aside_whole(self, box: Mailbox) -> None:
        """The others go on."""
        box.hold([(1, "bad"), (2, "good")])
        box.quarantine(1, "why")
        assert [one.raw for one in box.waiting()] == ["good"]
        assert box.queues().quarantined == 1

    def test_an_update_that_kills_the_process_is_set_aside_after_some_starts(self, box: Mailbox) -> None:
        """Else no message after it would ever be answered."""
        box.hold([(1, "killer"), (2, "good")])
        assert [box.suspect() for _ in range(STARTS_ALLOWED)] == [[]] * STARTS_ALLOWED
        assert box.suspect() == [1]
        assert [one.raw for one in box.waiting()] == ["good"]

    def test_the_same_words_again_are_no_news(self, box: Mailbox) -> None:
        """An edit that changed nothing, a redelivery; a real edit is heard."""
        assert [box.heard("1:7", digest) for digest in ("x", "x", "y", "y", "x")] == [False, True, False, True, False]


class TestOutbox:
    """What the bot says."""

    def test_of_several_changes_of_one_message_the_last_is_enough(self, box: Mailbox) -> None:
        """Twelve horses done in a minute are not twelve requests; another message's buttons are left alone."""
        for text in ("1", "2", "3"):
            box.put(Outgoing("update", text, edits="-5:7"), NOW)
        box.put(Outgoing("update", "other", edits="-5:8"), NOW)
        assert free(box) == ["3", "other"]

    def test_a_message_comes_out_as_it_was_put_in(self, box: Mailbox) -> None:
        """Picture, buttons, what it is about."""
        put = Outgoing(
            "post",
            "<b>Bo</b>",
            reply_to="1:2",
            picture=b"\x89PNG",
            buttons=((Button("all done", "d:all"),),),
            about={"horses": ["Bo"]},
            pin=True,
        )
        number = box.put(put, NOW)
        assert box.unsent(NOW) == [(number, put)]

    def test_alarms_go_before_everything_else_goes_in_order(self, box: Mailbox) -> None:
        """A shivering horse does not wait behind answers."""
        for text in ("a", "b"):
            box.put(say(text), NOW)
        box.put(say("alarm", urgent=True), NOW)
        assert free(box) == ["alarm", "a", "b"]
        letter = box.next_letter("group", NOW)
        assert letter
        assert letter.outgoing.text == "alarm"

    def test_what_is_sent_is_not_sent_again_and_can_be_answered(self, box: Mailbox) -> None:
        """A reply's anchor finds what it was about."""
        number = box.put(say("a", about={"horses": ["Bo"]}), NOW)
        box.sent(number, "-1:55")
        assert free(box) == []
        found = box.message("-1:55")
        assert found
        assert found.about == {"horses": ["Bo"]}
        assert box.message("-1:56") is None

    def test_after_a_kill_while_sending_it_is_sent_once_more_and_says_so(self, box: Mailbox) -> None:
        """It may have arrived; a second doubtful sending is left at that."""
        box.put(say("post"), NOW)
        for repeat in (False, True):
            letter = box.next_letter("group", NOW)
            assert letter
            assert letter.repeat is repeat
            box.sending(letter)
            assert free(box) == []
            box.begin(NOW)
        assert box.next_letter("group", NOW) is None

    def test_an_unknown_outcome_is_tried_once_more_after_a_pause(self, box: Mailbox) -> None:
        """A blind repetition at once would double the daily post."""
        number = box.put(say("post"), NOW)
        assert box.unknown(number, NOW)
        assert free(box) == []
        assert box.next_at() == LATER
        assert free(box, LATER) == ["post"]
        assert not box.unknown(number, LATER)
        assert free(box, LATER + timedelta(days=1)) == []

    def test_surely_unsent_is_tried_for_as_long_as_it_takes(self, box: Mailbox) -> None:
        """Hours without network lose nothing."""
        number = box.put(say("post"), NOW)
        for hour in range(50):
            box.waits(number, NOW + timedelta(hours=hour))
            letter = box.next_letter("group", NOW + timedelta(hours=hour))
            assert letter
            assert not letter.repeat

    def test_order_is_kept_behind_a_message_that_waits(self, box: Mailbox) -> None:
        """To one addressee; others and alarms pass."""
        first = box.put(say("first"), NOW)
        box.put(say("second"), NOW)
        box.put(say("to Ruth", to="Ruth"), NOW)
        box.put(say("alarm", urgent=True), NOW)
        box.waits(first, LATER)
        assert free(box) == ["alarm", "to Ruth"]
        assert free(box, LATER) == ["alarm", "first", "second", "to Ruth"]

    def test_pieces_already_in_the_chat_are_not_sent_again(self, box: Mailbox) -> None:
        """A long post interrupted goes on where it stopped."""
        number = box.put(say("long"), NOW)
        box.part(number, "-1:1")
        letter = box.next_letter("group", NOW)
        assert letter
        assert letter.parts == 1
        assert box.message("-1:1")

    def test_what_cannot_be_sent_is_kept_apart(self, box: Mailbox) -> None:
        """And counted for the health file."""
        box.failed(box.put(say("x"), NOW), "kicked")
        assert free(box) == []
        assert box.queues().failed == 1


def test_old_mail_is_cleared_away(box: Mailbox, store: Store) -> None:
    """A winter does not fill the disk; what is unsent stays."""
    sent, _ = box.put(say("old"), NOW), box.put(say("unsent"), NOW)
    box.sent(sent, "-1:1")
    box.begin(NOW + timedelta(days=KEPT_DAYS + 1))
    assert box.message("-1:1") is None
    assert free(box) == ["unsent"]
    assert store.conn.execute("SELECT count(*) FROM sent").fetchone() == (0,)


def test_kept_values_and_settings_last(box: Mailbox, store: Store) -> None:
    """The last forecast, the group's new id."""
    box.kept.put("forecast x", b"\x00body")
    box.set("group", {"is": -5})
    again = Mailbox(store)
    assert again.kept.get("forecast x") == b"\x00body"
    assert again.setting("group") == {"is": -5}
    assert again.setting("never set") is None


def test_a_flood_s_answers_go_after_the_others(box: Mailbox) -> None:
    """But an alarm among them goes first as ever."""
    since = box.last()
    box.put(say("flood 1"), NOW)
    box.put(say("alarm", urgent=True), NOW)
    box.after_the_others(since)
    box.put(say("other"), NOW)
    assert free(box) == ["alarm", "other", "flood 1"]
