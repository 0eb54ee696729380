"""The plan as a whole: what a barn reads in the morning."""

from dataclasses import replace
from itertools import product

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.edges import FORBIDDEN
from rules.outfit import Outfit, Setting, refused
from rules.plan import choose, explain, plan, price, share_out, worn
from rules.question import Costs, Piece, Question, Stay, Wearer, Wishes
from rules.reason import Code
from tests.stable import FIELD, STALL, ask, joined, liner, sheet, turnout, unknown, wearer, weather

WARDROBE = [sheet(), turnout(200), liner()]
GALE_AND_RAIN = weather(3.0, 11.0, gust=19.0, rain=2.0)


def dress(question: Question, window: int = 0, horse: str = "Maple"):
    return plan(question).dresses[horse][window]


def codes(reasons) -> list[Code]:
    return [reason.code for reason in reasons]


# --- what a horseman would sign


def test_a_healthy_horse_in_its_winter_coat_stays_bare_in_dry_cold():
    """Minus five and hardly any wind in January: it wants hay, not clothes."""
    chosen = dress(ask(weather(-5.0, 1.0), [wearer()], WARDROBE))
    assert chosen.wear == ()
    assert codes(chosen.why)[0] is Code.WARM_ENOUGH_BARE


def test_the_same_weather_dresses_a_clipped_one():
    chosen = dress(ask(weather(-5.0, 1.0), [wearer(clip="full")], WARDROBE))
    assert chosen.fill_g >= 150
    assert Code.CLIPPED in codes(chosen.why)


def test_a_shell_goes_on_where_cold_rain_and_wind_meet():
    """It is the wet and the wind that chill, so a sheet may do where cold alone asks for nothing."""
    chosen = dress(ask(GALE_AND_RAIN, [wearer()], WARDROBE))
    assert chosen.wear
    assert chosen.wear[-1] in ("maple-sheet", "maple-200")
    assert codes(chosen.why)[0] is Code.COLD_RAIN_AND_WIND


def test_a_shed_helps_a_horse_that_eats_in_it_and_not_one_that_eats_outside():
    """The hay decides where the horse stands."""
    outside = [wearer("Maple", Stay("field", "shed", "outside"), Stay("field", "shed", "outside"))]
    inside = [wearer("Maple", Stay("field", "shed", "in shelter"), Stay("field", "shed", "in shelter"))]
    assert dress(ask(GALE_AND_RAIN, inside, WARDROBE)).wear == ()
    told = dress(ask(weather(-6.0, 11.0), outside, WARDROBE))
    assert told.wear
    assert codes(told.why)[0] is Code.GUSTS_HAY_OUTSIDE


def test_nothing_is_changed_for_a_little():
    """A rug that is a touch too much for the night stays on: somebody would have to go round for it."""
    horse = wearer("Maple", FIELD, STALL, clip="trace", wears=("maple-200",))
    sky = joined(weather(-4.0, 6.0, hours=12), weather(-6.0, 2.0, hours=12))
    day, night = plan(ask(sky, [horse], WARDROBE)).dresses["Maple"]
    assert day.wear == night.wear == ("maple-200",)
    assert not day.change
    assert not night.change


def test_a_midday_round_is_used_where_it_pays_and_only_where_there_is_one():
    """A bitter morning, a spring noon: with a round at noon the rug comes off, without one a middle way is worn."""
    dawn, noon = weather(-12.0, 4.0, hours=6), weather(14.0, 1.0, hours=6)
    pieces = [turnout(300), turnout(100)]
    with_round = plan(ask(joined(dawn, noon), [wearer("Maple", FIELD, FIELD, clip="trace")], pieces)).dresses["Maple"]
    (without,) = plan(ask(joined(dawn, noon), [wearer("Maple", FIELD, clip="trace")], pieces)).dresses["Maple"]
    assert with_round[0].fill_g == 300
    assert with_round[1].fill_g < without.fill_g <= 300 or with_round[1].wear == ()
    assert with_round[1].change


