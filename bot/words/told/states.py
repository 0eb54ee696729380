"""States of clothing: which word says which, and whose piece it is told of."""

from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import cast

from bot.events import GarmentIs, GarmentWord
from bot.words.lookup.items import WETNESS, Item, some_mean
from bot.words.lookup.piece import RUGS, Piece
from bot.words.meaning import Ask
from bot.words.thoughts.around import pieces_listed, rest_allows
from bot.words.thoughts.clauses import Clause, soft
from bot.words.told.agreement import any_rug, came_off
from bot.words.told.onoff import off_a_hook
from bot.words.told.removed import came_off_for_it
from bot.words.told.subjects import Reading
from bot.words.told.telling import Telling, named
from bot.words.told.things import thing_since
from bot.words.told.thread import of_a_thing

# opens a phrase that says "comfortable": "no está nada sudada" denies it once
DENYING = ("ni", "sin", "no", "nada", "not", "neither", "nor", "sans", "pas", "aucun")
NOT_WET: dict[str, GarmentWord] = {"wet": "dry", "soaked": "damp", "damp": "dry", "dry": "damp"}

DRIES = ("seche", "sechent")
AWAY = ("torn", "washing")  # where a piece was, before somebody fetched it
ONE_BY_ONE = ("torn", "strap broken", "missing")
VAGUE = 4  # choices; "a rug is wet" within a longer tale is no question worth asking in a large barn
BRIEF = 6  # words
IT_IS_NOT = ("it", "is", "was", "not")


def state_word(clause: Clause, at: int, *, denied: bool) -> GarmentWord | None:
    """The state that the word at this place says, denied or softened by the words before it; None: none."""
    item, before = clause.items[at], clause.items[max(0, at - 3) : at]
    if item.has("state found"):
        some = any(piece.some for piece in clause.pieces)
        return None if denied or some else "in service"
    states = [s for s in item.kinds("state") if s != "found"]
    if states and clause.has("fetched") and states[0] in AWAY and " " in item.text:
        return None if denied else "in service"
    if states:
        not_yet = some_mean(before, "nearly")  # "pas encore recousue", "almost ripped"
        return None if denied or not_yet else cast("GarmentWord", states[0])
    word = next((w for w in reversed(WETNESS) if item.has(w)), None)
    if word is None or _dries(clause.items, at):
        return None
    if denied:
        return NOT_WET[word]
    if (word == "dry" and some_mean(before, "nearly")) or (word == "wet" and some_mean(before, "a little")):
        return "damp"
    return cast("GarmentWord", word)


def _dries(items: Sequence[Item], at: int) -> bool:
    """As in "la noire sèche au radiateur", "la noire sèche encore": French has one word for dry and for what dries."""
    if items[at].text not in DRIES or (at and items[at - 1].has("is", "was", "very", "not")):
        return False
    behind = items[at + 1] if at + 1 < len(items) else items[at]
    return behind.has("drying") or behind.text == "encore"


def tell_piece(telling: Telling, piece: Piece, state: GarmentWord, owners: Sequence[Item]) -> None:
    """A state of the piece meant, of each of these horses; asked about where it may be another."""
    if piece.either and piece.owners:
        ids = [g for name in piece.owners for g in telling.meant(piece, name).ids]
        _tell_found(telling, piece, state, ids if len(ids) == 1 else (), ids)
        return
    if not owners or piece.spare:
        found = telling.meant(piece, None)
        if len(found.ids) > VAGUE and state in ONE_BY_ONE:
            return  # "ripped every blanket we bought": not of a whole barn's at once
        _tell_found(telling, piece, state, found.ids, found.options)
        return
    if len(owners) > 1 and not piece.every:
        piece = piece._replace(several=False)  # "Otto and Fig's rugs": one of each, for all that is said
    for owner in owners:
        if not owner.sure:
            telling.wonder(Ask("horse", owner.raw, owner.horses, _of_the_only(telling, piece, state, owner)))
            continue
        found = telling.meant(piece, owner.horses[0])
        if piece.ids and not (found.ids or piece.owners):
            found = telling.meant(piece, None)  # "her liner is dry but old faithful is wet"
        _tell_found(telling, piece, state, found.ids, found.options)


