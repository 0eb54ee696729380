"""What all providers share: what is asked of one, and their JSON read without trust."""

import json
from collections.abc import Generator
from dataclasses import dataclass, field
from datetime import timedelta
from typing import Any, Protocol

from bot.barn import Place
from bot.forecast.readings import Parsed, Unreadable

SHOWN = 60  # characters of a wrong answer that are repeated


@dataclass(frozen=True)
class Request:
    """One GET. path begins with "/" and goes behind the provider's base address.

    good_for: how long an earlier answer may be used instead of asking again.
    """

    path: str
    query: dict[str, str] = field(default_factory=dict)
    good_for: timedelta = timedelta(0)


Requests = Generator[Request, bytes, None]  # one after another; the answer to each is sent back in


class Provider(Protocol):
    """What a provider's file holds. ask: its requests for a place; parse: hours from the last answer's bytes."""

    NAME: str
    ATTRIBUTION: str
    BASE: str
    NEEDS_CONTACT: bool

    def ask(self, place: Place, contact: str | None, /) -> Requests:
        """What to GET, one after another."""
        ...

    def parse(self, body: bytes, /) -> Parsed:
        """What the last answer says; Unreadable where it says nothing."""
        ...


def json_object(body: bytes) -> dict[str, Any]:
    """The JSON object in `body` (the first one, where it is a list of them). Unreadable where there is none."""
    try:
        found = json.loads(body)
    except (ValueError, RecursionError):  # ValueError: also wrong UTF-8 and numbers of thousands of digits
        start = " ".join(body[:SHOWN].decode("utf-8", "replace").split())
        raise Unreadable(f"no JSON; it begins with '{start}'") from None
    if isinstance(found, list) and found:
        found = found[0]
    if not isinstance(found, dict):
        raise Unreadable("JSON, but no object")
    return found


def inner(found: Any, *keys: str) -> dict[str, Any]:
    """The object under these keys; empty where there is none."""
    for key in keys:
        found = found.get(key) if isinstance(found, dict) else None
    return found if isinstance(found, dict) else {}


def rows(found: Any) -> list[Any]:
    """A list, or an empty one."""
    return found if isinstance(found, list) else []


def degrees(value: float) -> str:
    """A coordinate with at most four decimals and no zeros behind: MET Norway and NWS refuse more."""
    text = f"{value:.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text
