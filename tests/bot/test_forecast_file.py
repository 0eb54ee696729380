"""Forecasts from files: the table of the design, a provider's answer as saved, a year for building simulation."""

import json
from datetime import UTC, datetime, timedelta
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import bot
from bot.forecast import Unreadable, from_file
from bot.forecast.file import parse
from bot.problems import WrongInput

HEAD = "time,temperature_c,humidity_pct,wind_ms,gust_ms,rain_mm,snow_mm,cloud_pct,solar_wm2,rain_probability_pct"
SIX = datetime.fromisoformat("2026-11-26T06:00-05:00")
SIX_S = int(SIX.timestamp())


def rows(n: int, cells: str = "2.5,90,6.0,11.0,0.4,0.0,100,0,80") -> list[str]:
    """So many hours from six in the morning, all alike."""
    return [f"{(SIX + timedelta(hours=k)).isoformat()},{cells}" for k in range(n)]


def table(lines: list[str], head: str = HEAD) -> bytes:
    """A CSV file of these lines."""
    return "\n".join([head, *lines]).encode()


def test_a_table_is_hours_on_a_utc_grid() -> None:
    """Local times with their offset, instants and sums as they stand."""
    source, found = parse(table(rows(3)))
    hours = found.hours
    assert (source, hours.start_s, len(hours), found.notes) == ("file", SIX_S, 3, ())
    first = [getattr(hours, name)[0] for name in HEAD.split(",")[1:]]
    assert first == [2.5, 90, 6.0, 11.0, 0.4, 0.0, 100, 0, 80]


def test_columns_that_may_be_absent_are_not_known() -> None:
    """Gusts, clouds, sun and chance may be left out or empty; that is no fault."""
    head = "time,temperature_c,humidity_pct,wind_ms,rain_mm,snow_mm"
    _, found = parse(table(rows(2, "2.5,90,6.0,0.4,0.0"), head))
    assert np.isnan([found.hours.gust_ms, found.hours.cloud_pct, found.hours.solar_wm2]).all()
    assert found.notes == ()
    _, empty = parse(table(rows(2, "2.5,90,6.0,,0.4,0.0,,,")))
    assert np.isnan(empty.hours.gust_ms).all()
    assert empty.notes == ()


def test_a_missing_hour_is_a_hole_and_is_said() -> None:
    """The hours around a hole keep their places."""
    lines = rows(6)
    del lines[2]
    _, found = parse(table(lines))
    assert np.isnan(found.hours.temperature_c).tolist() == [False, False, True, False, False, False]
    assert [(note.text, note.hours) for note in found.notes] == [("no values", (SIX_S + 2 * 3600,))]


@pytest.mark.parametrize(
    ("cells", "column", "said"),
    [
        ("2.5,90,468.5,11.0,0.4,0.0,100,0,80", "wind_ms", "wind of 468 m/s cannot be, left out"),  # 1,048 mph
        ("2.5,300,6.0,11.0,0.4,0.0,100,0,80", "humidity_pct", "humidity of 300 % cannot be, left out"),
        ("-273.2,90,6.0,11.0,0.4,0.0,100,0,80", "temperature_c", "temperature of -273 °C cannot be, left out"),
        ("2.5,90,6.0,11.0,-5,0.0,100,0,80", "rain_mm", "rain of -5 mm in an hour cannot be, left out"),
        ("2.5,90,6.0,11.0,0.4,0.0,100,9999,80", "solar_wm2", "sun of 9,999 W/m² cannot be, left out"),
    ],
)
def test_what_cannot_be_is_no_weather(cells: str, column: str, said: str) -> None:
    """One absurd cell costs that cell, and is said with its hour."""
    lines = rows(4)
    lines[1] = rows(2, cells)[1]
    _, found = parse(table(lines))
    assert np.isnan(getattr(found.hours, column)).tolist() == [False, True, False, False]
    assert [(note.text, note.hours) for note in found.notes] == [(said, (SIX_S + 3600,))]


