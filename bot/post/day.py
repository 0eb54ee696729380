"""The round's post: the weather, who changes, who stays, what to dry, mend, buy, check."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.barn import Barn
from bot.layout import lay_out, wrap
from bot.sheet import DressSheet, DryingSheet, HorseSheet, Sheet, Window
from bot.skyline import skyline
from bot.state import State
from bot.voice import Voice, plain, voice
from rules.reason import Code

AT_MOST = 4  # things of one sort to dry, mend, buy or check: a post is read in twenty seconds
MEND = ("torn", "strap broken")
INDENT = "  "


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
        *dry_first(sheet, tongue),
        *stays(sheet, tongue),
        *_section([*chores(sheet, state, tongue), *looks(sheet, window, tongue)]),
        "",
        wrap(tongue.source(sheet.forecast, sheet.forecast.age_min)),
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
    if sheet.forecast.stale:
        age = sheet.forecast.age_min
        yield wrap(tongue.say("stale", age=None if age is None else tongue.age(age)))
    hours = sorted({at for h in sheet.horses for d in h.windows[:1] for at in d.unjudged})
    if hours:
        end = tongue.clock(min(hours[-1] + timedelta(hours=1), max(window.end, hours[-1])))
        yield wrap(tongue.say("unjudged", start=tongue.clock(hours[0]), end=end, count=len(hours)))


@dataclass(frozen=True)
class Step:
    """What one horse changes from and to, in words; equal moves are said together."""

    wear: str
    off: str


def leads(sheet: Sheet, barn: Barn, language: str) -> tuple[str, ...]:
    """How the lines of those who change begin: the names that the eye looks for."""
    tongue = voice(barn, language, barn.units)
    return tuple(tongue.say("change", names=tongue.row(names), wear="").strip() for _, names in steps(sheet, tongue))


def changes(sheet: Sheet, tongue: Voice) -> Iterable[str]:
    """Who changes, together with who changes alike."""
    found = steps(sheet, tongue)
    yield tongue.say("change head" if found else "nobody changes")
    for what, names in found:
        line = "change off" if what.off else "change"
        yield wrap(tongue.say(line, names=tongue.row(names), wear=what.wear, off=what.off), INDENT)


def steps(sheet: Sheet, tongue: Voice) -> list[tuple[Step, list[str]]]:
    """What is to be done and for whom, the largest company first."""
    groups: dict[Step, list[str]] = {}
    for horse, dress in first_window(sheet):
        if dress.change:
            groups.setdefault(step(horse, dress, tongue), []).append(horse.horse)
    return sorted(groups.items(), key=lambda item: -len(item[1]))


def step(horse: HorseSheet, dress: DressSheet, tongue: Voice) -> Step:
    """The outfit from the skin outward, and what comes off where another outfit does not say it by itself."""
    before = horse.wears_now or ()
    gone = [g for g in before if g not in dress.wear]
    swapped = bool(dress.wear) and len(gone) == len(before)
    off = "" if swapped else " + ".join(tongue.piece(g, horse.horse) for g in gone)
    return Step(tongue.outfit(dress.wear, horse.horse), off)


def dry_first(sheet: Sheet, tongue: Voice) -> Iterable[str]:
    """The horses that are to be dried before anything goes on."""
    wet = [h.horse for h, d in first_window(sheet) if any(c.code is Code.DRY_FIRST for c in d.cautions)]
    if wet:
        yield wrap(tongue.say("dry first", names=tongue.row(wet)), INDENT)


def stays(sheet: Sheet, tongue: Voice) -> Iterable[str]:
    """Who stays as they are, in one breath: a wrong record is still seen by whoever reads what they should have on."""
    kept = [h for h, d in first_window(sheet) if not d.change]
    if kept:
        yield ""
        yield tongue.say("stay head")
        yield wrap(alike(kept, 0, tongue))


def alike(horses: Iterable[HorseSheet], window: int, tongue: Voice) -> str:
    """Horses by what they wear in one window, the largest company first: "Clover, Moss: bare; Ned: rain sheet"."""
    groups: dict[str, list[str]] = {}
    for horse in horses:
        groups.setdefault(tongue.advised_briefly(horse.windows[window]), []).append(horse.horse)
    largest = sorted(groups.items(), key=lambda item: -len(item[1]))
    return tongue.say("between").join(tongue.say("stay", names=tongue.row(names), wear=wear) for wear, names in largest)


def chores(sheet: Sheet, state: State, tongue: Voice) -> Iterable[str]:
    """What to dry, mend and buy: a line each."""
    wet = [tongue.say("wet piece", piece=tongue.whose(d.garment), ready=ready(d, sheet, tongue)) for d in sheet.drying]
    mend = [
        tongue.say("mend piece", piece=tongue.whose(g), state=tongue.state(now.state))
        for g, now in state.garments.items()
        if now.state in MEND
    ]
    if wet:
        yield tongue.say("wet", pieces=some(wet))
    if mend:
        yield tongue.say("mending", pieces=some(mend))
    wanted = lacks(sheet, tongue)
    if wanted:
        yield tongue.say("wanted", pieces=some(wanted, tongue.say("between")))


def lacks(sheet: Sheet, tongue: Voice) -> list[str]:
    """Horses that nothing reaches and what would do: the next round's want stands for the later ones'."""
    first = {m.horse: m for m in reversed(sheet.missing)}
    wanted = [first[h] for h in dict.fromkeys(m.horse for m in sheet.missing)]
    this = sheet.windows[0].round
    return [
        tongue.say(
            "want",
            horse=plain(m.horse),
            round=None if m.round == this else tongue.round(m.round),
            what=tongue.lack(m),
        )
        for m in wanted
    ]


def ready(drying: DryingSheet, sheet: Sheet, tongue: Voice) -> str | None:
    """When a piece will be dry; None where that is not within the forecast."""
    return None if drying.ready_at is None else tongue.about(drying.ready_at, sheet.made_at)


def some(things: Sequence[str], between: str = ", ") -> str:
    """The first few things in a row, and how many more there are."""
    more = [f"+ {len(things) - AT_MOST}"] if len(things) > AT_MOST else []
    return between.join([*things[:AT_MOST], *more])


def looks(sheet: Sheet, window: Window, tongue: Voice) -> Iterable[str]:
    """Whom to lay a hand on in this window, and why; equal reasons are said together."""
    groups: dict[tuple[datetime, str], list[str]] = {}
    for c in sheet.checks:
        if window.start <= c.at < window.end:
            groups.setdefault((c.at, tongue.reason(c.reason, sheet.sky, c.horse)), []).append(c.horse)
    for (at, why), names in sorted(groups.items())[:AT_MOST]:
        yield tongue.say("check", names=tongue.row(names), at=tongue.clock(at), why=why)


def _section(lines: Sequence[str]) -> Iterable[str]:
    if lines:
        yield ""
    yield from (wrap(line, INDENT) for line in lines)


def first_window(sheet: Sheet) -> Iterable[tuple[HorseSheet, DressSheet]]:
    """Each horse with its dress for the sheet's first window."""
    return ((h, h.windows[0]) for h in sheet.horses if h.windows)


def plan_text(sheet: Sheet, barn: Barn, state: State, language: str = "en") -> str:
    """The whole plan in the barn's units: the first window's post, then what everybody wears in the later ones."""
    tongue = voice(barn, language, barn.units)
    later = [line for k in range(1, len(sheet.windows)) for line in ("", *_later(sheet, k, tongue))]
    notes = sheet.notes[:AT_MOST]
    return lay_out(round_post(sheet, barn, state, language, barn.units, notes=notes), *later)


def _later(sheet: Sheet, index: int, tongue: Voice) -> Iterable[str]:
    window = sheet.windows[index]
    yield title(sheet, window, tongue)
    yield wrap(skyline(sheet, window, tongue))
    yield wrap(alike(sheet.horses, index, tongue))
