"""Every decision says why: one to three reasons, the most decisive first, with the number that mattered."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.plan import plan
from rules.question import Stay
from rules.reason import Code, Reason, Unit
from tests.stable import FIELD, STALL, ask, joined, liner, sheet, turnout, wearer, weather

WARDROBE = [sheet(), turnout(200), liner()]


def why(sky, horse=None, pieces=WARDROBE, window: int = 0) -> list[Reason]:
    return list(plan(ask(sky, [horse or wearer()], pieces)).dresses["Maple"][window].why)


def codes(*asked, **more) -> list[Code]:
    return [reason.code for reason in why(*asked, **more)]


def test_warm_enough_bare_tells_how_much_there_is_to_spare():
    (first, *_) = why(weather(5.0, 1.0))
    assert first.code is Code.WARM_ENOUGH_BARE
    assert first.unit is Unit.KELVIN
    assert first.value is not None
    assert first.value > 0


def test_cold_alone_names_the_coldest_hour():
    sky = joined(weather(-12.0, 1.0, hours=5), weather(-15.0, 1.0, hours=1), weather(-12.0, 1.0, hours=18))
    (first, *_) = why(sky, wearer(clip="full"))
    assert (first.code, first.hour, first.value) == (Code.COLD_HOUR, 5, -15.0)


def test_wind_is_named_before_the_cold_it_drives():
    assert codes(weather(-6.0, 9.0, gust=16.0))[0] is Code.GUSTS


def test_hay_that_keeps_a_horse_out_of_its_shed_is_named():
    horse = wearer("Maple", Stay("field", "shed", "outside"), FIELD)
    assert codes(weather(-6.0, 9.0, gust=16.0), horse)[0] is Code.GUSTS_HAY_OUTSIDE


def test_rain_tells_how_much_falls_in_the_window():
    (first, *_) = why(weather(4.0, 4.0, rain=1.0), wearer(clip="trace"))
    assert first.code is Code.RAIN
    assert first.value == pytest.approx(12.0)
    assert first.unit is Unit.WATER


@pytest.mark.parametrize(
    ("facts", "code"),
    [
        ({"clip": "hunter"}, Code.CLIPPED),
        ({"species": "donkey", "weight_kg": 180}, Code.NO_WINTER_COAT),
        ({"age_years": 28}, Code.OLD),
        ({"age_years": 0.6, "weight_kg": 230}, Code.YOUNG),
        ({"condition": 2.5}, Code.THIN),
        ({"sick": True}, Code.SICK),
        ({"coat": "fine"}, Code.THIN_COAT),
    ],
    ids=lambda value: str(value),
)
def test_what_sets_this_horse_apart_is_named(facts, code):
    assert code in codes(weather(-16.0, 1.0), wearer(**facts))


def test_the_worn_rug_stays_for_want_of_a_better_reason_to_change():
    """The 200 would be a touch better tonight; nobody goes round for a touch."""
    horse = wearer(clip="trace", wears=("maple-150",))
    assert Code.NOT_WORTH_A_CHANGE in codes(weather(-11.0, 3.0), horse, [turnout(150), turnout(200)])


def test_somebody_who_saw_it_cold_is_believed_first():
    assert codes(weather(3.0, 2.0), wearer(must_clothe=True))[0] is Code.SEEN_COLD


def test_the_vets_order_is_named_as_such():
    assert codes(weather(8.0, 1.0), wearer(vet_clothes=True))[0] is Code.VET_CLOTHES


def test_a_stall_speaks_of_no_wind():
    told = codes(weather(-10.0, 12.0, gust=20.0), wearer("Maple", STALL, STALL, clip="full"))
    assert Code.GUSTS not in told
    assert Code.COLD_RAIN_AND_WIND not in told


@settings(max_examples=40, deadline=None)
@given(
    st.floats(-20, 20), st.floats(0, 14), st.sampled_from([0.0, 1.0]),
    st.sampled_from([FIELD, STALL]), st.sampled_from(["none", "full"]), st.booleans(),
)  # fmt: skip
def test_there_are_one_to_three_reasons_and_none_twice(temperature, wind, rain, stay, clip, dressed):
    horse = wearer("Maple", stay, stay, clip=clip, wears=("maple-200",) if dressed else ())
    for window in (0, 1):
        told = codes(weather(temperature, wind, rain=rain), horse, window=window)
        assert 1 <= len(told) <= 3
        assert len(set(told)) == len(told)