def test_rounding_over_the_edge_of_a_scale_is_brought_back() -> None:
    """101 % humidity and -0.0 mm are how instruments write 100 and 0."""
    _, found = parse(table(rows(1, "2.5,101,6.0,11.0,-0.0,0.0,100,-0.2,80")))
    assert (found.hours.humidity_pct[0], found.hours.solar_wm2[0]) == (100, 0)
    assert not np.signbit(found.hours.rain_mm[0])
    assert found.notes == ()


def test_rows_may_stand_in_any_order_and_a_later_one_counts() -> None:
    """Two rows for an hour: the later one, and it is said."""
    lines = [rows(2)[1], rows(1)[0], rows(2, "9.9,90,6.0,11.0,0.4,0.0,100,0,80")[1]]
    _, found = parse(table(lines))
    assert found.hours.temperature_c.tolist() == [2.5, 9.9]
    assert [note.text for note in found.notes] == ["line 4: the same hour again; the later row counts"]


def test_wrong_cells_and_times_are_said_with_their_line() -> None:
    """Every row that counts nothing is named."""
    lines = rows(3)
    lines[0] = lines[0].replace("2.5", "cold")
    lines += ["2026-11-26T09:00:00,1,90,6,,0,0,,,", "soon,1,90,6,,0,0,,,"]
    _, found = parse(table(lines, HEAD.replace("cloud_pct", "clouds_pct")))
    assert [note.text for note in found.notes] == [
        "unknown column 'clouds_pct'; did you mean 'cloud_pct'?",
        "line 2: temperature_c is 'cold', no number",
        "line 5: time '2026-11-26T09:00:00' has no offset such as -05:00",
        "line 6: 'soon' is no time such as 2026-11-26T07:00:00-05:00",
    ]


def test_many_faults_are_told_as_a_number() -> None:
    """A file of rubbish rows gets a few lines, not thousands."""
    _, found = parse(table([*rows(2), *["x,1,2,3,,4,5,,,"] * 50]))
    assert len(found.notes) == 6
    assert found.notes[-1].text == "and 45 more faults of its rows"


def test_zones_at_half_past_share_each_row_between_two_hours() -> None:
    """In India a local hour is half of each of two hours of UTC: instants in between, sums shared, the greater gust."""
    start = datetime.fromisoformat("2026-11-26T06:00+05:30")
    cells = ["10.0,50,2.0,4.0,1.0,0.0,0,0,0", "12.0,60,4.0,9.0,3.0,0.0,0,0,0", "12.0,60,4.0,5.0,3.0,0.0,0,0,0"]
    _, found = parse(table([f"{(start + timedelta(hours=k)).isoformat()},{cells[k]}" for k in range(3)]))
    hours = found.hours
    assert hours.start_s == datetime(2026, 11, 26, 1, tzinfo=UTC).timestamp()
    assert hours.temperature_c.tolist() == [11.0, 12.0]
    assert hours.rain_mm.tolist() == [2.0, 3.0]
    assert hours.gust_ms.tolist() == [9.0, 9.0]


def test_rows_between_the_hours_are_left_out_and_said() -> None:
    """A table of quarters of an hour is no table of hours: its sums are not an hour's."""
    start = datetime.fromisoformat("2026-11-26T06:00+00:00")
    lines = [f"{(start + timedelta(minutes=15 * k)).isoformat()},{k},80,5.0,,0,0,,," for k in range(9)]
    _, found = parse(table(lines))
    assert found.hours.temperature_c.tolist() == [0, 4, 8]
    assert [note.text for note in found.notes] == ["rows between its hours are left out; one row an hour is wanted"]


