"""A barn's day in its group: what people write, what they are told, and what stays when something fails."""

from dataclasses import replace

import pytest

from bot.barn import Barn
from bot.events import Done, GarmentIs, Posted, Seen
from bot.message import Incoming, Outgoing, Sender
from bot.store import Store
from tests.barn_group import Group, words


@pytest.fixture(autouse=True)
def no_picture(monkeypatch: pytest.MonkeyPatch) -> None:
    """Pictures are drawn elsewhere."""
    monkeypatch.setattr("bot.board.draw", lambda *_, **__: b"picture")


@pytest.fixture
def group(barn: Barn) -> Group:
    """The group before dawn."""
    return Group(barn)


@pytest.fixture
def morning(group: Group) -> Group:
    """The group after the morning's post."""
    group.until("6:20")
    return group


# ── posts ────────────────────────────────────────────────────────────────────────────────────────────────────────────


def test_one_post_a_round_with_its_picture_and_buttons(group: Group) -> None:
    """From midnight to midnight two posts come, each 45 minutes before its round, and one reminder after each."""
    said = group.until("27 0:00")
    posts = [one for one in said if one.kind == "post"]
    assert [one.about["round"] for one in posts] == ["morning", "evening"]
    assert [e.at.astimezone(group.barn.zone).strftime("%H:%M") for e in group.day.ledger.entries()
            if isinstance(e.event, Posted)] == ["06:15", "15:45"]  # fmt: skip
    assert all(one.picture == b"picture" and one.buttons and one.pin for one in posts)


def test_a_post_is_never_made_twice_over_restarts(group: Group) -> None:
    """The process may start as often as it likes: each round was posted once."""
    said = []
    for hour in range(1, 24):
        said += group.until(f"{hour}:00")
        group.open()
    assert [one.about["round"] for one in said if one.kind == "post"] == ["morning", "evening"]


def test_without_any_forecast_the_post_still_goes_out_and_says_so(barn: Barn) -> None:
    """No weather at all: the barn is told that there is none, and nobody is told to change."""
    (post,) = Group(barn, weather=None).until("6:20")
    assert "no forecast" in post.text.lower()


def test_a_late_start_posts_late_and_says_so(group: Group) -> None:
    """Started at nine, the morning's window is less than half over."""
    group.clock = group.at("9:00")
    (post,) = group.until("9:05")
    assert "late" in post.text.lower()


def test_rounds_missed_while_away_are_told_in_one_message(group: Group) -> None:
    """Away from Thursday noon to Saturday noon: one message names each round missed; Saturday's morning with them."""
    group.until("12:00")
    group.clock = group.at("28 12:00")
    group.open()
    said = group.until("28 12:05")
    assert [one.kind for one in said] == ["update"]
    assert len(said[0].text.splitlines()) >= 3


def test_the_very_first_start_too_late_in_a_round_says_so(group: Group) -> None:
    """Connected at two in the afternoon: nobody should wait for the morning's list; the evening's comes in time."""
    group.clock = group.at("14:00")
    (line,) = group.until("14:05")
    assert (line.kind, "morning" in line.text) == ("update", True)
    assert [one.kind for one in group.until("15:50")] == ["post"]


def test_what_was_missed_is_not_told_at_night(group: Group) -> None:
    """A restart at two in the morning, after a missed evening, keeps it until the quiet hours end."""
    group.until("12:00")
    group.clock = group.at("27 2:00")
    group.open()
    assert group.until("27 5:25") == []
    assert [one.kind for one in group.until("27 5:35")] == ["update"]


# ── reports ──────────────────────────────────────────────────────────────────────────────────────────────────────────


def test_a_report_that_changes_the_plan_says_the_change_in_one_line(morning: Group) -> None:
    """A wet liner: a nod at once, then what Juniper wears instead, in answer to the same message."""
    nod, change = morning.says("6:50", "Dot", "Juniper liner still wet")
    assert nod.kind == "react"
    assert change.kind == "answer"
    assert change.reply_to == nod.reply_to
    assert change.text.startswith("Juniper")
    assert "\n" not in change.text


def test_a_report_that_changes_nothing_gets_a_nod(morning: Group) -> None:
    """A comfortable horse needs no words."""
    assert words(morning.says("8:00", "Inés", "Birch comfortable")) == ["react: 👍"]


