"""Pricing: what every allowed outfit of every horse costs in every window; the heavy part, all cases at once.

Each window is balanced by itself over its own hours, from the water that the horse brings into it: dry under clothes
that shed rain, or wet as a horse is that stood bare in the weather of the windows before (mean of the scenarios).
Clothes put on are dry within, or as reported in the first window. So a sequence needs two prices an outfit, not one
for each history. Left out is what a sound rug gathers over several windows: about half a degree after a day of rain.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from rules import parameters as p
from rules.day import Steps
from rules.dressed import Cases, Dressed, as_felt, cases
from rules.drying import ready_h
from rules.edges import DRY, WET, comes_in, steps
from rules.heat import Margins, balance
from rules.outfit import STRAP_GUST_MS, Outfit, Setting, allowed
from rules.outlook import Outlook, outlooks
from rules.question import Piece, Question, Stay, Wearer
from rules.reason import Reason
from rules.stand import Indices, Stand, Stood, summed_up
from rules.weather import Air, Floats, at_horse, scenarios

BATCH = 64  # horses balanced at once: arrays that fit a cache, and memory that does not grow with the barn
NOTICED_WATER = 0.005  # of the hair's volume: less makes no second price


@dataclass(frozen=True)
class Priced(Stood):
    """One horse with its way's edges. refused[window]: pieces that have no place in any outfit, with the reason."""

    steps: Steps
    refused: tuple[tuple[Reason, ...], ...]
    total_hours: int

    def came(self, window: int, path: Sequence[int]) -> int:
        """Whether the horse comes into a window DRY or WET after these outfits."""
        return comes_in(self.outfits[window - 1][path[window - 1]]) if window else DRY


Prices = dict[str, Priced]


def price(question: Question, only: frozenset[str] | None = None) -> Prices:
    """Margins and cost of every allowed outfit in every window, by horse; `only` restricts to these horses."""
    wearers = [w for w in question.wearers if only is None or w.horse.name in only]
    views, ready, reach = outlooks(question), ready_h(question), within_reach(question)
    weight = scenarios(question.hours, question.site).weight
    prices: Prices = {}
    for first in range(0, len(wearers), BATCH):
        drafts = [Draft(wearer, reach(wearer)) for wearer in wearers[first : first + BATCH]]
        for window, every, margins in balances(question, drafts, views, ready):
            spread = _each(drafts, "spread")
            stand = summed_up(
                every, margins, question.share[window], weight=weight, spread=spread, costs=question.costs
            )
            for draft in drafts:
                draft.stands.append(stand)
        prices |= {draft.wearer.horse.name: draft.priced(question, views) for draft in drafts}
    return prices


def balances(
    question: Question, drafts: Sequence["Draft"], views: Sequence[Outlook], ready: Mapping[str, float | None]
) -> Iterator[tuple[int, Cases, Margins]]:
    """Window by window every case of these horses and its margins; the drafts learn which cases are theirs."""
    worlds = scenarios(question.hours, question.site)
    stays = list(dict.fromkeys(stay for draft in drafts for stay in draft.wearer.stays))
    air = at_horse(worlds, question.hours, question.site, stays)
    for window, view in enumerate(views):
        for draft in drafts:
            draft.open(window, view, ready)
        every = _cases(question, window, drafts, stays)
        margins = balance(every, _slice(air, np.flatnonzero(question.share[window] > 0)))
        borne = margins.tolerance - _each(drafts, "bears_less")[:, None, None]
        margins = replace(margins, tolerance=borne)
        left = margins.water.hair_end @ worlds.weight / every.soaking.depth
        for draft in drafts:
            draft.carry(left)
        yield window, every, margins


class Draft:
    """One horse's prices while they are being made, window after window.

    water: what it brings into the next window, axes (comes out DRY or WET, patch of hair) [share of hair volume].
    """

    def __init__(self, wearer: Wearer, reach: Sequence[Piece]) -> None:
        self.wearer, self.reach = wearer, reach
        self.known: dict[tuple[object, ...], tuple[tuple[Outfit, ...], tuple[Reason, ...]]] = {}
        self.outfits: list[tuple[Outfit, ...]] = []
        self.cases: list[Indices] = []
        self.stands: list[Stand] = []
        self.refused: list[tuple[Reason, ...]] = []
        self.water = np.zeros((2, 4))
        self.offset, self.spread = wearer.offset_c, wearer.offset_sd_c
        self.bears_less, self.fill_gives = wearer.bears_less_c, wearer.fill_gives_c

    def open(self, window: int, view: Outlook, ready: Mapping[str, float | None]) -> None:
        """What may be worn in this window."""
        place = self.wearer.stays[window].place
        start = float(view.hours[0]) if view.hours else 0.0
        gust = view.gust.value if view.gust else 0.0
        dry = frozenset(g for g, hours in ready.items() if hours is not None and hours <= start)
        like = (place, gust >= STRAP_GUST_MS, dry)  # all that the rules look at in a window
        if like not in self.known:
            outfits, refused = allowed(self.wearer, self.reach, Setting(place, start, gust, ready))
            self.known[like] = tuple(sorted(outfits, key=lightest_first)), tuple(refused)
        self.outfits.append(self.known[like][0])
        self.refused.append(self.known[like][1])

    def carry(self, left: Floats) -> None:
        """Keep what hair holds at the window's end, by (patch, case): under clothes that shed rain, and bare."""
        outfits, index = self.outfits[-1], self.cases[-1]
        covered = next((left[:, c] for o, c in zip(outfits, index[DRY]) if o.sheds_rain), np.zeros(4))
        bare = left[2:, index[WET, 0]]
        self.water = np.stack([covered, np.concatenate([bare, bare])])

    def priced(self, question: Question, views: Sequence[Outlook]) -> Priced:
        """The finished prices."""
        stood = Stood(self.wearer, tuple(self.outfits), tuple(self.cases), tuple(self.stands), tuple(self.reach))
        way = steps(stood, question, views)
        return Priced(**vars(stood), steps=way, refused=tuple(self.refused), total_hours=len(question.hours))


