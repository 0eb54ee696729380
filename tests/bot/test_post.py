"""The round's post, as people read it at six in the morning."""

import re
from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from math import inf, nan

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.barn import Barn
from bot.layout import COLUMNS, columns
from bot.moves import Move
from bot.post import buttons, plan_json, plan_text, round_post, update
from bot.sheet import DressSheet, Sheet, Source, dump, load
from bot.state import State
from rules.reason import Code, Reason, Unit

ENGLISH_US = """\
Windrow Farm · morning · Thu 26 Nov 7 am
34°F, up to 38°F at noon, rain from 11 am
(0.22 in), gusts 39 mph at noon.

CHANGE
Maple, Otis: 100 g liner + rain sheet
Juniper: spare 200 g turnout
Pip: bare (off: 200 g turnout)

STAY
Clover, Moss, Fern bare; Biscuit, Ned sheet;
Sorrel 360 g; Quill 300 g stable; Tansy 220 g

Drying: Juniper's 150 g liner (dry by 1 pm)
Mend: Biscuit's rain sheet (biscuit-old)
  (torn)
Wanted: Sorrel (evening) dry 380–450 g
  turnout, 75 in
Hand check 1 pm: Sorrel, may be cold

Weather data by Open-Meteo.com, 12 min old.
Guide only: the horse in front of you
overrules."""

SPANISH_METRIC = """\
Windrow Farm · mañana · jue 26 nov 07:00
1 °C, sube a 3 °C a las 12:00, lluvia desde
las 11:00 (5.7 mm), rachas de 62 km/h a las
12:00.

CAMBIAR
Maple, Otis: manta interior 100 g + manta de
  lluvia
Juniper: manta 200 g de reserva
Pip: sin manta (quitar: manta 200 g)

IGUAL
Clover, Moss, Fern sin manta; Biscuit, Ned
impermeable; Sorrel 360 g; Quill cuadra
300 g; Tansy 220 g

Secando: manta interior 150 g de Juniper
  (seca a las 13:00)
Por arreglar: manta de lluvia (biscuit-old)
  de Biscuit (rota)
Hace falta: Sorrel (tarde) manta 380–450 g
  seca, 75 in
Tocar a las 13:00: Sorrel, puede tener frío

Weather data by Open-Meteo.com, hace 12 min.
Solo es una guía: manda el caballo que tiene
delante."""

FRENCH_METRIC = """\
Windrow Farm · matin · jeu. 26 nov. 07:00
1 °C, jusqu'à 3 °C à 12:00, pluie dès 11:00
(5,7 mm), rafales à 62 km/h vers 12:00.

CHANGER
Maple, Otis : sous-couverture 100 g + chemise
  imperméable
Juniper : couverture 200 g de réserve
Pip : sans couverture (ôter : couverture
  200 g)

GARDER
Clover, Moss, Fern sans couverture ; Biscuit,
Ned imper ; Sorrel 360 g ; Quill écurie
300 g ; Tansy 220 g

À sécher : sous-couverture 150 g de Juniper
  (sèche à 13:00)
À réparer : chemise imperméable (biscuit-old)
  de Biscuit (déchirée)
Il manque : Sorrel (soir) couverture
  380–450 g sèche, 75 in
Toucher à 13:00 : Sorrel, a peut-être froid

Weather data by Open-Meteo.com, il y a
12 min.
Simple guide : le cheval devant vous a le
dernier mot."""


WHOLE = {("en", "us"): ENGLISH_US, ("es", "metric"): SPANISH_METRIC, ("fr", "metric"): FRENCH_METRIC}


@pytest.mark.parametrize(("language", "units"), WHOLE)
def test_the_whole_post(sheet: Sheet, farm: Barn, state: State, language: str, units: str) -> None:
    """Weather, who changes, who stays, what to dry, mend and buy, whom to feel; in the reader's words and units."""
    assert round_post(sheet, farm, state, language, units) == WHOLE[language, units]


