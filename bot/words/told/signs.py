"""Signs on horses and states of clothing: each goes to the nearest subject, or to nobody."""

from collections.abc import Sequence
from typing import cast

from bot.events import Event, GarmentIs, Seen, Sign
from bot.words.lookup.items import WETNESS, Item, of_a_horse, of_clothes, predicate, some_mean
from bot.words.meaning import Ask
from bot.words.named.told_apart import felt_in_a_part
from bot.words.thoughts.around import (
    both_of_hers,
    excepted,
    horse_ahead,
    only_horses_behind,
    only_that_one_left,
    pieces_ahead,
    pieces_listed,
    rest_allows,
    setting_of,
    sign_of,
    wearer_ahead,
)
from bot.words.thoughts.clauses import Clause, only_small
from bot.words.thoughts.makes_wet import makes_wet, wet_weather
from bot.words.thoughts.named_at_last import came_so, named_last, told_at_last
from bot.words.told.agreement import disagrees, of_the_piece
from bot.words.told.below import felt_dry_below
from bot.words.told.elided import told_of_another
from bot.words.told.likened import as_another_does, more_than_another
from bot.words.told.one_to_another import which_goes_on
from bot.words.told.remembered import remember
from bot.words.told.removed import came_off_for_it
from bot.words.told.states import DENYING, read_state, read_strap
from bot.words.told.subjects import Reading, may_be_told_of, meet_horse, meet_other_word, meet_piece
from bot.words.told.telling import Telling, named
from bot.words.told.things import may_be_its, thing_ahead
from bot.words.told.whose import unnamed

ENDS_DENIAL = ("is", "has", "time", "link", "polite")  # "(frío no) tiene ya", "(sudor no) tiene, la verdad"
HEADED = 3  # words of "cold: Rafle"
STRONG_REACH = 3  # unknown words that a strong sign may stand away from its horse


def read_signs(clause: Clause, telling: Telling) -> bool:
    """Every sign and state of a clause; whether any was told."""
    if clause.has("keep") and _asked_for(clause.items):
        return False
    before = (len(telling.events), telling.ask)
    strapped = read_strap(clause, telling)
    if _may_tell(clause) and not _of_a_stranger(clause.items):
        _word_by_word(clause, telling, strapped=strapped)
    elif clause.has("no name") or _of_a_stranger(clause.items):
        telling.of_nobody()
    return (len(telling.events), telling.ask) != before


def _word_by_word(clause: Clause, telling: Telling, *, strapped: bool) -> None:
    """Each sign and state told of the subject it stands nearest to. strapped: of a piece, all was told."""
    reading = Reading(clause, telling)
    for at, item in enumerate(clause.items):
        if item.horses:
            _horse(reading, at)
        elif item.piece is not None:
            meet_piece(reading, at)
        elif predicate(item):
            if not (strapped and item.kinds("state")):
                _predicate(reading, at)
        else:
            meet_other_word(reading, at)
    told_of_another(clause, reading.horses, telling, denied=reading.denied)
    remember(reading)


def _may_tell(clause: Clause) -> bool:
    """Whether something is told, of something, or that it is not so or has stopped."""
    return bool(clause.told or clause.horses or clause.pieces) or clause.has("not", "stopped")


def _of_a_stranger(items: Sequence[Item]) -> bool:
    """As in "(sweating: Maple, Pip.) cold: Rafle": told of whoever stands behind it, who is no horse of ours."""
    if len(items) != HEADED or items[1].text != ":" or not predicate(items[0]):
        return False
    last = items[-1]
    return not (last.horses or last.pieces or last.piece or last.means or last.number is not None)


def _asked_for(items: Sequence[Item]) -> bool:
    """As in "keep Birch dry": how she is to be, not how she is. Danger is heard all the same."""
    words = [i for i in items if not i.mark and not i.has("please", "polite")]
    told = len(words) > 2 and words[0].has("keep") and bool(words[1].horses) and predicate(words[2])
    return told and not any(i.kinds("sign") for i in words)


