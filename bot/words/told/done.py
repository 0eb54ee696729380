"""The round as done: "Maple done", "all done", and who is left out of it."""

from collections.abc import Sequence
from itertools import pairwise
from typing import Literal

from bot.events import Clipped, Done
from bot.words.lookup.items import Item, predicate, some_mean
from bot.words.thoughts.clauses import Clause, gathered, of_both, soft
from bot.words.thoughts.hers import something_of_hers
from bot.words.told.telling import Telling
from bot.words.told.wearers import all_but_these

ROUND = frozenset(("done", "all done", "except", "had"))
MADE = ("hecho", "hecha", "hechos", "hechas")
LEFT = ("stays", "state missing", "ask left")
VAGUE = 2  # unknown words for some of the horses, which are named after


def read_done(clause: Clause, telling: Telling) -> bool:
    """As in "Maple done", "all done", "everyone but Pip done"."""
    if clause.means.isdisjoint(ROUND):
        return False
    items = clause.items
    whole = clause.has("all done") or (clause.has("except") and _all_but(items))
    if not (whole or clause.has("done") or _did_them(items, telling)) or clause.has("nearly", "stopped"):
        return False
    if clause.has("not") or _only_these(items) or _has_become(items) or _asks_what(items):
        return False
    items = tuple(_listed_behind(_without_left(_without_well(items))))
    if any(i.piece is not None for i in items) or not all(_round_word(i) for i in items):
        return False
    if any(i.horses and something_of_hers(items, k) for k, i in enumerate(items)):
        return False  # "Gus's feet are done"
    if _others_left(items):
        return False
    horses = [i for i in items if i.horses]
    if clause.has("the rest") and horses and (others := _the_others(items, horses, telling)):
        telling.say(Done(others))
        return True
    if clause.has("except") and (
        clause.has("everyone", "all", "all horses", "all done") or not any(i.horses for i in _before_except(items))
    ):
        if horses:
            telling.say(Done(telling.all_but(horses)))
            telling.speak_of(horses)  # "all done but Pip, he's cold"
        return bool(horses)
    if whole and _all_is_well(horses, telling):
        telling.say(Done("all"))
        return True
    if horses:
        _done_with(horses, items, telling)
        return True
    if of_both(clause) and (two := telling.two()):
        telling.say(Done(tuple(name for i in two for name in i.horses)))
        return True
    if _of_mine(items):
        if telling.mine:
            telling.say(Done(telling.mine))
        return bool(telling.mine)
    if clause.has("the rest"):
        rest = _all_but_missing(telling) or telling.rest()
        if rest:
            telling.say(Done(rest))
        return bool(rest)
    counted = _counted(items)
    if counted and counted != len(telling.names):  # "done with all 3"
        told = tuple(dict.fromkeys(event.horse for event in telling.events if hasattr(event, "horse")))
        if len(told) == counted:
            telling.say(Done(told))
        return len(told) == counted
    if whole or clause.has("all horses") or _everyone(items):
        telling.say(Done("all"))
        return True
    return not _finished_the_clip(clause, telling) and _answers_done(clause, telling)


def _finished_the_clip(clause: Clause, telling: Telling) -> bool:
    """As in "(Juno has a bib clip now,) I just finished her": no round's changes."""
    return clause.has("she") and bool(telling.events) and isinstance(telling.events[-1], Clipped)


def _done_with(horses: Sequence[Item], items: Sequence[Item], telling: Telling) -> None:
    """As in "Maple and Pip done", "changed Pip": those named, asked about where a name is not sure."""
    sure = [i for i in horses if i.sure]
    if any(i.has("done") and i.has("swapped") for i in items):
        telling.changed.update(name for i in sure for name in i.horses)
    if sure:
        telling.say(Done(tuple(dict.fromkeys(n for i in sure for n in i.horses))))
    telling.each([i for i in horses if not i.sure], lambda name: Done((name,)))
    telling.speak_of(horses)


def _all_is_well(horses: Sequence[Item], telling: Telling) -> bool:
    """As in "c'est tout bon, les poneys sont tous faits": a riding school calls them all so, and all is well."""
    before = telling.heard
    kind = len(horses) == 1 and len(horses[0].horses) > 1
    return kind and before is not None and before.told and not (before.horses or before.pieces)


