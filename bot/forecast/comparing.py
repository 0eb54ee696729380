"""Two providers' hours side by side: a difference that would dress a horse differently is worth a line."""

from datetime import datetime

import numpy as np

from bot.forecast.hours import HOUR, window
from rules.weather import Hours

HOURS = 24
# differences over the next day that are more than two good forecasts usually have; judgement, no source
WARMER_K, WINDIER_MS, WETTER_MM = 3.0, 3.0, 5.0


def disagreement(ours: Hours, theirs: Hours, now: datetime) -> str | None:
    """What the other provider expects otherwise over the next day, in words; None where they agree or cannot tell."""
    start_s = int(now.timestamp()) // HOUR * HOUR
    one, other = window(ours, start_s, HOURS), window(theirs, start_s, HOURS)
    warmer = _mean(other.temperature_c - one.temperature_c)
    windier = _mean(other.wind_ms - one.wind_ms)
    wetter = _mean(other.rain_mm + other.snow_mm - one.rain_mm - one.snow_mm) * HOURS
    said = [
        word
        for difference, limit, more, less in (
            (warmer, WARMER_K, "warmer", "colder"),
            (windier, WINDIER_MS, "windier", "calmer"),
            (wetter, WETTER_MM, "wetter", "drier"),
        )
        if (word := more if difference >= limit else less if difference <= -limit else "")
    ]
    return f"expects the next day {' and '.join(said)}" if said else None


def _mean(difference: "np.ndarray[tuple[int], np.dtype[np.float64]]") -> float:
    """The mean over the hours both know; 0 where they share fewer than half."""
    known = difference[~np.isnan(difference)]
    return float(known.mean()) if len(known) >= HOURS / 2 else 0.0
