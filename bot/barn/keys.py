"""Every key of the barn file as a type: its unit in its name, its range beside it, its default."""

from datetime import date, time
from functools import cached_property
from typing import Annotated, Literal
from zoneinfo import ZoneInfo

from pydantic import AfterValidator, BaseModel, BeforeValidator, ConfigDict, Field, FiniteFloat

from bot.barn.names import plain
from bot.barn.values import as_birth, as_clock, as_day, as_name, as_rows, as_switch, as_zone, ascii_line, no_number
from bot.events import GarmentWord, Style, Where
from rules.garment import Kind, Neck, Rear
from rules.horse import CoatClass, HayFeed, Species

Role = Literal["manager", "groom", "owner"]
Language = Literal["en", "es", "fr"]
Units = Literal["us", "metric"]

Name = Annotated[str, AfterValidator(as_name)]
Names = tuple[Name, ...]
Number = Annotated[FiniteFloat, BeforeValidator(no_number)]
Whole = Annotated[int, BeforeValidator(no_number)]
Switch = Annotated[bool, BeforeValidator(as_switch)]
Clock = Annotated[time, BeforeValidator(as_clock)]
Day = Annotated[date, BeforeValidator(as_day)]
Birth = Annotated[date | int, BeforeValidator(as_birth)]
Zone = Annotated[str, AfterValidator(as_zone)]

Celsius = Annotated[Number, Field(ge=-60, le=60)]
Fill = Annotated[Number, Field(ge=0, le=600)]
RugInches = Annotated[Number, Field(ge=24, le=120)]
RugCm = Annotated[Number, Field(ge=60, le=305)]
Price = Annotated[Number, Field(ge=0, le=1000)]

CM_PER_INCH = 2.54
PROVIDERS = ("open-meteo", "met-norway", "nws")
FILE = "file:"


def forecast_file(source: str) -> str | None:
    """The path of a `file:PATH` source; None for a provider."""
    return source.removeprefix(FILE).strip() or None if source.startswith(FILE) else None


class Part(BaseModel):
    """A piece of the file: unknown keys are faults, values never change."""

    model_config = ConfigDict(extra="forbid", frozen=True)


class Place(Part):
    """Where the barn stands; degrees, north and east positive."""

    latitude: Annotated[Number, Field(ge=-90, le=90)]
    longitude: Annotated[Number, Field(ge=-180, le=180)]
    elevation_m: Annotated[Number, Field(ge=-450, le=6000)] = 0
    exposure: Literal["ridge", "open", "sheltered"] = "open"


class Round(Part):
    """A time of day when somebody goes round."""

    name: Name
    at: Clock


class Posting(Part):
    """How long before a round its post appears, and the quiet hours."""

    lead_min: Annotated[Whole, Field(ge=0, le=720)] = 45
    quiet_from: Clock = time(21, 30)
    quiet_to: Clock = time(5, 30)


class Person(Part):
    """Somebody of the barn. units: their own, where not the barn's."""

    name: Name
    telegram: Annotated[Whole, Field(gt=0, lt=2**52)] | None = None
    role: Role
    language: Language = "en"
    units: Units | None = None
    also: Names = ()

    @property
    def names(self) -> tuple[str, ...]:
        """The name and every other one people use."""
        return (self.name, *self.also)


class DryingPlace(Part):
    """Where things hang to dry: a room's air, or outdoors."""

    name: Name
    temperature_c: Celsius | None = None
    humidity_pct: Annotated[Number, Field(ge=0, le=100)] | None = None
    follows: Literal["outdoors"] | None = None


class Clip(Part):
    """A clip and its day."""

    style: Style = "none"
    on: Day | None = None


class Wishes(Part):
    """The owner's wishes, each kept where it does no harm."""

    clothed_below_c: Celsius | None = None
    sheet_in_rain: Switch = False
    max_fill_g: Fill | None = None


class Sized(Part):
    """Anything with a rug size, in inches as labels say or in centimetres (chest to tail, 75 in = 190 cm)."""

    size_in: RugInches | None = None
    size_cm: RugCm | None = None

    @property
    def size(self) -> float | None:
        """The size in inches; None where the file has none."""
        if self.size_in is None and self.size_cm is not None:
            return self.size_cm / CM_PER_INCH
        return self.size_in


