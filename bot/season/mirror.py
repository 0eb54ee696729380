"""An honest mirror: what the balance expected of each horse against what people saw, with counts, month by month.

The model is calibrated, not validated; this is the barn's own check of it. Expectations are those of the day: with
what had been learned of the horse and of the whole barn until then, never with the sign itself.
"""

import csv
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from io import StringIO
from itertools import groupby
from typing import Any

from bot.barn import Barn, Horse
from bot.events import Entry
from bot.evidence import Known, evidence, schooling, shared
from bot.state import State, fold
from rules.acclimatised import Weeks
from rules.offset import Evidence, Learned

ROOM_C = 4.0  # less room than this on one side is "near"
EXPECTED = ("too cold", "near cold", "at ease", "near warm", "too warm")
SEEN = ("cold", "fine", "warm")
_AS_SEEN = {"shivering": "cold", "cold": "cold", "comfortable": "fine", "hot": "warm", "sweating": "warm"}


@dataclass(frozen=True)
class Look:
    """One sign that tests the model. month: "2026-11"; cold, heat: margins expected [K], with what a hardy horse bears.

    sign: what people said.
    """

    month: str
    horse: str
    who: str
    cold_c: float
    heat_c: float
    sign: str

    @property
    def seen(self) -> str:
        """What people saw, in three words."""
        return _AS_SEEN[self.sign]

    @property
    def expected(self) -> str:
        """What the margins say: the side with less room counts."""
        if self.cold_c <= self.heat_c:
            return _side(self.cold_c, "cold")
        return _side(self.heat_c, "warm")


def _side(room_c: float, word: str) -> str:
    return f"too {word}" if room_c < 0 else f"near {word}" if room_c < ROOM_C else "at ease"


def look(month: str, horse: str, one: Evidence, learned: Learned) -> Look:
    """One sign against what was expected of the horse by what had been learned of it and of the whole barn until then.

    What the plan holds back beside that, lest one voice chill a horse, is caution and no expectation.
    """
    here = one.under(learned.common)
    cold, heat = here.cold_margin_c + here.bears_c - learned.mean_c, here.heat_margin_c + learned.mean_c
    return Look(month, horse, one.who, cold, heat, one.sign)


def of_barn(barn: Barn, entries: Iterable[Entry], weeks: Weeks | None = None) -> list[Look]:
    """Every sign of the ledger that tests the model, horse by horse, oldest first.

    Each against the very model that the plan went by just before it. weeks: the weather that they lived through.
    """
    state = fold(barn, entries).after(weeks)
    known: Known = {}
    found: dict[str, list[Look]] = {horse.name: [] for horse in barn.horses}
    for day, said in groupby(_said(barn, state, known), key=lambda sign: sign[0].at.astimezone(barn.zone).date()):
        signs = list(said)
        barns = shared(barn, state, signs[0][1].at_s, known)  # the same all day
        for _, one, filed in signs:
            learned = schooling(barn, state, filed, one.at_s - 1, known, barns).learned()
            found[filed.name].append(look(f"{day:%Y-%m}", filed.name, one, learned))
    return [one for own in found.values() for one in own]


def _said(barn: Barn, state: State, known: Known) -> list[tuple[Entry, Evidence, Horse]]:
    """All signs that could be weighed, oldest first."""
    every = [
        (entry, one, filed)
        for filed in barn.horses
        for entry, one in evidence(barn, filed, state.horses[filed.name], known)
        if one.teaches
    ]
    return sorted(every, key=lambda sign: (sign[0].at, sign[0].number))


@dataclass(frozen=True)
class Mirror:
    """Counts by (month, expected, seen); the month "all" is the sum."""

    counts: Mapping[tuple[str, str, str], int]

    @property
    def months(self) -> list[str]:
        """The months that have signs, oldest first."""
        return sorted({month for month, _, _ in self.counts if month != "all"})

    def row(self, expected: str, month: str = "all") -> list[int]:
        """How often horses so expected were seen cold, fine and warm."""
        return [self.counts.get((month, expected, seen), 0) for seen in SEEN]

    def as_json(self) -> dict[str, Any]:
        """Month → expectation → counts of what was seen."""
        return {
            month: {expected: dict(zip(SEEN, self.row(expected, month))) for expected in EXPECTED}
            for month in [*self.months, "all"]
        }

    def table(self) -> str:
        """The whole season as text, then one line a month."""
        lines = ["expected    seen:  cold  fine  warm  right"]
        for expected in EXPECTED:
            row = self.row(expected)
            lines.append(f"{expected:<17}" + "".join(f"{n:6d}" for n in row) + f"  {_right(expected, row)}")
        for month in self.months:
            total = sum(sum(self.row(expected, month)) for expected in EXPECTED)
            right = sum(self.row(expected, month)[_TRUE[expected]] for expected in EXPECTED)
            lines.append(f"{month}: {total} signs, {right} as expected")
        return "\n".join(lines) + "\n"


_TRUE = {"too cold": 0, "near cold": 1, "at ease": 1, "near warm": 1, "too warm": 2}


def _right(expected: str, row: Sequence[int]) -> str:
    return f"{100 * row[_TRUE[expected]] / sum(row):4.0f}%" if sum(row) else "    –"


def mirror(found: Iterable[Look]) -> Mirror:
    """The looks, counted."""
    counts: Counter[tuple[str, str, str]] = Counter()
    for look in found:
        counts[look.month, look.expected, look.seen] += 1
        counts["all", look.expected, look.seen] += 1
    return Mirror(dict(counts))


def for_study(found: Iterable[Look]) -> str:
    """The looks as CSV for a study: no person's, horse's or barn's name, months instead of days."""
    every = list(found)
    horses = {name: f"horse {k}" for k, name in enumerate(dict.fromkeys(f.horse for f in every), 1)}
    people = {name: f"observer {k}" for k, name in enumerate(dict.fromkeys(f.who for f in every), 1)}
    out = StringIO()
    rows = csv.writer(out, lineterminator="\n")
    rows.writerow(("month", "horse", "observer", "cold_margin_c", "heat_margin_c", "sign"))
    for f in every:
        rows.writerow((f.month, horses[f.horse], people[f.who], round(f.cold_c, 1), round(f.heat_c, 1), f.sign))
    return out.getvalue()
