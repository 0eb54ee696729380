"""What horses wear now: put on, taken off, swapped, bare; always told as the whole outfit that results."""

from collections.abc import Sequence
from itertools import pairwise

from bot.events import Wearing
from bot.words.clothing.change import Change
from bot.words.clothing.shares import share_of
from bot.words.lookup.items import WETNESS, Item, predicate, some_mean
from bot.words.lookup.piece import Piece
from bot.words.meaning import Ask
from bot.words.thoughts.clauses import NOR, Clause, soft
from bot.words.thoughts.hers import something_of_hers
from bot.words.told.dressed_alike import as_before
from bot.words.told.it import done_to_it, leave_it, put_it_back, put_it_on
from bot.words.told.onoff import goes_with, mode_of, off_a_hook, only_layered, without_another
from bot.words.told.outfits import as_worn, concerned, one_of_several_on, spare_of_several, tell_outfit
from bot.words.told.routine import wished_so
from bot.words.told.stripped import in_nothing, left_on, strips, wears_nothing
from bot.words.told.swaps import from_and_to, out_and_into, swap
from bot.words.told.telling import Telling, named
from bot.words.told.wearers import all_but_these, of_another_horse, of_one_in_it, to_her, wearers

SAYS = (
    "put on", "took off", "took", "wears", "off", "on", "in", "has", "swapped", "for another", "instead of",
    "in its stead", "over", "nothing", "without",
)  # fmt: skip
REASONS = ("but", "i", "subject", "when", "if", "time", "brings weather")  # what begins why it was done
WITHOUT_A_PIECE = ("bare", "nothing", "took off", "stripped", "own", "it")  # what tells of clothes though none is named
BOTH = 2
RESTS_ON = ("sur", "sobre")
HAD = ("had", "avais", "avait", "avions", "avaient", "habia", "habiamos", "habian")
BESIDE = (
    "i", "bare", "stripped", "done", "brought", "stays", "after", "work", "worked", "hour", "strap", "too",
    "turned out", "brought in", "inwards", "outwards", "clipped", "except", "only", "own", "keeps",
)  # fmt: skip
NECK = frozenset(("neck",))
OVER_IT = ("over", "on top of", "par dessus", "encima de", "por encima de", "arriba de")  # not "y encima la azul"


def read_wear(clause: Clause, telling: Telling) -> bool:
    """Whether the clause told what a horse wears now."""
    if not (clause.pieces or clause.has(*WITHOUT_A_PIECE, "put on") or _off_again(clause)):
        return False
    back = put_it_back(clause) and telling.spoken is not None
    if not (clause.has(*WITHOUT_A_PIECE) or clause.pieces or back or put_it_on(clause) or _off_again(clause)):
        return False
    if _is_a_wish_or_place(clause) or clause.has("felt", "by mistake") or _hair_under_it(clause.items):
        return False
    if clause.has("drying") and not (clause.horses or clause.has("subject") or to_her(clause.items)):
        return False  # "posé la rose sur la doudoune dans la sellerie"
    if clause.has("nearly") and _only_nearly(clause.items):
        return False
    done_before = clause.has("was", "put on") and _had_done(clause.items)
    if done_before or (clause.has("wears") and _worn_by_people(clause.items)) or off_a_hook(clause):
        return False
    if clause.has("sign rubbed") and not clause.has("took off", "took", "put on", "swapped"):
        return False  # "rubbed raw off that mac"
    change = _change(clause)
    _fill_in(change, clause, telling)
    if clause.has("state washing", "state missing") and not (change.remove or change.strips):
        return False
    if clause.has("part way") and not (change.add or change.whole):
        return False  # "le bajé la manta hasta la cruz"
    if any(piece.either for piece in clause.pieces):
        return False
    if change.empty or not _only_that(clause):
        return False
    if clause.has("instead of") and telling.change is None and not (change.add or change.whole):
        return False  # ", à la place de la grosse", of one of whom nobody heard what was put on
    if change.strips and wished_so(clause, telling):
        return False
    horses = wearers(clause, change, telling)
    if (
        clause.has("keeps")
        and not clause.has("only", "leaves only")
        and (change.remove or change.add or _dressed(horses, telling))
    ):
        change.add, change.whole = [*change.add, *change.whole], []  # "couvre-cou ajouté, il garde sa grosse"
    if any(of_another_horse(piece, horses) for piece in change.pieces) and (
        change.remove or len(horses) > 1 or clause.has("and")
    ):
        return False  # "Gus pulled Star's sheet off"
    if all_but_these(clause) or (clause.has("all horses", "everyone") and not clause.horses):
        if any(piece.rug for piece in (*change.add, *change.whole)):
            return False  # "left everyone's rugs on": which, nobody says
        horses = [i for i in horses if concerned(i.horses[0], change, telling)]
    _tell_each(horses, change, clause, telling)
    if horses:
        change.of = frozenset(name for item in horses for name in item.horses)
        telling.change = telling.change.then(change) if telling.change is not None else change
        telling.dressed = "whole" if change.whole else "on" if change.add else ""
        telling.who, telling.last, telling.begun = tuple(horses), "horse", True
        leave_it(clause.pieces, horses, change, telling)
    return bool(horses)


