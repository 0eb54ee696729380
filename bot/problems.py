"""Every fault of a file at once: where, found, allowed, nearest word; and the errors people may see.

HaybellError            anything that ends a command with one clear line
├── WrongInput          exit 2: a file or an argument is wrong; nothing was started
└── Failed              exit 1: something failed in use
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass


class HaybellError(Exception):
    """One line for people: what is wrong, where, what to do."""

    status = 1


class WrongInput(HaybellError):
    """Input that cannot be used."""

    status = 2


class Failed(HaybellError):
    """Something failed in use."""

    status = 1


@dataclass(frozen=True)
class Problem:
    """One fault of a file. line from 1; level "error" or "warning"."""

    file: str
    line: int
    text: str
    level: str = "error"

    def __str__(self) -> str:
        return f"{self.file}:{self.line}: {self.text}"


class WrongFile(WrongInput):
    """A file with faults, all of them at once."""

    def __init__(self, problems: Sequence[Problem]) -> None:
        self.problems = tuple(problems)
        super().__init__("\n".join(map(str, problems)))


def did_you_mean(found: object, words: Iterable[str]) -> str:
    """The end of a fault that offers the nearest of the words; empty where none is near."""
    near = nearest(found, words)
    return f"; did you mean '{near}'?" if near else ""


def nearest(found: object, words: Iterable[str]) -> str | None:
    """The word that somebody most likely meant, None where none is near."""
    from difflib import get_close_matches  # here: only a faulty file needs it

    if not isinstance(found, str):
        return None
    by_plain = {word.casefold(): word for word in words}
    near = get_close_matches(found.casefold(), by_plain, n=1, cutoff=0.6)
    return by_plain[near[0]] if near else None
