"""The plan as the contract's JSON."""

from datetime import datetime
from typing import Any

from bot.barn import Barn
from bot.sheet import DressSheet, HorseSheet, Sheet
from bot.skyline import sentence
from bot.units import NBSP, known
from bot.voice import Voice, voice


def plan_json(sheet: Sheet, barn: Barn) -> dict[str, Any]:
    """The plan as the contract's JSON object, sentences in English and in the barn's units."""
    tongue = voice(barn, "en", barn.units)
    source = sheet.forecast
    return {
        "barn": sheet.barn,
        "made_at": sheet.made_at.isoformat(),
        "forecast": {
            "source": source.source,
            "fetched_at": _iso(source.fetched_at),
            "age_min": source.age_min,
            "stale": source.stale,
        },
        "windows": [{"round": w.round, "from": _iso(w.start), "to": _iso(w.end)} for w in sheet.windows],
        "horses": [_horse_json(h, sheet, tongue) for h in sheet.horses],
        "drying": [
            {"garment": d.garment, "state": d.state, "where": d.where, "ready_at": _iso(d.ready_at)}
            for d in sheet.drying
        ],
        "missing": [
            {"horse": m.horse, "round": m.round, "what": tongue.lack(m).replace(NBSP, " ")} for m in sheet.missing
        ],
        "checks": [{"horse": c.horse, "at": _iso(c.at), "what": tongue.say("hand")} for c in sheet.checks],
        "took_ms": sheet.took_ms,
    }


def _horse_json(horse: HorseSheet, sheet: Sheet, tongue: Voice) -> dict[str, Any]:
    return {
        "horse": horse.horse,
        "offset_c": _number(horse.offset_c, 2),
        "offset_sd_c": _number(horse.offset_sd_c, 2),
        "windows": [_dress_json(d, horse.horse, sheet, tongue) for d in horse.windows],
    }


def _dress_json(d: DressSheet, horse: str, sheet: Sheet, tongue: Voice) -> dict[str, Any]:
    return {
        "round": d.round,
        "where": d.where,
        "wear": list(d.wear),
        "fill_g": _whole(d.fill_g),
        "change": d.change,
        "cold_margin_c": _number(d.cold_margin_c),
        "cold_at": _iso(d.cold_at),
        "heat_margin_c": _number(d.heat_margin_c),
        "heat_at": _iso(d.heat_at),
        "fill_band_g": None if d.fill_band_g is None else [_whole(g) for g in d.fill_band_g],
        "extra_energy_pct": _number(d.extra_energy_pct),
        "extra_hay_kg": _number(d.extra_hay_kg, 2),
        "unjudged": [_iso(at) for at in d.unjudged],
        "why": [tongue.reason(r, sheet.sky, horse).replace(NBSP, " ") for r in d.why],
        "cautions": [sentence(tongue.reason(r, sheet.sky, horse)).replace(NBSP, " ") for r in d.cautions],
    }


def _number(value: float | None, digits: int = 1) -> float | None:
    found = known(value)
    return None if found is None else round(found, digits) + 0.0


def _whole(value: float) -> int | None:
    found = known(value)
    return None if found is None else round(found)


def _iso(at: datetime | None) -> str | None:
    return None if at is None else at.isoformat()
