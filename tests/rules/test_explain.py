"""The hours behind a decision, and the margins that horses really had in what they wore."""

import numpy as np
import pytest

from rules.plan import explain, plan, worn
from tests.stable import FIELD, STALL, ask, joined, liner, sheet, turnout, unknown, wearer, weather

WARDROBE = [sheet(), turnout(200), liner()]


def test_every_outfit_has_every_hour_of_its_window_and_the_chosen_one_comes_first():
    question = ask(joined(weather(-6.0, 6.0, hours=12), weather(2.0, hours=12)), [wearer(clip="trace")], WARDROBE)
    rows = explain(question, "Maple")
    told = plan(question).dresses["Maple"]
    for window in (0, 1):
        of_window = [row for row in rows if row.window == window]
        assert of_window[0].chosen
        assert of_window[0].wear == told[window].wear
        outfits = {row.wear for row in of_window}
        assert len(of_window) == 12 * len(outfits)
        assert {row.hour for row in of_window} == set(range(12 * window, 12 * window + 12))


def test_a_row_shows_what_the_horse_really_feels():
    """Wind at its height is less than at ten metres; clothes have a resistance, bare skin none."""
    rows = explain(ask(weather(-6.0, 6.0), [wearer()], WARDROBE), "Maple")
    bare = next(row for row in rows if row.wear == ())
    dressed = next(row for row in rows if row.wear == ("maple-200",))
    assert 0 < bare.wind_ms < 6.0
    assert bare.temperature_c == -6.0
    assert bare.clothes == 0.0 < dressed.clothes
    assert dressed.conductance < bare.conductance
    assert dressed.cold_margin_c > bare.cold_margin_c


def test_a_horse_the_question_does_not_have_is_a_key_error():
    with pytest.raises(KeyError):
        explain(ask(weather(), [wearer()], []), "Nobody")


def test_what_is_worn_is_followed_from_place_to_place():
    """Half the hours in the field, half in the stall, in the same clothes throughout."""
    both = worn(ask(weather(-4.0, 8.0), [wearer("Maple", FIELD, STALL, wears=("maple-200",))], WARDROBE))["Maple"][0]
    out, inside = (
        worn(ask(weather(-4.0, 8.0), [wearer("Maple", stay, stay, wears=("maple-200",))], WARDROBE))["Maple"][0]
        for stay in (FIELD, STALL)
    )
    np.testing.assert_allclose(both, [*out[:12], *inside[12:]], atol=1e-9)


def test_nobody_said_counts_as_bare_and_a_piece_no_longer_known_as_absent():
    silent, bare, lost = (
        worn(ask(weather(-4.0), [wearer(wears=wears)], WARDROBE))["Maple"][0]
        for wears in (None, (), ("sold long ago",))
    )
    np.testing.assert_array_equal(silent, bare)
    np.testing.assert_array_equal(lost, bare)


def test_hours_without_weather_weigh_nothing():
    cold, heat = worn(ask(unknown(), [wearer()], []))["Maple"]
    assert np.isnan(cold).all()
    assert np.isnan(heat).all()
    assert worn(ask(weather(), [], [])) == {}
