"""How people talk in a group, with the barn's own day: photos, corrections, replies, several at once.

Also the group itself: privacy mode, topics, a move to a supergroup, being thrown out, names that look like markup.
"""

from pathlib import Path
from typing import Any

import pytest

from bot.barn import Barn, load
from bot.chat.joining import COMMANDS
from tests.whole.living import INES, MAELLE, PRIYA, RUTH, THEO, Clock, Living, in_group, living, to
from tests.whole.local_bot_api import GROUP, LocalBotApi


def own_place(api: LocalBotApi, was: str, now: str, chat: int = GROUP) -> dict[str, Any]:
    """The bot's own place in a chat changes, by Theo's hand."""
    found = {"chat": api.chat(chat), "from": api.person(THEO), "date": 0}
    return found | {"old_chat_member": {"status": was}, "new_chat_member": {"status": now}}


async def test_a_photos_caption_is_a_report(group: Living) -> None:
    """The strap held up to the camera, three words under it; a picture without words is left alone."""
    group.api.say(INES, "", photo=[{"file_id": "x"}])
    group.api.say(INES, "", photo=[{"file_id": "x"}], caption="Maple liner soaked")
    await group.settled()
    assert group.day.state.garments["maple-liner"].state == "soaked"
    assert len([e for e in group.day.ledger.entries() if e.who == "Inés"]) == 1


async def test_a_corrected_caption_counts_instead(group: Living) -> None:
    """An edited caption is an edited message."""
    number = group.api.say(INES, "", photo=[{"file_id": "x"}], caption="Maple liner soaked")
    await group.settled()
    edited = group.api.message(INES, "", GROUP, number) | {"caption": "Juniper liner soaked", "photo": []}
    group.api.update(edited_message=edited)
    await group.settled()
    states = group.day.state.garments
    assert (states["maple-liner"].state, states["juniper-liner"].state) == ("dry", "soaked")


async def test_an_edit_takes_back_what_it_corrects(group: Living) -> None:
    """The wrong name, seen and mended in place: one report stands."""
    number = group.api.say(THEO, "Maple shivering")
    await group.settled()
    await group.edits("8:01", THEO, number, "Pip shivering")
    signs = [e.event.horse for e in group.day.ledger.entries() if e.event.kind == "sign" and e.undone_by is None]
    assert signs == ["Pip"]
    assert [horse for horse, _ in group.day.state.rechecks()] == ["Pip"]


async def test_a_chain_of_replies_keeps_to_its_horse(group: Living) -> None:
    """Question under the post, question under the answer: each is answered where it was asked."""
    await group.says("8:00", THEO, "why the turnout for Maple?")
    first = group.api.sent[-1]
    assert first.text.startswith("Maple")
    await group.says("8:01", INES, "shivering", reply_to=first.message_id)
    alarm = next(s for s in group.api.sent if s.text.startswith("Maple tiembla."))
    await group.says("8:20", THEO, "comfortable now", reply_to=alarm.message_id)
    assert list(group.day.state.rechecks()) == []


async def test_an_unclear_name_is_asked_about_with_buttons_and_one_tap_settles_it(group: Living) -> None:
    """No horse is ever guessed; who tapped is on the button."""
    (asked,) = [s for s in await group.says("8:00", THEO, "Birth shivering") if s.method == "sendMessage"]
    assert group.day.ledger.entries()[-1].event.kind != "sign"
    label = group.buttons(asked)[0]["text"]
    await group.taps("8:01", THEO, asked, label)
    assert group.day.state.rechecks()
    assert [b["text"] for b in group.buttons(asked)] == [f"✓ {label} · Theo"]


