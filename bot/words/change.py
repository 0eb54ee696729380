"""What a clause does to an outfit: pieces put on, taken off, all that is worn."""

from dataclasses import dataclass, field, replace

from bot.words.piece import Piece


@dataclass
class Change:
    """What a clause does to an outfit. whole: these and nothing else. all_off: everything first.

    rugs_off: all that it had on before the message, not what the message itself put on.
    """

    add: list[Piece] = field(default_factory=list)
    remove: list[Piece] = field(default_factory=list)
    whole: list[Piece] = field(default_factory=list)
    all_off: bool = False
    rugs_off: bool = False
    over: bool = False

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


def _anothers(pieces: list[Piece]) -> list[Piece]:
    return [replace(piece, owners=(), their=False) for piece in pieces]
