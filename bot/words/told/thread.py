"""The thread of a message: whom and what a clause leaves for those behind it, and which stand for themselves."""

from collections.abc import Sequence
from itertools import pairwise

from bot.words.lookup.items import DANGER, Item, predicate, some_mean
from bot.words.lookup.piece import Piece
from bot.words.thoughts.around import stands_among_stalls, stands_in_stall
from bot.words.thoughts.clauses import Clause, soft
from bot.words.thoughts.hers import only_her_thing
from bot.words.thoughts.no_report import only_yesterday
from bot.words.told.telling import Telling
from bot.words.told.then_and_now import as_it_is_now, spoken_of_then


def spoken_of(clause: Clause, telling: Telling) -> None:
    """As in "Theodore would not stand for the big one, so he is in his liner": who "he" is."""
    horses = [i for i in clause.items if i.horse]
    if only_yesterday(clause) and clause.has("clipped") and len(horses) == 1:
        telling.speak_of(horses[:1])  # "Pip got clipped yesterday. Full clip"
    elif spoken_of_then(clause, telling):
        pass
    elif telling.who and of_another_animal(clause):
        telling.of_nobody()
    elif clause.has("yesterday", "long ago"):
        telling.of_nobody()  # "won her class yesterday! Soaked, but happy"
    elif len(horses) == 1 and _first(clause) is horses[0] and not clause.has("if"):
        telling.who, telling.begun, telling.last, telling.planned = (horses[0],), True, "horse", True


def of_kin(clause: Clause) -> bool:
    """As in "mon fils a de la fièvre": told of somebody's people, and "il" behind it is one of them."""
    return clause.told and not (clause.horses or clause.pieces) and some_mean(clause.items[:2], "kin")


def of_another_animal(clause: Clause) -> bool:
    """As in "our dog's been clipped", "neighbour's mare got loose", "she says her cob is in a heavy": none of ours."""
    if clause.horses or any(piece.owners for piece in clause.pieces):
        return False
    if not clause.has("a horse"):
        return clause.has("animal")
    owned = any(i.has("her", "some") and then.has("a horse") for i, then in pairwise(clause.items))
    return owned or clause.has("kin", "elsewhere")


def any_of(horses: Sequence[str]) -> tuple[Item, ...]:
    """One of these horses: which, nobody says."""
    return (Item("", "", horses=tuple(horses), sure=False),)


def _first(clause: Clause) -> Item:
    """The first word past those before a name: "al Moro siempre …", "la Mora nunca …"."""
    return next((i for i in clause.items if i.horses or not i.has("article", "toward", "wears")), clause.items[0])


def with_owner(piece: Piece, telling: Telling) -> Piece:
    """A piece with its owner, as far as the message has told; of one that came off, which it was."""
    if not piece.ids and (off := just_taken_off(piece, telling)):
        piece = piece._replace(ids=off)
    who = _named(telling)
    if piece.ids and all(telling.roster.garments[g].horse not in (piece.owners or who) for g in piece.ids):
        return piece._replace(owners=()) if piece.given else piece
    return piece if piece.owners or piece.spare else piece._replace(owners=who)


def just_taken_off(piece: Piece, telling: Telling) -> tuple[str, ...]:
    """The garment that came off last, where these words are of it: "took her 200 off" of the one she had on."""
    off, garments = telling.came_off, telling.roster.garments
    whose = (None, *(piece.owners or _named(telling)))
    of_it = set(off) <= set(telling.roster.fitting(piece)) and all(garments[g].horse in whose for g in off)
    return off if of_it and telling.piece in ((), off) else ()


def _named(telling: Telling) -> tuple[str, ...]:
    return tuple(n for i in telling.who if i.sure for n in i.horses)


def of_people(clause: Clause) -> bool:
    """Of somebody, and of no horse: "can't make it tomorrow"."""
    of_a_horse = clause.horses or any(piece.owners for piece in clause.pieces)  # "j'ai pas mis la kaki à Soleil"
    return not of_a_horse and (clause.has("i") or any(i.person for i in clause.items))


def of_a_thing(clause: Clause) -> bool:
    """Of something that no table knows, or of an animal: "the van won't start"; what follows is told of it."""
    said = (i for i in clause.items if not (soft(i) or i.has("her", "my")) or i.has("animal", "mass"))
    first = next(said, None)
    if (
        first is None
        or first.piece is not None
        or predicate(first)
        or any(i.has("she") and not i.has("article") for i in clause.items)
    ):
        return False
    return first.person or first.has("animal", "mass", "visitor", "i", "thing") or not first.means


