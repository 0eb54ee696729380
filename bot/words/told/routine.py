"""The day's routine in a few words: clipped, worked, and the wish for bare."""

from collections.abc import Sequence
from itertools import dropwhile, islice, pairwise, takewhile
from typing import cast

from bot.events import Clipped, Style, Wished, Worked
from bot.words.lookup.items import Item, places, predicate, some_mean
from bot.words.thoughts.clauses import CLIPS, Clause, of_both, soft
from bot.words.thoughts.listed import list_near
from bot.words.thoughts.no_report import WITH
from bot.words.told.telling import Telling

CLIP = ("clip", "tont", "tond", "esquil")  # in the name of a style
MOUNTED = frozenset(("mounted",))
WISHES = frozenset(("rug again", "do not rug", "keep", "please"))
OVER = ("done", "stopped", "over")
NOT_OVER = ("not", "plan", "if", "when", "ahead", "habit", "some day", "yesterday", "long ago", "weekday")
REACH = 4  # words between "not" and what is wished no more, between "in" and the lesson


def read_clip(clause: Clause, telling: Telling) -> bool:
    """As in "Full clip on Maple", "Maple was trace clipped today"."""
    if clause.means.isdisjoint(CLIPS) or clause.has("not") or _of_somebody_elses(clause):
        return False
    items = clause.items
    styles = [s for i in items for s in i.kinds("style")]
    again = bool(telling.events) and isinstance(telling.events[-1], Clipped)
    told = telling.heard is not None and telling.heard.has("clipped") and len(telling.who) == 1
    small = all(i.horses or i.kinds("style") or soft(i) or i.kinds("everyday") or i.has("only") for i in items)
    again = (again or (told and not clause.horses)) and small  # "…, Vanina en intégrale", "… Juste une trace"
    said = clause.has("clipped") or any(map(_says_clip, items)) or "none" in styles
    said = said or (clause.has("had") and any(_clip_given(items, k) for k in range(len(items))))
    if not (said or again):
        return False
    style = next(k for k, i in enumerate(items) if i.kinds("style"))
    before = telling.meant_by(clause) if len(telling.who) == 1 else ()
    horses = list_near(items, style) or before
    telling.each(horses, lambda name: Clipped(name, cast("Style", styles[0])))
    telling.who, telling.begun = tuple(horses), True
    return bool(horses)


def _says_clip(item: Item) -> bool:
    """As in "full clip", "tonte bib", "esquilado completo": a style by its whole name."""
    return bool(item.kinds("style")) and any(word in item.text for word in CLIP)


def _clip_given(items: Sequence[Item], at: int) -> bool:
    """As in "le hicimos el hunter", "le hicieron trace a Canela"; not "did full grooms on Pip"."""
    if not items[at].kinds("style"):
        return False
    behind = items[at + 1] if at + 1 < len(items) else None
    ends = behind is None or behind.mark or behind.horses or behind.has("toward", "time")
    return " " in items[at].text or (at > 0 and items[at - 1].has("had") and bool(ends))


def _of_somebody_elses(clause: Clause) -> bool:
    """As in "Marie a fait la sienne en intégrale", "my friend did hers in a full clip": theirs, of no horse told of."""
    return clause.has("own", "elsewhere", "at somebody's") and not (clause.horses or clause.has("she"))


def read_wish(clause: Clause, telling: Telling) -> bool:
    """As in "Keep Maple bare", "Maple can be rugged again"."""
    if clause.means.isdisjoint(WISHES):
        return False
    items = clause.items
    if clause.has("rug again"):
        bare = False
    elif clause.has("do not rug") or (clause.has("keep", "please") and clause.has("bare")):
        bare = not _not_to_be(clause.items)
        if clause.has("do not rug") and _with_a_piece(items):
            return False  # "no me la tapen con la lona": with another she is
    else:
        return False
    for_now = clause.has("when") and any(predicate(i) for i in items)  # "don't rug Otto until he's dry"
    for_now = for_now or _today(items)
    begs = clause.has("do not rug", "rug again") or (clause.has("please") and clause.has("keep"))
    over = clause.has("was") and not begs  # "was kept bare all winter", "est restée nue tout l'hiver"
    if for_now or over or clause.has("if", "guess", "idiom", "long ago", "some day"):
        return False
    told = next(k for k, i in enumerate(items) if i.has("rug again", "do not rug", "bare"))
    horses = list_near(items, told) or telling.meant_by(clause)
    telling.who, telling.begun = tuple(horses), True
    telling.each(horses, lambda name: Wished(name, bare))
    return bool(horses)


