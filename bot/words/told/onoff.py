"""What happens to one piece in a clause: it goes on, comes off, or is all that is worn."""

from collections.abc import Sequence

from bot.words.lookup.items import Item, predicate, some_mean
from bot.words.lookup.piece import Piece
from bot.words.thoughts.clauses import Clause

# what may stand beside two pieces of which one lies over the other
LAYERING = (
    "over", "under", "article", "her", "time", "in", "on", "is", "wears", "subject", "link", "polite", "brought",
)  # fmt: skip
# what may stand between a horse and what it is in: "turned Otto out at 8 in his heavy"
PASSED = (
    "is", "link", "time", "was", "very", "too", "hour", "outwards", "turned out", "in", "article", "toward",
    "place field", "place stall", "her",
)  # fmt: skip
BELOW = ("debajo", "abajo", "dessous", "underneath")


def mode_of(items: Sequence[Item], at: int) -> str:
    """What happens to the piece at a place: "on", "off", "whole", or "" where nothing is said."""
    before, after = items[:at], items[at + 1 :]
    if _where_another_lay(before):
        piece = items[at].piece
        return "on" if piece is not None and not piece.rug else ""  # which rug it is, nobody says
    following = _after_the_list(after)
    last = items[at - 1] if at else None
    if following is not None and following.has("in its stead") and not any(map(_off, _since_pause(before))):
        return "on"  # "imper retiré, polaire à la place"
    only = items[at - 1].has("only") and not items[at - 1].has("and") if at else False
    if only and following is not None and following.has("put on"):
        return "whole"  # "le he dejado solo el forro puesto"
    leading = next((i for i in reversed(items[: max(0, at - 1)]) if not i.has("time")), None)  # ", now only the 200"
    if only and leading is not None and leading.mark and any(i.piece for i in items[:at]):
        return "whole"  # "j'ai enlevé la doublure, juste la 200 maintenant"
    has_on = last is not None and last.has("wears") and following is not None and {"on", "put on"} <= following.means
    if has_on and not some_mean(before, "not"):
        return "whole"  # "con el edredón puesto"
    if following is not None and following.has("took off", "put on"):
        return "off" if following.has("took off") else "on"
    if last is not None and last.has("instead of", "without"):
        return "off"
    verb = next((i for i in reversed(before) if i.has("put on", "took off", "took", "wears", "keeps")), None)
    if verb is not None and verb.has("took off") and _out_of_elsewhere(before):
        verb = None
    if verb is not None and verb.has("stripped") and _then_into(before, verb):
        return "whole"
    if verb is not None and verb.has("had") and not (_given_to_one(before, verb) or _given_hers(items, at)):
        verb = None  # "gave her sheet a good rolling"
    goes_on = following is not None and following.has("on") and not following.has("off")
    # "stable rug off heavy on", "took off the liner and left hers on"
    goes_on = goes_on and any(i.piece for i in before)
    if verb is not None and verb.has("took off") and not (goes_on and some_mean(_since_pause(before), "and")):
        return "" if verb.has("either way") and following is not None and following.has("on") else "off"
    off = (following is not None and following.has("off")) or some_mean(_since_pause(before)[-3:], "off")
    off = off and not goes_on
    if verb is not None and verb.has("took", "took off") and not verb.has("put on"):
        if goes_on:
            return "on"  # "took her sheet off left the liner on"
        out = bool(after) and after[0].has("outwards")  # "took her liner out"
        return "off" if off or out or some_mean(items, "off") else ""
    if off and (verb is None or not verb.has("put on", "wears")):
        return "off"
    if verb is None and len(after) == 1 and after[0].text == "out":
        return "off"  # "Rosie's liner out"
    if verb is not None and verb.has("wears", "keeps"):
        return "whole"
    if verb is not None:
        no_other = next((i for i in reversed(after) if not i.mark), verb).has("only")  # "put it on Pip, nothing else"
        return "whole" if only or no_other else "on"  # "le dejé puesta solo la azul"
    if _only_this_left(before) and not any(predicate(i) for i in after):
        return "whole"
    if _in_a_piece(items, at) or _layered(items, at) or _nothing_else(items, at):
        return "whole"
    return _particle(items, at, following)


def _where_another_lay(before: Sequence[Item]) -> bool:
    """As in "pulled the liner out from under (his medium)", "le quité la gorda de encima del (forro)", which stays."""
    if before and _the_one_below(before):
        return True
    leads = [i for i in _since_pause(before)[-5:] if not i.has("article", "her", "of") or i.has("under", "over")]
    if len(leads) < 2 or not leads[-1].has("under", "over") or leads[-1].has("in"):
        return False
    other = next((i for i in reversed(leads[:-1]) if not (i.horses or i.has("took off", "off", "outwards"))), leads[-1])
    return other.piece is not None and some_mean(before, "took off", "took", "off", "outwards")


