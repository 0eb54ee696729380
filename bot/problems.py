"""Every fault of a file at once: where, found, allowed, nearest word; and the errors people may see.

HaybellError            anything that ends a command with one clear line
├── WrongInput          exit 2: a file or an argument is wrong; nothing was started
└── Failed              exit 1: something failed in use
"""

from collections.abc import Sequence
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
