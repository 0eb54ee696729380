"""Two halves of a corpus and what each message should be understood as.

`python -m tests.words.corpus` prints the table; with the name of a half, also what it gets wrong.
"""

import re
import sys
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from bot.barn import Barn, load
from bot.events import (
    SIGNS,
    Asked,
    Clipped,
    Done,
    Event,
    GarmentIs,
    Placed,
    Seen,
    Undo,
    Wearing,
    Wished,
    Worked,
)
from bot.state import as_filed
from bot.words import Heard, read

HERE = Path(__file__).parent
HALVES = ("tuned", "held", "fresh")


@dataclass(frozen=True)
class Line:
    """One message of the corpus: where it is said, in which language, and what should come of it."""

    barn: str
    language: str
    text: str
    events: tuple[Event, ...]
    ask: tuple[str, frozenset[str]] | None


@cache
def barn(name: str) -> Barn:
    """One of the corpus's barns."""
    return load(HERE / f"{name}.yaml")


def lines(half: str) -> Iterator[Line]:
    """The messages of one half."""
    where, language = "", ""
    for row in (HERE / f"corpus_{half}.txt").read_text(encoding="utf-8").splitlines():
        if row.startswith("["):
            where, language = row.strip("[]").split()
        elif " = " in row and not row.startswith("#"):
            text, _, meaning = row.rpartition(" = ")
            yield Line(where, language, text, *expected(meaning))


def expected(meaning: str) -> tuple[tuple[Event, ...], tuple[str, frozenset[str]] | None]:
    """The facts and the ask that a row's right-hand side stands for."""
    events, ask = [], None
    for part in [] if meaning == "-" else meaning.split("; "):
        if part.startswith("ask "):
            about, _, options = part[4:].partition(": ")
            ask = (about, frozenset(options.split(", ")))
        else:
            events.append(_event(part))
    return tuple(events), ask


def _event(part: str) -> Event:
    head, _, value = part.partition(": ")
    kind, _, subject = head.partition(" ")
    setting = re.search(r" \((.*)\)$", value)
    match kind:
        case "sign":
            sign = value.partition(" (")[0]
            assert sign in SIGNS
            return Seen(subject, sign, setting.group(1) if setting else "turnout")
        case "garment":
            return GarmentIs(subject, value)
        case "wearing":
            return Wearing(subject, () if value == "bare" else tuple(value.split(", ")))
        case "done":
            return Done("all" if value == "all" else tuple(value.split(", ")))
        case "clip":
            return Clipped(subject, value)
        case "place":
            return Placed(subject, value)
        case "wish":
            return Wished(subject, value == "bare")
        case "worked":
            return Worked(subject)
        case "undo":
            return Undo()
        case "question":
            about, *what = value.split(" ")
            garment = what.pop() if what and "-" in what[-1] else None
            return Asked(about, horse=" ".join(what) or None, garment=garment)
    raise ValueError(part)


def heard(line: Line) -> Heard:
    """What the bot understands of a line."""
    where = barn(line.barn)
    person = next(p for p in where.people if p.language == line.language)
    return read(line.text, person, where, as_filed(where))


def right(line: Line, said: Heard) -> bool:
    """Exactly as expected: facts in any order, the ask with its choices, silence as silence."""
    ask = (said.ask.about, frozenset(said.ask.options)) if said.ask else None
    return sorted(map(repr, said.events)) == sorted(map(repr, line.events)) and ask == line.ask


def subjects(events: tuple[Event, ...]) -> set[str]:
    """Every horse and garment that these facts are about."""
    named: set[str] = set()
    for event in events:
        if not isinstance(event, Asked):
            named |= {getattr(event, "horse", ""), getattr(event, "garment", ""), *getattr(event, "wear", ())}
            named |= set(event.horses) if isinstance(event, Done) and event.horses != "all" else set()
    return named - {"", None}


def score(half: str, language: str) -> Counter[str]:
    """How one half does in one language."""
    tally: Counter[str] = Counter()
    for line in lines(half):
        if line.language != language:
            continue
        said = heard(line)
        tally["messages"] += 1
        if line.events or line.ask:
            tally["reports"] += 1
            tally["exactly right"] += right(line, said)
        else:
            tally["chatter"] += 1
            tally["left alone"] += said.chatter
        tally["understood"] += bool(said.events)
        tally["understood rightly"] += bool(said.events) and right(line, said)
        tally["asked"] += said.ask is not None
        tally["wrong subject"] += bool(subjects(said.events) - subjects(line.events))
    return tally


def table() -> str:
    """The table for README: both halves, each language."""
    rows = ["| half | language | messages | reports exactly right | chatter left alone "
        "| precision | asked | wrong horse or garment |",
            "|---|---|---|---|---|---|---|---|"]  # fmt: skip
    for half in HALVES:
        for language in ("en", "es", "fr"):
            t = score(half, language)
            rows.append(
                f"| {half} | {language} | {t['messages']} | {_share(t['exactly right'], t['reports'])} "
                f"| {_share(t['left alone'], t['chatter'])} | {_share(t['understood rightly'], t['understood'])} "
                f"| {t['asked']} | {t['wrong subject']} |"
            )
    return "\n".join(rows)


def _share(some: int, of: int) -> str:
    return f"{some} of {of} ({100 * some / of:.1f} %)" if of else "none"


if __name__ == "__main__":
    if len(sys.argv) > 1:  # a half's name: what it gets wrong
        for wrong in lines(sys.argv[1]):
            if not right(wrong, heard(wrong)):
                said = heard(wrong).as_json()
                print(f"{wrong.text}\n    wanted {wrong.events} {wrong.ask}\n    heard  {said['events']} {said['ask']}")
    print(table())
