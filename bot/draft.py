"""A Plan of the rules put on a sheet: indices become instants, arrays become plain numbers."""

from collections.abc import Sequence
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import numpy as np

from bot.barn import Barn
from bot.sheet import (
    CheckSheet,
    DressSheet,
    DryingSheet,
    HorseSheet,
    MissingSheet,
    Sheet,
    SkyHour,
    Source,
    Window,
)
from rules.plan import Dress, Plan
from rules.question import Question
from rules.weather import Floats, Hours

HOUR = timedelta(hours=1)


def sheet(
    barn: Barn,
    question: Question,
    plan: Plan,
    windows: Sequence[Window],
    now: datetime,
    source: Source,
    notes: Sequence[str],
    took_ms: float,
) -> Sheet:
    """The whole sheet. Instants are in the barn's own zone; `now` is when it was made."""
    zone = ZoneInfo(barn.timezone)
    clock = [
        datetime.fromtimestamp(question.hours.start_s + 3600 * k, UTC).astimezone(zone)
        for k in range(len(question.hours) + 1)
    ]
    start = datetime.fromtimestamp(question.hours.start_s, UTC)
    return Sheet(
        barn=barn.barn,
        made_at=now.astimezone(zone),
        forecast=source,
        windows=tuple(windows),
        sky=sky(question.hours, clock),
        horses=tuple(
            HorseSheet(
                horse=w.horse.name,
                offset_c=round(w.offset_c, 2),
                offset_sd_c=round(w.offset_sd_c, 2),
                wears_now=w.wears,
                windows=tuple(
                    dress(d, window, stay.place, clock)
                    for d, window, stay in zip(plan.dresses[w.horse.name], windows, w.stays, strict=True)
                ),
                refused=plan.refused.get(w.horse.name, ()),
                used_to_c=w.horse.used_to_c,
            )
            for w in question.wearers
        ),
        drying=tuple(
            DryingSheet(
                garment=d.garment,
                state=d.water,
                where=None if d.rail is None else question.rails[d.rail].name,
                ready_at=None if d.ready_h is None else (start + d.ready_h * HOUR).astimezone(zone),
            )
            for d in plan.drying
        ),
        missing=tuple(
            MissingSheet(m.horse, windows[m.window].round, m.kind, m.fill_low_g, m.fill_high_g, m.size_in)
            for m in plan.missing
        ),
        checks=tuple(CheckSheet(c.horse, clock[c.hour], c.reason) for c in plan.checks),
        took_ms=round(took_ms, 1),
        notes=tuple(notes),
    )


def dress(d: Dress, window: Window, where: str, clock: Sequence[datetime]) -> DressSheet:
    """One horse's dress in one window."""
    return DressSheet(
        round=window.round,
        where=where,
        wear=d.wear,
        fill_g=d.fill_g,
        change=d.change,
        cold_margin_c=d.cold_margin_c,
        cold_at=None if d.cold_hour is None else clock[d.cold_hour],
        heat_margin_c=d.heat_margin_c,
        heat_at=None if d.heat_hour is None else clock[d.heat_hour],
        fill_band_g=d.fill_band_g,
        extra_energy_pct=d.extra_energy_pct,
        extra_hay_kg=d.extra_hay_kg,
        unjudged=tuple(clock[k] for k in d.unjudged),
        why=d.why,
        cautions=d.cautions,
        cold_by_hour=plain(d.cold_by_hour),
        heat_by_hour=plain(d.heat_by_hour),
        chance_cold=d.chance_cold,
        chance_hot=d.chance_hot,
        as_found=d.as_found,
    )


def sky(hours: Hours, clock: Sequence[datetime]) -> tuple[SkyHour, ...]:
    """The weather of each hour."""
    columns = (
        hours.temperature_c,
        hours.wind_ms,
        hours.gust_ms,
        hours.rain_mm,
        hours.snow_mm,
        hours.rain_probability_pct,
        hours.humidity_pct,
        hours.cloud_pct,
        hours.solar_wm2,
    )
    return tuple(SkyHour(at, *values) for at, *values in zip(clock, *map(plain, columns)))


def plain(values: Floats) -> tuple[float | None, ...]:
    """An array as plain numbers, two decimals; None where not known."""
    return tuple(None if np.isnan(v) else round(float(v), 2) for v in values)
