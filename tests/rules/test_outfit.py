"""Which clothes go together on a horse, and the reason where they do not. All of it common practice, no source."""

from dataclasses import replace
from itertools import permutations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.garment import Garment
from rules.horse import Horse
from rules.outfit import BARE, Outfit, Setting, allowed, refused
from rules.question import Piece, Stay, Wearer
from rules.reason import Code

SHEET = Piece(Garment("sheet", "sheet", waterproof=True, rear="leg straps", horse="Maple"))
TURNOUT = Piece(Garment("turnout", "turnout", fill_g=200, waterproof=True, rear="tail strap", horse="Maple"))
LINER = Piece(Garment("liner", "liner", fill_g=100, horse="Maple"))
STABLE = Piece(Garment("stable", "stable", fill_g=300, horse="Maple"))
NECK = Piece(Garment("neck", "neck", fill_g=100, neck="full", horse="Maple"))
COOLER = Piece(Garment("cooler", "cooler", horse="Maple"))
SPARE = Piece(Garment("spare", "turnout", fill_g=300, waterproof=True, rear="leg straps"))
FIELD, STALL = Setting("field"), Setting("stall")


def maple(**facts: object) -> Wearer:
    """A healthy horse in the field; facts about the animal may be changed."""
    return Wearer(replace(Horse("Maple"), **facts), stays=(Stay("field"),))  # type: ignore[arg-type]


def wardrobe(setting: Setting, *pieces: Piece, wearer: Wearer | None = None) -> set[tuple[str, ...]]:
    outfits, _ = allowed(wearer or maple(), pieces, setting)
    return {outfit.ids for outfit in outfits}


def reason(setting: Setting, *pieces: Piece, wearer: Wearer | None = None) -> Code | None:
    why = refused(wearer or maple(), Outfit(pieces), setting)
    return why.code if why else None


def test_bare_is_always_among_the_choices():
    assert wardrobe(FIELD) == {()}
    assert refused(maple(), BARE, FIELD) is None


def test_a_liner_goes_out_only_under_an_outdoor_layer():
    assert wardrobe(FIELD, LINER, SHEET) == {(), ("sheet",), ("liner", "sheet")}
    assert reason(FIELD, LINER) is Code.LINER_ALONE


def test_a_liner_alone_is_well_enough_in_the_stall():
    assert ("liner",) in wardrobe(STALL, LINER)


def test_a_stable_rug_stays_in_the_stall():
    assert wardrobe(STALL, STABLE) == {(), ("stable",)}
    assert reason(FIELD, STABLE) is Code.NOT_FOR_WEATHER
    assert reason(FIELD, STABLE, SHEET) is Code.NOT_FOR_WEATHER


def test_a_cooler_is_never_planned_for_hours():
    assert reason(STALL, COOLER) is Code.COOLER_UNDER_SUPERVISION


def test_two_outdoor_layers_are_one_too_many():
    assert reason(FIELD, TURNOUT, SHEET) is Code.TOO_MANY_LAYERS


def test_three_layers_are_the_most():
    liners = [Piece(Garment(f"liner-{i}", "liner", fill_g=100, horse="Maple")) for i in range(3)]
    assert reason(FIELD, *liners[:2], SHEET) is None
    assert reason(FIELD, *liners, SHEET) is Code.TOO_MANY_LAYERS


def test_the_liner_goes_on_before_the_sheet():
    assert reason(FIELD, SHEET, LINER) is Code.ORDER


def test_a_neck_cover_needs_a_rug_to_hang_on():
    assert reason(STALL, NECK) is Code.NECK_ALONE
    assert reason(STALL, LINER, NECK) is Code.NECK_ALONE
    assert reason(FIELD, TURNOUT, NECK) is None
    combo = replace(TURNOUT, garment=replace(TURNOUT.garment, neck="full"))
    assert reason(FIELD, combo, NECK) is Code.NECK_ALONE


def test_before_strong_gusts_the_outer_layer_needs_a_strap_at_the_rear():
    loose = replace(SHEET, garment=replace(SHEET.garment, rear="none"))
    assert reason(Setting("field", gust_ms=17.0), loose) is Code.NO_REAR_STRAP
    assert reason(Setting("field", gust_ms=17.0), SHEET) is None
    assert reason(Setting("field", gust_ms=8.0), loose) is None
    assert reason(Setting("stall", gust_ms=17.0), loose) is None


@pytest.mark.parametrize("water", ["damp", "wet", "soaked"])
def test_a_liner_that_is_not_dry_touches_no_skin(water):
    assert reason(FIELD, replace(LINER, water=water), SHEET) is Code.NOT_DRY


