"""Thoughts written without a mark between them: "rode Sparrow June is cold" tells nothing of how Sparrow is."""

from collections.abc import Sequence
from itertools import takewhile

from bot.words.lookup.items import NOTHING, Item, of_clothes, places, predicate, some_mean
from bot.words.mending.also import DEEDS, FAR, PAUSE, STANDS, paused_at_also

LEADS = (
    "on", "off", "of", "in", "toward", "beside", "between", "and", "or", "but", "not", "relative", "what", "when", "if",
    "subject", "i", "said", "plan", "her", "article", "like", "compares", "with", "for another", "after", "too", "is",
    "all", "both", "except", "keep", "brought", *DEEDS,
)  # fmt: skip
DRESSED = ("wears", "ask wearing", "in", "has")
DONE, BROUGHT = frozenset(DEEDS), frozenset(("brought",))
NEAR = 5  # words of a deed


def paused_where_another_begins(items: Sequence[Item]) -> Sequence[Item]:
    """The items with a pause before each thought of another horse that follows a whole one without a mark."""
    items = paused_at_also(items)
    named = {at for at, item in enumerate(items) if item.horse or item.piece is not None}
    begins = named.union(places(items, DONE), (at for at in places(items, BROUGHT) if _led(items, at)))
    found: list[Item] = []
    end = 0
    for at in sorted(begins):
        if at and not items[at - 1].mark and _another(items, at):
            found.extend((*items[end:at], PAUSE))
            end = at
    return [*found, *items[end:]] if end else items


def _another(items: Sequence[Item], at: int) -> bool:
    """Whether what begins here is told of none of those before it, of whom all is said."""
    near = reversed(items[max(0, at - FAR) : at])
    before = list(takewhile(lambda i: not (i.mark or i.has("and", "but", "too")), near))[::-1]
    named = _names(before)
    if not named or not _whole(before):
        return False
    if items[at].horse or items[at].piece is not None:
        told = _told_at_once(items, at)
        owns = items[at + 1 : at + 2] and items[at + 1].text == "'s"  # "in Fig's poop"
        led = items[at - 1].has(*LEADS) and (owns or not items[at - 1].has("inwards", "outwards"))
        led = led and not (items[at - 1].has("off") and any(i.piece is not None and i.piece.owners for i in before))
        return told and not led and named.isdisjoint(_names([items[at]]))
    behind = list(takewhile(lambda i: not i.mark, items[at + 1 : at + 1 + NEAR]))
    others = _names(behind)
    led = items[at - 1].has(*LEADS) and not (items[at - 1].horses or items[at - 1].has("inwards", "outwards"))
    led = led or (items[at - 1].piece is not None and " " not in items[at].text)  # "couv enlevée Ulysse sec"
    return bool(others) and named.isdisjoint(others) and not led


def _names(items: Sequence[Item]) -> set[str]:
    owners = {name for i in items if i.piece is not None for name in i.piece.owners}
    return owners | {name for i in items if i.sure for name in i.horses}


def _whole(before: Sequence[Item]) -> bool:
    """Whether something was told of them: how they are, where, what they wear, or what was done with them."""
    how = any(predicate(i) for i in before) or some_mean(before, "strap", "broken", *STANDS, *DEEDS)
    dressed = some_mean(before, *DRESSED) and any(i.piece is not None for i in before)
    return how or dressed or any(_led(before, k) for k in range(len(before)))


def _told_at_once(items: Sequence[Item], at: int) -> bool:
    """As in "June is cold", "Fennel bare", "Maple's liner is …": right behind the name, or the piece."""
    then = items[at + 1] if at + 1 < len(items) else NOTHING
    piece = items[at].piece
    if piece is not None:
        return bool(piece.owners) and (then.has("is", "was") or of_clothes(then))
    return then.has("is", "was", "bare", "wears", "stays", "not") or predicate(then) or then.text == "'s"


def _led(items: Sequence[Item], at: int) -> bool:
    """As in "brought Fennel in", "turned Sorrel out"."""
    behind = items[at + 1 : at + 4]
    moved = items[at].has("brought") and some_mean(behind, "inwards", "outwards")
    return moved and any(i.horses for i in behind)
