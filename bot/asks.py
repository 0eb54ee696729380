"""The question a person has left open, kept with the barn: "1" answers it for a while, also after a restart."""

from datetime import datetime, timedelta
from typing import Any

from bot.events import KINDS, Event
from bot.mailbox import Mailbox
from bot.words import Ask

RECENT = 64  # entries a correction looks among: more than a barn says in ten minutes
FRESH = timedelta(minutes=10)  # how long "1" answers the last question, and "no, Juniper" corrects the last report


class Asks:
    """At most one open question a person."""

    def __init__(self, mailbox: Mailbox) -> None:
        self.mailbox = mailbox

    def put(self, person: str, ask: Ask, at: datetime) -> None:
        """A person has been asked; an older question of theirs is no longer open."""
        self.mailbox.set(f"ask:{person}", {"at": at.isoformat(), "ask": ask_to_json(ask)})

    def settle(self, person: str) -> None:
        """Nothing is open any more."""
        if self.mailbox.setting(f"ask:{person}") is not None:
            self.mailbox.set(f"ask:{person}", None)

    def open(self, person: str, at: datetime) -> Ask | None:
        """What this person may still be answering at `at`."""
        kept = self.mailbox.setting(f"ask:{person}")
        if kept is None or at - datetime.fromisoformat(kept["at"]) > FRESH:
            return None
        return ask_from_json(kept["ask"])


def ask_to_json(ask: Ask) -> dict[str, Any]:
    """An open question as plain values, for the store; `ask_from_json` reads it."""
    return {
        "about": ask.about,
        "word": ask.word,
        "options": list(ask.options),
        "pending": [event.as_json() for event in ask.pending],
    }


def ask_from_json(kept: dict[str, Any]) -> Ask:
    """The open question back from the store."""
    pending = tuple(event_from_json(event) for event in kept["pending"])
    return Ask(kept["about"], kept["word"], tuple(kept["options"]), pending)


def event_from_json(kept: dict[str, Any]) -> Event:
    """An event as `read` gives it, back as a value."""
    facts = {name: tuple(value) if isinstance(value, list) else value for name, value in kept.items() if name != "kind"}
    return KINDS[kept["kind"]](**facts)
