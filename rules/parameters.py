"""Parameters: every thermal number of the rules, once: value, range, unit, source and standing.

The ranges are wide (a winter horse's lower critical temperature runs from −59 to +7 °C over them), so the model is
calibrated, not validated: what people read are bands, and a hand under the rug overrules.
Unless said, "m2" is square metres of body surface and a resistance is in m2 K/W.
"""

from typing import Literal

Standing = Literal["measured", "transferred", "assumed", "derived"]


class Parameter(float):
    """A number that says where it comes from; in formulas it is a float.

    low, high: the range that published values span (or, where assumed, that we would not argue with).
    standing: measured (on horses), transferred (from another species, from clothing), derived (from other
    published values), assumed (nobody measured it).
    """

    low: float
    high: float
    unit: str
    source: str
    standing: Standing

    def __new__(cls, value: float, low: float, high: float, unit: str, source: str, standing: Standing) -> "Parameter":
        """The number with its papers; raises ValueError where it lies outside its own range."""
        if not low <= value <= high:
            raise ValueError(f"{value} lies outside {low} to {high}: {source}")
        made = super().__new__(cls, value)
        made.low, made.high, made.unit, made.source, made.standing = low, high, unit, source, standing
        return made


# ---- the animal -----------------------------------------------------------------------------------------------
AREA_AT_ZERO = Parameter(1.09, 1.0, 1.2, "m2", "Hodgson et al. 1993, from memory", "measured")
AREA_PER_KG = Parameter(0.008, 0.0075, 0.0110, "m2/kg", "Hodgson et al. 1993, from memory; Meeh 6.6 m2", "measured")
GIRTH_DIVISOR = Parameter(11880, 11877, 11900, "cm3/kg", "Carroll and Huntington 1988", "measured")
DIGESTIBLE_ENERGY = Parameter(0.0333, 0.0303, 0.0363, "Mcal/kg/d", "NRC 2007, from memory", "measured")
METABOLISABLE_SHARE = Parameter(0.87, 0.82, 0.90, "1", "various, from memory", "measured")
WATT_PER_MCAL_DAY = Parameter(48.42, 48.42, 48.43, "W/(Mcal/d)", "4.184 MJ over 86,400 s", "derived")
SURPLUS_HEAT = Parameter(0.5, 0.35, 0.6, "1", "heat of feeding above maintenance, from memory", "assumed")
DEFICIT_HEAT = Parameter(0.4, 0.35, 0.6, "1", "heat of feeding below maintenance, from memory", "assumed")
FEED_LOW = Parameter(0.80, 0.70, 0.95, "maintenance", "little hay: what owners mean by it", "assumed")
FEED_AD_LIB = Parameter(1.33, 1.2, 1.5, "maintenance", "Cymbaluk and Christison 1989, 33 % over NRC", "measured")
FOAL_HEAT = Parameter(109, 82, 148, "W/m2", "Ousey et al. 1997, healthy newborn from sick and 25 % less", "derived")
SICK_FOAL_HEAT = Parameter(0.75, 0.65, 0.9, "1", "Ousey et al. 1997: sick foals 25 % less", "measured")
EVAPORATION = Parameter(0.20, 0.15, 0.245, "of heat", "Morgan 1995: 31 W/m2; cattle 0.15", "measured")
EVAPORATION_WARM = Parameter(0.33, 0.25, 0.50, "of heat", "so that winter coats end at +10, McBride 1985", "derived")
TISSUE_COLD = Parameter(0.0994, 0.076, 0.186, "m2 K/W", "Bruce and Clark 1979 in Berman 2004, at 500 kg", "transferred")
TISSUE_WEIGHT_POWER = Parameter(0.33, 0.30, 0.36, "1", "Bruce and Clark 1979 in Berman 2004", "transferred")
TISSUE_PER_CONDITION = Parameter(0.08, 0.03, 0.12, "1/point", "NRC beef cattle, from memory", "transferred")
TISSUE_WARM = Parameter(0.02, 0.02, 0.041, "m2 K/W", "fitted to Morgan 1997's onset at 20 °C", "derived")
EXTREMITY_TISSUE = Parameter(2.0, 1.0, 2.5, "1", "cold legs and head; hind-leg skin 17.5 °C, Wallsten 2012", "derived")
CORE = Parameter(38.0, 37.2, 38.5, "°C", "veterinary common values, rectal", "measured")
CORE_FOAL = Parameter(38.4, 37.5, 39.0, "°C", "mean of foals, Reece 1991", "measured")
TRUNK_DIAMETER = Parameter(0.65, 0.5, 0.8, "m", "trunk of a 500 kg horse as a cylinder", "assumed")
TOLERANCE = Parameter(0.10, 0.0, 0.20, "of heat", "fit, hay-fed adults stand a little cold", "assumed")
TOLERANCE_SHORN = Parameter(0.05, 0.0, 0.15, "of heat", "the same with no hair to raise: body clips", "assumed")
UNSURE = Parameter(2.5, 1.5, 5.0, "K", "an individual's critical temperature is known to about ±5 K", "derived")
UNSURE_PONY = Parameter(4.0, 2.5, 8.0, "K", "winter ponies burn down to half, Brinkmann 2014", "derived")
UNSURE_CLIPPED = Parameter(3.5, 2.5, 5.0, "K", "how close the blade went, how much it took: as drawn", "assumed")
UNSURE_AGE = Parameter(3.5, 2.5, 6.0, "K", "old, young and sick: few or no measurements", "assumed")
OLD = Parameter(20, 18, 25, "years", "common practice, no source", "assumed")
YOUNG = Parameter(2, 1, 3, "years", "yearlings measured apart from adults, Cymbaluk 1994", "transferred")
THIN = Parameter(4, 3, 4, "condition", "common veterinary advice", "assumed")
NEWBORN = Parameter(0.1, 0.02, 0.25, "years", "the first weeks, Ousey 1992", "transferred")
BODY_SHARE = Parameter(0.65, 0.55, 0.75, "of surface", "under a rug with a standard neck", "assumed")
NECK_SHARE = Parameter(0.15, 0.10, 0.18, "of surface", "under a full neck cover", "assumed")
HALF_NECK = Parameter(0.5, 0.4, 0.7, "of neck", "what a half neck covers", "assumed")
HAY_ENERGY = Parameter(6.8, 5.5, 8.0, "MJ/kg", "metabolisable, as fed, common hay tables, from memory", "assumed")