def test_chatter_is_left_alone(morning: Group) -> None:
    """Most of what is said in a barn's group is not for the bot."""
    for text in ("what a morning, coffee is on", "", "🐴🐴🐴", "ha" * 2500, "Theo: can you call the farrier?"):
        assert morning.says("8:00", "Walt", text) == []


def test_two_horses_in_one_message_are_two_facts(morning: Group) -> None:
    """Both are recorded under the one message, and an undo takes both back."""
    morning.says("8:00", "Inés", "Maple and Bramble comfortable")
    assert [e.event.horse for e in morning.day.ledger.entries() if isinstance(e.event, Seen)] == ["Maple", "Bramble"]
    morning.says("8:01", "Inés", "undo")
    assert not morning.day.state.horses["Maple"].signs
    assert not morning.day.state.horses["Bramble"].signs


def test_a_report_and_a_question_in_one_message_are_both_answered(morning: Group) -> None:
    """What a sweating horse needs is said although a question was answered too."""
    said = words(morning.says("8:00", "Theo", "Maple sweaty. What is Pip in today?"))
    assert any("Maple" in line and "sweat" in line for line in said)
    assert any("Pip" in line for line in said)


def test_a_message_delivered_twice_counts_once(morning: Group) -> None:
    """Redelivery is the chat's habit: no second event, no second answer."""
    message = Incoming("g:1", Sender(1002, "x"), "Birch comfortable", morning.at("8:00"))
    assert len(morning.hears(message)) == 1
    assert morning.hears(message) == []
    assert len([e for e in morning.day.ledger.entries() if isinstance(e.event, Seen)]) == 1


def test_all_done_is_everybody_and_a_name_is_one(morning: Group) -> None:
    """Nothing is taken as done that nobody said."""
    morning.says("7:10", "Inés", "Maple done")
    assert morning.day.state.standing.done == {"Maple"}
    morning.says("7:20", "Theo", "all done")
    assert morning.day.state.standing.done == {h.name for h in morning.barn.horses}
    assert morning.day.state.horses["Otter"].wear == morning.day.state.standing.wear["Otter"]


def test_what_somebody_says_a_horse_wears_counts_from_the_post_on(morning: Group) -> None:
    """Said before the round begins, it still is what the horse is in when somebody sees it sweat."""
    morning.says("6:40", "Inés", "Maple in the green sheet")
    morning.says("9:00", "Inés", "Maple sweaty")
    (sign,) = morning.day.state.horses["Maple"].signs
    assert sign.event.wore == ("maple-sheet",)


# ── undo and edits ───────────────────────────────────────────────────────────────────────────────────────────────────


def test_undo_takes_back_ones_own_last_report(morning: Group) -> None:
    """Not somebody else's, though that came later."""
    morning.says("8:00", "Inés", "Tansy medium wet")
    morning.says("8:01", "Dot", "Otter light wet")
    said = morning.says("8:02", "Inés", "undo")
    assert "Tansy" in said[0].text
    assert morning.day.state.garments["tansy-medium"].state == "dry"
    assert morning.day.state.garments["otter-light"].state == "wet"


def test_undo_again_takes_back_the_one_before(morning: Group) -> None:
    """Step by step, until there is nothing left to take back."""
    morning.says("8:00", "Inés", "Tansy medium wet")
    morning.says("8:01", "Inés", "Otter light wet")
    morning.says("8:02", "Inés", "undo")
    morning.says("8:03", "Inés", "undo")
    said = morning.says("8:04", "Inés", "undo")
    assert {morning.day.state.garments[g].state for g in ("tansy-medium", "otter-light")} == {"dry"}
    assert len(said) == 1


def test_only_a_manager_takes_back_anothers_report_by_replying_to_it(morning: Group) -> None:
    """A groom's "undo" under a colleague's report does nothing; the manager's does."""
    morning.says("8:00", "Inés", "Tansy medium wet", key="g:wet")
    morning.says("8:01", "Dot", "undo", reply_to="g:wet")
    assert morning.day.state.garments["tansy-medium"].state == "wet"
    morning.says("8:02", "Theo", "undo", reply_to="g:wet")
    assert morning.day.state.garments["tansy-medium"].state == "dry"


