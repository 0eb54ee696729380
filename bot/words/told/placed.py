"""In or out: "Maple is in", "turned Pip out", "Juniper stays in tonight"."""

from collections.abc import Sequence
from itertools import dropwhile, pairwise

from bot.events import Placed, Wearing, Where, Worked
from bot.words.lookup.items import Item, of_a_horse, some_mean
from bot.words.thoughts.around import OF_HORSE
from bot.words.thoughts.clauses import Clause, of_both, soft
from bot.words.thoughts.hers import PLACES, owns_the_stall, something_of_hers
from bot.words.thoughts.listed import in_company, list_near
from bot.words.thoughts.no_report import WITH
from bot.words.thoughts.to_come import to_come
from bot.words.told.put_away import TOLD_MOVES, a_thing_is_moved, in_with_another, put_away
from bot.words.told.telling import Telling, named

GOING = ("je", "j'")  # "je rentre", said of oneself
PASSED = ("article", "her", "is", "time", "polite", "and")  # between a horse and where it stands
WHERE_TO = (*PLACES, "inwards", "outwards")


def read_place(clause: Clause, telling: Telling) -> bool:
    """As in "Maple is in", "turned Pip out", "Juniper stays in tonight"."""
    items = clause.items
    if not clause.has("turned out", "brought in", *WHERE_TO) or to_come(clause):
        return False
    if items[0].has("what") and not items[0].has("link"):
        return False  # "who left them out"
    where = _where(items)
    told = clause.has(*TOLD_MOVES)
    if (
        where is None
        or (clause.has("was", "work") and not told)
        or (clause.has("turned out") and clause.has("work") and not clause.has("after"))
        or clause.has("not", "stopped")
        or any(i.piece is not None for i in items)
        or put_away(clause, telling)
        or in_with_another(items)
    ):
        return False
    items = tuple(_without_company(_up_to_the_reason(items)))
    if not all(_place_word(i) for i in items) or _somebody_comes_in(items):
        return False
    if any(i.horses and something_of_hers(items, k) for k, i in enumerate(items)):
        return False  # "Maple's stall is done"
    if any(i.has("place stall", "place field") and _of_somebody(items, k) for k, i in enumerate(items)):
        return False  # "le box de Lou est fait"
    if any(of_a_horse(i) for i in items):
        return False
    if any(i.has("i") and then.has("is", "helper", "i") for i, then in pairwise(items)) and not told:
        return False  # "jsuis dans le box de Roc"
    if a_thing_is_moved(items):
        return False
    if any(i.has("brought") and _ones_own(then) for i, then in pairwise(items)):
        return False  # "stuck my hand in on every one of them"
    of_ours = any(i.horses or (i.has("everyone", "all horses") and told) for i in items)
    if not of_ours and any(i.has("sky", "weather") and not i.has("time") for i in items):
        return False  # "sleet got right in"
    horses = _movers(clause, telling)
    moved = any(i.has(*TOLD_MOVES) and not i.has("body") for i in clause.items)
    if where == "field" and clause.has("felt", "said") and not (moved or _goes_somewhere(items)):
        return False  # "Pip and Ned checked at six in the top field"
    if not (moved or _goes_somewhere(items)):
        telling.standing.update(name for i in horses for name in i.horses)
    telling.each(horses, lambda name: Placed(name, where))
    if horses:
        telling.speak_of(horses)
    return bool(horses)


def _somebody_comes_in(items: Sequence[Item]) -> bool:
    """As in "mum came in", "je rentre", "je suis rentrée": no horse is spoken of, and somebody else moves."""
    words = [i for i in items if not (i.mark or i.has("polite", "time"))]
    if not words or any(i.horses or i.has("she", "it", "everyone", "all horses", "the rest", "both") for i in words):
        return False
    somebody = words[0].person or (words[0].has("i") and not words[0].has("subject"))
    if len(words) > 1 and words[0].text in GOING and words[1].has("helper") and words[1].has("i"):
        return True
    said = words[0].text.split()
    return somebody or (len(words) == 1 and len(said) == 2 and said[0] in GOING)  # not "je l'ai rentrée"


def _ones_own(item: Item) -> bool:
    """A hand, a foot, oneself: no horse is moved with it."""
    return item.has("i") and not item.has("subject", "everyone")


def _goes_somewhere(items: Sequence[Item]) -> bool:
    """A word of going in or out; "in" before a place only says where: "Storm is in his stall"."""
    goes = [k for k, i in enumerate(items) if i.has("inwards", "outwards")]
    return not all(items[k].has("in") and place_behind(items, k) for k in goes)


def place_behind(items: Sequence[Item], at: int) -> bool:
    """Whether a stall or a field follows, past its article."""
    behind = next((i for i in items[at + 1 : at + 3] if not i.has("article", "her")), None)
    return behind is not None and behind.has("place stall", "place field")


