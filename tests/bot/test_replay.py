"""What a barn may rely on when a recorded season is gone through again."""

import json
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from io import BytesIO
from pathlib import Path

import numpy as np
import pytest
from PIL import Image

from bot.barn import Barn
from bot.brief import age_years
from bot.problems import WrongInput
from bot.replay import replay, run
from bot.season import choosing
from bot.season.living import Moment, course, live
from bot.season.picture import draw
from bot.season.report import Season
from bot.season.tally import tally, together
from bot.season.then import moved
from bot.season.wardrobe import wardrobe
from bot.state import as_filed
from rules.chart import advice
from rules.weather import Hours

START = datetime(2025, 12, 1, 5, tzinfo=UTC)  # midnight in New York
DAYS = 6


def recorded(days: int = DAYS, mean_c: float = -2.0, rain_on: int = 2) -> Hours:
    """An invented record: a daily wave about a mean, a day of rain, a breeze."""
    hour = np.arange(24 * days)
    like = np.zeros(len(hour))
    return Hours(
        start_s=int(START.timestamp()),
        temperature_c=mean_c + 6 * np.sin(2 * np.pi * (hour - 9) / 24) + 3 * np.sin(hour / 40),
        humidity_pct=like + 80,
        wind_ms=like + 4,
        gust_ms=like + 8,
        rain_mm=np.where(hour // 24 == rain_on, 1.0, 0.0),
        snow_mm=like,
        cloud_pct=like + 60,
        solar_wm2=like + np.nan,
        rain_probability_pct=like + np.nan,
    )


def as_csv(hours: Hours, lines: dict[int, str] | None = None) -> str:
    """The record as the file people have; lines: rows replaced by others (faults)."""
    rows = ["time,temperature_c,humidity_pct,wind_ms,gust_ms,rain_mm,snow_mm,cloud_pct"]
    for k in range(len(hours)):
        at = START + timedelta(hours=k)
        values = (hours.temperature_c, hours.humidity_pct, hours.wind_ms, hours.gust_ms, hours.rain_mm, hours.snow_mm)
        row = ",".join([at.isoformat(), *(f"{v[k]:.2f}" for v in values), "60"])
        rows.append((lines or {}).get(k, row))
    return "\n".join(row for row in rows if row) + "\n"


@pytest.fixture(scope="module")
def a_week() -> Season:
    """The demo barn through six invented days."""
    from bot.barn import demo_path, load

    return replay(load(demo_path()), recorded(), START, START + timedelta(days=DAYS))


def way(season: Season, name: str):
    return next(w for w in season.ways if w.name == name)


def test_every_way_of_choosing_is_judged_over_the_same_hours(a_week: Season):
    """The plan, the chart, bare and one rug stand the same hours, so their counts can be compared."""
    assert [w.name for w in a_week.ways] == ["Haybell", "chart on the wall", "always bare", "one heavy rug"]
    assert len({round(w.total.judged_h, 3) for w in a_week.ways}) == 1
    assert a_week.ways[0].total.judged_h > 0


def test_bare_never_changes_and_is_coldest_and_one_heavy_rug_is_warm(a_week: Season):
    """The two plain ways bracket the plan."""
    bare, heavy = way(a_week, "always bare").total, way(a_week, "one heavy rug").total
    assert bare.changes == heavy.changes == 0
    assert not bare.garments
    assert bare.cold_kh >= max(w.total.cold_kh for w in a_week.ways) - 1e-9
    assert heavy.hot_kh > way(a_week, "Haybell").total.hot_kh


def test_the_plan_leaves_fewer_hours_of_strain_than_the_chart(a_week: Season):
    """By the balance it plans with, choosing by the horse beats choosing by the air."""
    assert way(a_week, "Haybell").total.stress_h < way(a_week, "chart on the wall").total.stress_h


def test_hours_by_day_add_up_to_the_totals(a_week: Season):
    """The picture and the table tell the same."""
    for w in a_week.ways:
        assert w.cold_h.sum() == pytest.approx(w.total.cold_h)
        assert w.hot_h.sum() == pytest.approx(w.total.hot_h)


def test_the_json_is_plain_and_whole(a_week: Season):
    """A script gets every way and every horse, and is told what the numbers are not."""
    told = json.loads(json.dumps(a_week.as_json()))
    assert told["from"] == "2025-12-01"
    assert {"cold_hours", "hot_hours", "wet_skin_hours", "changes_per_week", "garments_in_use"} <= set(told["ways"][0])
    assert set(told["ways"][0]["horses"]) == set(a_week.ways[0].by_horse)
    assert set(told["wardrobe"]) == {"advice", "never_needed"}
    assert "not that the balance is right" in told["note"]


def test_the_table_fits_a_terminal(a_week: Season):
    """No line of the numbers is wider than 78 columns."""
    table = a_week.table().split("\n\n")[1]
    assert "Haybell" in table
    assert max(map(len, table.splitlines())) <= 78


def test_the_picture_is_a_picture(a_week: Season):
    """A PNG that opens, with more than paper on it."""
    image = Image.open(BytesIO(draw(a_week)))
    assert image.format == "PNG"
    assert len(image.getcolors(1 << 20)) > 10


def test_faults_of_the_record_are_told_and_their_hours_not_judged(barn: Barn, tmp_path: Path):
    """A missing day, a wind of 1,048 mph: the season goes on without those hours and says so."""
    faults = {30: f"{(START + timedelta(hours=30)).isoformat()},-2,80,468.6,,0,0,60"} | dict.fromkeys(range(60, 72), "")
    path = tmp_path / "winter.csv"
    path.write_text(as_csv(recorded(4), faults))
    season = run(barn, path)
    assert season.unjudged_h == pytest.approx(13, abs=0.01)
    assert any("cannot be" in note for note in season.notes)


def test_an_airports_table_is_read_as_it_comes(barn: Barn, tmp_path: Path):
    """°F, mph, inches, cells that say NA, a wind that cannot be, and a second airport that is left out."""
    rows = ["origin,year,month,day,hour,temp,dewp,humid,wind_dir,wind_speed,wind_gust,precip,pressure,visib,time_hour"]
    for k in range(60):
        wind = "1048.36" if k == 40 else "NA" if k == 41 else "10.0"
        at = START + timedelta(hours=k)
        rest = f"2025,12,1,{k % 24},32.0,20,60,270,{wind},NA,0.01,1012,10,{at:%Y-%m-%dT%H:%M:%SZ}"
        rows += [f"JFK,{rest}", f"LGA,{rest}"]
    path = tmp_path / "flights.csv"
    path.write_text("\n".join(rows) + "\n")
    season = run(barn, path)
    assert season.coldest == pytest.approx(np.zeros(len(season.coldest)))
    assert season.unjudged_h == pytest.approx(2, abs=0.01)
    assert any("only JFK" in note for note in season.notes)
    assert any("cannot be" in note for note in season.notes)


def test_days_in_a_gap_of_the_record_are_wrong_input(barn: Barn, tmp_path: Path):
    """A season of which nothing is known is no season."""
    path = tmp_path / "winter.csv"
    path.write_text(as_csv(recorded(6), dict.fromkeys(range(24, 96), "")))
    with pytest.raises(WrongInput, match="none of the days asked for"):
        run(barn, path, date(2025, 12, 2), date(2025, 12, 3))


def test_days_can_be_asked_for(barn: Barn, tmp_path: Path):
    """From one local day to another, both included."""
    path = tmp_path / "winter.csv"
    path.write_text(as_csv(recorded()))
    season = run(barn, path, date(2025, 12, 2), date(2025, 12, 3))
    assert (season.first, season.last) == (date(2025, 12, 2), date(2025, 12, 3))
    assert len(season.coldest) == 2


def test_days_that_the_file_does_not_have_are_one_clear_line(barn: Barn, tmp_path: Path):
    """It says which days the file has, and which option to change."""
    path = tmp_path / "winter.csv"
    path.write_text(as_csv(recorded()))
    with pytest.raises(WrongInput, match=r"2025-12-01 to 2025-12-0\d, none of the days asked for; change --from"):
        run(barn, path, date(2024, 1, 1), date(2024, 1, 5))


def test_horses_are_as_old_and_as_lately_clipped_as_today(barn: Barn):
    """A record of 2013 does not make the youngster unborn, nor last month's clip one of the future."""
    then = moved(barn, date(2026, 11, 26), date(2013, 11, 1), date(2014, 3, 1))
    now = {h.name: h for h in barn.horses}
    for horse in then.horses:
        assert age_years(horse.born, date(2013, 11, 26)) == pytest.approx(
            age_years(now[horse.name].born, date(2026, 11, 26)), abs=0.01
        )
    assert then.horse("Maple").clip.on == date(2013, 10, 28)
    assert moved(barn, date(2026, 11, 26), date(2013, 1, 2), date(2013, 3, 1)).horse("Maple").clip.on == date(
        2012, 10, 28
    )


@pytest.mark.parametrize("leap", [date(2024, 2, 29)])
def test_a_clip_on_a_leap_day_is_moved_to_the_day_before(barn: Barn, leap: date):
    """There is no such day in most years."""
    maple = barn.horse("Maple")
    clipped = maple.model_copy(update={"clip": maple.clip.model_copy(update={"on": leap})})
    poor = barn.model_copy(update={"horses": (clipped,)})
    assert moved(poor, leap, date(2013, 11, 1), date(2014, 3, 1)).horses[0].clip.on == date(2014, 2, 28)


@pytest.mark.parametrize("content", ["", "hello", "time,humidity_pct\n2025-12-01T00:00:00Z,80\n"])
def test_a_file_that_is_no_record_is_one_clear_line(barn: Barn, tmp_path: Path, content: str):
    """Wrong input names the file and has no second line."""
    path = tmp_path / "winter.csv"
    path.write_text(content)
    with pytest.raises(WrongInput, match=r"winter\.csv") as caught:
        run(barn, path)
    assert "\n" not in str(caught.value)


def test_a_missing_file_is_one_clear_line(barn: Barn, tmp_path: Path):
    """Likewise a path that leads nowhere."""
    with pytest.raises(WrongInput, match=r"nowhere\.csv"):
        run(barn, tmp_path / "nowhere.csv")


def test_progress_is_told_from_nothing_to_all(barn: Barn):
    """A long run moves a bar."""
    told: list[float] = []
    replay(barn, recorded(2), START, START + timedelta(days=2), told=told.append)
    assert told == sorted(told)
    assert told[-1] == pytest.approx(1)


def test_what_rain_wets_is_not_worn_again_until_dry(barn: Barn):
    """A liner left out in the rain hangs on the rail while it is wet, and the chart has to do without it too."""
    through = course(barn, recorded(4, rain_on=1), START, START + timedelta(days=4))
    story = live(through, choosing.chart)
    wet = [clothes for lived in story.lived for own in lived.clothes for clothes in own if clothes != "dry"]
    assert wet
    for k in range(len(story.worn) - 1):
        for name, lived in zip((h.name for h in barn.horses), story.lived[k].clothes):
            soaked = {g for g, water in zip(story.worn[k][name], lived) if water == "soaked"}
            if story.worn[k + 1][name] != story.worn[k][name]:
                assert not soaked & set(story.worn[k + 1][name])


def test_the_chart_wears_again_what_has_dried(barn: Barn):
    """One wet day does not take a rug out of its season: a cotton rug soaks, hangs, and is on again."""
    juniper = next(h for h in barn.horses if h.name == "Juniper")
    cotton = next(g for g in barn.garments if g.id == "juniper-medium").model_copy(update={"waterproof": False})
    poor = barn.model_copy(update={"horses": (juniper,), "garments": (cotton,)})
    through = course(poor, recorded(6, rain_on=1), START, START + timedelta(days=6))
    story = live(through, choosing.chart)
    wet = [k for k, lived in enumerate(story.lived) if lived.clothes[0] in (("wet",), ("soaked",))]
    worn = [k for k, wear in enumerate(story.worn) if wear["Juniper"]]
    bare = [k for k, wear in enumerate(story.worn) if not wear["Juniper"]]
    assert wet
    assert any(k > wet[0] for k in bare)
    assert worn[-1] > bare[-1]


def test_no_spare_is_on_two_horses_at_once(barn: Barn):
    """Neither by the plan nor by the chart."""
    through = course(barn, recorded(3), START, START + timedelta(days=3))
    spares = {g.id for g in barn.garments if g.horse is None}
    for choose in (choosing.haybell, choosing.chart):
        for worn in live(through, choose).worn:
            used = [g for wear in worn.values() for g in wear if g in spares]
            assert len(used) == len(set(used))


def test_the_chart_knows_the_air_and_the_clip_alone():
    """Colder is never less; clipped is never less than unclipped; above 15 °C nothing."""
    air = np.arange(-25, 25, 0.5)
    for clip in ("none", "hunter"):
        fills = [advice(t, clip).fill_g for t in air]
        worn = [-1.0 if f is None else f for f in fills]
        assert worn == sorted(worn, reverse=True)
    assert all((advice(t, "hunter").fill_g or 0) >= (advice(t, "none").fill_g or 0) for t in air)
    assert advice(16, "full").fill_g is None


def test_the_chart_takes_the_same_for_a_gale_as_for_a_calm(barn: Barn):
    """Wind is not on it."""
    calm = recorded(2)
    gale = replace(calm, wind_ms=calm.wind_ms + 10, gust_ms=calm.gust_ms * 0 + 13)
    worn = [
        choosing.chart(Moment(course(barn, hours, START, START + timedelta(days=2)), as_filed(barn), 0))
        for hours in (calm, gale)
    ]
    assert worn[0] == worn[1]


def test_a_tally_counts_hours_by_their_share():
    """An hour in which a round falls counts by its part; what is not known counts nowhere."""
    cold = np.array([-1.0, -2.0, np.nan, 3.0])
    heat = np.array([5.0, 5.0, np.nan, -4.0])
    one = tally(cold, heat, np.array([1.0, 0, 0, 0]), np.array([0.5, 1, 1, 1]), [(), ("rug",), ("rug",)])
    assert (one.judged_h, one.cold_h, one.hot_h, one.wet_h, one.changes) == (2.5, 1.5, 1.0, 0.5, 1)
    assert (one.cold_kh, one.hot_kh) == (2.5, 4.0)
    assert together([one, one]).cold_h == 3.0
    assert together([one, one]).days == one.days


def test_the_wardrobe_names_the_garment_that_a_bare_cold_horse_lacks(barn: Barn):
    """A clipped horse whose clothes are all taken away is advised a warm one, and it takes hours of cold away."""
    juniper = next(h for h in barn.horses if h.name == "Juniper")
    poor = barn.model_copy(update={"horses": (juniper,), "garments": ()})
    through = course(poor, recorded(5, mean_c=-8), START, START + timedelta(days=5))
    found = wardrobe(through, live(through, choosing.haybell))
    assert found.advice[0].horse == "Juniper"
    assert found.advice[0].cold_h > 10
    assert found.never_needed == ()
    assert "Juniper" in found.text()


def test_a_torn_rug_that_is_missed_is_advised_to_be_mended(barn: Barn):
    """The only warm rug of a clipped horse lies torn: mending it is worth what it takes away."""
    juniper = next(h for h in barn.horses if h.name == "Juniper")
    rug = next(g for g in barn.garments if g.id == "juniper-medium").model_copy(update={"state": "torn"})
    poor = barn.model_copy(update={"horses": (juniper,), "garments": (rug,)})
    through = course(poor, recorded(5, mean_c=-8), START, START + timedelta(days=5))
    found = wardrobe(through, live(through, choosing.haybell))
    assert any(a.do == "mend" and a.garment == "juniper-medium" and a.hours > 10 for a in found.advice)


def test_clothes_that_nobody_wore_are_named(barn: Barn):
    """In a mild week the heavy rugs were not needed."""
    through = course(barn, recorded(3, mean_c=12, rain_on=9), START, START + timedelta(days=3))
    found = wardrobe(through, live(through, choosing.haybell))
    heavy = [g.id for g in barn.garments if g.fill_g >= 300]
    assert heavy
    assert set(heavy) <= set(found.never_needed)


def test_nobody_is_advised_to_buy_what_the_horse_has(barn: Barn):
    """Fennel owns a sheet that fits: another one like it takes nothing away, whatever it is called."""
    fennel = barn.horse("Fennel")
    own = tuple(g for g in barn.garments if g.horse == "Fennel")
    poor = barn.model_copy(update={"horses": (fennel,), "garments": own})
    through = course(poor, recorded(14), START, START + timedelta(days=14))
    found = wardrobe(through, live(through, choosing.haybell))
    assert [g.kind for g in own] == ["sheet"]
    assert "sheet" not in {a.kind for a in found.advice}
