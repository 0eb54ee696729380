"""Answers to questions, from the plan as posted and the barn as it is."""

from collections.abc import Callable, Iterable, Sequence
from datetime import datetime

from bot.answer.scene import Scene, TipsOf, no_tips
from bot.answer.why import why
from bot.barn import Barn, Person
from bot.events import Asked, RecheckSet
from bot.evidence import Lesson
from bot.layout import lay_out
from bot.sheet import Sheet, Source, Window
from bot.skyline import capital, skyline
from bot.state import State
from bot.units import known
from bot.voice import Voice, for_person, plain

AT_MOST = 8  # lines of one list
LESSONS = 4  # pieces of evidence told, the latest first
OUT = ("washing", "torn", "strap broken", "missing")


def answer(
    asked: Asked,
    sheet: Sheet | None,
    state: State,
    barn: Barn,
    person: Person | None,
    now: datetime,
    evidence: Sequence[Lesson] = (),
    tips: TipsOf = no_tips,
) -> str:
    """The answer in the asker's language and units. evidence: what the horse's signs have taught, oldest first.

    tips: works out what would change the advice for a horse; asked only where the answer tells it.
    """
    tongue = for_person(barn, person)
    if asked.about == "help":
        manages = person is not None and person.role == "manager"
        more = tongue.say("help manager", one=tongue.examples["one"]) if manages else None
        return lay_out(tongue.say("help", **tongue.examples), more)
    if asked.about in {"why", "today", "forecast"} and (sheet is None or not sheet.windows):
        return lay_out(tongue.say("no plan yet"))
    scene = Scene(asked, sheet or _empty(barn, now), state, tongue, now, evidence, tips)
    return lay_out(*ANSWERS[asked.about](scene))


def _empty(barn: Barn, now: datetime) -> Sheet:
    return Sheet(barn.barn, now, Source(None), (), (), ())


def today(scene: Scene) -> Iterable[str]:
    """What one horse, or everybody, wears in each window still to come."""
    horse = scene.horse()
    for index, window in list(enumerate(scene.sheet.windows))[scene.current :]:
        if horse is not None:
            wear = scene.tongue.advised(horse.windows[index], horse.horse)
            yield scene.tongue.say("wears", horse=plain(horse.horse), when=_from(window, scene), wear=wear)
        else:
            yield capital(_from(window, scene))
            yield from _outfits(scene, index)
    if scene.sheet.horses and horse is None and scene.asked.horse:
        yield scene.tongue.say("not on plan", name=plain(scene.asked.horse))


def _from(window: Window, scene: Scene) -> str:
    start, end = scene.tongue.clock(window.start), scene.tongue.clock(window.end)
    return scene.tongue.say("span", round=scene.tongue.round(window.round), start=start, end=end)


def _outfits(scene: Scene, index: int) -> Iterable[str]:
    groups: dict[str, list[str]] = {}
    for horse in scene.sheet.horses:
        groups.setdefault(scene.tongue.advised(horse.windows[index], horse.horse), []).append(horse.horse)
    for wear, names in sorted(groups.items(), key=lambda item: -len(item[1])):
        yield scene.tongue.say("change", names=scene.tongue.row(names), wear=wear)


def forecast(scene: Scene) -> Iterable[str]:
    """The weather of each window still to come, whose it is and how old."""
    for window in scene.sheet.windows[scene.current :]:
        yield scene.tongue.say(
            "forecast line", when=capital(_from(window, scene)), sky=skyline(scene.sheet, window, scene.tongue)
        )
    yield source_line(scene.sheet, scene.tongue, scene.now)


