"""The group in a terminal: typed live, or a script on its own clock."""

import json
import sys
import textwrap
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import TextIO
from zoneinfo import ZoneInfo

from bot.barn_day import BarnDay
from bot.chat.script import STAMP, Line
from bot.message import Incoming, Outgoing, Sender

STEP = timedelta(minutes=1)


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
        """Somebody says something in the group."""
        self.count += 1
        key = f"terminal:{at.isoformat()}:{self.count}"
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
                "text": outgoing.text,
                "picture": picture,
            }
            print(json.dumps(shown, ensure_ascii=False), file=self.out, flush=True)
            return
        to = "" if outgoing.to == "group" else f" (to {outgoing.to})"
        self._print(at, f"haybell{to}", outgoing.text)
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
            if line.who == "forecast":
                swap(Path(line.text), line.at)
                terminal.tick(line.at)
            else:
                terminal.say(line.who, line.text, line.at)
        terminal.tick(clock)
        clock += STEP


def converse(terminal: Terminal, typed: TextIO) -> None:
    """Live: each line typed is `Name: message`; the clock is the machine's."""
    terminal.tick(datetime.now(UTC))
    for raw in typed:
        who, colon, text = raw.strip().partition(":")
        if not raw.strip():
            continue
        if not colon:
            print(textwrap.fill("Type Name: message, for example Inés: Maple sweaty"), file=terminal.out)
            continue
        terminal.say(who.strip(), text.strip(), datetime.now(UTC))