class Horse(Sized):
    """One horse as the file has it. where: from each round on; a round left out changes nothing."""

    name: Name
    also: Names = ()
    owner: Name | None = None
    coat: CoatClass = "average"
    species: Species = "horse"
    born: Birth | None = None
    weight_kg: Annotated[Number, Field(ge=30, le=1500)] | None = None
    girth_cm: Annotated[Number, Field(ge=60, le=280)] | None = None
    length_cm: Annotated[Number, Field(ge=45, le=260)] | None = None
    condition: Annotated[Number, Field(ge=1, le=9)] = 5
    clip: Clip = Clip()
    where: dict[str, Where] = {}
    shelter: Literal["none", "trees", "shed"] = "none"
    hay: Literal["outside", "in shelter", "none"] = "outside"
    hay_feed: HayFeed = "normal"
    feeding_h: Annotated[Number, Field(ge=0, le=24)] = 24
    keep_bare: Switch = False
    wishes: Wishes = Wishes()
    wearing: Names | None = None
    vet_orders: Literal["none", "clothe", "sick"] = "none"
    skin_infection: Switch = False
    colour: Literal["light", "mid", "dark"] | None = None

    @property
    def names(self) -> tuple[str, ...]:
        """The name and every other one people use."""
        return (self.name, *self.also)


class Garment(Sized):
    """One piece of clothing as the file has it. horse None: a spare."""

    id: Name
    horse: Name | None = None
    kind: Kind
    fill_g: Fill = 0
    waterproof: Switch = False
    proofed: Day | None = None  # new, or proofed again, on this day; left out: within the year
    denier: Annotated[Whole, Field(ge=1, le=5000)] | None = None
    neck: Neck = "none"
    rear: Rear = "none"
    also: Names = ()
    state: GarmentWord = "dry"
    dries: Name | None = None  # name of its drying place; the first of the list where left out

    @property
    def names(self) -> tuple[str, ...]:
        """The id and every other name people use."""
        return (self.id, *self.also)


class Costs(Part):
    """What a barn finds worth what; left out: the rules' own."""

    cold: Price | None = None
    hot: Price | None = None
    wet_skin: Price | None = None
    change: Price | None = None
    borrow: Price | None = None
    retell: Price | None = None
    rug: Price | None = None
    wish: Price | None = None
    wish_bare: Price | None = None


class Barn(Part):
    """The whole file."""

    barn: Name
    timezone: Zone
    units: Units = "metric"
    chat: Annotated[Whole, Field(gt=-(2**52), lt=2**52)] | None = None
    place: Place
    forecast: Names = ("open-meteo",)
    contact: Annotated[Name, AfterValidator(ascii_line)] | None = None
    rounds: Annotated[tuple[Round, ...], Field(min_length=1, max_length=24)]
    posting: Posting = Posting()
    people: Annotated[tuple[Person, ...], BeforeValidator(as_rows)] = ()
    drying: Annotated[tuple[DryingPlace, ...], BeforeValidator(as_rows)] = ()
    horses: Annotated[tuple[Horse, ...], Field(min_length=1)]
    garments: Annotated[tuple[Garment, ...], BeforeValidator(as_rows)] = ()
    costs: Costs = Costs()

    @property
    def zone(self) -> ZoneInfo:
        """The barn's time zone."""
        return ZoneInfo(self.timezone)

    def horse(self, name: str) -> Horse:
        """The horse of exactly this name. KeyError where there is none."""
        return self._horses[name]

    def garment(self, id: str) -> Garment:  # noqa: A002 - the file's own word
        """The garment with exactly this id. KeyError where there is none."""
        return self._garments[id]

    def person(self, name: str) -> Person | None:
        """Who goes by this name, whatever its capitals and accents; None: somebody not listed."""
        return self._people.get(plain(name))

    def person_by_telegram(self, telegram: int | None) -> Person | None:
        """Who has this Telegram id; None: somebody not listed."""
        return None if telegram is None else self._telegrams.get(telegram)

    @property
    def language(self) -> Language:
        """What the group is addressed in: the manager's language."""
        return next((person.language for person in self.people if person.role == "manager"), "en")

    @cached_property
    def _horses(self) -> dict[str, Horse]:
        return {horse.name: horse for horse in self.horses}

    @cached_property
    def _garments(self) -> dict[str, Garment]:
        return {garment.id: garment for garment in self.garments}

    @cached_property
    def _people(self) -> dict[str, Person]:
        return {plain(name): person for person in self.people for name in person.names}

    @cached_property
    def _telegrams(self) -> dict[int, Person]:
        return {person.telegram: person for person in self.people if person.telegram is not None}
