"""A button pressed: what it means, and how it shows on the buttons themselves."""

from collections.abc import Sequence
from typing import Any

from bot.barn import Barn, Person
from bot.events import Asked, Done, Entry, GarmentIs
from bot.message import Button, Outgoing
from bot.now import Standing
from bot.post import ticked
from bot.state import State
from bot.words import Heard, Reference, read

WATERY = frozenset({"damp", "wet", "soaked"})
Rows = tuple[tuple[Button, ...], ...]


def tapped(tap: str, reply: Reference | None, barn: Barn, state: State) -> Heard:
    """A button pressed: `done:*`, `done:<number of the horse>`, `wet:<of the piece>`, `pick:<of the option>`, `why`."""
    what, _, which = tap.partition(":")
    names = (reply and reply.names) or tuple(h.name for h in barn.horses)
    standing = state.standing
    if what == "done" and reply and standing and reply.posted not in (None, standing.number):
        return Heard(tap, events=(Asked("left"),))  # the button of a round that is over: who is left now
    if what == "done":
        named: Any = (
            "all"
            if which == "*"
            else tuple(name for i, name in enumerate(names) if str(i) == which and name in state.horses)
        )
        return Heard(tap, events=(Done(named),) if named else ())
    if what == "wet" and reply and which.isdigit() and int(which) < len(reply.pieces):
        return Heard(tap, events=(GarmentIs(reply.pieces[int(which)], "wet"),))
    if what == "pick" and reply and reply.ask:
        return read(which, None, barn, state, reply)
    if what in {"why", "left", "today", "drying"}:
        return Heard(tap, events=(Asked(what),))  # type: ignore[arg-type]
    return Heard(tap, chatter=True)


def shows(ours: Outgoing, told: Sequence[Entry]) -> bool:
    """Whether what was told, or taken back, in words is something that the buttons of our message show."""
    pieces = ours.about.get("pieces", ())
    events = [entry.event for entry in told]
    return any(isinstance(e, Done) or (isinstance(e, GarmentIs) and e.garment in pieces) for e in events)


def shown(ours: Outgoing | None, tap: str | None, person: Person, state: State, entries: Sequence[Entry]) -> Rows:
    """The buttons of our message after a tap: who is done and who said so, or what was chosen; () to leave them."""
    if ours and ours.kind == "ask":
        return picked(ours.buttons, tap, person)
    return on_post(ours, state, entries)


def on_post(ours: Outgoing | None, state: State, entries: Sequence[Entry]) -> Rows:
    """The buttons of the standing round's post as they should be now; () for any other message."""
    standing = state.standing
    if ours and ours.kind == "post" and standing and ours.about.get("posted") == standing.number:
        return ticked(ours.buttons, pressed(ours.about, standing, entries))
    return ()


def picked(rows: tuple[tuple[Button, ...], ...], tap: str | None, person: Person) -> tuple[tuple[Button, ...], ...]:
    """What is left of a question's choices once one is tapped: that one, with who chose it."""
    return tuple((Button(f"✓ {b.text} · {person.name}", "picked"),) for row in rows for b in row if b.data == tap)


def pressed(about: dict[str, Any], standing: Standing, entries: Sequence[Entry]) -> dict[str, str]:
    """Which of a post's buttons were pressed or said since, and by whom. about: what its buttons count.

    A horse that is to be dressed anew after a change is done no more.
    """
    since = [e for e in entries if e.number > standing.number and e.undone_by is None and e.key]
    wet = {e.event.garment: e.who for e in since if isinstance(e.event, GarmentIs) and e.event.state in WATERY}
    by = {name: who for name, who in standing.done_by.items() if name in standing.done}
    done = {f"done:{i}": by[name] for i, name in enumerate(about.get("names", ())) if name in by}
    return done | {f"wet:{i}": wet[g] for i, g in enumerate(about.get("pieces", ())) if g in wet}