@pytest.mark.parametrize(
    ("body", "said"),
    [
        (b"", "it is empty"),
        (b" \n ", "it is empty"),
        (b"a,b\n1,2\n", "its first line has no column 'time'; it begins with 'a,b'"),
        (b"time,temperature_c\n", "it holds no temperatures"),
        (b"time,temperature_c\n2026-11-26T06:00:00Z,\n", "it holds no temperatures"),
        (
            b"time,temperature_c\n1026-01-01T00:00Z,1\n2026-01-01T00:00Z,1\n",
            "its times run from 1026-01-01 to 2026-01-01",
        ),
        (b"\xff\xfet\x00i\x00m\x00e\x00", "it is no CSV text"),
        (b'{"a": 1}', "it is JSON, but of no provider known here: open-meteo, met-norway, nws"),
        (b'{"error": true, "reason": "no such model"}', "it refuses: no such model"),
        (b'{"properties": {"periods": []}}', "an hourly text forecast, without amounts of rain"),
        (b'{"generationtime_ms": 1, "daily": {}}', "it has no hours; an answer to hourly=… is wanted"),
        (b'{"properties": {"timeseries": []}}', "it has no time series"),
        (b"LOCATION,x\n", "its first line is no EPW location with a time zone"),
    ],
)
def test_what_is_no_forecast_is_said_in_one_line(body: bytes, said: str) -> None:
    """One line that says what was found."""
    with pytest.raises(Unreadable, match=said.replace("(", r"\(")[:40]) as caught:
        parse(body)
    assert str(caught.value).startswith(said)


def test_a_missing_file_is_wrong_input(tmp_path: Path) -> None:
    """A mistyped path ends with exit status 2 and the path."""
    with pytest.raises(WrongInput, match=r"none\.csv: no forecast: the file cannot be read: no such file"):
        from_file(tmp_path / "none.csv", SIX)
    with pytest.raises(WrongInput, match="the file cannot be read: is a directory"):
        from_file(tmp_path, SIX)


def test_faults_are_told_in_the_barns_own_hours(tmp_path: Path) -> None:
    """The plan's notes: local hours of today without a date, other days with it, long gone and far ahead not at all."""
    lines = rows(40)
    del lines[30], lines[10], lines[3:5]
    path = tmp_path / "gappy.csv"
    path.write_bytes(table(lines))
    assert from_file(path, SIX).notes == ("no values: 09:00–11:00, 16:00–17:00, 2026-11-27 12:00–13:00 (4 h)",)
    assert from_file(path, SIX + timedelta(hours=12)).notes[-1].endswith("rain, snow: 12:00–13:00 (1 h)") is False


def test_a_whole_file_is_told_of_in_utc_and_in_few_words(tmp_path: Path) -> None:
    """Without an hour to look from, every hole counts; of many only the first are named."""
    lines = rows(60)
    path = tmp_path / "holes.csv"
    path.write_bytes(table([line for k, line in enumerate(lines) if k % 12]))
    assert from_file(path).notes == (
        "no values: 2026-11-26 23:00–2026-11-27 00:00, 2026-11-27 11:00–12:00, 2026-11-27 23:00–2026-11-28 00:00"
        " and 1 more spells (4 h)",
    )


def test_a_short_file_says_when_it_ends(tmp_path: Path) -> None:
    """A plan looks a day ahead; what does not reach is said, and a file for another day is stale."""
    path = tmp_path / "short.csv"
    path.write_bytes(table(rows(10)))
    assert from_file(path, SIX).notes == ("the forecast ends 16:00",)
    assert not from_file(path, SIX).stale
    late = from_file(path, SIX + timedelta(days=3))
    assert late.stale
    assert late.notes == ("the forecast ends 2026-11-26 16:00",)
    early = from_file(path, SIX - timedelta(hours=5))
    assert early.notes[0] == "the forecast begins only 06:00"


def test_an_answer_saved_with_its_headers_is_recognised() -> None:
    """Some tools save status and headers around the body."""
    step = {"time": "2026-11-26T06:00:00Z", "data": {
        "instant": {"details": {"air_temperature": -2.0, "relative_humidity": 80.0, "wind_speed": 3.0}},
        "next_6_hours": {"summary": {"symbol_code": "sleet"}, "details": {"precipitation_amount": 3.0}},
    }}  # fmt: skip
    body = {"type": "Feature", "properties": {"timeseries": [step, step | {"time": "2026-11-26T12:00:00Z"}]}}
    source, found = parse(json.dumps({"status_code": 200, "headers": {}, "data": body}).encode())
    assert source == "met-norway"
    assert len(found.hours) == 7
    assert found.hours.rain_mm[:6].tolist() == found.hours.snow_mm[:6].tolist() == [0.25] * 6


