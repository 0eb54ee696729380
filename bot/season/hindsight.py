"""Hindsight: every horse in every outfit it might have worn, through the weather that came, and its best way through.

What was away at a round (wet, in the wash, torn, on another horse) is not put on then; a way with a piece freed shows
what its being away cost. The arithmetic is the plan's own.
"""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np

from bot import brief
from bot.barn import Horse as FiledHorse
from bot.season.living import Course, Sky, hours_of
from bot.state import State, as_filed
from rules.dressed import Dressed
from rules.lived import Carried, Lived, live
from rules.offset import Learned, in_common
from rules.outfit import STRAP_GUST_MS, Outfit, Setting, allowed, weatherproof
from rules.question import Costs, Piece, Wearer
from rules.weather import Floats, Site

Away = Mapping[str, Mapping[str, str]]  # horse → garment → why it could not be put on
Flags = np.ndarray[tuple[int, int], np.dtype[np.bool_]]


@dataclass(frozen=True)
class AtHand:
    """What stood around each window of a course, in its order, and what is known of the horses by now.

    states: the barn. away: what could not be put on. absent: horses that were not there. learned: by horse.
    """

    states: Sequence[State]
    away: Sequence[Away]
    absent: Sequence[frozenset[str]]
    learned: Mapping[str, Learned] = field(default_factory=dict)


def filed(course: Course) -> AtHand:
    """As the barn file has it, all along: what it calls out of service is away."""
    state, count = as_filed(course.barn).after(course.weeks), len(course.windows)
    out = {g.id: g.state for g in course.barn.garments if g.state in brief.OUT_OF_SERVICE}
    away = {horse.name: out for horse in course.barn.horses}
    return AtHand([state] * count, [away] * count, [frozenset()] * count)


@dataclass(frozen=True)
class Stock:
    """What one horse has, sound twins of what leaks, and what it might be given."""

    filed: FiledHorse
    own: tuple[Piece, ...]
    proofed: tuple[Piece, ...] = ()
    imagined: tuple[Piece, ...] = ()

    @property
    def all(self) -> tuple[Piece, ...]:
        """Every piece, real or not."""
        return self.own + self.proofed + self.imagined

    @property
    def ids(self) -> frozenset[str]:
        """What it really has."""
        return frozenset(piece.garment.id for piece in self.own)


@dataclass(frozen=True)
class Way:
    """What one horse would best have worn, by window, and the hours too cold and too warm that this leaves."""

    worn: tuple[Outfit, ...]
    cold_h: float
    hot_h: float


@dataclass(frozen=True)
class Table:
    """One horse in every outfit through every window: hours too cold and too warm, and what that costs.

    cold_h, hot_h, cost: axes (window, outfit); cost is inf where the outfit may not be worn. away: garment → why it
    could not be put on, by window; "" where it could.
    """

    outfits: tuple[Outfit, ...]
    cold_h: Floats
    hot_h: Floats
    cost: Floats
    change: float
    away: Mapping[str, Sequence[str]]

    def best(self, ids: Iterable[str], freed: Iterable[str] = ()) -> Way:
        """The best sequence with these pieces only, a price on each change (dynamic programming, exact).

        freed: pieces that are taken to have been at hand at every round.
        """
        having, barred = set(ids), self._barred(set(freed))
        mine = np.flatnonzero([having.issuperset(o.ids) for o in self.outfits])
        cost = np.where(barred, np.inf, self.cost)[:, mine]
        moves = self.change * (1 - np.eye(len(mine)))
        to_go = [cost[-1]]
        for row in cost[-2::-1]:
            to_go.append(row + (moves + to_go[-1]).min(axis=1))
        path: list[int] = []
        for ahead in reversed(to_go):
            path.append(int(np.argmin(ahead + (moves[path[-1]] if path else 0.0))))
        at, steps = mine[path], np.arange(len(path))
        worn = tuple(self.outfits[k] for k in at.tolist())
        return Way(worn, float(self.cold_h[steps, at].sum()), float(self.hot_h[steps, at].sum()))

    def missed(self, garment: str, way: Way) -> Counter[str]:
        """At how many rounds of a way this piece is worn although it was away, by why it was."""
        why = self.away.get(garment, ())
        return Counter(w for w, outfit in zip(why, way.worn) if w and garment in outfit.ids)

    def _barred(self, freed: set[str]) -> Flags:
        barred: Flags = np.zeros(self.cost.shape, dtype=np.bool_)
        for garment in self.away.keys() - freed:
            holds = np.array([garment in o.ids for o in self.outfits])
            barred |= np.array([bool(why) for why in self.away[garment]])[:, None] & holds
        return barred


