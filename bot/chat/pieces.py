"""A message as requests to Telegram: its text in pieces that fit, buttons under the last, then its picture. Pure."""

from dataclasses import dataclass, replace

from bot.message import Button, Outgoing

LONGEST_TEXT = 4096 - 200  # UTF-16 units, as Telegram counts; room for a line that says it may be a repeat


@dataclass(frozen=True)
class Address:
    """Where a letter goes. thread: a forum's topic."""

    chat: int
    thread: int | None = None


@dataclass(frozen=True)
class Piece:
    """One request to Telegram: text, or a picture, or a reaction to `reply_to`."""

    to: Address
    text: str = ""
    picture: bytes | None = None
    reaction: bool = False
    reply_to: int | None = None
    buttons: tuple[tuple[Button, ...], ...] = ()
    edits: int | None = None
    mentions: tuple[tuple[str, int], ...] = ()
    strong: tuple[str, ...] = ()


def pieces(outgoing: Outgoing, to: Address) -> list[Piece]:
    """A message as requests: its text in pieces that fit, the buttons under the last; then its picture."""
    chat, number = split_key(outgoing.reply_to)
    reply_to = number if chat == to.chat else None
    if outgoing.kind == "react":
        return [Piece(to, outgoing.text, reaction=True, reply_to=reply_to)]
    if outgoing.edits:
        there, message = split_key(outgoing.edits)
        return [Piece(Address(there or to.chat), buttons=outgoing.buttons, edits=message)]
    texts = chunks(outgoing.text)
    first = [reply_to] + [None] * len(texts)
    whole = Piece(to, mentions=outgoing.mentions, strong=outgoing.strong)
    found = [replace(whole, text=text, reply_to=one) for text, one in zip(texts, first)]
    if found:
        found[-1] = replace(found[-1], buttons=outgoing.buttons)
    if outgoing.picture is not None:
        found.append(Piece(to, picture=outgoing.picture))
    return found


def chunks(text: str, longest: int = LONGEST_TEXT) -> list[str]:
    """The text in pieces no longer than `longest` UTF-16 units, cut between lines; within one only where it must."""
    found: list[str] = []
    current = ""
    for line in text.split("\n"):
        joined = f"{current}\n{line}" if current else line
        if utf16(joined) <= longest:
            current = joined
            continue
        if current.strip():
            found.append(current)
        *whole, current = _cut(line, longest)
        found.extend(whole)
    return [*found, current] if current.strip() else found


def _cut(line: str, longest: int) -> list[str]:
    """One line in pieces that fit; a character outside the basic plane is never cut in two."""
    if utf16(line) <= longest:
        return [line]
    size = longest // 2  # so many characters fit whatever they are
    return [line[at : at + size] for at in range(0, len(line), size)]


def utf16(text: str) -> int:
    """Length as Telegram counts it."""
    return len(text.encode("utf-16-le", "surrogatepass")) // 2


def split_key(key: str | None) -> tuple[int | None, int | None]:
    """Chat and message of a key; message None for a tap."""
    chat, _, number = (key or "").partition(":")
    try:
        return int(chat), int(number) if number.isdigit() else None
    except ValueError:
        return None, None
