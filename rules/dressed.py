"""Dressed: one horse in one outfit is a case; all cases of a barn as arrays over one flat axis."""

from collections.abc import Sequence
from dataclasses import dataclass, fields, replace
from functools import lru_cache
from typing import NamedTuple

import numpy as np

from rules import parameters as p
from rules.coat import Coat, coat
from rules.exchange import Floats
from rules.garment import Layers, fill_resistance, layers
from rules.horse import Body, Horse, body
from rules.question import Piece
from rules.weather import Site
from rules.wetness import Soaking, amount

# Zones of the skin: covered, open, and legs and head; each with grown and then with clipped hair.
PATCH_OF_ZONE = (0, 1, 2, 3, 2, 3)
COVERED_PATCHES, OPEN_PATCHES = (0, 1), (2, 3)
COVERED_ZONES, OPEN_TRUNK, EXTREMITIES = (0, 1), (2, 3), (4, 5)
SHADE = {"light": float(p.SUN_LIGHT), "mid": float(p.SUN_MID), "dark": float(p.SUN_DARK)}
PLAIN_TURNOUT = Layers(  # noqa: S604 (a rug's shell)
    fill=0.0,
    loft=0.0,
    base=float(p.RUG_GAP),
    body=1.0,
    neck=0.0,
    shell=True,
    wicking=False,
    leak=float(p.LEAK_SOUND),
    holds=float(p.CLOTH_WATER),
    film=float(p.SHELL_FILM),
)


@dataclass(frozen=True)
class Dressed:
    """One horse in one outfit (pieces from the skin outward, with their water at hour 0).

    place: row of the air that it stands in. wet_hair: seen wet at hour 0.
    """

    horse: Horse
    outfit: tuple[Piece, ...] = ()
    place: int = 0
    wet_hair: bool = False


@dataclass(frozen=True)
class Bodies:
    """rules.horse.Body of each case, shape (case,)."""

    area: Floats
    heat: Floats
    maintenance: Floats
    evaporation: Floats
    evaporation_warm: Floats
    tissue_cold: Floats
    tissue_warm: Floats
    core: Floats
    diameter: Floats
    tolerance: Floats
    unsure_k: Floats


@dataclass(frozen=True)
class Cases:
    """Horses in outfits; every array has shape (case,), share and share_clothed (zone, case).

    shade: of the hair for the sun; hair_wind: its hold on wind [s/m]; clothed: 1 or 0; fill as labelled and
    loft as pressed [g/m2]; filling, base: resistance of dry fill and of clothes without it [m2 K/W]; shell: 1
    if windproof.
    share: of the skin in each zone; share_clothed: the same, and for a bare horse as a plain turnout would
    divide it. For a bare horse base and shell are the plain turnout's too; clothed says whether they count.
    """

    bodies: Bodies
    shade: Floats
    hair_wind: Floats
    clothed: Floats
    fill: Floats
    loft: Floats
    filling: Floats
    base: Floats
    shell: Floats
    share: Floats
    share_clothed: Floats
    soaking: Soaking

    def __len__(self) -> int:
        return len(self.shade)


class _Cover(NamedTuple):
    """Clothes worn together, with the water within them and outside their shell [kg/m2]."""

    worn: Layers
    within: float
    outside: float

    @property
    def rug(self) -> Layers:
        """What is worn, or the plain turnout that a bare horse might wear."""
        return self.worn if self.worn.body else PLAIN_TURNOUT


