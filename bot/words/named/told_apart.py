"""Words that are no names where they stand: an article or a verb before them says so ("a star", "it is dusty")."""

from collections.abc import Sequence
from functools import cache
from itertools import takewhile

from bot.words.lookup.gender import of_another_sex
from bot.words.lookup.items import NOTHING, WETNESS, Item, names_nothing, predicate, some_mean
from bot.words.lookup.lexicon import everyday
from bot.words.named.food import food
from bot.words.named.weatherlike import SKY, clothing, said_first, sure_sign, well
from bot.words.thoughts.sentences import REACH

MORE = ("mas", "tan")
ONE = ("a", "an", "one")
LIKE = 3  # words that tell what it is like
SMALL = ("little", "lil", "wee")  # of a horse that one is fond of
FELT = 5  # words of "cold along her back"
STRAPPED = 5  # words of "strap broken on the heavy of …"


def told_apart(items: Sequence[Item], at: int) -> bool:
    """An article, or a verb, says that the word is no name: "a star", "it is dusty"."""
    if items[at].capital or items[at].raw[:1].isupper():
        return False
    before = items[at - 1] if at else NOTHING
    sort_of = items[at].has(*SKY) or describes(items[at])
    if before.has("article") and at + 1 < len(items) and clothing(items[at + 1]) and not sort_of:
        return False  # "the penny sheet"
    if wordlike(items[at]) and (
        (clothing(before) and not _goes_on_of(items, at) and not taken_off(items, at))
        or (describes(items[at]) and at + 1 < len(items) and _may_describe(items[at], items[at + 1]))
    ):
        return True  # "la manta negra", "black rug": a colour, not the mare
    if before.text == "que" and items[at].has(*SKY) and any(i.mark or i.text in MORE for i in items[at + 1 : at + 2]):
        return True  # "qué brisa más fría", "¡qué trueno!"
    # not "ya caramel qui est …"
    there_is = before.has("brings weather") and not some_mean(items[at + 1 : at + 2], "relative")
    if there_is and (items[at].has("weather") or not _alive(items[at + 1 : at + REACH])):
        return True  # "viene lluvia"
    if items[at + 1 : at + 2] and items[at + 1].text == "of" and wordlike(items[at]):
        return True  # "chance of rain"
    if (wordlike(items[at]) or everyday(items[at].text)) and _of_such(items[at + 1 : at + 3]):
        return True
    if food(items, at) or (before.text == "the" and _this_thing_here(items, at)):
        return True
    if _some_such(items, at):
        return True
    if before.text == "nothing but" and at > 1 and items[at - 2].has("is"):
        return True  # "the lawn is nothing but clover"
    if not wordlike(items[at]):
        return before.has("some") and not before.has("all", "both", "of")  # "la lola" is Lola
    if before.text in ("en", "in") and at > 1 and not (predicate(items[at - 2]) or _says(items[at + 1 : at + REACH])):
        return True  # "ma doudoune en plume"
    asked = at > 1 and items[at - 2].has("question", "ask why", "neither")  # "what is star in", "nor is star"
    asked = asked or (at > 2 and items[at - 3].has("question") and clothing(items[at - 2]))  # "which rug is star in"
    led = before.has("brought") and some_mean(items[at + 1 : at + REACH], "inwards", "outwards")  # "turned moose out"
    verb = before.has("is") and not (led or before.has("has", "said", "too"))
    if verb and (at > 1 or items[at].has("weather")) and not asked:
        return True  # "it is dusty"; but "is Dusty in"
    if predicate(before) and at > 1 and items[at - 2].horses:
        return False  # "Luna bien Sol frío"
    if _attribute(items, at):
        return True  # "wet moss is slippery"
    adjectival = before.has("article", "her", "very", "a little") and not before.has("all", "both", "toward")
    adjectival = adjectival and not _fondly(items, at)
    if _this_thing(items, at):
        return True
    if adjectival and (before.has("but") or not sort_of) and _says(items[at + 1 : at + REACH]):
        return False  # "so Dusty is sweaty", "el capitán está tiritando"
    if adjectival and not sort_of and at > 1 and items[at - 2].has("toward"):
        return False  # "a la mora"
    if before.text == "of" and at > 1 and clothing(items[at - 2]):
        return False  # "the plaid of ginger"
    both = before.text == "of" and at > 1 and items[at - 2].has("both")  # "both of Maple's rugs"
    return adjectival or (before.text in ("of", "every") and not both)


