"""Missing: what no outfit reaches, and the one garment that would reach it."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from rules.decision import MATERIAL_K, Decision
from rules.dressed import Dressed, as_felt, cases
from rules.garment import Garment, Kind
from rules.heat import balance
from rules.question import Piece, Question
from rules.weather import Air, Floats, at_horse, scenarios

STEP_G = 50.0
LADDER_G = tuple(np.arange(0.0, 401.0, STEP_G).tolist())  # fills that are sold
WIDTH_G = 100.0  # of the range named: people have what they have


@dataclass(frozen=True)
class Missing:
    """What no outfit reaches, and the one garment that would reach it; where none would, the warmest there is."""

    horse: str
    window: int
    kind: str
    fill_low_g: float
    fill_high_g: float
    size_in: float


def missing(question: Question, decisions: Sequence[Decision]) -> tuple[Missing, ...]:
    """One for each decision that leaves its horse materially cold, in the central scenario."""
    lacking = [d for d in decisions if d.cold is not None and d.eased < -MATERIAL_K]
    if not lacking:
        return ()
    stays = list(dict.fromkeys(d.stay for d in lacking))
    worlds = scenarios(question.hours, question.site)
    air = at_horse(worlds, question.hours, question.site, stays)
    central = Air(*(getattr(air, name)[:, :1] for name in Air.__dataclass_fields__))
    tried = [
        Dressed(d.wearer.horse, (_would(d, fill),), stays.index(d.stay), d.wearer.wet_hair)
        for d in lacking
        for fill in LADDER_G
    ]
    every = cases(tried, question.site, question.day_of_year)
    own = [(d.wearer.offset_c, d.wearer.fill_gives_c, d.wearer.bears_less_c) for d in lacking]
    felt, fill_gives, bears_less = np.repeat(own, len(LADDER_G), axis=0).T
    margins = balance(as_felt(every, felt - fill_gives * every.fill / 100), central)
    shape = (len(lacking), len(LADDER_G), -1)
    eased = (margins.cold + margins.tolerance)[:, 0] - bears_less[:, None]
    eased, heat = eased.reshape(shape), margins.heat[:, 0].reshape(shape)
    return tuple(_named(d, eased[i], heat[i]) for i, d in enumerate(lacking))


def _would(decision: Decision, fill: float) -> Piece:
    """A garment that the horse does not have: fits, dry, waterproof where it rains."""
    horse, field = decision.wearer.horse, decision.stay.place == "field"
    kind: Kind = "stable" if not field else "turnout" if fill else "sheet"
    return Piece(Garment("", kind, fill, horse.size_in, waterproof=field, rear="leg straps", horse=horse.name))


def _named(decision: Decision, eased: Floats, heat: Floats) -> Missing:
    """The least fill that reaches, up to what the warmest hour bears; axes (fill, hour)."""
    hours = list(decision.outlook.hours)
    least, warm = np.nanmin(eased[:, hours], axis=1), np.nanmin(heat[:, hours], axis=1)
    enough = np.flatnonzero(least >= 0)
    low = int(enough[0]) if len(enough) else int(np.argmax(least))
    bearable = [i for i in range(low, len(LADDER_G)) if warm[i] >= 0 and LADDER_G[i] <= LADDER_G[low] + WIDTH_G]
    high = max(bearable, default=low)
    kind = _would(decision, LADDER_G[low]).garment.kind
    return Missing(
        decision.wearer.horse.name,
        decision.window,
        kind,
        LADDER_G[low],
        LADDER_G[high] if kind != "sheet" else LADDER_G[low],
        decision.wearer.horse.size_in,
    )
