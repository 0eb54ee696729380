"""Questions beyond the plan, asked in a phrase that is the whole message: "handover", "rubs?", "picture of Maple"."""

from collections.abc import Sequence
from functools import cache

from bot.events import About, Asked
from bot.words.heard.topics import TOPICS
from bot.words.lookup.items import Item
from bot.words.lookup.lexicon import spelled_out
from bot.words.lookup.tokens import words

HORSE = "@"
LONGEST = 24  # words; no phrase is longer, manners included
ABOUT: dict[str, About] = {  # the rest is a kind of help
    "handover": "left", "picture": "state", "week": "state", "wardrobe": "state",
}  # fmt: skip


def beyond(items: Sequence[Item]) -> Asked | None:
    """The question beyond the plan that these words are; None where they are anything else."""
    if len(items) > LONGEST:
        return None
    heard = [i for i in items if not i.mark or i.text == "?"]
    for said in (heard, _without_manners(heard)):  # some manners end a question too: "on achète quoi ?"
        asked = _asked(said)
        if asked is not None:
            return asked
    return None


def _asked(said: Sequence[Item]) -> Asked | None:
    horses = [i for i in said if i.horses]
    if len(horses) > 1 or not all(i.horse for i in horses):
        return None
    phrase = tuple(word for i in said for word in ((HORSE,) if i.horses else i.text.split()))
    topic = _phrases().get(phrase)
    if topic is None and phrase[-1:] == ("?",):
        topic = _phrases().get(phrase[:-1])
    if topic is None:
        return None
    return Asked(ABOUT.get(topic, "help"), horse=horses[0].horses[0] if horses else None, topic=topic)


def _without_manners(items: Sequence[Item]) -> list[Item]:
    """The words without the greeting before them and the "please" behind them."""
    left = list(items)
    while len(left) > 1 and left[0].has("polite", "please"):
        left = left[1:]
    marked = left[-1:] if left and left[-1].text == "?" else []
    left = left[: len(left) - len(marked)]
    while len(left) > 1 and left[-1].has("polite", "please"):
        left = left[:-1]
    return left + marked


@cache
def _phrases() -> dict[tuple[str, ...], str]:
    """Every phrase of every language as its words, with what it asks for."""
    found: dict[tuple[str, ...], str] = {}
    for table in TOPICS.values():
        for topic, row in table.items():
            for phrase in spelled_out(row):
                marked = ("?",) if phrase.endswith("?") else ()
                found[(*_words(phrase.removesuffix("?")), *marked)] = topic
    return found


def _words(phrase: str) -> tuple[str, ...]:
    """The phrase as a message would show it, with the horse's place kept."""
    before, horse, after = phrase.partition(HORSE)
    of = ("'s",) if after.startswith("'s") else ()
    return (*words(before), *(HORSE if horse else ()), *of, *words(after.removeprefix("'s")))
