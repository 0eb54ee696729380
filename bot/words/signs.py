"""Signs on horses and states of clothing: each goes to the nearest subject, or to nobody."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import cast

from bot.events import Event, GarmentIs, GarmentWord, Seen, Setting, Sign
from bot.words.clauses import WETNESS, Clause, predicate, soft
from bot.words.clothes import Piece
from bot.words.items import Item
from bot.words.meaning import Ask
from bot.words.telling import Telling, named

BAD = ("sweating", "hot", "shivering", "cold", "wet", "rubbed")  # whose opposite is comfortable
WET_SIGN: dict[str, Sign] = {"dry": "comfortable", "damp": "wet", "wet": "wet", "soaked": "wet"}
NOT_WET: dict[str, GarmentWord] = {"wet": "dry", "soaked": "damp", "damp": "dry", "dry": "damp"}
STRONG_REACH = 3  # unknown words that a strong sign may stand away from its horse


@dataclass
class _Reading:
    """A clause while its signs are read: the subjects met so far and what lies between."""

    clause: Clause
    telling: Telling
    horses: list[Item] = field(default_factory=list)
    piece: Piece | None = None
    latest: str = ""  # horse | piece | other
    gap: int = 0
    denied: bool = False
    open: bool = False  # the list of horses still grows
    waiting: list[int] = field(default_factory=list)  # signs said before any horse
    said: bool = False


def read_signs(clause: Clause, telling: Telling) -> bool:
    """Every sign and state of a clause; whether any was told."""
    reading = _Reading(clause, telling)
    before = (len(telling.events), telling.ask)
    items = clause.items
    for at, item in enumerate(items):
        if item.horses:
            _horse(reading, at)
        elif item.piece is not None:
            _piece(reading, at)
        elif predicate(item):
            _predicate(reading, at)
        elif item.has("not", "stopped"):
            reading.denied = True
        elif item.has("i") or item.person:
            _other(reading, at)
        elif not soft(item):
            reading.gap += 1
            reading.latest = reading.latest or "other"
        if item.mark and item.text in "/":
            continue
    _strap(reading)
    _remember(reading)
    return (len(telling.events), telling.ask) != before


def _horse(reading: _Reading, at: int) -> None:
    items = reading.clause.items
    item, before = items[at], items[at - 1] if at else None
    if (
        before is not None
        and before.text in ("of", "de", "d'", "del", "du")
        and at > 1
        and not _about_body(items[: at - 1])
    ):
        reading.latest, reading.gap = "other", 1
        return
    if _something_of_hers(items[at + 1 : at + 3]):
        reading.latest, reading.gap = "other", 9
        return
    for place in reading.waiting:  # "sweaty: Maple, Pip"
        _emit(reading, place, [item], after=True)
    if not reading.open:
        reading.horses, reading.denied = [], reading.denied and bool(reading.waiting)
    reading.horses.append(item)
    reading.open, reading.latest, reading.gap, reading.piece = True, "horse", 0, None


def _something_of_hers(after: Sequence[Item]) -> bool:
    """ "Maple's halter", "Maple stall": what follows is about the thing, not about the horse."""
    if after and after[0].text == "'s":
        after = after[1:]
        if after and not soft(after[0]) and not predicate(after[0]) and not after[0].means:
            return True
    thing = after[0] if after else None
    return (
        thing is not None
        and thing.has("place stall", "place field", "work")
        and not thing.has("inwards", "outwards", "in")
    )


def _about_body(before: Sequence[Item]) -> bool:
    words = [i for i in before if not soft(i) or i.has("body", "place stall", "place field", "work")]
    return not words or all(i.has("body") or predicate(i) or i.has("said") for i in words)


def _piece(reading: _Reading, at: int) -> None:
    items = reading.clause.items
    before = items[at - 1] if at else None
    if reading.latest == "horse" and before is not None and before.has("under", "in", "with", "has", "wears"):
        return
    reading.piece = items[at].piece
    reading.latest, reading.gap = "piece", 0
    if not reading.open:
        reading.denied = False


def _other(reading: _Reading, at: int) -> None:
    items = reading.clause.items
    tells = at + 1 < len(items) and items[at + 1].has("said", "guess")
    if tells:
        return
    if reading.latest in ("", "other"):
        reading.latest = "other"
    reading.gap += 9


def _predicate(reading: _Reading, at: int) -> None:
    items = reading.clause.items
    ahead = _piece_ahead(items, at)
    if ahead is not None and (items[at].has(*WETNESS) or items[at].kinds("state")):
        _state(reading, at, ahead)
        reading.open = False
        return
    if items[at].has("sign rubbed") and reading.latest == "piece" and _horse_ahead(items, at):
        reading.waiting.append(at)
        return
    if reading.latest == "" and not items[at].kinds("everyday") and _horse_ahead(items, at):
        reading.waiting.append(at)
        return
    if reading.latest == "" and items[at].kinds("everyday") and _colon_ahead(items, at):
        reading.waiting.append(at)
        return
    _emit(reading, at, reading.horses)
    reading.open = False


def _piece_ahead(items: Sequence[Item], at: int) -> Piece | None:
    """The piece that this word stands before and belongs to: "wet liner", "lost Juniper's liner", "tore her sheet"."""
    verb = bool(items[at].kinds("state"))
    for k in range(at + 1, min(at + 4, len(items))):
        item = items[k]
        if item.piece is not None:
            later = any(predicate(i) for i in items[k + 1 :] if not i.mark)
            return None if later and not verb else item.piece
        if item.mark or not (item.has("article", "her", "all") or (verb and item.has("in", "of"))):
            return None
    return None


def _horse_ahead(items: Sequence[Item], at: int) -> bool:
    rest = [i for i in items[at + 1 :] if not (i.mark and i.text in ":-–—=>")]
    while rest and (
        predicate(rest[0]) or rest[0].has("and", "again", "on", "very", "a little", "too", "article", "link", "of")
    ):
        rest = rest[1:]
    return bool(rest) and bool(rest[0].horses)


def _colon_ahead(items: Sequence[Item], at: int) -> bool:
    after = items[at + 1 : at + 2]
    return bool(after) and after[0].mark and after[0].text in ":-–—" and _horse_ahead(items, at)


def _emit(reading: _Reading, at: int, horses: Sequence[Item], *, after: bool = False) -> None:
    item = reading.clause.items[at]
    if item.has(*WETNESS) and _about_piece(reading):
        _state(reading, at, reading.piece)
    elif item.kinds("state"):
        it = reading.latest == "" and reading.clause.has("it")
        if not item.has("state found") or reading.latest == "piece" or it:
            _state(reading, at, reading.piece)
    else:
        _sign(reading, at, horses, after=after)


def _about_piece(reading: _Reading) -> bool:
    if reading.latest == "piece":
        return True
    if reading.latest in ("horse", "other"):
        return False
    telling = reading.telling
    if reading.clause.has("she"):
        return False
    if reading.clause.has("it"):
        return bool(telling.piece)
    return telling.last == "piece" and bool(telling.piece)


def _sign(reading: _Reading, at: int, horses: Sequence[Item], *, after: bool) -> None:
    item, telling = reading.clause.items[at], reading.telling
    strong = bool(item.kinds("sign"))
    if not horses and reading.latest == "piece" and item.has("sign rubbed") and reading.piece and reading.piece.owners:
        horses = named(reading.piece.owners)
    elif not horses or (reading.latest == "other" and not after):
        horses = () if reading.latest else _meant_by_she(reading, at)
    elif reading.gap > (STRONG_REACH if strong else 0) and not after:
        return
    if not horses or not _rest_allows(reading.clause.items, at):
        return
    signs = _signs(item, reading.clause.items)
    unsure = [h for h in horses if not h.sure]
    if unsure and not strong and any(h.known and not h.exact for h in unsure):
        return
    if not signs:
        telling.each([h for h in horses if h.sure and False], lambda name: Seen(name, "hot"))
        pending: tuple[Event, ...] = tuple(
            Seen(n, cast("Sign", ""), _setting(reading.clause)) for h in horses if h.sure for n in h.horses
        )
        telling.wonder(Ask("sign", item.raw, ("hot", "comfortable"), pending))
        return
    setting, denied = _setting(reading.clause), reading.denied
    for sign in signs:
        _tell(reading, horses, sign, setting, denied=denied)


def _tell(reading: _Reading, horses: Sequence[Item], sign: Sign, setting: Setting, *, denied: bool) -> None:
    telling = reading.telling
    if denied and sign == "comfortable":
        pending = tuple(Seen(n, cast("Sign", ""), setting) for h in horses if h.sure for n in h.horses)
        telling.wonder(Ask("sign", "not comfortable", ("cold", "hot", "sweating", "rubbed", "unwell"), pending))
        return
    if denied and sign == "unwell":
        return
    first = len(telling.events)
    said: Sign = "comfortable" if denied else sign
    telling.each(horses, lambda name: Seen(name, said, setting))
    told = range(first, len(telling.events))
    if denied:
        telling.denied.update(told)
    if reading.clause.has("was"):
        telling.past.update(told)


def _signs(item: Item, items: Sequence[Item]) -> list[Sign]:
    """What a word says of a horse; [] where it may be either of two."""
    wetness = next((w for w in WETNESS if item.has(w)), None)
    signs = [s for s in (item.kinds("sign") or item.kinds("everyday")) if s != "warm"]
    if signs:
        return [cast("Sign", signs[0])]
    if wetness:
        return [WET_SIGN[wetness]]
    return []


def _meant_by_she(reading: _Reading, at: int) -> Sequence[Item]:
    """Whom a sign without a name is about: the horse spoken of last; the speaker's own; else nobody."""
    telling, items = reading.telling, reading.clause.items
    several = telling.who[0].horses if len(telling.who) == 1 else ()
    if reading.clause.has("both") and 1 < len(several) < 4:
        return named(several)
    if reading.clause.has("all horses") or (reading.clause.has("everyone") and items[at].kinds("sign")):
        return named(telling.names)
    if reading.clause.has("it") and not reading.clause.has("she"):
        return ()
    if not telling.begun and items[at].kinds("everyday") and len(telling.who) > 1:
        return ()
    bare = items[at].kinds("everyday") == ["comfortable"] and telling.begun and not reading.clause.has("she")
    plain = bare and reading.clause.joined != "but" and not items[0].has("is", "time")
    return () if plain else telling.who


