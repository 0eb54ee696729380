"""What holds the house together: every word of one list is known wherever that list is walked."""

import ast
import re
from pathlib import Path
from typing import get_args

import pytest

from bot.answer.reports import told_again
from bot.barn import demo_path, load
from bot.events import GARMENT_WORDS, KINDS, SIGNS, STYLES
from bot.roles import MAY
from bot.state import CHANGES
from bot.voice import voice
from bot.words.said import LANGUAGES, phrasebook
from rules.garment import Kind

ROOT = Path(__file__).parents[2]
SOURCES = sorted([*(ROOT / "bot").rglob("*.py"), *(ROOT / "rules").rglob("*.py")])
TREES = {path: ast.parse(path.read_text(encoding="utf-8")) for path in SOURCES}
TOLD_BY_THE_BOT = {"posted", "changed", "recheck", "nudged", "file"}
BARN = load(demo_path())
NAME = re.compile(r"[a-z_]+")


def functions() -> list[tuple[Path, ast.FunctionDef | ast.AsyncFunctionDef]]:
    """Every function of the sources, with its file."""
    kinds = (ast.FunctionDef, ast.AsyncFunctionDef)
    return [(path, node) for path, tree in TREES.items() for node in ast.walk(tree) if isinstance(node, kinds)]


# ── one list, walked in several places ───────────────────────────────────────────────────────────────────────────────


def test_every_event_changes_the_state_or_is_known_not_to() -> None:
    """A question and an undo are no facts, and who is in the barn is the barn's; each other kind has its fold."""
    assert set(KINDS) - {cls.kind for cls in CHANGES} == {"question", "undo", "enrolled", "struck"}


def test_every_event_that_people_report_has_its_row_of_rights() -> None:
    """A kind without a row would be the manager's alone by accident."""
    assert set(KINDS) - set(MAY) == TOLD_BY_THE_BOT


@pytest.mark.parametrize("kind", sorted(set(MAY) - {"question", "undo"}))
def test_every_report_can_be_said_again_when_it_is_taken_back(kind: str) -> None:
    """Undo names what it took back, whatever it was."""
    facts = {"horse": "Maple", "horses": ("Maple",), "garment": "maple-liner", "sign": "cold", "state": "wet"}
    facts |= {"wear": (), "style": "bib", "where": "field", "keep_bare": True}  # type: ignore[dict-item]
    facts |= {"section": "horses", "name": "Nova", "facts": {}}  # type: ignore[dict-item]
    cls = KINDS[kind]
    event = cls(**{name: value for name, value in facts.items() if name in cls.__dataclass_fields__})
    assert told_again(event, voice(BARN, "en", "us"))


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_word_of_the_barn_can_be_said(language: str) -> None:
    """Signs, garment states, clips and kinds, in each language."""
    book, tongue = phrasebook(language), voice(BARN, language, "metric")
    assert set(SIGNS) <= set(book.signs)
    assert set(STYLES) <= set(book.styles)
    assert {"field", "stall"} <= set(book.places)
    assert all(tongue.state(state) for state in GARMENT_WORDS)
    assert all(tongue.kind(kind, 100) for kind in get_args(Kind))


def test_every_garment_kind_has_its_place_in_the_layers() -> None:
    """A kind that the layers do not know could never be worn."""
    text = (ROOT / "rules" / "outfit.py").read_text(encoding="utf-8") + (ROOT / "rules" / "garment.py").read_text(encoding="utf-8")  # fmt: skip # noqa: E501
    assert [kind for kind in get_args(Kind) if text.count(f'"{kind}"') < 1] == []


# ── habits ───────────────────────────────────────────────────────────────────────────────────────────────────────────


def test_the_first_line_of_every_file_says_what_lives_there() -> None:
    """The tree is read top down."""
    assert [str(path.relative_to(ROOT)) for path, tree in TREES.items() if not ast.get_docstring(tree)] == []


def test_functions_fit_a_screen() -> None:
    """Fifty lines with signature and docstring; who needs more has two ideas."""
    long = {f"{p.name}:{f.name}": f.end_lineno - f.lineno + 1 for p, f in functions() if f.end_lineno}
    assert {name: lines for name, lines in long.items() if lines > 60} == {}


def test_no_drawer_for_odds_and_ends() -> None:
    """A file is named for its idea."""
    odd = {"utils", "util", "helpers", "helper", "misc", "common", "manager", "core", "base"}
    assert [str(p.relative_to(ROOT)) for p in SOURCES if p.stem in odd] == []


def test_only_the_command_line_and_the_terminal_print() -> None:
    """What is said to people goes through the outbox, what is said to an operator through the log."""
    found = []
    for path, tree in TREES.items():
        calls = {ast.unparse(node.func) for node in ast.walk(tree) if isinstance(node, ast.Call)}
        found += [path.name] if "print" in calls and "cli" not in path.parts and path.name != "terminal.py" else []
    assert found == []


def test_only_the_doors_look_at_the_clock() -> None:
    """Everything else is handed the time, so that a test can hand it another."""
    doors = {"cli", "chat"}
    files = {"schedule.py", "serving.py", "pulse.py", "backup.py", "logs.py"}
    files |= {"wire.py", "choosing.py", "replay.py"}  # a server that says when to come back; where no instant is given
    files |= {"__init__.py", "daybook.py"}  # nobody is born tomorrow
    found = [
        str(path.relative_to(ROOT))
        for path, tree in TREES.items()
        if not doors & set(path.parts) and path.name not in files
        for node in ast.walk(tree)
        if isinstance(node, ast.Call) and ast.unparse(node.func) in {"datetime.now", "time.time", "date.today"}
    ]
    assert found == []


def test_reading_a_message_loads_no_heavy_library() -> None:
    """`haybell read` answers at once: no arrays, pictures, chat or database toolkit come along."""
    import subprocess
    import sys

    code = "import sys, bot.barn, bot.events, bot.state, bot.words, bot.roles; print(*sys.modules)"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, cwd=ROOT)
    heavy = {"numpy", "PIL", "telegram", "sqlite_utils", "requests", "apscheduler", "highspy"}
    assert heavy & set(done.stdout.split()) == set()