def _today(items: Sequence[Item]) -> bool:
    """As in "no rugs for Pip tonight": a plan, and no wish for longer; but "à partir de ce soir"."""
    wish = next((k for k, i in enumerate(items) if i.has(*WISHES, "bare")), len(items))
    days = [k for k, i in enumerate(items) if i.has("time", "ahead") and i.has("ask tonight") and (not k or k > wish)]
    return any(not k or not items[k - 1].has("hour", "after", "of") for k in days)


def wished_so(clause: Clause, telling: Telling) -> bool:
    """As in "keep Ted bare from now on, no rugs": the same wish, of no other horse."""
    last = telling.events[-1] if telling.events else None
    of_whom = [i.horses for i in clause.horses] + [piece.owners for piece in clause.pieces if piece.owners]
    return isinstance(last, Wished) and all(last.horse in names for names in of_whom)


def _with_a_piece(items: Sequence[Item]) -> bool:
    """As in "don't rug her with the navy": with one of her pieces, which is named."""
    words = [i for i in items if i.piece is not None or not i.has("article", "her") or i.has("wears")]
    pieces = (i.piece for by, i in pairwise(words) if i.piece is not None and by.text in (*WITH, "in"))
    return any(piece.words or piece.ids or not piece.rug for piece in pieces)


def _not_to_be(items: Sequence[Item]) -> bool:
    """As in "needn't be kept bare", "no more keeping her bare", "je ne tiens plus à ce qu'elle reste nue"."""
    unrugged = next((k for k, i in enumerate(items) if i.has("do not rug")), None)
    at = next((k for k, i in enumerate(items) if i.has("keep")), 0) if unrugged is None else unrugged
    near = reversed(items[max(0, at - REACH) : at])
    before = takewhile(lambda i: not i.mark and i.piece is None, near)  # "je veux plus de couv laissez-le à nu"
    bare = next((k for k, i in enumerate(items) if i.has("bare")), at) if unrugged is None else at
    nots = (k for k in range(at + 1, bare) if items[k].has("not") and not items[k].has("bare"))
    denied = any(not _of_rugs(items[k + 1 :]) for k in nots)  # "qu'elle reste pas nue"
    over = any(i.has("stopped", "unwanted") or (i.has("not") and not i.has("not any more")) for i in before)
    return items[at].has("not") or denied or over


def _of_rugs(behind: Sequence[Item]) -> bool:
    """As in "(je veux plus) de couv": what is not wanted is a rug."""
    said = next((i for i in behind if not i.has("of", "article")), None)
    return said is not None and said.piece is not None


def _work_word(item: Item) -> bool:
    known = ("worked", "mounted", "had", "took part", "i", "after", "work", "brought", "too", "both", "done")
    return bool(item.horses) or soft(item) or item.has(*known) or item.person


def _of_work(behind: Sequence[Item]) -> bool:
    """As in "(had) a nice lesson", "(did) the 10 and 11 lessons": at what hours is no more than one word of it."""
    words = dropwhile(lambda i: not i.has("work") and (i.clock or i.number is not None or _small(i)), behind)
    return some_mean(islice(words, REACH), "work")


def _small(item: Item) -> bool:
    return item.has("article", "and")


def _taken_out(items: Sequence[Item]) -> bool:
    """As in "took Storm for an hour's hack"."""
    for k, item in enumerate(items[:-3]):
        if item.has("took") and items[k + 1].horses and items[k + 2].text == "for":
            return some_mean(items[k + 3 : k + 7], "work")
    return False


def _was_in_it(items: Sequence[Item]) -> bool:
    """As in "Hazel was in the 4 o'clock lesson", "Hazel and Pip both went in the 4:30 lesson"."""
    said = [i for i in items if not i.has("both")]
    inside = (k + 2 for k, (i, then) in enumerate(pairwise(said)) if _takes_part(i, then))
    return any(i.has("work") for first in inside for i in said[first : first + REACH])