@pytest.mark.parametrize("language", ["en", "es", "fr"])
@pytest.mark.parametrize("units", ["us", "metric"])
def test_no_line_is_wider_than_a_phone(sheet: Sheet, farm: Barn, state: State, language: str, units: str) -> None:
    """Forty-five columns, in every language and unit, for every window."""
    for text in (round_post(sheet, farm, state, language, units, late=True), plan_text(sheet, farm, state, language)):
        assert max(map(columns, text.splitlines())) <= COLUMNS


def test_twelve_horses_are_read_in_twenty_seconds(sheet: Sheet, farm: Barn, state: State) -> None:
    """What is new below the title is at most eighty-five words: twenty seconds at 255 words a minute.

    The rate is from memory, about what adults read silently; the standing last lines are not counted.
    """
    _title, body = round_post(sheet, farm, state, "en", "us").split("Weather data by")[0].split("\n", 1)
    assert len(re.findall(r"[\w'’.°-]+", body.replace(" g ", "g "))) <= 85


def test_who_changes_comes_before_who_stays_and_the_largest_company_first(
    sheet: Sheet, farm: Barn, state: State
) -> None:
    """The first name that is read is a horse that has to be changed."""
    text = round_post(sheet, farm, state, "en", "us")
    assert text.index("CHANGE") < text.index("Maple, Otis") < text.index("Juniper") < text.index("STAY")


def test_only_what_stays_on_in_part_says_what_comes_off(
    sheet: Sheet, farm: Barn, state: State, dress: Callable[..., DressSheet]
) -> None:
    """Another outfit says it by itself; a piece taken from under or over another does not."""
    maple = replace(
        sheet.horses[0], wears_now=("maple-liner", "maple-sheet"), windows=(dress(wear=("maple-sheet",), change=True),)
    )
    text = round_post(replace(sheet, horses=(maple,)), farm, state, "en", "us")
    assert "Maple: rain sheet (off: 100 g liner)" in text


def test_when_nobody_changes_the_post_says_so(sheet: Sheet, farm: Barn, state: State) -> None:
    """Silence would leave people looking."""
    calm = [replace(h, windows=(replace(h.windows[0], change=False), h.windows[1])) for h in sheet.horses]
    assert "Nobody changes." in round_post(replace(sheet, horses=tuple(calm)), farm, state, "en", "us")


def test_a_late_post_says_that_it_is_late(sheet: Sheet, farm: Barn, state: State) -> None:
    """Nobody takes it for the next round's."""
    assert "Late: this round began at 7 am." in round_post(sheet, farm, state, "en", "us", late=True)


def test_without_a_forecast_nobody_takes_silence_for_safety(sheet: Sheet, farm: Barn, state: State) -> None:
    """The post still comes, and says that nothing in it was judged by weather."""
    blind = replace(sheet, forecast=Source(None, stale=True), sky=())
    text = " ".join(round_post(blind, farm, state, "en", "us").split())
    assert "No forecast could be had. Nothing below is judged by weather: feel every horse." in text


def test_an_old_forecast_and_hours_without_one_are_said(sheet: Sheet, farm: Barn, state: State) -> None:
    """How old, and which hours nobody judged."""
    hours = tuple(h.at for h in sheet.sky[3:5])
    maple = sheet.horses[0]
    maple = replace(maple, windows=(replace(maple.windows[0], unjudged=hours), maple.windows[1]))
    old = replace(sheet, horses=(maple, *sheet.horses[1:]), forecast=Source("met-norway", None, 840, stale=True))
    text = " ".join(round_post(old, farm, state, "en", "us").split())
    assert "Not judged, no forecast: 2 h between 10 am and noon." in text
    assert "Old forecast, 14 h: look at the sky yourself." in text


def test_a_wet_horse_is_dried_before_anything_goes_on(sheet: Sheet, farm: Barn, state: State) -> None:
    """Said with the changes, not hidden behind a question."""
    maple = sheet.horses[0]
    wet = replace(maple.windows[0], cautions=(Reason(Code.DRY_FIRST),))
    text = round_post(replace(sheet, horses=(replace(maple, windows=(wet,)),)), farm, state, "en", "us")
    assert "Maple: 100 g liner + rain sheet\nDry first, rug after: Maple" in text


