"""What no outfit reaches, and the one garment that would."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.plan import plan
from tests.stable import FIELD, STALL, ask, joined, sheet, turnout, wearer, weather


def missing(sky, *pieces, **facts):
    return plan(ask(sky, [wearer("Maple", FIELD, **facts)], list(pieces))).missing


def test_a_horse_that_is_warm_enough_misses_nothing():
    assert missing(weather(2.0, 1.0)) == ()


def test_a_clipped_horse_without_clothes_misses_a_turnout_of_its_size():
    (found,) = missing(weather(2.0, 2.0), clip="full", size_in=69)
    assert (found.horse, found.kind, found.size_in) == ("Maple", "turnout", 69)
    assert found.fill_low_g >= 50


def test_in_the_stall_it_is_a_stable_rug():
    told = plan(ask(weather(-10.0, 2.0), [wearer("Maple", STALL, clip="full")], []))
    assert told.missing[0].kind == "stable"


def test_where_only_wind_and_wet_are_the_trouble_a_plain_sheet_is_named():
    """Fill is not what it lacks."""
    (found,) = missing(weather(4.0, 9.0, rain=2.5))
    assert found.kind == "sheet" or found.fill_low_g <= 100


def test_in_weather_that_nothing_meets_the_warmest_there_is_is_named():
    (found,) = missing(weather(-30.0, 12.0), clip="full")
    assert found.fill_low_g == found.fill_high_g == 400


def test_a_mild_afternoon_limits_what_is_asked_for():
    """Cold at dawn and warm by noon: the range named stays below what would make it sweat."""
    sky = joined(weather(-12.0, 4.0, hours=6), weather(13.0, 1.0, hours=6))
    (found,) = missing(sky, clip="trace")
    assert found.fill_high_g - found.fill_low_g <= 50


@settings(max_examples=25, deadline=None)
@given(st.floats(-10, 3), st.floats(0.5, 5), st.sampled_from(["trace", "hunter", "full"]))
def test_the_garment_named_would_really_reach_it(temperature, wind, clip):
    """Hang it in the tack room and ask again."""
    sky = weather(temperature, wind)
    for found in missing(sky, sheet(), clip=clip):
        if found.fill_low_g < 400:
            assert missing(sky, sheet(), turnout(found.fill_low_g), clip=clip) == ()


@pytest.mark.parametrize("fill", [200, 300])
def test_the_right_clothes_at_hand_leave_nothing_missing(fill):
    assert missing(weather(0.0, 2.0), turnout(fill), clip="trace") == ()
