"""File and events folded into the barn as it is at an instant: one small function an event kind.

Pure and without arrays. Undo is a fold without the undone entry, so its order never matters except through dates.
"""

from collections.abc import Callable, Iterable
from dataclasses import replace
from datetime import date, datetime, time, timedelta, tzinfo
from functools import reduce
from typing import Any

from bot.barn import Barn
from bot.events import (
    Changed,
    Clipped,
    Done,
    Entry,
    Event,
    FileSays,
    GarmentIs,
    GarmentWord,
    Nudged,
    Placed,
    Posted,
    RecheckSet,
    Seen,
    Style,
    Wearing,
    Wished,
    Worked,
)
from bot.now import GarmentNow, HorseNow, Hung, Standing, State

__all__ = ["CALM", "GarmentNow", "HorseNow", "Hung", "Standing", "State", "apply", "as_filed", "fold", "noon"]

WORK_LASTS = timedelta(hours=3)
WORK_TOLD_AFTER = timedelta(hours=1)  # "sweaty", and a while later "she was just ridden"
ILLNESS_LASTS = timedelta(hours=48)
ROUND_BEFORE, ROUND_AFTER = timedelta(hours=1), timedelta(hours=2)  # ticked then, somebody was with the horses
MOST_QUIET = 28  # rounds without a remark: a fortnight's
MOST_HUNG = 60  # of what hands found on the rail: a winter's worth
WATER: tuple[GarmentWord, ...] = ("damp", "wet", "soaked")
CALM = frozenset({"comfortable", "sweating", "hot"})  # signs that end a cold danger


def as_filed(barn: Barn) -> State:
    """The barn as its file has it, before anybody said anything."""
    horses = {
        horse.name: HorseNow(
            wear=horse.wearing,
            clip=horse.clip.style,
            clip_on=horse.clip.on,
            clips=() if horse.clip.on is None else ((noon(horse.clip.on, barn.zone), horse.clip.style),),
            keep_bare=horse.keep_bare,
        )
        for horse in barn.horses
    }
    return State(horses=horses, garments={g.id: GarmentNow(g.state) for g in barn.garments}, zone=barn.zone)


def fold(barn: Barn, entries: Iterable[Entry]) -> State:
    """The state after all entries that nothing has undone."""
    return reduce(apply, (e for e in entries if e.undone_by is None), as_filed(barn))


def apply(state: State, entry: Entry) -> State:
    """The state after one more entry. Entries about horses and garments the file no longer has change nothing."""
    change = CHANGES.get(type(entry.event))
    return change(state, entry, entry.event) if change else state


def _horse(state: State, name: str, **facts: Any) -> State:
    now = state.horses.get(name)
    return state if now is None else replace(state, horses={**state.horses, name: replace(now, **facts)})


def _garment(state: State, name: str, said: GarmentNow) -> State:
    return state if name not in state.garments else replace(state, garments={**state.garments, name: said})


def _seen(state: State, entry: Entry, event: Seen) -> State:
    now = state.horses.get(event.horse)
    if now is None:
        return state
    explained = now.explained | ({entry.number} if _explained(state, now, entry, event) else set())
    unwell_at = entry.at if event.sign == "unwell" else now.unwell_at
    facts = {"signs": (*now.signs, entry), "explained": explained, "unwell_at": unwell_at}
    state = _horse(state, event.horse, **facts, recheck=None)
    if event.sign == "rubbed" and event.wore:
        rubs = {g: state.rubs.get(g, frozenset()) | {event.horse} for g in event.wore}
        state = replace(state, rubs={**state.rubs, **rubs})
    return state


def _explained(state: State, now: HorseNow, entry: Entry, event: Seen) -> bool:
    """A sign that teaches nothing about clothes: after work, in a soaked garment, or while unwell."""
    worked = now.worked_at is not None and timedelta(0) <= entry.at - now.worked_at <= WORK_LASTS
    ill = now.unwell_at is not None and entry.at - now.unwell_at <= ILLNESS_LASTS
    soaked = any(state.garments[g].state in {"wet", "soaked"} for g in event.wore or () if g in state.garments)
    return event.setting == "after work" or worked or ill or soaked


def _garment_is(state: State, entry: Entry, event: GarmentIs) -> State:
    word: GarmentWord = "dry" if event.state == "in service" else event.state
    before = state.garments.get(event.garment)
    if before and before.since and before.state in WATER and word in (*WATER, "dry"):
        state = replace(
            state, hung=(*state.hung[1 - MOST_HUNG :], Hung(event.garment, before.state, before.since, entry.at, word))
        )
    through = {"soaked": state.soaked_through | {event.garment}, "in service": state.soaked_through - {event.garment}}
    state = replace(state, soaked_through=through.get(event.state, state.soaked_through))
    return _garment(state, event.garment, GarmentNow(word, entry.at))


def _wearing(state: State, entry: Entry, event: Wearing) -> State:
    return _horse(state, event.horse, wear=event.wear, wear_at=entry.at)


