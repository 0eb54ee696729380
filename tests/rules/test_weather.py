"""A forecast as what reaches the horse, in a few ways it may come out."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.question import Stay
from rules.weather import Air, Hours, along, at_horse, scenarios, sky_loss
from tests.laboratory import FIELD, hours, site

STALL = Stay("stall")
SHED_HAY_OUT = Stay("field", "shed", "outside")
SHED_HAY_IN = Stay("field", "shed", "in shelter")
TREES_HAY_IN = Stay("field", "trees", "in shelter")
STORM = hours(2.0, 8.0, rain=2.0, count=4)


def maybe_rain(chance: float, amount: float = 1.0) -> Hours:
    """Four hours that may bring rain."""
    return replace(hours(4.0, 3.0, rain=amount, count=4), rain_probability_pct=np.full(4, chance))


def outdoors(weather: Hours, *stays: Stay, exposure: str = "open") -> Air:
    place = site(exposure=exposure)  # type: ignore[arg-type]
    return at_horse(scenarios(weather, place), weather, place, stays or (FIELD,))


def test_the_first_scenario_is_the_forecast() -> None:
    """As the provider said it, and the likeliest."""
    ways = scenarios(STORM, site())
    np.testing.assert_array_equal(ways.temperature[0], STORM.temperature_c)
    np.testing.assert_allclose(ways.wind[0], STORM.wind_ms)
    np.testing.assert_allclose(ways.rain[0], STORM.rain_mm)
    assert ways.weight.argmax() == 0


@given(st.floats(0, 100), st.floats(0, 3))
def test_weights_are_a_share_of_one(chance: float, amount: float) -> None:
    """Whatever the chance of rain, three or six ways, each with a positive weight."""
    weight = scenarios(maybe_rain(chance, amount), site()).weight
    assert weight.sum() == pytest.approx(1)
    assert len(weight) in {3, 6}
    assert (weight > 0).all()


@given(st.floats(6, 94))
def test_rain_comes_with_its_chance(chance: float) -> None:
    """The weight of the ways in which it rains is the chance that the provider gave."""
    ways = scenarios(maybe_rain(chance), site())
    wet = ways.rain.max(axis=1) > 0
    assert ways.weight[wet].sum() == pytest.approx(chance / 100)


def test_certain_rain_is_in_every_way_and_a_remote_chance_in_none() -> None:
    """99 % is rain; 3 % without an amount is not."""
    assert (scenarios(maybe_rain(99), site()).rain > 0).all()
    assert (scenarios(maybe_rain(3, 0.0), site()).rain == 0).all()


def test_rain_without_an_amount_is_a_little() -> None:
    """A provider that says 60 % and 0.0 mm means that something may fall."""
    ways = scenarios(maybe_rain(60, 0.0), site())
    assert ways.rain.max() == pytest.approx(0.3)
    assert ways.snow.max() == 0


def test_what_may_fall_in_frost_is_snow() -> None:
    """A chance without an amount at −8 °C wets nobody with rain."""
    ways = scenarios(replace(maybe_rain(60, 0.0), temperature_c=np.full(4, -8.0)), site())
    assert ways.rain.max() == 0
    assert ways.snow.max() == pytest.approx(0.3)


def test_an_amount_is_believed_against_a_chance_of_nought() -> None:
    """A file that says 2 mm and 0 % means rain: dry is the mistake that makes a horse suffer."""
    assert (scenarios(maybe_rain(0, 2.0), site()).rain == 2.0).all()


def test_a_provider_without_chances_is_taken_at_its_word() -> None:
    """Rain where it has rain."""
    ways = scenarios(maybe_rain(float("nan")), site())
    assert (ways.rain == 1.0).all()


def test_temperature_keeps_its_mean_and_its_spread() -> None:
    """Three points, weighted, have the spread that was asked for."""
    weather = replace(hours(count=4), spread_c=np.full(4, 2.0))
    ways = scenarios(weather, site())
    mean = ways.weight @ ways.temperature
    np.testing.assert_allclose(mean, weather.temperature_c, atol=1e-12)
    np.testing.assert_allclose(ways.weight @ (ways.temperature - mean) ** 2, 4.0)


def test_tomorrow_is_less_sure_than_today() -> None:
    """Without an ensemble the spread grows with lead time."""
    ways = scenarios(hours(count=30), site())
    spread = np.ptp(ways.temperature, axis=0)
    assert (np.diff(spread) > 0).all()


def test_the_harsher_way_is_colder_and_windier() -> None:
    """Cold and wind together are what a barn must be ready for."""
    ways = scenarios(STORM, site())
    assert (ways.temperature[1] < ways.temperature[0]).all()
    assert (ways.wind[1] > ways.wind[0]).all()
    assert (ways.temperature[2] > ways.temperature[0]).all()


def test_a_ridge_is_windier_than_a_hollow() -> None:
    """The same forecast at ten metres, at three sites."""
    ridge, flat, hollow = (outdoors(STORM, exposure=e).wind.max() for e in ("ridge", "open", "sheltered"))
    assert ridge > flat > hollow > 0


def test_gusts_chill_a_little_more_than_the_mean_wind() -> None:
    """And a forecast without gusts is judged by its wind."""
    gusty = outdoors(replace(STORM, gust_ms=2 * STORM.wind_ms)).wind[0, 0]
    steady = outdoors(replace(STORM, gust_ms=np.full(4, np.nan))).wind[0, 0]
    assert (gusty > steady).all()
    assert (gusty < 1.3 * steady).all()


def test_a_shed_helps_only_a_horse_that_can_be_in_it() -> None:
    """With its hay outside, a horse has the open field's weather to the last digit."""
    field, out, inside = (outdoors(STORM, stay) for stay in (FIELD, SHED_HAY_OUT, SHED_HAY_IN))
    for name, value in vars(field).items():
        np.testing.assert_array_equal(getattr(out, name), value)
    assert (inside.wind < 0.4 * field.wind).all()
    assert (inside.rain < 0.3 * field.rain).all()


