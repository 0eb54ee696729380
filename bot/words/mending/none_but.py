"""All denied but one: "nobody is sweating except Maple" is as "nobody is sweating, Maple is"."""

from collections.abc import Sequence

from bot.words.lookup.items import PAUSE, WETNESS, Item, meanings_of, places, predicate, since_mark, some_mean
from bot.words.mending.cleft import IS
from bot.words.thoughts.clauses import soft

EXCEPT = frozenset(("except",))
NOBODY = frozenset(("neither", "not"))
OF_THEM = ("all horses", "everyone", "a horse")
REACH = 8  # words of "none of the horses are sweating"
LISTED = ("and", "article", "toward")


def none_but(items: Sequence[Item]) -> list[Item]:
    """The items with how the one left out is said of it."""
    found = list(items)
    for at in reversed(places(items, EXCEPT)):
        sign = _denied_of_all(items, at)
        end = _named_last(items, at + 1) if sign is not None else at
        if sign is not None and end > at + 1:
            first = at - 1 if items[at - 1].text == "," else at
            found[first:end] = [PAUSE, *items[at + 1 : end], IS, sign]
    return found


def _denied_of_all(items: Sequence[Item], at: int) -> Item | None:
    """What is said of nobody right before this place: "nobody is sweating", "none of the horses are cold"."""
    behind = at - 1 if at and items[at - 1].text == "," else at
    before = since_mark(items, behind, REACH)
    if meanings_of(before).isdisjoint(NOBODY) or any(i.horses or i.piece is not None for i in before):
        return None
    nobody = some_mean(before, "neither", *OF_THEM)
    signs = [i for i in before if predicate(i)]
    if any(i.piece is not None for i in items[:at]) and some_mean(signs, *WETNESS):
        return None  # "checked the rugs, none wet except Pip": his rug
    small = all(predicate(i) or i.has("neither", "plan", *OF_THEM) or soft(i) for i in before)
    return signs[0] if nobody and small and len(signs) == 1 and not signs[0].kinds("state") else None


def _named_last(items: Sequence[Item], first: int) -> int:
    """The place behind the horses listed from here, where the thought ends with them; 0 where it does not."""
    end = first
    while end < len(items) and (items[end].horses or items[end].has(*LISTED)):
        end += 1
    ends = end >= len(items) or items[end].mark or items[end].has("time", "polite", "relative")
    return end if ends and any(i.horses for i in items[first:end]) else 0
