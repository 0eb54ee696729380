"""What the bot says back: to questions, to reports, to a horse in danger."""

import re
from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot import answer
from bot.barn import Barn, Person
from bot.events import (
    SIGNS,
    Air,
    Asked,
    Clipped,
    Done,
    Entry,
    GarmentIs,
    Placed,
    RecheckSet,
    Seen,
    Wearing,
    Wished,
    Worked,
)
from bot.evidence import Lesson
from bot.moves import Move
from bot.sheet import Sheet
from bot.state import GarmentNow, HorseNow, State
from bot.words import Ask, Refused
from bot.words.said import LANGUAGES

NINE = datetime(2026, 11, 26, 14, tzinfo=UTC)  # 9 am at the farm
THEO = Person(name="Theo", role="manager")
INES = Person(name="Inés", role="groom", language="es", units="metric")
MAELLE = Person(name="Maëlle", role="groom", language="fr", units="metric")
RUTH = Person(name="Ruth", role="owner")


@pytest.fixture
def ask(sheet: Sheet, state: State, farm: Barn) -> Callable[..., str]:
    """Asks as Theo at nine, unless somebody else is named."""

    def asked(
        about: Any, horse: str | None = None, garment: str | None = None, person: Person = THEO, **more: Any
    ) -> str:
        return answer.answer(Asked(about, horse, garment), sheet, state, farm, person, NINE, **more)

    return asked


# ── why ──────────────────────────────────────────────────────────────────────────────────────────────────────────


def test_why_tells_the_reasons_the_worst_hours_and_what_else_would_do(ask: Callable[..., str]) -> None:
    """From the plan as posted, in a few lines."""
    assert ask("why", "Maple").splitlines() == [
        "Maple: 100 g liner + rain sheet until 4:30 pm, because: gusts 39 mph while hay is outside, noon; clipped.",
        "Coldest hour 1 pm: 3°F to spare.",
        "Warmest hour noon: 13°F before it is too warm.",
        "Anything from 60–190 g would do.",
        "Check the straps before the wind, 39 mph at noon.",
    ]


def test_why_without_a_name_explains_who_changes(ask: Callable[..., str]) -> None:
    """The weather first, then each reason once, with the horses that change for it."""
    assert ask("why").splitlines() == [
        "34°F, up to 38°F at noon, rain from 11 am (0.22 in), gusts 39 mph at noon.",
        "Gusts 39 mph while hay is outside, noon; clipped:",
        "Maple: 100 g liner + rain sheet",
        "150 g liner not dry, 6 h to go; a spare is lent:",
        "Juniper: spare 200 g turnout",
        "Cold rain and wind, 0.22 in of rain:",
        "Otis: 100 g liner + rain sheet",
        "Warm enough bare, 6°F to spare:",
        "Pip: bare",
        "“Why Maple?” tells more of one horse.",
    ]


def test_why_not_the_heavy_is_answered_by_what_stands_against_it(ask: Callable[..., str]) -> None:
    """A refusal of the rules with its number."""
    assert ask("why", "Maple", "maple-heavy") == "Not the 300 g turnout for Maple: too warm, by 7°F."


def test_why_not_a_piece_that_is_wet_or_on_another_horse_or_not_needed(ask: Callable[..., str]) -> None:
    """The state of the piece, then who has it, then that what is on suffices."""
    assert ask("why", "Juniper", "juniper-liner") == "Not the 150 g liner for Juniper: wet."
    assert ask("why", "Pip", "spare-medium") == "The spare 200 g turnout goes to Juniper this round, so not to Pip."
    assert ask("why", "Pip", "pip-medium") == "Pip does not need the 200 g turnout: bare is enough."


def test_a_piece_that_is_worn_is_explained_by_its_horse(ask: Callable[..., str]) -> None:
    """Asked of Maple's sheet, it tells why Maple wears it."""
    assert ask("why", None, "maple-sheet").startswith("Maple: 100 g liner + rain sheet")


