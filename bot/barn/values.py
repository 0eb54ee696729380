"""Single values of the barn file, from what YAML gives; a ValueError says what is allowed."""

import re
import unicodedata
from datetime import date, time
from typing import Any
from zoneinfo import ZoneInfo

NAME_LENGTH = 100
CLOCK = re.compile(r"([01]?\d|2[0-3]):([0-5]\d)")


def as_name(value: str) -> str:
    """A name of any characters, on one line."""
    if not value.strip() or len(value) > NAME_LENGTH or any(unicodedata.category(c) in ("Cc", "Cs") for c in value):
        raise ValueError(f"a name on one line, 1 to {NAME_LENGTH} characters")
    return value


def as_rows(value: Any) -> Any:
    """A section that holds nothing yet is an empty one."""
    return () if value is None else value


def no_number(value: Any) -> Any:
    """Numbers only: true, false and text are none."""
    if isinstance(value, bool | str):
        raise ValueError("a number")
    return value


def as_switch(value: Any) -> bool:
    """True or false; in YAML 1.2 yes, no, on and off are words."""
    if not isinstance(value, bool):
        raise ValueError("true, false")
    return value


def as_clock(value: Any) -> time:
    """A time of day, hours and minutes."""
    if isinstance(value, time):
        return value
    found = CLOCK.fullmatch(value.strip()) if isinstance(value, str) else None
    if not found:
        raise ValueError('a time of day from "00:00" to "23:59"')
    return time(int(found[1]), int(found[2]))


def as_day(value: Any) -> date:
    """A date, year first."""
    if type(value) is date:
        return value
    try:
        return date.fromisoformat(value.strip())
    except (ValueError, AttributeError):
        raise ValueError("a date, as in 2026-10-28") from None


def as_birth(value: Any) -> date | int:
    """A year or a date."""
    if type(value) is int and 1950 <= value <= date.max.year:
        return value
    try:
        return as_day(value)
    except ValueError:
        raise ValueError("a year or a date, as in 2009 or 2009-05-14") from None


def as_zone(value: str) -> str:
    """The name of a time zone that this computer's tables have."""
    try:
        ZoneInfo(value)
    except (ValueError, OSError, KeyError):  # a path, a folder of zones, an unknown name
        raise ValueError("a time zone by its place, as in America/New_York") from None
    return value


def ascii_line(value: str) -> str:
    """What may stand in the header of a request."""
    if not (value.isascii() and value.isprintable()):
        raise ValueError("an address in plain letters, as in barn@example.org")
    return value