def test_undo_under_what_a_report_changed_takes_back_that_report(morning: Group) -> None:
    """A manager who replies to the bot's line means the report it answers, not a report of their own."""
    morning.says("6:40", "Theo", "Otter light wet")
    morning.says("6:50", "Dot", "Juniper liner still wet")
    morning.says("6:55", "Theo", "undo", reply_to=morning.key("Juniper: down"))
    assert morning.day.state.garments["juniper-liner"].state == "dry"
    assert morning.day.state.garments["otter-light"].state == "wet"


def test_an_edit_replaces_what_the_message_said_first(morning: Group) -> None:
    """The wrong horse is as if never named."""
    morning.says("8:00", "Inés", "Tansy medium wet", key="g:1x")
    morning.says("8:01", "Inés", "Otter light wet", key="g:1x", edited=True)
    assert morning.day.state.garments["tansy-medium"].state == "dry"
    assert morning.day.state.garments["otter-light"].state == "wet"


def test_an_edit_without_change_does_nothing(morning: Group) -> None:
    """A link preview counts as an edit in some chats."""
    morning.says("8:00", "Inés", "Tansy medium wet", key="g:1x")
    before = morning.day.ledger.entries()
    assert morning.says("8:01", "Inés", "Tansy medium wet", key="g:1x", edited=True) == []
    assert morning.day.ledger.entries() == before


def test_an_edit_into_chatter_takes_the_report_back_and_plans_anew(morning: Group) -> None:
    """What is no report any more is said to be taken back, and the plan returns to what it was."""
    wet = morning.says("12:05", "Dot", "Tansy medium soaked", key="g:1x")
    said = morning.says("12:06", "Dot", "never mind, coffee is on", key="g:1x", edited=True)
    assert wet[-1].text.startswith("Tansy: down")
    assert said[0].text.startswith("Taken back: Tansy")
    assert said[-1].text.startswith("Tansy: up")


# ── questions back ───────────────────────────────────────────────────────────────────────────────────────────────────


@pytest.mark.parametrize("answer", ["2", "Juniper", "the second", "Juniper liner"])
def test_an_open_question_is_completed_by_a_short_answer(morning: Group, answer: str) -> None:
    """Which liner? A number, a name or words settle it."""
    (ask,) = morning.says("8:00", "Theo", "liner wet")
    assert ask.kind == "ask"
    assert [b.data for row in ask.buttons for b in row] == ["pick:1", "pick:2", "pick:3"]
    morning.says("8:01", "Theo", answer)
    assert morning.day.state.garments["juniper-liner"].state == "wet"


def test_a_tap_completes_an_open_question(morning: Group) -> None:
    """With gloves on: the second choice."""
    morning.says("8:00", "Theo", "liner wet")
    asked = morning.key("liner")
    edit = morning.says("8:01", "Theo", "", tap="pick:2", reply_to=asked)[0]
    assert morning.day.state.garments["juniper-liner"].state == "wet"
    assert edit.edits == asked
    assert [[b.text.replace("\u00a0", " ") for b in row] for row in edit.buttons] == [
        ["✓ Juniper's 150 g liner · Theo"]
    ]
    assert morning.says("8:02", "Theo", "", tap="picked", reply_to=asked) == []


def test_an_answer_counts_after_a_restart(morning: Group) -> None:
    """The question was kept, so "2" still means something."""
    morning.says("8:00", "Theo", "liner wet")
    morning.open()
    morning.says("8:02", "Theo", "2")
    assert morning.day.state.garments["juniper-liner"].state == "wet"


def test_a_number_long_after_a_question_is_no_answer(morning: Group) -> None:
    """Nobody remembers what "2" was about."""
    morning.says("8:00", "Theo", "liner wet")
    morning.says("8:30", "Theo", "2")
    assert morning.day.state.garments["juniper-liner"].state == "dry"


def test_one_persons_question_is_not_answered_by_another(morning: Group) -> None:
    """Dot's "2" is Dot's business."""
    morning.says("8:00", "Theo", "liner wet")
    assert morning.says("8:01", "Dot", "2") == []
    assert morning.day.state.garments["juniper-liner"].state == "dry"


# ── strangers ────────────────────────────────────────────────────────────────────────────────────────────────────────


def test_a_stranger_is_told_politely_once_a_day(morning: Group) -> None:
    """One line, then silence until tomorrow; nothing they say is recorded."""
    assert [one.kind for one in morning.says("8:00", "Sam", "Maple sweaty")] == ["answer"]
    assert morning.says("9:00", "Sam", "Tansy medium wet") == []
    assert len(morning.says("27 8:01", "Sam", "Maple sweaty")) >= 1
    assert not [e for e in morning.day.ledger.entries() if e.who == "Sam"]


