"""What a clause leaves out because the one before it said so: "Juniper too", "Pip isn't cold but Ned is", "Sol not"."""

from collections.abc import Sequence
from dataclasses import replace

from bot.events import Done, Event, GarmentIs, GarmentWord, Placed, Seen, Sign, Wearing, Worked
from bot.words.clothing.change import Change
from bot.words.lookup.items import Item, some_mean
from bot.words.lookup.piece import Piece
from bot.words.thoughts.clauses import Clause, soft
from bot.words.told.outfits import tell_outfit, tell_same
from bot.words.told.states import tell_piece
from bot.words.told.telling import Telling, named

MOVED = ("brought", "brought in", "turned out", "worked")
BESIDE = ("toward", "article", "and", "time", "polite")  # what may stand beside who else was moved
SO = ("si", "oui", "yes")
HOW_WET: tuple[GarmentWord, ...] = ("soaked", "damp")  # said in more than "wet"
SHORT = 2  # words of "en serio", that say no place


def same(clause: Clause, telling: Telling) -> None:
    """As in "Maple sweaty, Juniper too", "… and my Juniper too", "his sheet is wet and so is Ned's"."""
    horses, pieces = clause.horses, clause.pieces
    if not telling.events or not (horses or pieces):
        _dry_now(clause, telling)
        return
    if not clause.has("too"):
        if telling.elsewhere:
            return  # "(rode Gus.) Farrier Friday. Hazel, Fig first"
        if isinstance(telling.events[-1], Wearing | Placed | Worked):
            _came_off_as_well(clause, telling)
            _worked_as_well(clause, telling)
            _moved_as_well(clause, telling)
        return
    if not all(i.horses or i.piece or soft(i) or i.has("my", "own") for i in _up_to_where(clause.items)):
        return
    last = telling.events[-1]
    if isinstance(last, GarmentIs) and not pieces and clause.items[-1].text == "'s" and telling.heard is not None:
        pieces = tuple(piece._replace(owners=horses[-1].horses, ids=()) for piece in telling.heard.pieces[-1:])
    state = _state_told(last, telling)
    if state is not None and pieces:
        for piece in pieces:
            tell_piece(telling, piece, state, named(piece.owners) or horses or telling.who)
        return
    if isinstance(last, Wearing) and telling.change is not None:
        for piece in pieces:
            if len(piece.owners) == 1:  # "took Maple's sheet off, same with Pip's liner"
                _done_to(piece, telling.change.with_this(piece), telling)
        tell_same(horses, telling)
    elif hasattr(last, "horse") or (isinstance(last, Done) and last.horses != "all"):
        telling.each(horses, lambda name: of_another(last, name))


def _state_told(last: Event, telling: Telling) -> GarmentWord | None:
    """How the piece spoken of is, or the horse where it is wet: "Pip is soaked and so is his sheet"."""
    if isinstance(last, GarmentIs):
        return last.state
    if isinstance(last, Seen) and last.sign == "wet" and telling.heard is not None:
        return next((state for state in HOW_WET if telling.heard.has(state)), "wet")
    return None


def _dry_now(clause: Clause, telling: Telling) -> None:
    """As in "(Pip's heavy wasn't dry last night) but it is now"."""
    heard, last = telling.heard, telling.events[-1] if telling.events else None
    denied = heard is not None and heard.has("not") and heard.has("dry") and not heard.horses
    so_now = clause.joined == "but" and clause.has("it") and clause.has("is") and not clause.has("not", "was")
    if denied and so_now and isinstance(last, GarmentIs) and all(map(soft, clause.items)):
        telling.retell([*telling.events[:-1], GarmentIs(last.garment, "dry")])


def _done_to(piece: Piece, change: Change, telling: Telling) -> None:
    if not change.empty:
        tell_outfit(named(piece.owners)[0], change, telling)


def _came_off_as_well(clause: Clause, telling: Telling) -> None:
    """As in "(took Maple's liner off) and Pip's": nothing but whose piece came off as well."""
    off = isinstance(telling.events[-1], Wearing) and telling.change is not None and bool(telling.change.remove)
    theirs = bool(clause.pieces) and all(len(piece.owners) == 1 for piece in clause.pieces)
    if not (off and theirs and telling.dressed == "" and clause.joined in ("and", ",")):
        return
    if all(i.piece or i.mark or i.has("and", "article") for i in clause.items):
        for piece in clause.pieces:
            tell_outfit(named(piece.owners)[0], Change(remove=[piece]), telling)


def _worked_as_well(clause: Clause, telling: Telling) -> None:
    """As in "(Junie did two lessons,) Mollie one": a horse, how many, and no more."""
    if not isinstance(telling.events[-1], Worked):
        return
    counted = [i for i in clause.items if i.number is not None or i.has("one", "first", "second", "third")]
    rest = [i for i in clause.items if i not in counted]
    if counted and all(i.horses or i.mark or i.has("and", "had") for i in rest):
        telling.each(clause.horses, lambda name: Worked(name))


def _moved_as_well(clause: Clause, telling: Telling) -> None:
    """As in "(saqué a Trueno al prado) y luego a Moro", "(j'ai rentré Lune au box) et Max": nothing but who else."""
    last, heard = telling.events[-1], telling.heard
    if not isinstance(last, Placed | Worked) or heard is None or not heard.has(*MOVED):
        return
    moved = last.horse in {name for i in heard.horses for name in i.horses}
    joined = clause.joined == "and" or clause.items[0].has("and", "toward")
    if moved and joined and all(i.horses or i.mark or i.has(*BESIDE) for i in clause.items):
        telling.each(clause.horses, lambda name: of_another(last, name))


