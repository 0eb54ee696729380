"""Wardrobe: which one garment would take away most cold and hot hours, which was missed, which were never needed.

Each horse goes through the season in its best sequence of clothes, looked at afterwards with the weather that came,
once with what it had at hand and once with each piece more: an imagined one, or one of its own that was away. The
difference is the advice. Spares count for the horse that wore them most.
"""

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from textwrap import wrap
from typing import Any

from bot import brief
from bot.barn import Horse as FiledHorse
from bot.season.hindsight import AtHand, Stock, Table, Way, filed, make, stood
from bot.season.living import Course, Story, Wear
from bot.state import State
from rules.garment import Garment, Kind
from rules.question import Piece

MAKES: tuple[tuple[Kind, float], ...] = (
    ("sheet", 0), ("turnout", 100), ("turnout", 200), ("turnout", 300), ("liner", 100), ("liner", 200),
)  # fmt: skip
COLUMNS = 78
WORTH_H = 8.0  # hours a season that a new garment must take away to be spoken of
MEND = frozenset({"torn", "strap broken"})
DOES = {
    "buy": "a {garment},",
    "second": "a second {garment}",
    "mend": "{garment}, mended,",
    "find": "{garment}, found or replaced,",
    "reproof": "{garment}, reproofed,",
}


@dataclass(frozen=True)
class Advice:
    """One garment for one horse. do: "buy", "second" of its own, "mend", "find" or "reproof".

    cold_h, hot_h: hours too cold and too warm of this season that it takes away. rounds: at how many it would have
    been worn and was away, by why.
    """

    do: str
    horse: str
    garment: str
    kind: str
    fill_g: float
    cold_h: float
    hot_h: float
    size_in: float = 0.0
    rounds: Mapping[str, int] = field(default_factory=dict)

    @property
    def hours(self) -> float:
        """All hours that it takes away."""
        return self.cold_h + self.hot_h

    @property
    def missed(self) -> int:
        """At how many rounds it was missed."""
        return sum(self.rounds.values())

    def __str__(self) -> str:
        what = DOES[self.do].format(garment=self.garment)
        parts = [f"{h:.0f} h too {word}" for h, word in ((self.cold_h, "cold"), (self.hot_h, "warm")) if h >= 0.5]
        price = [
            f"for {-h:.0f} h more too {word}" for h, word in ((self.cold_h, "cold"), (self.hot_h, "warm")) if h <= -0.5
        ]
        return " ".join([f"{self.horse}: {what} takes away", " and ".join(parts), *price]).rstrip()

    def as_json(self) -> dict[str, Any]:
        """Plain values."""
        return {
            "do": self.do, "horse": self.horse, "garment": self.garment, "kind": self.kind, "fill_g": self.fill_g,
            "cold_hours_less": round(self.cold_h, 1), "hot_hours_less": round(self.hot_h, 1),
            "rounds_missed": dict(self.rounds),
        }  # fmt: skip


@dataclass(frozen=True)
class Wardrobe:
    """Advice, the most useful first; the pieces that were away when wanted; those that nobody needed.

    cold_h, hot_h: what the best sequence with what was at hand leaves, all horses.
    """

    advice: tuple[Advice, ...]
    never_needed: tuple[str, ...]
    missed: tuple[Advice, ...] = ()
    cold_h: float = 0.0
    hot_h: float = 0.0

    def as_json(self) -> dict[str, Any]:
        """Plain values."""
        return {"advice": [a.as_json() for a in self.advice], "never_needed": list(self.never_needed)}

    def text(self, most: int = 8) -> str:
        """In plain words."""
        lines = [f"{k}. {a}" for k, a in enumerate(self.advice[:most], 1)] or ["No single garment would help much."]
        if self.never_needed:
            lines += wrap("Never needed: " + ", ".join(self.never_needed), COLUMNS)
        return "\n".join(lines) + "\n"


