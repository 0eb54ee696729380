"""What is eaten and drunk, and no horse called so: "arroz con canela", "ginger for the cake", "un café noisette"."""

from collections.abc import Sequence
from itertools import pairwise

from bot.words.heard.food import FOOD
from bot.words.lookup.items import NOTHING, Item
from bot.words.named.weatherlike import said_first

FLAVOURED = ("con", "with", "a", "au", "de", "d'", "of")  # "café con canela", "glace à la vanille"
INTO = ("toward", "in", "on", "of")  # "canela para el arroz"
ALIVE = ("sign shivering", "sign sweating", "sign unwell", "sign rubbed")
NEAR = 6  # words
COURSE = 8  # words before, of "de postre para la comida del domingo:"


def food(items: Sequence[Item], at: int) -> bool:
    """Whether the word at this place is in or on what somebody eats; a horse shivers, and has a capital."""
    first, end = _listed(items, at)
    behind = items[end : end + NEAR]
    if not (_dish(items[max(0, first - COURSE) : first]) or _dish(behind)):
        return False
    served = first > 0 and items[first - 1].text == ":" and _dish(items[max(0, first - COURSE) : first])
    if served or any(one.has("in") and then.text in FOOD for one, then in pairwise(behind)):
        return True  # "de postre el domingo: trufa helada", "peaches are soaked in syrup"
    said = said_first(behind)
    if said is not None and said.has(*ALIVE):
        return False
    before = [i for i in items[max(0, first - 3) : first] if not i.has("article") or i.has("toward", "of")]
    into = behind[:1] and behind[0].has(*INTO)
    dish = next((i for i in behind[1:3] if not i.has("article")), NOTHING) if into else NOTHING
    flavoured = len(before) > 1 and before[-2].text in FOOD
    flavoured = flavoured and (before[-1].text in FLAVOURED or before[-1].has("put on", "ask tonight", "and"))
    at_once = before[-1:] and before[-1].text in FOOD
    return dish.text in FOOD or flavoured or bool(at_once)


def _dish(words: Sequence[Item]) -> bool:
    return not FOOD.isdisjoint([i.text for i in words])


def _listed(items: Sequence[Item], at: int) -> tuple[int, int]:
    """Where a list of such words begins, and behind it: "romero y canela" for the stew."""
    first, end = at, at + 1
    while first > 1 and items[first - 1].has("and") and items[first - 2].horses:
        first -= 2
    while end + 1 < len(items) and items[end].has("and") and items[end + 1].horses:
        end += 2
    return first, end
