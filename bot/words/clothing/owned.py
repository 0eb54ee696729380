"""Whose a described piece is, from the words before it ("Juniper's", "her") and behind it ("of Juniper")."""

from collections.abc import Sequence
from itertools import takewhile

from bot.words.lookup.items import Item, of_clothes, predicate, some_mean
from bot.words.lookup.piece import Piece
from bot.words.named.weatherlike import clothing
from bot.words.thoughts.sentences import REACH

BEFORE_HER = ("article", "any adjective", "polite")  # "of that poor old Maple"


def whose_before(piece: Piece, before: Sequence[Item], mine: tuple[str, ...]) -> tuple[Piece, int]:
    """Whose it is, from the words before it, and how many of them say so."""
    kept = list(before[-REACH:])
    if len(kept) > 1 and of_clothes(kept[-1]) and kept[-2].has("some") and not kept[-2].has("all", "of"):
        return piece._replace(some=True), 0  # "in a soaked rug"
    near = len(kept)
    while (
        kept
        and (kept[-1].has("article", "all") and not _put_in_its_place(kept[-1], before) and not kept[-1].has("i"))
        and not kept[-1].horses
    ):
        if kept[-1].has("all") and not kept[-1].has("article"):
            piece = piece._replace(every=True)
        if kept[-1].has("both"):
            piece = piece._replace(every=True, pair=True)
        if kept[-1].has("some"):
            piece = piece._replace(some=True)
        kept.pop()
    if len(kept) < near:
        return piece, near - len(kept)
    if kept and kept[-1].has("own lot", "second") and piece.several and not kept[-1].has("both"):
        return piece._replace(every=True, pair=True), 1  # "June's two rugs"
    if kept and kept[-1].has("my"):
        return piece._replace(owners=mine, either=len(mine) > 1), 1
    if len(kept) > 1 and kept[-1].text == "'s" and kept[-2].horse:
        both = len(kept) > 2 and kept[-3].has("both") and piece.several  # "both June's rugs"
        return _of(piece._replace(every=True, pair=True) if both else piece, kept[-2]), 2 + both
    if kept and kept[-1].has("her") and not kept[-1].horses:
        return piece._replace(their=True), 1
    if kept and kept[-1].horse:
        return _of(piece, kept[-1]), 1
    return piece, 0


def _put_in_its_place(item: Item, before: Sequence[Item]) -> bool:
    """As in "swapped the heavy for the medium": the word between the two is no article."""
    return item.has("for another") and some_mean(before[-REACH:], "swapped", "brought")


def _of(piece: Piece, owner: Item) -> Piece:
    return piece._replace(owners=owner.horses, led=True, said=f"{owner.raw} {piece.said}")


def whose_behind(piece: Piece, items: Sequence[Item], at: int) -> tuple[Piece, int]:
    """Whose it is, from "of Maple" or "that Maple had on" behind it."""
    if piece.owners or at >= len(items):
        return piece, at
    if piece.their and items[at].text == "," and (whose := _named_at_last(items, at + 1)):
        return piece._replace(owners=items[whose].horses, their=False), whose + 1
    if items[at].has("own") and not items[at].has("her"):  # "la 300 suya"
        return piece._replace(their=True), at + 1
    worn, end = _worn_by(items, at)
    if end:
        return piece._replace(owners=items[worn].horses, worn=True), end
    if _on_one(items, at):
        return piece._replace(owners=items[at + 1].horses), at + 2
    if items[at].horse and not piece.their:  # "imper Neige trempé"
        after = next((i for i in items[at + 1 :] if not i.has("time", "nearly", "very", "link") or i.has("is")), None)
        if after is None or after.mark or told_of_clothes(after) or (after.has("is") and not _of_her(items, at + 1)):
            return piece._replace(owners=items[at].horses), at + 1
    if at + 1 >= len(items) or not items[at].has("of"):
        return piece, at
    place = at + 1
    while place + 1 < len(items) and items[place].has(*BEFORE_HER) and not items[place].horses:
        place += 1  # "a la Tormenta", "de ce vieux Gaspard"
    owners: list[str] = []
    while place < len(items) and items[place].horse:
        owners.extend(items[place].horses)
        if _another_of_list(items, place + 1):  # "a Trueno, Nube y Sol"
            place += 2
            continue
        if _last_of_list(items, place + 1):  # "a Trueno y Nube"
            place, owners = place + 3, [*owners, *items[place + 2].horses]
            break
        joined = place + 2 < len(items) and items[place + 1].has("and") and items[place + 2].has("of")
        joined = joined and not _gets_one(items[place + 4 : place + 6])
        place += 3 if joined and place + 3 < len(items) and items[place + 3].horse else 1
        if not joined:
            break
    return (piece._replace(owners=tuple(owners), given=items[at].has("toward")), place) if owners else (piece, at)