def _horse(reading: Reading, at: int) -> None:
    if not may_be_told_of(reading, at):
        return
    if reading.waiting and _is_so(reading.items, at):
        reading.denied = False
    for place in reading.waiting:  # "sweaty: Maple, Pip"
        _emit(reading, place, [reading.items[at]], after=True)
    meet_horse(reading, at)


def _is_so(items: Sequence[Item], at: int) -> bool:
    """As in "he's not sweaty, Pip is"."""
    behind = items[at + 1 : at + 3]
    return bool(at and items[at - 1].mark and behind and behind[0].has("is")) and (len(behind) == 1 or behind[1].mark)


def _predicate(reading: Reading, at: int) -> None:
    items, item = reading.items, reading.items[at]
    if item.has("very") and at + 1 < len(items) and _said_how_much_of(items[at + 1]):
        return  # "bien transpiré", "bien helada"
    said_of_one = reading.clause.horses and not reading.clause.pieces
    if not said_of_one and not any(letter.isalnum() for letter in item.text):
        return  # "swapped Gus into his heavy 🥶": a face that is the speaker's
    if wet_weather(items, at) or more_than_another(items, at):
        return
    if not reading.horses and as_another_does(items, at):
        return
    if at > 1 and item.has("everyday good") and items[at - 1].has("very") and items[at - 2].kinds("sign"):
        return  # "sweating pretty good"
    clothes = of_clothes(item)
    if clothes and item.kinds("state") and reading.latest != "piece" and thing_ahead(items, at):
        return  # "se ha roto la jarra"
    if clothes and item.has(*WETNESS) and both_of_hers(items, at):
        return
    if _denied_behind(items, at) and of_a_horse(item):
        reading.denied, reading.spent = True, False
    pieces = (pieces_listed(items, at) or pieces_ahead(items, at)) if clothes else ()
    if pieces and reading.clause.has("animal") and not any(piece.owners for piece in pieces):
        return  # "the mare across the road is shivering in a soaked sheet"
    if pieces:
        reading.open = False  # "Pip ripped Ned's sheet" is of Ned's
        read_state(reading, at, pieces)
    elif reading.latest == "horse" and makes_wet(items, at, next(iter(items[at + 1 : at + 2]), None)):
        reading.waiting = [at] if horse_ahead(items, at) else []
    elif at + 2 < len(items) and item.kinds("sign") and (wearers := named(wearer_ahead(items, at))):
        _emit(reading, at, wearers, after=True)
    elif _before_its_horse(reading, at):
        reading.waiting.append(at)
        return
    else:
        _emit(reading, at, reading.horses)
    reading.open = False


def _said_how_much_of(item: Item) -> bool:
    return predicate(item) and not item.has("everyday comfortable", "everyday good")


def _denied_behind(items: Sequence[Item], at: int) -> bool:
    """As in "Lou tremble plus", "frío no tiene, la verdad"; not "tremble plus que Max", "a froid pas Lune"."""
    behind = items[at + 1 : at + 3]
    if not behind or not behind[0].has("not behind", "not") or items[at].text.split()[-1] in DENYING:
        return False  # "file pas pantoute" denies itself
    if not behind[0].has("not behind") and not all(i.mark or i.has(*ENDS_DENIAL) for i in items[at + 2 :]):
        return False
    return len(behind) < 2 or not (behind[1].has("what", "of") or only_that_one_left(items, at + 2))


