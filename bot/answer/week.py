"""An owner's week: what each own horse wore, what people saw, what changed, what wants mending or would have helped."""

from collections import Counter
from collections.abc import Iterable, Sequence
from datetime import datetime

from bot.answer.reports import told_again
from bot.barn import Barn, Person
from bot.events import Clipped, Entry, Placed, Seen, Wished
from bot.layout import lay_out
from bot.sheet import Sheet
from bot.state import State
from bot.voice import Voice, for_person, plain

MOST = 4  # outfits, signs or garments told of one horse


def week(
    person: Person, barn: Barn, state: State, entries: Sequence[Entry], sheets: Sequence[Sheet], now: datetime
) -> str | None:
    """The note to one owner on the sheets (as posted) and entries of a week; None where they own no horse here."""
    tongue = for_person(barn, person)
    own = [h.name for h in barn.horses if h.owner == person.name]
    if not own:
        return None
    first = min([s.made_at for s in sheets], default=now)
    head = tongue.say("week head", start=_day(first, tongue), end=_day(now, tongue))
    told = [line for name in own for line in ("", *_horse(name, state, entries, sheets, tongue))]
    return lay_out(head, *told, "", tongue.say("guide"))


def horse_week(
    horse: str,
    person: Person | None,
    barn: Barn,
    state: State,
    entries: Sequence[Entry],
    sheets: Sequence[Sheet],
    now: datetime,
) -> str:
    """One horse's week on the sheets (as posted) and entries of it, whoever asks."""
    tongue = for_person(barn, person)
    first = min([s.made_at for s in sheets], default=now)
    days = " – ".join(dict.fromkeys((_day(first, tongue), _day(now, tongue))))
    return lay_out(days, *_horse(horse, state, entries, sheets, tongue), tongue.say("guide"))


def _day(at: datetime, tongue: Voice) -> str:
    return tongue.day(at.astimezone(tongue.zone).date())


def _horse(name: str, state: State, entries: Sequence[Entry], sheets: Sequence[Sheet], tongue: Voice) -> Iterable[str]:
    yield plain(name)
    standing = [e for e in entries if e.undone_by is None and getattr(e.event, "horse", None) == name]
    worn = Counter(_worn(name, sheets, tongue))
    if worn:
        times = (tongue.say("week times", wear=w, count=n) for w, n in worn.most_common(MOST))
        yield tongue.say("week worn", outfits=", ".join(times))
    signs = [tongue.say("week sign", day=_day(e.at, tongue), sign=_sign(e, tongue)) for e in standing if _seen(e)]
    yield tongue.say("week seen", signs=", ".join(signs[-MOST:])) if signs else tongue.say("week nothing")
    changed = [
        t for e in standing if isinstance(e.event, Clipped | Wished | Placed) and (t := told_again(e.event, tongue))
    ]
    if changed:
        yield tongue.say("week changed", facts=", ".join(changed[-MOST:]))
    latest = next((h for s in reversed(sheets) for h in s.horses if h.horse == name), None)
    if latest is not None:
        yield tongue.learned(latest.offset_c, latest.offset_sd_c)
    yield from _closet(name, state, sheets, tongue)


def _seen(entry: Entry) -> bool:
    return isinstance(entry.event, Seen)


def _sign(entry: Entry, tongue: Voice) -> str:
    return tongue.sign(entry.event.sign) if isinstance(entry.event, Seen) else ""


def _worn(name: str, sheets: Sequence[Sheet], tongue: Voice) -> Iterable[str]:
    """What each round was told in the end: the first window of its last sheet."""
    rounds = {s.windows[0].start: h.windows[0].wear for s in sheets if s.windows for h in s.horses if h.horse == name}
    return (tongue.outfit(wear, name) for wear in rounds.values())


def _closet(name: str, state: State, sheets: Sequence[Sheet], tongue: Voice) -> Iterable[str]:
    """What of its own wants mending or drying, and what no outfit reached this week."""
    broken = [
        tongue.say("mend piece", piece=tongue.piece(g.id, name), state=tongue.state(state.garments[g.id].state))
        for g in tongue.barn.garments
        if g.horse == name and g.id in state.garments and state.garments[g.id].state not in {"dry", "in service"}
    ]
    if broken:
        yield tongue.say("week mend", pieces=", ".join(broken[:MOST]))
    lacked = {(s.windows[0].start, tongue.lack(m)) for s in sheets if s.windows for m in s.missing if m.horse == name}
    wanted = Counter(what for _, what in sorted(lacked))
    for what, count in wanted.most_common(1):
        yield tongue.say("week lacks", count=count, what=what)
