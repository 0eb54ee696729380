"""Ways of choosing clothes for a season: Haybell's plan, the chart on the wall, always bare, one heavy rug."""

from collections.abc import Callable, Mapping

import numpy as np

from bot import brief
from bot.barn import Barn, Garment
from bot.season.living import Moment, Wear
from rules.chart import Advice, advice, gap_g
from rules.drying import ready_h
from rules.offset import Learned
from rules.outfit import Outfit, Setting, allowed
from rules.plan import price, share_out

HEAVY = Garment(id="one heavy rug", kind="turnout", fill_g=300, waterproof=True, rear="leg straps", neck="none")
Learn = Callable[[Moment], Mapping[str, Learned]]


def nothing_learned(moment: Moment) -> Mapping[str, Learned]:
    """Every horse as the model has it."""
    return {}


def haybell(moment: Moment, learned: Learn = nothing_learned) -> dict[str, Wear]:
    """The plan's first window, with the recorded hours as its forecast."""
    now, barn = moment.window.start, moment.course.barn
    asked = brief.question(barn, moment.state, moment.course.cut, moment.ahead, now, learned(moment))
    prices = price(asked)
    found = share_out(prices, asked)
    return {name: priced.outfits[0][found[name].path[0]].ids for name, priced in prices.items()}


def bare(moment: Moment) -> dict[str, Wear]:
    """Nothing, all winter."""
    return {horse.name: () for horse in moment.course.barn.horses}


def heavy(moment: Moment) -> dict[str, Wear]:
    """A waterproof 300 g turnout of its own on every horse, all winter. The barn needs with_heavy()."""
    return {horse.name: (_heavy_of(horse.name),) for horse in moment.course.barn.horses}


def with_heavy(barn: Barn) -> Barn:
    """The barn with an imagined heavy rug for each horse."""
    made = [HEAVY.model_copy(update={"id": _heavy_of(h.name), "horse": h.name}) for h in barn.horses]
    return barn.model_copy(update={"garments": (*barn.garments, *made)})


def _heavy_of(horse: str) -> str:
    return f"{HEAVY.id}: {horse}"


def chart(moment: Moment) -> dict[str, Wear]:
    """What hangs on the wall: for the window's coldest air the dry outfit nearest to the chart's fill.

    Each horse in the file's order takes from its own clothes, then from spares that are left.
    """
    barn, window = moment.course.barn, moment.window
    asked = brief.question(barn, moment.state, moment.course.cut, [window], window.start, {})
    inside = asked.share[0] > 0
    air = asked.hours.temperature_c[inside]
    if np.isnan(air).all():
        return {name: now.wear or () for name, now in moment.state.horses.items()}
    coldest, ready = float(np.nanmin(air)), ready_h(asked)
    taken: set[str] = set()
    worn: dict[str, Wear] = {}
    for wearer in asked.wearers:
        left = [p for p in asked.pieces if p.garment.id not in taken]
        outfits, _ = allowed(wearer, left, Setting(wearer.stays[0].place, ready_h=ready))
        word = advice(coldest, wearer.horse.clip)
        best = min(outfits, key=lambda o: (_gap(word, o), o.ids != wearer.wears, len(o.ids), o.ids))
        worn[wearer.horse.name] = best.ids
        taken |= best.spares
    return worn


def _gap(word: Advice, outfit: Outfit) -> float:
    """How far an outfit is from the chart's word [g/m²]."""
    neck = any(p.garment.kind == "neck" or p.garment.neck == "full" for p in outfit.pieces)
    return gap_g(word, outfit.fill_g if outfit.body else None, neck=neck)
