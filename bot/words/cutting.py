"""Sentences cut into clauses: one thought each, so that no fact goes to the wrong horse."""

from collections.abc import Sequence
from itertools import dropwhile

from bot.words.begins import (
    begins_to_ask,
    dresses,
    only_a_name,
    only_everyone,
    only_how,
    owned_piece_told,
    tells_of_a_piece,
    told_of_a_horse,
)
from bot.words.clauses import CLIPS, Clause, Thought, gathered, is_subject, soft
from bot.words.items import Item, predicate

PAUSES = frozenset(",…:-–—()/|=→>*•")
MOVES = ("brought in", "turned out", "took off", "put on", "stripped")
ENOUGH = (
    "bare", "stripped", "inwards", "outwards", "place stall", "place field", "brought in", "turned out", "worked",
    "clipped",
)  # fmt: skip
PARTING = frozenset((
    "bare", "took off", "put on", "afterwards", "question", "subject", "not behind", "except", "if", "reason", "when",
    "but", "too", "and", "it", "strap",
))  # fmt: skip
LEADING_ON = frozenset((
    "on", "off", "of", "and", "except", "worked", "clipped", "brought", "keep", "put on", "took", "took off", "said",
    "in", "with", "under", "over", "has", "swapped", "for another", "without", "after", "too", "article", "not", "no",
    "i mean", "rug again", "do not rug",
))  # fmt: skip
HOLDING = ("in", "under", "over", "of", "has", "said")  # "Pip in that is cold"
NOTHING = Item("", "")
SPEAKER = ("i", "we", "j'", "je", "on", "le", "les", "lui", "leur")  # who does it, or to whom
FROM_WORK = 3  # words of "from the lesson"
ALIKE = 3  # words of a horse that is as the one before


def cut(sentence: Sequence[Item]) -> list[Clause]:
    """The clauses of a sentence."""
    clauses: list[Clause] = []
    current = Thought()
    joined = ""
    for at, item in enumerate(sentence):
        new = _separates(sentence, at, current)
        if new is not None:
            if current.spoken:
                clauses.append(current.clause(joined))
                joined = new
            elif new not in ("", ","):
                joined = new
            current = Thought()
            if item.mark or (item.has("and", "but", "when", "except", "reason") and not is_subject(item)):
                continue
        current.add(item)
    if current.spoken:
        clauses.append(current.clause(joined))
    return clauses