def _fill_in(change: Change, clause: Clause, telling: Telling) -> None:
    """What the clause leaves out because it was said before: the piece put back, or worn by the next as well."""
    if telling.spoken is not None and (put_it_back(clause) or (clause.horses and put_it_on(clause))):
        change.add, change.whole = [telling.spoken, *change.whole, *change.add], []
    if change.empty:
        as_before(clause, change, telling)
    if change.empty and telling.spoken is not None and _off_again(clause) and telling.dressed:
        change.remove = [telling.spoken]
    if change.empty and telling.spoken is not None and clause.has("it") and not telling.thing:
        _place(change, done_to_it(clause), telling.spoken, denied=clause.has("not"))


def _off_again(clause: Clause) -> bool:
    """As in "(Birch had a sheet on for the rain,) off again now"."""
    words = [i for i in clause.items if not i.mark]
    alone = words[0].has("off") and words[0].text.partition(" ")[0] == "off" and clause.joined != ""
    return alone and all(i.has("time") for i in words[1:])  # not "off home now"


def _tell_each(horses: Sequence[Item], change: Change, clause: Clause, telling: Telling) -> None:
    """The outfit of each of these, with what of the change is hers."""
    names = {name for item in horses for name in item.horses}
    spare = spare_of_several(names, change, telling) if len(names) > 1 and all(i.sure for i in horses) else None
    if spare is not None and len(names) > BOTH:
        return  # "todos con la media menos Pip": who has none of their own, nobody says
    if spare is not None:
        telling.wonder(Ask("horse", spare.said, tuple(name for item in horses for name in item.horses)))
        return
    beside = clause.has("keeps") and not clause.has("only", "leaves only")
    for item in horses:
        for one in named(item.horses) if item.sure else (item,):
            share = share_of(one.horses[0], names, change) if item.sure else change
            share = as_worn(share, one, telling) if clause.has("keeps") else share
            if not (share.empty or (beside and one_of_several_on(share, one, telling))):
                tell_outfit(one, share, telling)


def _dressed(horses: Sequence[Item], telling: Telling) -> bool:
    """Whether the message has told what one of these wears."""
    told = {e.horse for e in telling.events if isinstance(e, Wearing)}
    return any(not told.isdisjoint(i.horses) for i in horses)


def _is_a_wish_or_place(clause: Clause) -> bool:
    """As in "Keep the sheet on Maple in her stall": no verb says that it is on now."""
    elsewhere = clause.has("keep", "do not rug", "rug again", "place stall", "place field")
    told = clause.has("took off", "took", "wears", "swapped") or (bool(clause.pieces) and of_one_in_it(clause))
    told = told or (clause.items[0].has("inwards") and not clause.horses)  # "(fuera la azul,) dentro la verde"
    told = told or (clause.has("bare") and not clause.has("keep", "do not rug", "rug again"))  # "bare in her stall"
    return elsewhere and not told


def _hair_under_it(items: Sequence[Item]) -> bool:
    """As in "le poil est parti sous la couverture": a part of the horse, and the piece over it."""
    said = [i for i in items if not i.has("article", "and", "her") or i.has("body")]
    below = any(i.has("under") and then.piece is not None for i, then in pairwise(items[1:]))
    return bool(said) and said[0].has("body") and below and not any(i.horses for i in items)


def _only_nearly(items: Sequence[Item]) -> bool:
    """As in "Dolly almost slipped out of her sheet": what did not come to be."""
    return any(one.has("nearly") and then.has("put on", "took off", "took", "swapped") for one, then in pairwise(items))


