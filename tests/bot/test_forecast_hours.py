"""Hours cut to a window and written as plain numbers for the ledger."""

from datetime import UTC, datetime, timedelta

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from bot.forecast import from_air, to_air, unknown_hours, window
from bot.forecast.hours import COLUMNS, HOUR
from rules.weather import Hours

START = datetime(2026, 11, 26, tzinfo=UTC)
START_S = int(START.timestamp())


def hours(n: int) -> Hours:
    """Hours in which every column counts up from 0."""
    return Hours(START_S, **{name: np.arange(n, dtype=np.float64) for name in COLUMNS})


@given(n=st.integers(1, 60), shift=st.integers(-80, 80), length=st.integers(0, 80))
def test_a_window_has_exactly_the_hours_asked_for(n: int, shift: int, length: int) -> None:
    """What the forecast has stands at its hour; all else is not known."""
    cut = window(hours(n), START_S + shift * HOUR, length)
    assert (cut.start_s, len(cut)) == (START_S + shift * HOUR, length)
    wanted = [float(k) if 0 <= k < n else np.nan for k in range(shift, shift + length)]
    np.testing.assert_array_equal(cut.rain_mm, np.array(wanted))


def test_a_window_keeps_a_providers_own_spread() -> None:
    """Spread is cut with the rest, and stays absent where it is absent."""
    own = hours(5)
    assert window(own, START_S, 3).spread_c is None
    spread = Hours(START_S, **{name: getattr(own, name) for name in COLUMNS}, spread_c=np.arange(5.0))
    cut = window(spread, START_S + 4 * HOUR, 2).spread_c
    assert cut is not None
    np.testing.assert_array_equal(cut, [4.0, np.nan])


def test_no_hours_are_hours_of_which_nothing_is_known() -> None:
    """A barn without a forecast still has hours to plan for."""
    unknown = unknown_hours(START_S, 24)
    assert all(np.isnan(getattr(unknown, name)).all() for name in COLUMNS)


def test_the_ledger_keeps_a_day_that_ends_with_the_signs_hour() -> None:
    """At most 24 hours, the last of them the one in which somebody looked."""
    air = to_air(hours(48), START + timedelta(hours=30, minutes=40))
    assert air is not None
    assert air.start == START + timedelta(hours=7)
    assert air.columns["wind_ms"] == [float(k) for k in range(7, 31)]
    early = to_air(hours(48), START + timedelta(hours=2))
    assert early is not None
    assert early.columns["wind_ms"] == [0.0, 1.0, 2.0]


def test_a_sign_outside_the_forecast_has_no_air() -> None:
    """No weather is better than that of another day."""
    assert to_air(hours(48), START + timedelta(hours=48)) is None
    assert to_air(hours(48), START - timedelta(minutes=1)) is None


def test_what_the_ledger_keeps_comes_back_the_same() -> None:
    """Unknown stays unknown, numbers stay numbers."""
    kept = hours(10)
    kept.gust_ms[:] = np.nan
    air = to_air(kept, START + timedelta(hours=9))
    assert air is not None
    assert air.columns["gust_ms"] == [None] * 10
    back = from_air(air)
    assert back.start_s == START_S
    for name in COLUMNS:
        np.testing.assert_array_equal(getattr(back, name), getattr(kept, name))


def test_an_older_ledgers_air_may_have_fewer_columns() -> None:
    """A column that was not kept is not known; one that no longer exists is passed over."""
    air = to_air(hours(3), START + timedelta(hours=2))
    assert air is not None
    del air.columns["cloud_pct"]
    air.columns["soil_c"] = [1.0, 2.0, 3.0]
    back = from_air(air)
    assert np.isnan(back.cloud_pct).all()
    assert back.wind_ms.tolist() == [0.0, 1.0, 2.0]
