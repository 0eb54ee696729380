"""What a fault came to: one row each, printed as a table when all have been tried."""

import asyncio
import os
import signal
import sys
import time
from collections import Counter
from collections.abc import AsyncIterator
from contextlib import ExitStack, closing
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot import outbox
from bot.chat import courier, durable, rooms
from bot.chat.telegram import Telegram
from bot.ledger import Ledger
from bot.pulse import Pulse
from bot.store import Store
from tests.whole.local_bot_api import GROUP, TOKEN, LocalBotApi
from tests.whole.stand_in import a_barn, served

ROOT = Path(__file__).parents[2]
REPEAT = "This may be a repeat"


@dataclass(frozen=True)
class Row:
    """A fault, how often it was injected, and what it came to."""

    fault: str
    times: int
    messages: int
    lost: int
    doubled: int
    recovered_s: float

    def __str__(self) -> str:
        cells = f"{self.times:5d} {self.messages:8d} {self.lost:5d} {self.doubled:7d} {self.recovered_s:9.2f} s"
        return f"{self.fault:52s} {cells}"


ROWS: list[Row] = []


@pytest.fixture
def table() -> list[Row]:
    """The rows; shown at the end of the run."""
    return ROWS


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Print the table."""
    if ROWS:
        terminalreporter.section("faults")
        terminalreporter.write_line(f"{'fault':52s} times messages  lost doubled recovered in")
        for row in ROWS:
            terminalreporter.write_line(str(row))


@dataclass
class Barn:
    """One barn at a local server: people speak, faults are injected, and in the end everything is counted."""

    api: LocalBotApi
    path: Path
    said: list[str] = field(default_factory=list)
    running: asyncio.Task[None] | None = None
    telegram: Telegram | None = None
    process: asyncio.subprocess.Process | None = None
    files: ExitStack = field(default_factory=ExitStack)

    def say(self, count: int = 5, who: int = 1001) -> None:
        """Several reports, each told from every other."""
        for _ in range(count):
            text = f"report {len(self.said)}."
            self.said.append(text)
            self.api.say(who, text)

    async def start(self) -> None:
        """Serve in this process."""
        store = self.files.enter_context(closing(Store.open(self.path)))
        own = self.files.enter_context(closing(Store.open(self.path.with_name("own.sqlite"))))
        self.telegram = Telegram([served(a_barn(), store)], TOKEN, self.api.url, own, Pulse(datetime.now(UTC)))
        self.running = asyncio.create_task(self.telegram.run())

    async def spawn(self) -> None:
        """Serve in a process of its own, which can be killed."""
        env = os.environ | {"PYTHONPATH": str(ROOT)}
        command = (sys.executable, "-m", "tests.whole.stand_in", str(self.path), self.api.url)
        with self.path.with_suffix(".log").open("ab") as log:
            self.process = await asyncio.create_subprocess_exec(*command, env=env, cwd=ROOT, stderr=log)

    async def end(self, how: signal.Signals = signal.SIGKILL) -> None:
        """Stop serving; a kill where it is a process."""
        if self.process:
            assert self.process.returncode is None, self.path.with_suffix(".log").read_text()[-2000:]
            self.process.send_signal(how)
            await self.process.wait()
            self.process = None
        if self.telegram and self.running:
            self.telegram.stopped.set()
            await self.running
            self.telegram = self.running = None
        self.files.close()

    def answered(self) -> bool:
        """Whether every report has its answer in the chat."""
        texts = "\n".join(self.api.texts())
        return all(text in texts for text in self.said)

    async def settled(self, seconds: float = 30) -> float:
        """Wait until all are answered, and a little longer for what might be doubled; how long it took."""
        began = time.monotonic()
        await self.api.until(self.answered, seconds)
        took = time.monotonic() - began
        await asyncio.sleep(0.4)
        return took

    def count(self, fault: str, times: int, recovered_s: float) -> Row:
        """What was lost and what was doubled: in the ledger, and in the chat where it does not say so."""
        reader = Store.read(self.path)
        assert reader
        told = Counter(entry.text for entry in Ledger(reader).entries() if entry.text in set(self.said))
        reader.close()
        plain = [text for text in self.api.texts(GROUP) if not text.startswith(REPEAT)]
        heard = Counter(text.removeprefix("noted ") for text in plain)
        lost = sum(1 for text in self.said if not told[text]) + (0 if self.answered() else 1)
        doubled = sum(told[text] - 1 for text in told) + sum(max(0, heard[text] - 1) for text in self.said)
        return Row(fault, times, len(self.said), lost, doubled, recovered_s)


@pytest.fixture
async def barn(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> AsyncIterator[Barn]:
    """A barn, not yet served; limits lifted, pauses short, the stand-in's posts out of the way."""
    monkeypatch.setenv("HAYBELL_RATE", "off")
    monkeypatch.setattr(outbox, "PAUSE_UNKNOWN", outbox.PAUSE_UNKNOWN / 50)
    monkeypatch.setattr(durable, "FIRST_PAUSE_S", 0.02)
    monkeypatch.setattr(courier, "FIRST_PAUSE_S", 0.02)
    monkeypatch.setattr(rooms, "SETTLE_S", 1e6)
    monkeypatch.setattr(rooms, "SETTLE_LATEST_S", 1e6)
    async with LocalBotApi() as api:
        one = Barn(api, tmp_path / "barn.sqlite")
        yield one
        await one.end()
