"""What would change the advice: every answer is the plan itself made again, so the plan is what it is held against."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules import tipping
from rules.offset import Common, Evidence, Schooling, schooled
from rules.plan import plan, price
from rules.pricing import Prices
from rules.question import Piece, Question, Stay, Wishes
from rules.tipping import By, Choice, Turn, by_barn, by_offset, by_reports, by_weather, nearest
from rules.weather import Hours
from tests.stable import FIELD, JANUARY_NOON_S, STALL, ask, liner, sheet, turnout, unknown, wearer, weather

NOW_S = JANUARY_NOON_S
UNTAUGHT = Schooling((), NOW_S, voices=("Inés", "Theo"))
CLOSET = [sheet(), turnout(100), turnout(200), turnout(300)]


def asked(hours: Hours, closet: list[Piece] | None = None, **facts: object) -> Question:
    """Maple alone, for one window of a day."""
    return ask(hours, [wearer("Maple", FIELD, **facts)], CLOSET if closet is None else closet)  # type: ignore[arg-type]


def worn(question: Question, **changed: object) -> tuple[str, ...]:
    """What the plan puts on Maple where these fields of the Wearer are changed."""
    one = replace(question, wearers=(replace(question.wearers[0], **changed),))  # type: ignore[arg-type]
    return plan(one).dresses["Maple"][0].wear


def by(found: list[Turn], what: By) -> Turn:
    """The one turn of this kind."""
    (one,) = [turn for turn in found if turn.by == what]
    return one


def test_so_many_reports_of_cold_change_what_it_wears_and_one_fewer_do_not() -> None:
    """Learned for real: the plan with the offset after so many reports says the same."""
    question = asked(weather(-9.0, 6.0))
    choice = Choice(question, "Maple")
    turn = by(list(by_reports(choice, UNTAUGHT)), By.COLD_SAID)
    assert 1 <= turn.amount <= 6
    report, hour = choice.seen("cold") or pytest.fail("nothing was judged")
    assert turn.hour == hour
    fewer, enough = (schooled(question.wearers[0], UNTAUGHT.after(report, int(turn.amount) - less)) for less in (1, 0))
    assert worn(replace(question, wearers=(fewer,)), must_clothe=True) == choice.wear
    assert worn(replace(question, wearers=(enough,)), must_clothe=True) == turn.wear != choice.wear


@pytest.mark.parametrize(("air", "what", "side"), [(6.0, By.SWEATING_SAID, -1), (-4.0, By.COLD_SAID, 1)])
def test_reports_of_sweating_make_it_lighter_and_of_cold_heavier(air: float, what: By, side: int) -> None:
    """Never the other way about: of clothes that are as warm nothing is said."""
    question = asked(weather(air, 6.0), clip="trace")
    fills = {piece.garment.id: piece.garment.fill_g for piece in question.pieces}
    choice = Choice(question, "Maple")
    turn = by(list(by_reports(choice, UNTAUGHT)), what)
    assert side * (sum(fills[g] for g in turn.wear) - sum(fills[g] for g in choice.wear)) > 0


def test_one_report_of_cold_clothes_a_bare_horse() -> None:
    """Whatever was learned of it: for a day it is not left bare."""
    choice = Choice(asked(weather(6.0, 6.0)), "Maple")
    assert choice.wear == ()
    turn = by(list(by_reports(choice, UNTAUGHT)), By.COLD_SAID)
    assert (turn.amount, turn.wear) == (1, ("maple-sheet",))


def test_a_horse_of_which_much_is_known_takes_more_reports_to_move() -> None:
    """Thirty times fine in just this weather, by both people."""
    question = asked(weather(-9.0, 6.0))
    choice = Choice(question, "Maple")
    report, _ = choice.seen("comfortable") or pytest.fail("nothing was judged")
    calm = tuple(
        replace(report, at_s=NOW_S - day * 86_400, who=who) for day in range(1, 16) for who in ("Inés", "Theo")
    )
    known = replace(UNTAUGHT, evidence=calm)
    often = {turn.by: turn.amount for turn in by_reports(choice, known)}
    fresh = {turn.by: turn.amount for turn in by_reports(choice, UNTAUGHT)}
    assert often.get(By.COLD_SAID, 7) > fresh[By.COLD_SAID]


def test_a_report_is_weighed_by_what_the_balance_says_of_that_hour_offset_left_out() -> None:
    """The same margins whatever has been learned of the horse: what was learned is no evidence."""
    found = []
    for offset in (0.0, 2.0):
        question = asked(weather(-6.0, 6.0), closet=[turnout(200)], offset_c=offset)
        one, _ = Choice(question, "Maple").seen("cold") or pytest.fail("nothing was judged")
        found.append((one.cold_margin_c, one.heat_margin_c, one.bears_c))
    assert found[0] == pytest.approx(found[1], abs=1e-6)


@pytest.mark.parametrize(("what", "side"), [(By.COLDER, -1), (By.WARMER, 1)])
def test_so_many_degrees_change_what_it_wears_and_one_fewer_do_not(what: By, side: int) -> None:
    """In the whole forecast; in whole degrees."""
    question = asked(weather(-6.0, 6.0))
    turn = by(list(by_weather(Choice(question, "Maple"))), what)
    for degrees, wear in ((turn.amount, turn.wear), (turn.amount - 1, Choice(question, "Maple").wear)):
        air = question.hours.temperature_c + side * degrees
        assert worn(replace(question, hours=replace(question.hours, temperature_c=air))) == wear


def test_rain_would_put_a_bare_horse_in_its_sheet_and_a_dry_day_take_it_off() -> None:
    """Only one of them is ever said."""
    dry = list(by_weather(Choice(asked(weather(3.0, 8.0), [sheet()]), "Maple")))
    assert by(dry, By.RAIN).wear == ("maple-sheet",)
    wet = list(by_weather(Choice(asked(weather(3.0, 8.0, rain=1.0), [sheet()]), "Maple")))
    assert by(wet, By.DRY).wear == ()


def test_nobody_is_told_of_rain_in_hard_frost() -> None:
    """It would be snow."""
    assert By.RAIN not in {turn.by for turn in by_weather(Choice(asked(weather(-8.0, 3.0)), "Maple"))}


def test_wind_is_told_as_the_gust_that_would_do() -> None:
    """Stronger than the forecast's, and no hurricane."""
    turn = by(list(by_weather(Choice(asked(weather(-4.0, 3.0, gust=5.0)), "Maple"))), By.WIND)
    assert 5.0 < turn.amount <= 30.0