def test_met_norways_percentiles_are_its_own_spread() -> None:
    """In the Nordic countries the answer says how sure it is: 10th to 90th percentile, of the air and of the wind."""
    details = {"air_temperature": 1.0, "relative_humidity": 80.0, "wind_speed": 5.0}
    sure = details | {"air_temperature_percentile_10": -0.2816, "air_temperature_percentile_90": 2.2816}
    sure |= {"wind_speed_percentile_10": 4.0, "wind_speed_percentile_90": 8.0}
    hour = {"next_1_hours": {"summary": {}, "details": {"precipitation_amount": 0.0}}}
    steps = [
        {"time": f"2026-11-26T{k:02}:00:00Z", "data": {"instant": {"details": told}, **hour}}
        for k, told in enumerate((sure, details))
    ]
    _, found = parse(json.dumps({"properties": {"timeseries": steps}}).encode())
    assert found.hours.spread_c is not None
    assert found.hours.spread_wind is not None
    np.testing.assert_allclose(found.hours.spread_c, [1.0, np.nan], atol=1e-4)
    np.testing.assert_allclose(found.hours.spread_wind, [np.log(2) / 2.5632, np.nan], atol=1e-4)


def test_open_meteo_as_saved_in_other_units() -> None:
    """Fahrenheit, miles an hour, inches, local times: by the units the answer names."""
    body = {
        "utc_offset_seconds": -18000,
        "hourly_units": {"temperature_2m": "°F", "wind_speed_10m": "mp/h", "precipitation": "inch"},
        "hourly": {
            "time": ["2026-11-26T06:00", "2026-11-26T07:00", "2026-11-26T08:00"],
            "temperature_2m": [32.0, 0.0, -40.0],
            "relative_humidity_2m": [80, 81, 82],
            "wind_speed_10m": [10.0, 0.0, 10.0],
            "precipitation": [9.0, 0.1, 0.2],
        },
    }
    _, found = parse(json.dumps(body).encode())
    assert found.hours.start_s == SIX_S
    np.testing.assert_allclose(found.hours.temperature_c, [0.0, -17.7778], atol=1e-4)
    np.testing.assert_allclose(found.hours.wind_ms, [4.4704, 0.0])
    np.testing.assert_allclose(found.hours.rain_mm + found.hours.snow_mm, [2.54, 5.08])


def epw(years: tuple[int, int] = (1999, 1999)) -> bytes:
    """Two January days of an invented station five hours behind UTC; rain of six hours told at once."""
    lines = ["LOCATION,Nowhere,VT,USA,none,0,44.5,-72.3,-5.0,300", *["X"] * 7]
    for k in range(48):
        cells = ["0"] * 35
        day, hour = divmod(k, 24)
        cells[:5] = [str(years[day]), "1", str(day + 1), str(hour + 1), "0"]
        cells[6], cells[8], cells[13], cells[21], cells[22] = str(k / 10), "80", str(k), "5.0", "10"
        cells[33], cells[34] = ("6.0", "6") if k == 11 else ("999", "99") if 6 <= k < 11 else ("0.0", "1")
        lines.append(",".join(cells))
    return "\n".join(lines).encode()


def test_epw_hours_end_at_their_number() -> None:
    """Hour 1 is the instant 01:00 local standard time; its sun and rain are of the hour before."""
    source, found = parse(epw())
    hours = found.hours
    assert source == "file"
    assert hours.start_s == datetime(1999, 1, 1, 6, tzinfo=UTC).timestamp()
    assert hours.temperature_c[:3].tolist() == [0.0, 0.1, 0.2]
    assert hours.solar_wm2[:3].tolist() == [1.0, 2.0, 3.0]
    assert hours.cloud_pct[0] == 100
    assert (hours.rain_mm + hours.snow_mm)[4:12].tolist() == [0.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 0.0]


def test_epw_has_numbers_that_mean_missing() -> None:
    """99.9 °C and 999 % are no weather and no fault worth a name of its own."""
    body = epw().replace(b"0,2.0,0,80", b"0,99.9,0,999")
    _, found = parse(body)
    assert np.isnan(found.hours.temperature_c[20])
    assert np.isnan(found.hours.humidity_pct[20])


