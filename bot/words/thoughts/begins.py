"""What begins behind a pause or an "and": a thought of its own, or more of the one before."""

from collections.abc import Sequence
from itertools import dropwhile, takewhile

from bot.words.lookup.items import NOTHING, Item, of_clothes, predicate, some_mean
from bot.words.lookup.piece import Piece
from bot.words.thoughts.clauses import Thought, only_small, soft

WENT = ("turned out", "brought in", "inwards", "outwards", "place stall", "place field")
OUTING = 12  # words of "and Moka for an hour in the arena this morning"
OF_THE_SECOND = (
    "is", "was", "she", "it", "worked", "had", "ahead", "plan", "not", "too", "place stall", "place field",
)  # fmt: skip
VERBS = (
    "is", "was", "has", "had", "wears", "in", "worked", "put on", "took off", "took", "brought", "brought in",
    "turned out",
)  # fmt: skip
SEVERAL = 3  # words of "forro y media"
LIST = 8  # words of a list of horses and how they are


def only_everyone(rest: Sequence[Item]) -> bool:
    """As in "listo, todos": a word for all, and no more."""
    return len(rest) == 1 and rest[0].has("everyone", "all horses")


def heads_names(before: Sequence[Item], rest: Sequence[Item]) -> bool:
    """As in "sortis : Max, Lune", "in: Pip Ned": who went there is listed behind a colon, and no more is said."""
    went = all(i.has(*WENT) or only_small(i) for i in before) and some_mean(before, *WENT)
    every = (*WENT, "everyone", "all horses", "except")
    listed = all(i.horses or i.mark or only_small(i) or i.has(*every) for i in rest)
    return went and listed and any(i.horses for i in rest)


def only_how(rest: Sequence[Item]) -> bool:
    """Whether nothing but how one is follows, up to a mark."""
    said = list(takewhile(lambda i: not i.mark, rest))
    return any(predicate(i) for i in said) and all(predicate(i) or only_small(i) for i in said)


def owned_piece_told(rest: Sequence[Item]) -> bool:
    """As in "y el forro de Lucero sigue húmedo": a piece of somebody's, and how it is."""
    words = [i for i in rest[:6] if not i.has("article", "strap", "of") or i.piece is not None]
    if len(words) < 2:
        return False
    first = words[0].piece
    if first is None:  # "y se ha roto la correa de la manta de Milonga"
        return bool(words[0].kinds("state")) and any(i.piece is not None and i.piece.owners for i in rest[:6])
    told = words[1].has("is") or predicate(words[1])
    return told and bool(first.owners or first.ids or first.spare)


def tells_of_a_piece(rest: Sequence[Item]) -> bool:
    """Whether the next words, up to a mark, are of another piece and how it is."""
    said = list(takewhile(lambda i: not i.mark, rest))
    return any(i.piece is not None for i in said) and any(of_clothes(i) or i.has("broken") for i in said)


def stays_or_goes_on(rest: Sequence[Item]) -> bool:
    """As in "(fuera la gorda,) el forro se queda", "dentro la fina": another piece that stays, or goes on instead."""
    words = [i for i in rest[:LIST] if not i.has("article", "her") or i.piece is not None]
    first, then = (*words, None, None)[:2]
    if first is None or then is None:
        return False
    return (first.piece is not None and then.has("stays", "keeps")) or (
        first.has("inwards") and not first.horses and then.piece is not None
    )


def puts_on_or_off(rest: Sequence[Item]) -> bool:
    """Whether the next words, up to a mark, put a piece on or take it off."""
    said = list(takewhile(lambda i: not i.mark, rest))
    return any(i.piece is not None for i in said) and some_mean(said, "on", "off", "put on", "took off", "wears")


def told_of_a_horse(rest: Sequence[Item]) -> bool:
    """Whether a horse, or a list of them, and how it is follow at once: "Luna en cambio está bien"."""
    small = ("article", "is", "very", "a little", "but", "not")
    if not next((i for i in rest[:LIST] if i.horses or not i.has(*small) or predicate(i)), NOTHING).horses:
        return False
    words = [i for i in rest[:LIST] if not i.has(*small) or predicate(i) or i.horses]
    how = next((k for k, i in enumerate(words) if not (i.horses or (k and i.has("and")))), 0)
    return how > 0 and predicate(words[how])


def told_of_one(rest: Sequence[Item]) -> bool:
    """As in ", Canela está muy caliente", ", Otto is sweating": one horse and a verb, and how it is."""
    words = list(dropwhile(lambda i: i.has("article", "time") and not i.horses, rest[:LIST]))
    verb = len(words) > 1 and bool(words[0].horses) and (words[1].has("is") or bool(words[1].kinds("sign")))
    return verb and told_of_a_horse(rest)


