"""The barn file: its keys as types, loaded and checked."""

from datetime import date, time
from typing import Literal

from pydantic import BaseModel, ConfigDict

from bot.events import GarmentWord, Style, Where
from rules.garment import Kind, Neck, Rear
from rules.horse import CoatClass, HayFeed, Species

Role = Literal["manager", "groom", "owner"]
Language = Literal["en", "es", "fr"]
Units = Literal["us", "metric"]


class Part(BaseModel):
    """A piece of the file: unknown keys are faults, values never change."""

    model_config = ConfigDict(extra="forbid", frozen=True)


class Place(Part):
    """Where the barn stands."""

    latitude: float
    longitude: float
    elevation_m: float = 0
    exposure: Literal["ridge", "open", "sheltered"] = "open"


class Round(Part):
    """A time of day when somebody goes round."""

    name: str
    at: time


class Posting(Part):
    """How long before a round its post appears, and the quiet hours."""

    lead_min: int = 45
    quiet_from: time = time(21, 30)
    quiet_to: time = time(5, 30)


class Person(Part):
    """Somebody of the barn. units: their own, where not the barn's."""

    name: str
    telegram: int | None = None
    role: Role
    language: Language = "en"
    units: Units | None = None
    also: tuple[str, ...] = ()


class DryingPlace(Part):
    """Where things hang to dry: a room's air, or outdoors."""

    name: str
    temperature_c: float | None = None
    humidity_pct: float | None = None
    follows: Literal["outdoors"] | None = None


class Clip(Part):
    """A clip and its day."""

    style: Style = "none"
    on: date | None = None


class Wishes(Part):
    """The owner's wishes."""

    clothed_below_c: float | None = None
    sheet_in_rain: bool = False
    max_fill_g: float | None = None


class Horse(Part):
    """One horse as the file has it."""

    name: str
    also: tuple[str, ...] = ()
    owner: str | None = None
    coat: CoatClass = "average"
    species: Species = "horse"
    born: date | int | None = None
    weight_kg: float | None = None
    girth_cm: float | None = None
    length_cm: float | None = None
    condition: float = 5
    clip: Clip = Clip()
    where: dict[str, Where] = {}
    shelter: Literal["none", "trees", "shed"] = "none"
    hay: Literal["outside", "in shelter", "none"] = "outside"
    hay_feed: HayFeed = "normal"
    size_in: float | None = None
    size_cm: float | None = None
    keep_bare: bool = False
    wishes: Wishes = Wishes()
    wearing: tuple[str, ...] | None = None
    vet_orders: Literal["none", "clothe", "sick"] = "none"
    skin_infection: bool = False
    colour: Literal["light", "mid", "dark"] | None = None

    @property
    def names(self) -> tuple[str, ...]:
        """The name and every other one people use."""
        return (self.name, *self.also)


class Garment(Part):
    """One piece of clothing as the file has it."""

    id: str
    horse: str | None = None
    kind: Kind
    fill_g: float = 0
    size_in: float | None = None
    size_cm: float | None = None
    waterproof: bool = False
    denier: int | None = None
    neck: Neck = "none"
    rear: Rear = "none"
    also: tuple[str, ...] = ()
    state: GarmentWord = "dry"
    dries: str | None = None  # name of its drying place; the first of the list where left out


class Costs(Part):
    """What a barn finds worth what; left out: the rules' own."""

    cold: float | None = None
    hot: float | None = None
    wet_skin: float | None = None
    change: float | None = None
    borrow: float | None = None


class Barn(Part):
    """The whole file."""

    barn: str
    timezone: str
    units: Units = "metric"
    chat: int | None = None
    place: Place
    forecast: tuple[str, ...] = ("open-meteo",)
    contact: str | None = None
    rounds: tuple[Round, ...]
    posting: Posting = Posting()
    people: tuple[Person, ...] = ()
    drying: tuple[DryingPlace, ...] = ()
    horses: tuple[Horse, ...]
    garments: tuple[Garment, ...] = ()
    costs: Costs = Costs()

    def horse(self, name: str) -> Horse:
        """The horse of exactly this name. KeyError where there is none."""
        return next(h for h in self.horses if h.name == name)
