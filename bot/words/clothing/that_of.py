"""A piece told only by whose it is: "celle de Prince est sèche", "la capa de Rayo mojada y la de Luna seca"."""

from collections.abc import Sequence
from itertools import pairwise, takewhile

from bot.words.heard.colours import COLOURS
from bot.words.lookup.items import WETNESS, Item, of_clothes, places, some_mean
from bot.words.lookup.piece import RUGS, Piece
from bot.words.thoughts.sentences import ENDS

OF = frozenset(("of",))
LEAST_FILL = 50  # g/m², of a piece told by its fill
OWNING = frozenset(("that of", "own", "of"))
REACH = 16  # words before "la suya" in which she was dressed


def told_by_fill(items: Sequence[Item]) -> Sequence[Item]:
    """As in "(la azul) por la de 250": the fill alone tells which, without the "de" before it."""
    ofs = {at for at in places(items, OF) if _of_so_much(items, at)}
    return [item for at, item in enumerate(items) if at not in ofs] if ofs else items


def _of_so_much(items: Sequence[Item], at: int) -> bool:
    fill = items[at + 1].number if at + 1 < len(items) else None
    return (
        at > 0 and items[at].text == "de" and items[at - 1].has("that of") and fill is not None and fill >= LEAST_FILL
    )


def told_by_owner(items: Sequence[Item]) -> list[Item]:
    """The items with each "that of Luna" drawn into a piece: of the kind spoken of last, else any rug of hers."""
    found: list[Item] = []
    last: Piece | None = None
    end = 0
    for at in _beginnings(items):
        if at < end:
            continue
        last = next((i.piece for i in reversed(items[end:at]) if i.piece is not None), last)
        found.extend(items[end:at])
        end = at
        piece, words = _told_by_owner(items, at, last)
        if piece is not None:
            found.append(Item(piece.said, piece.said, piece=piece))
            last, end = piece, at + words
    return [*found, *items[end:]]


def _beginnings(items: Sequence[Item]) -> list[int]:
    """Where a piece may be told by its owner: at "of" and "own" and before them, at a horse before an "'s"."""
    begins = set(places(items, OWNING))
    begins |= {at - 1 for at in begins if at and items[at].has("own")}
    begins |= {at - 1 for at, item in enumerate(items) if item.text == "'s" and at}
    return sorted(begins)


def _told_by_owner(items: Sequence[Item], at: int, last: Piece | None) -> tuple[Piece | None, int]:
    """The piece that is told by its owner at this place, and how many words tell it; None and 1 where none is."""
    hers = _her_own(items, at)
    if hers and last is not None and last.fill is not None and (last.spare or last.owners):
        said = " ".join(i.raw for i in items[at : at + hers])  # "Pip is in the spare medium, hers is wet"
        return last._replace(
            said=said, owners=(), given=False, spare=False, ids=(), words=frozenset(), their=True
        ), hers
    if hers:
        kinds = RUGS | last.kinds if last is not None else RUGS  # "in Maple's cooler, hers is wet": a cooler too
        return Piece(" ".join(i.raw for i in items[at : at + hers]), kinds, their=True, rug=True), hers
    whose = _whose(items, at)
    piece = _piece(items, at, whose, last) if whose else None
    return piece, 1 if piece is None else whose - at + (2 if items[at].horse else 1)


def _her_own(items: Sequence[Item], at: int) -> int:
    """How many words say "le he quitado la suya", "je lui ai enlevé la sienne": whatever she has on; 0 for none."""
    article = items[at].has("that of", "article") and not items[at].has("own") and at + 1 < len(items)
    own = items[at + 1] if article else items[at]
    words = 2 if article else 1
    hers = own.has("her") and not some_mean(items[at + words : at + words + 1], "is")  # "his is soaked"
    if not own.has("own") or hers:
        return 0
    moved = some_mean(items[max(0, at - 2) : at], "took off", "put on")
    return words if moved or _said_to_be(items, at + words) else 0