def _done(state: State, entry: Entry, event: Done) -> State:
    standing = state.standing
    if standing is None:
        return state
    named = tuple(standing.wear) if event.horses == "all" else event.horses
    for name in named:
        state = _quiet(state, entry, event, name)
        if name in standing.wear:
            state = _horse(state, name, wear=standing.wear[name], wear_at=entry.at)
    by = {**standing.done_by, **dict.fromkeys(named, entry.who)}
    return replace(state, standing=replace(standing, done=standing.done | set(named), done_by=by))


def _quiet(state: State, entry: Entry, event: Done, name: str) -> State:
    """Somebody was with this horse at its round and found nothing worth a word, in what it wore until then."""
    standing, now = state.standing, state.horses.get(name)
    if standing is None or now is None or now.wear is None or event.air is None or name in standing.done:
        return state
    if not -ROUND_BEFORE <= entry.at - standing.start <= ROUND_AFTER:
        return state
    fine = Seen(name, "comfortable", wore=now.wear, air=event.air)
    if _explained(state, now, entry, fine):
        return state
    return _horse(state, name, quiet=(*now.quiet[1 - MOST_QUIET :], replace(entry, event=fine)))


def _clipped(state: State, entry: Entry, event: Clipped) -> State:
    return _clip(state, event.horse, event.style, entry.at.astimezone(state.zone))


def _clip(state: State, name: str, style: Style, at: datetime) -> State:
    """A clip from then on; one of an earlier day than the last known changes nothing."""
    now, on = state.horses.get(name), at.date()
    if now is None or (now.clip_on is not None and now.clip_on > on):
        return state
    return _horse(state, name, clip=style, clip_on=on, clips=(*now.clips, (at, style)))


def _placed(state: State, entry: Entry, event: Placed) -> State:
    return _horse(state, event.horse, placed=event.where, placed_at=entry.at)


def _wished(state: State, entry: Entry, event: Wished) -> State:
    return _horse(state, event.horse, keep_bare=event.keep_bare)


def _worked(state: State, entry: Entry, event: Worked) -> State:
    """Work explains what follows, and the sweat that was seen shortly before somebody mentioned it."""
    now = state.horses.get(event.horse)
    if now is None:
        return state
    warm = [e for e in now.signs if isinstance(e.event, Seen) and e.event.sign in {"sweating", "hot"}]
    just = {e.number for e in warm if timedelta(0) <= entry.at - e.at <= WORK_TOLD_AFTER}
    return _horse(state, event.horse, worked_at=entry.at, explained=now.explained | just)


def _posted(state: State, entry: Entry, event: Posted) -> State:
    wear = {horse: outfit for horse, outfit in event.wear.items() if horse in state.horses}
    before = state.standing and replace(state.standing, before=None)
    standing = Standing(entry.number, event.round, event.day, event.start, event.end, wear, at=entry.at, before=before)
    return replace(state, standing=standing, posted=state.posted | {(event.round, event.day)})


def _changed(state: State, entry: Entry, event: Changed) -> State:
    standing = state.standing
    if standing is None or (standing.round, standing.day) != (event.round, event.day):
        return state
    wear = {**standing.wear, **event.wear}
    return replace(state, standing=replace(standing, wear=wear, done=standing.done - set(event.wear)))


def _recheck(state: State, entry: Entry, event: RecheckSet) -> State:
    """A second look; a further call only while one is open, for its sign may have been taken back."""
    now = state.horses.get(event.horse)
    if event.step and (now is None or now.recheck is None):
        return state
    return _horse(state, event.horse, recheck=entry)


def _nudged(state: State, entry: Entry, event: Nudged) -> State:
    standing = state.standing
    return state if standing is None else replace(state, standing=replace(standing, nudged=True))


def _file_says(state: State, entry: Entry, event: FileSays) -> State:
    match event.about:
        case "clip":
            on = noon(event.on, state.zone) if event.on else entry.at.astimezone(state.zone)
            return _clip(state, event.name, event.value, on)
        case "keep_bare":
            return _horse(state, event.name, keep_bare=event.value)
        case "wearing":
            wear = None if event.value is None else tuple(event.value)
            return _horse(state, event.name, wear=wear, wear_at=entry.at)
        case "where":  # the file's routine changed: what chat said before no longer stands
            return _horse(state, event.name, placed=None, placed_at=None)
        case "state":
            return _garment(state, event.name, GarmentNow(event.value, entry.at))


CHANGES: dict[type[Event], Callable[[State, Entry, Any], State]] = {
    Seen: _seen,
    GarmentIs: _garment_is,
    Wearing: _wearing,
    Done: _done,
    Clipped: _clipped,
    Placed: _placed,
    Wished: _wished,
    Worked: _worked,
    Posted: _posted,
    Changed: _changed,
    RecheckSet: _recheck,
    Nudged: _nudged,
    FileSays: _file_says,
}


def noon(day: date, zone: tzinfo) -> datetime:
    """The middle of a day: the instant of a fact that carries no hour."""
    return datetime.combine(day, time(12), zone)
