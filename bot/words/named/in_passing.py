"""Horses named only to tell of somebody else: "Chance's trainer is sick", "the mare next to Tully coughs"."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import takewhile

from bot.words.lookup.items import NOTHING, Item, named_near, places, predicate, some_mean
from bot.words.thoughts.hers import PEOPLE, end_of_hers, owns

LIVING = (*PEOPLE, "pony", "donkey")
OTHERS_PLACE = frozenset(("instead of", "between"))
SOMEBODY, RELATIVE = frozenset(LIVING), frozenset(("relative",))
ARTICLE, BESIDE = frozenset(("article",)), frozenset(("beside",))
TELLS = ("is", "was", "has")
SMALL = ("of", "article", "toward", "her", "my", "hour", "link", "time", "in", "over")
# no mere "which one" with these
OTHERWISE = ("said", "guess", "put on", "took off", "swapped", "if", "when", "but", "and", "not", "clipped")
JOINS = ("relative", "has", "beside", "under", "hour")  # "the mare with Tully", "la yegua con la que …"
THAN = (" plus que", " moins que", " mas que", " menos que", " more than", " less than")
WHOEVER = "whoever "
REACH = 6  # words from somebody to the horse that tells who it is
NEAR = 5  # words from there to what is told


def without_passing(items: Sequence[Item]) -> Sequence[Item]:
    """The items without the names that only tell who somebody else is, or where a horse stands."""
    named = [at for at, item in enumerate(items) if item.horses]
    if not named:
        return items
    items = _without_others_place(items)
    named = [at for at, item in enumerate(items) if item.horses]
    return _only_told_which(_people_of_theirs(*_places_of_theirs(*_without_compared(items, named))))


def _without_others_place(items: Sequence[Item]) -> Sequence[Item]:
    """As in "rode Pip (instead of Max), he's hot", "Pip, (between Max and Ned), is cold": told of none of these."""
    found: list[Item] = []
    end = 0
    for at in places(items, OTHERS_PLACE):
        first = at + 1 + _at(items, at + 1).has("article")
        if not _at(items, first).horses or at < end:
            continue
        last = _listed_last(items, first, two=items[at].has("between"))
        if last and not owns(items, last):
            paused = at > 0 and items[at - 1].text == "," and _at(items, last + 1).text == ","
            found.extend(items[end : at - paused])
            end = last + 1 + paused
    return [*found, *items[end:]] if end else items


def _listed_last(items: Sequence[Item], first: int, *, two: bool) -> int:
    """The last horse of "Max and Ned"; of one, where no two need be, it is that one: "and Ned is wet" is another's."""
    if not (_at(items, first + 1).has("and") and _at(items, first + 2).horses):
        return 0 if two else first
    then = _at(items, first + 3)
    return first + 2 if two or then is NOTHING or then.mark else first


def _without_compared(items: Sequence[Item], named: Sequence[int]) -> tuple[Sequence[Item], Sequence[int]]:
    """As in "Lune transpire plus que (Max au concours), et pourtant elle broute": nothing is told of Max."""
    found: list[Item] = []
    end = 0
    for at in named:
        if at > end and predicate(items[at - 1]) and items[at - 1].text.endswith(THAN):
            pause = next((k for k in range(at + 1, len(items)) if items[k].mark), len(items))
            told = any(i.horses or i.piece is not None or predicate(i) for i in items[at + 1 : pause])
            if not told:  # "plus que Max, qui grelotte"
                found.extend(items[end:at])
                end = pause
    kept = [*found, *items[end:]] if end else items
    return kept, [at for at, item in enumerate(kept) if item.horses] if end else named


def _places_of_theirs(items: Sequence[Item], named: Sequence[int]) -> tuple[Sequence[Item], Sequence[int]]:
    """As in "turned Pip out in Gus's field", "Pip's in Gus's stall": the place, and no Gus."""
    theirs = [at for at in named if at and items[at - 1].has("in", "toward", "after") and _another_stands(items, at)]
    found: list[Item] = []
    end = 0
    for at in theirs:
        found.extend(items[end:at])
        end = at + owns(items, at)
    kept = [*found, *items[end:]] if end else items
    return kept, [at for at, item in enumerate(kept) if item.horses] if end else named


def _another_stands(items: Sequence[Item], at: int) -> bool:
    """Whether a place of this horse's follows, and another horse, or a piece, was named before it without a pause."""
    first = at + owns(items, at)
    place = next((i for i in items[first : first + 3] if not i.has("any adjective")), NOTHING)
    before = takewhile(lambda i: not i.mark, reversed(items[:at]))
    return first > at and place.has("place stall", "place field") and any(i.horses or i.piece for i in before)


def _people_of_theirs(items: Sequence[Item], named: Sequence[int]) -> Sequence[Item]:
    """As in "Chance's trainer is sick": somebody, and no Chance."""
    found: list[Item] = []
    end = 0
    for at in named:
        who = end_of_hers(items, at) - 1 if at >= end else at
        somebody = who > at and items[who].has(*PEOPLE) and not items[who].has("subject")
        if somebody and _told_behind(items, who + 1):
            first = (
                at - 2 if at > 1 and items[at - 1].has("and") and items[at - 2].horses else at
            )  # "Pip and Ned's dad"
            found.extend((*items[end:first], replace(items[who], means=frozenset({"visitor"}))))
            end = who + 1
    return [*found, *items[end:]] if end else items


