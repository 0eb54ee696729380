"""Which forecast is in force, how old it is, and what is said against it."""

from datetime import timedelta
from pathlib import Path

from bot.barn import Barn
from bot.forecast import LastGood, latest, refresh
from tests.weather_service import (
    NOW,
    Server,
    answer,
    met_norway,
    one_line,
    only,
    open_meteo,
)


def test_a_stale_run_is_passed_over_but_better_than_nothing(services: dict[str, Server], barn: Barn) -> None:
    """A model run older than 12 h: the next source; where no other is well, the old one, called stale."""
    services["met-norway"].behave = [answer(met_norway(issued=NOW - timedelta(hours=15)))]
    kept = LastGood()
    fetched = refresh(only(barn, "met-norway", "nws"), kept, NOW)
    assert fetched.source == "nws"
    assert fetched.told == ("met-norway: its model run is 15 h old",)
    found = latest(kept, only(barn, "met-norway", "nws"), NOW)
    assert found is not None
    assert found.source == "nws"
    alone = latest(kept, only(barn, "met-norway"), NOW)
    assert alone is not None
    assert alone.stale


def test_an_old_copy_never_replaces_a_newer_run(services: dict[str, Server], barn: Barn) -> None:
    """A cache on the way may give back what was: the newer answer stays."""
    newer, older = met_norway(1.0), met_norway(9.0, NOW - timedelta(hours=8))
    services["met-norway"].behave = [answer(newer), answer(older)]
    barn, kept = only(barn, "met-norway"), LastGood()
    refresh(barn, kept, NOW)
    refresh(barn, kept, NOW + timedelta(minutes=30))
    found = latest(kept, barn, NOW + timedelta(minutes=30))
    assert found is not None
    assert found.hours.temperature_c[0] == 1.0


def test_a_gappy_answer_is_better_than_none_and_worse_than_a_whole_one(services: dict[str, Server], barn: Barn) -> None:
    """It is used where nothing else is at hand, and never replaces a whole one."""
    gappy, barn = answer(open_meteo(5.0, rain=[0.0] * 15 + [None] * 45)), only(barn, "open-meteo")
    services["open-meteo"].behave = [gappy, answer(open_meteo(2.0)), gappy]
    kept = LastGood()
    for minutes, air in ((0, 5.0), (30, 2.0), (60, 2.0)):
        now = NOW + timedelta(minutes=minutes)
        refresh(barn, kept, now)
        found = latest(kept, barn, now)
        assert found is not None
        assert found.hours.temperature_c[0] == air


def test_a_barn_that_moves_does_not_use_the_old_places_weather(services: dict[str, Server], barn: Barn) -> None:
    """What is kept is kept for a place."""
    kept = LastGood()
    refresh(barn, kept, NOW)
    moved = only(barn, "open-meteo", place=barn.place.model_copy(update={"latitude": 45.0}))
    assert latest(kept, moved, NOW) is None


def test_providers_that_disagree_are_told(services: dict[str, Server], barn: Barn) -> None:
    """Two answers at hand that would dress a horse differently are worth a line."""
    kept = LastGood()
    services["met-norway"].behave = [answer(met_norway(-4.0))]
    refresh(only(barn, "met-norway"), kept, NOW - timedelta(minutes=15))
    refresh(barn, kept, NOW)
    found = latest(kept, barn, NOW)
    assert found is not None
    assert (found.source, found.notes) == ("open-meteo", ("met-norway expects the next day colder",))
    later = latest(kept, barn, NOW + timedelta(hours=4))
    assert later is not None
    assert later.notes == ()


def test_a_plan_made_later_tells_the_age_then(services: dict[str, Server], barn: Barn) -> None:
    """The same forecast is two hours older in a plan two hours later."""
    kept = LastGood()
    refresh(barn, kept, NOW)
    found = latest(kept, barn, NOW)
    assert found is not None
    source = found.source_at(NOW + timedelta(hours=2))
    assert (source.source, source.fetched_at, source.age_min, source.stale) == ("open-meteo", NOW, 120, False)
    assert found.source_at(NOW + timedelta(hours=13)).stale


def test_a_forecast_grows_old(services: dict[str, Server], barn: Barn) -> None:
    """Nothing new for 12 h: stale, with its age; a reply still uses it."""
    kept = LastGood()
    refresh(barn, kept, NOW)
    found = latest(kept, barn, NOW + timedelta(hours=13))
    assert found is not None
    assert (found.age_min, found.stale) == (780, True)
    assert latest(LastGood(), barn, NOW) is None


def test_a_forecast_file_of_the_barn_is_read_anew_at_every_refresh(barn: Barn, tmp_path: Path) -> None:
    """Somebody's own station may write it; a missing file is a line, and the last good one stays."""
    path = tmp_path / "mine.csv"
    barn, kept = only(barn, f"file:{path}"), LastGood()
    assert one_line(refresh(barn, kept, NOW)) == f"file:{path}: the file cannot be read: no such file or directory"
    for air in (1.0, 2.0):
        rows = [f"{(NOW.replace(minute=0) + timedelta(hours=k)).isoformat()},{air},80,5,0,0" for k in range(30)]
        path.write_text("time,temperature_c,humidity_pct,wind_ms,rain_mm,snow_mm\n" + "\n".join(rows))
        assert refresh(barn, kept, NOW).told == ()
        found = latest(kept, barn, NOW)
        assert found is not None
        assert (found.source, found.hours.temperature_c[0]) == ("file", air)
    path.unlink()
    refresh(barn, kept, NOW)
    assert latest(kept, barn, NOW) is not None


def test_what_is_kept_outlives_the_process(services: dict[str, Server], barn: Barn) -> None:
    """Another LastGood on the same shelf gives the same forecast; a damaged one is none."""
    first = LastGood()
    refresh(barn, first, NOW)
    again = latest(LastGood(first.shelf), barn, NOW)
    assert again is not None
    assert again.source == "open-meteo"
    first.shelf.put("forecast open-meteo", b"\x00damaged")
    assert latest(LastGood(first.shelf), barn, NOW) is None
