"""Asking the weather services, over real HTTP against local servers that behave as badly as real ones do."""

import json
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from threading import Thread
from typing import Any

import numpy as np
import pytest

from bot.barn import Barn, demo_path, load
from bot.forecast import PROVIDERS, Fetched, LastGood, asking, latest, refresh, wire

NOW = datetime(2026, 11, 26, 11, 15, tzinfo=UTC)
Behaviour = Callable[[BaseHTTPRequestHandler], None]


@dataclass
class Server:
    """A weather service of our own. behave: what it does with the next requests, the last one for ever."""

    url: str = ""
    behave: list[Behaviour] = field(default_factory=list)
    asked: list[str] = field(default_factory=list)
    headers: list[dict[str, str]] = field(default_factory=list)


@contextmanager
def served() -> Iterator[Server]:
    """A server on loopback, gone at the end."""
    found = Server()

    class Handler(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            found.asked.append(self.path)
            found.headers.append(dict(self.headers))
            act = found.behave.pop(0) if len(found.behave) > 1 else found.behave[0]
            try:
                act(self)
            except OSError:
                self.close_connection = True

        def log_message(self, *_: Any) -> None:
            """In silence."""

    server = ThreadingHTTPServer(("127.0.0.1", 0), Handler)
    server.daemon_threads = True
    server.block_on_close = False
    thread = Thread(target=server.serve_forever, kwargs={"poll_interval": 0.01})
    thread.start()
    found.url = f"http://127.0.0.1:{server.server_port}"
    try:
        yield found
    finally:
        server.shutdown()
        thread.join()
        server.server_close()


@pytest.fixture
def services(monkeypatch: pytest.MonkeyPatch) -> Iterator[dict[str, Server]]:
    """One server a provider, each good until a test says otherwise; no pause between tries."""
    monkeypatch.setattr(wire, "PAUSES_S", (0.0, 0.0))
    with served() as one, served() as two, served() as three:
        made = {"open-meteo": one, "met-norway": two, "nws": three}
        for name, server in made.items():
            monkeypatch.setenv(f"HAYBELL_{name.upper().replace('-', '_')}_URL", f"{server.url}/a/path/that/is/left/out")
        one.behave = [answer(open_meteo())]
        two.behave = [answer(met_norway())]
        three.behave = [nws_door()]
        yield made


@pytest.fixture
def barn() -> Barn:
    """The demo barn, which asks all three in their order."""
    return load(demo_path())


def answer(body: Any, status: int = 200, **headers: str) -> Behaviour:
    """An answer with a body: bytes as they are, anything else as JSON."""

    def act(handler: BaseHTTPRequestHandler) -> None:
        raw = body if isinstance(body, bytes) else json.dumps(body).encode()
        (handler.send_response_only if "Date" in headers else handler.send_response)(status)
        for name, value in headers.items():
            handler.send_header(name.replace("_", "-"), value)
        handler.send_header("Content-Length", str(len(raw)))
        handler.end_headers()
        handler.wfile.write(raw)

    return act


def redirect(to: str, status: int = 302) -> Behaviour:
    """Another address."""
    return answer(b"", status, Location=to)


def drip(head: bytes) -> Behaviour:
    """A few bytes now and then, for ever: no single read takes long."""

    def act(handler: BaseHTTPRequestHandler) -> None:
        handler.close_connection = True
        handler.wfile.write(head)
        while True:
            handler.wfile.write(b" ")
            handler.wfile.flush()
            time.sleep(0.02)

    return act


def open_meteo(air: float = 2.0, start: datetime = NOW, n: int = 60, **columns: list[Any]) -> dict[str, Any]:
    """An answer from the last midnight on, alike in every hour."""
    first = int(start.replace(hour=0, minute=0).timestamp())
    names = {"temperature_2m": air, "relative_humidity_2m": 85, "wind_speed_10m": 6.0, "cloud_cover": 100}
    names |= {"wind_gusts_10m": 11.0, "rain": 0.2, "showers": 0.0, "snowfall": 0.0, "precipitation_probability": 60}
    hourly = {name: [value] * n for name, value in names.items()} | columns
    return {"hourly_units": {}, "hourly": {"time": [first + 3600 * k for k in range(n)], **hourly}}


def met_norway(air: float = 2.0, issued: datetime = NOW - timedelta(hours=2)) -> dict[str, Any]:
    """An answer of 60 hours from the running one."""
    details = {"air_temperature": air, "relative_humidity": 85.0, "wind_speed": 6.0}
    hour = {"instant": {"details": details}, "next_1_hours": {"details": {"precipitation_amount": 0.2}, "summary": {}}}
    first = NOW.replace(minute=0)
    steps = [{"time": (first + timedelta(hours=k)).isoformat(), "data": hour} for k in range(60)]
    return {"properties": {"meta": {"updated_at": issued.isoformat()}, "timeseries": steps}}


def nws(air: float = 2.0) -> dict[str, Any]:
    """A grid square of two and a half days."""
    values = {"temperature": air, "relativeHumidity": 85, "windSpeed": 6.0, "quantitativePrecipitation": 12.0}
    when = f"{NOW.replace(minute=0).isoformat()}/P2DT12H"
    layers = {name: {"values": [{"validTime": when, "value": value}]} for name, value in values.items()}
    return {"properties": {"updateTime": (NOW - timedelta(hours=1)).isoformat(), **layers}}


def nws_door(**headers: str) -> Behaviour:
    """Both steps: the point names a grid square on another host."""
    point = {"properties": {"forecastGridData": "https://far.example/gridpoints/BTV/96,70"}}

    def act(handler: BaseHTTPRequestHandler) -> None:
        answer(point if handler.path.startswith("/points/") else nws(), 200, **headers)(handler)

    return act


def only(barn: Barn, *sources: str, **changes: Any) -> Barn:
    """The same barn with other sources."""
    return barn.model_copy(update={"forecast": sources, **changes})


def one_line(fetched: Fetched) -> str:
    """What was wrong with the one source."""
    assert fetched.source is None
    (said,) = fetched.told
    assert "\n" not in said
    return said


def test_the_first_good_source_is_used_and_no_other_is_asked(services: dict[str, Server], barn: Barn) -> None:
    """The barn's order is the order."""
    kept = LastGood()
    fetched = refresh(barn, kept, NOW)
    assert (fetched.source, fetched.told) == ("open-meteo", ())
    assert not services["met-norway"].asked
    found = latest(kept, barn, NOW + timedelta(minutes=12))
    assert found is not None
    assert (found.source, found.fetched_at, found.age_min, found.stale, found.notes) == (
        "open-meteo",
        NOW,
        12,
        False,
        (),
    )
    assert found.attribution == "Weather data by Open-Meteo.com (CC BY 4.0)"


def test_requests_are_as_the_providers_ask(services: dict[str, Server], barn: Barn) -> None:
    """Documented paths on the host put in place, a contact in the User-Agent, at most four decimals."""
    for name in PROVIDERS:
        assert refresh(only(barn, name), LastGood(), NOW).source == name
    path, _, query = services["open-meteo"].asked[0].partition("?")
    assert path == "/v1/forecast"
    for part in ("latitude=44.52&longitude=-72.31", "wind_speed_unit=ms", "timeformat=unixtime", "elevation=520"):
        assert part in query
    assert services["met-norway"].asked == [
        "/weatherapi/locationforecast/2.0/complete?lat=44.52&lon=-72.31&altitude=520"
    ]
    assert services["nws"].asked == ["/points/44.52,-72.31", "/gridpoints/BTV/96,70"]
    for server in services.values():
        assert all(headers["User-Agent"].startswith("haybell/") for headers in server.headers)
        assert all(headers["User-Agent"].endswith(" barn@example.org") for headers in server.headers)


@pytest.mark.parametrize(
    ("bad", "said"),
    [
        (answer(b'{"hourly": {"time": [17'), "no JSON; it begins with '{\"hourly\": {\"time\": [17'"),
        (answer(b"<html>Down for maintenance</html>"), "no JSON; it begins with '<html>Down for maintenance</html>'"),
        (answer(open_meteo(temperature_2m=[None] * 60)), "it holds no temperatures"),
        (answer(open_meteo(temperature_2m=[900.0] * 60)), "none of its temperatures can be"),
        (answer(open_meteo(n=10)), "has no hours from now on"),
        (answer(open_meteo(rain=[0.0] * 15 + [None] * 45)), "leaves 9 of the next 12 hours open"),
        (answer(open_meteo(start=NOW - timedelta(days=5))), "has no hours from now on"),
        (answer({"error": True, "reason": "no such model"}, 400), "answered 400"),
        (answer(b"", 500), "answered 500"),
        (answer(b"Bad Gateway", 502), "answered 502: Bad Gateway"),
        (answer(b"", 503), "answered 503"),
        (answer(b"", 403), "refused (403): it wants a contact it can write to"),
        (answer(b"", 404), "knows no such place (404)"),
        (answer(b"", 429, Retry_After="90"), "was asked too often (429); asks to wait 90 s"),
        (answer(b"", 304), "says that nothing has changed (304), but was not asked that"),
        (redirect("/v1/forecast"), "redirects more than 4 times"),
        (redirect("ftp://127.0.0.1/x"), "redirects to an address that is not followed"),
        (redirect("file:///etc/passwd"), "redirects to an address that is not followed"),
        (answer(b" " * (wire.MAX_BODY + 1)), "answers with more than 8 MB"),
        (answer(b"not gzip", Content_Encoding="gzip"), "cannot be asked: "),
    ],
)  # fmt: skip
def test_a_bad_source_is_said_in_one_line_and_the_next_is_tried(
    services: dict[str, Server], barn: Barn, bad: Behaviour, said: str
) -> None:
    """Whatever a server does, the barn has a forecast as long as another one is well."""
    services["open-meteo"].behave = [bad]
    fetched = refresh(barn, LastGood(), NOW)
    assert fetched.source == "met-norway"
    (line,) = fetched.told
    assert line.startswith(f"open-meteo: {said}")
    assert "\n" not in line


def test_nulls_gaps_and_absurd_values_cost_only_their_hours(services: dict[str, Server], barn: Barn) -> None:
    """The rest of the forecast is used, and the plan is told which hours it cannot judge, in the barn's own time."""
    body = open_meteo()
    body["hourly"]["temperature_2m"][14] = None
    body["hourly"]["wind_speed_10m"][16] = 468.5
    for column in body["hourly"].values():
        del column[30]
    services["open-meteo"].behave = [answer(body)]
    kept = LastGood()
    assert refresh(barn, kept, NOW).source == "open-meteo"
    found = latest(kept, barn, NOW)
    assert found is not None
    assert found.notes[0] == "wind of 468 m/s cannot be, left out: 11:00–12:00 (1 h)"
    assert np.flatnonzero(np.isnan(found.hours.temperature_c)).tolist() == [14, 30]
    assert np.isnan(found.hours.wind_ms[16])


def test_a_few_bad_gateways_are_tried_again(services: dict[str, Server], barn: Barn) -> None:
    """502, 503 and 504 pass; the third try may be good."""
    services["open-meteo"].behave = [answer(b"", 503), answer(b"", 502), answer(open_meteo())]
    assert refresh(barn, LastGood(), NOW).source == "open-meteo"
    assert len(services["open-meteo"].asked) == 3


def test_a_redirect_is_followed(services: dict[str, Server], barn: Barn) -> None:
    """A service that moves its address is still the service."""
    services["open-meteo"].behave = [redirect("/elsewhere?x=1", 301), redirect("moved", 307), answer(open_meteo())]
    assert refresh(barn, LastGood(), NOW).source == "open-meteo"
    assert services["open-meteo"].asked[1:] == ["/elsewhere?x=1", "/moved"]


@pytest.mark.parametrize("head", [b"HTTP/1.0 200 OK\r\n\r\n{", b"HTTP/1.0 200 OK\r\nX: "])
def test_a_slow_drip_is_cut(
    services: dict[str, Server], barn: Barn, monkeypatch: pytest.MonkeyPatch, head: bytes
) -> None:
    """A byte now and then, in the body or in the headers: after its time the provider is left."""
    monkeypatch.setattr(asking, "PROVIDER_S", 0.4)
    services["open-meteo"].behave = [drip(head)]
    began = time.monotonic()
    fetched = refresh(barn, LastGood(), NOW)
    assert fetched.source == "met-norway"
    assert fetched.told[0].startswith("open-meteo: no")
    assert time.monotonic() - began < 5  # the server would go on for ever


def test_half_an_answer_is_no_answer(services: dict[str, Server], barn: Barn) -> None:
    """A line that drops in the middle is noticed, also where the half is valid by itself."""

    def half(handler: BaseHTTPRequestHandler) -> None:
        raw = json.dumps(open_meteo()).encode()
        handler.send_response(200)
        handler.send_header("Content-Length", str(len(raw) + 100))
        handler.end_headers()
        handler.wfile.write(raw)

    services["open-meteo"].behave = [half]
    assert refresh(barn, LastGood(), NOW).source == "met-norway"


def test_a_server_that_is_not_there(services: dict[str, Server], barn: Barn, monkeypatch: pytest.MonkeyPatch) -> None:
    """No network: every source says so, and nothing is raised."""
    for name in PROVIDERS:
        monkeypatch.setenv(f"HAYBELL_{name.upper().replace('-', '_')}_URL", "http://127.0.0.1:9")
    fetched = refresh(barn, LastGood(), NOW)
    assert fetched.source is None
    assert fetched.told == tuple(f"{name}: cannot be reached; is the network up?" for name in barn.forecast)


def test_a_test_server_is_asked_without_the_proxy(
    services: dict[str, Server], barn: Barn, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Who puts a server on the same machine in a provider's place means that server."""
    monkeypatch.setenv("HTTP_PROXY", "http://127.0.0.1:9")
    assert refresh(barn, LastGood(), NOW).source == "open-meteo"


@pytest.mark.parametrize("url", ["nonsense", "ftp://127.0.0.1", "http://", "http://[::1", "http://127.0.0.1:99999"])
def test_a_wrong_address_is_said(barn: Barn, monkeypatch: pytest.MonkeyPatch, url: str) -> None:
    """A mistyped setting ends in one line too."""
    monkeypatch.setenv("HAYBELL_OPEN_METEO_URL", url)
    assert one_line(refresh(only(barn, "open-meteo"), LastGood(), NOW)).startswith("open-meteo: ")


def test_without_a_contact_those_who_want_one_are_not_asked(services: dict[str, Server], barn: Barn) -> None:
    """MET Norway bans what does not say who it is."""
    fetched = refresh(only(barn, "met-norway", "nws", "open-meteo", contact=None), LastGood(), NOW)
    assert fetched.source == "open-meteo"
    assert fetched.told == tuple(
        f"{name}: wants a contact; give 'contact' in the barn file" for name in ("met-norway", "nws")
    )
    assert not services["met-norway"].asked
    assert services["open-meteo"].headers[0]["User-Agent"].startswith("haybell/")


def test_who_asks_to_be_left_alone_is(services: dict[str, Server], barn: Barn) -> None:
    """Retry-After holds also for the next refreshes, and ends."""
    services["open-meteo"].behave = [answer(b"", 429, Retry_After="1800"), answer(open_meteo())]
    kept = LastGood()
    refresh(barn, kept, NOW)
    again = refresh(barn, kept, NOW + timedelta(minutes=20))
    assert again.told == ("open-meteo: asked to be left alone until 06:45",)
    assert len(services["open-meteo"].asked) == 1
    assert refresh(barn, kept, NOW + timedelta(minutes=31)).source == "open-meteo"


def test_what_has_not_expired_is_not_asked_for(services: dict[str, Server], barn: Barn) -> None:
    """By the difference of the service's own dates, whatever our clock says."""
    times = {"Date": "Mon, 20 Jul 2020 11:44:31 GMT", "Expires": "Mon, 20 Jul 2020 12:16:23 GMT"}
    services["met-norway"].behave = [answer(met_norway(), **times, Last_Modified="Mon, 20 Jul 2020 11:44:31 GMT")]
    barn, kept = only(barn, "met-norway"), LastGood()
    for minutes, requests in ((0, 1), (31, 1), (32, 2)):
        assert refresh(barn, kept, NOW + timedelta(minutes=minutes)).source == "met-norway"
        assert len(services["met-norway"].asked) == requests
    assert services["met-norway"].headers[1]["If-Modified-Since"] == "Mon, 20 Jul 2020 11:44:31 GMT"
    assert "If-Modified-Since" not in services["met-norway"].headers[0]


def test_a_date_of_expiry_far_ahead_does_not_freeze_the_forecast(services: dict[str, Server], barn: Barn) -> None:
    """Six hours at most."""
    services["open-meteo"].behave = [answer(open_meteo(), Cache_Control="public, max-age=999999999")]
    kept = LastGood()
    for hours, requests in ((0, 1), (5, 1), (6, 2)):
        refresh(barn, kept, NOW + timedelta(hours=hours))
        assert len(services["open-meteo"].asked) == requests


def test_unchanged_is_as_good_as_new(services: dict[str, Server], barn: Barn) -> None:
    """304: the same hours, confirmed now."""
    services["met-norway"].behave = [
        answer(met_norway(1.5), Last_Modified="Thu, 26 Nov 2026 09:00:00 GMT"),
        answer(b"", 304),
    ]
    barn, kept, later = only(barn, "met-norway"), LastGood(), NOW + timedelta(hours=1)
    refresh(barn, kept, NOW)
    assert refresh(barn, kept, later).told == ()
    found = latest(kept, barn, later)
    assert found is not None
    assert (found.age_min, found.hours.temperature_c[0]) == (0, 1.5)


def test_a_version_that_will_end_is_told(services: dict[str, Server], barn: Barn) -> None:
    """203 is a warning with a good answer."""
    services["met-norway"].behave = [answer(met_norway(), 203)]
    fetched = refresh(only(barn, "met-norway"), LastGood(), NOW)
    assert fetched.source == "met-norway"
    assert fetched.told == ("met-norway: says that this version of its service will end (203)",)


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


def test_the_grid_square_of_a_point_is_asked_for_once_a_day(services: dict[str, Server], barn: Barn) -> None:
    """Squares move seldom; the second step's host is ours, whatever the first step's answer says."""
    barn, kept = only(barn, "nws"), LastGood()
    for hours in (0, 1, 25):
        services["nws"].behave = [nws_door()]
        refresh(barn, kept, NOW + timedelta(hours=hours))
    steps = ["/points/44.52,-72.31", "/gridpoints/BTV/96,70"]
    assert services["nws"].asked == [*steps, steps[1], *steps]


@pytest.mark.parametrize(
    "square",
    ["https://api.weather.gov/../../etc", "javascript:alert(1)", "https://a.example/gridpoints/B/1,2/../..", 7, None],
)
def test_a_point_that_leads_nowhere_is_not_followed(services: dict[str, Server], barn: Barn, square: Any) -> None:
    """Outside the United States, or an answer that means harm."""
    services["nws"].behave = [answer({"properties": {"forecastGridData": square}})]
    assert one_line(refresh(only(barn, "nws"), LastGood(), NOW)) == (
        "nws: the point has no forecast grid; is the barn in the United States?"
    )
    assert len(services["nws"].asked) == 1


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


def test_a_forecast_grows_old(services: dict[str, Server], barn: Barn) -> None:
    """Nothing new for 12 h: stale, with its age; a reply still uses it."""
    kept = LastGood()
    refresh(barn, kept, NOW)
    found = latest(kept, barn, NOW + timedelta(hours=13))
    assert found is not None
    assert (found.age_min, found.stale) == (780, True)
    assert latest(LastGood(), barn, NOW) is None


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
