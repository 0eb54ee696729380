"""Garment: one piece of clothing as the rules see it."""

from dataclasses import dataclass
from typing import Literal

Kind = Literal["sheet", "turnout", "liner", "stable", "cooler", "neck"]
Neck = Literal["none", "half", "full"]
Rear = Literal["none", "leg straps", "tail strap", "fillet string"]


@dataclass(frozen=True)
class Garment:
    """One piece. fill in g/m²; size in inches; horse: whose it is, None for a spare."""

    id: str
    kind: Kind
    fill_g: float = 0.0
    size_in: float = 75.0
    waterproof: bool = False
    neck: Neck = "none"
    rear: Rear = "none"
    horse: str | None = None
    denier: int | None = None
