"""One message: what it means here, what is to be recorded and what is answered at once. Pure: nothing is written.

What a report changes in the plan is not said here: that is worked out when nobody waits for an answer.
"""

import hashlib
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from functools import partial
from typing import Any

from bot import answer
from bot.asks import FRESH, ask_from_json, ask_to_json
from bot.barn import Barn, Person
from bot.beyond import SLOW, Lately, beyond, reach
from bot.brief import where_now
from bot.care import DANGER, alarm, cooling
from bot.events import Asked, Done, Entry, Event, Seen, Undo
from bot.evidence import Lesson
from bot.forecast import Forecast, to_air
from bot.message import Button, Incoming, Outgoing, Sender
from bot.roles import judge
from bot.sheet import Sheet
from bot.state import State
from bot.taps import tapped
from bot.tips import Tips
from bot.words import Ask, Heard, Reference, read


@dataclass(frozen=True)
class Scene:
    """What is known when a message comes: the barn, its state, the plan as posted, the last good forecast."""

    barn: Barn
    state: State
    sheet: Sheet | None
    forecast: Forecast | None
    language: str  # what the group is addressed in
    lessons: Callable[[str], Sequence[Lesson]] = lambda horse: ()  # what a horse's signs have taught
    lately: Callable[[int], Lately] = lambda days: Lately()  # what the last days left on record
    filed: Barn | None = None  # the barn as its file has it
    tips: Callable[[str, str], Tips | None] = lambda who, horse: None  # what would change the advice for a horse


@dataclass(frozen=True)
class Decision:
    """What one message leads to. ask: a question back that stays open. settled: the one that was open is answered.

    looks: questions that take longer than a reply may.
    """

    events: tuple[Event, ...] = ()
    undo: bool = False
    say: tuple[Outgoing, ...] = ()
    ask: Ask | None = None
    settled: bool = False
    looks: tuple[Asked, ...] = ()


def understood(incoming: Incoming, person: Person | None, scene: Scene, reply: Reference | None) -> Heard:
    """What a message means and what of it this person may say."""
    if incoming.tap is not None:
        return judge(tapped(incoming.tap, reply, scene.barn, scene.state), person, scene.barn)
    return judge(read(incoming.text, person, scene.barn, scene.state, reply), person, scene.barn)


def decide(incoming: Incoming, person: Person, heard: Heard, scene: Scene) -> Decision:
    """Everything one understood message leads to."""
    told = tuple(e for e in heard.events if not isinstance(e, Asked | Undo))
    events = tuple(enriched(event, scene, incoming.at) for event in told)
    alarms = [alarm(e, scene.barn, scene.state, person, incoming.at) for e in graves(events)]
    say = [outgoing for a in alarms for outgoing in raised(incoming, person, a.say)]
    say += [addressed(incoming, person, reply) for reply in answers(heard, person, scene, incoming.at)]
    looks = tuple(e for e in heard.events if isinstance(e, Asked) and e.topic in SLOW)
    if looks:
        say.append(replace(spoken(incoming, person, "👀"), kind="react"))  # seen; the answer takes a moment
    if heard.ask:
        say.append(asked_back(incoming, person, heard.ask, scene))
    if events:
        note = noticed(incoming, person, events, scene)
        nod = note.kind == "react"  # a tap needs none: it shows on its own button
        say += [note] if not nod or (incoming.tap is None and not say) else []
    return Decision(
        events=(*events, *(a.recheck for a in alarms), *cooling(events, incoming.at)),
        undo=any(isinstance(e, Undo) for e in heard.events),
        say=tuple(say),
        ask=heard.ask,
        looks=looks,
    )


def raised(incoming: Incoming, person: Person, alarm: Outgoing) -> Iterable[Outgoing]:
    """An alarm in the group, whoever told of it where; and where it was told."""
    if incoming.private:
        yield alarm
    yield addressed(incoming, person, alarm)


def graves(events: Iterable[Event]) -> Iterable[Seen]:
    """The signs that want somebody now."""
    return (event for event in events if isinstance(event, Seen) and event.sign in DANGER)


def answers(heard: Heard, person: Person, scene: Scene, at: datetime) -> Iterable[Outgoing]:
    """The answers to questions, and to what this person may not report; to whom is not yet said."""
    for event in heard.events:
        if isinstance(event, Asked) and event.topic in SLOW:
            continue
        if isinstance(event, Asked) and event.topic:
            lately = scene.lately(reach(event))
            yield beyond(event, scene.sheet, scene.state, scene.barn, person, at, lately)
        elif isinstance(event, Asked):
            taught = scene.lessons(event.horse) if event.horse and event.about == "state" else ()
            about = {"horses": [event.horse]} if event.horse else {}  # “shivering” under it is of this horse
            tips = partial(scene.tips, person.name)
            text = answer.answer(event, scene.sheet, scene.state, scene.barn, person, at, taught, tips)
            yield Outgoing("answer", text, about=about)
    if heard.refused:
        yield Outgoing("answer", answer.refused(heard.refused, scene.barn, person))


def spoken(incoming: Incoming, person: Person, text: str) -> Outgoing:
    """An answer where the question was put: in the group, or privately."""
    return addressed(incoming, person, Outgoing("answer", text))


