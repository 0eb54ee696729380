"""Names of which nobody is sure: "Otto or Fig" is one to be asked about, "and maybe Ned" nobody."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import takewhile

from bot.words.lookup.items import Item, meanings_of, places, some_mean
from bot.words.thoughts.sentences import REACH

JOINING = frozenset(("or", "and"))


def _denied(kept: Sequence[Item]) -> bool:
    """As in "no rugs on Otto": a no said of the last name kept."""
    near = takewhile(lambda i: not (i.mark or i.has("and", "but")), reversed(kept[-REACH:]))
    return some_mean(near, "not", "no", "bare", "neither", "nothing", "without")


def without_doubtful(items: Sequence[Item]) -> list[Item]:
    """Without "and maybe Ned" behind another name: what follows is told of the other, and of Ned nobody is sure.

    "Otto or Fig" is one item, to be asked about; "no rugs on Otto or Fig" is both.
    """
    if meanings_of(items).isdisjoint(("or", "plan", "guess")):
        return list(items)
    kept: list[Item] = []
    end = 0
    for at in places(items, JOINING):
        kept.extend(items[end:at])
        end = max(end, at)
        if at < end:
            continue  # drawn into the name before it
        owner = len(kept) > 1 and kept[-1].text == "'s" and kept[-2].horse  # "Otto's or Fig's sheet"
        either = items[at].has("or") and at + 1 < len(items) and items[at + 1].horse
        either = either and (owner or (bool(kept) and kept[-1].horse))
        if either and owner:
            kept.pop()
        if either and _denied(kept):
            kept.append(replace(items[at], means=frozenset({"and"})))
            end = at + 1
            continue
        if either:
            kept[-1] = _either(kept[-1], items[at + 1])
            end = at + 2
            continue
        doubt = items[at].has("and") and [i.has("plan", "guess") and i.known for i in items[at + 1 : at + 2]] == [True]
        if doubt and kept and kept[-1].horses and at + 2 < len(items) and items[at + 2].horse:
            end = at + 3
    return [*kept, *items[end:]]


def _either(one: Item, other: Item) -> Item:
    horses = tuple(dict.fromkeys((*one.horses, *other.horses)))
    return replace(one, raw=f"{one.raw} / {other.raw}", horses=horses, sure=False, exact=False, known=False)
