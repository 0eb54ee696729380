"""Whether a pronoun takes a piece up again: "la verte, elle, est sèche", "viré l'imper de Filou, il dégoulinait"."""

from collections.abc import Sequence
from itertools import dropwhile

from bot.words.heard.genders import GENDERS
from bot.words.lookup.gender import gender_of_name, shown_gender
from bot.words.lookup.items import WETNESS, Item, all_mean, of_clothes, predicate, some_mean
from bot.words.lookup.piece import Piece
from bot.words.thoughts.clauses import Clause, soft
from bot.words.told.telling import Telling

SMALL = ("article", "and", "but", "polite", "link", "time")
UNDER = ("under", "over", "body", "after", "work", "in")  # what tells of the horse below the rug
BELOW = "dessous"


def takes_up(items: Sequence[Item], at: int) -> bool:
    """Whether the pronoun at this place is of the piece that opens the clause: nothing was said of the piece yet."""
    piece = next((i.piece for i in reversed(items[:at]) if i.piece is not None), None)
    nothing_told = all(i.mark or i.piece is not None or i.has(*SMALL) for i in items[:at])
    return piece is not None and _agrees(items[at], piece) and nothing_told


def goes_on_of_it(items: Sequence[Item], at: int, piece: Piece) -> bool:
    """As in "j'ai pendu la 300 de Quartz, elle est mouillée": a pronoun of the piece's gender, and how wet it is."""
    rest = items[at + 1 :]
    how = next((i for i in rest if predicate(i)), None)
    below = some_mean(items[:at], "under", "felt") or some_mean(rest, *UNDER)
    below = below or (how is not None and how.text.endswith(BELOW))
    return how is not None and of_clothes(how) and not below and GENDERS.get(items[at].text) == piece.gender


def of_the_piece(clause: Clause, telling: Telling) -> bool:
    """As in "enlevé la 150 de Filao, elle était trempée", "… elle est déchirée": of the piece spoken of last.

    What is said of the horse is said of below the rug: "elle est trempée dessous".
    """
    apart = _of_different_genders(telling)  # "Moro lleva la fina y está seca"
    alone = _nothing_else(telling)
    if telling.spoken is None or not (apart or alone or telling.last == "piece" or came_off(telling.heard)):
        return False
    if telling.heard is not None and telling.heard.has("felt") and telling.heard.has("under"):
        return False  # "touché sous la 250 de Lune, elle est mouillée"
    words = list(dropwhile(lambda i: i.has("time", "but") and not i.has("is"), (i for i in clause.items if not i.mark)))
    wet = next((i for i in words if of_clothes(i)), None)
    if wet is None or clause.has(*UNDER, "outwards") or wet.text.endswith(BELOW):
        return False
    if not all(soft(i) or predicate(i) for i in words):
        return False
    if alone and words[0].has("is", "it") and shown_gender(wet) == "":
        return True  # "(he colgado el impermeable,) está chorreando"
    unnamed = _of_nobody(words) or (words[0].has("is") and (apart or alone or came_off(telling.heard)))
    of_it = GENDERS.get(words[0].text) if words[0].has("she") else shown_gender(wet) if unnamed else None
    return of_it is not None and of_it == telling.spoken.gender


def _nothing_else(telling: Telling) -> bool:
    """As in "he colgado el impermeable en el guadarnés": one piece, and no horse, was spoken of so far."""
    heard = telling.heard
    return heard is not None and len(heard.pieces) == 1 and not (heard.horses or heard.told or telling.who)


def _of_nobody(words: Sequence[Item]) -> bool:
    """As in "(enlevé à Lune sa verte,) était trempée", ", complètement gorgée d'eau": no subject of its own."""
    return words[0].has("was") or all_mean(words, "very", *WETNESS)


def disagrees(item: Item, telling: Telling) -> bool:
    """As in "(le quité la fina a Moro,) está mojado": the word has not the gender of the piece spoken of last."""
    gender = telling.spoken.gender if telling.spoken is not None else ""
    return gender != "" and shown_gender(item) not in ("", gender)


def _of_different_genders(telling: Telling) -> bool:
    """Whether the one horse spoken of, by how its Spanish name ends, and the piece are told apart by what agrees."""
    names = [name for item in telling.who for name in item.horses]
    gender = gender_of_name(names[0]) if len(names) == 1 else ""
    return gender != "" and telling.spoken is not None and telling.spoken.gender not in ("", gender)


def any_rug(piece: Piece) -> bool:
    """A rug of which nothing more is said: the one spoken of, where one was."""
    told = piece.words or piece.ids or piece.owners or piece.fill or piece.their or piece.spare
    return piece.rug and not (told or piece.several or piece.some)


def came_off(clause: Clause | None) -> bool:
    """Whether a clause told of one piece, and that it came off."""
    return clause is not None and len(clause.pieces) == 1 and clause.has("took off", "took", "swapped")


def _agrees(pronoun: Item, piece: Piece) -> bool:
    return pronoun.text in GENDERS and piece.gender in ("", GENDERS[pronoun.text])
