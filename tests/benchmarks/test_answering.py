"""From message to committed answer, beside a bare echo bot on the same server in one run; printed, not asserted."""

import asyncio
import os
import statistics
import sys
import time
from collections.abc import AsyncIterator, Mapping
from contextlib import AsyncExitStack, asynccontextmanager
from dataclasses import dataclass, field
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from tests.whole.local_bot_api import TOKEN, LocalBotApi

ROOT = Path(__file__).parents[2]
ECHO = ("-m", "tests.whole.echo_bot")
CARRIER = ("-m", "tests.whole.stand_in")
SERVE = ("-m", "bot", "serve", str(ROOT / "demo_barn.yaml"), "--data")
SAID = "Maple sweaty"


@asynccontextmanager
async def running(*command: str, url: str) -> AsyncIterator[asyncio.subprocess.Process]:
    """A bot as its own process, ready to answer."""
    env = os.environ | {"PYTHONPATH": str(ROOT), "HAYBELL_RATE": "off"}
    env |= {"HAYBELL_TOKEN": TOKEN, "HAYBELL_API_URL": url}
    env |= {f"HAYBELL_{name}_URL": "http://127.0.0.1:9" for name in ("OPEN_METEO", "MET_NORWAY", "NWS")}
    more = () if "serve" in command else (url,)
    bot = await asyncio.create_subprocess_exec(sys.executable, *command, *more, env=env, cwd=ROOT)
    try:
        yield bot
    finally:
        bot.kill()
        await bot.wait()


@dataclass
class Bot:
    """A bot at a server of its own, and what was measured of it."""

    name: str
    api: LocalBotApi
    took: list[float] = field(default_factory=list)
    rates: list[float] = field(default_factory=list)

    async def one(self) -> None:
        """Seconds from a message to its answer."""
        before, start = len(self.api.sent), time.perf_counter()
        self.api.say(1001, SAID)
        while len(self.api.sent) == before:
            await asyncio.sleep(0)
        self.took.append(time.perf_counter() - start)

    async def burst(self, size: int) -> None:
        """Answers a second when everybody speaks at once."""
        before, start = len(self.api.sent), time.perf_counter()
        for _ in range(size):
            self.api.say(1001, SAID)
        await self.api.until(lambda: len(self.api.sent) >= before + size, 120)
        self.rates.append(size / (time.perf_counter() - start))


async def beside(commands: Mapping[str, tuple[str, ...]], singles: int, bursts: int, size: int) -> list[Bot]:
    """All bots run at once and are spoken to in turn, so that whatever else the machine does hurts them alike."""
    async with AsyncExitStack() as stack:
        bots = []
        for name, command in commands.items():
            api = await stack.enter_async_context(LocalBotApi())
            await stack.enter_async_context(running(*command, url=api.url))
            await api.until(lambda api=api: any(m == "getMe" for m, _ in api.calls), 20)
            bots.append(Bot(name, api))
            await bots[-1].one()
            await asyncio.sleep(0.3)
        for bot in bots:
            bot.took.clear()
        for _ in range(singles):
            for bot in bots:
                await bot.one()
                await asyncio.sleep(0.004)
        for _ in range(bursts):
            for bot in bots:
                await bot.burst(size)
                await asyncio.sleep(0.05)
        return bots


@pytest.mark.parametrize("kind", ["carrying alone", "the whole bot"])
def test_an_answer_costs_little_beside_an_echo(kind: str, benchmark: BenchmarkFixture, tmp_path: Path) -> None:
    """Kept before confirmed, understood, recorded before sent: the price of losing nothing."""
    counts = (1000, 10, 200) if benchmark.enabled else (20, 1, 30)
    ours_is = (*SERVE, str(tmp_path)) if kind == "the whole bot" else (*CARRIER, str(tmp_path / "barn.sqlite"))
    commands = {"echo": ECHO, "haybell": ours_is}
    echo, ours = benchmark.pedantic(lambda: asyncio.run(beside(commands, *counts)), rounds=1)
    p50, rate = [statistics.median(b.took) for b in (echo, ours)], [statistics.median(b.rates) for b in (echo, ours)]
    benchmark.extra_info.update(p50_ratio=p50[1] / p50[0], throughput_ratio=rate[1] / rate[0])
    print(f"\n{kind}", end="")
    for number, bot in enumerate((echo, ours)):
        print(f"\n{bot.name:8s} p50 {p50[number] * 1e3:.2f} ms  burst {rate[number]:.0f}/s", end="")
    print(f"\nratio    p50 {p50[1] / p50[0]:.2f}  throughput {rate[1] / rate[0]:.2f}")