def lightest_first(outfit: Outfit) -> tuple[int, float]:
    """Less clothing first, so that of equal outfits the lighter is chosen."""
    return len(outfit.pieces), outfit.fill_g


def within_reach(question: Question) -> Callable[[Wearer], list[Piece]]:
    """For each horse its own pieces and the spares, without those that an infected horse has on."""
    by_owner: dict[str | None, list[Piece]] = {}
    for piece in question.pieces:
        by_owner.setdefault(piece.garment.horse, []).append(piece)
    shut = {g: w.horse.name for w in question.wearers if w.horse.infected for g in w.wears or ()}

    def reach(wearer: Wearer) -> list[Piece]:
        name = wearer.horse.name
        spares = [p for p in by_owner.get(None, []) if shut.get(p.garment.id, name) == name]
        return by_owner.get(name, []) + spares

    return reach


def _cases(question: Question, window: int, drafts: Sequence["Draft"], stays: Sequence[Stay]) -> Cases:
    """Every case of one window; each draft is given the indices of its own."""
    dressed: list[Dressed] = []
    hair: list[Floats] = []
    for draft in drafts:
        draft.cases.append(_list_cases(draft, window, stays.index(draft.wearer.stays[window]), dressed, hair))
    every = cases(dressed, question.site, question.day_of_year)
    every = as_felt(every, _each(drafts, "offset") - _each(drafts, "fill_gives") * every.fill / 100)
    if window == 0:
        return every
    brought = np.stack(hair, axis=1) * every.soaking.depth
    return replace(every, soaking=replace(every.soaking, hair=brought))


def _each(drafts: Sequence["Draft"], name: str) -> Floats:
    """A number of the horse for each case of the window that was opened last."""
    counts = [int(d.cases[-1].max() - d.cases[-1].min()) + 1 for d in drafts]
    return np.repeat([float(getattr(d, name)) for d in drafts], counts)


def _list_cases(draft: Draft, window: int, place: int, dressed: list[Dressed], hair: list[Floats]) -> Indices:
    """Append this horse's cases; shape (came in DRY or WET, outfit). Outfits that feel alike share a case."""
    wearer, outfits = draft.wearer, draft.outfits[window]
    wet = window > 0 and bool(draft.water.max() > NOTICED_WATER)
    brings = draft.water if wet else np.zeros_like(draft.water)
    worn = [o.pieces if window == 0 else tuple(map(_dried, o.pieces)) for o in outfits]
    feels = [tuple(map(_feel, pieces)) for pieces in worn]
    rows = []
    for came in (DRY, WET) if wet else (DRY,):
        known: dict[tuple[object, ...], int] = {}
        for pieces, feel in zip(worn, feels):
            if feel not in known:
                known[feel] = len(dressed)
                dressed.append(Dressed(wearer.horse, pieces, place, wearer.wet_hair and window == 0))
                hair.append(_hair(brings[came], bare=not pieces))
        rows.append([known[feel] for feel in feels])
    return np.array(rows if wet else rows * 2, dtype=np.int_)


def _dried(piece: Piece) -> Piece:
    """As it is put on at a later round: dry, for else it would not be allowed."""
    return piece if piece.water == "dry" else replace(piece, water="dry")


def _feel(piece: Piece) -> tuple[object, ...]:
    g = piece.garment
    return (g.kind, g.fill_g, g.waterproof, g.neck, piece.leaks, piece.water)


def _hair(water: Floats, *, bare: bool) -> Floats:
    """Water [share of volume] by patch, in what is worn now: a bare horse's open hair is all that was covered too."""
    if not bare:
        return water
    trunk = float(p.BODY_SHARE)
    return np.concatenate([water[:2], trunk * water[:2] + (1 - trunk) * water[2:]])


def _slice(air: Air, hours: Indices) -> Air:
    return Air(*(getattr(air, name)[:, :, hours] for name in Air.__dataclass_fields__))
