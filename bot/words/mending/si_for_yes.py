"""Spanish "sí" written without its accent: with nothing behind it but how much, it supposes nothing."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import takewhile

from bot.words.lookup.items import Item, places


def yes_or_if(items: Sequence[Item]) -> list[Item]:
    """As in "Trasgo no está sudado pero Canelo si, bastante"; not "Canelo, si suda, sin manta"."""
    found = list(items)
    for at in places(items, frozenset(("if",))):
        if items[at].has("yes") and _ends(items, at):
            found[at] = replace(items[at], means=items[at].means - {"if"})
    return found


def _ends(items: Sequence[Item], at: int) -> bool:
    """Whether a horse or a piece stands before this place, and nothing but how much behind it."""
    subject = at > 0 and bool(items[at - 1].horses or items[at - 1].piece is not None)
    much = len(list(takewhile(lambda i: i.has("very", "a little"), items[at + 1 :])))
    behind = items[at + 1 + much : at + 2 + much]
    return subject and (not behind or behind[0].mark)
