"""A barn's group on a clock that is a value: people write, Haybell answers, nothing leaves the process."""

from dataclasses import replace
from datetime import timedelta
from itertools import count

from bot.barn import Barn
from bot.barn_day import BarnDay
from bot.message import Incoming, Outgoing, Sender
from bot.store import Store
from tests.november import November

MINUTE = timedelta(minutes=1)
NUMBERS = count(1)  # of messages; no two of one process bear the same


class Group(November):
    """The demo barn's people and Haybell on Thursday 26 November; times are "7:20", or "27 7:20" on another day."""

    def __init__(self, barn: Barn, store: Store | None = None, weather: str | None = "morning.csv") -> None:
        self.barn = barn
        self.store = store or Store.memory()
        self.clock = self.at("0:00")
        if weather:
            self.weather(weather, "5:50")
        self.open()

    def open(self) -> None:
        """Start, or start anew on what the store holds."""
        self.day = BarnDay(self.barn, self.store, lambda now: self.forecast, since=self.at("0:00"))

    def until(self, clock: str, minutes: int = 5) -> list[Outgoing]:
        """Let time pass; what Haybell says on the way."""
        said: list[Outgoing] = []
        while self.clock < self.at(clock):
            self.clock = min(self.clock + minutes * MINUTE, self.at(clock))
            self.day.tick(self.clock)
            said += self.read()
        return said

    def says(self, clock: str, who: str, text: str, **more: object) -> list[Outgoing]:
        """Somebody writes; what Haybell answers, and what it says when it next looks at the plan."""
        incoming = Incoming(f"g:{next(NUMBERS)}", Sender(None, who), text, self.at(clock))
        return self.hears(replace(incoming, **more))  # type: ignore[arg-type]

    def hears(self, incoming: Incoming) -> list[Outgoing]:
        """One message or tap as it came from a chat."""
        self.clock = max(self.clock, incoming.at)
        self.day.hear(incoming)
        self.day.tick(incoming.at)
        return self.read()

    def read(self) -> list[Outgoing]:
        """What waits to be sent, sent."""
        box, said = self.day.mailbox, []
        for number, outgoing in box.unsent(self.clock):
            box.sent(number, f"bot:{number}")
            if outgoing.kind == "post":
                box.posted(f"bot:{number}")
            said.append(outgoing)
        return said

    def key(self, text: str) -> str:
        """The key of the last message of ours that holds these words."""
        rows = self.store.conn.execute("SELECT id, message FROM outbox ORDER BY id DESC")
        return next(f"bot:{number}" for number, message in rows if text in message)


def words(said: list[Outgoing]) -> list[str]:
    """Each message as kind and text."""
    return [f"{one.kind}: {one.text}" for one in said]