def test_epw_rows_that_are_none_are_passed_over() -> None:
    """A line of rubbish costs its hour."""
    lines = epw().split(b"\n")
    lines[20] = lines[20].replace(b"1999,1,1", b"1999,x,1")
    lines[25] = lines[25].replace(b",80,", b",wet,")
    _, found = parse(b"\n".join([*lines, b"the end"]))
    assert np.flatnonzero(np.isnan(found.hours.temperature_c)).tolist() == [12]
    assert np.flatnonzero(np.isnan(found.hours.humidity_pct)).tolist() == [12, 17]


def test_a_typical_year_is_laid_out_as_one_winter() -> None:
    """Months of several years make no sequence of dates: they become July to June."""
    _, found = parse(epw((1999, 2003)))
    assert found.hours.start_s == datetime(2026, 1, 1, 6, tzinfo=UTC).timestamp()
    assert len(found.hours) == 47
    assert found.notes[0].text == "a typical year of 2 years' months, laid out from July 2025"


def test_the_demo_forecasts_are_a_cold_wet_windy_day_that_turns_worse() -> None:
    """What the demo plays on: rain and gusts on a ridge, frost at night; later sleet, colder and stronger."""
    folder = Path(bot.__file__).parent / "demo"
    morning, worse = (parse((folder / f"{name}.csv").read_bytes())[1] for name in ("morning", "worse"))
    assert morning.notes == worse.notes == ()
    at_seven = (SIX_S + 3600 - morning.hours.start_s) // 3600
    day, night = slice(at_seven, at_seven + 10), slice(at_seven + 10, at_seven + 24)
    assert len(morning.hours) == len(worse.hours) == 72
    assert 1 < morning.hours.temperature_c[day].min() < morning.hours.temperature_c[day].max() < 4
    assert morning.hours.rain_mm[day].sum() > 5
    assert 15 < morning.hours.gust_ms[day].max() < 18 < worse.hours.gust_ms[day].max() < 22
    assert morning.hours.temperature_c[night].min() < -4
    assert worse.hours.temperature_c[night].min() < morning.hours.temperature_c[night].min() - 3
    assert worse.hours.snow_mm[day].sum() > 3
    until_ten = slice(0, at_seven + 3)
    np.testing.assert_array_equal(morning.hours.temperature_c[until_ten], worse.hours.temperature_c[until_ten])


@pytest.mark.parametrize(
    ("name", "source", "warmest", "wettest"),
    [
        ("metno_complete_london.json", "met-norway", 30, 10),
        ("metno_compact_newyork.json", "met-norway", 36, 20),
        ("nws_detailed_forecast.json", "nws", 30, 60),
        ("openmeteo_recorded_berlin_2021-11-24_48h.json", "open-meteo", 12, 10),
    ],
)
def test_recorded_answers_have_plausible_magnitudes(
    samples: Path, name: str, source: str, warmest: float, wettest: float
) -> None:
    """A factor of ten in a unit shows: the season's temperatures, up to tens of mm, a breeze to a gale."""
    found, parsed = parse((samples / name).read_bytes())
    hours = parsed.hours
    assert found == source
    assert warmest - 12 < np.nanmax(hours.temperature_c) < warmest + 8
    assert 0 < np.nansum(hours.rain_mm + hours.snow_mm) < wettest
    assert 1 < np.nanmean(hours.wind_ms) < 10
    assert 35 < np.nanmean(hours.humidity_pct) < 100
    assert np.isnan(hours.temperature_c).mean() < 0.05


TABLES = st.text(f"{HEAD}\n0123456789-+:TZ., ").map(lambda cells: f"{HEAD}\n{cells}".encode())


@settings(max_examples=200, deadline=None)
@given(body=st.one_of(st.binary(), TABLES, st.binary().map(lambda rest: b"LOCATION,,,,,,,,-5\n" + rest)))
def test_no_bytes_crash_the_reader(body: bytes) -> None:
    """Whatever the file holds: hours, or one line."""
    try:
        _, found = parse(body)
    except Unreadable:
        return
    assert len(found.hours) > 0