def test_a_spare_may_go_to_one_horse_by_day_and_to_another_by_night():
    """Pip is out by day and Ned by night; each is in its stall, and warm, in the other window."""
    horses = [wearer("Pip", FIELD, STALL, clip="full"), wearer("Ned", STALL, FIELD, clip="full")]
    told = plan(ask(weather(-2.0, 5.0), horses, [turnout(350, None), turnout(50, "Pip"), turnout(50, "Ned")]))
    assert [("spare-350" in d.wear) for d in told.dresses["Pip"]] == [True, False]
    assert [("spare-350" in d.wear) for d in told.dresses["Ned"]] == [False, True]


def test_a_spare_that_comes_back_soaked_goes_to_nobody_the_next_window():
    """It is not waterproof; Pip wears it through a day of rain, and Ned would have it at night."""
    horses = [wearer("Pip", FIELD, STALL, clip="full"), wearer("Ned", STALL, FIELD, clip="full")]
    sky = joined(weather(4.0, 4.0, rain=0.8, hours=12), weather(-4.0, 5.0, hours=12))
    told = plan(ask(sky, horses, [turnout(350, None, waterproof=False)]))
    assert "spare-350" not in told.dresses["Pip"][0].wear or "spare-350" not in told.dresses["Ned"][1].wear
    dry = plan(ask(joined(weather(-2.0, 4.0, hours=12), weather(-4.0, 5.0, hours=12)), horses, [turnout(350, None)]))
    assert "spare-350" in dry.dresses["Pip"][0].wear
    assert "spare-350" in dry.dresses["Ned"][1].wear


def test_a_warm_spell_takes_the_rug_off():
    horse = wearer(wears=("maple-200",))
    chosen = dress(ask(weather(14.0, 1.0), [horse], WARDROBE))
    assert chosen.wear == ()
    assert chosen.change


def test_clothes_come_off_when_nothing_asks_for_them():
    """Not warm enough to sweat, and still: a rug that is not needed rubs."""
    horse = wearer(wears=("maple-sheet",))
    assert dress(ask(weather(4.0, 1.0), [horse], WARDROBE)).wear == ()


def test_what_was_learned_of_a_horse_changes_what_it_wears():
    """Feels the cold by six degrees more than the model says."""
    sky = weather(-8.0, 2.0)
    assert dress(ask(sky, [wearer()], WARDROBE)).wear == ()
    cold_one = dress(ask(sky, [wearer(offset_c=6.0, offset_sd_c=1.0)], WARDROBE))
    assert cold_one.wear
    assert Code.LEARNED_COLDER in codes(cold_one.why)


def test_an_offset_moves_the_margins_by_itself():
    sky = weather(-8.0, 2.0)
    plain, cold_one = (price(ask(sky, [wearer(offset_c=o)], []))["Maple"].stands[0] for o in (0.0, 3.0))
    assert plain.cold - cold_one.cold == pytest.approx(3.0)
    assert cold_one.heat - plain.heat == pytest.approx(3.0)


# --- clothes at hand


def test_a_wet_liner_stays_on_its_rail_and_the_plan_says_so():
    horse = wearer(clip="full")
    told = plan(ask(weather(-5.0, 1.0), [horse], [sheet(), liner(200, water="wet", rail=0), turnout(300, None)]))
    assert told.dresses["Maple"][0].wear == ("spare-300",)
    assert {Code.OWN_WET, Code.BORROWED} & set(codes(told.dresses["Maple"][0].why))
    (drying,) = told.drying
    assert drying.garment == "maple-liner"
    assert drying.ready_h is not None


def test_a_liner_that_dries_by_evening_is_worn_in_the_evening():
    horse = wearer("Maple", FIELD, FIELD, clip="full")
    sky = joined(weather(6.0, 1.0, hours=20), weather(-14.0, 5.0, hours=20))
    told = plan(ask(sky, [horse], [sheet(), liner(200, water="damp", rail=0)]))
    assert "maple-liner" not in told.dresses["Maple"][0].wear
    assert told.drying[0].ready_h is not None
    assert told.drying[0].ready_h < 20
    assert told.dresses["Maple"][1].wear == ("maple-liner", "maple-sheet")


def test_cloth_that_was_rained_through_is_not_worn_into_the_next_window():
    """The fly-thin sheet is not waterproof; by evening it is wet at the skin."""
    horse = wearer("Maple", FIELD, STALL, clip="full")
    thin = turnout(200, waterproof=False)
    sky = joined(weather(2.0, 6.0, rain=1.0, hours=12), weather(-6.0, 1.0, hours=12))
    day, night = plan(ask(sky, [horse], [thin])).dresses["Maple"]
    assert not (day.wear and night.wear)


