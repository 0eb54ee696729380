"""One case for every weather provider: the same weather, told in each one's own way, is the same `Hours`."""

import json
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from itertools import groupby
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.barn import Place
from bot.forecast import PROVIDERS, Parsed, Unreadable
from bot.forecast.answers import Provider, Request

START = datetime(2026, 11, 26, 0, tzinfo=UTC)
N = 30
PLACE = Place(latitude=44.123456, longitude=-72.300001, elevation_m=520, exposure="ridge")

# the truth: a thaw with rain, a front, snow behind it
TEMPERATURE = [round(4 * np.cos(k / 5), 1) for k in range(N)]
HUMIDITY = [80 + k % 7 for k in range(N)]
WIND = [5.0 + k % 4 for k in range(N)]
GUST = [9.0 + k % 4 for k in range(N)]
RAIN = [1.2 if 3 <= k < 6 else 0.0 for k in range(N)]
SNOW = [0.6 if 16 <= k < 18 else 0.0 for k in range(N)]
CLOUD = [100 if k < 20 else 25 for k in range(N)]
CHANCE = [70 if k < 18 else 5 for k in range(N)]
TRUTH = {
    "temperature_c": TEMPERATURE,
    "humidity_pct": HUMIDITY,
    "wind_ms": WIND,
    "gust_ms": GUST,
    "rain_mm": RAIN,
    "snow_mm": SNOW,
    "cloud_pct": CLOUD,
    "rain_probability_pct": CHANCE,
}


def iso(k: int) -> str:
    """The k-th hour, as UTC text."""
    return (START + timedelta(hours=k)).strftime("%Y-%m-%dT%H:%M:%SZ")


def open_meteo() -> Any:
    """Sums, gusts and chances of the hour before; snow in cm, 7 of them 10 mm of water."""
    before: list[Any] = [None]
    hourly = {
        "time": [int(START.timestamp()) + 3600 * k for k in range(N + 1)],
        "temperature_2m": [*TEMPERATURE, 0.0],
        "relative_humidity_2m": [*HUMIDITY, 80],
        "wind_speed_10m": [*WIND, 5.0],
        "cloud_cover": [*CLOUD, 25],
        "wind_gusts_10m": before + GUST,
        "rain": before + [0.5 * value for value in RAIN],
        "showers": before + [0.5 * value for value in RAIN],
        "snowfall": before + [0.7 * value for value in SNOW],
        "shortwave_radiation": before + [-0.2] * N,
        "precipitation_probability": before + CHANCE,
    }
    return {"hourly_units": {"time": "unixtime", "wind_speed_10m": "m/s", "snowfall": "cm"}, "hourly": hourly}


def met_norway() -> Any:
    """Amounts of the hour that follows; what falls is in the symbol."""
    steps = []
    for k in range(N):
        details = {
            "air_temperature": TEMPERATURE[k],
            "relative_humidity": HUMIDITY[k],
            "wind_speed": WIND[k],
            "wind_speed_of_gust": GUST[k],
            "cloud_area_fraction": CLOUD[k],
        }
        symbol = "heavysnow" if SNOW[k] else "lightrain" if RAIN[k] else "cloudy"
        following = {
            "summary": {"symbol_code": symbol},
            "details": {"precipitation_amount": RAIN[k] + SNOW[k], "probability_of_precipitation": CHANCE[k]},
        }
        steps.append({"time": iso(k), "data": {"instant": {"details": details}, "next_1_hours": following}})
    steps.append({"time": iso(N), "data": {"instant": {"details": {"air_temperature": 0.0}}}})
    return {"properties": {"meta": {"updated_at": iso(-3)}, "timeseries": steps}}


def nws() -> Any:
    """Equal neighbours merged into one interval, amounts of the whole interval, km/h, snow as depth."""
    snow = [10 * value for value in SNOW]
    layers = {
        "temperature": ("wmoUnit:degC", TEMPERATURE, False),
        "relativeHumidity": ("wmoUnit:percent", HUMIDITY, False),
        "windSpeed": ("wmoUnit:km_h-1", [3.6 * value for value in WIND], False),
        "windGust": ("wmoUnit:km_h-1", [3.6 * value for value in GUST], False),
        "skyCover": ("wmoUnit:percent", CLOUD, False),
        "probabilityOfPrecipitation": ("wmoUnit:percent", CHANCE, False),
        "quantitativePrecipitation": ("wmoUnit:mm", [r + s for r, s in zip(RAIN, SNOW)], True),
        "snowfallAmount": ("wmoUnit:mm", snow, True),
    }
    made = {
        name: {"uom": unit, "values": _merged(values, summed=summed)} for name, (unit, values, summed) in layers.items()
    }
    return {"properties": {"updateTime": iso(-3), **made}}


def _merged(values: list[float], *, summed: bool) -> list[dict[str, Any]]:
    rows, k = [], 0
    for value, run in groupby(values):
        n = len(list(run))
        days, hours = divmod(n, 24)
        length = "P" + (f"{days}D" if days else "") + (f"T{hours}H" if hours else "")
        rows.append({"validTime": f"{iso(k).replace('Z', '+00:00')}/{length}", "value": value * n if summed else value})
        k += n
    return rows


ANSWERS: dict[str, Callable[[], Any]] = {"open-meteo": open_meteo, "met-norway": met_norway, "nws": nws}
GRID = {"properties": {"forecastGridData": "https://elsewhere.example/gridpoints/BTV/96,70"}}


