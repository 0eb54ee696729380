"""What is said to be worn and only tells how it is: "trae el lomo mojado" of the horse, "lleva la capa empapada"."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.lookup.items import Item, of_a_horse, of_clothes, places
from bot.words.named.weatherlike import clothing

WEARS = frozenset(("wears",))
DEGREE = ("very", "a little", "wholly", "everyone")
BETWEEN = ("article", "her", "very", "a little", "all", "wholly", "everyone", "and", "too", "time")
NOT_BORNE = ("in", "link", "of", "has")  # "con", "en", "de": words that join
REACH = 5  # words
IS = frozenset(("is",))
HAS_HER, HAS_THE = frozenset(("has", "her")), frozenset(("has", "article"))
DETERMINED = {"sa": HAS_HER, "son": HAS_HER, "ses": HAS_HER, "la": HAS_THE}  # French "a sa", "a la"
FEMININE, MASCULINE = ("a", "as", "ee", "ees", "eche"), ("o", "os", "pe", "lle", "ngue", "sec", "re")
AGREES = dict.fromkeys(("el", "los", "le", "son"), MASCULINE) | dict.fromkeys(("la", "las", "sa"), FEMININE)
MARK = (".",)  # no word ends so


def borne(items: Sequence[Item]) -> list[Item]:
    """The items, with "has" in place of "wears" where a part of the body or a piece follows, and how that is."""
    found = list(items)
    for at in places(items, WEARS):
        part = None if items[at].has(*NOT_BORNE) else _part(items, at)
        if part is None and _piece_told(items[at + 1 : at + 1 + REACH], joined=items[at].has(*NOT_BORNE)):
            found[at] = replace(items[at], means=DETERMINED.get(items[at].text.split()[-1], IS))
        elif part is not None:
            found[at] = replace(items[at], means=frozenset({"is"}))
            found[part] = replace(items[part], means=frozenset({"body"}))  # "lleva el cuello sudado": no neck cover
    return found


def _part(items: Sequence[Item], verb: int) -> int | None:
    """The place of a part of the body, behind which or before which it is said how that is; None without."""
    rest = range(verb + 1, min(verb + 1 + REACH, len(items)))
    part = next((k for k in rest if items[k].has("body")), None)
    between = items[verb + 1 : part]
    if part is None or not all(of_a_horse(i) or i.has(*BETWEEN) for i in between):
        return None
    behind = next((items[k] for k in rest if k > part and not items[k].has(*DEGREE)), None)
    told = (behind is not None and of_a_horse(behind)) or any(of_a_horse(i) for i in between)
    return part if told else None


def _piece_told(rest: Sequence[Item], *, joined: bool) -> bool:
    """Whether one piece follows and how it is, and no more: what else the horse wears stays as it was.

    joined: by "con", behind which the two must agree: "con la capa mojada", not "con la capa mojado", the horse.
    """
    told = next((k for k, i in enumerate(rest) if of_clothes(i)), 0)
    piece = rest[:told]
    named = any(clothing(i) or i.has("colour") or i.number is not None for i in piece)
    if not named or not all(clothing(i) or _describes(i) for i in piece):
        return False
    if joined and not rest[told].text.endswith(AGREES.get(rest[0].text.split()[0], MARK)):
        return False
    return all(i.mark or i.has("and", "but", "time") for i in rest[told + 1 : told + 2])


def _describes(item: Item) -> bool:
    return item.number is not None or item.has("article", "her", "of", "colour", "any adjective", *DEGREE)
