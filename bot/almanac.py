"""Almanac: the air of the days behind, from the hours that every post and change was made for.

The sheets are the barn's record of its weather: each holds the day ahead as the newest forecast had it, and the next
takes over where it begins. So an hour counts as it was last known when a round came before it.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime

from pydantic import TypeAdapter

from bot.ledger import Ledger
from bot.sheet import SkyHour
from rules.acclimatised import DAY_S, Weeks, day_means


@dataclass(frozen=True)
class AirThen:
    """Of an hour on a sheet, what is asked here."""

    at: datetime
    temperature_c: float | None


SKY = TypeAdapter(tuple[AirThen, ...])
SKY_BEGINS, SKY_ENDS = b'"sky":[', b"]"  # nothing within an hour has brackets, and no name holds a bare quote
MOST_SHEETS = 1200  # a year and more of two rounds a day: what was seen before that hardly counts


@dataclass
class Almanac:
    """The days of one barn. near: the hours of the latest sheet's day, of the day before and of those ahead."""

    latitude: float
    means: dict[int, float] = field(default_factory=dict)
    near: dict[int, float] = field(default_factory=dict)

    def add(self, sky: Sequence[AirThen | SkyHour]) -> None:
        """The hours of one more sheet, made after all those before."""
        if not sky:
            return
        first = int(sky[0].at.timestamp())
        told = {int(hour.at.timestamp()): hour.temperature_c for hour in sky}
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
        found.add(sky_of(text))
    return found


def sky_of(sheet: bytes) -> tuple[AirThen, ...]:
    """The hours of a sheet as it is kept; the rest of it stays unread, for a season of sheets is read at each start."""
    begins = sheet.index(SKY_BEGINS) + len(SKY_BEGINS) - 1
    return SKY.validate_json(sheet[begins : sheet.index(SKY_ENDS, begins) + 1])
