"""Messages that other hands wrote for barns of their own, with what each should be understood as.

Nobody who wrote them had seen the program, and nothing was mended after what it got wrong in them: what they show is
what a barn may expect of its first day. `python -m tests.words.others` prints the table; with the name of a set, also
what it gets wrong. The sets in `mended` are of the same hands; they were mended from, and only guard what was won.
"""

import json
import sys
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from bot.barn import Barn, load
from bot.roles import judge
from bot.state import as_filed
from bot.words import read

FOLDERS = (Path(__file__).parent / "others", Path(__file__).parent / "mended")
SETS, MENDED = (tuple(sorted(path.stem for path in folder.glob("*.jsonl"))) for folder in FOLDERS)  # "en_r": language
Fact = tuple[tuple[str, Any], ...]


@dataclass(frozen=True)
class Message:
    """Who says what, and the facts, the ask or the refusal that should come of it."""

    who: str
    text: str
    facts: tuple[Fact, ...]
    ask: dict[str, Any] | None
    needs: str | None  # the least role that may, where it is refused

    @property
    def chatter(self) -> bool:
        """Nothing for the bot."""
        return not (self.facts or self.ask or self.needs)


@cache
def barn(name: str) -> Barn:
    """The barn of a set."""
    return load(file_of(f"{name}.yaml"))


def file_of(name: str) -> Path:
    """Where a set's barn or messages are."""
    return next(folder / name for folder in FOLDERS if (folder / name).exists())


def messages(name: str) -> Iterator[Message]:
    """The messages of a set."""
    for line in file_of(f"{name}.jsonl").read_text(encoding="utf-8").splitlines():
        row = json.loads(line)
        facts = tuple(sorted(map(fact, row["events"])))
        yield Message(row["who"], row["text"], facts, row.get("ask"), (row.get("refused") or {}).get("needs"))


def fact(event: dict[str, Any]) -> Fact:
    """An event as the contract's JSON has it, in a form that can be compared."""
    plain = {"setting": "turnout", **event} if event["kind"] == "sign" else dict(event)
    for key in ("horses", "wear"):
        if isinstance(plain.get(key), list):
            plain[key] = tuple(sorted(plain[key]) if key == "horses" else plain[key])
    return tuple(sorted((key, value) for key, value in plain.items() if value is not None))


def heard(name: str, message: Message) -> dict[str, Any]:
    """What the bot understands, as `haybell read --json` says it."""
    where = barn(name)
    person = next((p for p in where.people if message.who in (p.name, *p.also)), None)
    return judge(read(message.text, person, where, as_filed(where)), person, where).as_json()


def right(message: Message, said: dict[str, Any]) -> bool:
    """Exactly the facts, an ask about the same thing with the same choices, refused where and as it should be."""
    asked, wanted = said["ask"], message.ask
    same = (asked is None) == (wanted is None)
    if asked and wanted:
        same = asked["about"] == wanted["about"] and set(asked["options"]) == set(wanted["options"] or asked["options"])
    facts = tuple(sorted(map(fact, said["events"])))
    return same and facts == message.facts and (said["refused"] or {}).get("needs") == message.needs


def subjects(facts: tuple[Fact, ...]) -> set[str]:
    """Every horse and garment that something is recorded of."""
    told = [dict(f) for f in facts if dict(f)["kind"] != "question"]
    single = {f[key] for f in told for key in ("horse", "garment") if key in f}
    return single | {name for f in told if isinstance(f.get("horses"), tuple) for name in f["horses"]}


def score(name: str) -> Counter[str]:
    """How one set does."""
    tally: Counter[str] = Counter()
    for message in messages(name):
        said = heard(name, message)
        kind = "chatter" if message.chatter else "reports"
        tally[kind] += 1
        tally[f"{kind} right"] += right(message, said)
        tally["wrong subject"] += bool(subjects(tuple(map(fact, said["events"]))) - subjects(message.facts))
    return tally


@cache
def by_language(names: tuple[str, ...]) -> dict[str, Counter[str]]:
    """How all these sets of a language do together."""
    tallies: dict[str, Counter[str]] = {}
    for name in names:
        tallies.setdefault(name[:2], Counter()).update(score(name))
    return tallies


def table() -> str:
    """The table for README."""
    rows = ["| language | reports exactly right | chatter left alone | wrong horse or garment |", "|---|---|---|---|"]
    for language, t in by_language(SETS).items():
        shares = [f"{t[k + ' right']} of {t[k]} ({100 * t[k + ' right'] / t[k]:.1f} %)" for k in ("reports", "chatter")]
        rows.append(f"| {language} | {shares[0]} | {shares[1]} | {t['wrong subject']} |")
    return "\n".join(rows)


if __name__ == "__main__":
    for asked_for in sys.argv[1:]:
        for told in messages(asked_for):
            understood = heard(asked_for, told)
            if not right(told, understood):
                print(f"{told.who}: {told.text}\n    wanted {told.facts} {told.ask}\n    heard  {understood}")
    print(table())
