"""Weather services of our own, on loopback: good ones, and such as behave as badly as real ones do."""

import json
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from threading import Thread
from typing import Any

import pytest

from bot.barn import Barn
from bot.forecast import PROVIDERS, Fetched, wire

NOW = datetime(2026, 11, 26, 11, 15, tzinfo=UTC)
Behaviour = Callable[[BaseHTTPRequestHandler], None]


@dataclass
class Server:
    """A weather service of our own. behave: what it does with the next requests, the last one for ever."""

    url: str = ""
    behave: list[Behaviour] = field(default_factory=list)
    asked: list[str] = field(default_factory=list)
    headers: list[dict[str, str]] = field(default_factory=list)


@contextmanager
def served() -> Iterator[Server]:
    """A server on loopback, gone at the end."""
    found = Server()

    class Handler(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            found.asked.append(self.path)
            found.headers.append(dict(self.headers))
            act = found.behave.pop(0) if len(found.behave) > 1 else found.behave[0]
            try:
                act(self)
            except OSError:
                self.close_connection = True

        def log_message(self, *_: Any) -> None:
            """In silence."""

    server = ThreadingHTTPServer(("127.0.0.1", 0), Handler)
    server.daemon_threads = True
    server.block_on_close = False
    thread = Thread(target=server.serve_forever, kwargs={"poll_interval": 0.01})
    thread.start()
    found.url = f"http://127.0.0.1:{server.server_port}"
    try:
        yield found
    finally:
        server.shutdown()
        thread.join()
        server.server_close()


@contextmanager
def all_three(monkeypatch: pytest.MonkeyPatch) -> Iterator[dict[str, Server]]:
    """One server a provider, each good until a test says otherwise; no pause between tries."""
    monkeypatch.setattr(wire, "PAUSES_S", (0.0, 0.0))
    with ExitStack() as stack:
        made = {name: stack.enter_context(served()) for name in PROVIDERS}
        for name, server in made.items():
            monkeypatch.setenv(base_variable(name), f"{server.url}/a/path/that/is/left/out")
        made["open-meteo"].behave = [answer(open_meteo())]
        made["met-norway"].behave = [answer(met_norway())]
        made["nws"].behave = [nws_door()]
        yield made


def base_variable(name: str) -> str:
    """What the environment calls a provider's base address."""
    return f"HAYBELL_{name.upper().replace('-', '_')}_URL"


def answer(body: Any, status: int = 200, **headers: str) -> Behaviour:
    """An answer with a body: bytes as they are, anything else as JSON."""

    def act(handler: BaseHTTPRequestHandler) -> None:
        raw = body if isinstance(body, bytes) else json.dumps(body).encode()
        (handler.send_response_only if "Date" in headers else handler.send_response)(status)
        for name, value in headers.items():
            handler.send_header(name.replace("_", "-"), value)
        handler.send_header("Content-Length", str(len(raw)))
        handler.end_headers()
        handler.wfile.write(raw)

    return act


def redirect(to: str, status: int = 302) -> Behaviour:
    """Another address."""
    return answer(b"", status, Location=to)


def drip(head: bytes) -> Behaviour:
    """A few bytes now and then, for ever: no single read takes long."""

    def act(handler: BaseHTTPRequestHandler) -> None:
        handler.close_connection = True
        handler.wfile.write(head)
        while True:
            handler.wfile.write(b" ")
            handler.wfile.flush()
            time.sleep(0.02)

    return act


def open_meteo(air: float = 2.0, start: datetime = NOW, n: int = 60, **columns: list[Any]) -> dict[str, Any]:
    """An answer from the last midnight on, alike in every hour."""
    first = int(start.replace(hour=0, minute=0).timestamp())
    names = {"temperature_2m": air, "relative_humidity_2m": 85, "wind_speed_10m": 6.0, "cloud_cover": 100}
    names |= {"wind_gusts_10m": 11.0, "rain": 0.2, "showers": 0.0, "snowfall": 0.0, "precipitation_probability": 60}
    hourly = {name: [value] * n for name, value in names.items()} | columns
    return {"hourly_units": {}, "hourly": {"time": [first + 3600 * k for k in range(n)], **hourly}}


def met_norway(air: float = 2.0, issued: datetime = NOW - timedelta(hours=2)) -> dict[str, Any]:
    """An answer of 60 hours from the running one."""
    details = {"air_temperature": air, "relative_humidity": 85.0, "wind_speed": 6.0}
    hour = {"instant": {"details": details}, "next_1_hours": {"details": {"precipitation_amount": 0.2}, "summary": {}}}
    first = NOW.replace(minute=0)
    steps = [{"time": (first + timedelta(hours=k)).isoformat(), "data": hour} for k in range(60)]
    return {"properties": {"meta": {"updated_at": issued.isoformat()}, "timeseries": steps}}


def nws(air: float = 2.0) -> dict[str, Any]:
    """A grid square of two and a half days."""
    values = {"temperature": air, "relativeHumidity": 85, "windSpeed": 6.0, "quantitativePrecipitation": 12.0}
    when = f"{NOW.replace(minute=0).isoformat()}/P2DT12H"
    layers = {name: {"values": [{"validTime": when, "value": value}]} for name, value in values.items()}
    return {"properties": {"updateTime": (NOW - timedelta(hours=1)).isoformat(), **layers}}


def nws_door(**headers: str) -> Behaviour:
    """Both steps: the point names a grid square on another host."""
    point = {"properties": {"forecastGridData": "https://far.example/gridpoints/BTV/96,70"}}

    def act(handler: BaseHTTPRequestHandler) -> None:
        answer(point if handler.path.startswith("/points/") else nws(), 200, **headers)(handler)

    return act


def only(barn: Barn, *sources: str, **changes: Any) -> Barn:
    """The same barn with other sources."""
    return barn.model_copy(update={"forecast": sources, **changes})


def one_line(fetched: Fetched) -> str:
    """What was wrong with the one source."""
    assert fetched.source is None
    (said,) = fetched.told
    assert "\n" not in said
    return said