@pytest.mark.parametrize(
    "text", ["Pip shivering", "Tansy medium wet and Pip shivering", "one of the horses is shivering"]
)
def test_danger_told_by_a_stranger_reaches_the_manager(morning: Group, text: str) -> None:
    """It is no event, but Theo is told who wrote what, also by night and wherever in the message it stands."""
    said = morning.says("23:00", "Sam", text)
    assert {one.to for one in said if one.kind == "alert"} == {"group", "Theo"}
    assert all("Sam" in one.text and text in one.text and one.urgent for one in said if one.kind == "alert")
    assert not morning.day.state.horses["Pip"].signs


# ── a horse in need ──────────────────────────────────────────────────────────────────────────────────────────────────


def test_a_shivering_horse_that_nobody_looks_at_again_is_called_out(morning: Group) -> None:
    """Advice at once, the group after 30 minutes, the manager 15 later, the owner 15 later, then rest."""
    first = morning.says("11:00", "Dot", "Pip shivering")
    assert [one.kind for one in first] == ["alert"]
    assert first[0].urgent
    assert morning.until("11:29") == []
    assert [(one.kind, one.to) for one in morning.until("11:31")] == [("recheck", "group")]
    assert [(one.kind, one.to) for one in morning.until("11:46")] == [("alert", "group"), ("alert", "Theo")]
    assert [(one.kind, one.to) for one in morning.until("12:01")] == [("alert", "group"), ("alert", "Priya")]
    assert morning.until("15:00") == []


@pytest.mark.parametrize("sign", ["Pip not shivering any more", "Pip comfortable", "Pip rubbed"])
def test_any_later_sign_ends_the_second_look(morning: Group, sign: str) -> None:
    """Somebody looked."""
    morning.says("11:00", "Dot", "Pip shivering")
    morning.says("11:20", "Dot", sign)
    assert [one for one in morning.until("13:00") if one.kind in {"recheck", "alert"}] == []


def test_a_sweating_horse_is_looked_at_again_and_nobody_is_called(morning: Group) -> None:
    """Its own second look takes the place of the one for shivering; sweat from work needs none."""
    morning.says("11:00", "Dot", "Pip shivering")
    morning.says("11:20", "Dot", "Pip sweaty")
    assert morning.until("11:49") == []
    (asked,) = morning.until("13:00")
    assert (asked.kind, asked.to, asked.urgent) == ("recheck", "group", True)
    assert asked.text.startswith("Pip was sweating. How is it now?")
    morning.says("13:05", "Dot", "Maple sweaty from the lesson")
    assert [one for one in morning.until("14:00") if one.kind == "recheck"] == []


def test_still_shivering_starts_the_second_look_anew(morning: Group) -> None:
    """Thirty minutes from the last report."""
    morning.says("11:00", "Dot", "Pip shivering")
    morning.says("11:20", "Dot", "Pip still shivering")
    assert morning.until("11:49") == []
    assert [one.kind for one in morning.until("11:51")] == ["recheck"]


def test_a_shiver_taken_back_calls_nobody(morning: Group) -> None:
    """Not the group, and not the manager for a second look that was already asked for."""
    morning.says("11:00", "Dot", "Pip shivering")
    morning.until("11:35")
    morning.says("11:36", "Dot", "undo")
    assert [one for one in morning.until("13:00") if one.kind in {"recheck", "alert"}] == []


def test_a_second_look_survives_a_restart_and_quiet_hours(morning: Group) -> None:
    """A horse in need breaks the quiet."""
    morning.says("22:00", "Dot", "Pip shivering")
    morning.open()
    assert [(one.kind, one.urgent) for one in morning.until("22:35")] == [("recheck", True)]


def test_danger_outranks_roles(morning: Group) -> None:
    """An owner may report another's horse that shivers, though not its clothes."""
    assert [one.kind for one in morning.says("11:00", "Ruth", "Pip shivering")] == ["alert"]
    assert "Not noted" in morning.says("11:05", "Ruth", "Otter light wet")[0].text


# ── the reminder ─────────────────────────────────────────────────────────────────────────────────────────────────────