def addressed(incoming: Incoming, person: Person, outgoing: Outgoing) -> Outgoing:
    """A message sent to where the one it answers was written."""
    return replace(outgoing, to=person.name if incoming.private else "group", reply_to=incoming.key)


def asked_back(incoming: Incoming, person: Person, ask: Ask, scene: Scene) -> Outgoing:
    """The one question back, with its choices as buttons."""
    choices = answer.options(ask, scene.barn, person)
    rows = tuple((Button(choice, f"pick:{i}"),) for i, choice in enumerate(choices, start=1))
    about = {"ask": ask_to_json(ask)}
    return replace(spoken(incoming, person, answer.ask(ask, scene.barn, person)), kind="ask", buttons=rows, about=about)


def noticed(incoming: Incoming, person: Person, events: Sequence[Event], scene: Scene) -> Outgoing:
    """A plain report: one line where there is something to say, else a reaction."""
    text = answer.noted(events, scene.state, scene.barn, person)
    if text:
        return spoken(incoming, person, text)
    return replace(spoken(incoming, person, "👍"), kind="react")


def enriched(event: Event, scene: Scene, at: datetime) -> Event:
    """A sign with the facts of its hour: where the horse was, what it wore, the weather; a round done with the last."""
    if not isinstance(event, Done | Seen):
        return event
    air = None if scene.forecast is None else to_air(scene.forecast.hours, at)
    if isinstance(event, Done):
        return replace(event, air=air)
    return replace(
        event,
        where=where_now(scene.barn, scene.state, event.horse, at),
        wore=wore(scene.state, event.horse, at),
        air=air,
    )


def wore(state: State, horse: str, at: datetime) -> tuple[str, ...] | None:
    """What a horse has on: what somebody said since the round's post, else what the post told people to put on."""
    now, standing = state.horses[horse], state.standing
    if standing is not None and standing.start > at:  # posted, but not yet put on
        standing = standing.before
    if standing is None or horse not in standing.wear:
        return now.wear
    said_since = now.wear_at is not None and now.wear_at >= (standing.at or standing.start)
    return now.wear if said_since or horse in standing.done else standing.wear[horse]


def reference(about: dict[str, Any]) -> Reference:
    """What an answer to one of our messages is about."""
    ask = ask_from_json(about["ask"]) if about.get("ask") else None
    horses, garments = tuple(about.get("horses", ())), tuple(about.get("garments", ()))
    names, pieces = tuple(about.get("names", ())), tuple(about.get("pieces", ()))
    posted, telegram = about.get("posted"), about.get("telegram")
    return Reference(horses, garments, ask, posted=posted, names=names, pieces=pieces, telegram=telegram)


def speaker(barn: Barn, sender: Sender) -> Person | None:
    """Who of the barn's people wrote: by the chat's id, or by name where the chat is a terminal."""
    return barn.person(sender.name) if sender.id is None else barn.person_by_telegram(sender.id)


def digest(incoming: Incoming) -> str:
    """What tells one version of a message from another."""
    return hashlib.sha256(f"{incoming.tap}\0{incoming.text}".encode("utf-8", "surrogatepass")).hexdigest()[:16]


def meant(incoming: Incoming, person: Person, entries: Sequence[Entry], replied: Sequence[int]) -> list[int]:
    """The ledger numbers an undo is about: what was replied to, else all of the speaker's last message.

    A manager may take back anybody's by replying to it; everybody else only their own.
    """
    stand = [e for e in entries if e.undone_by is None and e.key and not isinstance(e.event, Undo)]
    mine = [e for e in stand if e.who == person.name]
    if replied:
        return [e.number for e in (stand if person.role == "manager" else mine) if e.number in replied]
    last = next((e.key for e in reversed(mine) if e.key != incoming.key), None)
    return [e.number for e in mine if e.key == last]


def corrected(
    incoming: Incoming, person: Person | None, entries: Sequence[Entry], replied: Sequence[int]
) -> tuple[Event, ...]:
    """The facts that "no, Juniper" would correct: those an undo would take back, while they are fresh."""
    if person is None:
        return ()
    numbers = meant(incoming, person, entries, replied)
    return tuple(e.event for e in entries if e.number in numbers and incoming.at - e.at <= FRESH)


def strangers(
    incoming: Incoming, heard: Heard, barn: Barn, language: str, greeted: Callable[[], bool]
) -> Iterable[Outgoing]:
    """What a report by somebody not listed leads to: danger told to the manager, else a polite line once a day.

    greeted: whether they had that line lately; asking counts as saying it.
    """
    refused = heard.refused.event if heard.refused else None
    if any(graves([refused] if refused else [])):
        text = answer.stranger_danger(incoming.sender.name, incoming.text, language)
        yield Outgoing("alert", text, reply_to=incoming.key, urgent=True)
        for manager in (p for p in barn.people if p.role == "manager" and p.telegram is not None):
            yield Outgoing("alert", text, to=manager.name, urgent=True)
    elif not heard.chatter and not greeted():
        text, about = answer.stranger(incoming.sender.name, barn, language), {"telegram": incoming.sender.id}
        yield Outgoing("answer", text, reply_to=incoming.key, about=about)