def moved_in_its_clothes(clause: Clause, telling: Telling) -> None:
    """As in "j'ai sorti Brume au pré avec sa doudoune", "Trueno en el box con la capa puesta"."""
    stands = _stands_there(clause.items)
    moved = stands or clause.has("turned out", "brought in") or _left_there(clause.items)
    where = _where(clause.items) if moved and not _changed(clause.items) and not clause.has("not") else None
    items = clause.items
    horses = [i for k, i in enumerate(items) if i.horses and not (owns_the_stall(items, k) or in_company(items, k))]
    if stands and where is not None:
        telling.standing.update(name for i in horses for name in i.horses)
    if where is not None:
        last = telling.events[-1] if telling.events else None
        worn = named((last.horse,)) if isinstance(last, Wearing) else ()  # "lo solté en el prado con el polar"
        telling.each(horses or worn, lambda name: Placed(name, where))


def _stands_there(items: Sequence[Item]) -> bool:
    """As in "Otto is in his stall in his sheet": where it stands, told between the horse and what it has on."""
    words = [i for i in items if i.has("in", *WHERE_TO) or not (i.mark or i.has(*PASSED))]
    behind = list(dropwhile(lambda i: i.horses, words))
    if len(behind) == len(words) or something_of_hers(words, len(words) - len(behind) - 1):
        return False
    there = list(dropwhile(lambda i: i.has("in") and not i.has("place stall", "place field"), behind))
    dressed = any(i.piece is not None or i.has("own") for i in there)
    if dressed and any(i.has("took off") and then.piece is not None for i, then in pairwise(items)):
        return False  # "Canela fuera la azul, solo forro"
    return dressed and there[0].has("place stall", "place field")


def _changed(items: Sequence[Item]) -> bool:
    """Whether clothes were put on or taken off, not a horse: "took her sheet out"; but "took Otto out in his sheet"."""
    there = ("on", "place field")  # "Lola fuera con la gorda puesta"
    verbs = (k for k, i in enumerate(items) if i.has("took off", "took", "put on", "swapped") and not i.has(*there))
    return any(not _left_there(items[k:]) for k in verbs)


def _left_there(items: Sequence[Item]) -> bool:
    """As in "dejé a Lola en el corral con la manta", "took Otto to the field in his sheet"; no rug of his."""
    verb = next((k for k, i in enumerate(items) if i.has("brought")), len(items))
    taken = next((i for i in items[verb + 1 :] if not i.has("article", "toward")), None)
    return taken is not None and (bool(taken.horses) or taken.has("she"))


def _up_to_the_reason(items: Sequence[Item]) -> Sequence[Item]:
    """As in "metí a Lucena en el box que estaba el prado helado": what was done, without why."""
    place = next((k for k, i in enumerate(items) if i.has("place stall", "place field")), len(items))
    named = any(i.horses for i in items[:place])
    why = next((k for k in range(place + 1, len(items)) if items[k].has("but", "if", "when", "what")), len(items))
    return items[:why] if named else items


def _without_company(items: Sequence[Item]) -> Sequence[Item]:
    """As in "Milo est au pré avec la jument de Chloé": where it is, without whom it stands with, told by no name."""
    at = next((k for k, i in enumerate(items) if i.text in WITH), len(items))
    whose = next((k + 1 for k in range(at + 1, min(at + 4, len(items))) if items[k].text == "'s"), at + 1)
    behind = [i for i in items[whose:] if not i.has("article", "her", "my") and not i.mark]
    others = bool(behind) and behind[0].has("a horse", "animal", "company") and not any(i.horses for i in behind)
    return items[:at] if others and not any(i.has("not", *WHERE_TO) or of_a_horse(i) for i in behind) else items


def _left_behind(items: Sequence[Item], at: int) -> bool:
    """As in "in from the field": where it came from."""
    before = [i for i in items[:at] if not i.has("article") or i.has("of")]
    return bool(before) and before[-1].text.split()[-1] in ("from", "du", "del", "desde")


def _of_somebody(items: Sequence[Item], at: int) -> bool:
    """A stall or field spoken of for itself: an article before it, its horse behind."""
    behind = at + 2 < len(items) and items[at + 1].text in OF_HORSE and bool(items[at + 2].horses)
    return behind and (at == 0 or (at == 1 and items[0].has("article")) or items[at - 1].mark)


def _where(items: Sequence[Item]) -> Where | None:
    for k, item in enumerate(items):
        if item.has("place field", "place stall") and not _only_near(items, k):
            out = item.has("place stall") and any(i.text.endswith("out of") for i in items[max(0, k - 2) : k])
            return "field" if out or item.has("place field") != _left_behind(items, k) else "stall"
    if some_mean(items, "turned out"):
        return "field"
    if some_mean(items, "brought in"):
        return "stall"
    moves = [
        i
        for k, i in enumerate(items)
        if i.has("inwards", "outwards") and not i.has("place stall", "place field") and not _of_clothes(items, k)
    ]
    if not moves:
        return None
    return "stall" if moves[-1].has("inwards") else "field"


def _only_near(items: Sequence[Item], at: int) -> bool:
    """As in "came by the barn", "next to his stall": not in it."""
    before = next((i for i in reversed(items[max(0, at - 2) : at]) if not i.has("article", "her")), None)
    return before is not None and before.has("beside")


