"""The round's post as a group lives with it: buttons, taps, ticks, the pin, who is left, the hand-over."""

from pathlib import Path

from tests.whole.living import INES, MAELLE, RUTH, THEO, Clock, Living, in_group, living
from tests.whole.local_bot_api import LocalBotApi


async def test_the_post_has_its_picture_its_buttons_and_a_silent_pin(group: Living) -> None:
    """A button for each horse that changes, one for each wet piece, one for all, and the questions."""
    post = group.post()
    labels = [b["text"].replace("\u00a0", " ") for b in group.buttons(post)]
    assert labels[:3] == ["Maple", "Old Sorrel", "Pip"]
    assert labels[-5:] == ["Sparrow's 200 g turnout still wet", "All done", "Who is left", "Why", "Drying"]
    assert [s.method for s in group.api.sent] == ["sendMessage", "sendPhoto"]
    (pin,) = [data for method, data in group.api.calls if method == "pinChatMessage"]
    assert (int(pin["message_id"]), pin["disable_notification"]) == (post.message_id, "true")


async def test_the_next_posts_pin_takes_the_place_of_the_last(group: Living) -> None:
    """One list is on top, the one that counts."""
    morning = group.post()
    await group.until("16:00")
    unpinned = [int(data["message_id"]) for method, data in group.api.calls if method == "unpinChatMessage"]
    pinned = [int(data["message_id"]) for method, data in group.api.calls if method == "pinChatMessage"]
    assert group.post() is not morning
    assert (unpinned, pinned) == ([morning.message_id], [morning.message_id, group.post().message_id])


async def test_a_tap_ticks_the_button_and_says_who(group: Living) -> None:
    """Two people on two horses; both names are on the post, and nothing more is written into the group."""
    post = group.post()
    said = await group.taps("7:02", MAELLE, post, "Pip") + await group.taps("7:03", INES, post, "Maple")
    assert group.ticks(post) == ["✓ Maple · Inés", "✓ Pip · Maëlle"]
    assert said == []
    assert {"Pip", "Maple"} <= group.day.state.standing.done


async def test_all_done_ticks_everybody(group: Living) -> None:
    """One tap with a glove on, at the end of the round."""
    await group.taps("7:20", THEO, group.post(), "All done")
    assert all(label.endswith("· Theo") for label in group.ticks(group.post())[:9])
    assert not [text for text in in_group(await group.until("7:40")) if "Not yet" in text]


async def test_a_second_tap_on_the_same_button_changes_nothing(group: Living) -> None:
    """The server says "message is not modified", and that is all that comes of it."""
    post = group.post()
    await group.taps("7:02", MAELLE, post, "Pip")
    await group.taps("7:02", MAELLE, post, "Pip")
    assert group.ticks(post) == ["✓ Pip · Maëlle"]
    assert group.room.mailbox.queues().failed == 0


async def test_done_in_words_ticks_like_a_tap_and_undo_unticks(group: Living) -> None:
    """However it is told, the post shows it: in words, corrected, taken back; a tap is taken back likewise."""
    post = group.post()
    await group.says("7:00", MAELLE, "Pip fait")
    assert group.ticks(post) == ["✓ Pip · Maëlle"]
    await group.taps("7:01", MAELLE, post, "Maple")
    await group.says("7:02", MAELLE, "annule")
    assert group.ticks(post) == ["✓ Pip · Maëlle"]
    await group.says("7:03", THEO, "everyone but Pip and Maple done")
    assert "✓ Quill · Theo" in group.ticks(post)
    assert not [label for label in group.ticks(post) if "Maple" in label]


async def test_an_edit_moves_the_tick(group: Living) -> None:
    """The wrong name, corrected in place."""
    await group.says("7:00", THEO, "Pip done")
    said = group.api.say(THEO, "Quill done")
    await group.settled()
    assert group.ticks(group.post()) == ["✓ Pip · Theo", "✓ Quill · Theo"]
    await group.edits("7:01", THEO, said, "Maple done")
    assert group.ticks(group.post()) == ["✓ Maple · Theo", "✓ Pip · Theo"]


async def test_words_tick_after_a_restart_and_nothing_is_edited_twice(
    api: LocalBotApi, tmp_path: Path, clock: Clock
) -> None:
    """The post's buttons are remembered with the barn's data."""
    async with living(api, tmp_path, clock) as group:
        await group.until("6:20")
        await group.says("7:00", THEO, "Pip done")
    async with living(api, tmp_path, clock) as group:
        await group.says("7:05", INES, "Maple lista")
        assert group.ticks(group.post()) == ["✓ Maple · Inés", "✓ Pip · Theo"]
    assert [method for method, _ in api.calls].count("editMessageReplyMarkup") == 2


async def test_still_wet_is_one_tap_and_why_is_another(group: Living) -> None:
    """The piece is wet from now on; the reason comes in the language of who asked."""
    post = group.post()
    await group.taps("7:00", INES, post, "still wet")
    assert group.day.state.garments["sparrow-medium"].state == "wet"
    assert [label for label in group.ticks(post) if label.endswith("still wet · Inés")]
    (why,) = in_group(await group.taps("7:01", INES, post, "Why"))
    assert "Maple, Clementine, Sparrow: manta 200 g" in why


async def test_one_reminder_before_the_window_is_half_an_hour_old(group: Living) -> None:
    """It names who is not said to be done, and comes once."""
    await group.says("7:10", THEO, "everyone but Pip and Quill done")
    said = in_group(await group.until("9:00"))
    assert [text for text in said if "Pip" in text] == ["Not yet said to be done: Pip and Quill."]


async def test_handover_tells_the_next_shift_what_stands(group: Living) -> None:
    """Who is done, who is not, what is wet, torn or gone; nothing is taken as done that nobody said."""
    await group.taps("7:02", MAELLE, group.post(), "Pip")
    (text,) = in_group(await group.says("11:00", RUTH, "handover"))
    assert text.startswith("Hand-over, 11 am")
    assert "Done: Pip." in text
    assert "still to do: Maple, " in text
    assert "Otter's rain sheet: strap broken" in text


async def test_the_names_of_those_who_change_stand_out(group: Living) -> None:
    """Bold, and nothing else of the list is; the words are the same as in a terminal."""
    sent = group.post().fields["text"]
    assert "CHANGE\n<b>Maple, Clementine, Sparrow:</b> 200 g turnout\n<b>Old Sorrel, Fennel:</b> rain sheet\n" in sent
    assert sent.count("<b>") == 6
    assert sent.replace("<b>", "").replace("</b>", "") == group.post().text