def test_one_spare_goes_to_the_horse_that_needs_it_most():
    horses = [wearer("Maple"), wearer("Pip", clip="full"), wearer("Ned", clip="trace")]
    told = plan(ask(weather(-9.0, 6.0), horses, [turnout(300, None)]))
    taken = {name for name, dresses in told.dresses.items() if "spare-300" in dresses[0].wear}
    assert taken == {"Pip"}


def test_a_spare_on_a_horse_that_is_not_asked_about_stays_there():
    """The reply path prices only the horse that a report touches."""
    horses = [wearer("Maple", clip="full"), wearer("Pip", wears=("spare-300",))]
    question = ask(weather(-9.0, 6.0), horses, [turnout(300, None)])
    told = choose(price(question, frozenset({"Maple"})), question)
    assert told.dresses.keys() == {"Maple"}
    assert told.dresses["Maple"][0].wear == ()


def test_what_an_infected_horse_has_on_goes_to_nobody_else():
    horses = [wearer("Maple", clip="full"), wearer("Pip", infected=True, wears=("spare-300",))]
    told = plan(ask(weather(-9.0, 6.0), horses, [turnout(300, None)]))
    assert all("spare-300" not in d.wear for d in told.dresses["Maple"])


def test_before_a_gale_a_rug_without_rear_strap_stays_in():
    told = plan(ask(GALE_AND_RAIN, [wearer(clip="full")], [turnout(200, rear="none")]))
    assert told.dresses["Maple"][0].wear == ()
    assert (Code.NO_REAR_STRAP, "maple-200") in {(r.code, r.garment) for r in told.refused["Maple"]}


def test_why_not_the_heavy_has_an_answer():
    """Each own piece that is not worn is told with a reason, also where it may be worn and is only worse."""
    told = plan(ask(weather(6.0, 2.0), [wearer()], [sheet(), turnout(300), liner(water="wet")]))
    reasons = {r.garment: r for r in told.refused["Maple"]}
    assert reasons["maple-300"].code is Code.TOO_WARM
    assert reasons["maple-300"].value is not None
    assert reasons["maple-300"].value < 0
    assert reasons["maple-liner"].code is Code.NOT_DRY


def test_why_not_the_liner_is_answered_for_the_liner_under_its_best_layer():
    """Not "a liner needs a layer over it": it has one, and is too warm all the same."""
    told = plan(ask(weather(8.0, 1.0), [wearer()], [sheet(), liner(300)]))
    assert {r.garment: r.code for r in told.refused["Maple"]}["maple-liner"] is Code.TOO_WARM


def test_what_no_outfit_reaches_is_missing_and_what_would_reach_it_is_named():
    horse = wearer("Maple", FIELD, FIELD, clip="full", size_in=69)
    told = plan(ask(weather(-4.0, 3.0), [horse], [sheet(size_in=69)]))
    (first, second) = told.missing
    assert (first.horse, first.window, first.kind, first.size_in) == ("Maple", 0, "turnout", 69)
    assert 100 <= first.fill_low_g <= first.fill_high_g <= 400
    assert first.fill_low_g % 50 == first.fill_high_g % 50 == 0
    with_it = ask(weather(-4.0, 3.0), [horse], [sheet(size_in=69), turnout(first.fill_low_g, size_in=69)])
    assert not [m for m in plan(with_it).missing if m.window == first.window]
    assert second.window == 1


# --- wishes and safety


def test_an_owners_wish_for_bare_is_kept_where_it_does_no_great_harm():
    horse = wearer(wishes=Wishes(keep_bare=True))
    chosen = dress(ask(weather(-9.0, 7.0), [horse], WARDROBE))
    assert chosen.wear == ()
    assert Code.WISH_KEPT_BARE in codes(chosen.why)


@pytest.mark.parametrize("why", [{"must_clothe": True}, {"clip": "full"}])
def test_safety_outranks_the_wish_for_bare_and_the_plan_says_so(why):
    """Seen shivering; or shorn, in weather that would harm it."""
    horse = wearer(wishes=Wishes(keep_bare=True), **why)
    chosen = dress(ask(weather(-14.0, 9.0), [horse], WARDROBE))
    assert chosen.wear
    assert codes(chosen.why)[0] is Code.WISH_BROKEN_BARE


