"""People who bear a horse's name: "farrier Bill", "Bill from the feed store", "Bill says Rusty is cold"."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import dropwhile, takewhile

from bot.words.lookup.items import NOTHING, Item, meanings_of, named_near, predicate, some_mean
from bot.words.named.behind_name import behind_brackets
from bot.words.thoughts.no_report import WITH
from bot.words.thoughts.sentences import ENDS

ASIDE = 6  # words of "(the new farrier here)"
LED_BY = ("article", "my", "any adjective", "polite", "and", "but", "time")  # "our new farrier Bill"
DETERMINED = ("article", "my")
SMALL = ("article", "link", "relative", "toward", "what", "not", "very")  # "told me that the … Rusty"
HANDS = ("brought", "brought in", "turned out", "worked", "clipped", "felt", "took", "swapped")
DRESSES = ("put on", "took off", "took")
GOES_ON = ("is", "was", "too", "stays", "done", "bare", "put on", "took off", *HANDS)
LEAD_TO = ("toward", "of", "on", "worked")
YOU = ("you", "u", "your", "tu", "t'", "te", "ta", "toi", "vos", "usted")
CLITICS = ("lo", "la", "le", "los", "las", "les", "se", "l'", "lui", "leur", "y")
OF_PEOPLE = frozenset(
    ("title", "calling", "kin", "animal", "shop", "people do", "tells", "said", "felt")
)  # told behind a name
TELLING = OF_PEOPLE | {"told by", "to whom"}  # without one of these near, a name is nobody else's
DONE_BY_THEM = frozenset(("done", "had", "has", *HANDS, *DRESSES))
NEAR = 6  # words of "put the big blue one on Rusty"


def without_namesakes(items: Sequence[Item], language: str) -> list[Item]:
    """The items with such a name as the person it is; whether the same name behind it is the horse, is asked."""
    people = {at for at in named_near(items, TELLING, before=NEAR + NEAR, behind=NEAR + NEAR) if _somebody(items, at)}
    people |= {at for at in named_near(items, DONE_BY_THEM, behind=NEAR + NEAR) if _handles(items, at, language)}
    people |= {at for at, item in enumerate(items) if item.horses and item.person and _addressed(items, at)}
    found = list(items)
    met: set[str] = set()
    for at in [at for at, item in enumerate(items) if item.horses] if people else ():
        if at in people:
            found[at] = replace(items[at], means=frozenset(), horses=(), pieces=(), person=True)
            met.add(items[at].text)
        elif items[at].text in met:
            found[at] = replace(items[at], sure=False)
    return found


def _somebody(items: Sequence[Item], at: int) -> bool:
    behind = items[at + 1 : at + 1 + NEAR + NEAR]
    if _called(items, at) or _told_by(items, at) or _is_told(items, at, behind):
        return True
    if meanings_of(behind).isdisjoint(OF_PEOPLE):
        return False
    told = _told_to_be(behind) or _from_a_shop(behind) or _does_what_people_do(behind)
    told = told or _does_later(items, at, behind)
    return told or _tells_of_another(items, at, behind)


def _called(items: Sequence[Item], at: int) -> bool:
    """As in "farrier Bill", "my dog Bill", where it begins; "called the vet Bill is sick" is of the horse."""
    at -= at > 1 and items[at - 1].text == "." and items[at - 2].has("title")  # "Mrs. Bill"
    if not at or not items[at - 1].has("title", "calling", "animal"):
        return False
    first = at - 1
    while first and items[first - 1].has(*LED_BY):
        first -= 1
    opens = not first or items[first - 1].mark
    determined = " " in items[at - 1].text or some_mean(items[first : at - 1], *DETERMINED)
    return opens and (determined or items[at - 1].has("title"))


def _told_to_be(behind: Sequence[Item]) -> bool:
    """As in "Bill the farrier", "Bill, our new farrier, …", "Bill (farrier)"; not "Bill, the vet's favourite"."""
    opening = behind[0].text if behind and behind[0].mark else ""
    if opening not in ("", ",", "("):
        return False
    rest = list(behind[1:] if opening else behind)
    if rest and rest[0].has("is") and _is_one(rest[1:3]):
        return True  # "Bill is the farrier", "Milo c'est le chien"
    title = list(dropwhile(lambda i: i.person or i.text == "'s" or i.has(*DETERMINED, "any adjective"), rest))
    if not title or not title[0].has("title", "calling", "kin", "animal") or not (opening or _determined(rest)):
        return False
    after = next((k for k, i in enumerate(title[:ASIDE]) if i.text == ")"), 0) if opening == "(" else 1
    closes = title[after] if 0 <= after < len(title) else NOTHING
    if opening:
        return closes.text == (")" if opening == "(" else ",") and after > 0 and not _owns(title[1:])
    return not _owns(title[1:])


def _is_one(said: Sequence[Item]) -> bool:
    named = [i for i in said if i.has("title", "animal")][:1]
    return bool(named) and (" " in named[0].text or said[0].has("article"))


def _determined(rest: Sequence[Item]) -> bool:
    return bool(rest) and (rest[0].person or rest[0].has(*DETERMINED) or " " in rest[0].text)


def _owns(behind: Sequence[Item]) -> bool:
    """As in "(Bill, my sister) 's pony": what is told of is hers."""
    return len(behind) > 1 and behind[0].text == "'s" and not (predicate(behind[1]) or behind[1].has("done"))


def _addressed(items: Sequence[Item], at: int) -> bool:
    """As in "Jasper you forgot your coat", "marius t'as oublié ta veste": of somebody called as a horse is."""
    return any(i.text in YOU for i in items[at + 1 : at + 2])


def _does_later(items: Sequence[Item], at: int, behind: Sequence[Item]) -> bool:
    """As in "Mateo tiene fiebre y no viene a currar": of somebody called so, or of "el herrero", what people do."""
    trade = at > 0 and items[at - 1].has("article") and items[at].known and items[at].raw.islower()
    if not (items[at].person or trade):
        return False
    told = list(takewhile(lambda i: i.text not in ENDS and not i.horses, behind))
    return any(i.has("people do") and " " in i.text for i in told)


def _from_a_shop(behind: Sequence[Item]) -> bool:
    """As in "Bill from the feed store": where no horse is from."""
    where = list(dropwhile(lambda i: i.has("link") and not i.has("of", "hour"), behind))
    if not where or not where[0].has("of", "hour", "in"):
        return False
    shop = next((k for k, i in enumerate(where[:4]) if i.has("shop")), 0)
    return bool(shop) and all(i.has("article", "any adjective") or not i.means for i in where[1:shop])


def _does_what_people_do(behind: Sequence[Item]) -> bool:
    """As in "Bill texted", "Bill is out sick", "Bill called, …"; not "Bill called for Rusty all night"."""
    said = list(dropwhile(lambda i: i.has("is", "was") and not i.has("people do"), behind))
    then = said[1] if len(said) > 1 else NOTHING
    ends = then is NOTHING or then.mark or then.has("she", "i", "relative", "time", "but", "part of day")
    ends = ends or (bool(said) and " " in said[0].text and not then.has("everyone", "very", "toward"))
    return bool(said) and said[0].has("people do") and ends


def _tells_of_another(items: Sequence[Item], at: int, behind: Sequence[Item]) -> bool:
    """As in "Bill says Rusty is cold", "Bill (him again) says …", "Bill saw Rusty sweating"."""
    rest = behind_brackets(behind)
    if not rest or not rest[0].has("tells", "said", "felt") or not _opens(items, at):
        return False
    other = next((k for k in range(1, len(rest)) if rest[k].horses or not rest[k].has(*SMALL)), 0)
    if not other or not _another(rest[other], items[at]):
        return False
    if some_mean(rest[other + 1 : other + 2], "tells"):
        return False  # "Bill checked Rusty checked"
    how = next((i for i in rest[other + 1 :] if predicate(i) or not i.has("is", "was", *SMALL)), NOTHING)
    return rest[0].has("tells", "felt") or predicate(how)


def _opens(items: Sequence[Item], at: int) -> bool:
    """Whether the name may be the subject; not in "yendo a por Luna he visto …", "went to get Pip and saw …"."""
    before = items[at - 1] if at else NOTHING
    return before is NOTHING or before.mark or (before.has(*LED_BY) and not before.has("of", "toward", "wears"))


def _another(item: Item, one: Item) -> bool:
    return bool(item.horses) and item.horses != one.horses


def _told_by(items: Sequence[Item], at: int) -> bool:
    """As in "according to Bill, Rusty is cold", "dice Lola que Moro …", "Rusty is cold says Bill"."""
    if not at or not items[at - 1].has("told by", "said"):
        return False
    behind = items[at + 1 : at + 4]
    if not behind:
        return any(_another(i, items[at]) for i in items[: at - 1])
    joins = behind[0].has("relative", "what") or (items[at - 1].has("told by") and behind[0].text == ",")
    rest = [i for i in behind[joins:] if not i.has("article")]
    return (joins or items[at - 1].has("told by")) and bool(rest) and _another(rest[0], items[at])


def _is_told(items: Sequence[Item], at: int, behind: Sequence[Item]) -> bool:
    """As in "told Bill Rusty is cold", "dis à Bill que Rusty transpire"."""
    verb = at - 1
    while verb > 0 and items[verb].has("toward", "article"):
        verb -= 1
    if verb < 0 or not items[verb].has("to whom"):
        return False
    other = next((i for i in behind if i.horses or not (i.has(*SMALL, "of") or i.text in ("know", ","))), NOTHING)
    return _another(other, items[at])


def _handles(items: Sequence[Item], at: int, language: str) -> bool:
    """As in "Bill brought Rusty in", "Bill put the blue on Rusty"; "Bill turned out Rusty brought in" is of both."""
    behind = items[at + 1 : at + 1 + NEAR + NEAR]
    if not behind or (at and items[at - 1].has(*LEAD_TO) and not items[at - 1].has("article")):
        return False  # "put the heavy on June brought Fennel in"
    verb, rest = behind[0], behind[1:]
    if verb.has("is", "time", "done"):
        said = list(dropwhile(lambda i: i.has("is", "time") and not i.has("done"), behind))
        if said and said[0].has("done") and any(i.text.endswith(WITH) for i in said[:2]):
            whom = said[1:] if " " in said[0].text else said[2:]  # "Bill is done with Rusty"
            return _leads(items[at], NOTHING, whom)
    if verb.has("sets on") or not verb.has("had", "has", *HANDS, *DRESSES) or not _theirs(verb, language):
        return False  # "(rentré) Filou j'ai sorti Lune", "(metí a) Moro saqué a Lola"
    if verb.has("had", "has"):  # "Bill had Rusty in the lesson"
        return _leads(items[at], verb, rest) and some_mean(rest[:NEAR], "work")
    if verb.has(*HANDS) and _leads(items[at], verb, rest):
        return True
    return verb.has(*DRESSES) and _dresses(items[at], verb, rest)


def _theirs(verb: Item, language: str) -> bool:
    """Whether a verb is of somebody told of: the speaker's begins another thought."""
    word = next((word for word in verb.text.split() if word not in CLITICS), "")
    if language == "fr":
        return word in ("a", "ont")
    return language == "en" or word in ("ha", "han") or word.endswith(("o", "on"))


