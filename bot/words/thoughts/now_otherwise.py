"""Where how it was and how it is now are told in one breath: "anoche Pip tiritaba (ahora está bien)"."""

from collections.abc import Sequence

from bot.words.lookup.items import Item, predicate
from bot.words.thoughts.clauses import Thought

REACH = 5  # words behind "now" in which it is told how it is


def now_otherwise(sentence: Sequence[Item], at: int, current: Thought) -> str | None:
    """How a new thought begins at "now" behind what was, where how it is now follows at once; None elsewhere."""
    if not (current.told and current.of_something and current.has("was", "yesterday")):
        return None
    if not any(predicate(i) for i in current.items[-2:]):
        return None  # "was cold in his stall now and then"
    for item in sentence[at + 1 : at + REACH]:
        if item.mark or item.has("was", "and", "but"):
            return None
        if predicate(item):
            return ","
    return None