def test_a_horse_seen_shivering_is_clothed_although_the_model_finds_it_warm():
    shivering = dress(ask(weather(1.0, 3.0), [wearer(must_clothe=True)], WARDROBE))
    assert shivering.wear
    assert Code.VET_IF_SHIVERING in codes(shivering.cautions)


def test_shivering_is_no_reason_to_make_a_horse_sweat():
    """Twenty degrees and a reported shiver: clothes would only heat it."""
    assert dress(ask(weather(21.0, 1.0), [wearer(must_clothe=True)], WARDROBE)).wear == ()


def test_clothed_below_the_owners_temperature():
    horse = wearer(wishes=Wishes(clothed_below_c=4.0))
    assert dress(ask(weather(2.0, 1.0), [horse], WARDROBE)).wear
    assert dress(ask(weather(6.0, 1.0), [horse], WARDROBE)).wear == ()


def test_a_sheet_in_rain_where_the_owner_wants_one():
    horse = wearer(wishes=Wishes(sheet_in_rain=True))
    chosen = dress(ask(weather(8.0, 1.0, rain=0.5), [horse], WARDROBE))
    assert chosen.wear == ("maple-sheet",)
    assert Code.WISH_KEPT_SHEET in codes(chosen.why)
    assert dress(ask(weather(8.0, 1.0), [horse], WARDROBE)).wear == ()


def test_a_limit_of_fill_is_kept_until_it_would_harm():
    horse = wearer(clip="full", wishes=Wishes(max_fill_g=150))
    mild, bitter = (dress(ask(weather(t, 3.0), [horse], WARDROBE)) for t in (1.0, -16.0))
    assert mild.fill_g <= 150
    assert bitter.fill_g > 150
    assert codes(bitter.why)[0] is Code.WISH_BROKEN_FILL


def test_a_thin_margin_asks_for_a_hand_under_the_rug():
    told = plan(ask(weather(-13.0, 4.0), [wearer(clip="trace")], [turnout(100)]))
    assert {check.horse for check in told.checks} == {"Maple"}
    assert told.checks[0].reason.code in (Code.HAND_CHECK_COLD, Code.HAND_CHECK_WARM)


def test_people_are_not_told_otherwise_for_a_hair():
    """A forecast that wavers by half a degree leaves what was posted."""
    told = ("maple-200",)
    sky = weather(0.0, 5.0)
    free = dress(ask(sky, [wearer(clip="trace", wears=None)], [turnout(200), turnout(150)])).wear
    assert free == ("maple-150",)
    bound = wearer(clip="trace", wears=None, told=(told, told))
    assert dress(ask(sky, [bound], [turnout(200), turnout(150)])).wear == told


# --- what is not known


def test_without_any_forecast_everyone_keeps_what_it_wears():
    chosen = dress(ask(unknown(), [wearer(wears=("maple-200",))], WARDROBE))
    assert chosen.wear == ("maple-200",)
    assert codes(chosen.why) == [Code.NO_FORECAST]
    assert chosen.cold_margin_c is chosen.heat_margin_c is chosen.fill_band_g is None
    assert len(chosen.unjudged) == 12


def test_without_any_forecast_a_horse_of_which_nobody_said_what_it_wears_is_left_as_found():
    """It may stand in a heavy: "bare" would be a guess."""
    chosen = dress(ask(unknown(), [wearer(wears=None)], WARDROBE))
    assert (chosen.as_found, chosen.change, chosen.wear) == (True, False, ())


def test_what_was_left_as_found_is_changed_in_the_first_window_that_is_judged():
    """Bare as well, for nobody knows that it is."""
    sky = joined(unknown(12), weather(14.0, 1.0, hours=12))
    day, night = plan(ask(sky, [wearer(wears=None)], WARDROBE)).dresses["Maple"]
    assert (day.as_found, day.change) == (True, False)
    assert (night.as_found, night.change, night.wear) == (False, True, ())


