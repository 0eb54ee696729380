"""Which piece of clothing is meant: "juniper-liner", "Juniper's liner", "the blue one", "her 200". Never a guess."""

from collections.abc import Container, Sequence
from dataclasses import replace
from functools import cache
from itertools import takewhile

from bot.words.clothing.as_described import piece_of
from bot.words.clothing.jackets import with_jackets
from bot.words.clothing.neck_covers import with_neck_covers
from bot.words.clothing.no_garment import kept_by, named_beside, of_nothing_here
from bot.words.clothing.no_piece import half, how_it_is, lamp, neck_of_hers
from bot.words.clothing.owned import owned_behind, told_of_clothes, whose_before, whose_behind
from bot.words.clothing.that_of import told_by_fill
from bot.words.lookup.gender import gender_of
from bot.words.lookup.items import OF_HORSES, Item, all_mean, of_clothes, of_rugs, predicate, some_mean
from bot.words.lookup.names import Roster
from bot.words.lookup.piece import Piece, colour
from bot.words.named.weatherlike import clothing
from bot.words.thoughts.sentences import REACH

LONGEST_RUN = 8  # words that describe one piece
WHERE = ("au ", "aux ", "a l' ", "a la ", "dans ", "en ", "al ", "in ", "on ")  # opens where something is
ROW = (":", "=", "→", "-", "–", "—")  # between a horse and what it wears
# what a weak word of clothes stands behind: "the heavy", "in heavy", "took heavy off"
DETERMINING = (
    "article", "her", "my", "all", "in", "on", "off", "put on", "took off", "took", "and", "wears", "of", "for another",
    "instead of", "swapped", "has", "over", "under", "without", "only", "or",
)  # fmt: skip
INNER = ("any adjective", "colour", "gram", "one", "spare")


def find(items: Sequence[Item], roster: Roster, mine: tuple[str, ...]) -> list[Item]:
    """The items with every description of a piece drawn into one. mine: the speaker's own horses."""
    found: list[Item] = []
    heard = 0  # the place behind what is found so far
    items = with_neck_covers(with_jackets(told_by_fill(items)), roster)
    members = _members(items, roster)
    for at in sorted(members):
        if at < heard:
            continue
        found.extend(items[heard:at])
        heard = at
        end = _run(items, at, members)
        piece = _described(items, at, end, roster)
        if piece is None:
            continue
        if of_nothing_here(piece, found, items, at, end):
            continue
        if _more_than_there_is(piece, items[end : end + LONGEST_RUN], roster):
            found.extend(items[at:end])  # "those purple blankets are torn", of a barn with one
            heard = end
            continue
        of_mine = end < len(items) and items[end].has("my") and not items[end].has("article")  # "la capa mía"
        said_mine = of_mine or (found and found[-1].has("my") and not found[-1].has("my horse"))
        if said_mine and not (mine and (named_beside(items, at) or kept_by(mine, piece, roster))):
            continue  # "my sheet": bed linen, for all the barn knows
        piece = piece._replace(gender=gender_of(piece.said, found[-1] if found else None))
        how = [found.pop()] if _hers_and_wet(found) else []  # "hung Maple's wet sheet by Pip"
        piece, taken = whose_before(piece, found, mine)
        found[len(found) - taken :] = how
        if piece.ids and piece.some:
            found.append(Item(piece.said, piece.said))  # "a massive zebra": any such
            heard = end
            continue
        one_of = len(found) > 1 and found[-1].has("of") and found[-2].has("one") and not piece.ids
        if one_of or (piece.several and piece.some):
            # "one of Otto's rugs": a liner is one of them
            piece = piece._replace(several=False, some=True, kinds=frozenset() if piece.rug else piece.kinds)
        if len(found) > 1 and found[-2].piece is not None and (found[-1].has("and") or found[-1].text == ","):
            before_it = found[-2].piece  # "Maple's liner and sheet"
            if not (owned_behind(items, end) or piece.owners or piece.their or piece.spare or piece.ids):
                piece = piece._replace(owners=before_it.owners, their=before_it.their)
        dressed = len(found) > 1 and found[-2].horses and found[-1].has("in", "wears", "has")
        dressed = dressed and not owned_behind(items, end)
        piece, heard = (piece, end) if dressed else whose_behind(piece, items, end)
        found.append(Item(piece.said, piece.said, piece=piece))
    return _one_over_another([*found, *items[heard:]])