@pytest.fixture(params=sorted(PROVIDERS))
def provider(request: pytest.FixtureRequest) -> Provider:
    """Every provider there is."""
    return PROVIDERS[request.param]


def parsed(provider: Provider, answer: Any) -> Parsed:
    """What a provider's answer says."""
    return provider.parse(json.dumps(answer).encode())


def asked(provider: Provider, place: Place = PLACE) -> list[Request]:
    """All requests for a place."""
    steps = provider.ask(place, "barn@example.org")
    found = [next(steps)]
    while True:
        try:
            found.append(steps.send(json.dumps(GRID).encode()))
        except StopIteration:
            return found


def test_the_same_weather_is_the_same_hours(provider: Provider) -> None:
    """Units, intervals and which hour a sum belongs to end in the provider's own file."""
    found = parsed(provider, ANSWERS[provider.NAME]())
    assert found.hours.start_s == START.timestamp()
    for name, truth in TRUTH.items():
        np.testing.assert_allclose(getattr(found.hours, name), truth, atol=1e-6, err_msg=name)
    assert found.notes == ()


def test_sun_is_never_negative_and_unknown_where_it_is_not_told(provider: Provider) -> None:
    """A recorded -0.2 W/m² is night; a provider without sun does not say that there is none."""
    sun = parsed(provider, ANSWERS[provider.NAME]()).hours.solar_wm2
    assert np.all(sun == 0) if provider.NAME == "open-meteo" else np.all(np.isnan(sun))
    assert not np.any(np.signbit(sun))


def test_the_issue_time_of_the_run_is_known_where_it_is_told(provider: Provider) -> None:
    """A stale run can only be noticed where its time is read."""
    issued = parsed(provider, ANSWERS[provider.NAME]()).issued
    assert issued == (None if provider.NAME == "open-meteo" else START - timedelta(hours=3))


def test_coordinates_have_at_most_four_decimals(provider: Provider) -> None:
    """More decimals are refused by MET Norway and redirected by NWS."""
    first = asked(provider)[0]
    text = first.path + " ".join(first.query.values())
    assert "44.1235" in text
    assert "-72.3" in text
    assert "44.12346" not in text


def test_paths_are_addresses_behind_the_providers_host(provider: Provider) -> None:
    """Whatever an answer says, the host asked is the provider's or the one put in its place."""
    for request in asked(provider):
        assert request.path.startswith("/")
        assert "//" not in request.path


def test_zero_degrees_is_a_temperature(provider: Provider) -> None:
    """Nothing is taken for missing because it is zero."""
    answer = ANSWERS[provider.NAME]()
    text = json.dumps(answer).replace(f"{TEMPERATURE[0]}", "0")
    assert provider.parse(text.encode()).hours.temperature_c[0] == 0


def test_nulls_become_hours_that_are_not_known(provider: Provider) -> None:
    """A null is neither zero nor the hour before."""
    text = json.dumps(ANSWERS[provider.NAME]()).replace(f"{TEMPERATURE[3]}", "null")
    found = provider.parse(text.encode())
    assert np.isnan(found.hours.temperature_c[3])
    assert any("temperature" in note.text for note in found.notes)


def test_what_cannot_be_is_left_out_and_said(provider: Provider) -> None:
    """A temperature of 400 degrees is a fault of the answer, and no weather."""
    text = json.dumps(ANSWERS[provider.NAME]()).replace(f"{TEMPERATURE[2]}", "400.0")
    found = provider.parse(text.encode())
    assert np.isnan(found.hours.temperature_c[2])
    assert found.notes[0].text == "temperature of 400 °C cannot be, left out"
    assert found.notes[0].hours == (int(START.timestamp()) + 2 * 3600,)


@pytest.mark.parametrize(
    "body", [b"", b"{}", b"[]", b"null", b"[" * 100_000, b"\xff", b"<html>sorry</html>", b"9" * 9999]
)
def test_what_is_no_answer_is_said_in_one_line(provider: Provider, body: bytes) -> None:
    """Broken JSON, HTML, nothing at all."""
    with pytest.raises(Unreadable) as caught:
        provider.parse(body)
    assert str(caught.value)
    assert "\n" not in str(caught.value)


@settings(max_examples=200, deadline=None)
@given(body=st.binary())
def test_no_bytes_crash_a_parser(body: bytes) -> None:
    """Hours or one line, from anything."""
    for provider in PROVIDERS.values():
        _harmless(provider, body)


JUNK = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=5),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=3), inner, max_size=3),
    max_leaves=6,
)


@settings(max_examples=150, deadline=None)
@given(data=st.data())
def test_no_mangled_answer_crashes_a_parser(data: st.DataObject) -> None:
    """Any value of a good answer may turn into anything."""
    for name, provider in PROVIDERS.items():
        answer = ANSWERS[name]()
        for _ in range(data.draw(st.integers(1, 3))):
            _mangle(answer, data)
        _harmless(provider, json.dumps(answer).encode())


def _mangle(answer: Any, data: st.DataObject) -> None:
    """Put junk somewhere on a random way down."""
    while True:
        keys = sorted(answer) if isinstance(answer, dict) else list(range(len(answer)))
        if not keys:
            return
        key = data.draw(st.sampled_from(keys))
        if not isinstance(answer[key], dict | list) or data.draw(st.integers(0, 4)) == 0:
            answer[key] = data.draw(JUNK)
            return
        answer = answer[key]


def _harmless(provider: Provider, body: bytes) -> None:
    try:
        found = provider.parse(body)
    except Unreadable:
        return
    assert len(found.hours) > 0
    assert all("\n" not in note.text for note in found.notes)
