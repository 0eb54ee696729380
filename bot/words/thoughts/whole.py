"""Whether a thought is whole: whose it is, and what of it, has been said; what comes may begin another."""

from collections.abc import Sequence
from itertools import dropwhile, takewhile

from bot.words.lookup.items import NOTHING, Item, all_mean, predicate, some_mean
from bot.words.thoughts.clauses import CLIPS, Thought, gathered, is_subject
from bot.words.thoughts.hers import owns_the_stall

FROM_WORK = 3  # words of "from the lesson"
ENOUGH = (
    "bare", "stripped", "inwards", "outwards", "place stall", "place field", "brought in", "turned out", "worked",
    "clipped",
)  # fmt: skip
NAMING = frozenset((
    "article", "toward", "and", "polite", "time", "too", "both", "her", "of", "link", "my", "any adjective", "in",
    "place stall", "place field",
))  # fmt: skip
WHOLE = frozenset((  # without a piece, and how one is, only these make a thought whole
    "done", "all done", "broken", "drying", "too", "own", "work", "it", *CLIPS, *ENOUGH,
))  # fmt: skip
ASKED_FOR = "put"  # English: of what was done, and of what is to be done
ALIKE = 3  # words of a horse that is as the one before


def dresses(current: Thought) -> bool:
    """A piece was put on or taken off."""
    return bool(current.pieces) and current.has("put on", "took off", "took", "wears", "keeps", "on", "off")


def _so_is(items: Sequence[Item]) -> bool:
    """As in "(her sheet is wet) and so is the liner, hung both up", "so are Pip and Ned": as the one before."""
    if not items[0].has("too"):
        return False
    rest = [i for i in items[1:] if not i.has("polite")]
    return bool(rest) and is_subject(rest[-1]) and all(is_subject(i) or i.has("and") for i in rest)


def _alike(items: Sequence[Item]) -> bool:
    """As in "(Cara sèche,) Lune et Max aussi": horses that are as the one before, and no more."""
    if not items[-1].has("too"):
        return False
    return len(items) <= ALIKE or all(i.horses or i.mark or i.has("and", "article") for i in items[:-1])


def dressed_before(sentence: Sequence[Item], at: int, current: Thought) -> bool:
    """As in "(Pip sudado,) le quité la gorda": of the horse named before it, where another begins at this place."""
    if not dresses(current) or current.horses or any(p.owners for p in current.pieces):
        return False
    opens = next((i for i in sentence[at + 1 : at + 3] if i.horses or not i.has("toward", "article")), None)
    return opens is not None and bool(opens.horses) and any(i.horses for i in sentence[:at])


def complete(current: Thought) -> bool:
    """A horse or a piece, and how it is, where it is, or what it wears."""
    if not (current.told or current.pieces) and current.means.isdisjoint(WHOLE):
        return False
    if current.items and current.items[0].has("polite"):  # "ok that's Maple, Pip …" says nothing of Maple yet
        current = gathered(dropwhile(lambda i: i.has("polite"), current.items))
    pieces = current.pieces
    horse = (
        bool(current.horses)
        or current.has("she", "everyone", "all horses", "all done")
        or any(p.owners or p.their or p.ids for p in pieces)
    )
    if (horse or pieces) and (current.told or current.has("done", "all done", "broken", "drying")):
        return True
    return horse and placed_or_dressed(current)


def did_a_deed(current: Thought) -> bool:
    """Whether more is said than whom and what it is about, but not how that is."""
    if current.told or current.means <= NAMING:
        return False
    return any(i.means and not (is_subject(i) or i.has(*NAMING)) for i in current.items)


def wished_of_one(current: Thought, rest: Sequence[Item]) -> bool:
    """As in "déjenmelo sin manta de aquí en adelante, Biscuit ya puede llevar": a wish, and then of another horse."""
    if not current.has("do not rug", "rug again", "keep", "please"):
        return False
    if not (current.has("do not rug", "rug again") or (current.has("keep", "please") and current.has("bare"))):
        return False
    behind = list(takewhile(lambda i: not i.mark, rest))
    named = {name for i in current.horses for name in i.horses}
    another = any(i.horses and named.isdisjoint(i.horses) for i in behind)
    return another and not all(i.horses or i.has("article", "polite", "toward", "and") for i in behind)


