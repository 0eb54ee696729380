"""A small stable for tests of the choice: horses, clothes and weather in a line each, and a Question from them."""

from dataclasses import replace

import numpy as np

from rules.garment import Garment
from rules.horse import Horse
from rules.question import Costs, Piece, Question, Rail, Stay, Wearer
from rules.weather import Hours, Site

VERMONT = Site(44.5, -72.3, 500, "open")
JANUARY_NOON_S = 1_768_496_400  # 2026-01-15 17:00 UTC
FIELD, STALL = Stay("field"), Stay("stall")
TACK_ROOM = Rail("tack room", 18.0, 50.0)


def weather(
    temperature: float = 0.0,
    wind: float = 3.0,
    *,
    gust: float | None = None,
    rain: float = 0.0,
    chance: float | None = None,
    humidity: float = 85.0,
    hours: int = 24,
    start_s: int = JANUARY_NOON_S,
) -> Hours:
    """Steady weather under cloud: wind [m/s] at ten metres, rain [mm/h], chance of rain [%]."""
    one = np.ones(hours)
    likely = (100.0 if rain else 0.0) if chance is None else chance
    return Hours(
        start_s,
        temperature_c=temperature * one,
        humidity_pct=humidity * one,
        wind_ms=wind * one,
        gust_ms=(wind if gust is None else gust) * one,
        rain_mm=rain * one,
        snow_mm=0 * one,
        cloud_pct=100 * one,
        solar_wm2=0 * one,
        rain_probability_pct=likely * one,
    )


def joined(*parts: Hours) -> Hours:
    """Weather that changes: one part after the other."""
    names = [n for n in Hours.__dataclass_fields__ if n not in ("start_s", "spread_c", "spread_wind")]
    columns = {n: np.concatenate([getattr(p, n) for p in parts]) for n in names}
    return Hours(parts[0].start_s, **columns)


def unknown(hours: int = 24) -> Hours:
    """No forecast at all."""
    known = weather(hours=hours)
    names = [n for n in Hours.__dataclass_fields__ if n not in ("start_s", "spread_c", "spread_wind")]
    return replace(known, **{n: np.full(hours, np.nan) for n in names})


def sheet(horse: str | None = "Maple", **facts: object) -> Piece:
    """A waterproof sheet with leg straps; facts change the garment, or water and the like the piece."""
    return _piece(Garment(_id(horse, "sheet"), "sheet", waterproof=True, rear="leg straps", horse=horse), facts)


def turnout(fill: float, horse: str | None = "Maple", **facts: object) -> Piece:
    """A waterproof turnout with leg straps."""
    named = Garment(_id(horse, f"{fill:g}"), "turnout", fill, waterproof=True, rear="leg straps", horse=horse)
    return _piece(named, facts)


def liner(fill: float = 150, horse: str | None = "Maple", **facts: object) -> Piece:
    """A liner."""
    return _piece(Garment(_id(horse, "liner"), "liner", fill, horse=horse), facts)


def wearer(name: str = "Maple", *stays: Stay, wears: tuple[str, ...] | None = (), **facts: object) -> Wearer:
    """One horse, in the field in both windows unless said; facts of the animal, or of the Wearer, may be changed."""
    own = {k: v for k, v in facts.items() if k in Wearer.__dataclass_fields__}
    animal = {k: v for k, v in facts.items() if k not in own}
    if animal.get("clip"):
        animal.setdefault("clip_age_days", 10.0)
    return Wearer(Horse(name, **animal), stays or (FIELD, FIELD), wears=wears, **own)  # type: ignore[arg-type]


def ask(hours: Hours, horses: list[Wearer], pieces: list[Piece], *, costs: Costs | None = None) -> Question:
    """Two windows of half the hours each, or as many as the first horse has stays."""
    windows = len(horses[0].stays) if horses else 2
    at = np.minimum(np.arange(len(hours)) * windows // len(hours), windows - 1)
    share = (at == np.arange(windows)[:, None]).astype(float)
    return Question(hours, VERMONT, share, tuple(horses), tuple(pieces), (TACK_ROOM,), costs or Costs())


def _id(horse: str | None, what: str) -> str:
    return f"{(horse or 'spare').lower()}-{what}"


def _piece(garment: Garment, facts: dict[str, object]) -> Piece:
    condition = {k: v for k, v in facts.items() if k in Piece.__dataclass_fields__}
    cut = {k: v for k, v in facts.items() if k not in condition}
    return Piece(replace(garment, **cut), **condition)  # type: ignore[arg-type]
