"""The group in Telegram over real HTTP: who is heard, where answers go, what never happens."""

import json
import re
from pathlib import Path

import pytest

from bot.chat import rooms
from bot.message import Outgoing
from tests.whole.conftest import Serving
from tests.whole.local_bot_api import GROUP, Fault, LocalBotApi
from tests.whole.stand_in import a_barn

THEO, INES, RUTH, STRANGER = 1001, 1002, 1003, 9


@pytest.fixture(autouse=True)
def no_settling(monkeypatch: pytest.MonkeyPatch) -> None:
    """The stand-in's posts would come between: its clock stands still here."""
    monkeypatch.setattr(rooms, "SETTLE_S", 1e6)
    monkeypatch.setattr(rooms, "SETTLE_LATEST_S", 1e6)


async def test_an_answer_hangs_on_the_message_it_answers(api: LocalBotApi, serving: Serving, tmp_path: Path) -> None:
    """In a busy group it must be seen which report was taken."""
    async with serving(api, tmp_path, a_barn()):
        number = api.say(INES, "Maple sweaty")
        await api.until(lambda: api.texts() == ["noted Maple sweaty"])
        assert json.loads(api.sent[0].fields["reply_parameters"])["message_id"] == number


async def test_a_plain_report_gets_a_reaction(api: LocalBotApi, serving: Serving, tmp_path: Path) -> None:
    """No line where a thumb is enough."""
    async with serving(api, tmp_path, a_barn()):
        api.say(INES, "react")
        await api.until(lambda: api.sent)
        assert (api.sent[0].method, api.sent[0].text) == ("setMessageReaction", "👍")


async def test_a_server_without_reactions_gets_a_short_answer(serving: Serving, tmp_path: Path) -> None:
    """A method that is not there must never cost a report its answer; it is asked for once."""
    async with LocalBotApi(only={"getMe", "getUpdates", "sendMessage", "sendPhoto"}) as api:
        async with serving(api, tmp_path, a_barn()):
            api.say(INES, "react 1")
            api.say(INES, "react 2")
            await api.until(lambda: api.texts() == ["👍", "👍"])
        assert [method for method, _ in api.calls].count("setMessageReaction") == 1


async def test_a_tap_is_acknowledged_and_heard(api: LocalBotApi, serving: Serving, tmp_path: Path) -> None:
    """Two people's taps on one post are two reports."""
    async with serving(api, tmp_path, a_barn()) as telegram:
        telegram.rooms[0].mailbox.put(Outgoing("post", "post"), telegram.pulse.started)
        telegram.poke(telegram.rooms[0].served)
        await api.until(lambda: api.texts() == ["post"])
        for who in (THEO, INES):
            api.tap(who, api.sent[0].message_id, "done")
        await api.until(lambda: api.texts() == ["post", "noted done", "noted done"])
        assert [method for method, _ in api.calls].count("answerCallbackQuery") == 2


async def test_a_photo_s_caption_is_a_report(api: LocalBotApi, serving: Serving, tmp_path: Path) -> None:
    """A picture of the strap with three words under it; a picture without words is nothing."""
    async with serving(api, tmp_path, a_barn()):
        photo = api.message(INES, "", GROUP, 50) | {"photo": [{"file_id": "x"}]}
        api.update(message=photo | {"message_id": 51})
        api.update(message=photo | {"caption": "strap broken"})
        await api.until(lambda: api.texts() == ["noted strap broken"])


async def test_a_command_is_plain_words(api: LocalBotApi, serving: Serving, tmp_path: Path) -> None:
    """With privacy mode on people write commands."""
    async with serving(api, tmp_path, a_barn()):
        api.say(INES, "/done@haybell_test_bot Maple")
        await api.until(lambda: api.texts() == ["noted done Maple"])


async def test_a_private_message_is_answered_privately(api: LocalBotApi, serving: Serving, tmp_path: Path) -> None:
    """An owner's question need not be the group's."""
    async with serving(api, tmp_path, a_barn()):
        api.say(RUTH, "how is Maple", chat=RUTH)
        await api.until(lambda: api.texts(RUTH) == ["noted how is Maple"])
        assert api.texts(GROUP) == []


