"""Who wears what a clause tells: who is named, who was spoken of, or whose the piece is."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.events import Seen
from bot.words.clothing.change import Change
from bot.words.lookup.items import Item, predicate, some_mean
from bot.words.lookup.piece import Piece
from bot.words.lookup.tokens import words as words_of
from bot.words.thoughts.clauses import Clause, of_both
from bot.words.thoughts.hers import owns_the_stall
from bot.words.thoughts.listed import in_company, list_near
from bot.words.told.placed import place_behind
from bot.words.told.telling import Telling, named

TO_HER = frozenset(("lui", "leur", "le", "les"))


def wearers(clause: Clause, change: Change, telling: Telling) -> Sequence[Item]:
    """The horses whose outfit changes; none where nobody says."""
    horses = _of_the_clause(clause.items)
    if horses and telling.begun and _named_after_it(clause.items):
        return telling.who  # "(Otto sudado,) le quité la manta, Fig bien"
    if horses and all_but_these(clause):
        return named(telling.all_but(horses))
    if horses and change.all_off and not clause.has("nothing") and any(i.mark for i in clause.items):
        bare = next((k for k, i in enumerate(clause.items) if i.has("bare", "took off")), 0)
        return telling.who if _she_alone(clause.items[:bare]) else list_near(clause.items, bare)
    if horses:
        return [*horses, *_listed_owners(clause.items)]
    if any(one.has("i") and one.has("subject") and verb.has("wears") for one, verb in pairwise(clause.items)):
        return ()  # "moi je reste sous ma couette"
    pieces = [*change.pieces, *clause.pieces]
    owners = tuple(dict.fromkeys(name for piece in pieces for name in piece.owners))
    owned = [p for p in pieces if p.owners]  # "le he puesto el polar debajo de la rosa a Canela"
    given = bool(owned) and all(p.given for p in owned) and _said_twice(clause.items)
    if given or _to_whom_named(clause.items):
        return named(owners)
    only_asked = bool(owners) and (telling.asked or _owned_by_one_of_ease(clause, telling))
    if telling.begun and not only_asked and (len(telling.who) == 1 or _to_several(clause)) and to_her(clause.items):
        return telling.who  # "Filao est en sueur, je lui ai mis la polaire de Neige"
    before = telling.who if len(telling.who) == 1 and telling.begun else ()
    if _she_wears(clause.items) or (before and _wears(clause.items)):
        return before  # "Filao est mouillé, il a la polaire de Neige sur le dos"
    if telling.begun and len(telling.who) > 1 and to_them(clause.items):
        return telling.who  # "Filao et Neige ont chaud, je les ai déshabillées"
    if before and _over_her(clause.items):
        return before  # "Filao est en sueur, polaire de Neige dessus"
    if _of_somebody(clause.items) and any(piece.their for piece in pieces):
        return ()  # "Anne a mis sa doudoune rose"
    owners = _whose_it_lies_with(clause.items) or owners
    nobody_before = bool(change.remove) and not telling.who
    if not owners and (clause.has("put on", "took off") or nobody_before):  # "added Papy's liner" of a piece called so
        owners = telling.owners_of(pieces)
    if owners and _on_whom(change, pieces, owners, clause, telling):
        return (replace(telling.who[0], raw=pieces[0].said, horses=(*telling.who[0].horses, *owners), sure=False),)
    if owners:
        return named(owners)
    if of_both(clause):
        return telling.two()  # "stripped them both", "both in their heavies now"
    if clause.has("the rest"):
        return named(telling.rest()) if change.all_off else ()  # "Pip in her sheet, everyone else is bare"
    if clause.has("all horses", "everyone"):
        told = clause.has("put on", "took", "took off", "stripped", "swapped", "bare", "is", "on", "off")
        return named(telling.names) if told else ()  # "horses with coats on and I have none"
    moves = clause.has("put on", "took", "took off", "wears", "swapped", "bare", "off", "on", "instead of")
    moves = moves or (clause.has("in its stead") and telling.change is not None and bool(telling.change.remove))
    moves = moves or (
        clause.has("over") and len(pieces) > 1 and telling.dressed != ""
    )  # "… and the black over the liner"
    moves = moves or bool(change.add)  # "(fuera la azul,) dentro la verde"
    moves = moves or (bool(change.whole) and clause.has("only"))  # "(sheet off,) liner only"
    moves = moves or (clause.has("in") and clause.has("she"))  # "so he is in his liner"
    if moves and telling.begun and pieces and all(piece.their and piece.several for piece in pieces):
        return telling.meant_by(clause)  # "Pip and Ned were hot, took their heavies off"
    if not moves or len(telling.who) != 1 or (change.all_off and _of_a_stranger(clause)):
        return ()  # "enlevé chemise étoile", "Pip in her medium, the bay is naked"
    return telling.meant_by(clause)


def _owned_by_one_of_ease(clause: Clause, telling: Telling) -> bool:
    """As in "(Duke's in his stable,) put Clo's sheet on her": whose it is, where nobody before needs one.

    "(Otto is cold,) put Clo's sheet on him" lends it to Otto.
    """
    last = telling.events[-1] if telling.events else None
    uneasy = isinstance(last, Seen) and last.sign != "comfortable"
    return not (uneasy or telling.came_off) and len(clause.pieces) == 1 and clause.pieces[0].led


def all_but_these(clause: Clause) -> bool:
    """As in "sheets off everyone except Pip", "all blankets off except Pip": who is named is left out."""
    if not clause.has("except"):
        return False
    left = next(k for k, i in enumerate(clause.items) if i.has("except"))
    every = clause.has("everyone", "all horses") or any(piece.every or piece.several for piece in clause.pieces)
    return every and any(i.horses for i in clause.items[left:])  # "stripped Pip, all but the liner" leaves no Pip out


def _of_the_clause(items: Sequence[Item]) -> list[Item]:
    """The horses named in it, but for whose stall it is and with whom another went out."""
    named_here = [k for k, i in enumerate(items) if i.horses and not owns_the_stall(items, k)]
    return [items[k] for k in named_here if len(named_here) == 1 or not in_company(items, k)]


def _she_alone(before: Sequence[Item]) -> bool:
    """As in "(Balthazar est trempé,) il est tout nu, Mimine a la 400"; not in "Max the 300, Pip naked"."""
    return any(i.has("she") and i.has("subject") for i in before) and not any(i.horses for i in before)


def _named_after_it(items: Sequence[Item]) -> bool:
    """As in "les he quitado las mantas, Perla bien": whoever is named behind the pause is another."""
    pause = next((k for k, i in enumerate(items) if i.text == ","), len(items))
    behind = next((k for k in range(pause + 1, len(items)) if items[k].horses), len(items))
    before = items[:pause]
    told = behind + 1 < len(items) and not items[behind - 1].has("toward", "of") and predicate(items[behind + 1])
    return told and to_her(before) and not any(i.horses for i in before)


def _on_whom(change: Change, pieces: Sequence[Piece], owners: Sequence[str], clause: Clause, telling: Telling) -> bool:
    """As in "Filao transpire, mis la polaire de Neige": on Neige, or lent to Filao? Asked where it would help him."""
    last = telling.events[-1] if telling.events else None
    uneasy = isinstance(last, Seen) and last.sign != "comfortable" and telling.begun and len(telling.who) == 1
    if not uneasy or not clause.joined or not clause.has("put on") or change.remove or len(owners) != 1:
        return False
    lent = not any(p.given or p.their or words_of(p.said)[0] in words_of(owners[0]) for p in pieces)
    return lent and telling.who[0].horse and telling.who[0].horses != tuple(owners)


def _she_wears(items: Sequence[Item]) -> bool:
    """As in "so he's got Biscuit's cooler on", "il a l'imper de Lune": whoever was told of, not whose it is."""
    at = next((k for k, i in enumerate(items) if i.piece is not None), 0)
    piece = items[at].piece
    if piece is None or not piece.owners or piece.given:
        return False
    she = next((k for k, i in enumerate(items[:at]) if i.has("she") and i.has("subject") and not i.has("article")), at)
    has = some_mean(items[she + 1 : at], "has", "wears", "in")
    return she < at and has and not some_mean(items, "put on", "took off", "took", "i")


def _wears(items: Sequence[Item]) -> bool:
    """As in "(Moro está mojado,) lleva la media de Canela": the verb alone, of who was told of."""
    opens = next((i for i in items if not i.has("and", "time", "polite", "article") or i.has("wears")), items[0])
    return opens.has("wears") and not opens.has("put on", "in")


def _said_twice(items: Sequence[Item]) -> bool:
    """As in "(le quité el cuello a Lola y) le puse la negra a Canela": "le" is who comes behind, not Lola."""
    return any(i.has("put on", "took off") and not {"le", "les"}.isdisjoint(i.text.split()) for i in items)


def _whose_it_lies_with(items: Sequence[Item]) -> tuple[str, ...]:
    """As in "put Tucker's sheet over Willow's liner": whose the piece is that is told behind "over" or "under"."""
    placed = next((k for k, i in enumerate(items) if k and i.has("over", "under") and items[k - 1].piece), len(items))
    behind = next((i.piece for i in items[placed + 1 : placed + 3] if i.piece is not None), None)
    return behind.owners if behind is not None and len(behind.owners) == 1 else ()


def _of_somebody(items: Sequence[Item]) -> bool:
    """Whether a person opens the clause, of the barn or not: what is theirs is no horse's."""
    first = next((i for i in items if not i.mark), None)
    return first is not None and (first.person or not (first.means or first.piece or first.horses))


