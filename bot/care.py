"""When a horse needs somebody: the alarm at once, the second look that falls due, whom to call when nobody answers.

Also the one reminder of who is still to do. Pure: what to record and what to say, as values.
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta

from bot import answer
from bot.barn import Barn, Person
from bot.events import Event, Nudged, RecheckSet, Seen
from bot.message import Outgoing
from bot.rounds import quiet
from bot.sheet import Sheet
from bot.state import State
from bot.voice import plain

DANGER = frozenset({"shivering", "unwell", "cold", "wet"})
URGENT = frozenset({"shivering", "unwell", "wet"})
HEATED = frozenset({"sweating", "hot"})
LOOK_AGAIN = timedelta(minutes=30)
UNANSWERED = timedelta(minutes=15)  # from one call to the next, when nobody answers
LAST_STEP = 3  # 0: the group is asked, 1: the manager is called, 2: the owner is called, then it rests
NUDGE_AFTER = timedelta(minutes=25)


@dataclass(frozen=True)
class Alarm:
    """What is said at once about a horse in danger, and the second look."""

    say: Outgoing
    recheck: RecheckSet


@dataclass(frozen=True)
class Act:
    """Something that fell due: events to record, messages to send."""

    events: tuple[Event, ...]
    say: tuple[Outgoing, ...]


def alarm(event: Seen, barn: Barn, state: State, person: Person, at: datetime) -> Alarm:
    """Immediate advice on a horse that shivers, is unwell, wet or cold."""
    recheck = RecheckSet(event.horse, event.sign, at.astimezone(UTC) + LOOK_AGAIN)
    text = answer.alarm(event, recheck.due, state, barn, person)
    about = {"horses": [event.horse]}
    first = (text.partition("\n")[0],)
    return Alarm(Outgoing("alert", text, about=about, urgent=event.sign in URGENT, strong=first), recheck)


def cooling(events: Iterable[Event], at: datetime) -> Iterable[RecheckSet]:
    """The second look at horses that sweat in what they wear; one that was ridden is being walked cool anyway."""
    for event in events:
        if isinstance(event, Seen) and event.sign in HEATED and event.setting != "after work":
            yield RecheckSet(event.horse, event.sign, at.astimezone(UTC) + LOOK_AGAIN)


def rechecks(barn: Barn, state: State, language: str, now: datetime) -> Iterable[Act]:
    """Each second look that is due: asked of the group, then the manager is called, then the owner.

    After a horse that was too warm the group is asked, and nobody is called.
    """
    for horse, event in state.rechecks():
        if event.due > now or event.step >= LAST_STEP:
            continue
        step = LAST_STEP if event.about in HEATED else event.step + 1
        following = RecheckSet(horse, event.about, now.astimezone(UTC) + UNANSWERED, step)
        yield Act((following,), tuple(_calls(barn, event, language)))


def _calls(barn: Barn, event: RecheckSet, language: str) -> Iterable[Outgoing]:
    about = {"horses": [event.horse]}
    if event.step == 0:
        text, strong = answer.recheck(event, barn, language), (plain(event.horse),)
        yield Outgoing("recheck", text, about=about, urgent=True, strong=strong)
        return
    for person in _called(barn, event):
        text = answer.escalate(event, barn, person)
        name = plain(person.name)
        rings = ((name, person.telegram),) if person.telegram is not None else ()
        call = Outgoing("alert", text, about=about, urgent=True, strong=(name, plain(event.horse)))
        yield replace(call, mentions=rings)
        if person.telegram is not None:
            yield replace(call, to=person.name)


def _called(barn: Barn, event: RecheckSet) -> list[Person]:
    managers = [p for p in barn.people if p.role == "manager"]
    owners = [p for p in barn.people if p.name == barn.horse(event.horse).owner]
    return managers if event.step == 1 else owners or managers


def nudge(barn: Barn, state: State, sheet: Sheet | None, language: str, now: datetime) -> Act | None:
    """Once a round, before its window is half an hour old: who is still to do. Never in quiet hours."""
    standing = state.standing
    if standing is None or sheet is None or standing.nudged or not standing.wear:
        return None
    start = standing.start.astimezone(UTC)
    if not start + NUDGE_AFTER <= now < standing.end or quiet(barn, now):
        return None
    todo = standing.wear.keys() - standing.done
    left = [h.horse for h in sheet.horses if h.windows[0].change and h.horse in todo]
    event = Nudged(standing.round, standing.day)
    late = now > start + 2 * NUDGE_AFTER  # a restart hours later: nobody wants the reminder any more
    if not left or late:
        return Act((event,), ())
    about = {"horses": left, "round": standing.round}
    return Act((event,), (Outgoing("update", answer.nudge(left, barn, language), about=about),))