def test_a_waterproof_layer_wet_on_the_outside_dries_on_the_horse():
    assert reason(FIELD, LINER, replace(SHEET, water="wet")) is None
    assert reason(FIELD, replace(SHEET, water="soaked")) is Code.NOT_DRY
    assert reason(FIELD, replace(SHEET, water="wet", leaks=True)) is Code.NOT_DRY


def test_a_wet_liner_comes_back_when_it_is_dry():
    wet = replace(LINER, water="wet")
    evening = Setting("field", start_h=10.0, ready_h={"liner": 8.5})
    assert reason(Setting("field", start_h=0.0, ready_h={"liner": 8.5}), wet, SHEET) is Code.NOT_DRY
    assert reason(evening, wet, SHEET) is None
    assert reason(Setting("field", start_h=10.0, ready_h={"liner": None}), wet, SHEET) is Code.NOT_DRY


def test_a_label_size_away_fits_and_two_do_not():
    assert reason(FIELD, SHEET, wearer=maple(size_in=78)) is None
    assert reason(FIELD, SHEET, wearer=maple(size_in=81)) is Code.WRONG_SIZE


def test_what_rubs_a_horse_is_left_off_that_horse_only():
    assert reason(FIELD, replace(SHEET, rubs=frozenset({"Maple"}))) is Code.RUBS
    assert reason(FIELD, replace(SHEET, rubs=frozenset({"Pip"}))) is None


def test_clothes_out_of_service_stay_off():
    assert reason(FIELD, replace(SHEET, in_service=False)) is Code.OUT_OF_SERVICE


def test_nobody_wears_another_horses_clothes():
    assert reason(FIELD, SHEET, wearer=maple(name="Pip")) is Code.BELONGS_TO_ANOTHER


def test_an_infected_horse_shares_nothing_but_may_keep_what_is_on_it():
    infected = maple(infected=True)
    assert reason(FIELD, SPARE, wearer=infected) is Code.SHARES_NOTHING
    assert reason(FIELD, TURNOUT, wearer=infected) is None
    assert reason(FIELD, SPARE, wearer=replace(infected, wears=("spare",))) is None


def test_each_piece_that_may_not_be_worn_is_told_with_its_reason():
    """What "why not the heavy for Maple?" is answered from."""
    _, reasons = allowed(maple(), [replace(TURNOUT, in_service=False), STABLE, replace(LINER, water="wet")], FIELD)
    assert {(r.garment, r.code) for r in reasons} == {
        ("turnout", Code.OUT_OF_SERVICE),
        ("stable", Code.NOT_FOR_WEATHER),
        ("liner", Code.NOT_DRY),
    }


def test_a_spare_just_like_the_horses_own_is_left_to_others():
    like = Piece(replace(SHEET.garment, id="spare-sheet", horse=None))
    assert wardrobe(FIELD, SHEET, like) == {(), ("sheet",)}
    assert wardrobe(FIELD, replace(SHEET, in_service=False), like) == {(), ("spare-sheet",)}


PIECES = st.builds(
    Piece,
    garment=st.builds(
        Garment,
        id=st.uuids().map(str),
        kind=st.sampled_from(["sheet", "turnout", "liner", "stable", "cooler", "neck"]),
        fill_g=st.sampled_from([0.0, 100.0, 200.0]),
        size_in=st.sampled_from([72.0, 75.0, 81.0]),
        waterproof=st.booleans(),
        neck=st.sampled_from(["none", "full"]),
        rear=st.sampled_from(["none", "leg straps"]),
        horse=st.sampled_from([None, "Maple", "Pip"]),
    ),
    water=st.sampled_from(["dry", "dry", "damp", "wet", "soaked"]),
    in_service=st.sampled_from([True, True, True, False]),
    leaks=st.sampled_from([False, False, True]),
    rubs=st.sampled_from([frozenset(), frozenset(), frozenset({"Maple"})]),
)
SETTINGS = st.builds(Setting, place=st.sampled_from(["field", "stall"]), gust_ms=st.sampled_from([0.0, 20.0]))


@settings(max_examples=80, deadline=None)
@given(st.lists(PIECES, max_size=5), SETTINGS, st.booleans())
def test_no_outfit_offered_breaks_a_rule_and_none_is_forgotten(pieces, setting, infected):
    """Against every ordered choice of up to four pieces; weatherproof twins of the horse's own count as one."""
    wearer = maple(infected=infected)
    offered = {frozenset(o.ids): o for o in allowed(wearer, pieces, setting)[0]}
    assert all(refused(wearer, outfit, setting) is None for outfit in offered.values())
    twins = {(p.garment.kind, p.garment.fill_g, p.garment.neck, p.garment.rear, p.water) for p in pieces}
    if len(twins) == len(pieces):
        choices = (Outfit(c) for n in range(5) for c in permutations(pieces, n))
        assert offered.keys() == {frozenset(o.ids) for o in choices if refused(wearer, o, setting) is None}
