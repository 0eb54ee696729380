"""The note to owners on Sunday evening: what each own horse wore, what was seen and changed, with its picture. Pure."""

from collections.abc import Iterable, Sequence
from datetime import datetime, time, timedelta

from bot import answer
from bot.barn import Barn, Person
from bot.beyond import Lately, picture
from bot.message import Outgoing
from bot.rounds import local, quiet
from bot.state import State

SUNDAY = 6
FROM = time(18)  # supper is over, and Monday's round can still be talked about
LASTS = timedelta(hours=18)  # who was not running on Sunday evening still sends it on Monday morning
PICTURES = 3  # horses whose picture goes along; more would be a flood


def due(barn: Barn, now: datetime) -> datetime | None:
    """The Sunday evening whose note may go out at `now`; None outside its hours, and in quiet ones."""
    here = now.astimezone(barn.zone)
    sunday = here.date() - timedelta(days=(here.weekday() - SUNDAY) % 7)
    evening = local(sunday, FROM, barn.zone)
    return evening if evening <= now < evening + LASTS and not quiet(barn, now) else None


def week(evening: datetime) -> str:
    """The week that ends on this Sunday, as "2026-W48": what makes the note once only."""
    year, number, _ = evening.isocalendar()
    return f"{year}-W{number:02}"


def notes(barn: Barn, state: State, lately: Lately, evening: datetime, now: datetime) -> Iterable[Outgoing]:
    """A private message to each owner who can be written to and of whose horses something was recorded that week."""
    for person in barn.people:
        own = _recorded(barn, person, lately, evening)
        text = answer.week(person, barn, state, lately.entries, lately.sheets, now) if own else None
        if person.telegram is None or text is None:
            continue
        yield Outgoing("update", text, to=person.name, picture=picture(own[0], barn, person, lately))
        for name in own[1:PICTURES]:
            yield Outgoing("update", name, to=person.name, picture=picture(name, barn, person, lately))


def _recorded(barn: Barn, person: Person, lately: Lately, evening: datetime) -> Sequence[str]:
    """A person's horses with something on record before this evening."""
    planned = {h.horse for sheet in lately.sheets if sheet.made_at < evening for h in sheet.horses}
    told = {getattr(e.event, "horse", None) for e in lately.entries if e.at < evening}
    return [h.name for h in barn.horses if h.owner == person.name and h.name in planned | told]
