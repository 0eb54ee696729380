"""Things, and what is told of them: "le seau à Perle est gelé" of the bucket, "mes bottes …, elles sont trempées"."""

from collections.abc import Sequence
from itertools import dropwhile

from bot.words.heard.genders import GENDERS
from bot.words.lookup.gender import shown_gender
from bot.words.lookup.items import WETNESS, Item, names_nothing, of_rugs, predicate, some_mean
from bot.words.lookup.spoken_french import VOWELS
from bot.words.named.weatherlike import clothing
from bot.words.thoughts.around import OF_HORSE
from bot.words.thoughts.hers import about_body

OF_THINGS = (*WETNESS, "of things too", "everyday cold", "everyday hot", "everyday warm")
VERBS = ("is", "was", "had", "said", "put on", "took off", "brought", "subject", "not")
ENGLISH = ("my", "our", "his", "her", "their", "the")
SEVERAL = ("sont", "etaient", "estan", "estaban", "are", "were")
ALIVE = ("he", "she", "him", "her")  # English says "it" of things
FRENCH_TO = ("a",)  # à, of whose it is and of to whom
PLURAL = ("les", "mes", "ses", "nos", "leurs", "los", "las", "mis", "sus", "ils", "elles", "they", "ellos", "ellas")
NEAR = 4  # words


def only_whose(items: Sequence[Item], at: int) -> bool:
    """Whether the horse at this place only tells whose a thing or a place is: "le box de Lune est inondé"."""
    if at > 1 and items[at - 1].has("and") and items[at - 2].horses:
        return only_whose(items, at - 2)  # "le box de Perle et Lune"
    before = items[at - 1] if at else None
    if before is not None and before.text in OF_HORSE and at > 1:
        return items[at - 2].has("article") or not about_body(items[: at - 1])  # "el de Canela" is a thing
    to = at - 2 if at > 1 and items[at - 1].has("article") else at - 1
    if to < 0:
        return False
    if items[to].has("at somebody's"):
        return any(i.piece is not None for i in items[:to]) or _there(items, at)  # "la 250 est chez Lune, …"
    behind = dropwhile(lambda i: i.horses or i.has("and"), items[at + 1 :])
    return items[to].text in FRENCH_TO and _a_thing_of(items[:to], list(behind))


def thing_since(before: str, items: Sequence[Item]) -> str:
    """The thing spoken of last: in these words, or before them where they speak of no horse or piece either."""
    told = _thing_told(items)
    return before if told is None else told


def _thing_told(items: Sequence[Item]) -> str | None:
    """The words that tell it, "mes bottes", "le seau"; "" where it is a horse or a piece; None where nothing is."""
    of_somebody = some_mean(items, "thing", "my")
    for at in range(len(items) - 1, -1, -1):
        item = items[at]
        if of_somebody and item.has("thing"):
            return item.text
        mine = of_somebody and at > 0 and items[at - 1].has("my") and item.piece is None
        if mine and (clothing(item) or _things(item)):
            return f"{items[at - 1].text} {item.text}"  # "mon manteau", of somebody who has no horse
        if item.piece is None and of_rugs(item.means) and at and items[at - 1].has("article"):
            return item.text  # "(se ha volado) la lona del pajar", which is no garment of ours
        if item.piece is not None or (item.horses and not only_whose(items, at)):
            return ""
        where = some_mean(items[max(0, at - 2) : at], "place stall", "place field")  # "mon manteau dans le box de Lune"
        if item.horses and not (where or items[at - 1].has("at somebody's")):
            return _noun(items[:at])
    first = next((k for k, i in enumerate(items) if not i.has("polite", "and", "but", "time") or i.has("article")), 0)
    told = items[first : first + 3]
    subject = len(told) > 2 and told[0].has("article", "her") and not (told[1].means or told[1].person)
    if _somebodys(items[first : first + 5]):
        return _noun(told)  # "la toalla de Marta (no, esa chorrea)"
    return _noun(told) if subject and told[2].has("is", "was", "had", "has") else None  # "la brouette est …"


def _things(item: Item) -> bool:
    """As in "(my) scones", "(mes) biscottes": several of something that no table knows."""
    return not (item.means or item.horses or item.person) and item.text.endswith("s")


