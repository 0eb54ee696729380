"""Reason: what a decision says of itself as a code and a number; words are made elsewhere, in any language."""

from dataclasses import dataclass
from enum import StrEnum


class Unit(StrEnum):
    """What kind of number a reason carries, so that readers get it in their own units."""

    NONE = ""
    CELSIUS = "celsius"  # a temperature on the scale
    KELVIN = "kelvin"  # a difference of temperatures, a margin
    WIND = "m/s"
    WATER = "mm"
    FILL = "g/m2"
    HOURS = "h"
    PERCENT = "%"
    COUNT = "count"


class Code(StrEnum):
    """Every thing the rules can say. A phrasebook of each language has a sentence for each."""

    # why an outfit was chosen
    WARM_ENOUGH_BARE = "warm enough bare"  # value: cold margin at the worst hour
    COLD_HOUR = "cold hour"  # value: air temperature of the worst hour
    GUSTS = "gusts"  # value: gust of the worst hour
    GUSTS_HAY_OUTSIDE = "gusts while hay is outside"
    RAIN = "rain"  # value: mm over the window
    RAIN_MAY_COME = "rain may come"  # value: chance, per cent
    COLD_RAIN_AND_WIND = "cold rain and wind"  # value: mm over the window
    WET_SNOW = "wet snow"
    CLEAR_NIGHT = "clear night"
    MILD_LATER = "milder later"  # value: warmest air
    CLIPPED = "clipped"
    THIN_COAT = "thin coat"
    THIN = "thin"  # value: condition score
    OLD = "old"  # value: age in years
    YOUNG = "young"
    NO_WINTER_COAT = "no winter coat"
    SICK = "sick"
    SEEN_COLD = "seen cold lately"
    VET_CLOTHES = "clothed by vet's orders"
    LEARNED_COLDER = "feels the cold more"  # value: offset
    LEARNED_WARMER = "feels the cold less"  # value: offset
    NOT_WORTH_A_CHANGE = "not worth a change"
    STALL_STILL_AIR = "still air in the stall"
    WISH_KEPT_BARE = "bare as wished"
    WISH_KEPT_CLOTHED = "clothed as wished"  # value: the temperature of the wish
    WISH_KEPT_SHEET = "sheet in rain as wished"
    WISH_KEPT_FILL = "no more fill than wished"  # value: the fill of the wish
    WISH_BROKEN_BARE = "wish for bare not kept"
    WISH_BROKEN_FILL = "fill over the wish"
    WISH_BROKEN_CLOTHED = "wish for clothes not kept"
    WISH_BROKEN_SHEET = "wish for a sheet not kept"
    OWN_WET = "own garment wet"  # garment named; value: hours until dry
    OWN_OUT_OF_SERVICE = "own garment out of service"
    BORROWED = "borrowed spare"
    UNJUDGED = "hours without forecast"  # value: count
    NO_FORECAST = "no forecast"

    # why an outfit may not be worn
    NOT_DRY = "not dry"  # garment, hours
    OUT_OF_SERVICE = "out of service"
    WRONG_SIZE = "wrong size"
    LINER_ALONE = "liner needs a layer over it"
    NECK_ALONE = "neck cover needs a rug"
    NOT_FOR_WEATHER = "not for outdoors"
    NO_REAR_STRAP = "no rear strap in gusts"  # value: gust
    TOO_MANY_LAYERS = "too many layers"
    RUBS = "rubs this horse"
    SHARES_NOTHING = "shares nothing"
    COOLER_UNDER_SUPERVISION = "cooler only under supervision"
    BELONGS_TO_ANOTHER = "belongs to another horse"
    ORDER = "worn in the wrong order"
    TOO_WARM = "too warm"  # value: heat margin
    TOO_COLD = "too cold"  # value: cold margin

    # cautions
    HAND_CHECK_COLD = "hand check: may be cold"  # value: cold margin
    HAND_CHECK_WARM = "hand check: may be warm"  # value: heat margin
    HAND_CHECK_UNSURE = "hand check: model unsure"  # value: sd
    WET_COAT = "do not rug a wet horse"
    STRAPS_IN_WIND = "check straps in wind"
    SLIPPING_LAYERS = "layers may slip"
    TAKE_OFF_AT_ROUND = "too warm later: off at the next round"
    NOTHING_REACHES = "no dry outfit reaches"  # value: cold margin
    MORE_HAY = "more hay"  # value: kg a day is said elsewhere; per cent here
    OFFER_WATER = "offer water, check for ice"
    DRY_FIRST = "dry the horse first"
    VET_IF_SHIVERING = "shivering: shelter, hay, dry layer, veterinarian"


@dataclass(frozen=True, slots=True)
class Reason:
    """One thing a decision says.

    hour: index into the question's hours, None where no hour stands out. value: in the SI unit that
    `unit` names, before anybody's units. garment: the id of the piece it is about.
    """

    code: Code
    hour: int | None = None
    value: float | None = None
    unit: Unit = Unit.NONE
    garment: str | None = None