def _some_such(items: Sequence[Item], at: int) -> bool:
    """As in "one poor little finch", "an actual wren": any such, told by what it is like."""
    like = list(takewhile(_tells_what_like, reversed(items[max(0, at - LIKE) : at])))
    opener = items[at - len(like) - 1] if like and at > len(like) else NOTHING
    return opener.text in ONE and not opener.has("a little")


def _tells_what_like(item: Item) -> bool:
    plain = item.known and not item.means and names_nothing(item)
    return plain or (item.has("any adjective", "young") and not predicate(item))


def _of_such(behind: Sequence[Item]) -> bool:
    """As in "(juniper) bush is frozen solid": what kind of thing it is."""
    if len(behind) < 2 or not behind[1].has("is", "was"):
        return False
    noun = behind[0]
    plain = names_nothing(noun) and not (noun.means or noun.pieces)
    return plain and noun.known and noun.raw.islower() and noun.text.isalpha()


def _fondly(items: Sequence[Item], at: int) -> bool:
    """As in "little Maple", "poor little Otter"; not "a little otter", "the little patch"."""
    opener = items[at - 2] if at > 1 else NOTHING
    return items[at - 1].text in SMALL and not opener.has("article", "some", "her", "no", "weather", "is")


def _may_describe(item: Item, behind: Item) -> bool:
    """As in "black rug": a colour before clothes; "tinto manta" does not agree, and is the horse Tinto."""
    return clothing(behind) and not of_another_sex(behind.text, item.text)


def _attribute(items: Sequence[Item], at: int) -> bool:
    """As in "wet moss is", "the cold ember was", "damp patch on the wall": how it is before it, the verb behind."""
    behind = items[at + 1] if at + 1 < len(items) else NOTHING
    opener = items[at - 2] if at > 1 else NOTHING
    led = opener.has("article", "and") and not opener.has("is")  # Spanish "esta" may be either
    opens = at == 1 or opener.mark or led
    return opens and items[at - 1].has(*WETNESS, "everyday cold", "everyday hot") and behind.has("is", "on", "of")


def taken_off(items: Sequence[Item], at: int) -> bool:
    """As in "enlevé chemise étoile", "sin forro pancho", "sangle cassée sur couverture gamin": what, and whose."""
    ends = at + 1 >= len(items) or items[at + 1].mark
    moved = at > 1 and items[at - 2].has("put on", "took off", "without") and clothing(items[at - 1])
    broken = at > 2 and clothing(items[at - 1]) and some_mean(items[max(0, at - STRAPPED) : at], "strap")
    return ends and (moved or broken) and not describes(items[at])


def _alive(rest: Sequence[Item]) -> bool:
    """What only an animal does is said next; "il y a du caramel mou" is said of sweets."""
    said = said_first(rest)
    return said is not None and said.has("sign shivering", "sign sweating", "sign cold")


def wordlike(item: Item) -> bool:
    """A name that is a word of the language as well."""
    return (item.known or bool(item.means)) and " " not in item.text


def describes(item: Item) -> bool:
    """A colour, a weight, an adjective: it may be said of a rug."""
    return bool(item.means) and _describing(item.means)


@cache
def _describing(means: frozenset[str]) -> bool:
    return any(m in ("colour", "any adjective") or m.startswith("weight ") for m in means)


def _this_thing(items: Sequence[Item], at: int) -> bool:
    """As in "that patch is frozen solid"; not "I think that Patch is", nor of what only animals do."""
    pointed = items[at - 1].text in ("that", "this") and not (at > 1 and items[at - 2].has("said"))
    said = said_first(items[at + 1 : at + REACH]) if at and pointed else None
    return said is not None and said.has(*WETNESS, "of things too")


