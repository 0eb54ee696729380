"""From state and forecast to the sheet: the same for everybody who asks, honest about hours nobody knows."""

from collections import Counter
from dataclasses import replace
from datetime import datetime, timedelta

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot import rounds
from bot.barn import Barn, demo_path, load
from bot.forecast import Forecast, from_file
from bot.moves import moved
from bot.planning import Planner
from bot.post import round_post
from bot.sheet import Sheet, Window
from bot.state import GarmentNow, as_filed
from tests.november import WEATHER

DEMO = load(demo_path())
AT = datetime(2026, 11, 26, 6, 15, tzinfo=DEMO.zone)
WEATHERS = {name: from_file(WEATHER / name, AT) for name in ("morning.csv", "worse.csv")}


@pytest.fixture
def windows(barn: Barn) -> list[Window]:
    """Morning and evening."""
    return rounds.windows(barn, AT.replace(hour=7, minute=0))


def plain(sheet: Sheet) -> Sheet:
    """A sheet without the time it took."""
    return replace(sheet, took_ms=0.0)


def gappy(hours: slice) -> Forecast:
    """The morning's forecast with some hours missing altogether."""
    whole = WEATHERS["morning.csv"]
    air = whole.hours.temperature_c.copy()
    air[hours] = np.nan
    return replace(whole, hours=replace(whole.hours, temperature_c=air))


def test_two_planners_give_the_same_sheet(barn: Barn, windows: list[Window]) -> None:
    """Whether the bot, a command or a restart asks."""
    state, weather = as_filed(barn), WEATHERS["morning.csv"]
    first, again = (Planner(barn).sheet(state, weather, windows, AT) for _ in range(2))
    assert plain(first) == plain(again)


def test_without_a_forecast_nothing_is_judged_and_nobody_moves(barn: Barn, windows: list[Window]) -> None:
    """No margins are made up, every hour is named, and who has something on keeps it."""
    sheet = Planner(barn).sheet(as_filed(barn), None, windows, AT)
    assert sheet.forecast.source is None
    for horse in sheet.horses:
        for dress in horse.windows:
            assert (dress.cold_margin_c, dress.heat_margin_c) == (None, None)
            assert dress.unjudged
    assert sheet.horse("Tansy").windows[0].wear == ("tansy-medium",)


def test_without_a_forecast_nobody_is_stripped_for_want_of_a_record(barn: Barn, windows: list[Window]) -> None:
    """Nobody said what Fennel wears: she is left as found, in the post as in the answers."""
    sheet = Planner(barn).sheet(as_filed(barn), None, windows, AT)
    text = round_post(sheet, barn, as_filed(barn), "en", "metric")
    assert as_filed(barn).horses["Fennel"].wear is None
    assert not [h.horse for h in sheet.horses for d in h.windows if d.change]
    assert "Fennel as found" in " ".join(text.split())


def test_what_is_judged_once_the_forecast_comes_is_told(barn: Barn, windows: list[Window]) -> None:
    """Whoever was left as found is moved by the first forecast, even where it is to be bare."""
    state = as_filed(barn)
    blind, seen = (Planner(barn).sheet(state, weather, windows, AT) for weather in (None, WEATHERS["morning.csv"]))
    unsaid = {h.horse for h in blind.horses if h.windows[0].as_found}
    assert unsaid
    assert unsaid <= {move.horse for move in moved(blind, seen)}
    assert not {move.horse for move in moved(seen, blind)} & unsaid


def test_hours_the_forecast_lacks_are_named_and_the_rest_is_judged(barn: Barn, windows: list[Window]) -> None:
    """Three hours of the afternoon are missing."""
    weather = gappy(slice(37, 40))
    dress = Planner(barn).sheet(as_filed(barn), weather, windows, AT).horse("Maple").windows[0]
    assert {f"{at:%H:%M}" for at in dress.unjudged} >= {"13:00", "14:00", "15:00"}
    assert "12:00" not in {f"{at:%H:%M}" for at in dress.unjudged}
    assert dress.cold_margin_c is not None


def test_what_people_were_told_stands_while_the_weather_does(barn: Barn, windows: list[Window]) -> None:
    """The same forecast an hour later moves nobody."""
    state, weather = as_filed(barn), WEATHERS["morning.csv"]
    told = Planner(barn).sheet(state, weather, windows, AT)
    later = Planner(barn).sheet(state, weather, windows, AT + timedelta(hours=1), told)
    worn = [[(h.horse, d.wear) for h in sheet.horses for d in h.windows] for sheet in (told, later)]
    assert worn[0] == worn[1]


words = st.sampled_from(["dry", "wet", "soaked", "torn", "missing", "washing"])


@given(
    st.dictionaries(st.sampled_from([g.id for g in DEMO.garments]), words, max_size=12),
    st.sampled_from(sorted(WEATHERS)),
)
@settings(max_examples=12, deadline=None, suppress_health_check=[HealthCheck.too_slow])
def test_no_plan_dresses_a_horse_in_what_it_may_not_wear(said: dict[str, str], weather: str) -> None:
    """Whatever is wet or lost: no piece on two horses, none that is out of use, no wet liner, no other horse's rug."""
    state = as_filed(DEMO)
    state = replace(state, garments=state.garments | {g: GarmentNow(w) for g, w in said.items()})  # type: ignore[arg-type, operator]
    sheet = Planner(DEMO).sheet(state, WEATHERS[weather], rounds.windows(DEMO, AT.replace(hour=7, minute=0)), AT)
    for index in range(len(sheet.windows)):
        worn = {h.horse: h.windows[index].wear for h in sheet.horses}
        assert not [g for g, n in Counter(g for wear in worn.values() for g in wear).items() if n > 1]
        for horse, wear in worn.items():
            pieces = [DEMO.garment(g) for g in wear]
            assert all(piece.horse in (None, horse) for piece in pieces)
            assert not [g for g in wear if state.garments[g].state in {"torn", "missing", "washing", "strap broken"}]
            assert index or not [
                p.id for p in pieces if p.kind == "liner" and state.garments[p.id].state in {"wet", "soaked"}
            ]