def test_a_spare_is_told_by_whom_it_goes_to(ask: Callable[..., str]) -> None:
    """Without a horse named, a spare answers for itself; an unknown horse is said to be unknown."""
    assert ask("why", None, "spare-medium") == "Spare 200 g turnout goes to Juniper this round."
    assert ask("why", None, "spare-sheet") == "Spare rain sheet goes to nobody this round."
    assert ask("why", "Nobody") == "Nobody is not on the plan."


def test_in_the_evening_why_is_about_the_evening(sheet: Sheet, state: State, farm: Barn) -> None:
    """The window that now lies in, not the first of the sheet."""
    night = sheet.windows[1].start + timedelta(hours=1)
    told = answer.answer(Asked("why", "Pip"), sheet, state, farm, THEO, night)
    assert told.startswith("Pip: 200 g turnout until 7 am")


# ── the other questions ──────────────────────────────────────────────────────────────────────────────────────────


def test_today_tells_each_round_still_to_come(ask: Callable[..., str]) -> None:
    """One horse in a line a round."""
    assert ask("today", "Pip").splitlines() == [
        "Pip, morning (7 am to 4:30 pm): bare",
        "Pip, evening (4:30 pm to 7 am): 200 g turnout",
    ]


def test_who_is_left_counts_nobody_done_that_nobody_said(ask: Callable[..., str]) -> None:
    """Maple and Clover were said done; three that change were not."""
    assert ask("left").splitlines() == ["Morning, still to do: Juniper, Otis and Pip.", "Done: Maple and Clover."]


def test_who_is_left_says_so_where_nobody_changes(sheet: Sheet, state: State, farm: Barn) -> None:
    """Nobody said that anybody is done, and nobody has to be."""
    still = [replace(h, windows=tuple(replace(w, change=False) for w in h.windows)) for h in sheet.horses]
    as_it_is, undone = replace(sheet, horses=tuple(still)), replace(state.standing, done=frozenset())
    asked = (Asked("left"), as_it_is, replace(state, standing=undone), farm)
    assert answer.answer(*asked, THEO, NINE) == "Morning: nobody changes."
    assert answer.answer(*asked, MAELLE, NINE) == "Matin : personne ne change."


def test_drying_tells_when_and_where_and_what_is_torn(ask: Callable[..., str]) -> None:
    """A time on the half hour, for nobody knows it better."""
    assert ask("drying").splitlines() == [
        "Juniper's 150 g liner is wet: dry about 1 pm, heated tack room",
        "Biscuit's rain sheet (biscuit-old): torn",
    ]
    assert ask("drying", None, "maple-liner") == "Maple's 100 g liner: dry"


def test_how_is_maple_tells_what_was_learned_and_from_what(ask: Callable[..., str]) -> None:
    """Every change of the offset is explainable: who saw what, when, and what it moved."""
    lessons = [
        Lesson(NINE - timedelta(days=1), "Theo", "comfortable", 2.0, 0.0),
        Lesson(NINE, "Inés", "sweating", 6.1, -0.8),
    ]
    assert ask("state", "Maple", evidence=lessons).splitlines() == [
        "Maple wears now: nobody has said.",
        "Planned: 100 g liner + rain sheet, out in the field.",
        "Feels the cold more than estimated, by 1.4°F (± 2.5°F)",
        "Thu 26 Nov 9 am, Inés: sweating (−1.4°F)",
        "Wed 25 Nov 9 am, Theo: comfortable (as estimated)",
    ]


def test_the_forecast_is_told_for_each_window_with_its_age_now(ask: Callable[..., str]) -> None:
    """The age grows with the clock, not with the post."""
    assert ask("forecast").splitlines() == [
        "Morning (7 am to 4:30 pm): 34°F, up to 38°F at noon, rain from 11 am (0.22 in), gusts 39 mph at noon.",
        "Evening (4:30 pm to 7 am): 32°F, down to 23°F at 4 am, dry, calm.",
        "Weather data by Open-Meteo.com, 3 h old.",
    ]