def source_line(sheet: Sheet, tongue: Voice, now: datetime) -> str:
    """Whose forecast it is and how old at `now`."""
    source = sheet.forecast
    age = source.age_min
    if source.fetched_at is not None:
        age = max(0, int((now - source.fetched_at).total_seconds() // 60))
    return tongue.source(source, age)


def left(scene: Scene) -> Iterable[str]:
    """Who has not been said to be done this round, and who is to be looked at again."""
    yield from left_lines(scene.state, scene.sheet, scene.tongue)
    yield from recheck_lines(scene.state, scene.tongue)


def left_lines(state: State, sheet: Sheet | None, tongue: Voice) -> Iterable[str]:
    """Who has been said done and who not; nothing is taken for done that nobody said."""
    standing = state.standing
    if standing is None or not standing.wear:  # a missed post told nobody anything
        yield tongue.say("nothing posted")
        return
    changing = _changing(sheet, standing.round, standing.start)
    todo = [name for name in standing.wear if name not in standing.done]
    must = [n for n in todo if changing is None or n in changing]
    round_ = capital(tongue.round(standing.round))
    if not must and changing is not None and changing.isdisjoint(standing.wear):
        yield tongue.say("none to do", round=round_)
    elif not must:
        yield tongue.say("all done", round=round_)
    else:
        yield tongue.say("left", round=round_, names=tongue.names(must))
    done = [n for n in standing.wear if n in standing.done]
    if done:
        yield tongue.say("done so far", names=tongue.names(done))


def _changing(sheet: Sheet | None, round_: str, start: datetime) -> set[str] | None:
    """The horses that change in the standing window; None where the sheet no longer has it."""
    for index, window in enumerate(sheet.windows if sheet else ()):
        if (window.round, window.start) == (round_, start):
            return {h.horse for h in sheet.horses if h.windows[index].change} if sheet else None
    return None


def drying(scene: Scene) -> Iterable[str]:
    """What is wet and when it will be dry; what is in the wash, torn or missing."""
    garment = scene.asked.garment
    lines = list(mend_lines(scene.sheet, scene.state, scene.tongue, only=garment))
    if not lines and garment is not None:
        return [scene.tongue.say("mend", piece=capital(scene.tongue.whose(garment)), state=_state(scene, garment))]
    return lines[: AT_MOST + 1] or [scene.tongue.say("all dry")]


def mend_lines(sheet: Sheet | None, state: State, tongue: Voice, only: str | None = None) -> Iterable[str]:
    """Each piece that is not dry or not in service; one piece alone where `only` names it."""
    ready = {d.garment: d for d in sheet.drying} if sheet else {}
    for garment, now in state.garments.items():
        if now.state in {"dry", "in service"} or (only is not None and garment != only):
            continue
        d = ready.get(garment)
        piece, word = capital(tongue.whose(garment)), tongue.state(now.state)
        if now.state in OUT:
            yield tongue.say("mend", piece=piece, state=word)
        else:
            at = None if d is None or d.ready_at is None or sheet is None else tongue.about(d.ready_at, sheet.made_at)
            yield tongue.say("drying", piece=piece, state=word, ready=at, place=d.where if d else None)


def _state(scene: Scene, garment: str) -> str:
    now = scene.state.garments.get(garment)
    return scene.tongue.state(now.state if now else "dry")


def state(scene: Scene) -> Iterable[str]:
    """How a horse is, what has been learned of it and from what; the state of a garment; or the barn's."""
    name, garment = scene.asked.horse, scene.asked.garment
    if name is not None:
        return horse_lines(scene, name)
    if garment is not None:
        return drying(scene)
    lines = list(left(scene))
    return [*lines, *mend_lines(scene.sheet, scene.state, scene.tongue)][: 2 * AT_MOST]


def horse_lines(scene: Scene, name: str) -> Iterable[str]:
    """One horse: where, in what, what is planned, what was learned and from what."""
    tongue, now, sheet = scene.tongue, scene.state.horses.get(name), scene.horse()
    if now is None:
        yield tongue.say("not on plan", name=plain(name))
        return
    wear = tongue.say("nobody said") if now.wear is None else tongue.outfit(now.wear, name)
    yield tongue.say("horse now", horse=plain(name), wear=wear)
    if sheet is not None:
        dress = sheet.windows[scene.current]
        where = tongue.book.places.get(dress.where, plain(dress.where))
        yield tongue.say("horse plan", wear=tongue.advised(dress, name), where=where)
        yield tongue.learned(sheet.offset_c, sheet.offset_sd_c)
    for lesson in list(reversed(scene.evidence))[:LESSONS]:
        yield lesson_line(lesson, tongue)
    yield from (line for line in recheck_lines(scene.state, tongue, only=name))


def lesson_line(lesson: Lesson, tongue: Voice) -> str:
    """One sign and what it taught: "Thu 26 Nov 10:40, Inés: sweating. −0.8 °C"."""
    local = lesson.at.astimezone(tongue.zone)
    shift = known(lesson.shift_c) or 0.0
    return tongue.say(
        "lesson" if abs(shift) >= 0.05 else "lesson nothing",
        when=f"{tongue.day(local.date())} {tongue.clock(lesson.at)}",
        who=plain(lesson.who),
        sign=tongue.sign(lesson.sign),
        shift=("+" if shift > 0 else "") + tongue.measures.difference(shift, 1),
    )


def recheck_lines(state: State, tongue: Voice, only: str | None = None) -> Iterable[str]:
    """The second looks that are still owed."""
    for name, event in state.rechecks():
        if isinstance(event, RecheckSet) and only in (None, name):
            due, sign = tongue.clock(event.due), tongue.sign(event.about)
            yield tongue.say("recheck due", horse=plain(name), sign=sign, at=due)


ANSWERS: dict[str, Callable[[Scene], Iterable[str]]] = {
    "why": why,
    "today": today,
    "left": left,
    "drying": drying,
    "state": state,
    "forecast": forecast,
}
