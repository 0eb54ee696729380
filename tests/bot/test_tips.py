"""What would change the advice, and what the barn has taught, as people read it."""

from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from bot.barn import Barn, demo_path, load
from bot.cli import main
from bot.forecast import refresh
from bot.forecast.last_good import LastGood
from bot.mailbox import Kept
from bot.store import Store, data_path
from bot.tips import Tips, barn_lines, tip_lines
from bot.units import NBSP
from bot.voice import voice
from bot.words.said import LANGUAGES
from rules.offset import Common
from rules.tipping import By, Turn
from tests.barn_group import Group
from tests.november import WEATHER

HOURS = tuple(datetime(2026, 11, 26, 12, tzinfo=UTC) + timedelta(hours=k) for k in range(24))
MEDIUM, SHEET = ("maple-medium",), ("maple-sheet",)


def told(barn: Barn, *turns: Turn, language: str = "en", units: str = "us") -> list[str]:
    """The lines for Maple in its 200 g liner."""
    tips = Tips(("maple-liner",), turns, HOURS, people=2)
    return [line.replace(NBSP, " ") for line in tip_lines(tips, voice(barn, language, units), "Maple")]


def test_reports_and_weather_that_lead_to_the_same_clothes_are_one_line(barn: Barn) -> None:
    """In the reader's units: how many, at which kind of hour, how many degrees, how strong a wind."""
    turns = (
        Turn(By.COLD_SAID, 2, MEDIUM, 22), Turn(By.COLDER, 3, MEDIUM), Turn(By.WIND, 20, MEDIUM, 3),
        Turn(By.SWEATING_SAID, 1, SHEET, 6), Turn(By.WARMER, 5, SHEET),
    )  # fmt: skip
    assert told(barn, *turns) == [
        "With 2 more reports of cold by 2 people at hours like 5 am, air 5°F colder or gusts of 45 mph: 200 g turnout.",
        "With one more report of sweating at an hour like 1 pm or air 9°F warmer: rain sheet.",
    ]
    assert told(barn, *turns[:2], units="metric") == [
        "With 2 more reports of cold by 2 people at hours like 05:00 or air 3 °C colder: 200 g turnout."
    ]


def test_where_nothing_near_would_change_it_that_is_said(barn: Barn) -> None:
    """And how far was looked."""
    assert told(barn) == ["Nothing near would change that: not 6 more reports, nor 18°F colder or warmer."]


def test_at_most_two_other_outfits_are_told_in_an_answer(barn: Barn) -> None:
    """The first found; a phone is small."""
    turns = [
        Turn(By.COLDER, k, (garment,)) for k, garment in enumerate(("maple-sheet", "maple-medium", "maple-cooler"))
    ]
    assert len(told(barn, *turns)) == 2


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("by", By)
def test_every_kind_of_turn_is_said_in_every_language(barn: Barn, by: By, language: str) -> None:
    """One report as well as several; nothing is left unsaid or as a gap."""
    for amount in (1.0, 2.5):
        lines = told(barn, Turn(by, amount, MEDIUM, 3), language=language, units="metric")
        assert "200 g" in lines[0]
        assert not any(mark in line for line in lines for mark in "{}[]")


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_the_barn_taught_is_said_with_how_sure_it_is(barn: Barn, language: str) -> None:
    """None says anything where it is as computed; then one line says that."""
    tongue = voice(barn, language, "metric")
    unsure = {"wind_sd": 0.2, "fill_sd_c": 0.3, "bears_sd_c": 1.1, "stall_sd_c": 1.3, "regrowth_sd": 0.2}
    found = Common(1.5, -0.6, 2.0, -3.0, 0.6, **unsure)
    wind, fill, borne, stall, regrowth = (line.replace(NBSP, " ") for line in barn_lines(found, tongue))
    point = tongue.measures.decimal
    assert all(number.replace(".", point) in wind for number in ("1.5", "1.2", "1.8"))
    assert all(number.replace(".", point) in fill for number in ("100 g", "0.6 °C", "0.3 °C"))
    assert all(number.replace(".", point) in borne for number in ("2.0 °C", "1.1 °C"))
    assert all(number.replace(".", point) in stall for number in ("3.0 °C", "1.3 °C"))
    assert all(number.replace(".", point) in regrowth for number in ("0.6", "0.2"))
    assert len(list(barn_lines(Common(), tongue))) == 1
    assert len(list(barn_lines(Common(wind=0.6), tongue))) == 1


