"""What to mind with the chosen clothes, and which horses want a hand under them. Common practice, no source."""

from rules.plan import plan
from rules.reason import Code
from tests.stable import FIELD, STALL, ask, joined, liner, sheet, turnout, unknown, wearer, weather

WARDROBE = [sheet(), turnout(200), liner()]


def first(sky, horse=None, pieces=WARDROBE):
    return plan(ask(sky, [horse or wearer()], pieces)).dresses["Maple"][0]


def cautions(sky, horse=None, pieces=WARDROBE) -> set[Code]:
    return {reason.code for reason in first(sky, horse, pieces).cautions}


def test_a_mild_still_day_needs_no_caution():
    assert cautions(weather(8.0, 1.0)) == set()


def test_straps_are_checked_before_a_gale_and_only_where_something_is_worn():
    gale = weather(-6.0, 9.0, gust=18.0)
    assert Code.STRAPS_IN_WIND in cautions(gale, wearer(clip="full"))
    assert Code.STRAPS_IN_WIND not in cautions(gale, pieces=[])
    assert Code.STRAPS_IN_WIND not in cautions(gale, wearer("Maple", STALL, STALL, clip="full"))


def test_a_horse_that_comes_in_wet_is_dried_before_it_is_dressed():
    wet = wearer(clip="full", wet_hair=True)
    assert Code.DRY_FIRST in cautions(weather(-6.0, 3.0), wet)


def test_nobody_rugs_a_horse_that_stood_bare_in_the_rain_without_being_told():
    """Bare through a mild wet day, dressed for the frosty night."""
    sky = joined(weather(9.0, 1.0, rain=0.8, hours=12), weather(-16.0, 8.0, hours=12))
    day, night = plan(ask(sky, [wearer("Maple", FIELD, FIELD)], [turnout(300)])).dresses["Maple"]
    assert not day.wear
    assert night.wear
    assert Code.WET_COAT in {reason.code for reason in night.cautions}


def test_water_freezes_in_frost():
    assert Code.OFFER_WATER in cautions(weather(-5.0, 1.0))
    assert Code.OFFER_WATER not in cautions(weather(2.0, 1.0))


def test_three_layers_are_watched():
    pieces = [liner(100), liner(200, fill_g=200, id="maple-liner-2"), sheet()]
    chosen = first(weather(-12.0, 3.0), wearer(clip="full"), pieces)
    assert len(chosen.wear) == 3
    assert Code.SLIPPING_LAYERS in {reason.code for reason in chosen.cautions}


def test_a_rug_that_will_be_too_much_comes_off_at_the_next_round():
    sky = joined(weather(-12.0, 4.0, hours=12), weather(14.0, 1.0, hours=12))
    assert Code.TAKE_OFF_AT_ROUND in cautions(sky, wearer(clip="trace"))


def test_where_no_outfit_is_enough_that_is_said_with_hay_and_what_to_look_for():
    told = cautions(weather(-18.0, 8.0), wearer(clip="full"), [sheet()])
    assert {Code.NOTHING_REACHES, Code.MORE_HAY, Code.VET_IF_SHIVERING} <= told


def test_a_horse_well_within_its_margins_is_left_in_peace():
    assert plan(ask(weather(6.0, 1.0), [wearer()], WARDROBE)).checks == ()


def test_a_cold_chance_asks_for_a_hand_at_the_coldest_hour():
    sky = joined(weather(2.0, 3.0, hours=7), weather(-9.0, 5.0, hours=1), weather(0.0, 3.0, hours=16))
    checks = plan(ask(sky, [wearer(clip="trace")], [turnout(100)])).checks
    assert checks[0].reason.code is Code.HAND_CHECK_COLD
    assert checks[0].hour == 7


def test_an_unknown_horse_is_looked_at_sooner_than_a_known_one():
    """The same weather and clothes; one horse has taught the barn what it needs."""

    def looked_at(sd: float) -> bool:
        return bool(plan(ask(weather(-6.0, 3.0), [wearer(offset_sd_c=sd)], [])).checks)

    assert looked_at(4.0)
    assert not looked_at(0.3)


def test_without_a_forecast_nothing_is_made_up():
    chosen = first(unknown(), wearer(wears=("maple-200",)))
    assert chosen.cautions == ()
    assert plan(ask(unknown(), [wearer()], WARDROBE)).checks == ()
