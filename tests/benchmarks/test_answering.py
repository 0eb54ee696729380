"""From message to committed answer, beside a bare echo bot on the same server in one run; printed, not asserted."""

import asyncio
import os
import statistics
import sys
import time
from collections.abc import AsyncIterator, Sequence
from contextlib import asynccontextmanager
from pathlib import Path

from pytest_benchmark.fixture import BenchmarkFixture

from tests.whole.local_bot_api import LocalBotApi

ROOT = Path(__file__).parents[2]
ECHO = ("-m", "tests.whole.echo_bot")
CARRIER = ("-m", "tests.whole.stand_in")


@asynccontextmanager
async def running(api: LocalBotApi, *command: str, **more: str) -> AsyncIterator[asyncio.subprocess.Process]:
    """A bot as its own process, ready to answer."""
    env = os.environ | {"PYTHONPATH": str(ROOT), "HAYBELL_RATE": "off"} | more
    bot = await asyncio.create_subprocess_exec(sys.executable, *command, env=env, cwd=ROOT)
    try:
        yield bot
    finally:
        bot.kill()
        await bot.wait()


async def measured(api: LocalBotApi, singles: int, burst: int, text: str) -> tuple[list[float], float]:
    """Seconds from a message to its answer, one at a time; and answers a second in a burst."""
    took = []
    for number in range(singles + 5):
        before = len(api.sent)
        start = time.perf_counter()
        api.say(1001, text.format(number))
        while len(api.sent) == before:
            await asyncio.sleep(0)
        took.append(time.perf_counter() - start)
    await asyncio.sleep(0.2)
    before = len(api.sent)
    start = time.perf_counter()
    for number in range(burst):
        api.say(1001, text.format(number))
    await api.until(lambda: len(api.sent) >= before + burst, 120)
    return took[5:], burst / (time.perf_counter() - start)


async def beside(commands: Sequence[tuple[str, ...]], singles: int, burst: int) -> list[tuple[float, float, float]]:
    """(p50 s, p90 s, answers a second) of each bot on a server of its own, in turn."""
    found = []
    for command in commands:
        async with LocalBotApi() as api, running(api, *command, api.url):
            await api.until(lambda api=api: any(m == "getMe" for m, _ in api.calls), 20)
            api.say(1001, "warm")
            await api.until(lambda api=api: "noted warm" in api.texts(), 20)
            took, rate = await measured(api, singles, burst, "message {}")
            found.append((statistics.median(took), statistics.quantiles(took, n=10)[8], rate))
    return found


def test_carrying_costs_little_beside_an_echo(benchmark: BenchmarkFixture, tmp_path: Path) -> None:
    """Kept before confirmed, recorded before sent: the price of losing nothing."""
    few = not benchmark.enabled
    singles, burst = (30, 50) if few else (1000, 2000)
    commands = [(*ECHO,), (*CARRIER, str(tmp_path / "barn.sqlite"))]
    echo, ours = benchmark.pedantic(lambda: asyncio.run(beside(commands, singles, burst)), rounds=1)
    benchmark.extra_info.update(p50_ratio=ours[0] / echo[0], throughput_ratio=ours[2] / echo[2])
    for name, (p50, p90, rate) in (("echo", echo), ("haybell", ours)):
        print(f"\n{name:8s} p50 {p50 * 1e3:.2f} ms  p90 {p90 * 1e3:.2f} ms  burst {rate:.0f}/s", end="")
    print(f"\nratio    p50 {ours[0] / echo[0]:.2f}  throughput {ours[2] / echo[2]:.2f}")
