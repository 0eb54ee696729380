"""The core: tick(now) and hear(message). Gather, decide, record; text comes from post and answer.

Event, answer and inbox mark are one commit. A reply never fetches, and plans nothing anew but the
one horse of a "why", to say what would change it: what a report changes is worked out at the next tick, which the door
calls as soon as nobody is waiting.
"""

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import replace
from datetime import datetime
from functools import partial

from bot import answer, care, enrol, filed, post, rounds, weekly
from bot.asks import RECENT, Asks
from bot.barn import Barn, Person
from bot.beyond import WEEK
from bot.daybook import DayBook
from bot.events import Entry, Posted
from bot.forecast import Forecast
from bot.hearing import Decision, Scene, corrected, digest, meant, reference, speaker, strangers, understood
from bot.lookback import Aside, LookBack, at_once
from bot.message import Incoming, Outgoing
from bot.moves import Move, moved, shared
from bot.post.news import Cause
from bot.sheet import Sheet
from bot.state import State
from bot.store import Store
from bot.taps import shown, shows
from bot.told import Told
from bot.words import Heard, Reference

Forecasts = Callable[[datetime], Forecast | None]


class BarnDay:
    """One barn's group, whatever chat it is in."""

    def __init__(
        self, barn: Barn, store: Store, forecasts: Forecasts, since: datetime | None = None, aside: Aside = at_once
    ) -> None:
        """Forecasts gives the last good forecast at an instant; it never fetches.

        since: posts that fell due before it are not owed; None: the ledger says what is owed. aside: how work is done
        that takes longer than a reply may.
        """
        self.store = store
        self.forecasts = forecasts
        self.since = since
        self.book = DayBook(barn, store)
        self.ledger, self.mailbox = self.book.ledger, self.book.mailbox
        self.told = Told(self.book)
        self.reports: list[tuple[Incoming, Person, list[Entry]]] = []  # told, but not yet planned anew
        self.unreported = self.state  # the barn before the first of them
        self.owed = self.book.unplanned()
        self.filed = False  # whether the file has been looked at since the start
        self.asks = Asks(self.mailbox)
        self.lookback = LookBack(self.book, aside)

    def tick(self, now: datetime) -> None:
        """Whatever is due: what file and reports changed, rounds' posts, rechecks, nudge, watch, week, look back."""
        if self.book.set_back(now):  # a clock put back, a script begun again: what was done is not done anew
            return
        faults: list[Exception] = []
        daily = self._file, self._settle, self._rounds, self._welcome, self._care, self._watch
        for step in (*daily, self._week, self.lookback.tick):
            try:
                step(now)
            except Exception as fault:  # a plan that fails must not keep anybody from a horse in need
                faults.append(fault)
        if faults:
            raise faults[0]

    def hear(self, incoming: Incoming) -> None:
        """One message or tap: its facts and its answer are committed together, once."""
        if not self.reports:
            self.unreported = self.state
        with self._all_or_nothing():
            if self.mailbox.heard(incoming.key, digest(incoming)):
                return
            back = self.book.take_back(incoming) if incoming.edited else []
            person = speaker(self.barn, incoming.sender)
            scene, reply = self._scene(incoming.at), self._reference(incoming, person)
            if person is None:
                self._stranger(incoming, understood(incoming, person, scene, reply))
            else:
                self._carry_out(incoming, person, enrol.decided(incoming, person, scene, reply), back)
            self.told.enlist()

    @contextmanager
    def _all_or_nothing(self) -> Iterator[None]:
        """One commit; where it fails, nothing of it is remembered."""
        kept = self.owed, list(self.reports)
        try:
            with self.told.together():
                yield
        except BaseException:
            self.owed, self.reports = kept
            raise

    @property
    def barn(self) -> Barn:
        """The barn's list as it is now."""
        return self.book.barn

    @property
    def sheet(self) -> Sheet | None:
        """What people were told last."""
        return self.told.sheet

    @property
    def state(self) -> State:
        """The barn as it is now."""
        return self.book.state

    def _carry_out(self, incoming: Incoming, person: Person, decision: Decision, back: list[Entry]) -> None:
        """Record and say what one message led to. back: what its first version had done."""
        if decision.undo:
            back = [*back, *self._undo(incoming, person, alone=not decision.events)]
        elif back and not decision.events and not decision.say:
            self._say_undone(incoming, person, back)
        entries = self.book.record(incoming.at, person.name, incoming.key, decision.events, incoming.text)
        numbers = [entry.number for entry in entries]
        for outgoing in decision.say:
            self.book.say(replace(outgoing, about={"numbers": numbers} | outgoing.about), incoming.at)
        self._tick_off(incoming, person, [*back, *entries])
        self.lookback.wish(incoming, person, decision.looks)
        if decision.ask:
            self.asks.put(person.name, decision.ask, incoming.at)
        elif entries or decision.settled:
            self.asks.settle(person.name)
        if entries or back:
            self.reports.append((incoming, person, [*back, *entries]))

    def _tick_off(self, incoming: Incoming, person: Person, told: Sequence[Entry]) -> None:
        """What was tapped shows on the buttons themselves; what was said in words on those of the round's post."""
        tapped = incoming.tap is not None
        key = incoming.reply_to if tapped else self.mailbox.post() if told else None
        ours = self.mailbox.message(key) if key else None
        if ours is None or (not told and ours.kind == "ask") or not (tapped or shows(ours, told)):
            return
        if buttons := shown(ours, incoming.tap, person, self.state, self.ledger.entries()):
            self.book.say(Outgoing("update", "", buttons=buttons, edits=key), incoming.at)

    def _undo(self, incoming: Incoming, person: Person, *, alone: bool) -> list[Entry]:
        """Take back what the message replied to did, else the speaker's own last.

        alone: nothing else is recorded of this message, so its key is the undo's.
        """
        numbers = meant(incoming, person, self.ledger.entries(), self.book.numbers(incoming.reply_to))
        back = self.book.undo(incoming.at, person.name, incoming.key if alone else "", numbers, incoming.text)
        self._say_undone(incoming, person, back)
        return back

    def _say_undone(self, incoming: Incoming, person: Person, back: Sequence[Entry]) -> None:
        text = answer.undone(back, self.barn, person)
        self.book.say(Outgoing("answer", text, to=_to(incoming, person), reply_to=incoming.key), incoming.at)

    def _stranger(self, incoming: Incoming, heard: Heard) -> None:
        """Somebody not listed: told so politely once a day; danger they report goes to the manager."""
        sender = incoming.sender

        def greeted() -> bool:
            return self.book.lately(f"stranger:{sender.id or sender.name}", incoming.at)

        for outgoing in strangers(incoming, heard, self.barn, self.barn.language, greeted):
            self.book.say(outgoing, incoming.at)

    def _scene(self, at: datetime) -> Scene:
        lessons = partial(self.told.planner.lessons, self.state, now=at)
        sky, language, lately = self.forecasts(at), self.barn.language, partial(self.book.past, now=at)
        tips = partial(self.told.tips, sky, at)
        return Scene(self.barn, self.state, self.sheet, sky, language, lessons, lately, self.book.filed, tips)

    def _reference(self, incoming: Incoming, person: Person | None) -> Reference | None:
        """What the message answers: our message it replies to, else the question this person left open."""
        ours = self.mailbox.message(incoming.reply_to) if incoming.reply_to else None
        last = corrected(incoming, person, self.ledger.latest(RECENT), self.book.numbers(incoming.reply_to))
        if ours:
            return replace(reference(ours.about), last=last)
        ask = self.asks.open(person.name, incoming.at) if person else None
        if ask and ask.about == "change" and incoming.reply_to:
            ask = None  # a yes to somebody else
        return Reference(ask=ask, last=last)

    def _file(self, now: datetime) -> None:
        """Once a start: what was edited in the barn file since the last one counts from now on."""
        if self.filed:
            return
        before, says = self.mailbox.setting("filed"), filed.facts(self.book.filed)
        edits = filed.edits(before, says)
        if before != says:
            with self._all_or_nothing():
                self.mailbox.set("filed", says)
                self.book.record(now, "haybell", "", edits)
        self.owed = self.owed or bool(edits)
        self.filed = True

    def _rounds(self, now: datetime) -> None:
        due = rounds.due(self.barn, now, self.state.posted, self.since)
        missed = [d for d in due if d.standing == "missed"]
        if missed and not rounds.quiet(self.barn, now):
            self._missed(missed, now)
        for one in due:
            if one.standing != "missed":
                self._post(one, now)

    def _missed(self, due: Sequence[rounds.DuePost], now: datetime) -> None:
        """Too late to be of use: one message says so, also at the very first start."""
        events = [Posted(d.window.round, d.day, d.window.start, d.window.end) for d in due]
        with self._all_or_nothing():
            self.book.record(now, "haybell", "", events)
            lines = [answer.missed(d.window, self.barn, self.barn.language) for d in due]
            self.book.say(Outgoing("update", "\n".join(lines)), now)

    def _post(self, due: rounds.DuePost, now: datetime) -> None:
        forecast = self.forecasts(now)
        sheet = self.told.planner.sheet(self.state, forecast, rounds.windows(self.barn, due.window.start), now)
        language, units, late = self.barn.language, self.barn.units, due.standing == "late"
        text = post.round_post(sheet, self.barn, self.state, language, units, late=late)
        picture = self.told.picture(sheet)
        wear = {h.horse: h.windows[0].wear for h in sheet.horses if not h.windows[0].as_found}
        event = Posted(due.window.round, due.day, due.window.start, due.window.end, wear)
        with self._all_or_nothing():
            (entry,) = self.book.record(now, "haybell", "", [event])
            self.told.keep(entry, sheet, forecast)
            buttons = post.buttons(sheet, self.barn, language)
            counted = {"names": [h.name for h in self.barn.horses], "pieces": post.drying(sheet)}
            about = {"round": due.window.round, "posted": entry.number, **counted}
            strong = post.leads(sheet, self.barn, language)
            said = Outgoing("post", text, picture=picture, buttons=buttons, about=about, pin=True, strong=strong)
            self.book.say(said, now)

    def _welcome(self, now: datetime) -> None:
        """Come into a group: the list as it is now, so that people see what they will get."""
        if self.mailbox.setting("welcome"):
            with self._all_or_nothing():
                self.mailbox.set("welcome", None)
                self.book.say(Outgoing("answer", self.told.now(self.forecasts(now), now)), now)

    def _care(self, now: datetime) -> None:
        """Second looks that are due, and the round's one reminder."""
        acts = list(care.rechecks(self.barn, self.state, self.barn.language, now))
        nudge = care.nudge(self.barn, self.state, self.sheet, self.barn.language, now)
        for act in [*acts, *([nudge] if nudge else [])]:
            with self._all_or_nothing():
                self.book.record(now, "haybell", "", act.events)
                for outgoing in act.say:
                    self.book.say(outgoing, now)

    def _settle(self, now: datetime) -> None:
        """Plan anew for what was reported since the last tick, and say what it changes.

        On the weather that people were told of: a newer forecast is the watch's business.
        """
        if self.sheet is None or not (self.reports or (self.owed and not rounds.quiet(self.barn, now))):
            return
        weather = self.told.weather or self.forecasts(now)
        before = self.sheet
        after, moves = self.told.settled(self.unreported if self.reports else None, weather, now)
        with self._all_or_nothing():
            self.told.change(now, after, moves, "report", weather)
            if self.reports:
                self._tell(moves, after, now)
            elif moves:
                self._update(before, after, moves, "report", now)
            self.reports, self.owed = [], False

    def _tell(self, moves: Sequence[Move], after: Sheet, now: datetime) -> None:
        """Answer each report with the moves of its own horses, the first with all others too."""
        assert self.sheet is not None
        parts = shared(moves, [entries for _, _, entries in self.reports], self.barn)
        for (incoming, person, entries), mine in zip(self.reports, parts, strict=True):
            text = answer.changed(entries, mine, self.sheet, after, self.barn, person)
            if text:
                about = {"numbers": [e.number for e in entries], "horses": [m.horse for m in mine]}
                to = _to(incoming, person)
                self.book.say(Outgoing("answer", text, reply_to=incoming.key, to=to, about=about), now)

    def _watch(self, now: datetime) -> None:
        """A newer forecast: one update that names only the horses it moves; never in quiet hours."""
        forecast = self.forecasts(now)
        if forecast is None or self.sheet is None or forecast.fetched_at == self.told.watched:
            return
        if rounds.quiet(self.barn, now):
            return
        before, after = self.sheet, self.told.again(forecast, now)
        moves = moved(before, after)
        with self._all_or_nothing():
            self.told.watched, self.told.weather = forecast.fetched_at, forecast
            self.told.change(now, after, moves, "forecast", forecast)
            if moves:
                self._update(before, after, moves, "forecast", now)

    def _week(self, now: datetime) -> None:
        """On Sunday evening, once: the note to owners."""
        evening = weekly.due(self.barn, now)
        if evening is None or self.mailbox.setting("weekly") == weekly.week(evening):
            return
        with self._all_or_nothing():
            self.mailbox.set("weekly", weekly.week(evening))
            for outgoing in weekly.notes(self.barn, self.state, self.book.past(WEEK, now), evening, now):
                self.book.say(outgoing, now)

    def _update(self, before: Sheet, after: Sheet, moves: Sequence[Move], cause: Cause, now: datetime) -> None:
        text = post.update(before, after, moves, self.barn, self.barn.language, self.barn.units, cause)
        names = [m.horse for m in moves]
        self.book.say(Outgoing("update", text, about={"horses": names}, strong=tuple(names)), now)


def _to(incoming: Incoming, person: Person) -> str:
    return person.name if incoming.private else "group"
