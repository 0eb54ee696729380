"""When a forecast is too old, or is for another day."""

from datetime import datetime, timedelta

from bot.forecast.hours import HOUR
from rules.weather import Hours

STALE_AFTER = timedelta(hours=12)  # of the model run, or of the fetching where the run is not told
REACH = timedelta(hours=6)  # a forecast that ends sooner is no use to a round


def too_old(issued: datetime | None, fetched_at: datetime, now: datetime) -> bool:
    """Whether a forecast is stale."""
    return now - (issued or fetched_at) > STALE_AFTER


def covers(hours: Hours, now: datetime) -> bool:
    """Whether the hours hold this hour and the next few."""
    begin, end = hours.start_s, hours.start_s + HOUR * len(hours)
    return begin <= now.timestamp() and end >= (now + REACH).timestamp()
