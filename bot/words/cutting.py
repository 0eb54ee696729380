"""Sentences cut into clauses: one thought each, so that no fact goes to the wrong horse."""

from collections.abc import Sequence

from bot.words.around import stands_among_stalls
from bot.words.begins import (
    as_the_one_before,
    begins_to_ask,
    goes_on_table,
    only_a_name,
    only_everyone,
    owned_piece_told,
    owner_at_last,
    seen_there,
    tells_of_a_piece,
    told_of_a_horse,
)
from bot.words.clauses import Clause, Thought, is_subject, soft
from bot.words.items import Item, predicate
from bot.words.whole import complete, dresses

PAUSES = frozenset(",…:-–—()/|=→>*•")
MOVES = ("brought in", "turned out", "took off", "put on", "stripped")
PARTING = frozenset((
    "bare", "took off", "put on", "brought in", "turned out", "afterwards", "question", "subject", "not behind",
    "except", "if", "reason", "when", "but", "too", "and",
))  # fmt: skip
LEADING_ON = frozenset((
    "on", "off", "of", "and", "except", "worked", "clipped", "brought", "keep", "put on", "took", "took off", "said",
    "in", "with", "under", "over", "has", "swapped", "for another", "without", "after", "too", "article", "not", "no",
    "i mean", "rug again", "do not rug",
))  # fmt: skip
NOTHING = Item("", "")
DONE_BY_SPEAKER = ("took off", "put on", "brought in", "turned out")
SPEAKER = ("i", "we", "j'", "je", "on")
FROM_WORK = 3  # words of "from the lesson"


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
        anew = complete(current) and _starts_anew(sentence, at, current)
        speaker = current.has("place stall") and _place(current.items[-1]) and stands_among_stalls(current.items)
        return "" if anew or speaker else None
    if item.mark:
        return _at_mark(sentence, at, current) if item.text in PAUSES else None
    if PARTING.isdisjoint(item.means):
        return None
    if item.has("bare") and complete(current) and following.horses:
        return ""  # "left Dolly in the purple blanket nothing on Duke"
    if item.has(*DONE_BY_SPEAKER) and item.text.partition(" ")[0] in SPEAKER and complete(current):
        return ""  # "Molly has only her sheet now i took off the heavy", "tout est fait j'ai rentré Filou"
    if item.has("afterwards") and (
        (_ends_with_a_sign(current.items) and current.of_something) or current.has("all done")
    ):
        return "and"  # "Maple shivering will ring Ruth", "her liner is damp leave it"
    if item.has("question") and complete(current) and begins_to_ask(sentence[at:]):
        return ","  # "Storm is dripping with sweat can someone check on him"
    if item.has("subject") and complete(current) and _somebody_does(sentence, at):
        return None if seen_there(current.items, sentence[at:]) else ""  # "put the sheet on Pip shes fine"
    if item.has("not behind") and current.items and current.items[-1].kinds("sign"):
        return None  # "Lou tremble plus"
    if item.has("except") and current.has("everyone", "all", "all horses", "all done"):
        return "but" if _told_of_the_excepted(sentence[at + 1 :], current) else None
    if item.has("if") and current.items:  # "est sèche si vous voulez la reprendre"
        return "if" if complete(current) and (current.told or _paused(sentence, at)) else None
    if item.has("reason") and complete(current) and sentence[at + 1 : at + 2] and _somebody(sentence[at + 1]):
        return "but"  # "put her sheet on as it was spitting"
    if item.has("when") and (complete(current) or dresses(current)):
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
    if item.has("too") and item.text.startswith("and ") and complete(current):
        return "and"
    begins = following.has("put on", "took off") or following.horses
    if item.has("and") and not item.has("has", "wears") and _something_done(current) and begins:
        return "and"  # "he pasado antes de ir al trabajo y le he puesto …", "i got there late and Dolly felt cold"
    if item.has("and") and current.has("all done") and current.has("only"):
        return None  # "all done, only Ty and Storm not"
    if item.has("and") and current.items and not current.of_something and told_of_a_horse(sentence[at + 1 :]):
        return "and"  # "he pasado antes de trabajar y Pelayo está bien"
    if item.has("and") and dresses(current) and owned_piece_told(sentence[at + 1 :]):
        return "and"  # "le quité la manta y el forro de Lucero sigue húmedo"
    if item.has("and") and not item.has("has", "wears"):
        return "and" if complete(current) and not _goes_on(sentence, at) else None
    return None


def _place(item: Item) -> bool:
    return item.has("place stall", "place field")


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
    if before.has("all done") and sentence[at].has("i"):
        return True  # "tout le monde est fait je remonte"
    before = next((i for i in reversed(sentence[:at]) if not i.has("time")), before)
    told = before.horses or before.piece is not None or predicate(before) or before.has("place stall", "place field")
    return bool(told) and sentence[at].has("she") and not sentence[at].has("her")  # "… au box elle boitait pas"


def _at_mark(sentence: Sequence[Item], at: int, current: Thought) -> str | None:
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
    if dresses(current) and tells_of_a_piece(sentence[at + 1 :]):
        return ","  # "le he quitado la manta, la marrón está rota"
    if goes_on_table(current.items, sentence[at + 1 :]):
        return ","
    if seen_there(current.items, sentence[at + 1 :]):
        return None  # "Caramel, au pré, il a froid"
    moves = at + 1 < len(sentence) and sentence[at + 1].has(*MOVES)
    if moves and sentence[at].text != "," and all(i.horses or i.mark or i.has("and", "article") for i in current.items):
        return ","  # "farrier: Quartz, Kali… j'ai rentré Fanchon"
    subjects = current.of_something
    says = current.told or current.has("done", "bare", "worked")
    rest = sentence[at + 1 :]
    if not subjects and says and (told_of_a_horse(rest) or tells_of_a_piece(rest) or as_the_one_before(rest)):
        return ","  # "si c'est la pluie ou la sueur, Petit Prince tousse", "off his feed - Storm's sheet is mended"
    if not subjects and says and sentence[at].text in ":-–—":
        return None  # "sweaty: Maple, Pip"
    signed = any(i.kinds("sign") for i in current.items) or current.items[0].has("she")
    if not subjects and says and signed and only_a_name(rest):
        return None  # "no longer shivering, Pip", "elle est trempée, la Réglisse"
    if current.pieces and not current.horses and owner_at_last(rest, current.pieces):
        return None  # "sa couverture est trempée, à Réglisse"
    if not subjects and not says:
        return None if current.items[0].has("no") else ","
    moved = not subjects and says and at + 1 < len(sentence) and sentence[at + 1].has(*MOVES, "done")
    return "," if moved or (complete(current) and not _goes_on(sentence, at)) else None


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
        or following.has("and", "time", "polite", "too", "when", "but", "not any more", "over")
        or (following.has("toward") and not following.has("is"))
        or (following.has("link") and " " in following.text and (len(rest) < 3 or rest[2].mark))  # "… as the list says"
    )
    if rest[0].horses and before.horses:
        return ends and not (following is not None and following.has("is") and not following.has("and"))
    return bool(rest[0].piece and before.piece and ends)
