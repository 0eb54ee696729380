"""How one is dressed, left out because the one before said so: "Maple in her heavy, Pip his sheet", "Clem in hers"."""

from collections.abc import Sequence

from bot.events import Done, Wearing
from bot.words.clothing.change import Change
from bot.words.lookup.items import Item
from bot.words.lookup.piece import RUGS, Piece
from bot.words.thoughts.clauses import Clause
from bot.words.told.telling import Telling
from bot.words.told.wearers import of_another_horse


def as_before(clause: Clause, change: Change, telling: Telling) -> None:
    """What a clause that does not say it does to an outfit: what the one before did."""
    pieces = list(clause.pieces)
    dressed = bool(telling.events) and isinstance(telling.events[-1], Wearing)
    lent = bool(clause.horses) and any(of_another_horse(piece, clause.horses) for piece in pieces)
    if telling.dressed and dressed and _only_names(clause.items) and not lent:
        change.whole, change.add = (pieces, []) if telling.dressed == "whole" else ([], pieces)
    elif dressed and clause.items[0].has("toward") and _came_off(telling) and _only_names(clause.items):
        change.remove = pieces  # "(le quité la azul a Canela) y a Moro la verde"
    elif telling.dressed and _nothing_on(clause.items):
        change.all_off = True
    elif telling.spoken is not None and clause.items[-1].has("own") and _of_its_own(clause, telling):
        own = [_own(telling.spoken, clause.horses, telling)]
        change.whole, change.add = (own, []) if telling.dressed != "on" or clause.has("in", "wears") else ([], own)
    elif pieces and _said_to_be_dressed(clause, telling):
        change.rugs_off, change.add = True, pieces  # all that it had on before
    elif dressed and pieces and _in_its_stead(clause, telling):
        change.add = pieces


def _only_names(items: Sequence[Item]) -> bool:
    """As in "(Maple is in her heavy,) Pip his sheet"."""
    named = any(i.horses or (i.piece and i.piece.owners) for i in items)
    return named and all(i.horses or i.piece or i.has("and", "of", "article", "toward") or i.mark for i in items)


def _nothing_on(items: Sequence[Item]) -> bool:
    """As in "(Orbayu lleva la fina) y Pía nada"."""
    said = [i for i in items if not i.mark]
    return len(said) == 2 and bool(said[0].horses) and said[1].has("nothing")


def _of_its_own(clause: Clause, telling: Telling) -> bool:
    """As in "Clem in hers", "(le puse a Nube la media) y a Moro la suya"."""
    to_one = bool(clause.horses) and all(i.horses or i.has("toward", "article", "and", "own") for i in clause.items)
    return clause.has("in", "wears") or (to_one and telling.dressed != "")


def _own(spoken: Piece, horses: Sequence[Item], telling: Telling) -> Piece:
    """One of the same sort as the piece spoken of; any rug of a horse that has none such."""
    alike = spoken._replace(owners=(), ids=(), words=frozenset(), given=False)
    names = [name for i in horses if i.sure for name in i.horses]
    fits = all(telling.meant(alike, name).ids for name in names)
    return alike if fits else Piece(spoken.said, RUGS, rug=True)


def _in_its_stead(clause: Clause, telling: Telling) -> bool:
    """As in "(no lleva la azul) sino la verde", "(fuera la azul,) dentro la verde": only what goes on instead."""
    opens = clause.joined == "but" or clause.items[0].has("inwards")
    only = all(i.piece is not None or i.mark or i.has("article", "her", "and", "time", "inwards") for i in clause.items)
    return _came_off(telling) and opens and only


def _said_to_be_dressed(clause: Clause, telling: Telling) -> bool:
    """As in "(habillé Lune,) imper": who was dressed was told right before, and then in what, and no more."""
    last, heard = telling.events[-1] if telling.events else None, telling.heard
    if not isinstance(last, Done) or last.horses == "all" or len(last.horses) != 1:
        return False
    if heard is None or not heard.has("done"):
        return False
    if not all(i.piece is not None or i.mark or i.has("and", "article", "her", "over", "time") for i in clause.items):
        return False
    if heard.has("put on", "swapped", "ask wearing"):
        telling.changed.update(last.horses)  # how it was done is told
    return True


def _came_off(telling: Telling) -> bool:
    """Whether the last outfit told is what was left when something came off."""
    return telling.change is not None and bool(telling.change.remove) and not telling.dressed