async def test_three_people_at_once_are_each_answered_under_their_own_words(group: Living) -> None:
    """In their own language; nobody's report is lost in another's."""
    numbers = {
        who: group.api.say(who, text)
        for who, text in ((THEO, "how is Maple?"), (INES, "¿cómo está Pip?"), (MAELLE, "comment va Quill ?"))
    }
    await group.settled()
    answers = [s for s in group.api.sent if s.fields.get("reply_parameters")]
    hung = {s.fields["reply_parameters"]: s.text for s in answers}
    assert len(answers) == 3
    for number, horse in zip(numbers.values(), ("Maple", "Pip", "Quill"), strict=True):
        (text,) = [text for where, text in hung.items() if f'"message_id": {number}' in where]
        assert horse in text


@pytest.mark.parametrize("privacy", [True, False])
async def test_on_joining_it_says_what_it_sees_and_shows_a_first_post(
    tmp_path: Path, clock: Clock, *, privacy: bool
) -> None:
    """With privacy mode on: how to be heard; either way the list as it is, so that people see what they will get."""
    async with LocalBotApi(privacy=privacy) as api, living(api, tmp_path, clock) as group:
        api.update(my_chat_member=own_place(api, "left", "member"))
        await group.settled()
        hello = next(text for text in in_group(api.sent) if "Windrow Farm" in text)
        assert ("only replies" in hello) == privacy
        shown = in_group(api.sent)[-1]
        assert "CHANGE\nMaple, Clementine, Sparrow: 200 g turnout" in shown
        assert not group.day.state.posted


async def test_with_privacy_mode_on_replies_taps_and_commands_run_the_whole_round(tmp_path: Path, clock: Clock) -> None:
    """What is not meant for the bot never reaches it; the round works all the same."""
    async with LocalBotApi(privacy=True) as api, living(api, tmp_path, clock) as group:
        await group.until("6:20")
        await group.says("7:00", THEO, "Quill done")
        assert group.ticks(group.post()) == []
        await group.says("7:01", THEO, "Maple done", reply_to=group.post().message_id)
        await group.taps("7:02", INES, group.post(), "Pip")
        assert group.ticks(group.post()) == ["✓ Maple · Theo", "✓ Pip · Inés"]
        (left,) = in_group(await group.says("7:03", THEO, "/left"))
        assert "Quill" in left


async def test_the_round_goes_on_in_the_supergroup_the_group_became(group: Living) -> None:
    """People tap and talk there; the next list is posted there; nothing more goes to the old place."""
    new = -1002222222222
    before = len(group.api.sent)
    group.api.gone[GROUP] = new
    group.api.update(message=group.api.message(THEO, "", GROUP, 999) | {"migrate_to_chat_id": new})
    await group.says("7:30", THEO, "all done", chat=new)  # the old list stays in the old place, unticked
    await group.says("8:00", THEO, "Pip shivering", chat=new)
    await group.until("16:00")
    assert {s.chat for s in group.api.sent[before:] if s.chat < 0} == {new}
    assert group.post().chat == new
    await group.taps("16:35", INES, group.post(), "All done")
    assert group.ticks(group.post())


async def test_in_a_forum_posts_and_second_looks_stand_in_the_topic_that_was_named(group: Living) -> None:
    """One word settles where; an answer stays where it was asked."""
    await group.says("7:00", THEO, "/here", message_thread_id=7, is_topic_message=True)
    before = len(group.api.sent)
    await group.says("8:00", INES, "Pip tiembla", message_thread_id=9, is_topic_message=True)
    await group.until("16:00")
    threads = {s.text[:3]: s.fields.get("message_thread_id") for s in group.api.sent[before:] if s.chat == GROUP}
    alarm = next(s for s in group.api.sent[before:] if s.text.startswith("Pip tiembla"))
    assert alarm.fields["message_thread_id"] == "9"
    assert (threads["Pip"], threads["Win"]) == ("7", "7")