def may_own(piece: Piece, clause: Clause, telling: Telling) -> Sequence[Item]:
    """The horses spoken of last; none where only others have such: "(Filou est au pré.) La 300 est mouillée"."""
    if of_a_thing(clause):
        return ()  # "ma voiture pue la couverture mouillée"
    owners = telling.owner_meant_by(clause)
    fitting = {telling.roster.garments[g].horse for g in telling.roster.fitting(piece)}
    theirs = piece.their or not fitting or any(not fitting.isdisjoint(i.horses) for i in owners)
    return owners if theirs else ()


def _of_the_only(telling: Telling, piece: Piece, state: GarmentWord, owner: Item) -> tuple[GarmentIs, ...]:
    """What is told once the only horse it may be is confirmed."""
    found = telling.meant(piece, owner.horses[0]).ids if len(owner.horses) == 1 else ()
    return tuple(GarmentIs(garment, state) for garment in found)


def _tell_found(telling: Telling, piece: Piece, state: GarmentWord, ids: Sequence[str], options: Sequence[str]) -> None:
    for garment in ids:
        telling.say(GarmentIs(garment, state))
    if ids:
        telling.piece, telling.last = tuple(ids), "piece"
    elif piece.several and not piece.owners and len(options) > VAGUE:
        pass  # "all rugs dry", "no wet rugs": which, would be asked in vain
    elif options and not (piece.rug and len(options) > VAGUE and not _all_that_is_said(telling.text)):
        telling.wonder(Ask("garment", piece.said, tuple(options), (GarmentIs("", state),)))


def _all_that_is_said(text: str) -> bool:
    """As in "The blanket's soaked through": somebody means one, and says no more than that."""
    return len(text.split()) <= BRIEF


def read_strap(clause: Clause, telling: Telling) -> bool:
    """A broken strap, or a mended one, in whatever order it is told."""
    if not clause.has("broken", "state torn", "state missing", "state in service") or clause.has("not"):
        return False
    strap = clause.has("strap") or (clause.has("girth") and bool(clause.pieces))
    hers = (
        telling.heard is not None
        and telling.heard.has("strap")
        and clause.has("she", "it")
        and not (clause.horses or clause.pieces)
    )
    if not (strap or (hers and telling.spoken is not None)):
        return False
    if not (clause.pieces or clause.horses) and thing_since(telling.thing, clause.items):
        return False  # "ma veste est trempée, la fermeture est morte"
    its = telling.last == "piece" and any(one.has("her") and then.has("strap") for one, then in pairwise(clause.items))
    if not clause.has("broken") and _torn_near_it(clause.items):
        return False  # "torn at the chest buckle"
    if any(item.has("strap") and k and _unheard_of(clause.items[k - 1]) for k, item in enumerate(clause.items)):
        return False  # "the halter strap"
    if not (clause.pieces or clause.horses) and _strap_of_mine(clause.items):
        return False  # "strap on my rucksack"
    if any(one.has("strap") and of.has("of") and _unheard_of(thing) for one, of, thing in _threes(clause.items)):
        return False  # "la correa del tractor"
    if off_a_hook(clause):
        return False  # "took her sheet off the hook"
    pieces = list(clause.pieces)
    if its and telling.spoken is not None and not (pieces or clause.horses):
        pieces = [telling.spoken]  # "l'imper rayé a un accroc pis sa strap est pétée"
    vague = any(piece.some for piece in pieces)  # "one of the mediums": nobody's in particular
    horses = [] if vague else list(clause.horses) or list(telling.owner_meant_by(clause))
    if not pieces and not (horses and all(i.means or i.horses or i.mark or soft(i) for i in clause.items)):
        return False
    if not pieces and telling.spoken is not None:
        pieces = [telling.spoken]
    piece = _strapped(clause.items) or (pieces[0] if pieces else Piece("strap", RUGS, rug=True))
    owners = list(named(piece.owners)) if piece.owners else horses
    if pieces and not (piece.owners or clause.horses or vague):
        owners = list(may_own(piece, clause, telling))
    tell_piece(telling, piece, "in service" if clause.has("state in service") else "strap broken", owners)
    return True


