"""What somebody mends while speaking: "Misty's sheet is wet, no, her liner" is of the liner."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.lookup.items import Item
from bot.words.lookup.piece import Piece
from bot.words.mending.mending import TAKES_BACK, mend_each
from bot.words.thoughts.clauses import soft

REACH = 12  # words between what was said and what was meant
ENDS = ".!…\n,;"
OPENS = TAKES_BACK | {"not"}
SMALL = ("polite", "time", "no", "i mean", "second thought", "i", "article", "in")


def mended(items: Sequence[Item]) -> list[Item]:
    """The items as they were meant: the piece that was said first gives way to the one said after "no, …"."""
    return mend_each(items, OPENS, _mend)


def _mend(items: Sequence[Item], at: int, kept: list[Item]) -> int:
    denied = _not_that_piece(items, at)
    if denied and _worn_last(kept):
        return denied
    after = _second_thought(items, at)
    last = _last_piece(kept) if after else None
    if last is None:
        return at
    if items[after].has("instead of"):  # "on over… no, instead of her sheet"
        while kept[-1].mark or kept[-1].has("over"):
            kept.pop()
        return after
    kept[last] = _meant(kept[last], items[after])
    return after + (1 if items[after].piece is not None else 2)


def _not_that_piece(items: Sequence[Item], at: int) -> int:
    """Behind "not the medium" with nothing more said of the medium; 0 where there is no such thing."""
    place = at + 1
    while place < min(len(items), at + 3) and items[place].piece is None and items[place].has("article", "of", "in"):
        place += 1
    if not _denies(items, at) or place >= len(items) or items[place].piece is None:
        return 0
    return place + 1 if place + 1 >= len(items) or _ends(items[place + 1]) else 0


def _denies(items: Sequence[Item], at: int) -> bool:
    """As in "not the medium", "et non la 300"; French "non" by itself says that what was said is not so."""
    joined = at > 0 and items[at - 1].has("and")
    return items[at].has("not") and (joined or not items[at].has("no to that"))


def _worn_last(kept: Sequence[Item]) -> bool:
    """Whether a piece was said before that is worn; not as in "n'a plus sa 200 ni sa doublure"."""
    last = _last_piece(kept)
    return last is not None and not (last and kept[last - 1].has("without"))


def _last_piece(kept: Sequence[Item]) -> int | None:
    return next((k for k in range(len(kept) - 1, max(len(kept) - REACH, -1), -1) if kept[k].piece is not None), None)


def _second_thought(items: Sequence[Item], at: int) -> int:
    """Where what was meant stands, after "no" or "I mean"; 0 where nobody mends anything."""
    paused = at > 0 and items[at - 1].mark
    opens = at > 0 and items[at].has("no") and (paused or not _denies(items, at))
    if not (opens or items[at].has("i mean", "second thought") or (paused and items[at].has("undo"))):
        return 0
    if items[at].has("is") and at > 0 and items[at - 1].has("but"):
        return 0  # "mis la bleue à Lune mais c'est celle de Max"
    meant = at + 1
    while meant < min(len(items), at + REACH) and _passed(items[meant]):
        meant += 1
    if meant >= len(items) or _passed(items[meant]):
        return 0
    if items[meant].has("instead of"):
        return meant
    piece = items[meant].piece
    if piece is not None and meant == at + 1 and items[at].text == "no" and not (piece.their or piece.owners):
        return 0  # "in his sheet, no liner"
    whose = bool(items[meant].horses) and meant + 1 < len(items) and items[meant + 1].text == "'s"
    if whose and meant == at + 1 and _denies(items, at):
        return 0  # "Misty's sheet is wet, not Pip's"
    end = _behind_meant(items, meant + (2 if whose else 1))
    return meant if (piece is not None or whose) and (end >= len(items) or _ends(items[end])) else 0


def _behind_meant(items: Sequence[Item], at: int) -> int:
    """Behind what says no more than which: "(no, Misty's) is", "(no, her liner) not the sheet"."""
    verb = at < len(items) and items[at].has("is", "was") and not items[at].has("on")
    if verb and (at + 1 >= len(items) or _ends(items[at + 1])):
        return at + 1
    return _not_that_piece(items, at) or at if at < len(items) else at


def _ends(item: Item) -> bool:
    """A pause, or a face that somebody pulls: "ay no, la granate 🤦"."""
    return item.text in ENDS or not (item.text.isascii() or any(letter.isalnum() for letter in item.text))


def _passed(item: Item) -> bool:
    said = item.piece is not None or item.horses or item.has("instead of")
    return not said and (item.text in (",", "…", "-") or item.has(*SMALL) or soft(item))


def _as_owned(piece: Piece, before: Piece) -> Piece:
    """The piece, of whom the one before was, told in the same place: "le puse a Luna la gorda, no, la fina"."""
    return piece._replace(owners=before.owners, led=before.led)


def _meant(first: Item, second: Item) -> Item:
    """The second piece, or the first one of the other horse."""
    if first.piece is None or second.piece is None:
        return first if first.piece is None else replace(first, piece=first.piece._replace(owners=second.horses))
    its_own = second.piece.owners or second.piece.spare
    return second if its_own else replace(second, piece=_as_owned(second.piece, first.piece))