def leads_elsewhere(clause: Clause, telling: Telling) -> bool:
    """Whether it is spoken of something that is no horse and no piece: "the van won't start", "Pip's oil is in …"."""
    if clause.horses and clause.has("is") and not clause.told and only_her_thing(clause.items):
        return True
    return not (clause.horses or clause.pieces) and (telling.elsewhere or of_a_thing(clause))


def in_the_stalls(clause: Clause, following: Clause | None, telling: Telling) -> bool:
    """Whether what follows is seen in the stalls: "je suis aux box", "In the barn:"; until a field is the heading."""
    if clause.has("place stall"):
        begins = following is not None or not telling.events  # "(Maple: sweaty.) In the barn." heads nothing
        if (begins and _heads(clause)) or stands_among_stalls(clause.items):
            return True
    return telling.among_stalls and not clause.has("place field")


def but_one(clause: Clause) -> bool:
    """As in "(everyone fine) but Otto is cold", "except Kenzo who is cold"."""
    if clause.joined == "but" and any(i.horses for i in clause.items[:2]):
        return True
    return clause.items[0].has("except") and clause.told


def where_they_stand(clause: Clause, telling: Telling) -> None:
    """As in "in her stable.", where what is told is seen; but "(in her box now.) In the field she shivered"."""
    names = [name for i in telling.who if i.sure for name in i.horses]
    if clause.has("place stall") and stands_in_stall(clause.items):
        telling.stalled.update(names)
    elif clause.has("place field") and clause.told:
        telling.stalled.difference_update(names)


def _heads(clause: Clause) -> bool:
    """As in "dans les box : …": a place that opens the sentence, and no more; "dans son box" is one horse's."""
    return clause.joined == "" and all(soft(i) and not i.has("her", "is", "she", "time") for i in clause.items)


def only_heads(sentence: Sequence[Item]) -> bool:
    """As in "rentrés :", with who it was on the lines behind: of nobody told before."""
    if sentence[-1].text != ":":
        return False
    moved = some_mean(sentence, "turned out", "brought in")
    return moved and all(i.has("turned out", "brought in") or soft(i) for i in sentence)


def told_all_the_same(clause: Clause, telling: Telling, *, dated: bool) -> bool:
    """Whether this is so, whatever was planned or supposed before it. dated: or told of some other day."""
    if telling.supposing == "quoted":
        return False  # "caption: Pip, soaked, loving life"
    return _present(clause, telling) or _danger_of_hers(clause, telling) or (dated and as_it_is_now(clause))


def supposed_of(clause: Clause) -> str:
    """Of what a condition is told: "weather" in "if it rains tonight", "si gèle"; "ours" of a horse or a piece.

    "other" in "if I'm not mistaken", "if anybody is making coffee".
    """
    if clause.has("if") and clause.has("weather", "sky", "brings weather", "freezes", "bare weather", "mass"):
        return "weather"
    return "ours" if clause.horses or clause.pieces or clause.has("she", "it") or clause.told else "other"


def _present(clause: Clause, telling: Telling) -> bool:
    """A horse and a sign in one clause stand for themselves, whatever was planned before it; so does her torn rug.

    Not in "if it rains, Otto is cold"; but of danger it is better told once too often.
    """
    if clause.joined == "if":
        return False
    signs = any(i.kinds("sign") or i.kinds("everyday") or i.has("wet", "soaked") for i in clause.items)
    grave = clause.has(*DANGER)
    of_horse = bool(clause.horses) and signs and (grave or telling.supposing != "weather")
    hers = any(piece.owners for piece in clause.pieces) and clause.has("is", "has")
    if telling.supposing == "other":
        return of_horse or (hers and clause.told)
    damaged = clause.has("state torn", "state missing", "strap", "soaked")
    return of_horse or (hers and damaged and not telling.supposing)


def _danger_of_hers(clause: Clause, telling: Telling) -> bool:
    """As in "I'm worried about Lady Grey, she's not eaten": a pronoun, and what is never only planned."""
    danger = clause.has(*DANGER)
    return danger and clause.items[0].has("she", "is") and clause.has("is", "she") and telling.begun
