"""Manners in the group: joining, strangers, the nudge, a missed post, the hand-over, safety on request."""

from collections.abc import Sequence
from datetime import datetime

from bot.answer.questions import left_lines, mend_lines, recheck_lines
from bot.barn import Barn, Person
from bot.layout import lay_out
from bot.sheet import Sheet, Window
from bot.state import State
from bot.voice import for_person, plain, voice
from bot.words.said import phrasebook


def nudge(left: Sequence[str], barn: Barn, language: str) -> str:
    """The round's one reminder: who has not been said to be done."""
    tongue = voice(barn, language, barn.units)
    return lay_out(tongue.say("nudge", names=tongue.names(left)))


def missed(window: Window, barn: Barn, language: str) -> str:
    """One line for a round whose post came too late to be of use."""
    tongue = voice(barn, language, barn.units)
    return lay_out(tongue.say("missed", round=tongue.round(window.round), at=tongue.clock(window.start)))


def handover(state: State, sheet: Sheet | None, barn: Barn, person: Person | None, now: datetime) -> str:
    """A change of shift in a few lines: who is done and who not, horses to watch, what is wet or broken."""
    tongue = for_person(barn, person)
    return lay_out(
        tongue.say("handover head", at=tongue.clock(now)),
        *left_lines(state, sheet, tongue),
        *recheck_lines(state, tongue),
        *mend_lines(sheet, state, tongue),
    )


def stranger(name: str, barn: Barn, language: str) -> str:
    """The one polite line to somebody who is not among the barn's people."""
    return lay_out(phrasebook(language).say("stranger", name=plain(name)))


def stranger_danger(name: str, text: str, language: str) -> str:
    """What the manager is told when somebody not listed reports danger: who wrote what."""
    return lay_out(phrasebook(language).say("stranger danger", name=plain(name), text=plain(text)))


def unknown_group(language: str = "en") -> str:
    """The one polite line to a group that is no barn's; it names no horse and no barn."""
    return phrasebook(language).say("unknown group")


def joined(barn: Barn, language: str, *, sees_all: bool, may_pin: bool) -> str:
    """On being added: what the bot sees of the group, what it needs, how to begin."""
    tongue = voice(barn, language, barn.units)
    rounds = tongue.names(f"{tongue.round(r.name)} {r.at:%H:%M}" for r in barn.rounds)
    return lay_out(
        tongue.say("joined", barn=plain(barn.barn), count=len(barn.horses), rounds=rounds),
        tongue.say("sees all", **tongue.examples) if sees_all else tongue.say("sees replies"),
        None if may_pin else tongue.say("may not pin"),
        tongue.say("try it"),
        tongue.say("guide"),
    )


def safety(topic: str, language: str) -> str:
    """Handling knowledge on one topic, marked as common practice; the list of topics where there is no such topic.

    topic: its name in that language, or in English.
    """
    book = phrasebook(language)
    topic = dict(zip(phrasebook("en").safety, book.safety)).get(topic, topic)
    if topic not in book.safety:
        return book.say("safety topics", topics=", ".join(book.safety))
    return lay_out(book.safety[topic], book.say("common practice"))
