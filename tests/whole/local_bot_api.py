"""A Bot API server of our own, as the documented one behaves where it matters to us, with faults on demand.

Long polling, confirmation by offset and redelivery, 409 to the older of two pollers, allowed updates, privacy mode,
the limits of texts and buttons, photos, edits, taps, migration; and for each method: refusals, late answers,
answers that never come.
"""

import asyncio
import itertools
import json
import time
from collections import defaultdict
from dataclasses import dataclass, field
from typing import Any

from aiohttp import web

from tests.whole.telegram_html import Refused, shown

TOKEN = "123456789:AAlocalTokenForTestsOnly_0123456789ab"
BOT = {"id": 123456789, "is_bot": True, "first_name": "Haybell", "username": "haybell_test_bot"}
GROUP = -1001234567890
PLAIN = ("deleteWebhook", "setMyCommands", "answerCallbackQuery", "pinChatMessage", "unpinChatMessage", "leaveChat")

Json = dict[str, Any]


@dataclass
class Fault:
    """What happens instead of, or around, a method's work.

    done: the work is done although the answer fails. late_s: the answer waits. silent: the connection is cut.
    body: sent as it is, no JSON of ours.
    """

    code: int = 200
    description: str = ""
    parameters: Json | None = None
    done: bool = False
    late_s: float = 0.0
    silent: bool = False
    body: bytes | None = None


@dataclass
class Sent:
    """One thing the bot did that people can see."""

    at: float
    method: str
    chat: int
    text: str
    message_id: int
    fields: Json = field(default_factory=dict)


