"""Which words that look like names are names here: a horse called Sunday is not meant every Sunday."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.items import Item, predicate
from bot.words.weatherlike import clothing, may_be_weather, sure_sign, weather_talk, well

# a name stands right before one of these, or right after one of those
AFTER_NAME = (
    "is", "was", "wears", "bare", "done", "clipped", "worked", "brought in", "turned out", "stays",
    "rug again", "do not rug", "has", "not", "stopped", "in", "inwards", "outwards", "too", "off", "on",
    "place stall", "place field", "no", "broken", "took", "took off", "put on", "swapped", "brought", "plan",
    "had", "ask state", "ask wearing", "question",
)  # fmt: skip
BEFORE_NAME = (
    "swapped",
    "on", "off", "put on", "took", "took off", "worked", "clipped", "brought", "keep", "except", "said",
    "ask state", "do not rug", "brought in", "turned out", "without", "bare", "rug again", "i mean", "ask why",
    "done",
)  # fmt: skip

NOTHING = Item("", "")
REACH = 40  # words: no sentence is read further
LIST_GAP = 4  # commas and "and"s that may stand between two names of a list


def settle(items: Sequence[Item]) -> list[Item]:
    """The same items; those that only look like a name lose it, those it must ask about stay unsure."""
    named = [_named(items, at) if item.horses and item.exact else bool(item.horses) for at, item in enumerate(items)]
    for step in (range(len(items)), range(len(items) - 1, -1, -1)):  # in a list of names, one is evidence for the next
        for at in step:
            if not named[at] and items[at].horses and items[at].exact and not _told_apart(items, at):
                named[at] = any(named[k] or _two_names(items, at, k) for k in _neighbours(items, at)) or _in_row(
                    items, named, at
                )
    return [_settled(items, at, named=named[at]) for at in range(len(items))]


def _neighbours(items: Sequence[Item], at: int) -> list[int]:
    """The places of names joined to this one by commas and "and"."""
    found = []
    for step in (1, -1):
        k = at + step
        while 0 <= k < len(items) and abs(k - at) < LIST_GAP and (items[k].has("and", "or") or items[k].text in ",&+/"):
            k += step
        if (
            0 <= k < len(items)
            and abs(k - at) > 1
            and items[k].horses
            and (items[k].exact or items[k].sure or _only_a_horse(items, k))
        ):
            found.append(k)
    return found


def _two_names(items: Sequence[Item], one: int, other: int) -> bool:
    """As in "(biscuit and penny)": two of the barn's names in a list, neither of them weather or a day."""
    pair = (items[one], items[other])
    return not any(
        _told_apart(items, at) or item.has("weather", "weekday", "mass", "bare weather", "sky") or _describes(item)
        for at, item in zip((one, other), pair, strict=True)
    )


def _in_row(items: Sequence[Item], named: Sequence[bool], at: int) -> bool:
    """As in "Gus ok misty cold star fine": names and what is said of them in turns, with no other word between."""
    first = next((k for k in range(at, max(at - LIST_GAP, 0) - 1, -1) if not items[k].horses), at - LIST_GAP)
    last = next((k for k in range(at, min(at + LIST_GAP, len(items))) if not items[k].horses), at + LIST_GAP)
    if last - first > LIST_GAP:  # four names and no word between
        return any(named[max(first + 1, 0) : last])
    if _in_turn(items, named, at) or _begins_list(items, named, at):
        return True
    if at + 1 >= len(items) or not _told(items[at + 1]):
        return False
    before = at > 1 and _told(items[at - 1]) and named[at - 2]
    after = at + 3 < len(items) and named[at + 2] and _told(items[at + 3])
    ends = at + 2 >= len(items) or items[at + 2].mark or bool(items[at + 2].horses)
    return after or (before and ends)


def _begins_list(items: Sequence[Item], named: Sequence[bool], at: int) -> bool:
    """As in "hi all, dolly biscuit and bo are done": right before a name that is one of a list."""
    opens = at == 0 or items[at - 1].mark or items[at - 1].has("polite")
    if not opens or at + 3 >= len(items) or items[at].has("weather", "weekday", "mass", "bare weather", "sky"):
        return False
    listed = items[at + 2].has("and") or items[at + 2].text == ","
    return listed and all(named[k] and items[k].horses for k in (at + 1, at + 3))


def _in_turn(items: Sequence[Item], named: Sequence[bool], at: int) -> bool:
    """As in "Dolly and Kitty fine, storm a bit chilly": behind what is said of others, and nothing more said."""
    if not (at > 2 and items[at - 1].text == "," and not items[at].has("mass", "weekday")):
        return False
    rest = items[at + 1 : at + 4]
    how = next((k for k, i in enumerate(rest) if predicate(i)), 0)
    small = how and all(i.has("a little", "very") for i in rest[:how])
    ends = how + 1 >= len(items[at + 1 :]) or (how + 1 < len(rest) and rest[how + 1].mark)
    others = any(named[k] and items[k].horses for k in range(max(0, at - REACH), at - 1)) and any(
        map(_told, items[:at])
    )
    return bool(small) and ends and others


