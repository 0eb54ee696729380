"""What the bot says in English."""

from bot.words.said import Phrasebook
from bot.words.said.en.closet import CLOSET
from bot.words.said.en.lines import LINES
from bot.words.said.en.reasons import REASONS

BOOK = Phrasebook(
    language="en",
    twelve_hours=True,
    reasons=REASONS,
    lines=LINES | CLOSET,
    signs={
        "sweating": "sweating",
        "hot": "hot",
        "shivering": "shivering",
        "cold": "cold",
        "comfortable": "comfortable",
        "wet": "wet",
        "rubbed": "rubbed",
        "unwell": "unwell",
    },
    states={
        "dry": "dry",
        "damp": "damp",
        "wet": "wet",
        "soaked": "soaked",
        "washing": "in the wash",
        "torn": "torn",
        "strap broken": "strap broken",
        "missing": "missing",
        "in service": "back in service",
    },
    kinds={
        "sheet": "rain sheet",
        "turnout": "[{fill} ]turnout",
        "liner": "[{fill} ]liner",
        "stable": "[{fill} ]stable rug",
        "cooler": "cooler",
        "neck": "[{fill} ]neck cover",
    },
    short_kinds={
        "sheet": "sheet",
        "turnout": "[{fill}]",
        "liner": "[{fill} ]liner",
        "stable": "[{fill} ]stable",
        "cooler": "cooler",
        "neck": "neck",
    },
    styles={
        "none": "not clipped",
        "bib": "bib clip",
        "trace": "trace clip",
        "blanket": "blanket clip",
        "hunter": "hunter clip",
        "full": "full clip",
    },
    places={"field": "out in the field", "stall": "in the stall"},
    rounds={},
    safety={
        "fastening": (
            "On: tied or held, stand at the shoulder. Folded rug high on the neck, slide it back with the hair. "
            "Chest first, then belly straps, then legs or tail, neck cover last.\n"
            "Off: neck cover, legs or tail, belly, chest last. Fold it back and lift it off."
        ),
        "straps": (
            "Belly straps crossed, a hand's width of room. Leg straps looped through each other, a hand between strap "
            "and thigh. Clip loose ends up. Never kneel, never stand behind."
        ),
        "rubs": (
            "Look daily at withers, shoulders, chest, hips and where the neck cover ends. Hair gone or skin warm: "
            "another rug, or bare if the weather allows."
        ),
        "daily check": (
            "Once a day everything off, twice when the weather swings. Hand under the rug, behind the elbow: dry and "
            "neither hot nor cold is right. Feel the ribs, look at the skin and the legs."
        ),
        "layers": "Liner under a waterproof layer, never alone outdoors. Three layers at most; layers slip, so look.",
        "wet horse": "No rug on a wet or sweating horse, but a cooler while somebody watches. Dry it first.",
    },
    days=("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"),
    months=("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"),
)
