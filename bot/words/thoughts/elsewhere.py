"""Horses told by their kind that are none of the barn's: "ils ont trois poneys", "the ponies next door"."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from itertools import takewhile

from bot.barn import Barn
from bot.words.lookup.items import Item, all_mean, places, predicate, since_mark, some_mean
from bot.words.lookup.tokens import words
from bot.words.thoughts.clauses import soft
from bot.words.thoughts.sentences import ENDS

HERD = frozenset(("all horses", "everyone", "the rest"))
SEVERAL = ("all horses", "ponies")
KINDS = frozenset(("all horses", "ponies", "pony", "donkey", "a horse", "everyone"))
COUNTS = ("second", "third", "several", "some", "any adjective")
AT = ("a", "at", "in", "en")  # before a place
OF = ("of", "toward")
OF_SUCH = ("du ", "d' ", "de ", "del ")  # opens a saying of a place
PLACED = ("at somebody's", "elsewhere", "in", "hour", "toward")  # what opens a thought that only says where
REACH = 16  # words of a thought
BEHIND = 4  # words in which it is told whose they are
TALE = 24  # words before it in its sentence
OF_A_PLACE = 3  # words of "of the field"
NOBODYS = frozenset(("i", "animal"))  # "they" behind it is no horse either


def without_strange_horses(items: Sequence[Item], barn: Barn, owned: Mapping[str, tuple[str, ...]]) -> list[Item]:
    """The items with the horses of others as nobody's here, and with "saw two ponies" as some: which, nobody says.

    owned: people's names as written plainly → their horses.
    """
    items = _without_herds_of_a_place(items)
    found, theirs = list(items), -REACH
    for at in places(items, KINDS):
        item = items[at]
        if item.horses or item.person:
            continue
        all_of_them = item.has("everyone") and at - theirs < REACH
        if all_of_them and not any(i.text in ENDS for i in items[theirs:at]):
            found[at] = replace(item, means=NOBODYS)  # "ils ont trois poneys, tous malades"
        elif item.has("everyone") and _seen_in_a_tale(items, at):
            found[at] = replace(item, means=NOBODYS)
        elif _of_another_place(items, at, barn) or (not item.has("everyone") and _of_others(items, at, barn, owned)):
            found[at], theirs = replace(item, means=NOBODYS), at
        elif item.has(*SEVERAL) and _only_some(items, at, barn):
            found[at] = replace(item, means=frozenset({"a horse"}))
    return found


def _seen_in_a_tale(items: Sequence[Item], at: int) -> bool:
    """As in "mi cuñada tiene los suyos en una cuadra y dice que están todos sudando": nobody says that they are ours.

    How every horse of ours is, is told in few words, and of no kin.
    """
    if not any(predicate(i) for i in items[at + 1 : at + 1 + BEHIND]):
        return False
    before = list(takewhile(lambda i: i.text not in ENDS, reversed(items[max(0, at - TALE) : at])))
    if any(i.horses for i in before):
        return False  # "Otto was the last, and all were dry": of ours
    return len(before) == TALE or (some_mean(before, "kin") and some_mean(before, "own", "they have"))


def _only_some(items: Sequence[Item], at: int, barn: Barn) -> bool:
    """As in "saw three ponies"; not in "our three", nor in "two ponies coughing", said first, where there are two."""
    begins = _determined(items, at)
    before = since_mark(items, begins, REACH)
    if begins == at or any(i.has("article", "my") and not i.has("of") for i in before[-1:]):
        return False
    species = "pony" if items[at].has("ponies") else ""
    here = sum(1 for horse in barn.horses if not species or horse.species == species)
    known = any(_number(i) == here for i in items[begins:at])
    ours = all_mean(before, "time", "polite", "and", "not") or _we_have(before)
    return not (known and ours)


def _number(item: Item) -> int:
    return 2 if item.has("second") else 3 if item.has("third") else int(item.number or 0)


def _determined(items: Sequence[Item], at: int) -> int:
    """Where "trois jeunes poneys" begins: at how many there are, or what they are like."""
    begins = at
    while begins and (items[begins - 1].has(*COUNTS) or _number(items[begins - 1])):
        begins -= 1
    return begins


def _we_have(before: Sequence[Item]) -> bool:
    """As in "on a", "tenemos", "we've got"."""
    near = before[-3:]
    ours = any(i.has("i", "subject") and not i.has("she") for i in near)
    return ours and not some_mean(near, "kin", "said")


def _of_others(items: Sequence[Item], at: int, barn: Barn, owned: Mapping[str, tuple[str, ...]]) -> bool:
    """As in "ses poneys", "my cousin's ponies", "mes voisins ont un poney", "les chevaux du voisin"."""
    before = since_mark(items, _determined(items, at), REACH)
    if before and before[-1].has("her"):
        return True
    if _they_have(before, items[at]) or (_owner_before(before, barn) and not _keeps(before, items[at], barn, owned)):
        return True
    behind = items[at + 1 : at + 1 + BEHIND]
    whose = [i for i in behind if not i.has("article", "my", *OF)][:1]
    return bool(behind) and behind[0].has("of") and any(i.has("i", "kin") or _stranger(i, barn) for i in whose)


def _owner_before(before: Sequence[Item], barn: Barn) -> bool:
    """As in "Sarah's ponies", "my cousin's ponies", "the neighbours' ponies"."""
    if not before or before[-1].text != "'s":
        return bool(before) and before[-1].has("kin") and before[-1].text.endswith("s")
    return any(i.person or i.has("kin", "elsewhere") or _stranger(i, barn) for i in before[-2:-1])


def _keeps(before: Sequence[Item], item: Item, barn: Barn, owned: Mapping[str, tuple[str, ...]]) -> bool:
    """As in "Ruth's ponies" of Ruth who has one here."""
    hers = [name for i in before[-2:] if i.person for name in owned.get(i.text, ())]
    return any(h.name in hers and (h.species == "pony" or not item.has("ponies")) for h in barn.horses)


def _they_have(before: Sequence[Item], item: Item) -> bool:
    """As in "ma cousine a trois poneys", "tienen dos ponis"; not "on a deux poneys", "Max a deux poneys avec lui"."""
    verb = next((k for k in range(len(before) - 1, -1, -1) if not before[k].has("article", "of", *COUNTS)), -1)
    some = item.has("a horse", *SEVERAL) and not item.has("pony")
    if verb < 0 or not some or not before[verb].has("they have"):
        return False
    who = before[verb - 1] if verb else None
    return who is None or who.has("she", "kin") or not (who.horses or who.has("subject", "i"))


def _of_another_place(items: Sequence[Item], at: int, barn: Barn) -> bool:
    """As in "chez ma cousine le poney …", "at Sarah's the horses …", "les chevaux d'à côté", "horses at Hartley"."""
    before = _leading(items, at)
    behind = list(takewhile(lambda i: not i.mark, items[at + 1 : at + 1 + BEHIND]))
    if some_mean(before, "elsewhere") or _elsewhere_behind(behind):
        return True
    told = (
        behind[:2] if items[at].has("everyone") else [i for i in behind if i.known or i.capital]
    )  # no slip of a stall
    return any(_at_somebodys(said, k, barn) for said in (before, told) for k in range(len(said)))


def _leading(items: Sequence[Item], at: int) -> list[Item]:
    """The words of this thought before the place, and of the one before it where that only says where."""
    before = since_mark(items, at, REACH)
    pause = at - len(before) - 1
    where = since_mark(items, pause, REACH) if pause > 0 and items[pause].text in (",", ":") else []
    only = bool(where) and where[0].has(*PLACED) and not any(i.horses or predicate(i) for i in where)
    there = only or _told_of_them(where)
    return [*where, *before] if there and all(map(soft, before)) else before


def _told_of_them(where: Sequence[Item]) -> bool:
    """As in "(they've) strangles over (at Doyle's, horses coughing)": what others have, said of no horse here."""
    return some_mean(where, "they have", "there is") and not any(i.horses for i in where)


def _elsewhere_behind(behind: Sequence[Item]) -> bool:
    """As in "les chevaux d'à côté", "de l'écurie d'en face"; a field that lies opposite is the barn's own."""
    at = next((k for k, i in enumerate(behind) if i.has("elsewhere")), -1)
    of_one = any(i.horses for i in behind[at + 1 : at + 3])  # "la yegua de al lado de Moro"
    return at >= 0 and not of_one and all_mean(behind[:at], "of", "article", "place stall")


