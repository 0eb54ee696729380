"""What a barn has on record and what it says about it, written together: ledger, state, outbox."""

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from datetime import datetime, timedelta

from bot.almanac import almanac
from bot.barn import Barn
from bot.barn.amend import as_now
from bot.beyond import Lately
from bot.events import Changed, Enrolled, Entry, Event, Posted, Struck
from bot.ledger import Ledger
from bot.mailbox import Mailbox
from bot.message import Incoming, Outgoing
from bot.sheet import Sheet, load
from bot.state import apply, fold
from bot.store import Store


class DayBook:
    """One barn's ledger and mailbox; `barn` is the file with what chat changed, `state` the fold of what stands."""

    def __init__(self, barn: Barn, store: Store) -> None:
        self.filed = barn
        self.store = store
        self.ledger = Ledger(store)
        self.mailbox = Mailbox(store)
        self.almanac = almanac(barn.place.latitude, self.ledger)
        self.barn = barn
        self.enlist()

    def enlist(self) -> None:
        """The barn as file and chat have it by now, and its state from all that stands."""
        entries = self.ledger.entries()
        barn = as_now(self.filed, entries)
        if barn != self.barn:
            self.barn = barn
        self.state = fold(self.barn, entries).after(self.almanac.weeks)

    def lived(self, sheet: Sheet) -> None:
        """Another plan was made: its hours are now the latest that is known of the weather."""
        self.almanac.add(sheet.sky)
        self.state = self.state.after(self.almanac.weeks)

    @contextmanager
    def together(self) -> Iterator[None]:
        """One commit; where it fails, what the store took back is not remembered either."""
        kept = self.barn, self.state
        try:
            with self.store.transaction():
                yield
        except BaseException:
            self.barn, self.state = kept
            raise

    def record(self, at: datetime, who: str, key: str, events: Sequence[Event], text: str = "") -> list[Entry]:
        """Events into the ledger and the state; inside the caller's transaction where there is one."""
        entries = self.ledger.append(at, who, key, events, text)
        for entry in entries:
            self.state = apply(self.state, entry)
        if any(isinstance(event, Enrolled | Struck) for event in events):
            self.enlist()
        return entries

    def undo(self, at: datetime, who: str, key: str, numbers: Sequence[int], text: str) -> list[Entry]:
        """Take back entries; gives those that stood until now."""
        back = self.ledger.undo(at, who, key, numbers, text)
        if back:
            self.enlist()
        return back

    def take_back(self, incoming: Incoming) -> list[Entry]:
        """An edited message: what its first version did no longer stands."""
        numbers = [entry.number for entry in self.ledger.by_key(incoming.key) if entry.undone_by is None]
        return self.undo(incoming.at, "haybell", "", numbers, "edited")

    def numbers(self, key: str | None) -> list[int]:
        """The ledger numbers of what a message did, or of what our answer was about."""
        if key is None:
            return []
        ours = self.mailbox.message(key)
        return list(ours.about.get("numbers", ())) if ours else [e.number for e in self.ledger.by_key(key)]

    def past(self, days: int, now: datetime) -> Lately:
        """What the last days left on record."""
        since = now - timedelta(days=days)
        if not days:
            return Lately()
        return Lately([load(text) for text in self.ledger.sheets(since)], self.ledger.entries(since))

    def say(self, outgoing: Outgoing, at: datetime) -> None:
        """One message into the outbox."""
        self.mailbox.put(outgoing, at)

    def lately(self, name: str, at: datetime) -> bool:
        """Whether something that is said once a day was said within a day; from now on it was."""
        before = self.mailbox.setting(name)
        if before and at - datetime.fromisoformat(before) < timedelta(days=1):
            return True
        self.mailbox.set(name, at.isoformat())
        return False

    def set_back(self, now: datetime) -> bool:
        """Whether the clock stands before what was last done; a day or more before it, the clock was wrong then."""
        last = next((entry.at for entry in reversed(self.ledger.entries()) if not entry.key), None)
        return last is not None and timedelta(0) < last - now < timedelta(days=1)

    def unplanned(self) -> bool:
        """Whether anybody reported something after a plan was last written down."""
        for entry in reversed(self.ledger.entries()):
            if isinstance(entry.event, Posted | Changed):
                return False
            if entry.key:
                return True
        return False
