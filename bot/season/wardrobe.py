"""Wardrobe: which one garment would take away most cold and hot hours, and which were never needed.

Each horse goes through the season in its best sequence of clothes, looked at afterwards with the weather that came,
once with what it has and once with each imagined piece more. The difference is the advice. Spares count for the horse
that wore them most; a piece that is out of service is imagined mended.
"""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from bot import brief
from bot.barn import Garment as Filed
from bot.barn import Horse as FiledHorse
from bot.season.living import Course, Story, hours_of
from bot.state import as_filed
from rules.dressed import Dressed
from rules.garment import Garment, Kind
from rules.lived import Carried, live
from rules.outfit import Outfit, Setting, allowed
from rules.question import Costs, Piece
from rules.weather import Floats

MAKES: tuple[tuple[Kind, float], ...] = (
    ("sheet", 0), ("turnout", 100), ("turnout", 200), ("turnout", 300), ("liner", 100), ("liner", 200),
)  # fmt: skip
WORTH_H = 8.0  # hours a season that a new garment must take away to be spoken of


@dataclass(frozen=True)
class Strain:
    """Hours too cold and too warm that the best sequence leaves."""

    cold_h: float
    hot_h: float
    used: frozenset[str]


@dataclass(frozen=True)
class Advice:
    """One garment for one horse. do: "buy" or "mend". takes away: hours too cold and too warm of this season."""

    do: str
    horse: str
    garment: str
    kind: str
    fill_g: float
    cold_h: float
    hot_h: float

    @property
    def hours(self) -> float:
        """All hours that it takes away."""
        return self.cold_h + self.hot_h

    def __str__(self) -> str:
        what = f"mend {self.garment}" if self.do == "mend" else f"a {self.garment}"
        return f"{self.horse}: {what} would take away {self.cold_h:.0f} h too cold and {self.hot_h:.0f} h too warm"


@dataclass(frozen=True)
class Wardrobe:
    """Advice, the most useful first, and the garments that nobody needed."""

    advice: tuple[Advice, ...]
    never_needed: tuple[str, ...]

    def as_json(self) -> dict[str, Any]:
        """Plain values."""
        return {
            "advice": [
                {"do": a.do, "horse": a.horse, "garment": a.garment, "kind": a.kind, "fill_g": a.fill_g,
                 "cold_hours_less": round(a.cold_h, 1), "hot_hours_less": round(a.hot_h, 1)}
                for a in self.advice
            ],
            "never_needed": list(self.never_needed),
        }  # fmt: skip

    def text(self, most: int = 8) -> str:
        """In plain words."""
        lines = [f"{k}. {a}" for k, a in enumerate(self.advice[:most], 1)] or ["No single garment would help much."]
        if self.never_needed:
            lines.append("Never needed: " + ", ".join(self.never_needed))
        return "\n".join(lines) + "\n"


def wardrobe(course: Course, story: Story) -> Wardrobe:
    """Advice for every horse of a season. story: how it went by the plan."""
    worn_by = _worn_by(story)
    advice: list[Advice] = []
    used: set[str] = {g for by in worn_by.values() for g in by}
    for filed in course.barn.horses:
        own = [g for g in course.barn.garments if g.horse == filed.name or _favours(worn_by, g.id, filed.name)]
        advice += _for_horse(course, filed, own)
    never = tuple(g.id for g in course.barn.garments if g.id not in used and g.kind not in ("cooler",))
    found = [a for a in advice if a.hours >= WORTH_H]
    return Wardrobe(tuple(sorted(found, key=lambda a: -a.hours)), never)


def _worn_by(story: Story) -> dict[str, Counter[str]]:
    """Horse → how many windows it wore each garment."""
    counts: dict[str, Counter[str]] = {}
    for worn in story.worn:
        for horse, wear in worn.items():
            counts.setdefault(horse, Counter()).update(wear)
    return counts


def _favours(worn_by: dict[str, Counter[str]], garment: str, horse: str) -> bool:
    most = max(worn_by, key=lambda name: worn_by[name][garment], default=None)
    return most == horse and worn_by[horse][garment] > 0


