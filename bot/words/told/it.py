"""What "it" is behind a piece that somebody moved, and what was done to it."""

from collections.abc import Sequence

from bot.words.clothing.change import Change
from bot.words.lookup.items import Item, some_mean
from bot.words.lookup.piece import Piece
from bot.words.thoughts.clauses import Clause
from bot.words.told.telling import Telling


def leave_it(pieces: Sequence[Piece], horses: Sequence[Item], change: Change, telling: Telling) -> None:
    """What "it" is in what follows: "took the sheet off Pip, it's soaked" is of the sheet; of two pieces it is none."""
    one = len(pieces) == len(horses) == 1 and horses[0].horse
    telling.piece = _which(pieces[0], horses[0].horses[0], telling) if one else ()
    off = bool(change.remove)
    telling.came_off, telling.put_on = (telling.piece, ()) if off else ((), telling.piece)


def _which(piece: Piece, horse: str, telling: Telling) -> tuple[str, ...]:
    """As described; of several such, the only one that the horse had on and has no more."""
    found = telling.meant(piece, horse, lend=True).ids
    garments, bags, now = telling.roster.garments, telling.roster.bags, telling.wear(horse) or ()
    gone = [g for g in telling.recorded(horse) or () if g not in now and g in garments]
    gone = [g for g in gone if piece.fits(garments[g], bags[g])]
    return found or (tuple(gone) if len(gone) == 1 else ())


def done_to_it(clause: Clause) -> str:
    """What happened to "it": put on, taken off, or nothing."""
    if clause.has("took off") or (clause.has("took") and clause.has("off")):
        return "off"
    if clause.has("swapped") and clause.items[-1].has("it") and some_mean(clause.items, "for another"):
        return "whole"  # "swapped him into that"
    if _is_in_it(clause):
        return "whole"  # "(her heavy is dry) so she's in that now", "put him in it"
    told = [i for i in clause.items if i.has("it", "is", "on") or not i.has("link", "time", "polite")]
    if told and told[0].has("it") and _is_on_one(told[1:4]):
        return "on"  # "(her sheet came back) and it's on her now"
    in_one = any(i.has("it") and i.has("put on") for i in clause.items)  # "se la puse a Canela"
    return "on" if in_one or (clause.has("put on") and clause.has("on")) else ""


def _is_in_it(clause: Clause) -> bool:
    """As in "so she's in that now", "put him in it"; not "she was sweating in it", "he looked miserable in it"."""
    said = [i for i in clause.items if not (i.mark or i.has("time", "polite")) or i.has("it", "in")]
    if len(said) < 3 or not said[-1].has("it") or not said[-2].has("in") or said[-2].has("brought in"):
        return False
    stands = bool(said[-3].horses) or said[-3].has("she", "is", "put on", "brought", "swapped")
    return stands and not clause.told and not clause.has("was")


def _is_on_one(three: Sequence[Item]) -> bool:
    """As in "is on him", "is on Pip", "is back on" and no more."""
    on = len(three) > 1 and three[0].has("is") and three[1].has("on")
    return on and (len(three) == 2 or bool(three[2].horses or three[2].has("she")))


def put_it_on(clause: Clause) -> bool:
    """As in "(la grise est sèche), je l'ai mise à Tempête sous l'imper", ", remise à Tempête"."""
    items = clause.items
    if not (clause.has("put on") and clause.has("toward")):
        return False
    words = [i for i in items if not (i.mark or i.has("time", "polite")) or i.has("toward")]
    if len(words) == 3 and words[0].has("put on") and words[1].has("toward") and words[2].horses:
        return True
    return any(
        one.text.endswith(("l' ai", "l' a")) and verb.has("put on") and to.has("toward")
        for one, verb, to in zip(items, items[1:], items[2:], strict=False)
    )


def put_it_back(clause: Clause) -> bool:
    """As in "(Lune a viré sa 200,) je lui ai remise", "je l'ai remise sous sa 200", "remise": and no more."""
    items = clause.items
    if not clause.has("put on"):
        return False
    verb = next(k for k, i in enumerate(items) if i.has("put on"))
    if not items[verb].text.split()[-1].startswith("remis"):
        return False
    small = all(i.mark or i.has("i", "subject", "helper", "link", "she", "time") for i in items[:verb])
    behind = [i for i in items[verb + 1 :] if not (i.mark or i.has("time", "polite", "article", "her"))]
    return small and (not behind or (behind[0].has("over", "under") and all(i.piece for i in behind[1:])))