def _rest_allows(items: Sequence[Item], at: int) -> bool:
    """Whether what follows lets an everyday word be a sign: "cold" but not "cold water"."""
    item = items[at]
    if item.kinds("sign"):
        return True
    rest = items[at + 1 :]
    following = next((i for i in rest if not (i.mark and i.text in "\"'")), None)
    if following is None or following.mark or predicate(following):
        return True
    if any(i.has("work") and not any(j.has("after") for j in items[:k]) for k, i in enumerate(items)):
        return False  # "was hot in the lesson"
    if item.has("everyday comfortable"):
        if following.has("worked", "took off", "put on", "brought"):
            return False  # "a bien travaillé"
        return all(_harmless(i) for i in rest)
    return _harmless(following) or following.piece is not None


def _harmless(item: Item) -> bool:
    return soft(item) or predicate(item) or bool(item.horses) or item.piece is not None or item.has("when", "worked", "took", "put on", "took off", "swapped", "brought", "done", "bare")  # fmt: skip


def _setting(clause: Clause) -> Setting:
    items = clause.items
    for at, item in enumerate(items):
        if item.has("worked"):
            return "after work"
        if item.has("after") and any(i.has("work", "worked") for i in items[at + 1 : at + 4]):
            return "after work"
    return "stall" if clause.has("place stall") else "turnout"