# ---- hair -----------------------------------------------------------------------------------------------------
COAT_PER_MM = Parameter(0.010, 0.0053, 0.0256, "m2 K/W/mm", "cattle to arctic fur; no horse", "transferred")
COAT_WIND = Parameter(0.06, 0.05, 0.25, "s/m", "fits NRC cattle at 16 km/h and caribou fur", "transferred")
COAT_DENSE_WIND = Parameter(0.05, 0.04, 0.12, "s/m", "a heavy double coat, as caribou fur", "transferred")
COAT_WARM = Parameter(0.7, 0.6, 0.9, "1", "hair laid flat in the warm; erect is +30 %, Blaxter, Wainman", "transferred")
COAT_FLATTENED = Parameter(0.6, 0.4, 0.8, "1", "hair under a rug; nobody measured it", "assumed")
COAT_HALVING_WATER = Parameter(0.11, 0.10, 0.12, "of volume", "caribou fur, Lentz and Hart 1960", "transferred")
COAT_MOST_WATER = Parameter(0.20, 0.11, 0.30, "of volume", "then it runs off", "assumed")
COAT_SEEN_WET = Parameter(0.05, 0.02, 0.11, "of volume", "what a person calls a wet horse", "assumed")
COAT_CLIPPED = Parameter(2.0, 1.0, 3.0, "mm", "left by the blades", "assumed")
COAT_SUMMER = Parameter(6.0, 4.0, 8.0, "mm", "short coat", "assumed")
COAT_DONKEY = Parameter(10.0, 6.0, 14.0, "mm", "the same all year, Osthaus 2018; its depth assumed", "assumed")
COAT_WINTER_FINE = Parameter(16.0, 12.0, 20.0, "mm", "thin-skinned breeds", "assumed")
COAT_WINTER_AVERAGE = Parameter(22.0, 14.0, 24.0, "mm", "to land near published temperatures", "derived")
COAT_WINTER_HEAVY = Parameter(26.0, 22.0, 30.0, "mm", "Shetland 23.8 mm, Booth et al. 1998", "measured")
COAT_LATITUDE = Parameter(20.0, 10.0, 30.0, "degrees", "how far from the equator a winter coat begins", "assumed")
COAT_GROWS_FROM = Parameter(227, 210, 250, "day of year", "mid August; growth from September seen", "assumed")
COAT_FULL_FROM = Parameter(356, 340, 366, "day of year", "winter solstice, extension advice", "transferred")
COAT_SHEDS_FROM = Parameter(46, 32, 91, "day of year", "mid February", "assumed")
COAT_SHED_BY = Parameter(140, 110, 160, "day of year", "mid May, Stachurska 2015 for shedding", "assumed")
REGROWTH_AUTUMN = Parameter(0.20, 0.15, 0.25, "mm/d", "while days shorten; practice: 6 to 12 weeks", "assumed")
REGROWTH_WINTER = Parameter(0.03, 0.0, 0.08, "mm/d", "little after January, common practice", "assumed")
REGROWTH_SUMMER = Parameter(0.08, 0.03, 0.15, "mm/d", "the summer coat comes in", "assumed")

