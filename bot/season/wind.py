"""How hard the wind blows at this barn, as all its horses tell it: said beside the mirror, for people to know.

The plan finds it for itself (`rules/shared.py`) and allows for it; `exposure` in the barn file may be what is wrong.
"""

from collections.abc import Iterable
from dataclasses import replace
from math import log

from bot.barn import Barn
from bot.events import Air, Entry, Seen
from bot.evidence import weigh
from bot.state import HorseNow, fold
from rules.acclimatised import Weeks
from rules.offset import Evidence
from rules.site import Factor, wind

FACTORS = (0.5, 0.7, 1.0, 1.4, 2.0, 3.0)
ENOUGH = 20  # signs, before anything is said
SURE = 1.5  # standard deviations from what the forecast says


def told(barn: Barn, entries: Iterable[Entry], weeks: Weeks | None = None) -> Factor | None:
    """How much harder than the forecast's the wind seems to blow; None while too few signs speak of it."""
    state = fold(barn, entries).after(weeks)
    by_factor = {
        factor: [_signs(barn, filed.name, state.horses[filed.name], factor) for filed in barn.horses]
        for factor in FACTORS
    }
    signs = [one for own in by_factor[1.0] for one in own]
    return wind(by_factor, max(one.at_s for one in signs)) if len(signs) >= ENOUGH else None


def _signs(barn: Barn, name: str, now: HorseNow, factor: float) -> list[Evidence]:
    """One horse's signs with the margins it would have had in so much more wind."""
    found = (weigh(barn, barn.horse(name), now, _blown(entry, factor), {}) for entry in now.signs)
    return [one for one in found if one is not None and one.teaches]


def _blown(entry: Entry, factor: float) -> Entry:
    event = entry.event
    if not isinstance(event, Seen) or event.air is None:
        return entry
    columns = {
        name: [None if v is None else v * factor for v in column] if name in ("wind_ms", "gust_ms") else column
        for name, column in event.air.columns.items()
    }
    return replace(entry, event=replace(event, air=Air(event.air.start, columns)))


def line(factor: Factor | None) -> str:
    """What to say of it."""
    if factor is None:
        return f"Of the wind here fewer than {ENOUGH} signs speak: nothing can be said."
    if abs(log(factor.value)) < SURE * factor.sd:
        return "Horses in wind were found as expected."
    harder = "harder" if factor.value > 1 else "less hard"
    return (
        f"Horses in wind were found as if it blew {harder} here than expected ({factor.value:.1f} times): "
        "the plan allows for it. If the field is not as the barn file says, mend its exposure."
    )
