"""Sun: where it stands over a site, and what it gives where a forecast is silent."""

import numpy as np

from rules.exchange import Floats

J2000_S = 946_728_000  # POSIX seconds of 2000-01-01 12:00 UTC


def elevation(latitude: float, longitude: float, times_s: Floats) -> Floats:
    """Height of the sun [degrees] at POSIX seconds, any shape; without refraction, good to about 0.1°.

    Low-precision formulas of the Astronomical Almanac (from memory; tested against known dates).
    """
    days = (times_s - J2000_S) / 86_400
    anomaly = np.radians((357.528 + 0.9856003 * days) % 360)
    mean = (280.460 + 0.9856474 * days) % 360
    ecliptic = np.radians(mean + 1.915 * np.sin(anomaly) + 0.020 * np.sin(2 * anomaly))
    tilt = np.radians(23.439 - 4e-7 * days)
    declination = np.arcsin(np.sin(tilt) * np.sin(ecliptic))
    ascension = np.arctan2(np.cos(tilt) * np.sin(ecliptic), np.cos(ecliptic))
    sidereal = np.radians((280.46062 + 360.98564737 * days + longitude) % 360)
    hour_angle = sidereal - ascension
    north = np.radians(latitude)
    height = np.sin(north) * np.sin(declination) + np.cos(north) * np.cos(declination) * np.cos(hour_angle)
    return np.asarray(np.degrees(np.arcsin(height)))


def likely_solar(height: Floats, cloud: Floats) -> Floats:
    """Global sunlight [W/m2] with the sun at height [degrees] under cloud [0 to 1].

    Haurwitz 1945 for the clear sky, Kasten and Czeplak 1980 for cloud (both from memory).
    """
    sine = np.sin(np.radians(np.maximum(height, 0.5)))
    clear = np.where(height > 0.5, 1098 * sine * np.exp(-0.059 / sine), 0.0)
    return np.asarray(clear * (1 - 0.75 * cloud**3.4))