def test_two_pieces_of_one_kind_are_told_apart_by_nickname_else_by_id(
    sheet: Sheet, farm: Barn, state: State, dress: Callable[..., DressSheet]
) -> None:
    """Biscuit has two rain sheets: one is known as the green sheet, the other has no name."""
    biscuit = sheet.horse("Biscuit")
    for wear, shown in ((("biscuit-sheet",), "green sheet"), (("biscuit-old",), "rain sheet (biscuit-old)")):
        one = replace(biscuit, wears_now=(), windows=(dress(wear=wear, change=True),))
        text = round_post(replace(sheet, horses=(one,)), farm, state, "en", "us")
        assert f"Biscuit: {shown}" in text


def test_a_borrowed_piece_is_said_with_whose_it_is(
    sheet: Sheet, farm: Barn, state: State, dress: Callable[..., DressSheet]
) -> None:
    """A spare is a spare; another horse's rug is never taken for one's own."""
    one = replace(sheet.horses[0], wears_now=(), windows=(dress(wear=("juniper-sheet",), change=True),))
    text = round_post(replace(sheet, horses=(one,)), farm, state, "en", "us")
    assert "Maple: Juniper's rain sheet" in text


def test_the_buttons_are_the_horses_that_change_and_the_questions(sheet: Sheet, farm: Barn) -> None:
    """A button each for who changes, in the file's order; the data fits Telegram's 64 bytes."""
    rows = buttons(sheet, farm, "en")
    assert [b.text for b in rows[0]] == ["Maple", "Juniper", "Otis"]
    assert [b.data for b in rows[0]] == ["done:0", "done:1", "done:2"]
    assert all(len(b.data.encode()) <= 64 for row in rows for b in row)
    assert [b.data for b in rows[-2]] == ["done:*", "left"]


def test_an_update_names_only_whom_it_moves_and_why(sheet: Sheet, farm: Barn) -> None:
    """One message: the new weather, the horses moved alike together, from which round on."""
    was, now = sheet.horse("Ned").windows[1], sheet.horse("Ned").windows[1]
    why = (Reason(Code.COLD_HOUR, 21, -5.2, Unit.CELSIUS),)
    now = replace(now, wear=("spare-medium",), fill_g=200.0, why=why)
    moves = [Move("Ned", "evening", sheet.windows[1].start, was, now)]
    assert update(sheet, sheet, moves, farm, "en", "us").splitlines() == [
        "The forecast has changed:",
        "34°F, up to 38°F at noon, rain from 11 am",
        "(0.22 in), gusts 39 mph at noon.",
        "Ned, at the evening round (4:30 pm): spare",
        "  200 g turnout; cold, 23°F at 4 am",
        "Weather data by Open-Meteo.com, 12 min old.",
    ]


# ── the contract's JSON ──────────────────────────────────────────────────────────────────────────────────────────


def test_the_plan_as_json_has_the_contracts_keys_in_their_order(sheet: Sheet, farm: Barn) -> None:
    """Anybody who reads the plan with a program finds what the contract says, in its units."""
    plan = plan_json(sheet, farm)
    assert list(plan) == [
        "barn", "made_at", "forecast", "windows", "horses", "drying", "missing", "checks", "took_ms",
    ]  # fmt: skip
    assert plan["made_at"] == "2026-11-26T06:15:00-05:00"
    assert list(plan["forecast"]) == ["source", "fetched_at", "age_min", "stale"]
    assert plan["windows"][0] == {
        "round": "morning",
        "from": "2026-11-26T07:00:00-05:00",
        "to": "2026-11-26T16:30:00-05:00",
    }
    maple = plan["horses"][0]
    assert list(maple) == ["horse", "offset_c", "offset_sd_c", "windows"]
    assert maple["windows"][0] == {
        "round": "morning",
        "where": "field",
        "wear": ["maple-liner", "maple-sheet"],
        "fill_g": 100,
        "change": True,
        "cold_margin_c": 1.4,
        "cold_at": "2026-11-26T13:00:00-05:00",
        "heat_margin_c": 7.0,
        "heat_at": "2026-11-26T12:00:00-05:00",
        "fill_band_g": [60, 190],
        "extra_energy_pct": 0.0,
        "extra_hay_kg": 0.0,
        "unjudged": [],
        "why": ["gusts 39 mph while hay is outside, noon", "clipped"],
        "cautions": ["Check the straps before the wind, 39 mph at noon."],
    }
    assert plan["missing"] == [{"horse": "Sorrel", "round": "evening", "what": "dry 380–450 g turnout, 75 in"}]
    assert plan["checks"] == [
        {"horse": "Sorrel", "at": "2026-11-26T13:00:00-05:00", "what": "hand under, behind the elbow"}
    ]
    assert plan["drying"][0]["ready_at"] == "2026-11-26T13:00:00-05:00"


