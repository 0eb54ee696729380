"""One provider asked by its rules: who asks, what has not expired, only if it changed, not before it wants to be."""

import os
from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from functools import cache
from urllib.parse import urlsplit

import requests

from bot.barn import Barn, Place
from bot.forecast import wire
from bot.forecast.answers import Provider, Request
from bot.forecast.last_good import Answer, LastGood

PROVIDER_S = 30.0  # for all requests of one provider together
LONGEST_EXPIRY = timedelta(hours=6)  # a date far ahead must not freeze the forecast
DEPRECATED = 203


@dataclass
class Asking:
    """A provider, for one barn, at one instant. warning: what is to be said although the answer is good."""

    provider: Provider
    barn: Barn
    last_good: LastGood
    now: datetime
    warning: str = ""

    def answer(self, kept: Answer | None) -> Answer:
        """The provider's last answer, confirmed or new. kept: the one we have, if it is for this place."""
        deadline = wire.Deadline(PROVIDER_S)
        host = urlsplit(address(self.provider)).hostname
        with wire.session(host, _user_agent(self.barn.contact), deadline) as session:
            steps = self.provider.ask(self.barn.place, self.barn.contact)
            request = next(steps)
            while True:
                answer = self._known(request) or self._got(session, deadline, request, kept)
                try:
                    onward = steps.send(answer.body)
                except StopIteration:
                    return answer
                self.last_good.put(self._name(request), answer)
                request = onward

    def _known(self, request: Request) -> Answer | None:
        """An earlier answer to the same request that may still be used."""
        answer = self.last_good.get(self._name(request)) if request.good_for else None
        return answer if answer and self.now - answer.fetched_at < request.good_for else None

    def _got(self, session: requests.Session, deadline: wire.Deadline, request: Request, kept: Answer | None) -> Answer:
        since = (
            {} if request.good_for or not kept or not kept.last_modified else {"If-Modified-Since": kept.last_modified}
        )
        response = wire.get(session, address(self.provider) + request.path, request.query, since, deadline)
        expires = self._expires(response)
        if response.status == wire.UNCHANGED:
            if not kept or not since:
                raise wire.Trouble("says that nothing has changed (304), but was not asked that")
            return replace(kept, fetched_at=self.now, expires=expires)
        if response.status == DEPRECATED:
            self.warning = "says that this version of its service will end (203)"
        changed = response.headers.get("Last-Modified")
        return Answer(place_key(self.barn.place), self.now, response.body, expires, changed)

    def _expires(self, response: wire.Response) -> datetime | None:
        """Until when the answer holds, by our clock: how long it holds is the difference of two dates of theirs."""
        until, sent = response.date("Expires"), response.date("Date")
        holds = _max_age(response.headers)
        if holds is None and until:
            holds = until - (sent or self.now)
        return None if holds is None else self.now + min(max(holds, timedelta(0)), LONGEST_EXPIRY)

    def _name(self, request: Request) -> str:
        return f"{self.provider.NAME} {request.path}"


def address(provider: Provider) -> str:
    """Scheme, host and port to ask: the provider's own, or the environment's (a proxy, a test server)."""
    named = os.environ.get(f"HAYBELL_{provider.NAME.upper().replace('-', '_')}_URL", "").strip()
    parts = urlsplit(named or provider.BASE)
    return f"{parts.scheme}://{parts.netloc}"


def place_key(place: Place) -> str:
    """What an answer is for: one for another place is not used."""
    return f"{place.latitude:.4f},{place.longitude:.4f},{place.elevation_m:.0f}"


def _max_age(headers: Mapping[str, str]) -> timedelta | None:
    for part in headers.get("Cache-Control", "").split(","):
        name, _, seconds = part.strip().partition("=")
        if name.lower() == "max-age" and seconds.isascii() and seconds.isdigit():
            return timedelta(seconds=int(seconds[:9]))
    return None


@cache
def _version() -> str:
    from importlib.metadata import PackageNotFoundError, version

    try:
        return version("haybell")
    except PackageNotFoundError:  # run from the source tree
        return "0"


def _user_agent(contact: str | None) -> str:
    return f"haybell/{_version()} {contact or ''}".strip()
