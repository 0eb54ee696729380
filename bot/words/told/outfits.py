"""The outfit that results: what a horse wears after pieces are put on, taken off or swapped."""

from collections.abc import Collection, Sequence
from dataclasses import replace

from bot.events import GarmentIs, Wearing
from bot.words.clothing.change import Change
from bot.words.clothing.which import ordered
from bot.words.lookup.items import Item
from bot.words.lookup.piece import RUGS, Piece
from bot.words.meaning import WITHOUT, Ask
from bot.words.told.telling import Telling

OUTER = RUGS | {"cooler"}
ROUNDING = 40  # g/m²: what somebody may leave out of a number


def concerned(horse: str, change: Change, telling: Telling) -> bool:
    """Whether what is told of everyone is news of this horse: "sheets off everyone" is none of who wears no sheet."""
    if not change.remove or change.add or change.whole:
        return True
    return any(_on(piece, horse, telling) for piece in change.remove)


def _on(piece: Piece, horse: str, telling: Telling) -> tuple[str, ...]:
    """What the horse has on that is as described."""
    garments, bags = telling.roster.garments, telling.roster.bags
    return tuple(g for g in telling.wear(horse) or () if g in garments and piece.fits(garments[g], bags[g]))


def as_worn(change: Change, item: Item, telling: Telling) -> Change:
    """As in "elle garde que la 100", of two such: only the one that she has on can stay on."""

    def staying(piece: Piece) -> Piece:
        on = _on(piece, item.horses[0], telling)
        return piece._replace(ids=on) if len(on) == 1 and item.sure else piece

    return replace(change, add=list(map(staying, change.add)), whole=list(map(staying, change.whole)))


def one_of_several_on(change: Change, item: Item, telling: Telling) -> bool:
    """As in "laissé la 100 à Lune, viré le liner", of two such that she has on: which stayed, what follows tells."""
    return any(len(_on(piece, item.horses[0], telling)) > 1 for piece in (*change.add, *change.whole))


def spare_of_several(names: Collection[str], change: Change, telling: Telling) -> Piece | None:
    """As in "put the spare sheet on Otto and Fig", of which there is one: the piece that only one can have on."""
    garments = telling.roster.garments
    for piece in (*change.add, *change.whole):
        on = [g for name in names for g in telling.meant(piece, name, lend=True).ids if garments[g].horse is None]
        if len(on) > len(set(on)):
            return piece
    return None


def tell_outfit(item: Item, change: Change, telling: Telling) -> None:
    """The outfit of this horse is told, or asked about where the horse or a piece is not sure."""
    if not item.sure:
        pending = Wearing("", ()) if change.strips else _outfit(item.horses[0], change, telling, ask=False)
        only = change.strips or len(item.horses) == 1
        telling.wonder(Ask("horse", item.raw, item.horses, (pending,) if pending and only else ()))
        return
    if _asked_which_came_off(item.horses[0], change, telling):
        return
    outfit = _outfit(item.horses[0], change, telling, ask=True)
    if outfit is not None:
        telling.say(outfit)


def tell_same(horses: Sequence[Item], telling: Telling) -> None:
    """As in "Maple is in her stable rug, Pip too": each in its own; of a piece called by its name there is but one."""
    change = telling.change
    if change is None or any(piece.spare for piece in change.pieces):
        return
    same = change.of_anothers()
    for item in horses:
        put_on = (*same.add, *same.whole)
        if all(len(item.horses) == 1 and _has_such(piece, item.horses[0], telling) for piece in put_on):
            tell_outfit(item, same, telling)


def _has_such(piece: Piece, horse: str, telling: Telling) -> bool:
    """Whether this horse has a piece that is told so; of one called by its name, which may be another's, its own."""
    found = telling.meant(piece, horse).ids
    return bool(found) and (not piece.ids or all(telling.roster.garments[g].horse == horse for g in found))


def _asked_which_came_off(horse: str, change: Change, telling: Telling) -> bool:
    """As in "took one of Storm's rugs off", "took her 100 off": asked, where it wears several that it may be."""
    if change.add or change.whole:
        return False
    worn = telling.wear(horse) or ()
    told = {g for piece in change.remove for g in telling.meant(piece, horse).ids}
    for piece in change.remove:
        may_be = tuple(g for g in _on(piece, horse, telling) if g not in told)
        all_of_them = piece.several or piece.every or piece.rug
        if len(may_be) > 1 and (piece.some or not (all_of_them or telling.meant(piece, horse).ids)):
            telling.wonder(Ask("garment", piece.said, may_be, (Wearing(horse, (WITHOUT, *worn)),)))
            return True
    return False


