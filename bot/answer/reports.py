"""What a report is answered with: a line where there is something to say, what it changed, what is asked back."""

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from bot.barn import Barn, Person
from bot.events import (
    Clipped,
    Done,
    Enrolled,
    Entry,
    Event,
    GarmentIs,
    Placed,
    RecheckSet,
    Seen,
    Struck,
    Wearing,
    Wished,
    Worked,
)
from bot.layout import lay_out
from bot.sheet import Sheet
from bot.skyline import sentence
from bot.state import State
from bot.units import known
from bot.voice import Voice, for_person, plain
from bot.words import Ask, Refused

if TYPE_CHECKING:
    from bot.moves import Move  # brings the arrays along, which words need not

AT_MOST = 5  # horses named by one answer


def noted(events: Sequence[Event], state: State, barn: Barn, person: Person | None) -> str | None:
    """The line to a report that wants more than a nod, before anybody plans anew; None: a reaction suffices."""
    tongue = for_person(barn, person)
    lines = [line for event in events if (line := _noted(event, tongue))]
    return lay_out(*lines) if lines else None


def _noted(event: Event, tongue: Voice) -> str | None:
    match event:
        case Seen(sign="sweating" | "hot", setting="after work"):
            return tongue.say("after work noted", horse=plain(event.horse))
        case Seen(sign="sweating" | "hot"):
            return f"{seen(event, tongue)} {tongue.say('too warm advice')}"
        case Seen(sign="rubbed"):
            worn = tongue.outfit(event.wore, event.horse) if event.wore else None
            return tongue.say("rub noted", horse=plain(event.horse), wear=worn)
        case _:
            return None


def seen(event: Seen, tongue: Voice) -> str:
    """A sign as noted, with what the horse had on and in what weather: "Maple: sweating noted, 9° under 200 g."."""
    return tongue.say(
        "noted",
        horse=plain(event.horse),
        sign=tongue.sign(event.sign),
        air=air(event, tongue),
        wear=None if event.wore is None else worn(event, tongue),
    )


def air(event: Seen, tongue: Voice) -> str | None:
    """The temperature of the sign's hour."""
    column = event.air.columns.get("temperature_c", []) if event.air else []
    value = known(column[-1]) if column else None
    return None if value is None else tongue.measures.degrees(value)


def worn(event: Seen, tongue: Voice) -> str:
    """What a horse had on, by its fill where it had any."""
    grams = tongue.fill_of(event.wore or ())
    return tongue.say(
        "under", wear=tongue.measures.fill(grams) if grams else tongue.outfit(event.wore or (), event.horse)
    )


def changed(
    entries: Sequence[Entry], moves: "Sequence[Move]", before: Sheet, after: Sheet, barn: Barn, person: Person | None
) -> str | None:
    """What a report changed in the plan, horse by horse; None where it changed nothing."""
    tongue = for_person(barn, person)
    lines = [sentence(move_line(move, after, tongue)) for move in moves[:AT_MOST]]
    if len(moves) > AT_MOST:
        lines.append(tongue.say("and more", names=tongue.names(m.horse for m in moves[AT_MOST:])))
    return lay_out(*lines) if lines else None


def move_line(move: "Move", after: Sheet, tongue: Voice) -> str:
    """One horse's move: down, up or across to which outfit, and when."""
    was, now = move.before, move.after
    line = "moved bare" if not now.wear else "moved down" if now.fill_g < was.fill_g else "moved up"
    if now.wear and now.fill_g == was.fill_g:
        line = "moved across"
    when = tongue.say("now") if move.start <= after.made_at else tongue.at_round(move.round, move.start)
    return tongue.say(line, horse=plain(move.horse), wear=tongue.outfit(now.wear, move.horse), when=when)


def undone(entries: Sequence[Entry], barn: Barn, person: Person | None) -> str:
    """What was taken back, in the words of the report; says so where there was nothing."""
    tongue = for_person(barn, person)
    told = [t for e in entries if (t := told_again(e.event, tongue))]
    if not told:
        return tongue.say("nothing undone")
    return lay_out(tongue.say("undone", what=tongue.say("between").join(told)))


def told_again(event: Event, tongue: Voice) -> str | None:
    """A reported fact in a few words; None for what the bot itself records."""
    match event:
        case Seen():
            return tongue.say("fact", name=plain(event.horse), fact=tongue.sign(event.sign))
        case GarmentIs():
            return tongue.say("fact", name=tongue.whose(event.garment), fact=tongue.state(event.state))
        case Wearing():
            return tongue.say("fact", name=plain(event.horse), fact=tongue.outfit(event.wear, event.horse))
        case Done():
            names = tongue.say("everyone") if event.horses == "all" else tongue.names(event.horses)
            return tongue.say("fact done", name=names)
        case Clipped():
            return tongue.say("fact", name=plain(event.horse), fact=tongue.book.styles.get(event.style, event.style))
        case Placed():
            return tongue.say("fact", name=plain(event.horse), fact=tongue.book.places.get(event.where, event.where))
        case Wished():
            wish = tongue.say("keep bare" if event.keep_bare else "no more keep bare")
            return tongue.say("fact", name=plain(event.horse), fact=wish)
        case Worked():
            return tongue.say("fact", name=plain(event.horse), fact=tongue.say("worked"))
        case Enrolled():
            return tongue.say("fact enrolled", name=plain(event.name))
        case Struck():
            return tongue.say("fact struck", name=plain(event.name))
        case RecheckSet() | _:
            return None


def ask(asked: Ask, barn: Barn, person: Person | None) -> str:
    """The question back; its choices stand under it as `options`."""
    return lay_out(for_person(barn, person).say(f"ask {asked.about}", word=plain(asked.word)))


def options(asked: Ask, barn: Barn, person: Person | None = None) -> tuple[str, ...]:
    """What the choices are called, in the order of `Ask.options`: names as written, clothes in words of the trade."""
    tongue = for_person(barn, person)
    match asked.about:
        case "garment":
            return tuple(_told_apart([tongue.whose(o) for o in asked.options], asked.options))
        case "sign":
            return tuple(tongue.sign(o) for o in asked.options)
        case _:
            return tuple(plain(o) for o in asked.options)


def _told_apart(labels: Sequence[str], ids: Sequence[str]) -> Iterable[str]:
    """Two choices are never called the same."""
    for label, garment in zip(labels, ids):
        yield f"{label} ({plain(garment)})" if labels.count(label) > 1 else label


def refused(refusal: Refused, barn: Barn, person: Person | None) -> str:
    """Who may report this, and that the manager can."""
    tongue = for_person(barn, person)
    managers = [p.name for p in barn.people if p.role == "manager"]
    told = told_again(refusal.event, tongue) if refusal.event else None
    return lay_out(
        tongue.say("refused", fact=told, role=tongue.say(f"role {refusal.needs}"), names=tongue.names(managers) or None)
    )
