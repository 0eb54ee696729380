"""Answers beyond the plan: the hand-over, handling, a horse's last days as a picture, its week in words."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime

from bot import answer, board
from bot.barn import Barn, Person
from bot.events import Asked, Entry
from bot.message import Outgoing
from bot.sheet import Sheet
from bot.state import State

WEEK = 7  # days
PICTURED = 4  # days: a picture that a phone shows whole
SLOW = frozenset({"wardrobe"})  # topics whose answer takes longer than a reply may


@dataclass(frozen=True)
class Lately:
    """What the last days left on record, oldest first: the plans as posted, and the ledger's entries."""

    sheets: Sequence[Sheet] = ()
    entries: Sequence[Entry] = ()


def reach(asked: Asked) -> int:
    """How many days back the answer looks."""
    return {"picture": PICTURED, "week": WEEK}.get(asked.topic or "", 0)


def beyond(
    asked: Asked, sheet: Sheet | None, state: State, barn: Barn, person: Person, now: datetime, lately: Lately
) -> Outgoing:
    """The answer to one question beyond the plan, in the asker's language and units."""
    said = Outgoing("answer", "", about={"horses": [asked.horse]} if asked.horse else {})
    if asked.topic == "handover":
        return replace(said, text=answer.handover(state, sheet, barn, person, now))
    if asked.horse is None:
        return replace(said, text=answer.safety(asked.topic or "", person.language))
    text = answer.horse_week(asked.horse, person, barn, state, lately.entries, lately.sheets, now)
    if asked.topic == "picture":
        text = asked.horse
    return replace(said, text=text, picture=picture(asked.horse, barn, person, lately))


def picture(horse: str, barn: Barn, person: Person, lately: Lately) -> bytes:
    """One horse's days in one person's language and units, as PNG."""
    units = person.units or barn.units
    return board.horse(horse, lately.sheets, lately.entries, barn, units, person.language)
