"""Horses in a list, and where one begins: "love to Gitana, Canela is sweaty" is no list of two."""

from collections.abc import Sequence

from bot.words.clauses import soft
from bot.words.items import Item, predicate

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
    if before < 0 or not items[before].mark or items[before].text in ("&", "+", "/"):
        return True
    if items[before].text != "," or any(i.has("and") for i in _run_before(items, before)):
        return False  # "Lucero and Sultán… Lucero is rubbed", "Rex and Koru, Biscuit shivering"
    if at + 2 < len(items) and (items[at + 1].text == "," or items[at + 1].has("and")) and items[at + 2].horses:
        return True
    first = next((k for k, i in enumerate(items) if i.horses), at)
    return all(soft(i) or predicate(i) or i.has("felt", "both", "all") for i in items[:first])


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


def _joined(items: Sequence[Item], one: int, other: int) -> bool:
    """Whether nothing but small words stands between two horses."""
    return all(i.text in (",", "&", "+", "/") or i.has(*BETWEEN) for i in items[one + 1 : other])
