"""The barn file: loaded with every fault named at once, or not at all.

names       one person's or horse's name in any spelling
values      single values: clock, day, switch, zone
keys        every key as a type: Barn and its parts
document    YAML with the line of each value
shape       values against the types
references  what one key cannot know of another: names used and meant, things that cannot both be
advice      what may be meant so but often is not: warnings
"""

from datetime import UTC, date, datetime
from pathlib import Path

from bot.barn import advice, document, references, shape
from bot.barn.keys import (
    FILE,
    PROVIDERS,
    Barn,
    Clip,
    Costs,
    DryingPlace,
    Garment,
    Horse,
    Language,
    Person,
    Place,
    Posting,
    Role,
    Round,
    Units,
    Wishes,
    forecast_file,
)
from bot.barn.names import plain
from bot.problems import Problem, WrongFile

__all__ = [
    "PROVIDERS",
    "Barn",
    "Clip",
    "Costs",
    "DryingPlace",
    "Garment",
    "Horse",
    "Language",
    "Person",
    "Place",
    "Posting",
    "Role",
    "Round",
    "Units",
    "Wishes",
    "check",
    "demo_path",
    "forecast_file",
    "load",
    "plain",
]


def load(path: str | Path, today: date | None = None) -> Barn:
    """The barn of a file. WrongFile with all its faults where it has any; warnings are for `check`."""
    barn, found = _read(Path(path), today or _today())
    if barn is None:
        raise WrongFile(found.in_order())
    return barn


def check(path: str | Path, today: date | None = None) -> tuple[Barn | None, list[Problem]]:
    """The barn (None where it cannot be used) and all faults and warnings, in the file's order."""
    day = today or _today()
    barn, found = _read(Path(path), day)
    if barn is not None:
        advice.advise(found, barn, day)
    return barn, found.in_order()


def demo_path() -> Path:
    """Where the demo barn lies: beside the package's other demo files, or at the root of the source tree."""
    packaged = Path(__file__).parents[1] / "demo" / "demo_barn.yaml"
    return packaged if packaged.exists() else Path(__file__).parents[2] / "demo_barn.yaml"


def _read(path: Path, today: date) -> tuple[Barn | None, document.Document]:
    found = document.read(path)
    if found.problems and found.root is None:
        return None, found
    barn = shape.fit(found)
    references.refer(found, today)
    if barn is None or found.problems:
        return None, found
    return barn.model_copy(update={"forecast": tuple(_rooted(source, path) for source in barn.forecast)}), found


def _rooted(source: str, path: Path) -> str:
    """A forecast file is looked for beside the barn file."""
    file = forecast_file(source)
    return f"{FILE}{path.absolute().parent / file}" if file else source


def _today() -> date:
    return datetime.now(UTC).astimezone().date()
