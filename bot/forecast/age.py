"""When a forecast is too old, or is for another day."""

from datetime import datetime, timedelta

import numpy as np

from bot.forecast.hours import HOUR, window
from bot.forecast.readings import NEEDED, Parsed
from rules.weather import Hours

STALE_AFTER = timedelta(hours=12)  # of the model run, or of the fetching where the run is not told
REACH = timedelta(hours=6)  # a forecast that ends sooner is no use to a round
AHEAD, MAY_BE_OPEN = 12, 3  # hours: of so many, so few may be unknown before another source is asked


def too_old(issued: datetime | None, fetched_at: datetime, now: datetime) -> bool:
    """Whether a forecast is stale."""
    return now - (issued or fetched_at) > STALE_AFTER


def left_open(hours: Hours, now: datetime) -> int:
    """How many of the next hours cannot be judged."""
    ahead = window(hours, int(now.timestamp()) // HOUR * HOUR, AHEAD)
    return int(np.any([np.isnan(getattr(ahead, name)) for name in NEEDED], axis=0).sum())


def sound(parsed: Parsed, now: datetime) -> bool:
    """Whether nothing about a forecast calls for another source."""
    return fault(parsed, now) is None


def fault(parsed: Parsed, now: datetime) -> str | None:
    """Why another source should be asked, in a line; None where all is well."""
    if not covers(parsed.hours, now):
        return "has no hours from now on"
    if parsed.issued and too_old(parsed.issued, now, now):
        return f"its model run is {(now - parsed.issued) / timedelta(hours=1):.0f} h old"
    if (missing := left_open(parsed.hours, now)) > MAY_BE_OPEN:
        return f"leaves {missing} of the next {AHEAD} hours open"
    return None


def covers(hours: Hours, now: datetime) -> bool:
    """Whether the hours hold this hour and the next few."""
    begin, end = hours.start_s, hours.start_s + HOUR * len(hours)
    return begin <= now.timestamp() and end >= (now + REACH).timestamp()
