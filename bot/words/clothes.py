"""Which piece of clothing is meant: "juniper-liner", "Juniper's liner", "the blue one", "her 200". Never a guess."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from bot.barn import Garment
from bot.words.items import Item, predicate
from bot.words.names import Roster

# what each weight means, in g/m² of fill, both ends included
WEIGHTS = {"heavy": (300.0, 1000.0), "medium": (150.0, 299.0), "light": (0.0, 149.0)}
RUGS = frozenset({"sheet", "turnout", "stable"})
LONGEST_RUN = 8  # words that describe one piece
INNER = ("any adjective", "colour", "gram", "one", "spare", "rug")


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece as somebody described it.

    kinds: what it may be; () where only "the blue one". fill: least and most. words: must be among its names.
    ids: garments of the nickname used. owners: whose it was said to be. their: of the horse named before.
    every: all such pieces. several: more than one, all of a horse's own. some: no particular one. either: of one of
    the owners, who knows which. rug: only called a rug. called: weight words, which may be in its name.
    """

    said: str
    kinds: frozenset[str] = frozenset()
    fill: tuple[float, float] | None = None
    words: frozenset[str] = frozenset()
    ids: tuple[str, ...] = ()
    owners: tuple[str, ...] = ()
    their: bool = False
    every: bool = False
    several: bool = False
    some: bool = False
    either: bool = False
    spare: bool = False
    rug: bool = False
    called: frozenset[str] = frozenset()

    def fits(self, garment: Garment, bag: frozenset[str]) -> bool:
        """Whether the description is true of a garment."""
        if self.ids:
            return garment.id in self.ids
        if self.spare and garment.horse is not None:
            return False
        unfilled = "sheet" in self.kinds and garment.kind == "turnout" and not garment.fill_g  # called a sheet as well
        if self.kinds and garment.kind not in self.kinds and not unfilled:
            return False
        if self.fill and not self.fill[0] <= garment.fill_g <= self.fill[1] and self.called.isdisjoint(bag):
            return False
        return all(
            word in bag or any(_colour_stem(word) == _colour_stem(other) for other in bag) for word in self.words
        )


def _colour_stem(word: str) -> str:
    """A colour without what agrees with its noun: bleu, bleue, bleues; rojo, roja."""
    return word.rstrip("aeos") if len(word) > 3 else word


def find(items: list[Item], roster: Roster, mine: tuple[str, ...]) -> list[Item]:
    """The items with every description of a piece drawn into one. mine: the speaker's own horses."""
    found: list[Item] = []
    at = 0
    while at < len(items):
        end = _run(items, at, roster)
        piece = _described(items, at, end, roster) if end > at else None
        if piece is None:
            found.append(items[at])
            at += 1
            continue
        if len(found) > 1 and found[-1].text == "'s" and not (found[-2].horses or found[-2].means):
            found.append(items[at])  # "Ruth's blanket", or that of a horse that is not here
            at += 1
            continue
        behind = end < len(items) and items[end].has("my") and not items[end].has("article")  # "la capa mía"
        if (behind or (found and found[-1].has("my") and not found[-1].has("my horse"))) and not mine:
            found.append(items[at])  # "my sheet": bed linen, for all the barn knows
            at += 1
            continue
        piece, found = _owned(piece, found, mine)
        if len(found) > 1 and found[-2].piece is not None and (found[-1].has("and") or found[-1].text == ","):
            before_it = found[-2].piece  # "Maple's liner and sheet"
            if not (piece.owners or piece.their or piece.spare):
                piece = replace(piece, owners=before_it.owners, their=before_it.their)
        dressed = len(found) > 1 and found[-2].horses and found[-1].has("in", "wears", "has")
        piece, at = (piece, end) if dressed else _owned_after(piece, items, end)
        raw = piece.said
        found.append(Item(piece.said, raw, piece=piece))
    return found


def _member(item: Item, roster: Roster) -> bool:
    if item.horses and item.sure and not item.pieces:
        return False
    named = item.text in roster.words and not item.has("article", "of", "and", "in", "on", "is")
    return bool(
        item.pieces
        or item.number is not None
        or item.kinds("kind")
        or item.kinds("weight")
        or item.has(*INNER)
        or named
    )


def _run(items: Sequence[Item], at: int, roster: Roster) -> int:
    end = at
    while end < min(len(items), at + LONGEST_RUN):
        joins = items[end].has("of") and end > at and end + 1 < len(items) and items[end + 1].number is not None
        if not joins and not _member(items[end], roster):
            break
        end += 1
    return end


