"""A plan in words, in the reader's language and units; and as the contract's JSON. Nothing here plans."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any, Literal

from bot.barn import Barn
from bot.layout import lay_out, wrap
from bot.sheet import DressSheet, HorseSheet, MissingSheet, Sheet, Window
from bot.skyline import sentence, skyline
from bot.state import State
from bot.units import NBSP, known
from bot.voice import Voice, voice

Cause = Literal["forecast", "report"]

AT_MOST = 6  # lines of things to dry, mend, check: a post is read in twenty seconds
MEND = ("torn", "strap broken", "washing", "missing")
INDENT = "  "


# ── the round's post ─────────────────────────────────────────────────────────────────────────────────────────────


def round_post(
    sheet: Sheet,
    barn: Barn,
    state: State,
    language: str,
    units: str,
    late: bool = False,  # noqa: FBT001, FBT002
    notes: Sequence[str] = (),
) -> str:
    """The post for the sheet's first window: the weather, who changes, who stays, what to dry, mend, buy, check.

    late: the window has begun. notes: lines for people that stand under the weather, as they are.
    """
    tongue = voice(barn, language, units)
    window = sheet.windows[0]
    return lay_out(
        title(sheet, window, tongue),
        wrap(skyline(sheet, window, tongue)),
        wrap(tongue.say("late", at=tongue.clock(window.start))) if late else None,
        *(wrap(note) for note in notes),
        *judged(sheet, window, tongue),
        "",
        *changes(sheet, tongue),
        *stays(sheet, tongue),
        *_section(chores(sheet, state, tongue)),
        *_section(looks(sheet, window, tongue)),
        "",
        wrap(source_line(sheet, tongue)),
        wrap(tongue.say("guide")),
    )


def title(sheet: Sheet, window: Window, tongue: Voice) -> str:
    """Farm, round, day and time."""
    start = window.start.astimezone(tongue.zone)
    when = f"{tongue.day(start.date())} {tongue.clock(start)}"
    return wrap(tongue.say("title", barn=" ".join(sheet.barn.split()), round=tongue.round(window.round), when=when))


def judged(sheet: Sheet, window: Window, tongue: Voice) -> Iterable[str]:
    """What the forecast leaves unsaid, so that nobody takes silence for safety."""
    if sheet.forecast.source is None:
        yield wrap(tongue.say("no forecast"))
        return
    hours = sorted({at for h in sheet.horses for d in h.windows[:1] for at in d.unjudged})
    if hours:
        end = tongue.clock(min(hours[-1] + timedelta(hours=1), max(window.end, hours[-1])))
        yield wrap(tongue.say("unjudged", start=tongue.clock(hours[0]), end=end, count=len(hours)))


@dataclass(frozen=True)
class Move:
    """What one horse changes from and to, in words; equal moves are said together."""

    wear: str
    off: str


def changes(sheet: Sheet, tongue: Voice) -> Iterable[str]:
    """Who changes, together with who changes alike."""
    groups: dict[Move, list[str]] = {}
    for horse, dress in first_window(sheet):
        if dress.change:
            groups.setdefault(move(horse, dress, tongue), []).append(horse.horse)
    yield tongue.say("change head" if groups else "nobody changes")
    for what, names in sorted(groups.items(), key=lambda item: -len(item[1])):
        line = "change off" if what.off else "change"
        yield wrap(tongue.say(line, names=tongue.names(names), wear=what.wear, off=what.off), INDENT)


def move(horse: HorseSheet, dress: DressSheet, tongue: Voice) -> Move:
    """The outfit from the skin outward, and what comes off for it where that is known."""
    gone = [g for g in horse.wears_now or () if g not in dress.wear]
    return Move(tongue.outfit(dress.wear, horse.horse), " + ".join(tongue.piece(g, horse.horse) for g in gone))


def stays(sheet: Sheet, tongue: Voice) -> Iterable[str]:
    """Who stays as they are, as short as can be."""
    groups: dict[str, list[str]] = {}
    for horse, dress in first_window(sheet):
        if not dress.change:
            groups.setdefault(tongue.outfit(dress.wear, horse.horse), []).append(horse.horse)
    if groups:
        yield ""
        yield tongue.say("stay head")
    for wear, names in sorted(groups.items(), key=lambda item: -len(item[1])):
        yield wrap(tongue.say("stay", names=tongue.names(names), wear=wear), INDENT)


def chores(sheet: Sheet, state: State, tongue: Voice) -> list[str]:
    """What to dry, mend and buy."""
    drying = [
        tongue.say(
            "drying",
            piece=tongue.whose(d.garment),
            state=tongue.state(d.state),
            ready=None if d.ready_at is None else tongue.when(d.ready_at, sheet.made_at),
            place=d.where,
        )
        for d in sheet.drying
    ]
    mend = [
        tongue.say("mend", piece=tongue.whose(g), state=tongue.state(now.state))
        for g, now in state.garments.items()
        if now.state in MEND
    ]
    lacks = [tongue.say("missing", horse=m.horse, round=tongue.round(m.round), what=lack(m, tongue)) for m in sheet.missing]
    return [*lacks, *drying, *mend]


def looks(sheet: Sheet, window: Window, tongue: Voice) -> list[str]:
    """Whom to lay a hand on in this window, and why; equal reasons are said together."""
    groups: dict[tuple[datetime, str], list[str]] = {}
    for c in sheet.checks:
        if window.start <= c.at < window.end:
            groups.setdefault((c.at, tongue.reason(c.reason, sheet.sky, c.horse)), []).append(c.horse)
    return [
        tongue.say("check", names=tongue.names(names), at=tongue.clock(at), why=why)
        for (at, why), names in sorted(groups.items(), key=lambda item: item[0][0])
    ]


def _section(lines: Sequence[str]) -> Iterable[str]:
    if lines:
        yield ""
    for line in lines[:AT_MOST]:
        yield wrap(line, INDENT)
    if len(lines) > AT_MOST:
        yield f"{INDENT}+ {len(lines) - AT_MOST}"


def source_line(sheet: Sheet, tongue: Voice) -> str:
    """Whose forecast it is and how old."""
    source = sheet.forecast
    if source.source is None:
        return tongue.say("source none")
    return tongue.say(
        "source stale" if source.stale else "source",
        source=source.attribution or source.source,
        age=None if source.age_min is None else tongue.age(source.age_min),
    )


def lack(missing: MissingSheet, tongue: Voice) -> str:
    """The garment that would do: "dry 200–300 g turnout, 69 in"."""
    low, high, size = known(missing.fill_low_g), known(missing.fill_high_g), known(missing.size_in)
    grams = None if not high else tongue.measures.fills(low or 0.0, high)
    kind = tongue.kind_of(missing.kind, grams)
    return tongue.say("dry garment", kind=kind, size=None if not size else tongue.measures.size(size))


def first_window(sheet: Sheet) -> Iterable[tuple[HorseSheet, DressSheet]]:
    """Each horse with its dress for the sheet's first window."""
    return ((h, h.windows[0]) for h in sheet.horses if h.windows)