def stood(course: Course, stocks: Sequence[Stock], at_hand: AtHand) -> list[Table]:
    """Every horse in every outfit that its stock allows, through the weather that came; water is carried on."""
    costs = Costs(**course.barn.costs.model_dump(exclude_none=True))
    skies = [hours_of(course, w) for w in course.windows]
    wearers = [_wearers(course, stocks, at_hand, k) for k in range(len(skies))]
    may = _may_wear(stocks, wearers, skies)
    outfits = [tuple({o: None for each in may for o in each[k]}) for k in range(len(stocks))]
    cold_h, hot_h, cost = (np.zeros((len(may), sum(map(len, outfits)))) for _ in range(3))
    carried: Carried | None = None
    for k, sky in enumerate(skies):
        lived = _through(sky, wearers[k], outfits, _site(course, at_hand), carried)
        carried, share = lived.carried, sky[2]
        here = np.repeat([s.filed.name not in at_hand.absent[k] for s in stocks], list(map(len, outfits)))
        borne = np.repeat([w.bears_less_c for w in wearers[k]], list(map(len, outfits)))[:, None]
        cold = np.fmax(borne - lived.cold - lived.tolerance, 0.0)
        hot = np.fmax(-lived.heat, 0.0)
        cold_h[k], hot_h[k] = here * ((cold > 0) @ share), here * ((hot > 0) @ share)
        cost[k] = here * (np.nan_to_num(costs.cold * cold + costs.hot * hot + costs.wet_skin * lived.wet) @ share)
        cost[k, [o not in may[k][j] for j in range(len(stocks)) for o in outfits[j]]] = np.inf
    ends = np.cumsum([len(own) for own in outfits])[:-1]
    cut = (np.split(each, ends, axis=1) for each in (cold_h, hot_h, cost))
    aways = [_away(stock, at_hand) for stock in stocks]
    return [Table(own, c, h, all_, costs.change, a) for own, c, h, all_, a in zip(outfits, *cut, aways)]


def _wearers(course: Course, stocks: Sequence[Stock], at_hand: AtHand, k: int) -> list[Wearer]:
    window, state, learned = course.windows[k], at_hand.states[k], at_hand.learned
    return [brief.wearer(s.filed, state, [window], window.start, learned.get(s.filed.name)) for s in stocks]


def _site(course: Course, at_hand: AtHand) -> Site:
    """Where the barn stands, as its horses tell of it."""
    return in_common(at_hand.learned.values()).at(course.site)


def _through(
    sky: Sky, wearers: Sequence[Wearer], outfits: Sequence[Sequence[Outfit]], site: Site, carried: Carried | None
) -> Lived:
    """One window: each horse in each outfit, as it feels it."""
    start, hours, _ = sky
    dressed = [Dressed(w.horse, o.pieces, j) for j, w in enumerate(wearers) for o in outfits[j]]
    felt = [w.offset_c - w.fill_gives_c * o.fill_g / 100 for j, w in enumerate(wearers) for o in outfits[j]]
    stays = [w.stays[0] for w in wearers]
    day = float(start.timetuple().tm_yday)
    return live(dressed, stays, hours, site, day, carried, [True] * len(dressed), np.array(felt))


def _away(stock: Stock, at_hand: AtHand) -> dict[str, list[str]]:
    """For each of a horse's own pieces that was ever away, why at each window; not where a like one was at hand."""
    by_window = [away.get(stock.filed.name, {}) for away in at_hand.away]
    found = {}
    for piece in stock.own:
        name = piece.garment.id
        like = [p.garment.id for p in stock.own if make(p) == make(piece)]
        why = ["" if any(g not in away for g in like) else away[name] for away in by_window]
        if any(why):
            found[name] = why
    return found


def make(piece: Piece) -> tuple[object, ...]:
    """What `allowed` takes one piece to be as good as another by: of weatherproof layers the make, else the piece."""
    g = piece.garment
    return (g.kind, g.fill_g, g.neck, g.rear) if weatherproof(piece) else (g.id,)


def _may_wear(
    stocks: Sequence[Stock], wearers: Sequence[Sequence[Wearer]], skies: Sequence[Sky]
) -> list[list[dict[Outfit, None]]]:
    """The outfits each horse may wear, by window and horse, were everything at hand."""
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
