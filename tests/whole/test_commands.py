"""The commands, run as people run them: their shapes, their exit status, no traceback."""

import csv
import io
import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).parents[2]
BARN = ROOT / "demo_barn.yaml"
WEATHER = ROOT / "bot" / "demo" / "morning.csv"


def haybell(*words: str | Path, typed: str = "", data: Path | None = None) -> subprocess.CompletedProcess[str]:
    """One command in a process of its own."""
    kept = ["--data", str(data)] if data else []
    env = {**os.environ, "PYTHONIOENCODING": "utf-8"}
    done = subprocess.run(
        [sys.executable, "-m", "bot", *map(str, words), *kept],
        cwd=ROOT, env=env, input=typed, capture_output=True, text=True, encoding="utf-8", timeout=60,
    )  # fmt: skip
    assert "Traceback" not in done.stderr + done.stdout
    return done


def one(*words: str | Path, **options: Any) -> Any:
    """The JSON object a command prints."""
    done = haybell(*words, **options)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


def test_plan_prints_exactly_the_contracts_shape(tmp_path: Path) -> None:
    """Whoever reads the plan as JSON finds the keys that were promised, in every part."""
    plan = one("plan", BARN, "--at", "2026-11-26T06:15", "--forecast", WEATHER, "--json", data=tmp_path)
    assert set(plan) == {"barn", "made_at", "forecast", "windows", "horses", "drying", "missing", "checks", "took_ms"}
    assert set(plan["forecast"]) == {"source", "fetched_at", "age_min", "stale"}
    assert [w["round"] for w in plan["windows"]] == ["morning", "evening"]
    horse = plan["horses"][0]
    assert set(horse) == {"horse", "offset_c", "offset_sd_c", "windows"}
    assert set(horse["windows"][0]) == {
        "round", "where", "wear", "fill_g", "change", "cold_margin_c", "cold_at", "heat_margin_c", "heat_at",
        "fill_band_g", "why", "cautions", "extra_energy_pct", "extra_hay_kg", "unjudged",
    }  # fmt: skip
    assert all(isinstance(sentence, str) for sentence in horse["windows"][0]["why"])


def test_plan_without_any_forecast_still_comes_and_says_so(tmp_path: Path) -> None:
    """Every hour is named as not judged, and margins are null instead of invented."""
    empty = tmp_path / "none.csv"
    empty.write_text("time,temperature_c,humidity_pct,wind_ms\n2026-01-01T00:00-05:00,1,80,3\n", encoding="utf-8")
    plan = one("plan", BARN, "--at", "2026-11-26T06:15", "--forecast", empty, "--json", data=tmp_path)
    window = plan["horses"][0]["windows"][0]
    assert window["cold_margin_c"] is None
    assert len(window["unjudged"]) == 10  # 07:00 to 16:30 touches ten hours


def test_read_says_what_a_message_means_and_writes_nothing(tmp_path: Path) -> None:
    """The contract's own example."""
    heard = one("read", BARN, "--as", "Inés", "--json", "mapel sweaty", data=tmp_path)
    assert heard == {
        "heard": "mapel sweaty",
        "events": [{"kind": "sign", "horse": "Maple", "sign": "sweating", "setting": "turnout"}],
        "ask": None, "refused": None, "chatter": False,
    }  # fmt: skip
    assert list(tmp_path.iterdir()) == []


def test_read_takes_many_lines_one_answer_each(tmp_path: Path) -> None:
    """Names not among the people are unknown persons, not errors."""
    typed = "Inés: Maple sweaty\nNobody: Maple sweaty\nTheo: lol\n"
    done = haybell("read", BARN, "--json", "-", typed=typed, data=tmp_path)
    known, stranger, chatter = map(json.loads, done.stdout.splitlines())
    assert known["events"] and not stranger["events"] and stranger["refused"] and chatter["chatter"]


SCRIPT = """\
# a morning
2026-11-26 07:20 Theo: all done
2026-11-26 08:40 Inés: Maple sweaty
2026-11-26 09:00 Inés: Juniper liner wet
2026-11-26 09:10 Inés: Juniper clipped full
2026-11-26 11:15 Maëlle: Pip shivering
"""


