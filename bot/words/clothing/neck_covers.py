"""A neck that is worn: "heavy and neck", "in his heavy with the neck"; in "wet neck" it is a part of the horse."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.lookup.items import Item, all_mean, places, some_mean
from bot.words.lookup.names import Roster
from bot.words.named.weatherlike import clothing

BODY = frozenset(("body",))
NECKS = ("neck", "cou", "encolure")
COVER = frozenset(("kind neck",))
BETWEEN = 3  # words of ", and the"


def with_neck_covers(items: Sequence[Item], roster: Roster) -> Sequence[Item]:
    """The same items; where a neck is told with a rug, and nothing is said of how it is, it is a neck cover."""
    necks = [at for at in places(items, BODY) if items[at].text in NECKS]
    if not necks or all(garment.kind != "neck" for garment in roster.garments.values()):
        return items
    found = list(items)
    for at in necks:
        if _moved(items, at) or (_with_a_rug(items, at) and _nothing_of_it(items, at)):
            found[at] = replace(items[at], means=COVER)
    return found


def _with_a_rug(items: Sequence[Item], at: int) -> bool:
    """As in "heavy and neck", "neck and heavy", "heavy on with the neck"."""
    before = next((k for k in range(at - 1, max(-1, at - 2 - BETWEEN), -1) if not _joins(items[k])), at)
    joined = before < at - 1 and not all_mean(items[before + 1 : at], "article", "her")
    if joined and (clothing(items[before]) or (before and items[before].has("on") and clothing(items[before - 1]))):
        return True
    behind = next((k for k in range(at + 1, min(len(items), at + 1 + BETWEEN)) if not _joins(items[k])), at)
    return behind > at + 1 and clothing(items[behind])


def _moved(items: Sequence[Item], at: int) -> bool:
    """As in "took Juno's neck off", "enlevé l'encolure de Lune", "her neck is off": nobody takes off the other."""
    before, behind = items[max(0, at - BETWEEN - 1) : at], items[at + 1 : at + 3]
    off = next((i for i in behind if not i.has("is")), items[at])
    verb = some_mean(before, "put on", "took off", "took", "brought")
    if some_mean(before, "clipped"):
        return False
    if off.has("off") or (verb and off.has("on")):
        return True
    took = next((i for i in reversed(before) if not i.has("article", "her")), items[at])
    ends = not behind or behind[0].mark or behind[0].has("of", "toward")
    return took.has("took off", "put on") and ends


def _joins(item: Item) -> bool:
    return item.has("and", "article", "her") or item.text == ","


def _nothing_of_it(items: Sequence[Item], at: int) -> bool:
    """Whether nothing is told of the neck itself: "heavy and neck damp", "her liner, neck and shoulders"."""
    behind = items[at + 1 : at + 3]
    if not behind or behind[0].has("on", "off", "too", "put on", "took off") or behind[0].horses:
        return True
    listed = behind[0].has("and") or behind[0].text == ","
    return (listed and all(clothing(i) or i.horses for i in behind[1:])) or (behind[0].mark and not listed)
