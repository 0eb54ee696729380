"""The groups in Telegram: one bot, many barns, each its own group; strictly apart. It carries; it decides nothing.

    server ─► InboxRequest ─► a barn's inbox ─► its day ─► its outbox ─► Courier ─► server

The inbox is the only queue: what is waiting there is acted on, whether it came now or before a restart.
"""

import asyncio
import logging
from collections.abc import Mapping, Sequence
from datetime import UTC, datetime
from typing import Any

from telegram import Bot
from telegram.error import InvalidToken, RetryAfter, TelegramError

from bot.chat import incoming as words_of
from bot.chat.durable import InboxRequest, SendRequest, error_line, poll
from bot.chat.pace import Pace
from bot.chat.rooms import Lobby, Office, Place, Room
from bot.mailbox import Mailbox
from bot.problems import Failed
from bot.pulse import Pulse
from bot.served import Served, describe
from bot.store import Store

LOG = logging.getLogger(__name__)

AT_ONCE = 25  # messages acted on in one commit
TOKEN_TRIES = 4  # a server may refuse a good token for a moment; a wrong one must be said soon
DISK_PAUSE_S = 5.0

Update = dict[str, Any]


class Telegram:
    """One bot and the barns it serves. own: a store for what belongs to no barn (strangers)."""

    def __init__(self, barns: Sequence[Served], token: str, api_url: str, own: Store, pulse: Pulse) -> None:
        self.pulse = pulse
        self._requests = (InboxRequest(self._hold), SendRequest())
        inbox, send = self._requests
        self.bot = Bot(token, base_url=api_url, request=send, get_updates_request=inbox)
        self.office = Office(self.bot, Pace())
        self.rooms = [Room(self.office, served) for served in barns]
        self.lobby = Lobby(self.office, Mailbox(own), barns)
        self.places: tuple[Place, ...] = (*self.rooms, self.lobby)
        self._unread: set[Place] = set(self.places)
        self._begun: set[Place] = set()
        self._arrived = asyncio.Event()
        self._arrived.set()
        self.stopped = asyncio.Event()
        for place in self.places:  # before anything can be sent
            place.mailbox.begin(datetime.now(UTC))

    async def run(self) -> None:
        """Serve until `stopped` is set. Failed where the token is refused."""
        work = [asyncio.create_task(self._converse()), asyncio.create_task(self._act_for_ever())]
        stop = asyncio.create_task(self.stopped.wait())
        try:
            done, _ = await asyncio.wait([*work, stop], return_when=asyncio.FIRST_COMPLETED)
            for task in done - {stop}:
                task.result()
        finally:
            await self._close([*work, stop])

    async def _converse(self) -> None:
        await self._greet_server()
        for place in self.places:
            place.courier.poke()
        for room in self.rooms:
            self.office.errand(room.look_around())
        await poll(self.bot, self.pulse)

    def poke(self, served: Served) -> None:
        """Something may have been written into a barn's outbox."""
        for room in self.rooms:
            if room.served is served:
                room.courier.poke()

    async def _greet_server(self) -> None:
        """Learn who we are. Waits as long as the server cannot be reached; gives up on a token it keeps refusing."""
        refused, pause = 0, 0.5
        while True:
            try:
                self.office.me = await self.bot.get_me()
            except InvalidToken as error:
                refused += 1
                if refused == TOKEN_TRIES:
                    raise Failed(
                        "the server refuses the token; check HAYBELL_TOKEN, or ask BotFather for a new one"
                    ) from error
            except RetryAfter:
                pause = 5.0
            except TelegramError as error:
                LOG.warning("the server cannot be reached: %s", error_line(error))
            except (TypeError, ValueError, KeyError):  # an answer too short to be a user: it lives, that is enough
                return
            else:
                return
            self.pulse.polled = datetime.now(UTC)
            await asyncio.sleep(pause)
            pause = min(30.0, pause * 2)

    def _hold(self, updates: list[Update]) -> None:
        """Commit each update to the inbox of the barn it is for, and act on it. Failed where the disk takes nothing."""
        held: dict[Place, list[tuple[int, str]]] = {}
        for update in updates:
            held.setdefault(self._home(update), []).append((update["update_id"], words_of.raw(update)))
            if "callback_query" in update:
                self._acknowledge(update)
            if words_of.moved(update):  # what comes after it is to be looked for in the new group
                self._keep(held)
                held = {}
        self._keep(held)

    def _keep(self, held: Mapping[Place, list[tuple[int, str]]]) -> None:
        for place, updates in held.items():
            place.mailbox.hold(updates)
            self._act(place)

    def _acknowledge(self, update: Update) -> None:
        """End the waiting sign on the button at once."""
        query = update["callback_query"]
        if isinstance(query, dict) and "id" in query:
            self.office.errand(self.bot.answer_callback_query(str(query["id"])))

    def _home(self, update: Update) -> Place:
        """The barn whose group it was said in, or the only one that lists who said it privately; else the lobby."""
        try:
            origin, change = words_of.origin(update), words_of.moved(update)
            told = words_of.incoming(update, datetime.now(UTC))
        except Exception as error:  # of no known shape: set aside in the lobby
            LOG.warning("an update of unknown shape: %s", describe(error))
            return self.lobby
        chats = {origin.chat, change.old if change else None, change.new if change else None} - {None}
        for room in self.rooms:
            if {room.served.group, room.served.barn.chat} & chats:
                return room
        if not origin.private or origin.sender is None:
            return self.lobby
        listed = [r for r in self.rooms if any(p.telegram == origin.sender.id for p in r.served.barn.people)]
        answered = [r for r in listed if told and told.reply_to and r.mailbox.message(told.reply_to)]
        found = answered or listed
        return found[0] if len(found) == 1 else self.lobby

    def _act(self, place: Place) -> None:
        """Act on what waits longest at a place; the commit of that also settles what was just held."""
        if place not in self._begun:
            self._begun.add(place)
            for number in place.mailbox.suspect():
                LOG.error("update %d set aside: it was first in line at too many starts", number)
                place.spoiled()
        waiting = place.mailbox.waiting(AT_ONCE)
        place.act(waiting)
        place.courier.poke()
        if len(waiting) == AT_ONCE:
            self._unread.add(place)
            self._arrived.set()

    async def _act_for_ever(self) -> None:
        """Act on what is left over from large batches, from before a start, and from when the disk was full."""
        while True:
            await self._arrived.wait()
            self._arrived.clear()
            places, self._unread = self._unread, set()
            for place in places:
                try:
                    self._act(place)
                except Failed as error:  # what waits stays where it is
                    LOG.error("%s", error)
                    self._unread.add(place)
                    asyncio.get_running_loop().call_later(DISK_PAUSE_S, self._arrived.set)
                await asyncio.sleep(0)

    async def _close(self, tasks: Sequence[asyncio.Task[Any]]) -> None:
        for task in tasks:
            task.cancel()
        await asyncio.gather(*tasks, return_exceptions=True)
        await asyncio.gather(*(place.close() for place in self.places))
        await self.office.close()
        await asyncio.gather(*(request.shutdown() for request in self._requests))