def test_everybody_is_answered_in_their_own_language_and_units(ask: Callable[..., str]) -> None:
    """The same answer to Theo, Inés and Maëlle."""
    assert ask("why", "Maple", "maple-heavy", INES) == "La manta 300 g no, para Maple: da demasiado calor, por 4 °C."
    french = ask("why", "Maple", "maple-heavy", MAELLE)
    assert french == "Pas la couverture 300 g pour Maple : trop chaude, de 4 °C."
    assert ask("left", person=INES) == "Mañana, faltan: Juniper, Otis y Pip.\nListos: Maple y Clover."


def test_before_the_first_post_a_question_is_answered_kindly(state: State, farm: Barn) -> None:
    """No plan is no reason for silence."""
    fresh = replace(state, standing=None)
    for about in ("why", "today", "forecast"):
        told = answer.answer(Asked(about), None, fresh, farm, THEO, NINE)
        assert told == "There is no plan yet. The next round's post brings one."
    assert answer.answer(Asked("left"), None, fresh, farm, THEO, NINE) == "No round has been posted yet."


def test_help_speaks_of_the_barns_own_horses(ask: Callable[..., str]) -> None:
    """What one may say, with names one knows."""
    assert "“Maple sweaty”, “Juniper shivering”" in ask("help")


# ── reports ──────────────────────────────────────────────────────────────────────────────────────────────────────


def sweaty(setting: str = "turnout") -> Seen:
    """Maple sweating at 9 °C under 100 g."""
    air = Air(NINE, {"temperature_c": [8.0, 9.0]})
    return Seen("Maple", "sweating", setting, wore=("maple-liner", "maple-sheet"), air=air)  # type: ignore[arg-type]


def test_sweating_is_noted_with_what_was_worn_and_what_to_do_now(state: State, farm: Barn) -> None:
    """Off or lighter at once, dried, looked at again."""
    metric = THEO.model_copy(update={"units": "metric"})
    assert answer.noted([sweaty()], state, farm, metric) == (
        "Maple: sweating noted, 9° under 100 g. Off or lighter at once, dry it, look again in half an hour."
    )


def test_sweat_from_work_is_answered_as_work(state: State, farm: Barn) -> None:
    """It says nothing about the rug."""
    told = answer.noted([sweaty("after work")], state, farm, THEO)
    assert told is not None
    assert told.startswith("Maple: sweat from work noted.")


@pytest.mark.parametrize(
    "event",
    [
        Seen("Maple", "comfortable"),
        GarmentIs("juniper-liner", "wet"),
        Wearing("Pip", ()),
        Done("all"),
        Clipped("Maple", "trace"),
        Placed("Maple", "stall"),
        Worked("Maple"),
    ],
)
def test_a_plain_report_needs_no_words(state: State, farm: Barn, event: Seen) -> None:
    """A reaction suffices."""
    assert answer.noted([event], state, farm, THEO) is None


def move(sheet: Sheet, horse: str, wear: tuple[str, ...], fill: float, window: int = 1) -> Move:
    """A horse moved to another outfit in the evening (or the morning)."""
    was = sheet.horse(horse).windows[window]
    now = replace(was, wear=wear, fill_g=fill)
    return Move(horse, sheet.windows[window].round, sheet.windows[window].start, was, now)


def test_what_a_report_changed_is_one_line_a_horse(sheet: Sheet, farm: Barn) -> None:
    """Down, up, across or bare, and when."""
    told = [
        answer.changed([], [move(sheet, horse, wear, fill)], sheet, sheet, farm, THEO)
        for horse, wear, fill in (
            ("Maple", ("maple-sheet",), 0.0),
            ("Maple", ("maple-heavy",), 300.0),
            ("Ned", ("spare-sheet",), 0.0),
            ("Pip", (), 0.0),
        )
    ]
    assert told == [
        "Maple: down to rain sheet at the evening round (4:30 pm).",
        "Maple: up to 300 g turnout at the evening round (4:30 pm).",
        "Ned: spare rain sheet instead at the evening round (4:30 pm).",
        "Pip: bare at the evening round (4:30 pm).",
    ]


