"""What is a horse's, and not the horse: "Maple's halter", "Chance's new saddle fitter", "Tully's old stall"."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import dropwhile, takewhile

from bot.words.lookup.items import NOTHING, OF_HORSES, Item, places, predicate, some_mean
from bot.words.thoughts.clauses import soft

PEOPLE = ("i", "kin", "visitor", "animal", "a horse")
LED = ("a", "al")  # Spanish, before whom one leads: "he soltado al prado a Moro"
PLACES = ("place stall", "place field")
OWN = frozenset(("own",))
ADVERB = "ly"  # "Pip actually is in the barn"
LONGEST = 4  # words of "new saddle fitter"


def something_of_hers(items: Sequence[Item], at: int) -> bool:
    """As in "Maple's halter", "Maple stall", "mapels halter": what is told is told of the thing, not of the horse."""
    after = items[at + 1 : at + 3 + LONGEST]
    behind = owns(items, at)
    if behind:
        after = after[behind - 1 :]
        told = bool(after) and (predicate(after[0]) or after[0].has("is", "was"))
        if after and not told and (not after[0].means or after[0].has("i", "mass", "animal")) and not soft(after[0]):
            return True
        if described(after):
            return True
    thing = after[0] if after else None
    return (
        thing is not None
        and " " not in thing.text
        and thing.has(*PLACES, "work")
        and not thing.has("inwards", "outwards", "in")
    )


def described(after: Sequence[Item]) -> bool:
    """As in "(Chance's) new saddle fitter is ill", "old stall": a noun behind what describes it."""
    run = list(takewhile(_of_a_thing, after[:LONGEST]))
    nouns = [i for i in run if not _describes(i)]
    if len(nouns) == len(run) or not nouns:
        return False
    behind = dropwhile(_says_where, after[len(run) : len(run) + LONGEST])
    verb = next(behind, NOTHING)
    several = verb.text in ("are", "were")  # "Otto's old knees are shaking": parts of the horse
    return some_mean(nouns, *PEOPLE, *PLACES) or (verb.has("is", "was", "has") and not several)


def _says_where(item: Item) -> bool:
    return not (item.means or item.horses or item.mark) or item.has("hour", "link", *PLACES)


def _describes(item: Item) -> bool:
    return item.has("any adjective", "nearly", "work", "first")


def _of_a_thing(item: Item) -> bool:
    if item.mark or item.horses or item.piece or item.person or predicate(item):
        return False
    return not item.means or _describes(item) or item.has(*PEOPLE, *PLACES)


def beside(items: Sequence[Item], at: int) -> bool:
    """As in "next to Tully", "a la izquierda de Moro": the horse at this place only tells where another one is."""
    before = at - 1
    while before > 0 and items[before].has("of", "article", "toward") and not items[before].has("beside"):
        before -= 1
    if items[before].text.endswith(" like") and some_mean(
        items[at + 1 : at + 2], "is", "has", "was", "not", *OF_HORSES
    ):
        return False  # "looks like Pip is cold"
    of_her = [i.text for i in items[at + 1 : at + 2]] == ["'s"] and some_mean(items[at + 2 : at + 3], "body")
    return before >= 0 and items[before].has("beside") and not of_her  # "rubbed behind Pip's elbow"


def end_of_hers(items: Sequence[Item], at: int) -> int:
    """Behind the last word of "Tully's old stall", "Chance's trainer"; behind the name where no such thing follows."""
    behind = owns(items, at)
    first = at + behind if behind else len(items)
    told = len(list(takewhile(_of_a_thing, items[first : first + LONGEST])))
    of_it = behind > 1 and first < len(items) and items[first].has("is", "was")  # "the field behind Oscar's is wet"
    return first + told if told or of_it else at + 1


def owns(items: Sequence[Item], at: int) -> int:
    """How far behind the name what is the horse's begins: 2 past its "'s", 1 where an apostrophe was lost, else 0."""
    if at + 1 < len(items) and items[at + 1].text == "'s":
        return 2
    return 1 if not items[at].exact and items[at].text.endswith("s") else 0


def only_her_thing(items: Sequence[Item]) -> bool:
    """As in "Tansy oil is in the tack room", "Pip's bucket is on the rail": where a thing is, no horse."""
    first = next((k for k, i in enumerate(items) if i.horses or not i.has("article", "polite", "and", "but")), None)
    if first is None or not items[first].horses:
        return False
    noun = first + (owns(items, first) or 1)
    if noun + 2 >= len(items) or any(i.horses for i in items[noun:]):
        return False
    thing, verb, where = items[noun : noun + 3]
    named = not (thing.means or thing.mark or thing.person) and thing.known and not thing.text.endswith(ADVERB)
    return named and verb.has("is") and where.has("in", "on", "under", "beside", "drying", *PLACES)


def in_hers(items: Sequence[Item]) -> Sequence[Item]:
    """The items with "hers" in "(past Gus's stall,) Mabel was shivering in hers" as the stall it stands for."""
    found = list(items)
    for at in places(items, OWN):
        before = next((i for i in reversed(items[:at]) if not i.has("article")), NOTHING)
        ends = at + 1 >= len(items) or items[at + 1].mark or items[at + 1].has("and", "but", "time")
        told = next((i for i in reversed(items[:at]) if i.piece is not None or i.has(*PLACES)), NOTHING)
        if ends and before.has("in") and told.has(*PLACES) and not told.has("in", "inwards", "outwards"):
            found[at] = replace(items[at], means=told.means.intersection(PLACES))
    return found


def owns_the_stall(items: Sequence[Item], at: int) -> bool:
    """As in "Perle est dans le box de Filou": whose stall it is, not who stands in it, nor who was led there."""
    led = at > 2 and items[at - 1].raw.lower() in LED and some_mean(items[: at - 2], "turned out", "brought in")
    return at > 1 and not led and items[at - 1].has("of") and items[at - 2].has("place stall", "place field")


def about_body(before: Sequence[Item]) -> bool:
    """As in "Las orejas de Canela": a part of the horse, not something of its own."""
    words = [i for i in before if not soft(i) or i.has("body", "place stall", "place field", "work")]
    return not words or all(i.has("body") or predicate(i) or i.has("said") for i in words)