def _before_its_horse(reading: Reading, at: int) -> bool:
    """As in "Shivering: Pip", "cold - Maple", "the heavy is rubbing Otto"."""
    items, item = reading.items, reading.items[at]
    if at + 1 == len(items):
        return False
    if told_at_last(items, at) or (item.has(*WETNESS) and only_horses_behind(items, at)):
        return True  # "mojados Lola y Zafi"
    if item.has("wet", "soaked") and not reading.clause.joined and came_so(items, at):
        return True
    if item.has("sign rubbed") and reading.latest == "piece":
        return horse_ahead(items, at)
    if reading.latest in ("horse", "piece"):
        return False
    if not _only_listed(items[at + 1 :]):
        return False  # "no sweat tho - Rowan tree's down"
    spoken = any(
        i.has("is", "was") and not i.has("article", "state found") for i in items[1:at]
    )  # "… is sweaty and Pip is fine"
    adjective = reading.gap <= 1 and bool(item.kinds("sign")) and not spoken  # "a nasty rub on Tug"
    if (reading.latest and not adjective) or excepted(items, next((k for k, i in enumerate(items) if i.horses), 0)):
        return False
    if item.kinds("everyday"):
        after = items[at + 1 : at + 2]
        if item.has("everyday hot", "everyday cold") and only_horses_behind(items, at):
            return True  # "trop chauds Ulysse et Fidji"
        return bool(after) and after[0].mark and after[0].text in ":-–—" and horse_ahead(items, at)
    return horse_ahead(items, at) or named_last(items, at)


def _only_listed(behind: Sequence[Item]) -> bool:
    """Whether a pause that comes before a horse has nothing but horses behind it."""
    pause = next((k for k, i in enumerate(behind) if i.mark or i.horses), len(behind))
    if pause >= len(behind) or behind[pause].horses or not any(i.horses for i in behind):
        return True
    return all(i.horses or i.mark or only_small(i) or predicate(i) for i in behind[pause:])


def _emit(reading: Reading, at: int, horses: Sequence[Item], *, after: bool = False) -> None:
    item = reading.items[at]
    if item.has(*WETNESS) and at > 1 and reading.items[at - 1].number is not None and reading.items[at - 2].horses:
        return  # "Pip 3 soaked", of hay nets
    if not of_clothes(item):
        _sign(reading, at, horses, after=after)
    elif reading.telling.thing and not reading.latest and may_be_its(reading.telling.thing, reading.items, at):
        pass  # "la 200 est sèche. La serviette de Marie non, celle-là dégouline"
    elif reading.telling.spoken and of_the_piece(reading.clause, reading.telling):
        read_state(reading, at, [reading.telling.spoken])
    elif item.has(*WETNESS) and _about_piece(reading, at):
        read_state(reading, at, reading.pieces)
    elif item.has("state found") and not reading.latest and not reading.denied and _found_again(reading, at):
        reading.telling.found_again()
    elif item.kinds("state"):
        it = reading.latest == "" or (reading.latest == "other" and not item.has("state found"))
        it = it and reading.clause.has("it")
        if not item.has("state found") or reading.latest == "piece" or it:
            read_state(reading, at, reading.pieces)
    else:
        _sign(reading, at, horses, after=after)


def _found_again(reading: Reading, at: int) -> bool:
    """As in "(Gaspard a perdu sa lourde,) je l'ai retrouvée", "found it in the hedge"; not "found Dana's gloves"."""
    last = reading.telling.events[-1] if reading.telling.events else None
    behind = reading.items[at + 1 : at + 2]
    noun = reading.items[at + 2 : at + 3]  # "found one glove", not "found one in the hedge"
    counted = some_mean(behind, "one", "some", "third") and bool(noun) and not (noun[0].means or noun[0].mark)
    it = not behind or behind[0].mark or behind[0].has("it", "in", "on", "time", "place stall", "place field")
    return it and not counted and isinstance(last, GarmentIs) and last.state == "missing"


