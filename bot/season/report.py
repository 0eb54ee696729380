"""Report: how a season went under each way of choosing clothes; a table, JSON and a picture."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from textwrap import wrap
from typing import Any, Literal

from bot.season.tally import Tally, together
from bot.season.wardrobe import Wardrobe
from rules.weather import Floats

COLUMNS = 78
NOTE = (
    "Every way is judged by the same balance that the plan uses, with the recorded hours as its forecast: "
    "it shows what the choice is worth, not that the balance is right."
)


@dataclass(frozen=True)
class WayReport:
    """One way of choosing. by_horse: its count; cold_h, hot_h: hours of all horses by day, shape (day,)."""

    name: str
    by_horse: Mapping[str, Tally]
    cold_h: Floats
    hot_h: Floats

    @property
    def total(self) -> Tally:
        """All horses together."""
        return together(self.by_horse.values())

    def as_json(self) -> dict[str, Any]:
        """The sum and each horse."""
        return {
            "way": self.name,
            **self.total.as_json(),
            "horses": {name: one.as_json() for name, one in self.by_horse.items()},
        }


@dataclass(frozen=True)
class Season:
    """A season. first, last: local days; coldest, warmest: air by day [°C], shape (day,), NaN not known.

    notes: faults of the record, in plain words; unjudged_h: hours that could not be judged for every horse.
    """

    barn: str
    units: Literal["us", "metric"]
    first: date
    last: date
    coldest: Floats
    warmest: Floats
    ways: tuple[WayReport, ...]
    source: str = ""
    notes: tuple[str, ...] = ()
    unjudged_h: float = 0.0
    wardrobe: Wardrobe | None = None

    def as_json(self) -> dict[str, Any]:
        """Everything but the days, as plain values."""
        return {
            "barn": self.barn,
            "from": self.first.isoformat(),
            "to": self.last.isoformat(),
            "weather": {"source": self.source, "unjudged_hours": round(self.unjudged_h, 1), "notes": list(self.notes)},
            "ways": [way.as_json() for way in self.ways],
            "wardrobe": self.wardrobe and self.wardrobe.as_json(),
            "note": NOTE,
        }

    def table(self) -> str:
        """The season as text, COLUMNS wide where names allow."""
        horses = max(len(way.by_horse) for way in self.ways)
        head = f"{'':<18}{'too cold':>10}{'too warm':>10}{'wet skin':>10}{'changes':>10}{'garments':>10}"
        unit = f"{'':<18}{'h':>10}{'h':>10}{'h':>10}{'a week':>10}{'in use':>10}"
        rows = [_row(way) for way in self.ways]
        title = f"{self.barn}, {self.first:%d %b %Y} to {self.last:%d %b %Y}, {horses} horses"
        gaps = (
            [f"{self.unjudged_h:.0f} hours of the record could not be judged for every horse."]
            if self.unjudged_h >= 1
            else []
        )
        advice = ["What would help most:", self.wardrobe.text()] if self.wardrobe else []
        return "\n".join([title, "", head, unit, *rows, "", *advice, *gaps, *self.notes, *wrap(NOTE, COLUMNS)]) + "\n"


def _row(way: WayReport) -> str:
    t = way.total
    hours = f"{t.cold_h:10.0f}{t.hot_h:10.0f}{t.wet_h:10.0f}"
    return f"{way.name:<18}{hours}{t.changes_a_week:10.1f}{len(t.garments):10d}"
