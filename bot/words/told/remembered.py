"""Whom and what a clause leaves spoken of, once its signs are read."""

from collections.abc import Sequence
from itertools import pairwise

from bot.words.lookup.items import Item
from bot.words.lookup.piece import Piece
from bot.words.thoughts.around import not_that_one
from bot.words.thoughts.clauses import soft
from bot.words.thoughts.hers import beside, owns_the_stall, something_of_hers
from bot.words.told.below import hand_under
from bot.words.told.subjects import Reading
from bot.words.told.telling import named
from bot.words.told.things import only_whose
from bot.words.told.thread import just_taken_off

LIKE = ("like", "parecia", "parecias", "pareciamos")  # what looks like a horse is none


def remember(reading: Reading) -> None:
    """The horses and the piece of this clause, for whoever is not named behind it."""
    telling, pieces = reading.telling, reading.clause.pieces
    items = reading.items
    here = [k for k, i in enumerate(items) if i.horses]
    if reading.clause.has("not", "place stall", "place field"):
        here = [k for k in here if not (not_that_one(items, k) or owns_the_stall(items, k))]
    if pieces:  # "Otto's sheet fell on Fig's hay, it's wet"
        here = [k for k in here if not (something_of_hers(items, k) or only_whose(items, k))]
    if here and not pieces and all(k and items[k - 1].text.split()[-1] in LIKE for k in here):
        telling.of_nobody()  # "looked like Gus after a mud bath, soaked and shivering"
        return
    horses = [items[k] for k in here]
    owned = list(dict.fromkeys(name for piece in pieces for name in piece.owners)) if pieces else []
    if not (horses or owned) and reading.clause.has("no name"):
        telling.of_nobody()
    aside = all(beside(items, k) for k in here)  # "Otto's sheet is on the gate by Fig, soaked"
    if pieces and aside:
        telling.last = "piece"
        found = [telling.meant(p, n).ids for p in pieces for n in _whose(p, reading)]
        telling.piece = (found[0] or just_taken_off(pieces[0], telling)) if len(found) == 1 else ()
    if horses or owned:
        last = [i for i in horses if i in reading.horses]  # of "Ranger and Jet first… Penny is ill" Penny
        felt = named(owned) if owned and hand_under(items) else ()  # "by Pip I felt under Ned's liner. He's cold"
        telling.who = felt or tuple(last or horses) or named(() if _for_a_stranger(items) else owned)
        telling.others = (telling.who, tuple(reading.others)) if last and reading.others else None
        telling.begun, telling.asked, telling.planned = True, False, False
        telling.crowded = _crowded(items)
        telling.last = (
            "horse"
            if horses and not aside and not (reading.latest == "piece" and telling.last == "piece")
            else telling.last
        )


def _for_a_stranger(items: Sequence[Item]) -> bool:
    """As in "lent Tansy's cooler to Mary for her gelding": somebody's horse that is none of the barn's."""
    return any(
        one.has("her", "some") and then.has("a horse", "animal") and not then.horses for one, then in pairwise(items)
    )


def _whose(piece: Piece, reading: Reading) -> Sequence[str | None]:
    spoken_of = () if piece.spare else reading.telling.owner_meant_by(reading.clause)
    return piece.owners or [name for i in spoken_of if i.sure for name in i.horses] or (None,)


def _crowded(items: Sequence[Item]) -> bool:
    """As in "The kid fell off Pip": who is "she" in what follows?"""
    for item in items:
        if item.horses or item.piece is not None:
            return False
        if item.person or (not soft(item) and not item.means):
            return True
    return False
