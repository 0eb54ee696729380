"""The plan that people were told of: kept as posted, planned anew when something changes, told again where it moves."""

import logging
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import replace
from datetime import datetime

from bot import board, post, rounds
from bot.daybook import DayBook
from bot.events import Changed, Entry
from bot.forecast import Forecast
from bot.message import Outgoing
from bot.moves import Move, carried, moved, put_on
from bot.planning import Planner
from bot.post.news import Cause
from bot.sheet import Sheet, dump, load
from bot.state import State
from bot.taps import on_post
from bot.tips import Tips

LOG = logging.getLogger(__name__)


class Told:
    """The last sheet and the weather it was made from."""

    def __init__(self, book: DayBook) -> None:
        self.book = book
        self.planner = Planner(book.barn)
        self.sheet = self._last()
        self.watched = self.sheet.forecast.fetched_at if self.sheet else None  # the forecast last looked at
        self.weather: Forecast | None = None  # what `sheet` was made from; None after a start

    @contextmanager
    def together(self) -> Iterator[None]:
        """One commit; where it fails, nothing of it is remembered."""
        kept = self.sheet, self.watched, self.weather, self.planner
        try:
            with self.book.together():
                yield
        except BaseException:
            self.sheet, self.watched, self.weather, self.planner = kept
            raise

    def enlist(self) -> None:
        """Go by the barn's list as it is now."""
        if self.planner.barn is not self.book.barn:
            self.planner = Planner(self.book.barn)
            self.sheet = self._last()

    def again(self, weather: Forecast | None, now: datetime, state: State | None = None) -> Sheet:
        """The standing windows planned anew from now on. state: the barn as it would be; None: as it is."""
        assert self.sheet is not None
        windows = [w for w in self.sheet.windows if w.end > now] or rounds.windows(self.book.barn, now)
        return self.planner.sheet(state or self.book.state, weather, windows, now, told=self.sheet)

    def settled(self, was: State | None, weather: Forecast | None, now: datetime) -> tuple[Sheet, list[Move]]:
        """The plan anew for what was reported since the barn was `was`, and whom that moves.

        Whom the clock alone would move keeps what it was told: one round, one outfit, and no report is blamed for it.
        """
        assert self.sheet is not None
        after = self.again(weather, now)
        moves = moved(self.sheet, after)
        if was is None or not moves or was.horses.keys() != self.book.state.horses.keys():
            return after, moves
        theirs = {m.horse for m in moved(self.again(weather, now, was), after)}
        left = {m.horse for m in moves} - theirs
        kept = tuple(carried(h.horse, self.sheet, after) if h.horse in left else h for h in after.horses)
        return replace(after, horses=kept), [m for m in moves if m.horse in theirs]

    def change(
        self, now: datetime, after: Sheet, moves: Sequence[Move], cause: Cause, weather: Forecast | None
    ) -> None:
        """From now on `after` is what people were told, where any horse moves."""
        standing = self.book.state.standing
        if standing is None or not moves:
            return
        wear = put_on(after, [m.horse for m in moves], standing)
        (entry,) = self.book.record(now, "haybell", "", [Changed(standing.round, standing.day, wear, cause)])
        self.keep(entry, after, weather)
        if standing.done & wear.keys():
            self._untick(now)

    def _untick(self, now: datetime) -> None:
        """Who is to be dressed anew is done no more, on the post's buttons too."""
        key = self.book.mailbox.post()
        ours = self.book.mailbox.message(key) if key else None
        if buttons := on_post(ours, self.book.state, self.book.ledger.entries()):
            self.book.say(Outgoing("update", "", buttons=buttons, edits=key), now)

    def tips(self, weather: Forecast | None, now: datetime, who: str, horse: str) -> Tips | None:
        """What would change what a horse was told to wear, on the weather that people were told of; None: no list yet.

        who: whose reports they would be, in turn with somebody else's.
        """
        if self.sheet is None:
            return None
        return self.planner.tips(self.book.state, self.weather or weather, self.sheet, horse, now, who)

    def picture(self, sheet: Sheet) -> bytes | None:
        """The post's picture; the words go without it where it cannot be drawn."""
        try:
            return board.draw(sheet, self.book.barn, self.book.barn.units, self.book.barn.language)
        except Exception as fault:
            LOG.error("%s: the board could not be drawn (%s)", self.book.barn.barn, type(fault).__name__)
            return None

    def now(self, weather: Forecast | None, now: datetime) -> str:
        """The list in words, as told last or, before the first post, as it would be; nothing of it is kept."""
        barn, state = self.book.barn, self.book.state
        sheet = self.sheet or self.planner.sheet(state, weather, rounds.windows(barn, now), now)
        return post.round_post(sheet, barn, state, barn.language, barn.units)

    def keep(self, entry: Entry, sheet: Sheet, weather: Forecast | None) -> None:
        """Keep a sheet beside the entry of its post or change."""
        self.book.ledger.keep_sheet(entry.number, dump(sheet))
        self.book.lived(sheet)
        self.sheet, self.weather = sheet, weather
        self.watched = sheet.forecast.fetched_at

    def _last(self) -> Sheet | None:
        """What was told last, of the horses that are still on the list."""
        kept = self.book.ledger.latest_sheet()
        sheet = load(kept) if kept else None
        here = {horse.name for horse in self.book.barn.horses}
        return sheet and replace(sheet, horses=tuple(h for h in sheet.horses if h.horse in here))