def _leads(one: Item, verb: Item, rest: Sequence[Item]) -> bool:
    first = next((k for k, i in enumerate(rest) if i.horses or not i.has("toward", "article")), len(rest))
    if verb.text.endswith(("ridden", *WITH)):
        return False  # "Bill ridden Rusty turned out", "Bill hacked with Rusty"
    if first == len(rest) or not _another(rest[first], one):
        return False
    then = rest[first + 1] if first + 1 < len(rest) else NOTHING
    there = verb.has("brought") and then.has("turned out", "brought in")  # "led Rusty out to the field"
    return there or not (then.has(*GOES_ON) or predicate(then))


def _dresses(one: Item, verb: Item, rest: Sequence[Item]) -> bool:
    """The piece first, then whom it is put on or taken off; what horses pull off each other is no such thing."""
    if not rest or rest[0].has("in"):
        return False
    if rest[0].horses:  # "put Rusty's medium on"; what comes off may have been pulled off
        return verb.has("put on") and _another(rest[0], one) and [i.text for i in rest[1:2]] == ["'s"]
    other = next((k for k, i in enumerate(rest[:NEAR]) if i.mark or i.horses), len(rest))
    return 0 < other < len(rest) and _another(rest[other], one) and rest[other - 1].has("on", "off", "of", "toward")