def _at(items: Sequence[Item], at: int) -> Item:
    return items[at] if at < len(items) else NOTHING


def _only_told_which(items: Sequence[Item]) -> Sequence[Item]:
    """As in "the mare next to Tully's old stall is ill", "Finn next to Gus is cold": without what stands between."""
    found: list[Item] = []
    end = 0
    for at in _perhaps(items):
        opens = _opens(items, at) if at >= end else 0
        closes = _closes(items, opens) if opens else 0
        if closes:
            found.extend(items[end:opens])
            end = closes
    return [*found, *items[end:]] if end else items


def _perhaps(items: Sequence[Item]) -> list[int]:
    """Where words stand of whom it may be told which one is meant: horses beside another, people, nouns before them."""
    which = places(items, RELATIVE)
    named = {at for at, item in enumerate(items) if item.horses}
    before = {at - 1 for at in (*named, *which, *(at - 1 for at in which))}  # "le monsieur à qui …" as well
    nouns = before.intersection(at + 1 for at in places(items, ARTICLE))
    return sorted({*named_near(items, BESIDE, behind=NEAR), *which, *places(items, SOMEBODY), *nouns})


def _opens(items: Sequence[Item], at: int) -> int:
    """Where it begins to be told which one this word means; 0 where it does not."""
    item, then = items[at], _at(items, at + 1)
    if item.horses:
        beside = _beside(items, at + 1)
        return beside if beside and not some_mean(items[at + 1 : beside], *TELLS) else 0
    if item.has("relative") and " " in item.text and (at == 0 or items[at - 1].mark):
        return at + 1  # "la que monta a Moro", "the one next to Tully"
    if not _somebody(items, at):
        return 0
    leads = then.horses or then.has("in", "on", "i", *JOINS) or _beside(items, at + 1)
    return at + 1 if leads else 0


def _beside(items: Sequence[Item], first: int) -> int:
    """Where "next to" stands, before the next horse; 0 where it does not."""
    for at in range(first, min(len(items), first + NEAR)):
        if items[at].has("beside"):
            return at
        if items[at].horses or (items[at].mark and items[at].text != ","):
            return 0
    return 0


def _somebody(items: Sequence[Item], at: int) -> bool:
    """A person, or a horse of no name: "the mare", "someone", "the stallion", "la petite"."""
    item = items[at]
    if item.horses or item.piece or item.mark or item.has("subject", "my", "she", "helper", "is"):
        return False
    if at > 0 and items[at - 1].has("subject"):
        return False  # "je suis avec Lune et Max grelotte"
    behind_article = at > 0 and items[at - 1].has("article") and not items[at - 1].horses
    then = _at(items, at + 1)
    if item.has(*LIVING):
        return behind_article or " " in item.text or not then.has("but")  # "ay chicos que Mora tiene rozaduras"
    nameless = behind_article and (not item.means or item.has("any adjective", "polite"))
    whose = then.has("hour") and _at(items, at + 2).has("relative")  # "le monsieur à qui appartient Titan"
    return (nameless and (then.has("relative") or bool(then.horses))) or (behind_article and whose)


def _closes(items: Sequence[Item], opens: int) -> int:
    """Where the words that tell which one end, and what is told of it follows; 0 where they do not."""
    at = next((k for k in range(opens, min(len(items), opens + REACH)) if items[k].horses), 0)
    if not at or not all(_tells_which(items, k) for k in range(opens, at)):
        return 0
    by_deed = at == opens or items[at - 1].has("relative")
    whoever = at == opens and items[at - 1].text.startswith(WHOEVER)
    end = _tail(items, at) if by_deed and not whoever else end_of_hers(items, at)
    while _at(items, end).has("and") and not _at(items, end).has("has") and _at(items, end + 1).horses:
        end = end_of_hers(items, end + 1)
    paused = items[opens - 1].text == "," and _at(items, end).text == ","
    end += paused
    return end if _told_behind(items, end) else 0


def _tells_which(items: Sequence[Item], at: int) -> bool:
    item = items[at]
    if item.mark or item.piece or predicate(item) or (item.has(*OTHERWISE) and not item.has(*JOINS)):
        return False
    is_there = _at(items, at + 1).has("beside", "in", "toward", "under", "has", "after")
    return is_there or item.has("has", "relative", "toward") or not item.has("is")


def _tail(items: Sequence[Item], at: int) -> int:
    """Behind "(the filly) Tully had", "(the mare that) Gus chased"; 0 where no other verb follows."""
    then = _at(items, at + 1)
    if not (then.has("had", "was", "habit") or (items[at - 1].has("relative") and not then.has("is"))):
        return 0
    verb = next((k for k in range(at + 2, min(len(items), at + REACH)) if items[k].has(*TELLS)), at)
    return verb if all(_tells_which(items, k) for k in range(at + 2, verb)) and verb > at else 0


def _told_behind(items: Sequence[Item], at: int) -> bool:
    """Whether something is told next, past where: "(the mare next to Tully) at Larch Hill is ill"."""
    for item in items[at : at + NEAR] if at else ():
        if predicate(item) or (item.has(*TELLS) and not item.has("and")):
            return True
        if item.mark or item.horses or not (not item.means or item.has(*SMALL, "place stall", "place field", "work")):
            return False
    return False
