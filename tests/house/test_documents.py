"""The documents keep their promises."""

import re
import tomllib
from datetime import datetime
from pathlib import Path

ROOT = Path(__file__).parents[2]
SOURCES = sorted([*(ROOT / "bot").rglob("*.py"), *(ROOT / "rules").rglob("*.py")])


def test_readme_names_every_command() -> None:
    """Each command of the console script is in README."""
    from bot.cli import parser

    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    commands = next(a for a in parser()._actions if a.choices).choices
    assert commands is not None
    assert [name for name in commands if f"haybell {name}" not in readme] == []


def test_readme_gives_the_two_commands_that_do_everything() -> None:
    """One command runs the demo and one passes the tests, each on a machine with only Python."""
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    assert "python3 -m venv .venv && .venv/bin/pip install . && .venv/bin/haybell demo" in readme
    assert "python3 -m venv .venv && .venv/bin/pip install '.[test]' && .venv/bin/pytest" in readme


def test_no_source_file_has_outgrown_a_sitting() -> None:
    """A file that nobody reads in one go is two files; tables of words are looked up, not read."""
    lines = {
        str(p.relative_to(ROOT)): len(p.read_text(encoding="utf-8").splitlines())
        for p in SOURCES
        if p.parent.name != "heard"
    }
    assert {name: count for name, count in lines.items() if count > 320} == {}


def test_rules_never_look_at_the_clock() -> None:
    """Nothing in the rules reads the time, a file or the network."""
    forbidden = re.compile(r"datetime\.now|time\.time|(?<!def )(?<![\w.])open\(|import (requests|socket|sqlite3)")
    found = [p.name for p in (ROOT / "rules").rglob("*.py") if forbidden.search(p.read_text(encoding="utf-8"))]
    assert found == []


def test_dependencies_have_honest_lower_bounds() -> None:
    """Every dependency says from which version on it works."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    wanted = [*project["dependencies"], *project["optional-dependencies"]["test"]]
    assert [d for d in wanted if ">=" not in d] == []


def test_readmes_post_is_the_one_the_demo_makes() -> None:
    """What README shows is what the demo barn's group reads that morning, to the letter."""
    from bot.barn import demo_path, load
    from bot.forecast import from_file
    from bot.planning import Planner
    from bot.post import round_post
    from bot.rounds import windows
    from bot.state import as_filed

    barn = load(demo_path())
    at = datetime(2026, 11, 26, 6, 15, tzinfo=barn.zone)
    forecast = from_file(ROOT / "bot" / "demo" / "morning.csv", at.replace(hour=5, minute=50))
    state = as_filed(barn)
    sheet = Planner(barn).sheet(state, forecast, windows(barn, at.replace(hour=7, minute=0)), at)
    shown = re.search(r"```text\n(.*?)\n```", (ROOT / "README.md").read_text(encoding="utf-8"), re.DOTALL)
    assert shown is not None
    assert shown.group(1) == round_post(sheet, barn, state, "en", barn.units)