def _described(items: Sequence[Item], at: int, end: int, roster: Roster) -> Piece | None:
    run = items[at:end]
    before = items[at - 1] if at else None
    after = items[end] if end < len(items) else None
    strong = any(i.pieces or i.kinds("kind") or i.has("rug") for i in run)
    fills = {g.fill_g for g in roster.garments.values()}
    numbers = [i.number for i in run if i.number is not None]
    weak = any(i.kinds("weight") or i.has("one", "spare") for i in run) or any(n in fills and n for n in numbers)
    weak = weak or any(i.has("colour") and i.text in roster.words for i in run)  # "tartan's wet"
    weak = weak or any(i.text in roster.nouns and not i.has("place stall", "body") for i in run)
    weak = weak or (
        any(i.text in roster.nouns for i in run)
        and any(i.has("put on", "took off") for i in items[max(0, at - 3) : at])
    )
    starts = (
        (before is None or before.mark)
        and not run[0].has("any adjective")
        and after is not None
        and (after.has("on", "off") or (after.has("is") and end + 1 < len(items) and items[end + 1].has("off")))
    )
    if _by_name(run, before, roster):
        return Piece(" ".join(i.raw for i in run), words=frozenset(word for i in run for word in i.text.split()))
    hers = before is not None and (before.has("her") or before.horse)
    if hers and len(run) == 1 and run[0].text in roster.alone:
        return Piece(run[0].raw, ids=roster.alone[run[0].text])  # "sa rambo" of a rug called la rambo
    said = _only_that_said(items, end) and (before is None or before.mark or before.has("and", "but"))
    if said and len(run) == 1 and run[0].text in roster.alone:
        return Piece(run[0].raw, ids=roster.alone[run[0].text])
    starts = starts or (said and not all(i.kinds("weight") == ["light"] for i in run))
    if not strong and not (weak and (starts or _determined(before)) and _ends(after)):
        return None
    if (
        strong
        and before is not None
        and before.has("is")
        and not before.has("has", "wears")
        and before.text != "'s"
        and len(run) == 1
        and not run[0].pieces
    ):
        return None  # "it is cooler today"
    if not strong and all(i.has("one") for i in run):
        return None
    return _piece(run, numbers, roster)


def _by_name(run: Sequence[Item], before: Item | None, roster: Roster) -> bool:
    """As in "Rusty neck damp" of a piece called rusty-neck: the horse and all the rest of the piece's own name."""
    if before is None or not before.horse:
        return False
    said = {word for i in run for word in i.text.split()}
    return any(roster.bags[g] == said for g in roster.owned.get(before.horses[0], ()))


def _only_that_said(items: Sequence[Item], at: int) -> bool:
    """Whether nothing but a state follows up to the next pause: "medium torn", "tartan is wet"."""
    rest = items[at : next((k for k in range(at, len(items)) if items[k].mark), len(items))]
    says = any(predicate(i) or i.has("strap") for i in rest)
    return says and all(
        predicate(i) or i.has("is", "strap", "broken", "time", "very", "a little", "link") for i in rest
    )


def _determined(before: Item | None) -> bool:
    return before is not None and (
        bool(before.horses)
        or before.has(
            "article",
            "her",
            "all",
            "in",
            "on",
            "off",
            "put on",
            "and",
            "wears",
            "of",
            "for another",
            "instead of",
            "swapped",
            "has",
        )
        or before.text == "'s"
        or before.text == ":"
    )


def _ends(after: Item | None) -> bool:
    return after is None or after.mark or bool(after.means) or bool(after.horses) or after.person


def _piece(run: Sequence[Item], numbers: Sequence[float], roster: Roster) -> Piece:
    # a nickname that is a trade word ("fleece") may as well mean any such piece
    ids = next((i.pieces for i in run if i.pieces and not (i.kinds("kind") or i.kinds("weight") or i.has("rug"))), ())
    kinds = {kind for i in run for kind in i.kinds("kind")}
    weights = [weight for i in run for weight in i.kinds("weight")]
    rug = not kinds and any(i.has("rug") for i in run)
    fill = (numbers[0], numbers[0]) if numbers else WEIGHTS[weights[0]] if weights else None
    if rug or (not kinds and weights):
        kinds = set(RUGS)
    said = " ".join(i.raw for i in run)
    if ids:  # a nickname narrows; what else was said must fit too
        others = [i for i in run if not i.pieces]
        plainly = Piece(said, frozenset(kinds), fill, _bag(others, roster))
        fitting = tuple(g for g in ids if plainly.fits(roster.garments[g], roster.bags[g]))
        return Piece(said, frozenset(kinds), fill, _bag(run, roster), ids=fitting or ids)
    spare = any(i.has("spare") for i in run)
    called = frozenset(i.text for i in run if i.kinds("weight"))
    several = any(i.text.endswith("s") and (i.kinds("kind") or i.has("rug")) for i in run)
    return Piece(
        said,
        frozenset(kinds),
        fill,
        _bag(run, roster),
        spare=spare,
        rug=rug and fill is None,
        called=called,
        several=several,
    )


