"""Sentences cut into clauses: one thought each, so that no fact goes to the wrong horse."""

from collections.abc import Sequence
from itertools import dropwhile

from bot.words.lookup.items import Item, all_mean, of_clothes, predicate, some_mean
from bot.words.thoughts.around import stands_among_stalls
from bot.words.thoughts.begins import (
    as_the_one_before,
    begins_to_ask,
    brings_her,
    denied_alone,
    did_nothing_to,
    everyone_done,
    goes_on_table,
    heads_names,
    of_its_piece,
    only_a_name,
    only_everyone,
    only_how,
    owner_at_last,
    puts_on_or_off,
    seen_there,
    stands_somewhere,
    stays_or_goes_on,
    tells_of_a_piece,
    then_put_on,
    told_of_a_horse,
    told_of_one,
    worked_or_moved,
    worn_and_told,
)
from bot.words.thoughts.clauses import Clause, Thought, is_subject
from bot.words.thoughts.hers import only_her_thing
from bot.words.thoughts.listed import goes_on
from bot.words.thoughts.makes_wet import makes_wet
from bot.words.thoughts.named_at_last import picks_out
from bot.words.thoughts.one_each import another_gets_one
from bot.words.thoughts.parting import MOVES, parts, rules_for
from bot.words.thoughts.whole import complete, did_a_deed, dressed_before, dresses, wished_of_one

PAUSES = frozenset(",…:-–—()/|=→>*•")
THAN = " than"
HOLDING = ("in", "on", "under", "over")
PLAN = 2  # words of "espero que"
LEADING_ON = frozenset((
    "on", "off", "of", "and", "except", "worked", "clipped", "brought", "keep", "put on", "took", "took off", "said",
    "in", "with", "under", "over", "has", "swapped", "for another", "without", "after", "too", "article", "not", "no",
    "i mean", "rug again", "do not rug", "beside",
))  # fmt: skip


def cut(sentence: Sequence[Item]) -> list[Clause]:
    """The clauses of a sentence."""
    clauses: list[Clause] = []
    current = Thought()
    joined = ""
    for at, item in enumerate(sentence):
        may = item.mark or item.horses or item.piece is not None or rules_for(item.means)
        new = _separates(sentence, at, current) if may else None
        if new is not None:
            if current.spoken:
                clauses.append(current.clause(joined))
                joined = new
            elif new not in ("", ","):
                joined = new
            current = Thought()
            if item.mark or _only_joins(item):
                continue
        current.add(item)
    if current.spoken:
        clauses.append(current.clause(joined))
    return clauses


def _only_joins(item: Item) -> bool:
    """As in "and", "but"; "reste que la 200" tells what is left on."""
    only = item.has("and", "but", "when", "except", "reason") and not item.has("too")  # "along with Pip"
    return only and not (is_subject(item) or item.has("leaves only", "habit"))  # "suda siempre que ve al veterinario"


def _separates(sentence: Sequence[Item], at: int, current: Thought) -> str | None:
    """How a new clause begins at this item; None where none does."""
    item = sentence[at]
    if item.mark:
        return _at_mark(sentence, at, current)
    if is_subject(item):
        anew = complete(current) and _starts_anew(sentence, at, current)
        speaker = current.has("place stall") and _place(current.items[-1]) and stands_among_stalls(current.items)
        return "" if anew or speaker else None
    return parts(sentence, at, current)


def _place(item: Item) -> bool:
    return item.has("place stall", "place field")


def _at_mark(sentence: Sequence[Item], at: int, current: Thought) -> str | None:
    mark = sentence[at].text
    if mark not in PAUSES:  # "all done 👍 knackered"
        told = not mark.isascii() and (complete(current) or current.has("all done") or _told_of_it(current))
        return "," if told and at + 1 < len(sentence) else None
    if not current.items:
        return None
    return "," if begins_to_ask(sentence[at + 1 :]) else _at_pause(sentence, at, current)


def _told_of_it(current: Thought) -> bool:
    """As in "(took her liner off,) it's soaked": how it is, and of nothing else."""
    return bool(current.items) and current.items[0].has("it") and current.told


