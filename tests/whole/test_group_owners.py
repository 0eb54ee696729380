"""Owners and the manager: wishes, the weekly note, the barn's list changed by message."""

from pathlib import Path

from bot.barn import demo_path, load
from bot.export import export
from tests.whole.living import INES, PRIYA, RUTH, THEO, WALT, Clock, Living, in_group, living, to
from tests.whole.local_bot_api import GROUP, LocalBotApi


async def test_an_owners_wish_told_privately_is_answered_privately(group: Living) -> None:
    """It counts for the plan; the group need not hear of it."""
    said = await group.says("10:45", RUTH, "keep Maple bare", chat=RUTH)
    assert group.day.state.horses["Maple"].keep_bare
    assert in_group(said) == []
    assert to(RUTH, said)[-1].startswith("Maple: bare")


async def test_a_clip_told_in_the_group_counts_and_another_owners_horse_is_refused(group: Living) -> None:
    """Own horses only; the refusal says who may."""
    await group.says("9:10", RUTH, "Maple clipped full")
    assert group.day.state.horses["Maple"].clip == "full"
    refusal = in_group(await group.says("9:12", WALT, "Maple clipped trace"))[-1]
    assert "manager" in refusal
    assert group.day.state.horses["Maple"].clip == "full"


async def test_the_weekly_note_goes_to_each_owner_privately_with_a_picture_once(
    api: LocalBotApi, tmp_path: Path, clock: Clock
) -> None:
    """Sunday at six: what was seen of their own horses, and no other's; not again after a restart."""
    async with living(api, tmp_path, clock) as group:
        await group.until("6:20")
        await group.says("8:40", INES, "Maple suda")
        clock.now = clock.at("29 17:55")
        sunday = await group.until("29 18:05")
    clock.now = clock.at("29 18:10")
    async with living(api, tmp_path, clock) as group:
        again = await group.until("29 18:30")
    notes = [s for s in sunday if s.chat in (RUTH, WALT, PRIYA)]
    (ruths,) = [s.text for s in notes if s.chat == RUTH and s.method == "sendMessage" and "\n" in s.text]
    assert "sweating" in ruths
    assert "Otter" not in ruths
    assert {s.chat for s in notes if s.method == "sendPhoto"} == {RUTH, WALT, PRIYA}
    assert not [s for s in sunday if s.chat == GROUP and "Your horses" in s.text]
    assert not [s for s in again if s.chat > 0]


async def test_a_new_horse_is_shown_then_written_at_a_yes_and_exported(group: Living, tmp_path: Path) -> None:
    """Nothing is written before the yes; the export is a barn file that has it."""
    (shown,) = await group.says("10:30", THEO, "new horse: Friday, 75 in, born 2015")
    assert "+ horses: {name: Friday, size_in: 75, born: 2015}" in shown.text
    assert "Friday" not in group.day.state.horses
    await group.taps("10:31", THEO, shown, group.buttons(shown)[0]["text"])
    assert "Friday" in group.day.state.horses
    path = tmp_path / "barn.yaml"
    path.write_text(export(demo_path(), group.clock.barn, group.day.state, group.day.barn), encoding="utf-8")
    assert load(path).horse("Friday").born
    await group.until("16:00")
    assert "Friday" in group.post().text


async def test_what_is_not_the_managers_yes_writes_nothing(group: Living) -> None:
    """Somebody else's thumb on the button, or a no."""
    (shown,) = await group.says("10:30", THEO, "new horse: Friday, 75 in")
    await group.taps("10:31", INES, shown, group.buttons(shown)[0]["text"])
    assert "Friday" not in group.day.state.horses
    await group.says("10:32", THEO, "no", reply_to=shown.message_id)
    await group.says("10:33", THEO, "yes")
    assert "Friday" not in group.day.state.horses