async def test_without_a_group_people_are_answered_privately(
    api: LocalBotApi, serving: Serving, tmp_path: Path
) -> None:
    """A barn may be tried out alone; what concerns all goes to each."""
    async with serving(api, tmp_path, a_barn(chat=None)) as telegram:
        api.say(RUTH, "hello", chat=RUTH)
        await api.until(lambda: api.texts(RUTH) == ["noted hello"])
        telegram.rooms[0].mailbox.put(Outgoing("post", "post"), telegram.pulse.started)
        telegram.poke(telegram.rooms[0].served)
        await api.until(lambda: [s.chat for s in api.sent if s.text == "post"] == [THEO, INES, RUTH])


async def test_somebody_who_takes_no_messages_costs_the_others_none(
    api: LocalBotApi, serving: Serving, tmp_path: Path
) -> None:
    """A bot may write only to who has written to it."""
    api.kicked.add(INES)
    async with serving(api, tmp_path, a_barn(chat=None)) as telegram:
        telegram.rooms[0].mailbox.put(Outgoing("post", "post"), telegram.pulse.started)
        telegram.poke(telegram.rooms[0].served)
        await api.until(lambda: [s.chat for s in api.sent] == [THEO, RUTH])


async def test_strangers_get_one_polite_line_that_names_no_horse(
    api: LocalBotApi, serving: Serving, tmp_path: Path
) -> None:
    """In whatever group, privately, and after a restart: one; the strange group is left."""
    for _ in range(2):
        async with serving(api, tmp_path, a_barn()):
            api.say(STRANGER, "hi", chat=-77)
            api.say(STRANGER, "hello?", chat=-77)
            api.say(STRANGER, "hi", chat=STRANGER)
            api.say(INES, "there")
            await api.until(lambda: "noted there" in api.texts(GROUP))
    assert len(api.texts(-77)) == 1
    assert len(api.texts(STRANGER)) == 1
    assert not any("Maple" in text for text in api.texts(-77) + api.texts(STRANGER))
    assert ("leaveChat", {"chat_id": "-77"}) in api.calls


async def test_barns_are_strictly_apart(api: LocalBotApi, serving: Serving, tmp_path: Path) -> None:
    """One bot, two groups: what is said in one is recorded and answered there alone."""
    north, south = a_barn("North", -1, 100), a_barn("South", -2, 200)
    async with serving(api, tmp_path, north, south) as telegram:
        api.say(100, "from north", chat=-1)
        api.say(200, "from south", chat=-2)
        api.say(201, "privately", chat=201)
        await api.until(lambda: len(api.texts()) == 3)
        assert api.texts(-1) == ["noted from north"]
        assert api.texts(-2) == ["noted from south"]
        assert api.texts(201) == ["noted privately"]
        kept = [[e.text for e in room.served.day.ledger.entries()] for room in telegram.rooms]  # type: ignore[attr-defined]
        assert kept == [["from north"], ["from south", "privately"]]


async def test_somebody_of_two_barns_is_asked_to_write_in_a_group(
    api: LocalBotApi, serving: Serving, tmp_path: Path
) -> None:
    """The wrong barn's Maple must not be undressed; a reply to a barn's own message is clear."""
    async with serving(api, tmp_path, a_barn("North", -1, 100), a_barn("South", -2, 100)) as telegram:
        api.say(100, "Maple bare", chat=100)
        await api.until(lambda: api.texts(100))
        assert "several barns" in api.texts(100)[0]
        telegram.rooms[1].mailbox.put(Outgoing("answer", "weekly", to="Theo"), telegram.pulse.started)
        telegram.poke(telegram.rooms[1].served)
        await api.until(lambda: "weekly" in api.texts(100))
        api.say(100, "thanks", chat=100, reply_to=api.sent[-1].message_id)
        await api.until(lambda: api.texts(100)[-1] == "noted thanks")
        kept = [[e.text for e in room.served.day.ledger.entries()] for room in telegram.rooms]  # type: ignore[attr-defined]
        assert kept == [[], ["thanks"]]


async def test_one_barn_s_fault_does_not_stop_another(api: LocalBotApi, serving: Serving, tmp_path: Path) -> None:
    """A message that breaks something is set aside, said to be so, and everybody else is answered."""
    async with serving(api, tmp_path, a_barn("North", -1, 100), a_barn("South", -2, 200)) as telegram:
        api.say(100, "spoil this", chat=-1)
        api.say(200, "Maple wet", chat=-2)
        api.say(100, "Maple dry", chat=-1)
        await api.until(lambda: len(api.texts()) == 3)
        assert api.texts(-2) == ["noted Maple wet"]
        assert api.texts(-1)[1] == "noted Maple dry"
        assert "could not take in" in api.texts(-1)[0]
        assert telegram.rooms[0].mailbox.queues().quarantined == 1


