"""What a clause does to an outfit: pieces put on, taken off, all that is worn."""

from dataclasses import dataclass, field, replace

from bot.words.lookup.piece import Piece


@dataclass
class Change:
    """What a clause does to an outfit. whole: these and nothing else. all_off: everything first.

    rugs_off: all that it had on before the message, not what the message itself put on. of: the horses it was done to.
    below: over which piece another was put on.
    as_said: how its two pieces lie was told ("the heavy over the sheet"), whatever is the custom.
    """

    add: list[Piece] = field(default_factory=list)
    remove: list[Piece] = field(default_factory=list)
    whole: list[Piece] = field(default_factory=list)
    all_off: bool = False
    rugs_off: bool = False
    over: bool = False
    below: Piece | None = None
    as_said: bool = False
    of: frozenset[str] = frozenset()

    @property
    def strips(self) -> bool:
        """All that it had on goes."""
        return self.all_off or self.rugs_off

    @property
    def empty(self) -> bool:
        """Nothing changes."""
        return not (self.add or self.remove or self.whole or self.strips)

    @property
    def pieces(self) -> list[Piece]:
        """Every piece of it."""
        return [*self.add, *self.remove, *self.whole]

    def of_anothers(self) -> "Change":
        """The same of another horse, with pieces of its own."""
        add, remove, whole = map(_anothers, (self.add, self.remove, self.whole))
        return replace(self, add=add, remove=remove, whole=whole)

    def then(self, later: "Change") -> "Change":
        """Both, where they are of the same horses: "sheet off, heavy on"; the later alone where it says all."""
        if later.whole or later.strips or later.of != self.of:
            return later
        return replace(self, add=[*self.add, *later.add], remove=[*self.remove, *later.remove], over=later.over)

    def with_this(self, piece: Piece) -> "Change":
        """The same done to this one piece instead; nothing where it was done to several, or different things."""
        if len(self.pieces) != 1 or self.strips:
            return Change()
        add, remove, whole = ([piece] if had else [] for had in (self.add, self.remove, self.whole))
        return replace(self, add=add, remove=remove, whole=whole)


def _anothers(pieces: list[Piece]) -> list[Piece]:
    return [piece._replace(owners=(), their=False) for piece in pieces]
