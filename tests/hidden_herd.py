"""A herd with a physics of its own, for tests: not Haybell's balance, other structure and other numbers.

Where Haybell asks how much heat must leave through tissue, hair, cloth and air from a core at 38 °C, this herd reckons
in clo from skins at fixed temperatures (as a person's required clothing is reckoned), takes the mean of insulations and
not of conductances, lags behind the air by two hours, and has its own sun, sky, stall and rain. It is set so that a
winter coat is at ease from about −11 to +9 °C in still air and a clipped horse from about +7 to +23 °C, near to what is
published (McBride 1985: −15 to +10; Morgan 1998: 5 to 25); nothing of it was fitted to Haybell. Each horse has its own
heat, hair and feeling for the cold, which nobody in the barn knows.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime
from itertools import pairwise
from pathlib import Path

import numpy as np

from bot import brief
from bot.barn import Barn
from bot.forecast import hours as grid
from bot.season import airport as table
from bot.season.living import Course, Wear, hours_of
from bot.state import as_filed
from rules.outfit import Outfit, Setting, allowed
from rules.question import Piece
from rules.weather import Floats, Hours

CLO = 0.155  # m² K/W
BEARS_K = 1.0  # strain below this is no stress
SHORN = {"none": 0.0, "trace": 0.25, "hunter": 0.8}
CLOTHES = (("sheet", 0), ("turnout", 100), ("turnout", 200), ("liner", 100), ("liner", 200))
PEOPLE = {"Ann": 0.5, "Ben": -0.5, "Cat": 0.0}  # K, by how much each takes a horse for warmer than it is
SIGNS = ("sweating", "hot", "comfortable", "cold", "shivering")
CHANGE, HOT, AN_HOUR = 3.5, 1.5, 0.5  # what the oracle pays: a change, a degree-hour too warm, any hour of stress


@dataclass(frozen=True)
class Make:
    """What nobody knows of one horse: heat [W/m²], hair unclipped [clo], clipped share, colder by so much [K]."""

    heat: float
    hair: float
    shorn: float
    colder: float


def makes(seed: int, clips: Sequence[str]) -> list[Make]:
    """A herd drawn at random: heat ± 6 %, hair ± 12 %, feeling ± 2 K."""
    rng = np.random.default_rng(seed)
    return [
        Make(135 * np.exp(rng.normal(0, 0.06)), 1.45 * np.exp(rng.normal(0, 0.12)), SHORN[clip], rng.normal(0, 2))
        for clip in clips
    ]


def yard(clips: Sequence[str], clipped_on: date, latitude: float, longitude: float) -> Barn:
    """A barn of such horses, each with five garments of its own; every other one stands in at night."""
    names = [f"Horse {k}" for k in range(len(clips))]
    horses = [
        {"name": n, "weight_kg": 500, "born": 2008, "size_in": 75,
         "clip": {} if clip == "none" else {"style": clip, "on": clipped_on},
         "where": {"morning": "field", "evening": "stall" if k % 2 else "field"}}
        for k, (n, clip) in enumerate(zip(names, clips))
    ]  # fmt: skip
    garments = [
        {"id": f"{n} {kind} {fill}", "horse": n, "kind": kind, "fill_g": fill, "size_in": 75,
         "waterproof": kind != "liner", "rear": "leg straps"}
        for n in names for kind, fill in CLOTHES
    ]  # fmt: skip
    return Barn.model_validate(
        {"barn": "A yard of nobody's", "timezone": "America/New_York",
         "place": {"latitude": latitude, "longitude": longitude, "exposure": "open"},
         "rounds": [{"name": "morning", "at": "07:00"}, {"name": "evening", "at": "16:30"}],
         "drying": [{"name": "room", "temperature_c": 18, "humidity_pct": 50}],
         "people": [{"name": n, "role": "groom"} for n in PEOPLE], "horses": horses, "garments": garments}
    )  # fmt: skip


def inland(start: datetime, days: int, seed: int) -> Hours:
    """An invented inland winter: a cold mean that swings over days, a daily wave, gusts, rain or snow."""
    rng = np.random.default_rng(seed)
    hour = np.arange(24 * days)

    def swing(over_h: float, size: float) -> Floats:
        kept, value, found = np.exp(-1 / over_h), 0.0, np.empty(len(hour))
        for k in hour:
            value = kept * value + np.sqrt(1 - kept**2) * rng.normal()
            found[k] = size * value
        return found

    air = -1.5 + swing(72, 5.5) + 3.5 * np.sin(2 * np.pi * (hour - 14) / 24)
    wind = 3.5 * np.exp(swing(18, 0.5))
    falls = np.where(swing(10, 1.0) > 1.4, 1.2, 0.0)
    snow = air < 0.5
    return Hours(
        start_s=int(start.timestamp()), temperature_c=air, humidity_pct=np.full(len(hour), 78.0), wind_ms=wind,
        gust_ms=1.7 * wind, rain_mm=np.where(snow, 0.0, falls), snow_mm=np.where(snow, falls, 0.0),
        cloud_pct=np.where(falls > 0, 100.0, 55.0), solar_wm2=np.full(len(hour), np.nan),
        rain_probability_pct=np.full(len(hour), np.nan),
    )  # fmt: skip


def airport(path: Path, start: datetime, days: int) -> Hours:
    """Some days of an airport's table."""
    return grid.window(table.parse(path.read_bytes()).hours, int(start.timestamp()), 24 * days)