def everyone_done(rest: Sequence[Item]) -> bool:
    """As in ", todos los caballos hechos ya", ", Perle et Lune sont faites": all or some, and that they are done."""
    if bool(rest) and rest[0].has("everyone", "all horses"):
        return some_mean(rest[1:3], "done")
    behind = next(dropwhile(lambda i: i.horses or i.text == "," or i.has("and", "article", "is"), rest[:LIST]), NOTHING)
    return bool(rest) and bool(rest[0].horses) and behind.has("done", "all done")


def the_rest_as_well(current: Thought, rest: Sequence[Item]) -> bool:
    """As in "hechos Lola (y los demás)", "faits Max et les autres": the others as well, and no more."""
    listed = current.has("done", "all done") and bool(current.horses) and bool(rest) and rest[0].has("the rest")
    return listed and all(i.has("time", "polite", "everyone") for i in takewhile(lambda i: not i.mark, rest[1:]))


def told_of_her(before: Sequence[Item], rest: Sequence[Item]) -> bool:
    """As in "(are you coming for Pip,) he's sweating": what follows is told of the only horse named before it."""
    words = [i for i in rest[:LIST] if not i.has("is", "very", "a little") or predicate(i)]
    one = len({i.horses for i in before if i.horses}) == 1
    return one and len(words) > 1 and words[0].has("she") and bool(words[1].kinds("sign"))


def does_something(rest: Sequence[Item]) -> bool:
    """As in "(is wet) and Maple had a lesson", "(está mojada) y a Nube le he puesto la fina": a horse, then a verb."""
    words = list(dropwhile(lambda i: i.has("article", "toward") and not i.horses, rest[:LIST]))
    return len(words) > 1 and bool(words[0].horses) and words[1].has(*VERBS) and not words[1].has("and")


def worked_or_moved(rest: Sequence[Item]) -> bool:
    """As in "(no, the tractor isn't fixed,) Otto got ridden at 10": a horse, a verb, and its work or place."""
    return does_something(rest) and some_mean(rest[1:4], "worked", "work", "brought in", "turned out")


def denied_alone(items: Sequence[Item], rest: Sequence[Item]) -> bool:
    """As in "Canelo no, (era Rayo el que sudaba)": who it is not, nothing of what, and then of another."""
    if not (items[-1].has("no", "not") and any(i.horses for i in items)):
        return False
    another = any(i.horses for i in takewhile(lambda i: not i.mark, rest))
    return another and all(i.horses or i.has("no", "not", "is", "and", "article") for i in items)


def goes_on_table(before: Sequence[Item], rest: Sequence[Item]) -> bool:
    """As in "Max: the 300, Pip: naked": a horse, a mark and a piece, and then another horse and a mark."""
    row = len(before) > 1 and bool(before[0].horses) and before[1].mark
    another = len(rest) > 1 and bool(rest[0].horses) and rest[1].mark
    return row and another and all(i.piece is not None or i.mark or i.has("and", "article", "her") for i in before[1:])


def worn_and_told(before: Sequence[Item], rest: Sequence[Item]) -> bool:
    """As in "Max : imper, (la 300 est trempée)": a horse, a mark and what it wears, and then how another piece is."""
    if len(before) <= 2 or not (before[0].horses and before[1].mark) or before[1].text == ",":
        return False
    only = all(i.piece is not None or i.has("and", "article", "her", "time") for i in before[2:])
    then = [i for i in rest[:3] if not i.has("article", "her") or i.piece is not None]
    told = len(then) > 1 and then[0].piece is not None and then[1].has("is", "drying")
    return only and any(i.piece is not None for i in before[2:]) and told


def owner_at_last(rest: Sequence[Item], pieces: Sequence[Piece]) -> bool:
    """As in "(sa couverture est trempée), à Réglisse": whose it is comes last."""
    return bool(rest) and rest[0].has("of") and only_a_name(rest[1:]) and any(p.their for p in pieces)


def as_the_one_before(rest: Sequence[Item]) -> bool:
    """As in ", et Caramel pareil", ", same with Pip's liner": that it is the same, of whom or of what, and no more."""
    words = [i for i in rest if not i.has("and", "article") or i.horses]
    whose = [i for i in words if i.horses or (i.piece is not None and i.piece.owners)]
    too = [i for i in words if i.has("too")]
    return len(words) == 2 and len(whose) == 1 and len(too) == 1 and (bool(whose[0].horses) or words[0] is too[0])


def seen_there(before: Sequence[Item], rest: Sequence[Item]) -> bool:
    """As in "Moka dehors elle a froid", "Caramel lui au pré il a froid": where it was seen, not put."""
    small = ("and", "but", "article", "in", "her", "she", "polite")
    words = [i for i in before if not (i.mark or i.has(*small)) or i.horses or _place(i)]
    places = [k for k, i in enumerate(words) if _place(i)]
    first = bool(words) and bool(words[0].horses) and len(words) == 2  # "au pré Lune et Moka elles …": several
    stands = len(places) == 1 and (first or (places[0] == 0 and len(words) > 1 and all(i.horses for i in words[1:])))
    pronoun = bool(rest) and rest[0].has("she") and rest[0].has("subject")
    return stands and pronoun and any(predicate(i) for i in rest[1:4])


