"""What a hundred barns in one process take of the machine's memory. Printed, never asserted."""

import asyncio
import os
import re
import sys
import tempfile
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from tests.whole.local_bot_api import TOKEN, LocalBotApi

ROOT = Path(__file__).parents[2]
MINUTE_S = 65  # until each barn's clock has come round once


def barn_file(folder: Path, number: int, weather: Path) -> Path:
    """The demo barn under another name, with a group and people of its own and a forecast at hand."""
    text = (ROOT / "demo_barn.yaml").read_text()
    lines = {"barn": f"Barn {number}", "chat": str(-1000 - number), "forecast": f"['file:{weather}']"}
    for key, value in lines.items():
        text = re.sub(rf"(?m)^{key}:.*$", f"{key}: {value}", text)
    text = re.sub(r"telegram: (\d+)", lambda found: f"telegram: {number * 1_000_000 + int(found[1])}", text)
    path = folder / f"barn{number}.yaml"
    path.write_text(text)
    return path


def weather_now(folder: Path) -> Path:
    """The demo's hours, laid out from yesterday on."""
    head, *rows = (ROOT / "bot" / "demo" / "morning.csv").read_text().splitlines()
    start = datetime.now(UTC).replace(minute=0, second=0, microsecond=0) - timedelta(days=1)
    shifted = [f"{(start + timedelta(hours=k)).isoformat()},{row.split(',', 1)[1]}" for k, row in enumerate(rows)]
    path = folder / "weather.csv"
    path.write_text("\n".join([head, *shifted]))
    return path


def resident_mb(process: int) -> float:
    """What a process holds of the machine's memory."""
    status = Path(f"/proc/{process}/status").read_text()
    return int(re.search(r"VmRSS:\s+(\d+)", status)[1]) / 1024  # type: ignore[index]


async def served(barns: int, seconds: float) -> dict[str, float]:
    """MB after every barn's first post or line, after a message in each, and a minute later."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        weather = weather_now(folder)
        files = [str(barn_file(folder, k, weather)) for k in range(barns)]
        async with LocalBotApi() as api:
            env = os.environ | {"PYTHONPATH": str(ROOT), "HAYBELL_RATE": "off"}
            env |= {"HAYBELL_TOKEN": TOKEN, "HAYBELL_API_URL": api.url}
            command = (sys.executable, "-m", "bot", "serve", *files, "--data", str(folder / "data"))
            bot = await asyncio.create_subprocess_exec(*command, env=env, cwd=ROOT, stderr=asyncio.subprocess.DEVNULL)
            found = {}
            try:
                await asyncio.sleep(seconds)
                found["begun"] = resident_mb(bot.pid)
                for k in range(barns):
                    api.say(k * 1_000_000 + 1001, "Maple sweaty", chat=-1000 - k)
                before = len(api.sent)
                await api.until(lambda: len(api.sent) >= before + barns, 60)
                await asyncio.sleep(seconds / 4)
                found["a message in each"] = resident_mb(bot.pid)
                await asyncio.sleep(MINUTE_S if barns > 2 else 0)
                found["a minute later"] = resident_mb(bot.pid)
            finally:
                bot.terminate()
                await bot.wait()
            return found


@pytest.mark.skipif(not Path("/proc/self/status").exists(), reason="reads Linux's own account of a process")
def test_a_hundred_barns_share_a_small_computer(benchmark: BenchmarkFixture) -> None:
    """One process, each barn with its own file, group, people and plan."""
    barns, seconds = (100, 30.0) if benchmark.enabled else (2, 4.0)
    found = benchmark.pedantic(lambda: asyncio.run(served(barns, seconds)), rounds=1)
    benchmark.extra_info.update(found)
    print(f"\n{barns} barns:", ", ".join(f"{when} {mb:.0f} MB" for when, mb in found.items()))
