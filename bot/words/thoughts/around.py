"""What the words around a sign say of it: what follows, whose it is, where and after what it was seen."""

from collections.abc import Sequence
from functools import cache
from itertools import pairwise, takewhile
from typing import cast

from bot.events import Setting, Sign
from bot.words.lookup.items import WETNESS, Item, all_mean, kinds_of, places, predicate, some_mean
from bot.words.lookup.piece import Piece
from bot.words.thoughts.clauses import Clause, only_small, said_by, soft
from bot.words.thoughts.holes import holed
from bot.words.thoughts.no_report import LIKENS

TRAITS = ("sign cold", "sign hot", "everyday cold", "everyday hot")
SER = ("es", "son", "era", "eran", "ya es", "ya son")
ONE = ("un", "una", "unos", "unas")
LIKE_A = (" as", " as a", " as an")
STALL, WORK = frozenset(("place stall",)), frozenset(("work", "worked"))
SEEN_THERE = STALL | WORK
LOOKED = ("in", "of", "on", "not anywhere")  # what stands between a state and its piece
HOLDS = ("in", "on", "of", "over", "under", "wears")  # what stands between a horse and its clothes
OF_HORSE = ("of", "de", "d'", "del", "du")
NEAR_BOTH = 6  # words between "both of hers" and what they are
WET_SIGN: dict[str, Sign] = {"dry": "comfortable", "damp": "wet", "wet": "wet", "soaked": "wet"}


def sign_of(item: Item) -> Sign | None:
    """What a word says of a horse; None where it may be either of two."""
    return _sign_of(item.means)


@cache
def _sign_of(means: frozenset[str]) -> Sign | None:
    signs = kinds_of(means, "sign") or kinds_of(means, "everyday")
    for sign in signs:
        if sign != "warm":
            return cast("Sign", "comfortable" if sign == "good" else sign)
    return next((WET_SIGN[w] for w in WETNESS if w in means), None)


def rest_allows(items: Sequence[Item], at: int) -> bool:
    """Whether what follows lets an everyday word be a sign: "cold" but not "cold water"."""
    item, rest = items[at], items[at + 1 :]
    rubbed = item.has("sign rubbed")
    if rubbed and rest and rest[0].has("her") and some_mean(rest[:6], "my", "i"):
        return False  # "rubbed his tail on my coat"
    if item.has(*TRAITS) and _always_so(items[:at]):
        return False  # "Relam es muy friolento"
    if rubbed:
        return not (len(rest) > 1 and rest[0].has("her") and not rest[1].means and rest[1].piece is None)
    if item.kinds("sign"):
        return True
    if item.has("everyday comfortable", "everyday good") and _always_so(items[:at]):
        return False
    following = next((i for i in rest if not (i.mark and i.text in "\"'")), None)
    if item.has("everyday good") and some_mean(items[:at], "was") and not (rest and rest[0].has("under")):
        return False  # "was good today": well-behaved
    if following is None or following.mark or predicate(following):
        return True
    if following.has("i") and any(i.has("said") or (i.has("plan") and following.text == "you") for i in rest[1:2]):
        return True  # "looks cold, I think", "so wet you could wring him out"
    if any(i.has("work") and not some_mean(items[:k], "after") for k, i in enumerate(items)):
        return False  # "was hot in the lesson"
    if item.has("everyday comfortable", "everyday good"):
        return not following.has("worked", "took off", "put on", "brought") and all(
            _harmless(i) or (i.person and i is rest[-1]) for i in rest
        )
    if following.has("idiom") and following.text.partition(" ")[0] in LIKENS:
        return True  # "sèche comme un os"
    if item.text.endswith(LIKE_A):
        return True  # "hot as a stove"
    return _harmless(following) or following.piece is not None or (following.person and following is rest[-1])


def _always_so(before: Sequence[Item]) -> bool:
    """As in "Canela es muy tranquila", "es una joya": what she is like, where "está" would tell how she is."""
    said = next((i for i in reversed(before) if not i.has("very", "a little") and i.text not in ONE), None)
    return said is not None and said.text in SER


def _harmless(item: Item) -> bool:
    more = (
        "when",
        "worked",
        "took",
        "put on",
        "took off",
        "swapped",
        "brought",
        "done",
        "bare",
        "over",
        "wears",
        "except",
        "all horses",
    )
    return soft(item) or predicate(item) or bool(item.horses) or item.piece is not None or item.has(*more)


def setting_of(clause: Clause) -> Setting:
    """Where or after what the sign was seen, from the words alone."""
    if clause.means.isdisjoint(SEEN_THERE):
        return "turnout"
    items = clause.items[said_by(clause.items) :]  # "the lass on work experience says …"
    for at, item in enumerate(items if clause.has("work", "worked") else ()):
        while_at = item.has("after", "in", "on") or item.text in ("during", "at", "a", "a la", "au")
        over = item.has("work") and some_mean(items[at + 1 : at + 2], "done")  # "le cours fini, …"
        if over or item.has("worked") or (while_at and some_mean(items[at + 1 : at + 6], "work", "worked")):
            return "after work"
    inside = any(not _came_from(items, k) for k in places(items, STALL))
    return "stall" if inside else "turnout"


