"""Whom a sign is about that was said without a name."""

from collections.abc import Sequence

from bot.events import Clipped
from bot.words.lookup.items import WETNESS, Item, predicate, some_mean
from bot.words.thoughts.around import excepted
from bot.words.thoughts.came_for import of_one_horse
from bot.words.thoughts.clauses import Clause, of_both, soft
from bot.words.told.agreement import disagrees
from bot.words.told.one_to_another import goes_on_of_either
from bot.words.told.pronouns import of_one, the_one
from bot.words.told.telling import Telling, named
from bot.words.told.things import may_be_its

GREETING = 4  # words


def unnamed(clause: Clause, telling: Telling, at: int) -> Sequence[Item]:
    """Whom a sign without a name is about: the horse spoken of last, all of them, one of them, or nobody."""
    if may_be_its(telling.thing, clause.items, at):
        return ()  # "my boots are by the stove, they're soaked"
    horses = _spoken_of(clause, telling, at)
    if telling.others is not None and telling.others[0] is horses:
        return goes_on_of_either(clause, at, horses, telling.others[1], telling.roster.spelled)
    pronoun = next((k for k in range(at - 1, -1, -1) if of_one(clause.items, k)), -1)
    if pronoun < 0 and of_one_horse(clause.items[0]):
        heard = telling.heard.horses if telling.heard is not None and clause.joined == "and" else ()
        if len(heard) > 1 and horses is telling.who and all(i.horse for i in heard):
            return the_one(clause.items[0], heard)  # "(Luna va con Brisa y) está tiritando"
        pronoun = 0  # "(vi a Rayo y a Duque y) está sudando"
    return the_one(clause.items[pronoun], horses) if pronoun >= 0 and horses is telling.who else horses


def _spoken_of(clause: Clause, telling: Telling, at: int) -> Sequence[Item]:
    items = clause.items
    under = items[at + 2].piece if at + 2 < len(items) and items[at + 1].has("under", "in") else None
    if under is not None and under.owners and not any(i.horses for i in items):
        return named(under.owners)  # "rain got in under Jack's blanket"
    if (
        items[at].kinds("everyday")
        and telling.events
        and isinstance(telling.events[-1], Clipped)
        and not clause.has("she")
    ):
        return ()  # "esquilado Moro y ha quedado muy bien"
    if telling.who and not telling.meant_by(clause):
        return ()  # "did anyone ride Duke? rain got in under the door"
    everyday = items[at].kinds("everyday")
    several = telling.who[0].horses if len(telling.who) == 1 else ()
    if clause.has("the rest"):
        return named(telling.rest())
    if clause.has("both") and 1 < len(several) < 4:
        return named(several)
    if of_both(clause) and (two := telling.two()):  # "felt Lucero and Moro, both warm"
        return two
    if items[0].has("all") and len(telling.who) > 1 and telling.begun and not clause.has("all horses"):
        return telling.who  # "I checked Storm, Ty and Gelert. All nice and warm"
    if not everyday and not clause.has("she", "it") and _of_the_herd(telling.heard):
        return named(telling.names)  # "everyone fine, toasty"
    if clause.has("everyone") and items[at].has(*WETNESS) and not clause.has("she", "all horses"):
        return ()  # "everything is wet here"
    if everyday and (_greeting(items, at) or _of_the_sky(items[:at])):
        return ()  # "buenos días a todos ❄", "Maple fine, misty a bit chilly"
    if (
        everyday
        and items[at].has("weather")
        and not (clause.has("she", "body") or some_mean(items[:at], "is"))
        and not (clause.joined == "and" and len(items) == 1)  # "Canela sin manta y helada"
    ):
        return ()  # "in his stall now, too icy out there"
    if _somebody_else_is(items[at + 1 : at + 4]):
        return ()
    if any(i.has("i") and not i.has("everyone", "article") for i in items[:at]):  # "I'm sweating"
        return telling.who if telling.begun and clause.has("she") and len(telling.who) == 1 else ()
    left = [i for k, i in enumerate(items) if i.horses and excepted(items, k)]
    strangers = any(not (soft(i) or i.means or i.horses) for i in items[at + 1 :])  # "everyone's sweating at the beach"
    if not strangers and _of_all(items, at, everyday=bool(everyday) and not left and not telling.but_one):
        return named(telling.all_but(left))
    if _every(items) and not any(i.has("she") and not i.has("article") for i in items):
        return ()  # "everyone's sweating at the beach"
    if telling.crowded and items[at].has("sign unwell") and not clause.has("she"):
        return ()  # "can't make it tomorrow, been sick all night"
    if (clause.has("it") or _of_a_piece(items[at], clause, telling)) and not clause.has("she", "body"):
        return ()
    if not telling.begun and everyday and len(telling.who) > 1:
        return ()
    if everyday and telling.crowded:
        return ()
    return () if _only_well(clause, telling, at) else telling.who


