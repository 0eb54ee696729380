"""The forecast watched through the day, and what it says into the group."""

from pathlib import Path

from tests.whole.living import INES, THEO, Clock, Living, in_group, living
from tests.whole.local_bot_api import LocalBotApi

HEAD = "The forecast has changed:"


async def test_a_worse_forecast_is_one_update_of_the_horses_it_moves(group: Living) -> None:
    """Once, whatever comes of the same weather later; horses it does not move are not in it."""
    group.clock.weather("worse.csv", "10:00")
    (update,) = [text for text in in_group(await group.until("10:10")) if text.startswith(HEAD)]
    assert "Maple" in update and "Tansy" in update
    assert "Birch" not in update and "Quill" not in update
    group.clock.weather("worse.csv", "12:00")
    assert not [text for text in in_group(await group.until("15:00")) if text.startswith(HEAD)]


async def test_the_same_forecast_fetched_again_says_nothing(group: Living) -> None:
    """Providers answer through the whole day; people are not to hear of each answer."""
    for hour in ("8:00", "9:00", "10:00"):
        group.clock.weather("morning.csv", hour)
        assert not [text for text in in_group(await group.until(hour)) if text.startswith(HEAD)]


async def test_an_update_is_not_repeated_by_a_restart(api: LocalBotApi, tmp_path: Path, clock: Clock) -> None:
    """What people were told is remembered with the barn's data."""
    for until in ("10:10", "11:00"):
        async with living(api, tmp_path, clock) as group:
            await group.until("6:20")
            if until == "10:10":
                clock.weather("worse.csv", "10:00")
            await group.until(until)
    assert len([text for text in api.texts() if text.startswith(HEAD)]) == 1


async def test_a_report_that_changes_the_plan_is_answered_with_the_change(group: Living) -> None:
    """One line under the report itself; a report that changes nothing gets a thumb."""
    await group.until("7:04")
    number = group.api.say(THEO, "Juniper liner wet")
    await group.settled()
    change = group.api.sent[-1]
    assert change.text == "Juniper: down to 300 g turnout now."
    assert f'"message_id": {number}' in change.fields["reply_parameters"]
    (nod,) = await group.says("7:10", THEO, "Birch ok")
    assert (nod.method, nod.text) == ("setMessageReaction", "👍")


async def test_a_horse_that_a_change_dresses_anew_loses_its_tick(group: Living) -> None:
    """A tick that stayed would say that it is dressed; who need not change keeps theirs."""
    await group.says("7:10", THEO, "all done")
    before = group.ticks(group.post())
    said = in_group(await group.says("7:15", THEO, "Quill rubbed"))
    assert said[-1] == "Quill: down to rain sheet now."
    assert "✓ Quill · Theo" in before
    assert group.ticks(group.post()) == [label for label in before if "Quill" not in label]
    await group.taps("7:20", INES, group.post(), "Quill")
    assert "✓ Quill · Inés" in group.ticks(group.post())