def _at_somebodys(said: Sequence[Item], at: int, barn: Barn) -> bool:
    """Whether a place begins here that is not the barn: "chez elle", "at my sister's", "à Huy", "(club) de Spa"."""
    rest = [i for i in said[at + 1 : at + 4] if not i.has("article", "my")]
    if not rest:
        return False
    if said[at].has("at somebody's"):
        return rest[0].has("she") or rest[0].person or some_mean(rest, "kin") or _stranger(rest[0], barn)
    if said[at].text in AT:
        return rest[0].has("kin") or _stranger(rest[0], barn)
    of_it = said[at].has("of") and at > 0 and (not said[at - 1].means or said[at - 1].has("place stall", "work"))
    return of_it and _stranger(rest[0], barn)


def _stranger(item: Item, barn: Barn) -> bool:
    """A name that nobody and nothing of the barn has: "Gembloux", "Martine"."""
    heard = item.means or item.horses or item.pieces or item.person or item.mark or item.number is not None
    return not heard and (item.capital or not item.known) and item.text not in words(barn.barn)


def _without_herds_of_a_place(items: Sequence[Item]) -> list[Item]:
    """The items with "all the horses of the field", and "all" behind that, as some horses: which, nobody says."""
    found = list(items)
    some = False
    for at in places(items, HERD):
        of_it = items[at].has("all horses") and _of_a_place(items[at + 1 : at + 1 + OF_A_PLACE])
        some = some or (of_it and not some_mean(items[max(0, at - 2) : at], "brought in"))  # in from there
        if some:
            found[at] = replace(items[at], means=(items[at].means - HERD) | {"a horse"})
    return found


def _of_a_place(behind: Sequence[Item]) -> bool:
    """As in "de l'écurie", "du haut", "de devant", "de la rangée"."""
    where = list(takewhile(lambda i: i.has("of", "article"), behind))
    place = behind[len(where)] if len(where) < len(behind) else None
    if place is None or not (where and where[0].has("of")):
        return place is not None and place.has("link") and place.text.startswith(OF_SUCH)
    return place.has("place stall", "place field", "link") or not (place.means or place.horses or place.person)
