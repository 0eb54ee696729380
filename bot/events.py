"""The facts people report and the barn records: one frozen class a kind; never edited, only undone by another.

This file imports no other file of `bot`: words, roles, ledger, state and JSON all speak in these.
"""

from dataclasses import dataclass, field, fields
from datetime import date, datetime
from typing import Any, ClassVar, Literal, get_args

Sign = Literal["sweating", "hot", "shivering", "cold", "comfortable", "wet", "rubbed", "unwell"]
Setting = Literal["turnout", "stall", "after work"]
GarmentWord = Literal["dry", "damp", "wet", "soaked", "washing", "torn", "strap broken", "missing", "in service"]
Where = Literal["field", "stall"]
Style = Literal["none", "bib", "trace", "blanket", "hunter", "full"]
About = Literal["why", "today", "left", "drying", "state", "forecast", "help"]
Section = Literal["horses", "garments", "people"]  # the parts of the barn file that chat may add to

SIGNS: tuple[Sign, ...] = get_args(Sign)
GARMENT_WORDS: tuple[GarmentWord, ...] = get_args(GarmentWord)
STYLES: tuple[Style, ...] = get_args(Style)


@dataclass(frozen=True)
class Event:
    """One dated fact. `kind` is its name in the ledger and in JSON."""

    kind: ClassVar[str] = ""
    # what only the ledger keeps (weather, what was worn): not part of `read`'s JSON
    private: ClassVar[frozenset[str]] = frozenset()

    def as_json(self) -> dict[str, Any]:
        """The event as the contract's JSON object."""
        shown = {f.name: getattr(self, f.name) for f in fields(self) if f.name not in self.private}
        return {"kind": self.kind} | {key: list(v) if isinstance(v, tuple) else v for key, v in shown.items()}


@dataclass(frozen=True)
class Air:
    """Up to 24 recorded hours that end with the hour of a sign, as plain numbers, so that learning needs no forecast.

    start: first hour, UTC. columns: name of an `Hours` array → its values, None where not known.
    """

    start: datetime
    columns: dict[str, list[float | None]]


@dataclass(frozen=True)
class Seen(Event):
    """A sign on a horse, stored with where it was, what it wore and the weather of that hour.

    wore: garment ids, skin outward; None: nobody knows.
    """

    horse: str
    sign: Sign
    setting: Setting = "turnout"
    where: Where | None = None
    wore: tuple[str, ...] | None = None
    air: Air | None = None
    kind: ClassVar[str] = "sign"
    private: ClassVar[frozenset[str]] = frozenset({"where", "wore", "air"})


@dataclass(frozen=True)
class GarmentIs(Event):
    """The state of a piece of clothing."""

    garment: str
    state: GarmentWord
    kind: ClassVar[str] = "garment"


@dataclass(frozen=True)
class Wearing(Event):
    """What a horse is wearing now, skin outward; empty is bare."""

    horse: str
    wear: tuple[str, ...]
    kind: ClassVar[str] = "wearing"


@dataclass(frozen=True)
class Done(Event):
    """These horses now wear what the round's post says. air: the weather of that hour, when somebody was with them."""

    horses: tuple[str, ...] | Literal["all"]
    air: Air | None = field(default=None, compare=False)
    kind: ClassVar[str] = "done"
    private: ClassVar[frozenset[str]] = frozenset({"air"})


@dataclass(frozen=True)
class Clipped(Event):
    """A clip, or its end with style none."""

    horse: str
    style: Style
    kind: ClassVar[str] = "clip"


@dataclass(frozen=True)
class Placed(Event):
    """Where a horse is from now on, until the file's next round says otherwise or somebody does."""

    horse: str
    where: Where
    kind: ClassVar[str] = "place"


@dataclass(frozen=True)
class Wished(Event):
    """An owner's wish for bare, or its end."""

    horse: str
    keep_bare: bool
    kind: ClassVar[str] = "wish"