def _of_her(items: Sequence[Item], at: int) -> bool:
    """As in "con la gorda Nube está sudada": what no rug does is told next."""
    how = next((i for i in items[at : at + REACH] if predicate(i)), None)
    return how is not None and bool(how.kinds("sign")) and not told_of_clothes(how)


def _gets_one(behind: Sequence[Item]) -> bool:
    """As in "(le puse la gorda a Trueno y a Nube) la fina", "… la suya": another piece, which the last of them gets."""
    first = next((i for i in behind if i.has("own") or not i.has("article")), None)
    return first is not None and (clothing(first) or first.number is not None or first.has("own", "colour"))


def told_of_clothes(item: Item) -> bool:
    """How wet or torn a piece is, its strap, or that it is on or off: what may follow its owner's name."""
    return of_clothes(item) or item.has("strap", "on", "off", "put on", "took off")


def _named_at_last(items: Sequence[Item], at: int) -> int:
    """Where the horse stands in "(enlevé sa couverture), à la Réglisse, …": told between two marks whose; else 0."""
    if at >= len(items) or not items[at].has("of"):
        return 0
    place = at + 1
    if place < len(items) and items[place].has("article") and not items[place].horses:
        place += 1
    named = place < len(items) and items[place].horse
    return place if named and (place + 1 >= len(items) or items[place + 1].mark) else 0


def _worn_by(items: Sequence[Item], at: int) -> tuple[int, int]:
    """Where the horse stands in "(the liner) that Misty had on is wet", "(la manta) que lleva Lola", and where it ends.

    0 and 0 where this is no such tale.
    """
    led = items[at].has("relative", "question") and some_mean(items[at + 1 : at + 2], "wears")
    if led and at + 3 < len(items) and items[at + 2].horse:
        end = at + 4 if items[at + 3].has("on", "put on") else at + 3
        told = any(map(predicate, items[end : end + 3])) and all(i.piece is None for i in items[end : end + 3])
        return (at + 2, end) if told else (0, 0)
    place = at if items[at].horse else at + 1
    if place + 3 >= len(items) or not items[place].horse or (place > at and not items[at].has("it", "question")):
        return 0, 0
    had, on, then = items[place + 1 : place + 4]
    return (place, place + 3) if had.has("has") and on.has("on") and (then.has("is") or predicate(then)) else (0, 0)


def _on_one(items: Sequence[Item], at: int) -> bool:
    """As in "(the sheet) on Misty is soaked": how the piece is that she wears, no putting on."""
    told = at + 3 < len(items) and items[at + 2].has("is", "not")
    if not told or not items[at].has("on") or not items[at + 1].horse:
        return False
    how = next((i for i in items[at + 3 :] if not i.has("time", "very", "a little", "not")), items[at])
    return of_clothes(how)


def _since_pause(before: Sequence[Item]) -> list[Item]:
    """The words back to the last pause, a list's commas between names set aside: "sangle cassée sur la 150 de"."""
    names = [i for k, i in enumerate(before) if not (i.text == "," and k and before[k - 1].horses)]
    return list(takewhile(lambda i: not i.mark, reversed(names[-REACH:])))


def _another_of_list(items: Sequence[Item], at: int) -> bool:
    """As in ", Nube" with the last of the list still to come."""
    if at + 2 >= len(items) or items[at].text != "," or not items[at + 1].horse:
        return False
    return _last_of_list(items, at + 2) or _another_of_list(items, at + 2)


def _last_of_list(items: Sequence[Item], at: int) -> bool:
    """As in "and Nube" with nothing more said of Nube."""
    if at + 1 >= len(items) or not items[at].has("and") or not items[at + 1].horse:
        return False
    after = items[at + 2] if at + 2 < len(items) else None
    moved = some_mean(_since_pause(items[:at]), "put on", "took off", "took", "state missing", "swapped")
    if moved and after is not None and (after.has("is", "bare") or predicate(after)):
        return False  # "le puse la gorda a Trueno y Nube está mojada"
    if after is not None and predicate(after):
        its = of_clothes(after)  # "… de Quartz, Fidji et Perle nickel" is of horses
        return its and not any(predicate(i) or i.has("broken") for i in _since_pause(items[:at]))
    return after is None or after.mark or after.has("time", "is", "polite")


def owned_behind(items: Sequence[Item], at: int) -> bool:
    """Whether "de Perle", "de la Perle" stands here: whose the piece before it is."""
    if at >= len(items) or not items[at].has("of"):
        return False
    named = items[at + 1 : at + 3]
    return any(i.horse for i in (named[1:] if named and named[0].has("article") else named[:1]))