def _whose_stall(items: Sequence[Item]) -> bool:
    """As in "le box de Perle (et Lune est inondé)": a place is spoken of, and whose it is."""
    horse = next((k for k, i in enumerate(items) if i.horses), 0)
    opens = all_mean(items[:horse], "article", "place stall", "place field", "polite", "of")
    return opens and owns_the_stall(items, horse)


def placed_or_dressed(current: Thought) -> bool:
    """Whether a clause of a horse says where it is, what it wears, or that it is as the one before."""
    items = current.items
    if _alike(items) or _so_is(items):
        return True  # "clover same, biscuit cold"
    if items[-1].has("own") and current.has("in", "wears"):
        return True  # "Clemmie in hers"
    clips = not current.means.isdisjoint(CLIPS)
    if clips and current.has("had"):
        return True  # "le hicieron trace a Canela, el Huaso trae una rozadura"
    if clips and any(i.kinds("style") and ("clip" in i.text or i.means & {"style none"}) for i in items):
        return True
    if current.has("work") and current.has("took", "had", "took part"):
        return True  # "took Pip for a hack he came back hot"
    small = ("time", "polite", "link")  # "got Fergus in finally"
    last = next((i for i in reversed(items) if not i.has(*small) or i.has("inwards", "outwards")), items[-1])
    if last.has("inwards", "outwards"):
        return True
    if current.has(*ENOUGH) and any(i.has(*ENOUGH) and not i.has("in") for i in items) and not _whose_stall(items):
        return True
    if current.has("it") and current.has("put on", "took off"):
        return True  # "se la puse a Canela, …"
    return bool(current.pieces) and current.has(
        "put on", "took off", "took", "swapped", "wears", "keeps", "in", "on", "off", "only", "without", "in its stead"
    )


def surely_done(current: Thought) -> bool:
    """A horse is dressed so, or was moved, for certain: "he's in his sheet"; "put it on" may be asked for."""
    if not complete(current) or current.has("plan", "habit", "if", "keep"):
        return False
    asked_for = any(i.text == ASKED_FOR for i in current.items) and not current.has("subject", "is")
    return not asked_for


def ends_with_a_sign(items: Sequence[Item]) -> bool:
    """Whether how one is ends the words, past what it comes from: "sweaty from the lesson"."""
    said = items[: _work_behind(items)]
    last = next((i for i in reversed(said) if not i.has("very", "time", "i") or predicate(i)), NOTHING)
    return predicate(last)


def _work_behind(items: Sequence[Item]) -> int:
    """The place of what it comes from, where that ends the words: "sweaty from the lesson"; else behind the last."""
    if not items or not items[-1].has("work"):
        return len(items)
    last = max(0, len(items) - FROM_WORK)
    return next((k for k in range(last, len(items)) if items[k].has("after") and not items[k].has("work")), len(items))


def of_another(current: Thought, rest: Sequence[Item]) -> bool:
    """Whether only horses are named up to the next pause that were not spoken of before it."""
    before = {name for i in current.horses for name in i.horses} | {n for p in current.pieces for n in p.owners}
    named = {name for i in takewhile(lambda i: not i.mark, rest) for name in i.horses}
    return bool(named) and named.isdisjoint(before)


def worn_with_it(behind: Sequence[Item], current: Thought) -> bool:
    """As in "Pip has his liner on and the sheet", "in his liner along with the sheet": one more piece, and no more."""
    piece = behind[0].piece if behind else None
    more = piece is not None and not piece.owners
    hers = piece is not None and bool(current.pieces) and piece.owners in ((), current.pieces[-1].owners)
    if hers and current.has("swapped") and some_mean(behind[1:2], "for another"):
        return True  # "swapped her liner and sheet for the heavy"
    if (
        piece is not None
        and current.has("took")
        and current.pieces
        and not current.has("off", "took off")
        and some_mean(behind[1:2], "off")
    ):
        return True  # "took June's liner and medium off"
    worn = bool(current.pieces) and current.has("on", "off", "in") and not current.told
    return more and worn and (len(behind) == 1 or behind[1].mark)
