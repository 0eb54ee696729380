"""Telling: what a message has said so far, whom it spoke of last, and the first thing to ask about."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field, replace
from functools import lru_cache

from bot.barn import Barn, Person
from bot.events import Asked, Done, Event, GarmentIs, Placed, Seen, Setting, Sign, Wearing, Worked
from bot.state import State
from bot.words.clothing.change import Change
from bot.words.clothing.which import Meant, meant
from bot.words.lookup.items import Item
from bot.words.lookup.names import Roster
from bot.words.lookup.piece import Piece
from bot.words.meaning import Ask, Reference
from bot.words.thoughts.clauses import Clause, of_both

FROM_WORK: tuple[Sign, ...] = ("sweating", "hot", "wet")
PAIR = 2
REMEMBERED = 1_000  # horses


@dataclass
class Telling:
    """One message while it is being read.

    who: the horses spoken of last, as written. piece: the piece spoken of last. begun: whether `who` was named in this
    message (else it comes from what the message answers).
    """

    person: Person | None
    barn: Barn
    state: State
    roster: Roster
    reply: Reference
    text: str = ""
    events: list[Event] = field(default_factory=list)  # changed by `say` and `retell` only
    told: set[Event] = field(default_factory=set)  # the same, to look one up
    worn: dict[str, tuple[str, ...]] = field(default_factory=dict)  # what they say that each horse wears
    ask: Ask | None = None
    who: tuple[Item, ...] = ()
    others: tuple[tuple[Item, ...], tuple[Item, ...]] | None = None  # `who`, and who did something to them
    piece: tuple[str, ...] = ()
    came_off: tuple[str, ...] = ()  # the piece taken off last, where it is the piece spoken of last
    put_on: tuple[str, ...] = ()  # the piece put on last: "it's wet" behind it may be the weather
    last: str = ""  # "horse" or "piece": which of the two came last
    begun: bool = False
    dressed: str = ""  # how the last outfit was told: "whole", "on" for pieces added
    change: Change | None = None  # what the last outfit came from, for "Pip too"
    crowded: bool = False  # somebody else was spoken of beside the horse
    supposing: str = ""  # of what a condition was told: "weather" of "if it rains, …", "ours" of a horse, "other"
    asked: bool = False  # the horse was only asked about, of people
    planned: bool = False  # or only planned for: no piece is its own for that
    elsewhere: bool = False  # something that is not the barn's was spoken of since
    thing: str = ""  # the thing that is no piece, spoken of since the last horse or piece: "mes bottes"
    spoken: Piece | None = None  # the piece described last, whatever was said of it, for "took it off"
    sign: Sign | None = None  # the sign told last, for "but Ned is"
    past: set[int] = field(default_factory=set)  # places in `events` of signs told as past
    standing: set[str] = field(default_factory=set)  # horses told to be somewhere without a word of moving there
    among_stalls: bool = False  # what is told is seen in the stalls: "je suis aux box", "In the barn: …"
    stalled: set[str] = field(default_factory=set)  # horses said to stand in their stalls
    later: set[int] = field(default_factory=set)  # places in `events` of "fine now", "fine at 9"
    warm: dict[int, bool] = field(default_factory=dict)  # places in `events` of "chaude", and whether behind "mais"
    of_all: set[int] = field(default_factory=set)  # places in `events` of signs told of everyone
    changed: set[str] = field(default_factory=set)  # horses said to be changed: how, may follow
    puzzling: set[str] = field(default_factory=set)  # horses that something came off which none of theirs can be
    heard: Clause | None = None  # the clause told last: a strap in it, "elle a pété"; everyone in it, "toasty"
    but_one: bool = False  # what follows tells of a horse that is otherwise: "everyone" are horses
    plainly_not: set[int] = field(default_factory=set)  # places in `events` of "not cold"; not of "not very cold"
    denied: dict[int, Sign] = field(default_factory=dict)  # places in `events` of "not sweaty", with what was denied

    @property
    def mine(self) -> tuple[str, ...]:
        """The speaker's own horses."""
        return tuple(h.name for h in self.barn.horses if self.person and h.owner == self.person.name)

    @property
    def names(self) -> tuple[str, ...]:
        """Every horse, in the file's order."""
        return self.roster.everyone

    def speak_of(self, horses: Sequence[Item]) -> None:
        """These horses were named last: what follows is told of them."""
        self.who, self.begun, self.last = tuple(horses), True, "horse"

    def of_nobody(self) -> None:
        """Perhaps another horse was spoken of: what follows is told of nobody."""
        self.who, self.begun = (), True

    def meant_by(self, clause: Clause) -> tuple[Item, ...]:
        """The horses spoken of last, where a clause that names none may be of them."""
        if of_both(clause) and (two := self.two()):
            return two
        led_away = (self.asked and not clause.items[0].has("is")) or self.elsewhere
        led_away = led_away and not (clause.has("she", "her", "body") or any(p.their for p in clause.pieces))
        return () if led_away or clause.has("no name", "animal") else self.who

    def two(self) -> tuple[Item, ...]:
        """Whom "both" means: two named together last, or told of one by one; none where they are not two."""
        last = dict.fromkeys(name for item in self.who if item.sure for name in item.horses)
        told = dict.fromkeys(e.horse for e in self.events if isinstance(e, Seen | Placed | Wearing | Worked))
        pair = tuple(last if len(last) == PAIR or not last.keys() <= told.keys() else told)
        return named(pair) if len(pair) == PAIR else ()

    def owner_meant_by(self, clause: Clause) -> tuple[Item, ...]:
        """The horses spoken of last, where a piece in a clause that names none may be theirs."""
        return () if self.planned and not clause.has("she", "her") else self.meant_by(clause)

    def owners_of(self, pieces: Sequence[Piece]) -> tuple[str, ...]:
        """The horse that owns these pieces by their nicknames; none where they are of several, or of nobody."""
        owners = {self.roster.garments[g].horse for piece in pieces for g in piece.ids}
        return tuple(name for name in owners if name) if len(owners) == 1 else ()

    def rest(self) -> tuple[str, ...]:
        """The horses that the message has not told anything of yet; none where it has told nothing, and only asked."""
        facts = [event for event in self.events if not isinstance(event, Asked)]
        told = {getattr(event, "horse", None) for event in facts}
        told |= {name for event in facts if isinstance(event, Done) and event.horses != "all" for name in event.horses}
        return tuple(name for name in self.names if name not in told) if facts else ()

    def say(self, event: Event) -> None:
        """One more fact, once."""
        if event not in self.told:
            self.events.append(event)
            self.told.add(event)
            if isinstance(event, Wearing):
                self.worn[event.horse] = event.wear

    def retell(self, events: Sequence[Event]) -> None:
        """These facts in place of all that were told."""
        self.events = list(events)
        self.told = set(events)
        self.worn = {event.horse: event.wear for event in events if isinstance(event, Wearing)}

    def found_again(self) -> None:
        """The piece that was told to be gone is there after all."""
        gone = self.events[-1]
        if isinstance(gone, GarmentIs):
            self.retell([*self.events[:-1], GarmentIs(gone.garment, "in service")])

    def wonder(self, ask: Ask) -> None:
        """Something to ask about; only the first is asked, and only where there is a choice."""
        if self.ask is None and ask.options:
            self.ask = ask if ask.word else replace(ask, word=self.text.strip())

    def each(self, horses: Sequence[Item], make: Callable[[str], Event]) -> None:
        """A fact of each of these horses; asked about where the name is not sure."""
        for item in horses:
            if item.sure:
                for name in item.horses:
                    self.say(make(name))
            else:
                self.wonder(Ask("horse", item.raw, item.horses, (make(""),)))

    def wear(self, horse: str) -> tuple[str, ...] | None:
        """What a horse is wearing, as recorded and as told in this message."""
        return self.worn[horse] if horse in self.worn else self.recorded(horse)

    def all_but(self, left: Iterable[Item]) -> tuple[str, ...]:
        """Every horse but those that these words name."""
        names = {name for item in left for name in item.horses}
        return tuple(name for name in self.names if name not in names)

    def recorded(self, horse: str) -> tuple[str, ...] | None:
        """What a horse wore before this message."""
        now = self.state.horses.get(horse)
        return now.wear if now else None

    def meant(self, piece: Piece, horse: str | None, *, lend: bool = False) -> Meant:
        """The garment a description means for a horse."""
        return meant(piece, horse, self.roster, self.state, lend=lend)

    def settled_ask(self) -> Ask | None:
        """What is to be asked; not about a horse's sign where a clear one was told as well."""
        ask = self.ask
        if ask is not None and ask.about == "sign":
            signed = {e.horse for e in self.events if isinstance(e, Seen)}
            left = tuple(e for e in ask.pending if not (isinstance(e, Seen) and e.horse in signed))
            return replace(ask, pending=left) if left else None
        return ask

    def about_one(self, first: int, setting: Setting) -> None:
        """The signs of the only horse spoken of, told from this place on, were seen there."""
        if not any(isinstance(e, Placed | Worked) for e in self.events[first:]):
            self.seen_from(first, setting)

    def seen_from(self, first: int, setting: Setting) -> None:
        """The signs told from this place on were seen there or after that; only sweat comes of work."""
        told = self.events[first:]
        seen = [_seen_there(event, setting) for event in told]
        if seen != told:
            self.retell([*self.events[:first], *seen])


def _seen_there(event: Event, setting: Setting) -> Event:
    if not (isinstance(event, Seen) and event.setting == "turnout"):
        return event
    fits = setting != "after work" or event.sign in FROM_WORK
    return replace(event, setting=setting) if fits else event


def named(names: Sequence[str]) -> tuple[Item, ...]:
    """Horses as if they had been written."""
    return tuple(map(_named, names))


@lru_cache(maxsize=REMEMBERED)
def _named(name: str) -> Item:
    return Item(name, name, horses=(name,))