# ---- weeks behind -----------------------------------------------------------------------------------------------
ACCLIMATISES_IN = Parameter(12.0, 10.0, 21.0, "d", "10 to 21 days, extension advice; no trial of horses", "assumed")
ACCLIMATISED_BY = Parameter(0.15, 0.0, 0.4, "K/K", "nobody measured it; 0.4 would be cattle's higher upkeep", "assumed")
ACCLIMATISED_MILD = Parameter(2.0, 0.0, 3.0, "K", "feels the cold so much more after mild weeks, at most", "assumed")
ACCLIMATISED_COLD = Parameter(1.0, 0.0, 2.0, "K", "and so much less after cold ones: it may wear a rug", "assumed")
USED_TO_WINTER = Parameter(0.0, -15.0, 8.0, "°C", "mean air at which winter horses were measured", "assumed")
USED_TO_SUMMER = Parameter(18.0, 12.0, 24.0, "°C", "mean air in which a summer coat stands", "assumed")

# ---- clothes --------------------------------------------------------------------------------------------------
RUG_GAP = Parameter(0.08, 0.03, 0.12, "m2 K/W", "shell, lining, air; an empty sheet adds nothing dry", "derived")
RUG_GAP_WIND = Parameter(0.10, 0.0, 0.30, "s/m", "pumping, after ISO 9920 for people", "transferred")
LAYER_GAP = Parameter(0.02, 0.0, 0.05, "m2 K/W", "air between two layers", "assumed")
FILL_RESISTANCE = Parameter(0.0011, 0.0006, 0.0019, "m2 K/W per g/m2", "battings, 0.06 to 0.19 a 100 g", "transferred")
FILL_SATURATION = Parameter(1500, 800, 4000, "g/m2", "fill presses itself; after Hammer, Gunkelman 2020", "derived")
LAYER_PRESSES = Parameter(2000, 1000, 5000, "g/m2", "weight above that halves the loft below", "assumed")
SHELL_WEIGHT = Parameter(250, 150, 450, "g/m2", "outer cloth and lining, 600 to 1200 denier", "assumed")
OPEN_WEAVE_WIND = Parameter(0.25, 0.10, 0.50, "s/m", "wind through cloth without a shell", "assumed")
OPEN_WEAVE_HAIR = Parameter(0.5, 0.2, 1.0, "1", "share of the wind's hold on hair under open cloth", "assumed")
CLOTH_WET_LOSS = Parameter(0.5, 0.3, 0.8, "1", "of a soaked filling's resistance", "assumed")
CLOTH_WATER = Parameter(0.30, 0.15, 0.6, "kg/m2", "held by cloth without fill", "assumed")
FILL_WATER = Parameter(3.0, 1.0, 6.0, "kg/kg", "quilts hold several times their weight, from memory", "assumed")
SHELL_FILM = Parameter(0.15, 0.05, 0.30, "kg/m2", "outside a waterproof shell", "assumed")
LEAK_SOUND = Parameter(0.01, 0.0, 0.05, "of rain", "through seams of a good shell", "assumed")
LEAK_FAILED = Parameter(0.5, 0.2, 0.8, "of rain", "a shell that lost its proofing", "assumed")
PROOFING_HOLDS = Parameter(1.0, 0.5, 2.0, "years", "proof again every year: common practice, no source", "assumed")
LEAK_PER_YEAR = Parameter(0.08, 0.02, 0.2, "of rain", "a year after that: no source, a guess", "assumed")
LEAK_OPEN = Parameter(0.8, 0.5, 1.0, "of rain", "cloth that never was waterproof", "assumed")
DAMP = Parameter(0.15, 0.05, 0.3, "of capacity", "what a hand calls damp", "assumed")
WET = Parameter(0.5, 0.3, 0.7, "of capacity", "what a hand calls wet", "assumed")
DRY_ENOUGH = Parameter(0.02, 0.0, 0.05, "of capacity", "what a hand calls dry", "assumed")