def _for_horse(course: Course, filed: FiledHorse, own: Sequence[Filed]) -> list[Advice]:
    """What each imagined piece would do for one horse: the best make of each kind only."""
    have = [Piece(replace(brief.garment(g), horse=filed.name)) for g in own if g.state not in brief.OUT_OF_SERVICE]
    broken = [Piece(replace(brief.garment(g), horse=filed.name)) for g in own if g.state in brief.OUT_OF_SERVICE]
    made = [_make(course, filed, kind, fill) for kind, fill in MAKES]
    ways = _Ways.of(course, filed, [*have, *broken, *made])
    mine = {p.garment.id for p in have}
    before = ways.best(mine)
    found = []
    for piece in [*broken, *made]:
        after = ways.best(mine | {piece.garment.id})
        g = piece.garment
        do = "mend" if piece in broken else "buy"
        less = before.cold_h - after.cold_h, before.hot_h - after.hot_h
        found.append(Advice(do, filed.name, g.id, g.kind, g.fill_g, *less))
    bought = sorted((a for a in found if a.do == "buy"), key=lambda a: -a.hours)[:1]
    return [*(a for a in found if a.do == "mend"), *bought]


def _make(course: Course, filed: FiledHorse, kind: Kind, fill: float) -> Piece:
    size = brief.horse(filed, as_filed(course.barn).horses[filed.name], course.windows[0].start).size_in
    name = f"{fill:.0f} g {kind}, {size:.0f} in"
    return Piece(Garment(name, kind, fill, size, kind != "liner", "none", "leg straps", filed.name))


@dataclass(frozen=True)
class _Ways:
    """One horse in every outfit through every window: hours too cold and too warm, and what that costs.

    cold_h, hot_h, cost: axes (window, outfit); cost is inf where the outfit may not be worn.
    """

    outfits: tuple[Outfit, ...]
    cold_h: Floats
    hot_h: Floats
    cost: Floats
    change: float

    @classmethod
    def of(cls, course: Course, filed: FiledHorse, pieces: Sequence[Piece]) -> "_Ways":
        costs = Costs(**course.barn.costs.model_dump(exclude_none=True))
        state = as_filed(course.barn)
        wearers = [brief.wearer(filed, state, [w], w.start, None) for w in course.windows]
        hours = [hours_of(course, w) for w in course.windows]
        settings = [
            Setting(w.stays[0].place, gust_ms=float(np.nanmax(h.gust_ms, initial=0.0)))
            for w, (_, h, _) in zip(wearers, hours)
        ]
        may = [{o.ids: o for o in allowed(w, pieces, s)[0]} for w, s in zip(wearers, settings)]
        outfits = tuple({ids: o for each in may for ids, o in each.items()}.values())
        cold_h, hot_h, cost = (np.zeros((len(may), len(outfits))) for _ in range(3))
        carried: Carried | None = None
        for k, (wearer, (start, sky, share)) in enumerate(zip(wearers, hours)):
            dressed = [Dressed(wearer.horse, o.pieces) for o in outfits]
            day = float(start.timetuple().tm_yday)
            lived = live(dressed, wearer.stays, sky, course.site, day, carried, [True] * len(dressed))
            carried = lived.carried
            cold, hot = np.fmax(-(lived.cold + lived.tolerance), 0.0), np.fmax(-lived.heat, 0.0)
            cold_h[k], hot_h[k] = (cold > 0) @ share, (hot > 0) @ share
            cost[k] = (costs.cold * cold + costs.hot * hot + costs.wet_skin * lived.wet * (lived.cold < 0)) @ share
            cost[k, [o.ids not in may[k] for o in outfits]] = np.inf
        return cls(outfits, cold_h, hot_h, np.nan_to_num(cost, posinf=np.inf), costs.change)

    def best(self, ids: set[str]) -> Strain:
        """The best sequence with these pieces only, a price on each change (dynamic programming, exact)."""
        mine = np.flatnonzero([set(o.ids) <= ids for o in self.outfits])
        cost, moves = self.cost[:, mine], self.change * (1 - np.eye(len(mine)))
        to_go = [cost[-1]]
        for row in cost[-2::-1]:
            to_go.append(row + (moves + to_go[-1]).min(axis=1))
        path: list[int] = []
        for ahead in reversed(to_go):
            path.append(int(np.argmin(ahead + (moves[path[-1]] if path else 0.0))))
        at = mine[path]
        steps = np.arange(len(at))
        used = frozenset(g for k in set(at.tolist()) for g in self.outfits[k].ids)
        return Strain(float(self.cold_h[steps, at].sum()), float(self.hot_h[steps, at].sum()), used)
