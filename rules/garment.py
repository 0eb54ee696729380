"""Garment: one piece of clothing as the rules see it."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from rules import parameters as p

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
    proofed_years: float = 0.0  # since it was new or proofed again


@dataclass(frozen=True, slots=True)
class Layers:
    """Clothes worn together, as the heat balance sees them.

    fill: sum as labelled, loft: the fill that still counts once the layers above press it [g/m2];
    base: resistance without any fill, in still air [m2 K/W]; body, neck: share of each part covered;
    shell: outermost is windproof; wicking: a cooler lies at the skin; leak: share of rain that comes through;
    holds, film: water that the cloth takes up within, and that hangs outside the shell [kg/m2].
    """

    fill: float
    loft: float
    base: float
    body: float
    neck: float
    shell: bool
    wicking: bool
    leak: float
    holds: float
    film: float


OUTDOOR: frozenset[Kind] = frozenset({"sheet", "turnout"})
NECK_COVERED: dict[Neck, float] = {"none": 0.0, "half": float(p.HALF_NECK), "full": 1.0}
BARE = Layers(
    fill=0.0, loft=0.0, base=0.0, body=0.0, neck=0.0, shell=False, wicking=False, leak=1.0, holds=0.0, film=0.0
)


def layers(garments: Sequence[Garment], leaks: frozenset[str] = frozenset()) -> Layers:
    """Garments from the skin outward as one cover; leaks: ids of those that lost their proofing."""
    rugs = [g for g in garments if g.kind != "neck"]
    if not rugs:
        return BARE
    shell = next((g for g in reversed(rugs) if g.kind in OUTDOOR), None)
    return Layers(
        fill=sum(g.fill_g for g in rugs),
        loft=sum(_loft(g, rugs[at + 1 :]) for at, g in enumerate(rugs)),
        base=p.RUG_GAP + p.LAYER_GAP * (len(rugs) - 1),
        body=1.0,
        neck=max(_neck(g) for g in garments),
        shell=shell is not None,
        wicking=any(g.kind == "cooler" for g in rugs),
        leak=min(leak(g, leaking=g.id in leaks) for g in rugs),
        holds=sum(holds_kg(g) for g in rugs),
        film=float(p.SHELL_FILM) if shell is not None and shell.waterproof else 0.0,
    )


def leak(garment: Garment, *, leaking: bool = False) -> float:
    """Share of the rain that comes through this piece: more with each year after the one its proofing holds."""
    if not garment.waterproof:
        return float(p.LEAK_OPEN)
    aged = p.LEAK_SOUND + p.LEAK_PER_YEAR * max(garment.proofed_years - p.PROOFING_HOLDS, 0.0)
    return float(p.LEAK_FAILED if leaking else min(aged, p.LEAK_FAILED))


def holds_kg(garment: Garment) -> float:
    """Water that cloth and filling take up [kg/m2]."""
    return float(p.CLOTH_WATER + p.FILL_WATER * garment.fill_g / 1000)


def fill_resistance(loft: float) -> float:
    """Resistance [m2 K/W] of dry filling [g/m2]: each gram gives less than the one before."""
    return p.FILL_RESISTANCE * loft / (1 + loft / p.FILL_SATURATION)


def _loft(garment: Garment, above: Sequence[Garment]) -> float:
    weight = sum(other.fill_g + p.SHELL_WEIGHT for other in above)
    return float(garment.fill_g / (1 + weight / p.LAYER_PRESSES))


def _neck(garment: Garment) -> float:
    if garment.kind == "neck" and garment.neck == "none":
        return NECK_COVERED["full"]
    return NECK_COVERED[garment.neck]