def _hers_and_wet(before: Sequence[Item]) -> bool:
    """As in "Maple's wet (sheet)": whose it is, and then how it is."""
    return len(before) > 2 and of_clothes(before[-1]) and before[-2].text == "'s" and before[-3].horse


def _one_over_another(items: list[Item]) -> list[Item]:
    """As in "imper sur la rose", "son imper sur sa 200": French has one word for on a horse and over a piece."""
    for at in [k for k, i in enumerate(items) if i.text == "sur" and 0 < k < len(items) - 1]:
        behind = next((i for i in items[at + 1 : at + 3] if not i.has("article", "her")), items[at])
        if items[at - 1].piece is not None and behind.piece is not None:
            items[at] = replace(items[at], means=frozenset({"over"}))
    return items


def _more_than_there_is(piece: Piece, behind: Sequence[Item], roster: Roster) -> bool:
    """Whether many are told of where the barn has one such."""
    told = next((i for i in behind if i.mark or i.has("is", "strap")), None)
    many = piece.several and not piece.ids and told is not None and told.text in ("are", "were")
    return many and len(roster.fitting(piece)) == 1


def _members(items: Sequence[Item], roster: Roster) -> set[int]:
    """The places of words that may stand in the description of a piece."""
    named = roster.words
    perhaps = [
        at
        for at, i in enumerate(items)
        if i.pieces or i.number is not None or i.text in named or (i.means and _describes(i.means))
    ]
    return {at for at in perhaps if _member(items[at])}


def _member(item: Item) -> bool:
    """Not a horse, nor a small word that is in the name of some piece as well."""
    if item.horses and item.sure and not item.pieces:
        return False
    small = item.has("article", "of", "and", "in", "on", "is", "under", "over")
    return bool(item.pieces or item.number is not None or not small or _describes(item.means))


@cache
def _describes(means: frozenset[str]) -> bool:
    """Whether a word of these meanings may stand in the description of a piece."""
    return of_rugs(means) or not means.isdisjoint(INNER)


def _run(items: Sequence[Item], at: int, members: Container[int]) -> int:
    """The place behind the words that may describe the piece begun at this one."""
    end = at + 1
    while end < min(len(items), at + LONGEST_RUN):
        joins = items[end].has("of") and end + 1 < len(items) and items[end + 1].number is not None
        if not (joins or end in members):
            break
        end += 1
    return end


def _described(items: Sequence[Item], at: int, end: int, roster: Roster) -> Piece | None:
    """The piece that these words describe; None where they may be of anything else."""
    run = items[at:end]
    before = items[at - 1] if at else None
    after = items[end] if end < len(items) else None
    kinds = _by_name(run, _owner_named(items, at, end), roster)
    if kinds:
        return Piece(" ".join(i.raw for i in run), kinds, words=frozenset(w for i in run for w in i.text.split()))
    if len(run) == 1 and run[0].text in roster.alone and _of_a_nickname(items, at, roster):
        return Piece(run[0].raw, ids=roster.alone[run[0].text])  # "sa tigrée" of a rug called la tigrée
    fills = roster.fills
    numbers = [i.number for i in run if i.number is not None and (i.number in fills or not _of_a_name(i, run, roster))]
    if any(i.pieces or i.kinds("kind") or i.has("rug") for i in run):
        return None if how_it_is(run, before) or neck_of_hers(items, at, end) else piece_of(run, numbers, roster)
    if half(run, before, after, roster) or (run[0].kinds("weight") == ["light"] and lamp(items, end)):
        return None
    only_told = _only_told(items, at, end)
    weak = any(n in fills and n for n in numbers) or _weak(items, at, run, roster)
    starts = _starts(items, at, end) or (only_told and not all(i.kinds("weight") == ["light"] for i in run))
    hers = run[0].has("one") and _hers_and_wet(items[max(0, at - 3) : at])  # "Maple's wet one"
    told = starts or hers or _determined(before)
    if not (weak and told and _ends(after)) or (all_mean(run, "one") and not hers):
        return None
    return piece_of(run, numbers, roster)