def _at_pause(sentence: Sequence[Item], at: int, current: Thought) -> str | None:
    rest = sentence[at + 1 :]
    if rest and all(i.has("hearsay", "or") for i in rest):
        return None  # "Pip was cold, or so I'm told"
    if _only_these_left(rest, current):
        return None
    if only_everyone(rest) and all_mean(current.items, "done", "polite"):
        return None  # "listo, todos"
    if _bare_is_the_next(rest, current) or (current.pieces and _next_piece(sentence, at, current)):
        return ","
    if len(current.pieces) > 1 and not current.horses and not current.told and only_how(rest):
        return None  # "la polaire et la doublure pendent au fil, humides les deux"
    if sentence[at].text == ":" and heads_names(current.items, rest):
        return None
    if current.horses and not current.told and _told_of_whom(rest, current):
        return ","
    if goes_on_table(current.items, rest) or (current.pieces and worn_and_told(current.items, rest)):
        return ","  # "Max : imper, la 300 est trempée"
    if current.pieces and (_next_is_dressed(sentence, at, current) or _denies_a_piece(current.items)):
        return ","  # "not Pip's heavy, his sheet has the rip"
    if current.has("place stall", "place field") and seen_there(current.items, rest):
        return None  # "Caramel, au pré, il a froid"
    if current.horses and not current.pieces and of_its_piece(rest):
        return ","  # "Pip had a roll, her sheet is filthy but dry"
    if _did_a_list(current) and not goes_on(sentence, at):
        return ","  # "did Pip and Ned, Ruth has the rest"
    moves = bool(rest) and rest[0].has(*MOVES)
    led_out = len(rest) == 1 and rest[0].has("outwards")  # "juniper: fuera"
    if (
        moves
        and not led_out
        and sentence[at].text != ","
        and all(i.horses or i.mark or i.has("and", "article") for i in current.items)
    ):
        return ","  # "farrier: Quartz, Kali… j'ai rentré Fanchon"
    if moves and current.horses and current.items[-1].has("is") and current.items[-1].has("question"):
        return ","  # "(Pip isn't sweaty but) Ned is, turned out Pip and Fig"
    if wished_of_one(current, rest):
        return ","
    if not current.of_something:
        return _of_nobody_yet(sentence, at, current)
    if did_a_deed(current) and (told_of_one(rest) or tells_of_a_piece(rest)):
        return ","  # "llego a las 5 a montar a Luna, Canela está muy caliente"
    if denied_alone(current.items, rest):
        return ","  # "Canelo no, era Rayo el que sudaba"
    if current.horses and current.items[0].has("no") and told_of_a_horse(rest):
        return ","  # "(Pip is hot,) no hang on that's Ned, Pip is fine"
    if current.pieces and not current.horses and owner_at_last(rest, current.pieces):
        return None  # "sa couverture est trempée, à Réglisse"
    return "," if complete(current) and not goes_on(sentence, at) else None


def _only_these_left(rest: Sequence[Item], current: Thought) -> bool:
    """As in "all done, (except Pip)", "took his sheet off, (now only the liner)": these are what is left."""
    if not some_mean(rest[:3], "except", "only"):
        return False
    behind = list(dropwhile(lambda i: i.has("time"), rest[:3]))
    if not (behind and behind[0].has("except", "only")):
        return False
    if current.has("done", "all done") or (current.has("everyone") and current.has(*MOVES)):
        return True  # "tous rentrés, sauf Lune"
    return current.has("without", "off", "took off") and any(i.piece for i in behind[1:2])


def _next_piece(sentence: Sequence[Item], at: int, current: Thought) -> bool:
    """As in "le he quitado la manta, (la marrón está rota)": behind a piece, what is told of another, or on another."""
    rest, worn = sentence[at + 1 :], dresses(current)
    if worn and any(f(rest) for f in (tells_of_a_piece, as_the_one_before, stays_or_goes_on)):
        return True
    if worn and then_put_on(rest):
        return True  # "fuera la fina de Pip, forro y media puestos"
    if dressed_before(sentence, at, current):
        return True  # "(Pip is sweaty,) took his sheet off, Ned too"
    if len(current.pieces) > 1 and current.horses and current.has("over") and tells_of_a_piece(rest):
        return True  # "Pip has the heavy over his liner, sheet's hanging up wet"
    return (worn or current.has("in")) and another_gets_one(rest, current.items)  # "…, a Canela la negra"


