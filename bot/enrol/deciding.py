"""The talk about the barn's list: a change shown as it would be written, then yes or no. Pure."""

from dataclasses import replace

from bot.barn import Person
from bot.barn.amend import amended, lines, said_of
from bot.enrol.reading import agreed, proposed
from bot.events import Enrolled, Struck
from bot.hearing import Decision, Scene, asked_back, decide, spoken, understood
from bot.message import Incoming
from bot.problems import WrongFile
from bot.voice import for_person
from bot.words import Ask, Reference


def decided(incoming: Incoming, person: Person, scene: Scene, reply: Reference | None) -> Decision:
    """What one message leads to: what was reported or asked; where it is neither, a change of the barn's list."""
    if reply is not None and reply.ask is not None and reply.ask.about == "change":
        answer = agreed((incoming.tap or incoming.text).removeprefix("pick:"), person.language)
        if answer is not None and person.role == "manager":
            return _answered(incoming, person, scene, reply.ask, yes=answer)
        reply = replace(reply, ask=None)
    heard = understood(incoming, person, scene, reply)
    told = proposed(incoming.text, person, scene.barn, scene.state) if heard.chatter and incoming.tap is None else None
    if told is None:
        return decide(incoming, person, heard, scene)
    return _shown(incoming, person, scene, _numbered(told, reply))


def _shown(incoming: Incoming, person: Person, scene: Scene, told: Enrolled | Struck) -> Decision:
    """The change as the lines it would write, with yes and no; or why it cannot be."""
    tongue = for_person(scene.barn, person)
    told = replace(told, filed=_filed(scene, told))
    try:
        rows = lines(scene.barn, amended(scene.barn, told, incoming.at.astimezone(scene.barn.zone).date()))
    except WrongFile as error:
        why = error.problems[0].text
        return Decision(say=(spoken(incoming, person, tongue.say("change wrong", why=why)),))
    if not rows:
        return Decision(say=(spoken(incoming, person, tongue.say("change known")),))
    ask = Ask("change", incoming.text, (tongue.say("yes"), tongue.say("no")), (told,))
    shown = asked_back(incoming, person, ask, scene)
    return Decision(say=(replace(shown, text="\n".join([shown.text, *rows])),), ask=ask)


def _numbered(told: Enrolled | Struck, reply: Reference | None) -> Enrolled | Struck:
    """Somebody enrolled in answer to the line that a stranger got: with that stranger's Telegram number."""
    if reply is None or reply.telegram is None or not isinstance(told, Enrolled) or told.section != "people":
        return told
    return replace(told, facts={"telegram": reply.telegram} | told.facts)


def _answered(incoming: Incoming, person: Person, scene: Scene, ask: Ask, *, yes: bool) -> Decision:
    """Yes writes what was shown, where it can still be; no writes nothing."""
    tongue = for_person(scene.barn, person)
    (told,) = ask.pending
    assert isinstance(told, Enrolled | Struck)
    line, events = "change dropped", tuple[Enrolled | Struck, ...]()
    if yes:
        try:
            after = amended(scene.barn, told, incoming.at.astimezone(scene.barn.zone).date())
        except WrongFile as error:
            text = tongue.say("change wrong", why=error.problems[0].text)
            return Decision(say=(spoken(incoming, person, text),), settled=True)
        line, events = ("change done", (told,)) if lines(scene.barn, after) else ("change known", ())
    return Decision(events=events, say=(spoken(incoming, person, tongue.say(line)),), settled=True)


def _filed(scene: Scene, told: Enrolled | Struck) -> dict[str, object] | None:
    """What the barn's file says of it, so that a later edit of the file is noticed."""
    keys = tuple(told.facts) if isinstance(told, Enrolled) else None
    return said_of(scene.filed or scene.barn, told.section, told.name, keys)