def _of_clothes(items: Sequence[Item], at: int) -> bool:
    """As in "in both", "in everything", "in his heavy": clothes, not the stall."""
    out_of = items[at].text.endswith(" of")  # "growing out of everything", "in out of this", "out of the rain"
    if out_of and any(i.has("it", "weather", "sky", "mass") and not i.horses for i in items[at + 1 : at + 3]):
        return True
    if items[at].has("in") and _ends_in_it(items[at + 1 :]):
        return True
    behind = next((i for i in items[at + 1 :] if not i.has("only", "article", "her")), items[at])
    if behind.piece is not None and items[at].has("wears"):
        return True  # "put Tansy back in her medium"
    worn = behind.piece is not None or behind.has("both", "everyone", "nothing")
    return (out_of or items[at].has("in")) and worn


def _ends_in_it(behind: Sequence[Item]) -> bool:
    """As in "(her heavy is dry) so she's in it now": a piece, and no more is said."""
    return bool(behind) and behind[0].has("it") and all(i.mark or i.has("time", "polite") for i in behind[1:])


def _place_word(item: Item) -> bool:
    known = (
        *TOLD_MOVES,
        *WHERE_TO,
        "all horses",
        "everyone",
        "i",
        "too",
        "both",
        "worked",
        "after",
        "work",
        "done",
        "except",
        "any adjective",
        "colour",
        "company",
        "toward",
        "spare",
    )
    return bool(item.horses) or soft(item) or item.has(*known) or item.person


def _pronoun(items: Sequence[Item]) -> bool:
    """Whether somebody is meant by "she" or "él", which written without its accent may be an article."""
    follows = zip(items, (*items[1:], None), strict=True)
    return any(i.has("she") and (not i.has("article") or (n is not None and n.has("is"))) for i, n in follows)


def _goes_on(clause: Clause, telling: Telling) -> bool:
    """As in "monté a Canela, está otra vez afuera": a verb without a subject goes on with the horse just told of.

    What came off it may be what is in the stall: "le quité la gorda y está en el box".
    """
    opens = next((i for i in clause.items if not i.mark and not i.has("and", "time")), clause.items[0])
    who = {name for i in telling.who for name in i.horses}
    told = telling.events[-len(who) :] if who else []
    of_it = (e.horse for e in told if isinstance(e, Worked) or (isinstance(e, Wearing) and telling.dressed))
    return opens.has("is") and bool(who) and set(of_it) == who


def _in_company(clause: Clause, moved: int) -> bool:
    """As in "(Chief was lunged,) then turned out with Ranger": with whom, behind the verb; who is left out."""
    items = clause.items
    beside = items[moved + 1 : moved + 3]
    company = len(beside) == 2 and beside[0].has("and") and beside[0].has("has") and bool(beside[1].horses)
    return company and not any(i.horses or i.has("she", "everyone") for i in items[:moved])


def _movers(clause: Clause, telling: Telling) -> Sequence[Item]:
    moved = next((k for k, i in enumerate(clause.items) if i.has(*TOLD_MOVES, *WHERE_TO)), 0)
    near = list_near(clause.items, moved)
    horses = [i for k, i in enumerate(clause.items) if i in near and not owns_the_stall(clause.items, k)]
    if _in_company(clause, moved):
        before = telling.heard.horses if telling.heard is not None else ()
        return before if len(before) == 1 else ()
    everyone = clause.has("all horses", "everyone") and not (clause.has("she") and telling.begun)
    if clause.has("except") and horses and everyone:
        left = next(k for k, i in enumerate(clause.items) if i.has("except"))
        return named(telling.all_but([i for i in clause.items[left:] if i.horses] or horses))
    if horses:
        return horses
    if of_both(clause):
        return telling.two()
    if clause.has("the rest"):
        return named(telling.rest())
    by_name = any(i.has("everyone") and not i.has("link") for i in clause.items)
    if everyone and not clause.has("brought", "is") and any(i.clock or i.number is not None for i in clause.items):
        return ()  # "horses in at 4": the day's order
    if by_name and len([i for i in clause.items if not i.mark]) <= 3 and not clause.has("done"):
        return named(telling.names)
    if clause.has("all horses") and any(isinstance(e, Placed) for e in telling.events):
        return named(telling.rest())  # "ponies in, horses out"
    if clause.has("all horses") or (
        clause.has("everyone") and clause.has("is", "brought", "brought in", "turned out", "stays")
    ):
        return named(telling.names)
    if clause.has("no name") or (clause.has("it") and not clause.has("she")):
        return ()  # "the hose is split, someone left it out in the frost"
    verb = clause.has(*TOLD_MOVES) or _pronoun(clause.items) or _goes_on(clause, telling)
    moved = bool(telling.events) and isinstance(telling.events[-1], Placed)  # "(out for an hour,) back in now"
    verb = verb or (moved and all(i.mark or i.has("time", "is", "link", "inwards", "outwards") for i in clause.items))
    if (
        len([i for i in clause.items if not i.has("time", "link") or i.has("inwards", "outwards")]) == 1
        and not telling.begun
    ):
        return telling.meant_by(clause) if len(telling.who) == 1 else ()
    return telling.meant_by(clause) if verb and (telling.begun or len(telling.who) == 1) else ()
