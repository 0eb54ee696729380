"""One piece for another: "swapped her sheet for the heavy", "out of his sheet and into …", "sheet → liner"."""

from collections.abc import Sequence

from bot.words.clothing.change import Change
from bot.words.lookup.items import Item, some_mean
from bot.words.lookup.piece import Piece
from bot.words.thoughts.clauses import Clause

ARROWS = ("→", ">")


def out_and_into(items: Sequence[Item], at: Sequence[int]) -> bool:
    """As in "Bo out of his sheet and into the orange one", "Bo slipped out of his sheet and into …"."""
    first, second = items[at[0] - 1], items[at[1] - 1]
    return second.has("in") and (first.has("outwards") or (first.has("took off") and second.has("for another")))


def from_and_to(items: Sequence[Item], at: Sequence[int]) -> bool:
    """As in "moved Bo from the sheet to the orange one", "Bo: sheet → liner"."""
    if any(i.text in ARROWS for i in items[at[0] + 1 : at[1]]):
        return True
    first, second = items[at[0] - 1], items[at[1] - 1]
    return at[0] > 0 and _source(first) and second.has("for another") and (second.has("toward") or not second.has("of"))


def _source(item: Item) -> bool:
    """As in "from the sheet": what stands behind it came off."""
    return item.has("of") and not item.has("for another", "article")


def swap(clause: Clause, pieces: Sequence[tuple[int, Piece]], change: Change) -> Change:
    """The change, with what came off and what went on; as it is where nobody says which."""
    if len(pieces) == 1:
        k, piece = pieces[0]
        into = next((i for i in reversed(clause.items[:k]) if not i.has("her", "article")), None)
        inside = into is not None and into.has("in")  # "changed Pip and Ned, both in their sheets"
        if inside or some_mean(clause.items[:k], "for another", "wears"):
            change.whole = [piece]
        return change
    turn = next((k for k, _ in pieces[1:] if clause.items[k - 1].has("for another")), 0)
    if len(pieces) > 2 and turn:  # "swapped her liner and sheet for the heavy"
        change.remove, change.add = [p for k, p in pieces if k < turn], [p for k, p in pieces if k >= turn]
        return change
    first, second = pieces[0], pieces[1]
    if first[1].owners and second[1].owners and first[1].owners != second[1].owners:
        return change  # "swapped Pip's medium for Ned's sheet": who wears which, nobody says
    between = clause.items[first[0] : second[0]]
    back = some_mean(between, "instead of") or _source(clause.items[second[0] - 1])  # "into his heavy from the sheet"
    gone, come = (second[1], first[1]) if back else (first[1], second[1])
    change.remove, change.add = [gone], [come]
    return change
