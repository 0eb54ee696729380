"""The round's post: the weather, who changes, who stays, what to dry, mend, buy, check."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.barn import Barn
from bot.layout import lay_out, wrap
from bot.sheet import DressSheet, HorseSheet, MissingSheet, Sheet, Window
from bot.skyline import skyline
from bot.state import State
from bot.units import known
from bot.voice import Voice, voice

AT_MOST = 6  # lines of things to dry, mend, check: a post is read in twenty seconds
MEND = ("torn", "strap broken", "washing", "missing")
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
class Step:
    """What one horse changes from and to, in words; equal moves are said together."""

    wear: str
    off: str


def changes(sheet: Sheet, tongue: Voice) -> Iterable[str]:
    """Who changes, together with who changes alike."""
    groups: dict[Step, list[str]] = {}
    for horse, dress in first_window(sheet):
        if dress.change:
            groups.setdefault(step(horse, dress, tongue), []).append(horse.horse)
    yield tongue.say("change head" if groups else "nobody changes")
    for what, names in sorted(groups.items(), key=lambda item: -len(item[1])):
        line = "change off" if what.off else "change"
        yield wrap(tongue.say(line, names=tongue.names(names), wear=what.wear, off=what.off), INDENT)


def step(horse: HorseSheet, dress: DressSheet, tongue: Voice) -> Step:
    """The outfit from the skin outward, and what comes off for it where that is known."""
    gone = [g for g in horse.wears_now or () if g not in dress.wear]
    return Step(tongue.outfit(dress.wear, horse.horse), " + ".join(tongue.piece(g, horse.horse) for g in gone))


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
    lacks = [
        tongue.say("missing", horse=m.horse, round=tongue.round(m.round), what=lack(m, tongue)) for m in sheet.missing
    ]
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


def plan_text(sheet: Sheet, barn: Barn, state: State, language: str = "en") -> str:
    """The whole plan in the barn's units: the first window's post, then what everybody wears in the later ones."""
    tongue = voice(barn, language, barn.units)
    later = [line for k in range(1, len(sheet.windows)) for line in ("", *_later(sheet, k, tongue))]
    return lay_out(round_post(sheet, barn, state, language, barn.units), *later)


def _later(sheet: Sheet, index: int, tongue: Voice) -> Iterable[str]:
    window = sheet.windows[index]
    yield title(sheet, window, tongue)
    yield wrap(skyline(sheet, window, tongue))
    groups: dict[str, list[str]] = {}
    for horse in sheet.horses:
        groups.setdefault(tongue.outfit(horse.windows[index].wear, horse.horse), []).append(horse.horse)
    for wear, names in sorted(groups.items(), key=lambda item: -len(item[1])):
        yield wrap(tongue.say("stay", names=tongue.names(names), wear=wear), INDENT)
