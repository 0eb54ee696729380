"""Which words that look like names are names here: a horse called Sunday is not meant every Sunday."""

from collections.abc import Collection, Sequence
from dataclasses import replace
from itertools import dropwhile

from bot.words.lookup.items import Item, predicate, some_mean
from bot.words.mending.meant_instead import names_second_thought
from bot.words.named.articled import called_with_article
from bot.words.named.behind_name import behind_brackets, past_neighbour, past_where, strained
from bot.words.named.fuel import fuel
from bot.words.named.name_lists import one_of_list, opening_lines
from bot.words.named.told_apart import only_a_horse, taken_off, told_apart, wordlike
from bot.words.named.weatherlike import (
    SKY,
    clothing,
    may_be_weather,
    of_a_time,
    told_of_its_body,
    weather_of_a_time,
    weather_talk,
)
from bot.words.thoughts.no_report import WITH
from bot.words.thoughts.sentences import REACH

# a name stands right before one of these, or right after one of those
AFTER_NAME = (
    "is", "was", "wears", "bare", "done", "clipped", "worked", "brought in", "turned out", "stays",
    "rug again", "do not rug", "has", "not", "stopped", "in", "inwards", "outwards", "too", "off", "on",
    "place stall", "place field", "no", "broken", "took", "took off", "put on", "swapped", "brought", "plan",
    "had", "ask state", "ask wearing", "question", "felt", "took part", "strap", "style none",
)  # fmt: skip
NEAR = 8  # words
HIM = ("la", "lo", "le")  # opens "la he tocado"
LAST_OR_NEXT = ("dernier", "passe", "prochain", "pasado", "proximo")
BEFORE_NAME = (
    "swapped",
    "on", "off", "put on", "took", "took off", "worked", "clipped", "brought", "keep", "except", "said",
    "ask state", "do not rug", "brought in", "turned out", "without", "bare", "rug again", "i mean", "ask why",
    "done",
)  # fmt: skip


def settle(items: Sequence[Item]) -> list[Item]:
    """The same items; those that only look like a name lose it, those it must ask about stay unsure."""
    items = [replace(item, horses=()) if _does_so(items, at) else item for at, item in enumerate(items)]
    called = [at for at, item in enumerate(items) if item.horses]
    named = [False] * len(items)
    listed = opening_lines(items)
    for at in called:
        named[at] = not items[at].exact or at in listed or _named(items, at)
    for step in (called, called[::-1]):  # in a list of names, one is evidence for the next
        for at in step:
            named[at] = named[at] or one_of_list(items, named, at)
    before = {items[at].text for at in called if named[at]}
    for at in called:
        named[at] = named[at] or (bool(before) and _another_denied(items, at, again=before))
    settled = list(items)
    for at in called:
        settled[at] = _settled(items, at, named=named[at])
    return settled


def _does_so(items: Sequence[Item], at: int) -> bool:
    """As in "mora tirita de frío", where one is called Tirita: what the one before it does."""
    item = items[at]
    return bool(item.horses and item.kinds("sign")) and at > 0 and items[at - 1].horse and not item.capital


def _another_denied(items: Sequence[Item], at: int, *, again: Collection[str]) -> bool:
    """As in "Pip and duke done. sorry not duke", "it's Pip, not duke": a name behind another, no weather, no day."""
    denied = at > 0 and items[at - 1].has("not", "no")
    ends = at + 1 >= len(items) or items[at + 1].mark
    known = items[at].text in again or (ends and items[at - 1].has("not"))
    return denied and known and not (items[at].has(*SKY) or told_apart(items, at) or _of_a_stranger(items, at))


def _settled(items: Sequence[Item], at: int, *, named: bool) -> Item:
    item = items[at]
    if not item.exact:
        if item.known and not only_a_horse(items, at):
            return replace(item, horses=())
        told_so = item.kinds("kind") or item.has("animal")  # "poncho tiene frío", of Pancho
        return replace(item, means=frozenset()) if told_so else item
    of_a_day = named and item.has("weekday") and wordlike(item) and weather_talk(items, at)
    if of_a_day and items[at + 1].text == "was":
        named = False  # "Sunday was hot": a day that is over
    if named:
        sure = item.sure and not of_a_day
        return item if sure == item.sure and not item.means else replace(item, means=frozenset(), sure=sure)
    if not item.sure and only_a_horse(items, at):
        return replace(item, means=frozenset(), exact=False)  # "red is shivering", of Big Red and Little Red
    return replace(item, means=item.means | {"no name"}, horses=())


