"""Horse: one animal as the heat balance sees it."""

from dataclasses import dataclass
from typing import Literal

from rules import parameters as p

Species = Literal["horse", "pony", "donkey"]
CoatClass = Literal["fine", "average", "heavy"]
ClipStyle = Literal["none", "bib", "trace", "blanket", "hunter", "full"]
HayFeed = Literal["low", "normal", "ad lib"]


@dataclass(frozen=True)
class Horse:
    """One animal.

    weight in kg; condition 1 to 9; age in years; clip_age_days: days since the clip at hour 0, None where
    unclipped; sick: by vet's orders or reported unwell; infected: skin infection, shares nothing;
    size_in: rug size in inches; used_to_c: how much more it feels the cold for the weeks behind [K], see
    `rules/acclimatised.py`.
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
    used_to_c: float = 0.0


@dataclass(frozen=True, slots=True)
class Body:
    """What the heat balance needs of an animal.

    area [m2]; heat: produced at this feeding, maintenance: at maintenance, evaporation: the least, and
    evaporation_warm: what it gives without sweating [W/m2]; tissue_cold, tissue_warm: resistance of the
    trunk's tissue with vessels shut and open [m2 K/W]; core [°C]; diameter of the trunk [m];
    tolerance: share of `heat` by which the losses may exceed the strict balance before we would dress it;
    unsure_k: standard deviation of its critical temperature [K].
    """

    area: float
    heat: float
    maintenance: float
    evaporation: float
    evaporation_warm: float
    tissue_cold: float
    tissue_warm: float
    core: float
    diameter: float
    tolerance: float
    unsure_k: float


def weight_kg(girth_cm: float, length_cm: float) -> float:
    """Weight [kg] from girth and length, point of shoulder to point of buttock (Carroll and Huntington 1988)."""
    return girth_cm**2 * length_cm / p.GIRTH_DIVISOR


def surface_m2(weight: float) -> float:
    """Body surface [m2] by weight [kg] (Hodgson et al. 1993)."""
    return p.AREA_AT_ZERO + p.AREA_PER_KG * weight


def body(horse: Horse) -> Body:
    """The animal as the balance sees it; raises ValueError where weight, age or condition cannot be."""
    _refuse_the_impossible(horse)
    area = surface_m2(horse.weight_kg)
    heat, maintenance = _heat(horse, area)
    newborn = horse.age_years < p.NEWBORN
    return Body(
        area=area,
        heat=heat,
        maintenance=maintenance,
        evaporation=p.EVAPORATION * heat,
        evaporation_warm=p.EVAPORATION_WARM * heat,
        tissue_cold=tissue(horse.weight_kg, horse.condition),
        tissue_warm=float(p.TISSUE_WARM),
        core=p.CORE_FOAL + horse.used_to_c if newborn else p.CORE + horse.used_to_c,
        diameter=p.TRUNK_DIAMETER * (horse.weight_kg / 500) ** (1 / 3),
        tolerance=tolerance(horse),
        unsure_k=_unsure(horse),
    )


def tissue(weight: float, condition: float) -> float:
    """Resistance of the tissue with vessels shut [m2 K/W], by weight [kg] and condition (1 to 9)."""
    by_weight = p.TISSUE_COLD * (weight / 500) ** p.TISSUE_WEIGHT_POWER
    return float(by_weight * (1 + p.TISSUE_PER_CONDITION * (condition - 5)))


def hardy(horse: Horse) -> bool:
    """Whether it may stand a little cold: a fit, hay-fed adult, not thin, not sick."""
    grown = p.YOUNG <= horse.age_years < p.OLD
    well = horse.condition > p.THIN and not horse.sick and horse.hay_feed != "low"
    return grown and well


def tolerance(horse: Horse) -> float:
    """How much cold it may be let stand, as a share of its heat: half as much without hair to raise."""
    if not hardy(horse):
        return 0.0
    return float(p.TOLERANCE_SHORN if horse.clip in ("hunter", "full") else p.TOLERANCE)


def _heat(horse: Horse, area: float) -> tuple[float, float]:
    maintenance = p.WATT_PER_MCAL_DAY * p.METABOLISABLE_SHARE * p.DIGESTIBLE_ENERGY * horse.weight_kg / area
    if horse.age_years < p.YOUNG:
        maintenance = max(maintenance, float(p.FOAL_HEAT))
    if horse.age_years < p.NEWBORN and horse.sick:
        maintenance *= p.SICK_FOAL_HEAT
    level = {"low": float(p.FEED_LOW), "normal": 1.0, "ad lib": float(p.FEED_AD_LIB)}[horse.hay_feed]
    slope = p.SURPLUS_HEAT if level > 1 else p.DEFICIT_HEAT
    return maintenance * (1 + slope * (level - 1)), maintenance


def _unsure(horse: Horse) -> float:
    spread = p.UNSURE if horse.species == "horse" else p.UNSURE_PONY
    guarded = horse.age_years < p.YOUNG or horse.age_years >= p.OLD or horse.sick
    clipped = horse.clip not in ("none", "bib")
    return float(max(spread, p.UNSURE_AGE if guarded else 0.0, p.UNSURE_CLIPPED if clipped else 0.0))


def _refuse_the_impossible(horse: Horse) -> None:
    if not 15 <= horse.weight_kg <= 1500:
        raise ValueError(f"{horse.name}: a weight of {horse.weight_kg} kg cannot be; 15 to 1500")
    if not 1 <= horse.condition <= 9:
        raise ValueError(f"{horse.name}: a condition of {horse.condition} cannot be; 1 to 9")
    if not 0 <= horse.age_years <= 65:
        raise ValueError(f"{horse.name}: an age of {horse.age_years} years cannot be; 0 to 65")