def _only_told(items: Sequence[Item], at: int, end: int) -> bool:
    """As in "(ok but) medium torn", "tartan - wet": nothing else is said, up to the next pause."""
    opens = at == 0 or items[at - 1].mark or items[at - 1].has("and", "but")
    row = ROW if at and items[at - 1].text == "," else (*ROW, ",")
    parted = end < len(items) and items[end].text in row
    return opens and (_only_that_said(items, end + parted) or _whole_line(items, at, end))


def _whole_line(items: Sequence[Item], at: int, end: int) -> bool:
    """As in "To the wash: / - tartan / - fleece": a line of a list, and nothing else on it."""
    before = items[at - 2 : at]
    first = bool(before) and (before[-1].text == "\n" or (before[-1].mark and before[0].text == "\n"))
    return first and (end >= len(items) or items[end].text == "\n")


def _of_a_nickname(items: Sequence[Item], at: int, roster: Roster) -> bool:
    """As in "sa tigrée", "tigrée de Lune": whether the one word by which a rug is called stands as a rug does."""
    before, end = items[at - 1] if at else None, at + 1
    hers = before is not None and (before.has("her", "wears", "in", "put on") or before.horse or before.text == "'s")
    told = hers or _contracted(before) or _only_told(items, at, end) or _torn_or_moved(items, at, end)
    return told or _whose_strap(items, at, end) or _of_its_owner(items, at, end, roster)


def _contracted(before: Item | None) -> bool:
    """As in "la gruesa encima del pijama", "sous le box du kaki": an article that runs into the word before it."""
    return before is not None and before.text.split()[-1:] in (["del"], ["al"], ["du"], ["au"])


def _torn_or_moved(items: Sequence[Item], at: int, end: int) -> bool:
    """As in "tank's ripped all down the side", "tank off, stable rug on", of a rug called the tank."""
    opens = at == 0 or items[at - 1].mark or items[at - 1].has("and")
    after = next((i for i in items[end : end + 2] if not i.has("is") or i.has("off", "on")), None)
    told = ("state torn", "state washing", "on", "off", "instead of", "in its stead", "put on", "took off")
    return opens and after is not None and after.has(*told)


def _of_its_owner(items: Sequence[Item], at: int, end: int, roster: Roster) -> bool:
    """As in "tigrée de Lune mouillée", "tigrée Lune mouillée", "Lune : tigrée", of her rug called la tigrée."""
    behind = items[end : end + 2]
    whose = behind[1] if len(behind) > 1 and behind[0].has("of") else next(iter(behind), None)
    if at > 1 and items[at - 1].text in ROW:
        whose = items[at - 2]
    owners = {roster.garments[g].horse for g in roster.alone[items[at].text]}
    return whose is not None and whose.horse and whose.horses[0] in owners


def _whose_strap(items: Sequence[Item], at: int, end: int) -> bool:
    """As in "correa rota camuflada", of a rug called la camuflada: what broke, and on which."""
    ends = end >= len(items) or items[end].mark
    return ends and at > 1 and items[at - 1].has("broken", "state torn") and items[at - 2].has("strap")


def _weak(items: Sequence[Item], at: int, run: Sequence[Item], roster: Roster) -> bool:
    """Words that may be of clothes, where what stands beside them is: "the heavy", "tartan's wet"."""
    if any(i.kinds("weight") or i.has("one", "spare") for i in run):
        return True
    if any(i.has("colour") and colour(i.text.split()[-1]) in roster.colours for i in run):
        return True
    housed = at > 0 and items[at - 1].has("in")  # "put Pip in stable"
    nouns = [i for i in run if i.text in roster.nouns and not (housed and i.has("place stall"))]
    moved = bool(nouns) and some_mean(items[max(0, at - 3) : at], "put on", "took off")
    laid = bool(nouns) and _laid_over(items, at + len(run))
    return moved or laid or any(not i.has("place stall", "body") for i in nouns)


