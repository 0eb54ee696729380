"""The subjects of a clause while its signs are read: which horse, piece or other thing a sign would be told of."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import cast

from bot.words.lookup.items import Item, of_clothes, predicate, some_mean
from bot.words.lookup.piece import Piece
from bot.words.thoughts.around import excepted, neither, not_that_one
from bot.words.thoughts.clauses import NOR, Clause, soft
from bot.words.thoughts.hers import beside, something_of_hers
from bot.words.thoughts.listed import goes_on_list, list_near
from bot.words.told.agreement import goes_on_of_it, takes_up
from bot.words.told.one_to_another import does_something_to
from bot.words.told.pronouns import of_one, the_one
from bot.words.told.telling import Telling, named
from bot.words.told.things import only_whose
from bot.words.told.worn_and_wet import has_it_wet

ALIEN = 9  # other people, other things: too far for any sign
WHERE = ("place stall", "place field", "work")
# words that may turn what is said from one subject to another; beside these only marks and people do
TURNING = frozenset(
    ("not", "relative", "stopped", "and", "no name", "i", "she", "drying", "over", "under", "body", *WHERE)
)


@dataclass(slots=True)
class Reading:
    """A clause while its signs are read: the subjects met so far and what lies between.

    latest: what the last subject was: "horse", "piece", "other", "" for none. gap: unknown words since.
    spent: what was denied was another word. said: a sign was told. open: the list of horses still grows.
    waiting: places of signs said before any horse.
    """

    clause: Clause
    telling: Telling
    horses: list[Item] = field(default_factory=list)
    pieces: list[Piece] = field(default_factory=list)
    latest: str = ""
    gap: int = 0
    denied: bool = False
    spent: bool = False
    said: bool = False
    open: bool = False
    waiting: list[int] = field(default_factory=list)
    others: list[Item] = field(default_factory=list)  # who did something to the horse met last: "Otto kicked Fig"
    items: tuple[Item, ...] = field(init=False)

    def __post_init__(self) -> None:
        """The words of the clause are at hand: each rule looks at them."""
        self.items = self.clause.items


def may_be_told_of(reading: Reading, at: int) -> bool:
    """Whether the horse named at this place is one that signs are told of; what it is instead is noted."""
    items = reading.items
    if only_whose(items, at):
        if reading.latest != "piece":
            reading.latest, reading.gap = "other", 1
        return False
    beside_her = reading.clause.has("beside") and beside(items, at)
    if beside_her and _only_where_it_hangs(reading, at):
        return False
    if something_of_hers(items, at) or (beside_her and not some_mean(items[at + 1 : at + 4], "she")):
        reading.latest, reading.gap = "other", ALIEN  # not in "next to Gus, he's wet"
        return False
    if reading.clause.has("everyone", "all horses") and excepted(items, at):
        return False
    if reading.clause.has("not") and not_that_one(items, at) and not _neither(reading.clause):
        reading.denied = False
        return False
    return True


def _only_where_it_hangs(reading: Reading, at: int) -> bool:
    """As in "Otto's heavy is on the gate by Fig, soaked": whose a piece is, where, and at once how it is."""
    behind = reading.items[at + 1 : at + 4]
    if reading.latest != "piece" or not behind or behind[0].text != ",":
        return False
    how = next((i for i in behind[1:] if not i.has("time", "link", "very") or of_clothes(i)), behind[0])
    return of_clothes(how)


def _neither(clause: Clause) -> bool:
    return clause.has("not", "neither") and neither(clause.items)


def _nor(items: Sequence[Item], at: int) -> bool:
    """As in "ni el Lucero (está sudado)", "ni la gorda (está seca)": a word of its own that denies what follows."""
    before = next((i for i in reversed(items[max(0, at - 2) : at]) if not i.has("article") or i.has("not")), None)
    return before is not None and before.text in NOR


def meet_horse(reading: Reading, at: int) -> None:
    """The horse at this place is whom the next sign is told of, alone or with those listed before it."""
    items = reading.items
    if not reading.open or not goes_on_list(items, at):
        small = ("not", "is", "article", "link", "polite", "it")  # "no está la Perla sudada"; not "it's not only Pip"
        reading.others = [] if reading.said else list(does_something_to(items, at))
        if reading.denied and not reading.waiting:
            reading.denied = all(i.has(*small) and not i.has("only") for i in items[:at])
        reading.horses = []
    reading.denied = reading.denied or _neither(reading.clause) or _nor(items, at)
    reading.horses.append(items[at])
    reading.open, reading.latest, reading.gap, reading.pieces = True, "horse", 0, []


def _itself_is(items: Sequence[Item], at: int) -> bool:
    """Whether a stall or a field is what the clause tells of: "the field is soaked", said first."""
    if not items[at].has(*WHERE) or items[at].has("in"):
        return False
    first = all(i.mark or (i.has("article", "her", "link") and not i.has("in")) for i in items[:at])
    then = items[at + 1] if at + 1 < len(items) else None
    return first and then is not None and (then.has("is") or predicate(then))  # "manège inondé"


def _begins_another(reading: Reading, at: int) -> bool:
    """Whether another thing begins behind a pause: "…, the water in the troughs was frozen"."""
    items = reading.items
    opens = at > 1 and items[at - 1].has("article") and (items[at - 2].mark or items[at - 2].has("and"))
    if not opens or soft(items[at]) or items[at].has("a horse", "first"):
        return False
    return items[at].has("mass", "sky") or reading.latest == "piece" or not items[at].means


def meet_piece(reading: Reading, at: int) -> None:
    """The piece at this place is what the next state is told of."""
    items = reading.items
    before = items[at - 1] if at else None
    worn = before is not None and before.has("under", "in", "with", "has", "wears")
    if reading.latest == "horse" and worn and not has_it_wet(items, at):
        return
    if reading.latest == "piece" and _lies_over_or_under(items, at):
        return
    if reading.latest == "" and before is not None and before.has("wears", "under") and _how_she_is(items, at):
        return
    piece = cast("Piece", items[at].piece)
    joined = (
        reading.latest == "piece"
        and not reading.gap
        and before is not None
        and (before.has("and") or before.text == ",")
    )
    reading.pieces = [*reading.pieces, piece] if joined else [piece]
    reading.latest, reading.gap = "piece", 0
    if not reading.open:
        reading.denied = _nor(items, at)


def _how_she_is(items: Sequence[Item], at: int) -> bool:
    """As in "(tenía frío pero) con la gorda ya está bien": what is said behind the piece is said of who wears it."""
    owned = bool(cast("Piece", items[at].piece).owners)
    how = next((i for i in items[at + 1 :] if predicate(i)), None)
    return not owned and how is not None and not of_clothes(how) and not any(i.mark for i in items[at:])


def _lies_over_or_under(items: Sequence[Item], at: int) -> bool:
    """As in "the liner under her sheet is damp": the sheet only tells where the liner is."""
    before = next(
        (i for i in reversed(items[:at]) if not i.has("article", "her", "of") or i.has("over", "under")), None
    )
    return before is not None and before.has("over", "under") and not before.has("and")


def _answers(items: Sequence[Item], at: int) -> bool:
    """As in "no he's wet", "no, está mojado": an answer to what was said or asked, that denies nothing behind it."""
    then = items[at + 1] if at + 1 < len(items) else None
    if then is None or not items[at].has("no"):
        return False
    opens = at == 0 or items[at - 1].mark
    return (opens and then.text == ",") or (then.has("subject") and then.has("she", "it") and not then.has("article"))


def _meet_mark(reading: Reading, at: int) -> None:
    item = reading.items[at]
    denies = at > 0 and reading.items[at - 1].has("not")
    if denies and item.text in ",.:" and not (reading.waiting and reading.items[at - 1].has("not behind")):
        reading.denied = False  # "no he's not, he's sweating"; but "elle tremble plus, la Perle"
    if item.text == "," and reading.latest == "piece" and reading.gap < ALIEN:
        reading.gap = 0  # "her sheet leaks at the seam, soaked"
    elif reading.spent:  # "no better, still shivering"
        reading.denied = reading.spent = False


def _whose_work(items: Sequence[Item], at: int) -> bool:
    """As in "sorti du cours des ados ruisselant de sueur": whose lesson it was."""
    of = at - 1
    while of > 0 and items[of].has("article", "her") and not items[of].has("of"):
        of -= 1
    return of > 0 and items[of].has("of") and items[of - 1].has("work", "worked")


def _the_same_person(items: Sequence[Item], at: int) -> bool:
    """As in "chez ma sœur": "my" and who it is are one."""
    return at > 0 and items[at].has("kin") and items[at - 1].has("my")


def _goes_on_of_it(reading: Reading, at: int) -> bool:
    """Whether "and is" goes on about the horse or piece that opens the clause, whatever was told of it before."""
    items = reading.items
    opens = next(
        (i for i in items if not (i.mark or (i.has("article", "polite", "and", "but") and not i.horses))), None
    )
    verb = at + 1 < len(items) and items[at + 1].has("is", "was")
    how = verb and any(predicate(i) for i in items[at + 2 : at + 3])  # "y está húmedo"
    verb = verb and (how or not items[at + 1].has("article"))
    if not verb or opens is None or reading.gap >= ALIEN:
        return False
    return bool(opens.horses if reading.latest == "horse" else opens.piece and reading.latest == "piece")


def _of_her(items: Sequence[Item], at: int) -> bool:
    """Whether the pronoun at this place, behind a piece, is of her who wears it: "la grise dessus elle grelotte"."""
    return _alive(items, at) or items[at - 1].mark or items[at - 1].has("and")


def _takes_up_horse(reading: Reading, at: int) -> bool:
    """As in "Balthazar fume, il est trempé": behind a pause, of one horse and a verb that no table knows."""
    items = reading.items
    one = reading.latest == "horse" and len(reading.horses) == 1 and reading.gap == 1
    opens = at > 2 and items[at - 1].text == "," and bool(items[at - 3].horses or items[at - 3].has("is", "very"))
    return one and opens


def _alive(items: Sequence[Item], at: int) -> bool:
    """Whether what follows the pronoun at this place is what only animals do."""
    return at + 1 < len(items) and bool(items[at + 1].kinds("sign")) and not items[at + 1].has("sign rubbed")


def meet_other_word(reading: Reading, at: int) -> None:
    """What a word between subject and sign changes: it denies, leads away, or names somebody else."""
    item = reading.items[at]
    if item.mark:
        _meet_mark(reading, at)
    elif (item.person or not TURNING.isdisjoint(item.means)) and _turns(reading, at):
        pass
    elif _begins_another(reading, at):
        _lead_away(reading)
    elif not soft(item) and not item.has("brought in", "turned out", "brought", "bare", "worked"):
        reading.gap, reading.open, reading.spent = reading.gap + 1, False, reading.denied
        reading.latest = reading.latest or "other"


def _lead_away(reading: Reading) -> None:
    reading.latest, reading.gap, reading.open = "other", reading.gap + ALIEN, False


def _turns(reading: Reading, at: int) -> bool:
    """Whether a word that may turn what is said does so at this place; how is noted."""
    items = reading.items
    item, before = items[at], items[at - 1] if at else None
    if item.has("not", "stopped") and _answers(items, at):
        pass  # "(is he sweating?) no he's just wet"
    elif item.has("not", "stopped"):
        still = reading.denied and item.has("stopped") and not item.has("not")  # "has not stopped shivering"
        reading.denied, reading.spent = not still, False
    elif (
        item.has("relative") and before is not None and before.mark and len(reading.horses) > 1 and items[at - 2].horses
    ):
        reading.horses = list_near(items, at)  # "Pip was calling for Maple, who's shivering"
    elif item.has("and") and _goes_on_of_it(reading, at):
        reading.gap = 0  # "Otto rolled and got soaked"
    elif item.has("no name"):  # it may be a horse after all: what follows is told of nobody
        _lead_away(reading)
    elif item.has("i") or item.person:
        _meet_somebody(reading, at)
    elif reading.latest == "piece" and _turns_from_piece(reading, at):
        pass
    elif len(reading.horses) > 1 and before is not None and before.mark and of_one(items, at):
        reading.horses, reading.latest, reading.gap = list(the_one(item, reading.horses)), "horse", 0
    elif item.has("she") and item.has("subject") and _takes_up_horse(reading, at):
        reading.gap = 0
    elif _itself_is(items, at):
        _lead_away(reading)  # "la manguera está congelada"
    else:
        return False
    return True


def _meet_somebody(reading: Reading, at: int) -> None:
    """The speaker or somebody else at this place is no horse, and what follows may be told of them."""
    items, item = reading.items, reading.items[at]
    behind = items[at + 1] if at + 1 < len(items) else item
    if behind.has("said", "guess", "state found") or _whose_work(items, at) or _the_same_person(items, at):
        return
    if at and items[at - 1].has("at somebody's"):
        return  # "emporté la 300 chez moi pour la laver"
    if reading.latest == "piece" and item.has("subject") and behind.kinds("state"):
        return  # "the zebra sheet I put in the wash"
    reading.latest = "other" if reading.latest in ("", "other") else reading.latest
    reading.gap += ALIEN


def _turns_from_piece(reading: Reading, at: int) -> bool:
    """Whether the word at this place, behind a piece, goes on of the piece or turns to who wears it; how is noted."""
    items, item = reading.items, reading.items[at]
    she = item.has("she")
    if she and not _alive(items, at) and takes_up(items, at):
        pass  # "la verte, elle, est sèche"
    elif she and goes_on_of_it(items, at, reading.pieces[-1]):
        reading.gap = 0
    elif item.has("drying"):
        pass  # "Juniper's liner is on the rack still wet"
    elif item.has("over", "under") and not reading.gap:
        pass  # "the sheet over it is wet"
    elif she and at and reading.gap < ALIEN and _of_her(items, at):
        owners = [name for piece in reading.pieces for name in piece.owners]
        reading.horses = list(named(owners)) or list(reading.telling.who)
        reading.latest, reading.gap, reading.open = "horse", 0, False
    elif item.has("body") and at and items[at - 1].has("and"):
        reading.latest, reading.gap = "other", reading.gap + ALIEN  # "his sheet wet and neck damp"
    else:
        return False
    return True
