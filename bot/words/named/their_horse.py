"""Horses told by whose they are, or of what kind: "Walt's pony", "my two", "Lu the mare". One of several is asked."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from bot.barn import Barn
from bot.words.lookup.items import Item, places, predicate, some_mean
from bot.words.named.my_own import my_thing
from bot.words.named.weatherlike import clothing
from bot.words.thoughts.clauses import soft

BOTH = 2
ONE = frozenset(("a horse",))
THEIRS = frozenset(("my horse", "my horses", "ponies", "pony", "donkey"))
ALONE = ("mio", "mia", "mien", "mienne")  # a possessive and no noun
KINDS = (*THEIRS, "a horse", "all horses", "the rest", "everyone", "visitor")
BEFORE_THEM = 4  # words of "one of those of", at most, before somebody whose horse it is
OF = ("of", "de", "d'", "del", "du", "a", "al")  # "le cheval à Patrick"


def by_owner_or_kind(items: Sequence[Item], mine: tuple[str, ...], barn: Barn) -> list[Item]:
    """The items with "my horse", "my two" and "the ponies" as the horses they are. mine: the speaker's own."""
    told = list(items)
    theirs = places(items, THEIRS)
    if not theirs:
        return told
    spoken = {item.horses[0] for item in items if item.horses and item.horse and item.horses[0] in mine}
    here = tuple(spoken) if len(spoken) == 1 else mine  # "came to see my boy and Darcy is fine"
    for at in theirs:
        then = items[at + 1] if at + 1 < len(items) else None
        if my_thing(items, at, here):
            told[at] = Item(items[at].text, items[at].raw, frozenset({"i"}))
            continue
        ours = () if _of_something_else(items, at) else here
        meant = _by_species(_own(items[at], ours), barn, then)
        one = meant is not items[at] and some_mean(items[max(0, at - 3) : at], "one", "first")
        told[at] = replace(meant, sure=False) if one else meant  # "one of the ponies"
    return told


def _of_something_else(items: Sequence[Item], at: int) -> bool:
    """As in "who has a pen? mine is dry", "el mío está frío" behind talk of rice: one of what was spoken of before."""
    if not items[at].text.endswith(ALONE):
        return False
    before = [i for i in items[:at] if not (soft(i) or i.has("i"))]
    ours = any((i.horses and not (i.known and i.raw.islower())) or i.person or i.has(*KINDS) for i in before)
    return bool(before) and not (ours or any(map(predicate, before)))


def _own(item: Item, mine: tuple[str, ...]) -> Item:
    """As in "My horse" of somebody who has one; of several it is asked, of none it is anybody's."""
    if item.has("my horses") and mine:
        return replace(item, means=frozenset(), horses=mine, exact=False, known=False)
    if not item.has("my horse"):
        return item
    if not mine:
        return replace(item, means=frozenset({"i"}))
    return replace(item, means=frozenset(), horses=mine, sure=len(mine) == 1, exact=False, known=False)


def _by_species(item: Item, barn: Barn, then: Item | None) -> Item:
    """As in "ponies in, horses out": those that are ponies; every horse where all are, or none is."""
    for species in ("pony", "donkey"):
        if item.has(species) and not item.horses and not (then is not None and (clothing(then) or not then.means)):
            alone = tuple(horse.name for horse in barn.horses if horse.species == species)
            means = frozenset[str]() if alone else item.means
            return replace(item, means=means, horses=alone, sure=len(alone) == 1, exact=False, known=False)
    if not item.has("ponies"):
        return item
    ponies = tuple(horse.name for horse in barn.horses if horse.species == "pony")
    if len(ponies) in (0, len(barn.horses)):
        return replace(item, means=frozenset({"all horses"}) if ponies else item.means)
    return replace(item, means=frozenset(), horses=ponies, exact=False, known=False)


def both_called_so(items: Sequence[Item], parts: Mapping[str, tuple[str, ...]]) -> list[Item]:
    """The items with "both Bens" as the two horses with Ben in their names. parts: a word of a name → whose it is."""
    found = list(items)
    for before in places(items[:-1], frozenset(("both",))):
        at = before + 1
        called = parts.get(items[at].text.removesuffix("s"), ())
        if len(called) == BOTH and items[at].text.endswith("s"):
            found[at] = replace(items[at], means=frozenset(), horses=called, sure=True, exact=False, known=False)
    return found