def _had_done(items: Sequence[Item]) -> bool:
    """As in "had put her sheet on", "j'avais mis la bleue", "le había puesto": before something else was done."""
    at_once = any(i.text.startswith("had ") and i.has("put on", "took off") for i in items)
    return at_once or any(one.text in HAD and then.has("put on", "took off") for one, then in pairwise(items))


def _worn_by_people(items: Sequence[Item]) -> bool:
    """As in "my kid is wearing Otto's sheet": on nobody of the barn."""
    words = [i for i in items if not (i.mark or i.has("article", "my", "is", "polite"))]
    somebody = bool(words) and words[0].has("i", "kin", "visitor", "animal") and not words[0].has("subject", "she")
    return somebody and words[1:2] != [] and words[1].has("wears") and not words[1].has("in", "has")


def _change(clause: Clause) -> Change:
    items = clause.items
    pieces = [(k, i.piece) for k, i in enumerate(items) if i.piece is not None]
    change = Change(over=clause.has("over"))
    others = [k for k, _ in pieces if _not_this(items, k)] if len(pieces) > 1 else []  # "the sheet, not the heavy"
    others += [k for k, _ in pieces if _lacks(items, k)]
    denied = clause.has("not") and not others
    if kept := left_on(clause):
        change.whole = kept
        return change
    if clause.has("bare"):
        change.all_off = not denied
        return change
    if clause.has("nothing") and (clause.has("took", "took off", "off") or in_nothing(items) or wears_nothing(items)):
        change.all_off = True
        change.add = [p for k, p in pieces if some_mean(items[:k], "put on")]  # "todo fuera y puesta la roja"
        return change
    if (clause.has("swapped") and pieces) or (clause.has("instead of") and len(pieces) == 2):
        return swap(clause, pieces, change)
    if clause.has("instead of") and pieces:  # "in her medium instead of the liner and the sheet"
        turn = next(k for k, i in enumerate(items) if i.has("instead of"))
        stays = {k for k, _ in pieces if some_mean(items[k + 1 : k + 2], "stays")}  # "…, le liner reste"
        stays |= {k for k, p in pieces if p.owners and any(i.mark for i in items[turn:k])}  # "…, la grise à Lune"
        stays |= {k for k, _ in pieces if k > turn and items[k - 1].has("over")}  # "…, par-dessus la doublure"
        change.add = [p for k, p in pieces if k < turn and k not in stays]
        change.remove = [p for k, p in pieces if k > turn and k not in stays]
        return change
    if len(pieces) == 2 and (out_and_into(items, [k for k, _ in pieces]) or from_and_to(items, [k for k, _ in pieces])):
        change.remove, change.add = [pieces[0][1]], [pieces[1][1]]
        return change
    if not pieces:
        change.all_off = clause.has("took off", "stripped") and strips(items) and not denied
        return change
    for k, piece in pieces:
        mode = "off" if k in others else _mode(items, k, piece)
        hangs = some_mean(items[k + 1 : k + 2], "drying")  # "Lune en doudoune, la rose au séchoir"
        _place(change, "" if hangs and mode != "off" else mode, piece, denied=denied)
    if change.add and len(pieces) == 2 and items[pieces[1][0] - 1].has("over"):
        change.below = pieces[1][1]  # "put the heavy on over her liner"
    if change.whole and all(piece.kinds == NECK for piece in change.whole):
        change.add, change.whole = [*change.whole, *change.add], []  # "has his neck cover on", with what he wears
    if change.whole and any(one.has("over") and then.has("own") for one, then in pairwise(items)):
        change.add, change.whole = [*change.whole, *change.add], []  # "con la roja arriba de la suya"
    if len(pieces) == 2 and any(i.has("over") and not i.has("under") for i in items[pieces[0][0] : pieces[1][0]]):
        change.whole.reverse()  # "the spare on over his medium": what lies under is named last
        change.add.reverse()
        change.as_said = any(i.text.startswith(OVER_IT) for i in items[pieces[0][0] : pieces[1][0]])
    return change