def _the_one_below(before: Sequence[Item]) -> bool:
    """As in "le quité el forro de debajo de (la gorda)": which one it was tells where it was."""
    piece = next((i for i in reversed(before) if not i.has("of", "article", "her")), before[-1])
    return piece.piece is not None and piece.text.split()[-1] in BELOW and some_mean(before, "took off", "took", "off")


def off_a_hook(clause: Clause) -> bool:
    """As in "took Otto's sheet off the hook", "gone off its hook": where it hung, and no strap that came off."""
    threes = zip(clause.items, clause.items[1:], clause.items[2:], strict=False)
    return clause.has("strap") and any(
        off.has("off") and the.has("article", "her") and hook.has("strap") for off, the, hook in threes
    )


def _off(item: Item) -> bool:
    return item.has("took off", "off")


def _given_to_one(before: Sequence[Item], verb: Item) -> bool:
    """As in "gave Moss his liner", "gave him the sheet": who got it stands right behind the verb."""
    at = max(k for k, i in enumerate(before) if i is verb)
    return any(i.horses or i.has("she") for i in before[at + 1 : at + 2])


def _given_hers(items: Sequence[Item], at: int) -> bool:
    """As in "gave Moss the spare": who got it stands with the piece, and nothing more is said of it."""
    piece = items[at].piece
    no_more = all(i.mark or i.has("time", "polite", "too") for i in items[at + 1 :])
    return piece is not None and bool(piece.owners) and no_more and at > 0 and items[at - 1].has("put on")


def goes_with(items: Sequence[Item], at: int) -> int | None:
    """The place of the piece that is on, where this one is named with it: "has his heavy on with his neck cover"."""
    joins = next((k for k in range(at - 1, -1, -1) if not items[k].has("her", "article") or items[k].has("and")), -1)
    if joins < 2 or not items[joins].has("and") or not items[joins - 1].has("on"):
        return None
    return joins - 2 if items[joins - 2].piece is not None else None


def _then_into(before: Sequence[Item], verb: Item) -> bool:
    """As in "stripped him and into the fleece", "both stripped and in coolers"; not "stripped out of his sheet"."""
    at = max(k for k, i in enumerate(before) if i is verb)
    behind = [i for i in before[at + 1 :] if not i.has("her", "article")]
    return len(behind) > 1 and behind[-1].has("in") and any(i.has("and") or i.mark for i in behind[:-1])


def _only_this_left(before: Sequence[Item]) -> bool:
    """As in "Perle n'a plus sa 250, juste le couvre-cou", "without his 250, only his liner and sheet"."""
    only = max((k for k, i in enumerate(before) if i.has("only")), default=0)
    listed = all(i.piece or i.has("and", "article", "her") for i in before[only + 1 :])
    return only > 0 and listed and some_mean(before[:only], "without")


def _out_of_elsewhere(before: Sequence[Item]) -> bool:
    """As in "Otto got out of his stall with his heavy on": what he got out of is no piece."""
    verb = max((k for k, i in enumerate(before) if i.has("took off")), default=-1)
    listed = all(i.piece or i.mark or i.has("article", "and", "her") for i in before[verb + 1 :])
    return verb >= 0 and before[verb].text.endswith(" of") and not listed


def _since_pause(before: Sequence[Item]) -> Sequence[Item]:
    """What was said since the last comma: in "sheet off, liner on" the liner stays."""
    pause = max((k for k, i in enumerate(before) if i.mark), default=-1)
    return before[pause + 1 :]


def _after_the_list(after: Sequence[Item]) -> Item | None:
    """What follows a piece and those listed with it: "liner and 200 on"."""
    for k, item in enumerate(after):
        listed = item.has("and") and k + 1 < len(after) and any(i.piece for i in after[k + 1 : k + 3])
        passing = item.has("link", "article", "very", "is", "her") and not item.has("off", "on", "in its stead")
        passing = passing and not item.text.endswith("ing")  # "the sheet is leaking on Maple"
        if not (listed or passing or (k and item.piece)):
            return item
    return None


