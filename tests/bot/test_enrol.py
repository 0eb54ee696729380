"""The barn's list changed by message: what would be written is shown, yes writes it, undo takes it back."""

import re
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.barn import Barn, demo_path, load
from bot.barn.amend import amended, as_now, lines
from bot.enrol.reading import proposed
from bot.enrol.tables import TABLES
from bot.events import Enrolled, Struck
from bot.export import export
from bot.message import Incoming, Sender
from bot.problems import WrongFile
from bot.state import as_filed
from bot.words import read
from bot.words.said import phrasebook
from tests.barn_group import Group, words
from tests.words.corpus import HALVES
from tests.words.corpus import barn as barn_of
from tests.words.corpus import lines as lines_of

TODAY = date(2026, 11, 26)
DEMO = load(demo_path())


@pytest.fixture
def group(barn: Barn, monkeypatch: pytest.MonkeyPatch) -> Group:
    """The group after the morning's post; pictures are drawn elsewhere."""
    monkeypatch.setattr("bot.board.draw", lambda *_, **__: b"picture")
    made = Group(barn)
    made.until("6:20")
    return made


def change(text: str, who: str = "Theo", barn: Barn = DEMO) -> Enrolled | Struck | None:
    """What a message of somebody's would change."""
    person = barn.person(who)
    assert person is not None
    return proposed(text, person, barn, as_filed(barn))


def written(text: str, who: str = "Theo") -> list[str]:
    """The lines a message would write."""
    told = change(text, who)
    assert told is not None, text
    return lines(DEMO, amended(DEMO, told, TODAY))


# ── what is a change ─────────────────────────────────────────────────────────────────────────────────────────────────


@pytest.mark.parametrize(
    ("text", "line"),
    [
        ("new horse Biscuit", "+ horses: {name: Biscuit}"),
        ("new horse: Friday, 75 in, born 2015", "+ horses: {name: Friday, size_in: 75, born: 2015}"),
        ("new pony Fern, owner Walt", "+ horses: {name: Fern, owner: Walt, species: pony}"),
        (
            "new spare turnout 200 g 75 in",
            "+ garments: {id: spare-turnout-200, size_in: 75, kind: turnout, fill_g: 200, waterproof: true}",
        ),
        (
            "new liner for Maple 150g 75in, leg straps",
            "+ garments: {id: maple-liner-150, size_in: 75, horse: Maple, kind: liner, fill_g: 150, rear: leg straps}",
        ),
        (
            "new sheet for Maple 75 in",
            "+ garments: {id: maple-sheet-2, size_in: 75, horse: Maple, kind: sheet, waterproof: true}",
        ),
        ("new groom Marta, speaks Spanish", "+ people: {name: Marta, role: groom, language: es}"),
        ("new owner Ben, telegram 5550101", "+ people: {name: Ben, telegram: 5550101, role: owner}"),
        (
            "new neck cover for Tansy 150 g 75 in",
            "+ garments: {id: tansy-neck-150, size_in: 75, horse: Tansy, kind: neck, fill_g: 150, neck: full}",
        ),
        ("new manager Dot", "+ people: {name: Dot, role: manager}"),
        ("set Maple: size 78 in, condition 4", "+ horses: {name: Maple, size_in: 78, condition: 4}"),
        ("set spare-heavy-78: size 80 in", "+ garments: {id: spare-heavy-78, size_in: 80}"),
        ("Tansy sold", "- horses: {name: Tansy}"),
        ("Maple's liner sold", "- garments: {id: maple-liner}"),
        ("Dot no longer works here", "- people: {name: Dot}"),
        ("take school medium off the list", "- garments: {id: spare-medium-75}"),
        ("nuevo caballo Trufa, 75 in, dueño Walt", "+ horses: {name: Trufa, size_in: 75, owner: Walt}"),
        (
            "nueva manta de campo para Maple 200 g 75 in",
            "+ garments: {id: maple-turnout-200, size_in: 75, horse: Maple, kind: turnout, fill_g: 200, "
            "waterproof: true}",
        ),
        ("Tansy vendida", "- horses: {name: Tansy}"),
        ("nouveau cheval Biscuit, né en 2015", "+ horses: {name: Biscuit, born: 2015}"),
        (
            "nouvelle sous-couverture pour Maple 150 g",
            "+ garments: {id: maple-liner-150, horse: Maple, kind: liner, fill_g: 150}",
        ),
        ("retire Tansy de la liste", "- horses: {name: Tansy}"),
    ],
)
def test_a_managers_plain_sentence_becomes_lines_of_the_file(text: str, line: str) -> None:
    """New horses, pieces and people, facts of them, what left; in three languages, in the file's own notation."""
    assert line in written(text)