def without_doubtful(items: Sequence[Item]) -> list[Item]:
    """Without "and maybe Ned" behind another name: what follows is told of the other, and of Ned nobody is sure.

    "Otto or Fig" is one item, to be asked about; "no rugs on Otto or Fig" is both.
    """
    kept: list[Item] = []
    at = 0
    while at < len(items):
        either = items[at].has("or") and at + 1 < len(items) and items[at + 1].horse and bool(kept) and kept[-1].horse
        if either and any(i.has("not", "no", "bare", "neither", "nothing", "without") for i in kept[-REACH:]):
            kept.append(replace(items[at], means=frozenset({"and"})))
            at += 1
            continue
        if either:
            kept[-1] = _either(kept[-1], items[at + 1])
            at += 2
            continue
        doubt = items[at].has("and") and [i.has("plan", "guess") and i.known for i in items[at + 1 : at + 2]] == [True]
        if doubt and kept and kept[-1].horses and at + 2 < len(items) and items[at + 2].horse:
            at += 3
            continue
        kept.append(items[at])
        at += 1
    return kept


def _either(one: Item, other: Item) -> Item:
    horses = tuple(dict.fromkeys((*one.horses, *other.horses)))
    return replace(one, raw=f"{one.raw} / {other.raw}", horses=horses, sure=False, exact=False, known=False)


def _told(item: Item) -> bool:
    return predicate(item) or item.has("done", "bare")


def _settled(items: Sequence[Item], at: int, *, named: bool) -> Item:
    item = items[at]
    if not item.horses:
        return item
    if not item.exact:
        return replace(item, horses=()) if item.known and not _only_a_horse(items, at) else item
    if named and _wordlike(item) and weather_talk(items, at) and items[at + 1].text == "was":
        named = False  # "Sunday was hot": a day that is over
    if named:
        return replace(item, means=frozenset(), sure=item.sure and not (_wordlike(item) and weather_talk(items, at)))
    return replace(item, means=item.means | {"no name"}, horses=())


def _wordlike(item: Item) -> bool:
    return (item.known or bool(item.means)) and " " not in item.text


def _told_apart(items: Sequence[Item], at: int) -> bool:
    """An article, or a verb, says that the word is no name: "a star", "it is dusty"."""
    if items[at].capital or items[at].raw[:1].isupper():
        return False
    before = items[at - 1] if at else NOTHING
    sort_of = items[at].has("weather", "weekday", "mass", "bare weather", "sky") or _describes(items[at])
    if before.has("article") and at + 1 < len(items) and clothing(items[at + 1]) and not sort_of:
        return False  # "the penny sheet"
    if _wordlike(items[at]) and (
        (clothing(before) and not _goes_on_of(items, at))
        or (_describes(items[at]) and at + 1 < len(items) and clothing(items[at + 1]))
    ):
        return True  # "la manta negra", "black rug": a colour, not the mare
    if not _wordlike(items[at]):
        return before.has("some") and not before.has("all", "both", "of")  # "la lola" is Lola
    if items[at].has("weather") and before.has("brings weather"):
        return True  # "viene lluvia"
    asked = at > 1 and items[at - 2].has("question")  # "what is star in"
    if before.has("is") and (at > 1 or items[at].has("weather")) and not before.has("has") and not asked:
        return True  # "it is dusty"; but "is Dusty in"
    if predicate(before) and at > 1 and items[at - 2].horses:
        return False  # "Luna bien Sol frío"
    adjectival = before.has("article", "her", "very", "a little") and not before.has("all", "both", "toward")
    if adjectival and (before.has("but") or not sort_of) and _says(items[at + 1 : at + REACH]):
        return False  # "so Dusty is sweaty", "el capitán está tiritando"
    if adjectival and not sort_of and at > 1 and items[at - 2].has("toward"):
        return False  # "a la mora"
    return adjectival or before.text in ("of", "every")


def _of_a_stranger(items: Sequence[Item], at: int) -> bool:
    """As in "le pépé de Vidal": somebody's who is not of the barn."""
    if at + 2 >= len(items) or not items[at + 1].has("of") or items[at + 1].has("article"):
        return False
    whose = items[at + 2]
    return whose.raw[:1].isupper() and not (whose.horses or whose.means or whose.person)


def _goes_on_of(items: Sequence[Item], at: int) -> bool:
    """As in "Pip in his medium star ok": a word that describes nothing, and what is said of it."""
    return not _describes(items[at]) and at + 1 < len(items) and _told(items[at + 1])


def _says(rest: Sequence[Item]) -> bool:
    """Whether a verb follows, and then how something is: what stands before it is no adjective."""
    if len(rest) < 2 or not rest[0].has("is", "was") or rest[0].has("article"):
        return False
    return sure_sign(rest[1:]) or well(rest[1:])