def _of_a_stranger(clause: Clause) -> bool:
    """Whether what opens the clause is nobody of whom the message told: "george bare", "the bay is naked"."""
    said = [i for i in clause.items if not (i.mark or i.has("article", "polite", "and", "but"))]
    strange = bool(said) and said[0].has("a horse", "animal", "i") and not said[0].has("subject")
    return (strange or _of_somebody(said)) and not clause.has("she")


def to_her(items: Sequence[Item]) -> bool:
    """Whether the verb says to whom: "je lui ai mis", "le he puesto", "put … on him"."""
    verb = next((k for k, i in enumerate(items) if i.has("put on", "took off")), None)
    if verb is None:
        return False
    said = (*items[verb].text.split()[:-1], *(i.text for i in items[max(0, verb - 2) : verb]))
    last = (i for i in items[-2:] if i is items[-1] or not i.has("article"))  # "en el box": the, not him
    return any(word in TO_HER for word in said) or any(i.has("she") and not i.has("subject") for i in last)


def of_one_in_it(clause: Clause) -> bool:
    """As in "in his sheet", "put the sheet on Pip in his stall"; in "put Pip's sheet in the stall" nobody is in it."""
    if not clause.has("in"):
        return False
    inside = [k for k, i in enumerate(clause.items) if i.has("in")]
    her = any(i.has("on") or (i.has("she") and not i.has("article")) for i in clause.items)
    somebody = her or to_her(clause.items) or bool(clause.horses) or any(piece.given for piece in clause.pieces)
    return somebody or not all(place_behind(clause.items, k) for k in inside)


