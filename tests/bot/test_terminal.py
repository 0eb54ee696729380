"""The group in a terminal: a script on its own clock, or typed live while the clock goes on."""

import io
import json
import re
from argparse import Namespace
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest

from bot.barn import Barn, demo_path
from bot.barn_day import BarnDay
from bot.chat import script, session
from bot.chat.terminal import HOW, Terminal, converse, midnight, play, spelled
from bot.events import RecheckSet
from bot.message import Button, Outgoing
from bot.problems import WrongInput
from bot.store import Store
from tests.november import WEATHER

DAY = """
2026-11-26 07:20 Theo: all done
2026-11-26 08:00 Theo: liner wet
2026-11-26 08:01 Theo: 2
2026-11-26 08:05 Walt: coffee is on
2026-11-26 10:00 forecast: worse.csv
2026-11-26 11:15 Maëlle: Pip shivering
2026-11-26 12:30 Maëlle: Pip comfortable
"""


@pytest.fixture(autouse=True)
def no_picture(monkeypatch: pytest.MonkeyPatch) -> None:
    """Pictures are drawn elsewhere."""
    monkeypatch.setattr("bot.board.draw", lambda *_, **__: b"picture")


@pytest.fixture
def out() -> io.StringIO:
    """What is printed."""
    return io.StringIO()


def terminal(
    barn: Barn, out: io.StringIO, tmp_path: Path, *, as_json: bool = False
) -> tuple[Terminal, session.FromFiles]:
    """A terminal on the demo barn, with the morning's forecast."""
    files = session.FromFiles()
    at = datetime(2026, 11, 26, 5, 50, tzinfo=barn.zone)
    files.swap(WEATHER / "morning.csv", at)
    day = BarnDay(barn, Store.memory(), files, since=midnight(at))
    return Terminal(day, barn.zone, tmp_path / "pictures", as_json, out), files


def played(barn: Barn, out: io.StringIO, tmp_path: Path, text: str = DAY, **more: Any) -> str:
    """What a script prints."""
    path = tmp_path / "day.txt"
    path.write_text(text, encoding="utf-8")
    (tmp_path / "worse.csv").write_bytes((WEATHER / "worse.csv").read_bytes())
    made, files = terminal(barn, out, tmp_path, as_json=more.pop("as_json", False))
    play(made, script.load(path, barn.zone), more.pop("until", None), files.swap)
    return out.getvalue()


# ── a script ─────────────────────────────────────────────────────────────────────────────────────────────────────────


def test_a_whole_day_on_its_own_clock(barn: Barn, out: io.StringIO, tmp_path: Path) -> None:
    """Who spoke when: posts, rechecks and updates fall due between the lines, until midnight."""
    text = played(barn, out, tmp_path)
    spoken = re.findall(r"^2026-11-26 (\d\d:\d\d) ([^:]+):", text, re.MULTILINE)
    assert spoken == [
        ("06:15", "haybell"),  # the morning's post
        ("07:20", "Theo"), ("07:20", "haybell"),
        ("08:00", "Theo"), ("08:00", "haybell"),  # which liner?
        ("08:01", "Theo"), ("08:01", "haybell"), ("08:01", "haybell"),  # noted; what Juniper wears instead
        ("08:05", "Walt"),
        ("10:00", "haybell"),  # the forecast has changed
        ("11:15", "Maëlle"), ("11:15", "haybell"),  # what to do at once
        ("11:45", "haybell"),  # how is Pip?
        ("12:00", "haybell"), ("12:00", "haybell (to Theo)"),
        ("12:15", "haybell"), ("12:15", "haybell (to Priya)"),
        ("12:30", "Maëlle"), ("12:30", "haybell"),
        ("15:45", "haybell"),  # the evening's post
        *spoken[20:],
    ]  # fmt: skip
    assert [s for s in spoken[20:] if s[1] != "haybell"] == []


def test_a_questions_choices_are_numbers_to_answer_with(barn: Barn, out: io.StringIO, tmp_path: Path) -> None:
    """Buttons become numbered lines; the number is the answer."""
    text = played(barn, out, tmp_path, until=datetime(2026, 11, 26, 9, tzinfo=barn.zone))
    assert "\n1. Maple's 100 g liner\n2. Juniper's 150 g liner\n3. Tansy's 100 g liner\n" in text


def test_as_json_each_message_is_one_line(barn: Barn, out: io.StringIO, tmp_path: Path) -> None:
    """With exactly the contract's keys; nothing else is printed."""
    lines = [json.loads(line) for line in played(barn, out, tmp_path, as_json=True).splitlines()]
    assert {tuple(line) for line in lines} == {("at", "kind", "to", "reply_to", "text", "picture")}
    assert [line["kind"] for line in lines][:5] == ["post", "react", "ask", "react", "answer"]
    assert Path(lines[0]["picture"]).read_bytes() == b"picture"
    assert "2. Juniper" in lines[2]["text"]


def test_a_second_look_is_in_half_an_hour_when_the_clocks_go_back(barn: Barn, out: io.StringIO, tmp_path: Path) -> None:
    """Seen at 01:40, looked at again at 01:10 by the clock, in order."""
    until = datetime(2026, 11, 1, 3, tzinfo=barn.zone)
    text = played(barn, out, tmp_path, "2026-11-01 01:40 Dot: Pip shivering\n", until=until)
    assert re.findall(r"^2026-11-01 (\d\d:\d\d) ([^:]+):", text, re.MULTILINE)[1:3] == [
        ("01:40", "haybell"),
        ("01:10", "haybell"),
    ]