@pytest.fixture
def told(tmp_path: Path) -> tuple[Path, list[dict[str, Any]]]:
    """A script played; the data it left, and what was said."""
    script = tmp_path / "day.txt"
    script.write_text(SCRIPT, encoding="utf-8")
    done = haybell("chat", BARN, "--script", script, "--forecast", WEATHER, "--json", data=tmp_path / "data")
    assert done.returncode == 0, done.stderr
    return tmp_path / "data", [json.loads(line) for line in done.stdout.splitlines()]


def test_a_script_plays_a_whole_day_on_its_own_clock(told: tuple[Path, list[dict[str, Any]]]) -> None:
    """Both posts fall due, the shivering is answered at once and looked at again half an hour later."""
    _, said = told
    kinds = [one["kind"] for one in said]
    assert [one["at"][:16] for one in said if one["kind"] == "post"] == ["2026-11-26T06:15", "2026-11-26T15:45"]
    assert "alert" in kinds
    looks = {one["text"].split()[0]: one["at"][11:16] for one in said if one["kind"] == "recheck"}
    assert looks == {"Maple": "09:10", "Pip": "11:45"}  # sweating at 8:40, shivering at 11:15
    assert set(said[0]) == {"at", "kind", "to", "reply_to", "text", "picture"}
    assert Path(said[0]["picture"]).read_bytes().startswith(b"\x89PNG")


def test_what_was_told_is_shown_and_logged(told: tuple[Path, list[dict[str, Any]]]) -> None:
    """The offset moved with its evidence, the liner is wet, the refused clip left no trace."""
    data, _ = told
    state = one("show", BARN, "--at", "2026-11-26T12:00", "--json", data=data)
    maple = next(h for h in state["horses"] if h["horse"] == "Maple")
    assert maple["offset_c"] < 0
    assert maple["evidence"][0]["sign"] == "sweating"
    assert maple["evidence"][0]["shift_c"] < 0
    juniper = next(h for h in state["horses"] if h["horse"] == "Juniper")
    assert juniper["clip"]["style"] != "full"
    liner = next(g for g in state["garments"] if g["garment"] == "juniper-liner")
    assert liner["state"] == "wet" and liner["ready_at"]
    rows = list(csv.DictReader(io.StringIO(haybell("log", BARN, "--csv", data=data).stdout)))
    assert list(rows[0]) == ["id", "at", "who", "kind", "horse", "garment", "value", "undone_by", "message"]
    assert [row["message"] for row in rows if row["kind"] == "sign"] == ["Maple sweaty", "Pip shivering"]


def test_the_same_script_again_applies_nothing_twice(told: tuple[Path, list[dict[str, Any]]], tmp_path: Path) -> None:
    """Messages delivered a second time are known: no event, no post, no answer."""
    data, _ = told
    before = haybell("log", BARN, "--csv", data=data).stdout
    again = haybell("chat", BARN, "--script", tmp_path / "day.txt", "--forecast", WEATHER, "--json", data=data)
    assert again.stdout == ""
    assert haybell("log", BARN, "--csv", data=data).stdout == before


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("broken.yaml", "barn: [unclosed"),
        ("empty.yaml", ""),
        ("strange.yaml", "barn: X\nhorse: []\n"),
        ("binary.yaml", "\x00\x01"),
    ],
)
def test_a_barn_file_that_cannot_be_used_is_named_with_status_two(tmp_path: Path, name: str, text: str) -> None:
    """Every command that reads it says where it is wrong and starts nothing."""
    path = tmp_path / name
    path.write_text(text, encoding="utf-8")
    for words in (["check", path], ["plan", path], ["read", path, "--as", "A", "x"], ["show", path]):
        done = haybell(*words)
        assert done.returncode == 2, words
        assert name in done.stderr


def test_a_good_barn_passes_the_check() -> None:
    """The demo barn is good."""
    assert haybell("check", BARN).returncode == 0


def test_a_long_or_strange_message_crashes_nothing(tmp_path: Path) -> None:
    """Five thousand characters, emoji, markup, nothing at all."""
    for text in ("x" * 5000, "🐴" * 50, "<b>Maple</b> sweaty {0} %s", "", "   "):
        done = haybell("read", BARN, "--as", "Theo", "--json", text, data=tmp_path)
        assert done.returncode == 0
        json.loads(done.stdout)
