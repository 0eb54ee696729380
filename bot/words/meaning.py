"""What reading a message gives: facts, an ask, a refusal or silence; and what a message may be an answer to."""

from dataclasses import dataclass
from typing import Any, Literal

from bot.events import Event

WITHOUT = "-"  # first of an outfit that is pending: what is left once the answer is taken off


@dataclass(frozen=True)
class Ask:
    """What it cannot be sure of.

    options: horse names, garment ids or sign words; yes and no to a change of the list.
    """

    about: Literal["horse", "garment", "sign", "change"]
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
    """What a message answers.

    horses, garments: what the bot's message was about. ask: the question it put.
    last: the facts that the message corrected would correct ("no, Juniper").
    """

    horses: tuple[str, ...] = ()
    garments: tuple[str, ...] = ()
    ask: Ask | None = None
    last: tuple[Event, ...] = ()
    posted: int | None = None  # the ledger number of the round's post
    names: tuple[str, ...] = ()  # the horses that the post's buttons count, in their order
    pieces: tuple[str, ...] = ()  # the wet garments that they count
    telegram: int | None = None  # the number of the stranger our message spoke to


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