def test_why_is_told_in_the_barns_units(sheet: Sheet, farm: Barn) -> None:
    """A metric barn reads kilometres an hour."""
    plan = plan_json(sheet, farm.model_copy(update={"units": "metric"}))
    assert plan["horses"][0]["windows"][0]["why"][0] == "gusts 62 km/h while hay is outside, 12:00"


# ── whatever comes ───────────────────────────────────────────────────────────────────────────────────────────────

anything = st.floats(allow_nan=True, allow_infinity=True) | st.none() | st.sampled_from([0.0, -0.0, nan, inf])
reasons = st.builds(
    Reason,
    code=st.sampled_from(Code),
    hour=st.none() | st.integers(-5, 400),
    value=anything,
    unit=st.sampled_from(Unit),
    garment=st.none() | st.text() | st.just("maple-liner"),
)


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=60, deadline=None)
@given(name=st.text(), why=st.lists(reasons, max_size=5), cold=anything, gram=st.floats(-1e9, 1e9), air=anything)
def test_no_name_and_no_number_breaks_a_post(
    sheet: Sheet, farm: Barn, state: State, name: str, why: list[Reason], cold: float | None, gram: float,
    air: float | None,
) -> None:  # fmt: skip
    """Any name, any reason, any number or none: a post, an update and JSON come out."""
    maple = sheet.horses[0]
    odd = replace(
        maple.windows[0], why=tuple(why), cautions=tuple(why), cold_margin_c=cold, heat_margin_c=cold, fill_g=gram
    )
    sky = tuple(replace(h, temperature_c=air, rain_mm=cold, gust_ms=cold) for h in sheet.sky)
    broken = replace(sheet, horses=(replace(maple, horse=name, windows=(odd, odd), offset_c=cold or 0.0),), sky=sky)
    for language, units in WHOLE:
        assert round_post(broken, farm, state, language, units)
        moves = [Move(name, "morning", sheet.windows[0].start, odd, odd)]
        assert update(broken, broken, moves, farm, language, units)
    assert plan_json(broken, farm)["horses"][0]["horse"] == name


def test_names_stand_as_written(sheet: Sheet, farm: Barn, state: State) -> None:
    """Markup, braces and emoji in a name are the name."""
    for name in ("<b>Bo</b>", "a<b", "{0}", "[x]", "🐴 Bo", "{names}"):
        odd = replace(sheet, horses=(replace(sheet.horses[0], horse=name),))
        assert f"{name}: Maple's 100 g liner" in round_post(odd, farm, state, "en", "us")


def test_the_sheet_survives_the_store_with_the_same_post(sheet: Sheet, farm: Barn, state: State) -> None:
    """What is said after a restart is what was said before."""
    again = load(dump(sheet))
    assert round_post(again, farm, state, "en", "us") == round_post(sheet, farm, state, "en", "us")


def test_a_horse_without_a_window_is_left_out(sheet: Sheet, farm: Barn, state: State) -> None:
    """A plan that could not be made for one horse still serves the others."""
    bare = replace(sheet, horses=(replace(sheet.horses[0], windows=()), *sheet.horses[1:]))
    assert "Maple" not in round_post(bare, farm, state, "en", "us")


def test_a_window_that_is_over_is_still_told(sheet: Sheet, farm: Barn, state: State) -> None:
    """The sky may begin after the window does: what is known is told, the rest is not invented."""
    later = replace(sheet, sky=sheet.sky[20:], made_at=sheet.made_at + timedelta(days=1))
    assert "the weather of these hours is not known" in round_post(later, farm, state, "en", "us").lower().replace(
        "\n", " "
    )
