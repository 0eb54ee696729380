"""Why a piece came off: "le quité la verde porque venía empapada" is of the green one, not of the horse."""

from bot.words.clauses import Clause
from bot.words.items import WETNESS, Item
from bot.words.telling import Telling

ENDINGS = {"a": "o", "o": "a"}  # of Spanish words, as they agree with what they are said of


def came_off_for_it(clause: Clause, telling: Telling, how: Item) -> bool:
    """Whether this word says how the piece was that the thought before took off, and gives that as the reason.

    Not where a pronoun or a part of the body tells of the horse, nor where the word agrees with another noun:
    "le quité la manta porque venía mojado".
    """
    before = telling.heard
    if before is None or clause.joined not in ("but", "when") or not how.has(*WETNESS):
        return False
    if clause.horses or clause.pieces or clause.has("she", "body", "i"):
        return False
    pieces = before.pieces
    if len(pieces) != 1 or telling.spoken is None or not before.has("took off", "took", "swapped", "off"):
        return False
    return not _of_another_sex(pieces[0].said, how.text)


def _of_another_sex(noun: str, said: str) -> bool:
    """As in "la manta … mojado": one ends as feminine words do, the other as masculine ones."""
    return ENDINGS.get(noun.rstrip("s")[-1:].casefold()) == said.rstrip("s")[-1:]
