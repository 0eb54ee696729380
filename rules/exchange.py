"""Exchange: what a square metre of surface gives to the air: by convection, by radiation, by evaporating water."""

from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from rules import parameters as p

Floats = NDArray[np.float64]
VAPOUR_GAS = 461.5  # J/kg/K, the gas constant of water vapour
KELVIN = 273.15
NEWTON_STEPS = 4  # of a convex equation from its right side: 1e-9 K is reached after three


class Stream(NamedTuple):
    """Wind raised to the two powers of forced convection, so that each body only scales them."""

    slow: Floats
    fast: Floats


def stream(wind: ArrayLike) -> Stream:
    """Powers of wind [m/s], any shape."""
    moving = np.asarray(wind, dtype=np.float64)
    return Stream(moving**p.NUSSELT_POWER, moving**p.NUSSELT_POWER_FAST)


def convection(wind: ArrayLike | Stream, diameter: ArrayLike = p.TRUNK_DIAMETER) -> Floats:
    """Convective coefficient [W/m2/K] of a cylinder across wind [m/s], never below that of still air.

    The two published branches cross near Re 58,000; the greater is taken, so that more wind never cools less.
    """
    powers = wind if isinstance(wind, Stream) else stream(wind)
    width = np.asarray(diameter, dtype=np.float64)
    slow = p.NUSSELT_FACTOR * p.AIR_CONDUCTIVITY / width * (width / p.AIR_VISCOSITY) ** p.NUSSELT_POWER
    fast = p.NUSSELT_FACTOR_FAST * p.AIR_CONDUCTIVITY / width * (width / p.AIR_VISCOSITY) ** p.NUSSELT_POWER_FAST
    return np.maximum(p.FREE_CONVECTION, np.maximum(slow * powers.slow, fast * powers.fast))


def radiation(temperature: ArrayLike) -> Floats:
    """Radiative coefficient [W/m2/K] at air temperature [°C]."""
    kelvin = np.asarray(temperature, dtype=np.float64) + KELVIN
    return 4 * p.EMISSIVITY * p.STEFAN_BOLTZMANN * kelvin**3


def saturation_pa(temperature: ArrayLike) -> Floats:
    """Saturation vapour pressure [Pa] at temperature [°C], over ice below freezing.

    Magnus form with the WMO's constants (WMO-No. 8), −45 to 60 °C.
    """
    celsius = np.asarray(temperature, dtype=np.float64)
    water = 17.62 * celsius / (243.12 + celsius)
    ice = 22.46 * celsius / (272.62 + celsius)
    return 611.2 * np.exp(np.where(celsius < 0, ice, water))


def evaporation(temperature: ArrayLike, humidity: ArrayLike, wind: ArrayLike, heat: float = 0.0) -> Floats:
    """Water that a wet surface gives off [kg/m2/h], never negative.

    temperature [°C], humidity [%] and wind [m/s] of the air, broadcast together; heat [W/m2] reaches the
    surface from behind. Lewis' relation, the surface temperature solved by Newton's method.
    """
    air = np.asarray(temperature, dtype=np.float64)
    vapour = saturation_pa(air) * np.asarray(humidity, dtype=np.float64) / 100
    convective = convection(wind)
    wet = convective * p.LATENT_HEAT / (p.AIR_HEAT_CAPACITY * VAPOUR_GAS * (air + KELVIN))
    dry = convective + radiation(air)
    surface = air + heat / dry
    for _ in range(NEWTON_STEPS):
        saturated = saturation_pa(surface)
        excess = wet * (saturated - vapour) - dry * (air - surface) - heat
        surface = surface - excess / (wet * _slope(surface, saturated) + dry)
    return np.maximum(0.0, wet * (saturation_pa(surface) - vapour) / p.LATENT_HEAT * 3600)


def _slope(celsius: Floats, saturated: Floats) -> Floats:
    water = 17.62 * 243.12 / (243.12 + celsius) ** 2
    ice = 22.46 * 272.62 / (272.62 + celsius) ** 2
    return np.asarray(saturated * np.where(celsius < 0, ice, water))
