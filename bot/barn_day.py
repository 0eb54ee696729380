"""The core: tick(now) and hear(message). Gather, decide, record; text comes from post and answer.

Event, answer and inbox mark are one commit. A reply never fetches and never re-plans: what a report changes is
worked out at the next tick, which the door calls as soon as nobody is waiting.
"""

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from bot import answer, board, care, post, rounds
from bot.barn import Barn, Person
from bot.events import Changed, Entry, Event, Posted
from bot.evidence import Lesson
from bot.forecast import Forecast
from bot.hearing import (
    FRESH,
    Decision,
    Scene,
    corrected,
    decide,
    digest,
    meant,
    reference,
    speaker,
    strangers,
    understood,
)
from bot.ledger import Ledger
from bot.mailbox import Mailbox
from bot.message import Incoming, Outgoing
from bot.moves import moved, put_on
from bot.planning import Planner
from bot.sheet import Sheet, dump, load
from bot.state import apply, fold
from bot.store import Store
from bot.words import Ask, Heard, Reference

Forecasts = Callable[[datetime], Forecast | None]


class BarnDay:
    """One barn's group, whatever chat it is in."""

    def __init__(self, barn: Barn, store: Store, forecasts: Forecasts, since: datetime | None = None) -> None:
        """Forecasts gives the last good forecast at an instant; it never fetches.

        since: posts that fell due before it are not owed; None: the ledger says what is owed.
        """
        self.barn = barn
        self.store = store
        self.forecasts = forecasts
        self.since = since
        self.ledger = Ledger(store)
        self.mailbox = Mailbox(store)
        self.planner = Planner(barn)
        self.state = fold(barn, self.ledger.entries())
        kept = self.ledger.latest_sheet()
        self.sheet: Sheet | None = load(kept) if kept else None
        self.watched = self.sheet.forecast.fetched_at if self.sheet else None
        self.reports: list[tuple[Incoming, Person, list[Entry]]] = []  # told, but not yet planned anew
        self.asks: dict[str, tuple[Ask, datetime]] = {}  # the open question to each person

    def tick(self, now: datetime) -> None:
        """Whatever is due: what reports changed, rounds' posts, rechecks, the nudge, the forecast watch."""
        for step in (self._settle, self._rounds, self._care, self._watch):
            step(now)

    def hear(self, incoming: Incoming) -> None:
        """One message or tap: its facts and its answer are committed together, once."""
        with self.store.transaction():
            if self.mailbox.heard(incoming.key, digest(incoming)):
                return
            if incoming.edited:
                self._take_back(incoming)
            person = speaker(self.barn, incoming.sender)
            heard = understood(incoming, person, self._scene(incoming.at), self._reference(incoming, person))
            if person is None:
                self._stranger(incoming, heard)
            else:
                self._carry_out(incoming, person, decide(incoming, person, heard, self._scene(incoming.at)))

    def record(self, at: datetime, who: str, key: str, events: Sequence[Event], text: str = "") -> list[Entry]:
        """Events into the ledger and the state; inside the caller's transaction where there is one."""
        entries = self.ledger.append(at, who, key, events, text)
        for entry in entries:
            self.state = apply(self.state, entry)
        return entries

    def say(self, outgoing: Outgoing, at: datetime) -> None:
        """One message into the outbox."""
        self.mailbox.put(outgoing, at)

    @property
    def language(self) -> str:
        """What the group is addressed in: the manager's language."""
        return next((p.language for p in self.barn.people if p.role == "manager"), "en")

    def _carry_out(self, incoming: Incoming, person: Person, decision: Decision) -> None:
        """Record and say what one message led to."""
        back = self._undo(incoming, person, alone=not decision.events) if decision.undo else []
        entries = self.record(incoming.at, person.name, incoming.key, decision.events, incoming.text)
        numbers = [entry.number for entry in entries]
        for outgoing in decision.say:
            self.say(replace(outgoing, about={"numbers": numbers} | outgoing.about), incoming.at)
        if incoming.tap is not None:
            self._tick_off(incoming)
        if entries:
            self.asks.pop(person.name, None)
        if decision.ask:
            self.asks[person.name] = (decision.ask, incoming.at)
        if entries or back:
            self.reports.append((incoming, person, [*back, *entries]))

    def _tick_off(self, incoming: Incoming) -> None:
        """A tap shows on the post's own buttons: who is done, and who said so."""
        ours = self.mailbox.message(incoming.reply_to) if incoming.reply_to else None
        standing = self.state.standing
        if ours and ours.kind == "post" and standing and ours.about.get("posted") == standing.number:
            buttons = post.ticked(ours.buttons, self.barn, standing.done_by)
            self.say(Outgoing("update", "", buttons=buttons, edits=incoming.reply_to), incoming.at)

    def _undo(self, incoming: Incoming, person: Person, *, alone: bool) -> list[Entry]:
        """Take back what the message replied to did, else the speaker's own last.

        alone: nothing else is recorded of this message, so its key is the undo's.
        """
        numbers = meant(incoming, person, self.ledger.entries(), self._numbers(incoming.reply_to))
        back = self.ledger.undo(incoming.at, person.name, incoming.key if alone else "", numbers, incoming.text)
        if back:
            self.state = fold(self.barn, self.ledger.entries())
        text = answer.undone(back, self.barn, person)
        self.say(Outgoing("answer", text, to=_to(incoming, person), reply_to=incoming.key), incoming.at)
        return back

    def _take_back(self, incoming: Incoming) -> None:
        """An edited message: what its first version did no longer stands."""
        numbers = [entry.number for entry in self.ledger.by_key(incoming.key) if entry.undone_by is None]
        if numbers:
            self.ledger.undo(incoming.at, "haybell", "", numbers, "edited")
            self.state = fold(self.barn, self.ledger.entries())

    def _stranger(self, incoming: Incoming, heard: Heard) -> None:
        """Somebody not listed: told so politely once a day; danger they report goes to the manager."""
        for outgoing in strangers(incoming, heard, self.barn, self.language, greeted=lambda: self._greeted(incoming)):
            self.say(outgoing, incoming.at)

    def _greeted(self, incoming: Incoming) -> bool:
        """Whether this stranger was spoken to within a day; from now on they have been."""
        name = f"stranger:{incoming.sender.id or incoming.sender.name}"
        before = self.mailbox.setting(name)
        if before and incoming.at - datetime.fromisoformat(before) < timedelta(days=1):
            return True
        self.mailbox.set(name, incoming.at.isoformat())
        return False

    def _scene(self, at: datetime) -> Scene:
        def lessons(horse: str) -> Sequence[Lesson]:
            return self.planner.lessons(self.state, horse, at)

        return Scene(self.barn, self.state, self.sheet, self.forecasts(at), self.language, lessons)

    def _numbers(self, key: str | None) -> list[int]:
        """The ledger numbers of what a message did, or of what our answer was about."""
        if key is None:
            return []
        ours = self.mailbox.message(key)
        return list(ours.about.get("numbers", ())) if ours else [e.number for e in self.ledger.by_key(key)]

    def _reference(self, incoming: Incoming, person: Person | None) -> Reference | None:
        """What the message answers: our message it replies to, else the question this person left open."""
        ours = self.mailbox.message(incoming.reply_to) if incoming.reply_to else None
        last = corrected(incoming, person, self.ledger.entries(), self._numbers(incoming.reply_to))
        if ours:
            return replace(reference(ours.about), last=last)
        ask, asked_at = self.asks.get(person.name if person else "", (None, incoming.at))
        return Reference(ask=ask if ask and incoming.at - asked_at <= FRESH else None, last=last)

    def _rounds(self, now: datetime) -> None:
        for due in rounds.due(self.barn, now, self.state.posted, self.since):
            if due.standing == "missed":
                self._missed(due, now)
            else:
                self._post(due, now)

    def _missed(self, due: rounds.DuePost, now: datetime) -> None:
        """Too late to be of use: one line says so; a barn that never had a post has missed nothing."""
        first = not self.state.posted
        with self.store.transaction():
            self.record(now, "haybell", "", [Posted(due.window.round, due.day, due.window.start, due.window.end)])
            if not first:
                self.say(Outgoing("update", answer.missed(due.window, self.barn, self.language)), now)

    def _post(self, due: rounds.DuePost, now: datetime) -> None:
        windows = rounds.windows(self.barn, due.window.start)
        sheet = self.planner.sheet(self.state, self.forecasts(now), windows, now)
        language, units, late = self.language, self.barn.units, due.standing == "late"
        text = post.round_post(sheet, self.barn, self.state, language, units, late=late)
        picture = board.draw(sheet, self.barn, units, language)
        wear = {h.horse: h.windows[0].wear for h in sheet.horses}
        event = Posted(due.window.round, due.day, due.window.start, due.window.end, wear)
        with self.store.transaction():
            (entry,) = self.record(now, "haybell", "", [event])
            self._keep(entry, sheet)
            buttons = post.buttons(sheet, self.barn, language)
            about = {"round": due.window.round, "posted": entry.number}
            self.say(Outgoing("post", text, picture=picture, buttons=buttons, about=about, pin=True), now)

    def _care(self, now: datetime) -> None:
        """Second looks that are due, and the round's one reminder."""
        acts = list(care.rechecks(self.barn, self.state, self.language, now))
        nudge = care.nudge(self.barn, self.state, self.sheet, self.language, now)
        for act in [*acts, *([nudge] if nudge else [])]:
            with self.store.transaction():
                self.record(now, "haybell", "", act.events)
                for outgoing in act.say:
                    self.say(outgoing, now)

    def _settle(self, now: datetime) -> None:
        """Plan anew for what was reported since the last tick, and say what it changes."""
        reports, self.reports = self.reports, []
        if not reports or self.sheet is None:
            return
        before, after = self.sheet, self._again(now)
        moves = moved(before, after)
        with self.store.transaction():
            self._stand(now, after, [m.horse for m in moves], "report")
            told: set[str] = set()
            for incoming, person, entries in reports:
                mine = [m for m in moves if m.horse not in told]
                text = answer.changed(entries, mine, before, after, self.barn, person)
                if text:
                    told |= {m.horse for m in mine}
                    self.say(Outgoing("answer", text, reply_to=incoming.key, to=_to(incoming, person)), now)

    def _watch(self, now: datetime) -> None:
        """A newer forecast: one update that names only the horses it moves; never in quiet hours."""
        forecast = self.forecasts(now)
        if forecast is None or self.sheet is None or forecast.fetched_at == self.watched:
            return
        if rounds.quiet(self.barn, now):
            return
        before, after = self.sheet, self._again(now)
        moves = moved(before, after)
        self.watched = forecast.fetched_at
        with self.store.transaction():
            self._stand(now, after, [m.horse for m in moves], "forecast")
            if moves:
                text = post.update(before, after, moves, self.barn, self.language, self.barn.units)
                self.say(Outgoing("update", text, about={"horses": [m.horse for m in moves]}), now)

    def _again(self, now: datetime) -> Sheet:
        """The standing windows planned anew from now on."""
        assert self.sheet is not None
        windows = [w for w in self.sheet.windows if w.end > now] or rounds.windows(self.barn, now)
        return self.planner.sheet(self.state, self.forecasts(now), windows, now, told=self.sheet)

    def _stand(self, now: datetime, after: Sheet, horses: Sequence[str], cause: str) -> None:
        """From now on `after` is what people were told, where any horse moves."""
        standing = self.state.standing
        if standing is None or not horses:
            return
        wear = put_on(after, horses, standing.round, standing.start)
        (entry,) = self.record(now, "haybell", "", [Changed(standing.round, standing.day, wear, cause)])  # type: ignore[arg-type]
        self._keep(entry, after)

    def _keep(self, entry: Entry, sheet: Sheet) -> None:
        self.ledger.keep_sheet(entry.number, dump(sheet))
        self.sheet = sheet
        self.watched = sheet.forecast.fetched_at


def _to(incoming: Incoming, person: Person) -> str:
    return person.name if incoming.private else "group"