def test_a_change_of_the_running_window_is_for_now(sheet: Sheet, farm: Barn) -> None:
    """Not at a round that has passed."""
    running = replace(sheet, made_at=NINE)
    told = answer.changed([], [move(sheet, "Maple", (), 0.0, 0)], sheet, running, farm, THEO)
    assert told == "Maple: bare now."


def test_a_report_that_changes_nothing_says_nothing(sheet: Sheet, farm: Barn) -> None:
    """The reaction was enough."""
    assert answer.changed([], [], sheet, sheet, farm, THEO) is None


def test_what_is_taken_back_is_said_in_the_words_of_the_report(farm: Barn) -> None:
    """So that people see that the right thing went."""
    events = [sweaty(), GarmentIs("juniper-liner", "wet"), Done(("Maple",)), Wished("Moss", keep_bare=True)]
    entries = [Entry(n, NINE, "Theo", "k", e) for n, e in enumerate(events)]
    assert answer.undone(entries, farm, THEO) == (
        "Taken back: Maple sweating; Juniper's 150 g liner wet; Maple done; Moss kept bare."
    )
    assert answer.undone([], farm, INES) == "No hay nada suyo que retirar."


def test_a_question_back_names_its_choices_in_words_of_the_trade(farm: Barn) -> None:
    """Ids stay behind the buttons; no two choices are called alike."""
    unsure = Ask("garment", "sheet", ("biscuit-sheet", "spare-sheet", "maple-sheet"))
    assert answer.ask(unsure, farm, THEO) == "Which piece is “sheet”?"
    assert answer.options(unsure, farm) == ("Biscuit's green sheet", "spare rain sheet", "Maple's rain sheet")
    assert answer.options(Ask("sign", "hm", ("wet", "cold")), farm, INES) == ("tiene el pelo mojado", "tiene frío")


def test_a_refusal_says_what_was_not_noted_and_who_may(farm: Barn) -> None:
    """Politely, with the name to ask."""
    refusal = Refused("not allowed", "manager", Clipped("Maple", "full"))
    assert answer.refused(refusal, farm, RUTH) == (
        "Not noted: Maple full clip. That is for the manager to say; ask Theo."
    )


# ── a horse in danger ────────────────────────────────────────────────────────────────────────────────────────────


def test_shivering_is_answered_at_once_with_what_is_really_dry(state: State, farm: Barn) -> None:
    """Shelter, off with the wet, a dry layer that is there, hay, when to look again, the veterinarian, whom to tell."""
    wet = state.garments | {"maple-sheet": GarmentNow("wet")}
    told = answer.alarm(
        Seen("Maple", "shivering", wore=("maple-sheet",)),
        NINE + timedelta(minutes=30),
        replace(state, garments=wet),
        farm,
        THEO,
    ).splitlines()
    assert told[:5] == [
        "Maple is shivering. Now:",
        "1. Out of the wind and the wet. Rub it dry if it is damp.",
        "2. Take off what is wet: rain sheet.",
        "3. When dry, a dry layer: 300 g turnout or spare 200 g turnout.",
        "4. Hay, as much as it will eat; water that is not icy.",
    ]
    assert told[5] == "Look again at 9:30 am and say here how it is."
    assert told[6].startswith("Call your veterinarian now if it still shivers in half an hour")
    assert told[7] == "Tell Ruth."


def test_a_rug_that_is_wet_torn_or_on_another_horse_is_never_offered(state: State, farm: Barn) -> None:
    """The dry layer is one that somebody can fetch."""
    garments = state.garments | {"maple-heavy": GarmentNow("torn")}
    horses = {**state.horses, "Juniper": HorseNow(wear=("spare-medium",))}
    nothing = replace(state, garments=garments, horses=horses)
    assert answer.dry_layers("Maple", nothing, farm) == ["maple-sheet", "spare-sheet"]
    clothed = replace(nothing, horses={**horses, "Maple": HorseNow(wear=("maple-sheet",))})
    assert answer.dry_layers("Maple", clothed, farm) == []


