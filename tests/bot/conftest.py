"""One November day at an invented farm, as a sheet written by hand: what post, answer and board are shown."""

from collections.abc import Callable
from datetime import datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from bot.barn import Barn
from bot.sheet import CheckSheet, DressSheet, DryingSheet, HorseSheet, MissingSheet, Sheet, SkyHour, Source, Window
from bot.state import Standing, State, as_filed
from rules.reason import Code, Reason, Unit

ZONE = ZoneInfo("America/New_York")
SEVEN = datetime(2026, 11, 26, 7, tzinfo=ZONE)
HOUR = timedelta(hours=1)
# °C from 7 am on: a wet, windy day that freezes in the night
AIR = (1.2, 1.5, 2.0, 2.6, 3.0, 3.1, 2.8, 2.2, 1.6, 0.9, 0.2, -0.6, -1.3, -2.0, -2.7, -3.3, -3.8, -4.2, -4.6, -4.9)
AIR += (-5.1, -5.2, -5.0, -4.4)
RAIN = (0.0, 0.0, 0.0, 0.0, 0.6, 1.4, 2.1, 1.2, 0.4) + (0.0,) * 15
GUST = (8.0, 9.0, 11.0, 13.0, 16.0, 17.3, 16.5, 14.0, 12.0, 10.0, 8.0, 6.0) + (4.0,) * 12

HORSES: dict[str, tuple[tuple[str, ...], tuple[str, ...], tuple[str, ...], float, tuple[Reason, ...]]] = {
    # name: worn before, this morning, this evening, the worst cold margin of the morning, why
    "Maple": (
        ("maple-sheet",),
        ("maple-liner", "maple-sheet"),
        ("maple-liner", "maple-sheet"),
        1.4,
        (Reason(Code.GUSTS_HAY_OUTSIDE, 5, 17.3, Unit.WIND), Reason(Code.CLIPPED)),
    ),
    "Juniper": (
        ("juniper-liner", "juniper-sheet"),
        ("spare-medium",),
        ("spare-medium",),
        0.6,
        (
            Reason(Code.OWN_WET, value=6.0, unit=Unit.HOURS, garment="juniper-liner"),
            Reason(Code.BORROWED, garment="spare-medium"),
        ),
    ),
    "Otis": (
        ("otis-sheet",),
        ("otis-liner", "otis-sheet"),
        ("otis-liner", "otis-sheet"),
        2.0,
        (Reason(Code.COLD_RAIN_AND_WIND, 6, 5.7, Unit.WATER),),
    ),
    "Pip": (("pip-medium",), (), ("pip-medium",), 3.2, (Reason(Code.WARM_ENOUGH_BARE, 8, 3.2, Unit.KELVIN),)),
    "Biscuit": (
        ("biscuit-sheet",),
        ("biscuit-sheet",),
        ("biscuit-sheet",),
        1.1,
        (Reason(Code.RAIN, 6, 5.7, Unit.WATER),),
    ),
    "Ned": (("ned-sheet",), ("ned-sheet",), ("ned-sheet",), 1.9, (Reason(Code.RAIN, 6, 5.7, Unit.WATER),)),
    "Sorrel": (
        ("sorrel-heavy",),
        ("sorrel-heavy",),
        ("sorrel-heavy",),
        -0.8,
        (Reason(Code.THIN, value=3.5, unit=Unit.COUNT),),
    ),
    "Clover": ((), (), (), 6.0, (Reason(Code.WARM_ENOUGH_BARE, 8, 6.0, Unit.KELVIN),)),
    "Moss": ((), (), (), 5.2, (Reason(Code.WISH_KEPT_BARE),)),
    "Fern": ((), (), (), 4.4, ()),
    "Quill": (("quill-stable",), ("quill-stable",), ("quill-stable",), 2.2, (Reason(Code.STALL_STILL_AIR),)),
    "Tansy": (("tansy-medium",), ("tansy-medium",), ("tansy-medium",), 0.9, (Reason(Code.NOT_WORTH_A_CHANGE),)),
}


def garment(id_: str, horse: str | None, kind: str, fill: float = 0, size: float = 75, **more: Any) -> dict[str, Any]:
    """One piece as a barn file would have it."""
    return {"id": id_, "horse": horse, "kind": kind, "fill_g": fill, "size_in": size, **more}


@pytest.fixture
def farm() -> Barn:
    """Twelve horses, their clothes, and people who speak three languages."""
    return Barn.model_validate(
        {
            "barn": "Windrow Farm",
            "timezone": "America/New_York",
            "units": "us",
            "place": {"latitude": 44.52, "longitude": -72.31, "elevation_m": 520, "exposure": "ridge"},
            "rounds": [{"name": "morning", "at": "07:00"}, {"name": "evening", "at": "16:30"}],
            "people": [
                {"name": "Theo", "role": "manager"},
                {"name": "Inés", "role": "groom", "language": "es", "units": "metric"},
                {"name": "Maëlle", "role": "groom", "language": "fr", "units": "metric"},
                {"name": "Ruth", "role": "owner"},
            ],
            "drying": [{"name": "heated tack room", "temperature_c": 18, "humidity_pct": 50}],
            "horses": [{"name": name, "size_in": 75, "owner": "Ruth"} for name in HORSES],
            "garments": [
                garment("maple-sheet", "Maple", "sheet"),
                garment("maple-liner", "Maple", "liner", 100),
                garment("maple-heavy", "Maple", "turnout", 300),
                garment("juniper-sheet", "Juniper", "sheet"),
                garment("juniper-liner", "Juniper", "liner", 150, state="wet"),
                garment("otis-sheet", "Otis", "sheet"),
                garment("otis-liner", "Otis", "liner", 100),
                garment("pip-medium", "Pip", "turnout", 200),
                garment("biscuit-sheet", "Biscuit", "sheet", also=["green sheet"]),
                garment("biscuit-old", "Biscuit", "sheet", state="torn"),
                garment("ned-sheet", "Ned", "sheet"),
                garment("sorrel-heavy", "Sorrel", "turnout", 360),
                garment("quill-stable", "Quill", "stable", 300),
                garment("tansy-medium", "Tansy", "turnout", 220),
                garment("tansy-cooler", "Tansy", "cooler"),
                garment("spare-medium", None, "turnout", 200),
                garment("spare-sheet", None, "sheet"),
            ],
        }
    )


