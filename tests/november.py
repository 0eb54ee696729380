"""The demo barn's November as a clock that is a value: "7:20" is on Thursday 26, "27 7:20" on another day."""

from datetime import datetime
from pathlib import Path

from bot.barn import Barn
from bot.forecast import Forecast, from_file

WEATHER = Path(__file__).parents[1] / "bot" / "demo"


class November:
    """What time it is in words of the barn, and the last good forecast."""

    barn: Barn
    forecast: Forecast | None = None

    def at(self, clock: str) -> datetime:
        """An instant of the barn's November."""
        day, _, time = clock.rpartition(" ")
        hour, minute = map(int, time.split(":"))
        return datetime(2026, 11, int(day or 26), hour, minute, tzinfo=self.barn.zone)

    def weather(self, name: str, clock: str) -> None:
        """From now on this forecast is the last good one, fetched at `clock`."""
        self.forecast = from_file(WEATHER / name, self.at(clock))
