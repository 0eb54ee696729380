"""The ledger for people: readable lines, and CSV for a spreadsheet."""

import csv
import io
from collections.abc import Iterable, Sequence
from datetime import date, datetime, time
from typing import Any

from bot.barn import Barn, plain
from bot.events import (
    Changed,
    Enrolled,
    Entry,
    Event,
    FileSays,
    Nudged,
    Posted,
    RecheckSet,
    Seen,
    Struck,
    Undo,
    Wearing,
    Wished,
)
from bot.layout import wrap
from bot.problems import WrongInput
from bot.units import NBSP

UNDER, INDENT = 2 * NBSP, "    "

COLUMNS = ("id", "at", "who", "kind", "horse", "garment", "value", "undone_by", "message")


def chosen(entries: Sequence[Entry], barn: Barn, horse: str | None, since: str | None) -> list[Entry]:
    """The entries about one horse, from one day on (its midnight in the barn's zone)."""
    found = list(entries)
    if horse is not None:
        name = next((h.name for h in barn.horses if plain(horse) in map(plain, h.names)), None)
        if name is None:
            raise WrongInput(f"log: no horse “{horse}” in {barn.barn}; its horses: {_names(barn)}")
        found = [e for e in found if name in horses(e)]
    if since is not None:
        try:
            first = datetime.combine(date.fromisoformat(since), time(), barn.zone)
        except ValueError:
            raise WrongInput(f"log: “{since}” is no date; write 2026-11-26") from None
        found = [e for e in found if e.at >= first]
    return found


def _names(barn: Barn) -> str:
    return ", ".join(h.name for h in barn.horses)


def horses(entry: Entry) -> tuple[str, ...]:
    """The horses an entry is about."""
    facts = entry.event.as_json()
    named = facts.get("horse") or facts.get("horses") or ()
    if isinstance(entry.event, Posted | Changed):
        named = list(entry.event.wear)
    if isinstance(entry.event, FileSays) and entry.event.about != "state":
        named = entry.event.name
    return (named,) if isinstance(named, str) else tuple(named)


def row(entry: Entry, barn: Barn) -> dict[str, Any]:
    """One entry under the columns' names."""
    facts = entry.event.as_json()
    return {
        "id": entry.number,
        "at": entry.at.astimezone(barn.zone).isoformat(),
        "who": entry.who,
        "kind": entry.event.kind,
        "horse": "" if isinstance(entry.event, Posted | Changed) else " + ".join(horses(entry)),
        "garment": _garment(entry.event) or facts.get("garment", ""),
        "value": value(entry.event, barn),
        "undone_by": entry.undone_by or "",
        "message": entry.text,
    }


def value(event: Event, barn: Barn) -> str:
    """What an event says of its horse or garment, in a few plain words."""
    match event:
        case Seen():
            return event.sign if event.setting == "turnout" else f"{event.sign}, {event.setting}"
        case Wearing():
            return " + ".join(event.wear) or "bare"
        case Wished():
            return "keep bare" if event.keep_bare else "need not be bare"
        case RecheckSet():
            return f"{event.about}, look again {event.due.astimezone(barn.zone):%H:%M}"
        case Posted() | Nudged():
            return f"{event.round} {event.day}"
        case Changed():
            return f"{event.round} {event.day}, {event.cause}: {' + '.join(event.wear) or 'a later round'}"
        case Undo():
            return " + ".join(map(str, event.numbers))
        case Enrolled():
            return f"{event.name} {_told(event.facts)}".strip()
        case Struck():
            return event.name
        case FileSays():
            return f"{event.about}: {_told(event.value)}"
    return str(next((getattr(event, name) for name in ("state", "style", "where") if hasattr(event, name)), ""))


def _told(fact: Any) -> str:
    """A fact of the barn file, however it is kept."""
    if isinstance(fact, dict):
        return ", ".join(f"{key} {said}" for key, said in fact.items())
    return " + ".join(map(str, fact)) or "bare" if isinstance(fact, list | tuple) else str(fact).lower()


def _garment(event: Event) -> str:
    return event.name if isinstance(event, FileSays) and event.about == "state" else ""


def as_csv(entries: Iterable[Entry], barn: Barn) -> str:
    """The entries as CSV. A cell that a spreadsheet would take for a formula is led by an apostrophe."""
    out = io.StringIO()
    writer = csv.DictWriter(out, COLUMNS, lineterminator="\n")
    writer.writeheader()
    writer.writerows({key: harmless(value) for key, value in row(entry, barn).items()} for entry in entries)
    return out.getvalue()


def harmless(cell: Any) -> Any:
    """The cell such that no spreadsheet takes it for a formula and no reader ends a row within it."""
    if not isinstance(cell, str):
        return cell
    plain_lines = cell.replace("\r\n", "\n").replace("\r", "\n")  # a bare return would end a row for some readers
    return f"'{plain_lines}" if plain_lines[:1] in tuple("=+-@\t\n") else plain_lines


def as_lines(entries: Iterable[Entry], barn: Barn) -> str:
    """The entries as people read them, in lines that fit a phone."""
    return "".join(f"{line}\n" for entry in entries for line in _lines(row(entry, barn)))


def _lines(cells: dict[str, Any]) -> Iterable[str]:
    kind = {"sign": "", "garment": "", "wearing": "wears", "place": "in the"}.get(cells["kind"], cells["kind"])
    about = [part for part in (cells["horse"], cells["garment"], kind, cells["value"]) if part]
    yield wrap(f"{cells['id']} {cells['at'][:16].replace('T', ' ')} {cells['who']}: {' '.join(about)}", INDENT)
    if cells["message"] and cells["kind"] != "recheck":
        yield wrap(f"{UNDER}“{' '.join(cells['message'].split())}”", INDENT).replace(NBSP, " ")
    if cells["undone_by"]:
        yield f"  undone by {cells['undone_by']}"