def _state(reading: _Reading, at: int, piece: Piece | None) -> None:
    clause, telling = reading.clause, reading.telling
    item = clause.items[at]
    state = _state_word(item, clause, reading.denied, at)
    if state is None:
        return
    if item.has(*WETNESS) and not item.kinds("state") and not _rest_allows(clause.items, at):
        return
    if reading.gap and reading.latest == "piece" and (item.has(*WETNESS) or reading.gap > 1):
        return
    if piece is None:
        if reading.latest or not telling.piece:
            return
        for garment in telling.piece:
            telling.say(GarmentIs(garment, state))
        return
    tell_piece(telling, piece, state, _owners(reading, piece))


def _owners(reading: _Reading, piece: Piece) -> Sequence[Item]:
    """Whose piece it is: as said, or the horses of the clause, or the one spoken of before."""
    said = list(named(piece.owners))
    if piece.owners:
        joint = [h for h in reading.horses if reading.open]
        return [*joint, *said]
    if reading.horses:
        return reading.horses
    later = [i for i in reading.clause.items if i.horses]
    return later or reading.telling.who


def tell_piece(telling: Telling, piece: Piece, state: GarmentWord, owners: Sequence[Item]) -> None:
    """A state of the piece meant, of each of these horses; asked about where it may be another."""
    if piece.either and piece.owners:
        ids = [g for name in piece.owners for g in telling.meant(piece, name).ids]
        _tell_found(telling, piece, state, ids if len(ids) == 1 else (), ids)
        return
    if not owners or piece.spare:
        found = telling.meant(piece, None)
        _tell_found(telling, piece, state, found.ids, found.options)
        return
    for owner in owners:
        if not owner.sure:
            telling.wonder(Ask("horse", owner.raw, owner.horses, (GarmentIs("", state),)))
            continue
        found = telling.meant(piece, owner.horses[0])
        _tell_found(telling, piece, state, found.ids, found.options)


