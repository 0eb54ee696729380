"""What a surface gives to the air."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.exchange import convection, evaporation, radiation, saturation_pa, stream
from rules.parameters import FREE_CONVECTION


def test_still_air_still_carries_heat() -> None:
    """A large warm body stirs the air around it."""
    assert convection(0.0) == FREE_CONVECTION


@given(st.floats(0, 40), st.floats(0, 5), st.floats(0.3, 1.0))
def test_more_wind_never_cools_less(wind: float, more: float, diameter: float) -> None:
    """Nor where one published branch gives way to the other."""
    assert convection(wind + more, diameter) >= convection(wind, diameter)


def test_a_foal_is_cooled_more_than_a_cob() -> None:
    """The same wind takes more from each square metre of a slimmer body."""
    assert convection(3.0, 0.3) > convection(3.0, 0.8)


def test_powers_of_the_wind_may_be_taken_beforehand() -> None:
    """One power for many bodies gives the same as each alone."""
    wind = np.linspace(0, 20, 9)
    np.testing.assert_allclose(convection(stream(wind), 0.5), convection(wind, 0.5))


def test_radiation_grows_with_warmth() -> None:
    """About 4.5 W/m²K at freezing, more when warmer."""
    assert radiation(0.0) == pytest.approx(4.53, abs=0.02)
    assert radiation(20.0) > radiation(0.0)


def test_vapour_pressure_is_one_curve_through_freezing() -> None:
    """Over ice below, over water above, without a step between."""
    assert saturation_pa(0.0) == pytest.approx(611.2)
    assert saturation_pa(-1e-9) == pytest.approx(saturation_pa(1e-9), rel=1e-6)
    assert (np.diff(saturation_pa(np.linspace(-40, 40, 400))) > 0).all()


def test_saturated_air_dries_nothing() -> None:
    """Fog takes no water from a wet surface that nothing warms."""
    assert evaporation(5.0, 100.0, 3.0) == pytest.approx(0.0, abs=1e-9)
    assert evaporation(5.0, 100.0, 3.0, heat=50.0) > 0.02


def test_supersaturated_air_does_not_wet() -> None:
    """A provider's 103 % is fog, not dew on the rug."""
    assert evaporation(5.0, 103.0, 3.0) == 0.0


@given(st.floats(-15, 30), st.floats(5, 95), st.floats(0, 15), st.floats(0, 80))
def test_the_surface_temperature_is_found(temperature: float, humidity: float, wind: float, heat: float) -> None:
    """The heat that comes to the surface is the heat that the water takes away."""
    water = float(evaporation(temperature, humidity, wind, heat))
    convective = float(convection(wind))
    per_pascal = convective * 2.47e6 / (1250 * 461.5 * (temperature + 273.15))
    taken = water / 3600 * 2.47e6
    saturated = taken / per_pascal + float(saturation_pa(temperature)) * humidity / 100
    low, high = -60.0, 60.0
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if saturation_pa(middle) < saturated else (low, middle)
    comes = (convective + float(radiation(temperature))) * (temperature - middle) + heat
    assert taken == pytest.approx(comes, abs=0.05) or water == 0.0


@pytest.mark.parametrize(
    ("drier", "wetter"),
    [((10, 50, 2), (10, 80, 2)), ((15, 60, 2), (5, 60, 2)), ((10, 60, 4), (10, 60, 1))],
    ids=["dry air", "warm air", "moving air"],
)
def test_dry_warm_moving_air_dries_sooner(drier: tuple[float, ...], wetter: tuple[float, ...]) -> None:
    """As everybody knows who has hung up washing."""
    assert evaporation(*drier) > evaporation(*wetter)