def _takes_part(verb: Item, then: Item) -> bool:
    """Was in, went in, went to: a lesson, where one follows."""
    return (verb.has("was", "took part") and then.has("in")) or (verb.has("took part") and then.has("toward"))


def _mounted(items: Sequence[Item], at: int) -> bool:
    """As in "got on Pip for twenty minutes", "I hopped on Pip"; not "Ned got on Pip's nerves"."""
    opens = all(i.person or i.has("i") or (soft(i) and not i.has("is", "not")) for i in items[:at])
    behind = items[at + 1 : at + 3]
    if not (opens and behind and behind[0].horses):
        return False
    after = behind[1] if len(behind) > 1 else None
    return after is None or ((soft(after) or after.has("i", "but")) and not after.has("is"))


def _went_out(items: Sequence[Item]) -> bool:
    """As in "Waylon and Big Red went out on the 9am trail ride"."""
    out = next((k for k, i in enumerate(items) if i.has("turned out")), len(items))
    return some_mean(items[out:], "work") and not some_mean(items, "after", "place field")


def _work_over(items: Sequence[Item]) -> bool:
    """As in "lesson on Pip just finished", "le cours de Lune est fini": whose work, that it is over, and no more."""
    over = (some_mean(items, *OVER) or items[-1].has("had")) and some_mean(items, "work")
    if not over or some_mean(items, *NOT_OVER) or not any(i.horses for i in items):
        return False
    if any(i.clock or i.number is not None or (i.has("after") and not i.has("of")) for i in items):
        return False  # "after Pip's lesson is done", "Pip's lesson is over at 5"
    return all(_work_word(i) or i.has(*OVER, "on", "has", "for another") for i in items)


def _of_her(clause: Clause) -> bool:
    """A pronoun says whose work it was: "then she had a lesson", "rode them both"."""
    return clause.has("she", "her") or of_both(clause)


def _brought_up(items: Sequence[Item]) -> bool:
    """As in "monté Lune à l'écurie": French has one word for riding and for taking up."""
    verb = next((k for k, i in enumerate(items) if i.has("worked") and i.has("brought")), len(items))
    return any(i.horses and then.has("place stall") for i, then in pairwise(items[verb:]))


def read_work(clause: Clause, telling: Telling) -> bool:
    """As in "Rode Maple", "Maple had a lesson"."""
    items = clause.items
    had = any(i.has("had") and _of_work(items[k + 1 :]) for k, i in enumerate(items))
    had = had or _was_in_it(items) or any(_mounted(items, k) for k in places(items, MOUNTED))
    outing = _taken_out(items) or _went_out(items)
    if _work_over(items):
        return _worked([i for i in items if i.horses], telling)
    if not (had or outing or clause.has("worked")) or clause.has("not"):
        return False
    if _brought_up(items):
        return False
    after = next((k for k, i in enumerate(items) if i.has("after")), 0)
    if any(predicate(i) for i in items[:after]):
        return False  # "I was sweating after riding Lou"
    horses = [k for k, i in enumerate(items) if i.horses]
    verb = next(
        k for k, i in enumerate(items) if i.has("worked", "had", "took", "turned out", "was", "took part", "mounted")
    )
    if horses and not outing:
        low, high = min(verb, *horses), max(verb, *horses)
        praised = range(
            verb + 1, next((k for k in range(verb, high) if items[k].has("work")), verb)
        )  # "the BEST lesson"
        if not all(_work_word(i) for k, i in enumerate(items[: high + 1]) if k >= low and k not in praised):
            return False
    elif not horses and not (_of_her(clause) and (telling.begun or len(telling.who) == 1)):
        first = next(i for i in items if not i.has("link", "time") or i.has("worked"))
        goes_on = telling.begun and clause.joined == "," and first.has("worked", "had")
        if not (goes_on and all(map(_work_word, items))):
            return False  # "Maple sweaty, just been ridden", "… just finished a gallop"
    return _worked([items[k] for k in horses] or telling.meant_by(clause), telling)


def _worked(found: Sequence[Item], telling: Telling) -> bool:
    telling.each(found, Worked)
    telling.speak_of(found)
    return bool(found)
