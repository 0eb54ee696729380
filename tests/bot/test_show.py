"""The state for people and programs: what a horse is in, what was learned and why, clothes, second looks."""

from collections.abc import Callable
from typing import Any

import pytest

from bot.barn import Barn
from bot.layout import COLUMNS, columns
from bot.planning import cutter
from bot.problems import WrongInput
from bot.show import show_json, show_text
from rules.offset import Common
from tests.barn_group import Group

Show = Callable[..., dict[str, Any]]


@pytest.fixture
def group(barn: Barn) -> Group:
    """After a morning's reports."""
    made = Group(barn)
    made.until("6:20")
    made.says("6:50", "Dot", "Juniper liner wet")
    made.says("7:20", "Theo", "all done")
    made.says("8:40", "Inés", "Maple sweaty")
    made.says("11:15", "Maëlle", "Pip shivering")
    return made


@pytest.fixture
def show(group: Group) -> Show:
    """What is shown at noon."""

    def shown(name: str | None = None) -> dict[str, Any]:
        day = group.day
        return show_json(group.barn, day.state, group.at("12:00"), name, cutter(group.forecast), day.ledger.entries())

    return shown


def test_everything_in_the_contracts_shape(show: Show, barn: Barn) -> None:
    """Every horse, every garment, what is due."""
    shown = show()
    assert list(shown) == ["horses", "garments", "rechecks"]
    assert [h["horse"] for h in shown["horses"]] == [h.name for h in barn.horses]
    assert [g["garment"] for g in shown["garments"]] == [g.id for g in barn.garments]
    keys = ["horse", "where", "wear", "clip", "keep_bare", "offset_c", "offset_sd_c", "evidence"]
    assert list(shown["horses"][0]) == keys
    assert list(shown["garments"][0]) == ["garment", "horse", "state", "since", "ready_at"]


def test_a_horse_with_what_taught_us(show: Show) -> None:
    """The sign, who saw it, the margin it had and how far the offset moved."""
    (maple,) = show("Maple")["horses"]
    assert (maple["where"], maple["clip"]) == ("field", {"style": "trace", "on": "2026-10-28"})
    (one,) = maple["evidence"]
    assert list(one) == ["at", "who", "sign", "margin_c", "shift_c"]
    assert (one["at"], one["who"], one["sign"]) == ("2026-11-26T08:40:00-05:00", "Inés", "sweating")
    assert one["shift_c"] <= 0


@pytest.mark.parametrize("name", ["Maple", "mapes", "MAPLE"])
def test_by_any_of_its_names(show: Show, name: str) -> None:
    """As people call it; its clothes with it."""
    shown = show(name)
    assert [h["horse"] for h in shown["horses"]] == ["Maple"]
    assert {g["horse"] for g in shown["garments"]} == {"Maple"}


def test_a_garment_with_its_history(show: Show) -> None:
    """Since when it is wet, who said so, when it is dry; by its nickname as well."""
    (liner,) = show("grey liner")["garments"]
    assert (liner["garment"], liner["state"], liner["since"]) == ("juniper-liner", "wet", "2026-11-26T06:50:00-05:00")
    assert liner["ready_at"] > "2026-11-26T12"
    assert liner["history"] == [{"at": "2026-11-26T06:50:00-05:00", "who": "Dot", "state": "wet"}]


def test_what_was_taken_back_is_no_history(group: Group, show: Show) -> None:
    """Undone is as if never said."""
    group.says("12:00", "Dot", "undo")
    (liner,) = show("juniper-liner")["garments"]
    assert (liner["state"], liner["history"]) == ("dry", [])


def test_second_looks_that_are_due(show: Show) -> None:
    """Of the horse asked about, or of all."""
    pip = {"horse": "Pip", "due": "2026-11-26T11:45:00-05:00", "about": "shivering"}
    maple = {"horse": "Maple", "due": "2026-11-26T11:30:00-05:00", "about": "sweating"}
    assert show("Pip")["rechecks"] == [pip]
    assert show()["rechecks"] == [maple, pip]
    assert show("Otter")["rechecks"] == []


def test_a_name_nobody_has(show: Show) -> None:
    """One line with the names there are."""
    with pytest.raises(WrongInput, match=r"no horse or garment “Nobody”.*Maple"):
        show("Nobody")


def test_lines_fit_a_phone(show: Show, barn: Barn) -> None:
    """Forty-five columns, in words and in the barn's units."""
    text = show_text(show(), barn)
    assert max(map(columns, text.splitlines())) <= COLUMNS
    assert "Maple: field, 200 g turnout\n  trace clip since Wed 28 Oct\n" in text
    assert "°F" in text
    assert "°C" not in text
    assert "Look again at Pip (shivering): Thu 26 Nov" in text


def test_a_new_barn_is_shown_as_its_file(barn: Barn) -> None:
    """Before anybody said anything, and without a forecast."""
    day = Group(barn, weather=None)
    shown = show_json(barn, day.day.state, day.at("12:00"), None, cutter(None))
    assert [h["evidence"] for h in shown["horses"]] == [[]] * len(barn.horses)
    assert "Otter: field, nobody said what it wears" in show_text(shown, barn)


def test_what_the_barn_taught_and_what_would_change_the_advice_are_lines_beside(group: Group, show: Show) -> None:
    """Under the horse that was asked for: what it is advised now, and what would put it in something else."""
    day, at = group.day, group.at("12:00")
    tips = day.told.planner.all_tips(day.state, group.forecast, day.sheet, "Quill", at)
    text = show_text(show("Quill"), group.barn, common=Common(wind=1.5, wind_sd=0.2), tips={"Quill": tips})
    assert max(map(columns, text.splitlines())) <= COLUMNS
    assert "\n  advised now: 100 g stable rug\n  With " in text
    plain = " ".join(text.split())
    assert "Wind here: 1.5 times the forecast's, as all horses tell it (1.2 to 1.8)." in plain
    assert "less feeling for the cold" in plain