def _told_of_whom(rest: Sequence[Item], current: Thought) -> bool:
    """As in "Lune est revenue de balade, (elle est au box)": nothing of her yet, then where she is, or who it is."""
    if stands_somewhere(rest) and did_nothing_to(current):
        return True
    if rest and rest[0].has("stays") and current.has("not"):
        return True  # "Lucero no sale hoy, se queda en el box"
    return picks_out(rest)  # "forget what I said of Pip, it was Ned that was cold"


def _did_a_list(current: Thought) -> bool:
    """As in "did Pip and Ned", "I did Otto, Ned and Fig"; a list of one is none."""
    did = current.has("habit") and current.has("had") and len(current.horses) > 1
    return did and all(i.horses or i.mark or i.has("subject", "had", "and") for i in current.items)


def _of_nobody_yet(sentence: Sequence[Item], at: int, current: Thought) -> str | None:
    """How a clause begins at a pause behind words of no horse and no piece; None where none does."""
    rest = sentence[at + 1 :]
    if sentence[at].text == ":" and current.has(*MOVES) and rest and rest[0].horses:
        return None  # "sortis au pré : Quartz, Perle"
    opened = current.items[0].has("polite") and not all_mean(current.items, "polite")
    told = any(predicate(i) for i in current.items[1:]) if opened else current.told  # "ok lunch is over, …"
    if not (told or current.has("done", "bare", "worked")):
        return None if current.items[0].has("no") and all(i.means or i.mark for i in current.items) else ","
    if everyone_done(rest) or (rest and rest[0].has("all done")):
        return ","  # "tournée terminée, tout le monde est fait"
    if len(rest) > 1 and rest[0].horses and rest[1].has("bare") and any(i.horses for i in sentence[:at]):
        return ","  # "(Lucero está bien,) ni frío ni calor, Trueno sin manta"
    if some_mean(current.items, "thing") or (current.items[0].has("i") and some_mean(current.items, "idiom")):
        return ","  # "my boots are soaked through, brought Fig in"
    if told_of_a_horse(rest) or tells_of_a_piece(rest) or as_the_one_before(rest):
        return ","  # "si c'est la pluie ou la sueur, Petit Prince tousse", "off his feed - Storm's sheet is mended"
    if _told_of_it(current) and rest and rest[0].has("she") and rest[0].has("subject"):
        return ","  # "(took the navy off Jack,) it's soaked, he's in his heavy now"
    if only_her_thing(rest) or (current.items[0].has("it") and puts_on_or_off(rest)):
        return ","  # "it's soaked, Tansy's oil is in the barn", "it's wet, tartan rug on him instead"
    if worked_or_moved(rest) and any(not (i.means or i.mark) for i in current.items):
        return ","  # "no, the tractor isn't fixed, Otto got ridden at 10"
    if sentence[at].text in ":-–—":
        return None  # "sweaty: Maple, Pip"
    signed = any(i.kinds("sign") for i in current.items) or current.items[0].has("she")
    if signed and len(rest) > PLAN and rest[0].has("plan"):
        return ","  # "(le puse la verde porque) tenía frío, espero que no os importe"; but "tenía frío, supongo"
    if signed and only_a_name(rest):
        return None  # "no longer shivering, Pip", "elle est trempée, la Réglisse"
    moved = bool(rest) and (_moves_on(rest[0]) or brings_her(rest))
    return "," if moved or (complete(current) and not goes_on(sentence, at)) else None


def _next_is_dressed(sentence: Sequence[Item], at: int, current: Thought) -> bool:
    """As in "(Pip is in his heavy,) Ned his sheet, Bo liner, Ty bare": one after the other, and how nothing is."""
    only = (
        current.of_something
        and current.pieces
        and all(i.horses or i.piece is not None or i.has("and", "article", "her") for i in current.items)
    )
    if not only or not some_mean(sentence[: at - len(current.items)], "in", "on", "wears", "put on"):
        return False
    rest = sentence[at + 1 :]
    named = bool(rest) and (bool(rest[0].horses) or (rest[0].piece is not None and bool(rest[0].piece.owners)))
    return named and not any(i.has("is") or of_clothes(i) for i in rest)