def stands_somewhere(rest: Sequence[Item]) -> bool:
    """As in ", elle est au box", ", elle est en imper": a pronoun, and at once where it is, or in what."""
    if not some_mean(rest[:5], "she"):
        return False
    words = [i for i in rest[:5] if not i.has("time", "in", "her", "article") or i.has("she", "wears") or _place(i)]
    pronoun = len(words) > 2 and words[0].has("she") and words[0].has("subject") and words[1].has("is", "wears")
    dressed = any(i.has("in") or (i.has("wears") and not i.has("link")) for i in rest[1:4])
    return pronoun and (_place(words[2]) or (dressed and any(i.piece is not None for i in words[2:4])))


def did_nothing_to(current: Thought) -> bool:
    """As in "Lune est revenue de la clinique"; but in "Lune a perdu un fer, (il est au pré)" two are spoken of."""
    if current.pieces or not current.horses:
        return False
    if not current.has("article", "her", "some"):
        return True
    joins = ("of", "in", "on", "toward", "at somebody's", "after")
    spoken = [i for k, i in enumerate(current.items) if not i.has("article") or not current.items[k - 1].has(*joins)]
    return not any(i.has("article", "her", "some") and not (i.horses or i.has(*joins)) for i in spoken[1:])


def _place(item: Item) -> bool:
    return item.has("place stall", "place field") and not item.has("turned out", "brought in")


def begins_to_ask(rest: Sequence[Item]) -> bool:
    """As in ", can somebody ring the vet", "Ann can you ring the vet": what comes is put to people."""
    rest = rest[1:] if rest and rest[0].person else rest
    return len(rest) > 1 and rest[0].has("question") and rest[0].has("plan", "is") and rest[1].has("i", "plan")


def only_a_name(rest: Sequence[Item]) -> bool:
    """Whether nothing but a horse is left to say."""
    small = ("polite", "article", "any adjective")  # "he's trembling, poor Jack"
    words = list(dropwhile(lambda i: i.has(*small) and not i.horses, (i for i in rest if not i.mark)))
    return bool(words) and bool(words[0].horses) and all(i.horses or only_small(i) for i in words[1:])


def named_again(behind: Sequence[Item], current: Thought) -> bool:
    """Whether what follows opens with a horse that was named already: no list names one twice."""
    if not current.horses:
        return False
    opens = next((i for i in behind if i.horses or not i.has("time", "article")), NOTHING)
    return bool(opens.horses) and any(i.horses == opens.horses for i in current.horses)


def both_worked(current: Thought, behind: Sequence[Item]) -> bool:
    """As in "longé Lune et Moka 20 min chacun": how long and where is of both; "… et Moka est au box" is of one."""
    if not (current.has("worked") and current.items[-1].horses):
        return False
    names = list(dropwhile(lambda i: i.has("article", "toward") and not i.horses, behind[:OUTING]))
    if not (names and names[0].horses):
        return False
    if any(i.has("worked") and i.has("brought") for i in current.items) and names[1:2] and names[1].has("place stall"):
        return True  # "monté Lune et Moka à l'écurie"
    rest = list(takewhile(lambda i: not i.mark, names[1:]))
    return not any(i.piece is not None or i.has(*OF_THE_SECOND) for i in rest) and all(map(_how_long_or_where, rest))


def _how_long_or_where(item: Item) -> bool:
    return soft(item) or item.number is not None or item.has("work")


def would_be_else(behind: Sequence[Item]) -> bool:
    """As in "elle a froid", "elle va être trempée": a pronoun, and how nobody leaves a horse."""
    she = bool(behind) and behind[0].has("she", "it")
    return she and any(predicate(i) and not i.has("sign comfortable", "everyday comfortable", "dry") for i in behind)


def of_its_piece(rest: Sequence[Item]) -> bool:
    """A piece, and at once what is said of it."""
    return (
        len(rest) > 1
        and rest[0].piece is not None
        and rest[1].has("is", "link")
        and not rest[1].has("has", "in", "on", "off")
    )


def then_put_on(rest: Sequence[Item]) -> bool:
    """Whether several pieces follow, and that they were put on."""
    behind = list(dropwhile(lambda i: i.piece is not None or i.has("and"), rest))
    several = len(rest) - len(behind) >= SEVERAL
    return several and bool(behind) and behind[0].has("put on") and behind[0].has("on")


def brings_her(rest: Sequence[Item]) -> bool:
    """As in "(Clem soaked, no rug on,) brought her in"."""
    her = len(rest) > 2 and rest[0].has("brought") and rest[1].has("she", "her")
    return her and rest[2].has("inwards", "outwards")
