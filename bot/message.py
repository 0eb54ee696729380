"""What goes through any chat: one message in, one message out, and the door that carries them."""

from dataclasses import dataclass, field
from datetime import datetime
from typing import Any, Literal, Protocol

Kind = Literal["post", "answer", "ask", "recheck", "alert", "update", "react"]


@dataclass(frozen=True)
class Sender:
    """Who wrote, as the chat knows them: a Telegram id, or the name typed in a terminal."""

    id: int | None
    name: str


@dataclass(frozen=True)
class Incoming:
    """One message or one tap on a button.

    key: "<chat>:<message>" in this chat's own numbering; the same for an edit of the message.
    reply_to: key of the message it answers. tap: the data of the button pressed, or of a
    command that asks the same; None for text.
    """

    key: str
    sender: Sender
    text: str
    at: datetime
    reply_to: str | None = None
    edited: bool = False
    private: bool = False
    tap: str | None = None


@dataclass(frozen=True)
class Button:
    """A choice under a message. data: at most 64 bytes."""

    text: str
    data: str


@dataclass(frozen=True)
class Outgoing:
    """One message to be sent, or a reaction.

    to: "group", or a person's name for a private message. reply_to: key of the message answered.
    text: plain text; names stand as written; the door escapes. For a reaction: one emoji.
    about: what an answer to this message would be about, e.g. {"horses": ["Maple"], "round": "morning"}.
    urgent: may break quiet hours and goes before everything else.
    """

    kind: Kind
    text: str
    to: str = "group"
    reply_to: str | None = None
    picture: bytes | None = None
    buttons: tuple[tuple[Button, ...], ...] = ()
    about: dict[str, Any] = field(default_factory=dict)
    urgent: bool = False
    pin: bool = False
    mentions: tuple[tuple[str, int], ...] = ()  # (name as the text has it, their Telegram number): their phone rings
    strong: tuple[str, ...] = ()  # what the eye should find first, as the text has it; a door may show it
    edits: str | None = None  # the key of a message of ours that gets these buttons in place of its own; nothing else


class Door(Protocol):
    """A chat: Telegram or a terminal. It carries; it decides nothing."""

    async def send(self, outgoing: Outgoing) -> str | None:
        """Send one message; its key in the chat, None for a reaction."""
        ...