def test_until_ends_the_day_early(barn: Barn, out: io.StringIO, tmp_path: Path) -> None:
    """Lines after it are not played."""
    text = played(barn, out, tmp_path, until=datetime(2026, 11, 26, 7, 30, tzinfo=barn.zone))
    assert "all done" in text
    assert "liner" not in text.split("all done")[1]


def test_until_a_later_day_lets_time_pass(barn: Barn, out: io.StringIO, tmp_path: Path) -> None:
    """Nobody writes any more, but the rounds come."""
    text = played(barn, out, tmp_path, "2026-11-26 06:50 Walt: hi\n", until=datetime(2026, 11, 27, 7, tzinfo=barn.zone))
    assert text.count("Windrow Farm · ") == 3


def test_a_script_played_again_counts_once(barn: Barn, out: io.StringIO, tmp_path: Path) -> None:
    """The same lines on the same data are the same messages; a line that was changed is a new one."""
    made, files = terminal(barn, out, tmp_path)
    for text in ("Maple comfortable", "Maple comfortable", "Birch comfortable"):
        path = tmp_path / "day.txt"
        path.write_text(f"2026-11-26 08:00 Inés: {text}\n", encoding="utf-8")
        made.count = 0
        play(made, script.load(path, barn.zone), datetime(2026, 11, 26, 8, 1, tzinfo=barn.zone), files.swap)
    assert [e.event.horse for e in made.day.ledger.entries() if e.event.kind == "sign"] == ["Maple", "Birch"]  # type: ignore[attr-defined]


def given(tmp_path: Path, text: str, **more: Any) -> Namespace:
    """The command line's words."""
    path = tmp_path / "day.txt"
    path.write_text(text, encoding="utf-8")
    facts = {"barn": demo_path(), "script": path, "forecast": None, "data": tmp_path / "data", "until": None}
    return Namespace(**{**facts, "json": False, **more})


def test_a_forecast_that_holds_none_is_said_before_anything_is_played(tmp_path: Path, capsys: Any) -> None:
    """Not in the middle of the day."""
    (tmp_path / "bad.csv").write_text("nothing\n", encoding="utf-8")
    with pytest.raises(WrongInput, match="no forecast"):
        session.scripted(given(tmp_path, "2026-11-26 08:00 Walt: hi\n2026-11-26 10:00 forecast: bad.csv\n"))
    assert capsys.readouterr().out == ""


def test_an_empty_script_is_a_quiet_day(tmp_path: Path) -> None:
    """Only comments: nothing to play, nothing wrong."""
    assert session.scripted(given(tmp_path, "# nothing yet\n")) == 0


# ── live ─────────────────────────────────────────────────────────────────────────────────────────────────────────────


def test_lines_typed_are_messages_until_the_end_of_input(
    barn: Barn, out: io.StringIO, tmp_path: Path, capsys: Any
) -> None:
    """A line without a name is answered with how to type one, on the side where no JSON is spoilt; then it goes on."""
    made, _ = terminal(barn, out, tmp_path)
    converse(made, ["nonsense\n", "\n", ": hello\n", "Theo: what is Maple in?\n", "Theo: 🐴\n"])
    assert capsys.readouterr().err == f"{HOW}\n" * 3
    assert out.getvalue().count("Theo:") == 2
    assert "Maple" in out.getvalue().split("what is Maple in?")[1]


def test_what_is_due_comes_while_nobody_types(barn: Barn, out: io.StringIO, tmp_path: Path) -> None:
    """A second look falls due; it is asked although no line came."""
    made, _ = terminal(barn, out, tmp_path)
    made.day.since = datetime.now(UTC)

    def typed() -> Iterator[str]:
        now = datetime.now(UTC)
        made.day.book.record(now, "haybell", "", [RecheckSet("Pip", "shivering", now + timedelta(milliseconds=50))])
        waited = datetime.now(UTC)
        while "Pip" not in out.getvalue() and datetime.now(UTC) - waited < timedelta(seconds=5):
            pass
        yield from ()

    converse(made, typed(), idle_s=0.01)
    assert "Pip" in out.getvalue()


def test_a_terminal_that_goes_away_is_an_end(barn: Barn, out: io.StringIO, tmp_path: Path) -> None:
    """No fault, no traceback: what was heard is kept."""
    made, _ = terminal(barn, out, tmp_path)

    def typed() -> Iterator[str]:
        yield "Inés: Birch comfortable\n"
        raise OSError("input/output error")

    converse(made, typed())
    assert made.day.state.horses["Birch"].signs


def test_only_a_question_has_numbers() -> None:
    """A post's buttons are not repeated: words do the same."""
    rows = ((Button("Maple", "pick:1"),), (Button("Otis", "pick:2"),))
    assert spelled(Outgoing("ask", "Which?", buttons=rows)) == "Which?\n1. Maple\n2. Otis"
    assert spelled(Outgoing("post", "List", buttons=rows)) == "List"
