"""A day written down: every line that is wrong is named at once, and the rest is in the order of time."""

from contextlib import suppress
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.chat.script import Line, load
from bot.problems import WrongFile, WrongInput

ZONE = ZoneInfo("America/New_York")


def script(tmp_path: Path, text: str) -> list[Line]:
    """The lines of a script with this text."""
    path = tmp_path / "day.txt"
    path.write_text(text, encoding="utf-8")
    return load(path, ZONE)


def test_lines_are_in_the_barns_own_time(tmp_path: Path) -> None:
    """Ten past seven is ten past seven at the barn; a colon in the message belongs to it."""
    (line,) = script(tmp_path, "2026-11-26 07:12 Inés: Maple: sweaty\n")
    assert line.at.isoformat() == "2026-11-26T07:12:00-05:00"
    assert (line.who, line.text) == ("Inés", "Maple: sweaty")


def test_comments_and_empty_lines_are_passed_over(tmp_path: Path) -> None:
    """And a byte-order mark, as some editors write it."""
    assert len(script(tmp_path, "\ufeff2026-11-26 07:12 Inés: hi\n\n  # a note\n# another\n")) == 1


def test_lines_come_by_time_and_as_written_within_a_minute(tmp_path: Path) -> None:
    """Somebody added the morning at the end."""
    text = "2026-11-26 09:00 a: 1\n2026-11-26 07:00 b: 2\n2026-11-26 07:00 a: 3\n"
    assert [line.text for line in script(tmp_path, text)] == ["2", "3", "1"]


def test_an_empty_message_is_a_message(tmp_path: Path) -> None:
    """A picture without a caption is one too."""
    assert script(tmp_path, "2026-11-26 07:12 Inés:\n")[0].text == ""


def test_a_forecast_is_looked_for_beside_the_script(tmp_path: Path) -> None:
    """Or where an absolute path says."""
    for name in ("worse.csv", str(tmp_path / "worse.csv")):
        (tmp_path / "worse.csv").touch()
        (line,) = script(tmp_path, f"2026-11-26 10:00 forecast: {name}\n")
        assert (line.who, line.text) == ("forecast", str(tmp_path / "worse.csv"))


def test_every_wrong_line_is_named(tmp_path: Path) -> None:
    """With its number, what was found and what a line looks like; the good lines do not hide the bad ones."""
    bad = ["Inés: Maple sweaty", "2026-11-26 25:12 Inés: x", "2026-13-26 07:12 Inés: x", "2026-11-26 07:12 Inés Maple",
           "2026-11-26 07:12 : x", "2026-11-26 7:12 Inés: x", "2026-11-26 10:00 forecast: nowhere.csv"]  # fmt: skip
    with pytest.raises(WrongFile) as caught:
        script(tmp_path, "\n".join(["2026-11-26 07:12 Inés: fine", *bad]))
    assert [p.line for p in caught.value.problems] == list(range(2, 9))
    assert all("day.txt:" in line for line in str(caught.value).splitlines())
    assert "nowhere.csv" in str(caught.value)


@pytest.mark.parametrize("content", [None, b"\xff\xfe\x00"])
def test_a_script_that_cannot_be_read_says_so_in_one_line(tmp_path: Path, content: bytes | None) -> None:
    """Not there, or no text."""
    path = tmp_path / "day.txt"
    if content:
        path.write_bytes(content)
    with pytest.raises(WrongInput, match=r"day\.txt.*cannot be read") as caught:
        load(path, ZONE)
    assert "\n" not in str(caught.value)


@given(st.text(max_size=200))
@settings(max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_any_text_is_lines_or_named_faults(tmp_path: Path, text: str) -> None:
    """Nothing else comes of it."""
    with suppress(WrongFile):
        assert all(line.who for line in script(tmp_path, text))
