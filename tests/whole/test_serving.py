"""`haybell serve` as people start it: a process, a token, a barn file, a server."""

import asyncio
import os
import re
import shutil
import sys
import time
from collections.abc import AsyncIterator, Callable
from contextlib import AbstractAsyncContextManager, asynccontextmanager, suppress
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from tests.whole.local_bot_api import GROUP, TOKEN, Fault, LocalBotApi

ROOT = Path(__file__).parents[2]
DEMO = ROOT / "demo_barn.yaml"
NOWHERE = "http://127.0.0.1:9"
THEO, INES = 1001, 1002


@dataclass
class Serve:
    """A running `haybell serve`."""

    process: asyncio.subprocess.Process
    log: Path

    async def end(self) -> tuple[int, str]:
        """Stop it politely; its exit status and its log."""
        if self.process.returncode is None:
            self.process.terminate()
        status = await asyncio.wait_for(self.process.wait(), 10)
        return status, self.log.read_text()


Start = Callable[..., AbstractAsyncContextManager[Serve]]


@pytest.fixture
def serve(tmp_path: Path) -> Start:
    """Start `haybell serve` with these arguments and this environment."""

    @asynccontextmanager
    async def start(*barns: Path, url: str, **more: str) -> AsyncIterator[Serve]:
        env = {k: v for k, v in os.environ.items() if not k.startswith("HAYBELL_")}
        env |= {"HAYBELL_TOKEN": TOKEN, "HAYBELL_API_URL": url, "HAYBELL_RATE": "off", "PYTHONPATH": str(ROOT)}
        env |= {f"HAYBELL_{name}_URL": NOWHERE for name in ("OPEN_METEO", "MET_NORWAY", "NWS")} | more
        log = tmp_path / f"{time.monotonic_ns()}.log"
        command = (sys.executable, "-m", "bot", "serve", *map(str, barns), "--data", str(tmp_path / "data"))
        with log.open("w") as file:
            process = await asyncio.create_subprocess_exec(*command, env=env, cwd=ROOT, stdout=file, stderr=file)
        try:
            yield Serve(process, log)
        finally:
            if process.returncode is None:
                process.kill()
                await process.wait()

    return start


def demo(folder: Path, **changes: str) -> Path:
    """The demo barn with some of its lines put otherwise."""
    text = DEMO.read_text()
    for key, value in changes.items():
        text, count = re.subn(rf"(?m)^{key}:.*$", f"{key}: {value}", text)
        assert count == 1, key
    path = folder / f"barn{time.monotonic_ns()}.yaml"
    path.write_text(text)
    return path


def rounds_from(hours: float) -> str:
    """Two rounds, the first so many hours from now, the second ten hours after it."""
    first = datetime.now(UTC) + timedelta(hours=hours)
    times = (first, first + timedelta(hours=10))
    return (
        "[" + ", ".join(f'{{name: {n}, at: "{t:%H:%M}"}}' for n, t in zip(("early", "late"), times, strict=True)) + "]"
    )


def with_rounds(folder: Path, hours: float) -> Path:
    """The demo barn in UTC with its rounds moved."""
    text = re.sub(r"(?ms)^rounds:.*?^(?=\w)", f"rounds: {rounds_from(hours)}\n", DEMO.read_text())
    path = folder / "moved.yaml"
    path.write_text(
        re.sub(r"(?m)^timezone:.*$", "timezone: UTC", text).replace("morning:", "early:").replace("evening:", "late:")
    )
    return path


async def test_people_are_answered_and_it_stops_at_once(api: LocalBotApi, serve: Start, tmp_path: Path) -> None:
    """The whole of it, once, with the real barn; nothing in the log but lines."""
    async with serve(demo(tmp_path), url=api.url) as running:
        api.say(THEO, "Maple sweaty")
        await api.until(lambda: any("Maple" in text for text in api.texts(GROUP)), 20)
        began = time.monotonic()
        status, log = await running.end()
    assert status == 0
    assert time.monotonic() - began < 10
    assert TOKEN not in log
    assert "Traceback" not in log