@dataclass(frozen=True)
class Worked(Event):
    """Ridden or lessoned: sweat for the next hours teaches nothing about clothes."""

    horse: str
    kind: ClassVar[str] = "worked"


@dataclass(frozen=True)
class Asked(Event):
    """A question: answered, and not kept in the ledger.

    topic: what beyond the plan it asks for (hand-over, handling, a picture, a week, clothes); None: the
    plan itself.
    """

    about: About
    horse: str | None = None
    garment: str | None = None
    topic: str | None = None
    kind: ClassVar[str] = "question"
    private: ClassVar[frozenset[str]] = frozenset({"topic"})

    def as_json(self) -> dict[str, Any]:
        """Horse or garment only where given."""
        return {key: value for key, value in super().as_json().items() if value is not None}


@dataclass(frozen=True)
class Undo(Event):
    """Takes back: the events with these ledger numbers; empty: the speaker's own last."""

    numbers: tuple[int, ...] = ()
    kind: ClassVar[str] = "undo"
    private: ClassVar[frozenset[str]] = frozenset({"numbers"})


@dataclass(frozen=True)
class Posted(Event):
    """A round's post: its window and what each horse was told to wear. The whole sheet is kept beside the ledger."""

    round: str
    day: date
    start: datetime
    end: datetime
    wear: dict[str, tuple[str, ...]] = field(default_factory=dict)
    kind: ClassVar[str] = "posted"


@dataclass(frozen=True)
class Changed(Event):
    """The standing plan was changed after the post (forecast or report): the horses named now have this to wear."""

    round: str
    day: date
    wear: dict[str, tuple[str, ...]] = field(default_factory=dict)
    cause: Literal["forecast", "report"] = "forecast"
    kind: ClassVar[str] = "changed"


@dataclass(frozen=True)
class RecheckSet(Event):
    """Somebody is to look again. Ends with any later sign on that horse by a person."""

    horse: str
    about: Sign
    due: datetime
    step: int = 0  # 0: asked of the group, 1: manager called, 2: owner called
    kind: ClassVar[str] = "recheck"


@dataclass(frozen=True)
class Nudged(Event):
    """The round's one reminder of who is still to do."""

    round: str
    day: date
    kind: ClassVar[str] = "nudged"


@dataclass(frozen=True)
class FileSays(Event):
    """The barn file changed one fact that chat may also change; dated when the change was noticed."""

    about: Literal["clip", "keep_bare", "wearing", "state", "where"]
    name: str  # horse, or garment for state
    value: Any
    on: date | None = None
    kind: ClassVar[str] = "file"


@dataclass(frozen=True)
class Enrolled(Event):
    """The manager put a horse, a piece or a person on the barn's list, or changed facts of one.

    facts: the file's own keys. filed: what the file said of these keys then, None where it had no such row; a later
    edit of the file counts instead.
    """

    section: Section
    name: str
    facts: dict[str, Any]
    filed: dict[str, Any] | None = None
    kind: ClassVar[str] = "enrolled"


@dataclass(frozen=True)
class Struck(Event):
    """The manager took a horse (with its clothes), a piece or a person off the barn's list.

    filed: what the file said of it then, None where it had no such row.
    """

    section: Section
    name: str
    filed: dict[str, Any] | None = None
    kind: ClassVar[str] = "struck"


KINDS: dict[str, type[Event]] = {
    cls.kind: cls
    for cls in (
        Seen, GarmentIs, Wearing, Done, Clipped, Placed, Wished, Worked, Asked, Undo,
        Posted, Changed, RecheckSet, Nudged, FileSays, Enrolled, Struck,
    )
}  # fmt: skip


@dataclass(frozen=True)
class Entry:
    """One row of the ledger: an event, when it was, who said it, in which message.

    at: aware, UTC. who: a person's name, or "haybell". key: the message's key ("" where none).
    undone_by: number of the entry that undid it.
    """

    number: int
    at: datetime
    who: str
    key: str
    event: Event
    text: str = ""
    undone_by: int | None = None
