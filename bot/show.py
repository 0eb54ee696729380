"""The state for people and as JSON: a horse with its offset and what taught it, garments, second looks that are due."""

from datetime import datetime
from typing import Any

from bot.barn import Barn, plain
from bot.brief import Cut, garment_ready, where_now
from bot.evidence import Known, Lesson, learned, lessons
from bot.problems import WrongInput
from bot.state import State


def show_json(barn: Barn, state: State, at: datetime, name: str | None, cut: Cut) -> dict[str, Any]:
    """The contract's object: everything, or one horse or garment and what belongs to it. WrongInput for other names.

    cut: the last good forecast's hours, for what dries outdoors.
    """
    horses = [h.name for h in barn.horses]
    garments = [g.id for g in barn.garments]
    if name is not None:
        named = [h.name for h in barn.horses if plain(name) in map(plain, h.names)]
        pieces = [g.id for g in barn.garments if plain(name) in map(plain, (g.id, *g.also))]
        if not named and not pieces:
            raise WrongInput(f"show: no horse or garment “{name}” in {barn.barn}; its horses: {', '.join(horses)}")
        horses, garments = named, pieces or [g.id for g in barn.garments if g.horse in named]
    return {
        "horses": [horse_json(barn, state, at, one) for one in horses],
        "garments": [garment_json(barn, state, at, one, cut) for one in garments],
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


def show_text(shown: dict[str, Any], barn: Barn) -> str:
    """The same, as lines."""
    lines = []
    for horse in shown["horses"]:
        wear = "nobody said" if horse["wear"] is None else " + ".join(horse["wear"]) or "bare"
        clip = horse["clip"]["style"] + (f" on {horse['clip']['on']}" if horse["clip"]["on"] else "")
        lines.append(f"{horse['horse']}: {horse['where']}, wears {wear}; clip {clip}")
        lines.append(f"  feels the cold {horse['offset_c']:+.1f} °C (± {horse['offset_sd_c']:.1f}) against the model")
        lines += [
            f"  {one['at'][:16].replace('T', ' ')} {one['who']}: {one['sign']} at margin "
            f"{one['margin_c']:+.1f} °C: {one['shift_c']:+.2f}"
            for one in horse["evidence"]
        ]
    for piece in shown["garments"]:
        ready = f", dry about {piece['ready_at'][:16].replace('T', ' ')}" if piece["ready_at"] else ""
        lines.append(f"{piece['garment']}: {piece['state']}{ready}")
    lines += [f"look again at {r['horse']} ({r['about']}): {r['due'][:16]}" for r in shown["rechecks"]]
    return "\n".join(lines)