async def test_a_weather_service_that_never_answers_does_not_delay_the_end(
    api: LocalBotApi, serve: Start, tmp_path: Path
) -> None:
    """It is asked in a thread of its own, for up to half a minute; a stop does not wait for it."""

    async def silent(reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        with suppress(ConnectionError):
            await reader.read()
        writer.close()

    server = await asyncio.start_server(silent, "127.0.0.1", 0)
    url = f"http://127.0.0.1:{server.sockets[0].getsockname()[1]}"
    async with server, serve(demo(tmp_path), url=api.url, HAYBELL_OPEN_METEO_URL=url) as running:
        api.say(THEO, "help")
        await api.until(api.texts, 20)
        began = time.monotonic()
        assert (await running.end())[0] == 0
        assert time.monotonic() - began < 5
        await asyncio.sleep(0.1)


async def test_a_server_that_knows_four_methods_is_enough(serve: Start, tmp_path: Path) -> None:
    """Whatever else is asked of it fails, and nothing comes of that."""
    few, barn = {"getMe", "getUpdates", "sendMessage", "sendPhoto"}, with_rounds(tmp_path, 0.5)
    async with LocalBotApi(only=few) as api, serve(barn, url=api.url) as running:
        await api.until(lambda: any(s.method == "sendPhoto" for s in api.sent), 30)
        api.say(THEO, "Juniper liner wet")
        await api.until(lambda: len(api.texts()) >= 2, 20)
        status, log = await running.end()
    assert status == 0
    assert "Traceback" not in log


async def test_a_late_start_posts_late_and_once(api: LocalBotApi, serve: Start, tmp_path: Path) -> None:
    """The round began an hour ago: it is posted, says so, and not again after a restart."""
    barn = with_rounds(tmp_path, -1)
    for _ in range(2):
        async with serve(barn, url=api.url) as running:
            await api.until(lambda: any("Late" in text for text in api.texts(GROUP)), 30)
            await asyncio.sleep(1)
            await running.end()
    assert len([text for text in api.texts(GROUP) if "Late" in text]) == 1


async def test_a_wrong_token_is_one_line(api: LocalBotApi, serve: Start, tmp_path: Path) -> None:
    """Exit status 1, and what to do; the token itself is not repeated."""
    async with serve(demo(tmp_path), url=api.url, HAYBELL_TOKEN="55555:wrongwrongwrongwrongwrongwrong") as running:
        assert await asyncio.wait_for(running.process.wait(), 30) == 1
        log = running.log.read_text()
    assert "the server refuses the token" in log
    assert "wrongwrong" not in log
    assert "Traceback" not in log


async def test_no_token_is_one_line(api: LocalBotApi, serve: Start, tmp_path: Path) -> None:
    """Exit status 2: nothing was started."""
    async with serve(demo(tmp_path), url=api.url, HAYBELL_TOKEN="") as running:
        assert await asyncio.wait_for(running.process.wait(), 30) == 2
        assert "HAYBELL_TOKEN" in running.log.read_text()


async def test_the_token_may_be_in_a_file(api: LocalBotApi, serve: Start, tmp_path: Path) -> None:
    """As service managers like it."""
    secret = tmp_path / "token"
    secret.write_text(f"{TOKEN}\n")
    async with serve(demo(tmp_path), url=api.url, HAYBELL_TOKEN="", HAYBELL_TOKEN_FILE=str(secret)):
        api.say(THEO, "help")
        await api.until(api.texts, 20)


async def test_a_second_process_on_the_same_data_is_refused(api: LocalBotApi, serve: Start, tmp_path: Path) -> None:
    """In one line; the first goes on."""
    barn = demo(tmp_path)
    async with serve(barn, url=api.url):
        await api.until(lambda: api.calls, 20)
        async with serve(barn, url=api.url) as second:
            assert await asyncio.wait_for(second.process.wait(), 30) == 1
            assert "already running on this data" in second.log.read_text()
        api.say(THEO, "help")
        await api.until(api.texts, 20)


async def test_it_waits_for_a_server_that_is_not_there_yet_and_can_be_stopped(
    api: LocalBotApi, serve: Start, tmp_path: Path
) -> None:
    """The router boots slower than the computer."""
    await api.stop()
    async with serve(demo(tmp_path), url=api.url) as running:
        await asyncio.sleep(2.5)
        assert running.process.returncode is None
        await api.start()
        api.say(THEO, "help")
        await api.until(api.texts, 20)
        await api.stop()
        await asyncio.sleep(0.5)
        assert (await running.end())[0] == 0


def helped(api: LocalBotApi, chat: int) -> bool:
    """Whether a chat was answered; at some hours a late post stands there as well."""
    return any("Tell me what you see" in text for text in api.texts(chat))


async def test_many_barns_in_one_process(api: LocalBotApi, serve: Start, tmp_path: Path) -> None:
    """Each its own group; two files of one name or one group are refused."""
    one, two = demo(tmp_path), demo(tmp_path, barn="Low Meadow", chat="-77")
    async with serve(one, two, url=api.url):
        api.say(THEO, "help", chat=-77)
        await api.until(lambda: helped(api, -77), 20)
        assert not helped(api, GROUP)
    for twin in (demo(tmp_path, chat="-78"), demo(tmp_path, barn="Other")):
        async with serve(one, twin, url=api.url) as running:
            assert await asyncio.wait_for(running.process.wait(), 30) == 2
            assert "have the same" in running.log.read_text()


async def test_a_file_with_faults_starts_nothing(api: LocalBotApi, serve: Start, tmp_path: Path) -> None:
    """Exit status 2, before anybody is spoken to."""
    bad = tmp_path / "bad.yaml"
    shutil.copy(DEMO, bad)
    bad.write_text(bad.read_text().replace("units:", "unitz:"))
    async with serve(bad, url=api.url) as running:
        assert await asyncio.wait_for(running.process.wait(), 30) == 2
    assert api.calls == []


async def test_a_moment_s_refusal_at_the_start_is_borne(api: LocalBotApi, serve: Start, tmp_path: Path) -> None:
    """A good token may be refused once."""
    api.fail("getMe", Fault(401, "Unauthorized"), 2)
    async with serve(demo(tmp_path), url=api.url):
        api.say(THEO, "help")
        await api.until(api.texts, 20)
