"""What a barn may rely on of its own past: the mirror, a horse's days, the bill, the veterinarian's page."""

import csv
from collections.abc import Sequence
from datetime import UTC, date, datetime, timedelta
from io import BytesIO, StringIO
from pathlib import Path

import pytest
from PIL import Image

from bot.barn import Barn
from bot.events import Air, Done, Entry, Event, Placed, Posted, Seen, Sign, Wearing
from bot.season import history
from bot.season.mirror import EXPECTED, Look, for_study, mirror, of_barn
from bot.season.pages import calendar, for_vet, mirrored

NOON = datetime(2026, 11, 10, 17, tzinfo=UTC)  # noon at the demo barn
DAY = timedelta(days=1)
SHEET = ("maple-sheet",)


def air(celsius: float) -> Air:
    """One recorded hour."""
    columns: dict[str, list[float | None]] = {
        "temperature_c": [celsius], "humidity_pct": [80.0], "wind_ms": [3.0], "gust_ms": [6.0], "rain_mm": [0.0],
        "snow_mm": [0.0], "cloud_pct": [80.0], "solar_wm2": [None], "rain_probability_pct": [None],
    }  # fmt: skip
    return Air(NOON, columns)


def seen(sign: Sign, horse: str = "Maple", celsius: float = 2.0) -> Seen:
    """A sign as the ledger keeps it."""
    return Seen(horse, sign, "turnout", "field", SHEET if horse == "Maple" else (), air(celsius))


def ledger(*said: tuple[float, str, Event]) -> list[Entry]:
    """Entries at so many days after NOON, by whom."""
    return [Entry(n, NOON + at * DAY, who, "", event) for n, (at, who, event) in enumerate(said, 1)]


# --- the mirror


def look(cold: float, heat: float, sign: str, month: str = "2026-11") -> Look:
    return Look(month, "Maple", "Inés", cold, heat, sign)


@pytest.mark.parametrize(
    ("cold", "heat", "expected"),
    [(-1, 9, "too cold"), (2, 9, "near cold"), (6, 7, "at ease"), (9, 3, "near warm"), (12, -2, "too warm")],
)
def test_an_expectation_is_the_side_with_less_room(cold: float, heat: float, expected: str):
    """Five words from too cold to too warm."""
    assert look(cold, heat, "comfortable").expected == expected


def test_every_sign_is_counted_once_in_its_month_and_once_in_all():
    """The months add up to the whole."""
    found = [look(2, 9, "cold"), look(2, 9, "comfortable"), look(9, 2, "sweating", "2026-12")]
    told = mirror(found)
    assert told.months == ["2026-11", "2026-12"]
    assert sum(sum(told.row(e)) for e in EXPECTED) == len(found)
    assert told.row("near cold", "2026-11") == [1, 1, 0]
    assert told.row("near warm", "2026-12") == [0, 0, 1]


def test_the_mirror_says_how_often_it_was_right_and_where_it_cannot_say():
    """Near cold is right where the horse was fine; a row without signs has no per cent."""
    table = mirror([look(2, 9, "comfortable"), look(2, 9, "cold")]).table()
    row = next(line for line in table.splitlines() if line.startswith("near cold"))
    assert row.split() == ["near", "cold", "1", "1", "0", "50%"]
    assert next(line for line in table.splitlines() if line.startswith("too warm")).endswith("–")


def test_a_sign_is_never_held_against_what_it_taught_itself(barn: Barn):
    """Expectations are those of the day: the first sign meets the bare model, the second what the first taught."""
    found = of_barn(
        barn, ledger(*((k, who, seen("cold", celsius=6.0)) for k, who in enumerate(("Inés", "Theo", "Dot"))))
    )
    (first, *_) = of_barn(barn, ledger((0, "Inés", seen("cold", celsius=6.0))))
    assert found[0] == first
    assert found[0].cold_c > found[1].cold_c > found[2].cold_c


