"""The facts of a message summed up: one sign where two say one thing, one fact for all that are done."""

from collections.abc import Iterable, Iterator
from dataclasses import replace

from bot.events import Done, Event, Seen, Sign

# what a sign says along with itself
WITH_IT: dict[Sign, tuple[Sign, ...]] = {"sweating": ("hot", "wet"), "shivering": ("cold",)}


def once(events: Iterable[Event]) -> Iterator[Event]:
    """Each sign of a horse once, with where it was seen if that is said."""
    events = list(dict.fromkeys(events))
    placed = {(e.horse, e.sign) for e in events if isinstance(e, Seen) and e.setting != "turnout"}
    for event in events:
        if not (isinstance(event, Seen) and event.setting == "turnout" and (event.horse, event.sign) in placed):
            yield event


def strongest(events: list[Event]) -> list[Event]:
    """One sign where two say one thing: who sweats is hot and wet of it, who shivers is cold."""
    seen = [e for e in events if isinstance(e, Seen)]
    milder = {(e.horse, less) for e in seen for less in WITH_IT.get(e.sign, ())}
    where = {e.horse: e.setting for e in seen if (e.horse, e.sign) in milder and e.setting != "turnout"}
    told = [e for e in events if not (isinstance(e, Seen) and (e.horse, e.sign) in milder)]
    return [replace(e, setting=where.get(e.horse, e.setting)) if isinstance(e, Seen) else e for e in told]


def one_done(events: list[Event], horses: int) -> list[Event]:
    """All the horses said to be done in one fact: "Maple done, Juniper done"."""
    dones = [e for e in events if isinstance(e, Done)]
    if len(dones) < 2:
        return events
    every = any(e.horses == "all" for e in dones)
    most = any(e.horses != "all" and 2 * len(e.horses) > horses for e in dones)  # "all done! all but Pip"
    names = tuple(dict.fromkeys(name for e in dones if e.horses != "all" for name in e.horses))
    merged = Done("all" if every and not most else names)
    first = events.index(dones[0])
    return [merged if k == first else e for k, e in enumerate(events) if k == first or not isinstance(e, Done)]