def _outfit(horse: str, change: Change, telling: Telling, *, ask: bool) -> Wearing | None:
    """What this horse wears after the change; None where a piece is not sure, which is then asked about."""
    worn = _kept(horse, change, telling)
    if _puzzling(horse, change, telling):
        return None  # "took her sheet off", of a horse that has none
    for piece in change.remove:
        worn = _without(worn, piece, horse, telling)
    before = list(worn)
    for piece in (*change.whole, *change.add):
        lent = len(piece.owners) == 1 and not piece.several
        owner = piece.owners[0] if lent else horse
        found = telling.meant(piece, owner, lend=owner == horse)  # "in Rosie's cooler", of Rosie who has none
        if piece.rug and piece.several and (len(found.ids) > 1 or len(worn) + 1 < len(telling.wear(horse) or ())):
            return None  # "left everyone's rugs on", "con sus mantas": which of them, nobody says
        ids = found.ids or _the_other(found.options, worn, change)
        if not ids:
            if found.options and ask:
                telling.wonder(Ask("garment", piece.said, found.options, (Wearing(horse, (*worn, "")),)))
            return None
        before = [g for g in before if g not in ids]  # "put her heavy and her stable rug on", the heavy again
        worn = _with(worn, ids, telling, yields=_yielding(change, before, horse, telling))
    return Wearing(horse, tuple(worn) if change.as_said else ordered(worn, telling.roster))


def _yielding(change: Change, before: list[str], horse: str, telling: Telling) -> Sequence[str]:
    """What gives way to a rug put on: all but what it was put on over, or nothing where that is not told."""
    if change.whole or (change.over and change.below is None):
        return ()
    below = telling.meant(change.below, horse).ids if change.below is not None else ()
    return [g for g in before if g not in below]


def _the_other(options: Sequence[str], worn: Sequence[str], change: Change) -> tuple[str, ...]:
    """As in "in her liner under the 100", of two of 100 g: not the one that was just named."""
    left = tuple(g for g in options if g not in worn)
    return left if change.whole and len(left) == 1 and len(options) == 2 else ()


def _puzzling(horse: str, change: Change, telling: Telling) -> bool:
    """As in "took her 200 off and put her cooler on", of a horse whose only one is a 220: what stays on, nobody knows.

    A rug put on in its stead takes the place of any other.
    """
    if change.whole or change.strips:
        return False
    unknown = bool(change.remove) and not _known(horse, change, telling)
    rugs = any(piece.rug or not piece.kinds.isdisjoint(RUGS) or piece.ids for piece in change.add)
    if unknown and (not change.add or (telling.wear(horse) and not rugs)):
        telling.puzzling.add(horse)
        return True
    return horse in telling.puzzling and not rugs


def _known(horse: str, change: Change, telling: Telling) -> bool:
    """Whether the barn has any of the pieces that came off, or the horse wears one."""
    garments, bags = telling.roster.garments, telling.roster.bags
    worn = [g for g in telling.wear(horse) or () if g in garments]
    may_be = [*worn, *telling.roster.owned.get(horse, ())]
    if any(p.fits(garments[g], bags[g]) for p in change.remove for g in may_be):
        return True
    if any(_rounded(p, garments[g].fill_g) for p in change.remove for g in worn):
        return False
    return any(telling.meant(p, horse, lend=True).ids for p in change.remove)


def _rounded(piece: Piece, fill: float) -> bool:
    """As in "her 200" of one with 220 g: perhaps that one, perhaps a spare that nobody told of."""
    return piece.fill is not None and piece.fill[0] == piece.fill[1] and abs(piece.fill[0] - fill) <= ROUNDING


def _kept(horse: str, change: Change, telling: Telling) -> list[str]:
    """What stays on before anything is put on or a named piece taken off."""
    if change.all_off or change.whole:
        return []
    worn = list(telling.wear(horse) or ())
    before = (telling.recorded(horse) or ()) if change.rugs_off else ()
    gone = {e.garment for e in telling.events if isinstance(e, GarmentIs) and e.state in ("washing", "missing")}
    return [g for g in worn if g not in before and g not in gone]  # "Maple has the red cooler on, blanket's off"


def _without(worn: Sequence[str], piece: Piece, horse: str, telling: Telling) -> list[str]:
    garments = telling.roster.garments
    own = telling.meant(piece, horse).ids
    if (
        piece.called
        and len(own) == 1
        and own[0] not in worn
        and not piece.called.isdisjoint(telling.roster.bags[own[0]])
    ):
        return list(worn)  # "in his stable rug, medium's off": the one called medium
    going = [g for g in worn if g in garments and piece.fits(garments[g], telling.roster.bags[g])]
    going = going or list(telling.meant(piece, horse, lend=True).ids)
    return [g for g in worn if g not in going]


def _with(worn: Sequence[str], ids: Sequence[str], telling: Telling, *, yields: Collection[str]) -> list[str]:
    """The outfit with these on as well; one outer layer takes the place of another that was on before, and yields."""
    garments = telling.roster.garments
    outer = any(garments[g].kind in RUGS for g in ids)
    kept = [g for g in worn if g not in yields or not (outer and g in garments and garments[g].kind in OUTER)]
    return [*kept, *(g for g in ids if g not in kept)]