def _tell_found(telling: Telling, piece: Piece, state: GarmentWord, ids: Sequence[str], options: Sequence[str]) -> None:
    for garment in ids:
        telling.say(GarmentIs(garment, state))
    if ids:
        telling.piece, telling.last = tuple(ids), "piece"
    elif options:
        telling.wonder(Ask("garment", piece.said, tuple(options), (GarmentIs("", state),)))


def _state_word(item: Item, clause: Clause, denied: bool, at: int) -> GarmentWord | None:  # noqa: FBT001
    states = [s for s in item.kinds("state") if s != "found"]
    if item.has("state found"):
        some = any(i.piece is not None and i.piece.some for i in clause.items)
        return None if denied or some else "in service"
    if states:
        return cast("GarmentWord", states[0]) if not denied else None
    word = next((w for w in WETNESS[::-1] if item.has(w)), None)
    if word is None:
        return None
    before = clause.items[max(0, at - 3) : at]
    if denied:
        return NOT_WET[word]
    if word == "dry" and any(i.has("nearly") for i in before):
        return "damp"
    if word == "wet" and any(i.has("a little") for i in before):
        return "damp"
    return cast("GarmentWord", word)


def _strap(reading: _Reading) -> None:
    """A broken strap, in whatever order it is told."""
    clause, telling = reading.clause, reading.telling
    if not (clause.has("strap") and clause.has("broken", "state torn", "state missing")) or reading.denied:
        return
    pieces = [i.piece for i in clause.items if i.piece is not None]
    if not pieces:
        horses = [i for i in clause.items if i.horses] or list(telling.who)
        if horses:
            tell_piece(
                telling, Piece("strap", frozenset({"sheet", "turnout", "stable"}), rug=True), "strap broken", horses
            )
        return
    torn = [k for k, e in enumerate(telling.events) if isinstance(e, GarmentIs) and e.state in ("torn", "missing")]
    for k in reversed(torn):
        del telling.events[k]
    tell_piece(telling, pieces[0], "strap broken", _owners(reading, pieces[0]))


def _remember(reading: _Reading) -> None:
    telling = reading.telling
    horses = [i for i in reading.clause.items if i.horses]
    owned = [n for i in reading.clause.items if i.piece for n in i.piece.owners]
    if horses or owned:
        telling.who = tuple(horses) or named(owned)
        telling.begun = True
        telling.last = "piece" if reading.latest == "piece" and telling.last == "piece" else "horse"
