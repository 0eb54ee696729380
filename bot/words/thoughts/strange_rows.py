"""Rows of what is none of ours, below one that is: "Otto: fine / the new one - sweaty", "plaid - dry / hose - wet"."""

from collections.abc import Sequence
from itertools import takewhile

from bot.words.lookup.items import Item, meanings_of, predicate
from bot.words.thoughts.of_now import CALLED, of_one

IS = Item("is", "is", frozenset({"is"}))
PARTED = frozenset(":-–—=→")
LONGEST = 4  # words that tell what it is
OF_THE_ROW_ABOVE = frozenset((
    "she", "it", "body", "under", "time", "but", "and", "polite", "i", "is", "put on", "took off",
))  # fmt: skip
HOW = ("link", "very", "a little", "nearly")


def without_marks(line: Sequence[Item], above: Sequence[Item]) -> Sequence[Item]:
    """The line with "is" for the mark behind what nobody here knows: what follows is told of that alone."""
    if not (of_one(above) and any(map(predicate, above))):
        return line
    first = next((k for k, i in enumerate(line) if not (i.mark or i.number is not None)), len(line))
    head = list(takewhile(lambda i: not i.mark, line[first:]))
    at = first + len(head)
    told = at + 1 < len(line) and line[at].text in PARTED and (predicate(line[at + 1]) or line[at + 1].has(*HOW))
    return [*line[:at], IS, *line[at + 1 :]] if told and _strange(head) else line


def _strange(head: Sequence[Item]) -> bool:
    if not 0 < len(head) <= LONGEST or any(i.horses or i.piece is not None or predicate(i) for i in head):
        return False
    named = any(
        not (i.means or i.text in CALLED) or i.has("a horse", "colour", "animal", "any adjective") for i in head
    )
    return named and OF_THE_ROW_ABOVE.isdisjoint(meanings_of(i for i in head if not i.has("article")))