# ---- water ----------------------------------------------------------------------------------------------------
RAIN_ON_BODY = Parameter(0.30, 0.2, 0.4, "of surface", "back and upper flanks", "assumed")
RAIN_ON_OPEN = Parameter(0.15, 0.1, 0.3, "of surface", "neck, head and legs, when the back is covered", "assumed")
CATCH_DRIZZLE = Parameter(0.05, 0.0, 0.1, "of rain", "grease sheds light rain", "assumed")
CATCH_STEADY = Parameter(0.30, 0.1, 0.5, "of rain", "steady rain into hair", "assumed")
CATCH_DRIVEN = Parameter(0.60, 0.4, 0.9, "of rain", "rain driven by wind", "assumed")
CATCH_RAIN = Parameter(0.7, 0.3, 2.0, "mm/h", "half way from drizzle to steady", "assumed")
CATCH_WIND = Parameter(5.0, 2.0, 8.0, "m/s", "half way to driven", "assumed")
WET_SNOW_FROM = Parameter(-2.0, -4.0, -1.0, "°C", "colder snow is shaken off", "assumed")
WET_SNOW_ALL = Parameter(0.5, 0.0, 2.0, "°C", "warmer snow is water", "assumed")
DRY_SNOW_WETS = Parameter(0.05, 0.0, 0.15, "of snow", "what melts of dry snow", "assumed")
LATENT_HEAT = Parameter(2.47e6, 2.43e6, 2.50e6, "J/kg", "of vaporisation at 13 °C", "measured")
HAIR_DRYING_HEAT = Parameter(110, 50, 150, "W/m2", "that leaves through wet hair at rest anyway", "derived")
COVERED_DRYING_HEAT = Parameter(20, 5, 40, "W/m2", "body heat that dries hair under clothes", "assumed")
COOLER_DRYING_HEAT = Parameter(60, 30, 100, "W/m2", "the same under a wicking cooler", "assumed")
CLOTH_DRYING_HEAT = Parameter(60, 20, 110, "W/m2", "skin to air through Ret 20 to 40 m2 Pa/W (EN 343)", "derived")
INNER_HEAT_SHARE = Parameter(0.75, 0.5, 1.0, "1", "of drying at the skin, paid by the horse", "assumed")
OUTER_HEAT_SHARE = Parameter(0.25, 0.1, 0.4, "1", "of drying outside; wet lambs, Alexander 1962", "transferred")
SWEAT_INTO_HAIR = Parameter(0.7, 0.4, 0.9, "1", "of sweat under clothes; the rest into them", "assumed")

