"""What a barn may rely on when it asks its own past which clothes to buy, mend or leave in the trunk."""

import json
import threading
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta

import numpy as np
import pytest

from bot.barn import Barn, demo_path, load
from bot.barn_day import BarnDay
from bot.forecast import Forecast
from bot.ledger import Ledger
from bot.lookback import beside
from bot.message import Outgoing
from bot.season.closet import NEEDED_DAYS, Closet, look_back
from bot.season.closet_told import told
from bot.season.past import ELSEWHERE, past
from bot.state import as_filed
from bot.store import Store, data_path
from bot.voice import voice
from bot.words import read
from bot.words.heard.topics import TOPICS
from bot.words.lookup.lexicon import spelled_out
from rules.weather import Hours
from tests.barn_group import Group, words

FIRST, LAST = 2, 28  # days of November that are lived through, from round to round
WEATHER_FROM = datetime(2026, 11, 1, tzinfo=UTC)


def november() -> Hours:
    """An invented month: about −3 °C by a daily and a weekly wave, a day of rain in six."""
    hour = np.arange(24 * 32)
    like = np.zeros(len(hour))
    return Hours(
        start_s=int(WEATHER_FROM.timestamp()),
        temperature_c=-3 + 5 * np.sin(2 * np.pi * (hour - 13) / 24) + 4 * np.sin(hour / 27),
        humidity_pct=like + 82,
        wind_ms=like + 4,
        gust_ms=like + 9,
        rain_mm=np.where(hour // 24 % 6 == 3, 0.8, 0.0),
        snow_mm=like,
        cloud_pct=like + 60,
        solar_wm2=like + np.nan,
        rain_probability_pct=like + np.nan,
    )


def two_horses() -> Barn:
    """Juniper, clipped, has a sheet, and a liner that dries in half a day; Birch is bare; a spare fits nobody."""
    barn = load(demo_path())
    juniper = barn.horse("Juniper").model_copy(update={"wearing": ("juniper-sheet",)})
    ids = {"juniper-sheet", "juniper-liner", "birch-sheet", "maple-cooler"}
    own = [g for g in barn.garments if g.id in ids]
    small = {"id": "old-sheet", "horse": None, "size_in": 60}
    spare = next(g for g in own if g.id == "juniper-sheet").model_copy(update=small)
    return barn.model_copy(update={"horses": (juniper, barn.horse("Birch")), "garments": (*own, spare)})


class Weeks(Group):
    """The group through many days; times are "7:20" on Thursday 26, "3 7:20" on the third."""

    def __init__(self, barn: Barn, store: Store | None = None) -> None:
        super().__init__(barn, store, weather=None)
        self.clock = self.at(f"{FIRST} 0:00")
        self.hours = november()

    def open(self) -> None:
        """As `Group.open`, from the first day on, each day with a fresh forecast."""
        self.day = BarnDay(self.barn, self.store, self.fresh, since=self.at(f"{FIRST} 0:00"))

    def fresh(self, now: datetime) -> Forecast:
        """The month as it will be, fetched ten minutes ago."""
        return Forecast(self.hours, "open-meteo", now - timedelta(minutes=10))

    def live(self, last: int = LAST) -> None:
        """Both rounds of every day, everybody done; the liner wet every other evening, dry by the next morning."""
        for day in range(FIRST, last + 1):
            if day % 2:
                self.says(f"{day} 5:50", "Theo", "Juniper liner dry")
            self.at_clock(f"{day} 6:15")
            self.says(f"{day} 7:25", "Theo", "all done")
            if day % 7 == 0:
                self.says(f"{day} 9:00", "Inés", "Juniper tiene frío")
            if day % 2 == 0:
                self.says(f"{day} 15:00", "Theo", "Juniper liner wet")
            self.at_clock(f"{day} 15:45")
            self.says(f"{day} 16:40", "Theo", "all done")

    def at_clock(self, clock: str) -> list[Outgoing]:
        """What falls due at one time."""
        self.clock = self.at(clock)
        self.day.tick(self.clock)
        return self.read()


@dataclass(frozen=True)
class Lived:
    """A group whose weeks are behind it."""

    group: Weeks
    now: datetime

    def look(self, weeks: int = 26) -> Closet:
        """What the last weeks say."""
        ledger = self.group.day.ledger
        sheets = ledger.sheets(self.now - timedelta(weeks=weeks))
        return look_back(self.group.barn, ledger.entries(), sheets, self.now, weeks)


@pytest.fixture(scope="module")
def lived() -> Lived:
    """Four weeks of November, driven through the core message by message."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("bot.board.draw", lambda *_, **__: b"picture")
        group = Weeks(two_horses())
        group.live()
    return Lived(group, group.at(f"{LAST + 1} 5:00"))


@pytest.fixture(scope="module")
def closet(lived: Lived) -> Closet:
    """What these weeks say."""
    return lived.look()


def text(said: Sequence[Outgoing]) -> str:
    """The answers alone."""
    return "\n".join(one.text for one in said if one.kind == "answer")


# --- what the record holds


def test_the_weeks_rounds_are_the_ones_that_were_posted(lived: Lived):
    """Each posted round that is over, one after the other, with the weather it had."""
    ledger = lived.group.day.ledger
    found = past(lived.group.barn, ledger.entries(), ledger.sheets(WEATHER_FROM), WEATHER_FROM, lived.now)
    starts = [(w.round, w.start.day) for w in found.course.windows]
    assert starts[:3] == [("morning", FIRST), ("evening", FIRST), ("morning", FIRST + 1)]
    assert starts[-1] == ("morning", LAST)  # the evening's is not over at five
    assert len(set(starts)) == len(starts) == 2 * (LAST - FIRST) + 1
    true, kept = november(), found.course.cut(int(lived.now.timestamp()) // 3600 * 3600 - 200 * 3600, 200)
    begin = (kept.start_s - true.start_s) // 3600
    for name in ("temperature_c", "humidity_pct", "wind_ms", "rain_mm", "cloud_pct"):
        assert getattr(kept, name) == pytest.approx(getattr(true, name)[begin : begin + 200], abs=0.01)


def test_what_was_worn_is_what_people_said_or_the_post_told(lived: Lived):
    """The liner by day; when it came in wet, the sheet alone that night."""
    ledger = lived.group.day.ledger
    found = past(lived.group.barn, ledger.entries(), ledger.sheets(WEATHER_FROM), WEATHER_FROM, lived.now)
    worn = {(w.start.day, w.round): wear["Juniper"] for w, wear in zip(found.course.windows, found.worn)}
    assert worn[9, "evening"] == ("juniper-liner", "juniper-sheet")
    assert worn[10, "morning"] == ("juniper-liner", "juniper-sheet")
    assert worn[10, "evening"] == ("juniper-sheet",)


def test_a_spare_on_another_horse_was_not_at_hand(lived: Lived):
    """While Birch has it on, Juniper could not have had it."""
    barn = lived.group.barn
    spare = barn.garment("old-sheet").model_copy(update={"size_in": 77})
    group = Weeks(barn.model_copy(update={"garments": (*barn.garments[:-1], spare)}))
    group.at_clock(f"{FIRST} 6:15")
    group.says(f"{FIRST} 7:25", "Theo", "Birch is wearing the spare rain sheet")
    group.at_clock(f"{FIRST} 15:45")
    ledger, now = group.day.ledger, group.at(f"{FIRST} 17:00")
    found = past(group.barn, ledger.entries(), ledger.sheets(WEATHER_FROM), WEATHER_FROM, now)
    assert found.worn[0]["Birch"] == ("old-sheet",)
    assert found.at_hand.away[0]["Juniper"]["old-sheet"] == ELSEWHERE
    assert "old-sheet" not in found.at_hand.away[0]["Birch"]


# --- what it says


def test_it_says_how_many_days_it_rests_on(closet: Closet):
    """Days of which plan and weather are known, and how cold and warm they were."""
    assert (closet.first.day, closet.last.day) == (FIRST, LAST)
    assert closet.days == LAST - FIRST
    assert closet.coldest_c == pytest.approx(november().temperature_c.min(), abs=1.0)


def test_with_too_little_on_record_it_advises_nothing_and_says_how_much_it_needs(lived: Lived):
    """Two weeks have shown neither the weather nor the barn's habits."""
    short = lived.look(weeks=2)
    assert short.days < NEEDED_DAYS
    assert short.advice is None
    assert short.as_json()["advice"] is None
    said = told(short, voice(lived.group.barn, "en", "us"))
    assert f"{short.days} days" in said
    assert f"I need {NEEDED_DAYS}" in said
    assert "would take away" not in said


def test_a_barn_that_never_posted_is_told_the_same(barn: Barn):
    """No record is the shortest record."""
    empty = look_back(barn, [], [], datetime(2026, 11, 26, 12, tzinfo=UTC))
    assert (empty.days, empty.rounds, empty.advice) == (0, 0, None)
    assert json.loads(json.dumps(empty.as_json()))["air_c"] is None


def test_a_piece_that_was_wanted_but_wet_is_counted_by_rounds(closet: Closet):
    """The liner was wet on each even evening: thirteen rounds in which the clipped horse went without."""
    assert closet.advice is not None
    (liner,) = closet.advice.missed
    assert (liner.garment, liner.do) == ("juniper-liner", "second")
    assert liner.rounds == {"wet": sum(day % 2 == 0 for day in range(FIRST, LAST))}
    assert liner.cold_h > 20


def test_the_one_piece_to_buy_is_the_one_that_takes_away_most(closet: Closet):
    """A warm rug spares the clipped horse the cold of wet evenings and of the coldest days."""
    assert closet.advice is not None
    best = closet.advice.advice[0]
    assert (best.do, best.horse, best.kind) == ("buy", "Juniper", "turnout")
    assert best.hours > closet.advice.missed[0].hours
    assert best.cold_h <= closet.advice.cold_h
    assert [a.hours for a in closet.advice.advice] == sorted((a.hours for a in closet.advice.advice), reverse=True)


def test_what_nobody_wore_is_named_but_for_coolers(closet: Closet):
    """A sheet on a horse that is wanted bare, a spare that fits nobody; a cooler is used between rounds."""
    assert closet.never_worn == ("birch-sheet", "old-sheet")


def test_reports_are_counted_in_what_the_horse_wore(closet: Closet):
    """Four times cold, each under liner and sheet."""
    assert closet.reports == {"juniper-liner": {"cold": 4}, "juniper-sheet": {"cold": 4}}


def test_a_report_that_was_taken_back_or_that_work_explains_counts_nowhere(lived: Lived):
    """The record is what stands."""
    ledger = lived.group.day.ledger
    entries = [replace(e, undone_by=9999) if getattr(e.event, "sign", "") == "cold" else e for e in ledger.entries()]
    assert look_back(lived.group.barn, entries, ledger.sheets(WEATHER_FROM), lived.now).reports == {}


def unattended(barn: Barn, *said: str, hours: Hours | None = None) -> Closet:
    """Three weeks of posts after a few words on the first morning, looked back on."""
    group = Weeks(barn)
    group.hours = hours or group.hours
    for minute, words_ in enumerate(said):
        group.says(f"{FIRST} 5:{minute:02}", "Theo", words_)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("bot.board.draw", lambda *_, **__: b"picture")
        for day in range(FIRST, FIRST + NEEDED_DAYS + 1):
            for clock in ("6:15", "15:45"):
                group.at_clock(f"{day} {clock}")
    return Lived(group, group.at(f"{FIRST + NEEDED_DAYS + 1} 7:30")).look()


def test_a_torn_piece_that_was_missed_is_to_be_mended(lived: Lived):
    """The same weeks, had the liner been torn all along."""
    advice = unattended(lived.group.barn, "Juniper liner torn").advice
    assert advice is not None
    assert ("mend", "juniper-liner") in {(a.do, a.garment) for a in advice.advice}
    assert set(advice.missed[0].rounds) == {"torn"}


def test_a_sheet_that_lets_the_rain_through_is_to_be_reproofed(lived: Lived):
    """In three weeks of mild rain; one that is sound is not."""
    mild = november()
    wet = replace(mild, temperature_c=mild.temperature_c + 9, rain_mm=mild.rain_mm * 0 + 0.6)
    leaking = unattended(lived.group.barn, "Juniper sheet soaked", "Juniper sheet dry", hours=wet)
    sound = unattended(lived.group.barn, hours=wet)
    assert leaking.advice is not None
    assert sound.advice is not None
    assert ("reproof", "juniper-sheet") in {(a.do, a.garment) for a in leaking.advice.advice}
    assert "reproof" not in {a.do for a in sound.advice.advice}
    assert (leaking.leaking, sound.leaking) == (("juniper-sheet",), ())
    assert "reproof: Juniper's rain sheet." in told(leaking, voice(lived.group.barn, "en", "us"))


def test_a_piece_is_not_missed_while_a_like_one_hangs_dry(lived: Lived):
    """One of two sheets torn: the other did, and a third is not advised."""
    barn = lived.group.barn
    twin = barn.garment("juniper-sheet").model_copy(update={"id": "a-second-sheet", "also": ("twin",)})
    juniper = barn.horse("Juniper").model_copy(update={"wearing": (twin.id,)})
    two = barn.model_copy(update={"horses": (juniper, *barn.horses[1:]), "garments": (*barn.garments, twin)})
    found = unattended(two, "Juniper's twin torn")
    assert found.out == {"a-second-sheet": "torn"}
    assert found.advice is not None
    assert found.advice.missed == ()
    assert "sheet" not in {a.kind for a in found.advice.advice}


# --- in the group


@pytest.mark.parametrize(
    ("who", "question", "parts"),
    [
        ("Theo", "what should we buy?", ("a second 150 g liner", "°F", "Never worn in these weeks", "13× (wet 13×)")),
        ("Theo", "what do we never use?", ("Birch's rain sheet",)),
        ("Inés", "¿qué compramos?", ("una segunda manta interior 150 g", "h de frío", "mojada 13×")),
        ("Maëlle", "on achète quoi ?", ("une deuxième sous-couverture 150 g", "°C", "h de froid")),
    ],
)
def test_people_ask_in_plain_words_and_are_answered_in_their_own(
    lived: Lived, who: str, question: str, parts: tuple[str, ...]
):
    """Seen at once; the answer follows, in the asker's language and units."""
    said = lived.group.says(f"{LAST + 1} 5:00", who, question)
    assert words(said)[0] == "react: 👀"
    assert [part for part in parts if part not in text(said)] == []


@pytest.mark.parametrize(("language", "who"), [("en", "Theo"), ("es", "Inés"), ("fr", "Maëlle")])
def test_every_way_of_asking_is_heard_as_the_question(barn: Barn, language: str, who: str):
    """Each phrase of the row, of all horses or of one."""
    for phrase in spelled_out(TOPICS[language]["wardrobe"]):
        heard = read(phrase.replace("@", "Maple"), barn.person(who), barn, as_filed(barn))
        asked = [(getattr(e, "topic", None), getattr(e, "horse", None)) for e in heard.events]
        assert asked == [("wardrobe", "Maple" if "@" in phrase else None)], phrase


def test_of_one_horse_only_its_own_clothes_are_told(lived: Lived):
    """Birch lacks nothing, and its sheet is the one it never wore."""
    said = text(lived.group.says(f"{LAST + 1} 5:00", "Theo", "what should we buy for Birch?"))
    assert "Juniper" not in said
    assert "Birch's rain sheet" in said


def test_nobody_waits_while_a_season_is_gone_through(lived: Lived, monkeypatch: pytest.MonkeyPatch):
    """The work is done beside the talk: others are answered meanwhile, and a restart does not forget who asked."""
    free = threading.Event()

    def slow(*args: object) -> Closet:
        assert free.wait(20)
        return look_back(*args)  # type: ignore[arg-type]

    monkeypatch.setattr("bot.lookback.look_back", slow)
    group = lived.group
    for _ in range(2):  # the second start finds the wish that the first left open
        group.day = BarnDay(group.barn, group.store, group.fresh, since=group.at(f"{FIRST} 0:00"), aside=beside)
        asked = group.says(f"{LAST + 1} 5:02", "Theo", "what should we buy?") if _ == 0 else []
        assert "would take away" not in text(asked)
    assert "Juniper" in text(group.says(f"{LAST + 1} 5:03", "Theo", "how is Juniper?"))
    free.set()
    group.day.lookback._look.exception(timeout=20)  # type: ignore[union-attr]
    assert text(group.at_clock(f"{LAST + 1} 5:04")).count("What to do first:") == 1
    assert text(group.at_clock(f"{LAST + 1} 5:05")) == ""


def test_a_look_back_that_fails_is_said_and_not_tried_for_ever(lived: Lived, monkeypatch: pytest.MonkeyPatch):
    """One line to who asked, one in the log."""

    def broken(*args: object) -> Closet:
        raise ValueError("no such weather")

    monkeypatch.setattr("bot.lookback.look_back", broken)
    said = text(lived.group.says(f"{LAST + 1} 5:10", "Theo", "what should we buy?"))
    assert said == "I could not work that out; the operator finds the reason in the log."
    assert text(lived.group.at_clock(f"{LAST + 1} 5:11")) == ""


# --- at the command line


def test_the_command_line_tells_the_same(lived: Lived, capsys: pytest.CaptureFixture[str], tmp_path):
    """In words and as JSON, of weeks that can be chosen."""
    from bot.cli import main

    demo, now = demo_path(), lived.now.isoformat()
    store = Store.open(data_path(lived.group.barn.barn, tmp_path))
    for row in lived.group.store.conn.execute("SELECT * FROM entries").fetchall():
        store.conn.execute(f"INSERT INTO entries VALUES ({','.join('?' * len(row))})", tuple(row))
    for row in lived.group.store.conn.execute("SELECT * FROM sheets").fetchall():
        store.conn.execute("INSERT INTO sheets VALUES (?, ?)", tuple(row))
    store.close()

    def run(*argv: str) -> str:
        with pytest.raises(SystemExit) as ended:
            main(["history", str(demo), "--wardrobe", "--at", now, "--data", str(tmp_path), *argv])
        assert ended.value.code == 0
        return capsys.readouterr().out

    assert "days on record" in run()
    found = json.loads(run("--json"))
    assert found["days"] == LAST - FIRST
    assert found["rounds_worn"]["juniper-sheet"] > 0
    assert json.loads(run("--json", "--weeks", "2"))["advice"] is None
    assert Ledger(lived.group.store).entries()  # the group's own record is as it was