def test_a_spare_that_is_too_small_is_never_offered(state: State, farm: Barn) -> None:
    """A pony's rug helps no horse."""
    small = [g.model_copy(update={"size_in": 57.0}) if g.id == "spare-medium" else g for g in farm.garments]
    barn = farm.model_copy(update={"garments": tuple(small)})
    assert answer.dry_layers("Clover", state, barn) == ["spare-sheet"]
    assert answer.dry_layers("Clover", state, farm) == ["spare-medium"]


def test_a_wet_horse_gets_its_cooler_first(state: State, farm: Barn) -> None:
    """Nothing waterproof over wet hair."""
    assert answer.dry_layers("Tansy", state, farm, wet=True) == ["tansy-cooler"]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("sign", ["shivering", "unwell", "cold", "wet"])
def test_every_alarm_names_the_veterinarian_in_every_language(
    state: State, farm: Barn, sign: str, language: str
) -> None:
    """In plain words, and whom else to tell."""
    person = INES.model_copy(update={"language": language})
    told = answer.alarm(Seen("Maple", sign), NINE, state, farm, person)  # type: ignore[arg-type]
    assert re.search("veterin|vétérin", told)
    assert "Theo" in told
    assert "Ruth" in told


def test_an_unwell_horse_gets_the_temperatures_that_mean_a_call(state: State, farm: Barn) -> None:
    """In the reader's own scale, to a tenth."""
    told = answer.alarm(Seen("Maple", "unwell"), NINE, state, farm, THEO)
    assert "under 98.6°F or over 102.0°F means call" in told
    assert "menos de 37.0 °C o más de 38.9 °C" in answer.alarm(Seen("Maple", "unwell"), NINE, state, farm, INES)


def test_a_second_look_is_asked_for_and_then_somebody_is_called_by_name(farm: Barn) -> None:
    """First the group, then the one who must."""
    due = RecheckSet("Maple", "shivering", NINE)
    assert answer.recheck(due, farm, "en") == (
        "Maple was shivering. How is it now? Look, lay a hand behind the elbow, and answer here."
    )
    assert answer.escalate(due, farm, THEO).startswith("Theo: nobody has answered about Maple (shivering).")


# ── manners ──────────────────────────────────────────────────────────────────────────────────────────────────────


def test_the_hand_over_has_who_is_left_whom_to_watch_and_what_is_wet(sheet: Sheet, state: State, farm: Barn) -> None:
    """A change of shift in a few lines."""
    recheck = Entry(7, NINE, "haybell", "", RecheckSet("Pip", "shivering", NINE + timedelta(minutes=20)))
    watched = replace(state, horses={**state.horses, "Pip": HorseNow(recheck=recheck)})
    assert answer.handover(watched, sheet, farm, THEO, NINE).splitlines() == [
        "Hand-over, 9 am",
        "Morning, still to do: Juniper, Otis and Pip.",
        "Done: Maple and Clover.",
        "Pip: look again at 9:20 am (shivering).",
        "Juniper's 150 g liner is wet: dry about 1 pm, heated tack room",
        "Biscuit's rain sheet (biscuit-old): torn",
    ]


def test_joining_says_what_it_sees_and_what_it_needs(farm: Barn) -> None:
    """Privacy mode is told in words, and how to do without."""
    blind = answer.joined(farm, "en", sees_all=False, may_pin=False)
    assert "I see only replies to me, buttons and commands here." in blind
    assert "right to pin" in blind
    seeing = answer.joined(farm, "en", sees_all=True, may_pin=True)
    assert "a plain “Maple sweaty” is enough" in seeing
    assert "pin" not in seeing