# ── an update ────────────────────────────────────────────────────────────────────────────────────────────────────


def update(
    before: Sheet, after: Sheet, horses: Iterable[str], cause: Cause, barn: Barn, language: str, units: str
) -> str:
    """One message that names only the horses a new forecast or a report moves, to what, and why."""
    tongue = voice(barn, language, units)
    lines = [line for name in horses for line in moved(before, after, name, tongue)]
    head = tongue.say("update forecast" if cause == "forecast" else "update report")
    sky = wrap(skyline(after, after.windows[0], tongue)) if cause == "forecast" and after.windows else None
    return lay_out(wrap(head), sky, *(wrap(line, INDENT) for line in lines), wrap(source_line(after, tongue)))


def moved(before: Sheet | None, after: Sheet, name: str, tongue: Voice) -> Iterable[str]:
    """The first window in which this horse is to wear something else than before, with the weightiest reason."""
    for window, was, now in differences(before, after, name):
        why = tongue.reason(now.why[0], after.sky, name) if now.why else None
        yield tongue.say(
            "moved",
            horse=name,
            when=at_round(window, after, tongue),
            wear=tongue.outfit(now.wear, name),
            was=None if was is None else tongue.outfit(was.wear, name),
            why=why,
        )
        return


def differences(
    before: Sheet | None, after: Sheet, name: str
) -> Iterable[tuple[Window, DressSheet | None, DressSheet]]:
    """The windows (known by their end) in which this horse wears something else than before."""
    known_before = {w.end: d for w, d in _dresses(before, name)} if before else {}
    for window, now in _dresses(after, name):
        was = known_before.get(window.end)
        if was is not None and was.wear != now.wear:
            yield window, was, now


def _dresses(sheet: Sheet, name: str) -> Iterable[tuple[Window, DressSheet]]:
    return next((zip(sheet.windows, h.windows) for h in sheet.horses if h.horse == name), ())


def at_round(window: Window, sheet: Sheet, tongue: Voice) -> str:
    """When a window's outfit goes on: now, or at which round."""
    if window.start <= sheet.made_at:
        return tongue.say("now")
    return tongue.say("at round", round=tongue.round(window.round), at=tongue.clock(window.start))


# ── the contract's JSON ──────────────────────────────────────────────────────────────────────────────────────────


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
            {"horse": m.horse, "round": m.round, "what": lack(m, tongue).replace(NBSP, " ")} for m in sheet.missing
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
        "fill_g": d.fill_g,
        "change": d.change,
        "cold_margin_c": _number(d.cold_margin_c),
        "cold_at": _iso(d.cold_at),
        "heat_margin_c": _number(d.heat_margin_c),
        "heat_at": _iso(d.heat_at),
        "fill_band_g": None if d.fill_band_g is None else [_number(g, 0) for g in d.fill_band_g],
        "extra_energy_pct": _number(d.extra_energy_pct),
        "extra_hay_kg": _number(d.extra_hay_kg, 2),
        "unjudged": [_iso(at) for at in d.unjudged],
        "why": [tongue.reason(r, sheet.sky, horse).replace(NBSP, " ") for r in d.why],
        "cautions": [sentence(tongue.reason(r, sheet.sky, horse)).replace(NBSP, " ") for r in d.cautions],
    }


def _number(value: float | None, digits: int = 1) -> float | None:
    found = known(value)
    return None if found is None else round(found, digits) + 0.0


def _iso(at: datetime | None) -> str | None:
    return None if at is None else at.isoformat()