def _only_well(clause: Clause, telling: Telling, at: int) -> bool:
    """As in "fine", "all good", with nothing that makes it of the horse: it may be of anything."""
    items = clause.items
    bare = items[at].kinds("everyday") in (["comfortable"], ["good"]) and telling.begun and not clause.has("she")
    if not bare or telling.past or clause.joined == "but" or items[0].has("is"):
        return False
    small = ("time", "hour", "very", "polite", "is")
    others = [i for k, i in enumerate(items) if k != at and not (i.has(*small) or i.clock)]
    return not (clause.has("time") and all(i.number is not None for i in others))  # "ok now"; not "ok, 5 min"


def _greeting(items: Sequence[Item], at: int) -> bool:
    """Nothing but a few polite words before this place."""
    return 0 < at <= GREETING and all(i.has("polite") and not i.has("yes", "link") for i in items[:at])


def _of_the_sky(before: Sequence[Item]) -> bool:
    return any(i.has("weather", "bare weather", "mass") and not predicate(i) for i in before)


def _of_a_piece(item: Item, clause: Clause, telling: Telling) -> bool:
    """Whether how wet something is, is told of the piece spoken of last."""
    wet = item.has(*WETNESS) and not disagrees(item, telling)
    return wet and (telling.last == "piece" or _found_it(clause) or _found_it(telling.heard))


def _found_it(clause: Clause | None) -> bool:
    """As in "(Gus had his sheet off,) found it in the mud, soaked"."""
    return clause is not None and clause.has("state found") and not (clause.horses or clause.pieces)


def _of_the_herd(clause: Clause | None) -> bool:
    """Whether a clause spoke of everyone, and of nobody by name."""
    if clause is None or not _every(clause.items) or not (clause.has("felt") or clause.told):
        return False  # "Feliz año a todos"
    return not (clause.horses or clause.pieces)


def _of_all(items: Sequence[Item], at: int, *, everyday: bool) -> bool:
    """Whether a sign is told of all horses; an everyday word only where "horses" is said."""
    every = [k for k in _every(items) if k < at or not items[k - 1].has("and")]  # "ears like ice and all tucked up"
    if items[at].has("sign unwell") and not any(k < at for k in every):
        return False  # "off sick today, sorry all"
    if some_mean(items, "all horses"):
        return True
    return (
        any(items[k].has("everyone") for k in every)
        and not any(i.has("she") and not i.has("subject", "article") for i in items)
        and not everyday
    )


def _every(items: Sequence[Item]) -> list[int]:
    """The places of words for all the horses."""
    return [
        k
        for k, i in enumerate(items)
        if i.has("everyone", "all horses")
        and not _wholly(items, k)
        and not _all_of_it(items, k)
        and not _and_all(items, k)
        and not (k and items[k - 1].has("thanks"))
    ]


def _wholly(items: Sequence[Item], at: int) -> bool:
    """As in "está todo decaído", "il est tout mouillé": how much, not how many."""
    return items[at].has("wholly") and at + 1 < len(items) and predicate(items[at + 1])


def _and_all(items: Sequence[Item], at: int) -> bool:
    """As in "con frío y todo", "cold and all": whatever belongs to it, of no horses."""
    ends = at + 1 >= len(items) or items[at + 1].mark or not predicate(items[at + 1])
    return at > 0 and items[at].has("wholly") and items[at - 1].has("and") and ends


def _all_of_it(items: Sequence[Item], at: int) -> bool:
    """As in "snug under all that hair", "con todo ese pelo", "all winter": of one thing, not of the horses."""
    if items[at].has("all") and any(i.has("weather") and not predicate(i) for i in items[at + 1 : at + 2]):
        return True
    behind = items[at + 1 : at + 4]
    if items[at].has("all") and len(behind) > 2 and behind[1].has("her", "article") and behind[2].has("body"):
        return True  # "a tremble all down his sides"
    if not items[at].has("article", "wholly") or len(items) < at + 3:
        return False
    return items[at + 1].has("article") and not items[at + 2].has("all horses")


def _somebody_else_is(behind: Sequence[Item]) -> bool:
    """As in "el que tiritaba era el perro", "la que está helada soy yo", "el sudado es Marcos"."""
    if some_mean(behind, "i") and some_mean(behind, "is", "was"):
        return True
    words = [i for i in behind if not i.has("time", "very", "article") or i.has("is", "was")]
    i_am = len(words) > 1 and words[0].has("i") and words[1].has("i", "subject")
    return i_am or (len(words) > 1 and words[0].has("is", "was", "it") and words[1].person)