def test_one_reminder_names_who_is_left(morning: Group) -> None:
    """Before the window is half an hour old, once, and only those who change and are not done."""
    morning.says("7:10", "Inés", "Maple and Otter done")
    said = morning.until("7:40")
    assert [one.kind for one in said] == ["update"]
    assert "Pip" in said[0].text
    assert "Maple" not in said[0].text
    assert "Otter" not in said[0].text
    assert morning.until("9:00") == []


def test_no_reminder_where_all_are_done(morning: Group) -> None:
    """Nobody is reminded of what is done."""
    morning.says("7:10", "Theo", "all done")
    assert morning.until("9:00") == []


# ── the forecast watch ───────────────────────────────────────────────────────────────────────────────────────────────


def test_a_forecast_that_worsens_gives_one_update_of_the_horses_it_moves(morning: Group) -> None:
    """Once, naming only them; the same forecast fetched again says nothing."""
    morning.says("7:10", "Theo", "all done")
    morning.weather("worse.csv", "10:00")
    (update,) = morning.until("10:05")
    assert update.kind == "update"
    moved = set(update.about["horses"])
    assert moved
    assert all(name in update.text for name in moved)
    assert not any(h.name in update.text for h in morning.barn.horses if h.name not in moved)
    morning.weather("worse.csv", "10:30")
    assert morning.until("12:00") == []


def test_a_horse_that_only_the_evening_moves_stays_done(morning: Group) -> None:
    """What is on is on: a forecast for tonight takes no tick off this morning."""
    morning.says("7:10", "Theo", "all done")
    morning.weather("worse.csv", "10:00")
    morning.until("10:05")
    assert morning.day.state.standing.done == {h.name for h in morning.barn.horses}


def test_a_report_is_not_blamed_for_a_newer_forecast(morning: Group) -> None:
    """The answer to a report names its horses; the weather's moves come as the weather's."""
    morning.says("7:10", "Theo", "all done")
    morning.weather("worse.csv", "10:00")
    said = morning.says("10:00", "Dot", "Juniper medium torn")
    answers = [one for one in said if one.kind == "answer"]
    updates = [one for one in said if one.kind == "update" and not one.edits]
    assert [one.about["horses"] for one in answers] == [["Juniper"]]
    assert len(updates) == 1
    assert "Juniper" not in updates[0].about["horses"]


def test_a_report_is_not_blamed_for_the_time_of_day(morning: Group) -> None:
    """At three in the night the model would dress two others otherwise; Maple's report does not say so."""
    morning.until("17:00")
    said = morning.says("27 3:00", "Dot", "Maple sweaty")
    assert not any(name in one.text for one in said for name in ("Sparrow", "Tansy"))
    (sheet, wear) = morning.day.sheet, morning.day.state.standing.wear
    assert {h.horse: h.windows[0].wear for h in sheet.horses} == wear


def test_no_update_in_quiet_hours_but_one_when_they_end(morning: Group) -> None:
    """Weather waits until people are up."""
    morning.until("22:00")
    morning.weather("worse.csv", "22:00")
    assert morning.until("27 5:25") == []


def test_a_report_not_yet_planned_is_planned_after_a_restart(morning: Group) -> None:
    """The process died between the nod and the new plan: the change is said all the same."""
    morning.day.hear(Incoming("g:1", Sender(None, "Dot"), "Juniper liner still wet", morning.at("6:50")))
    morning.read()
    morning.open()
    (update,) = morning.until("6:55")
    assert update.kind == "update"
    assert "Juniper" in update.text
    assert morning.until("7:00") == []


# ── all or nothing ───────────────────────────────────────────────────────────────────────────────────────────────────


@pytest.mark.parametrize("broken", ["bot.mailbox.Mailbox.put", "bot.ledger.Ledger.append"])
def test_a_fault_in_the_middle_of_a_message_leaves_nothing(
    morning: Group, monkeypatch: pytest.MonkeyPatch, broken: str
) -> None:
    """Neither event, answer nor inbox mark, neither on disk nor in memory; the same message then counts."""
    message = Incoming("g:1", Sender(None, "Dot"), "Juniper liner still wet", morning.at("6:50"))
    before = morning.day.state, morning.day.ledger.entries()

    def fails(*_: object, **__: object) -> None:
        raise OSError("no space left")

    with monkeypatch.context() as patched:
        patched.setattr(broken, fails)
        with pytest.raises(Exception, match=r"no space|full"):
            morning.day.hear(message)
    assert (morning.day.state, morning.day.ledger.entries()) == before
    assert morning.read() == []
    assert len(morning.hears(message)) == 2


