"""It is this one: "c'est pas Max qui a froid, c'est Lune" is of Lune; "c'est la rayée que j'ai mise à Lune"."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.lookup.items import NOTHING, PAUSE, Item, all_mean, places, predicate, since_mark, some_mean

PICKED = frozenset(("relative", "i"))
DENIALS = frozenset(("not",))
REACH = 12  # words from the one that is not meant to the one that is
ENDS = ".!?;…\n,"
SMALL = ("article", "polite", "it", "is", "was", "i mean", "link", "but")
OPENING = ("it", "is", "was", "no", "i mean", "article")
BEFORE_VERB = ("i", "subject", "is", "has", "helper", "she", "link")
MOVED = ("put on", "took off", "wears")
IT_IS = frozenset(("it", "i mean"))
IS = Item("is", "is", frozenset({"is"}))


def this_one(items: Sequence[Item]) -> Sequence[Item]:
    """The items with what is told of this one in the order in which anything else is told."""
    return _picked_out(_so_is_the_other(_other_at_last(_not_that_but_this(items))))


def _not_that_but_this(items: Sequence[Item]) -> list[Item]:
    """Whom or what somebody meant in place of what it is not, and told the same: "not Pip who's cold but Ned"."""
    kept: list[Item] = []
    end = 0
    for at in places(items, DENIALS):
        if at < end:
            continue  # of what was mended before
        denied = _named_next(items, at + 1)
        turn, meant = _turn(items, denied) if denied else (0, 0)
        if not meant:
            continue
        kept.extend(items[end:at])
        while kept and (kept[-1].has(*OPENING) or (kept[-1].text == "," and kept[-2:-1] and kept[-2].has("no"))):
            kept.pop()
        told, this = items[denied + 2 : turn], _this(items[denied], items[meant])
        kept.extend(_behind_verb(this, told) if told and told[0].has("i") else (this, *told))
        end = meant + 1
    return [*kept, *items[end:]]


def _other_at_last(items: Sequence[Item]) -> Sequence[Item]:
    """As in "el que tiembla no es Max, es Lune": as "el que tiembla es Lune"."""
    for at in places(items, DENIALS):
        before = since_mark(items, at, REACH)
        one = next((k for k in range(at + 1, min(len(items), at + 3)) if items[k].horses), len(items))
        other = next((k for k in range(one + 1, min(len(items), one + REACH)) if items[k].horses), len(items))
        told = any(predicate(i) for i in before) and some_mean(before, "relative")
        joins = all(i.text in ",;" or i.has(*SMALL) for i in items[one + 1 : other])
        if told and joins and one < other < len(items) and _ends_there(items, other + 1):
            return [*items[:at], IS, *items[other:]]
    return items


def _so_is_the_other(items: Sequence[Item]) -> Sequence[Item]:
    """As in "Max tousse pas, c'était Lune", "Pip isn't cold it's Ned": what is denied of one is so of the other."""
    found = list(items)
    for at in reversed(places(items, IT_IS)):
        who = next((k for k in range(at + 1, min(at + 4, len(items))) if items[k].horses), at)
        it_is = who > at and _is_behind(items, at) and all_mean(items[at:who], *SMALL)
        how = _denied_before(items, at) if it_is and _ends_there(items, who + 1) else -1
        if how >= 0:
            found[at : who + 1] = [PAUSE, items[who], items[how]]
    return found


def _denied_before(items: Sequence[Item], at: int) -> int:
    """The place of what is denied of a horse right before this one; −1 where nothing is."""
    pause = at - 1 if at and items[at - 1].text in (",", "-", "–", "—", "…") else at
    first = next((k for k in range(pause - 1, max(-1, pause - REACH), -1) if items[k].horses), pause)
    said = items[first:pause]
    told = [k for k in range(first, pause) if items[k].kinds("sign")]
    plainly = len(told) == 1 and not any(i.mark for i in said) and some_mean(said, "not", "not behind")
    return told[0] if plainly else -1


def _named_next(items: Sequence[Item], at: int) -> int:
    """Where it stands what it is not, with "who" or "that" behind it; 0 where nothing does."""
    named = at
    while named < min(len(items), at + 3) and items[named].has("article", "is", "was") and not _subject(items[named]):
        named += 1
    relative = named + 1 < len(items) and _subject(items[named]) and items[named + 1].has("relative")
    return named if relative else 0


def _subject(item: Item) -> bool:
    return bool(item.horses) or item.piece is not None


def _turn(items: Sequence[Item], denied: int) -> tuple[int, int]:
    """Where what is told of the one ends, and where the other stands, of which no more is told; 0 and 0 without."""
    turn = 0
    for at in range(denied + 2, min(len(items), denied + REACH)):
        item = items[at]
        if turn and _subject(item):
            return (turn, at) if _another(items[denied], item) and _ends_there(items, at + 1) else (0, 0)
        turns = item.text in ",;" or item.has("but", "i mean") or (item.has("it") and _is_behind(items, at))
        if turns and not turn and not item.has("relative"):
            turn = at
        elif (turn and not (turns or item.mark or item.has(*SMALL))) or (item.horses and items[denied].horses):
            return 0, 0
    return 0, 0


def _another(one: Item, other: Item) -> bool:
    return bool(one.horses) == bool(other.horses) and (one.horses, one.piece) != (other.horses, other.piece)


def _is_behind(items: Sequence[Item], at: int) -> bool:
    return items[at].has("is", "was") or (at + 1 < len(items) and items[at + 1].has("is", "was"))


def _ends_there(items: Sequence[Item], at: int) -> bool:
    return at >= len(items) or items[at].text in ENDS


def _this(denied: Item, meant: Item) -> Item:
    """Another piece of the same horse, where nobody says whose: "pas la bleue de Lune …, la rayée"."""
    if denied.piece is None or meant.piece is None or meant.piece.owners or meant.piece.spare:
        return meant
    return replace(meant, piece=meant.piece._replace(owners=denied.piece.owners))


def _picked_out(items: Sequence[Item]) -> Sequence[Item]:
    """As in "c'est la rayée que j'ai mise à Lune", "it's the red one I put on Pip": as "j'ai mis la rayée à Lune"."""
    for at in places(items, PICKED):
        piece = items[at - 1] if at else NOTHING
        is_it = at > 1 and items[at - 2].has("it", "is") and not items[at - 2].has("not")
        first = at + 1 if items[at].has("relative") else at
        verb = _verb(items, first)
        if piece.piece is not None and is_it and verb < len(items) and items[verb].has(*MOVED):
            return [*items[: at - 2], *items[first : verb + 1], piece, *items[verb + 1 :]]
    return items


def _verb(items: Sequence[Item], first: int) -> int:
    """Where the verb stands, past who did it."""
    near = range(first, min(len(items), first + REACH))
    others = (k for k in near if not (items[k].has(*BEFORE_VERB) or items[k].horses) or items[k].has(*MOVED))
    return next(others, len(items))


def _behind_verb(meant: Item, told: Sequence[Item]) -> list[Item]:
    verb = _verb(told, 0)
    return [*told[: verb + 1], meant, *told[verb + 1 :]]
