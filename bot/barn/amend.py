"""The barn as its manager has it by now: the file's rows with those that were added, changed and struck in the chat.

Whatever is told is checked as the file is: same types, same rules between keys.
"""

from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from typing import Any

import yaml

from bot.barn import references, shape
from bot.barn.document import Document, Way
from bot.barn.keys import Barn
from bot.events import Enrolled, Entry, Section, Struck
from bot.problems import Problem, WrongFile

Row = dict[str, Any]
KEY: dict[Section, str] = {"horses": "name", "garments": "id", "people": "name"}
INSTEAD = {"size_in": "size_cm", "size_cm": "size_in"}
SECTIONS: tuple[Section, ...] = ("people", "horses", "garments")


def amended(barn: Barn, told: Enrolled | Struck, today: date) -> Barn:
    """The barn after one change. WrongFile with what is wrong with it; its lines mean nothing."""
    root = barn.model_dump(exclude_unset=True)
    root = _enrol(root, told) if isinstance(told, Enrolled) else _strike(root, told)
    document = Document("", root, dict.fromkeys(_ways(root), 1))
    made = shape.fit(document)
    references.refer(document, today)
    if made is None or document.problems:
        found = document.in_order() or [Problem("", 1, "this cannot be")]
        raise WrongFile([Problem("", 1, fault.text.replace(", in line 1", "")) for fault in found])
    return made


def _ways(value: Any, way: Way = ()) -> Iterator[Way]:
    """The way to every value, so that a fault finds its own."""
    yield way
    inner = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, tuple) else ()
    for step, part in inner:
        yield from _ways(part, (*way, step))


def as_now(filed: Barn, entries: Iterable[Entry]) -> Barn:
    """The file's barn with every change that stands and that no later edit of the file outdates."""
    barn = filed
    for entry in entries:
        told = entry.event
        if not isinstance(told, Enrolled | Struck) or entry.undone_by is not None or outdated(filed, told):
            continue
        try:
            barn = amended(barn, told, entry.at.astimezone(filed.zone).date())
        except WrongFile:  # the file has come to say what leaves no room for it
            continue
    return barn


def outdated(filed: Barn, told: Enrolled | Struck) -> bool:
    """Whether the file says otherwise of it by now than when it was told."""
    keys = tuple(told.facts) if isinstance(told, Enrolled) else None
    return said_of(filed, told.section, told.name, keys) != told.filed


def said_of(barn: Barn, section: Section, name: str, keys: Sequence[str] | None = None) -> Row | None:
    """A row as JSON keeps it, or some keys of it; None where there is no such row."""
    row = next((r for r in getattr(barn, section) if getattr(r, KEY[section]) == name), None)
    if row is None:
        return None
    said: Row = row.model_dump(mode="json", exclude_unset=True)
    return said if keys is None else {key: said[key] for key in keys if key in said}


def lines(before: Barn, after: Barn) -> list[str]:
    """What the file gains (+) and loses (-), row by row in its own notation."""
    found = []
    for section in SECTIONS:
        old, new = rows(before, section), rows(after, section)
        found += [f"- {section}: {_flow({KEY[section]: name})}" for name in old if name not in new]
        for name, row in new.items():
            was = old.get(name, {})
            changed = {key: value for key, value in row.items() if key not in was or was[key] != value}
            gone = {key: was[key] for key in was if key not in row}
            label = {} if not was else {KEY[section]: name}
            found += [f"- {section}: {_flow(label | gone)}"] if gone else []
            found += [f"+ {section}: {_flow(label | changed)}"] if changed else []
    return found


def rows(barn: Barn, section: Section) -> dict[str, Row]:
    """A section's rows by their name or id, each as JSON keeps it with whole numbers whole; name or id first."""
    key, found = KEY[section], getattr(barn, section)
    said = {getattr(row, key): row.model_dump(mode="json", exclude_unset=True) for row in found}
    return {name: {key: name} | {k: _whole(v) for k, v in row.items()} for name, row in said.items()}


def _flow(row: Row) -> str:
    """One row in one line of YAML."""
    text: str = yaml.safe_dump(row, default_flow_style=True, allow_unicode=True, sort_keys=False, width=2**16)
    return text.strip()


def _whole(value: Any) -> Any:
    return int(value) if isinstance(value, float) and value.is_integer() else value


def _enrol(root: Row, told: Enrolled) -> Row:
    key, there = KEY[told.section], tuple(root.get(told.section) or ())
    facts = {name: tuple(v) if isinstance(v, list) else v for name, v in told.facts.items()}
    if any(row[key] == told.name for row in there):
        there = tuple(_changed(row, facts) if row[key] == told.name else row for row in there)
    else:
        there = (*there, {key: told.name} | facts)
    return root | {told.section: there}


def _changed(row: Row, facts: Row) -> Row:
    """A row with these facts; of two ways to say one thing the new one stays."""
    return {key: value for key, value in row.items() if INSTEAD.get(key) not in facts} | facts


def _strike(root: Row, told: Struck) -> Row:
    """Without the row, and without what only made sense with it: a horse's clothes, a piece on a horse, an owner."""
    root = root | {told.section: _without(root, told.section, {told.name})}
    if told.section == "horses":
        own = {g["id"] for g in root.get("garments") or () if g.get("horse") == told.name}
        root = root | {"garments": _without(root, "garments", own)}
        return root | {"horses": tuple(_undressed(row, own) for row in root["horses"])}
    if told.section == "garments":
        return root | {"horses": tuple(_undressed(row, {told.name}) for row in root["horses"])}
    horses = ({k: v for k, v in h.items() if (k, v) != ("owner", told.name)} for h in root["horses"])
    return root | {"horses": tuple(horses)}


def _without(root: Row, section: Section, names: set[str]) -> tuple[Row, ...]:
    return tuple(row for row in root.get(section) or () if row[KEY[section]] not in names)


def _undressed(horse: Row, gone: set[str]) -> Row:
    """A horse as the file has it, without these pieces on; of what is left of its clothes nobody has said."""
    worn = horse.get("wearing")
    return horse if worn is None or gone.isdisjoint(worn) else {k: v for k, v in horse.items() if k != "wearing"}