def test_hours_without_forecast_are_named_and_the_others_judged():
    sky = joined(weather(-5.0, 4.0, hours=18), unknown(6))
    day, night = plan(ask(sky, [wearer(clip="full")], WARDROBE)).dresses["Maple"]
    assert day.unjudged == ()
    assert night.unjudged == tuple(range(18, 24))
    assert night.cold_margin_c is not None
    assert Code.UNJUDGED in codes(night.why)


def test_margins_by_hour_are_those_of_the_window_and_the_worst_is_named():
    chosen = dress(ask(joined(weather(0.0, hours=5), weather(-6.0, hours=19)), [wearer()], []))
    assert np.flatnonzero(~np.isnan(chosen.cold_by_hour)).tolist() == list(range(12))
    assert chosen.cold_hour is not None
    assert chosen.cold_by_hour[chosen.cold_hour] == chosen.cold_margin_c == np.nanmin(chosen.cold_by_hour)


def test_a_barn_without_horses_has_a_plan():
    assert plan(ask(weather(), [], [])).dresses == {}


# --- for reading and for learning


def test_what_horses_wear_is_weighed_without_the_offset():
    """So that a sign is never explained by what was learned from it."""
    sky = weather(-5.0, 3.0)
    plain, learned = (worn(ask(sky, [wearer(offset_c=o, wears=("maple-200",))], WARDROBE)) for o in (0.0, 4.0))
    assert plain["Maple"][0].shape == (24,)
    np.testing.assert_array_equal(plain["Maple"][0], learned["Maple"][0])


def test_explained_hours_agree_with_the_plan():
    question = ask(weather(-9.0, 6.0, rain=0.3), [wearer(clip="trace", offset_c=1.0)], WARDROBE)
    chosen = dress(question, window=1)
    table = [row for row in explain(question, "Maple") if row.window == 1 and row.chosen]
    assert [row.hour for row in table] == list(range(12, 24))
    assert min(row.cold_margin_c for row in table) == pytest.approx(chosen.cold_margin_c)
    assert min(row.heat_margin_c for row in table) == pytest.approx(chosen.heat_margin_c)


# --- whatever the barn


NAMES = ("Maple", "Pip", "Ned")
STAYS = st.sampled_from([FIELD, STALL, Stay("field", "shed", "in shelter"), Stay("field", "trees", "none")])
PIECES = st.lists(
    st.one_of(
        st.builds(
            turnout,
            st.sampled_from([50.0, 100.0, 300.0]),
            st.sampled_from([None, *NAMES]),
            water=st.sampled_from(["dry", "dry", "wet", "soaked"]),
            waterproof=st.sampled_from([True, True, False]),
            rear=st.sampled_from(["leg straps", "none"]),
        ),
        st.builds(sheet, st.sampled_from([None, *NAMES]), leaks=st.sampled_from([False, True])),
        st.builds(liner, st.just(150), st.sampled_from([None, *NAMES]), water=st.sampled_from(["dry", "damp"])),
    ),
    max_size=6,
    unique_by=lambda piece: piece.garment.id,
)
SKIES = st.builds(
    lambda t, wind, rain, later: joined(
        weather(t, wind, gust=1.6 * wind, rain=rain, hours=12), weather(later, 3.0, hours=12)
    ),
    st.sampled_from([-18.0, -6.0, 2.0, 12.0]),
    st.sampled_from([1.0, 6.0, 12.0]),
    st.sampled_from([0.0, 0.0, 1.5]),
    st.sampled_from([-10.0, 8.0]),
)


@st.composite
def barns(draw) -> Question:
    """Up to three horses that share a few clothes, over two windows."""
    names = NAMES[: draw(st.integers(1, 3))]
    pieces = draw(PIECES)
    horses = [
        wearer(
            name,
            draw(STAYS),
            draw(STAYS),
            clip=draw(st.sampled_from(["none", "full"])),
            infected=draw(st.sampled_from([False, False, True])),
            must_clothe=draw(st.sampled_from([False, False, True])),
            wishes=Wishes(keep_bare=draw(st.sampled_from([False, False, True]))),
        )
        for name in names
    ]
    return ask(draw(SKIES), horses, pieces)


def setting(question: Question, horse: Wearer, window: int, ready: dict[str, float | None]) -> Setting:
    inside = question.share[window] > 0
    return Setting(
        horse.stays[window].place, float(np.flatnonzero(inside)[0]), float(question.hours.gust_ms[inside].max()), ready
    )


