"""One raw update of Telegram in our own words. Pure; reads only the fields it needs, so that little can spoil it."""

import json
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Any

from bot.message import Incoming, Sender

Update = dict[str, Any]
GENERAL = 1  # the thread id of a forum's general topic, which may not be sent to by that number
MENU = {"today": "today", "left": "left", "done": "left", "drying": "drying", "why": "why"}
# a command by itself, which the menu sends at a touch: as a button of that name; nobody is done by a slip of the thumb
BELIEVED = timedelta(days=3)  # a date further off than this is the server's fault, not when it was said


@dataclass(frozen=True)
class Origin:
    """Where an update comes from. chat None: nowhere that can be named."""

    chat: int | None
    private: bool
    sender: Sender | None


@dataclass(frozen=True)
class Moved:
    """A group became a supergroup: all its ids are new."""

    old: int
    new: int


@dataclass(frozen=True)
class Membership:
    """The bot itself was added to a chat, made administrator, or removed."""

    chat: int
    status: str
    was: str
    by: Sender

    @property
    def present(self) -> bool:
        """Whether it is now in the chat."""
        return self.status in {"member", "administrator", "restricted", "creator"}

    @property
    def joined(self) -> bool:
        """Whether it has just come in."""
        return self.present and self.was in {"left", "kicked", ""}


def raw(update: Update) -> str:
    """The update as text for the inbox; half a character, which no text can hold, becomes a question mark."""
    return json.dumps(update, ensure_ascii=False, separators=(",", ":")).encode("utf-8", "replace").decode()


def parsed(text: str) -> Update:
    """The update back from the inbox."""
    found: Update = json.loads(text)
    return found


def origin(update: Update) -> Origin:
    """Who and where, for any kind of update."""
    body = _body(update)
    message = _dict(body.get("message")) if "callback_query" in update else body
    chat = _dict(message.get("chat"))
    found = chat.get("id")
    sender = body.get("from")
    return Origin(
        chat=found if isinstance(found, int) else None,
        private=chat.get("type") == "private",
        sender=_sender(sender) if isinstance(sender, dict) and "id" in sender else None,
    )


def incoming(update: Update, now: datetime) -> Incoming | None:
    """The message or tap that the update is; None for anything without words, or from another bot."""
    body = _body(update)
    if "callback_query" in update:
        return _tap(body, now)
    text = body.get("text") or body.get("caption") or ""
    sender = body.get("from") or {}
    if "id" not in sender or sender.get("is_bot") is True or not isinstance(text, str) or not text.strip():
        return None
    if "message" not in update and "edited_message" not in update:
        return None
    chat = body["chat"]
    answered = body.get("reply_to_message") or {}
    said = plain(text)
    return Incoming(
        key=f"{chat['id']}:{body['message_id']}",
        sender=_sender(sender),
        text=said,
        at=_at(body.get("date"), now),
        reply_to=f"{chat['id']}:{answered['message_id']}" if "message_id" in answered else None,
        edited="edited_message" in update,
        private=chat.get("type") == "private",
        tap=MENU.get(said) if text.startswith("/") else None,
    )


def plain(text: str) -> str:
    """A command as the words people would say: "/done@haybell_bot Maple" → "done Maple"; /start asks for help."""
    if not text.startswith("/"):
        return text
    command, _, rest = text[1:].partition(" ")
    word = command.partition("@")[0].replace("_", " ")
    return f"{'help' if word == 'start' else word} {rest}".strip()


def moved(update: Update) -> Moved | None:
    """The change of a group's id, told in the old chat or in the new one."""
    message = update.get("message")
    if not isinstance(message, dict):
        return None
    here = _dict(message.get("chat")).get("id")
    old, new = message.get("migrate_from_chat_id", here), message.get("migrate_to_chat_id", here)
    return Moved(old, new) if old != new and isinstance(old, int) and isinstance(new, int) else None


def membership(update: Update) -> Membership | None:
    """What became of the bot's own place in a chat."""
    body = update.get("my_chat_member")
    if not body:
        return None
    was = (body.get("old_chat_member") or {}).get("status", "")
    return Membership(body["chat"]["id"], body["new_chat_member"]["status"], was, _sender(body["from"]))


def topic(update: Update) -> int | None:
    """The topic a message was written in; None in a group without topics and in the general one."""
    body = _body(update)
    message = body.get("message") if "callback_query" in update else body
    thread = (message or {}).get("message_thread_id")
    return thread if (message or {}).get("is_topic_message") and thread != GENERAL else None


def _body(update: Update) -> Update:
    kinds = ("message", "edited_message", "callback_query", "my_chat_member")
    return next((found for kind in kinds if (found := _dict(update.get(kind)))), {})


def _dict(value: Any) -> Update:
    """What should be an object, empty where it is something else."""
    return value if isinstance(value, dict) else {}


def _tap(query: Update, now: datetime) -> Incoming | None:
    message = query.get("message") or {}
    if "data" not in query or "message_id" not in message:
        return None
    chat = message["chat"]
    return Incoming(
        key=f"{chat['id']}:tap-{query['id']}",
        sender=_sender(query["from"]),
        text="",
        at=now,
        reply_to=f"{chat['id']}:{message['message_id']}",
        private=chat.get("type") == "private",
        tap=query["data"],
    )


def _sender(who: Update) -> Sender:
    name = " ".join(str(part) for part in (who.get("first_name"), who.get("last_name")) if part)
    return Sender(int(who["id"]), name or str(who.get("username") or who["id"]))


def _at(date: Any, now: datetime) -> datetime:
    """When it was said, by the server's clock; ours where that one is absurd or ahead."""
    if not isinstance(date, int | float) or abs(date - now.timestamp()) > BELIEVED.total_seconds():
        return now
    return min(datetime.fromtimestamp(date, UTC), now)
