"""Carries one barn's outbox to Telegram: in order for each addressee, alarms first, nothing twice unsaid."""

import asyncio
import logging
from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import UTC, datetime, timedelta

from telegram import (
    Bot,
    InlineKeyboardButton,
    InlineKeyboardMarkup,
    LinkPreviewOptions,
    ReactionTypeEmoji,
    ReplyParameters,
)
from telegram.error import BadRequest, ChatMigrated, Forbidden, InvalidToken, RetryAfter

from bot.chat.durable import asked_to_wait, error_line
from bot.chat.markup import html
from bot.chat.pace import Pace
from bot.chat.pieces import Address, Piece, pieces
from bot.chat.wire import NotSent
from bot.mailbox import Mailbox
from bot.message import Button, Outgoing
from bot.outbox import Letter
from bot.problems import Failed
from bot.words.said import phrasebook

LOG = logging.getLogger(__name__)

ROOM_AGAIN_S = 0.2  # how often a full chat is looked at again, so that an alarm can go first
FIRST_PAUSE_S = 1.0
LONGEST_PAUSE_S = 30.0
NO_PREVIEW = LinkPreviewOptions(is_disabled=True)


class Courier:
    """addresses: where a message goes, none where it cannot. arrived: told of each message now in a chat."""

    def __init__(
        self,
        bot: Bot,
        mailbox: Mailbox,
        pace: Pace,
        *,
        language: str,
        addresses: Callable[[Outgoing], Sequence[Address]],
        moved: Callable[[int], None],
        arrived: Callable[[Outgoing, Address, int], None],
        refused: Callable[[Outgoing, str], None],
    ) -> None:
        self.bot = bot
        self.mailbox = mailbox
        self.pace = pace
        self.language = language
        self.addresses = addresses
        self.moved = moved
        self.arrived = arrived
        self.refused = refused
        self.reacts = True  # until the server says it knows no reactions
        self._lanes: dict[str, asyncio.Task[None]] = {}
        self._pauses: dict[str, float] = {}
        self._wake: asyncio.TimerHandle | None = None

    def poke(self) -> None:
        """Something may have to be sent: see that every addressee's lane is at work."""
        now = datetime.now(UTC)
        for addressee in self.mailbox.lanes(now):
            lane = self._lanes.get(addressee)
            if lane is None or lane.done():
                self._lanes[addressee] = asyncio.create_task(self._lane(addressee))
        self._wake_for_held(now)

    async def rest(self, seconds: float) -> None:
        """Let what is on its way arrive, for so long; the remainder stays in the outbox."""
        if self._wake:
            self._wake.cancel()
        busy = [lane for lane in self._lanes.values() if not lane.done()]
        if busy:
            _, late = await asyncio.wait(busy, timeout=seconds)
            for lane in late:
                lane.cancel()
            await asyncio.gather(*late, return_exceptions=True)

    def _wake_for_held(self, now: datetime) -> None:
        first = self.mailbox.next_at()
        if self._wake:
            self._wake.cancel()
            self._wake = None
        if first:
            wait = max(0.05, (first - now).total_seconds())
            self._wake = asyncio.get_running_loop().call_later(wait, self.poke)

    async def _lane(self, addressee: str) -> None:
        """Send to one addressee until nothing is left that may go now."""
        try:
            while letter := self.mailbox.next_letter(addressee, datetime.now(UTC)):
                to = self.addresses(letter.outgoing)
                if not all(self.pace.may(one.chat, urgent=letter.outgoing.urgent) for one in to):
                    await asyncio.sleep(ROOM_AGAIN_S)
                    continue
                await self._deliver(letter, addressee, to)
        except Exception as error:  # the next poke starts the lane anew
            LOG.error("sending stopped: %s", error_line(error))
        self._wake_for_held(datetime.now(UTC))

    async def _deliver(self, letter: Letter, addressee: str, to: Sequence[Address]) -> None:
        """One letter, and what becomes of it."""
        box, now = self.mailbox, datetime.now(UTC)
        try:
            await self._carry(letter, to)
            self._pauses.pop(addressee, None)
        except RetryAfter as error:
            box.waits(letter.id, now + asked_to_wait(error))
        except ChatMigrated as error:
            self.moved(error.new_chat_id)
            box.waits(letter.id, now)
        except (NotSent, InvalidToken) as error:
            pause = min(LONGEST_PAUSE_S, self._pauses.get(addressee, FIRST_PAUSE_S / 2) * 2)
            self._pauses[addressee] = pause
            LOG.warning("not sent: %s; again in %.0f s", error_line(error), pause)
            box.waits(letter.id, now + timedelta(seconds=pause))
        except (Forbidden, BadRequest) as error:
            LOG.error("cannot be sent: %s", error_line(error))
            box.failed(letter.id, error_line(error))
            self.refused(letter.outgoing, error_line(error))
        except Failed:
            raise
        except Exception as error:  # FateUnknown, or an answer the library cannot read
            again = box.unknown(letter.id, datetime.now(UTC))
            LOG.warning(
                "not known whether sent: %s; %s", error_line(error), "once more soon" if again else "left at that"
            )

    async def _carry(self, letter: Letter, to: Sequence[Address]) -> None:
        outgoing = letter.outgoing
        found = [piece for address in to for piece in pieces(outgoing, address)]
        if not found:
            self.mailbox.failed(letter.id, "no chat to send it to")
            return
        if outgoing.kind != "react" and not outgoing.edits:  # to do these twice changes nothing
            self.mailbox.sending(letter)
        for number, piece in enumerate(found[letter.parts :], start=letter.parts):
            doubtful = letter.repeat and number == letter.parts
            send = self._send if len(to) == 1 else self._send_if_taken
            key = await send(self._marked(piece) if doubtful else piece, urgent=outgoing.urgent)
            named = f"{piece.to.chat}:{key}" if key else None
            if number + 1 == len(found):
                self.mailbox.sent(letter.id, named)
            else:
                self.mailbox.part(letter.id, named)
            if key and piece.text:
                self.arrived(outgoing, piece.to, key)

    def _marked(self, piece: Piece) -> Piece:
        """The same piece, saying that it may be a repeat."""
        if piece.reaction:
            return piece
        return replace(piece, text=f"{phrasebook(self.language).say('repeat')}\n{piece.text}".rstrip())

    async def _send_if_taken(self, piece: Piece, *, urgent: bool) -> int | None:
        """To one of several: a chat that does not take it is passed over."""
        try:
            return await self._send(piece, urgent=urgent)
        except (Forbidden, BadRequest) as error:
            LOG.info("passed over: %s", error_line(error))
            return None

    async def _send(self, piece: Piece, *, urgent: bool) -> int | None:
        """One request; the message's number in the chat."""
        await self.pace.take(piece.to.chat, urgent=urgent)
        if piece.reaction:
            return await self._react(piece)
        if piece.edits is not None:
            await self._edit(piece)
            return None
        try:
            return await self._put(piece)
        except BadRequest as error:
            if piece.to.thread and "thread not found" in str(error).lower():
                return await self._put(replace(piece, to=Address(piece.to.chat)))
            raise

    async def _put(self, piece: Piece) -> int:
        if piece.picture is not None:
            return await self._show(piece, piece.picture)
        try:
            return await self._write(piece, html(piece), "HTML")
        except BadRequest as error:
            if "parse entities" not in str(error).lower():
                raise
            LOG.error("sent without its markup: %s", error_line(error))  # no alarm is lost to a bold letter
            return await self._write(piece, piece.text, None)

    async def _write(self, piece: Piece, text: str, parse_mode: str | None) -> int:
        reply = piece.reply_to and ReplyParameters(piece.reply_to, allow_sending_without_reply=True)
        message = await self.bot.send_message(
            piece.to.chat,
            text,
            parse_mode=parse_mode,
            message_thread_id=piece.to.thread,
            reply_parameters=reply or None,
            reply_markup=keyboard(piece.buttons),
            link_preview_options=NO_PREVIEW,
        )
        return message.message_id

    async def _show(self, piece: Piece, picture: bytes) -> int:
        message = await self.bot.send_photo(
            piece.to.chat,
            picture,
            caption=html(piece) or None,
            parse_mode="HTML",
            message_thread_id=piece.to.thread,
            disable_notification=True,
        )
        return message.message_id

    async def _edit(self, piece: Piece) -> None:
        """Other buttons under a message of ours; one that has them already, or is gone, is left as it is."""
        try:
            await self.bot.edit_message_reply_markup(piece.to.chat, piece.edits, reply_markup=keyboard(piece.buttons))
        except (BadRequest, ChatMigrated, Forbidden, InvalidToken) as error:
            LOG.info("buttons not changed: %s", error_line(error))

    async def _react(self, piece: Piece) -> int | None:
        """A reaction; where the server or the chat does not take it, the same as a short answer."""
        if self.reacts and piece.reply_to:
            try:
                await self.bot.set_message_reaction(piece.to.chat, piece.reply_to, ReactionTypeEmoji(piece.text))
            except InvalidToken:  # the method is unknown to this server
                self.reacts = False
            except (BadRequest, Forbidden) as error:
                LOG.info("no reaction: %s", error_line(error))
            else:
                return None
        return await self._put(replace(piece, reaction=False))


def keyboard(rows: Sequence[Sequence[Button]]) -> InlineKeyboardMarkup | None:
    """Buttons as Telegram has them."""
    if not rows:
        return None
    return InlineKeyboardMarkup([[InlineKeyboardButton(b.text, callback_data=b.data) for b in row] for row in rows])