def _of_a_stranger(items: Sequence[Item], at: int) -> bool:
    """As in "le pépé de Vidal", "ember of the fire": somebody's, or of a thing, that is not of the barn."""
    if at + 2 >= len(items) or not items[at + 1].has("of") or items[at + 1].has("article"):
        return False
    whose = items[at + 2]
    if items[at + 1].text == "of" and whose.has("article") and wordlike(items[at]) and not items[at].raw[:1].isupper():
        return True
    return whose.raw[:1].isupper() and not (whose.horses or whose.means or whose.person)


def _named(items: Sequence[Item], at: int) -> bool:
    """Evidence that a word of the language is a name here."""
    item = items[at]
    if _said_alone(items, at):
        return True
    if (item.has(*SKY) and _only_a_time(items, at)) or (not item.capital and fuel(items, at)):
        return False
    if at and items[at - 1].means:
        if items[at - 1].has("some") and not items[at - 1].has("toward", "all", "of", "her", "my"):
            return False  # "rode a Bill once"
        if items[at - 1].text.startswith("hay un") and not item.capital:
            return False  # "hay una nube muy fría"
        if called_with_article(items, at) or _picked_out(items, at):
            return True
    if _spoken_of_as_named(items, at):
        return True
    said_to_be = at > 0 and items[at - 1].has("is")
    # "non pardon, c'est bandit", "no wait that's misty"; not "saturday, no wait, sunday"
    return (said_to_be or not item.has(*SKY)) and names_second_thought(items, at)


def _only_a_time(items: Sequence[Item], at: int) -> bool:
    """As in "Sunday lunch sorted", "el trueno de anoche": a day, or the weather of one."""
    if items[at].has("weekday") and at + 1 < len(items) and items[at + 1].has("part of day"):
        return True
    return not items[at].capital and (of_a_time(items, at) or weather_of_a_time(items, at))


def _spoken_of_as_named(items: Sequence[Item], at: int) -> bool:
    """Whether the words beside one speak of it as of a name."""
    item = items[at]
    if told_apart(items, at):
        return False
    if _of_a_stranger(items, at):
        return False
    if not wordlike(item):
        return True
    before = items[at - 1] if at else None
    if item.capital and not item.has("weekday"):
        return True
    if (
        item.has("weekday")
        and before is not None
        and not (at + 1 < len(items) and items[at + 1].text == "'s")
        and (before.has("on", "hour", "in", "time") or before.text in ("this", "every"))
        and not _owns_the_piece(items, at)
    ):
        return False
    if not any(not i.mark for k, i in enumerate(items) if k != at):
        return True
    starts = before is None or before.text in ("\n", ",", ".", ";") or before.has("and")
    if not item.has("weekday") and starts and at + 1 < len(items) and items[at + 1].text == ":":
        return True
    lower = item.raw[:1].islower()
    follows = _follows(items, at) and not (lower and may_be_weather(item, items[at + 1 : at + REACH]))
    return follows or _precedes(items, at)


def _owns_the_piece(items: Sequence[Item], at: int) -> bool:
    """As in "la couv de box de dimanche est sèche": a day has no rug; "la couv de dimanche dernier" is of a day."""
    owned = at > 1 and items[at - 1].text == "de" and clothing(items[at - 2])
    return owned and not any(i.text in LAST_OR_NEXT for i in items[at + 1 : at + 2])


def _said_alone(items: Sequence[Item], at: int) -> bool:
    """As in "Quartz. Trop chaud dessous.", "Sorbet, il peut être couvert": what opens a message and stands alone."""
    if at or len(items) < 3 or not items[0].raw[:1].isupper():
        return False
    spoken_of = not items[0].means and some_mean(items[2:REACH], "she", "keep", "bare")
    return items[1].text in (".", "\n") or (items[1].text == "," and spoken_of)


