"""The bot's place in its group: added, removed, what it can see there; topics, and the pinned post."""

import logging
from collections.abc import Callable
from datetime import UTC, datetime
from enum import Enum

from telegram import Bot, BotCommand, User
from telegram.error import TelegramError

from bot.chat.durable import error_line
from bot.chat.incoming import Membership
from bot.chat.pieces import Address
from bot.message import Incoming, Outgoing
from bot.served import Served
from bot.words.said import phrasebook

LOG = logging.getLogger(__name__)

COMMANDS = ("today", "left", "done", "drying", "why", "undo", "help")


class Presence(Enum):
    """Whether the bot is in its group, as far as it was told."""

    HERE = "here"
    AWAY = "away"


class Joining:
    """Looks after one barn's group. me: the bot's own account, None where the server did not say."""

    def __init__(self, bot: Bot, served: Served, me: Callable[[], User | None]) -> None:
        self.bot = bot
        self.served = served
        self.me = me

    @property
    def presence(self) -> Presence:
        """Away only where it was told that it was removed."""
        return Presence.AWAY if self.served.mailbox.setting("away") else Presence.HERE

    def member(self, place: Membership, now: datetime) -> None:
        """Added: say what is seen and needed. Removed: tell the managers, and be silent there."""
        box = self.served.mailbox
        if place.chat != self.served.group:
            return
        box.set("away", not place.present)
        if not place.present:
            self._tell_managers("removed", now)
        elif place.joined or place.status != place.was:
            box.put(Outgoing("answer", self._introduction(place)), now)
            if place.joined and any(p.telegram == place.by.id for p in self.served.barn.people):
                box.set("welcome", now.isoformat(timespec="seconds"))  # the day shows its list at its next tick

    async def look_around(self) -> None:
        """At a start: name the commands, and say once where people must reply for the bot to see them."""
        book = phrasebook(self.served.barn.language)
        await self._name_commands()
        me, group, box = self.me(), self.served.group, self.served.mailbox
        if me is None or group is None or me.can_read_all_group_messages is not False or box.setting("said replies"):
            return
        member = await self.bot.get_chat_member(group, me.id)
        if member.status == "member":
            with box.store.transaction():
                box.set("said replies", datetime.now(UTC).isoformat(timespec="seconds"))
                box.put(
                    Outgoing("answer", book.say("sees replies", one=self.served.barn.horses[0].name)), datetime.now(UTC)
                )

    async def _name_commands(self) -> None:
        try:
            await self.bot.set_my_commands([BotCommand(word, word) for word in COMMANDS])
        except TelegramError as error:
            LOG.info("commands not named: %s", error_line(error))

    def topic(self, message: Incoming, thread: int | None) -> None:
        """Remember in which topic a message stands; "/here" makes it the topic for posts."""
        box = self.served.mailbox
        if message.private or (thread is None and box.setting("topics") is None):
            return
        kept = box.setting("topics") or {"posts": None, "last": {}}
        last = dict(list(kept["last"].items())[-50:]) | {message.key: thread}
        posts = thread if message.text.strip().lower() == "here" else kept["posts"]
        box.set("topics", {"posts": posts, "last": last})

    def thread(self, outgoing: Outgoing) -> int | None:
        """The topic an answer belongs to, or the one for posts."""
        kept = self.served.mailbox.setting("topics")
        if kept is None:
            return None
        found: int | None = kept["last"].get(outgoing.reply_to, kept["posts"])
        return found

    async def pin(self, to: Address, message: int) -> None:
        """Pin a post silently where that is allowed, and unpin the one before."""
        if to.chat != self.served.group:
            return
        box, before = self.served.mailbox, self.served.mailbox.setting("pinned")
        try:
            await self.bot.pin_chat_message(to.chat, message, disable_notification=True)
            box.set("pinned", message)
            if before:
                await self.bot.unpin_chat_message(to.chat, before)
        except TelegramError as error:
            LOG.info("not pinned: %s", error_line(error))

    def _introduction(self, place: Membership) -> str:
        barn, book, me = self.served.barn, phrasebook(self.served.barn.language), self.me()
        rounds = ", ".join(f"{r.name} {r.at:%H:%M}" for r in barn.rounds)
        sees_all = place.status == "administrator" or bool(me and me.can_read_all_group_messages)
        self.served.mailbox.set("said replies", "" if sees_all else "joined")
        one = barn.horses[0].name
        lines = [
            book.say("joined", barn=barn.barn, count=len(barn.horses), rounds=rounds),
            book.say("sees all" if sees_all else "sees replies", one=one),
            *([] if place.status == "administrator" else [book.say("may not pin")]),
            book.say("try it"),
        ]
        return "\n".join(lines)

    def _tell_managers(self, line: str, now: datetime) -> None:
        barn = self.served.barn
        for person in barn.people:
            if person.role == "manager" and person.telegram:
                text = phrasebook(person.language).say(line, barn=barn.barn)
                self.served.mailbox.put(Outgoing("alert", text, to=person.name, urgent=True), now)
