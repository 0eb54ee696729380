"""As in "warm, but not sweating", "algo caliente, pero no suda": warmer than is well; "nice and warm" is just right."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import takewhile

from bot.words.lookup.items import Item, places, some_mean

WARM = frozenset(("everyday warm", "sign comfortable", "everyday comfortable"))
HOT = frozenset(("sign hot",))
NEAR = 8  # words from "warm" to "sweating"


def hot_if_only_dry(items: Sequence[Item]) -> Sequence[Item]:
    """The items with "warm" as hot where all that is good about it is that she does not sweat yet."""
    warm = [at for at in places(items, WARM) if _only_warm(items[at]) and _but_dry(items[at + 1 :])]
    return [replace(item, means=HOT) if at in warm else item for at, item in enumerate(items)] if warm else items


def _only_warm(item: Item) -> bool:
    return item.has("everyday warm") or item.text.startswith("warm")


def _but_dry(behind: Sequence[Item]) -> bool:
    said = list(takewhile(lambda i: not (i.horses or (i.piece is not None and i.piece.owners)), behind[:NEAR]))
    sweats = next((k for k, i in enumerate(said) if i.has("sign sweating")), 0)
    contrast = some_mean(said[:sweats], "but", "meanwhile") or some_mean(said[sweats + 1 : sweats + 2], "meanwhile")
    return contrast and some_mean(said[:sweats], "not", "no")