async def test_a_group_that_becomes_a_supergroup_is_followed(
    api: LocalBotApi, serving: Serving, tmp_path: Path
) -> None:
    """By the service message, and after a restart too."""
    new = -1009999
    async with serving(api, tmp_path, a_barn(chat=-5)):
        api.update(message=api.message(THEO, "", -5, 1) | {"migrate_to_chat_id": new})
        api.say(THEO, "here", chat=new)
        await api.until(lambda: api.texts(new) == ["noted here"])
    async with serving(api, tmp_path, a_barn(chat=-5)):
        api.say(THEO, "again", chat=new)
        await api.until(lambda: api.texts(new) == ["noted here", "noted again"])


async def test_a_move_learned_from_a_refused_sending_is_followed(
    api: LocalBotApi, serving: Serving, tmp_path: Path
) -> None:
    """The service message may never come; nothing is lost by that."""
    api.gone[-5] = -6
    async with serving(api, tmp_path, a_barn(chat=-5)):
        api.say(THEO, "one", chat=-5)
        await api.until(lambda: api.texts(-6) == ["noted one"])


async def test_being_removed_is_told_to_the_manager_and_alarms_go_there(
    api: LocalBotApi, serving: Serving, tmp_path: Path
) -> None:
    """The group is gone, the horses are not."""
    async with serving(api, tmp_path, a_barn()) as telegram:
        api.update(my_chat_member=member(api, "member", "kicked"))
        await api.until(lambda: any("removed" in text for text in api.texts(THEO)))
        telegram.rooms[0].mailbox.put(Outgoing("alert", "shivering", urgent=True), telegram.pulse.started)
        telegram.poke(telegram.rooms[0].served)
        await api.until(lambda: "shivering" in api.texts(THEO))
        assert api.texts(GROUP) == []


async def test_an_alarm_that_a_chat_refuses_goes_to_the_manager(
    api: LocalBotApi, serving: Serving, tmp_path: Path
) -> None:
    """Kicked without notice, or a person who never started a chat with the bot."""
    api.kicked.add(GROUP)
    async with serving(api, tmp_path, a_barn()) as telegram:
        telegram.rooms[0].mailbox.put(Outgoing("alert", "shivering", urgent=True), telegram.pulse.started)
        telegram.poke(telegram.rooms[0].served)
        await api.until(lambda: api.texts(THEO) == ["shivering"])


@pytest.mark.parametrize(("privacy", "says"), [(True, "I see only replies"), (False, "I can read the group")])
async def test_on_joining_it_says_what_it_sees(
    serving: Serving,
    tmp_path: Path,
    privacy: bool,
    says: str,
) -> None:
    """In privacy mode a plain word reaches nobody, and nothing would tell people why. The list: test_group_talk.py."""
    async with LocalBotApi(privacy=privacy) as api:
        api.member = "left"
        async with serving(api, tmp_path, a_barn()):
            api.update(my_chat_member=member(api, "left", "member"))
            await api.until(lambda: api.texts(GROUP))
            assert says in api.texts(GROUP)[0]
            assert "Windrow Farm" in api.texts(GROUP)[0]


async def test_in_privacy_mode_replies_and_commands_are_enough(serving: Serving, tmp_path: Path) -> None:
    """T10: the bot says so by itself at its first start, and works."""
    async with LocalBotApi(privacy=True) as api, serving(api, tmp_path, a_barn()):
        await api.until(lambda: api.texts(GROUP))
        assert "I see only replies" in api.texts(GROUP)[0]
        api.say(INES, "nobody hears this")
        api.say(INES, "all done", reply_to=api.sent[0].message_id)
        api.say(INES, "/left")
        await api.until(lambda: api.texts(GROUP)[1:] == ["noted all done", "noted left"])


async def test_topics_answers_stay_in_theirs(api: LocalBotApi, serving: Serving, tmp_path: Path) -> None:
    """The general topic has a number that must not be used."""
    async with serving(api, tmp_path, a_barn()):
        api.say(INES, "in stable", message_thread_id=7, is_topic_message=True)
        api.say(INES, "in general", message_thread_id=1, is_topic_message=True)
        api.say(INES, "a thread that is no topic", message_thread_id=9)
        await api.until(lambda: len(api.texts()) == 3)
        assert [s.fields.get("message_thread_id") for s in api.sent] == ["7", None, None]