def test_neither_rain_nor_wind_moves_a_horse_in_its_stall() -> None:
    """Nor is any such thing said."""
    question = ask(weather(3.0), [wearer("Maple", STALL)], CLOSET)
    assert not {By.RAIN, By.DRY, By.WIND} & {turn.by for turn in by_weather(Choice(question, "Maple"))}


def test_the_nearest_other_offset_on_each_side() -> None:
    """A half degree less does not do; nothing beyond what an offset may be."""
    question = asked(weather(-6.0, 6.0))
    choice = Choice(question, "Maple")
    found = list(by_offset(choice))
    assert [turn.by for turn in found] == [By.FEELS_MORE, By.FEELS_LESS]
    for turn, side in zip(found, (1, -1)):
        assert 0 < turn.amount <= 6
        assert worn(question, offset_c=side * turn.amount) == turn.wear
        assert worn(question, offset_c=side * (turn.amount - 0.5)) == choice.wear
    edge = Choice(asked(weather(-6.0, 6.0), offset_c=6.0), "Maple")
    assert By.FEELS_MORE not in {turn.by for turn in by_offset(edge)}


def test_without_a_forecast_nothing_is_said_of_reports() -> None:
    """No margin, no lesson."""
    choice = Choice(asked(unknown()), "Maple")
    assert list(by_reports(choice, UNTAUGHT)) == []
    assert list(by_weather(choice)) == []


def test_a_spare_that_the_plan_gives_to_another_is_promised_to_nobody() -> None:
    """Birch, clipped, needs it more: whatever turns, Maple has no part in it."""
    spare = turnout(300, None)
    horses = [wearer("Maple", FIELD), wearer("Birch", FIELD, clip="full")]
    question = ask(weather(-14.0, 9.0), horses, [sheet(), spare])
    assert plan(question).dresses["Birch"][0].wear == (spare.garment.id,)
    choice = Choice(question, "Maple")
    assert choice.wear == plan(question).dresses["Maple"][0].wear
    found = [*by_reports(choice, UNTAUGHT), *by_offset(choice), *by_weather(choice)]
    assert not any(spare.garment.id in turn.wear for turn in found)


def test_a_spare_that_people_were_told_to_put_on_another_stays_there() -> None:
    """Also where the plan alone would give it to this one."""
    spare = turnout(300, None)
    question = ask(weather(-14.0, 9.0), [wearer("Maple", FIELD, clip="full"), wearer("Birch", FIELD)], [spare])
    assert Choice(question, "Maple").wear == (spare.garment.id,)
    birch = replace(question.wearers[1], told=((spare.garment.id,),))
    lent = Choice(replace(question, wearers=(question.wearers[0], birch)), "Maple")
    assert lent.wear == ()
    assert list(by_weather(lent)) == []


