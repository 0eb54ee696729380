"""Why a piece came off: "le quité la verde porque venía empapada" is of the green one, not of the horse."""

from collections.abc import Sequence

from bot.words.lookup.gender import of_another_sex
from bot.words.lookup.items import WETNESS, Item
from bot.words.thoughts.clauses import Clause
from bot.words.told.telling import Telling


def came_off_for_it(clause: Clause, telling: Telling, how: Item) -> bool:
    """Whether this word says how the piece was that the thought before took off, and gives that as the reason.

    Not where a pronoun or a part of the body tells of the horse, nor where the word agrees with another noun:
    "le quité la manta porque venía mojado".
    """
    before = telling.heard
    if before is None or not how.has(*WETNESS):
        return False
    taken_up = _taken_up(before, clause)
    if not (clause.joined in ("but", "when") or taken_up):
        return False
    told = _up_to_how(clause.items) if taken_up else clause.items  # "qui était mouillé, et il a froid"
    if any(i.horses or i.piece is not None or i.has("she", "body", "i") for i in told):
        return False
    pieces = before.pieces
    moved = ("took off", "took", "swapped", "off", *(("put on",) if taken_up else ()))
    if len(pieces) != 1 or telling.spoken is None or not before.has(*moved):
        return False
    return not of_another_sex(pieces[0].said, how.text)


def _taken_up(before: Clause, clause: Clause) -> bool:
    """As in "(j'ai retiré à Filou sa 100), qui dégoulinait": the piece stands last before what is told of it."""
    last = next((i for i in reversed(before.items) if not i.mark), None)
    return last is not None and last.piece is not None and clause.items[0].has("relative")


def _up_to_how(items: Sequence[Item]) -> Sequence[Item]:
    return items[: next((k for k, i in enumerate(items) if i.has(*WETNESS)), len(items))]
