"""A plan on a sheet: instants in the barn's own time, plain numbers, nothing lost when it is stored."""

from datetime import datetime, timedelta
from itertools import pairwise
from math import nan

import numpy as np
import pytest

from bot import rounds
from bot.barn import Barn
from bot.draft import plain
from bot.forecast import Forecast, from_file
from bot.planning import Planner
from bot.sheet import Sheet, dump, load
from bot.state import as_filed
from tests.november import WEATHER


@pytest.fixture
def at(barn: Barn) -> datetime:
    """A quarter past six that morning."""
    return datetime(2026, 11, 26, 6, 15, tzinfo=barn.zone)


@pytest.fixture
def weather(at: datetime) -> Forecast:
    """The morning's forecast."""
    return from_file(WEATHER / "morning.csv", at)


@pytest.fixture
def drawn(barn: Barn, at: datetime, weather: Forecast) -> Sheet:
    """The morning's sheet."""
    return Planner(barn).sheet(as_filed(barn), weather, rounds.windows(barn, at.replace(hour=7, minute=0)), at)


def test_a_sheet_comes_back_from_the_store_as_it_was(drawn: Sheet) -> None:
    """What people were shown is what "why" speaks of tomorrow."""
    assert load(dump(drawn)) == drawn


def test_every_hour_carries_the_barns_own_time(drawn: Sheet) -> None:
    """From seven to seven in Vermont, hour by hour."""
    clocks = [hour.at for hour in drawn.sky]
    assert f"{clocks[0]:%H:%M %z}" == "07:00 -0500"
    assert {b - a for a, b in pairwise(clocks)} == {timedelta(hours=1)}
    assert len(clocks) == 24


def test_margins_stand_in_their_own_window_only(drawn: Sheet) -> None:
    """The morning's hours have the morning's margins; the worst is the least of them, at its hour."""
    for horse in drawn.horses:
        for dress, window in zip(horse.windows, drawn.windows):
            known = {h.at: m for h, m in zip(drawn.sky, dress.cold_by_hour) if m is not None}
            assert all(window.start - timedelta(hours=1) < at < window.end for at in known)
            assert dress.cold_margin_c == pytest.approx(min(known.values()), abs=0.06)


def test_reasons_and_checks_point_at_hours_of_the_sheet(drawn: Sheet) -> None:
    """An index that points nowhere would be a sentence without a time."""
    reasons = [r for h in drawn.horses for d in h.windows for r in (*d.why, *d.cautions)]
    assert reasons
    assert all(r.hour is None or 0 <= r.hour < len(drawn.sky) for r in reasons)
    assert all(drawn.windows[0].start <= check.at <= drawn.windows[-1].end for check in drawn.checks)


def test_what_is_wet_says_where_it_hangs_and_when_it_is_dry(drawn: Sheet) -> None:
    """Sparrow's turnout is damp in the hay loft."""
    (damp,) = drawn.drying
    assert (damp.garment, damp.state, damp.where) == ("sparrow-medium", "damp", "hay loft")
    assert damp.ready_at is not None


def test_an_array_becomes_plain_numbers() -> None:
    """Two decimals; what is not known is None, and nothing of numpy is left."""
    values = plain(np.array([1.234, nan, -0.5]))
    assert values == (1.23, None, -0.5)
    assert {type(v) for v in values} == {float, type(None)}
