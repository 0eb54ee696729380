"""Items: what the words of a message may stand for, before anybody knows what it says."""

from collections.abc import Callable, Container, Iterable, Sequence
from dataclasses import dataclass, field
from functools import cache, cached_property
from itertools import takewhile
from operator import attrgetter
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from bot.words.lookup.piece import Piece


WETNESS = ("dry", "damp", "wet", "soaked")
DANGER = ("sign shivering", "sign unwell")  # heard however it is told
OF_HORSES = ("sign hot", "sign cold", "sign shivering", "sign sweating")  # said of no rug


@cache
def kinds_of(means: frozenset[str], group: str) -> list[str]:
    """The second words of these meanings in a group."""
    return sorted(m[len(group) + 1 :] for m in means if m.startswith(group + " "))


@dataclass(frozen=True, slots=True)
class Item:
    """One word, phrase, name or mark.

    means: rows of the tables it stands in. horses: whom it names; more than one where two are as near.
    sure: the name itself was written, or a slip of it that is nobody else. pieces: garments of this nickname.
    known: a word of some language. tokens: how many tokens it took.
    """

    text: str
    raw: str
    means: frozenset[str] = field(default=frozenset())
    horses: tuple[str, ...] = ()
    sure: bool = True
    exact: bool = True
    pieces: tuple[str, ...] = ()
    person: bool = False
    mark: bool = False
    number: float | None = None
    clock: bool = False
    known: bool = True
    capital: bool = False
    piece: "Piece | None" = None

    def has(self, *meanings: str) -> bool:
        """Any of these meanings."""
        return not self.means.isdisjoint(meanings) if self.means else False

    def kinds(self, group: str) -> list[str]:
        """The second words of its meanings in a group; of "sign hot" in the group "sign": ["hot"]."""
        return kinds_of(self.means, group) if self.means else []

    @property
    def horse(self) -> bool:
        """Names a horse for certain."""
        return self.sure and len(self.horses) == 1


NOTHING = Item("", "")  # where no word stands
PAUSE = Item(",", ",", mark=True)
MEANS = attrgetter("means")


@dataclass(frozen=True, slots=True)
class Alone:
    """A word that nothing beside it makes another thing, but for the phrases and names that it begins.

    opening: the item where it opens a sentence, where a capital tells nothing. longer, named: the words behind it with
    which it may begin a phrase of the tables, and a name.
    """

    item: Item
    opening: Item
    longer: Container[str]
    named: Container[str]


class Said(tuple[Item, ...]):
    """The words of a message, and where each meaning stands among them: laid out once for all who ask."""

    @cached_property
    def alike(self) -> dict[frozenset[str], list[int]]:
        """Where the words stand that mean the same."""
        alike: dict[frozenset[str], list[int]] = {}
        for at, item in enumerate(self):
            alike.setdefault(item.means, []).append(at)
        return alike

    @cached_property
    def means(self) -> frozenset[str]:
        """Every meaning among them."""
        return frozenset().union(*self.alike)

    def places(self, meanings: frozenset[str]) -> list[int]:
        """Where words of any of these meanings stand."""
        if meanings.isdisjoint(self.means):
            return []
        return sorted([at for means, where in self.alike.items() if not meanings.isdisjoint(means) for at in where])

    def through(self, mends: Iterable[Callable[["Said"], Sequence[Item]]]) -> "Said":
        """What each of these in turn makes of the words; where one changes none, nothing is laid out again."""
        said = self
        for mend in mends:
            mended = Said(mend(said))
            said = said if mended == said else mended
        return said


def meanings_of(items: Iterable[Item]) -> frozenset[str]:
    """Every meaning among these words: what none of them has need not be looked for one by one."""
    return items.means if isinstance(items, Said) else frozenset().union(*map(MEANS, items))


def places(items: Iterable[Item], meanings: frozenset[str]) -> list[int]:
    """Where words of any of these meanings stand; most of a message need not be looked at any closer."""
    if isinstance(items, Said):
        return items.places(meanings)
    return [at for at, item in enumerate(items) if not meanings.isdisjoint(item.means)]


def named_near(items: Sequence[Item], meanings: frozenset[str], *, before: int = 0, behind: int = 0) -> list[int]:
    """Where a horse is named and a word of any of these meanings stands near: at most so many words before, or behind.

    The name's own meanings count. What is only told by such words need not be looked for at the other names.
    """
    near = {k for at in places(items, meanings) for k in range(at - behind, at + before + 1)}
    return [at for at, item in enumerate(items) if item.horses and at in near]


def some_mean(items: Iterable[Item], *meanings: str) -> bool:
    """Whether any of these words has any of these meanings."""
    for item in items:  # noqa: SIM110 - asked oftener than anything else: a generator costs more than the looking
        if not item.means.isdisjoint(meanings):
            return True
    return False


def all_mean(items: Iterable[Item], *meanings: str) -> bool:
    """Whether each of these words has any of these meanings; so it is where there are none."""
    for item in items:  # noqa: SIM110
        if item.means.isdisjoint(meanings):
            return False
    return True


def since_mark(items: Sequence[Item], at: int, reach: int) -> list[Item]:
    """What stands before a place, from the last mark on. reach: words looked at, so that time is linear."""
    return list(takewhile(lambda i: not i.mark, reversed(items[max(0, at - reach) : at])))[::-1]


def names_nothing(item: Item) -> bool:
    """Whether a word names no horse, nobody and no piece, and is neither a number nor a mark."""
    return not (item.horses or item.person or item.piece is not None or item.mark or item.number is not None)


def predicate(item: Item) -> bool:
    """Says how a horse or a piece is."""
    return bool(item.means) and says_how(item.means)


def of_a_horse(item: Item) -> bool:
    """Says how a horse is, or how wet either of the two: no state that only a piece has."""
    return bool(item.means) and says_how(item.means) and not has_state(item.means)


def of_clothes(item: Item) -> bool:
    """Says how wet something is, or a state that only a piece has."""
    return bool(item.means) and (not item.means.isdisjoint(WETNESS) or has_state(item.means))


@cache
def has_state(means: frozenset[str]) -> bool:
    """Whether any of these meanings is a state that only a piece has."""
    return any(m.startswith("state ") for m in means)


@cache
def of_rugs(means: frozenset[str]) -> bool:
    """Whether any of these meanings is that of a rug: by its name, its kind or its weight."""
    return any(m == "rug" or m.startswith(("kind ", "weight ")) for m in means)


@cache
def says_how(means: frozenset[str]) -> bool:
    """Whether any of these meanings says how a horse or a piece is."""
    return any(m.startswith(("sign ", "everyday ", "state ")) or m in WETNESS for m in means)
