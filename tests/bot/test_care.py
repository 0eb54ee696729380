"""A horse that needs somebody: advice at once, a second look, whom to call; and the round's one reminder."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from bot import care
from bot.barn import Barn, Person
from bot.events import Nudged, RecheckSet, Seen
from bot.sheet import Sheet
from bot.state import Entry, State, apply

MINUTE = timedelta(minutes=1)


@pytest.fixture
def noon(sheet: Sheet) -> datetime:
    """In the middle of the morning's window."""
    return sheet.windows[0].start.replace(hour=12)


def looking(state: State, event: RecheckSet, at: datetime) -> State:
    """The barn with a second look open."""
    opened = state if event.step == 0 else apply(state, Entry(7, at, "Dot", "g:1", replace(event, step=0)))
    return apply(opened, Entry(8, at, "haybell", "", event))


@pytest.mark.parametrize(("sign", "urgent"), [("shivering", True), ("unwell", True), ("wet", True), ("cold", False)])
def test_danger_is_answered_at_once_and_looked_at_again(
    farm: Barn, state: State, noon: datetime, sign: str, *, urgent: bool
) -> None:
    """Advice now, and a second look half an hour later."""
    alarm = care.alarm(Seen("Pip", sign), farm, state, farm.people[0], noon)  # type: ignore[arg-type]
    assert (alarm.say.kind, alarm.say.urgent, alarm.say.about) == ("alert", urgent, {"horses": ["Pip"]})
    assert alarm.recheck == RecheckSet("Pip", sign, noon + 30 * MINUTE)  # type: ignore[arg-type]


def test_half_an_hour_is_half_an_hour_in_the_hour_that_comes_twice(farm: Barn, state: State) -> None:
    """1 November 2026, 01:40 in New York before the clocks go back: the second look is at 01:10 after."""
    at = datetime(2026, 11, 1, 1, 40, tzinfo=ZoneInfo("America/New_York"))
    recheck = care.alarm(Seen("Pip", "shivering"), farm, state, farm.people[0], at).recheck
    assert recheck.due.astimezone(UTC) - at.astimezone(UTC) == 30 * MINUTE


def test_nothing_is_said_before_a_second_look_is_due(farm: Barn, state: State, noon: datetime) -> None:
    """Half an hour is half an hour."""
    open_ = looking(state, RecheckSet("Pip", "shivering", noon), noon)
    assert list(care.rechecks(farm, open_, "en", noon - MINUTE)) == []


def test_group_then_manager_then_owner_then_rest(farm: Barn, state: State, noon: datetime) -> None:
    """Each call names its person and sets the next, a quarter of an hour later; after the owner nobody is left."""
    farm = farm.model_copy(update={"people": tuple(
        p.model_copy(update={"telegram": 1000 + n}) for n, p in enumerate(farm.people))})  # fmt: skip
    calls = []
    for step in range(3):
        open_ = looking(state, RecheckSet("Pip", "shivering", noon, step), noon)
        (act,) = care.rechecks(farm, open_, "en", noon)
        assert act.events == (RecheckSet("Pip", "shivering", noon + 15 * MINUTE, step + 1),)
        assert all(one.urgent for one in act.say)
        calls.append([(one.kind, one.to) for one in act.say])
    assert calls == [
        [("recheck", "group")],
        [("alert", "group"), ("alert", "Theo")],
        [("alert", "group"), ("alert", "Ruth")],
    ]
    assert list(care.rechecks(farm, looking(state, RecheckSet("Pip", "shivering", noon, 3), noon), "en", noon)) == []


def test_a_horse_without_an_owner_is_the_managers(farm: Barn, state: State, noon: datetime) -> None:
    """The last call goes to the manager again, and who has no chat of their own is called in the group."""
    horses = tuple(h.model_copy(update={"owner": None}) for h in farm.horses)
    farm = farm.model_copy(update={"horses": horses})
    (act,) = care.rechecks(farm, looking(state, RecheckSet("Pip", "cold", noon, 2), noon), "en", noon)
    assert [(one.to, "Theo" in one.text) for one in act.say] == [("group", True)]


def test_the_earliest_second_look_comes_first(farm: Barn, state: State, noon: datetime) -> None:
    """Two horses in need are two calls, in the order they fell due."""
    both = looking(
        looking(state, RecheckSet("Pip", "cold", noon), noon), RecheckSet("Ned", "cold", noon - MINUTE), noon
    )
    assert [act.say[0].about["horses"] for act in care.rechecks(farm, both, "en", noon)] == [["Ned"], ["Pip"]]


def nudged(farm: Barn, state: State, sheet: Sheet | None, minutes: int) -> care.Act | None:
    """The reminder so many minutes after seven."""
    assert state.standing is not None
    return care.nudge(farm, state, sheet, "en", state.standing.start + minutes * MINUTE)


def test_the_reminder_names_who_changes_and_is_not_done(farm: Barn, state: State, sheet: Sheet) -> None:
    """Maple is done already and Biscuit stays as it is; before the window is half an hour old."""
    act = nudged(farm, state, sheet, 25)
    assert act is not None
    assert act.events == (Nudged("morning", sheet.windows[0].start.date()),)
    (said,) = act.say
    assert said.about["horses"] == ["Juniper", "Otis", "Pip"]
    assert all(name in said.text for name in said.about["horses"])
    assert "Maple" not in said.text


@pytest.mark.parametrize("minutes", [-30, 0, 24])
def test_no_reminder_before_people_had_their_time(farm: Barn, state: State, sheet: Sheet, minutes: int) -> None:
    """Who is still going round is not hurried."""
    assert nudged(farm, state, sheet, minutes) is None


def test_a_reminder_nobody_wants_any_more_is_only_noted(farm: Barn, state: State, sheet: Sheet) -> None:
    """After a restart hours later, or where all are done: no message, and no second try."""
    assert state.standing is not None
    done = replace(state, standing=replace(state.standing, done=frozenset(h.name for h in farm.horses)))
    for act in (nudged(farm, state, sheet, 180), nudged(farm, done, sheet, 25)):
        assert act is not None
        assert len(act.events) == 1
        assert act.say == ()


def test_the_reminder_comes_once_and_not_without_a_post(farm: Barn, state: State, sheet: Sheet) -> None:
    """Nudged already, no post yet, a missed round: nothing."""
    assert state.standing is not None
    assert nudged(farm, replace(state, standing=replace(state.standing, nudged=True)), sheet, 25) is None
    assert nudged(farm, replace(state, standing=replace(state.standing, wear={})), sheet, 25) is None
    assert nudged(farm, state, None, 25) is None
    assert care.nudge(farm, replace(state, standing=None), sheet, "en", sheet.windows[0].start) is None


def test_no_reminder_in_quiet_hours(farm: Barn, state: State, sheet: Sheet) -> None:
    """A late round's reminder waits for the morning, and is then no longer wanted."""
    quiet = farm.posting.model_copy(update={"quiet_from": farm.rounds[0].at, "quiet_to": farm.rounds[1].at})
    assert nudged(farm.model_copy(update={"posting": quiet}), state, sheet, 25) is None


def test_the_speaker_is_not_told_to_tell_themselves(farm: Barn, state: State, noon: datetime) -> None:
    """The manager who reports is not asked to call the manager."""
    theo: Person = farm.people[0]
    text = care.alarm(Seen("Pip", "shivering"), farm, state, theo, noon).say.text
    assert "Ruth" in text
    assert "Theo" not in text