def test_a_group_that_is_no_barns_hears_no_name() -> None:
    """One polite line."""
    for language in LANGUAGES:
        told = answer.unknown_group(language)
        assert "Windrow" not in told
        assert "\n" not in told


def test_the_manager_is_told_who_wrote_what(farm: Barn) -> None:
    """Danger from somebody not listed is no event, but it is heard."""
    told = answer.stranger_danger("Bob <i>", "Maple is {shivering}", "en")
    assert told == "Bob <i>, who is not on the list, writes: “Maple is {shivering}”. Please look."


def test_safety_on_request_is_marked_and_unknown_topics_are_listed() -> None:
    """Common practice, local rules and the veterinarian first."""
    assert answer.safety("fastening", "en").endswith(
        "Common practice, no study. Local rules and your veterinarian come first."
    )
    assert "chest last" in answer.safety("fastening", "en")
    assert answer.safety("?", "en").startswith("I can tell about: fastening, straps")


def test_an_owners_week_has_what_was_worn_seen_and_what_would_have_helped(
    sheet: Sheet, state: State, farm: Barn
) -> None:
    """Own horses only; signs with their day; what wants mending or buying."""
    entries = [Entry(1, NINE, "Inés", "k", sweaty()), Entry(2, NINE, "Theo", "k", Clipped("Maple", "trace"))]
    told = answer.week(RUTH, farm, state, entries, [sheet], NINE)
    assert told is not None
    blocks = told.split("\n\n")
    assert blocks[0] == "Your horses, Thu 26 Nov to Thu 26 Nov"
    assert blocks[1].splitlines() == [
        "Maple",
        "Worn: 100 g liner + rain sheet (1×)",
        "Seen: Thu 26 Nov sweating",
        "Changed: Maple trace clip",
        "Feels the cold more than estimated, by 1.4°F (± 2.5°F)",
    ]
    assert any(b.startswith("Sorrel") and "Would have helped (1×): dry 380–450 g turnout, 75 in" in b for b in blocks)
    assert answer.week(INES, farm, state, entries, [sheet], NINE) is None


# ── whatever comes ───────────────────────────────────────────────────────────────────────────────────────────────


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=60, deadline=None)
@given(
    about=st.sampled_from(["why", "today", "left", "drying", "state", "forecast", "help"]),
    horse=st.none() | st.text() | st.just("Maple"),
    garment=st.none() | st.text() | st.just("maple-heavy"),
    language=st.sampled_from(LANGUAGES),
    bare=st.booleans(),
)
def test_no_question_goes_unanswered(
    sheet: Sheet,
    state: State,
    farm: Barn,
    about: str,
    horse: str | None,
    garment: str | None,
    language: str,
    bare: bool,
) -> None:
    """Any horse, any piece, with a plan or without: some words come back."""
    person = INES.model_copy(update={"language": language})
    told = answer.answer(Asked(about, horse, garment), None if bare else sheet, state, farm, person, NINE)  # type: ignore[arg-type]
    assert told.strip()


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=40, deadline=None)
@given(
    horse=st.text(),
    sign=st.sampled_from(SIGNS),
    wore=st.none() | st.lists(st.text(), max_size=4),
    air=st.none() | st.floats(),
)
def test_no_sign_breaks_an_answer(
    state: State, farm: Barn, horse: str, sign: str, wore: list[str] | None, air: float | None
) -> None:
    """Unknown horses, unknown clothes, no weather: advice still comes."""
    worn = None if wore is None else tuple(wore)
    event = Seen(horse, sign, wore=worn, air=Air(NINE, {"temperature_c": [air]}))  # type: ignore[arg-type]
    answer.noted([event], state, farm, THEO)
    assert answer.undone([Entry(1, NINE, "x", "k", event)], farm, MAELLE)
    if sign in {"shivering", "unwell", "cold", "wet"}:
        assert answer.alarm(event, NINE, state, farm, MAELLE)