def test_a_horse_whose_hay_is_eaten_up_can_use_the_shed() -> None:
    """Twelve hours of hay in the wind lie between a whole day of it and none."""
    all_day, half, none = (
        outdoors(STORM, Stay("field", "shed", hay, feeding_h=hours)).wind
        for hay, hours in (("outside", 24.0), ("outside", 12.0), ("none", 24.0))
    )
    np.testing.assert_allclose(half, (all_day + none) / 2)
    assert (none < all_day).all()


def test_without_a_shelter_there_is_none() -> None:
    """A horse without hay in an open field has the open field's weather."""
    np.testing.assert_array_equal(outdoors(STORM, Stay("field", "none", "none")).wind, outdoors(STORM, FIELD).wind)


def test_trees_help_less_than_a_shed() -> None:
    """They break wind and some of the rain."""
    field, trees, shed = (outdoors(STORM, stay) for stay in (FIELD, TREES_HAY_IN, SHED_HAY_IN))
    assert (shed.wind < trees.wind).all()
    assert (trees.wind < field.wind).all()
    assert (shed.rain < trees.rain).all()


def test_a_stall_is_still_dry_and_a_little_warmer() -> None:
    """No rain, no sun, no sky, hardly any wind."""
    stall = outdoors(STORM, STALL)
    assert (stall.temperature > outdoors(STORM).temperature).all()
    assert stall.wind.max() == pytest.approx(0.2)
    assert stall.rain.max() == stall.sun.max() == stall.sky.max() == 0


def test_snow_is_wet_when_it_melts() -> None:
    """At −5 °C it is snow, at +1 °C it is water, and none is lost between."""
    for temperature, rain in ((-5.0, 0.0), (1.0, 1.0)):
        reached = outdoors(hours(temperature, snow=1.0))
        assert reached.rain[0, 0] == pytest.approx(rain)
        assert reached.rain[0, 0] + reached.snow[0, 0] == pytest.approx(1.0)


def test_a_clear_night_takes_heat_and_cloud_keeps_it() -> None:
    """About 95 W/m² under a clear sky at freezing, a sixth of it under cloud."""
    clear, overcast = (float(sky_loss(np.array(0.0), np.array(cloud))) for cloud in (0.0, 1.0))
    assert 80 < clear < 110
    assert overcast == pytest.approx(0.16 * clear)


def test_rain_does_not_fall_from_a_clear_sky() -> None:
    """A provider that says rain and no cloud is believed about the rain."""
    odd = replace(STORM, cloud_pct=np.zeros(4))
    np.testing.assert_array_equal(outdoors(odd).sky, outdoors(replace(odd, cloud_pct=np.full(4, 100.0))).sky)


def test_sun_is_reckoned_where_a_provider_is_silent() -> None:
    """Nothing at midnight, something at noon, more without cloud."""
    day = replace(hours(count=24), solar_wm2=np.full(24, np.nan))
    clear, overcast = (outdoors(replace(day, cloud_pct=np.full(24, c))).sun[0, 0] for c in (0.0, 100.0))
    assert clear[0] == 0
    assert clear[12] > 4 * overcast[12] * 0.9 > 0


@pytest.mark.parametrize("name", ["temperature_c", "wind_ms", "rain_mm", "humidity_pct"])
def test_what_is_not_known_stays_not_known(name: str) -> None:
    """Element by element: the hour before and the hour after are not touched."""
    gap = getattr(STORM, name).copy()
    gap[1] = np.nan
    reached = outdoors(replace(STORM, **{name: gap}), FIELD, SHED_HAY_IN)
    unknown = np.any([np.isnan(value) for value in vars(reached).values()], axis=0)
    assert unknown[:, :, 1].all()
    assert not unknown[:, :, [0, 2, 3]].any()


@pytest.mark.parametrize("name", ["wind_ms", "rain_mm"])
def test_a_stall_can_be_judged_without_wind_or_rain(name: str) -> None:
    """Indoors only the temperature must be known."""
    reached = outdoors(replace(STORM, **{name: np.full(4, np.nan)}), STALL)
    assert all(np.isfinite(value).all() for value in vars(reached).values())


@pytest.mark.parametrize("name", ["gust_ms", "cloud_pct", "solar_wm2", "rain_probability_pct"])
def test_what_may_be_left_out_may_be_left_out(name: str) -> None:
    """A forecast without gusts, cloud, sun or chances of rain is still judged."""
    reached = outdoors(replace(STORM, **{name: np.full(4, np.nan)}))
    assert all(np.isfinite(value).all() for value in vars(reached).values())


def test_a_horse_that_moves_has_the_air_of_where_it_is() -> None:
    """Two hours in the field, two in the stall."""
    places = outdoors(STORM, FIELD, STALL)
    moved = along(places, np.array([[0, 0, 1, 1]]))
    np.testing.assert_array_equal(moved.wind[0, :, :2], places.wind[0, :, :2])
    np.testing.assert_array_equal(moved.rain[0, :, 2:], places.rain[1, :, 2:])
