"""Horses in a table of few words: "Otto 300, Fig bare", "Otto: stall, heavy, fine", a row for each.

Each row is told in full, so that whoever reads on finds one thought a sentence: "Otto: heavy / Otto: stall, fine".
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import dropwhile, takewhile

from bot.words.clothing.as_described import piece_of
from bot.words.lookup.items import NOTHING, Item, meanings_of, of_clothes, predicate, some_mean
from bot.words.lookup.names import Roster
from bot.words.thoughts.hers import PLACES
from bot.words.thoughts.of_now import NOT_SO, dressed_so, of_now
from bot.words.thoughts.sentences import STOPS
from bot.words.thoughts.under_heading import BULLETS, NEW_LINE, marked, parts

AND, COLON = Item("+", "+", frozenset({"and"})), Item(":", ":", mark=True)
Parts = list[Sequence[Item]]
PAUSES = frozenset(",:-–—/|=")
CELLS = ("/", "|")
TAG = 2  # words that only ask whether it is so: "all right?"
ARROWS = ("→", ">")
BARE = ("bare", "nothing")
CHANGED = ("took off", "put on")


@dataclass(frozen=True, slots=True)
class Row:
    """What is told of one horse. said: as written. worn: its clothes, a part for each. rest: where and how it is."""

    said: Sequence[Item]
    name: Item
    worn: Sequence[Sequence[Item]]
    rest: Sequence[Sequence[Item]]

    @property
    def listed(self) -> bool:
        """As in "Otto: stall, heavy": one row is a table."""
        behind = self.said[self.said.index(self.name) + 1]
        return behind.mark and len(self.worn) + len(self.rest) > 1

    @property
    def plain(self) -> bool:
        """Not in "Otto: stall, heavy, dry": which of the two is dry? Nor in "Otto: liner, heavy off"."""
        rest = [i for part in self.rest for i in part]
        return all(map(_how, rest)) and not (self.worn and any(map(of_clothes, rest)))

    def in_one(self) -> Iterator[Item]:
        """As said; without the lines between cells, "Otto / heavy / torn": what is torn is in the cell before."""
        return (i for i in self.said if not (i.mark and i.text in CELLS))

    def in_full(self) -> Iterator[Item]:
        """Each part with its horse before it, what it wears in one."""
        worn = [i for part in self.worn for i in (AND, *part)][1:]
        for part in filter(None, (worn, *self.rest)):
            yield from (self.name, COLON, *part, NEW_LINE)


def in_rows(items: Sequence[Item], roster: Roster) -> Sequence[Item]:
    """The items with each row of a table told in full; as they are where they are none."""
    rows: list[Row] = []
    rest: list[Item] = []
    for sentence in parts(items, marked(items, STOPS)):
        found = [] if rest else _rows(sentence, roster)
        rows += found
        if rest or (rows and not found and not all(i.mark for i in sentence)):
            rest += sentence
        elif not (rows or of_now(sentence)):
            return items
    table = len(rows) > 1 or any(row.listed for row in rows)
    if not (table and any(row.worn or _says(row, *PLACES) for row in rows)) or _asked(items, rest):
        return items
    if not meanings_of(rest).isdisjoint(NOT_SO) or any(map(of_clothes, rest)):
        return items  # "Otto heavy / Fig sheet / both soaked" tells how they are, not who wears them
    if any(_stall_or_rug(row, roster) for row in rows) and not any(_says(row, "place field") for row in rows):
        return items
    return [i for row in rows for i in (row.in_full() if row.plain else (*row.in_one(), NEW_LINE))] + rest


def _asked(items: Sequence[Item], rest: Sequence[Item]) -> bool:
    """As in "Otto heavy, Fig sheet?", "… ok?"; not where a question of its own stands behind the rows."""
    own = sum(not i.mark for i in rest) > TAG
    return any(i.text == "?" for i in (items[: len(items) - len(rest)] if own else items))


def _stall_or_rug(row: Row, roster: Roster) -> bool:
    """As in "Fig stable", of one that has a stable rug, and no more: where she is, or what she wears?"""
    alone = not row.worn and len(row.rest) == 1 and all(i.has("place stall") for i in row.rest[0])
    return alone and any(g.kind == "stable" and g.horse in row.name.horses for g in roster.garments.values())


def _says(row: Row, *meanings: str) -> bool:
    return any(i.has(*meanings) for part in row.rest for i in part)


def _rows(sentence: Sequence[Item], roster: Roster) -> list[Row]:
    """The rows of this sentence; none where anything else stands in it."""
    words = list(dropwhile(lambda i: i.text in BULLETS, sentence))
    starts = [at for at, item in enumerate(words) if item.horses]
    if starts and starts[0] > 1 and words[starts[0] - 1].text == ":" and _on_now(words[: starts[0]]):
        words, starts = words[starts[0] :], [at - starts[0] for at in starts]  # "Puesto: Canela forro, Moro 100"
    if not starts or starts[0] > 0:
        return []
    rows = []
    for at, end in zip(starts, [*starts[1:], len(words)], strict=True):
        row = _row(words[at:end], roster)
        if row is None:
            return []
        rows.append(row)
    return rows if len(rows) == 1 or all(row.plain for row in rows) else []  # "Otto heavy, Fig sheet soaked"


def _on_now(heading: Sequence[Item]) -> bool:
    """As in "Puesto:"; not "Para esta noche:"."""
    return of_now(heading) and dressed_so(heading) and not some_mean(heading, "ahead")


def _row(said: list[Item], roster: Roster) -> Row | None:
    """The row that these words are; None where they are none."""
    while said[-1].mark or (said[-1].has("and", "article") and not said[-1].pieces):
        said = said[:-1]
        if not said:
            return None
    name = said[0]
    worn: Parts = []
    rest: Parts = []
    arrow = len(said) > 1 and said[1].text in ARROWS  # between two pieces it changes one for the other
    told = said[2 if arrow else 1 :]
    for cell in parts(told, [k for k, i in enumerate(told) if _pauses(i)]):
        before = [NOTHING, *cell]  # "liner an heavy" is no article
        part = [i for k, i in enumerate(cell) if i.pieces or not (_pauses(i) or _leads(i, before[k], roster))]
        place = [i for i in part[:1] if i.has(*PLACES) and not i.has("took off")]  # "fuera la gorda" takes it off
        found = _cell(part[len(place) :], name, roster)
        if found is None:
            return None
        worn += found[0]
        rest += [place, *found[1]] if place else found[1]
    return Row(said, name, worn, rest) if name.horse and (worn or rest) else None


def _cell(words: Sequence[Item], name: Item, roster: Roster) -> tuple[Parts, Parts] | None:
    """What it says that its horse wears, and how it is; None where it says anything else."""
    if len(words) > 1 and words[0].has("in", "wears") and not words[0].has(*PLACES):
        words = words[1:]  # "con la gorda"
    clothes = list(takewhile(lambda i: _describes(i, roster) or i.has("and", "only"), words))
    behind = words[len(clothes) :]
    if clothes and all(_how(i) and not of_clothes(i) for i in behind) and _clothes(clothes, name, roster):
        return [clothes], [behind] if behind else []  # "Otto heavy fine"
    if all(map(_how, words)) or _changed(words, roster):
        return [], [words] if words else []
    return None


def _leads(item: Item, before: Item, roster: Roster) -> bool:
    """As in "con la gorda", "+ sa doublure": the small word before a piece."""
    return item.has("article", "her") and not _describes(before, roster)


def _pauses(item: Item) -> bool:
    return item.mark and item.text in PAUSES


def _how(item: Item) -> bool:
    """Says how or where a horse is, or that it wears nothing."""
    return predicate(item) or item.has(*PLACES, *BARE, "very", "a little")


def _changed(part: Sequence[Item], roster: Roster) -> bool:
    """As in "heavy off", "liner torn": of a piece, but not that it is worn."""
    pieces = [i for i in part if _describes(i, roster)]
    others = [i for i in part if i not in pieces]
    return bool(others) and all(predicate(i) or i.has(*CHANGED) for i in others)


def _describes(item: Item, roster: Roster) -> bool:
    """Whether this may be a word for a piece."""
    if item.mark or predicate(item):
        return False
    trade = item.has("colour", "gram", "rug") or item.kinds("kind") or item.kinds("weight")
    called = item.text in roster.alone or (item.text in roster.words and not item.means)
    return bool(item.pieces or trade or called) or item.number in roster.fills


def _clothes(part: Sequence[Item], name: Item, roster: Roster) -> bool:
    """As in "imper + 100", "forro y gorda": nothing but pieces, of a sort that is only clothing or such as it has."""
    pieces = _joined(part)
    return all(one and all(_describes(i, roster) for i in one) and _has_it(one, name, roster) for one in pieces)


def _joined(part: Sequence[Item]) -> list[list[Item]]:
    """As in "imper + 100": each that is joined."""
    joins = parts(part, [k for k, i in enumerate(part) if i.has("and") and not i.pieces])
    return [[i for i in one if i.pieces or not i.has("and", "only")] for one in joins]


def _has_it(words: Sequence[Item], name: Item, roster: Roster) -> bool:
    """Not in "Otto grey", of one without a grey rug."""
    piece = piece_of(words, [i.number for i in words if i.number is not None], roster)
    kind = any(i.kinds("kind") for i in words)
    return kind or any(roster.garments[g].horse in name.horses for g in roster.fitting(piece))
