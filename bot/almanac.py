"""Almanac: the air of the days behind, from the hours that every post and change was made for.

The sheets are the barn's record of its weather: each holds the day ahead as the newest forecast had it, and the next
takes over where it begins. So an hour counts as it was last known when a round came before it.
"""

from dataclasses import dataclass, field
from datetime import datetime

from pydantic import TypeAdapter

from bot.ledger import Ledger
from bot.sheet import Sheet
from rules.acclimatised import DAY_S, Weeks, day_means


@dataclass(frozen=True)
class AirThen:
    """Of an hour on a sheet, what is asked here."""

    at: datetime
    temperature_c: float | None


@dataclass(frozen=True)
class Skies:
    """Of a sheet, what is asked here: to read all of it takes three times as long."""

    sky: tuple[AirThen, ...]


SKIES = TypeAdapter(Skies)
MOST_SHEETS = 1200  # a year and more of two rounds a day: what was seen before that hardly counts


@dataclass
class Almanac:
    """The days of one barn. near: the hours of the latest sheet's day, of the day before and of those ahead."""

    latitude: float
    means: dict[int, float] = field(default_factory=dict)
    near: dict[int, float] = field(default_factory=dict)

    def add(self, sheet: Sheet | Skies) -> None:
        """One more sheet, made after all those before."""
        if not sheet.sky:
            return
        first = int(sheet.sky[0].at.timestamp())
        told = {int(h.at.timestamp()): h.temperature_c for h in sheet.sky}
        kept = {at: air for at, air in self.near.items() if at // DAY_S >= first // DAY_S - 1}
        self.near = kept | {at: air for at, air in told.items() if air is not None}
        self.means |= day_means(self.near.items())

    @property
    def weeks(self) -> Weeks:
        """The days as they are known by now."""
        return Weeks(self.latitude, dict(self.means))


def almanac(latitude: float, ledger: Ledger) -> Almanac:
    """All that a barn's sheets say of its days."""
    found = Almanac(latitude)
    for text in ledger.each_sheet(MOST_SHEETS):
        found.add(SKIES.validate_json(text))
    return found