def cases(dressed: Sequence[Dressed], site: Site, day_of_year: float) -> Cases:
    """Each horse in each outfit as one case, in the order given."""
    bodies = [_body(one.horse) for one in dressed]
    coats = [_coat(one.horse, site, day_of_year) for one in dressed]
    covers = [_cover(one.outfit) for one in dressed]
    return Cases(
        bodies=Bodies(*(_column(bodies, field.name) for field in fields(Bodies))),
        shade=np.array([SHADE[one.horse.colour or "mid"] for one in dressed]),
        hair_wind=_column(coats, "wind"),
        clothed=np.array([1.0 if cover.worn.body else 0.0 for cover in covers]),
        fill=np.array([cover.worn.fill for cover in covers]),
        loft=np.array([cover.worn.loft for cover in covers]),
        filling=np.array([fill_resistance(cover.worn.loft) for cover in covers]),
        base=np.array([cover.rug.base for cover in covers]),
        shell=np.array([float(cover.rug.shell) for cover in covers]),
        share=_shares(covers, coats, "worn"),
        share_clothed=_shares(covers, coats, "rug"),
        soaking=_soaking(dressed, coats, covers),
    )


def as_felt(every: Cases, offset: Floats) -> Cases:
    """A horse that feels the cold by so much more stands as if its core were that much farther from the air."""
    return replace(every, bodies=replace(every.bodies, core=every.bodies.core + offset))


def _soaking(dressed: Sequence[Dressed], coats: Sequence[Coat], covers: Sequence[_Cover]) -> Soaking:
    depth = np.tile(np.stack([_column(coats, "depth_mm"), _column(coats, "clipped_mm")]), (2, 1))
    worn = [cover.worn for cover in covers]
    seen_wet = np.array([p.COAT_SEEN_WET if one.wet_hair else 0.0 for one in dressed])
    return Soaking(
        place=np.array([one.place for one in dressed], dtype=np.int_),
        depth=depth,
        holds=_column(worn, "holds"),
        film=_column(worn, "film"),
        leak=_column(worn, "leak"),
        wicking=_column(worn, "wicking"),
        exposed=np.array([float(p.RAIN_ON_OPEN / p.RAIN_ON_BODY) if each.body else 1.0 for each in worn]),
        hair=seen_wet * depth,
        within=np.array([cover.within for cover in covers]),
        outside=np.array([cover.outside for cover in covers]),
    )


def _column(items: Sequence[object], name: str) -> Floats:
    return np.array([getattr(item, name) for item in items], dtype=np.float64)


@lru_cache(maxsize=1024)
def _body(horse: Horse) -> Body:
    return body(horse)


@lru_cache(maxsize=1024)
def _coat(horse: Horse, site: Site, day_of_year: float) -> Coat:
    return coat(horse, site, day_of_year)


@lru_cache(maxsize=4096)
def _cover(outfit: tuple[Piece, ...]) -> _Cover:
    leaks = frozenset(piece.garment.id for piece in outfit if piece.leaks)
    worn = layers([piece.garment for piece in outfit], leaks)
    amounts = [amount(piece.garment, piece.water, leaks=piece.leaks) for piece in outfit]
    within = sum(each.within for each in amounts)
    film = max((each.film for each in amounts), default=0.0)
    return _Cover(worn, min(worn.holds, within), min(worn.film, film))


def _shares(covers: Sequence[_Cover], coats: Sequence[Coat], which: str) -> Floats:
    """Share of the skin by (zone, case), under what is worn or under the rug that would be."""
    rugs = [getattr(cover, which) for cover in covers]
    cut_body, cut_neck, cut_rest = np.array([hair.clipped for hair in coats]).reshape(-1, 3).T
    trunk, neck = float(p.BODY_SHARE), float(p.NECK_SHARE)
    rest = 1 - trunk - neck
    body_under, neck_under = trunk * _column(rugs, "body"), neck * _column(rugs, "neck")
    body_bare, neck_bare = trunk - body_under, neck - neck_under
    return np.stack(
        [
            body_under * (1 - cut_body) + neck_under * (1 - cut_neck),
            body_under * cut_body + neck_under * cut_neck,
            body_bare * (1 - cut_body) + neck_bare * (1 - cut_neck),
            body_bare * cut_body + neck_bare * cut_neck,
            rest * (1 - cut_rest),
            rest * cut_rest,
        ]
    )
