"""YAML read with the line of every value: plain words stay words, doubled keys are faults, nothing runs away."""

import re
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import yaml

from bot.problems import Problem

MAX_BYTES = 8 * 2**20
MAX_VALUES = 500_000  # after aliases are followed: a few lines of nested aliases can mean billions
MAX_DEPTH = 12

Way = tuple[str | int, ...]

# the core schema of YAML 1.2, chapter 10.3.2: on, off, yes, no and 07:00 are words
CORE: tuple[tuple[re.Pattern[str], Callable[[str], Any]], ...] = (
    (re.compile(r"null|Null|NULL|~|"), lambda _: None),
    (re.compile(r"true|True|TRUE"), lambda _: True),
    (re.compile(r"false|False|FALSE"), lambda _: False),
    (re.compile(r"[-+]?[0-9]+"), int),
    (re.compile(r"0o[0-7]+"), lambda text: int(text[2:], 8)),
    (re.compile(r"0x[0-9a-fA-F]+"), lambda text: int(text[2:], 16)),
    (re.compile(r"[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?"), float),
    (re.compile(r"[-+]?\.(inf|Inf|INF)"), lambda text: float(text.replace(".", ""))),
    (re.compile(r"\.(nan|NaN|NAN)"), lambda _: float("nan")),
)
MAX_PLAIN = 300  # a longer plain value is text: no number of the file has so many digits

# values that are words whatever they look like: a horse may be called 1812, No or True
WORDS = frozenset(
    {"barn", "timezone", "contact", "forecast", "name", "also", "id", "horse", "owner", "wearing", "dries"}
)


class _Loader(getattr(yaml, "CSafeLoader", yaml.SafeLoader)):  # type: ignore[misc]
    """Positions and texts only: what a plain word means is decided here, by the core schema."""

    yaml_implicit_resolvers: dict[str, Any] = {}  # noqa: RUF012 - as the library declares it


@dataclass
class Document:
    """A file as plain values (dict, tuple, str, int, float, bool, None), with the line of each by its way down."""

    file: str
    root: Any = None
    lines: dict[Way, int] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)

    def line(self, way: Way) -> int:
        """The line of the value at `way`, or of the nearest one above it that the file has."""
        while way and way not in self.lines:
            way = way[:-1]
        return self.lines.get(way, 1)

    def fault(self, way: Way, text: str, level: str = "error") -> None:
        """Note a fault of the value at `way`."""
        self.problems.append(Problem(self.file, self.line(way), text, level))

    def in_order(self) -> list[Problem]:
        """All faults and warnings, as they stand in the file."""
        return sorted(self.problems, key=lambda problem: problem.line)


def read(path: Path) -> Document:
    """The file's values; faults of reading are in its problems, and root is then None or what could be read."""
    document = Document(str(path))
    text = _text(path, document)
    if text is None:
        return document
    try:
        node = yaml.compose(text, _Loader)
    except yaml.YAMLError as error:
        document.problems.append(_broken(document.file, text, error))
        return document
    if node is None:
        document.fault((), "the file is empty; demo_barn.yaml shows what a barn file holds")
        return document
    try:
        document.root = _Walk(document).value(node, ())
    except _RunsAway as error:
        document.problems.append(Problem(document.file, error.line, str(error)))
    return document


def _text(path: Path, document: Document) -> str | None:
    try:
        if path.is_dir():
            document.fault((), "this is a folder; the barn file itself is wanted")
            return None
        with path.open("rb") as file:
            raw = file.read(MAX_BYTES + 1)
    except (OSError, ValueError) as error:
        reason = error.strerror if isinstance(error, OSError) and error.strerror else str(error)
        document.fault((), f"cannot be read: {reason.lower()}")
        return None
    if len(raw) > MAX_BYTES:
        document.fault((), f"larger than {MAX_BYTES // 2**20} MB; a barn file is text of a few hundred lines")
        return None
    try:
        return raw.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = raw.count(b"\n", 0, error.start) + 1
        document.problems.append(Problem(document.file, line, "not UTF-8 text; save the file as UTF-8"))
        return None


def _broken(file: str, text: str, error: yaml.YAMLError) -> Problem:
    """A syntax fault in one line."""
    mark = getattr(error, "problem_mark", None) or getattr(error, "context_mark", None)
    if mark is None:  # a character that YAML forbids; the reader knows only its position
        position = getattr(error, "position", 0)
        return Problem(file, text.count("\n", 0, position) + 1, "a character that YAML does not allow")
    found = " ".join(str(getattr(error, "problem", "") or "not YAML").split())
    lines = text.splitlines()
    here = lines[mark.line] if mark.line < len(lines) else ""
    hint = "a tab; indent with spaces" if "\t" in here[: mark.column + 1] else f"{found}; look here and one line above"
    return Problem(file, mark.line + 1, f"not YAML at column {mark.column + 1}: {hint}")


class _RunsAway(Exception):
    def __init__(self, line: int, text: str) -> None:
        self.line = line
        super().__init__(text)


class _Walk:
    """Nodes to values, once through."""

    def __init__(self, document: Document) -> None:
        self.document = document
        self.count = 0

    def value(self, node: yaml.Node, way: Way) -> Any:
        self.count += 1
        if self.count > MAX_VALUES or len(way) > MAX_DEPTH:
            raise _RunsAway(self.document.line(way[:1]), "nested too deep or too often repeated by aliases")
        self.document.lines.setdefault(way, node.start_mark.line + 1)
        if isinstance(node, yaml.ScalarNode):
            return self.scalar(node, way)
        if isinstance(node, yaml.MappingNode):
            return self.mapping(node, way)
        return tuple(self.value(child, (*way, k)) for k, child in enumerate(node.value))

    def mapping(self, node: yaml.MappingNode, way: Way) -> dict[str, Any]:
        found: dict[str, Any] = {}
        merged: dict[str, Any] = {}
        for key_node, child in node.value:
            line = key_node.start_mark.line + 1
            if not isinstance(key_node, yaml.ScalarNode):
                self.document.problems.append(Problem(self.document.file, line, "a list or a group cannot be a key"))
                continue
            key = key_node.value
            if key == "<<" and not key_node.style:
                merged |= self.merged(child, way)
                continue
            if key in found:
                first = self.document.lines[(*way, key)]
                text = f"'{key}' stands here for the second time; the first is in line {first}"
                self.document.problems.append(Problem(self.document.file, line, text))
                continue
            self.document.lines[(*way, key)] = line
            found[key] = self.value(child, (*way, key))
        return merged | found

    def merged(self, node: yaml.Node, way: Way) -> dict[str, Any]:
        """What `<<: *other` brings in; the mapping's own keys win."""
        value = self.value(node, (*way, "<<"))
        parts = value if isinstance(value, tuple) else (value,)
        if not all(isinstance(part, dict) for part in parts):
            self.document.fault((*way, "<<"), "'<<' wants a group of keys, as in <<: *other")
            return {}
        return {key: item for part in reversed(parts) for key, item in part.items()}

    def scalar(self, node: yaml.ScalarNode, way: Way) -> Any:
        text: str = node.value
        if node.style or len(text) > MAX_PLAIN:
            return text
        if _is_word(way):
            return None if text in ("", "~", "null") else text
        return next((made(text) for pattern, made in CORE if pattern.fullmatch(text)), text)


def _is_word(way: Way) -> bool:
    named = way[-1] if way and isinstance(way[-1], str) else way[-2] if len(way) > 1 else None
    return named in WORDS