def _separates(sentence: Sequence[Item], at: int, current: Thought) -> str | None:
    """How a new clause begins at this item; None where none does."""
    item, following = sentence[at], sentence[at + 1] if at + 1 < len(sentence) else NOTHING
    if is_subject(item):
        return "" if _complete(current) and _starts_anew(sentence, at, current) else None
    if item.mark:
        return _at_mark(sentence, at, current)
    if PARTING.isdisjoint(item.means):
        return None
    if item.has("bare") and _complete(current) and following.horses:
        return ""  # "left Dolly in the purple blanket nothing on Duke"
    speaks = item.has("took off", "put on") and item.text.partition(" ")[0] in SPEAKER
    if speaks and _complete(current) and not current.has("clipped"):  # "Pip's clipped, I gave him a trace"
        return ""  # "Molly has only her sheet now i took off the heavy", "Mate tiritando le puse la azul"
    if item.has("strap") and not current.pieces and _complete(current) and tells_of_a_piece(sentence[at:]):
        return ""  # "Pip and Ned done leg strap snapped off the blue turnout"
    if item.has("afterwards") and _ends_with_a_sign(current.items) and current.of_something:
        return "and"  # "Maple shivering will ring Ruth", "her liner is damp leave it"
    if item.has("question") and _complete(current) and begins_to_ask(sentence[at:]):
        return ","  # "Storm is dripping with sweat can someone check on him"
    if item.has("subject") and _complete(current) and _somebody_does(sentence, at):
        return ""  # "put the sheet on Pip shes fine"
    if item.has("it") and following.has("is") and _complete(current) and _placed_or_dressed(current):
        return None if current.items[-1].has(*HOLDING) else ""  # "took the sheet off Pip it's soaked"
    if item.has("not behind") and current.items and current.items[-1].kinds("sign"):
        return None  # "Lou tremble plus"
    if item.has("except") and current.has("everyone", "all", "all horses", "all done"):
        return "but" if _told_of_the_excepted(sentence[at + 1 :], current) else None
    if item.has("if") and current.items:  # "est sèche si vous voulez la reprendre"
        return "if" if _complete(current) and (current.told or _paused(sentence, at)) else None
    behind_pause = not current.items and at > 0  # ", as he was cold"
    if item.has("reason") and (behind_pause or _complete(current)) and _somebody(following):
        return "but"  # "put her sheet on as it was spitting"
    if item.has("when") and (_complete(current) or _dresses(current)):
        return "when"
    if item.has("but") and item.has("link") and current.items and current.items[-1].has("guess"):
        return None  # "creía que Tormenta estaba sudada"
    if item.has("but") and item.has("link") and current.items and _unheard_thing(current.items[-1]):
        return None  # "cerrar el grifo que se congela"
    if item.has("but") and not item.has("and") and _only_horse(current) and following.has("is", "has"):
        return None  # "Prince par contre est trempé"
    if item.has("but") and not item.has("and"):
        adds = item.has("too") and at + 1 < len(sentence) and predicate(sentence[at + 1])  # "his heavy also dry"
        return "but" if current.items and not adds else None
    if item.has("too") and item.text.startswith("and ") and _complete(current):
        return "and"
    if item.has("and") and current.spoken and current.items[0].has("it") and following.has("subject"):
        return "and"  # "it's on the rack and he's in the tartan"
    if item.has("and") and _something_done(current) and (following.has("put on", "took off") or following.horses):
        return "and"  # "he pasado antes de ir al trabajo y le he puesto …", "i got there late and Dolly felt cold"
    if item.has("and") and current.pieces and following.has("it") and following.has("put on", "took off"):
        return "and"  # "traje la manta roja y se la puse a Nube"
    if item.has("and") and current.told and not current.of_something and following.has(*MOVES):
        return "and"  # "(saqué a Moro,) tenía tembleque y lo volví a meter"
    if item.has("and") and current.has("all done") and current.has("only"):
        return None  # "all done, only Ty and Storm not"
    if item.has("and") and _goes_with_it(sentence, at, current):
        return None
    if item.has("and") and current.items and not current.of_something and told_of_a_horse(sentence[at + 1 :]):
        return "and"  # "he pasado antes de trabajar y Pelayo está bien"
    if item.has("and") and _dresses(current) and owned_piece_told(sentence[at + 1 :]):
        return "and"  # "le quité la manta y el forro de Lucero sigue húmedo"
    if item.has("and") and not item.has("has", "wears"):
        return "and" if _complete(current) and not _goes_on(sentence, at) else None
    return None


def _goes_with_it(sentence: Sequence[Item], at: int, current: Thought) -> bool:
    """As in "Pip bare and fine", "all done, only Ty and Storm not"."""
    left = current.has("all done") and current.has("only")
    return left or (current.has("bare") and only_how(sentence[at + 1 :]))


def _unheard_thing(item: Item) -> bool:
    return not (item.means or item.mark or item.person or is_subject(item))


def _ends_with_a_sign(items: Sequence[Item]) -> bool:
    said = items[: _work_behind(items)]
    last = next((i for i in reversed(said) if not i.has("very", "time") or predicate(i)), NOTHING)
    return predicate(last)


def _work_behind(items: Sequence[Item]) -> int:
    """The place of what it comes from, where that ends the words: "sweaty from the lesson"; else behind the last."""
    if not items or not items[-1].has("work"):
        return len(items)
    last = max(0, len(items) - FROM_WORK)
    return next((k for k in range(last, len(items)) if items[k].has("after") and not items[k].has("work")), len(items))


def _only_horse(current: Thought) -> bool:
    return bool(current.horses) and all(i.horses or i.has("article", "polite") for i in current.items)


def _something_done(current: Thought) -> bool:
    """What somebody did, of no horse and no piece."""
    return not current.of_something and current.has("brought", "i", "felt")


def _somebody(item: Item) -> bool:
    return item.has("she", "it", "subject", "i") or bool(item.horses)


def _told_of_the_excepted(rest: Sequence[Item], current: Thought) -> bool:
    """As in "everyone fine but Otto is cold": the others were told of before, what follows is told of this one."""
    after = next((k for k, i in enumerate(rest) if not (i.horses or i.has("and", "article") or i.text == ",")), 0)
    while 0 < after < len(rest) and (rest[after].has("is", "she", "relative") or soft(rest[after])):
        if predicate(rest[after]):
            break
        after += 1
    told = 0 < after < len(rest) and predicate(rest[after])
    return told and current.told


