"""Facts of the barn file that chat may change too: an edit of the file is noticed, so that the later word counts."""

from collections.abc import Callable, Iterable, Mapping
from datetime import date, datetime
from typing import Any

from bot.barn import Barn, Horse
from bot.events import Entry, FileSays

Facts = dict[str, dict[str, Any]]  # what it is about → horse or garment → what the file says, as JSON keeps it

OF_HORSES: dict[str, Callable[[Horse], Any]] = {
    "clip": lambda horse: [horse.clip.style, horse.clip.on and horse.clip.on.isoformat()],
    "keep_bare": lambda horse: horse.keep_bare,
    "wearing": lambda horse: None if horse.wearing is None else list(horse.wearing),
    "where": lambda horse: dict(horse.where),
}


def facts(barn: Barn) -> Facts:
    """What the file says now."""
    horses = {about: {h.name: said(h) for h in barn.horses} for about, said in OF_HORSES.items()}
    return horses | {"state": {g.id: g.state for g in barn.garments}}


def edits(before: Mapping[str, Mapping[str, Any]] | None, now: Facts) -> list[FileSays]:
    """What the file says otherwise than before; of what it did not know before, or names no more, nothing."""
    return list(_edits(before or {}, now))


def unnoticed(barn: Barn, before: Mapping[str, Mapping[str, Any]] | None, at: datetime) -> list[Entry]:
    """Edits as entries that no ledger holds yet, for a command that only looks."""
    return [Entry(0, at, "haybell", "", edit) for edit in edits(before, facts(barn))]


def _edits(before: Mapping[str, Mapping[str, Any]], now: Facts) -> Iterable[FileSays]:
    for about, named in now.items():
        old = before.get(about, {})
        for name, value in named.items():
            if name in old and old[name] != value and value is not None:
                yield _said(about, name, value)


def _said(about: Any, name: str, value: Any) -> FileSays:
    if about != "clip":
        return FileSays(about, name, value)
    style, on = value
    return FileSays(about, name, style, date.fromisoformat(on) if on else None)
