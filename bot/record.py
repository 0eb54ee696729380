"""The ledger for people: readable lines, and CSV for a spreadsheet."""

import csv
import io
from collections.abc import Iterable, Sequence
from datetime import date, datetime, time
from typing import Any

from bot.barn import Barn, plain
from bot.events import Entry, Posted
from bot.problems import WrongInput

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
    if isinstance(entry.event, Posted):
        named = list(entry.event.wear)
    return (named,) if isinstance(named, str) else tuple(named)


def row(entry: Entry, barn: Barn) -> dict[str, Any]:
    """One entry under the columns' names."""
    facts = entry.event.as_json()
    about = {"kind", "horse", "horses", "garment"}
    rest = {key: value for key, value in facts.items() if key not in about and not isinstance(value, dict)}
    return {
        "id": entry.number,
        "at": entry.at.astimezone(barn.zone).isoformat(),
        "who": entry.who,
        "kind": entry.event.kind,
        "horse": " + ".join(horses(entry)) if not isinstance(entry.event, Posted) else "",
        "garment": facts.get("garment", ""),
        "value": _value(rest),
        "undone_by": entry.undone_by or "",
        "message": entry.text,
    }


def _value(rest: dict[str, Any]) -> str:
    """The facts of one event in one cell: the bare value of a single one, else name=value."""
    shown = {key: " + ".join(map(str, v)) if isinstance(v, list) else str(v) for key, v in rest.items()}
    if len(shown) == 1:
        return next(iter(shown.values())) or "bare"
    return "; ".join(f"{key}={value}" for key, value in shown.items())


def as_csv(entries: Iterable[Entry], barn: Barn) -> str:
    """The entries as CSV. A cell that a spreadsheet would take for a formula is led by an apostrophe."""
    out = io.StringIO()
    writer = csv.DictWriter(out, COLUMNS, lineterminator="\n")
    writer.writeheader()
    writer.writerows({key: _harmless(value) for key, value in row(entry, barn).items()} for entry in entries)
    return out.getvalue()


def _harmless(cell: Any) -> Any:
    return f"'{cell}" if isinstance(cell, str) and cell[:1] in tuple("=+-@\t\r") else cell


def as_lines(entries: Iterable[Entry], barn: Barn) -> str:
    """The entries as people read them, one a line."""
    return "".join(f"{_line(row(entry, barn))}\n" for entry in entries)


def _line(cells: dict[str, Any]) -> str:
    what = " ".join(str(cells[key]) for key in ("kind", "horse", "garment", "value") if cells[key])
    said = f" “{cells['message']}”" if cells["message"] else ""
    undone = f" (undone by {cells['undone_by']})" if cells["undone_by"] else ""
    return f"{cells['id']:>5}  {cells['at'][:16].replace('T', ' ')}  {cells['who']}: {what}{said}{undone}"
