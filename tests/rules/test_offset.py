"""What a barn may rely on when its reports teach Haybell a horse."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules import parameters as p
from rules.horse import Horse
from rules.offset import WINDS, Common, Evidence, learn, prior_sd, silence_says

DAY = 86400
NOW = 100 * DAY
WARM, COLD = ("sweating", "hot"), ("cold", "shivering")

margins = st.floats(-15, 25)
evidence = st.builds(
    Evidence,
    at_s=st.integers(0, NOW),
    sign=st.sampled_from((*WARM, "comfortable", *COLD)),
    cold_margin_c=margins,
    heat_margin_c=margins,
    who=st.sampled_from(("Inés", "Theo", "Ruth")),
    weight=st.sampled_from((1.0, 0.2)),
)
some = st.lists(evidence, max_size=12)


def seen(sign: str, day: float = 100, cold: float = 5, heat: float = 6, who: str = "Inés") -> Evidence:
    """A sign on a horse that was inside its comfort by so much."""
    return Evidence(int(day * DAY), sign, cold, heat, who=who)


def test_a_horse_nobody_has_spoken_of_feels_the_cold_as_the_model_says():
    """No evidence: centred on nothing, as unsure as horses differ."""
    learned = learn([], NOW)
    assert learned.mean_c == pytest.approx(0)
    assert learned.sd_c == pytest.approx(p.UNSURE, abs=0.05)
    assert learned.shifts == ()


@pytest.mark.parametrize("sign", WARM)
def test_sweating_where_the_model_saw_room_means_less_clothing(sign):
    """A horse too warm at a heat margin of 6 K feels the cold less than the model says."""
    assert -2 < learn([seen(sign)], NOW).mean_c < -0.5


@pytest.mark.parametrize("sign", COLD)
def test_a_cold_horse_where_the_model_saw_room_means_more_clothing(sign):
    """A horse cold at a cold margin of 5 K feels the cold more than the model says."""
    assert 0.5 < learn([seen(sign)], NOW).mean_c < 2


def test_a_sign_the_model_expected_teaches_next_to_nothing():
    """Shivering at 12 K below the critical temperature is no news."""
    expected, news = (learn([seen("shivering", cold=c)], NOW).mean_c for c in (-12, 3))
    assert abs(expected) < 0.15 * news


@pytest.mark.parametrize("sign", ["wet", "rubbed", "unwell"])
def test_signs_that_say_nothing_of_warmth_move_nothing(sign):
    """Wet, rubbed and unwell are for other parts of the barn's day."""
    assert learn([seen(sign)], NOW).shifts == (0.0,)


def test_a_sign_explained_by_something_else_moves_nothing():
    """Sweat after work says nothing about clothes."""
    assert learn([replace(seen("sweating"), explained=True)], NOW).mean_c == pytest.approx(0)


def test_a_sign_at_margins_nobody_knows_moves_nothing():
    """Where nobody knows what it wore, the margin is not a number, and the estimate stays one."""
    assert learn([seen("cold", cold=float("nan"))], NOW).mean_c == pytest.approx(0)


def test_a_report_from_after_the_moment_asked_about_is_left_out():
    """What was known on a past day can be asked for."""
    assert learn([seen("cold", day=101)], NOW) == replace(learn([], NOW), shifts=(0.0,))


@given(some, st.randoms())
def test_the_order_of_reports_does_not_matter(reports, random):
    """Two phones that were out of reach may deliver late."""
    shuffled = random.sample(reports, len(reports))
    assert learn(shuffled, NOW).mean_c == pytest.approx(learn(reports, NOW).mean_c, abs=1e-9)


@given(some)
def test_the_estimate_stays_within_its_bound_and_never_becomes_certain(reports):
    """No flood of reports drives a horse out of what horses are."""
    learned = learn(reports, NOW)
    assert abs(learned.mean_c) < p.OFFSET_MOST
    assert 0.2 < learned.sd_c < p.OFFSET_MOST


@given(some)
def test_the_shifts_add_up_to_the_estimate(reports):
    """What taught it is the whole of what was learned."""
    learned = learn(reports, NOW)
    assert sum(learned.shifts) == pytest.approx(learned.mean_c, abs=1e-9)


@given(some, evidence)
def test_undoing_the_latest_report_takes_back_its_shift(reports, last):
    """The last report alone in its half day shifts by what leaving it out takes away."""
    last = replace(last, at_s=NOW)
    reports = [r for r in reports if r.at_s < NOW - p.REPEATED_WITHIN * 3600]
    after = learn([*reports, last], NOW)
    assert after.mean_c - after.shifts[-1] == pytest.approx(learn(reports, NOW).mean_c, abs=1e-9)