def test_what_was_said_is_the_same_after_a_restart(morning: Group) -> None:
    """The barn in memory is the barn on disk."""
    script = """Inés: Maple sweaty | Dot: Juniper liner wet | Walt: Otter is clipped, trace | Theo: all done
        | Ruth: Tansy stays in | Dot: Pip shivering | Dot: undo"""
    for line in script.split("|"):
        who, text = line.split(":")
        morning.says("8:00", who.strip(), text.strip())
    before = morning.day.state
    morning.open()
    assert morning.day.state == before


def test_a_picture_that_cannot_be_drawn_holds_no_post_back(group: Group, monkeypatch: pytest.MonkeyPatch) -> None:
    """Text first; the picture only repeats it."""
    monkeypatch.setattr("bot.board.draw", lambda *_, **__: 1 / 0)
    (post,) = group.until("6:20")
    assert post.kind == "post"
    assert post.picture is None


def test_a_plan_that_fails_keeps_nobody_from_a_horse_in_need(morning: Group, monkeypatch: pytest.MonkeyPatch) -> None:
    """The fault is told to whoever called, after the second look was asked for."""
    morning.says("11:00", "Dot", "Pip shivering")
    morning.day.reports = [(Incoming("g:0", Sender(None, "Dot"), "", morning.at("11:00")), morning.barn.people[0], [])]
    monkeypatch.setattr("bot.planning.Planner.sheet", lambda *_, **__: 1 / 0)
    with pytest.raises(ZeroDivisionError):
        morning.day.tick(morning.at("11:31"))
    assert [one.kind for one in morning.read()] == ["recheck"]


# ── file and chat ────────────────────────────────────────────────────────────────────────────────────────────────────


def _edited(barn: Barn, horse: str, **facts: object) -> Barn:
    horses = tuple(h.model_copy(update=facts) if h.name == horse else h for h in barn.horses)
    return barn.model_copy(update={"horses": type(barn.horses)(horses)})


def test_the_first_start_takes_the_file_as_it_is(barn: Barn) -> None:
    """Nothing is recorded: the file is where the barn begins."""
    group = Group(barn)
    group.until("5:00")
    assert group.day.ledger.entries() == []


def test_the_later_of_file_and_chat_counts(barn: Barn) -> None:
    """Chat after the file: chat. The file edited after that: the file. Chat again: chat."""
    store = Store.memory()
    group = Group(barn, store)
    group.until("6:20")
    group.says("8:00", "Walt", "leave Birch bare no longer")
    group.says("8:00", "Theo", "keep Maple bare")
    assert group.day.state.horses["Maple"].keep_bare
    group = Group(_edited(_edited(barn, "Maple", keep_bare=True), "Maple", keep_bare=False), store)
    group.until("9:00")
    assert group.day.state.horses["Maple"].keep_bare, "the file did not change"
    group = Group(_edited(barn, "Maple", wearing=("maple-medium",)), store)
    group.clock = group.at("10:00")
    group.until("10:05")
    assert group.day.state.horses["Maple"].wear == ("maple-medium",)
    group.says("11:00", "Inés", "Maple in the green sheet")
    assert group.day.state.horses["Maple"].wear == ("maple-sheet",)
    group = Group(_edited(barn, "Maple", wearing=("maple-medium",)), store)
    group.clock = group.at("12:00")
    group.until("12:05")
    assert group.day.state.horses["Maple"].wear == ("maple-sheet",), "noticed once only"


def test_a_file_edited_while_away_is_planned_for(barn: Barn) -> None:
    """A torn turnout entered in the file is as good as one reported."""
    store = Store.memory()
    group = Group(barn, store)
    group.until("6:20")
    wear = group.day.state.standing.wear["Bramble"]
    assert wear
    garments = tuple(g.model_copy(update={"state": "torn"}) if g.id in wear else g for g in barn.garments)
    group = Group(barn.model_copy(update={"garments": type(barn.garments)(garments)}), store)
    group.clock = group.at("6:30")
    said = group.until("6:35")
    assert any(isinstance(e.event, GarmentIs) or e.event.kind == "file" for e in group.day.ledger.entries())
    assert [one.kind for one in said] == ["update"]
    assert "Bramble" in said[0].text