def _picked_out(items: Sequence[Item], at: int) -> bool:
    """As in "el que trae frío es lucero", "no, that's misty": who it is, behind what was said of him."""
    if at < 2 or not items[at - 1].has("is") or items[at].has("weekday", "mass"):
        return False
    if at + 1 < len(items) and items[at + 1].has("relative") and any(map(predicate, items[at + 1 : at + 4])):
        return True  # "no es gitana la que suda"
    that = items[at - 2].has("it") and items[at - 2].has("relative")
    if that and some_mean(items[max(0, at - 4) : at], "no"):
        return True
    opens = next((k for k in range(at - 2, max(-1, at - REACH), -1) if items[k].has("relative")), -1)
    return opens >= 0 and any(predicate(i) for i in items[opens:at])


def _follows(items: Sequence[Item], at: int) -> bool:
    """Whether what is said after the word is said of a horse."""
    item, rest = items[at], items[at + 1 : at + REACH]
    if rest and (rest[0].mark or rest[0].has("beside")):
        rest = past_neighbour(behind_brackets(rest))
    if len(rest) > 1 and rest[0].has("but") and " " in rest[0].text:
        rest = rest[1:]  # "trueno en cambio suda"
    opens = at > 0 and (items[at - 1].has("but") or items[at - 1].mark)
    if opens and len(rest) == 1 and rest[0].has("yes"):
        return True  # "(Trasgo no está sudado,) pero luna sí"
    after = next((i for i in rest if not _passing(i)), None)
    if after is None:
        return False
    if predicate(after) or after.has(*AFTER_NAME) or clothing(after) or (after.kinds("style") and "clip" in after.text):
        return True
    if after.has("colour") and some_mean(rest[1:2], "on", "put on"):
        return True  # "gringo azul puesta"
    if after.number is not None and some_mean(rest[1:3], "put on", "took off", "on", "off"):
        return True  # "Myrtille 100 g mise"
    if after.has("ask today") and after.text.startswith(("il ", "elle ")):
        return True  # "lune elle met quoi cette nuit"
    if after.has("after") and " " in after.text and some_mean(rest[1:3], "work"):
        return True  # "moro viene de la pista sudado", "perle revient de balade"
    if not (after.means or after.horses or after.mark) and _in_hers(rest[rest.index(after) + 1 :]):
        return True  # "pip rolled in his sheet"
    if after.has("said") and after.text.partition(" ")[0] in HIM:
        return True  # "a canela la he tocado y tiene frío"
    if after.has("said") and not item.has(*SKY) and _told_of_it(rest[rest.index(after) + 1 :]):
        return True  # "domino j'ai vérifié il transpire pas"
    if after.has("keep") and some_mean(rest[1:4], "bare"):
        return True  # "Orage doit rester nu"
    if rest[1:2] and rest[1].text == "," and not (rest[0].means or item.has(*SKY)) and strained(rest[2:]):
        return True  # "titan boude, il a froid"
    felt = rest[1:] if rest[0].has("her") else rest  # "brume ses oreilles sont gelées"
    if len(felt) > 1 and felt[0].has("body") and any(predicate(i) for i in felt[1:3]):
        return True  # "misty ears cold"
    behind = list(dropwhile(lambda i: i.has("very") and not predicate(i), past_where(rest)[:4]))
    if _told_of_it(behind) or told_of_its_body(rest):  # "dune carrément elle tremble"
        return True
    if len(rest) > 1 and rest[0].has("toward") and rest[1].has("place stall", "place field"):
        return True  # "bruma al prado"
    told = not item.means and item.raw[:1].isupper()  # "Banjo fully clipped"; not "Patch the fence"
    return told and bool(after.means) and not after.has("article", "her", "weather", "work", "it", "visitor")


def _in_hers(behind: Sequence[Item]) -> bool:
    """As in "(rolled) in his sheet", "(escaped) with her rug": something that is worn, and hers."""
    leads = len(behind) > 2 and behind[0].has("in", "under", "wears", "on")
    return leads and behind[1].has("her") and clothing(behind[2])


