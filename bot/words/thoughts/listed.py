"""Horses in a list, and where one begins: "love to Gitana, Canela is sweaty" is no list of two."""

from collections.abc import Sequence
from itertools import takewhile

from bot.words.lookup.items import Item, all_mean, predicate, some_mean
from bot.words.thoughts.begins import LIST
from bot.words.thoughts.clauses import is_subject, soft

BETWEEN = ("article", "toward", "and", "too", "both", "her")


def goes_on_list(items: Sequence[Item], at: int) -> bool:
    """Whether the horse at this place is one more of a list that the horses before it began.

    A comma alone joins two names where the list opens the clause, or where more of it follows.
    """
    before = at - 1
    while before >= 0 and items[before].has("article", "toward") and not items[before].horses:
        before -= 1
    listed = next((i for i in reversed(items[: before + 1]) if not (i.text == "," or i.has(*BETWEEN))), None)
    if listed is not None and not listed.horses and items[before].has("and") | (items[before].text == ","):
        return False  # "Ben bit me again, Moose is shivering"
    if before >= 0 and items[before].means and _leads_to_another(items, before):
        return False
    if before < 0 or not items[before].mark or items[before].text in ("&", "+", "/"):
        return True
    if items[before].text != "," or some_mean(_run_before(items, before), "and"):
        return False  # "Lucero and Sultán… Lucero is rubbed", "Rex and Koru, Biscuit shivering"
    if at + 2 < len(items) and (items[at + 1].text == "," or items[at + 1].has("and")) and items[at + 2].horses:
        return True
    first = next((k for k, i in enumerate(items) if i.horses), at)
    return all(soft(i) or predicate(i) or i.has("felt", "both", "all") for i in items[:first])


def _leads_to_another(items: Sequence[Item], at: int) -> bool:
    """Whether the word at this place, before a horse, begins another thought of it."""
    if items[at].has("is", "was", "i mean") and not items[at].has("article", "and"):
        return True  # "Canelo no, era Rayo el que sudaba"
    if items[at].has("said") and at > 0 and not items[at - 1].horses:
        return True  # "enlevé les bandes à Lune, je trouve Max chaud"
    return items[at].has("sets on")  # "Otto kicked Fig"


def _run_before(items: Sequence[Item], at: int) -> Sequence[Item]:
    """The names that end at this place, with what joins them."""
    first = at
    while first > 0 and (items[first - 1].horses or items[first - 1].text == "," or items[first - 1].has(*BETWEEN)):
        first -= 1
    return items[first:at]


def list_near(items: Sequence[Item], at: int) -> list[Item]:
    """The horses of the list that stands nearest before the word at this place, else of the first one behind it."""
    named = [k for k, i in enumerate(items) if i.horses]
    before = [k for k in named if k < at]
    behind = next((k for k in range(at + 1, len(items)) if not items[k].has("article", "toward", "on")), at)
    if not before or (behind > at + 1 and items[behind].horses) or (before[-1] + 1 < at and behind in named):
        return _from_first(items, [k for k in named if k > at])
    found = [before.pop()]
    while before and _joined(items, before[-1], found[0]) and goes_on_list(items, found[0]):
        found.insert(0, before.pop())
    return [items[k] for k in found]


def _from_first(items: Sequence[Item], named: list[int]) -> list[Item]:
    found = named[:1]
    for k in named[1:]:
        if not _joined(items, found[-1], k):
            break
        found.append(k)
    return [items[k] for k in found]


def in_company(items: Sequence[Item], at: int) -> bool:
    """As in "turned Finn out with Misty in his light": with whom another went, of whom no more is told."""
    beside = at > 1 and items[at - 1].has("and") and items[at - 1].has("has")
    before = items[: at - 1] if beside else ()
    return any(i.horses for i in before) and some_mean(before, "turned out", "brought in", "brought", "outwards")


def _joined(items: Sequence[Item], one: int, other: int) -> bool:
    """Whether nothing but small words stands between two horses."""
    return all(i.text in (",", "&", "+", "/") or i.has(*BETWEEN) for i in items[one + 1 : other])


def _at_an_hour(behind: Sequence[Item]) -> bool:
    """As in "(turned out Pip and Ned) at 7", "at 7:30 this morning": when, and no more."""
    if not (behind and behind[0].has("hour")):
        return False
    said = list(takewhile(lambda i: not i.mark, behind))
    timed = len(said) > 1 and (said[1].clock or said[1].number is not None)
    return timed and all_mean(said[2:], "time")


def goes_on(sentence: Sequence[Item], at: int) -> bool:
    """Whether a list goes on here: "off Maple and Juniper", "in her heavy and liner"."""
    before, rest = sentence[at - 1] if at else None, sentence[at + 1 :]
    clip = some_mean(sentence[:at], "clipped") and not any(i.kinds("style") for i in sentence[:at])
    if clip and any(i.kinds("style") for i in rest[:4]) and not any(is_subject(i) for i in rest[:4]):
        return True
    if clip and before is not None and before.horses and _names_and_style(rest):
        return True  # "tondu Lune et Max en chasse"
    while rest and (rest[0].has("article", "and", "of", "her", "polite", "over") and not is_subject(rest[0])):
        rest = rest[1:]
    if before is None or not rest:
        return False
    if rest[0].has("in") and before.piece is not None:
        into = rest[0].has("for another") and at > 1 and sentence[at - 2].has("took off")
        if into or some_mean(sentence[:at], "outwards"):
            return True  # "out of his sheet and into the orange one"
    if rest[0].has("in") and before.horses and len(rest) > 1 and rest[1].piece is not None:
        return some_mean(sentence[:at], "stripped")  # "stripped him and into the fleece"
    if not ((rest[0].horses and before.horses) or (rest[0].piece and before.piece)):
        return False
    following = rest[1] if len(rest) > 1 else None
    ends = (
        following is None
        or following.mark
        or following.has("and", "time", "polite", "too", "when", "but", "not any more", "over", "both")
        or (following.has("toward") and not following.has("is"))
        or _at_an_hour(rest[1:])
        or (following.has("link") and " " in following.text and (len(rest) < 3 or rest[2].mark))  # "… as the list says"
    )
    if not (rest[0].horses and before.horses):
        return ends
    if following is None:
        return True
    if sentence[at].has("and") and some_mean(sentence[:at], "except"):
        return ends or not (following.has("is", "was", "has") or predicate(following))  # "all but Pip and Otter who …"
    return ends and not (following.has("is") and not following.has("and"))


def _names_and_style(rest: Sequence[Item]) -> bool:
    style = next((k for k, i in enumerate(rest[:LIST]) if i.kinds("style")), 0)
    names = [i for i in rest[:style] if not (i.text == "," or i.has("and", "article", "toward", "time"))]
    return bool(names) and all(i.horses for i in names)
