"""A piece of clothing as somebody described it, before anybody knows which of the barn's garments it is."""

from typing import NamedTuple

from bot.barn import Garment
from bot.words.heard.colours import COLOURS

RUGS = frozenset({"sheet", "turnout", "stable"})


class Piece(NamedTuple):
    """A piece as somebody described it; a tuple, for it is looked up and told anew again and again.

    kinds: what it may be; () where only "the blue one". fill: least and most. words: must be among its names.
    ids: garments of the nickname used. owners: whose it was said to be. given: or whom it went to: "a Trueno". their:
    of the horse named before. every: all such pieces. pair: both of them. several: more than one, all of a horse's own.
    some: no particular one. either: of one of the owners, who knows which. rug: only called a rug. called: weight
    words, which may be in its name. gender: of the words that told it, "" where they have none.
    led: by whose it is: "Maple sheet". worn: by who wears it: "the rug Maple has on".
    """

    said: str
    kinds: frozenset[str] = frozenset()
    fill: tuple[float, float] | None = None
    words: frozenset[str] = frozenset()
    ids: tuple[str, ...] = ()
    owners: tuple[str, ...] = ()
    given: bool = False
    their: bool = False
    every: bool = False
    pair: bool = False
    several: bool = False
    some: bool = False
    either: bool = False
    spare: bool = False
    rug: bool = False
    called: frozenset[str] = frozenset()
    gender: str = ""
    led: bool = False
    worn: bool = False

    def fits(self, garment: Garment, bag: frozenset[str]) -> bool:
        """Whether the description is true of a garment."""
        if self.ids:
            return garment.id in self.ids
        if self.spare and garment.horse is not None:
            return False
        unfilled = "sheet" in self.kinds and garment.kind == "turnout" and not garment.fill_g  # called a sheet as well
        if self.kinds and garment.kind not in self.kinds and not unfilled:
            return False
        if self.fill and not self.fill[0] <= garment.fill_g <= self.fill[1] and self.called.isdisjoint(bag):
            return False
        return all(word in bag or any(colour(word) == colour(other) for other in bag) for word in self.words)


def colour(word: str) -> str:
    """A colour in any language by one name; another word without what agrees with its noun: fuchsias, fuchsia."""
    if word in COLOURS:
        return COLOURS[word]
    return word.rstrip("aeos") if len(word) > 3 else word