@pytest.mark.parametrize(
    "chatter",
    [
        "new horse arriving Friday",
        "New Horse Friday",
        "new horse is here!",
        "new horse",
        "new mare Bella is lovely",
        "new groom starts Monday",
        "new groom Marta starts Monday",
        "new rug for Maple",
        "new liner for Maple",
        "new blue turnout 200 g",
        "Maple's new liner is here",
        "we need a new spare turnout 200 g 75 in",
        "hay sold",
        "Tansy sold?",
        "Tansy sold me on it",
        "I sold Tansy",
        "Walt sold",
        "Marta left at five",
        "set Maple free",
        "set Maple: free",
        "set the alarm: 6",
        "caballo nuevo el viernes",
        "hay caballo nuevo",
        "nouveau cheval vendredi",
        "on a vendu le foin",
        "Theo no longer works here",
        "set Theo: role groom",
    ],
)
def test_what_a_barn_says_in_passing_changes_nothing(chatter: str) -> None:
    """Every word must be understood; nobody strikes themselves."""
    assert change(chatter) is None


@pytest.mark.parametrize("half", HALVES)
def test_no_message_of_the_corpus_changes_the_list(half: str) -> None:
    """Reports and small talk of whole barns, all taken as their manager's."""
    for line in lines_of(half):
        here = barn_of(line.barn)
        manager = next(p for p in here.people if p.role == "manager")
        assert proposed(line.text, manager, here, as_filed(here)) is None, line.text


@given(st.text(max_size=60))
def test_no_text_whatever_breaks_the_reading(text: str) -> None:
    """Whatever a manager writes is a change or none."""
    change(text)
    change(f"new horse {text}")
    change(f"set Maple: {text}")


@pytest.mark.parametrize("who", ["Inés", "Ruth"])
def test_only_a_manager_changes_the_list(who: str) -> None:
    """A groom or an owner who says so is chatting."""
    assert change("Tansy sold", who) is None


@pytest.mark.parametrize("text", ["Tansy sold", "new horse Biscuit, 75 in", "new spare turnout 200 g 75 in"])
def test_reading_alone_stays_silent_on_them(text: str) -> None:
    """They are no kind of report."""
    assert read(text, DEMO.person("Theo"), DEMO, as_filed(DEMO)).chatter


@pytest.mark.parametrize(
    ("told", "why"),
    [
        (Enrolled("horses", "June", {}), "names must be unique"),
        (Enrolled("garments", "x", {"kind": "liner"}), "a liner is its fill"),
        (Enrolled("horses", "Fern", {"size_in": 7500}), "24 to 120"),
        (Enrolled("horses", "Fern", {"owner": "Nobody"}), "not among people"),
    ],
)
def test_what_the_file_may_not_say_the_chat_may_not_either(told: Enrolled, why: str) -> None:
    """The same types, the same rules between keys."""
    with pytest.raises(WrongFile, match=why):
        amended(DEMO, told, TODAY)


# ── the talk ─────────────────────────────────────────────────────────────────────────────────────────────────────────


def test_a_new_horse_is_shown_then_written_then_planned_for(group: Group) -> None:
    """The lines first, yes or no; from then on it has a name, and the next post dresses it."""
    (shown,) = group.says("8:00", "Theo", "new horse Biscuit, 75 in, owner Walt")
    assert "+ horses: {name: Biscuit, size_in: 75, owner: Walt}" in shown.text
    assert [row[0].text for row in shown.buttons] == ["Yes", "No"]
    assert "Biscuit" not in [h.name for h in group.day.barn.horses]

    assert words(group.says("8:01", "Theo", "yes")) == ["answer: Written: it counts from now on. “undo” takes it back."]
    assert group.says("8:05", "Inés", "Biscuit sudado")[0].text.startswith("Biscuit suda")
    post = next(one for one in group.until("15:50") if one.kind == "post")
    assert "Biscuit" in post.text


