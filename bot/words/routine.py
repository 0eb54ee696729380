"""The day's round in a few words: done, clipped, worked, and the wish for bare."""

from collections.abc import Sequence
from itertools import pairwise, takewhile
from typing import cast

from bot.events import Clipped, Done, Style, Wished, Worked
from bot.words.around import something_of_hers
from bot.words.clauses import CLIPS, Clause, gathered, soft
from bot.words.items import Item, predicate
from bot.words.listed import list_near
from bot.words.telling import Telling

ROUND = frozenset(("done", "all done", "except", "had"))
WISHES = frozenset(("rug again", "do not rug", "keep", "please"))
REACH = 4  # words between "not" and what is wished no more
VAGUE = 2  # unknown words for some of the horses, which are named after


def read_done(clause: Clause, telling: Telling) -> bool:
    """As in "Maple done", "all done", "everyone but Pip done"."""
    if clause.means.isdisjoint(ROUND):
        return False
    items = clause.items
    whole = clause.has("all done") or (clause.has("except") and _all_but(items))
    if not (whole or clause.has("done") or _did_them(items)) or clause.has("nearly", "stopped"):
        return False
    if clause.has("not") or _only_these(items):
        return False
    items = tuple(_listed_behind(_without_left(_without_well(items))))
    if any(i.piece is not None for i in items) or not all(_round_word(i) for i in items):
        return False
    if any(i.horses and something_of_hers(items[k + 1 : k + 3]) for k, i in enumerate(items)):
        return False  # "Gus's feet are done"
    horses = [i for i in items if i.horses]
    if clause.has("except") and (
        clause.has("everyone", "all", "all horses", "all done") or not any(i.horses for i in _before_except(items))
    ):
        left = {name for i in horses for name in i.horses}
        if horses:
            telling.say(Done(tuple(n for n in telling.names if n not in left)))
            telling.who, telling.begun, telling.last = tuple(horses), True, "horse"  # "all done but Pip, he's cold"
        return bool(horses)
    if horses:
        sure = [i for i in horses if i.sure]
        if any(i.has("done") and i.has("swapped") for i in items):
            telling.changed.update(name for i in sure for name in i.horses)
        if sure:
            telling.say(Done(tuple(dict.fromkeys(n for i in sure for n in i.horses))))
        telling.each([i for i in horses if not i.sure], lambda name: Done((name,)))
        telling.who, telling.begun, telling.last = tuple(horses), True, "horse"
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
    return _answers_done(clause, telling)


def _all_but_missing(telling: Telling) -> tuple[str, ...]:
    """As in "faltan Ona y Pehuén, el resto listo": all but those named before; none where nobody is missing."""
    before = telling.heard
    if before is None or not before.has("state missing") or any(i.piece for i in before.items):
        return ()
    left = {name for i in before.items for name in i.horses}
    return tuple(name for name in telling.names if name not in left) if left else ()


def _did_them(items: Sequence[Item]) -> bool:
    """As in "I did Willow and Hazel": a round's list, and no word of what; "I did Otto" may be anything."""
    words = [i for i in items if not (i.mark or i.has("polite", "time"))]
    several = sum(bool(i.horses) for i in words) > 1
    did = several and words[0].has("subject") and words[1].has("had") and words[1].has("habit")
    return did and all(i.horses or i.has("and", "too", "article") for i in words[2:])


def _only_these(items: Sequence[Item]) -> bool:
    """As in "all done, only Ty and Storm": whether these are done or left, nobody says."""
    only = next((k for k, i in enumerate(items) if i.has("only")), len(items))
    every = any(i.has("all done", "everyone", "all horses") for i in items[:only])
    return every and any(i.horses for i in items[only:])


def _all_but(items: Sequence[Item]) -> bool:
    """As in "Todos menos Uvi", said and no more: a round's answer."""
    words = [i for i in items if not i.mark and not i.has("polite")]
    every = bool(words) and words[0].has("everyone", "all horses") and any(i.has("except") for i in words)
    return (
        every
        and words[-1].horses != ()
        and all(i.horses or i.has("everyone", "all horses", "except", "article", "and") for i in words)
    )


def without_excuse(clause: Clause) -> Clause:
    """As in "all done except Pip who won't be caught": the clause without why Pip is left, told behind it."""
    items = clause.items
    if not clause.has("except") or not clause.has("done", "all done", "everyone"):
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
    """As in "lower row's done, that's Penny and Storm": only what is named; else every word."""
    done = next((k for k, i in enumerate(items) if i.has("done", "all done")), 0)
    names = next((k for k in range(done + 1, len(items)) if items[k].horses), len(items))
    between, strange = items[done + 1 : names], [i for i in items[:done] if not _round_word(i)]
    listed = any(i.mark for i in between) and all(i.mark or i.has("it", "is", "article", "link") for i in between)
    only = all(i.horses or i.mark or i.has("and", "article", "too") for i in items[names:])
    vague = 0 < len(strange) <= VAGUE and not any(i.horses or i.person or i.has("i", "body") for i in items[:done])
    return items[done:] if listed and only and vague and names < len(items) else items


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