def _precedes(items: Sequence[Item], at: int) -> bool:
    """Whether what is said before the word is said before a horse: "on Sunday", "metí a Luna", "why … for Rain"."""
    before = items[at - 1] if at else None
    if before is None:
        return False
    asked_why = before.has("toward") and some_mean(items[max(0, at - REACH) : at], "ask why")
    near = items[max(0, at - NEAR) : at - 1]
    if before.has("ask today") and " " in before.text:
        return True  # "elle met quoi Duchesse ce soir"
    if at > 1 and before.text in WITH and items[at - 2].has("worked"):
        return True  # "did a lesson with maple"
    if before.has("had") and any(i.kinds("style") for i in items[at + 1 : at + 4]):
        return True  # "gave Tucker a bib clip"
    if before.has("ask wearing", "bare") and some_mean(items[max(0, at - REACH) : at], "ask why"):
        return True  # "por qué tan abrigado trueno"
    toward = before.has("toward") and (asked_why or not items[at].has("weekday"))
    if toward and any(i.kinds("style") for i in items[at + 1 : at + 4]):
        return True  # "le hicieron a lucero el esquilado completo"
    if toward and any(
        clothing(i)
        or i.has("ask why", "ask today", "ask wearing", "put on", "took off", "felt", "clipped", "worked", "turned out")
        for i in near
    ):
        return True
    if before.has("ask wearing", "wears") and some_mean(near, "what"):
        return True  # "qué lleva galleta"
    if before.has("of") and not before.has("article") and at > 1:
        before = items[at - 2]
        strapped = before.has("that rug of") or (before.has("of") and before.has("article"))
        strapped = strapped and some_mean(items[max(0, at - REACH) : at], "strap")
        if (
            strapped
            or (before.number is not None and at > 2 and items[at - 3].has("article", "her"))
            or clothing(before)
        ):
            return not items[at].has("mass")  # "la 300 de quartz", "la couverte d'étoile"
    if (before.has("too") and (before.has("is") or " " in before.text)) or taken_off(items, at):
        return True  # "so is dolly", "same with pep", "sin forro pancho"
    if at > 1 and before.has("is") and items[at - 2].has("neither"):
        return True  # "nor is moose"
    if before.has("neither", "not") and some_mean(items[at + 1 : at + 2], "not", "neither"):
        return any(i.horses for i in items[at + 2 : at + 4])  # "neither storm nor Pip is cold"
    if at > 1 and before.text == ":" and items[at - 2].kinds("sign"):
        return True  # "temblando: luna, capi"
    clipped = bool(before.kinds("style")) and "clip" in before.text
    return clipped or before.has(*BEFORE_NAME) or bool(before.kinds("sign"))


def _told_of_it(rest: Sequence[Item]) -> bool:
    """As in "whisky sa bleue est mouillée", "neige elle frissonne", "sol con la capa puesta"."""
    if len(rest) < 2:
        return False
    while len(rest) > 2 and rest[0].has("only", "time") and rest[1].has("her"):
        rest = rest[1:]  # "caramel juste son imper"
    a_piece = clothing(rest[1]) or rest[1].number is not None
    without = rest[0].has("without") and not rest[0].has("off") and a_piece  # "neige a plus sa sous couv"
    if without:
        return True
    hers = rest[0].has("her", "wears") and not rest[0].horses and any(clothing(i) or i.has("colour") for i in rest[1:])
    if rest[0].has("she") and rest[1].has("subject") and len(rest) > 2:
        rest = rest[1:]  # "filou lui il va bien"
    if not (rest[0].has("she") and rest[0].has("subject")):
        return hers
    if predicate(rest[1]):
        return True
    said = any(predicate(i) or i.has("wears") for i in rest[2:4])
    stands = rest[1].has("is", "was") and said  # "orage elle est trempée", "tempête elle est avec sa verte"
    asked = rest[1].has("ask wearing", "ask state")  # "lune elle met quoi"
    return bool(rest[1].kinds("sign")) or rest[1].has("stays", "wears", "bare") or stands or asked


def _passing(item: Item) -> bool:
    """A word that may stand between a name and what is said of it."""
    if item.mark:
        return item.text in ",:-–—…="
    between = item.has("very", "a little", "time", "link", "habit", "yesterday", "please") and not item.has(*AFTER_NAME)
    return between and not predicate(item)
