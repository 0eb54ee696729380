"""Hours: a forecast as arrays on an hourly grid, and what reaches the horse of it."""

from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Exposure = Literal["ridge", "open", "sheltered"]


@dataclass(frozen=True)
class Site:
    """Where the barn stands. latitude, longitude in degrees (north and east positive); elevation in m."""

    latitude: float
    longitude: float
    elevation_m: float
    exposure: Exposure


@dataclass(frozen=True)
class Hours:
    """A forecast on a gapless hourly grid; every array has shape (hour,); NaN is 'not known'.

    start_s: POSIX seconds (UTC) of the first hour, a whole hour. Hour k is [start + k h, start + (k+1) h).
    temperature, humidity, wind and cloud are instants at the hour's beginning; gust is the hour's greatest;
    rain and snow (water equivalent) are the hour's sums in mm; solar is the hour's mean in W/m²;
    wind and gust in m/s at 10 m. rain_probability_pct: chance of more than 0.1 mm in the hour.
    spread_c, spread_wind: standard deviation of temperature [K] and of log wind by hour, from a provider's
    own ensemble; None where the provider has none (the rules then take theirs by lead time).
    """

    start_s: int
    temperature_c: Floats
    humidity_pct: Floats
    wind_ms: Floats
    gust_ms: Floats
    rain_mm: Floats
    snow_mm: Floats
    cloud_pct: Floats
    solar_wm2: Floats
    rain_probability_pct: Floats
    spread_c: Floats | None = None
    spread_wind: Floats | None = None

    def __len__(self) -> int:
        return len(self.temperature_c)
