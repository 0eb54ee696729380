"""Numbers in the reader's units: conversion happens here and nowhere else, on the way out.

A quantity never breaks across a line: a no-break space stands between number and unit until the text is laid out.
"""

from dataclasses import dataclass
from math import isfinite
from typing import Literal

NBSP = "\u00a0"
MPH_PER_MS = 3600 / 1609.344
MM_PER_INCH = 25.4
KG_PER_LB = 0.45359237
F_PER_K = 9 / 5


def known(value: float | None) -> float | None:
    """The value, or None where it is not a number that can be shown."""
    return value if value is not None and isfinite(value) else None


@dataclass(frozen=True)
class Measures:
    """How one reader is told quantities. units: us (°F, mph, in, lb) or metric; decimal: the language's own point."""

    units: Literal["us", "metric"]
    decimal: str = "."
    percent_sign: str = "%"

    @property
    def us(self) -> bool:
        """Whether the reader thinks in °F and mph."""
        return self.units == "us"

    @property
    def scale(self) -> str:
        """The name of the temperature scale."""
        return "°F" if self.us else "°C"

    def number(self, value: float, digits: int = 0) -> str:
        """A number with a true minus and no negative zero."""
        text = f"{value:.{digits}f}"
        text = text.removeprefix("-") if not text.strip("-0.") else text
        return text.replace("-", "−").replace(".", self.decimal)

    def temperature(self, celsius: float, digits: int = 0) -> str:
        """A temperature on the scale: 28°F, −2 °C."""
        if self.us:
            return f"{self.number(celsius * F_PER_K + 32, digits)}°F"
        return f"{self.number(celsius, digits)}{NBSP}°C"

    def degrees(self, celsius: float) -> str:
        """A temperature where the scale is plain from the context: 28°."""
        return f"{self.number(celsius * F_PER_K + 32 if self.us else celsius)}°"

    def difference(self, kelvin: float, digits: int = 0) -> str:
        """A difference of temperatures, scaled and never shifted: 5°F, 3 °C."""
        if self.us:
            return f"{self.number(kelvin * F_PER_K, digits)}°F"
        return f"{self.number(kelvin, digits)}{NBSP}°C"

    def wind(self, ms: float) -> str:
        """A wind speed given in m/s: 38 mph, 62 km/h."""
        return f"{self.number(ms * MPH_PER_MS)}{NBSP}mph" if self.us else f"{self.number(ms * 3.6)}{NBSP}km/h"

    def water(self, mm: float) -> str:
        """Rain or melted snow given in mm: 0.25 in, 6 mm."""
        if self.us:
            inches = mm / MM_PER_INCH
            return f"{self.number(inches, 2 if inches < 1 else 1)}{NBSP}in"
        return f"{self.number(mm, 1 if mm < 10 and mm != round(mm) else 0)}{NBSP}mm"

    def weight(self, kg: float) -> str:
        """A weight of hay given in kg: 3 lb, 1.5 kg."""
        if self.us:
            return f"{self.number(kg / KG_PER_LB)}{NBSP}lb"
        return f"{self.number(kg, 1)}{NBSP}kg"

    def fill(self, grams: float) -> str:
        """Insulation weight, g/m², as labels say it everywhere: 100 g."""
        return f"{self.number(grams)}{NBSP}g"

    def fills(self, low: float, high: float) -> str:
        """A band of fill: 200–300 g."""
        return self.fill(low) if round(low) == round(high) else f"{self.number(low)}–{self.fill(high)}"

    def size(self, inches: float) -> str:
        """A rug size, in whole inches as labels say it everywhere: 69 in."""
        return f"{self.number(inches)}{NBSP}in"

    def percent(self, value: float) -> str:
        """Per cent: 40%, 40 %."""
        return f"{self.number(value)}{self.percent_sign}"

    def hours(self, value: float) -> str:
        """A length of time in hours: 5 h."""
        return f"{self.number(value)}{NBSP}h"
