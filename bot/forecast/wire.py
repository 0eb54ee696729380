"""One GET within a time: redirects followed a few times, slow drips cut, a few retries, answers of bounded size."""

import socket
import threading
import time
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime
from email.utils import parsedate_to_datetime
from typing import Any
from urllib.parse import urljoin, urlsplit

import requests
from requests.adapters import HTTPAdapter
from urllib3.connection import HTTPConnection, HTTPSConnection
from urllib3.connectionpool import HTTPConnectionPool, HTTPSConnectionPool
from urllib3.exceptions import HTTPError

CONNECT_S, READ_S = 5.0, 20.0
MAX_BODY = 8 * 2**20
MAX_REDIRECTS = 4
UNCHANGED = 304
RETRIED = (502, 503, 504)
PAUSES_S = (0.5, 2.0)  # before each further try
OWN_MACHINE = ("127.0.0.1", "::1", "localhost")
CHUNK = 64 * 1024


class Trouble(Exception):
    """What went wrong with a source, in one line. wait_s: how long it asks to be left alone."""

    def __init__(self, text: str, wait_s: float = 0.0) -> None:
        super().__init__(text)
        self.wait_s = wait_s


@dataclass(frozen=True)
class Response:
    """What came back. body is empty where nothing has changed (304)."""

    status: int
    body: bytes
    headers: Mapping[str, str] = field(default_factory=dict)

    def date(self, name: str) -> datetime | None:
        """A header that is a date; None where it is none."""
        try:
            at = parsedate_to_datetime(self.headers.get(name, ""))
        except (ValueError, TypeError, OverflowError):
            return None
        return at.replace(tzinfo=UTC) if at.tzinfo is None else at.astimezone(UTC)


class Deadline:
    """An instant after which every socket opened under it is shut, whatever it is waiting for."""

    def __init__(self, seconds: float) -> None:
        self.seconds = seconds
        self.end = time.monotonic() + seconds
        self.sockets: list[socket.socket] = []

    @property
    def left(self) -> float:
        """Seconds left; none after the end."""
        return max(0.0, self.end - time.monotonic())

    @property
    def passed(self) -> bool:
        """Whether it is over."""
        return self.left <= 0

    def watch(self, opened: socket.socket) -> None:
        """Shut this socket at the end too, or now where the end came while it was opened."""
        self.sockets.append(opened)
        if self.passed:
            self.cut()

    def cut(self) -> None:
        """Shut every socket; whoever reads from one is told that it ended."""
        for opened in self.sockets:
            try:
                socket.socket.shutdown(opened, socket.SHUT_RDWR)
            except OSError:
                continue  # closed already


@contextmanager
def session(host: str | None, user_agent: str, deadline: Deadline) -> Iterator[requests.Session]:
    """A session whose every connection ends at the deadline. host: who is asked; one's own machine without a proxy."""
    alarm = threading.Timer(deadline.seconds, deadline.cut)
    alarm.daemon = True
    alarm.start()
    try:
        with requests.Session() as made:
            made.headers["User-Agent"] = user_agent
            made.trust_env = host not in OWN_MACHINE
            for scheme in ("http://", "https://"):
                made.mount(scheme, _Watched(deadline))
            yield made
    finally:
        alarm.cancel()


def get(
    asked: requests.Session, url: str, query: Mapping[str, str], headers: Mapping[str, str], deadline: Deadline
) -> Response:
    """The answer with status 200, 203 or 304. Trouble for every other, and for whatever goes wrong on the way."""
    for pause in (*PAUSES_S, None):
        try:
            found = _follow(asked, url, query, headers, deadline)
        except (requests.RequestException, HTTPError, OSError, ValueError) as error:
            raise Trouble(_why(error, deadline)) from None
        if found.status not in RETRIED or pause is None or pause >= deadline.left:
            break
        time.sleep(pause)
    if found.status in (200, 203, UNCHANGED):
        return found
    raise Trouble(_refusal(found), _retry_after(found))


