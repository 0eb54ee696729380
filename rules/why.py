"""Why: the one to three reasons behind a decision, the most decisive first."""

from collections.abc import Iterable

from rules import wish
from rules.decision import Decision
from rules.outlook import Peak
from rules.parameters import OLD, THIN, YOUNG
from rules.reason import Code, Reason, Unit

MOST = 3
STRONG_GUST_MS = 11.0  # strong breeze (Beaufort 6): wind that people speak of
RAIN_MM = 0.5  # over a window
MAYBE_PCT = 30.0  # a chance of rain worth naming
LEARNED_K = 0.75  # a learned offset that changes clothes
MILD_K = 5.0  # how much milder it gets for "milder later" to be the reason
COLD_BARE_K = 1.0  # a bare horse's margin, tolerance included, below which the weather asks for clothes


def reasons(decision: Decision) -> tuple[Reason, ...]:
    """One to three, the most decisive first."""
    if decision.cold is None:
        return (Reason(Code.NO_FORECAST),)
    said = [*_wishes(decision), *(_bare(decision) if not decision.outfit.pieces else _dressed(decision))]
    gaps = _gaps(decision)
    kept = list({reason.code: reason for reason in reversed(said)}.values())[::-1][: MOST - len(gaps)]
    return (*kept, *gaps)


def _gaps(decision: Decision) -> list[Reason]:
    hours = len(decision.unjudged)
    return [Reason(Code.UNJUDGED, value=float(hours), unit=Unit.COUNT)] if hours else []


def _wishes(decision: Decision) -> Iterable[Reason]:
    """Wishes not kept are always said; wishes kept only where they decided."""
    asked = (decision.wearer, decision.outfit, decision.outlook, decision.stay.place)
    yield from wish.broken(*asked)
    would_break = {r.code for r in wish.broken(decision.wearer, decision.easiest, *asked[2:])}
    for kept in wish.kept(*asked):
        if OPPOSITE[kept.code] in would_break and decision.outfit != decision.easiest:
            yield kept


OPPOSITE = {
    Code.WISH_KEPT_BARE: Code.WISH_BROKEN_BARE,
    Code.WISH_KEPT_CLOTHED: Code.WISH_BROKEN_CLOTHED,
    Code.WISH_KEPT_SHEET: Code.WISH_BROKEN_SHEET,
    Code.WISH_KEPT_FILL: Code.WISH_BROKEN_FILL,
}


def _bare(decision: Decision) -> Iterable[Reason]:
    """Why nothing at all."""
    assert decision.cold is not None
    if decision.eased >= 0:
        if decision.before and _much_milder(decision):
            yield _peak(Code.MILD_LATER, decision.outlook.warmest, Unit.CELSIUS)
        spare = decision.cold if decision.cold.value >= 0 else None  # within what a hardy horse bears: no number
        yield _peak(Code.WARM_ENOUGH_BARE, spare, Unit.KELVIN)
    else:
        yield from _absent(decision)
        yield _coldest(decision)
        yield from _kept_on(decision)
    if decision.stay.place == "stall":
        yield Reason(Code.STALL_STILL_AIR)
    yield from _learned(decision)


def _dressed(decision: Decision) -> Iterable[Reason]:
    """Why these clothes: what people saw or ordered, the weather, the horse, what was learned, what was at hand."""
    if decision.wearer.vet_clothes:
        yield Reason(Code.VET_CLOTHES)
    if decision.wearer.must_clothe:
        yield Reason(Code.SEEN_COLD)
    if decision.bare is not None and decision.bare.value >= COLD_BARE_K:
        yield from _kept_on(decision)
    yield from _weather(decision)
    yield from _animal(decision)
    yield from _learned(decision)
    yield from _at_hand(decision)
    yield from _kept_on(decision)
    if _much_milder(decision):
        yield _peak(Code.MILD_LATER, decision.outlook.warmest, Unit.CELSIUS)