def _laid_over(items: Sequence[Item], end: int) -> bool:
    """As in "in his liner with the stable over", "… over it"; not "the stable over the road"."""
    behind = items[end : end + 2]
    return bool(behind) and behind[0].has("over") and (len(behind) < 2 or behind[1].mark or behind[1].has("it", "she"))


def _starts(items: Sequence[Item], at: int, end: int) -> bool:
    """As in "medium on", "heavy of Maple's", "azul Nube mojada": one that opens, and what tells that it is one."""
    after, then = (*items[end : end + 2], None, None)[:2]
    if after is None:
        return False
    if after.has("of") and then is not None and then.horse:
        return True
    opens = (at == 0 or items[at - 1].mark) and not items[at].has("any adjective")
    if opens and after.horse and then is not None and told_of_clothes(then):
        return True
    if opens and after.has("and"):
        after, then = (*_behind_another(items, end), None, None)[:2]  # "heavy and liner on June"
    moved = after is not None and after.has("on", "off", "put on", "took off", "in its stead")
    return opens and (moved or _is_moved(after, then))


def _behind_another(items: Sequence[Item], end: int) -> Sequence[Item]:
    """What stands behind the second of two pieces: what is told of both."""
    rest = items[end + 1 : end + LONGEST_RUN]
    pieces = len(list(takewhile(lambda i: clothing(i) or i.has("colour", "any adjective", "article"), rest)))
    return rest[pieces : pieces + 2] if pieces else ()


def _is_moved(after: Item | None, then: Item | None) -> bool:
    """As in "(medium) is on"."""
    return after is not None and after.has("is") and then is not None and then.has("off", "on")


def _of_a_name(item: Item, run: Sequence[Item], roster: Roster) -> bool:
    """As in "the 78 spare" of a piece called spare-heavy-78: no fill that any rug here has."""
    return item.text in roster.words and len(run) > 1


def _owner_named(items: Sequence[Item], at: int, end: int) -> Item | None:
    """The horse right before a piece, or where somebody moved or missed it: "took Juniper's neck off"."""
    before = items[at - 1] if at else None
    moved = end < len(items) and items[end].has("on", "off")
    looked_for = at > 2 and items[at - 3].has("state found", "state missing", "wears")  # "found Jack's neck"
    if (moved or looked_for) and before is not None and before.text == "'s" and at > 1:
        return items[at - 2]
    if moved and before is not None and before.text == ":" and at > 1:
        return items[at - 2]  # "Jack: neck on"
    if moved and end + 1 < len(items) and items[end + 1].horse:
        return items[end + 1]
    return before


def _by_name(run: Sequence[Item], before: Item | None, roster: Roster) -> frozenset[str]:
    """The kind in "Rusty neck damp" of a piece called rusty-neck: the horse and all the rest of the piece's own name.

    Empty where no piece is called so.
    """
    if before is None or not before.horse:
        return frozenset()
    said = {word for i in run for word in i.text.split()}
    called = (g for g in roster.owned.get(before.horses[0], ()) if roster.bags[g] == said)
    return frozenset(roster.garments[g].kind for g in called)


def _only_that_said(items: Sequence[Item], at: int) -> bool:
    """Whether nothing but a state follows up to the next pause: "medium torn", "tartan is wet"."""
    says = False
    for k in range(at, min(len(items), at + REACH)):
        if items[k].mark:
            break
        if (predicate(items[k]) and not items[k].has(*OF_HORSES)) or items[k].has("strap", "drying"):
            says = True  # nobody says of a rug that it is hot or cold
        elif not items[k].has("is", "broken", "time", "very", "a little", "link", "body", "hour"):
            return False
    return says


def _determined(before: Item | None) -> bool:
    return before is not None and (
        bool(before.horses) or before.has(*DETERMINING) or before.text in ("'s", ":", "→", ">")
    )


def _ends(after: Item | None) -> bool:
    """Whether no thing follows that the words would describe: "the spare box"."""
    if after is not None and after.has("place stall", "place field") and not after.text.startswith(WHERE):
        return after.has("in", "inwards", "outwards", "turned out", "brought in")
    return after is None or after.mark or bool(after.means) or bool(after.horses) or after.person
