"""Explain: the hours behind a decision, and the margins that horses really had in what they wore."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from rules.dressed import Dressed, cases
from rules.drying import ready_h
from rules.heat import Margins, balance
from rules.outlook import outlooks
from rules.pricing import Draft, Priced, balances
from rules.question import Question
from rules.weather import Air, Floats, along, at_horse, scenarios


@dataclass(frozen=True)
class Row:
    """One hour of one outfit in the central scenario, offset included.

    temperature and effective [°C], wind at the horse [m/s], rain that reaches it [mm], resistance of the air layer and
    of the clothes [m² K/W], conductance of the whole skin with vessels shut [W/m²/K], water in the hair [% of its
    volume], margins [K]; NaN where no forecast covers the hour.
    """

    window: int
    hour: int
    wear: tuple[str, ...]
    chosen: bool
    temperature_c: float
    wind_ms: float
    rain_mm: float
    effective_c: float
    air_layer: float
    clothes: float
    conductance: float
    hair_water_pct: float
    cold_margin_c: float
    heat_margin_c: float


def rows(question: Question, priced: Priced, path: Sequence[int]) -> list[Row]:
    """Every hour of the chosen outfit, then of each other one, window by window."""
    draft = Draft(priced.wearer, priced.reach)
    found: list[Row] = []
    for window, _, margins in balances(question, [draft], outlooks(question), ready_h(question)):
        came = priced.came(window, path)
        order = sorted(range(len(draft.outfits[window])), key=lambda j: j != path[window])
        for j in order:
            case, wear = int(draft.cases[window][came, j]), draft.outfits[window][j].ids
            for at, hour in enumerate(np.flatnonzero(question.share[window] > 0).tolist()):
                found.append(_row(margins, case, at, window, hour, wear, chosen=j == path[window]))
    return found


def _row(margins: Margins, case: int, at: int, window: int, hour: int, wear: tuple[str, ...], *, chosen: bool) -> Row:
    def of(values: Floats) -> float:
        return float(values[case, 0, at]) + 0.0  # no minus zero

    return Row(
        window,
        hour,
        wear,
        chosen,
        of(margins.temperature),
        of(margins.wind),
        of(margins.rain),
        of(margins.effective),
        of(margins.air_layer),
        of(margins.clothes),
        of(margins.conductance),
        100 * of(margins.hair),
        of(margins.cold),
        of(margins.heat),
    )


def worn(question: Question) -> dict[str, tuple[Floats, Floats]]:
    """Cold and heat margins [K] by hour, each shape (hour,), of every wearer in what it wears at hour 0.

    Central scenario, strict balance, offset left out; the clothes stay on through all hours. A horse of which nobody
    said what it wears counts as bare.
    """
    pieces = {p.garment.id: p for p in question.pieces}
    dressed = [
        Dressed(w.horse, tuple(pieces[g] for g in w.wears or () if g in pieces), row, w.wet_hair)
        for row, w in enumerate(question.wearers)
    ]
    if not dressed:
        return {}
    stays = list(dict.fromkeys(stay for w in question.wearers for stay in w.stays))
    at = np.argmax(question.share, axis=0)
    routine = np.array([[stays.index(w.stays[window]) for window in at] for w in question.wearers])
    worlds = scenarios(question.hours, question.site)
    central = replace(worlds, **{name: getattr(worlds, name)[:1] for name in worlds.__dataclass_fields__})
    air: Air = along(at_horse(central, question.hours, question.site, stays), routine)
    margins = balance(cases(dressed, question.site, question.day_of_year), air)
    return {w.horse.name: (margins.cold[i, 0], margins.heat[i, 0]) for i, w in enumerate(question.wearers)}