def _weather(decision: Decision) -> Iterable[Reason]:
    """What in the sky asks for clothes; cold alone where nothing else does."""
    view = decision.outlook
    if decision.stay.place == "stall":
        yield _coldest(decision)
        return
    windy = view.gust is not None and view.gust.value >= STRONG_GUST_MS
    if view.wet_snow >= RAIN_MM:
        yield Reason(Code.WET_SNOW, _hour(view.wettest), view.wet_snow, Unit.WATER)
    if view.rain >= RAIN_MM:
        code = Code.COLD_RAIN_AND_WIND if windy else Code.RAIN
        yield Reason(code, _hour(view.wettest), view.rain, Unit.WATER)
    elif view.chance is not None and view.chance.value >= MAYBE_PCT and decision.outfit.sheds_rain:
        yield _peak(Code.RAIN_MAY_COME, view.chance, Unit.PERCENT)
    if windy and not (view.rain >= RAIN_MM):
        useless = decision.stay.shelter != "none" and decision.stay.hay == "outside"
        yield _peak(Code.GUSTS_HAY_OUTSIDE if useless else Code.GUSTS, view.gust, Unit.WIND)
    yield _coldest(decision)


def _coldest(decision: Decision) -> Reason:
    clear, coldest = decision.outlook.clear_night, decision.outlook.coldest
    if decision.stay.place == "field" and clear is not None and coldest is not None and clear.hour == coldest.hour:
        return _peak(Code.CLEAR_NIGHT, clear, Unit.CELSIUS)
    return _peak(Code.COLD_HOUR, coldest, Unit.CELSIUS)


def _animal(decision: Decision) -> Iterable[Reason]:
    """What in this horse asks for more than its neighbour has."""
    horse = decision.wearer.horse
    if horse.sick:
        yield Reason(Code.SICK)
    if horse.clip not in ("none", "bib"):
        yield Reason(Code.CLIPPED)
    if horse.species == "donkey":
        yield Reason(Code.NO_WINTER_COAT)
    if horse.age_years < YOUNG:
        yield Reason(Code.YOUNG, value=horse.age_years)
    if horse.age_years >= OLD:
        yield Reason(Code.OLD, value=horse.age_years)
    if horse.condition <= THIN:
        yield Reason(Code.THIN, value=horse.condition)
    if horse.coat == "fine":
        yield Reason(Code.THIN_COAT)


def _learned(decision: Decision) -> Iterable[Reason]:
    offset = decision.wearer.offset_c
    if abs(offset) >= LEARNED_K:
        code = Code.LEARNED_COLDER if offset > 0 else Code.LEARNED_WARMER
        yield Reason(code, value=offset, unit=Unit.KELVIN)


def _at_hand(decision: Decision) -> Iterable[Reason]:
    borrowed = sorted(decision.outfit.spares)
    if borrowed:
        yield from _absent(decision)
        yield Reason(Code.BORROWED, garment=borrowed[0])


def _absent(decision: Decision) -> Iterable[Reason]:
    """Own pieces that could not be used and would have had a place here."""
    for piece in decision.absent:
        if not piece.in_service:
            yield Reason(Code.OWN_OUT_OF_SERVICE, garment=piece.garment.id)
        elif piece.water != "dry":
            yield Reason(Code.OWN_WET, garment=piece.garment.id)


def _kept_on(decision: Decision) -> Iterable[Reason]:
    """The clothes stay as they are although others would be a little better."""
    if not decision.changes and decision.outfit != decision.easiest and decision.saving >= 0.1:
        yield Reason(Code.NOT_WORTH_A_CHANGE, value=decision.saving)


def _much_milder(decision: Decision) -> bool:
    coldest, warmest = decision.outlook.coldest, decision.outlook.warmest
    if coldest is None or warmest is None:
        return False
    return warmest.hour > coldest.hour and warmest.value - coldest.value >= MILD_K


def _peak(code: Code, peak: Peak | None, unit: Unit) -> Reason:
    return Reason(code, unit=unit) if peak is None else Reason(code, peak.hour, peak.value, unit)


def _hour(peak: Peak | None) -> int | None:
    return None if peak is None else peak.hour
