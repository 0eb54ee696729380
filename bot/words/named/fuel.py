"""Wood that bears a horse's name: "wet birch in the stove", "roble mojado en la chimenea"."""

from collections.abc import Sequence
from itertools import dropwhile

from bot.words.heard.hearths import HEARTHS
from bot.words.lookup.items import WETNESS, Item, some_mean

INTO = ("in", "on", "of", "toward", "hour", "for another", "beside")  # "in the stove", "for the fire", "au feu"
NEAR = 5  # words


def fuel(items: Sequence[Item], at: int) -> bool:
    """Whether the word at this place is how wet, and in or for a fire; "Birch is by the stove" may be a horse yet."""
    behind = list(dropwhile(lambda i: i.has(*WETNESS, "very", "a little"), items[at + 1 : at + 1 + NEAR]))
    wet = some_mean(items[max(0, at - 1) : at + 2], *WETNESS)
    if not wet or not behind or not behind[0].has(*INTO):
        return False
    first = next((i for i in behind if not i.has("article", *INTO)), behind[0])
    return first.text in HEARTHS
