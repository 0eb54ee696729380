"""The places an update can be for: a barn's room, or the lobby for whoever belongs to no barn."""

import asyncio
import logging
from collections.abc import Coroutine, Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime
from typing import Any

from telegram import Bot, User

from bot.chat import incoming as words_of
from bot.chat.courier import Courier
from bot.chat.joining import Joining, Presence
from bot.chat.pace import Pace, Pressing
from bot.chat.pieces import Address, split_key
from bot.inbox import Waiting
from bot.mailbox import Mailbox
from bot.message import Outgoing
from bot.problems import Failed
from bot.served import Served, describe
from bot.words.said import phrasebook

LOG = logging.getLogger(__name__)

SETTLE_S = 0.5  # after a message, before the barn plans anew; put off by the next message
SETTLE_LATEST_S = 3.0
REST_S = 5.0  # for what is on its way when the bot is stopped

Update = dict[str, Any]


@dataclass
class Office:
    """What all places share: the bot, the pace, and who we are. me: None where the server did not say."""

    bot: Bot
    pace: Pace
    me: User | None = None
    _errands: set[asyncio.Task[None]] = field(default_factory=set)

    def errand(self, what: Coroutine[Any, Any, object]) -> None:
        """Do something in passing whose failure harms nobody."""

        async def quietly() -> None:
            try:
                await what
            except Exception as error:
                LOG.info("in passing: %s", describe(error))

        task = asyncio.create_task(quietly())
        self._errands.add(task)
        task.add_done_callback(self._errands.discard)

    async def close(self) -> None:
        """Errands still under way are dropped."""
        running = tuple(self._errands)
        for task in running:
            task.cancel()
        await asyncio.gather(*running, return_exceptions=True)


class Place:
    """An inbox, what is done with it, and an outbox: a barn's, or the lobby's."""

    mailbox: Mailbox
    courier: Courier

    def act(self, waiting: Sequence[Waiting]) -> None:
        """Act on these updates in one commit; one that cannot be acted on is set aside, alone."""
        with self.mailbox.store.transaction():
            for one in waiting:
                try:
                    with self.mailbox.store.attempt():
                        self.understand(words_of.parsed(one.raw))
                        self.mailbox.handled(one.update_id)
                except Failed:
                    raise
                except Exception as error:
                    LOG.error("update %d set aside: %s", one.update_id, describe(error))
                    self.mailbox.quarantine(one.update_id, describe(error))
                    self.spoiled()

    def understand(self, update: Update) -> None:
        """Do what the update asks for."""
        raise NotImplementedError

    def spoiled(self) -> None:
        """An update could not be acted on."""

    async def close(self) -> None:
        """Let what is on its way arrive."""
        await self.courier.rest(REST_S)