def _named(items: Sequence[Item], at: int) -> bool:
    """Evidence that a word of the language is a name here."""
    item = items[at]
    if item.has("weekday") and at + 1 < len(items) and items[at + 1].has("part of day"):
        return False  # "Sunday lunch sorted"
    if _told_apart(items, at):
        return False
    if _of_a_stranger(items, at):
        return False
    if not _wordlike(item):
        return True
    before = items[at - 1] if at else None
    if item.capital and not item.has("weekday"):
        return True
    if (
        item.has("weekday")
        and before is not None
        and not (at + 1 < len(items) and items[at + 1].text == "'s")
        and (before.has("on", "hour", "in", "time") or before.text in ("this", "every"))
    ):
        return False
    if not any(not i.mark for k, i in enumerate(items) if k != at):
        return True
    starts = before is None or before.text in ("\n", ",") or before.has("and")
    if not item.has("weekday") and starts and at + 1 < len(items) and items[at + 1].text == ":":
        return True
    lower = item.raw[:1].islower()
    follows = _follows(items, at) and not (lower and may_be_weather(item, items[at + 1 : at + REACH]))
    return follows or _precedes(items, at)


def _follows(items: Sequence[Item], at: int) -> bool:
    """Whether what is said after the word is said of a horse."""
    item, rest = items[at], _behind_brackets(items[at + 1 : at + REACH])
    after = next((i for i in rest if not _passing(i)), None)
    if after is None:
        return False
    if predicate(after) or after.has(*AFTER_NAME) or clothing(after) or (after.kinds("style") and "clip" in after.text):
        return True
    if len(rest) > 1 and rest[0].has("body") and any(predicate(i) for i in rest[1:3]):
        return True  # "misty ears cold"
    if _told_of_it(rest[:3]):
        return True
    if len(rest) > 1 and rest[0].has("toward") and rest[1].has("place stall", "place field"):
        return True  # "bruma al prado"
    told = not item.means and item.raw[:1].isupper()  # "Banjo fully clipped"; not "Patch the fence"
    return told and bool(after.means) and not after.has("article", "her", "weather", "work", "it", "visitor")


def _behind_brackets(rest: Sequence[Item]) -> Sequence[Item]:
    """What is said behind "(the one in the far box)"."""
    closed = next((k for k, i in enumerate(rest) if i.text == ")"), 0)
    return rest[closed + 1 :] if closed and rest[0].text == "(" else rest


def _precedes(items: Sequence[Item], at: int) -> bool:
    """Whether what is said before the word is said before a horse: "on Sunday", "metí a Luna", "why … for Rain"."""
    before = items[at - 1] if at else None
    if before is None:
        return False
    asked_why = before.has("toward") and any(i.has("ask why") for i in items[max(0, at - REACH) : at])
    near = items[max(0, at - 5) : at - 1]
    toward = before.has("toward") and (asked_why or not items[at].has("weekday"))
    if toward and any(clothing(i) or i.has("ask why", "ask today", "ask wearing", "put on", "took off") for i in near):
        return True
    if before.has("ask wearing", "wears") and any(i.has("what") for i in near):
        return True  # "qué lleva galleta"
    if before.has("of") and not before.has("article") and at > 1:
        before = items[at - 2]
        if (before.number is not None and at > 2 and items[at - 3].has("article", "her")) or clothing(before):
            return not items[at].has("mass")  # "la 300 de quartz", "la couverte d'étoile"
    clipped = bool(before.kinds("style")) and "clip" in before.text
    return clipped or before.has(*BEFORE_NAME) or bool(before.kinds("sign"))


def _told_of_it(rest: Sequence[Item]) -> bool:
    """As in "whisky sa bleue est mouillée", "neige elle frissonne", "sol con la capa puesta"."""
    if len(rest) < 2:
        return False
    hers = rest[0].has("her", "wears") and not rest[0].horses and any(clothing(i) or i.has("colour") for i in rest[1:])
    return hers or (rest[0].has("she") and rest[0].has("subject") and bool(rest[1].kinds("sign")))


def _passing(item: Item) -> bool:
    """A word that may stand between a name and what is said of it."""
    if item.mark:
        return item.text in ",:-–—…"
    between = item.has("very", "a little", "time", "link") and not item.has(*AFTER_NAME)
    return between and not predicate(item)


def _describes(item: Item) -> bool:
    return item.has("colour", "any adjective") or bool(item.kinds("weight"))


def _nameable(item: Item) -> bool:
    """Nothing but a describing word, so that it may be short for a longer name: "Grey"."""
    return all(m in ("colour", "any adjective", "i") or m.startswith("weight") for m in item.means)


def _only_a_horse(items: Sequence[Item], at: int) -> bool:
    """Where only a horse can stand: the first word of what is said, and then a sign that only animals show."""
    before = items[at - 1] if at else None
    opens = at == 1 or (at > 1 and items[at - 2].mark)
    if before is not None and before.has("article") and not before.has("some") and opens:
        before = None  # "la candela está tiritando"
    if before is not None and not (before.mark or before.has("said", "polite", "but") or before.has("and")):
        return False
    rest = list(items[at + 1 :])
    while rest and (rest[0].has("is", "link", "very", "a little", "was", "time", "not") and not predicate(rest[0])):
        rest = rest[1:]
    return bool(rest) and bool(rest[0].kinds("sign")) and _nameable(items[at])
