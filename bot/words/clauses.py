"""A clause: one thought of a sentence, and whether it is a report at all."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from itertools import pairwise

from bot.events import STYLES
from bot.words.items import Item, places, predicate, says_how
from bot.words.piece import Piece

SOFT = frozenset((
    "link", "is", "was", "article", "time", "hour", "polite", "a little", "very", "she", "her", "it", "and",
    "but", "not", "stopped", "not any more", "in", "on", "of", "under", "too", "said", "body", "nearly",
    "all", "both", "after", "work", "no", "i mean", "place stall", "place field", "weather", "everyone",
    "all horses", "the rest",
    "relative", "felt",
))  # fmt: skip
BLOCKS = ("plan", "habit", "yesterday", "long ago", "guess", "if", "idiom")
CLIPS = frozenset(f"style {style}" for style in STYLES)
BLOCKING = frozenset((*BLOCKS, "weekday"))
BOTH = frozenset(("both",))
LIKENS = ("como", "comme", "like", "as")
PAIRED = ("body", "her", "my", "of", "a horse", "visitor", "animal", "strap")  # what there are two of, or whose
MAY_BLOCK = BLOCKING | {"had"}


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

    @property
    def blocked(self) -> bool:
        """A plan, a condition, a habit, an old story: not a report."""
        if self.means.isdisjoint(MAY_BLOCK) and not self.of_its_youth:
            return False
        blocking = [(k, self.items[k]) for k in places(self.items, BLOCKING)]
        told, said = _told_before(self.items), said_by(self.items)
        grave = _danger_told(self.items)
        return (
            _supposed(self.items)
            or self.of_its_youth
            or any(
                not i.horses
                and not (k > told and i.has("idiom") and not i.has(*BLOCKS[:-1]))
                and not (i.has("habit") and i.has("had") and _did_something(self.items[k + 1 :]))
                and not (k >= told and i.has("habit") and k == len(self.items) - 1)  # "Moose was comfy as ever"
                and not (i.has("too") and _the_same(self.items, k))  # "Canela sudada y Lola igual"
                and not (i.has("idiom") and k >= told > 1 and i.text.split()[0] in LIKENS)  # "sudada como un pollo"
                and not (k > grave and i.has("plan", "guess") and not i.has("if"))  # "Storm is shivering somebody go"
                and not (k < said and not i.has("if", "guess", "plan"))  # "the girl from Wednesday says Noisette is …"
                and not (i.has("yesterday", "long ago") and _compared(self.items, k))
                and not (i.has("time") and i.has("plan") and self.has("was"))  # "tout à l'heure", of what was
                and not (i.has("polite") and _told_of_the_next(i, self.items[k + 1 : k + 6]))  # "please, Pip is …"
                and not (i.has("idiom") and predicate(i) and _said_of_a_horse(self.items, k))  # "Pip is cold out there"
                and not (
                    i.has("yesterday") and k > told and self.items[k - 1].has("of")
                )  # "wet from the rain of yesterday"
                for k, i in blocking
            )
        )

    @property
    def of_its_youth(self) -> bool:
        """As in "quand elle était pouliche", "petite, (Perle avait …)": long ago, whatever is told beside it."""
        if not self.has("young"):
            return False
        if all(i.has("young") or soft(i) for i in self.items):
            return True
        if not (self.joined == "when" or self.has("when")):
            return False
        said = [i for i in self.items if not i.has("very", "article", "time") or i.has("was", "young")]
        return any(one.has("was") and then.has("young") for one, then in pairwise(said))

    @property
    def only_yesterday(self) -> bool:
        """Blocked by nothing but having been yesterday."""
        if not self.has("yesterday"):
            return False
        return not any(not self.items[k].has("yesterday") for k in places(self.items, BLOCKING))


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


def _told_before(items: Sequence[Item]) -> int:
    """The place behind which a saying changes nothing: "her sheet is dry, hung by the boiler"."""
    said = next((k for k, i in enumerate(items) if predicate(i)), len(items))
    moved = _moved_before(items)
    if moved < said:
        return moved + 1
    return said + 1 if any(is_subject(i) for i in items[:said]) else len(items)


def _moved_before(items: Sequence[Item]) -> int:
    """Where a piece of a horse was put on or taken off: "le quité la fina a Moro hace un calor"; else past the end."""
    verb = next((k for k, i in enumerate(items) if i.has("put on", "took off", "swapped")), len(items))
    moved = next((k for k in range(verb + 1, len(items)) if items[k].piece is not None), len(items))
    return moved if any(i.horses for i in items) else len(items)


def _did_something(behind: Sequence[Item]) -> bool:
    """As in "did two lessons", "did Pip like it said", "did Pip and Ned", "did a trace clip"; not "did Pip sweat"."""
    horses = any(i.horses for i in behind) and all(i.horses or i.has("i") or only_small(i) for i in behind)
    verb = any(i.has("is", "has", "was") and i.text != "'s" for i in behind)
    clip = any(i.kinds("style") for i in behind) and not verb
    counted = any(i.number is not None or i.has("one") for i in behind) and all(map(only_small, behind))  # "did one"
    return horses or clip or counted or any(i.has("work", "done") for i in behind)


def _told_of_the_next(opens: Item, behind: Sequence[Item]) -> bool:
    """Whether a horse follows at once, then a verb, and how it is: no wish; but "si Moro suda" supposes it."""
    if opens.has("if") and not (behind and behind[0].mark):
        return False
    words = [i for i in behind if i.horses or not (i.mark or i.has("article", "link", "polite")) or predicate(i)]
    is_so = len(words) > 1 and bool(words[0].horses) and (words[1].has("is") or bool(words[1].kinds("sign")))
    return is_so and any(predicate(i) for i in words[1:3])


def _said_of_a_horse(items: Sequence[Item], at: int) -> bool:
    """Whether a horse, or "he", stands before this place with nothing but "is" between: "Pip's", "pips"."""
    before = [i for i in items[:at] if not i.has("is", "very", "a little") or i.has("she")]
    said = len(before) < at or (at > 0 and not items[at - 1].exact and items[at - 1].text.endswith("s"))
    return bool(before) and said and bool(before[-1].horses or before[-1].has("she"))


def _the_same(items: Sequence[Item], at: int) -> bool:
    """Whether a word that may be "perhaps" or "the same" ends a thought that is else only horses: the same of them."""
    before = [i for i in items[:at] if not (i.mark or i.has("and", "article", "time", "but"))]
    return bool(before) and all(i.horses for i in before) and all(i.mark or i.has("polite") for i in items[at + 1 :])


def _danger_told(items: Sequence[Item]) -> int:
    """The place where a horse named before is said to shiver or to be ill; behind the last where none is."""
    named = next((k for k, i in enumerate(items) if i.horses), len(items))
    grave = (k for k in range(named, len(items)) if items[k].has("sign shivering", "sign unwell"))
    return next(grave, len(items))


def said_by(items: Sequence[Item]) -> int:
    """The place of "says that" right before a horse: what stands before it tells only who says so; 0 without."""
    for k, item in enumerate(items[:-1]):
        if items[k + 1].horses and (
            item.has("said") or (item.has("relative") and any(i.has("said") for i in items[:k]))
        ):
            return 0 if any(predicate(i) for i in items[:k]) else k  # "una madre de la clase me dice que Xana …"
    return 0


def _compared(items: Sequence[Item], at: int) -> bool:
    """As in "tonte chasse comme la dernière fois", told at the end: it dates nothing."""
    ends = all(i.mark or i.has("polite") for i in items[at + 1 : at + 2])
    return ends and at > 1 and items[at - 1].has("compares") and any(not soft(i) for i in items[: at - 1])


def _supposed(items: Sequence[Item]) -> bool:
    """As in "Had Juno been sweating, she would have said so"."""
    if len(items) < 3:
        return False
    return items[0].has("had") and bool(items[1].horses or items[1].has("she")) and items[2].text == "been"


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