@pytest.fixture
def sky() -> tuple[SkyHour, ...]:
    """Twenty-four hours from seven in the morning."""
    return tuple(
        SkyHour(SEVEN + HOUR * k, t, g / 2, g, r, 0.0, 60.0 if r else 5.0)
        for k, (t, r, g) in enumerate(zip(AIR, RAIN, GUST, strict=True))
    )


@pytest.fixture
def dress() -> Callable[..., DressSheet]:
    """Builds one window's dress; whatever is not said is quiet."""

    def build(round_: str = "morning", wear: tuple[str, ...] = (), **facts: Any) -> DressSheet:
        quiet: dict[str, Any] = {
            "where": "field",
            "fill_g": 0.0,
            "change": False,
            "cold_margin_c": 2.0,
            "cold_at": SEVEN + 6 * HOUR,
            "heat_margin_c": 7.0,
            "heat_at": SEVEN + 5 * HOUR,
            "fill_band_g": (60.0, 190.0),
            "extra_energy_pct": 0.0,
            "extra_hay_kg": 0.0,
        }
        return DressSheet(round=round_, wear=wear, **quiet | facts)

    return build


@pytest.fixture
def sheet(farm: Barn, sky: tuple[SkyHour, ...], dress: Callable[..., DressSheet]) -> Sheet:
    """The plan for the morning and the evening round, made at a quarter past six."""
    evening = SEVEN.replace(hour=16, minute=30)
    fills = {g.id: g.fill_g for g in farm.garments}

    def margins(worst: float, first: int, last: int) -> tuple[tuple[float | None, ...], tuple[float | None, ...]]:
        cold = [None if not first <= k < last else round(worst + 0.5 * abs(k - 6) ** 0.9, 2) for k in range(24)]
        heat = [None if c is None else round(8.0 - c, 2) for c in cold]
        return tuple(cold), tuple(heat)

    def horse(name: str) -> HorseSheet:
        before, morning, night, worst, why = HORSES[name]
        cold, heat = margins(worst, 0, 10)
        cold2, heat2 = margins(worst - 1.0, 9, 24)
        first = dress(
            wear=morning,
            fill_g=sum(fills[g] for g in morning),
            change=morning != before,
            cold_margin_c=worst,
            why=why,
            cold_by_hour=cold,
            heat_by_hour=heat,
            cautions=(Reason(Code.STRAPS_IN_WIND, 5, 17.3, Unit.WIND),) if morning else (),
        )
        second = dress(
            "evening",
            night,
            fill_g=sum(fills[g] for g in night),
            change=night != morning,
            where="stall",
            cold_by_hour=cold2,
            heat_by_hour=heat2,
        )
        offset = 0.8 if name == "Maple" else 0.0
        return HorseSheet(name, offset, 1.4, before, (first, second), _refused(name))

    return Sheet(
        barn=farm.barn,
        made_at=SEVEN - timedelta(minutes=45),
        forecast=Source("open-meteo", SEVEN - timedelta(minutes=57), 12, False, "Weather data by Open-Meteo.com"),
        windows=(Window("morning", SEVEN, evening), Window("evening", evening, SEVEN + 24 * HOUR)),
        sky=sky,
        horses=tuple(horse(name) for name in HORSES),
        drying=(DryingSheet("juniper-liner", "wet", "heated tack room", SEVEN + 6 * HOUR),),
        missing=(MissingSheet("Sorrel", "evening", "turnout", 380.0, 450.0, 75.0),),
        checks=(CheckSheet("Sorrel", SEVEN + 6 * HOUR, Reason(Code.HAND_CHECK_COLD, 6, -0.8, Unit.KELVIN)),),
        took_ms=4.2,
    )


def _refused(name: str) -> tuple[Reason, ...]:
    if name != "Maple":
        return ()
    return (Reason(Code.TOO_WARM, 5, -4.0, Unit.KELVIN, "maple-heavy"),)


@pytest.fixture
def state(farm: Barn, sheet: Sheet) -> State:
    """The barn after the morning's post; Maple and Clover are said to be done."""
    filed = as_filed(farm)
    first = sheet.windows[0]
    wear = {h.horse: h.windows[0].wear for h in sheet.horses}
    standing = Standing(1, "morning", first.start.date(), first.start, first.end, wear, frozenset({"Maple", "Clover"}))
    return State(filed.horses, filed.garments, standing, frozenset({("morning", first.start.date())}))
