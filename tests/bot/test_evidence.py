"""What a sign teaches: judged by the horse's clothes, clip and weather of its own hour, whatever came later."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from bot.barn import Barn
from bot.events import Clipped, Done, Entry, Event, Seen, Worked
from bot.evidence import Known, evidence, learned, lessons, silences, widening
from bot.planning import Planner
from bot.state import State, fold
from tests.barn_group import Group


@pytest.fixture
def sweaty(barn: Barn) -> list[Entry]:
    """Maple, sweating at twenty to nine, as the ledger keeps it."""
    group = Group(barn)
    group.says("8:40", "Inés", "Maple sweaty")
    return group.day.ledger.entries()


def later(rows: list[Entry], minutes: int, event: Event) -> list[Entry]:
    """The same ledger with one more entry, so many minutes after the first."""
    return [*rows, Entry(90, rows[0].at + timedelta(minutes=minutes), "Theo", "g:90", event)]


def weighed(barn: Barn, state: State, known: Known | None = None) -> list[tuple[float, float, bool]]:
    """Margins of each of Maple's signs, and whether something else explains it."""
    found = evidence(barn, barn.horse("Maple"), state.horses["Maple"], {} if known is None else known)
    return [(one.cold_margin_c, one.heat_margin_c, one.explained) for _, one in found]


def test_a_sign_is_kept_with_clothes_and_weather(barn: Barn, sweaty: list[Entry]) -> None:
    """So that learning needs no forecast: what it wore and up to a day of hours are in the ledger."""
    event = sweaty[0].event
    assert isinstance(event, Seen)
    assert (event.where, event.wore) == ("field", ("maple-sheet",))
    assert event.air is not None
    assert len(weighed(barn, fold(barn, sweaty))) == 1


def test_a_later_clip_does_not_change_what_an_earlier_sign_meant(barn: Barn, sweaty: list[Entry]) -> None:
    """It sweated in the coat it had then; that it is clipped now only makes the old word count less."""
    clipped = later(sweaty, 120, Clipped("Maple", "full"))
    assert weighed(barn, fold(barn, clipped)) == weighed(barn, fold(barn, sweaty))
    assert (
        len(widening(barn, fold(barn, clipped).horses["Maple"]))
        == len(widening(barn, fold(barn, sweaty).horses["Maple"])) + 1
    )


def test_an_earlier_clip_does(barn: Barn, sweaty: list[Entry]) -> None:
    """The model wants more on a clipped horse."""
    bare = barn.model_copy(update={"horses": tuple(
        h.model_copy(update={"clip": h.clip.model_copy(update={"style": "full", "on": date(2026, 11, 20)})})
        if h.name == "Maple" else h for h in barn.horses)})  # fmt: skip
    assert weighed(bare, fold(bare, sweaty))[0][0] < weighed(barn, fold(barn, sweaty))[0][0]


def test_what_was_worked_out_before_never_outlives_an_undo(barn: Barn, sweaty: list[Entry]) -> None:
    """Ridden, so it teaches nothing; the ride taken back, it teaches again, with the same memory at hand."""
    known: Known = {}
    ridden = later(sweaty, 5, Worked("Maple"))
    assert [x[2] for x in weighed(barn, fold(barn, ridden), known)] == [True]
    undone = [ridden[0], replace(ridden[1], undone_by=91)]
    assert [x[2] for x in weighed(barn, fold(barn, undone), known)] == [False]


def test_a_planner_that_has_seen_much_and_a_new_one_have_learned_the_same(barn: Barn, sweaty: list[Entry]) -> None:
    """Memory is only speed."""
    old, now = Planner(barn), sweaty[0].at
    old.learned(fold(barn, sweaty), now)
    state = fold(barn, later(sweaty, 120, Clipped("Maple", "full")))
    assert old.learned(state, now) == Planner(barn).learned(state, now)


@pytest.mark.parametrize("lost", ["air", "wore"])
def test_where_weather_or_clothes_are_not_known_nothing_is_learned(barn: Barn, sweaty: list[Entry], lost: str) -> None:
    """A guess would teach the wrong thing."""
    blind = [replace(sweaty[0], event=replace(sweaty[0].event, **{lost: None}))]
    assert weighed(barn, fold(barn, blind)) == []


