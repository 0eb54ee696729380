"""A horse in need, over real HTTP: advice at once, a second look, who is called when nobody answers."""

from pathlib import Path

from tests.whole.living import INES, MAELLE, PRIYA, THEO, Clock, Living, in_group, living, to
from tests.whole.local_bot_api import GROUP, Fault, LocalBotApi

LOOK = "Pip was shivering. How is it now?"


async def test_shivering_gets_advice_at_once_in_the_speakers_language(group: Living) -> None:
    """What to do, when to look again, when to call whom; and one line for everybody else."""
    (text,) = in_group(await group.says("8:00", MAELLE, "Pip tremble"))
    assert text.startswith("Pip tremble. Tout de suite")
    assert "08:30" in text
    assert "vétérinaire" in text
    assert text.splitlines()[-1] == "Pip is shivering: Maëlle has been told what to do."
    assert group.api.sent[-1].fields["text"].startswith("<b>Pip tremble. Tout de suite :</b>\n1. ")


async def test_a_second_look_nobody_answers_calls_the_manager_then_the_owner(group: Living) -> None:
    """In the group by a mention that rings the phone, and privately; then it rests."""
    await group.says("8:00", INES, "Pip shivering")
    (asked,) = in_group(await group.until("8:30"))
    assert asked.startswith(LOOK)
    first = await group.until("8:45")
    assert (
        f'<b><a href="tg://user?id={THEO}">Theo</a></b>: nobody' in next(s for s in first if s.chat < 0).fields["text"]
    )
    assert [text.split(".")[0] for text in to(THEO, first)] == ["Theo: nobody has answered about Pip (shivering)"]
    second = await group.until("9:00")
    assert f'<a href="tg://user?id={PRIYA}">Priya</a>' in next(s for s in second if s.chat < 0).fields["text"]
    assert len(to(PRIYA, second)) == 1
    assert [s for s in await group.until("11:00") if "Pip" in s.text] == []


async def test_a_reply_to_the_second_look_ends_it(group: Living) -> None:
    """Two words under the question; nobody is called."""
    await group.says("8:00", INES, "Pip shivering")
    await group.until("8:30")
    asked = next(s for s in group.api.sent if s.text.startswith(LOOK))
    await group.says("8:40", THEO, "better now", reply_to=asked.message_id)
    assert not [s for s in await group.until("9:30") if "nobody has answered" in s.text]


async def test_a_second_look_outlives_a_restart_of_the_whole_bot(
    api: LocalBotApi, tmp_path: Path, clock: Clock
) -> None:
    """Stopped in between, it asks when it is up again, and goes on to the manager; each once."""
    async with living(api, tmp_path, clock) as group:
        await group.until("6:20")
        await group.says("8:00", INES, "Pip shivering")
    clock.now = clock.at("8:25")
    async with living(api, tmp_path, clock) as group:
        assert in_group(await group.until("8:30"))[0].startswith(LOOK)
    async with living(api, tmp_path, clock) as group:
        assert to(THEO, await group.until("8:50"))
    assert len([text for text in api.texts() if text.startswith(LOOK)]) == 1
    assert len([text for text in api.texts(THEO) if "nobody has answered" in text]) == 1


async def test_an_alarm_breaks_the_quiet_of_the_night_and_a_forecast_does_not(group: Living) -> None:
    """Only a horse in need may ring at ten past ten."""
    await group.until("21:35")
    group.clock.weather("worse.csv", "22:00")
    await group.says("22:00", INES, "Pip shivering")
    said = in_group(await group.until("22:40"))
    assert [text[: len(LOOK)] for text in said] == [LOOK]


async def test_sweating_is_off_or_lighter_at_once(group: Living) -> None:
    """In one line, with what it wears; the hand is laid on again in half an hour."""
    await group.says("7:10", THEO, "Maple done")
    said = in_group(await group.says("9:00", THEO, "Maple sweaty"))
    assert said[0].startswith("Maple: sweating noted")
    assert "dry" in said[0]


async def test_no_alarm_is_lost_to_markup(group: Living) -> None:
    """A server that cannot read the text's bold letters gets it without."""
    group.api.fail("sendMessage", Fault(400, 'Bad Request: can\'t parse entities: Unsupported start tag "b"'))
    (alarm,) = [s for s in await group.says("8:00", THEO, "Pip shivering") if s.method == "sendMessage"]
    assert alarm.text.startswith("Pip is shivering. Now:")
    assert "parse_mode" not in alarm.fields


async def test_an_alarm_from_a_group_that_is_gone_goes_to_the_manager(group: Living) -> None:
    """Kicked without a word; the horse still shivers."""
    group.api.kicked.add(GROUP)
    said = to(THEO, await group.says("8:00", INES, "Pip shivering"))
    assert any("Pip" in text for text in said)


async def test_a_wet_horse_is_not_said_to_shiver_already(group: Living) -> None:
    """The words for the veterinarian fit what was seen."""
    (text,) = in_group(await group.says("8:00", THEO, "Tansy wet"))
    assert "Call your veterinarian now if it shivers for half an hour, or with any of:" in text
