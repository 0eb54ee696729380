"""The heat balance: what a horseman may rely on, whatever the weather, the horse and the rug."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from hypothesis.strategies import DrawFn

from rules.coat import CLIPS
from rules.dressed import Dressed, cases
from rules.garment import Garment
from rules.heat import Margins, balance, extra_hay_kg
from rules.horse import Horse
from rules.question import Piece, Stay
from rules.weather import Hours
from tests.laboratory import (
    FIELD,
    HORSE,
    JANUARY,
    SHEET,
    air,
    case,
    cold,
    heat,
    hours,
    last,
    margins,
    pieces,
    site,
    turnout,
)

LINER = Garment("liner", "liner", 100)
STABLE_RUG = Garment("stable", "stable", 200)
CLIPPED = Horse("Clip", clip="full", clip_age_days=10)
OLD_AND_THIN = Horse("Old", age_years=26, condition=3)
A_HAIR = 1e-9  # of a kelvin: what rounding may take
RUGS = st.sampled_from([(), (SHEET,), (turnout(100),), (turnout(300, "full"),), (LINER, SHEET), (STABLE_RUG,)])

properties = settings(max_examples=60, deadline=None)


@st.composite
def animals(draw: DrawFn) -> Horse:
    clip = draw(st.sampled_from(sorted(CLIPS)))
    return Horse(
        "Any",
        species=draw(st.sampled_from(["horse", "pony", "donkey"])),
        age_years=draw(st.floats(0, 35)),
        weight_kg=draw(st.floats(80, 900)),
        condition=draw(st.floats(1, 9)),
        coat=draw(st.sampled_from(["fine", "average", "heavy"])),
        clip=clip,
        clip_age_days=None if clip == "none" else draw(st.floats(0, 200)),
        hay_feed=draw(st.sampled_from(["low", "normal", "ad lib"])),
    )


def row(draw: DrawFn, low: float, high: float, count: int) -> np.ndarray:
    return np.array(draw(st.lists(st.floats(low, high), min_size=count, max_size=count)))


@st.composite
def forecasts(
    draw: DrawFn, rain: tuple[float, float] = (0.0, 0.0), coldest: float = -25.0, warmest: float = 15.0
) -> Hours:
    count = 8
    return replace(
        hours(count=count),
        temperature_c=row(draw, coldest, warmest, count),
        humidity_pct=row(draw, 60, 100, count),
        wind_ms=row(draw, 0, 15, count),
        gust_ms=np.full(count, np.nan),
        rain_mm=row(draw, *rain, count),
        cloud_pct=row(draw, 0, 100, count),
        solar_wm2=row(draw, 0, 400, count),
        rain_probability_pct=np.full(count, 100.0 if rain[1] else 0.0),
    )


def judge(horse: Horse, rug: tuple[Garment, ...], weather: Hours, day: float = JANUARY) -> Margins:
    return balance(case(horse, *rug, day=day), air(weather))


def no_warmer(found: Margins, than: Margins) -> bool:
    """Nowhere more cold margin, nowhere less need."""
    colder = (found.cold <= than.cold + A_HAIR).all()
    return bool(colder and (found.fill_low >= than.fill_low - 1e-6 * than.fill_low.clip(1, 1e6)).all())


@properties
@given(animals(), RUGS, forecasts(), st.floats(0.5, 15))
def test_colder_never_needs_less(horse: Horse, rug: tuple[Garment, ...], weather: Hours, by: float) -> None:
    """In colder air no horse needs less clothing."""
    colder = replace(weather, temperature_c=weather.temperature_c - by)
    assert no_warmer(judge(horse, rug, colder), judge(horse, rug, weather))


@properties
@given(animals(), RUGS, forecasts(), st.floats(1, 3))
def test_windier_never_needs_less_in_the_dry(
    horse: Horse, rug: tuple[Garment, ...], weather: Hours, times: float
) -> None:
    """In more wind no dry horse needs less clothing. (After rain, wind dries: see the next.)"""
    judged = judge(horse, rug, weather)
    assume((judged.heat >= 0).all())  # a horse that sweats is not dry
    assert no_warmer(judge(horse, rug, replace(weather, wind_ms=weather.wind_ms * times)), judged)


@properties
@given(animals(), RUGS, forecasts(rain=(1.0, 6.0), coldest=1.0), st.floats(1, 3))
def test_windier_never_needs_less_in_the_rain(
    horse: Horse, rug: tuple[Garment, ...], weather: Hours, times: float
) -> None:
    """While it rains, more wind never leaves a horse needing less."""
    weather = replace(weather, humidity_pct=np.maximum(weather.humidity_pct, 85))
    judged = judge(horse, rug, weather)
    assume((judged.heat >= 0).all())
    assert no_warmer(judge(horse, rug, replace(weather, wind_ms=weather.wind_ms * times)), judged)


@properties
@given(animals(), RUGS, forecasts(rain=(0.0, 4.0)), st.lists(st.floats(0, 4), min_size=8, max_size=8))
def test_wetter_never_needs_less(horse: Horse, rug: tuple[Garment, ...], weather: Hours, more: list[float]) -> None:
    """More rain, in whichever hours, never leaves a horse needing less, then or later."""
    wetter = replace(weather, rain_mm=weather.rain_mm + np.array(more))
    dry = replace(weather, rain_mm=np.where(weather.rain_mm > 0.1, weather.rain_mm, 0.2))
    wetter = replace(wetter, rain_mm=np.maximum(wetter.rain_mm, dry.rain_mm))
    assert no_warmer(judge(horse, rug, wetter), judge(horse, rug, dry))


@properties
@given(animals(), RUGS, forecasts(rain=(0.0, 3.0)), st.floats(0.5, 8))
def test_thinner_never_needs_less(horse: Horse, rug: tuple[Garment, ...], weather: Hours, by: float) -> None:
    """A horse in poorer condition never needs less clothing."""
    thinner = replace(horse, condition=max(1.0, horse.condition - by))
    assert no_warmer(judge(thinner, rug, weather), judge(horse, rug, weather))


@properties
@given(animals(), RUGS, forecasts(), st.sampled_from(["bib", "trace", "blanket", "hunter", "full"]), st.floats(0, 60))
def test_clipped_never_needs_less(
    horse: Horse, rug: tuple[Garment, ...], weather: Hours, style: str, age: float
) -> None:
    """A clipped dry horse never needs less clothing than before the clip."""
    grown = replace(horse, clip="none", clip_age_days=None)
    clipped = replace(horse, clip=style, clip_age_days=age)
    judged = judge(grown, rug, weather)
    assume((judged.heat >= 0).all())  # under a rug the coated one may sweat, and be the colder for it
    assert no_warmer(judge(clipped, rug, weather), judged)


@properties
@given(animals(), forecasts(), st.floats(0, 400), st.floats(1, 300), st.sampled_from(["none", "half", "full"]))
def test_more_fill_is_never_colder_in_the_dry(
    horse: Horse, weather: Hours, fill: float, more: float, neck: str
) -> None:
    """While the horse does not sweat, more filling is never colder, and never cooler either."""
    light, heavy = (judge(horse, (turnout(grams, neck),), weather) for grams in (fill, fill + more))
    assume((heavy.heat >= 0).all())
    assert (heavy.cold >= light.cold - A_HAIR).all()
    assert (heavy.heat <= light.heat + A_HAIR).all()


@properties
@given(animals(), forecasts())
def test_the_band_is_where_the_margins_are_nil(horse: Horse, weather: Hours) -> None:
    """A turnout of just the least fill has no cold margin to spare, one of just the most no heat margin."""
    now = hours_of(weather, 1)
    found = judge(horse, (turnout(0),), now)
    for edge, margin in ((found.fill_low, "cold"), (found.fill_high, "heat")):
        grams = float(edge[0, 0, 0])
        if 0 < grams < 1500:
            at_the_edge = judge(horse, (turnout(grams),), now)
            assert abs(float(getattr(at_the_edge, margin)[0, 0, 0])) < 1e-6


def hours_of(weather: Hours, count: int) -> Hours:
    """The first hours of a forecast."""
    fields = {name: value[:count] for name, value in vars(weather).items() if isinstance(value, np.ndarray)}
    return replace(weather, **fields)


@properties
@given(animals(), RUGS, forecasts(rain=(0.0, 3.0)), st.sampled_from([2, 4]))
def test_finer_time_steps_say_the_same(horse: Horse, rug: tuple[Garment, ...], weather: Hours, parts: int) -> None:
    """Halves or quarters of an hour change the heat lost by no more than 2 %."""
    outdoors, one = air(weather), case(horse, *rug)
    finer = type(outdoors)(*(np.repeat(field, parts, axis=2) for field in vars(outdoors).values()))
    whole, split = balance(one, outdoors), balance(one, finer, step_h=1 / parts)
    by_hour = split.flow.reshape(*whole.flow.shape, parts).mean(axis=3)
    assert np.abs(by_hour / whole.flow - 1).max() <= 0.02


def test_a_fit_horse_in_winter_coat_stands_bare_at_minus_ten() -> None:
    """Dry and calm at −10 °C, an unclipped healthy adult is well without a rug."""
    assert cold(temperature=-10.0, wind=0.3) > 0
    assert last(margins(temperature=-10.0, wind=0.3).fill_low) == 0


def test_a_sheet_is_no_gain_on_a_dry_coat_in_still_cold() -> None:
    """It lays the hair flat and adds as much as it takes."""
    bare, sheeted = cold(temperature=-10.0, wind=0.2), cold(HORSE, SHEET, temperature=-10.0, wind=0.2)
    assert sheeted <= bare


def test_a_horse_that_is_well_bare_needs_nothing() -> None:
    """Just above its limit a sheet would leave it colder; the band still begins at nothing."""
    limit = -13.0 - cold(temperature=-13.0) + 0.1
    assert cold(temperature=limit) > 0
    assert cold(HORSE, SHEET, temperature=limit) < 0
    assert last(margins(temperature=limit).fill_low) == 0


def test_a_sheet_is_a_large_gain_in_rain_and_wind() -> None:
    """In cold rain and wind the same sheet is worth many degrees."""
    storm = {"temperature": 3.0, "wind": 8.0, "rain": 2.0, "humidity": 95.0, "count": 12}
    assert cold(HORSE, SHEET, **storm) - cold(HORSE, **storm) > 5


def test_a_shell_with_little_fill_carries_a_fit_horse_through_cold_rain() -> None:
    """3 °C, rain and 10 m/s on a ridge: a waterproof with up to 100 g, within what a fit horse may lack."""
    found = margins(HORSE, turnout(100), temperature=3.0, wind=8.5, rain=2.0, humidity=95.0, count=12)
    assert last(found.cold + found.tolerance) > 0
    assert last(margins(temperature=3.0, wind=8.5, rain=2.0, humidity=95.0, count=12).cold) < -8


def test_a_clipped_horse_outdoors_wears_about_two_hundred_grams_at_freezing() -> None:
    """A full clip at 0 °C in a fresh wind: 200 g is about right, a sheet is not, a heavy is warm enough."""
    windy = {"temperature": 0.0, "wind": 3.0}
    sheet, medium, heavy = (
        last((m := margins(CLIPPED, rug, **windy)).cold + m.tolerance) for rug in (SHEET, turnout(200), turnout(400))
    )
    assert sheet < -5
    assert -1 < medium < 5
    assert heavy > 3


def test_an_old_thin_horse_needs_more() -> None:
    """Less flesh, and no allowance for hardiness."""
    windy = {"temperature": -10.0, "wind": 4.0}
    fit, frail = margins(HORSE, **windy), margins(OLD_AND_THIN, **windy)
    assert last(frail.fill_low) > last(fit.fill_low) + 20
    assert last(frail.tolerance) == 0 < last(fit.tolerance)


def test_a_heavy_rug_in_mild_sun_is_too_warm() -> None:
    """300 g at 12 °C in the sun: the horse must sweat."""
    assert heat(HORSE, turnout(300), temperature=12.0, wind=2.0, sun=500.0, cloud=0.0) < -5


@pytest.mark.parametrize("horse", [HORSE, CLIPPED, OLD_AND_THIN], ids=lambda h: h.name)
@pytest.mark.parametrize("water", ["wet", "soaked"])
def test_a_wet_layer_at_the_skin_costs_more_than_it_gives(horse: Horse, water: str) -> None:
    """A wet liner under a dry turnout is worse than no liner, while a dry one is better."""
    outdoors = air(hours(0.0, 3.0, count=3))

    def with_liner(state: str) -> float:
        outfit = (Piece(LINER, state), Piece(turnout(100)))
        return last(balance(cases([Dressed(horse, outfit)], site(), JANUARY), outdoors).cold)

    without = cold(horse, turnout(100), temperature=0.0, wind=3.0, count=3)
    assert with_liner("dry") > without > with_liner(water)


def test_wet_hair_is_colder_than_dry_hair_under_a_rug_too() -> None:
    """A rug on a wet horse shuts the water in."""
    outdoors = air(hours(0.0, 2.0))
    wet, dry = (
        last(balance(cases([Dressed(HORSE, pieces(turnout(100)), 0, w)], site(), JANUARY), outdoors).cold)
        for w in (True, False)
    )
    assert wet < dry - 2


def test_twice_the_fill_is_not_twice_the_help() -> None:
    """The second 200 g save less heat than the first."""
    none, once, twice = (
        last(margins(CLIPPED, turnout(grams), temperature=-5.0, wind=3.0).flow) for grams in (0, 200, 400)
    )
    assert once - twice < 0.6 * (none - once)


def test_layers_press_each_other() -> None:
    """100 g under 100 g is warmer than 100 g, and no warmer than 200 g and a layer of air."""
    one, layered, two = (
        last(margins(CLIPPED, *rugs, temperature=0.0).clothes)
        for rugs in ((turnout(100),), (LINER, turnout(100)), (turnout(200),))
    )
    assert one < layered < two + 0.02


def test_a_shed_does_nothing_for_a_horse_that_eats_outside() -> None:
    """With the hay out in the wind the shed stands empty; with the hay in it, it is worth many degrees."""
    storm = {"temperature": 0.0, "wind": 8.0, "rain": 2.0, "humidity": 95.0}
    no_shed, hay_out, hay_in = (
        cold(HORSE, stay=stay, **storm)
        for stay in (FIELD, Stay("field", "shed", "outside"), Stay("field", "shed", "in shelter"))
    )
    assert hay_out == no_shed
    assert hay_in > no_shed + 5


def test_too_warm_even_without_fill_is_said_as_such() -> None:
    """On a hot day the band under a sheet ends below nothing; on a cool one it has a top."""
    hot, cool = (margins(HORSE, SHEET, temperature=t, wind=1.0) for t in (26.0, 0.0))
    assert last(hot.heat) < 0
    assert last(hot.fill_high) == -np.inf
    assert 0 < last(cool.fill_high) < 1000


def test_a_stall_is_kinder_than_a_windy_field() -> None:
    """Still, dry and a little warmer."""
    storm = {"temperature": 0.0, "wind": 8.0, "rain": 2.0}
    assert cold(CLIPPED, stay=Stay("stall"), **storm) > cold(CLIPPED, **storm) + 8


def test_rain_outside_leaves_a_good_turnout_dry_within() -> None:
    """After a day of rain the shell is wet and the filling is not."""
    found = margins(HORSE, turnout(200), temperature=5.0, wind=5.0, rain=2.0, humidity=95.0, count=24)
    assert found.water.outside_end.min() > 0.1
    assert found.cloth.max() < 0.05


def test_a_horse_that_sweats_by_day_is_colder_by_night() -> None:
    """Far too warm a rug by day wets the hair, and the night finds the horse colder than one that stayed dry."""
    day, night = np.full(10, 24.0), np.full(10, -5.0)
    sweats, rests = (replace(hours(count=20), temperature_c=np.r_[first, night]) for first in (day, night))
    sweated, rested = (judge(HORSE, (turnout(400, "full"),), weather) for weather in (sweats, rests))
    assert sweated.heat[0, 0, 5] < -20
    assert sweated.water.inner[0, 0, 5] > 2 * rested.water.inner[0, 0, 5]  # some of it goes through the clothes
    assert sweated.cold[0, 0, 10] < rested.cold[0, 0, 10] - 1


def test_the_cold_costs_hay() -> None:
    """Below its critical temperature a horse burns more, and the hay for it is a sensible number of kilograms."""
    found, one = margins(temperature=-30.0), case()
    hay = last(extra_hay_kg(one, found.extra))
    assert 5 < last(found.extra) < 40
    assert 0.5 < hay < 3
    assert last(extra_hay_kg(one, margins(temperature=0.0).extra)) == 0


def test_what_nobody_knows_is_not_judged() -> None:
    """An hour without temperature, wind or rain has no margin; the hours around it have."""
    for name in ("temperature_c", "wind_ms", "rain_mm"):
        weather = hours()
        gap = getattr(weather, name).copy()
        gap[2] = np.nan
        found = judge(CLIPPED, (turnout(100),), replace(weather, **{name: gap}))
        for values in (found.cold, found.heat, found.fill_low, found.fill_high):
            assert np.isnan(values[0, 0]).tolist() == [False, False, True, False, False, False]


def test_cases_do_not_touch_each_other() -> None:
    """A horse fares the same alone as in a barn of others."""
    outdoors = air(hours(2.0, 5.0, rain=1.0))
    barn = [Dressed(HORSE, pieces(SHEET)), Dressed(CLIPPED, pieces(LINER, turnout(100))), Dressed(OLD_AND_THIN)]
    together = balance(cases(barn, site(), JANUARY), outdoors)
    for number, one in enumerate(barn):
        alone = balance(cases([one], site(), JANUARY), outdoors)
        np.testing.assert_allclose(together.cold[number], alone.cold[0])
        np.testing.assert_allclose(together.fill_low[number], alone.fill_low[0])