def test_a_piece_the_file_no_longer_has_is_no_fault(barn: Barn, sweaty: list[Entry]) -> None:
    """The rug was sold; the sign stands with what is known of the rest."""
    sold = [replace(sweaty[0], event=replace(sweaty[0].event, wore=("sold", "maple-sheet")))]
    assert len(weighed(barn, fold(barn, sold))) == 1


def test_every_lesson_says_what_it_moved(barn: Barn, sweaty: list[Entry]) -> None:
    """One sign: the whole offset is its doing."""
    state, now_s = fold(barn, sweaty), int(sweaty[0].at.timestamp())
    (lesson,) = lessons(barn, state, barn.horse("Maple"), now_s, {})
    assert (lesson.who, lesson.sign) == ("Inés", "sweating")
    assert lesson.shift_c < 0
    assert learned(barn, state, barn.horse("Maple"), now_s, {}).mean_c == pytest.approx(lesson.shift_c, abs=0.02)


@pytest.fixture
def ticked(barn: Barn) -> list[Entry]:
    """The morning's round and the evening's, both ticked done at their hour."""
    group = Group(barn)
    for at in ("7:05", "16:40"):
        group.until(at, minutes=15)
        group.says(at, "Inés", "all done")
    return group.day.ledger.entries()


def quiet(barn: Barn, rows: list[Entry]) -> list[float]:
    """Weights of the rounds without a remark on Maple."""
    state, now_s = fold(barn, rows), int(rows[-1].at.timestamp()) + 60
    return [one.weight for one in silences(barn, barn.horse("Maple"), state.horses["Maple"], now_s, {})]


def test_a_round_ticked_done_keeps_its_weather_and_counts_as_a_weak_sign_of_comfort(
    barn: Barn, ticked: list[Entry]
) -> None:
    """Somebody was there and found nothing worth a word."""
    done = [entry.event for entry in ticked if isinstance(entry.event, Done)]
    assert done
    assert all(event.air is not None for event in done)
    weights = quiet(barn, ticked)
    assert weights
    assert all(0 < weight < 0.5 for weight in weights)


def test_where_nobody_ticked_silence_says_nothing(barn: Barn, ticked: list[Entry]) -> None:
    """Nobody may have looked."""
    assert quiet(barn, [entry for entry in ticked if not isinstance(entry.event, Done)]) == []


def test_a_round_whose_tick_is_taken_back_says_nothing(barn: Barn, ticked: list[Entry]) -> None:
    """Undo is leaving one out."""
    undone = [replace(e, undone_by=99) if isinstance(e.event, Done) else e for e in ticked]
    assert quiet(barn, undone) == []


def test_a_round_at_which_a_word_was_said_of_the_horse_is_no_silence(barn: Barn, ticked: list[Entry]) -> None:
    """The word counts, once."""
    spoken = [*ticked, Entry(90, ticked[-1].at + timedelta(minutes=5), "Inés", "g:90", Seen("Maple", "cold"))]
    assert len(quiet(barn, spoken)) < len(quiet(barn, ticked))


def test_an_older_ledger_whose_ticks_have_no_weather_is_read_as_before(barn: Barn, ticked: list[Entry]) -> None:
    """And its silence says nothing."""
    old = [replace(e, event=replace(e.event, air=None)) if isinstance(e.event, Done) else e for e in ticked]
    assert quiet(barn, old) == []
    assert fold(barn, old).horses["Maple"].wear == fold(barn, ticked).horses["Maple"].wear


def test_one_word_on_one_horse_moves_no_other_horse(barn: Barn, sweaty: list[Entry]) -> None:
    """Two horses never share an offset; what the whole barn shares is taken from the days before."""
    planner, before, after = Planner(barn), fold(barn, sweaty[1:]), fold(barn, sweaty)
    was, now = (planner.learned(state, sweaty[-1].at) for state in (before, after))
    assert {name for name in was if was[name] != now[name]} <= {"Maple"}
    assert was["Maple"] != now["Maple"]