def _in_a_piece(items: Sequence[Item], at: int) -> bool:
    """As in "Maple in her heavy and liner": a horse, "in", then pieces."""
    k = at - 1
    while (
        k >= 0
        and (items[k].piece is not None or items[k].has("and", "article", "her", "link") or items[k].text in ",/")
        and not (items[k].has("in") or _moved_to(items, k))
    ):
        k -= 1
    if _moved_to(items, k):
        return True
    if k < 1 or not items[k].has("in") or items[k].has("not"):
        return (
            k > 0
            and items[k].mark
            and items[k].text in ":=-–—"
            and bool(items[k - 1].horses)
            and _only_pieces(items, k)
        )
    if items[k - 1].has("she"):
        return True  # "left her in her medium"
    passed = [i for i in items[:k] if not (i.clock or i.number is not None)]
    before = [i for i in passed if i.has("she") or not i.has(*PASSED)]  # "turned her out in her medium"
    return bool(before) and bool(before[-1].horses or before[-1].has("she"))


def _moved_to(items: Sequence[Item], at: int) -> bool:
    """As in "passé Titan à la 100", "moved him to the sheet": a verb of moving, the horse, and what she is in now."""
    to_it = at > 1 and items[at].has("toward", "on") and not items[at].has("article")
    return to_it and bool(items[at - 1].horses or items[at - 1].has("she")) and items[at - 2].has("brought")


def _nothing_else(items: Sequence[Item], at: int) -> bool:
    """As in "Perle has only her sheet", "Perle just her sheet", "Perle sheet only": a horse, "only", the piece."""
    before, piece, behind = items[:at], items[at].piece, items[at + 1 :]
    if not before and behind and behind[0].has("only") and not behind[0].has("and"):
        small = ("time", "polite") if piece is not None and piece.led else ("polite",)  # "(sheet off,) liner only"
        return all(i.mark or i.has(*small) for i in behind[1:])
    if (
        at > 1
        and before[-1].has("only")
        and before[-2].horses
        and not any(i.piece or predicate(i) for i in items[at + 1 :])
    ):
        return True
    return some_mean(before, "has") and some_mean(items, "only") and any(i.horses for i in before)


def only_layered(items: Sequence[Item]) -> bool:
    """As in "liner under the sheet for Maple": pieces, how they lie, and nothing else."""
    return all(i.piece or i.horses or i.mark or i.has(*LAYERING) for i in items)


def _layered(items: Sequence[Item], at: int) -> bool:
    """As in "Lady has her liner under her turnout", "I've his liner on under the heavy": both, and nothing else."""
    pieces = [k for k, i in enumerate(items) if i.piece is not None]
    if len(pieces) != 2 or at not in pieces:
        return False
    no_more = only_layered(items)
    has = bool(items[0].horses) and some_mean(items[1:2], "is")  # "Lucero tiene el forro y encima la 200"
    if not (has or some_mean(items[: pieces[0]], "has") or no_more):
        return False
    below = any(i.has("under") and not i.has("wears") for i in items[pieces[1] + 1 : pieces[1] + 2])
    below = below or (no_more and some_mean(items[pieces[0] : pieces[1]], "under"))  # "liner under the sheet for Maple"
    return below or some_mean(items[pieces[0] : pieces[1]], "over")  # "a l'imper + la bordeaux dessous"


def _only_pieces(items: Sequence[Item], colon: int) -> bool:
    small = ("and", "article", "time", "polite", "only", "over", "under")
    return all(i.piece is not None or i.has(*small) or i.mark for i in items[colon + 1 :])


def _particle(items: Sequence[Item], at: int, following: Item | None) -> str:
    """As in "heavy on Maple", "Maple has her heavy on"."""
    if following is None or not following.has("on") or (at and predicate(items[at - 1])):
        return ""
    rest = items[next(k for k, i in enumerate(items) if i is following) + 1 :]
    horse = (
        any(i.horses or (i.has("she") and not i.has("subject")) for i in rest)
        or any(i.horses or (i.piece and i.piece.owners) for i in items[:at])
        or bool((items[at].piece or Piece("")).owners)
    )
    if at and horse and items[at - 1].has("only") and not items[at - 1].has("and"):
        return "whole"  # "just the medium on Juniper"
    if some_mean(items[:at], "has"):
        joined = next((k for k, i in enumerate(rest) if i.has("and")), len(rest))  # "… on with the fleece under it"
        return "on" if some_mean(rest[:joined], "over") else "whole"  # "Star has her liner on as well"
    small = ("as of now", "polite")  # "(medium off,) stable rug on now"
    now = all(i.mark or i.has(*small) or i.text == "under it" for i in rest)
    return "on" if horse or now or rest[0].mark or rest[0].has("polite", "in its stead") else ""


def without_another(after: Sequence[Item]) -> bool:
    """As in "Uma 200 without the liner": behind what is worn, what is not."""
    return any(i.has("without") and any(j.piece for j in after[k + 1 : k + 3]) for k, i in enumerate(after))