@pytest.mark.parametrize("reply", ["no", "2", "non", "cancel"])
def test_no_writes_nothing_and_is_the_end_of_it(group: Group, reply: str) -> None:
    """A later yes to somebody else does not write it after all."""
    group.says("8:00", "Theo", "Tansy sold")

    assert words(group.says("8:01", "Theo", reply)) == ["answer: Nothing is written."]
    assert group.says("8:02", "Theo", "yes") == []
    assert "Tansy" in [h.name for h in group.day.barn.horses]


def test_anybody_elses_yes_is_not_the_managers(group: Group) -> None:
    """Only a manager answers, even in reply to the question itself."""
    group.says("8:00", "Theo", "Tansy sold")
    group.says("8:01", "Inés", "yes", reply_to=group.key("Shall I write"))

    assert "Tansy" in [h.name for h in group.day.barn.horses]


def test_a_yes_to_somebody_elses_message_writes_nothing(group: Group) -> None:
    """As in "coffee?", "yes": the reply is to a person, not to the question of the list."""
    group.says("8:00", "Theo", "Tansy sold")

    assert group.says("8:01", "Theo", "yes", reply_to="g:coffee") == []
    assert "Tansy" in [h.name for h in group.day.barn.horses]


@pytest.mark.parametrize("yes", ["yes", "1", "ok", "sí", "oui", "Yes please."])
def test_yes_in_any_words_writes_it(group: Group, yes: str) -> None:
    """By words or by the number of the choice, as in a terminal."""
    group.says("8:00", "Theo", "Tansy sold")
    group.says("8:01", "Theo", yes)

    assert "Tansy" not in [h.name for h in group.day.barn.horses]


def test_a_tap_on_yes_writes_it(group: Group) -> None:
    """Gloves on, one tap."""
    group.says("8:00", "Theo", "Tansy sold")
    group.says("8:01", "Theo", "", tap="pick:1", reply_to=group.key("Shall I write"))

    assert "Tansy" not in [h.name for h in group.day.barn.horses]


def test_a_second_yes_writes_nothing_twice(group: Group) -> None:
    """The list already says so."""
    group.says("8:00", "Theo", "Tansy sold")
    group.says("8:01", "Theo", "yes")

    again = group.says("8:02", "Theo", "", tap="pick:1", reply_to=group.key("Shall I write"))
    assert words(again) == ["answer: That stands in the list already."]


def test_a_horse_that_left_is_on_no_plan_and_undo_brings_it_back(group: Group) -> None:
    """With its clothes; nobody is reminded of it; taken back it is as it was."""
    group.says("8:00", "Theo", "Tansy sold")
    group.says("8:01", "Theo", "yes")
    assert group.says("8:02", "Ruth", "how is Tansy?") == []
    assert "Tansy" not in "".join(words(group.says("8:03", "Theo", "who is left?")))

    assert words(group.says("8:04", "Theo", "undo"))[0] == "answer: Taken back: Tansy off the list."
    assert "Tansy wears now: 220 g turnout" in group.says("8:05", "Ruth", "how is Tansy?")[0].text


def test_a_posts_buttons_keep_to_the_horses_they_were_made_for(group: Group) -> None:
    """The tap on Quill's button means Quill, though a horse before it on the list has left."""
    quill = next(i for i, h in enumerate(group.barn.horses) if h.name == "Quill")
    group.says("8:00", "Theo", "Tansy sold")
    group.says("8:01", "Theo", "yes")
    group.says("8:02", "Inés", "", tap=f"done:{quill}", reply_to=group.key('pin":true'))

    standing = group.day.state.standing
    assert standing is not None
    assert standing.done == {"Quill"}


def test_the_list_stays_over_a_restart(group: Group) -> None:
    """It is the file and what stands in the ledger."""
    group.says("8:00", "Theo", "new groom Marta")
    group.says("8:01", "Theo", "yes")
    group.open()

    assert group.says("8:02", "Marta", "Maple shivering")[0].kind == "alert"


def test_a_stranger_is_enrolled_with_their_number_in_answer_to_the_line_they_got(group: Group) -> None:
    """Nobody knows their Telegram number by heart; lower case is no hindrance behind a colon."""
    marta = Sender(4242, "marta")
    (line,) = group.hears(Incoming("g:stranger", marta, "Maple sweaty", group.at("8:00")))
    assert "“new groom: marta”" in line.text
    (shown,) = group.says("8:01", "Theo", "new groom: marta", reply_to=group.key("new groom: marta"))
    assert "+ people: {name: marta, telegram: 4242, role: groom}" in shown.text
    group.says("8:02", "Theo", "yes")

    answered = group.hears(Incoming("g:groom", marta, "Maple shivering", group.at("8:05")))
    assert answered[0].text.startswith("Maple is shivering")


