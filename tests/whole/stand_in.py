"""The smallest barn day that does the job's outline: a report is recorded and answered, each round is posted.

So that the carrying of messages is tested by itself. Run as a program it serves this day, to be killed by tests.
"""

import asyncio
import sys
from contextlib import closing
from datetime import UTC, datetime, time
from pathlib import Path

from bot import logs, rounds
from bot.barn import Barn, Horse, Person, Place, Round
from bot.chat.telegram import Telegram
from bot.events import Posted, Seen
from bot.ledger import Ledger
from bot.mailbox import Mailbox
from bot.message import Button, Incoming, Outgoing
from bot.pulse import Pulse
from bot.served import Served
from bot.store import Store
from tests.whole.local_bot_api import GROUP, TOKEN


def a_barn(name: str = "Windrow Farm", chat: int | None = GROUP, first_person: int = 1001) -> Barn:
    """A barn of one horse and three people, with no forecast to ask."""
    people = [("Theo", "manager"), ("Inés", "groom"), ("Ruth", "owner")]
    return Barn(
        barn=name,
        timezone="UTC",
        chat=chat,
        place=Place(latitude=44.52, longitude=-72.31),
        forecast=(),
        rounds=(Round(name="morning", at=time(7)), Round(name="evening", at=time(16, 30))),
        people=tuple(Person(name=n, role=r, telegram=first_person + i) for i, (n, r) in enumerate(people)),
        horses=(Horse(name="Maple"),),
    )


class StandIn:
    """See the file. Certain words make it misbehave."""

    def __init__(self, barn: Barn, store: Store) -> None:
        self.barn = barn
        self.ledger = Ledger(store)
        self.mailbox = Mailbox(store)
        self.store = store

    def hear(self, incoming: Incoming) -> None:
        """Record the message as a sign and answer it."""
        if "spoil" in incoming.text:
            raise ValueError("a fault inside")
        with self.store.transaction():
            if self.mailbox.heard(incoming.key, incoming.text + (incoming.tap or "")):
                return
            if incoming.edited:
                numbers = [e.number for e in self.ledger.by_key(incoming.key)]
                self.ledger.undo(incoming.at, incoming.sender.name, incoming.key, numbers)
            said = incoming.tap or incoming.text
            self.ledger.append(incoming.at, incoming.sender.name, incoming.key, [Seen("Maple", "hot")], said)
            self.mailbox.put(self._answer(incoming, said), incoming.at)
            if "alarm" in said:
                self.mailbox.put(Outgoing("alert", f"ALARM {said}", urgent=True), incoming.at)

    def _answer(self, incoming: Incoming, said: str) -> Outgoing:
        to = next((p.name for p in self.barn.people if p.telegram == incoming.sender.id), "group")
        to = to if incoming.private else "group"
        if said.startswith("react"):
            return Outgoing("react", "👍", to=to, reply_to=incoming.key)
        return Outgoing("answer", f"noted {said}", to=to, reply_to=incoming.key, about={"horses": ["Maple"]})

    def tick(self, now: datetime) -> None:
        """Post the rounds that are due."""
        posted = frozenset((e.event.round, e.event.day) for e in self.ledger.entries() if isinstance(e.event, Posted))
        for due in rounds.due(self.barn, now, posted):
            with self.store.transaction():
                event = Posted(due.window.round, due.day, due.window.start, due.window.end)
                self.ledger.append(now, "haybell", "", [event])
                text = f"{due.standing} {due.window.round} {due.day}"
                buttons = ((Button("all done", "done"),),)
                self.mailbox.put(Outgoing("post", text, buttons=buttons, pin=True), now)


def served(barn: Barn, store: Store) -> Served:
    """The barn with its stand-in day."""
    return Served(barn, store, lambda: StandIn(barn, store))


async def serve(path: Path, url: str) -> None:
    """Serve one barn until killed."""
    with closing(Store.open(path)) as store, closing(Store.open(path.with_name("own.sqlite"))) as own:
        await Telegram([served(a_barn(), store)], TOKEN, url, own, Pulse(datetime.now(UTC))).run()


if __name__ == "__main__":
    logs.begin(TOKEN)
    asyncio.run(serve(Path(sys.argv[1]), sys.argv[2]))