def _mode(items: Sequence[Item], at: int, piece: Piece) -> str:
    """What happens to the piece at a place: on, off, whole, or nothing."""
    if at and items[at - 1].text in RESTS_ON and sum(i.piece is not None for i in items) == 1:
        return ""  # "je l'ai laissé sur l'imper de Quartz", of a glove
    if at and items[at - 1].has("only") and some_mean(items[: at - 1], "without") and any(i.horses for i in items):
        return "whole"  # "Falco sans doublure juste l'imper"
    beside = goes_with(items, at)
    if beside is not None:
        return mode_of(items, beside)
    mode = mode_of(items, at)
    below = items[at - 1].has("under") and not items[at - 1].has("in")
    below = below and not only_layered(items)
    if mode == "whole" and piece.owners and below and not any(i.horses for i in items[:at]):
        return ""  # "glissé la doudoune sous l'imper de Lune": where, not what she wears
    under = any(i.has("under") and i.has("wears") for i in items[:at]) and some_mean(items[at:], "is", "she")
    if mode == "whole" and under and any(predicate(i) for i in items[at:]):
        return ""  # "sous sa doudoune Brume elle transpire"
    if mode == "whole" and (any(predicate(i) for i in items[:at]) or _how_it_is(items, at)):
        return ""  # "sweaty under her rug", "Perle a la verte toute trempée"
    worn = bool(piece.owners) or any(i.horses for i in items)
    return "whole" if not mode and worn and without_another(items[at + 1 :]) else mode  # "Uma 200 without the liner"


def _how_it_is(items: Sequence[Item], at: int) -> bool:
    """Whether a piece that a horse "has" is said to be wet: the state of the piece, no outfit."""
    has = any(i.has("has") and not i.has("in", "on") for i in items[:at])
    after = next((i for i in items[at + 1 :] if not i.has("very", "link", "a little")), None)
    return has and after is not None and after.has(*WETNESS) and not some_mean(items[at:], "on")


def _lacks(items: Sequence[Item], at: int) -> bool:
    """As in "Juniper no liner": a horse, "no", the piece."""
    return at > 1 and bool(items[at - 2].horses) and items[at - 1].has("no") and items[at - 1].has("without")


def _not_this(items: Sequence[Item], at: int) -> bool:
    before = [i for i in items[max(0, at - 2) : at] if not i.has("article", "her", "of") or i.has("not")]
    nor = bool(before) and before[-1].text in NOR and any(map(predicate, items))  # "neither his sheet nor … is dry"
    return bool(before) and before[-1].has("not") and not nor  # "plus de bleue"


def _place(change: Change, mode: str, piece: Piece, *, denied: bool) -> None:
    everything = piece.rug and not (piece.words or piece.some)
    if mode == "off" and denied:
        return  # "haven't taken the sheet off"
    if mode == "off" or (mode == "whole" and denied):
        if everything:
            change.rugs_off = True
        else:
            change.remove.append(piece)
    elif denied:
        return
    elif mode == "on":
        change.add.append(piece)
    elif mode == "whole":
        change.whole.append(piece)


def _only_that(clause: Clause) -> bool:
    """No word that could make it about something else ("put the liner on the rack"), but for what is told after it."""
    to_one = clause.horses or to_her(clause.items) or any(p.given for p in clause.pieces)
    told = _told_up_to(clause.items) or (_up_to_the_purpose(clause.items) if to_one else 0)
    for k, i in enumerate(clause.items[: told + 1] if told else clause.items):
        plainly = i.horses or i.piece is not None or soft(i) or predicate(i) or i.person or i.has(*SAYS, *BESIDE)
        if not (plainly or (k == 0 and not i.means)):
            return some_mean(clause.items[:k], "instead of")
    return True


def _up_to_the_purpose(items: Sequence[Item]) -> int:
    """The place of the piece before what it was put on for: "… mis sa polaire pour sécher", "… après la douche"."""
    last = max((k for k, i in enumerate(items) if i.piece is not None), default=0)
    after = [i for k, i in enumerate(items[last + 1 : last + 4]) if not k or not i.has("article", "she")]
    if len(after) < 2 or after[0].has("article", "is"):
        return 0
    purpose = after[0].has("toward") and not after[0].has("hour") and after[1].text.endswith(("er", "ir", "re"))
    return last if purpose or after[0].has("after") else 0


def _told_up_to(items: Sequence[Item]) -> int:
    """The place where what is worn is told and the reason, or something else, may follow; 0 where it may not."""
    last = max((k for k, i in enumerate(items) if i.horses or i.piece is not None or i.has("on", "off")), default=0)
    after = items[last + 1 : last + 3]
    if items[last].horses:
        told = any(i.piece is not None or i.has("stripped") for i in items[:last])
        return last if told and not something_of_hers(items, last) else 0
    later = bool(after) and after[0].has("after") and not after[0].has("of", "in")  # "… après le cours de Jade"
    return last if later or (after and (after[0].mark or after[0].has(*REASONS))) else 0
