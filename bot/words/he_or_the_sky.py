"""French "il gèle", of the weather, or of the horse right before: "Pépito il caille", "rentré Lune, il gèle"."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.items import Item, places

FREEZES = frozenset(("freezes",))
OPENS = ("polite", "and", "but", "article")


def he_or_the_sky(items: Sequence[Item]) -> list[Item]:
    """The items with each such word as a sign of the horse that opens the thought, where nothing stands between."""
    found = list(items)
    for at in places(items, FREEZES):
        opens = at > 0 and bool(items[at - 1].horses)
        if opens and (at == 1 or items[at - 2].mark or items[at - 2].has(*OPENS)):
            found[at] = replace(items[at], means=frozenset({"sign cold"}))
    return found