def _strap_of_mine(items: Sequence[Item]) -> bool:
    """As in "strap on my rucksack", "my bag strap": of no rug."""
    at = next((k for k, i in enumerate(items) if i.has("strap")), 0)
    return some_mean((*items[max(0, at - 2) : at], *items[at + 1 : at + 5]), "my", "thing")


def _strapped(items: Sequence[Item]) -> Piece | None:
    """The piece right behind the strap: "(j'ai oublié l'imper,) le sanglon de la 350 est cassé"."""
    at = next((k for k, i in enumerate(items) if i.has("strap")), len(items))
    behind = items[at + 1 : at + 5]
    found = next((k for k, i in enumerate(behind) if i.piece is not None or i.horses or i.mark), len(behind))
    joined = some_mean(behind[:found], "of", "on")
    return behind[found].piece if joined and found < len(behind) else None


def strap_told(clause: Clause) -> bool:
    """As in "the strap broke": what is told with it is that, and nothing was put on or taken off."""
    if clause.told and not clause.has("broken"):
        return False
    return not any(i.has("took off", "took", "put on", "swapped") and not i.has("broken") for i in clause.items)


def puts_on_a_strap(items: Sequence[Item]) -> bool:
    """As in "put a new strap on the green sheet", "le pusieron la hebilla nueva a la café": no horse is dressed."""
    for at in (k for k, i in enumerate(items) if i.has("put on")):
        behind = (i for i in items[at + 1 : at + 4] if not i.has("article", "some", "colour", "any adjective"))
        if next((i.has("strap") for i in behind), False):
            return True
    return False


def _threes(items: Sequence[Item]) -> Iterator[tuple[Item, Item, Item]]:
    return zip(items, items[1:], items[2:], strict=False)


def _torn_near_it(items: Sequence[Item]) -> bool:
    torn = next((k for k, i in enumerate(items) if i.has("state torn", "state missing")), len(items))
    strap = next((k for k, i in enumerate(items) if i.has("strap")), 0)
    return torn < strap and some_mean(items[torn:strap], "hour", "nearly")


def _unheard_of(item: Item) -> bool:
    return not (soft(item) or item.means or item.horses or item.piece)


def read_state(reading: Reading, at: int, pieces: Sequence[Piece]) -> None:
    """The state that the word at this place says, of these pieces; of the one spoken of where there are none."""
    clause, telling, item = reading.clause, reading.telling, reading.items[at]
    state = state_word(clause, at, denied=reading.denied)
    if not pieces and _its_own(clause, at) and telling.spoken is not None:
        pieces = [telling.spoken._replace(owners=(), ids=(), words=frozenset(), their=False)]
    unsaid = reading.denied or item.text.partition(" ")[0] in DENYING
    if _left_out_behind(clause.items, at) or _of_another_one(clause.items[:at]):
        return
    if state is None or (unsaid and item.has(*WETNESS) and _told_already(reading, pieces)):
        return  # "mouillé, pas humide, mouillé", "mouillé encore, pas sec"
    beside = reading.latest == "piece" and not reading.gap  # "dolly-liner wet round the neck"
    if item.has(*WETNESS) and not (beside or pieces_listed(clause.items, at) or rest_allows(clause.items, at)):
        return
    if reading.gap and reading.latest == "piece" and (item.has(*WETNESS) or reading.gap > 1):
        return
    if _of_people(reading, pieces) or (clause.has("elsewhere") and not any(piece.owners for piece in pieces)):
        return  # "au chantier, la bâche est déchirée"
    it = bool(item.kinds("state")) and not item.has("state found")
    # "my good coats ripped, caught it" is of no rug
    it = it and any(i.has("it") and not i.has("first") for i in clause.items[:at])
    weather = telling.piece == telling.put_on and _of_the_sky(clause.items, at)
    if not pieces and came_off_for_it(clause, telling, item):
        spoken = cast("Piece", telling.spoken)
        tell_piece(telling, spoken, state, named(spoken.owners))
    elif clause.has("the rest") and not pieces:
        return  # "(Pip's sheet is wet,) everyone else's is dry"
    elif not pieces and thing_since(telling.thing, clause.items):
        return  # "j'ai pendu mon manteau, il l'a mâchouillé", "j'ai perdu mon gant"
    elif not pieces and not weather and (not reading.latest or it) and not (it and telling.elsewhere):
        for garment in telling.piece:
            telling.say(GarmentIs(garment, state))
    if len(pieces) == 1 and any_rug(pieces[0]) and came_off(telling.heard) and telling.spoken is not None:
        pieces = [telling.spoken]  # "ôté la turquoise à Moka, est toute détrempée la couverte"
    for piece in pieces:
        if piece.several and not (piece.every or piece.owners or piece.their) and clause.has("all"):
            piece = piece._replace(every=True, pair=clause.has("both"))  # "the liners are all dry"
        tell_piece(telling, piece, state, _owners(reading, piece))


