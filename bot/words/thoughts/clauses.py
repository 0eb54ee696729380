"""A clause: one thought of a sentence."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from bot.events import STYLES
from bot.words.lookup.items import Item, places, predicate, says_how, some_mean
from bot.words.lookup.piece import Piece

SOFT = frozenset((
    "link", "is", "was", "article", "time", "hour", "polite", "a little", "very", "she", "her", "it", "and",
    "but", "not", "stopped", "not any more", "in", "on", "of", "under", "too", "said", "body", "nearly",
    "all", "both", "after", "work", "no", "i mean", "place stall", "place field", "weather", "everyone",
    "all horses", "the rest",
    "relative", "felt", "part way",
))  # fmt: skip
CLIPS = frozenset(f"style {style}" for style in STYLES)
NOR = ("ni", "neither", "nor")  # before each of several: it is so of none
BOTH = frozenset(("both",))
PAIRED = ("body", "her", "my", "of", "a horse", "visitor", "animal", "strap")  # what there are two of, or whose


@dataclass(frozen=True, slots=True)
class Clause:
    """One thought. joined: how it follows the one before ("", ",", "and", "but", "when", "if").

    means: every meaning of every item. horses: the items that name one. pieces: of clothing. told: how one of them is,
    was said.
    """

    items: tuple[Item, ...]
    joined: str
    means: frozenset[str]
    horses: tuple[Item, ...]
    pieces: tuple[Piece, ...]
    told: bool

    def has(self, *meanings: str) -> bool:
        """Any item with any of these meanings."""
        return not self.means.isdisjoint(meanings)


@dataclass(slots=True)
class Thought:
    """A clause while its words are gathered: what stands in it so far, so that nobody looks through it at each word.

    told: how a horse or a piece is, was said. spoken: there is more than marks.
    """

    items: list[Item] = field(default_factory=list)
    means: set[str] = field(default_factory=set)
    horses: list[Item] = field(default_factory=list)
    pieces: list[Piece] = field(default_factory=list)
    told: bool = False
    spoken: bool = False

    def add(self, item: Item) -> None:
        """One more word."""
        self.items.append(item)
        if item.mark:
            return
        self.spoken = True
        if item.horses:
            self.horses.append(item)
        if item.piece is not None:
            self.pieces.append(item.piece)
        if item.means:
            self.means |= item.means
            self.told = self.told or says_how(item.means)

    def has(self, *meanings: str) -> bool:
        """Any item with any of these meanings."""
        return not self.means.isdisjoint(meanings)

    @property
    def of_something(self) -> bool:
        """A horse or a piece stands in it."""
        return bool(self.horses or self.pieces)

    def clause(self, joined: str) -> Clause:
        """The clause, all its words gathered."""
        horses, pieces = tuple(self.horses), tuple(self.pieces)
        return Clause(tuple(self.items), joined, frozenset(self.means), horses, pieces, self.told)


def gathered(items: Iterable[Item]) -> Thought:
    """The thought of these words."""
    thought = Thought()
    for item in items:
        thought.add(item)
    return thought


def said_by(items: Sequence[Item]) -> int:
    """The place of "says that" right before a horse: what stands before it tells only who says so; 0 without."""
    for k, item in enumerate(items[:-1]):
        if items[k + 1].horses and (item.has("said") or (item.has("relative") and some_mean(items[:k], "said"))):
            return 0 if any(predicate(i) for i in items[:k]) else k  # "una madre de la clase me dice que Xana …"
    return 0


def soft(item: Item) -> bool:
    """Changes nothing about whose fact it is."""
    return item.mark or item.clock or item.number is not None or not item.means.isdisjoint(SOFT)


def only_small(item: Item) -> bool:
    """As in "Dolly and Biscuit", "Dolly that is": a word that tells nothing more of the horse named."""
    return (soft(item) or item.has("not any more")) and not predicate(item) and item.piece is None


def of_both(clause: Clause) -> bool:
    """As in "both in now", "stripped them both": two horses, and nothing that there are two of ("both ears cold")."""
    if not clause.has("both"):
        return False
    behind = (clause.items[k + 1 : k + 2] for k in places(clause.items, BOTH))
    return any(not then or then[0].mark or (then[0].means and not then[0].has(*PAIRED)) for then in behind)


def is_subject(item: Item) -> bool:
    """A horse or a piece: what something may be said of."""
    return bool(item.horses) or item.piece is not None