# ---- air ------------------------------------------------------------------------------------------------------
STEFAN_BOLTZMANN = Parameter(5.670374e-8, 5.67e-8, 5.671e-8, "W/m2/K4", "CODATA 2018", "measured")
EMISSIVITY = Parameter(0.98, 0.95, 1.0, "1", "hair and cloth", "measured")
AIR_CONDUCTIVITY = Parameter(0.0243, 0.024, 0.026, "W/m/K", "air near 5 °C", "measured")
AIR_VISCOSITY = Parameter(1.33e-5, 1.3e-5, 1.6e-5, "m2/s", "air near 5 °C", "measured")
AIR_HEAT_CAPACITY = Parameter(1250, 1180, 1300, "J/m3/K", "air near 5 °C", "measured")
FREE_CONVECTION = Parameter(3.0, 2.0, 5.0, "W/m2/K", "still air around a large body", "transferred")
NUSSELT_FACTOR = Parameter(0.24, 0.2, 0.26, "1", "cylinder in a stream, Re < 50,000", "transferred")
NUSSELT_POWER = Parameter(0.60, 0.58, 0.62, "1", "cylinder in a stream, Re < 50,000", "transferred")
NUSSELT_FACTOR_FAST = Parameter(0.024, 0.02, 0.03, "1", "cylinder in a stream, Re > 50,000", "transferred")
NUSSELT_POWER_FAST = Parameter(0.81, 0.80, 0.82, "1", "cylinder in a stream, Re > 50,000", "transferred")
WIND_RIDGE = Parameter(0.80, 0.7, 1.1, "of 10 m wind", "short grass and a crest's speed-up", "assumed")
WIND_OPEN = Parameter(0.59, 0.55, 0.76, "of 10 m wind", "log profile to 1.5 m, fenced farmland 0.1 m", "derived")
WIND_SHELTERED = Parameter(0.35, 0.2, 0.5, "of 10 m wind", "hedges and hollows, from memory", "assumed")
GUST_SHARE = Parameter(0.15, 0.0, 0.35, "1", "of the gust over the mean that chills", "assumed")
SHED_WIND = Parameter(0.15, 0.1, 0.3, "1", "wind inside of the open field's, from memory", "assumed")
TREES_WIND = Parameter(0.5, 0.3, 0.7, "1", "among trees", "assumed")
TREES_RAIN = Parameter(0.7, 0.5, 0.9, "1", "through winter trees", "assumed")
TREES_SKY = Parameter(0.5, 0.3, 0.7, "1", "sky and sun seen from among trees", "assumed")
SHELTER_WITH_HAY = Parameter(0.85, 0.6, 0.95, "of time", "a horse whose hay is in the shelter", "assumed")
SHELTER_WITHOUT_HAY = Parameter(0.5, 0.2, 0.8, "of time", "a horse without hay, in bad weather", "assumed")
STALL_WARMER = Parameter(3.0, 0.0, 8.0, "K", "a barn with horses in it", "assumed")
STALL_WIND = Parameter(0.2, 0.05, 0.5, "m/s", "an airy stall", "assumed")
SUN_ON_BODY = Parameter(0.25, 0.2, 0.35, "of surface", "shadow of a body over its surface", "derived")
SUN_LIGHT = Parameter(0.49, 0.40, 0.66, "1", "white coats, Riemerschmid and Elder", "transferred")
SUN_MID = Parameter(0.80, 0.78, 0.83, "1", "red coats, Riemerschmid and Elder", "transferred")
SUN_DARK = Parameter(0.89, 0.85, 0.96, "1", "black coats, Riemerschmid and Elder", "transferred")
SUN_MOST = Parameter(5.0, 3.0, 5.0, "K", "NRC beef: bright sun is worth 3 to 5 K", "transferred")
SKY_ON_BODY = Parameter(0.35, 0.25, 0.5, "of surface", "for a clear calm night of about 5 K, CSIRO 1990", "derived")
SKY_CLEAR = Parameter(5.31e-13, 5.2e-13, 5.4e-13, "W/m2/K6", "Swinbank 1963, clear sky, from memory", "transferred")
SKY_CLOUD = Parameter(0.84, 0.7, 0.9, "1", "of the clear sky's cold that full cloud takes away", "transferred")
UNKNOWN_CLOUD = Parameter(0.5, 0.0, 1.0, "of sky", "where a forecast is silent", "assumed")

# ---- what a forecast is worth ---------------------------------------------------------------------------------
SPREAD_NOW = Parameter(0.8, 0.5, 1.5, "K", "standard deviation of an hour's temperature now", "assumed")
SPREAD_PER_HOUR = Parameter(0.03, 0.01, 0.06, "K/h", "and by hour of lead", "assumed")
SPREAD_WIND_NOW = Parameter(0.20, 0.1, 0.4, "1", "standard deviation of log wind now", "assumed")
SPREAD_WIND_PER_HOUR = Parameter(0.003, 0.001, 0.01, "1/h", "and by hour of lead", "assumed")
RAIN_SURE = Parameter(0.95, 0.9, 1.0, "1", "a chance from which rain counts as certain", "assumed")
RAIN_UNLIKELY = Parameter(0.05, 0.0, 0.1, "1", "a chance below which it counts as dry", "assumed")
RAIN_IF_ANY = Parameter(0.3, 0.1, 1.0, "mm", "in an hour that may rain and has no amount", "assumed")
RAIN_TRACE = Parameter(0.1, 0.05, 0.2, "mm", "less is no rain", "assumed")