def _denies_a_piece(items: Sequence[Item]) -> bool:
    """As in "not Pip's heavy", and no more."""
    words = [i for i in items if not (i.has("polite", "article", "her") and not i.has("not"))]
    return len(words) > 1 and words[0].has("not") and all(i.piece is not None for i in words[1:])


def _bare_is_the_next(rest: Sequence[Item], current: Thought) -> bool:
    """As in "(Lune liner + 200,) rien sur Max": bare is who stands behind it."""
    leads = len(rest) > 1 and rest[0].has("bare") and rest[0].text.endswith((" sur", " a", " on", " de"))
    return leads and bool(rest[1].horses) and current.of_something


def _moves_on(item: Item) -> bool:
    """As in "(le quité la verde porque) venía empapada, le dejé solo el forro"; not "empapada, con la manta"."""
    return item.has(*MOVES, "done") or (item.has("wears") and not item.has("link", "in"))


def _by_whom(current: Thought) -> bool:
    """As in "Lune a mordu", "Zafiro ha roto": what a horse did, with a verb before it that helps."""
    done = len(current.items) > 1 and current.items[-2].has("helper", "has")
    return done and bool(current.horses)


def _starts_anew(sentence: Sequence[Item], at: int, current: Thought) -> bool:
    """A name after a whole thought, without a pause, begins the next: "Maple sweaty Juniper fine"."""
    item, before = sentence[at], current.items[-1]
    if before.kinds("state") and not current.pieces and (item.piece is not None or _by_whom(current)):
        return False  # "Pip ripped Ned's sheet", "Lune a mordu Perle"
    if makes_wet(current.items, len(current.items) - 1, item):
        return False
    if item.piece is not None and before.piece is not None and some_mean(current.items[-2:-1], "over"):
        return False  # "Tinto lleva debajo de la gris el forro de Bruma"
    if item.piece is not None and of_clothes(before) and some_mean(current.items[-2:-1], "beside", *HOLDING):
        return False  # "Otto is by Pip's wet sheet"
    if item.piece is not None and not item.piece.owners:
        after = sentence[at + 1] if at + 1 < len(sentence) else item
        told = after.has("is") or predicate(after)  # "mis la noire a uma la bordeaux est mouillée"
        return bool(before.horses and told and current.pieces) and current.items[0].has("put on", "took off")
    said_of_it = (
        item.horses and at + 1 < len(sentence) and (predicate(sentence[at + 1]) or sentence[at + 1].has("done"))
    )
    undressed = before.has("took off", "put on") and any(i.piece is not None for i in current.items[-2:-1])
    if (undressed or before.has("on", "off")) and said_of_it and current.horses:
        return True  # "Maple sweaty took sheet off Pip fine", "canela sudada manta quitada moro bien"
    if before.has("inwards", "outwards") and len(current.items) > 1 and current.items[-2].horses and item.horses:
        then = next((i for i in sentence[at + 1 :] if not (i.horses or i.text == "," or i.has("and"))), item)
        return then.has("inwards", "outwards")  # "Maple in Pip out", "Lune Max rentrés Prince Moka dehors"
    if (
        before.has("too")
        and not before.has("and")
        and current.items[-2:-1]
        and current.items[-2].horses
        and item.horses
    ):
        return True  # "Palomo seco Paloma también Nube húmeda"
    if before.has("sign rubbed") and current.pieces:
        return False  # "the heavy is rubbing Otto"
    if before.has("of", "article") and current.has("sign rubbed"):
        return False
    if before.kinds("style") and current.horses:
        return bool(item.horses)  # "Lune tondue en chasse Max tremble"
    if before.mark or not LEADING_ON.isdisjoint(before.means) or before.text.endswith(THAN):
        return False  # "Pip is colder than Ned"
    if before.horses and not current.told:
        return False
    return current.of_something and not (before.horses and item.horses)
