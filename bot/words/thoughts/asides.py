"""Greetings and asides. What is said between two marks of the horse just named, to tell which it is, is no news of it.

As in "Otto (the one in the far box) is shivering", "Otto, who was clipped yesterday, is sweaty".
"""

from collections.abc import Sequence
from itertools import takewhile

from bot.words.lookup.items import NOTHING, Item, places, predicate, some_mean
from bot.words.thoughts.no_report import BLOCKS

LONGEST = 8  # words
BESIDE = frozenset(("beside",))
SPEECH = 3  # words, the one that opens it among them
DRESSED = ("wears", "ask wearing", "bare")
DEEDS = ("brought", "brought in", "turned out", "worked", "clipped", "put on", "took off", "took", "swapped")
NO = ("non", "nan", "nope", "nah")  # Spanish "no metí" denies
MOVES = ("put on", "took off", "took", "swapped", "done", "has")
GREETING = frozenset(("polite", "to the bot", "link", "yes", "very", "said", "time"))


def without_greeting(items: Sequence[Item]) -> Sequence[Item]:
    """A message without the words that open it and say nothing: "hi all, is the heavy dry"; all of it if no more."""
    at = 0
    while at < len(items) and (_greets(items[at]) or (at > 0 and items[at].text in ",!:…-")):
        at += 1
    at = _behind_where_from(items, at) if at else 0
    return items[at:] if at < len(items) else items


def _behind_where_from(items: Sequence[Item], at: int) -> int:
    """Behind "(good morning) from soggy Syracuse,", which tells nothing of the barn; the same place without."""
    if at >= len(items) or not (items[at].has("of") and items[at].has("after")):
        return at
    said = list(takewhile(lambda i: not i.mark, items[at : at + LONGEST]))
    end = at + len(said)
    ours = any(i.horses or i.piece or i.pieces or i.has("place stall", "place field", "work") for i in said)
    return end + 1 if not ours and len(said) > 1 and end < len(items) and items[end].text in ",!." else at


def _greets(item: Item) -> bool:
    return item.has("polite") and item.means <= GREETING and not (item.horses or item.pieces or item.person)


def without_opening(sentence: Sequence[Item]) -> Sequence[Item]:
    """As in "ok Pip's in his heavy now", "no, Juno is cold": without the word that opens the speech."""
    if len(sentence) < SPEECH or not (sentence[0].has("no", "polite") or sentence[0].text in ("so", "✅")):
        return sentence
    first = 2 if sentence[1].text == "," else 1
    told = list(takewhile(lambda i: not i.mark, sentence[first:]))
    if sentence[0].has("no") or sentence[0].text == "so":
        return sentence[first:] if _whole(told, paused=first > 1 or sentence[0].text in NO) else sentence
    if sentence[0].text == "✅" and told and told[0].has(*DEEDS):
        return sentence[first:]
    if not (sentence[0].has("polite") and sentence[0].has("everyday comfortable")):
        return sentence
    begins = bool(told) and (bool(told[0].horses) or told[0].piece is not None or told[0].has("i", *MOVES))
    dresses = any(i.piece is not None for i in told) and some_mean(told, "in", "wears", "on", "off", *MOVES)
    felt_under = any(i.has("under") and not i.has("in") for i in told)
    return sentence[first:] if begins and dresses and not felt_under else sentence


def _whole(told: Sequence[Item], *, paused: bool) -> bool:
    """Whether these words say something without the "no" before them: "no Juno's cold"; not "no rug on Juno"."""
    if len(told) < SPEECH - 1:
        return False
    if paused and (told[0].has("i", "subject", "strap", "state missing", *DEEDS) or told[0].piece is not None):
        return True
    if told[1].has("in") and not any(i.piece is not None for i in told):
        return False  # "no Maple in her stall, anyone seen her?"
    return bool(told[0].horses) and (predicate(told[1]) or told[1].has("is", "has", "not", "strap", *DRESSED))


def without_asides(sentence: Sequence[Item]) -> Sequence[Item]:
    """The sentence without its asides; the same where it has none."""
    kept: list[Item] = []
    end = 0
    for at in [at for at, item in enumerate(sentence) if item.mark]:
        if at < end:
            continue
        kept.extend(sentence[end:at])
        closes = _end(sentence, at) if kept and kept[-1].horses else None
        end = at if closes is None or not _only_tells_which(sentence[at + 1 : closes]) else closes + 1
    return [*kept, *sentence[end:]]


def _end(sentence: Sequence[Item], at: int) -> int | None:
    """Where the aside that this mark opens is closed, and something is said behind it; None where none is."""
    opens = sentence[at].text
    relative = at + 1 < len(sentence) and sentence[at + 1].has("relative")
    closes = ")" if opens == "(" else opens if relative and opens in (",", "-", "–", "—") else None
    if closes is None:
        return None
    end = next((k for k in range(at + 1, min(at + LONGEST + 2, len(sentence))) if sentence[k].text == closes), None)
    return end if end is not None and end + 1 < len(sentence) else None


def _only_tells_which(aside: Sequence[Item]) -> bool:
    """As in "(Otto,) who is out with Gus(,)": where it is, or what was of it, and nothing of how anybody is."""
    told = any(predicate(i) or i.piece is not None for i in aside)
    told = told or (any(i.horses for i in aside) and not aside[0].has("relative"))
    return not told or some_mean(aside, *BLOCKS)


def without_neighbours(sentence: Sequence[Item]) -> Sequence[Item]:
    """As in "next to Pip, Maple is sweating", "Brisa está al lado de Luna, sudando": Luna only tells where that is."""
    kept: list[Item] = []
    end = 0
    for at in places(sentence, BESIDE):
        behind = _neighbour(sentence, at)
        if behind:
            kept.extend(sentence[end:at])
            pause = behind < len(sentence) and sentence[behind].text == "," and (not kept or not kept[-1].horses)
            end = behind + pause
    return [*kept, *sentence[end:]] if end else sentence


def _neighbour(sentence: Sequence[Item], at: int) -> int:
    """Where the words behind a neighbour begin; 0 where none is named, or a thing of his: "behind Pip's ears"."""
    before = sentence[at - 1] if at else NOTHING
    with_her = sentence[at].has("and") and not before.has("is")  # "saqué a Luna junto a Brisa"
    named = at + 1
    while named < len(sentence) and sentence[named].has("article", "toward", "of") and not sentence[named].horses:
        named += 1
    if with_her or named >= len(sentence):
        return 0
    of_her = bool(before.horses) and sentence[named].has("she")  # "Pip right next to her is fine"
    if not (sentence[named].horses or of_her):
        return 0
    if not (_stands_there(sentence[:at]) or _another_at_once(sentence[named + 1 :])):
        return 0
    return 0 if sentence[named + 1 : named + 2] and sentence[named + 1].text == "'s" else named + 1


def _stands_there(before: Sequence[Item]) -> bool:
    """As in "Maple is standing (next to Pip)"; not "I stood (next to Pip), he's soaked"."""
    words = list(takewhile(lambda i: not i.mark, reversed(before)))
    return any(i.horses for i in words) and not any(i.has("i", "subject") and not i.horses for i in words)


def _another_at_once(behind: Sequence[Item]) -> bool:
    """As in "(next to Pip), Maple is sweating", "(al lado de Luna) está Brisa"."""
    first = next((i for i in behind if i.horses or not (i.text == "," or i.has("article", "is"))), NOTHING)
    return bool(first.horses)
