"""Several pieces told of at once: "put Pip's liner and his sheet in the wash", "can't find his liner or sheet"."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import takewhile

from bot.words.lookup.items import NOTHING, Item, places

PUT, LISTED = frozenset(("put on",)), ("and", "article", "her")
MISSING, OR = frozenset(("state missing",)), ("or", "nor", "o", "ni", "ou")
AND = frozenset(("and",))
NEAR = 16  # words of a list
INTO = ("in ", "into ", "to ")  # English: "le puse la gorda, el forro está en la lavadora" tells of two
FEW = 2


def pieces_told_at_once(items: Sequence[Item]) -> Sequence[Item]:
    """The items without the "put" of a list that goes in the wash, and with "and" for the "or" of what is missing."""
    put = {at for at in places(items, PUT) if _into_the_wash(items[at + 1 : at + NEAR])}
    found = [item for at, item in enumerate(items) if at not in put] if put else items
    missing = places(found, MISSING)
    nor = {k for at in missing for k in range(at + 1, min(at + NEAR, len(found))) if _missing_too(found, k)}
    return [replace(item, means=AND) if at in nor else item for at, item in enumerate(found)] if nor else found


def _into_the_wash(rest: Sequence[Item]) -> bool:
    listed = list(takewhile(lambda i: i.piece is not None or i.text == "," or i.has(*LISTED), rest))
    then = rest[len(listed)] if len(listed) < len(rest) else NOTHING
    return sum(i.piece is not None for i in listed) >= FEW and then.has("state washing") and then.text.startswith(INTO)


def _missing_too(items: Sequence[Item], at: int) -> bool:
    """As in "no encuentro el forro ni la media": neither of the two."""
    behind = [i for i in items[at + 1 : at + 3] if not i.has("article", "her")]
    return items[at].text in OR and items[at - 1].piece is not None and bool(behind) and behind[0].piece is not None
