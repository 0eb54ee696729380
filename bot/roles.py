"""Who may report what: one table, shown in help."""

from collections.abc import Iterator
from dataclasses import replace
from typing import Literal

from bot.barn import Barn, Horse, Person, Role
from bot.events import Done, Event, GarmentIs, Seen
from bot.words import Heard, Refused

Reach = Literal["all", "own"]

# kind of event → role → on which horses and their clothes. A role that is not named may not at all.
MAY: dict[str, dict[Role, Reach]] = {
    "sign": {"owner": "own", "groom": "all", "manager": "all"},
    "garment": {"owner": "own", "groom": "all", "manager": "all"},
    "wearing": {"owner": "own", "groom": "all", "manager": "all"},
    "done": {"owner": "own", "groom": "all", "manager": "all"},
    "place": {"owner": "own", "groom": "all", "manager": "all"},
    "worked": {"owner": "own", "groom": "all", "manager": "all"},
    "clip": {"owner": "own", "manager": "all"},
    "wish": {"owner": "own", "manager": "all"},
    "question": {"owner": "all", "groom": "all", "manager": "all"},
    "undo": {"owner": "all", "groom": "all", "manager": "all"},  # own reports; a manager anybody's
    "enrolled": {"manager": "all"},
    "struck": {"manager": "all"},
}
ROLES: tuple[Role, ...] = ("owner", "groom", "manager")  # least first

# said by any listed person of any horse: danger outranks roles
ALWAYS = frozenset({"shivering", "unwell"})


def judge(heard: Heard, person: Person | None, barn: Barn) -> Heard:
    """The same message with what this person may not report moved from its events to `refused`."""
    heard = replace(heard, events=tuple(part for event in heard.events for part in _parts(event, person, barn)))
    allowed = tuple(event for event in heard.events if may(event, person, barn))
    refusals = list(_refusals(heard, person, barn))
    refused = next((r for r in refusals if _grave(r.event)), next(iter(refusals), None))
    asked = heard.ask if person is not None and _may_be_asked(heard, person, barn) else None
    return replace(heard, events=allowed, ask=asked, refused=refused or heard.refused)


def may(event: Event, person: Person | None, barn: Barn) -> bool:
    """Whether this person may report this."""
    if person is None:
        return False
    if isinstance(event, Seen) and event.sign in ALWAYS:
        return True
    return _role_may(person.role, event, person.name, barn)


def needs(event: Event, person: Person | None, barn: Barn) -> Role:
    """The least role that may report this of this horse; for an owner, the least above owner."""
    owners = {horse.owner for horse in _horses(event, barn)}
    for role in ROLES:
        if role == "owner" and _not_as_owner(event, person):
            continue
        if any(_role_may(role, event, owner or "", barn) for owner in owners or {None}):
            return role
    return "manager"


def _parts(event: Event, person: Person | None, barn: Barn) -> tuple[Event, ...]:
    """A round's list told of some that are and some that are not the speaker's, in two; any other event whole."""
    if not isinstance(event, Done) or event.horses == "all":
        return (event,)
    own = tuple(name for name in event.horses if may(Done((name,)), person, barn))
    rest = tuple(name for name in event.horses if name not in own)
    return (Done(own), Done(rest)) if own and rest else (event,)


def _not_as_owner(event: Event, person: Person | None) -> bool:
    """An owner needs more for another's horse; a stranger is told of grooms, where they may, for he owns none here."""
    return "groom" in MAY[event.kind] if person is None else person.role == "owner"


def _refusals(heard: Heard, person: Person | None, barn: Barn) -> Iterator[Refused]:
    for event in heard.events:
        if not may(event, person, barn):
            yield Refused("not allowed", needs(event, person, barn), event)
    if heard.ask is not None and (person is None or _refused_ask(heard, person, barn)):
        yield Refused("not allowed", "groom", next(filter(_grave, heard.ask.pending), None))


def _refused_ask(heard: Heard, person: Person, barn: Barn) -> bool:
    """Whether an owner is told no: not for talk of some rug that may be any horse's, or none of the barn's."""
    ask = heard.ask
    if ask is None or heard.events or not all(isinstance(event, GarmentIs) for event in ask.pending):
        return not _may_be_asked(heard, person, barn)
    horses = {garment.horse for garment in barn.garments if garment.id in ask.options}
    return len(horses) < 2 and not _may_be_asked(heard, person, barn)


def _grave(event: Event | None) -> bool:
    """What a stranger may not report, but the manager must hear of, wherever in the message it stands."""
    return isinstance(event, Seen) and event.sign in ALWAYS


def _may_be_asked(heard: Heard, person: Person, barn: Barn) -> bool:
    """An ask is put where some answer to it would be allowed."""
    ask = heard.ask
    if ask is None or person.role != "owner" or ask.about == "sign":
        return ask is not None
    if any(isinstance(event, Seen) and event.sign in ALWAYS for event in ask.pending):
        return True
    own = {h.name for h in barn.horses if h.owner == person.name}
    own |= {g.id for g in barn.garments if g.horse in own}
    return not own.isdisjoint(ask.options)


def _role_may(role: Role, event: Event, name: str, barn: Barn) -> bool:
    reach = MAY.get(event.kind, {"manager": "all"}).get(role)
    if reach == "own":
        horses = _horses(event, barn)
        return bool(horses) and all(horse.owner == name for horse in horses) and name != ""
    return reach == "all"


def _horses(event: Event, barn: Barn) -> list[Horse]:
    """The horses an event is about; none where it is about a spare or about all."""
    if isinstance(event, Done):
        return [] if event.horses == "all" else [h for h in barn.horses if h.name in event.horses]
    garment = getattr(event, "garment", None)
    named = getattr(event, "horse", None) or next((g.horse for g in barn.garments if g.id == garment), None)
    return [h for h in barn.horses if h.name == named]