def test_what_the_barn_learned_of_its_wind_is_named_where_it_decides() -> None:
    """With the number, and what would be worn without it; not where it decides nothing."""
    windy = replace(UNTAUGHT, common=Common(wind=2.5))
    question = asked(weather(-6.0, 8.0))
    there = replace(question, site=replace(question.site, wind_factor=2.5))
    choice = Choice(there, "Maple")
    (turn,) = by_barn(choice, windy)
    assert (turn.by, turn.amount) == (By.WIND_AS_TOLD, 2.5)
    assert turn.wear != choice.wear
    assert list(by_barn(Choice(question, "Maple"), UNTAUGHT)) == []


def test_turns_to_the_same_clothes_are_told_together() -> None:
    """In the order in which they were found."""
    colder, rain, warmer = Turn(By.COLDER, 3, ("a",)), Turn(By.RAIN, 1, ("a",)), Turn(By.WARMER, 2, ())
    assert nearest([colder, warmer, rain]) == {("a",): [colder, rain], (): [warmer]}


def test_a_horse_that_is_not_asked_about_is_a_key_error() -> None:
    """As in every other table of horses."""
    with pytest.raises(KeyError):
        _ = Choice(asked(weather()), "Nobody").wear


def test_repeated_reports_come_from_people_in_turn_half_a_day_apart() -> None:
    """So each counts in full, and no one voice alone is taken for the herd's."""
    report = Evidence(0, "sweating", 9.0, 2.0)
    alone = replace(UNTAUGHT, voices=("Inés",))
    assert UNTAUGHT.after(report, 4).mean_c < alone.after(report, 4).mean_c < 0
    assert UNTAUGHT.after(report, 4).doubt_c < alone.after(report, 4).doubt_c


@settings(max_examples=25)
@given(
    air=st.floats(-30, 30),
    wind=st.floats(0, 25),
    rain=st.sampled_from([0.0, 0.2, 3.0]),
    unknown_from=st.integers(0, 24),
    place=st.sampled_from([FIELD, STALL]),
    closet=st.lists(st.sampled_from([*CLOSET, liner(), turnout(300, None)]), unique_by=lambda p: p.garment.id),
    worn_now=st.booleans(),
    bare=st.booleans(),
)
def test_in_any_weather_with_any_clothes_every_turn_is_to_something_else_and_to_the_right_side(
    air: float,
    wind: float,
    rain: float,
    unknown_from: int,
    place: Stay,
    closet: list[Piece],
    worn_now: bool,
    bare: bool,
) -> None:
    """Half a forecast, no clothes, a wish for bare, nobody knows what it wears: never a fault."""
    hours = weather(air, wind, rain=rain)
    gone = np.arange(len(hours)) >= unknown_from
    hours = replace(hours, temperature_c=np.where(gone, np.nan, hours.temperature_c))
    maple = wearer("Maple", place, place, wears=() if worn_now else None, wishes=Wishes(keep_bare=bare))
    choice = Choice(ask(hours, [maple], closet), "Maple")
    for turn in [*by_reports(choice, UNTAUGHT), *by_offset(choice), *by_weather(choice)]:
        assert turn.wear != choice.wear
        assert turn.amount >= 0
        if turn.by in {By.COLD_SAID, By.FEELS_MORE, By.COLDER}:
            assert choice.warmth(turn.wear) > choice.warmth(choice.wear)
        if turn.by in {By.SWEATING_SAID, By.FEELS_LESS, By.WARMER}:
            assert choice.warmth(turn.wear) < choice.warmth(choice.wear)


def test_a_question_costs_no_more_than_some_forty_plans_of_the_one_horse(monkeypatch: pytest.MonkeyPatch) -> None:
    """However far the next outfit is, whatever there is to wear: counted, for time is measured elsewhere."""
    asked_for: list[object] = []

    def counted(question: Question, only: frozenset[str] | None = None) -> Prices:
        asked_for.append(only)
        return price(question, only)

    monkeypatch.setattr(tipping, "price", counted)
    windy = replace(UNTAUGHT, common=Common(1.5, 0.5, 2.0))
    for air in (-14.0, -4.0, 3.0, 9.0):
        asked_for.clear()
        choice = Choice(asked(weather(air, 6.0), [*CLOSET, turnout(400, None)]), "Maple")
        assert list(by_reports(choice, windy)) + list(by_offset(choice)) + list(by_weather(choice))
        list(by_barn(choice, windy))
        assert len(asked_for) <= 42
        assert all(only == {"Maple"} for only in asked_for)
