"""What people mean: a message → events, a question, an ask, or silence. Pure; writes nothing."""

from dataclasses import dataclass
from typing import Any, Literal

from bot.barn import Barn, Person
from bot.events import Event
from bot.state import State


@dataclass(frozen=True)
class Ask:
    """What it cannot be sure of. options: horse names, garment ids or sign words."""

    about: Literal["horse", "garment", "sign"]
    word: str
    options: tuple[str, ...]
    pending: tuple[Event, ...] = ()  # the events to record once answered, with "" where the answer goes


@dataclass(frozen=True)
class Refused:
    """A report this person may not make; needs: the least role that may."""

    reason: str
    needs: str
    event: Event | None = None


@dataclass(frozen=True)
class Reference:
    """What a message answers: the horses and garments that the bot's message was about, an ask it made."""

    horses: tuple[str, ...] = ()
    garments: tuple[str, ...] = ()
    ask: Ask | None = None


@dataclass(frozen=True)
class Heard:
    """What was understood. chatter: nothing for the bot, it stays silent."""

    heard: str
    events: tuple[Event, ...] = ()
    ask: Ask | None = None
    refused: Refused | None = None
    chatter: bool = False

    def as_json(self) -> dict[str, Any]:
        """The contract's JSON object for `haybell read`."""
        ask = self.ask and {"about": self.ask.about, "word": self.ask.word, "options": list(self.ask.options)}
        refused = self.refused and {"reason": self.refused.reason, "needs": self.refused.needs}
        return {
            "heard": self.heard,
            "events": [event.as_json() for event in self.events],
            "ask": ask,
            "refused": refused,
            "chatter": self.chatter,
        }


def read(text: str, person: Person | None, barn: Barn, state: State, reply: Reference | None = None) -> Heard:
    """What `text` means when `person` says it in this barn as it is now. None: somebody not listed."""
    raise NotImplementedError
