"""Who it is that is so, where another is denied first: "no es Moro el que suda, es Nube" is of Nube alone."""

from collections.abc import Sequence

from bot.words.items import Item, places, predicate

RELATIVE = frozenset(("relative",))
LEADING = ("not", "no", "is", "was", "it", "i mean", "article", "polite", "link")  # "no es", "it isn't", "c'est pas"
JOINS = ("but", "is", "was", "it", "i mean", "article", "time", "not")  # ", it's", ", c'est", "sino"
TAIL = 8  # words of "who is sweating, it is Ned"


def picked_out(items: Sequence[Item]) -> list[Item]:
    """The items with whom it is in place of the one denied: "Nube, la que suda"."""
    kept: list[Item] = []
    end = 0
    for at in places(items, RELATIVE):
        denied, said = _denied_from(items, at), _said_behind(items, at)
        who = _another(items, said)
        if end <= denied and who:
            kept.extend([*items[end:denied], items[who], *items[at : said + 1]])
            end = who + 1
        elif end <= at and who and _denied_first(items[said + 1 : who]) and (then := _another(items, who)):
            kept.extend([*items[end : said + 1], *items[who + 1 : then + 1]])
            end = then + 1
    return [*kept, *items[end:]]


def _denied_from(items: Sequence[Item], at: int) -> int:
    """Where "it isn't Pip" begins, right before "who is sweating"; −1 where nothing of the kind stands there."""
    first = at - 1
    while first > 0 and not items[first - 1].mark and items[first - 1].has(*LEADING):
        first -= 1
    return first if any(i.has("not") for i in items[max(first, 0) : at - 1]) and items[at - 1].horse else -1


def _denied_first(between: Sequence[Item]) -> bool:
    """As in "(quien tiembla) no es (Luna, es Nube)": whom it is not comes first."""
    return any(i.has("not") for i in between)


def _said_behind(items: Sequence[Item], at: int) -> int:
    """The place of how it is, the last word of it, before any horse or mark; 0 where nothing is said."""
    said = 0
    for k in range(at + 1, min(at + TAIL, len(items))):
        if items[k].mark or items[k].horses:
            break
        said = k if predicate(items[k]) else said
    return said


def _another(items: Sequence[Item], said: int) -> int:
    """Where the horse stands that it is, named last behind how it is; 0 where none is."""
    who = next((k for k in range(said + 1, min(said + TAIL, len(items))) if items[k].horses), 0) if said else 0
    between = items[said + 1 : who]
    ends = who + 1 >= len(items) or items[who + 1].mark or items[who + 1].has("polite")
    joins = bool(between) and all(i.mark or (i.has(*JOINS) and not predicate(i)) for i in between)
    return who if who and ends and joins else 0