@given(st.sampled_from(WARM), st.sampled_from(COLD), margins, margins)
def test_a_warm_sign_never_raises_and_a_cold_sign_never_lowers(warm, cold, c, h):
    """Whatever the margins were, sweat does not lead to more clothes nor shivering to fewer."""
    assert learn([seen(warm, cold=c, heat=h)], NOW).mean_c <= 1e-9
    assert learn([seen(cold, cold=c, heat=h)], NOW).mean_c >= -1e-9


@given(st.lists(st.sampled_from(("Inés", "Theo")), min_size=1, max_size=20), st.floats(6, 20), st.floats(8, 20))
def test_reports_of_comfort_with_room_on_both_sides_only_make_surer(people, c, h):
    """A comfortable horse where the model expects comfort: each report leaves the estimate no wider."""
    reports = [seen("comfortable", day=k, cold=c, heat=h, who=who) for k, who in enumerate(people)]
    spreads = [learn(reports[:n], NOW).sd_c for n in range(len(reports) + 1)]
    assert np.all(np.diff(spreads) <= 1e-6)


def test_one_person_however_often_weighs_less_than_two_who_agree():
    """Ten reports in a row from one person move less than two days' reports from each of three people."""
    one = [seen("sweating", day=80 + k, heat=9) for k in range(10)]
    three = [seen("sweating", day=80 + k, heat=9, who=who) for k in range(2) for who in ("Inés", "Theo", "Ruth")]
    assert abs(learn(one, NOW).mean_c) < 2 < abs(learn(three, NOW).mean_c)


@given(st.integers(1, 200), st.sampled_from((*WARM, *COLD)), st.floats(2, 25), st.floats(2, 25))
def test_one_person_alone_never_moves_a_horse_by_more_than_two_degrees(n, sign, c, h):
    """However many reports: where the model saw a comfortable horse, one voice is bounded."""
    reports = [seen(sign, day=100 - k, cold=c, heat=h) for k in range(min(n, 100))]
    assert abs(learn(reports, NOW).mean_c) < 2


@pytest.mark.parametrize("sign", WARM)
def test_a_word_that_nobody_else_has_said_makes_no_horse_surer(sign):
    """The plan goes by it no more after a day and a half, and hedges as if it had not been said."""
    horse = learn([seen(sign, day=90 + k) for k in range(10)], NOW)
    assert horse.sd_c >= learn([], NOW).sd_c - 1e-6
    three = learn([seen(sign, day=90 + k, who=who) for k in range(10) for who in ("Inés", "Theo", "Ruth")], NOW)
    assert three.sd_c < horse.sd_c


def test_the_same_report_repeated_within_minutes_counts_about_once():
    """An impatient thumb is not new evidence."""
    once = learn([seen("cold")], NOW).mean_c
    often = learn([seen("cold", day=100 - k / 1440) for k in range(10)], NOW).mean_c
    assert often == pytest.approx(once, abs=0.1)


def test_old_reports_fade():
    """A sign of one half-life ago moves about half as much; one of last winter next to nothing."""
    days = float(p.REPORT_HALF_LIFE)
    late = int(5 * days * DAY)
    fresh, half, old = (learn([seen("cold", day=5 * days - age * days, cold=2)], late).mean_c for age in (0, 1, 5))
    assert half == pytest.approx(fresh / 2, rel=0.25)
    assert old < 0.1 * fresh


def test_a_clip_makes_what_was_known_before_it_count_less():
    """The estimate goes back towards the model and becomes wider."""
    reports = [seen("cold", day=70 + k, who=who) for k, who in enumerate(("Inés", "Theo", "Ruth") * 3)]
    before, after = learn(reports, NOW), learn(reports, NOW, widen_at_s=[90 * DAY])
    assert 0 < after.mean_c < before.mean_c
    assert after.sd_c > before.sd_c


def test_honest_reports_from_several_people_find_a_horse_that_feels_the_cold():
    """Thirty signs drawn from a horse 3 K off the model, with one report in ten wrong, find it within 1.2 K."""
    rng = np.random.default_rng(3)
    reports = []
    for k in range(30):
        cold = rng.uniform(-1, 8)
        feels = cold - 3 + rng.logistic(0, 1.5)
        truth = "shivering" if feels < -3 else "cold" if feels < 0 else "comfortable"
        sign = str(rng.choice((*WARM, "comfortable", *COLD))) if rng.random() < 0.1 else truth
        reports.append(seen(sign, day=60 + k, cold=cold, heat=15 - cold, who=("Inés", "Theo", "Ruth")[k % 3]))
    assert learn(reports, NOW).mean_c == pytest.approx(3, abs=1.2)


def test_a_hardy_horse_found_cold_within_what_the_plan_lets_it_bear_is_learned_from():
    """The plan calls a small lack fine; people who find it cold there must move it as if it had been called warm."""
    lacking = seen("cold", cold=-3)
    borne = replace(lacking, bears_c=5)
    assert learn([borne], NOW).mean_c > 2 * learn([lacking], NOW).mean_c


