"""What somebody else's horse, dog or daughter is called: "una perra que se llama Luna", "el perro de Juan, Rayo, …"."""

from collections.abc import Sequence
from itertools import takewhile

from bot.words.lookup.items import NOTHING, Item, all_mean, since_mark, some_mean
from bot.words.named.weatherlike import clothing

OTHERS = frozenset(("kin", "animal", "elsewhere", "they have", "at somebody's"))
ENDS = (".", "!", "?", ";", "\n")
REACH = 14  # words from who has it to what it is called
WHOSE = 4  # words of "de la vecina"
SMALL = ("and", "link", "is", "she", "too", "relative", "not", "article", "it", "but")
SOME = ("a", "un", "una", "une")
INWARDS = ("in", "inwards", "outwards", "over", "at")  # "my daughter called Pip in"


def another(items: Sequence[Item], at: int) -> bool:
    """As in "hay otra Luna", "the other Pip", where the barn has one so called; no rug: "another Pip sheet"."""
    behind = items[at + 1] if at + 1 < len(items) else NOTHING
    return at > 0 and items[at - 1].has("another") and items[at].horse and not clothing(behind)


def called_so(items: Sequence[Item], at: int) -> bool:
    """As in "mi vecina tiene una perra que se llama Luna", "my niece's pony is also called Pip"."""
    called = at - 1 if at and items[at - 1].has("called") else -1
    if called < 1:
        return False
    behind = items[at + 1] if at + 1 < len(items) else NOTHING
    if items[called - 1].has("kin") and behind.has(*INWARDS):
        return False  # "my daughter called Pip in"
    before = _before(items, called)
    others = some_mean(before, *OTHERS) or (bool(before) and (_as_well(before, behind) or _somebody(before)))
    return others or some_mean(takewhile(lambda i: not i.mark, items[at + 1 : at + REACH]), "elsewhere")


def _as_well(before: Sequence[Item], behind: Item) -> bool:
    """As in "is also called Pip", "se llama Luna también"."""
    return before[-1].has("too") or behind.has("too")


def _somebody(before: Sequence[Item]) -> bool:
    """As in "la nueva alumna se llama", "a girl who is called", "my teacher is called"."""
    last = [i for i in before if not i.has("is", "relative") or i.has("i")][-2:]
    mine = len(last) > 1 and last[0].has("my") and not last[1].means
    return mine or any(i.has("i", "visitor") and not i.has("subject", "my") for i in last)


def _before(items: Sequence[Item], at: int) -> list[Item]:
    """The words of the thought that end here; those before a pause too, where only small words stand behind it."""
    said = since_mark(items, at, REACH)
    pause = at - len(said) - 1
    if pause > 0 and items[pause].text not in ENDS and all_mean(said, *SMALL):
        return [*takewhile(lambda i: not i.mark, reversed(items[max(0, pause - REACH) : pause])), *said]
    return said


def an_animal(items: Sequence[Item], at: int) -> bool:
    """As in "my dog Pip", "la perra de Juan, Luna, está mala"; "el perro, Luna y Rayo" are three."""
    if at and items[at - 1].has("animal"):
        return True
    if at < 2 or not items[at - 1].mark or items[at - 1].text in ENDS:
        return False
    behind = items[at + 1] if at + 1 < len(items) else NOTHING
    if not (behind.mark or behind.has("relative")):
        return False
    words = list(takewhile(lambda i: not i.mark, reversed(items[max(0, at - 1 - REACH) : at - 1])))
    animal = next((k for k, i in enumerate(words) if i.has("animal") or _a_horse_of_others(words, k)), -1)
    whose = words[: max(animal, 0)][::-1]
    return animal >= 0 and len(whose) <= WHOSE and (not whose or whose[0].has("of", "elsewhere"))


def one_of_the_animals(items: Sequence[Item], at: int) -> bool:
    """As in "the dogs, Pip and Rex, are soaked", "los gatos Moro y Nube": a list behind several of them."""
    before = list(takewhile(_in_a_list, reversed(items[max(0, at - REACH) : at])))
    first = at - len(before)
    animals = items[first - 1] if first else NOTHING
    if not (animals.has("animal") and animals.text.endswith("s")):
        return False
    behind = items[at + 1 : at + REACH]
    closes = next((i for i in behind if not (i.horses or i.has("and"))), NOTHING)
    return bool(items[first].horses) or closes.mark


def _in_a_list(item: Item) -> bool:
    return bool(item.horses) or item.has("and") or item.text == ","


def _a_horse_of_others(words: Sequence[Item], at: int) -> bool:
    """As in "mi sobrina se ha comprado un caballo", read backwards: somebody else's, and some one."""
    one = words[at].has("a horse") and some_mean(words[at + 1 : at + 2], "some")
    some = one or (words[at].has("a horse") and words[at].text.split()[0] in SOME)
    return some and some_mean(words[at + 1 :], "kin")


def a_relative(items: Sequence[Item], at: int) -> bool:
    """As in "my gran, Lola, is ill"; not "avisé a mi hermana, Luna, …"."""
    behind = items[at + 1] if at + 1 < len(items) else NOTHING
    place = at - 2 if at > 1 and items[at - 1].text == "," and behind.mark else -1
    if place < 0 or not items[place].has("kin") or items[place].horses:
        return False
    ours = items[place].text.startswith("mi ") or (place > 0 and items[place - 1].has("my"))
    return ours and not some_mean(items[max(0, place - 2) : place], "said", "toward")