def test_it_is_the_standing_plan_that_would_change(barn: Barn) -> None:
    """Worked out from the weather people were told of: what is advised now is what was posted."""
    group = Group(barn)
    group.until("6:20")
    day = group.day
    for horse in ("Maple", "Quill"):
        tips = day.told.planner.tips(day.state, group.forecast, day.sheet, horse, group.at("6:30"), "Inés")
        assert day.sheet is not None
        assert tips.wear == day.sheet.horse(horse).windows[0].wear
        assert all(turn.wear != tips.wear for turn in tips.turns)


def test_whoever_asks_why_is_told_what_would_change_it(barn: Barn) -> None:
    """In their own language and units; beside the reasons, not instead of them."""
    group = Group(barn)
    group.until("6:20")
    (english,) = group.says("6:50", "Theo", "why Quill?")
    assert (
        "With 2 more reports of sweating by 2 people at hours like noon or air 5°F warmer: rain sheet." in english.text
    )
    (french,) = group.says("6:51", "Maëlle", "pourquoi Quill ?")
    assert "ou un air plus doux de 3 °C : chemise imperméable." in french.text


def test_without_a_forecast_nothing_is_said_of_what_would_change_it(barn: Barn) -> None:
    """Nothing could be judged, so nothing can be compared."""
    group = Group(barn, weather=None)
    group.until("6:20")
    (answer,) = group.says("6:50", "Theo", "why Quill?")
    assert "With " not in answer.text
    assert "Nothing near" not in answer.text


def test_the_one_report_that_was_said_to_change_it_does(barn: Barn) -> None:
    """Bare in the evening; called cold once, it wears what the answer named."""
    horse = "Tansy"
    group = Group(barn)
    group.until("16:00")
    (answer,) = group.says("16:10", "Theo", f"why {horse}?")
    assert "With one more report of cold at an hour like" in answer.text
    tips = group.day.told.tips(group.forecast, group.at("16:10"), "Theo", horse)
    assert tips is not None
    (turn,) = [turn for turn in tips.turns if turn.by is By.COLD_SAID]
    group.says("16:30", "Theo", f"{horse} cold")
    assert group.day.sheet is not None
    evening = group.day.sheet.windows[0]
    assert (evening.round, turn.amount) == ("evening", 1)
    assert group.day.sheet.horse(horse).windows[0].wear == turn.wear != tips.wear


def test_show_of_one_horse_says_it_at_the_command_line(
    barn: Barn, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """From the last good forecast that is kept with the data; nothing of it in the JSON, whose shape is fixed."""
    filed = tmp_path / "barn.yaml"
    filed.write_text(
        demo_path().read_text().replace("[open-meteo, met-norway, nws]", f"[file:{WEATHER / 'morning.csv'}]", 1)
    )
    own = load(filed)
    with closing(Store.open(data_path(own.barn, tmp_path))) as store:
        refresh(own, LastGood(Kept(store)), datetime(2026, 11, 26, 6, tzinfo=own.zone))
    argv = ["show", str(filed), "Quill", "--data", str(tmp_path), "--at", "2026-11-26T06:30"]
    for more, there in (([], True), (["--json"], False)):
        with pytest.raises(SystemExit) as ended:
            main([*argv, *more])
        assert not ended.value.code
        assert ("advised now: 100 g stable rug" in capsys.readouterr().out) is there