# ---- what people's words are worth ----------------------------------------------------------------------------
OFFSET_MOST = Parameter(8.0, 5.0, 10.0, "K", "three times what an individual is unsure by", "derived")
SIGN_NOISE = Parameter(1.8, 0.8, 3.0, "K", "logistic scale of what is seen against the hour's balance", "assumed")
HOT_ROOM = Parameter(0.5, 0.0, 3.0, "K", "heat margin left when a hand says hot; sweat begins at none", "assumed")
SHIVERING_LACK = Parameter(3.0, 1.0, 6.0, "K", "below where a horse is called cold", "assumed")
WRONG_REPORTS = Parameter(0.04, 0.02, 0.2, "1", "another horse, a joke, a gallop", "assumed")
WARM_THOUGH_BARE = Parameter(
    0.3, 0.0, 1.0, "1", "what a warm sign on a bare horse counts: nothing comes off", "assumed"
)
OWN_MEASURE = Parameter(0.8, 0.3, 2.0, "K", "one person's idea of warm against the barn's", "assumed")
ONE_VOICE_MOST = Parameter(1.8, 1.0, 3.0, "K", "one person moves a horse, against all others' words", "assumed")
ASTRAY = Parameter(0.1, 0.02, 0.3, "1", "people whose word on one horse is out of line altogether", "assumed")
ASTRAY_BY = Parameter(5.0, 3.0, 8.0, "K", "how far out of line", "assumed")
COMMON_HORSES = Parameter(3, 2, 5, "horses", "with signs, before a barn is thought to differ", "assumed")
COMMON_FROM = Parameter(
    12.0, 6.0, 40.0, "signs", "of at least two people, before a barn is thought to differ", "assumed"
)
FILL_GIVES_PRIOR = Parameter(1.0, 0.3, 2.0, "K per 100 g/m2", "how far fill is off what is computed", "assumed")
FILL_GIVES_MOST = Parameter(2.0, 1.0, 3.0, "K per 100 g/m2", "and at the most", "assumed")
BEARS_LESS_PRIOR = Parameter(4.0, 1.0, 6.0, "K", "what people let a horse lack, against the model", "assumed")
BEARS_LESS_MOST = Parameter(10.0, 5.0, 12.0, "K", "and at the most", "assumed")
STALL_PRIOR = Parameter(4.0, 2.0, 6.0, "K", "how far a stall is off the usual: open boxes, shut barns", "assumed")
STALL_MOST = Parameter(8.0, 5.0, 10.0, "K", "and at the most", "assumed")
REGROWTH_PRIOR = Parameter(0.5, 0.2, 0.7, "1", "how far off coats grow back: 6 to 12 weeks, or clipped anew", "assumed")
REGROWTH_MOST = Parameter(1.5, 1.0, 2.0, "1", "times as fast as computed, at the most", "assumed")
ONE_WORD_LASTS = Parameter(36.0, 12.0, 72.0, "h", "one person's word against clothes, till others agree", "assumed")
UNTIL_SURE = Parameter(1.0, 0.0, 2.0, "1", "of what is unsure of the cold horses bear is not let them", "assumed")
WRONG_AMONG_SIGNS = Parameter(0.12, 0.04, 0.3, "1", "of signs told: few tell of a horse that is well", "assumed")
WRONG_HELD_BY = Parameter(15.0, 5.0, 40.0, "signs", "that hold a person's share near the usual", "assumed")
SILENCE_SAYS = Parameter(0.05, 0.02, 0.3, "1", "of a sign: a round ticked done without a remark", "assumed")
SILENCE_LASTS = Parameter(14.0, 7.0, 90.0, "d", "then such a round says nothing any more", "assumed")
REPEATED_WITHIN = Parameter(12.0, 4.0, 24.0, "h", "one person's reports that share one report's weight", "assumed")
REPORT_HALF_LIFE = Parameter(90.0, 30.0, 180.0, "d", "a report then counts half", "assumed")
KEPT_AFTER_CHANGE = Parameter(0.3, 0.0, 0.7, "1", "of what was said before a clip or an illness", "assumed")
FACTOR_LEAST = Parameter(
    0.5, 0.3, 0.7, "1", "a barn's own drying or wind against the computed, at the least", "assumed"
)
FACTOR_MOST = Parameter(3.0, 2.0, 4.0, "1", "and at the most", "assumed")
FACTOR_PRIOR = Parameter(0.35, 0.2, 0.7, "1", "spread of its logarithm among barns", "assumed")
DRYING_NOISE = Parameter(0.25, 0.1, 0.5, "1", "logistic scale of log time: folds, straps, who felt it", "assumed")
SOAKED = Parameter(0.9, 0.8, 1.0, "of capacity", "a hand cannot tell it from full", "assumed")

ALL: dict[str, Parameter] = {name: value for name, value in list(globals().items()) if isinstance(value, Parameter)}