def test_a_warm_sign_on_a_bare_horse_counts_less_and_a_cold_one_in_full():
    """Nothing can be taken off it; but something can be put on."""
    for sign, less in (("hot", True), ("sweating", True), ("cold", False), ("comfortable", False)):
        clothed, bare = (learn([replace(seen(sign), bare=b)], NOW).mean_c for b in (False, True))
        assert (abs(bare) < abs(clothed)) == less


def test_the_model_is_less_sure_of_a_pony_and_of_the_very_old():
    """Before anybody said anything their band is wider, and one sign moves them further."""
    horse, pony, old = Horse("A"), Horse("B", species="pony", weight_kg=220), Horse("C", age_years=29)
    sure, wide, aged = (learn([], NOW, prior_sd_c=prior_sd(one)).sd_c for one in (horse, pony, old))
    assert sure < aged < wide
    sign = [seen("sweating", heat=2)]
    assert learn(sign, NOW, prior_sd_c=prior_sd(pony)).mean_c < learn(sign, NOW).mean_c < 0


@given(some)
def test_what_one_person_alone_brought_down_is_in_doubt_and_never_more_than_that(reports):
    """The doubt gives back at most what lies below nothing, so no horse is let bear less than by the model for it."""
    learned = learn(reports, NOW)
    assert 0 <= learned.doubt_c <= max(0.0, -learned.mean_c) + 1e-9


@given(st.integers(1, 12), st.sampled_from(WARM), st.floats(0, 20))
def test_one_persons_word_against_the_clothes_is_all_in_doubt(n, sign, heat):
    """However often: the horse is let lack no more than by the model."""
    learned = learn([seen(sign, day=99 - k, heat=heat) for k in range(n)], NOW)
    assert learned.doubt_c == pytest.approx(-learned.mean_c, abs=1e-6)


def test_one_persons_word_is_acted_on_at_once_and_not_for_ever():
    """After a day and a half without anybody else to say it the plan goes by the model again; two who agree stay."""
    fresh, old = (learn([seen("sweating", day=day)], NOW) for day in (99.5, 97))
    assert fresh.stale_c == 0 < fresh.doubt_c
    assert old.stale_c == old.doubt_c == pytest.approx(-old.mean_c, abs=1e-6)
    people = ("Inés", "Theo", "Ruth")
    agreed = learn([seen("sweating", day=90 + k, heat=8, who=who) for k in range(3) for who in people], NOW)
    assert agreed.mean_c + agreed.stale_c < -2.5


def test_what_three_people_agree_on_stands_for_the_most_part():
    """Without any one of them the other two say it still."""
    people = ("Inés", "Theo", "Ruth")
    learned = learn([seen("sweating", day=90 + k, heat=8, who=who) for k in range(3) for who in people], NOW)
    assert learned.mean_c < -3
    assert learned.doubt_c < 0.4 * -learned.mean_c


@given(st.sampled_from(COLD), st.integers(1, 12), margins)
def test_a_cold_horse_is_never_doubted(sign, n, cold):
    """One voice is enough to dress it warmer."""
    learned = learn([seen(sign, day=99 - k, cold=cold) for k in range(n)], NOW)
    assert learned.mean_c >= -1e-9
    assert learned.doubt_c <= 1e-9


def test_a_round_without_a_remark_says_little_and_soon_nothing():
    """It makes surer by less than a word does."""
    assert 0 < silence_says(DAY) < 0.5
    assert silence_says(-1) == silence_says(200 * DAY) == 0
    word, silent = (learn([replace(seen("comfortable", cold=0), weight=w)], NOW) for w in (1.0, silence_says(0)))
    assert learn([], NOW).mean_c > silent.mean_c > word.mean_c


def test_what_the_whole_barn_shares_is_no_part_of_the_offset():
    """A sign is weighed against the margins it had in the wind that blows here, in fill that gives what it gives."""
    winds = tuple((5 - 3 * factor, 6 + 3 * factor) for factor in WINDS)
    one = replace(seen("cold", cold=2, heat=9), winds=winds, fill_g=200, bears_c=4)
    here = one.under(Common(wind=1.6, fill_gives_c=1.0, bears_less_c=3.0))
    assert here.cold_margin_c == pytest.approx(5 - 3 * 1.6 + 2)
    assert here.heat_margin_c == pytest.approx(6 + 3 * 1.6 - 2)
    assert here.bears_c == 1
    assert one.under(Common()) == one


@given(st.floats(0.5, 3.0))
def test_margins_between_the_winds_that_are_kept_lie_between_theirs(wind):
    """So that the barn's own wind may be anything."""
    one = replace(seen("cold"), cold_margin_c=4.0, winds=tuple((5 - factor, 6 + factor) for factor in WINDS))
    assert one.under(Common(wind=wind)).cold_margin_c == pytest.approx(5 - wind, abs=0.15)