class Room(Place):
    """One barn: its group and its people's private chats."""

    def __init__(self, office: Office, served: Served) -> None:
        self.office = office
        self.served = served
        self.mailbox = served.mailbox
        self.joining = Joining(office.bot, served, lambda: office.me)
        self.pressing = Pressing()
        self._settle: asyncio.TimerHandle | None = None
        self._settle_by: float | None = None
        self.courier = Courier(
            office.bot,
            served.mailbox,
            office.pace,
            language=served.barn.language,
            addresses=self.addresses,
            moved=served.group_is,
            arrived=self._arrived,
            refused=self._refused,
        )

    def understand(self, update: Update) -> None:
        """Hand a message to the barn's day; what concerns the group itself to the part that looks after it."""
        now = datetime.now(UTC)
        change, place = words_of.moved(update), words_of.membership(update)
        if change:
            self.served.group_is(change.new)
        elif place:
            self.joining.member(place, now)
            self._settle_soon()
        elif message := words_of.incoming(update, now):
            self.joining.topic(message, words_of.topic(update))
            before = self.mailbox.last()
            self.served.day.hear(message)
            if self.pressing.too_many(message.sender.id):
                self.mailbox.after_the_others(before)
            self._settle_soon()

    def spoiled(self) -> None:
        """Nobody should think that a report was taken in which was not."""
        text = phrasebook(self.served.barn.language).say("not taken in")
        self.mailbox.put(Outgoing("answer", text), datetime.now(UTC))

    def addresses(self, outgoing: Outgoing) -> list[Address]:
        """The group; a person's own chat; with no group to speak in, the people, as far as it concerns them."""
        people = self.served.barn.people
        if outgoing.to != "group":
            return [Address(p.telegram) for p in people if p.name == outgoing.to and p.telegram]
        group = self.served.group
        asked_in, _ = split_key(outgoing.reply_to)
        if group is not None and self.joining.presence is not Presence.AWAY:
            return [Address(group, self.joining.thread(outgoing))]
        if asked_in is not None and any(p.telegram == asked_in for p in people):
            return [Address(asked_in)]
        if group is None:
            return [Address(p.telegram) for p in people if p.telegram]
        return [Address(p.telegram) for p in people if p.telegram and p.role == "manager"] if outgoing.urgent else []

    def _arrived(self, outgoing: Outgoing, to: Address, message: int) -> None:
        if outgoing.kind == "post":
            self.mailbox.set("last post", datetime.now(UTC).isoformat(timespec="seconds"))
            self.mailbox.posted(f"{to.chat}:{message}")
        if outgoing.pin:
            self.office.errand(self.joining.pin(to, message))

    def _refused(self, outgoing: Outgoing, why: str) -> None:
        """A message that a chat does not take: an alarm goes to the managers instead."""
        if outgoing.urgent and not outgoing.about.get("redirected"):
            for person in self.served.barn.people:
                if person.role == "manager" and person.telegram and person.name != outgoing.to:
                    about = outgoing.about | {"redirected": True}
                    redirected = Outgoing(outgoing.kind, outgoing.text, to=person.name, about=about, urgent=True)
                    self.mailbox.put(redirected, datetime.now(UTC))
            self.courier.poke()

    def _settle_soon(self) -> None:
        """Let the barn plan anew once nobody has said anything for a moment."""
        loop = asyncio.get_running_loop()
        if self._settle:
            self._settle.cancel()
        self._settle_by = self._settle_by or loop.time() + SETTLE_LATEST_S
        self._settle = loop.call_at(min(loop.time() + SETTLE_S, self._settle_by), self._settled)

    def _settled(self) -> None:
        self._settle = self._settle_by = None
        self.served.tick(datetime.now(UTC))
        self.served.rest()
        self.courier.poke()

    async def look_around(self) -> None:
        """At a start: see what the group is like."""
        await self.joining.look_around()
        self.courier.poke()

    async def close(self) -> None:
        """See `Place`."""
        if self._settle:
            self._settle.cancel()
        await super().close()


class Lobby(Place):
    """Whoever belongs to no barn: one polite line, then silence; a group is left."""

    def __init__(self, office: Office, own: Mailbox, barns: Sequence[Served]) -> None:
        self.office = office
        self.mailbox = own
        self.barns = barns
        self.courier = Courier(
            office.bot,
            self.mailbox,
            office.pace,
            language="en",
            addresses=lambda outgoing: [Address(int(outgoing.to))],
            moved=lambda _: None,
            arrived=self._leave,
            refused=lambda outgoing, why: None,
        )

    def understand(self, update: Update) -> None:
        """Say the line, once for a chat."""
        origin, place = words_of.origin(update), words_of.membership(update)
        if origin.chat is None:
            raise ValueError("an update that names no chat")
        if (place and not place.present) or self.mailbox.setting(f"told:{origin.chat}"):
            return
        book = phrasebook("en")
        name = origin.sender.name if origin.sender else ""
        several = origin.private and origin.sender is not None and self._listed(origin.sender.id)
        line = "several barns" if several else "stranger" if origin.private else "unknown group"
        self.mailbox.put(Outgoing("answer", book.say(line, name=name), to=str(origin.chat)), datetime.now(UTC))
        if not several:  # who is listed twice is told each time
            self.mailbox.set(f"told:{origin.chat}", datetime.now(UTC).isoformat(timespec="seconds"))

    def _listed(self, sender: int | None) -> bool:
        return any(p.telegram == sender for served in self.barns for p in served.barn.people)

    def _leave(self, outgoing: Outgoing, to: Address, message: int) -> None:
        if to.chat < 0:
            self.office.errand(self.office.bot.leave_chat(to.chat))