# ── taps ─────────────────────────────────────────────────────────────────────────────────────────────────────────────


def test_a_tap_ticks_a_horse_off_and_the_button_says_who(morning: Group) -> None:
    """No words: the button changes."""
    post = morning.key("CHANGE")
    number = next(i for i, h in enumerate(morning.barn.horses) if h.name == "Pip")
    (edit,) = morning.says("7:05", "Dot", "", tap=f"done:{number}", reply_to=post)
    assert edit.edits == post
    assert any("Pip" in b.text and "Dot" in b.text for row in edit.buttons for b in row)
    assert [e.event for e in morning.day.ledger.entries() if isinstance(e.event, Done)] == [Done(("Pip",))]


def test_an_old_posts_button_ticks_nobody_off(morning: Group) -> None:
    """The morning's buttons, pressed in the evening, tell who is left instead."""
    post = morning.key("CHANGE")
    morning.until("16:00")
    said = morning.says("16:40", "Dot", "", tap="done:*", reply_to=post)
    assert not [e for e in morning.day.ledger.entries() if isinstance(e.event, Done)]
    assert [one.kind for one in said] == ["answer"]
    assert replace(said[0], text="").to == "group"


def test_a_clock_put_back_does_nothing_anew(group: Group) -> None:
    """After the post, an hour earlier by the clock: no post, no update, nothing on record."""
    group.until("7:30")
    before = group.day.ledger.entries()
    group.weather("worse.csv", "5:00")
    group.day.tick(group.at("6:30"))
    assert group.day.ledger.entries() == before
    assert group.read() == []


def test_a_tap_says_that_a_piece_is_still_wet_and_the_button_says_who_did(barn: Barn) -> None:
    """The post asks after what dries; one tap with gloves on is a report like any other."""
    group = Group(barn)
    post = next(one for one in group.until("6:20") if one.kind == "post")
    button = next(b for row in post.buttons for b in row if b.data == "wet:0")
    tap = Incoming("g:tap-1", Sender(None, "Inés"), "", group.at("6:40"), reply_to=group.key("CHANGE"), tap=button.data)
    (edit,) = [one for one in group.hears(tap) if one.edits]
    shown = next(b for row in edit.buttons for b in row if b.data == "wet:0")
    assert shown.text == f"✓ {button.text} · Inés"
    assert group.day.state.garments["sparrow-medium"].state == "wet"


def ticks(said: list[Outgoing]) -> list[str]:
    """The ticked buttons of the one edit among what was said."""
    (edit,) = [one for one in said if one.edits]
    return [b.text for row in edit.buttons for b in row if b.text.startswith("✓")]


def test_done_said_in_words_ticks_the_posts_buttons(morning: Group) -> None:
    """Whoever reads the post sees who is done, however it was told; taken back, the tick goes."""
    assert ticks(morning.says("7:05", "Dot", "Pip done")) == ["✓ Pip · Dot"]
    assert ticks(morning.says("7:06", "Dot", "undo")) == []
    assert len(ticks(morning.says("7:07", "Inés", "everyone but Pip done"))) >= 1


def test_a_report_that_no_button_shows_edits_nothing(morning: Group) -> None:
    """A sign leaves the buttons as they are."""
    assert not [one for one in morning.says("7:05", "Dot", "Maple sweaty") if one.edits]


def test_a_tapped_done_is_as_undoable_as_one_said(morning: Group) -> None:
    """A thumb in a glove hits the wrong name: one word, and neither record nor button says done."""
    post = morning.day.mailbox.post()
    assert post is not None
    button = next(b for row in morning.day.mailbox.message(post).buttons for b in row if b.text == "Pip")
    assert ticks(morning.says("7:05", "Inés", "", tap=button.data, reply_to=post)) == ["✓ Pip · Inés"]
    assert ticks(morning.says("7:06", "Inés", "undo")) == []
    assert "Pip" not in morning.day.state.standing.done


def test_a_correction_moves_the_tick(morning: Group) -> None:
    """An edited message counts once, and so do its ticks."""
    said = morning.says("7:05", "Dot", "Pip done", key="g:corrected")
    assert ticks(said) == ["✓ Pip · Dot"]
    said = morning.says("7:06", "Dot", "Maple done", key="g:corrected", edited=True)
    assert ticks(said) == ["✓ Maple · Dot"]
