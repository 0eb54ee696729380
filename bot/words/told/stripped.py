"""Everything off: "stripped Maple", "Maple in nothing"; and what alone stays on: "stripped Pip, all but the liner"."""

from collections.abc import Sequence
from itertools import pairwise, takewhile

from bot.words.lookup.items import Item, some_mean
from bot.words.lookup.piece import Piece
from bot.words.thoughts.clauses import Clause


def wears_nothing(items: Sequence[Item]) -> bool:
    """As in "lleva nada", "porte rien"; not "on voit rien avec le brouillard"."""
    worn = next((k for k, i in enumerate(items) if i.has("wears")), len(items))
    return some_mean(items[worn:], "nothing")


def in_nothing(items: Sequence[Item]) -> bool:
    """As in "left Maple in nothing"."""
    return any(one.has("in") and other.has("nothing") and not other.has("everyone") for one, other in pairwise(items))


def strips(items: Sequence[Item]) -> bool:
    """As in "Stripped Maple": a verb right before a horse and nothing after; or "Maple's been stripped" and no more."""
    last = [i for i in items if not i.mark and not i.has("time", "polite")]
    if (
        len(last) > 1
        and last[-1].has("stripped")
        and next(i for i in (*last[-2::-1], last[0]) if not i.has("both", "is")).horses
    ):
        return True
    if len(last) == 1 and last[0].has("stripped") and last[0].has("it", "she"):
        return True  # "je l'ai déshabillée"
    for k, item in enumerate(items):
        then = next((i for i in items[k + 1 :] if i.horses or not i.has("article", "toward")), None)  # "a la frida"
        if item.has("stripped") and then is not None and (then.horses or then.has("everyone", "all horses")):
            return True
        if item.has("stripped") and then is not None and then.has("she", "both") and _no_more(items[k + 2 :]):
            return True  # "sweating in the heavy, stripped him off", "stripped them both"
    return False


def _no_more(behind: Sequence[Item]) -> bool:
    """Nothing but small words; "stripped his box" has a thing."""
    return all(i.mark or i.has("off", "time", "polite", "stripped", "bare") for i in behind)


def left_on(clause: Clause) -> list[Piece]:
    """As in "Pip's rugs off except his neck", "stripped Pip, all but the liner": what alone stays on."""
    if not clause.has("except"):
        return []
    left = next(k for k, i in enumerate(clause.items) if i.has("except"))
    if _done_behind(clause.items[left + 1 :]):
        return []
    kept = [i.piece for i in clause.items[left:] if i.piece is not None]
    gone = [piece for piece in clause.pieces if piece not in kept]
    others = (*clause.items[:left], *clause.items[left + 1 :])  # "quitado el forro" alone takes it off
    off = any(i.has("off", "took off", "stripped", "bare", "nothing") and not i.has("everyone") for i in others)
    of_one = not any(i.horses for i in clause.items[left:])  # "rugs off all but Pip in his liner" leaves Pip out
    return kept if off and of_one and all(piece.rug for piece in gone) else []


def _done_behind(behind: Sequence[Item]) -> bool:
    """As in "(busy day,) but I took Pip's sheet off": what was done, before any piece is named; nothing is excepted."""
    before = takewhile(lambda i: i.piece is None, behind)
    return any(i.has("took off", "took", "put on", "swapped", "i") for i in before)
