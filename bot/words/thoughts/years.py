"""A year that is over: "En 2019 Balthazar a eu une colique", "back in 2021"."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.lookup.items import Item

YEARS = range(1950, 2026)  # no rug is filled so thick


def with_years(items: Sequence[Item]) -> list[Item]:
    """The items with each year behind "in" as long ago."""
    found = list(items)
    for at in [k for k, i in enumerate(items) if i.number is not None and i.number in YEARS]:
        before = [i for i in items[max(0, at - 2) : at] if not i.has("article") or i.has("in")]
        if before and before[-1].has("in", "inwards"):
            found[at] = replace(items[at], means=frozenset({"long ago"}))
    return found
