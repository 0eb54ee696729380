"""What an owner asked for: which outfits keep it, and what breaking it costs."""

import pytest

from rules.outfit import BARE, Outfit
from rules.outlook import outlooks
from rules.question import Costs, Wishes
from rules.reason import Code
from rules.wish import broken, kept, price, rains
from tests.stable import ask, sheet, turnout, wearer, weather

SHEET, HEAVY = Outfit((sheet(),)), Outfit((turnout(300),))


def view(**sky):
    return outlooks(ask(weather(**sky), [wearer()], []))[0]


def codes(reasons) -> set[Code]:
    return {reason.code for reason in reasons}


def test_without_wishes_nothing_is_broken_or_kept():
    for outfit in (BARE, SHEET, HEAVY):
        assert broken(wearer(), outfit, view(rain=2.0), "field") == kept(wearer(), outfit, view(), "field") == []


@pytest.mark.parametrize(
    ("wishes", "sky", "keeps", "breaks"),
    [
        (Wishes(keep_bare=True), {}, BARE, SHEET),
        (Wishes(clothed_below_c=4.0), {"temperature": 3.0}, SHEET, BARE),
        (Wishes(sheet_in_rain=True), {"rain": 1.0}, SHEET, BARE),
        (Wishes(max_fill_g=200), {}, SHEET, HEAVY),
    ],
    ids=["bare", "clothed below", "sheet in rain", "limit of fill"],
)
def test_each_wish_is_kept_by_one_outfit_and_broken_by_another(wishes, sky, keeps, breaks):
    horse = wearer(wishes=wishes)
    assert kept(horse, keeps, view(**sky), "field")
    assert not broken(horse, keeps, view(**sky), "field")
    assert broken(horse, breaks, view(**sky), "field")
    assert not kept(horse, breaks, view(**sky), "field")


def test_a_leaking_sheet_is_no_sheet_in_rain():
    horse = wearer(wishes=Wishes(sheet_in_rain=True))
    assert codes(broken(horse, Outfit((sheet(leaks=True),)), view(rain=1.0), "field")) == {Code.WISH_BROKEN_SHEET}


def test_it_does_not_rain_in_the_stall():
    assert rains(view(rain=1.0), "field")
    assert not rains(view(rain=1.0), "stall")
    assert rains(view(chance=60.0), "field")


def test_a_longer_window_makes_a_broken_wish_dearer():
    horse, costs = wearer(wishes=Wishes(max_fill_g=100)), Costs(wish=3.0)
    assert price(horse, HEAVY, view(), "field", costs, 10.0) == 30.0
    assert price(horse, SHEET, view(), "field", costs, 10.0) == 0.0


@pytest.mark.parametrize("danger", ["must_clothe", "vet_clothes"])
def test_danger_makes_the_wish_for_bare_void_but_it_is_still_said(danger):
    horse = wearer(wishes=Wishes(keep_bare=True), **{danger: True})
    assert price(horse, SHEET, view(), "field", Costs(), 10.0) == 0.0
    assert codes(broken(horse, SHEET, view(), "field")) == {Code.WISH_BROKEN_BARE}