@settings(max_examples=60, deadline=None)
@given(barns())
def test_no_plan_ever_breaks_a_rule_or_doubles_a_garment(question: Question):
    told = plan(question)
    ready = {d.garment: d.ready_h for d in told.drying}
    by_id = {p.garment.id: p for p in question.pieces}
    for window in range(2):
        worn_now = [g for dresses in told.dresses.values() for g in dresses[window].wear]
        assert len(worn_now) == len(set(worn_now))
        for horse in question.wearers:
            wear = told.dresses[horse.horse.name][window].wear
            outfit = Outfit(tuple(by_id[g] for g in wear))
            assert refused(horse, outfit, setting(question, horse, window, ready)) is None


@settings(max_examples=40, deadline=None)
@given(barns())
def test_no_other_plan_is_cheaper_for_the_barn(question: Question):
    """Every combination of every horse's sequences, priced by the same edges, against the plan."""
    prices = price(question)
    found = share_out(prices, question)
    sequences = []
    for priced in prices.values():
        first, second = priced.steps.edges
        sequences.append(
            [
                (
                    first[0, i] + second[i, j],
                    set(priced.steps.takes[0][i] | priced.steps.takes[1][j]),
                )
                for i, j in product(range(second.shape[0]), range(second.shape[1]))
                if first[0, i] + second[i, j] < FORBIDDEN * 3
            ]
        )
    best = _cheapest_together(sequences)
    assert sum(way.cost for way in found.values()) == pytest.approx(best)


@settings(max_examples=40, deadline=None)
@given(barns())
def test_asked_again_with_everybody_dressed_as_told_it_says_the_same(question: Question):
    """Nobody is sent round twice by one forecast."""
    told = plan(question).dresses
    dressed = tuple(
        replace(w, wears=told[w.horse.name][0].wear, told=tuple(d.wear for d in told[w.horse.name]))
        for w in question.wearers
    )
    again = plan(replace(question, wearers=dressed)).dresses
    for name, dresses in told.items():
        assert [set(d.wear) for d in again[name]] == [set(d.wear) for d in dresses]
        assert not again[name][0].change


@settings(max_examples=40, deadline=None)
@given(barns(), st.sampled_from([50.0, 200.0, 400.0]))
def test_one_more_spare_never_leaves_the_barn_worse_off(question: Question, fill: float):
    calm = replace(question, wearers=tuple(replace(w, must_clothe=False) for w in question.wearers))
    richer = replace(calm, pieces=(*calm.pieces, turnout(fill, None, id="one more")))
    before, after = (sum(w.cost for w in share_out(price(q), q).values()) for q in (calm, richer))
    assert after <= before + 1e-9


def _cheapest_together(sequences: list[list[tuple[float, set[tuple[str, int]]]]]) -> float:
    """By trying all, the horse by horse; a partial sum that already clashes is left."""
    partial: list[tuple[float, frozenset[tuple[str, int]]]] = [(0.0, frozenset())]
    for own in sequences:
        best: dict[frozenset[tuple[str, int]], float] = {}
        for (cost, taken), (more, takes) in product(partial, own):
            if not taken & takes:
                key = taken | takes
                best[key] = min(best.get(key, np.inf), cost + more)
        partial = [(cost, taken) for taken, cost in best.items()]
    return min(cost for cost, _ in partial)


@settings(max_examples=25, deadline=None)
@given(st.floats(-20, 10), st.floats(0.5, 10), st.sampled_from(["none", "trace", "full"]))
def test_colder_and_windier_never_means_less_clothing(temperature: float, wind: float, clip: str):
    """Four degrees colder, or two metres a second more, from the same bare start."""
    clothes: list[Piece] = [sheet(), turnout(100), turnout(200), turnout(300)]
    free = Costs(change=0.0)

    def fill(t: float, v: float) -> float:
        chosen = dress(ask(weather(t, v), [wearer("Maple", FIELD, clip=clip)], clothes, costs=free))
        return chosen.fill_g if chosen.wear else -1.0

    here = fill(temperature, wind)
    assert fill(temperature - 4, wind) >= here
    assert fill(temperature, wind + 2) >= here
