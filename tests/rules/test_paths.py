"""The ways heat takes out, one resistance at a time."""

from dataclasses import replace

import numpy as np
import pytest

from rules.dressed import Cases
from rules.garment import Garment
from rules.paths import Paths, between, cloth, hair_left, open_skin, paths, surroundings, through
from rules.wetness import follow
from tests.laboratory import HORSE, SHEET, air, case, hours, last, soaked, turnout

STABLE_RUG = Garment("stable", "stable", 200)
DRY = np.ones((4, 1, 1, 1))


def ways(one: Cases, wind: float = 0.0, warm: float = 0.0) -> Paths:
    around = surroundings(one, air(hours(0.0, wind, count=1)))
    return paths(one, around, DRY, between(one, warm))


def beside(one: Cases, wind: float) -> float:
    """What lies below and above the clothes, without the air layer [m²K/W]."""
    around = surroundings(one, air(hours(0.0, wind, count=1)))
    return last(ways(one, wind).beside_clothes[0] - around.air_layer)


def worn(one: Cases, wind: float, filled: float = 0.0) -> float:
    around = surroundings(one, air(hours(0.0, wind, count=1)))
    return last(cloth(one, around, np.full((1, 1, 1), filled)).resistance)


def test_a_shell_keeps_the_wind_out_of_hair_and_fill() -> None:
    """Under a turnout the hair keeps its hold, under a stable rug it loses some."""
    shell, weave = case(HORSE, turnout(200)), case(HORSE, STABLE_RUG)
    assert beside(shell, 8.0) == pytest.approx(beside(shell, 0.0))
    assert beside(weave, 8.0) < beside(weave, 0.0) - 0.01
    assert worn(weave, 8.0) < 0.5 * worn(weave, 0.0)
    assert worn(shell, 8.0) > 0.8 * worn(shell, 0.0)


def test_soaked_filling_keeps_half_its_warmth() -> None:
    """The gap under it keeps all of its own."""
    rug, sheet = case(HORSE, turnout(300)), case(HORSE, SHEET)
    gap = worn(sheet, 0.0)
    assert worn(rug, 0.0, filled=1.0) - gap == pytest.approx(0.5 * (worn(rug, 0.0) - gap))


def test_wind_takes_more_from_a_smaller_body() -> None:
    """The air layer around a pony is thinner than around a shire."""
    pony, shire = (
        last(surroundings(case(replace(HORSE, weight_kg=kg)), air(hours(0.0, 5.0))).air_layer) for kg in (150, 1000)
    )
    assert pony < 0.95 * shire


def test_a_dark_coat_takes_in_more_sun() -> None:
    """And the sun is worth no more than five degrees to any."""
    light, dark = (
        last(surroundings(case(replace(HORSE, colour=shade)), air(hours(0.0, 6.0, sun=500.0))).effective)  # type: ignore[arg-type]
        for shade in ("light", "dark")
    )
    assert light < dark
    assert last(surroundings(case(), air(hours(0.0, 0.0, sun=1000.0, cloud=100.0))).effective) < 5.0


def test_vessels_open_lets_heat_out() -> None:
    """Each step from shut to open gives off more."""
    one = case()
    leaving = [last(open_skin(one.share, ways(one, warm=warm))) for warm in (0.0, 0.3, 0.7, 1.0)]
    assert leaving == sorted(leaving)
    assert leaving[-1] > 1.4 * leaving[0]


def test_a_rug_of_no_warmth_and_one_without_end() -> None:
    """Endless clothes leave only the open skin; a bare horse has nothing but open skin."""
    one, bare = case(HORSE, SHEET), case()
    endless = through(one, ways(one), np.full((1, 1, 1), np.inf))
    assert last(endless) == pytest.approx(last(open_skin(one.share, ways(one))))
    assert last(through(bare, ways(bare), np.zeros((1, 1, 1)))) == pytest.approx(
        last(open_skin(bare.share, ways(bare)))
    )


def test_a_tenth_of_water_halves_what_hair_holds() -> None:
    """In air that dries nothing, 11 % of the hair's volume."""
    outdoors = air(hours(0.0, humidity=100.0, rain=0.2, count=1))
    wet = soaked(case(), 0.11)
    water = follow(wet.soaking, outdoors, np.zeros((1, outdoors.wind.shape[1], 1)))
    assert last(hair_left(wet, water)[2]) == pytest.approx(0.5, abs=0.01)