@dataclass
class World:
    """A herd in its weather. `felt` is the truth that the barn only sees signs of."""

    course: Course
    herd: Sequence[Make]
    known: dict[tuple[int, float, bool], tuple[Floats, Floats]] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self.start_s = int(self.course.windows[0].start.timestamp()) // 3600 * 3600
        count = -((self.start_s - int(self.course.windows[-1].end.timestamp())) // 3600)
        sky = self.course.cut(self.start_s, count)
        self.air, self.wind = _without_gaps(sky.temperature_c), _without_gaps(sky.wind_ms)
        self.wet = np.nan_to_num(sky.rain_mm + 0.3 * sky.snow_mm)
        self.share = np.zeros((len(self.course.windows), count))
        self.out = np.zeros((len(self.herd), count), dtype=bool)
        for k, window in reversed([*enumerate(self.course.windows)]):  # an hour with a round in it: where it began
            start, _, share = hours_of(self.course, window)
            first = (int(start.timestamp()) - self.start_s) // 3600
            inside = slice(first, first + len(share))
            self.share[k, inside] = share
            for j, horse in enumerate(self.course.barn.horses):
                self.out[j, inside] = horse.where[window.round] == "field"

    def felt(self, j: int, wear: Wear) -> tuple[Floats, Floats]:
        """How far a horse is from being cold and from being too warm [K], by hour, in these clothes all along."""
        fill = sum(float(name.rsplit(" ", 1)[1]) for name in wear)
        key = (j, fill, bool(wear))
        if key not in self.known:
            self.known[key] = self._felt(j, fill, clothed=bool(wear))
        return self.known[key]

    def _felt(self, j: int, fill: float, *, clothed: bool) -> tuple[Floats, Floats]:
        make, out = self.herd[j], self.out[j]
        v, rain = np.where(out, 0.5 * self.wind, 0.1), np.where(out, self.wet, 0.0)
        still = 0.05 + 0.85 * np.exp(-0.16 * v)
        hair = (make.hair * (1 - make.shorn) + 0.15 * make.shorn) * (1 - 0.55 * _soak(rain, 0.05 if clothed else 0.35))
        rug = (0.45 + 3.0 * (1 - np.exp(-fill / 380))) * clothed
        covered = 0.68 * clothed
        warm = covered * (still + 0.65 * hair + rug * np.exp(-0.015 * v)) + (1 - covered) * (
            still + hair * np.exp(-0.05 * v)
        )
        open_ = covered * (still + 0.5 * hair + rug) + (1 - covered) * (still + 0.7 * hair)
        hour = (self.start_s // 3600 - 5 + np.arange(len(self.air))) % 24
        sun = np.sin(np.pi * (hour - 7) / 10) * ((hour > 7) & (hour < 17))
        air = _lag(self.air) - make.colder + np.where(out, np.where(sun > 0, 2.5 * sun, -1.5), 2.5)
        leaves = 0.78 * make.heat
        return air - (27 - CLO * warm * leaves), (36 - CLO * open_ * leaves * 0.82) - air

    def stress(self, worn: Sequence[Mapping[str, Wear]], first: int = 0) -> Floats:
        """Hours too cold and too warm of each horse from the first-th window on, shape (horse, 2)."""
        found = np.zeros((len(self.herd), 2))
        for k, wear in enumerate(worn[first:], first):
            for j, horse in enumerate(self.course.barn.horses):
                for side, room in enumerate(self.felt(j, wear[horse.name])):
                    found[j, side] += (room < -BEARS_K) @ self.share[k]
        return found

    def oracle(self) -> list[dict[str, Wear]]:
        """The best that anybody could do who knows this physics, each horse and all the weather to come.

        By Haybell's rules of what may be worn together, with its price of a change. Nothing gets too wet to wear here,
        for Haybell neither. It pays for degrees as well as for hours: hours alone could be a little fewer.
        """
        worn: list[dict[str, Wear]] = [{} for _ in self.course.windows]
        state, first = as_filed(self.course.barn), self.course.windows[0]
        pieces = [Piece(brief.garment(g)) for g in self.course.barn.garments]
        for j, horse in enumerate(self.course.barn.horses):
            wearer = brief.wearer(horse, state, [first], first.start, None)
            outfits = allowed(wearer, pieces, Setting("field"))[0]
            for k, best in enumerate(self._best(j, outfits)):
                worn[k][horse.name] = outfits[best].ids
        return worn

    def _best(self, j: int, outfits: Sequence[Outfit]) -> list[int]:
        """Dynamic programming over the windows, backwards."""
        strain = []
        for outfit in outfits:
            cold, heat = (np.fmax(-room - BEARS_K, 0.0) for room in self.felt(j, outfit.ids))
            strain.append(self.share @ (cold + HOT * heat + AN_HOUR * ((cold > 0) | (heat > 0))))
        cost, moves = np.array(strain).T, CHANGE * (1 - np.eye(len(outfits)))
        ahead = [cost[-1]]
        for row in cost[-2::-1]:
            ahead.append(row + (moves + ahead[-1]).min(axis=1))
        path: list[int] = []
        for to_go in reversed(ahead):
            path.append(int(np.argmin(to_go + (moves[path[-1]] if path else 0.0))))
        return path

    def sign(self, j: int, wear: Wear, at: datetime, bias: float, rng: np.random.Generator) -> str:
        """What one person sees on a horse at an instant."""
        hour = (int(at.timestamp()) - self.start_s) // 3600
        cold, heat = (float(room[hour]) for room in self.felt(j, wear))
        blur = rng.normal(0, 1.0) + bias
        if cold + blur < -0.5:
            return "shivering" if cold + blur < -4 else "cold"
        if heat - blur < 0:
            return "sweating" if heat - blur < -2.5 else "hot"
        return "comfortable"


def changes(worn: Sequence[Mapping[str, Wear]]) -> int:
    """How often clothes were changed, all horses together."""
    return sum(a[name] != b[name] for a, b in pairwise(worn) for name in a)


def _without_gaps(values: Floats) -> Floats:
    known = np.flatnonzero(~np.isnan(values))
    return np.interp(np.arange(len(values)), known, values[known])


def _lag(air: Floats) -> Floats:
    """The air as a body feels it that follows it by half an hour's step each hour."""
    felt = air.copy()
    for k in range(1, len(air)):
        felt[k] = felt[k - 1] + 0.5 * (air[k] - felt[k - 1])
    return felt


def _soak(rain: Floats, takes: float) -> Floats:
    """How wet the hair is, 0 to 1."""
    soaked, found = 0.0, np.empty(len(rain))
    for k, mm in enumerate(rain):
        soaked = min(1.0, 0.8 * soaked + takes * mm)
        found[k] = soaked
    return found
