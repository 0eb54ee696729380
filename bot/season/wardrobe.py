"""Wardrobe: which one garment would take away most cold and hot hours, and which were never needed.

Each horse goes through the season in its best sequence of clothes, looked at afterwards with the weather that came,
once with what it has and once with each imagined piece more. The difference is the advice. Spares count for the horse
that wore them most; a piece that is out of service is imagined mended.
"""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace
from textwrap import wrap
from typing import Any

import numpy as np

from bot import brief
from bot.barn import Horse as FiledHorse
from bot.season.living import Course, Sky, Story, hours_of
from bot.state import as_filed
from rules.dressed import Dressed
from rules.garment import Garment, Kind
from rules.lived import Carried, live
from rules.outfit import STRAP_GUST_MS, Outfit, Setting, allowed
from rules.question import Costs, Piece, Wearer
from rules.weather import Floats

MAKES: tuple[tuple[Kind, float], ...] = (
    ("sheet", 0), ("turnout", 100), ("turnout", 200), ("turnout", 300), ("liner", 100), ("liner", 200),
)  # fmt: skip
COLUMNS = 78
WORTH_H = 8.0  # hours a season that a new garment must take away to be spoken of


@dataclass(frozen=True)
class Strain:
    """Hours too cold and too warm that the best sequence leaves."""

    cold_h: float
    hot_h: float


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
        what = f"{self.garment}, mended," if self.do == "mend" else f"a {self.garment},"
        parts = [f"{h:.0f} h too {word}" for h, word in ((self.cold_h, "cold"), (self.hot_h, "warm")) if h >= 0.5]
        price = [
            f"for {-h:.0f} h more too {word}" for h, word in ((self.cold_h, "cold"), (self.hot_h, "warm")) if h <= -0.5
        ]
        return " ".join([f"{self.horse}: {what} takes away", " and ".join(parts), *price]).rstrip()


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
            lines += wrap("Never needed: " + ", ".join(self.never_needed), COLUMNS)
        return "\n".join(lines) + "\n"


def wardrobe(course: Course, story: Story) -> Wardrobe:
    """Advice for every horse of a season. story: how it went by the plan."""
    worn_by = _worn_by(story)
    stocks = [_stock(course, filed, worn_by) for filed in course.barn.horses]
    tables = stood(course, stocks)
    advice = [a for stock, table in zip(stocks, tables) for a in _advice(stock, table) if a.hours >= WORTH_H]
    used = {g for by in worn_by.values() for g in by}
    never = tuple(g.id for g in course.barn.garments if g.id not in used and g.kind != "cooler")
    return Wardrobe(tuple(sorted(advice, key=lambda a: -a.hours)), never)


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


@dataclass(frozen=True)
class Stock:
    """What one horse has, what of its own is out of service, and what it might be given."""

    filed: FiledHorse
    have: tuple[Piece, ...]
    broken: tuple[Piece, ...]
    imagined: tuple[Piece, ...]

    @property
    def all(self) -> tuple[Piece, ...]:
        """Every piece, real or not."""
        return self.have + self.broken + self.imagined


def _stock(course: Course, filed: FiledHorse, worn_by: dict[str, Counter[str]]) -> Stock:
    own = [g for g in course.barn.garments if g.horse == filed.name or _favours(worn_by, g.id, filed.name)]
    day = course.windows[0].start.date()
    pieces = {g.id: Piece(replace(brief.garment(g, day), horse=filed.name)) for g in own}
    out = {g.id for g in own if g.state in brief.OUT_OF_SERVICE}
    return Stock(
        filed,
        tuple(p for name, p in pieces.items() if name not in out),
        tuple(p for name, p in pieces.items() if name in out),
        tuple(_make(course, filed, kind, fill) for kind, fill in MAKES),
    )


def _make(course: Course, filed: FiledHorse, kind: Kind, fill: float) -> Piece:
    size = brief.horse(filed, as_filed(course.barn).horses[filed.name], course.windows[0].start).size_in
    name = f"{fill:.0f} g {kind}, {size:.0f} in"
    return Piece(Garment(name, kind, fill, size, kind != "liner", "none", "leg straps", filed.name))


