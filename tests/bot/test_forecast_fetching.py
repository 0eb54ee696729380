"""Asking the weather services, over real HTTP against local servers that behave as badly as real ones do."""

import json
import time
from datetime import timedelta
from http.server import BaseHTTPRequestHandler

import numpy as np
import pytest

from bot.barn import Barn
from bot.forecast import PROVIDERS, LastGood, asking, latest, refresh, wire
from bot.problems import Failed
from tests.weather_service import (
    NOW,
    Behaviour,
    Server,
    answer,
    base_variable,
    drip,
    one_line,
    only,
    open_meteo,
    redirect,
)


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


def test_a_shelf_that_is_full_is_said_too(services: dict[str, Server], barn: Barn) -> None:
    """What cannot be kept is no forecast for the next reply; nothing is raised."""

    class Full(dict[str, bytes]):
        def put(self, name: str, value: bytes) -> None:
            raise Failed("the disk is full")

    fetched = refresh(only(barn, "open-meteo"), LastGood(Full()), NOW)
    assert one_line(fetched) == "open-meteo: the disk is full"


def test_a_server_that_is_not_there(services: dict[str, Server], barn: Barn, monkeypatch: pytest.MonkeyPatch) -> None:
    """No network: every source says so, and nothing is raised."""
    for name in PROVIDERS:
        monkeypatch.setenv(base_variable(name), "http://127.0.0.1:9")
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
