"""Where the sun stands."""

from datetime import UTC, datetime

import numpy as np

from rules.sun import elevation, likely_solar


def day(month: int, date: int) -> np.ndarray:
    """Every hour of a day of 2026, POSIX seconds."""
    return datetime(2026, month, date, tzinfo=UTC).timestamp() + 3600.0 * np.arange(24)


def test_a_winter_day_is_short_and_low() -> None:
    """Vermont: under nine hours above the horizon at midwinter, over fifteen at midsummer."""
    winter, summer = (elevation(44.5, -72.3, day(month, 21)) for month in (12, 6))
    assert (winter > 0).sum() <= 9
    assert (summer > 0).sum() >= 15
    assert winter.max() < 23 < 68 < summer.max()


def test_south_of_the_equator_the_seasons_turn() -> None:
    """June is winter in New Zealand."""
    assert elevation(-44.5, 170.0, day(6, 21)).max() < 23


def test_noon_comes_later_in_the_west() -> None:
    """The sun is highest at noon by the sun, not by a clock."""
    assert elevation(45.0, 0.0, day(3, 20)).argmax() == 12
    assert elevation(45.0, -90.0, day(3, 20)).argmax() == 18


def test_the_night_has_no_sun_and_cloud_takes_most_of_it() -> None:
    """Nothing below the horizon; a quarter of the light under full cloud."""
    heights, clear = np.array([-10.0, 0.0, 30.0]), np.zeros(3)
    open_sky, overcast = likely_solar(heights, clear), likely_solar(heights, clear + 1)
    assert open_sky[:2].tolist() == [0.0, 0.0]
    assert 400 < open_sky[2] < 550
    assert 0.2 < overcast[2] / open_sky[2] < 0.3
