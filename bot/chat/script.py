"""A day written down: who said what when, and when another forecast came."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from zoneinfo import ZoneInfo

from bot.problems import Problem, WrongFile, WrongInput

STAMP = "%Y-%m-%d %H:%M"


@dataclass(frozen=True)
class Line:
    """One line of a script. who "forecast": `text` is the path of a forecast file that counts from then on."""

    at: datetime
    who: str
    text: str


def load(path: Path, zone: ZoneInfo) -> list[Line]:
    """The lines in order of time (equal times keep the file's order). WrongFile names every line that is wrong."""
    try:
        text = path.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError) as error:
        raise WrongInput(f"{path}: the script cannot be read ({error}); name a text file") from None
    problems: list[Problem] = []
    lines = list(_lines(text, path, zone, problems))
    if problems:
        raise WrongFile(problems)
    return sorted(lines, key=lambda line: line.at)


def _lines(text: str, path: Path, zone: ZoneInfo, problems: list[Problem]) -> Iterator[Line]:
    for number, raw in enumerate(text.splitlines(), start=1):
        if not raw.strip() or raw.lstrip().startswith("#"):
            continue
        try:
            at = datetime.strptime(raw[:16], STAMP).replace(tzinfo=zone)
            who, said = raw[16:].split(":", 1)
        except ValueError:
            found = f"found “{raw[:40]}”; a line reads “2026-11-26 07:12 Name: message”"
            problems.append(Problem(str(path), number, found))
            continue
        if who.strip() == "forecast":
            said = str((path.parent / said.strip()) if not Path(said.strip()).is_absolute() else said.strip())
        yield Line(at, who.strip(), said.strip())
