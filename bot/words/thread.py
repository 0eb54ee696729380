"""The thread of a message: whom and what a clause leaves for those behind it, and which stand for themselves."""

from dataclasses import replace

from bot.words.clauses import Clause, soft
from bot.words.items import predicate
from bot.words.piece import Piece
from bot.words.telling import Telling


def spoken_of(clause: Clause, telling: Telling) -> None:
    """As in "Theodore would not stand for the big one, so he is in his liner": who "he" is."""
    horses = [i for i in clause.items if i.horse]
    if clause.only_yesterday and clause.has("clipped") and len(horses) == 1:
        telling.who, telling.begun, telling.last = (horses[0],), True, "horse"  # "Pip got clipped yesterday. Full clip"
    elif clause.has("yesterday", "long ago"):
        telling.who, telling.begun = (), True  # "won her class yesterday! Soaked, but happy"
    elif len(horses) == 1 and clause.items[0] is horses[0] and not clause.has("if"):
        telling.who, telling.begun, telling.last, telling.planned = (horses[0],), True, "horse", True


def with_owner(piece: Piece, telling: Telling) -> Piece:
    """A piece with its owner, as far as the message has told."""
    if piece.owners or piece.spare:
        return piece
    return replace(piece, owners=tuple(n for i in telling.who if i.sure for n in i.horses))


def of_people(clause: Clause) -> bool:
    """Of somebody, and of no horse: "can't make it tomorrow"."""
    of_a_horse = clause.horses or any(piece.owners for piece in clause.pieces)  # "j'ai pas mis la kaki à Soleil"
    return not of_a_horse and (clause.has("i") or any(i.person for i in clause.items))


def of_a_thing(clause: Clause) -> bool:
    """Of something that no table knows, or of an animal: "the van won't start"; what follows is told of it."""
    said = (i for i in clause.items if not (soft(i) or i.has("her", "my")) or i.has("animal", "mass"))
    first = next(said, None)
    if first is None or predicate(first) or any(i.has("she") and not i.has("article") for i in clause.items):
        return False
    return first.person or first.has("animal", "mass", "visitor", "i") or not first.means


def picks_out(clause: Clause) -> bool:
    """As in "el que está sudado es Rayo, no Luna": what follows says which it is not."""
    return clause.has("relative") and clause.has("is") and bool(clause.horses)


def present(clause: Clause) -> bool:
    """A horse and a sign in one clause stand for themselves, whatever was planned before it."""
    signs = any(i.kinds("sign") or i.kinds("everyday") or i.has("wet", "soaked") for i in clause.items)
    return bool(clause.horses) and signs and clause.joined != "if"


def danger_of_hers(clause: Clause, telling: Telling) -> bool:
    """As in "I'm worried about Lady Grey, she's not eaten": a pronoun, and what is never only planned."""
    danger = any(i.has("sign shivering", "sign unwell") for i in clause.items)
    return danger and clause.items[0].has("she", "is") and clause.has("is", "she") and telling.begun
