"""The plan as posted: what people were shown, kept whole, so that "why", "done" and the watch speak of what they saw.

Plain values only (no arrays), so that it is stored as JSON and read back equal.
"""

from dataclasses import dataclass, field
from datetime import datetime

from pydantic import TypeAdapter

from rules.reason import Reason


@dataclass(frozen=True)
class Source:
    """Where the weather came from. source None: no forecast at all."""

    source: str | None
    fetched_at: datetime | None = None
    age_min: int | None = None
    stale: bool = False
    attribution: str = ""


@dataclass(frozen=True)
class Window:
    """From one round to the next; start and end aware, in the barn's own zone."""

    round: str
    start: datetime
    end: datetime


@dataclass(frozen=True)
class SkyHour:
    """One hour's weather for the post's line and the picture's head; SI units, None where not known.

    The last three are shown nowhere: with them the sheets are the barn's record of its weather.
    """

    at: datetime
    temperature_c: float | None
    wind_ms: float | None
    gust_ms: float | None
    rain_mm: float | None
    snow_mm: float | None
    rain_probability_pct: float | None
    humidity_pct: float | None = None
    cloud_pct: float | None = None
    solar_wm2: float | None = None


@dataclass(frozen=True)
class DressSheet:
    """What one horse wears in one window, with its margins [K] for each hour of `Sheet.sky`."""

    round: str
    where: str
    wear: tuple[str, ...]
    fill_g: float
    change: bool
    cold_margin_c: float | None
    cold_at: datetime | None
    heat_margin_c: float | None
    heat_at: datetime | None
    fill_band_g: tuple[float, float] | None
    extra_energy_pct: float
    extra_hay_kg: float
    unjudged: tuple[datetime, ...] = ()
    why: tuple[Reason, ...] = ()
    cautions: tuple[Reason, ...] = ()
    cold_by_hour: tuple[float | None, ...] = ()  # one for each hour of Sheet.sky; None outside the window
    heat_by_hour: tuple[float | None, ...] = ()
    chance_cold: float = 0.0
    chance_hot: float = 0.0
    as_found: bool = False  # nothing is advised: nobody said what it wears, and no hour could be judged


@dataclass(frozen=True)
class HorseSheet:
    """One horse: what has been learned of it, what it wore before, and one dress a window.

    used_to_c: how much more it feels the cold for the weather of the weeks behind [K].
    """

    horse: str
    offset_c: float
    offset_sd_c: float
    wears_now: tuple[str, ...] | None
    windows: tuple[DressSheet, ...]
    refused: tuple[Reason, ...] = ()
    used_to_c: float = 0.0


@dataclass(frozen=True)
class DryingSheet:
    """A garment that is not dry. ready_at None: not within the forecast."""

    garment: str
    state: str
    where: str | None
    ready_at: datetime | None


@dataclass(frozen=True)
class MissingSheet:
    """What no outfit reaches and what would."""

    horse: str
    round: str
    kind: str
    fill_low_g: float
    fill_high_g: float
    size_in: float


@dataclass(frozen=True)
class CheckSheet:
    """A hand under the rug, when and why."""

    horse: str
    at: datetime
    reason: Reason


@dataclass(frozen=True)
class Sheet:
    """A whole plan for the barn. Hours of reasons are indices into `sky`."""

    barn: str
    made_at: datetime
    forecast: Source
    windows: tuple[Window, ...]
    sky: tuple[SkyHour, ...]
    horses: tuple[HorseSheet, ...]
    drying: tuple[DryingSheet, ...] = ()
    missing: tuple[MissingSheet, ...] = ()
    checks: tuple[CheckSheet, ...] = ()
    took_ms: float = 0.0
    notes: tuple[str, ...] = field(default=())  # faults of the forecast, in plain words

    def horse(self, name: str) -> HorseSheet:
        """The sheet of one horse. KeyError where it is not on it."""
        for one in self.horses:
            if one.horse == name:
                return one
        raise KeyError(name)


SHEET = TypeAdapter(Sheet)


def dump(sheet: Sheet) -> str:
    """The sheet as JSON text for the store."""
    return SHEET.dump_json(sheet).decode()


def load(text: str) -> Sheet:
    """The sheet back from the store, equal to what was dumped."""
    return SHEET.validate_json(text)