async def test_posts_go_to_the_topic_where_somebody_said_here(
    api: LocalBotApi, serving: Serving, tmp_path: Path
) -> None:
    """One word settles where the list appears."""
    async with serving(api, tmp_path, a_barn()) as telegram:
        api.say(INES, "/here", message_thread_id=7, is_topic_message=True)
        await api.until(lambda: api.texts())
        telegram.rooms[0].mailbox.put(Outgoing("post", "post"), telegram.pulse.started)
        telegram.poke(telegram.rooms[0].served)
        await api.until(lambda: len(api.texts()) == 2)
        assert api.sent[1].fields["message_thread_id"] == "7"


async def test_a_long_post_is_cut_between_lines(api: LocalBotApi, serving: Serving, tmp_path: Path) -> None:
    """Buttons under the last piece, the picture after it, nothing lost."""
    lines = [f"{number} " + "🐴" * 40 for number in range(100)]
    async with serving(api, tmp_path, a_barn()) as telegram:
        telegram.rooms[0].mailbox.put(
            Outgoing("post", "\n".join(lines), picture=b"\x89PNG", pin=True), telegram.pulse.started
        )
        telegram.poke(telegram.rooms[0].served)
        await api.until(lambda: any(s.method == "sendPhoto" for s in api.sent))
        assert len(api.texts()) > 1
        assert "\n".join(api.texts()).split("\n") == lines
        await api.until(lambda: any(method == "pinChatMessage" for method, _ in api.calls))


async def test_names_are_never_markup(api: LocalBotApi, serving: Serving, tmp_path: Path) -> None:
    """A horse named <b>Bo</b> is shown so, and so is a nastier one."""
    name = "<b>Bo</b> a<b &amp; [x](tg://user?id=1) _*`"
    async with serving(api, tmp_path, a_barn()):
        api.say(INES, name)
        await api.until(lambda: api.texts() == [f"noted {name}"])
        assert api.sent[0].fields["text"].startswith("noted &lt;b&gt;Bo&lt;/b&gt; a&lt;b &amp;amp; ")


async def test_posts_are_pinned_in_turn_and_a_refusal_is_borne(
    api: LocalBotApi, serving: Serving, tmp_path: Path
) -> None:
    """Silently; the last one is unpinned; without the right it goes on unpinned."""
    async with serving(api, tmp_path, a_barn()) as telegram:
        api.fail("pinChatMessage", Fault(400, "Bad Request: not enough rights to manage pinned messages"))
        for number in range(3):
            telegram.rooms[0].mailbox.put(Outgoing("post", f"{number}", pin=True), telegram.pulse.started)
            telegram.poke(telegram.rooms[0].served)
            await api.until(lambda number=number: len([m for m, _ in api.calls if m == "pinChatMessage"]) > number)
        await api.until(lambda: "unpinChatMessage" in [m for m, _ in api.calls])
        pins = [data for method, data in api.calls if method == "pinChatMessage"]
        assert all(data["disable_notification"] == "true" for data in pins)
        (unpinned,) = [data["message_id"] for method, data in api.calls if method == "unpinChatMessage"]
        assert int(unpinned) == api.sent[1].message_id


async def test_the_token_is_in_no_log(
    api: LocalBotApi, serving: Serving, tmp_path: Path, capfd: pytest.CaptureFixture[str]
) -> None:
    """T6: the HTTP library writes every address at its second level; ours holds the token."""
    import logging

    from bot import logs
    from tests.whole.local_bot_api import TOKEN

    before = logging.root.handlers[:]
    logs.begin(TOKEN)
    try:
        logging.getLogger("httpx").info("POST http://127.0.0.1/bot%s/getMe", TOKEN)
        logging.getLogger("bot").warning("GET https://example.org/bot%s/getMe failed", TOKEN)
        async with serving(api, tmp_path, a_barn()):
            api.fail("sendMessage", Fault(500, "boom"))
            api.say(INES, "spoil\nERROR forged line")
            await api.until(lambda: api.texts())
    finally:
        logging.root.handlers = before
        logging.captureWarnings(capture=False)
    said = capfd.readouterr().err
    assert said.count("\n") >= 2
    assert TOKEN not in said
    assert "Traceback" not in said
    assert all(re.match(r"\d{4}-\d\d-\d\d ", line) for line in said.splitlines())


def member(api: LocalBotApi, was: str, now: str, chat: int = GROUP) -> dict[str, object]:
    """The bot's own place in a chat changes, by Theo's hand."""
    return {
        "chat": api.chat(chat),
        "from": api.person(THEO),
        "date": 0,
        "old_chat_member": {"status": was},
        "new_chat_member": {"status": now},
    }