# ── the file ─────────────────────────────────────────────────────────────────────────────────────────────────────────


def test_the_export_has_the_list_as_it_is_and_keeps_the_comments(group: Group, tmp_path: Path) -> None:
    """What came is there, what left is not; a bot started on the exported file has the same list."""
    for minute, text in enumerate(["new horse Biscuit, 75 in", "Tansy sold", "set Maple: size 78 in"]):
        group.says(f"8:{3 * minute:02}", "Theo", text)
        group.says(f"8:{3 * minute + 1:02}", "Theo", "yes")
    text = export(demo_path(), group.barn, group.day.state, group.day.barn)
    path = tmp_path / "barn.yaml"
    path.write_text(text, encoding="utf-8")
    again = load(path)

    assert [h.name for h in again.horses] == [h.name for h in group.day.barn.horses]
    assert "# other names people use" in text
    assert "tansy" not in text
    assert as_now(again, group.day.ledger.entries()) == again


def test_the_export_is_a_good_file_though_a_horse_still_wears_what_was_sold(group: Group, tmp_path: Path) -> None:
    """Of what is left of its clothes nobody has said."""
    group.says("8:00", "Theo", "Maple done")
    worn = group.day.state.horses["Maple"].wear
    assert worn
    group.says("8:01", "Theo", f"{worn[0]} sold")
    group.says("8:02", "Theo", "yes")
    path = tmp_path / "barn.yaml"
    path.write_text(export(demo_path(), group.barn, group.day.state, group.day.barn), encoding="utf-8")

    assert load(path).horse("Maple").wearing is None


def test_a_later_edit_of_the_file_outdates_what_the_chat_said(group: Group) -> None:
    """The file said 75 when the chat said 78; now it says 80, so 80 it is."""
    group.says("8:00", "Theo", "set Maple: size 78 in")
    group.says("8:01", "Theo", "yes")
    edited = amended(group.barn, Enrolled("horses", "Maple", {"size_in": 80}), TODAY)

    assert as_now(group.barn, group.day.ledger.entries()).horse("Maple").size == 78
    assert as_now(edited, group.day.ledger.entries()).horse("Maple").size == 80


def test_taking_back_an_undo_of_the_list_brings_the_change_again(group: Group) -> None:
    """The message that said undo is edited into something else: what it had taken back stands again."""
    group.says("8:00", "Theo", "Tansy sold")
    group.says("8:01", "Theo", "yes")
    undo = Incoming("g:undo", Sender(None, "Theo"), "undo", group.at("8:02"))
    group.hears(undo)
    assert "Tansy" in [h.name for h in group.day.barn.horses]

    group.hears(replace(undo, text="good riddance", at=group.at("8:03"), edited=True))
    assert "Tansy" not in [h.name for h in group.day.barn.horses]


def test_a_size_in_inches_takes_the_place_of_one_in_centimetres() -> None:
    """The file has one size a horse."""
    assert written("set Clementine: size 58 in") == [
        "- horses: {name: Clementine, size_cm: 145}",
        "+ horses: {name: Clementine, size_in: 58}",
    ]


def test_who_leaves_owns_no_horse_any_more() -> None:
    """The lines show what goes with a person, a horse or a piece."""
    assert "- horses: {name: Pip, owner: Priya}" in written("take Priya off the list")
    assert "- garments: {id: tansy-liner}" in written("Tansy sold")
    assert "- horses: {name: Maple, wearing: [maple-sheet]}" in written("take maple-sheet off the list")


# ── languages ────────────────────────────────────────────────────────────────────────────────────────────────────────


@pytest.mark.parametrize("language", TABLES)
def test_every_language_has_every_row(language: str) -> None:
    """What can be changed in one language can be changed in each."""
    for part, english in TABLES["en"]._asdict().items():
        there = getattr(TABLES[language], part)
        assert set(there) == set(english) if isinstance(english, dict) else there


@pytest.mark.parametrize("language", TABLES)
def test_what_help_tells_the_manager_is_understood(language: str) -> None:
    """Each example in the manager's help is a change when written as it stands there."""
    text = phrasebook(language).say("help manager", one="Maple")
    examples = re.findall(r"[“«]\s*(.*?)\s*[”»]", text)

    assert len(examples) == 5
    assert all(change(example) for example in examples), examples