def blowy(rounds: int) -> list[Entry]:
    """Three people find three bare horses cold in a gale and fine in a calm, twice a day."""

    def blown(wind_ms: float) -> Air:
        still = air(6.0)
        return Air(still.start, {**still.columns, "wind_ms": [wind_ms], "gust_ms": [wind_ms]})

    return ledger(
        *(
            (k / 2, who, Seen(horse, "cold" if k % 2 else "comfortable", "turnout", "field", (), blown(6.0 * (k % 2))))
            for k in range(rounds)
            for who, horse in (("Inés", "Birch"), ("Theo", "Fennel"), ("Maëlle", "Old Sorrel"))
        )
    )


def test_the_mirror_holds_up_the_very_model_that_the_plan_goes_by(barn: Barn):
    """With the barn's own wind, and how unsure it was of such a horse before a word."""
    from bot.evidence import learned, weigh
    from bot.state import fold

    entries = blowy(13)
    state = fold(barn, entries)
    last = next(e for e in reversed(entries) if isinstance(e.event, Seen) and e.event.horse == "Birch")
    plans = learned(barn, state, barn.horse("Birch"), int(last.at.timestamp()) - 1, {})
    assert plans.common.wind > 1.2
    one = weigh(barn, barn.horse("Birch"), state.horses["Birch"], last, {})
    assert one is not None
    here = one.under(plans.common)
    expected = here.cold_margin_c + here.bears_c - plans.mean_c, here.heat_margin_c + plans.mean_c
    found = [look for look in of_barn(barn, entries) if look.horse == "Birch"][-1]
    assert (found.cold_c, found.heat_c) == pytest.approx(expected)


def test_the_mirror_reads_the_ledger(barn: Barn):
    """Signs that stand are in it, wet and undone ones are not."""
    entries = ledger((0, "Inés", seen("cold")), (1, "Inés", seen("wet")), (2, "Theo", seen("comfortable", "Birch")))
    assert [(one.horse, one.sign) for one in of_barn(barn, entries)] == [("Maple", "cold"), ("Birch", "comfortable")]


def test_an_export_for_a_study_names_nobody(barn: Barn):
    """No person, horse or barn, and no day."""
    entries = ledger((0, "Inés", seen("cold")), (1, "Theo", seen("comfortable")), (2, "Inés", seen("hot", "Birch")))
    text = for_study(of_barn(barn, entries))
    rows = list(csv.DictReader(StringIO(text)))
    assert [(r["horse"], r["observer"], r["month"]) for r in rows] == [
        ("horse 1", "observer 1", "2026-11"),
        ("horse 1", "observer 2", "2026-11"),
        ("horse 2", "observer 1", "2026-11"),
    ]
    for name in (barn.barn, "Maple", "Birch", "Inés", "Theo", "maple-sheet"):
        assert name not in text


def test_the_mirror_is_a_small_picture():
    """A PNG that opens."""
    assert Image.open(BytesIO(mirrored(mirror([look(2, 9, "cold")])))).size[0] < 1000


# --- one horse's days


@pytest.fixture
def entries() -> Sequence[Entry]:
    """Three days of Maple: dressed, seen, undressed; a post ticked done; somebody else's horse."""
    posted = Posted(
        "evening", date(2026, 11, 11), NOON + DAY, NOON + 1.6 * DAY, {"Maple": ("maple-liner", "maple-sheet")}
    )
    return ledger(
        (0, "Inés", Wearing("Maple", ())),
        (0.1, "Inés", seen("cold")),
        (1, "haybell", posted),
        (1.1, "Theo", Done(("Maple",))),
        (1.2, "Theo", Wearing("Birch", ("birch-sheet",))),
        (2, "Maëlle", Placed("Maple", "stall")),
        (2.1, "Maëlle", Wearing("Maple", SHEET)),
    )


def test_a_day_tells_what_was_worn_seen_and_changed(barn: Barn, entries: Sequence[Entry]):
    """Local days, in order; a day on which nothing was said still has what it wore."""
    found = history.days(barn, entries, "Maple", date(2026, 11, 9), date(2026, 11, 12))
    assert [day.changes for day in found] == [0, 1, 1, 1]
    assert found[1].signs == ("cold",)
    assert found[0].wore == (SHEET,)
    assert found[2].wore == ((), ("maple-liner", "maple-sheet"))


