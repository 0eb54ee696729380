"""The providers' own rules, kept: who asks, how often, only what changed, never the wrong address."""

from datetime import timedelta
from typing import Any

import pytest

from bot.barn import Barn
from bot.forecast import PROVIDERS, LastGood, latest, refresh
from tests.weather_service import (
    NOW,
    Server,
    answer,
    met_norway,
    nws_door,
    one_line,
    only,
    open_meteo,
)


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


def test_an_hour_to_come_back_is_understood_as_well_as_a_number_of_seconds(
    services: dict[str, Server], barn: Barn
) -> None:
    """Retry-After may be a date; one that has passed asks nothing, and no pause is longer than a day."""
    asked = {"Fri, 01 Jan 2100 00:00:00 GMT": "; asks to wait 86400 s", "Thu, 01 Jan 1970 00:00:00 GMT": "", "soon": ""}
    for when, said in asked.items():
        services["open-meteo"].behave = [answer(b"", 429, Retry_After=when)]
        fetched = refresh(barn, LastGood(), NOW)
        assert fetched.told == (f"open-meteo: was asked too often (429){said}",)


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
