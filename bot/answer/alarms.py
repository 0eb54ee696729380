"""Advice for a horse that needs somebody: what to do at once, when to look again, whom to call."""

from datetime import datetime

from bot.barn import Barn, Garment, Person
from bot.events import RecheckSet, Seen
from bot.layout import lay_out
from bot.state import State
from bot.voice import Voice, for_person, plain, voice

DRYISH = frozenset({"dry", "in service"})
FIT_IN = 3.0  # inches a rug may be off and still be put on in need
AT_MOST = 2  # layers offered: nobody with a shivering horse reads a list
CALL_BEYOND_C = (37.0, 38.9)
VET = {"shivering": "vet now", "unwell": "vet unwell"}  # when to call; a wet or cold horse does not shiver yet
WARM = ("turnout", "stable")  # never a liner by itself


def alarm(event: Seen, due: datetime, state: State, barn: Barn, person: Person) -> str:
    """What to do at once for a horse that shivers, is unwell, wet or cold; with what is dry and fits."""
    tongue = for_person(barn, person)
    steps = [tongue.say(f"{event.sign} first"), wet_off(event, state, tongue)]
    if event.sign != "unwell":
        layers = dry_layers(event.horse, state, barn, wet=event.sign == "wet")
        offered = tongue.say("or").join(tongue.piece(g, event.horse) for g in layers)
        steps.append(tongue.say("dry layer", pieces=offered) if layers else tongue.say("no dry layer"))
        steps.append(tongue.say("hay and water"))
    return lay_out(
        tongue.say("alarm head", horse=plain(event.horse), sign=tongue.sign(event.sign)),
        *(f"{n}. {step}" for n, step in enumerate((s for s in steps if s), start=1)),
        tongue.say("look again", at=tongue.clock(due)),
        tongue.say(VET.get(event.sign, "vet cold"), signs=tongue.say("vet signs")),
        fever(tongue) if event.sign == "unwell" else None,
        call_line(barn, event.horse, person, tongue),
        tongue.say("hands overrule"),
        for_the_others(event, barn, person, tongue),
    )


def for_the_others(event: Seen, barn: Barn, person: Person, tongue: Voice) -> str | None:
    """The alarm's first words in the group's own language, where the speaker's is another."""
    group = voice(barn, barn.language, barn.units)
    if group.book is tongue.book:
        return None
    return group.say("alarm told", horse=plain(event.horse), sign=group.sign(event.sign), name=plain(person.name))


def fever(tongue: Voice) -> str:
    """The body temperatures that mean a call at once (common veterinary advice, no study)."""
    low, high = (tongue.measures.temperature(t, 1) for t in CALL_BEYOND_C)
    return tongue.say("vet temperature", low=low, high=high)


def wet_off(event: Seen, state: State, tongue: Voice) -> str | None:
    """The pieces it has on that are recorded as wet: off first."""
    wet = [g for g in event.wore or () if g in state.garments and state.garments[g].state in {"wet", "soaked", "damp"}]
    return tongue.say("wet off", pieces=" + ".join(tongue.piece(g, event.horse) for g in wet)) if wet else None


def call_line(barn: Barn, horse: str, person: Person | None, tongue: Voice) -> str | None:
    """Who of the barn is to be told, the speaker left out."""
    owner = next((h.owner for h in barn.horses if h.name == horse), None)
    managers = [p.name for p in barn.people if p.role == "manager"]
    told = [n for n in dict.fromkeys([*managers, *([owner] if owner else [])]) if person is None or n != person.name]
    return tongue.say("tell", names=tongue.names(told)) if told else None


def dry_layers(horse: str, state: State, barn: Barn, *, wet: bool = False) -> list[str]:
    """Ids of dry, in-service pieces that fit this horse and are on nobody, its own first.

    A cooler on a wet horse; else what has most fill; a sheet only where there is nothing else and nothing is on.
    """
    taken = {g for name, worn in state.wearing().items() for g in worn or () if name != horse}
    taken |= set(state.horses[horse].wear or ()) if horse in state.horses else set()
    fitting = [g for g in barn.garments if g.id not in taken and _dry(g, state) and _fits(g, horse, barn, state)]
    coolers = [g for g in fitting if g.kind == "cooler"]
    warm = sorted((g for g in fitting if g.kind in WARM and g.fill_g), key=lambda g: (g.horse != horse, -g.fill_g))
    bare = not (state.horses[horse].wear if horse in state.horses else ())
    sheets = [g for g in fitting if g.kind == "sheet"] if bare else []
    return [g.id for g in ((coolers if wet else []) or warm or sheets)[:AT_MOST]]


def _dry(garment: Garment, state: State) -> bool:
    now = state.garments.get(garment.id)
    return (now.state if now else garment.state) in DRYISH


def _fits(garment: Garment, horse: str, barn: Barn, state: State) -> bool:
    """The horse's own, or a spare of about its size that does not rub it."""
    if horse in state.rubs.get(garment.id, ()):
        return False
    if garment.horse is not None:
        return garment.horse == horse
    filed = next((h for h in barn.horses if h.name == horse), None)
    size, needed = garment.size, filed.size if filed else None
    infected = filed is not None and filed.skin_infection
    return not infected and (size is None or needed is None or abs(size - needed) <= FIT_IN)


def recheck(event: RecheckSet, barn: Barn, language: str) -> str:
    """The second look that is due, asked of the group."""
    tongue = voice(barn, language, barn.units)
    return lay_out(tongue.say("recheck", horse=plain(event.horse), sign=tongue.sign(event.about)))


def escalate(event: RecheckSet, barn: Barn, person: Person) -> str:
    """The call to one person when nobody has answered a second look."""
    tongue = for_person(barn, person)
    return lay_out(
        tongue.say("escalate", name=plain(person.name), horse=plain(event.horse), sign=tongue.sign(event.about)),
        tongue.say(VET.get(event.about, "vet cold"), signs=tongue.say("vet signs")),
    )