def _of_the_sky(items: Sequence[Item], at: int) -> bool:
    """As in "(put her sheet on,) it's wet"; "it's soaked" is of the sheet, but "it's soaking out there"."""
    outside = some_mean(items[at + 1 : at + 2], "outwards", "weather")
    return items[at].has(*WETNESS) and (outside or not items[at].has("soaked"))


def _left_out_behind(items: Sequence[Item], at: int) -> bool:
    """As in "everyone's rugs are dry except Pip's purple": told of all but that one, and it is told of no other."""
    left = next((k for k in range(at + 1, len(items)) if items[k].has("except")), len(items))
    return any(i.piece is not None or i.horses for i in items[left:])


def _of_another_one(before: Sequence[Item]) -> bool:
    """As in "it wasn't Maple's sheet that tore": which piece it is not, and nothing of how that one is."""
    piece = next((k for k, i in enumerate(before) if i.piece is not None), 0)
    opens = [i for i in before[:piece] if not (i.mark or i.has("article", "her", "polite"))]
    it_is_not = some_mean(opens, "it", "is") and some_mean(opens, "not") and all(i.has(*IT_IS_NOT) for i in opens)
    return it_is_not and some_mean(before[piece + 1 : piece + 3], "relative")


def _its_own(clause: Clause, at: int) -> bool:
    """As in "(Pip ripped his sheet and) Ned ripped his", "Lune a déchiré la sienne": a piece of the same kind."""
    items = [i for i in clause.items[at + 1 :] if not (i.mark or i.has("time", "article", "too"))]
    return bool(clause.horses and clause.items[at].kinds("state")) and len(items) == 1 and items[0].has("own")


def _of_people(reading: Reading, pieces: Sequence[Piece]) -> bool:
    """As in "my mum washed her good sheets": hers who did it, where no horse is spoken of."""
    if reading.clause.horses or reading.telling.who or not any(p.their and not p.owners for p in pieces):
        return False
    return any((i.has("i") and not i.has("subject", "my")) or i.person for i in reading.items)


def _told_already(reading: Reading, pieces: Sequence[Piece]) -> bool:
    """Whether the message has told how wet one of these pieces is: what it is not adds nothing."""
    told = {e.garment for e in reading.telling.events if isinstance(e, GarmentIs) and e.state in WETNESS}
    found = {g for p in pieces for n in (p.owners or (None,)) for g in reading.telling.meant(p, n).ids}
    return not told.isdisjoint(found or reading.telling.piece)


def _owners(reading: Reading, piece: Piece) -> Sequence[Item]:
    """Whose piece it is: as said, or the horses of the clause, or the one spoken of before."""
    if piece.owners:
        return [*(reading.horses if reading.open else ()), *named(piece.owners)]
    before = [name for i in reading.items if i.piece for name in i.piece.owners]
    here = reading.horses or named(before) or [i for i in reading.items if i.horses]
    nobodys = piece.some or (piece.rug and piece.several and not piece.their)  # "rugs for the wash need names on"
    return here or (() if nobodys else may_own(piece, reading.clause, reading.telling))
