"""What the weather of one window brings, in the numbers that reasons speak of."""

from dataclasses import replace

import numpy as np

from rules.outlook import Peak, outlooks
from tests.stable import ask, joined, unknown, wearer, weather


def views(sky):
    return outlooks(ask(sky, [wearer()], []))


def test_each_window_has_its_own_extremes():
    sky = joined(weather(-2.0, 2.0, gust=5.0, hours=12), weather(-9.0, 6.0, gust=17.0, hours=12))
    day, night = views(sky)
    assert day.coldest == Peak(-2.0, 0)
    assert night.coldest == Peak(-9.0, 12)
    assert night.gust == Peak(17.0, 12)
    assert day.hours == tuple(range(12))


def test_rain_is_summed_over_the_window_with_the_part_of_each_hour_in_it():
    question = ask(weather(5.0, 2.0, rain=1.0), [wearer()], [])
    share = question.share.copy()
    share[0, 11], share[1, 11] = 0.5, 0.5
    day, night = outlooks(replace(question, share=share))
    assert day.rain == 11.5
    assert night.rain == 12.5


def test_where_gusts_are_not_told_the_mean_wind_stands_for_them():
    sky = weather(0.0, 7.0)
    (day, _) = views(replace(sky, gust_ms=np.full(24, np.nan)))
    assert day.gust == Peak(7.0, 0)


def test_only_mild_snow_is_wet_snow():
    falls = {"snow_mm": np.full(24, 0.5)}
    assert views(replace(weather(0.5), **falls))[0].wet_snow == 6.0
    assert views(replace(weather(-8.0), **falls))[0].wet_snow == 0.0


def test_a_clear_night_is_dark_and_without_cloud():
    night = replace(weather(-5.0), cloud_pct=np.full(24, 5.0))
    assert views(night)[0].clear_night == Peak(-5.0, 0)
    assert views(replace(night, solar_wm2=np.full(24, 300.0)))[0].clear_night is None
    assert views(weather(-5.0))[0].clear_night is None


def test_an_unknown_window_says_nothing():
    (day, _) = views(unknown())
    assert day.coldest is day.warmest is day.gust is day.wettest is day.chance is day.clear_night is None
    assert day.rain == 0.0