def _all_but_missing(telling: Telling) -> tuple[str, ...]:
    """As in "faltan Ona y Pehuén, el resto listo", "Otto isn't done yet, the rest are": all but those named before."""
    before = telling.heard
    if before is None or any(i.piece for i in before.items):
        return ()
    if not (before.has("state missing") or (before.has("not") and before.has("done"))):
        return ()
    return telling.all_but(before.horses) if before.horses else ()


def _the_others(items: Sequence[Item], horses: Sequence[Item], telling: Telling) -> tuple[str, ...] | Literal["all"]:
    """As in "estoy con Capi, los demás hechos", "Lola y los demás hechos"; () where they are told of otherwise."""
    if any(one.has("and") and then.has("the rest") for one, then in pairwise(items)):
        return "all"
    others = next((k for k, i in enumerate(items) if i.has("the rest")), 0)
    pause = max((k for k in range(others) if items[k].mark), default=0)
    before = items[:pause]
    left = any(i.horses for i in before) and not some_mean(before, "done", "all done", "had")
    return telling.all_but(horses) if left else ()


def _did_them(items: Sequence[Item], telling: Telling) -> bool:
    """As in "I did Willow and Hazel", "(Pip's done,) did Otto too": a round's list; "I did Otto" may be anything."""
    words = [i for i in items if not (i.mark or i.has("polite", "time"))]
    words = words[1:] if words and words[0].has("subject") else words
    named = sum(bool(i.horses) for i in words)
    goes_on = named > 0 and bool(telling.events) and isinstance(telling.events[-1], Done)
    did = (named > 1 or goes_on) and words[0].has("had") and words[0].has("habit")
    return did and all(i.horses or i.has("and", "too", "article") for i in words[1:])


def _others_left(items: Sequence[Item]) -> bool:
    """As in "les grands sont faits, reste les poneys": only who is left is named."""
    left = next((k for k, i in enumerate(items) if k and i.has(*LEFT) and not i.has("done", "all done")), len(items))
    return any(i.horses for i in items[left:]) and not any(i.horses for i in items[:left])


def _only_these(items: Sequence[Item]) -> bool:
    """As in "all done, only Ty and Storm": whether these are done or left, nobody says."""
    only = next((k for k, i in enumerate(items) if i.has("only")), len(items))
    every = some_mean(items[:only], "all done", "everyone", "all horses")
    return every and any(i.horses for i in items[only:])


def _asks_what(items: Sequence[Item]) -> bool:
    """As in "Lune on fait quoi": what is to be done, behind the verb."""
    return any(i.has("done") and then.has("what") and then.has("question") for i, then in pairwise(items))


def _has_become(items: Sequence[Item]) -> bool:
    """As in "ya está muy viejita", "hecho un señor": what she is like by now, where nothing is done."""
    words = [i for i in items if not i.has("very", "a little")]
    for item, then in pairwise(words):
        of_her = item.has("is") and then.has("any adjective")
        if item.has("done") and (of_her or (item.text.split()[-1] in MADE and then.has("some"))):
            return True
    return False


def _all_but(items: Sequence[Item]) -> bool:
    """As in "Todos menos Uvi", said and no more: a round's answer."""
    words = [i for i in items if not i.mark and not i.has("polite")]
    every = bool(words) and words[0].has("everyone", "all horses") and some_mean(words, "except")
    return (
        every
        and words[-1].horses != ()
        and all(i.horses or i.has("everyone", "all horses", "except", "article", "and") for i in words)
    )


def without_excuse(clause: Clause) -> Clause:
    """As in "all done except Pip who won't be caught": the clause without why Pip is left, told behind it."""
    items = clause.items
    if not clause.has("except") or not (clause.has("done", "all done", "everyone") or all_but_these(clause)):
        return clause
    last = max((k for k, i in enumerate(items) if i.horses), default=len(items) - 1)
    behind = [i for i in items[last + 1 :] if not i.mark][:1]
    why = bool(behind) and behind[0].has(
        "question", "ask left", "she", "what", "but", "i", "is", "no", "plan", "polite"
    )
    if not why or any(i.has("done", "all done") or predicate(i) for i in items[last + 1 :]):
        return clause
    return gathered(items[: last + 1]).clause(clause.joined)


