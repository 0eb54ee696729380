"""Signs on horses and states of clothing: each goes to the nearest subject, or to nobody."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import cast

from bot.events import Event, GarmentIs, Seen, Sign
from bot.words.around import (
    OF_HORSE,
    about_body,
    crowded,
    excepted,
    horse_ahead,
    named_last,
    neither,
    not_that_one,
    owns_the_stall,
    pieces_ahead,
    pieces_listed,
    rest_allows,
    setting_of,
    sign_of,
    something_of_hers,
    wearer_ahead,
)
from bot.words.clauses import Clause, soft
from bot.words.elided import told_of_another
from bot.words.items import WETNESS, Item, predicate
from bot.words.meaning import Ask
from bot.words.piece import Piece
from bot.words.states import read_strap, state_word, tell_piece
from bot.words.telling import Telling, named
from bot.words.whose import unnamed

STRONG_REACH = 3  # unknown words that a strong sign may stand away from its horse
ALIEN = 9  # other people, other things: too far for any sign


@dataclass
class _Reading:
    """A clause while its signs are read: the subjects met so far and what lies between.

    latest: what the last subject was: "horse", "piece", "other", "" for none. gap: unknown words since.
    spent: what was denied was another word. open: the list of horses still grows. waiting: places of signs said before
    any horse.
    """

    clause: Clause
    telling: Telling
    horses: list[Item] = field(default_factory=list)
    pieces: list[Piece] = field(default_factory=list)
    latest: str = ""
    gap: int = 0
    denied: bool = False
    spent: bool = False
    open: bool = False
    waiting: list[int] = field(default_factory=list)

    @property
    def items(self) -> tuple[Item, ...]:
        return self.clause.items


def read_signs(clause: Clause, telling: Telling) -> bool:
    """Every sign and state of a clause; whether any was told."""
    if _asked_for(clause.items):
        return False
    before = (len(telling.events), telling.ask)
    reading = _Reading(clause, telling)
    strapped = read_strap(clause, telling)
    for at, item in enumerate(clause.items):
        if item.horses:
            _horse(reading, at)
        elif item.piece is not None:
            _piece(reading, at)
        elif predicate(item):
            if not (strapped and item.kinds("state")):
                _predicate(reading, at)
        else:
            _other_word(reading, at)
    told_of_another(clause, reading.horses, telling, denied=reading.denied)
    _remember(reading)
    return (len(telling.events), telling.ask) != before


def _asked_for(items: Sequence[Item]) -> bool:
    """As in "keep Birch dry": how she is to be, not how she is. Danger is heard all the same."""
    words = [i for i in items if not i.mark and not i.has("please", "polite")]
    told = len(words) > 2 and words[0].has("keep") and bool(words[1].horses) and predicate(words[2])
    return told and not any(i.kinds("sign") for i in words)


def _horse(reading: _Reading, at: int) -> None:
    items = reading.items
    item, before = items[at], items[at - 1] if at else None
    of_hers = before is not None and before.text in OF_HORSE and at > 1
    if of_hers and (items[at - 2].has("article") or not about_body(items[: at - 1])):  # "el de Canela" is a thing
        reading.latest, reading.gap = "other", 1
        return
    if something_of_hers(items[at + 1 : at + 3]):
        reading.latest, reading.gap = "other", ALIEN
        return
    if excepted(items, at):
        return
    if not neither(items) and not_that_one(items, at):
        reading.denied = False
        return
    for place in reading.waiting:  # "sweaty: Maple, Pip"
        _emit(reading, place, [item], after=True)
    if not reading.open:
        no_more = all(i.has("not", "is", "article", "link", "polite") for i in items[:at])  # "no está la Perla sudada"
        reading.horses, reading.denied = [], reading.denied and (bool(reading.waiting) or no_more)
    reading.denied = reading.denied or neither(items)
    reading.horses.append(item)
    reading.open, reading.latest, reading.gap, reading.pieces = True, "horse", 0, []


def _piece(reading: _Reading, at: int) -> None:
    items = reading.items
    before = items[at - 1] if at else None
    if reading.latest == "horse" and before is not None and before.has("under", "in", "with", "has", "wears"):
        return
    piece = cast("Piece", items[at].piece)
    joined = (
        reading.latest == "piece"
        and not reading.gap
        and before is not None
        and (before.has("and") or before.text == ",")
    )
    reading.pieces = [*reading.pieces, piece] if joined else [piece]
    reading.latest, reading.gap = "piece", 0
    if not reading.open:
        reading.denied = False


def _other_word(reading: _Reading, at: int) -> None:
    items = reading.items
    item, before = items[at], items[at - 1] if at else None
    if item.has("not", "stopped"):
        still = reading.denied and item.has("stopped") and not item.has("not")  # "has not stopped shivering"
        reading.denied, reading.spent = not still, False
    elif item.text == "," and reading.latest == "piece" and reading.gap < ALIEN:
        reading.gap = 0  # "her sheet leaks at the seam, soaked"
    elif item.mark and reading.spent:  # "no better, still shivering"
        reading.denied = reading.spent = False
    elif item.has("no name"):  # it may be a horse after all: what follows is told of nobody
        reading.latest, reading.gap, reading.open = "other", reading.gap + ALIEN, False
    elif item.has("i") or item.person:
        if at + 1 < len(items) and items[at + 1].has("said", "guess"):
            return
        reading.latest = "other" if reading.latest in ("", "other") else reading.latest
        reading.gap += ALIEN
    elif item.has("she") and reading.latest == "piece" and before is not None and (before.mark or before.has("and")):
        owners = [name for piece in reading.pieces for name in piece.owners]
        reading.horses = list(named(owners)) or list(reading.telling.who)
        reading.latest, reading.gap, reading.open = "horse", 0, False
    elif item.has("body") and reading.latest == "piece" and before is not None and before.has("and"):
        reading.latest, reading.gap = "other", reading.gap + ALIEN  # "his sheet wet and neck damp"
    elif not soft(item) and not item.has("brought in", "turned out", "brought"):
        reading.gap, reading.open, reading.spent = reading.gap + 1, False, reading.denied
        reading.latest = reading.latest or "other"


def _predicate(reading: _Reading, at: int) -> None:
    items, item = reading.items, reading.items[at]
    if item.has("very") and at + 1 < len(items) and items[at + 1].kinds("sign"):
        return  # "bien transpiré"
    if at > 1 and item.has("everyday good") and items[at - 1].has("very") and items[at - 2].kinds("sign"):
        return  # "sweating pretty good"
    behind = at + 1 < len(items) and items[at + 1].has("not behind") and bool(item.kinds("sign"))
    if behind and not (at + 2 < len(items) and items[at + 2].has("what")):  # "tremble plus que Max"
        reading.denied, reading.spent = True, False
    listed = pieces_listed(items, at)
    ahead = pieces_ahead(items, at)
    if listed and (item.has(*WETNESS) or item.kinds("state")):
        _state(reading, at, listed)
    elif ahead and (item.has(*WETNESS) or item.kinds("state")):
        _state(reading, at, ahead)
    elif item.kinds("sign") and (wearers := named(wearer_ahead(items, at))):
        _emit(reading, at, wearers, after=True)
    elif _before_its_horse(reading, at):
        reading.waiting.append(at)
        return
    else:
        _emit(reading, at, reading.horses)
    reading.open = False


def _before_its_horse(reading: _Reading, at: int) -> bool:
    """As in "Shivering: Pip", "cold - Maple", "the heavy is rubbing Otto"."""
    items, item = reading.items, reading.items[at]
    if item.has("sign rubbed") and reading.latest == "piece":
        return horse_ahead(items, at)
    spoken = any(i.has("is", "was") and not i.has("article") for i in items[1:at])  # "… is sweaty and Pip is fine"
    if spoken and reading.latest:
        return False
    adjective = reading.latest == "other" and reading.gap <= 1 and bool(item.kinds("sign"))  # "a nasty rub on Tug"
    if (reading.latest and not adjective) or excepted(items, next((k for k, i in enumerate(items) if i.horses), 0)):
        return False
    if item.kinds("everyday"):
        after = items[at + 1 : at + 2]
        return bool(after) and after[0].mark and after[0].text in ":-–—" and horse_ahead(items, at)
    return horse_ahead(items, at) or named_last(items, at)


def _emit(reading: _Reading, at: int, horses: Sequence[Item], *, after: bool = False) -> None:
    item = reading.items[at]
    if item.has(*WETNESS) and _about_piece(reading, at):
        _state(reading, at, reading.pieces)
    elif item.kinds("state"):
        it = reading.latest == "" or (reading.latest == "other" and not item.has("state found"))
        it = it and reading.clause.has("it")
        if not item.has("state found") or reading.latest == "piece" or it:
            _state(reading, at, reading.pieces)
    else:
        _sign(reading, at, horses, after=after)


def _about_piece(reading: _Reading, at: int) -> bool:
    if at + 1 < len(reading.items) and reading.items[at + 1].has("body"):
        return False  # "felt under the blanket, all wet shoulder"
    if reading.latest:
        return reading.latest == "piece"
    telling = reading.telling
    if reading.clause.has("she", "body"):
        return False
    return bool(telling.piece) and (reading.clause.has("it") or telling.last == "piece")


def _sign(reading: _Reading, at: int, horses: Sequence[Item], *, after: bool) -> None:
    item = reading.items[at]
    strong = bool(item.kinds("sign"))
    owners = [name for piece in reading.pieces for name in piece.owners]
    if not horses and reading.latest == "piece" and item.has("sign rubbed"):
        horses = named(owners or reading.telling.owners_of(reading.pieces))
    elif not horses or (reading.latest == "other" and not after):
        horses = () if reading.latest else unnamed(reading.clause, reading.telling, at)
    elif reading.gap > (STRONG_REACH if strong else 0) and not after:
        return
    if not strong and any(h.known and not h.exact and not h.sure for h in horses):
        return
    if horses and rest_allows(reading.items, at):
        _tell(reading, horses, at)


def _tell(reading: _Reading, horses: Sequence[Item], at: int) -> None:
    telling, setting = reading.telling, setting_of(reading.clause)
    sign = sign_of(reading.items[at])
    if sign is None or (reading.denied and sign == "comfortable"):
        word, options = (reading.items[at].raw, ("hot", "comfortable")) if sign is None else NOT_COMFORTABLE
        pending: tuple[Event, ...] = tuple(
            Seen(n, cast("Sign", ""), setting) for h in horses if h.sure for n in h.horses
        )
        telling.wonder(Ask("sign", word, options, pending))
        return
    if reading.denied and sign == "unwell":
        return
    first, said = len(telling.events), "comfortable" if reading.denied else sign
    telling.each(horses, lambda name: Seen(name, said, setting))
    told = range(first, len(telling.events))
    telling.denied.update(told if reading.denied else ())
    telling.past.update(told if reading.clause.has("was") else ())
    telling.sign = sign


NOT_COMFORTABLE = ("not comfortable", ("cold", "hot", "sweating", "rubbed", "unwell"))


def _state(reading: _Reading, at: int, pieces: Sequence[Piece]) -> None:
    clause, telling, item = reading.clause, reading.telling, reading.items[at]
    state = state_word(clause, at, denied=reading.denied)
    if state is None or (reading.denied and item.has(*WETNESS) and _told_already(reading, pieces)):
        return  # "mouillé, pas humide, mouillé"
    beside = reading.latest == "piece" and not reading.gap  # "dolly-liner wet round the neck"
    if item.has(*WETNESS) and not (beside or rest_allows(clause.items, at)):
        return
    if reading.gap and reading.latest == "piece" and (item.has(*WETNESS) or reading.gap > 1):
        return
    it = clause.has("it") and bool(item.kinds("state")) and not item.has("state found")
    if not pieces and (not reading.latest or it):
        for garment in telling.piece:
            telling.say(GarmentIs(garment, state))
    for piece in pieces:
        tell_piece(telling, piece, state, _owners(reading, piece))


def _told_already(reading: _Reading, pieces: Sequence[Piece]) -> bool:
    """Whether the message has told how wet one of these pieces is: what it is not adds nothing."""
    told = {e.garment for e in reading.telling.events if isinstance(e, GarmentIs) and e.state in WETNESS}
    found = {g for p in pieces for n in (p.owners or (None,)) for g in reading.telling.meant(p, n).ids}
    return not told.isdisjoint(found or reading.telling.piece)


def _owners(reading: _Reading, piece: Piece) -> Sequence[Item]:
    """Whose piece it is: as said, or the horses of the clause, or the one spoken of before."""
    if piece.owners:
        return [*(reading.horses if reading.open else ()), *named(piece.owners)]
    before = [name for i in reading.items if i.piece for name in i.piece.owners]
    return reading.horses or named(before) or [i for i in reading.items if i.horses] or reading.telling.who


def _remember(reading: _Reading) -> None:
    telling = reading.telling
    items = reading.items
    horses = [i for k, i in enumerate(items) if i.horses and not (not_that_one(items, k) or owns_the_stall(items, k))]
    owned = [n for i in reading.items if i.piece for n in i.piece.owners]
    pieces = [i.piece for i in reading.items if i.piece]
    if not (horses or owned) and any(i.has("no name") for i in reading.items):
        telling.who, telling.begun = (), True  # perhaps another horse: what follows is told of nobody
    if pieces and not horses:
        telling.last = "piece"
        found = [telling.meant(p, n).ids for p in pieces for n in p.owners or (None,)]
        telling.piece = found[0] if len(found) == 1 else ()
    if horses or owned:
        telling.who = tuple(horses) or named(owned)
        telling.begun = True
        telling.crowded = crowded(reading.items)
        telling.last = (
            "horse" if horses and not (reading.latest == "piece" and telling.last == "piece") else telling.last
        )