def _about_piece(reading: Reading, at: int) -> bool:
    # "her medium is damp along the back"
    its = reading.latest == "piece" and some_mean(reading.items[at - 1 : at], "is")
    body = not its and some_mean(reading.items[at + 1 : at + 2], "body")
    if body or felt_dry_below(reading.items, at, reading.telling.heard):
        return False  # "felt under the blanket, all wet shoulder"
    if reading.latest:
        return reading.latest == "piece"
    telling = reading.telling
    if came_off_for_it(reading.clause, telling, reading.items[at]):
        return True
    if disagrees(reading.items[at], telling):
        return False
    if reading.clause.has("she", "body") and not _goes_on_of_it(reading, at):
        return False
    came_off = telling.piece == telling.came_off and reading.clause.items[0].text == "is"  # "…off Pip, is very wet"
    return bool(telling.piece) and (reading.clause.has("it") or telling.last == "piece" or came_off)


def _goes_on_of_it(reading: Reading, at: int) -> bool:
    """As in "(l'imper est sec côté dos) mais trempé au poitrail": where the piece is wet, of which alone was told."""
    clause, before = reading.clause, reading.telling.heard
    of_it = before is not None and before.told and bool(before.pieces) and not before.horses
    wet = not reading.items[at].has("dry") and not clause.has("she", "under")
    return of_it and wet and clause.joined == "but"


def _sign(reading: Reading, at: int, horses: Sequence[Item], *, after: bool) -> None:
    item = reading.items[at]
    strong = bool(item.kinds("sign"))
    if not horses and reading.latest == "piece" and _found_on_the_horse(reading, at):
        owners = [name for piece in reading.pieces for name in piece.owners]
        horses = named(owners or reading.telling.owners_of(reading.pieces))
    elif not horses or (reading.latest == "other" and not after):
        horses = () if reading.latest else unnamed(reading.clause, reading.telling, at)
    elif reading.gap > (STRONG_REACH if strong else 0) and not after:
        return
    if horses and horses is reading.horses and reading.others:
        horses = which_goes_on(reading.items, at, horses, reading.others, reading.telling.roster.spelled)
    doubtful = any(h.known and not h.exact and not h.sure for h in horses)
    if doubtful and not (strong or felt_in_a_part(reading.items[at:])):
        return
    if horses and rest_allows(reading.items, at):
        _tell(reading, horses, at)


def _found_on_the_horse(reading: Reading, at: int) -> bool:
    """As in "felt under Pip's heavy, cold", "the heavy is rubbing": of whoever wears the piece."""
    felt = reading.clause.has("felt") or felt_dry_below(reading.items, at, None)
    return felt or reading.items[at].has("sign rubbed")


def _tell(reading: Reading, horses: Sequence[Item], at: int) -> None:
    telling, setting = reading.telling, setting_of(reading.clause)
    sign = sign_of(reading.items[at])
    twice = reading.items[at].text.partition(" ")[0] in DENYING  # "no está ni sudado ni frío"
    if sign is None or (reading.denied and sign == "comfortable" and not twice):
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
    plainly = said == "comfortable" and not (twice or reading.said)
    if plainly and _timed(reading.clause):
        telling.later.update(told)
    unsaid = reading.denied or (said == "comfortable" and (twice or reading.items[at].has("dry")))
    telling.denied.update(dict.fromkeys(told if unsaid else (), sign))
    if reading.denied and not (at and reading.items[at - 1].has("very")):
        telling.plainly_not.update(told)
    if reading.items[at].has("warm as well") and not _timed(reading.clause):
        telling.warm.update(dict.fromkeys(told, reading.clause.joined == "but"))
    telling.of_all.update(told if len(horses) > 1 and len(horses) + 1 >= len(telling.names) else ())
    telling.past.update(told if reading.clause.has("was") else ())
    telling.sign, reading.said = sign, True


def _timed(clause: Clause) -> bool:
    """As in "fine now", "fine at 9"."""
    return clause.has("time") or any(i.clock or i.number is not None for i in clause.items)


NOT_COMFORTABLE = ("not comfortable", ("cold", "hot", "sweating", "rubbed", "unwell"))
