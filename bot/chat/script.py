"""A day written down: who said what when, and when another forecast came."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from zoneinfo import ZoneInfo

from bot.problems import Problem, WrongFile, WrongInput

STAMP = "%Y-%m-%d %H:%M"
FORECAST = "forecast"  # who speaks in a line that brings another forecast


@dataclass(frozen=True)
class Line:
    """One line of a script. who "forecast": `text` is the path of a forecast file that counts from then on."""

    at: datetime
    who: str
    text: str


def load(path: Path, zone: ZoneInfo) -> list[Line]:
    """The lines in order of time (equal times keep the file's order). WrongFile names every line that is wrong."""
    try:
        text = path.read_text(encoding="utf-8-sig")
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
        line = _line(raw, path.parent, zone)
        if line is None:
            found = f"found “{raw[:40]}”; a line reads “2026-11-26 07:12 Name: message”"
            problems.append(Problem(str(path), number, found))
        elif line.who == FORECAST and not Path(line.text).is_file():
            found = f"no forecast file “{line.text}”; a relative path is looked for beside the script"
            problems.append(Problem(str(path), number, found))
        else:
            yield line


def _line(raw: str, folder: Path, zone: ZoneInfo) -> Line | None:
    """One line; None where it is none."""
    try:
        at = datetime.strptime(raw[:16], STAMP).replace(tzinfo=zone)
    except ValueError:
        return None
    who, colon, said = (part.strip() for part in raw[16:].partition(":"))
    if not colon or not who:
        return None
    return Line(at, who, str(folder / said) if who == FORECAST else said)
