"""Drying: when each garment that is not dry will be, on the rail where it hangs."""

import numpy as np

from rules.question import Piece, Question, Rail
from rules.weather import Floats
from rules.wetness import dry_after_h

STILL_ROOM_MS = 0.1  # air in a closed room without a fan
OUTDOOR_SHARE = 0.3  # of the wind outside, under a roof that follows outdoors


def ready_h(question: Question) -> dict[str, float | None]:
    """Hours from hour 0 until each garment that is not dry will be; None: not within the forecast."""
    return {p.garment.id: _ready(question, p) for p in question.pieces if p.water != "dry"}


def _ready(question: Question, piece: Piece) -> float | None:
    """On its rail; where nobody said which, on the slowest."""
    rails = question.rails or (Rail("outdoors"),)
    hung = rails if piece.rail is None else (rails[piece.rail],)
    found = [_on(question, piece, rail) for rail in hung]
    return None if None in found else max(hours for hours in found if hours is not None)


def _on(question: Question, piece: Piece, rail: Rail) -> float | None:
    """What is left of the whole time from the report on; the air before hour 0 is taken as that of hour 0."""
    before = int(np.ceil(piece.since_h))
    air = [_told_back(column, before) for column in _air(question, rail)]
    whole = dry_after_h(piece.garment, piece.water, *air, leaks=piece.leaks) * rail.learned_factor
    left = whole - piece.since_h
    return max(left, 0.0) if np.isfinite(left) else None


def _air(question: Question, rail: Rail) -> tuple[Floats, Floats, Floats]:
    sky = question.hours
    like = np.ones(len(sky))
    temperature = sky.temperature_c if rail.temperature_c is None else rail.temperature_c * like
    humidity = sky.humidity_pct if rail.humidity_pct is None else rail.humidity_pct * like
    follows = rail.temperature_c is None
    draught = sky.wind_ms * OUTDOOR_SHARE if follows else STILL_ROOM_MS * like
    return temperature, humidity, draught if rail.air_ms is None else rail.air_ms * like


def _told_back(column: Floats, hours: int) -> Floats:
    return np.concatenate([np.full(hours, column[0] if len(column) else np.nan), column])
