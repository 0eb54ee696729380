"""Water into hair and cloth, and out again."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.garment import Garment
from rules.heat import balance
from rules.parameters import COAT_MOST_WATER, RAIN_ON_BODY
from rules.question import WaterState
from rules.wetness import amount, catch, dry_after_h, follow
from tests.laboratory import HORSE, SHEET, air, case, hours, margins, soaked, turnout

TURNOUT = Garment("turnout", "turnout", 200, waterproof=True)
LINER = Garment("liner", "liner", 200)
STATES: list[WaterState] = ["dry", "damp", "wet", "soaked"]
LONG = np.ones(24 * 60)


def rail_h(
    garment: Garment, state: WaterState, t: float = 18.0, rh: float = 50.0, v: float = 0.2, **leaks: bool
) -> float:
    return dry_after_h(garment, state, t * LONG, rh * LONG, v * LONG, **leaks)


def test_drizzle_runs_off_and_driven_rain_gets_in() -> None:
    """Of each millimetre, hair takes little in drizzle and most in a storm."""
    drizzle, steady, storm = (float(catch(np.array(r), np.array(v)) / r) for r, v in ((0.1, 0), (3.0, 0), (5.0, 12)))
    assert drizzle < 0.1 * RAIN_ON_BODY * 10 * 0.1 < steady < storm


@given(st.floats(0, 20), st.floats(0, 20), st.floats(0, 5), st.floats(0, 5))
def test_more_rain_or_wind_never_brings_less(rain: float, wind: float, more: float, gale: float) -> None:
    """Nor more than falls."""
    less, most = catch(np.array(rain), np.array(wind)), catch(np.array(rain + more), np.array(wind + gale))
    assert less <= most + 1e-12
    assert most <= rain + more


def test_hair_fills_no_further_than_it_can_hold() -> None:
    """After days of rain the coat is as full as a coat gets."""
    wet = margins(temperature=8.0, wind=6.0, rain=5.0, humidity=98.0, count=72).water
    depth = case().soaking.depth[2, 0]
    assert wet.hair_end[2, 0, 0] == pytest.approx(COAT_MOST_WATER * depth)


def test_a_wet_coat_dries_within_a_day_or_two() -> None:
    """A soaked winter coat takes the better part of a day and more; wind and dry air hurry it."""
    still = balance(soaked(case(), 0.11), air(hours(8.0, 0.5, humidity=90.0, count=60))).water.hair[2, 0, 0]
    windy = balance(soaked(case(), 0.11), air(hours(8.0, 5.0, humidity=60.0, count=60))).water.hair[2, 0, 0]
    dry_after = [int(np.argmax(water < 0.01)) for water in (windy, still)]
    assert 5 < dry_after[0] < dry_after[1] < 48


def test_water_is_neither_made_nor_lost() -> None:
    """What came less what dried is what is left, in the cloth of a rug that rain soaks."""
    rug = Garment("stable", "stable", 300)
    found = margins(HORSE, rug, temperature=5.0, wind=3.0, rain=0.6, humidity=95.0, count=6).water
    came = 6 * 0.8 * RAIN_ON_BODY * 0.6
    assert found.within_end[0, 0] == pytest.approx(came - found.inner[0, 0].sum())


def test_rain_under_a_shell_wets_neck_and_legs_only() -> None:
    """The covered hair of a horse in a good turnout stays dry."""
    found = margins(HORSE, SHEET, temperature=5.0, wind=5.0, rain=3.0, count=12).water
    assert found.hair[0].max() == 0
    assert found.hair[2, 0, 0, -1] > 0.1


def test_a_covered_back_takes_the_rain_off_the_hair() -> None:
    """Neck and legs beside a sheet take less than the open back of a bare horse."""
    bare, beside = (
        margins(HORSE, *rug, temperature=5.0, wind=3.0, rain=1.0, count=6).water.hair[2, 0, 0, -1]
        for rug in ((), (SHEET,))
    )
    assert beside == pytest.approx(bare / 2)


def test_soaked_cloth_drips_into_the_hair() -> None:
    """A stable rug left out in the rain is soon worse than useless."""
    rug = Garment("stable", "stable", 100)
    found = margins(HORSE, rug, temperature=5.0, wind=3.0, rain=4.0, count=16).water
    assert found.hair[0, 0, 0, -1] > 0.3


def test_a_cooler_dries_a_wet_horse_sooner_than_a_turnout() -> None:
    """It wicks; a turnout shuts the water in."""
    cooler, rug = (
        balance(soaked(case(HORSE, piece), 0.05), air(hours(8.0, 0.3, count=8))).water.hair_end[0, 0, 0]
        for piece in (Garment("cooler", "cooler", 50), turnout(50))
    )
    assert cooler < 0.7 * rug


def test_wet_snow_wets_and_dry_snow_hardly() -> None:
    """The same water as snow at −8 °C leaves hair nearly dry, at +0.5 °C it is rain."""
    dry, wet = (margins(temperature=t, wind=2.0, snow=1.0, count=6).water.hair[2, 0, 0, -1] for t in (-8.0, 0.5))
    assert dry < 0.1 * wet


def test_an_unknown_hour_brings_nothing() -> None:
    """Rain that nobody knows is not rain, and the water before it is not forgotten."""
    weather = hours(5.0, 3.0, rain=2.0, humidity=95.0)
    gap = weather.rain_mm.copy()
    gap[3] = np.nan
    water = balance(case(), air(replace(weather, rain_mm=gap))).water.hair[2, 0, 0]
    assert np.isfinite(water).all()
    assert water[2] > 0 < water[3]


@settings(max_examples=40, deadline=None)
@given(st.floats(0.05, 5), st.floats(0, 12), st.integers(2, 8))
def test_the_step_is_exact(rain: float, wind: float, parts: int) -> None:
    """However an hour is cut, the same water is in the hair at its end, and the same on average within it."""
    outdoors = air(hours(6.0, wind, rain=rain, humidity=90.0, count=4))
    finer = type(outdoors)(*(np.repeat(field, parts, axis=2) for field in vars(outdoors).values()))
    soaking = soaked(case(), 0.05).soaking
    none = np.zeros((1, outdoors.wind.shape[1], 4))
    whole = follow(soaking, outdoors, none)
    split = follow(soaking, finer, np.repeat(none, parts, axis=2), 1 / parts)
    np.testing.assert_allclose(whole.hair_end, split.hair_end, atol=1e-12)
    np.testing.assert_allclose(
        whole.hair, split.hair.reshape(*whole.hair.shape, parts).mean(axis=-1), rtol=1e-9, atol=1e-12
    )


def test_a_good_turnout_is_wet_outside_and_a_liner_within() -> None:
    """So the one may be worn and the other may not."""
    assert amount(TURNOUT, "wet").within == 0 < amount(TURNOUT, "wet").film
    assert amount(LINER, "wet").film == 0 < amount(LINER, "wet").within
    assert amount(TURNOUT, "soaked").within > 0
    assert amount(TURNOUT, "wet", leaks=True).within > 0


@pytest.mark.parametrize("garment", [TURNOUT, LINER, SHEET], ids=lambda g: g.id)
def test_damp_dries_before_wet_before_soaked(garment: Garment) -> None:
    """And dry is dry."""
    times = [rail_h(garment, state) for state in STATES]
    assert times[0] == 0
    assert times == sorted(times)
    assert times[1] < times[3]


def test_a_heated_tack_room_dries_a_liner_overnight_and_a_damp_loft_does_not() -> None:
    """18 °C and 50 %: a wet 200 g liner within a day. 5 °C and 92 %: not for days."""
    assert 4 < rail_h(LINER, "wet") < 24
    assert rail_h(LINER, "wet", t=5.0, rh=92.0) > 48


def test_a_shell_dries_outside_sooner_than_a_filling_within() -> None:
    """Rain on a good turnout is gone in hours."""
    assert rail_h(TURNOUT, "wet") < rail_h(TURNOUT, "soaked") / 4


def test_what_does_not_dry_within_the_forecast_is_never_ready() -> None:
    """Fog dries nothing, and neither do hours that nobody knows."""
    assert rail_h(LINER, "wet", rh=100.0) == float("inf")
    assert rail_h(LINER, "wet", t=float("nan")) == float("inf")
    assert dry_after_h(LINER, "soaked", 18 * LONG[:3], 50 * LONG[:3], 0.2 * LONG[:3]) == float("inf")


def test_a_turnout_worn_wet_dries_on_the_horse() -> None:
    """A film of rain outside is gone by the evening, and costs little meanwhile."""
    from rules.dressed import Dressed, cases
    from rules.question import Piece
    from tests.laboratory import site

    rained_on = cases([Dressed(HORSE, (Piece(turnout(100), "wet"),))], site(), 15)
    found = balance(rained_on, air(hours(5.0, 4.0, humidity=70.0, count=10)))
    dry = margins(HORSE, turnout(100), temperature=5.0, wind=4.0, humidity=70.0, count=10)
    assert found.water.outside_end.max() == 0
    assert 0 < dry.cold[0, 0, 0] - found.cold[0, 0, 0] < 5
    assert found.cold[0, 0, -1] == pytest.approx(dry.cold[0, 0, -1])
