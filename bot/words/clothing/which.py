"""Which of the barn's garments a description comes to, or which it may be: then it is asked. Never a guess."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache

from bot.state import State
from bot.words.heard.colours import COLOURS
from bot.words.lookup.names import Roster
from bot.words.lookup.piece import Piece, colour
from bot.words.lookup.tokens import words

REMEMBERED = 2_000  # descriptions
BOTH = 2
NOUN = 4  # letters of a word that can be what a piece is called


@dataclass(frozen=True, slots=True)
class Meant:
    """What a description comes to: the garments, or the choices where it is not sure."""

    ids: tuple[str, ...] = ()
    options: tuple[str, ...] = ()


def meant(piece: Piece, horse: str | None, roster: Roster, state: State, *, lend: bool = False) -> Meant:
    """The garment that `piece` means for this horse (None: no horse was named).

    lend: a spare may be meant where the horse has none such of its own.
    """
    fitting = roster.fitting(piece)
    if horse is None:
        every = piece.every and not (piece.pair and len(fitting) != BOTH)  # "both liners", of a barn that has four
        return _one(_likelier(piece, fitting, roster), every=every)
    worn = tuple((state.horses[horse].wear if horse in state.horses else None) or ())
    own = [g for g in fitting if roster.garments[g].horse == horse or (g in worn and roster.garments[g].horse is None)]
    if piece.worn:
        own = [g for g in own if g in worn] or own
    if piece.spare:
        own = [g for g in fitting if g in worn] or list(fitting)
    if not own and piece.ids and (not piece.owners or (piece.given and len(piece.owners) == 1)):
        own = _lent(fitting, horse, roster) if lend else []
    own = own or _called(piece, horse, roster) or _as_elsewhere(piece, horse, roster)
    own = own or _outdoors(piece, horse, roster)
    if not own and lend:
        own = [g for g in fitting if roster.garments[g].horse is None]
    if not own:
        kinds = [g for g in roster.owned.get(horse, ()) if not piece.kinds or roster.garments[g].kind in piece.kinds]
        return Meant(options=tuple(kinds or roster.owned.get(horse, ())))
    if piece.pair and len(own) != BOTH:  # "both of June's rugs", of one that has four: the two that it wears
        return Meant(ids=worn) if piece.rug and len(worn) == BOTH else Meant(options=tuple(own))
    return _one(_likelier(piece, own, roster), every=piece.every or piece.several)


def _lent(fitting: Sequence[str], horse: str, roster: Roster) -> list[str]:
    """The spares called so; or another horse's, where only that is called so and this one has none of its kind."""
    spares = [g for g in fitting if roster.garments[g].horse is None]
    if spares or len(fitting) != 1:
        return spares
    kind = roster.garments[fitting[0]].kind
    return [g for g in fitting if all(roster.garments[own].kind != kind for own in roster.owned.get(horse, ()))]


def _likelier(piece: Piece, fitting: Sequence[str], roster: Roster) -> Sequence[str]:
    """Of several the ones with the weight word in their names, or with a fill: a sheet is light, but no "light"."""
    if piece.fill and not piece.kinds:  # "la 100 est sèche": nobody says so of a neck cover
        fitting = [g for g in fitting if roster.garments[g].kind != "neck"] or fitting
    if not piece.called:
        return fitting
    called = [g for g in fitting if not piece.called.isdisjoint(roster.bags[g])]
    return called or [g for g in fitting if roster.garments[g].fill_g] or fitting


def _called(piece: Piece, horse: str, roster: Roster) -> list[str]:
    """The one of its pieces that the barn calls so, whatever it is: "el impermeable", with a little fill."""
    said = _nouns(piece.said) - _nouns(horse)
    called = [
        g
        for g in roster.owned.get(horse, ())
        if not said.isdisjoint(roster.bags[g]) and not _otherwise(piece, roster.bags[g])
    ]
    return called if len(called) == 1 and not (piece.spare or piece.fill or piece.ids) else []


def _otherwise(piece: Piece, bag: frozenset[str]) -> bool:
    """As in "the fly sheet" of a rain sheet, "the red sheet" of a green one; of one without a colour it may be."""
    told = {colour(word) for word in bag}
    wanting = [word for word in piece.words if word not in bag and colour(word) not in told]
    coloured = not told.isdisjoint(COLOURS.values())
    return any(coloured or word not in COLOURS for word in wanting)


def _as_elsewhere(piece: Piece, horse: str, roster: Roster) -> list[str]:
    """Its only one of the kind that the barn calls so: "la capa de Chispa", where Canela's turnout is canela-capa."""
    said = _nouns(piece.said) - _nouns(horse)
    kinds = {roster.garments[g].kind for g, bag in roster.bags.items() if not said.isdisjoint(bag)}
    plainly = bool(piece.kinds) and len(said) == 1
    plainly = plainly and not (piece.rug or piece.words or piece.fill or piece.spare or piece.ids)
    own = [g for g in roster.owned.get(horse, ()) if roster.garments[g].kind in kinds] if plainly else []
    return own if len(own) == 1 else []


def _outdoors(piece: Piece, horse: str, roster: Roster) -> list[str]:
    """As in "la de fuera", "his turnout" of one that has only a sheet to go out in: its own, before any spare."""
    plainly = piece.kinds == {"turnout"} and not (piece.words or piece.fill or piece.spare or piece.ids)
    own = [g for g in roster.owned.get(horse, ()) if roster.garments[g].kind == "sheet"] if plainly else []
    return own if len(own) == 1 else []


@lru_cache(maxsize=REMEMBERED)
def _nouns(said: str) -> frozenset[str]:
    return frozenset(word for word in words(said) if len(word) >= NOUN)


def _one(fitting: Sequence[str], *, every: bool) -> Meant:
    if len(fitting) == 1 or (every and fitting):
        return Meant(ids=tuple(fitting))
    return Meant(options=tuple(fitting))


def ordered(ids: Iterable[str], roster: Roster) -> tuple[str, ...]:
    """Garments from the skin outward."""
    place = {"cooler": 0, "liner": 1, "stable": 2, "turnout": 3, "sheet": 4, "neck": 5}
    known = [g for g in dict.fromkeys(ids) if g in roster.garments or g == ""]
    return tuple(sorted(known, key=lambda g: place[roster.garments[g].kind] if g else 9))
