"""The ledger for people: lines that fit a phone, and CSV for a spreadsheet that runs no formula."""

import csv
import io
from datetime import UTC, datetime

import pytest

from bot.barn import Barn
from bot.events import Entry, FileSays, Seen
from bot.layout import COLUMNS, columns
from bot.problems import WrongInput
from bot.record import COLUMNS as HEAD
from bot.record import as_csv, as_lines, chosen
from tests.barn_group import Group

NOON = datetime(2026, 11, 26, 17, tzinfo=UTC)


@pytest.fixture
def entries(barn: Barn) -> list[Entry]:
    """A morning: a post, what people said, an undo, a second look."""
    group = Group(barn)
    group.until("6:20")
    for clock, who, text in (
        ("6:50", "Dot", "Juniper liner still wet"),
        ("7:20", "Theo", "all done"),
        ("8:40", "Inés", "mapel sweaty"),
        ("9:10", "Walt", "Otter is clipped, trace"),
        ("9:20", "Ruth", "keep Maple bare"),
        ("9:30", "Inés", "Birch is bare"),
        ("9:40", "Inés", "Quill is out in the field"),
        ("11:15", "Maëlle", "Pip shivering"),
        ("11:16", "Maëlle", "undo"),
    ):
        group.says(clock, who, text)
    return group.day.ledger.entries()


def rows(text: str) -> list[dict[str, str]]:
    """CSV as a spreadsheet reads it."""
    return list(csv.DictReader(io.StringIO(text)))


def test_the_columns_are_the_contracts(entries: list[Entry], barn: Barn) -> None:
    """In this order, by these names."""
    head = as_csv(entries, barn).partition("\n")[0]
    assert head == "id,at,who,kind,horse,garment,value,undone_by,message" == ",".join(HEAD)


def test_each_fact_in_its_cell(entries: list[Entry], barn: Barn) -> None:
    """Plain words, one fact a row, in the barn's own time."""
    told = {(r["kind"], r["horse"], r["garment"], r["value"]) for r in rows(as_csv(entries, barn)) if r["message"]}
    assert told >= {
        ("garment", "", "juniper-liner", "wet"),
        ("done", "all", "", ""),
        ("sign", "Maple", "", "sweating"),
        ("clip", "Otter", "", "trace"),
        ("wish", "Maple", "", "keep bare"),
        ("wearing", "Birch", "", "bare"),
        ("place", "Quill", "", "field"),
        ("sign", "Pip", "", "shivering"),
    }
    assert rows(as_csv(entries, barn))[0]["at"] == "2026-11-26T06:15:00-05:00"


def test_what_was_undone_says_by_which(entries: list[Entry], barn: Barn) -> None:
    """The sign and its second look bear the number of the undo."""
    found = rows(as_csv(entries, barn))
    (undo,) = [r for r in found if r["kind"] == "undo"]
    assert [r["kind"] for r in found if r["undone_by"] == undo["id"]] == ["sign", "recheck"]


@pytest.mark.parametrize("text", ["=1+1", "+1", "-1", "@x", "\t=1", "\r=1"])
def test_no_cell_is_a_formula(barn: Barn, text: str) -> None:
    """What somebody wrote in a chat is not run by whoever opens the table."""
    said = Entry(1, NOON, text, "g:1", Seen("Maple", "cold"), text)
    (row,) = rows(as_csv([said], barn))
    assert row["message"].startswith("'")
    assert row["who"].startswith("'")


def test_commas_quotes_and_new_lines_stay_one_cell(barn: Barn) -> None:
    """A table is not broken by a message."""
    text = 'Maple, "cold"\nand wet'
    assert rows(as_csv([Entry(1, NOON, "Inés", "g:1", Seen("Maple", "cold"), text)], barn))[0]["message"] == text


def test_lines_fit_a_phone(entries: list[Entry], barn: Barn) -> None:
    """Forty-five columns, the message under its fact."""
    text = as_lines(entries, barn)
    assert max(map(columns, text.splitlines())) <= COLUMNS
    assert "Inés: Maple sweating\n  “mapel sweaty”\n" in text
    assert "\n  undone by " in text


def test_a_fact_of_the_file_is_a_line_too(barn: Barn) -> None:
    """With the horse it is about."""
    said = Entry(1, NOON, "haybell", "", FileSays("where", "Maple", {"morning": "stall"}))
    assert "haybell: Maple file where:" in as_lines([said], barn)
    assert rows(as_csv([said], barn))[0]["value"] == "where: morning stall"


@pytest.mark.parametrize("name", ["Maple", "mapes", "MAPLE"])
def test_one_horses_lines(entries: list[Entry], barn: Barn, name: str) -> None:
    """By any of its names: its signs and wishes, and the posts that dressed it."""
    found = chosen(entries, barn, name, None)
    assert {e.event.kind for e in found} >= {"sign", "wish", "posted"}
    assert not [e for e in found if getattr(e.event, "horse", "Maple") != "Maple"]


def test_from_a_day_on(entries: list[Entry], barn: Barn) -> None:
    """From its midnight at the barn."""
    assert chosen(entries, barn, None, "2026-11-26") == entries
    assert chosen(entries, barn, None, "2026-11-27") == []


@pytest.mark.parametrize(("horse", "since", "said"), [("Nobody", None, "no horse “Nobody”"), (None, "soon", "no date")])
def test_a_wrong_question_is_told_what_to_write(barn: Barn, horse: str | None, since: str | None, said: str) -> None:
    """One line with the barn's horses, or what a date looks like."""
    with pytest.raises(WrongInput, match=said) as caught:
        chosen([], barn, horse, since)
    assert "\n" not in str(caught.value)
