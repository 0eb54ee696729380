"""Something of the speaker's, and what is told of it by its colour: "mon gant ? Le noir est troué" is no rug's hole."""

from collections.abc import Container, Sequence
from dataclasses import replace
from itertools import takewhile

from bot.words.heard.colours import COLOURS
from bot.words.lookup.items import Item, places, some_mean
from bot.words.lookup.tokens import words
from bot.words.thoughts.sentences import REACH

MINE = frozenset(("my", "i"))
GOODS = frozenset(("thing", "jacket"))
THING = frozenset(("thing",))
MY_THING = frozenset(("i", "thing"))
ENDS = (".", "!", "\n")
OWNED = ("my", "her")
KIN = frozenset(("kin",))
NEAR = 6  # words
BETWEEN = 2  # words between "my" and what is mine: "my left glove"
MY = ("my", "our", "mon", "ma", "mes", "mi", "mis")
THAT_ONE = frozenset(("one", "ones", "l'", "la", "le", "les", "el", "lo", "los", "las"))


def my_things(items: Sequence[Item], of_pieces: Container[str]) -> list[Item]:
    """The items with "my boots", "ses vieilles bottes" drawn into one; a thing of nobody's is a word like any other.

    of_pieces: words of the barn's garments, one of which may be called "la doudoune".
    """
    if not places(items, GOODS):
        return list(items)
    found: list[Item] = []
    for item in items:
        if item.means.isdisjoint(GOODS):
            found.append(item)
            continue
        whose = _whose(found, item) if item.text not in of_pieces else None
        if " " in item.text and item.has("thing") and item.text.partition(" ")[0] in MY:
            found.append(replace(item, means=item.means | MY_THING))  # "mon imper", which one row has as a whole
        elif whose is not None:
            said = " ".join(i.text for i in (*found[whose:], item))
            means = MY_THING if found[whose].has("my") else THING
            found[whose:] = [Item(said, said, means=means, capital=found[whose].capital)]
        else:
            found.append(replace(item, means=item.means - THING) if item.has("thing") else item)
    return found


def _whose(before: Sequence[Item], thing: Item) -> int | None:
    """The place of "my" or "her", with nothing behind it but of what kind the thing is: "my old riding boots"."""
    last = range(len(before) - 1, max(-1, len(before) - BETWEEN - 2), -1)
    at = next((k for k in last if before[k].has(*OWNED) or not before[k].has("any adjective", "colour")), None)
    if at is None or not (before[at].has("my") or (before[at].has("her") and thing.has("thing"))):
        return None
    return at if not before[at].has("she", "is") else None


def without_my_things(items: Sequence[Item]) -> list[Item]:
    """The items, where what a colour alone tells of is the speaker's own thing, spoken of last, and no garment."""
    found = list(items)
    for at in places(items, MINE):
        if not _my_thing(items, at):
            continue
        for k in range(at + 1, min(at + REACH, len(items))):
            if _of_a_garment(items[k]) or (items[k].text in ENDS and not _worn(items, at)):
                break
            if items[k].piece is not None:
                found[k] = Item(items[k].text, items[k].raw)
    for at in places(items, KIN):
        for k in _lost_by_them(items, at):
            found[k] = Item(items[k].text, items[k].raw)
    return found


def _of_a_garment(item: Item) -> bool:
    """A horse, a garment told by more than its colour; "how long till the purple is dry?" asks of one."""
    return bool(item.horses) or (item.piece is not None and not _by_colour(item)) or item.has("ask ready")


def _worn(items: Sequence[Item], at: int) -> bool:
    """Whether what is mine is a thing of the tables: "my glove", and no "my best time"; that alone is spoken of on."""
    return any(i.has("thing", "idiom") or i.text == "?" for i in items[at : at + NEAR])


def _lost_by_them(items: Sequence[Item], at: int) -> Sequence[int]:
    """Where "the green mac" and the like stand in "my son has lost the green mac, the one with the grey liner".

    It is what people wear, where no horse is named.
    """
    said = list(takewhile(lambda i: i.text not in ENDS, items[at + 1 : at + 1 + REACH]))
    pieces = [k for k, i in enumerate(said) if i.piece is not None]
    first = said[pieces[0]].piece if pieces and pieces[0] < NEAR else None
    worn = first is not None and first.kinds and not (first.rug or first.owners or first.spare)
    theirs = worn and some_mean(said[: pieces[0]], "state missing") and not any(i.horses for i in said)
    return [at + 1 + k for k in pieces] if theirs else []


def _my_thing(items: Sequence[Item], at: int) -> bool:
    """As in "my left glove", "mes gants": no horse, no garment, nobody of the family."""
    if not items[at].has("my"):  # "my gloves", of the table; not "ma mère dit que …"
        told = at + 1 < len(items) and items[at + 1].has("said")
        return " " in items[at].text and items[at].text.split()[0] in MY and not told
    for item in items[at + 1 : at + 2 + BETWEEN]:
        if item.mark or item.horses or item.piece is not None or item.person:
            return False
        if not item.means or item.has("idiom", "thing"):
            return True
    return False


def _by_colour(item: Item) -> bool:
    """Told by nothing but its colour: "la noire", "the blue one"."""
    piece = item.piece
    if piece is None or piece.owners or piece.their or piece.spare:
        return False
    return all(word in COLOURS or word in THAT_ONE for word in words(piece.said))
