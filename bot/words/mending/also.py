"""A word for "too" between two whole thoughts is a pause: in "June is cold also Fennel is bare" each has its own."""

from collections.abc import Sequence
from itertools import takewhile

from bot.words.lookup.items import PAUSE, Item, predicate, some_mean
from bot.words.mending.another import DEEDS, FAR, STANDS
from bot.words.thoughts.begins import does_something, owned_piece_told, told_of_a_horse

ALSO = ("also", "tambien", "aussi", "en plus", "ademas")
REACH = 6  # words of a deed


def paused_at_also(items: Sequence[Item]) -> Sequence[Item]:
    """The items with a pause in place of each "also" that only joins what stands before it to what stands behind."""
    joins = {at for at, item in enumerate(items) if item.text in ALSO and _joins_two(items, at)}
    return [PAUSE if at in joins else item for at, item in enumerate(items)] if joins else items


def _joins_two(items: Sequence[Item], at: int) -> bool:
    """Whether a whole thought stands before the word at this place, and another begins behind it."""
    if not 0 < at < len(items) - 1 or items[at - 1].has("is", "and") or _the_same_of(items, at):
        return False
    return _told(items[max(0, at - FAR) : at]) and _begins(items[at + 1 : at + FAR])


def _the_same_of(items: Sequence[Item], at: int) -> bool:
    """As in "Moro bien Paloma también (Lucero sudado)": of the name right before it, of which nothing else is told."""
    name = bool(items[at - 1].horses)
    return name and (at == 1 or predicate(items[at - 2]) or items[at - 2].mark)


def _told(before: Sequence[Item]) -> bool:
    """Whether something was told since the last pause."""
    since = list(takewhile(lambda i: not i.mark, reversed(before)))
    told = any(predicate(i) or i.piece is not None for i in since) or some_mean(since, "strap", *DEEDS, *STANDS)
    return told and any(i.horses or i.piece is not None for i in since)


def _begins(rest: Sequence[Item]) -> bool:
    """Whether a horse or a piece of its own, and what is told of it, or a deed begins here."""
    if rest[0].has("but", "and"):
        return False  # "(Pip is wet and Ned) also but Bo is fine"
    stands = len(rest) > 1 and bool(rest[0].horses) and rest[1].has(*STANDS)
    deed = rest[0].has(*DEEDS) and any(i.horses or i.piece is not None for i in rest[1:REACH])
    led = rest[0].has("brought") and some_mean(rest[1:4], "inwards", "outwards") and any(i.horses for i in rest[1:3])
    return stands or deed or led or does_something(rest) or told_of_a_horse(rest) or owned_piece_told(rest)
