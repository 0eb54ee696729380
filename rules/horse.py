"""Horse: one animal as the heat balance sees it."""

from dataclasses import dataclass
from typing import Literal

Species = Literal["horse", "pony", "donkey"]
CoatClass = Literal["fine", "average", "heavy"]
ClipStyle = Literal["none", "bib", "trace", "blanket", "hunter", "full"]
HayFeed = Literal["low", "normal", "ad lib"]


@dataclass(frozen=True)
class Horse:
    """One animal.

    weight in kg; condition 1 to 9; age in years; clip_age_days: days since the clip at hour 0, None where
    unclipped; sick: by vet's orders or reported unwell; infected: skin infection, shares nothing;
    size_in: rug size in inches.
    """

    name: str
    species: Species = "horse"
    age_years: float = 10.0
    weight_kg: float = 500.0
    condition: float = 5.0
    coat: CoatClass = "average"
    clip: ClipStyle = "none"
    clip_age_days: float | None = None
    hay_feed: HayFeed = "normal"
    size_in: float = 75.0
    sick: bool = False
    infected: bool = False
    colour: Literal["light", "mid", "dark"] | None = None
