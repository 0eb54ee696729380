"""The state for people and as JSON: a horse with its offset and what taught it, garments, second looks that are due."""

from collections.abc import Iterable, Mapping, Sequence
from datetime import date, datetime
from typing import Any

from bot.barn import Barn, plain
from bot.brief import Cut, garment_ready, where_now
from bot.events import Entry, GarmentIs
from bot.evidence import WARM, Known, Lesson, learned, lessons
from bot.layout import lay_out, wrap
from bot.problems import WrongInput
from bot.state import State
from bot.tips import Tips, barn_lines, tip_lines
from bot.units import NBSP
from bot.voice import Voice, voice
from bot.voice import plain as plain_name
from rules.offset import Common

UNDER, INDENT = 2 * NBSP, "    "


def show_json(
    barn: Barn, state: State, at: datetime, name: str | None, cut: Cut, entries: Sequence[Entry] = ()
) -> dict[str, Any]:
    """The contract's object: everything, or one horse or garment and what belongs to it. WrongInput for other names.

    cut: the last good forecast's hours, for what dries outdoors. entries: the ledger; a garment asked for by name comes
    with its history.
    """
    horses = [h.name for h in barn.horses]
    garments = [g.id for g in barn.garments]
    if name is not None:
        named = [h.name for h in barn.horses if plain(name) in map(plain, h.names)]
        pieces = [g.id for g in barn.garments if plain(name) in map(plain, (g.id, *g.also))]
        if not named and not pieces:
            raise WrongInput(f"show: no horse or garment “{name}” in {barn.barn}; its horses: {', '.join(horses)}")
        horses, garments = named, pieces or [g.id for g in barn.garments if g.horse in named]
    pieces_json = [garment_json(barn, state, at, one, cut) for one in garments]
    if name is not None:
        pieces_json = [piece | {"history": history(barn, entries, piece["garment"])} for piece in pieces_json]
    return {
        "horses": [horse_json(barn, state, at, one) for one in horses],
        "garments": pieces_json,
        "rechecks": [
            {"horse": horse, "due": event.due.astimezone(barn.zone).isoformat(), "about": event.about}
            for horse, event in state.rechecks()
            if horse in horses
        ],
    }


def horse_json(barn: Barn, state: State, at: datetime, name: str) -> dict[str, Any]:
    """One horse as it is at `at`."""
    now = state.horses[name]
    filed = barn.horse(name)
    known: Known = {}
    now_s = int(at.timestamp())
    what = learned(barn, state, filed, now_s, known)
    return {
        "horse": name,
        "where": where_now(barn, state, name, at),
        "wear": None if now.wear is None else list(now.wear),
        "clip": {"style": now.clip, "on": now.clip_on and now.clip_on.isoformat()},
        "keep_bare": now.keep_bare,
        "offset_c": round(what.mean_c, 2),
        "offset_sd_c": round(what.sd_c, 2),
        "evidence": [lesson_json(barn, one) for one in lessons(barn, state, filed, now_s, known)],
    }


def lesson_json(barn: Barn, one: Lesson) -> dict[str, Any]:
    """One sign, the margin the horse had on the side the sign speaks of, and how far it moved the offset."""
    return {
        "at": one.at.astimezone(barn.zone).isoformat(),
        "who": one.who,
        "sign": one.sign,
        "margin_c": round(one.margin_c, 1),
        "shift_c": round(one.shift_c, 2),
    }


def garment_json(barn: Barn, state: State, at: datetime, name: str, cut: Cut) -> dict[str, Any]:
    """One garment as it is at `at`; ready_at is null where it is dry, or nobody can say."""
    now = state.garments[name]
    ready = garment_ready(barn, state, name, at, cut)
    return {
        "garment": name,
        "horse": barn.garment(name).horse,
        "state": now.state,
        "since": now.since and now.since.astimezone(barn.zone).isoformat(),
        "ready_at": ready and ready.astimezone(barn.zone).isoformat(),
    }


def history(barn: Barn, entries: Sequence[Entry], name: str) -> list[dict[str, Any]]:
    """What was said of one garment and stands, oldest first."""
    return [
        {"at": e.at.astimezone(barn.zone).isoformat(), "who": e.who, "state": e.event.state}
        for e in entries
        if isinstance(e.event, GarmentIs) and e.event.garment == name and e.undone_by is None
    ]


def show_text(
    shown: dict[str, Any],
    barn: Barn,
    used_to_c: float = 0.0,
    common: Common | None = None,
    tips: Mapping[str, Tips] | None = None,
) -> str:
    """The same, as lines that fit a phone. used_to_c: how much more the weeks behind let it be felt [K].

    common: what all horses have taught together. tips: what would change the advice for a horse.
    """
    tongue = voice(barn, "en", barn.units)
    lines = [
        line for horse in shown["horses"] for line in _horse_lines(horse, tongue, (tips or {}).get(horse["horse"]))
    ]
    lines += tongue.used_to(used_to_c) if shown["horses"] else ()
    lines += barn_lines(common, tongue) if common and shown["horses"] else ()
    lines += [line for piece in shown["garments"] for line in _garment_lines(piece, tongue)]
    lines += [f"Look again at {r['horse']} ({r['about']}): {_day(r['due'], tongue)}" for r in shown["rechecks"]]
    return lay_out(*(wrap(line, INDENT) for line in lines))


def _horse_lines(horse: dict[str, Any], tongue: Voice, tips: Tips | None) -> Iterable[str]:
    name = horse["horse"]
    wear = "nobody said what it wears" if horse["wear"] is None else tongue.outfit(horse["wear"], name)
    yield f"{plain_name(name)}: {horse['where']}, {wear}"
    if horse["clip"]["style"] != "none":
        since = f" since {_date(horse['clip']['on'], tongue)}" if horse["clip"]["on"] else ""
        yield f"{UNDER}{horse['clip']['style']} clip{since}"
    if horse["keep_bare"]:
        yield f"{UNDER}its owner wants it bare"
    yield f"{UNDER}{tongue.learned(horse['offset_c'], horse['offset_sd_c'])}"
    for one in horse["evidence"]:
        side = "too warm" if one["sign"] in WARM else "too cold"
        spare, shift = (tongue.measures.difference(abs(one[key]), 1) for key in ("margin_c", "shift_c"))
        model = f"{spare} {'beyond' if one['margin_c'] < 0 else 'short of'} {side} by the model"
        way = "+" if one["shift_c"] >= 0 else "−"
        yield f"{UNDER}{_day(one['at'], tongue)} {plain_name(one['who'])}: {one['sign']}, {model}: {way}{shift}"
    if tips is not None:
        yield f"{UNDER}advised now: {tongue.outfit(tips.wear, name)}"
        yield from (f"{UNDER}{line}" for line in tip_lines(tips, tongue, name, most=None))


def _garment_lines(piece: dict[str, Any], tongue: Voice) -> Iterable[str]:
    since = f" since {_day(piece['since'], tongue)}" if piece["since"] else ""
    ready = f", dry about {_day(piece['ready_at'], tongue)}" if piece["ready_at"] else ""
    yield f"{piece['garment']}: {piece['state']}{since}{ready}"
    for one in piece.get("history", ()):
        yield f"{UNDER}{_day(one['at'], tongue)} {plain_name(one['who'])}: {one['state']}"


def _day(iso: str, tongue: Voice) -> str:
    at = datetime.fromisoformat(iso)
    return f"{tongue.day(at.date())} {tongue.clock(at)}"


def _date(iso: str, tongue: Voice) -> str:
    return tongue.day(date.fromisoformat(iso))
