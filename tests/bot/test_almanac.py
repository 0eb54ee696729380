"""The weeks behind: read from the posts' own hours, the same for plan, learning and replay, and said in a line."""

from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import numpy as np
import pytest

from bot.almanac import Almanac, almanac, sky_of
from bot.barn import Barn, demo_path
from bot.brief import used_to_c
from bot.cli import main
from bot.events import Posted
from bot.evidence import evidence
from bot.ledger import Ledger
from bot.planning import Planner
from bot.rounds import windows
from bot.season.choosing import bare
from bot.season.living import course, live
from bot.sheet import Sheet, SkyHour, Source, dump
from bot.state import State, as_filed, fold
from bot.store import Store, data_path
from rules.acclimatised import Weeks
from rules.weather import Hours
from tests.barn_group import Group
from tests.november import November
from tests.stable import joined, weather

HOUR, DAY = timedelta(hours=1), timedelta(days=1)
MILD, COLD = 13.0, -9.0  # °C; a Vermont November is used to about 5


class Weather(November):
    """Posts of the weeks before Thursday 26 November, as a store keeps them."""

    def __init__(self, barn: Barn) -> None:
        self.barn = barn

    def sheet(self, made: str, *air_c: float | None) -> Sheet:
        """A sheet that tells of so many hours from its making on."""
        start = self.at(made)
        sky = tuple(SkyHour(start + k * HOUR, air, 2.0, 4.0, 0.0, 0.0, None) for k, air in enumerate(air_c))
        return Sheet(self.barn.barn, start, Source("open-meteo", start), (), sky, ())

    def weeks(self, store: Store, air_c: float, days: int = 21) -> Store:
        """So many days of one post each, all of the same air."""
        ledger = Ledger(store)
        for ago in range(days, 0, -1):
            start = self.at("6:00") - ago * DAY
            (entry,) = ledger.append(start, "haybell", "", [Posted("morning", start.date(), start, start + DAY, {})])
            made = replace(self.sheet("6:00", *[air_c] * 24), made_at=start)
            sky = tuple(replace(hour, at=hour.at - ago * DAY) for hour in made.sky)
            ledger.keep_sheet(entry.number, dump(replace(made, sky=sky)))
        return store


@pytest.fixture
def before(barn: Barn) -> Weather:
    return Weather(barn)


@pytest.fixture
def mild(before: Weather) -> Store:
    """A store after three mild weeks."""
    return before.weeks(Store.memory(), MILD)


def weeks(barn: Barn, store: Store) -> Weeks:
    return almanac(barn.place.latitude, Ledger(store)).weeks


# --- what is kept


