"""Telegram's limits are kept with room for alarms; one person's flood does not hurt the others."""

import pytest

from bot.chat import pace
from bot.chat.pace import FOR_ALARMS, IN_A_GROUP, ONE_PERSON, Pace, Pressing

GROUP = -5


async def test_a_group_gets_no_more_than_it_may_and_alarms_have_room() -> None:
    """Answers fill the minute but for the alarms' share."""
    limits = Pace()
    sent = 0
    while limits.may(GROUP, urgent=False):
        await limits.take(GROUP, urgent=False)
        sent += 1
    assert sent == IN_A_GROUP - FOR_ALARMS
    alarms = 0
    while limits.may(GROUP, urgent=True):
        await limits.take(GROUP, urgent=True)
        alarms += 1
    assert alarms == FOR_ALARMS


async def test_one_group_s_minute_is_not_another_s() -> None:
    """Strangers' talk costs nobody an answer."""
    limits = Pace()
    while limits.may(GROUP, urgent=False):
        await limits.take(GROUP, urgent=False)
    assert limits.may(GROUP - 1, urgent=False)
    assert limits.may(1001, urgent=False)


async def test_limits_can_be_lifted_for_a_server_of_one_s_own(monkeypatch: pytest.MonkeyPatch) -> None:
    """HAYBELL_RATE=off."""
    monkeypatch.setenv("HAYBELL_RATE", "off")
    limits = Pace()
    for _ in range(1000):
        assert limits.may(GROUP, urgent=False)
        await limits.take(GROUP, urgent=False)


def test_a_person_s_own_pace_is_never_too_much(monkeypatch: pytest.MonkeyPatch) -> None:
    """A round of twenty reports is work, not a flood; more in a minute is; others are not counted with them."""
    clock = [0.0]
    monkeypatch.setattr(pace.time, "monotonic", lambda: clock[0])
    pressing = Pressing()
    assert not any(pressing.too_many(1) for _ in range(ONE_PERSON))
    assert pressing.too_many(1)
    assert not pressing.too_many(2)
    clock[0] = 61.0
    assert not pressing.too_many(1)
