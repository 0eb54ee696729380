"""The last words on each horse and piece: what of a message stands where it says more than one thing of the same."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import replace

from bot.events import Asked, Done, Event, GarmentIs, Placed, Seen, Sign, Wearing, Worked
from bot.words.lookup.items import WETNESS
from bot.words.told.summed import once, one_done, strongest
from bot.words.told.telling import Telling

FELT: tuple[Sign, ...] = ("cold", "hot", "shivering")  # of which wet hair tells nothing
UNEASY: tuple[Sign, ...] = ("cold", "hot", "sweating", "shivering")
COLD: tuple[Sign, ...] = ("cold", "shivering")


def last_words(telling: Telling) -> tuple[Event, ...]:
    """The facts as they stand at the end: no past sign beside a present one, the last word on what is worn."""
    events = _not_outdone(telling)
    dressed = {e.horse for e in events if isinstance(e, Wearing)} & telling.changed
    told = [isinstance(e, Done) and e.horses != "all" and set(e.horses) <= dressed for e in events]
    events = [e for e, how in zip(events, told) if not how]  # "changed Tao: his 300 on"
    events = strongest(one_done(events, len(telling.names)))
    events = _where_told(telling, events)
    signed = {e.horse for e in events if isinstance(e, Seen)}
    worked = {e.horse for e in events if isinstance(e, Worked)}
    kept = [e for e in events if not (isinstance(e, Worked) and e.horse in signed)]
    stood = {
        e.horse for e in kept if isinstance(e, Placed) and e.horse in signed & telling.standing and e.where == "stall"
    }
    telling.stalled |= stood  # "off her hay, standing at the back of her box"
    kept = [e for e in kept if not (isinstance(e, Placed) and e.horse in stood)]
    seen = (_set(telling, e, worked) if isinstance(e, Seen) else e for e in kept)
    asked = "?" in telling.text
    return tuple(e for e in once(seen) if asked or _state_of(e) not in signed)


def _not_outdone(telling: Telling) -> list[Event]:
    """The facts without those that another one of the same horse or piece outdoes."""
    worn = {(e.horse, type(e)): at for at, e in enumerate(telling.events) if isinstance(e, Wearing | Placed)}
    signs: defaultdict[str, list[tuple[int, Seen]]] = defaultdict(list)
    states: defaultdict[str, list[tuple[int, GarmentIs]]] = defaultdict(list)
    for at, event in enumerate(telling.events):
        if isinstance(event, Seen):
            signs[event.horse].append((at, event))
        elif isinstance(event, GarmentIs):
            states[event.garment].append((at, event))
    return [
        event
        for at, event in enumerate(telling.events)
        if not (
            (isinstance(event, Wearing | Placed) and worn[event.horse, type(event)] > at)
            or (isinstance(event, Seen) and _outdone(telling, at, event, signs[event.horse]))
            or (isinstance(event, GarmentIs) and _wetter_told(at, event, states[event.garment]))
        )
    ]


def _where_told(telling: Telling, events: Sequence[Event]) -> list[Event]:
    """As in "tenía frío en su box, las orejas heladas": where a sign was seen, of the same sign told again."""
    where = {(e.horse, e.sign): e.setting for e in telling.events if isinstance(e, Seen) and e.setting != "turnout"}
    return [replace(e, setting=where.get((e.horse, e.sign), e.setting)) if isinstance(e, Seen) else e for e in events]


def _set(telling: Telling, seen: Seen, worked: set[str]) -> Seen:
    """The sign with where it was seen, told before it or after it: "sweaty. In his stable."."""
    if seen.horse in worked:
        return replace(seen, setting="after work")
    return replace(seen, setting="stall") if seen.horse in telling.stalled and seen.setting == "turnout" else seen


def _speaks_of(telling: Telling, at: int, event: Seen) -> bool:
    """Whether the sign at this place says something of the other as well: "no sweat" does not of "too hot"."""
    denied = telling.denied.get(at)
    if denied is None:
        return True
    return denied == event.sign or (denied == "comfortable" and event.sign not in ("hot", "cold"))


def _gone(telling: Telling, at: int, before: int, event: Seen) -> bool:
    """Whether the sign at this place says that the other is over: "sudó en la clase pero ya se secó"."""
    dried = telling.denied[at] == "comfortable" and event.sign == "sweating" and before in telling.past
    return dried or event.sign == telling.denied[at]


def _unlike(telling: Telling, at: int, event: Seen) -> bool:
    """Whether the other sign leaves no comfort; but "wet from the rain, not cold though" tells both."""
    return event.sign != "wet" or telling.denied[at] not in FELT


def _takes_back(telling: Telling, at: int, before: int, event: Seen) -> bool:
    """As in "cool but not cold": whether what is denied at this place is what was said before it."""
    felt = event.sign in ("cold", "hot") and before < at
    return felt and at in telling.plainly_not and telling.denied.get(at) == event.sign


def _outdone(telling: Telling, at: int, event: Seen, signs: Sequence[tuple[int, Seen]]) -> bool:
    """Whether another of the signs told of the horse leaves nothing of this one."""
    others = [(k, e) for k, e in signs if k != at]
    if at in telling.of_all and any(k > at and k not in telling.of_all for k, _ in others):
        return True  # "everyone fine but Otto is cold"
    if any(_takes_back(telling, k, at, event) for k, _ in others):
        return True
    others = [(k, e) for k, e in others if _speaks_of(telling, k, event) and not _takes_back(telling, at, k, e)]
    if at in telling.denied and any(e.sign in UNEASY and not _gone(telling, at, k, e) for k, e in others):
        return True  # "was hot, no sweat though"
    if event.sign in UNEASY and any(k > at and k in telling.later for k, _ in others):
        return True  # "cold this morning, fine now"
    less = (*COLD, "wet") if telling.warm.get(at) else COLD
    if at in telling.warm and any(k not in telling.past and e.sign in less for k, e in others):
        return True  # "les oreilles froides mais chaude sous la couv", "trempée mais chaude"
    uneasy = any(k not in telling.past and e.sign in UNEASY for k, e in others)
    if event.sign == "comfortable" and at not in telling.later and uneasy:
        return True  # "warm under his rug but his ears are cold", "shivering, otherwise fine"
    now = [e for k, e in others if k not in telling.past]
    if at in telling.denied and at not in telling.later and any(_unlike(telling, at, e) for e in now):
        return True
    left_out = [k for k, _ in others if k < at and k in telling.of_all]  # "all toasty except Fig who was cold"
    return at in telling.past and any(k not in telling.past and k not in left_out for k, _ in others)


def _wetter_told(at: int, event: GarmentIs, states: Sequence[tuple[int, GarmentIs]]) -> bool:
    """As in "wet, soaked right through", "dry, and back on the rack": how wet the piece is was told otherwise."""
    anywhere = event.state == "in service"
    wet = any(e.state in WETNESS for k, e in states if k > at or anywhere)
    return wet and (anywhere or event.state in WETNESS)


def _state_of(event: Event) -> str | None:
    """Whose state is asked for; "update on Storm: no more shivering" asks nothing."""
    return event.horse if isinstance(event, Asked) and event.about == "state" else None