def _somebodys(said: Sequence[Item]) -> bool:
    """As in "la toalla de Marta", "la de mi hermana": a thing, told by who has it, that is no horse."""
    of = next((k for k, i in enumerate(said[1:3], 1) if i.has("of") and not i.has("article")), 0)
    thing = of and said[0].has("article") and not any(i.means or i.horses or i.piece for i in said[1:of])
    return bool(thing) and any(_a_person(i) for i in said[of + 1 : of + 3])


def _a_person(item: Item) -> bool:
    called = not (item.means or item.horses or item.piece) and item.raw[:1].isupper()
    return item.person or called or item.has("kin")


def _noun(before: Sequence[Item]) -> str:
    """As in "le seau (de Lune)": the article and what stands behind it; "" where there is none."""
    first = next((k for k, i in enumerate(before) if i.has("article", "her") or i.text.startswith("l'")), len(before))
    return " ".join(i.text for i in before[first : first + 2])


def thing_ahead(items: Sequence[Item], at: int) -> bool:
    """Whether this word stands before a thing that is no piece of clothing: "broke the jug", "se rompió la jarra"."""
    after = items[at + 1 : at + 4]
    lost = items[at].has("state missing") and bool(after)
    if lost and ((after[0].known and _nothing_heard(after[0])) or after[0].has("my")):
        return True  # "falta sal en los comederos", "I lost my list"
    if len(after) > 1 and after[0].text == "all the":
        return _nothing_heard(after[1])  # "washed all the girths"
    if len(after) < 2 or not after[0].has("article") or after[0].has("of", "all") or after[0].piece is not None:
        return False
    if after[1].has("strap"):  # "se rompió la correa del tractor"
        return len(after) > 2 and after[2].has("of") and at + 4 < len(items) and _nothing_heard(items[at + 4])
    return _nothing_heard(after[1])


def _nothing_heard(item: Item) -> bool:
    nowhere = item.means <= {"place field", "place stall", "work"}  # "se ha roto la manguera"
    return nowhere and names_nothing(item)


def may_be_its(before: str, items: Sequence[Item], at: int) -> bool:
    """Whether how something is, without a name, may be told of the thing spoken of last: "elles sont trempées"."""
    said = thing_since(before, items[:at]) if items[at].has(*OF_THINGS) or items[at].kinds("state") else ""
    if not said:
        return False
    pronoun = next(
        (i.text.partition(" ")[0] for i in reversed(items[:at]) if i.has("she", "it") and not i.has("article")), ""
    )
    verb = next((i.text for i in items[:at] if i.has("is", "was")), "")
    many = pronoun in PLURAL or (not pronoun and verb in SEVERAL)
    if pronoun in ALIVE or ((pronoun or verb) and many != _plural(said)):
        return False
    shown = GENDERS.get(pronoun, "") or shown_gender(items[at])
    return not shown or _gender(said) in ("", shown)


def _plural(said: str) -> bool:
    first, _, noun = said.partition(" ")
    return first in PLURAL or (first in ENGLISH and noun.endswith("s"))


def _gender(said: str) -> str:
    """The gender its article shows; "mon" stands before "écharpe" too."""
    first, _, noun = said.partition(" ")
    return "" if first == "mon" and noun[:1] in VOWELS else GENDERS.get(first, "")


def _there(items: Sequence[Item], at: int) -> bool:
    """As in "chez Titan c'est gelé": of the place; not "chez Titan, il est trempé", "de la toux chez Titan"."""
    if any(i.has("she") and i.has("subject") and i.text not in PLURAL for i in items[at + 1 : at + 1 + NEAR]):
        return False
    how = next((i for i in (*items[at + 1 :], *items[:at]) if predicate(i) and not i.kinds("state")), None)
    return how is None or how.has(*OF_THINGS)


def _a_thing_of(before: Sequence[Item], behind: Sequence[Item]) -> bool:
    """As in "les guêtres à (Titan sont trempées)": a noun with its article, no verb, no part of the body."""
    noun = [i for i in before if not i.has("polite", "and", "but") or i.has("article")]
    if not noun or any(i.mark or i.horses or i.piece or i.has(*VERBS) or predicate(i) for i in noun):
        return False
    determined = noun[0].has("article", "her") or noun[0].text.startswith(("l'", "le ", "la ", "les "))
    bare = len(noun) == 1 and not noun[0].means and not noun[0].raw.endswith(("é", "ée", "er"))
    told = bool(behind) and behind[0].has("is", "was", "had", *OF_THINGS)
    return (determined or bare) and told and not some_mean(noun, "body")