def _follow(
    asked: requests.Session, url: str, query: Mapping[str, str], headers: Mapping[str, str], deadline: Deadline
) -> Response:
    """The answer behind at most a few redirects, never from https down to http."""
    for _ in range(MAX_REDIRECTS + 1):
        if deadline.passed:
            raise Trouble(f"no answer within {deadline.seconds:.0f} s")
        timeout = (min(CONNECT_S, deadline.left), min(READ_S, deadline.left))
        with asked.get(
            url, params=dict(query), headers=dict(headers), timeout=timeout, stream=True, allow_redirects=False
        ) as answer:
            if not answer.is_redirect:
                return Response(answer.status_code, _body(answer, deadline), answer.headers)
            onward = urljoin(answer.url, answer.headers["location"])
        if urlsplit(onward).scheme not in ("http", "https") or (
            url.startswith("https:") and not onward.startswith("https:")
        ):
            raise Trouble("redirects to an address that is not followed")
        url, query = onward, {}
    raise Trouble(f"redirects more than {MAX_REDIRECTS} times")


def _body(answer: requests.Response, deadline: Deadline) -> bytes:
    parts, size = [], 0
    for part in answer.iter_content(CHUNK):
        size += len(part)
        if size > MAX_BODY:
            raise Trouble(f"answers with more than {MAX_BODY // 2**20} MB")
        if deadline.passed:
            raise Trouble(f"no whole answer within {deadline.seconds:.0f} s")
        parts.append(part)
    if deadline.passed:  # the alarm has ended the stream: what came is not whole
        raise Trouble(f"no whole answer within {deadline.seconds:.0f} s")
    return b"".join(parts)


def _why(error: Exception, deadline: Deadline) -> str:
    if deadline.passed or isinstance(error, requests.Timeout):
        return "no answer in time"
    if isinstance(error, requests.ConnectionError):
        return "cannot be reached; is the network up?"
    return f"cannot be asked: {' '.join(str(error).split())[:120]}"


def _refusal(found: Response) -> str:
    match found.status:
        case 403:
            return "refused (403): it wants a contact it can write to; see 'contact' in the barn file"
        case 404 | 422:
            return f"knows no such place ({found.status})"
        case 429:
            wait = _retry_after(found)
            return "was asked too often (429)" + (f"; asks to wait {wait:.0f} s" if wait else "")
        case _:
            start = " ".join(found.body[:200].decode("utf-8", "replace").split())[:80]
            return f"answered {found.status}" + (f": {start}" if start else "")


def _retry_after(found: Response) -> float:
    """Seconds the source asks to be left alone, at most a day; 0 where it asks nothing."""
    text = found.headers.get("Retry-After", "").strip()
    if text.isascii() and text.isdigit():
        return float(min(int(text[:9]), 86_400))
    at = found.date("Retry-After")
    return 0.0 if at is None else min(max(0.0, (at - datetime.now(UTC)).total_seconds()), 86_400.0)


class _Watched(HTTPAdapter):
    """Connections that tell the deadline of their sockets."""

    def __init__(self, deadline: Deadline) -> None:
        self.deadline = deadline
        super().__init__(max_retries=0)

    def init_poolmanager(self, *args: Any, **options: Any) -> None:
        """As usual, with connections of our own."""
        super().init_poolmanager(*args, **options)
        watch = self.deadline.watch

        class Plain(HTTPConnection):
            def connect(self) -> None:
                super().connect()
                watch(self.sock)

        class Secure(HTTPSConnection):
            def connect(self) -> None:
                super().connect()
                watch(self.sock)

        class PlainPool(HTTPConnectionPool):
            ConnectionCls = Plain

        class SecurePool(HTTPSConnectionPool):
            ConnectionCls = Secure

        self.poolmanager.pool_classes_by_scheme = {"http": PlainPool, "https": SecurePool}