def _somebody_does(sentence: Sequence[Item], at: int) -> bool:
    """Whether a pronoun begins a thought of its own here: "it is wet he is shaking", not "says he is"."""
    before, after = sentence[at - 1], sentence[at + 1] if at + 1 < len(sentence) else None
    if before.has("inwards", "outwards") and any(i.has("brought", "took") for i in sentence[:at]):
        return sentence[at].has("she")  # "brought Willow in shes soaked"
    if before.has("when", "if", "what", "question", "and", "but", "said", "not", "of", "in", "on", "after", "over"):
        return False
    if before.has("is", "was") and not before.mark:
        return False  # "how is she"
    verbs = ("is", "was", "has", "helper", "put on", "took", "took off", "plan", "worked", "brought", "swapped")
    runs_on = len(sentence[at].text) > 2 and " " not in sentence[at].text and sentence[at].raw.endswith("s")
    if runs_on or (after is not None and (after.has(*verbs, "turned out", "brought in") or predicate(after))):
        return True
    before = next((i for i in reversed(sentence[:at]) if not i.has("time")), before)
    told = before.horses or before.piece is not None or predicate(before) or before.has("place stall", "place field")
    return bool(told) and sentence[at].has("she") and not sentence[at].has("her")  # "… au box elle boitait pas"


def _at_mark(sentence: Sequence[Item], at: int, current: Thought) -> str | None:
    mark = sentence[at].text
    if mark not in PAUSES:  # "all done 👍 knackered"
        told = not mark.isascii() and (_complete(current) or current.has("all done"))
        return "," if told and at + 1 < len(sentence) else None
    if not current.items:
        return None
    return "," if begins_to_ask(sentence[at + 1 :]) else _at_pause(sentence, at, current)


def _at_pause(sentence: Sequence[Item], at: int, current: Thought) -> str | None:
    left = at + 1 < len(sentence) and sentence[at + 1].has("except", "only")
    if left and current.has("done", "all done"):
        return None  # "all done, except Pip"
    if current.has("without") and left and any(i.piece for i in sentence[at + 2 : at + 3]):
        return None  # "sans sa 250, juste le couvre-cou"
    if only_everyone(sentence[at + 1 :]) and all(i.has("done", "polite") for i in current.items):
        return None  # "listo, todos"
    if _dresses(current) and tells_of_a_piece(sentence[at + 1 :]):
        return ","  # "le he quitado la manta, la marrón está rota"
    moves = at + 1 < len(sentence) and sentence[at + 1].has(*MOVES)
    if moves and sentence[at].text != "," and all(i.horses or i.mark or i.has("and", "article") for i in current.items):
        return ","  # "farrier: Quartz, Kali… j'ai rentré Fanchon"
    subjects = current.of_something
    says = current.told or current.has("done", "bare", "worked")
    rest = sentence[at + 1 :]
    if not subjects and says and (told_of_a_horse(rest) or tells_of_a_piece(rest)):
        return ","  # "si c'est la pluie ou la sueur, Petit Prince tousse", "off his feed - Storm's sheet is mended"
    if not subjects and says and current.items[0].has("it") and dresses(rest):
        return ","  # "it's wet, tartan rug on him instead"
    if not subjects and says and sentence[at].text in ":-–—":
        return None  # "sweaty: Maple, Pip"
    if not subjects and any(i.kinds("sign") for i in current.items) and only_a_name(rest):
        return None  # "no longer shivering, Pip"
    if not subjects and not says:
        return None if current.items[0].has("no") else ","
    moved = not subjects and says and at + 1 < len(sentence) and _moves_on(sentence[at + 1])
    return "," if moved or (_complete(current) and not _goes_on(sentence, at)) else None


def _moves_on(item: Item) -> bool:
    """As in "(le quité la verde porque) venía empapada, le dejé solo el forro"; not "empapada, con la manta"."""
    return item.has(*MOVES, "done") or (item.has("wears") and not item.has("link", "in"))


def _dresses(current: Thought) -> bool:
    return bool(current.pieces) and current.has("put on", "took off", "took", "wears", "on", "off")


def _complete(current: Thought) -> bool:
    if current.items and current.items[0].has("polite"):  # "ok that's Maple, Pip …" says nothing of Maple yet
        current = gathered(dropwhile(lambda i: i.has("polite"), current.items))
    pieces = current.pieces
    horse = (
        bool(current.horses)
        or current.has("she", "everyone", "all horses")
        or any(p.owners or p.their or p.ids for p in pieces)
    )
    if (horse or pieces) and (current.told or current.has("done", "all done", "broken")):
        return True
    return horse and _placed_or_dressed(current)