def test_what_was_undone_is_not_on_the_record(barn: Barn, entries: Sequence[Entry]):
    """Neither the sign nor the change."""
    from dataclasses import replace

    undone = [replace(e, undone_by=99) if e.number in (2, 7) else e for e in entries]
    found = history.days(barn, undone, "Maple", date(2026, 11, 9), date(2026, 11, 12))
    assert [day.changes for day in found] == [0, 1, 1, 0]
    assert not any(day.signs for day in found)


def test_the_bill_counts_each_horses_changes_of_the_month(barn: Barn, entries: Sequence[Entry]):
    """A round ticked done is a change like one told by hand; a horse nobody touched is on it with none."""
    counts = history.changes(barn, entries, date(2026, 11, 1), date(2026, 11, 30))
    assert (counts["Maple"], counts["Birch"], counts["Juniper"]) == (3, 1, 0)
    assert history.changes(barn, entries, date(2026, 12, 1), date(2026, 12, 31))["Maple"] == 0


def test_the_bill_and_the_days_agree(barn: Barn, entries: Sequence[Entry]):
    """Two ways to count the same work."""
    days = history.days(barn, entries, "Maple", date(2026, 11, 1), date(2026, 11, 30))
    counts = history.changes(barn, entries, date(2026, 11, 1), date(2026, 11, 30))
    assert sum(day.changes for day in days) == counts["Maple"]


def test_an_owners_csv_has_a_row_for_each_thing_that_happened(barn: Barn, entries: Sequence[Entry]):
    """With the weather of each sign; nothing in it is run by a spreadsheet."""
    text = history.as_csv("=Maple", history.days(barn, entries, "Maple", date(2026, 11, 1), date(2026, 11, 30)))
    rows = list(csv.DictReader(StringIO(text)))
    assert [r["what"] for r in rows] == ["wears", "sign", "wears", "wears"]
    assert rows[1]["sign"] == "cold"
    assert rows[1]["temperature_c"] == "2.0"
    assert rows[0]["wear"] == "bare"
    assert {r["horse"] for r in rows} == {"'=Maple"}


def test_a_month_is_a_picture(barn: Barn, entries: Sequence[Entry]):
    """A PNG with every week in it."""
    found = history.days(barn, entries, "Maple", date(2026, 11, 1), date(2026, 11, 30))
    image = Image.open(BytesIO(calendar("Maple", found, date(2026, 11, 1))))
    assert image.format == "PNG"
    assert image.size[1] > image.size[0] / 3


def test_the_veterinarians_notes_are_one_page(barn: Barn):
    """However many signs there are."""
    many = ledger(*((k / 10, "Inés", seen("cold")) for k in range(100)))
    found = history.moments(barn, many, "Maple")
    for part in (found, []):
        page = for_vet(barn, barn.horse("Maple"), part)
        assert page.startswith(b"%PDF")
        assert page.count(b"/Type /Page\n") + page.count(b"/Type /Page ") == 1


# --- clothes and rooms


def test_a_shell_that_soaked_through_no_longer_counts_as_waterproof_until_it_is_back(barn: Barn):
    """Said soaked: it leaks, also once dry; in service again: it does not. A liner never was waterproof."""
    from bot import brief
    from bot.events import GarmentIs
    from bot.state import fold

    def leaks(garment: str, *said: tuple[float, str, Event]) -> bool:
        filed = next(g for g in barn.garments if g.id == garment)
        return brief.piece(barn, filed, fold(barn, ledger(*said)), NOON + 9 * DAY).leaks

    soaked, dry, back = (
        (k, "Inés", GarmentIs("maple-sheet", w)) for k, w in enumerate(("soaked", "dry", "in service"))
    )
    assert not leaks("maple-sheet")
    assert leaks("maple-sheet", soaked)
    assert leaks("maple-sheet", soaked, dry)
    assert not leaks("maple-sheet", soaked, dry, back)
    assert not leaks("maple-liner", (0, "Inés", GarmentIs("maple-liner", "soaked")))


