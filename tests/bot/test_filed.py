"""Edits of the barn file are noticed once, as facts of their own day."""

from datetime import UTC, date, datetime
from typing import Any

import pytest

from bot.barn import Barn
from bot.events import Event, FileSays
from bot.filed import edits, facts, unnoticed
from bot.mailbox import Mailbox
from bot.state import fold
from bot.store import Store


def edited(barn: Barn, horse: str = "", garment: str = "", **said: Any) -> Barn:
    """The same file with one horse or garment otherwise."""
    horses = tuple(h.model_copy(update=said) if h.name == horse else h for h in barn.horses)
    garments = tuple(g.model_copy(update=said) if g.id == garment else g for g in barn.garments)
    return barn.model_copy(update={"horses": horses, "garments": garments})


def noticed(before: Barn, after: Barn) -> list[Event]:
    """What a start on the new file records, the old one having been kept in the store."""
    kept = Mailbox(Store.memory())
    kept.set("filed", facts(before))
    return list(edits(kept.setting("filed"), facts(after)))


def test_the_same_file_says_nothing_new(barn: Barn) -> None:
    """However often the bot starts."""
    assert noticed(barn, barn) == []


def test_before_the_first_start_nothing_was_said(barn: Barn) -> None:
    """The file is where the barn begins."""
    assert edits(None, facts(barn)) == []


@pytest.mark.parametrize(
    ("said", "event"),
    [
        ({"horse": "Maple", "keep_bare": True}, FileSays("keep_bare", "Maple", value=True)),
        ({"horse": "Maple", "wearing": ()}, FileSays("wearing", "Maple", [])),
        ({"horse": "Maple", "where": {"morning": "stall"}}, FileSays("where", "Maple", {"morning": "stall"})),
        ({"garment": "maple-liner", "state": "torn"}, FileSays("state", "maple-liner", "torn")),
    ],
)
def test_each_fact_that_chat_can_change(barn: Barn, said: dict[str, Any], event: Event) -> None:
    """A wish, what is worn, the routine, a garment's state: one edit, one fact."""
    assert noticed(barn, edited(barn, **said)) == [event]


def test_a_clip_is_of_the_day_the_file_gives(barn: Barn) -> None:
    """Entered today, clipped last week."""
    clip = barn.horse("Otter").clip.model_copy(update={"style": "trace", "on": date(2026, 11, 19)})
    (event,) = noticed(barn, edited(barn, "Otter", clip=clip))
    assert event == FileSays("clip", "Otter", "trace", date(2026, 11, 19))


def test_what_the_file_no_longer_says_is_not_said(barn: Barn) -> None:
    """A line taken out, a horse sold, a horse come: the file's new state holds, and no word of chat is overruled."""
    assert noticed(barn, edited(barn, "Maple", wearing=None)) == []
    without = barn.model_copy(update={"horses": barn.horses[1:]})
    assert noticed(barn, without) == noticed(without, barn) == []


def test_a_command_that_only_looks_sees_the_edit_too(barn: Barn) -> None:
    """As made now, though no start has noticed it yet."""
    after = edited(barn, garment="maple-liner", state="torn")
    at = datetime(2026, 11, 26, 12, tzinfo=UTC)
    (entry,) = unnoticed(after, facts(barn), at)
    assert entry.at == at
    assert fold(after, [entry]).garments["maple-liner"].since == at