def _placed_or_dressed(current: Thought) -> bool:
    """Whether a clause of a horse says where it is, what it wears, or that it is as the one before."""
    items = current.items
    if items[-1].has("too") and len(items) <= ALIKE:
        return True  # "clover same, biscuit cold"
    if items[-1].has("own") and current.has("in", "wears"):
        return True  # "Clemmie in hers"
    clips = not current.means.isdisjoint(CLIPS)
    if clips and any(i.kinds("style") and ("clip" in i.text or i.means & {"style none"}) for i in items):
        return True
    if current.has("work") and current.has("took", "had"):
        return True  # "took Pip for a hack he came back hot"
    last = next((i for i in reversed(items) if not i.has("time", "polite") or i.has("inwards", "outwards")), items[-1])
    if last.has("inwards", "outwards"):
        return True
    if current.has(*ENOUGH) and any(i.has(*ENOUGH) and not i.has("in") for i in items):
        return True
    if current.has("it") and current.has("put on", "took off"):
        return True  # "se la puse a Canela, …"
    return bool(current.pieces) and current.has("put on", "took off", "took", "swapped", "wears", "in", "on", "off")


def _paused(sentence: Sequence[Item], at: int) -> bool:
    return (at > 0 and sentence[at - 1].mark) or sentence[at].has("but")


def _starts_anew(sentence: Sequence[Item], at: int, current: Thought) -> bool:
    """A name after a whole thought, without a pause, begins the next: "Maple sweaty Juniper fine"."""
    item, before = sentence[at], current.items[-1]
    if item.piece is not None and not item.piece.owners:
        after = sentence[at + 1] if at + 1 < len(sentence) else item
        told = after.has("is") or predicate(after)  # "mis la noire a uma la bordeaux est mouillée"
        return bool(before.horses and told and current.pieces) and current.items[0].has("put on", "took off")
    said_of_it = (
        item.horses and at + 1 < len(sentence) and (predicate(sentence[at + 1]) or sentence[at + 1].has("done"))
    )
    if before.has("on", "off") and said_of_it and current.horses:
        return True  # "Maple sweaty took sheet off Pip fine"
    if before.has("inwards", "outwards") and len(current.items) > 1 and current.items[-2].horses and item.horses:
        return at + 1 < len(sentence) and sentence[at + 1].has("inwards", "outwards")  # "Maple in Pip out"
    if before.has("too") and current.items[-2:-1] and current.items[-2].horses and item.horses:
        return True  # "Palomo seco Paloma también Nube húmeda"
    if before.has("sign rubbed") and current.pieces:
        return False  # "the heavy is rubbing Otto"
    if before.has("of", "article") and current.has("sign rubbed"):
        return False
    if before.mark or not LEADING_ON.isdisjoint(before.means):
        return False
    if before.horses and not current.told:
        return False
    return current.of_something and not (before.horses and item.horses)


def _goes_on(sentence: Sequence[Item], at: int) -> bool:
    """A list goes on here: "off Maple and Juniper", "in her heavy and liner"."""
    before, rest = sentence[at - 1] if at else None, sentence[at + 1 :]
    clip = any(i.has("clipped") for i in sentence[:at]) and not any(i.kinds("style") for i in sentence[:at])
    if clip and any(i.kinds("style") for i in rest[:4]) and not any(is_subject(i) for i in rest[:4]):
        return True
    while rest and (rest[0].has("article", "and", "of", "her", "polite", "over") and not is_subject(rest[0])):
        rest = rest[1:]
    if before is None or not rest:
        return False
    if rest[0].has("in") and before.piece is not None:
        into = rest[0].has("for another") and at > 1 and sentence[at - 2].has("took off")
        if into or any(i.has("outwards") for i in sentence[:at]):
            return True  # "out of his sheet and into the orange one"
    following = rest[1] if len(rest) > 1 else None
    ends = (
        following is None
        or following.mark
        or following.has("and", "time", "polite", "too", "when", "but", "not any more")
        or (following.has("toward") and not following.has("is"))
    )
    if rest[0].horses and before.horses:
        return ends and not (following is not None and following.has("is") and not following.has("and"))
    return bool(rest[0].piece and before.piece and ends)