def _to_whom_named(items: Sequence[Item]) -> bool:
    """As in "(Piri está fría.) Le he puesto a Canela la gorda": to whom is said, and it is not who was told of."""
    return any(to.has("toward") and then.piece is not None and then.piece.led for to, then in pairwise(items))


def _to_several(clause: Clause) -> bool:
    """As in "(Otto y Fig sudados,) les he quitado las mantas", "je leur ai mis la polaire": to more than one."""
    verbs = (i.text.split() for i in clause.items if not i.has("article"))
    return bool(clause.pieces) and any(len(said) > 1 and not {"les", "leur"}.isdisjoint(said) for said in verbs)


def to_them(items: Sequence[Item]) -> bool:
    """Whether the verb is of several told before: "je leur ai mis", "je les ai déshabillés", "les he puesto"."""
    verb = next((k for k, i in enumerate(items) if i.has("put on", "took off", "bare")), 0)
    said = {word for i in items[max(0, verb - 2) : verb + 1] for word in i.text.split()}
    return not said.isdisjoint(("les", "leur")) and not any(i.piece is not None for i in items[:verb])


def _over_her(items: Sequence[Item]) -> bool:
    """As in "la séchante d'Ulysse dessus", "el forro de Brisa encima": another's piece, on whom was told before."""
    words = [i for i in items if not (i.mark or i.has("time", "polite", "article")) or i.has("on", "over")]
    if len(words) < 2 or words[0].piece is None or not words[0].piece.owners:
        return False
    piece, last = words[0].piece, words[-1]
    behind = len(words) == 2 and (last.has("over") or (last.has("on") and " " in last.text))  # "sur le dos"
    on_her = len(words) == 3 and words[1].has("on") and last.has("she")
    return (behind or on_her) and words_of(piece.said)[0] not in words_of(piece.owners[0])


def _listed_owners(items: Sequence[Item]) -> Sequence[Item]:
    """As in "Polly and Frosty rugs off": the last of the list stands with its piece."""
    for k, item in enumerate(items):
        if k > 1 and item.piece is not None and items[k - 1].has("and") and items[k - 2].horses:
            return named(item.piece.owners)
    return ()


def of_another_horse(piece: Piece, horses: Sequence[Item]) -> bool:
    """As in "Gus is wearing Star's sheet"."""
    return len(piece.owners) == 1 and not piece.several and not any(piece.owners[0] in i.horses for i in horses)