def test_nothing_is_kept_twice_the_posts_are_the_record(barn: Barn, mild: Store) -> None:
    """Each whole day that posts told of has its mean, without a table of its own."""
    found = weeks(barn, mild)
    assert set(found.air_c.values()) == {MILD}
    assert len(found.air_c) == 20  # the first and the last are known in part
    tables = {name for (name,) in mild.conn.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
    assert not any("hour" in name or "weather" in name for name in tables)


def test_an_hour_counts_as_the_last_post_before_it_told_it(barn: Barn, before: Weather) -> None:
    """The evening's forecast takes over from the morning's where it begins; what it leaves open stands."""
    book = Almanac(barn.place.latitude)
    book.add(before.sheet("24 19:00", *[4.0] * 29).sky)  # the 25th of UTC begins here at seven in the evening
    book.add(before.sheet("25 07:00", *[10.0] * 11, None, *[10.0] * 12).sky)
    (day,) = [day for day in book.weeks.air_c if day == int(before.at("25 12:00").timestamp()) // 86400]
    assert book.weeks.air_c[day] == pytest.approx((12 * 4 + 11 * 10 + 4) / 24)


def test_a_post_without_a_forecast_tells_nothing(barn: Barn, before: Weather) -> None:
    """A day of unknown hours is an unknown day, and an empty sky no fault."""
    book = Almanac(barn.place.latitude)
    book.add(before.sheet("25 07:00").sky)
    book.add(before.sheet("25 07:00", *[None] * 24).sky)
    assert book.weeks.air_c == {}


def test_only_the_hours_of_a_sheet_are_read(before: Weather) -> None:
    """Whatever the barn and its horses are called."""
    odd = replace(before.sheet("25 07:00", 3.0, None, -1.5), barn='"sky":[{"at": ]} "sky\\":[')
    told = [(hour.at, hour.temperature_c) for hour in sky_of(dump(odd).encode())]
    assert told == [(hour.at, hour.temperature_c) for hour in odd.sky]


def test_a_barn_that_starts_anew_remembers_what_it_knew(barn: Barn) -> None:
    """What a running barn gathers post by post is what its store says after a restart."""
    group = Group(barn)
    group.until("27 8:00", minutes=30)
    assert group.day.book.almanac.weeks.air_c
    assert weeks(barn, group.store) == group.day.book.almanac.weeks


def test_what_horses_lived_through_makes_no_two_states_differ(barn: Barn, mild: Store) -> None:
    """The state is what file and people said: the weather is beside it."""
    assert as_filed(barn).after(weeks(barn, mild)) == as_filed(barn)


# --- one horse for plan, learning and replay


def lived(barn: Barn, store: Store) -> State:
    return fold(barn, Ledger(store).entries()).after(weeks(barn, store))


def test_the_plan_sees_a_horse_used_to_mild_air(barn: Barn, before: Weather, mild: Store) -> None:
    """In the same clothes it has so much less room to the cold and more to the warm; some get others."""
    at, state = before.at("6:15"), as_filed(barn)
    before.weather("morning.csv", "5:50")
    shift = used_to_c(lived(barn, mild).horses["Maple"], at)
    ahead, planner = windows(barn, at), Planner(barn)
    usual, used = (planner.sheet(s, before.forecast, ahead, at) for s in (state, state.after(weeks(barn, mild))))
    assert shift > 0.5
    pairs = [(u, v, a, b) for u, v in zip(usual.horses, used.horses) for a, b in zip(u.windows, v.windows)]
    same = [pair for pair in pairs if pair[2].wear == pair[3].wear]
    for u, v, a, b in same:
        assert (u.used_to_c, v.used_to_c, v.offset_c) == (0.0, shift, u.offset_c)
        assert a.cold_margin_c is not None and b.cold_margin_c is not None
        assert a.heat_margin_c is not None and b.heat_margin_c is not None
        assert a.cold_margin_c - b.cold_margin_c == pytest.approx(shift, abs=0.02)
        assert 0 < b.heat_margin_c - a.heat_margin_c <= shift + 0.02  # less where wet clothes dry on the horse
    assert 0 < len(same) < len(pairs)  # and some are dressed otherwise for it


def test_a_sign_is_weighed_with_the_weeks_that_were_behind_it(barn: Barn, mild: Store) -> None:
    """The learning weighs it against the very horse that the plan dressed."""
    group = Group(barn)
    group.until("6:20")
    group.says("7:20", "Theo", "all done")
    group.says("8:40", "Inés", "Maple cold")
    state, filed = group.day.state, barn.horse("Maple")
    used = state.after(weeks(barn, mild))
    (usual_one,) = (one for _, one in evidence(barn, filed, state.horses["Maple"], {}))
    (used_one,) = (one for _, one in evidence(barn, filed, used.horses["Maple"], {}))
    shift = used_to_c(used.horses["Maple"], group.at("8:40"))
    assert usual_one.cold_margin_c - used_one.cold_margin_c == pytest.approx(shift, abs=0.02)
    assert used_one.heat_margin_c - usual_one.heat_margin_c == pytest.approx(shift, abs=0.02)


def test_a_replay_goes_by_the_weeks_of_its_own_record(barn: Barn, before: Weather) -> None:
    """Three mild weeks before the first window: the plan and the measure see the same horse."""
    start, count = before.at("6:00"), 21 * 24
    day = weather(0.0, hours=48, start_s=int(start.timestamp()))
    mild: Hours = joined(weather(MILD, hours=count, start_s=day.start_s - 3600 * count), day)
    cold, used = (
        np.concatenate([one.cold for one in live(course(barn, hours, start, start + DAY), bare).lived], axis=1)
        for hours in (day, mild)
    )
    shift = course(barn, mild, start, start + DAY).weeks.shift_c(start.timestamp())
    assert shift > 0.5
    assert cold[:, :6] - used[:, :6] == pytest.approx(np.full_like(cold[:, :6], shift), abs=0.01)


def test_without_weeks_nothing_differs(barn: Barn, before: Weather) -> None:
    """A new barn, and six days are no weeks: the very same sheet."""
    before.weather("morning.csv", "5:50")
    at, planner = before.at("6:15"), Planner(barn)
    few = weeks(barn, before.weeks(Store.memory(), MILD, days=6))
    new, young = (
        planner.sheet(s, before.forecast, windows(barn, at), at) for s in (as_filed(barn), as_filed(barn).after(few))
    )
    assert replace(new, took_ms=0) == replace(young, took_ms=0)


# --- and it is said


@pytest.mark.parametrize(
    ("who", "air_c", "text", "said"),
    [
        ("Theo", MILD, "why Maple?", "Weeks milder than the season: horses feel the cold"),
        ("Theo", COLD, "why Maple?", "Weeks colder than the season: horses bear"),
        ("Inés", MILD, "¿por qué Maple?", "Semanas más suaves que la estación"),
        ("Inés", COLD, "¿por qué Maple?", "Semanas más frías que la estación"),
        ("Maëlle", MILD, "pourquoi Maple ?", "Semaines plus douces que la saison"),
        ("Maëlle", COLD, "pourquoi Maple ?", "Semaines plus froides que la saison"),
    ],
)
def test_why_says_what_the_weeks_did(barn: Barn, before: Weather, who: str, air_c: float, text: str, said: str) -> None:
    """One line, in the tongue of whoever asks."""
    group = Group(barn, before.weeks(Store.memory(), air_c))
    group.until("6:20")
    (answer,) = group.says("7:20", who, text)
    assert answer.text.count(said) == 1


def test_a_week_as_usual_is_not_worth_a_line(barn: Barn, before: Weather) -> None:
    """November as it should be."""
    group = Group(barn, before.weeks(Store.memory(), 5.0))
    group.until("6:20")
    (answer,) = group.says("7:20", "Theo", "why Maple?")
    assert "season" not in answer.text


def test_the_command_line_goes_by_the_same_weeks(
    barn: Barn, before: Weather, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """`show` says it beneath the horses; `plan` reckons with it, and its contract stays as it is."""
    store = before.weeks(Store.open(data_path(barn.barn, tmp_path)), MILD)
    store.close()
    demo = str(demo_path())
    for command in (["show", demo, "Maple"], ["plan", demo, "--json", "--forecast", str(demo_weather())]):
        with pytest.raises(SystemExit) as ended:
            main([*command, "--data", str(tmp_path), "--at", "2026-11-26T06:15"])
        assert ended.value.code == 0
    told = capsys.readouterr().out
    assert "Weeks milder than the season" in " ".join(told.split())
    assert "used_to" not in told


def demo_weather() -> Path:
    return demo_path().parent / "bot" / "demo" / "morning.csv"
