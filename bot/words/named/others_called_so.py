"""Who or what only bears a horse's name: "mon neveu Titan", "un pull Kenzo", "a mare called Juniper"."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import dropwhile, takewhile

from bot.words.lookup.items import DANGER, Item, named_near, some_mean
from bot.words.named.called import a_relative, an_animal, another, called_so, one_of_the_animals
from bot.words.named.my_things import MY
from bot.words.thoughts.sentences import ENDS

BEARERS = ("kin", "animal")
GOODS = ("thing", "jacket")
WHOSE = ("my", "article", "her")
SOME = ("a", "an", "some", "un", "une", "una")  # of "a horse", which one row has as a whole
WHICH = ("relative", "that of", "one")  # "celle", "la que": which one it is
LIKE = ("any adjective", "first", "colour")  # "ma petite nièce"
FROM = ("de", "from", "in", "at")
OF = ("de", "del", "du", "d'", "des")
REACH = 6  # words
STORY_REACH = 12  # words
NOBODYS = frozenset(("no name",))
# one of these, or right beside the name one of those
TELLING = frozenset(("kin", "animal", "called", "long ago", "story", "elsewhere"))
BESIDE = frozenset(("another", "some", "they have", "compares", "a horse", "her", "stays in", *GOODS))
OF_OTHERS = ("kin", "shop", "visitor", "at somebody's")
THEIRS = ("her", "his", "their", "su", "leur", "sa", "son")
NEAR = 15  # words from who has it to what it is called


def without_others_called_so(items: Sequence[Item], mine: tuple[str, ...]) -> list[Item]:
    """The items, where a name is somebody else's or a make of things, as that. mine: the speaker's own horses."""
    found = list(items)
    near = named_near(items, TELLING, before=NEAR, behind=REACH)
    for at in sorted({*near, *named_near(items, BESIDE, before=1, behind=1)}):
        family = items[at].has("kin") and items[at].horses[0] not in mine and _my(items, at)  # "mon papi", called so
        if family or _bears_it(items, at):
            found[at] = replace(items[at], means=NOBODYS, horses=(), pieces=(), person=True)
    return found


def _my(items: Sequence[Item], at: int) -> bool:
    return at > 0 and items[at - 1].has("my")


def _bears_it(items: Sequence[Item], at: int) -> bool:
    if _of_elsewhere(items, at) or _in_a_story(items, at) or _the_beast(items, at):
        return True
    if not at:
        return False
    if items[at - 1].has("stays in"):
        return True  # "mon cousin est en vacances à Oslo"
    if any(bears_it(items, at) for bears_it in (called_so, another, an_animal, one_of_the_animals, a_relative)):
        return True
    if _likened(items, at) or _of_somebodys(items, at) or _coat_of_theirs(items, at):
        return True
    if some_mean(items[max(0, at - 3) : at], "said"):
        return False  # "dice mi hermana Lola está sudada"
    return _some(items, at) or _kin_or_beast(items, at) or _called(items, at) or _make(items, at)


def _in_a_story(items: Sequence[Item], at: int) -> bool:
    """As in "j'ai relu l'Odyssée, Ulysse est trempé"; whoever shivers or is ill may be the horse all the same."""
    for k in range(at - 1, max(-1, at - STORY_REACH), -1):
        if items[k].text in ENDS:
            return False
        if "story" in items[k].means:
            before = items[max(0, k - REACH // 2) : k]
            told_in = some_mean(before, "reads", "done", "in") and some_mean(before, "article", "my")
            # "al final el pirata tiembla"
            hero = at > 1 and items[at - 1].has("article") and items[at].raw[:1].islower()
            return told_in and (hero or not some_mean(items[at + 1 : at + REACH], *DANGER))
    return False


def _some(items: Sequence[Item], at: int) -> bool:
    """As in "il y avait un Titan aussi", "another Pip": one of that name; but "Gus an Pip" are two."""
    before = items[at - 1]
    one = before.has("some") and not before.has("all", "both", "of", "and")
    one = one or (before.has("they have") and before.text.endswith(" a"))  # "has a"
    return one and not (at > 1 and items[at - 2].horses)


def _likened(items: Sequence[Item], at: int) -> bool:
    """As in "a mare like Pip ought to be bare", "une jument comme Brume": any such, and no Pip."""
    return at > 1 and items[at - 1].has("compares") and items[at - 2].has("a horse") and _one_of_some(items, at - 2)


def _one_of_some(items: Sequence[Item], at: int) -> bool:
    """As in "a mare", which may be one row, or two."""
    return _first(items[at]) in SOME or (at > 0 and items[at - 1].text in SOME)


def _of_somebodys(items: Sequence[Item], at: int) -> bool:
    """As in "the lady at the feed store told me her Clover was ill", "chez ma sœur, leur jument Ondine est malade"."""
    whose = at - 2 if items[at - 1].has("a horse", "animal") else at - 1
    if whose < 1 or items[whose].text not in THEIRS:
        return False
    before = list(takewhile(lambda i: i.text not in ENDS, reversed(items[max(0, whose - STORY_REACH) : whose])))
    return some_mean(before, *OF_OTHERS) and not any(i.horses for i in before)


def _coat_of_theirs(items: Sequence[Item], at: int) -> bool:
    """As in "my cousin's strawberry roan": a horse told by its coat, and no Roan."""
    coat = items[at].has("a horse", "colour") or some_mean(items[at + 1 : at + 2], "a horse")  # "sorrel mare"
    if not coat or items[at].raw[:1].isupper():
        return False
    before = list(takewhile(lambda i: not (i.means or i.mark) or i.has(*LIKE), reversed(items[max(0, at - 3) : at])))
    owner = items[at - len(before) - 2 : at - len(before)]
    return [i.text for i in owner[1:]] == ["'s"] and owner[0].has("kin")


def _kin_or_beast(items: Sequence[Item], at: int) -> bool:
    """As in "my aunt Lola", "notre chien Filou", "the cat Pip"; a mare has sisters too, and no other beast is hers."""
    before = items[at - 1]
    opener = next((i for i in reversed(items[max(0, at - REACH) : at - 1]) if not i.has(*LIKE)), before)
    return (before.has("kin") and (_ours(opener) or _ours(before))) or (before.has("animal") and opener.has(*WHOSE))


def _the_beast(items: Sequence[Item], at: int) -> bool:
    """As in "Molly, the spaniel, is …", "Molly next door - that's the dog - …": what else is called so."""
    aside = items[at + 1 : at + 1 + REACH]
    if not some_mean(aside, "animal"):
        return False
    behind = list(dropwhile(lambda i: (i.mark and i.text not in ENDS) or i.has("it", "is", "elsewhere", *WHOSE), aside))
    told = behind[:1] if aside[:1] and (aside[0].mark or aside[0].has("elsewhere")) else []
    apart = not behind[1:] or behind[1].mark  # not "Otto, the spaniel ran under him, is shivering"
    return apart and some_mean(told, "animal") and some_mean(aside[: len(aside) - len(behind)], *WHOSE)


def _ours(item: Item) -> bool:
    """As in "my", "mon beau" of "mon beau père"."""
    return item.has("my") or _first(item) in MY


def _first(item: Item) -> str:
    return item.text.partition(" ")[0]


def _of_elsewhere(items: Sequence[Item], at: int) -> bool:
    """As in "Perle, celle de mon ancien club", "la Luna de mi prima", "le Filou de chez les voisins"."""
    if some_mean(items[at + 1 : at + 2], "elsewhere") and _first(items[at + 1]) in OF:
        return True  # "Lucero del vecino", "Filou du centre équestre"
    there = list(dropwhile(lambda i: i.has("of", "article", "in", "hour"), items[at + 1 : at + 4]))
    if at and items[at - 1].has("article") and some_mean(there[:1], "elsewhere"):
        return True  # "la Luna de la otra cuadra"
    if not some_mean(items[at + 1 : at + 1 + REACH], "kin", "long ago"):
        return False
    behind = list(dropwhile(lambda i: i.text == "," or i.has(*WHICH), items[at + 1 : at + 1 + REACH]))
    if behind and behind[0].has("long ago") and _first(behind[0]) in FROM:
        return True
    whose = [i for i in behind if not i.has("of", "at somebody's")]
    of_them = len(whose) < len(behind) and behind[0].has("of")
    kin = next((i for i in whose if i.has("kin") or not i.has("my", "article")), None)  # "les voisins" is one item
    theirs = of_them and kin is not None and kin.has("kin")
    return theirs and ((at > 0 and items[at - 1].has("article")) or some_mean(behind, "at somebody's"))


def _called(items: Sequence[Item], at: int) -> bool:
    """As in "a horse called Titan", "mon premier poney s'appelait Filou"."""
    before = items[at - 1]
    if not before.has("called"):
        return False
    kind = items[at - 2] if at > 1 else before
    some = _first(kind) in SOME or (at > 2 and items[at - 3].has("some"))
    return before.has("was") or (kind.has("a horse", *BEARERS) and some)


def _make(items: Sequence[Item], at: int) -> bool:
    """As in "un pull Kenzo noir", "mes gants Titan", "my Titan boots", "our June bug": what it is is said too."""
    before, opener = items[at - 1], items[at - 2] if at > 1 else items[at - 1]
    if before.has(*GOODS):
        return opener is not before and opener.has(*WHOSE)
    ours = before.has("my") or (before.has("young", *LIKE) and opener.has("my"))
    return ours and some_mean(items[at + 1 : at + 2], "animal", *GOODS)
