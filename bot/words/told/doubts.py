"""Whether somebody says two things of which only one can be so: "wet, sweat or rain I can't tell"."""

from collections.abc import Sequence
from itertools import takewhile
from typing import cast

from bot.events import Seen, Sign
from bot.words.lookup.items import Item, some_mean
from bot.words.meaning import Ask
from bot.words.told.telling import Telling

REACH = 4  # words on either side of "or"


def sweat_or_rain(items: Sequence[Item]) -> bool:
    """Whether a message leaves open which of the two it was."""
    for at, item in enumerate(items):
        if "or" in item.means or item.text == "/":
            before, behind = items[max(0, at - REACH) : at], _of_the_same(items[at + 1 : at + 1 + REACH])
            if (_sweat(before) and _rain(behind)) or (_rain(before) and _sweat(behind)):
                return True
    return False


def _of_the_same(behind: Sequence[Item]) -> list[Item]:
    """What is said before another is named: "Otto is sweating / Ned is wet" leaves nothing open."""
    return list(takewhile(lambda i: not i.horses and i.piece is None, behind))


def asked_which(items: Sequence[Item], telling: Telling) -> None:
    """A horse told to be wet or to sweat is asked about instead."""
    told = [e for e in telling.events if isinstance(e, Seen) and e.sign in ("wet", "sweating")]
    told = [e for e in told if e.horse == told[-1].horse]  # of others it was told before
    horses = {e.horse for e in told} or {i.horses[0] for i in items if i.horse}
    if len(horses) != 1 or (not told and any(i.mark and i.raw in "?¿" for i in items)):
        return
    telling.retell([e for e in telling.events if e not in told])
    setting = told[0].setting if told else "turnout"
    telling.wonder(Ask("sign", "wet", ("sweating", "wet"), (Seen(horses.pop(), cast("Sign", ""), setting),)))


def _sweat(items: Sequence[Item]) -> bool:
    return some_mean(items, "sign sweating")


def _rain(items: Sequence[Item]) -> bool:
    return any(i.has("wet", "soaked", "mass", "sky", "weather") and not i.horses for i in items)
