"""What is said as if it were done, of an hour still to come: "bringing Pip in at 4", "je rentre Filou à 17h"."""

from itertools import pairwise

from bot.words.lookup.items import some_mean
from bot.words.thoughts.clauses import Clause


def to_come(clause: Clause) -> bool:
    """Whether the clause tells of a move in the present, and of when: it is to be done."""
    moves = [k for k, i in enumerate(clause.items) if i.has("moves now") and "ó" not in i.raw]  # "sacó a"
    if not moves:
        return False
    behind = clause.items[moves[0] :]
    at_an_hour = any(i.has("hour") and then.number is not None for i, then in pairwise(behind))
    return at_an_hour or any(i.clock for i in behind) or some_mean(behind, "ahead")
