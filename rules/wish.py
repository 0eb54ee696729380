"""Wish: what an owner asked for, which outfits keep it, and what breaking it costs.

A wish is worth so many degrees of the horse's comfort all through the window (`Costs.wish`, `Costs.wish_bare`):
it is kept where it does no more harm than that. Shivering, cold and vet's orders make a wish for bare void.
"""

from rules.outfit import Outfit
from rules.outlook import Outlook
from rules.question import Costs, PlaceName, Wearer
from rules.reason import Code, Reason, Unit

RAIN_MM = 0.5  # over a window: less is no reason for a sheet
LIKELY_PCT = 50.0  # a chance of rain from which an owner would put the sheet on


def broken(wearer: Wearer, outfit: Outfit, outlook: Outlook, place: PlaceName) -> list[Reason]:
    """The wishes that this outfit does not keep, each as the reason that says so."""
    wishes, found = wearer.wishes, []
    if wishes.keep_bare and outfit.pieces:
        found.append(Reason(Code.WISH_BROKEN_BARE))
    if _cold_enough(wearer, outlook) and not outfit.pieces:
        found.append(Reason(Code.WISH_BROKEN_CLOTHED, value=wishes.clothed_below_c, unit=Unit.CELSIUS))
    if wishes.sheet_in_rain and rains(outlook, place) and not outfit.sheds_rain:
        found.append(Reason(Code.WISH_BROKEN_SHEET))
    if wishes.max_fill_g is not None and outfit.fill_g > wishes.max_fill_g:
        found.append(Reason(Code.WISH_BROKEN_FILL, value=wishes.max_fill_g, unit=Unit.FILL))
    return found


def kept(wearer: Wearer, outfit: Outfit, outlook: Outlook, place: PlaceName) -> list[Reason]:
    """The wishes that bear on this window and are kept."""
    wishes, found = wearer.wishes, []
    if wishes.keep_bare and not outfit.pieces:
        found.append(Reason(Code.WISH_KEPT_BARE))
    if _cold_enough(wearer, outlook) and outfit.pieces:
        found.append(Reason(Code.WISH_KEPT_CLOTHED, value=wishes.clothed_below_c, unit=Unit.CELSIUS))
    if wishes.sheet_in_rain and rains(outlook, place) and outfit.sheds_rain:
        found.append(Reason(Code.WISH_KEPT_SHEET))
    if wishes.max_fill_g is not None and outfit.fill_g <= wishes.max_fill_g:
        found.append(Reason(Code.WISH_KEPT_FILL, value=wishes.max_fill_g, unit=Unit.FILL))
    return found


def price(wearer: Wearer, outfit: Outfit, outlook: Outlook, place: PlaceName, costs: Costs, hours: float) -> float:
    """What the wishes broken by this outfit cost over a window of so many hours [cold degree-hours]."""
    total = 0.0
    for reason in broken(wearer, outfit, outlook, place):
        bare = reason.code is Code.WISH_BROKEN_BARE
        if not (bare and (wearer.must_clothe or wearer.vet_clothes)):
            total += hours * (costs.wish_bare if bare else costs.wish)
    return total


def rains(outlook: Outlook, place: PlaceName) -> bool:
    """Whether rain is to be reckoned with where the horse stands."""
    likely = outlook.chance is not None and outlook.chance.value >= LIKELY_PCT
    return place == "field" and (outlook.rain + outlook.wet_snow >= RAIN_MM or likely)


def _cold_enough(wearer: Wearer, outlook: Outlook) -> bool:
    limit = wearer.wishes.clothed_below_c
    return limit is not None and outlook.coldest is not None and outlook.coldest.value < limit