class LocalBotApi:
    """Start it, speak through it, look at what the bot sent."""

    def __init__(self, *, only: set[str] | None = None, privacy: bool = False) -> None:
        self.only = only
        self.privacy = privacy
        self.url = ""
        self.sent: list[Sent] = []
        self.calls: list[tuple[str, Json]] = []
        self.pending: list[Json] = []
        self.confirmed = 0
        self.gone: dict[int, int] = {}  # old chat id → new
        self.kicked: set[int] = set()
        self.member = "member"
        self.faults: defaultdict[str, list[Fault]] = defaultdict(list)
        self.bots_messages: set[tuple[int, int]] = set()
        self.buttons: dict[tuple[int, int], str | None] = {}  # of each message of the bot, as they are now
        self._ids = itertools.count(1)
        self._updates = itertools.count(1000)
        self._news = asyncio.Event()
        self._poller: asyncio.Event | None = None
        self._methods: dict[str, Any] = {
            "getMe": self._get_me,
            "getUpdates": self._get_updates,
            "sendMessage": self._send_message,
            "sendPhoto": self._send_photo,
            "setMessageReaction": self._react,
            "editMessageReplyMarkup": self._edit_buttons,
            "getChatMember": self._chat_member,
        } | dict.fromkeys(PLAIN, lambda data: True)
        self._runner: web.AppRunner | None = None
        self._port = 0

    # ── the server ───────────────────────────────────────────────────────────────────────────────────────────────

    async def start(self) -> "LocalBotApi":
        """Listen on a free port of this machine, or on the same one as before."""
        app = web.Application(client_max_size=20 * 2**20)
        app.router.add_route("*", "/bot{token}/{method}", self._call)
        self._runner = web.AppRunner(app, access_log=None, shutdown_timeout=0.1)
        await self._runner.setup()
        site = web.TCPSite(self._runner, "127.0.0.1", self._port, reuse_address=True)
        await site.start()
        self._port = site._server.sockets[0].getsockname()[1]  # type: ignore[union-attr]
        self.url = f"http://127.0.0.1:{self._port}/bot"
        return self

    async def stop(self) -> None:
        """Be unreachable; `start` brings it back as it was."""
        self._news.set()
        if self._runner:
            await self._runner.cleanup()

    async def __aenter__(self) -> "LocalBotApi":
        return await self.start()

    async def __aexit__(self, *_: object) -> None:
        await self.stop()

    # ── people ───────────────────────────────────────────────────────────────────────────────────────────────────

    def say(self, who: int, text: str, *, chat: int = GROUP, reply_to: int | None = None, **more: Any) -> int:
        """Somebody writes; the message's number. With privacy mode on the bot is shown only what is meant for it."""
        number = next(self._ids)
        message = self.message(who, text, chat, number) | more
        if reply_to is not None:
            message["reply_to_message"] = {"message_id": reply_to, "date": int(time.time()), "chat": {"id": chat}}
        meant = chat > 0 or text.startswith("/") or (chat, reply_to) in self.bots_messages
        if meant or not self.privacy:
            self.update(message=message)
        return number

    def edit(self, who: int, number: int, text: str, *, chat: int = GROUP) -> None:
        """Somebody changes what they wrote."""
        self.update(edited_message=self.message(who, text, chat, number) | {"edit_date": int(time.time())})

    def tap(self, who: int, number: int, data: str, *, chat: int = GROUP) -> None:
        """Somebody presses a button under the bot's message."""
        message = {"message_id": number, "date": int(time.time()), "chat": self.chat(chat), "from": BOT}
        query = {"id": str(next(self._ids)), "from": self.person(who), "chat_instance": "1", "data": data}
        self.update(callback_query=query | {"message": message})

    def update(self, **body: Any) -> int:
        """Any update as it is; its number."""
        number = next(self._updates)
        self.pending.append({"update_id": number, **body})
        self._news.set()
        return number

    def message(self, who: int, text: str, chat: int, number: int) -> Json:
        """A text message."""
        return {
            "message_id": number,
            "date": int(time.time()),
            "chat": self.chat(chat),
            "from": self.person(who),
            "text": text,
        }

    @staticmethod
    def person(who: int) -> Json:
        """Somebody, by their number."""
        return {"id": who, "is_bot": False, "first_name": f"P{who}"}

    @staticmethod
    def chat(chat: int) -> Json:
        """A group for negative numbers, else a person's own chat."""
        if chat < 0:
            return {"id": chat, "type": "supergroup", "title": "Barn"}
        return {"id": chat, "type": "private", "first_name": f"P{chat}"}

    # ── faults, and what was seen ────────────────────────────────────────────────────────────────────────────────

    def fail(self, method: str, fault: Fault, times: int = 1) -> None:
        """The next calls of a method meet this fault."""
        self.faults[method].extend([fault] * times)

    def texts(self, chat: int | None = None) -> list[str]:
        """What the bot wrote, in order."""
        return [s.text for s in self.sent if s.method == "sendMessage" and chat in (None, s.chat)]

    async def until(self, true: Any, seconds: float = 10.0) -> None:
        """Wait until something holds; AssertionError if it does not in time."""
        end = time.monotonic() + seconds
        while not true():
            assert time.monotonic() < end, f"not within {seconds} s; sent so far: {self.texts()[-5:]}"
            await asyncio.sleep(0.005)

    # ── methods ──────────────────────────────────────────────────────────────────────────────────────────────────

    async def _call(self, request: web.Request) -> web.StreamResponse:
        method, data = request.match_info["method"], await self._data(request)
        if request.match_info["token"] != TOKEN:
            return self._refuse(401, "Unauthorized")
        if method != "getUpdates":
            self.calls.append((method, data))
        known = self._methods.get(method)
        if known is None or (self.only is not None and method not in self.only):
            return self._refuse(404, "Not Found")
        fault = self.faults[method].pop(0) if self.faults[method] else None
        if fault is None:
            return await self._done(known, data)
        answer = await self._done(known, data) if fault.done or fault.code == 200 else None
        if fault.late_s:
            await asyncio.sleep(fault.late_s)
        if fault.silent and request.transport:
            request.transport.abort()
        if fault.body is not None:
            return web.Response(status=fault.code, body=fault.body)
        if fault.code != 200:
            return self._refuse(fault.code, fault.description, fault.parameters)
        assert answer is not None
        return answer

    async def _done(self, known: Any, data: Json) -> web.StreamResponse:
        try:
            result = known(data)
            return web.json_response({"ok": True, "result": await result if asyncio.iscoroutine(result) else result})
        except Refused as error:
            return self._refuse(error.code, error.description, error.parameters)

    @staticmethod
    async def _data(request: web.Request) -> Json:
        if request.content_type == "application/json":
            return dict(await request.json())
        found: Json = {}
        for name, value in (await request.post()).items():
            found[name] = value.file.read() if isinstance(value, web.FileField) else value
        return found

    @staticmethod
    def _refuse(code: int, description: str, parameters: Json | None = None) -> web.Response:
        body = {"ok": False, "error_code": code, "description": description}
        return web.json_response(body | ({"parameters": parameters} if parameters else {}), status=code)

    def _get_me(self, data: Json) -> Json:
        return BOT | {"can_join_groups": True, "can_read_all_group_messages": not self.privacy}

    async def _get_updates(self, data: Json) -> list[Json]:
        if self._poller:
            self._poller.set()
        mine = self._poller = asyncio.Event()
        offset, end = int(data.get("offset") or 0), time.monotonic() + float(data.get("timeout") or 0)
        self.confirmed = max(self.confirmed, offset)
        self.pending = [u for u in self.pending if u["update_id"] >= offset]
        wanted = json.loads(data["allowed_updates"]) if data.get("allowed_updates") else None
        while True:
            self._news.clear()
            found = [u for u in self.pending if wanted is None or set(u) & set(wanted)][: int(data.get("limit") or 100)]
            if found or time.monotonic() >= end:
                return found
            waits = [asyncio.ensure_future(e.wait()) for e in (self._news, mine)]
            await asyncio.wait(waits, timeout=end - time.monotonic(), return_when=asyncio.FIRST_COMPLETED)
            for one in waits:
                one.cancel()
            if mine.is_set():
                raise Refused(409, "Conflict: terminated by other getUpdates request")

    def _send_message(self, data: Json) -> Json:
        text = shown(data.get("text", ""), data.get("parse_mode"))
        if not text.strip():
            raise Refused(400, "Bad Request: message text is empty")
        if len(text.encode("utf-16-le")) // 2 > 4096:
            raise Refused(400, "Bad Request: message is too long")
        return self._sent("sendMessage", data, text)

    def _send_photo(self, data: Json) -> Json:
        caption = shown(data.get("caption") or "", data.get("parse_mode"))
        if len(caption.encode("utf-16-le")) // 2 > 1024:
            raise Refused(400, "Bad Request: message caption is too long")
        picture = {"file_id": "p", "file_unique_id": "p", "width": 1, "height": 1}
        return self._sent("sendPhoto", data, caption) | {"photo": [picture]}

    def _react(self, data: Json) -> bool:
        emoji = json.loads(data["reaction"])[0]["emoji"]
        self.sent.append(Sent(time.monotonic(), "setMessageReaction", int(data["chat_id"]), emoji, 0, data))
        return True

    def _edit_buttons(self, data: Json) -> Json:
        chat, number = int(data["chat_id"]), int(data["message_id"])
        self._reach(chat)
        if (chat, number) not in self.bots_messages:
            raise Refused(400, "Bad Request: message to edit not found")
        if self.buttons.get((chat, number)) == data.get("reply_markup"):
            raise Refused(400, "Bad Request: message is not modified")
        self._check(data)
        self.buttons[chat, number] = data.get("reply_markup")
        return self.message(0, "", chat, number) | {"from": BOT}

    def _chat_member(self, data: Json) -> Json:
        return {"status": self.member, "user": BOT}

    def _sent(self, method: str, data: Json, text: str) -> Json:
        chat = int(data["chat_id"])
        self._reach(chat)
        if data.get("message_thread_id") in ("1", 1):
            raise Refused(400, "Bad Request: message thread not found")
        self._check(data)
        number = next(self._ids)
        self.bots_messages.add((chat, number))
        self.buttons[chat, number] = data.get("reply_markup")
        self.sent.append(Sent(time.monotonic(), method, chat, text, number, data))
        return self.message(0, text, chat, number) | {"from": BOT}

    def _reach(self, chat: int) -> None:
        if chat in self.gone:
            new = self.gone[chat]
            raise Refused(400, "Bad Request: group chat was upgraded", {"migrate_to_chat_id": new})
        if chat in self.kicked:
            raise Refused(403, "Forbidden: bot was kicked from the supergroup chat")

    @staticmethod
    def _check(data: Json) -> None:
        for row in json.loads(data["reply_markup"])["inline_keyboard"] if data.get("reply_markup") else ():
            if any(not 1 <= len(button["callback_data"].encode()) <= 64 for button in row):
                raise Refused(400, "Bad Request: BUTTON_DATA_INVALID")