async def test_thrown_out_it_tells_the_manager_and_comes_back_when_added(group: Living) -> None:
    """No list into the void; alarms go to the manager meanwhile."""
    group.api.update(my_chat_member=own_place(group.api, "member", "kicked"))
    await group.settled()
    assert any("removed" in text for text in group.api.texts(THEO))
    before = len(group.api.sent)
    said = await group.says("8:00", INES, "Pip shivering", chat=INES)
    assert to(INES, said)
    await group.until("8:50")
    assert {s.chat for s in group.api.sent[before:]} == {THEO, INES}
    group.api.update(my_chat_member=own_place(group.api, "left", "member"))
    await group.settled()
    assert "Windrow Farm" in in_group(group.api.sent)[-2]


async def test_names_that_look_like_markup_are_shown_as_written(
    api: LocalBotApi, tmp_path: Path, clock: Clock, barn: Barn
) -> None:
    """In the post, on its buttons, in an alarm, in the names of people."""
    text = Path("demo_barn.yaml").read_text(encoding="utf-8")
    nasty = tmp_path / "nasty.yaml"
    renamed = text.replace("name: Quill", 'name: "<b>Bo</b>"').replace("horse: Quill", 'horse: "<b>Bo</b>"')
    renamed = renamed.replace("name: Fennel", 'name: "a<b"').replace("horse: Fennel", 'horse: "a<b"')
    renamed = renamed.replace("name: Otter", 'name: "&amp; 🐴"').replace("horse: Otter", 'horse: "&amp; 🐴"')
    nasty.write_text(renamed.replace("barn: Windrow Farm", "barn: <i>Windrow</i> & Sons"), encoding="utf-8")
    clock.barn = load(nasty)
    async with living(api, tmp_path, clock) as group:
        await group.until("6:20")
        post = group.post()
        for name in ("<b>Bo</b>", "a<b", "&amp; 🐴", "<i>Windrow</i> & Sons"):
            assert name in post.text
            assert post.fields["parse_mode"] == "HTML"
        assert {"<b>Bo</b>", "a<b", "&amp; 🐴"} <= {b["text"] for b in group.buttons(post)}
        await group.taps("7:00", RUTH, post, "<b>Bo</b>")
        (alarm,) = in_group(await group.says("8:00", THEO, "a<b shivering"))
        assert alarm.startswith("a<b is shivering.")


async def test_knowledge_and_a_picture_on_request(group: Living) -> None:
    """Marked as what it is; the picture of one horse comes as a photo under its name."""
    (straps,) = in_group(await group.says("7:20", THEO, "which strap first?"))
    assert "Common practice, no study. Local rules and your veterinarian come first." in straps
    picture = await group.says("7:21", RUTH, "picture of Maple")
    assert [(s.method, s.text) for s in picture] == [("sendMessage", "Maple"), ("sendPhoto", "")]


async def test_each_reads_their_own_language_and_units(group: Living) -> None:
    """One forecast, asked for by three people of one barn."""
    asked = (
        (THEO, "forecast", "39°F at noon"),
        (PRIYA, "forecast", "4 °C at 12:00"),
        (MAELLE, "météo ?", "4 °C à 12:00"),
    )
    for who, text, told in asked:
        (answer,) = in_group(await group.says("7:20", who, text))
        assert told in answer


MENU = {
    "/today": "Morning (7 am to 4:30 pm)\nMaple, ",
    "/left": "Morning, still to do: Maple, ",
    "/done": "Morning, still to do: Maple, ",
    "/drying@haybell_test_bot": "Pip's 100 g turnout: torn",
    "/why": "37°F, up to 39°F at noon",
    "/help": "Tell me what you see",
    "/undo": "There is nothing of yours to take back.",
}


async def test_every_command_of_the_menu_is_answered(group: Living) -> None:
    """The menu sends a bare word at a touch; by such a slip of the thumb nobody is done."""
    assert {command.partition("@")[0][1:] for command in MENU} == set(COMMANDS)
    for command, begins in MENU.items():
        (answer,) = in_group(await group.says("7:20", THEO, command))
        assert answer.startswith(begins), command
    assert group.day.state.standing.done == frozenset()