def _advice(stock: Stock, table: "Table") -> list[Advice]:
    """What each broken piece would do again, and the best of the imagined ones."""
    mine = {p.garment.id for p in stock.have}
    before = table.best(mine)

    def worth(do: str, piece: Piece) -> Advice:
        after, g = table.best(mine | {piece.garment.id}), piece.garment
        less = before.cold_h - after.cold_h, before.hot_h - after.hot_h
        return Advice(do, stock.filed.name, g.id, g.kind, g.fill_g, *less)

    bought = max((worth("buy", piece) for piece in stock.imagined), key=lambda a: a.hours)
    return [*(worth("mend", piece) for piece in stock.broken), bought]


@dataclass(frozen=True)
class Table:
    """One horse in every outfit through every window: hours too cold and too warm, and what that costs.

    cold_h, hot_h, cost: axes (window, outfit); cost is inf where the outfit may not be worn.
    """

    outfits: tuple[Outfit, ...]
    cold_h: Floats
    hot_h: Floats
    cost: Floats
    change: float

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
        at, steps = mine[path], np.arange(len(path))
        return Strain(float(self.cold_h[steps, at].sum()), float(self.hot_h[steps, at].sum()))


def stood(course: Course, stocks: Sequence[Stock]) -> list[Table]:
    """Every horse in every outfit that its stock allows, through the weather that came; water is carried on."""
    costs = Costs(**course.barn.costs.model_dump(exclude_none=True))
    state = as_filed(course.barn)
    skies = [hours_of(course, w) for w in course.windows]
    wearers = [[brief.wearer(s.filed, state, [w], w.start, None) for s in stocks] for w in course.windows]
    may = _may_wear(stocks, wearers, skies)
    outfits = [tuple({o: None for each in may for o in each[k]}) for k in range(len(stocks))]
    cold_h, hot_h, cost = (np.zeros((len(may), sum(map(len, outfits)))) for _ in range(3))
    carried: Carried | None = None
    for k, (start, sky, share) in enumerate(skies):
        dressed = [Dressed(w.horse, o.pieces, j) for j, w in enumerate(wearers[k]) for o in outfits[j]]
        stays = [w.stays[0] for w in wearers[k]]
        day = float(start.timetuple().tm_yday)
        lived = live(dressed, stays, sky, course.site, day, carried, [True] * len(dressed))
        carried = lived.carried
        cold, hot = np.fmax(-(lived.cold + lived.tolerance), 0.0), np.fmax(-lived.heat, 0.0)
        cold_h[k], hot_h[k] = (cold > 0) @ share, (hot > 0) @ share
        cost[k] = np.nan_to_num(costs.cold * cold + costs.hot * hot + costs.wet_skin * lived.wet) @ share
        cost[k, [o not in may[k][j] for j in range(len(stocks)) for o in outfits[j]]] = np.inf
    ends = np.cumsum([len(own) for own in outfits])[:-1]
    cut = (np.split(each, ends, axis=1) for each in (cold_h, hot_h, cost))
    return [Table(own, c, h, all_, costs.change) for own, c, h, all_ in zip(outfits, *cut)]


def _may_wear(
    stocks: Sequence[Stock], wearers: Sequence[Sequence[Wearer]], skies: Sequence[Sky]
) -> list[list[dict[Outfit, None]]]:
    """The outfits each horse may wear, by window and horse."""
    known: dict[tuple[int, str, bool], dict[Outfit, None]] = {}
    found = []
    for own, (_, sky, _) in zip(wearers, skies):
        gust = float(np.nanmax(sky.gust_ms, initial=0.0))
        row = []
        for k, wearer in enumerate(own):
            setting = Setting(wearer.stays[0].place, gust_ms=gust)
            key = (k, setting.place, gust >= STRAP_GUST_MS)
            if key not in known:
                known[key] = dict.fromkeys(allowed(wearer, stocks[k].all, setting)[0])
            row.append(known[key])
        found.append(row)
    return found