def _this_thing_here(items: Sequence[Item], at: int) -> bool:
    """As in "the birch is wet": no horse so called has an article; but "the birch sheet", "the birch one" are its."""
    behind = items[at + 1] if at + 1 < len(items) else NOTHING
    of_hers = clothing(behind) or behind.number is not None or behind.has("one", "spare") or behind.text == "'s"
    return " " not in items[at].text and not of_hers


def _says(rest: Sequence[Item]) -> bool:
    """Whether a verb follows, and then how something is: what stands before it is no adjective."""
    if len(rest) < 2 or not rest[0].has("is", "was") or (rest[0].has("article") and rest[0].text != "esta"):
        return False  # "el capitán este verano"; but "esta" is "está" as thumbs write it
    if rest[1].has("toward") and not rest[1].has("hour", "article"):
        return False  # "la réglisse c'est pour la toux"
    return sure_sign(rest[1:]) or well(rest[1:])


def _goes_on_of(items: Sequence[Item], at: int) -> bool:
    """As in "Pip in his medium star ok", "gorda luna correa rota": a word that describes nothing, and what of it."""
    behind = items[at + 1] if at + 1 < len(items) else NOTHING
    then = items[at + 1 : at + REACH]  # "in his light maple is sweating"
    later = next(
        (i for i in then if not i.has("link", "very", "time")), NOTHING
    )  # "sous-couverture quartz encore humide"
    told = said_how(behind) or predicate(later) or behind.has("strap") or _says(then)
    return not describes(items[at]) and told


def said_how(item: Item) -> bool:
    """What may be said of a horse right behind its name."""
    return predicate(item) or item.has("done", "bare")


def only_a_horse(items: Sequence[Item], at: int) -> bool:
    """Where only a horse can stand: the first word of what is said, and then a sign that only animals show."""
    before = items[at - 1] if at else None
    opens = at == 1 or (at > 1 and items[at - 2].mark)
    somebody = items[at].has("i") and "ñ" not in items[at].raw  # "la gamine a froid": a kid; but "la niña", of Nina
    led = before is not None and before.has("article") and not before.has("some")
    if led and opens and not somebody:
        before = None  # "la candela está tiritando"
    if before is not None and not (before.mark or before.has("said", "polite", "but") or before.has("and")):
        return False
    if before is not None and not before.mark and items[at].kinds("kind"):
        return False  # "Luna con poncho tiene frío"
    rest = list(items[at + 1 :])
    if rest and rest[0].has("she") and rest[0].has("subject"):
        rest = rest[1:]  # "la brune elle a froid"
    while rest and (rest[0].has("is", "link", "very", "a little", "was", "time", "not") and not predicate(rest[0])):
        rest = rest[1:]
    if led and rest and rest[0].has("bare"):
        return False  # "the maple is bare already"
    return bool(rest) and _of_an_animal(rest) and _nameable(items[at], rest[0])


def _of_an_animal(rest: Sequence[Item]) -> bool:
    """As in "(bell) is shivering", "is cold behind the elbow", "is naked": no thing is; but a latch is frozen solid."""
    shown = bool(rest[0].kinds("sign")) and not rest[0].has("of things too")
    return shown or felt_in_a_part(rest) or rest[0].has("bare")


def felt_in_a_part(rest: Sequence[Item]) -> bool:
    """As in "cold along her back": how one is, and where a hand felt it."""
    return bool(rest[0].kinds("everyday")) and some_mean(rest[1:FELT], "body")


def _nameable(item: Item, sign: Item) -> bool:
    """Nothing but a describing word, so that it may be short for a longer name: "Grey"."""
    if sign.has("sign shivering", "sign sweating", "sign rubbed"):
        return not item.has("she", "subject", "it", "article")  # no weather shivers, no place, nothing "wicked"
    felt = sign.has("sign shivering", "sign cold", "sign hot", "sign unwell")  # "poncho tiene frío": no rug does
    plain = ("colour", "any adjective", "i", "kin", "thing", "habit")
    return all(m in plain or m.startswith("weight") or (felt and m.startswith("kind ")) for m in item.means)
