"""Question: everything a plan depends on, as values."""

from dataclasses import dataclass, field
from datetime import UTC, datetime
from typing import Literal

from rules.garment import Garment
from rules.horse import Horse
from rules.weather import Floats, Hours, Site

PlaceName = Literal["field", "stall"]
Shelter = Literal["none", "trees", "shed"]
Hay = Literal["outside", "in shelter", "none"]
WaterState = Literal["dry", "damp", "wet", "soaked"]


@dataclass(frozen=True)
class Stay:
    """Where a horse spends one window. feeding_h: hours of the day for which its hay lasts."""

    place: PlaceName
    shelter: Shelter = "none"
    hay: Hay = "outside"
    feeding_h: float = 24.0


@dataclass(frozen=True)
class Wishes:
    """The owner's wishes; each kept where it does no harm."""

    keep_bare: bool = False
    clothed_below_c: float | None = None
    sheet_in_rain: bool = False
    max_fill_g: float | None = None


@dataclass(frozen=True)
class Rail:
    """A place to dry things. None for temperature or humidity: follows outdoors."""

    name: str
    temperature_c: float | None = None
    humidity_pct: float | None = None
    air_ms: float | None = None
    learned_factor: float = 1.0  # how much longer than computed things really take here


@dataclass(frozen=True)
class Piece:
    """A garment with its condition at hour 0.

    water: as reported or computed `since_h` hours before hour 0. rail: index into Question.rails, None where
    unknown (the slowest is assumed). in_service: False while washing, torn, missing, a strap broken.
    leaks: lost its waterproof standing. rubs: names of horses that it rubs.
    """

    garment: Garment
    water: WaterState = "dry"
    since_h: float = 0.0
    rail: int | None = None
    in_service: bool = True
    leaks: bool = False
    rubs: frozenset[str] = frozenset()


@dataclass(frozen=True)
class Wearer:
    """One horse as asked about.

    stays: one a window. wears: garment ids from the skin outward at hour 0; None: nobody said (a change
    then costs nothing). offset_c, offset_sd_c: what the barn has learned. wet_hair: seen wet at hour 0.
    must_clothe: seen shivering or cold lately: safety outranks the wish for bare.
    vet_clothes: by vet's orders never bare, whatever the margins say.
    bears_less_c: what it is let lack less than computed [K]; fill_gives_c: what each 100 g/m² of fill gives more than
    computed [K]; both learned.
    told: what people were told for each window, where they were; the plan departs from it only for a real gain.
    """

    horse: Horse
    stays: tuple[Stay, ...]
    wears: tuple[str, ...] | None = None
    offset_c: float = 0.0
    offset_sd_c: float = 2.0
    bears_less_c: float = 0.0
    fill_gives_c: float = 0.0
    wishes: Wishes = field(default_factory=Wishes)
    wet_hair: bool = False
    must_clothe: bool = False
    vet_clothes: bool = False
    told: tuple[tuple[str, ...] | None, ...] = ()


@dataclass(frozen=True)
class Costs:
    """What is worth what, in cold degree-hours (adjustable in the barn file).

    cold, hot: of one degree-hour; wet_skin: of one hour with wet hair in the cold; change: of one change of
    clothes (about minutes of work); borrow: of taking a spare; retell: of departing from what people were told.
    rug: of an hour in clothes, for they rub, hide the horse and lay its hair.
    wish, wish_bare: what an owner's wish, and the wish for bare, may cost the horse: degree-hours each hour.
    """

    cold: float = 1.0
    hot: float = 1.5
    wet_skin: float = 2.0
    change: float = 3.5
    borrow: float = 4.0
    retell: float = 3.0
    rug: float = 0.15
    wish: float = 3.0
    wish_bare: float = 8.0


@dataclass(frozen=True)
class Question:
    """All that a plan depends on.

    share: (window, hour) fraction of each hour that lies in each window.
    windows follow each other; a window's outfit is put on at its beginning.
    """

    hours: Hours
    site: Site
    share: Floats
    wearers: tuple[Wearer, ...]
    pieces: tuple[Piece, ...]
    rails: tuple[Rail, ...] = ()
    costs: Costs = field(default_factory=Costs)

    @property
    def day_of_year(self) -> float:
        """Day of the year of hour 0, UTC, from 1: where the coats stand in their season."""
        return float(datetime.fromtimestamp(self.hours.start_s, UTC).timetuple().tm_yday)