def wardrobe(course: Course, story: Story, at_hand: AtHand | None = None) -> Wardrobe:
    """Advice for every horse of a season. story: what was worn; at_hand: what there was, None: as the file has it."""
    there = at_hand or filed(course)
    worn_by = _worn_by(story.worn)
    stocks = [_stock(course, horse, worn_by, there.states[-1]) for horse in course.barn.horses]
    tables = stood(course, stocks, there)
    befores = [table.best(stock.ids) for stock, table in zip(stocks, tables)]
    every = [a for one in zip(stocks, tables, befores) for a in _advice(*one)]
    missed = tuple(sorted((a for a in every if a.missed), key=lambda a: (-a.missed, -a.hours)))
    used = {g for by in worn_by.values() for g in by} | {a.garment for a in missed}
    return Wardrobe(
        tuple(sorted((a for a in every if a.hours >= WORTH_H), key=lambda a: -a.hours)),
        tuple(g.id for g in course.barn.garments if g.id not in used and g.kind != "cooler"),
        missed,
        sum(way.cold_h for way in befores),
        sum(way.hot_h for way in befores),
    )


def _worn_by(worn: Iterable[Mapping[str, Wear]]) -> dict[str, Counter[str]]:
    """Horse → how many windows it wore each garment."""
    counts: dict[str, Counter[str]] = {}
    for each in worn:
        for horse, wear in each.items():
            counts.setdefault(horse, Counter()).update(wear)
    return counts


def _favours(worn_by: dict[str, Counter[str]], garment: str, horse: str) -> bool:
    most = max(worn_by, key=lambda name: worn_by[name][garment], default=None)
    return most == horse and worn_by[horse][garment] > 0


def _stock(course: Course, horse: FiledHorse, worn_by: dict[str, Counter[str]], state: State) -> Stock:
    """A horse's own pieces and the spares that it wore most, each in service and dry; what it might be given."""
    start = course.windows[0].start
    own = [g for g in course.barn.garments if g.horse == horse.name or _favours(worn_by, g.id, horse.name)]
    pieces = [brief.piece(course.barn, g, state, start) for g in own]
    sound = [replace(p, garment=replace(p.garment, horse=horse.name), water="dry", in_service=True) for p in pieces]
    leaking = [replace(p, garment=_reproofed(p.garment), leaks=False) for p in sound if p.leaks]
    size = brief.horse(horse, state.horses[horse.name], start).size_in
    makes = {make(p) for p in (*sound, *leaking)}  # one that it has already, or would have once proofed, is no news
    imagined = [new for kind, fill in MAKES if make(new := _new(horse.name, kind, fill, size)) not in makes]
    return Stock(horse, tuple(sound), tuple(leaking), tuple(imagined))


def _reproofed(garment: Garment) -> Garment:
    return replace(garment, id=f"{garment.id}, reproofed", proofed_years=0.0)


def _new(horse: str, kind: Kind, fill: float, size: float) -> Piece:
    name = f"{fill:.0f} g {kind}, {size:.0f} in"
    return Piece(Garment(name, kind, fill, size, kind != "liner", "none", "leg straps", horse))


def _advice(stock: Stock, table: Table, before: Way) -> list[Advice]:
    """What each piece that was away would have done, each leaking one proofed again, and the best of the imagined."""
    mine = stock.ids

    def worth(do: str, garment: Garment, after: Way, rounds: Mapping[str, int] | None = None) -> Advice:
        less = before.cold_h - after.cold_h, before.hot_h - after.hot_h
        size = garment.size_in
        return Advice(do, stock.filed.name, garment.id, garment.kind, garment.fill_g, *less, size, rounds or {})

    found = []
    for piece in (p for p in stock.own if p.garment.id in table.away):
        after = table.best(mine, [piece.garment.id])
        rounds = table.missed(piece.garment.id, after)
        found.append(worth(_remedy(rounds), piece.garment, after, rounds))
    for twin in stock.proofed:
        leaky = next(p.garment for p in stock.own if _reproofed(p.garment) == twin.garment)
        found.append(worth("reproof", leaky, table.best(mine - {leaky.id} | {twin.garment.id})))
    bought = [worth("buy", p.garment, table.best(mine | {p.garment.id})) for p in stock.imagined]
    return found + sorted(bought, key=lambda a: -a.hours)[:1]


def _remedy(rounds: Counter[str]) -> str:
    """What would have had the piece there: by why it was most often away."""
    why = max(rounds, key=lambda w: rounds[w], default="")
    return "mend" if why in MEND else "find" if why == "missing" else "second"