def with_their_horses(items: Sequence[Item], owned: Mapping[str, tuple[str, ...]]) -> list[Item]:
    """The items with each such saying drawn into one. owned: people's names as written plainly → their horses."""
    people = [at for at, item in enumerate(items) if item.person]
    found: list[Item] = []
    end = 0
    for at in sorted({at for person in people for at in range(max(0, person - BEFORE_THEM), person + 1)}):
        taken = (_said(items, at) or _of_theirs(items, at)) if at >= end else 0
        person = next((i for i in items[at : at + taken] if i.person), None)
        horses = owned.get(person.text, ()) if person is not None else ()
        called = {name for i in items[at : at + taken] for name in i.horses}
        horses = tuple(name for name in horses if name in called) if called else horses
        horses = () if _all_of_theirs(items[at : at + taken]) and len(horses) != BOTH else horses
        if horses:
            said = " ".join(dict.fromkeys(i.raw for i in items[at : at + taken])).replace(" '", "'")
            two = len(horses) == BOTH and (items[at].has("both") or _all_of_theirs(items[at : at + taken]))
            found.extend(items[end:at])
            found.append(
                Item(items[at].text, said, horses=horses, sure=two or len(horses) == 1, exact=False, known=False)
            )
            end = at + taken
    return [*found, *items[end:]]


def _of_theirs(items: Sequence[Item], at: int) -> int:
    """As in "los dos de Gonzalo", "uno de los de Gonzalo", "one of Kev's": how many words; 0 where nobody says so."""
    if not items[at].has("both", "one"):
        return 0
    end = at + 1
    while end < min(at + 4, len(items)) and items[end].has("of"):
        end += 1
    if end == at + 1 or end >= len(items) or not items[end].person:
        return 0
    behind = end + 1 + (end + 1 < len(items) and items[end + 1].text == "'s")
    return 0 if _of_a_thing(items, behind) else behind - at  # "one of Ruth's rugs"


def _of_a_thing(items: Sequence[Item], at: int) -> bool:
    """Whether what follows is clothing, or anything that is not told of horses."""
    return at < len(items) and (clothing(items[at]) or not (soft(items[at]) or predicate(items[at])))


def _all_of_theirs(said: Sequence[Item]) -> bool:
    return bool(said) and said[-1].has("own lot")


def _said(items: Sequence[Item], at: int) -> int:
    """How many words tell of somebody's horse here, as in "Ann's pony", "la Perle d'Ann"; 0 where none do."""
    after = items[at + 1 : at + 4]
    if items[at].person and len(after) > 1 and after[0].text == "'s" and _a_horse(after[1]):
        return 3
    if items[at].person and len(after) > 1 and after[0].text == "'s" and after[1].has("own lot"):
        return 0 if _of_a_thing(items, at + 3) else 3  # "Ann's two are in", of Ann who has two
    if not _a_horse(items[at]) or len(after) < 2 or after[0].text not in OF:
        return 0
    if after[1].person:
        return 3
    return 4 if len(after) > 2 and after[1].has("article") and after[2].person else 0


def _a_horse(item: Item) -> bool:
    return item.has("a horse") or bool(item.horses)


def who_is_the_horse(items: Sequence[Item]) -> Sequence[Item]:
    """The items without "the horse" beside a name, which then is that horse and no word, nor anybody else."""
    found = list(items)
    for at in reversed(places(items, ONE)):
        name = _named_beside(items, at)
        if name is not None:
            found[name] = replace(items[name], means=frozenset(), person=False, known=False)
            del found[at if items[at - 1].has("of") else at - 1 : at + 1]  # "the horse", of "de la yegua" the "yegua"
    return found


def _named_beside(items: Sequence[Item], at: int) -> int | None:
    """Where the name stands, right before "the horse" or behind it."""
    if not at or not items[at - 1].has("article") or items[at].horses:
        return None
    return next((k for k in (at - 2, at + 1) if 0 <= k < len(items) and items[k].horse), None)
