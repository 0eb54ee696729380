"""What is said as if it were done, of an hour still to come: "bringing Pip in at 4", "je rentre Filou à 17h"."""

from bot.words.lookup.items import some_mean
from bot.words.thoughts.clauses import Clause

# what a verb that tells of now, or of later where an hour is given, begins with; "j'ai rentré" is over
PRESENT = (
    "bringing", "turning", "taking", "fetching", "leading", "coming", "je rentre", "je sors", "meto", "saco", "entro",
)  # fmt: skip


def to_come(clause: Clause) -> bool:
    """Whether the clause tells of a move in the present, and of when: it is to be done."""
    moves = [k for k, i in enumerate(clause.items) if i.text.startswith(PRESENT)]
    if not moves:
        return False
    behind = clause.items[moves[0] :]
    return any(i.clock or i.number is not None for i in behind) or some_mean(behind, "ahead")
