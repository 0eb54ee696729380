"""A name with "the horse" beside it: "Jasper the horse has nothing on", "la media de la yegua Lana"."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.lookup.items import Item, places

A_HORSE = frozenset(("a horse",))


def who_is_the_horse(items: Sequence[Item]) -> Sequence[Item]:
    """The items without "the horse" beside a name, which then is that horse and no word, nor anybody else."""
    found = list(items)
    for at in reversed(places(items, A_HORSE)):
        name = _beside(items, at)
        if name is not None:
            found[name] = replace(items[name], means=frozenset(), person=False, known=False)
            del found[at if items[at - 1].has("of") else at - 1 : at + 1]  # "the horse", of "de la yegua" the "yegua"
    return found


def _beside(items: Sequence[Item], at: int) -> int | None:
    """Where the name stands, right before "the horse" or behind it."""
    if not at or not items[at - 1].has("article") or items[at].horses:
        return None
    return next((k for k in (at - 2, at + 1) if 0 <= k < len(items) and items[k].horse), None)
