"""Something of the speaker's, and what is told of it by its colour: "mon gant ? Le noir est troué" is no rug's hole."""

from collections.abc import Sequence

from bot.words.heard.colours import COLOURS
from bot.words.items import Item, places
from bot.words.sentences import REACH
from bot.words.tokens import words

MINE = frozenset(("my", "i"))
SAID_MINE = MINE | {"idiom"}  # "mon imper", of the table
BETWEEN = 2  # words between "my" and what is mine: "my left glove"
MY = ("my", "our", "mon", "ma", "mes", "mi", "mis")
THAT_ONE = frozenset(("one", "ones", "l'", "la", "le", "les", "el", "lo", "los", "las"))


def without_my_things(items: Sequence[Item]) -> list[Item]:
    """The items, where what a colour alone tells of is the speaker's own thing, spoken of last, and no garment."""
    found = list(items)
    for at in places(items, MINE):
        if not _my_thing(items, at):
            continue
        for k in range(at + 1, min(at + REACH, len(items))):
            if items[k].horses or (items[k].piece is not None and not _by_colour(items[k])):
                break
            if items[k].piece is not None:
                found[k] = Item(items[k].text, items[k].raw)
    return found


def speakers_thing(items: Sequence[Item]) -> bool:
    """Whether something of the speaker's is told of: "ma selle", "my left glove", "mon imper"."""
    return any(_my_thing(items, at) for at in places(items, SAID_MINE))


def _my_thing(items: Sequence[Item], at: int) -> bool:
    """As in "my left glove", "mes gants": no horse, no garment, nobody of the family."""
    if not items[at].has("my"):  # "my gloves", of the table; not "ma mère dit que …"
        told = at + 1 < len(items) and items[at + 1].has("said")
        return " " in items[at].text and items[at].text.split()[0] in MY and not told
    for item in items[at + 1 : at + 2 + BETWEEN]:
        if item.mark or item.horses or item.piece is not None or item.person:
            return False
        if not item.means or item.has("idiom"):
            return True
    return False


def _by_colour(item: Item) -> bool:
    """Told by nothing but its colour: "la noire", "the blue one"."""
    piece = item.piece
    if piece is None or piece.owners or piece.their or piece.spare:
        return False
    return all(word in COLOURS or word in THAT_ONE for word in words(piece.said))
