"""Two sheets compared: who is to wear something else than people were told."""

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta

import pytest

from bot.barn import Barn
from bot.events import Entry, GarmentIs, Seen
from bot.moves import carried, moved, put_on, shared
from bot.sheet import DressSheet, Sheet
from bot.state import Standing

Dressing = Callable[..., DressSheet]


def dressed(sheet: Sheet, horse: str, window: int, *wear: str) -> Sheet:
    """The same sheet with one horse in something else in one window."""
    horses = []
    for one in sheet.horses:
        windows = list(one.windows)
        if one.horse == horse:
            windows[window] = replace(windows[window], wear=wear)
        horses.append(replace(one, windows=tuple(windows)))
    return replace(sheet, horses=tuple(horses))


@pytest.fixture
def standing(sheet: Sheet) -> Standing:
    """The morning round as posted."""
    first = sheet.windows[0]
    wear = {h.horse: h.windows[0].wear for h in sheet.horses}
    return Standing(1, first.round, first.start.date(), first.start, first.end, wear)


def test_nobody_moves_between_a_sheet_and_itself(sheet: Sheet) -> None:
    """Nor where the same pieces are named in another order."""
    assert moved(sheet, sheet) == []
    assert moved(sheet, dressed(sheet, "Maple", 0, "maple-sheet", "maple-liner")) == []


def test_a_move_says_who_when_and_from_what_to_what(sheet: Sheet) -> None:
    """Pip goes bare tonight."""
    (move,) = moved(sheet, dressed(sheet, "Pip", 1))
    assert (move.horse, move.round, move.start) == ("Pip", "evening", sheet.windows[1].start)
    assert (move.before.wear, move.after.wear) == (("pip-medium",), ())


def test_a_horse_that_moves_in_both_windows_is_told_once(sheet: Sheet) -> None:
    """The first window is the one that wants hands now."""
    after = dressed(dressed(sheet, "Ned", 0), "Ned", 1)
    assert [(m.horse, m.round) for m in moved(sheet, after)] == [("Ned", "morning")]


def test_a_window_that_people_were_not_told_of_moves_nobody(sheet: Sheet) -> None:
    """Tomorrow's round has its own post."""
    later = tuple(replace(w, start=w.start + timedelta(days=1)) for w in sheet.windows)
    assert moved(sheet, replace(dressed(sheet, "Ned", 0), windows=later)) == []


def test_a_horse_new_to_the_barn_does_not_move(sheet: Sheet) -> None:
    """It was told nothing before."""
    assert moved(replace(sheet, horses=sheet.horses[1:]), dressed(sheet, "Maple", 0)) == []


def test_what_is_put_on_now_is_the_standing_rounds_only(sheet: Sheet, standing: Standing) -> None:
    """Ned changes now; Pip only tonight, and stays done; another round's standing plan is not touched."""
    after = dressed(dressed(sheet, "Ned", 0), "Pip", 1)
    assert put_on(after, ["Ned", "Pip"], standing) == {"Ned": ()}
    assert put_on(after, ["Ned"], replace(standing, round="noon")) == {}


def test_what_is_carried_over_stands_on_the_later_hours(sheet: Sheet) -> None:
    """Four hours on, Maple's reasons and margins point at the same clocks as before."""
    later = replace(sheet, sky=sheet.sky[4:])
    was, now = sheet.horse("Maple"), carried("Maple", sheet, later)
    assert [d.wear for d in now.windows] == [d.wear for d in was.windows]
    for old, new in zip(was.windows, now.windows, strict=True):
        assert new.cold_by_hour == old.cold_by_hour[4:]
        clocks = [sheet.sky[r.hour].at if r.hour is not None and r.hour >= 4 else None for r in old.why]
        assert [None if r.hour is None else later.sky[r.hour].at for r in new.why] == clocks


def test_each_report_is_answered_with_its_own_horses(sheet: Sheet, farm: Barn, standing: Standing) -> None:
    """Two people reported within a minute: each reads what their report did, the first also what follows elsewhere."""
    after = dressed(dressed(dressed(sheet, "Otis", 0), "Ned", 0), "Biscuit", 0)
    reports = [
        [Entry(1, standing.start, "Dot", "g:1", GarmentIs("otis-sheet", "wet"))],
        [Entry(2, standing.start, "Inés", "g:2", Seen("Ned", "sweating"))],
    ]
    parts = shared(moved(sheet, after), reports, farm)
    assert [[m.horse for m in part] for part in parts] == [["Otis", "Biscuit"], ["Ned"]]