def _came_from(items: Sequence[Item], at: int) -> bool:
    """As in "se salió de la cuadra": where the horse is no more."""
    before = at - 1
    while before > 0 and items[before].has("article", "her") and not items[before].has("of"):
        before -= 1
    return before > 0 and items[before].has("of") and items[before - 1].has("broken", "outwards", "turned out")


def _hung_there(items: Sequence[Item], at: int) -> bool:
    """As in "her sheet is soaked, I hung it in her stall": where the piece is."""
    return some_mean(takewhile(lambda i: not i.mark and not i.horses, reversed(items[:at])), "hung")


def seen_where(items: Sequence[Item]) -> Setting:
    """Where or after what a message of one horse saw it, said anywhere in it; "turnout" where nothing says so."""
    if len({i.horses for i in items if i.horses}) != 1 or some_mean(items, "place field"):
        return "turnout"
    items = items[said_by(items) :]
    planned = some_mean(items, "plan", "if", "when")
    for at in () if planned else places(items, WORK):
        if some_mean(items[max(0, at - 3) : at + 1], "after", "worked"):
            return "after work"
    if len(items) > 2 and items[-1].has("work") and items[-2].mark and not planned:
        return "after work"  # "sudado, clase"
    moved = some_mean(items, "not", "plan", "brought in", "turned out", "brought", "stays", "done")
    inside = any(
        not (items[k].has("inwards") or _came_from(items, k) or _hung_there(items, k) or _speaker_is_there(items, k))
        for k in places(items, STALL)
    )
    return "stall" if inside and not moved else "turnout"


def of_where(sentence: Sequence[Item]) -> bool:
    """As in "In his stable.", "Just back from the lesson": no word that tells of something else."""
    heard = all(i.means or i.mark or i.horses or i.number is not None for i in sentence)
    others = some_mean(sentence, "kin", "elsewhere", "they have", "relative", "thanks", "state torn")
    return heard and not others and all(i.piece is None for i in sentence)


def _speaker_is_there(items: Sequence[Item], at: int) -> bool:
    """As in "I'm at the barn, Pip is cold", "je suis à l'écurie": where somebody writes, anywhere on the farm."""
    before = [i for i in items[max(0, at - 4) : at] if not i.has("article") or i.has("hour")]
    there = items[at].text.startswith("a l' ") or (bool(before) and before[-1].has("hour"))
    return there and some_mean(before, "i") and not some_mean(before, "in")


def stands_in_stall(items: Sequence[Item]) -> bool:
    """As in "In his stable.", "saw Willow in her stall": where the horse is, nothing that is done there."""
    at = next((k for k, i in enumerate(items) if i.has("place stall")), None)
    if at is None or _hung_there(items, at):
        return False
    before = [i for i in items[:at] if not i.has("her", "article", "is", "link") or i.has("in")]
    return (
        len(before) > 0
        and before[-1].has("in")
        and (len(before) == 1 or bool(before[-2].horses or before[-2].has("she")))
    )


def stands_among_stalls(items: Sequence[Item]) -> bool:
    """As in "je suis aux box", "revisé en la caballeriza: …": where the speaker looks, of no horse.

    "À l'écurie" may be anywhere on the farm, and "Marta está en la cuadra" is of Marta.
    """
    at = next((k for k, i in enumerate(items) if i.has("place stall")), len(items))
    if at == len(items) or _hung_there(items, at):
        return False
    if any(i.horses or i.piece is not None or i.has("not", "plan", "if") for i in items):
        return False
    if any(i.person or (i.has("is") and not i.has("i", "helper")) for i in items):
        return False
    strange = [k for k, i in enumerate(items) if not (soft(i) or i.has("i", "said", "helper"))]
    inside = items[at].text.startswith("au") or some_mean(items[max(0, at - 2) : at], "in")
    return inside and all(k == 0 and not items[k].means for k in strange)  # "revisé", which no table knows


def excepted(items: Sequence[Item], at: int) -> bool:
    """Whether a horse is among those left out: "all fine except Maple and Pip"."""
    if not some_mean(items, "everyone", "all horses"):
        return False
    for item in reversed(items[:at]):
        if item.has("except"):
            return True
        if not (item.horses or item.has("and") or item.text == ","):
            return False
    return False


def not_that_one(items: Sequence[Item], at: int) -> bool:
    """Whether a horse is named only to say that it is another: "Pip and not Pop is sweaty", "not Pop, Pip is cold"."""
    if not at or not items[at - 1].has("not"):
        return False
    before = at > 1 and bool(
        items[at - 2].horses or items[at - 2].has("and") or (predicate(items[at - 2]) and only_that_one_left(items, at))
    )
    aside = [i.text for i in (items[at - 2], *items[at + 1 : at + 2])] == [",", ","] if at > 2 else False
    if aside and items[at - 3].horses:
        return True  # "Lune et Max, pas Filou, ont froid"
    rest = [i for i in items[at + 1 : at + 5] if not (i.mark or i.has("but", "i mean", "article", "it", "is"))]
    return before or (len(rest) < len(items[at + 1 : at + 5]) and bool(rest) and bool(rest[0].horses))