def _up_to_where(items: Sequence[Item]) -> Sequence[Item]:
    """As in "(Maple's sweaty) and so is Pip, both out by the trough": what stands behind a pause told neither."""
    said = next((k for k, i in enumerate(items) if i.horses or i.piece is not None), 0)
    pause = next((k for k in range(said, len(items)) if items[k].mark), len(items))
    whereabouts = pause + 1 < len(items) and items[pause + 1].has("both", "outwards", "in", "place field")
    return items[:pause] if whereabouts else items


def of_another(event: Event, horse: str) -> Event:
    """The same fact of another horse."""
    if isinstance(event, Done):
        return Done((horse,))
    return replace(event, horse=horse)  # type: ignore[call-arg]


def told_of_another(clause: Clause, horses: Sequence[Item], telling: Telling, *, denied: bool) -> None:
    """As in "… but has stopped", "Pip isn't cold but Ned is": a clause that leaves its sign out."""
    if telling.sign is None or clause.told:
        return
    sign: Sign
    if telling.sign not in ("comfortable", "unwell") and _not_so(clause):  # "Maple sweaty, Pip not, nor Ned"
        telling.each(horses or clause.horses, lambda name: Seen(name, "comfortable"))
        return
    just_denied = (len(telling.events) - 1) in telling.denied and telling.sign != "comfortable"
    if just_denied and (_but_so(clause) or _the_one_that_is(clause)):
        sign = telling.sign
        telling.each(horses or clause.horses, lambda name: Seen(name, sign))
        return
    if not clause.joined or clause.pieces:
        return
    if _there_as_well(clause, telling):
        last = telling.sign
        telling.each(clause.horses, lambda name: Seen(name, last))
        return
    stopped = clause.has("stopped") and not clause.horses
    over = stopped and all(soft(i) or i.mark for i in clause.items[:3])  # "mais là c'est fini, elle broute"
    if not (over or all(soft(i) or i.horses for i in clause.items)):
        return
    was = telling.heard is not None and telling.heard.has("was")  # "temblaba, ahora ya no"
    ended = not horses and (clause.joined == "but" or (was and clause.joined == ",")) and _not_now(clause)
    stopped, denied = stopped or ended, denied or ended
    closing = clause.items[-1].has("not", "not any more") or _closes(clause.items[-1])
    if not (stopped or (closing and clause.has("is") and horses)):
        return
    sign = "comfortable" if denied else telling.sign
    if not (denied and telling.sign in ("comfortable", "unwell")):
        telling.each(horses or telling.meant_by(clause), lambda name: Seen(name, sign, "turnout"))


def _there_as_well(clause: Clause, telling: Telling) -> bool:
    """As in "(Canela tiene rozaduras en la cruz) y Sultán en los hombros": nothing but another, and where."""
    heard = telling.heard
    if heard is None or not (clause.horses and heard.told) or telling.sign == "comfortable":
        return False
    words = [i for i in clause.items if not i.mark and not i.has("and", "article")]
    where = [i for i in words if not i.horses]
    if not where or words[: -len(where)] != [i for i in words if i.horses] or not any(map(_part, where)):
        return False
    alike = any(_part(i) and i.text.split()[0] in (w.text.split()[0] for w in where) for i in heard.items)
    alike = alike or some_mean(heard.items, "body")
    told = bool(telling.events) and isinstance(telling.events[-1], Seen)
    return told and alike and all(_part(i) or i.has("in", "on", "of", "her") for i in where)


def _part(item: Item) -> bool:
    """As in "en la cruz", "neck": a part of the body, or where it is."""
    return item.has("body") or (item.has("link") and len(item.text.split()) > SHORT)


def _closes(verb: Item) -> bool:
    """As in "but Ned is": a verb that may ask as well; not "Pip looks (so cute)"."""
    return verb.has("is") and verb.has("question")


def _but_so(clause: Clause) -> bool:
    """As in "(Trasgo no está sudado,) pero Canelo sí, un poco": what was just denied is so of these.

    Not in "Luna sin sudar, Rayo sí": of sweat, or of none?
    """
    words = [i for i in clause.items if not (i.mark or i.has("but", "and", "article", "very", "a little", "time"))]
    return len(words) > 1 and words[-1].text in SO and all(i.horses for i in words[:-1])


def _the_one_that_is(clause: Clause) -> bool:
    """As in "(Pip's not shivering,) that's Ned": what was just denied of one is so of the other."""
    words = [i for i in clause.items if not (i.mark or i.has("but", "time")) and (i.has("it") or not i.has("article"))]
    opens = words[:-1]
    return bool(opens) and bool(words[-1].horses) and all(i.has("it", "is") and not i.horses for i in opens)


def _not_now(clause: Clause) -> bool:
    """As in "was sweaty but isn't now"; not "sweaty but not much"."""
    words = [i for i in clause.items if not i.mark]
    now = len(words) == 1 or any(i.has("time", "not any more") and not i.has("ahead") for i in words)
    return clause.has("not") and now and all(soft(i) for i in words)


def _not_so(clause: Clause) -> bool:
    """Horses, and behind them that it is not so of them; no more. "Nor is Pip", "but not Pip" say it first."""
    if not (clause.horses and clause.has("not", "no")):
        return False
    small = ("and", "article", "but", "polite")
    words = [i for i in clause.items if not i.mark and not (i.has(*small) and not (i.horses or i.has("not", "no")))]
    nor = len(words) > 1 and words[0].has("not") and words[1].has("is")
    but_not = clause.joined == "but" and len(words) > 1 and words[0].has("not", "no") and not words[0].horses
    words = words[2:] if nor else words[1:] if but_not else words
    denied = nor or but_not or any(i.has("not", "no") for i in words if not i.horses)
    return (
        bool(words) and bool(words[0].horses) and denied and all(i.horses or i.has("not", "no", "too") for i in words)
    )
