"""French "il gèle", "il fait froid": of the weather, or of the horse right before: "Pépito il caille"."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.lookup.items import Item, places, predicate

FREEZES = frozenset(("freezes",))
IT_IS = frozenset(("it is",))
OPENS = ("polite", "and", "but", "article")
DEGREE = ("very", "a little", "not", "except", "link", "nearly")
REACH = 5  # words of "il fait quand même pas si froid"


def he_or_the_sky(items: Sequence[Item]) -> list[Item]:
    """The items with each "il gèle" as a sign of the horse that opens the thought, and "il fait froid" as no sign."""
    found = list(items)
    for at in places(items, FREEZES):
        opens = at > 0 and bool(items[at - 1].horses)
        if opens and (at == 1 or items[at - 2].mark or items[at - 2].has(*OPENS)):
            found[at] = replace(items[at], means=frozenset({"sign cold"}))
    for at in places(items, IT_IS):
        behind = range(at + 1, min(at + REACH, len(items)))
        how = next((k for k in behind if predicate(items[k]) and not items[k].has(*DEGREE)), -1)
        if how > 0 and all(items[k].has(*DEGREE) for k in range(at + 1, how)):
            found[how] = replace(items[how], means=frozenset({"weather"}))
    return found
