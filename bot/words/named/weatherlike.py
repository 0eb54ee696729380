"""Words that are weather, a day, or a horse called so: "misty, cold" is the morning, "misty shivering" the mare."""

from collections.abc import Sequence
from itertools import pairwise, takewhile

from bot.words.lookup.items import Item, of_a_horse, of_rugs, predicate, some_mean
from bot.words.thoughts.clauses import soft
from bot.words.thoughts.hers import PLACES
from bot.words.thoughts.sentences import REACH

OF_A_TIME = ("de", "d'", "del", "du")
SKY = ("weather", "weekday", "mass", "bare weather", "sky")  # what a horse may be called as well


def may_be_weather(item: Item, rest: Sequence[Item]) -> bool:
    """As in "misty, cold", "rain is cold"; but "misty is cold" has a subject, and so has "misty shivering"."""
    if not item.has("bare weather", "mass", "weekday") or sure_sign(rest):
        return False
    if not item.has("mass", "weekday") and (_felt_on_it(rest) or _in_its_clothes(rest)):
        return False
    if any(one.has("her") and (part.has("body") or part.kinds("sign")) for one, part in pairwise(rest)):
        return False  # "sunday is freezing her ears are ice"
    if well(rest) and not item.has("weekday"):
        return False
    told = takewhile(lambda i: not (i.mark or i.horses), rest)
    if not item.has("weekday", "mass") and any(i.has("sign sweating", "sign shivering") for i in told):
        return False  # "thunder hot but not sweating"
    if item.has("weekday") and (_soaked(rest) or _felt_in_a_part(rest)):
        return False
    return item.has("mass", "weekday") or not (rest and rest[0].has("is"))


def of_a_time(items: Sequence[Item], at: int) -> bool:
    """As in "el trueno de anoche", "la neige de ce matin": the weather, for no horse is of a night."""
    behind = items[at + 1] if at + 1 < len(items) else None
    dated = behind is not None and behind.has("time", "yesterday") and behind.text.split()[0] in OF_A_TIME
    return dated and items[at].has("weather", "sky") and at > 0 and items[at - 1].has("article")


def weather_of_a_time(items: Sequence[Item], at: int) -> bool:
    """As in "orage hier soir, tout est trempé", "misty this morning, cold": when it was, a pause, and how all is."""
    opens = at == 0 and items[at].raw[:1].islower() and items[at].has("weather", "sky", "bare weather")
    behind = items[at + 1 : at + 3]
    dated = len(behind) > 1 and behind[0].has("time") and behind[1].text == ","
    return opens and dated and not sure_sign(items[at + 3 : at + 3 + REACH])


def weather_talk(items: Sequence[Item], at: int) -> bool:
    """As in "Sunday is wet": the day, or the horse?"""
    if not items[at].has("weekday") or any(_of_animals(i) for i in items[at + 1 : at + 9]) or _in_a_table(items, at):
        return False
    rest = items[at + 1 : at + 1 + REACH]
    if _soaked(rest):
        return False
    said = said_first(rest)
    return said is not None and said.has(
        "everyday hot", "everyday cold", "everyday warm", "wet", "dry", "damp", "soaked"
    )


def _in_a_table(items: Sequence[Item], at: int) -> bool:
    """As in "Pip cold, Maple fine, Sunday hot": one more row of a horse and how it is."""
    row, ends = items[max(0, at - 3) : at], items[at + 2 : at + 4]
    if len(row) < 3 or not row[0].horse or not predicate(row[1]) or not (row[2].text == "," or row[2].has("and")):
        return False
    told = at + 1 < len(items) and predicate(items[at + 1])
    return told and not row[0].has("weekday") and (not ends or ends[0].mark or ends[-1].horse)


def _of_animals(item: Item) -> bool:
    """A word that makes what is said of a day said of a horse: "hot after schooling", "cold under her rug"."""
    return item.has("work", "worked", "body", "place stall") or bool(item.kinds("sign")) or clothing(item)


def said_first(rest: Sequence[Item]) -> Item | None:
    """The first word that tells anything, past articles, "is" and other small words; None where none does."""
    return next((i for i in rest if predicate(i) or not soft(i)), None)


def sure_sign(rest: Sequence[Item]) -> bool:
    """As in "misty shivering", "misty in her sheet": what comes first is said of animals only."""
    said = said_first(rest)
    if said is None:
        return False
    out = said.has("outwards", "inwards") and some_mean(rest, *PLACES)  # "domingo fuera en el prado"
    dressed = said.has("wears") and not said.has("in", "link", "of")
    return (
        out or dressed or bool(said.kinds("sign")) or said.has("done", "bare", "worked", "stripped") or clothing(said)
    )


def _soaked(rest: Sequence[Item]) -> bool:
    """As in "sunday is soaked": a day is wet, only a horse is soaked."""
    said = said_first(rest)
    return said is not None and said.has("soaked") and not some_mean(rest[:2], "was", "plan")


def _felt_on_it(rest: Sequence[Item]) -> bool:
    """As in "misty a bit nippy behind the elbow": where a hand felt it."""
    at = next((k for k, i in enumerate(rest) if predicate(i) or not soft(i)), len(rest))
    felt = rest[at + 1 : at + 2]
    return bool(felt) and bool(rest[at].kinds("everyday")) and felt[0].has("body") and " " in felt[0].text


def _felt_in_a_part(rest: Sequence[Item]) -> bool:
    """As in "domingo frío de las ancas", "jeudi froid des oreilles": a day has none; not "frío de cara al viento"."""
    at = next((k for k, i in enumerate(rest) if predicate(i) or not soft(i)), len(rest))
    part = next((k for k in range(at + 1, min(at + 4, len(rest))) if rest[k].has("body")), None)
    if part is None or not rest[at].kinds("everyday") or not rest[at + 1].has("of"):
        return False
    return not some_mean(rest[part + 1 : part + 2], "toward")


def _in_its_clothes(rest: Sequence[Item]) -> bool:
    """As in "misty soaked under her rug", "misty out of his medium": the weather has none of its own."""
    for k, (item, then) in enumerate(pairwise(rest)):
        if item.has("her") and clothing(then):
            told = any(predicate(i) or i.has("outwards") for i in rest[:k])
            return told and rest[k - 1].has("under", "in", "outwards")
        if item.mark or not (soft(item) or predicate(item) or item.has("outwards", "under", "in")):
            return False
    return False


def well(rest: Sequence[Item]) -> bool:
    """As in "misty fine": nobody says that of the weather."""
    said = said_first(rest)
    return said is not None and said.has("everyday comfortable", "everyday good")


def clothing(item: Item) -> bool:
    """As in "sheet", "heavy", "the tartan": a word for what a horse wears."""
    return bool(item.pieces) or (bool(item.means) and of_rugs(item.means))


def _before_a_part(item: Item) -> bool:
    return item.has("link", "article", "wears", "with", "her", "very") and not item.has("is", "in")


def told_of_its_body(rest: Sequence[Item]) -> bool:
    """As in "mate con todo el lomo mojado", "misty with her ears cold": a part of the horse, and how it is."""
    at = next((k for k, i in enumerate(rest) if i.has("body") or i.kinds("sign") or not _before_a_part(i)), 0)
    told = at > 0 and (rest[at].has("body") or bool(rest[at].kinds("sign")))
    return told and any(of_a_horse(i) for i in rest[at : at + 3])