def _without_well(items: Sequence[Item]) -> Sequence[Item]:
    """As in "alright I'm done with everybody": the word that only opens the speech left out."""
    opens = len(items) > 1 and items[0].has("everyday comfortable") and items[1].has("i")
    return items[1:] if opens else items


def _without_left(items: Sequence[Item]) -> Sequence[Item]:
    """As in "dejé a los míos cambiados", "left Maple and Pip done": how they were left is what is told."""
    left = next((k for k, i in enumerate(items) if i.has("brought")), len(items))
    behind = [i for i in items[left + 1 :] if not (i.horses or i.has("and", "article", "toward", "everyone", "time"))]
    done = bool(behind) and behind[0].has("done", "all done")
    return [*items[:left], *items[left + 1 :]] if done else items


def _of_mine(items: Sequence[Item]) -> bool:
    """As in "mine are all done", said of no thing of the speaker's: "my round is done" is another matter."""
    at = next((k for k, i in enumerate(items) if i.has("my")), len(items))
    if at == len(items) or (items[at + 1 :] and items[at + 1].text in ("is", "'s")):
        return False  # "mine is done": of many horses it is none
    return not items[at + 1 :] or items[at + 1].mark or items[at + 1].has("is", "done")


def _listed_behind(items: Sequence[Item]) -> Sequence[Item]:
    """As in "lower row's done, that's Penny and Storm", "ya están los de arriba: Lola": who is named; else all."""
    done = next((k for k, i in enumerate(items) if i.has("done", "all done")), 0)
    names = next((k for k in range(done + 1, len(items)) if items[k].horses), len(items))
    those = done + 2 < names and items[done + 1].has("that of") and items[done + 2].has("of")
    pause = next((k for k in range(done + 1, names) if items[k].mark), names) if those else done + 1
    between, strange = items[pause:names], [i for i in items[:pause] if not _round_word(i)]
    listed = any(i.mark for i in between) and all(i.mark or i.has("it", "is", "article", "link") for i in between)
    only = all(i.horses or i.mark or i.has("and", "article", "too") for i in items[names:])
    vague = 0 < len(strange) <= VAGUE and not any(i.horses or i.person or i.has("i", "body") for i in items[:pause])
    return [items[done], *items[pause:]] if listed and only and vague and names < len(items) else items


def _before_except(items: Sequence[Item]) -> Sequence[Item]:
    """As in "finished except Lou": nobody named before it is everybody."""
    return items[: next(k for k, i in enumerate(items) if i.has("except"))]


def _everyone(items: Sequence[Item]) -> bool:
    behind = len(items) > 1 and items[-1].has("everyone") and items[-2].mark  # "listo, todos"
    return behind or any((i.has("everyone") and not i.has("link")) or i.text in ("all", "everyone") for i in items)


def _counted(items: Sequence[Item]) -> int:
    """How many, as in "all 3"; 0 where no number is said."""
    return next((int(n.number) for i, n in pairwise(items) if i.has("all", "everyone") and n.number is not None), 0)


def _answers_done(clause: Clause, telling: Telling) -> bool:
    """As in "Done" in answer to a post: the horses it was about."""
    about = telling.reply.horses
    if clause.has("she") and telling.last == "piece":
        return False  # "l'imper est recousu, il est prêt"
    if telling.begun and telling.who and clause.has("she"):
        telling.say(Done(tuple(n for i in telling.who if i.sure for n in i.horses)))
        return True
    if not about or telling.begun:
        return False
    telling.say(Done("all" if len(about) > 1 and set(about) >= set(telling.names) else about))
    return True


def _round_word(item: Item) -> bool:
    if item.has("place stall", "place field", "work", "body", "weather", "visitor"):
        return False
    return (
        bool(item.horses)
        or soft(item)
        or item.has(
            "done",
            "had",
            "all done",
            "ask left",
            "everyone",
            "except",
            "all horses",
            "both",
            "too",
            "i",
            "a horse",
            "any adjective",
            "ask tonight",
        )
        or item.person
        or not any(letter.isalnum() for letter in item.text)  # "all done 🥶": so is who says it
    )
