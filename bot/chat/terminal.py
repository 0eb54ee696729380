"""The group in a terminal: typed live, or a script on its own clock."""

import json
import sys
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from hashlib import sha256
from pathlib import Path
from queue import Empty, SimpleQueue
from threading import Thread
from typing import TextIO
from zoneinfo import ZoneInfo

from bot.barn_day import BarnDay
from bot.chat.script import FORECAST, STAMP, Line
from bot.message import Incoming, Outgoing, Sender
from bot.units import NBSP

STEP = timedelta(minutes=1)
IDLE_S = 5.0  # how long nobody types before the clock is looked at
HOW = "Type “Name: message”, for example Inés: Maple sweaty"


@dataclass
class Terminal:
    """Prints what Haybell says, as people read it or one JSON object a line. Pictures go into `pictures`."""

    day: BarnDay
    zone: ZoneInfo
    pictures: Path
    as_json: bool = False
    out: TextIO = sys.stdout
    count: int = 0

    def say(self, who: str, text: str, at: datetime) -> None:
        """Somebody says something in the group. The same line of the same script played again is the same message."""
        at = at.astimezone(UTC)  # half an hour from now is half an hour, also in the hour that comes twice
        self.count += 1
        said = sha256(f"{who}:{text}".encode("utf-8", "surrogatepass")).hexdigest()[:8]
        key = f"terminal:{at.isoformat()}:{self.count}:{said}"
        if not self.as_json:
            self._print(at, who, text)
        self.day.hear(Incoming(key=key, sender=Sender(None, who), text=text, at=at))
        self.drain(at)
        self.tick(at)

    def tick(self, at: datetime) -> None:
        """Let what is due at this minute happen."""
        self.day.tick(at)
        self.drain(at)

    def drain(self, at: datetime) -> None:
        """Print what waits in the outbox."""
        box = self.day.mailbox
        for number, outgoing in box.unsent(at):
            if not outgoing.edits:
                self._show(at, number, outgoing)
            box.sent(number, f"terminal:out:{number}")

    def _show(self, at: datetime, number: int, outgoing: Outgoing) -> None:
        picture = self._picture(number, outgoing)
        if self.as_json:
            shown = {
                "at": at.astimezone(self.zone).isoformat(),
                "kind": outgoing.kind,
                "to": outgoing.to,
                "reply_to": outgoing.reply_to,
                "text": spelled(outgoing),
                "picture": picture,
            }
            print(json.dumps(shown, ensure_ascii=False), file=self.out, flush=True)
            return
        to = "" if outgoing.to == "group" else f" (to {outgoing.to})"
        self._print(at, f"haybell{to}", spelled(outgoing))
        if picture:
            print(f"[picture: {picture}]", file=self.out, flush=True)

    def _picture(self, number: int, outgoing: Outgoing) -> str | None:
        if outgoing.picture is None:
            return None
        self.pictures.mkdir(parents=True, exist_ok=True)
        path = self.pictures / f"board-{number}.png"
        path.write_bytes(outgoing.picture)
        return str(path)

    def _print(self, at: datetime, who: str, text: str) -> None:
        stamp = at.astimezone(self.zone).strftime(STAMP)
        apart = "\n" if "\n" in text else " "
        print(f"{stamp} {who}:{apart}{text}", file=self.out, flush=True)


def spelled(outgoing: Outgoing) -> str:
    """The text, with the choices of a question as numbers to answer with."""
    choices = (
        [button.text.replace(NBSP, " ") for row in outgoing.buttons for button in row] if outgoing.kind == "ask" else []
    )
    return "\n".join([outgoing.text, *(f"{number}. {choice}" for number, choice in enumerate(choices, start=1))])


def midnight(at: datetime) -> datetime:
    """The midnight with which the day of `at` begins."""
    return at.replace(hour=0, minute=0)


def play(
    terminal: Terminal,
    lines: Sequence[Line],
    until: datetime | None,
    swap: Callable[[Path, datetime], None],
) -> None:
    """A script, minute by minute, from the midnight before its first line to `until`, or that after its last."""
    first, last = lines[0].at, lines[-1].at
    clock = midnight(first).astimezone(UTC)
    end = (until or midnight(last + timedelta(days=1))).astimezone(UTC)
    waiting = list(reversed(lines))
    while clock <= end:
        while waiting and waiting[-1].at.astimezone(UTC) <= clock:
            line = waiting.pop()
            if line.who == FORECAST:
                swap(Path(line.text), line.at)
                terminal.tick(line.at)
            else:
                terminal.say(line.who, line.text, line.at)
        terminal.tick(clock)
        clock += STEP


def converse(terminal: Terminal, typed: Iterable[str], idle_s: float = IDLE_S) -> None:
    """Live: each line typed is `Name: message`; what is due by the machine's clock comes while nobody types."""
    print(HOW, file=sys.stderr)
    lines: SimpleQueue[str | None] = SimpleQueue()
    Thread(target=_feed, args=(typed, lines), daemon=True).start()
    while True:
        terminal.tick(datetime.now(UTC))
        try:
            raw = lines.get(timeout=idle_s)
        except Empty:
            continue
        if raw is None:
            return
        _typed(terminal, raw)


def _feed(typed: Iterable[str], lines: SimpleQueue[str | None]) -> None:
    """Lines as they are typed, then None; a terminal that goes away is an end like any other."""
    try:
        for raw in typed:
            lines.put(raw)
    except (OSError, ValueError):
        pass
    lines.put(None)


def _typed(terminal: Terminal, raw: str) -> None:
    who, colon, text = (part.strip() for part in raw.partition(":"))
    if colon and who:
        terminal.say(who, text, datetime.now(UTC))
    elif raw.strip():
        print(HOW, file=sys.stderr)