def _bag(run: Iterable[Item], roster: Roster) -> frozenset[str]:
    """The words that a piece must have among its own names: colours, and what only names tell."""
    kindless = not any(i.kinds("kind") or i.kinds("weight") or i.has("rug") for i in run)
    bare = roster.nouns if kindless else frozenset[str]()
    return frozenset(
        word
        for i in run
        if i.has("colour") or i.text in bare or (i.text in roster.words and not i.means and i.number is None)
        for word in i.text.split()
    )


def _owned(piece: Piece, before: list[Item], mine: tuple[str, ...]) -> tuple[Piece, list[Item]]:
    """Whose it is, from the words before it: those words are taken up."""
    kept = list(before)
    while kept and (kept[-1].has("article", "all") and not kept[-1].has("i")) and not kept[-1].horses:
        if kept[-1].has("all") and not kept[-1].has("article"):
            piece = replace(piece, every=True)
        if kept[-1].has("both"):
            piece = replace(piece, every=True)
        if kept[-1].has("some"):
            piece = replace(piece, some=True)
        kept.pop()
    if len(kept) < len(before):
        return piece, kept
    if kept and kept[-1].has("my"):
        return replace(piece, owners=mine, either=len(mine) > 1), kept[:-1]
    if len(kept) > 1 and kept[-1].text == "'s" and kept[-2].horse:
        return _of(piece, kept, 2)
    if kept and kept[-1].has("her") and not kept[-1].horses:
        return replace(piece, their=True), kept[:-1]
    if kept and kept[-1].horse:
        return _of(piece, kept, 1)
    return piece, kept


def _of(piece: Piece, kept: list[Item], taken: int) -> tuple[Piece, list[Item]]:
    owner = kept[-taken].horses
    return replace(piece, owners=owner, said=f"{kept[-taken].raw} {piece.said}"), kept[:-taken]


def _owned_after(piece: Piece, items: Sequence[Item], at: int) -> tuple[Piece, int]:
    """Whose it is, from "of Maple" or "that Maple had on" behind it."""
    if piece.owners or at >= len(items):
        return piece, at
    if items[at].has("own") and not items[at].has("her"):  # "la 300 suya"
        return replace(piece, their=True), at + 1
    worn = _worn_by(items, at)
    if worn is not None:
        return replace(piece, owners=items[worn].horses), worn + 3
    if items[at].horse and not piece.their:  # "imper Neige trempé"
        after = items[at + 1] if at + 1 < len(items) else None
        if after is None or after.mark or predicate(after) or after.has("is"):
            return replace(piece, owners=items[at].horses), at + 1
    if at + 1 >= len(items) or not items[at].has("of"):
        return piece, at
    place = at + 1
    owners: list[str] = []
    while place < len(items) and items[place].horse:
        owners.extend(items[place].horses)
        if _last_of_list(items, place + 1):  # "a Trueno y Nube"
            place, owners = place + 3, [*owners, *items[place + 2].horses]
            break
        joined = place + 2 < len(items) and items[place + 1].has("and") and items[place + 2].has("of")
        place += 3 if joined and place + 3 < len(items) and items[place + 3].horse else 1
        if not joined:
            break
    return (replace(piece, owners=tuple(owners)), place) if owners else (piece, at)


def _worn_by(items: Sequence[Item], at: int) -> int | None:
    """Where the horse stands in "(the liner) that Misty had on is wet"; None where this is no such tale."""
    place = at if items[at].horse else at + 1
    if place + 3 >= len(items) or not items[place].horse or (place > at and not items[at].has("it", "question")):
        return None
    had, on, then = items[place + 1 : place + 4]
    return place if had.has("has") and on.has("on") and (then.has("is") or predicate(then)) else None


def _last_of_list(items: Sequence[Item], at: int) -> bool:
    """As in "and Nube" with nothing more said of Nube."""
    if at + 1 >= len(items) or not items[at].has("and") or not items[at + 1].horse:
        return False
    after = items[at + 2] if at + 2 < len(items) else None
    return after is None or after.mark or after.has("time", "is") or predicate(after)