def _said_to_be(items: Sequence[Item], at: int) -> bool:
    """As in "a Romero le he puesto la azul porque la suya estaba empapada": how the one is that she does not wear."""
    said = items[at : at + 1] if at < len(items) and items[at].kinds("state") else items[at + 1 : at + 4]
    how = next((i for i in said if not i.has("is", "was", "time", "very")), None)  # "his own is wet", "is in wash"
    is_so = at < len(items) and (how is items[at] or items[at].has("is", "was")) and not items[at].has("put on")
    as_well = some_mean(items[max(0, at - 3) : at], "and")  # "y la suya" may be another's
    before = _in_its_sentence(items[max(0, at - REACH) : at])
    if not is_so or as_well or how is None or not of_clothes(how):
        return False
    pieces = [i.piece for i in before if i.piece is not None]
    dressed = some_mean(before, "put on", "wears", "swapped")
    dressed = dressed or any(i.has("in") and then.piece is not None for i, then in pairwise(before))
    dressed = dressed or any(i.piece is not None and then.has("on") for i, then in pairwise(before))
    wearers = {i.horses for i in before if i.horses}
    hers = bool(pieces) and pieces[-1].owners in wearers  # "… her green one because her own": which, nobody says
    return dressed and len(wearers) == 1 and bool(pieces) and not hers


def _in_its_sentence(before: Sequence[Item]) -> Sequence[Item]:
    """What stands before it in its sentence, where a piece is spoken of there; else with the sentence before."""
    here = list(takewhile(lambda i: i.text not in ENDS, reversed(before)))[::-1]
    return here if any(i.piece is not None for i in here) else before


def _whose(items: Sequence[Item], at: int) -> int:
    """Where the owner stands, in "la de Luna" or "Luna's is"; 0 where nothing of the kind is said."""
    his = items[at].horse and at + 2 < len(items) and items[at + 1].text == "'s"
    if his and items[at + 2].has("is") and not items[at + 2].has("had"):  # "Monty's had a clip" tells of Monty
        if items[at + 2].has("has") and any(i.piece is not None or i.has("her") for i in items[at + 3 : at + 5]):
            return 0  # "Pickle's got his sheet on"
        been = items[at + 2].text == "been" and not any(map(of_clothes, items[at + 3 : at + 4]))
        return 0 if been else at  # and so does "Walter's been clipped"
    if at and items[at].horse and (items[at - 1].has("and") or items[at - 1].text == ",") and _hers_as_well(items, at):
        return at
    place = at + 1
    of_the = items[at].has("of") and items[at].has("article")  # "la correa de la de Trueno"
    if not (items[at].has("that of") or of_the) or place >= len(items) or not items[place].has("of"):
        return 0
    place += 1
    if place + 1 < len(items) and items[place].has("article") and not items[place].horses:
        place += 1
    return place if place < len(items) and items[place].horse else 0


def _hers_as_well(items: Sequence[Item], at: int) -> bool:
    """As in "(took Pip's liner off) and Luna's", ", Luna's too", "and Luna's off her"; not "and Luna's off her hay"."""
    if at + 1 >= len(items) or items[at + 1].text != "'s":
        return False
    behind = [i for i in items[at + 2 : at + 5] if not i.has("time")]
    while behind and behind[0].has("on", "off") and len(behind) > 1 and behind[1].has("she"):
        behind = behind[2:]
    if behind and behind[0].has("too"):
        behind = behind[1:]
    return not behind or behind[0].mark


def _piece(items: Sequence[Item], at: int, whose: int, last: Piece | None) -> Piece | None:
    owners = items[whose].horses
    said = " ".join(i.raw for i in items[at : whose + 1])
    if last is not None:
        kept = frozenset() if last.kinds else last.words.difference(COLOURS)  # "took Pip's neck off and Luna's"
        return last._replace(said=said, owners=owners, ids=(), words=kept, their=False)
    after = next((i for i in items[whose + 1 :] if not i.has("is") or i.has(*WETNESS)), None)
    told = after is not None and of_clothes(after)
    listed = after is not None and after.has("and")  # "la de Sultán y la granate ya secas"
    told = told or (listed and any(map(of_clothes, items[whose + 1 :])))
    told = told or some_mean(items[:at], "strap")  # "correa rota en la del Cid"
    moved = at > 0 and items[at - 1].has("took off", "put on")
    return (
        Piece(said, RUGS, owners=owners, rug=True)
        if (items[at].has("that rug of") or items[at].has("of")) and (told or moved)
        else None
    )