def test_a_room_learns_from_liners_found_wet_the_next_day(barn: Barn):
    """It should take seven hours; found wet after fourteen time and again, the plan counts on longer."""
    from bot import brief
    from bot.events import GarmentIs
    from bot.state import fold

    said: list[tuple[float, str, Event]] = []
    for k in range(5):
        said += [
            (2 * k, "Inés", GarmentIs("maple-liner", "wet")),
            (2 * k + 0.6, "Theo", GarmentIs("maple-liner", "wet")),
        ]
    rails = brief.rails(barn, fold(barn, ledger(*said)))
    assert rails[0].learned_factor > 1.15
    assert [r.learned_factor for r in brief.rails(barn, fold(barn, []))] == [1.0] * len(barn.drying)


# --- at the command line


def run(capsys: pytest.CaptureFixture[str], *argv: str) -> tuple[int, str, str]:
    """(exit status, what was printed, what went to standard error)."""
    from bot.cli import main

    with pytest.raises(SystemExit) as ended:
        main(argv)
    return int(ended.value.code or 0), *capsys.readouterr()


def test_the_bill_the_month_and_the_mirror_can_be_asked_for(capsys: pytest.CaptureFixture[str], tmp_path):
    """Also of a barn that has no data yet."""
    from bot.barn import demo_path

    barn = str(demo_path())
    status, out, _ = run(capsys, "history", barn, "--month", "2026-11", "--data", str(tmp_path))
    assert (status, out.splitlines()[0]) == (0, "November 2026, changes of clothes")
    status, out, _ = run(capsys, "history", barn, "Maple", "--month", "2026-11", "--data", str(tmp_path))
    assert (status, out) == (0, "Maple\n01 Nov  maple-sheet\n")
    for option, name in (("--png", "month.png"), ("--vet", "vet.pdf")):
        status, _, _ = run(capsys, "history", barn, "Maple", option, str(tmp_path / name), "--data", str(tmp_path))
        assert status == 0
        assert (tmp_path / name).stat().st_size > 1000
    status, out, _ = run(capsys, "mirror", barn, "--data", str(tmp_path))
    assert status == 0
    assert "at ease" in out
    status, out, _ = run(capsys, "mirror", barn, "--study", "--data", str(tmp_path))
    assert out == "month,horse,observer,cold_margin_c,heat_margin_c,sign\n"


def test_an_unknown_horse_or_month_is_wrong_input(capsys: pytest.CaptureFixture[str]):
    """Exit 2, one line, which names there are."""
    from bot.barn import demo_path

    status, _, err = run(capsys, "history", str(demo_path()), "Mapel")
    assert status == 2
    assert "Maple" in err
    status, _, err = run(capsys, "history", str(demo_path()), "Maple", "--month", "November")
    assert status == 2
    assert "write 2026-11" in err


def test_the_mirror_says_what_the_barn_has_taught_of_its_wind(
    barn: Barn, capsys: pytest.CaptureFixture[str], tmp_path: Path
):
    """The same number that the plan goes by; nothing of a few signs."""
    from bot.barn import demo_path
    from bot.ledger import Ledger
    from bot.store import Store, data_path

    argv = "mirror", str(demo_path()), "--data", str(tmp_path)
    assert "taught nothing yet" in run(capsys, *argv)[1]
    store = Store.open(data_path(barn.barn, tmp_path))
    for entry in blowy(14):
        Ledger(store).append(entry.at, entry.who, f"k{entry.number}", [entry.event])
    store.close()
    out = run(capsys, *argv)[1]
    assert "times the forecast's, as all horses tell it" in out
    assert "mend its exposure" in out


def test_a_new_winter_coat_makes_last_winters_signs_count_less(barn: Barn):
    """From September on; in the southern half of the world from March."""
    from bot.evidence import widening
    from bot.state import fold

    now = fold(barn, ledger((0, "Inés", seen("cold", "Birch")))).horses["Birch"]
    south = barn.model_copy(update={"place": barn.place.model_copy(update={"latitude": -40.0})})
    for where, months in ((barn, 9), (south, 3)):
        autumns = [datetime.fromtimestamp(at, UTC) for at in widening(where, now)]
        assert [(at.year, at.month) for at in autumns] == [(2026, months), (2027, months)]