def only_that_one_left(items: Sequence[Item], at: int) -> bool:
    """As in "c'est Bijou qui a froid pas Lune": behind a whole thought and "not", one horse and no more."""
    told = any(i.horses for i in items[:at])
    return told and bool(items[at].horses) and all(only_small(i) for i in items[at + 1 :])


def neither(items: Sequence[Item]) -> bool:
    """As in "neither Otto nor Fig": each of several horses is denied."""
    words = [i for i in items if not i.has("article") or i.horses]
    return sum(bool(i.has("not", "neither") and then.horses) for i, then in pairwise(words)) > 1


def pieces_ahead(items: Sequence[Item], at: int) -> list[Piece]:
    """The pieces that this word stands before and belongs to: "wet liner", "dry now the tartan and the quilt"."""
    first = _piece_ahead(items, at)
    return [first, *_joined(items, first)] if first is not None else []


def _piece_ahead(items: Sequence[Item], at: int) -> Piece | None:
    """The piece that this word stands before and belongs to: "wet liner", "lost Juniper's liner", "tore her sheet".

    So it is in "no encuentro por ningún lado la azul": who looked everywhere says which behind it.
    """
    if items[at].has("state torn") and (piece := holed(items, at)):
        return piece
    verb = bool(items[at].kinds("state"))
    for k in range(at + 1, min(at + 4, len(items))):
        item = items[k]
        if item.piece is not None:
            later = any(predicate(i) for i in items[k + 1 :] if not i.mark)
            return None if later and not verb else item.piece
        small = item.has("link", "time") and not item.has(*HOLDS)  # "húmeda todavía la verde"
        if item.mark or not (small or item.has("article", "her", "all") or (verb and item.has(*LOOKED))):
            return None
    return None


def _joined(items: Sequence[Item], first: Piece) -> list[Piece]:
    """The pieces that end a clause behind this one."""
    at = next((k for k, i in enumerate(items) if i.piece is first), len(items))
    behind = [i for i in items[at + 1 :] if not i.mark]
    joined = bool(behind) and behind[0].has("and") and all(i.piece or i.has("and", "article") for i in behind)
    return [i.piece for i in behind if i.piece is not None] if joined else []


def pieces_listed(items: Sequence[Item], at: int) -> list[Piece]:
    """The pieces listed behind a word and a colon, and nothing else: "wet: big red, orange rug", "wet ones: …"."""
    ones = any(i.has("one") or (i.piece is not None and i.piece.rug) for i in items[at + 1 : at + 2])
    colon = at + 2 if ones else at + 1
    behind = items[colon + 1 :]
    if colon >= len(items) or items[colon].text not in (":", "-", "–", "—"):
        return []
    found = [i.piece for i in behind if i.piece is not None]
    return found if all(i.piece is not None or i.mark or i.has("and", "article") for i in behind) else []


def wearer_ahead(items: Sequence[Item], at: int) -> tuple[str, ...]:
    """Whose rug ends the clause: "sweat marks under Rosie's rug"."""
    rest = [i for i in items[at + 1 :] if not i.mark]
    last = rest[-1].piece if rest else None
    under = len(rest) == 2 and rest[0].has("under", "in") and not any(i.horses for i in items)
    return last.owners if under and last is not None else ()


def horse_ahead(items: Sequence[Item], at: int) -> bool:
    """Whether a horse follows, past small words and other signs."""
    rest = [i for i in items[at + 1 :] if not (i.mark and i.text in ":-–—=>")]
    passing = (
        "and", "again", "on", "very", "a little", "too", "article", "link", "of", "body", "both", "all",
        "place field", "place stall",
    )  # fmt: skip
    joined = False
    while rest and not rest[0].horses and (predicate(rest[0]) or rest[0].has(*passing)):
        joined = rest[0].has("and") and not rest[0].has("has", "on", "of")
        rest = rest[1:]
    return bool(rest) and bool(rest[0].horses) and not joined  # "(her sheet) is wet and Flo had a lesson"


def both_of_hers(items: Sequence[Item], at: int) -> bool:
    """As in "los dos de Luna están mojados", "both of Otto's are wet": two pieces of hers, and no word of which."""
    before = items[max(0, at - NEAR_BOTH) : at]
    threes = zip(before, before[1:], before[2:], strict=False)
    return any(one.has("both") and of.has("of") and horse.horse for one, of, horse in threes)


def only_horses_behind(items: Sequence[Item], at: int) -> bool:
    """Whether a clause is small words, this one, and horses."""
    behind = [i for i in items[at + 1 :] if not (i.mark or i.has("time", "polite"))]
    listed = bool(behind) and all(i.horses or i.has("and", "article") for i in behind)
    return listed and all_mean(items[:at], "very", "a little", "article", "polite", "is")