def read_clip(clause: Clause, telling: Telling) -> bool:
    """As in "Full clip on Maple", "Maple was trace clipped today"."""
    if clause.means.isdisjoint(CLIPS) or clause.has("not"):
        return False
    items = clause.items
    styles = [s for i in items for s in i.kinds("style")]
    again = bool(telling.events) and isinstance(telling.events[-1], Clipped)
    small = all(i.horses or i.kinds("style") or soft(i) or i.kinds("everyday") for i in items)
    again = again and small  # "…, Vanina en intégrale"
    said = clause.has("clipped") or any("clip" in i.text for i in items if i.kinds("style")) or "none" in styles
    said = said or (clause.has("had") and any(" " in i.text for i in items if i.kinds("style")))  # "le hicimos el …"
    if not (said or again):
        return False
    style = next(k for k, i in enumerate(items) if i.kinds("style"))
    before = telling.meant_by(clause) if len(telling.who) == 1 else ()
    horses = list_near(items, style) or before
    telling.each(horses, lambda name: Clipped(name, cast("Style", styles[0])))
    telling.who, telling.begun = tuple(horses), True
    return bool(horses)


def read_wish(clause: Clause, telling: Telling) -> bool:
    """As in "Keep Maple bare", "Maple can be rugged again"."""
    if clause.means.isdisjoint(WISHES):
        return False
    items = clause.items
    if clause.has("rug again"):
        bare = False
    elif clause.has("do not rug") or (clause.has("keep", "please") and clause.has("bare")):
        bare = not _not_to_be(clause.items)
    else:
        return False
    for_now = clause.has("when") and any(predicate(i) for i in items)  # "don't rug Otto until he's dry"
    over = clause.has("was") and not clause.has("please", "do not rug", "rug again")  # "was kept bare all winter"
    if for_now or over or clause.has("if", "guess", "idiom", "long ago"):
        return False
    told = next(k for k, i in enumerate(items) if i.has("rug again", "do not rug", "bare"))
    horses = list_near(items, told) or telling.meant_by(clause)
    telling.who, telling.begun = tuple(horses), True
    telling.each(horses, lambda name: Wished(name, bare))
    return bool(horses)


def _not_to_be(items: Sequence[Item]) -> bool:
    """As in "needn't be kept bare", "je ne tiens plus à ce qu'elle reste nue": the wish taken back."""
    at = next((k for k, i in enumerate(items) if i.has("keep")), 0)
    before = takewhile(lambda i: not i.mark, reversed(items[max(0, at - REACH) : at]))
    bare = next((k for k, i in enumerate(items) if i.has("bare")), at)
    denied = any(i.has("not") and not i.has("bare") for i in items[at + 1 : bare])  # "qu'elle reste pas nue"
    return items[at].has("not") or denied or any(i.has("not") and not i.has("not any more") for i in before)


def _work_word(item: Item) -> bool:
    known = ("worked", "had", "i", "after", "work", "brought", "too", "both", "done")
    return bool(item.horses) or soft(item) or item.has(*known) or item.person


def _taken_out(items: Sequence[Item]) -> bool:
    """As in "took Storm for an hour's hack"."""
    for k, item in enumerate(items[:-3]):
        if item.has("took") and items[k + 1].horses and items[k + 2].text == "for":
            return any(i.has("work") for i in items[k + 3 : k + 7])
    return False


def _was_in_it(items: Sequence[Item]) -> bool:
    """As in "Hazel was in the 4 o'clock lesson"."""
    inside = (k for k, (i, then) in enumerate(pairwise(items)) if i.has("was") and then.has("in"))
    return any(i.has("work") for k in inside for i in items[k + 2 : k + 6])


def _went_out(items: Sequence[Item]) -> bool:
    """As in "Waylon and Big Red went out on the 9am trail ride"."""
    out = next((k for k, i in enumerate(items) if i.has("turned out")), len(items))
    return any(i.has("work") for i in items[out:]) and not any(i.has("after", "place field") for i in items)


def read_work(clause: Clause, telling: Telling) -> bool:
    """As in "Rode Maple", "Maple had a lesson"."""
    items = clause.items
    had = any(i.has("had") and any(j.has("work") for j in items[k + 1 : k + 5]) for k, i in enumerate(items))
    had = had or _was_in_it(items)
    outing = _taken_out(items) or _went_out(items)
    if not (had or outing or clause.has("worked")) or clause.has("not"):
        return False
    after = next((k for k, i in enumerate(items) if i.has("after")), 0)
    if any(predicate(i) for i in items[:after]):
        return False  # "I was sweating after riding Lou"
    horses = [k for k, i in enumerate(items) if i.horses]
    verb = next(k for k, i in enumerate(items) if i.has("worked", "had", "took", "turned out", "was"))
    if horses and not outing:
        low, high = min(verb, *horses), max(verb, *horses)
        praised = range(
            verb + 1, next((k for k in range(verb, high) if items[k].has("work")), verb)
        )  # "the BEST lesson"
        if not all(_work_word(i) for k, i in enumerate(items[: high + 1]) if k >= low and k not in praised):
            return False
    elif not horses and not (clause.has("she", "her") and (telling.begun or len(telling.who) == 1)):
        first = next(i for i in items if not i.has("link", "time") or i.has("worked"))
        if not (telling.begun and clause.joined == "," and first.has("worked") and all(map(_work_word, items))):
            return False  # "Maple sweaty, just been ridden"
    found = [items[k] for k in horses] or telling.meant_by(clause)
    telling.each(found, Worked)
    telling.who, telling.begun, telling.last = tuple(found), True, "horse"
    return bool(found)
