"""The one door to the rules: price(question), then choose(prices, question) → Plan."""

from dataclasses import dataclass, field

from rules.question import WaterState
from rules.reason import Reason
from rules.weather import Floats


@dataclass(frozen=True)
class Dress:
    """What one horse wears for one window, and why.

    wear: garment ids, skin outward. Margins in K at the worst judged hour, offset included, strict balance;
    None where no hour could be judged. fill_band: the fill [g/m²] that keeps both margins non-negative
    through the window, low to high; None where none does or none judged. extra_energy: per cent of
    maintenance; extra_hay: kg a day. unjudged: hour indices no forecast covered. cold_by_hour, heat_by_hour:
    margins [K] for the window's hours, NaN elsewhere, shape (hour,), central scenario.
    """

    wear: tuple[str, ...]
    fill_g: float
    change: bool
    cold_margin_c: float | None
    cold_hour: int | None
    heat_margin_c: float | None
    heat_hour: int | None
    fill_band_g: tuple[float, float] | None
    extra_energy_pct: float
    extra_hay_kg: float
    unjudged: tuple[int, ...]
    cold_by_hour: Floats
    heat_by_hour: Floats
    chance_cold: float = 0.0
    chance_hot: float = 0.0
    why: tuple[Reason, ...] = ()
    cautions: tuple[Reason, ...] = ()


@dataclass(frozen=True)
class Missing:
    """What no outfit reaches, and the one garment that would reach it."""

    horse: str
    window: int
    kind: str
    fill_low_g: float
    fill_high_g: float
    size_in: float


@dataclass(frozen=True)
class Check:
    """A horse that wants a hand under the rug, and when (hour index)."""

    horse: str
    hour: int
    reason: Reason


@dataclass(frozen=True)
class Drying:
    """A garment that is not dry at hour 0. ready_h: hours from hour 0 until dry; None: not within the forecast."""

    garment: str
    water: WaterState
    rail: int | None
    ready_h: float | None


@dataclass(frozen=True)
class Plan:
    """One outfit a horse and window: dresses[horse name] has one Dress a window, in the question's order.

    refused: for each horse, each single outfit or piece that may not be worn, with the reason ("why not the heavy?").
    """

    dresses: dict[str, tuple[Dress, ...]]
    missing: tuple[Missing, ...] = ()
    checks: tuple[Check, ...] = ()
    drying: tuple[Drying, ...] = ()
    refused: dict[str, tuple[Reason, ...]] = field(default_factory=dict)
