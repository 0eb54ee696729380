"""Commands that look back: history (one horse's month, the bill), mirror (what was expected against what was seen)."""

import argparse
import json
from calendar import monthrange
from datetime import UTC, date, datetime
from typing import TYPE_CHECKING

from bot.cli import given
from bot.cli.looking import written
from bot.problems import WrongInput

if TYPE_CHECKING:
    from collections.abc import Iterable

    from bot.barn import Barn
    from bot.events import Entry
    from rules.acclimatised import Weeks


def month(text: str) -> date:
    """The first day of a month."""
    try:
        return date.fromisoformat(f"{text}-01")
    except ValueError:
        raise argparse.ArgumentTypeError(f"“{text}” is no month; write 2026-11") from None


def history(args: argparse.Namespace) -> int:
    """One horse's month as text, CSV, a calendar or the veterinarian's page; without a name every horse's changes."""
    from bot.season import history as past

    barn = given.barn(args)
    entries = _entries(barn, args)
    first = args.month or datetime.now(UTC).astimezone(barn.zone).date().replace(day=1)
    last = first.replace(day=monthrange(first.year, first.month)[1])
    if args.horse is None:
        counts = past.changes(barn, entries, first, last)
        print("\n".join([f"{first:%B %Y}, changes of clothes", *(f"{n:5d}  {name}" for name, n in counts.items())]))
        return 0
    if args.horse not in {h.name for h in barn.horses}:
        raise WrongInput(f"history: no horse “{args.horse}”; the barn has {', '.join(h.name for h in barn.horses)}")
    found = past.days(barn, entries, args.horse, first, last)
    if args.png:
        from bot.season.pages import calendar

        print(written(args.png, calendar(args.horse, found, first)))
    elif args.vet:
        from bot.season.pages import for_vet

        seen = [moment for day in found for moment in day.moments]
        print(written(args.vet, for_vet(barn, barn.horse(args.horse), seen)))
    else:
        print(past.as_csv(args.horse, found) if args.csv else past.as_text(args.horse, found), end="")
    return 0


def mirror(args: argparse.Namespace) -> int:
    """What was expected against what was seen; --study: the same without names, for whoever the manager gives it to."""
    from bot.season import mirror as held

    barn = given.barn(args)
    entries = _entries(barn, args)
    weeks = given.weeks(barn, args)
    looks = held.of_barn(barn, entries, weeks)
    if args.study:
        print(held.for_study(looks), end="")
        return 0
    shown = held.mirror(looks)
    if args.png:
        print(written(args.png, shown.picture()))
    elif args.json:
        print(json.dumps(shown.as_json()))
    else:
        print(shown.table() + "\n".join(_taught(barn, entries, weeks)))
    return 0


def _taught(barn: "Barn", entries: "list[Entry]", weeks: "Weeks | None") -> "Iterable[str]":
    """What all horses have taught together by the last word on record; the plan allows for it."""
    from bot.evidence import shared
    from bot.state import fold
    from bot.tips import barn_lines
    from bot.voice import voice

    last = max((entry.at for entry in entries), default=datetime.now(UTC))
    common = shared(barn, fold(barn, entries).after(weeks), int(last.timestamp()), {})
    yield from barn_lines(common, voice(barn, "en", barn.units))
    if common.wind != 1:
        yield "The plan allows for it. If the field is not as the barn file says, mend its exposure."


def _entries(barn: "Barn", args: argparse.Namespace) -> "list[Entry]":
    from bot.ledger import Ledger

    store = given.store(barn, args)
    return list(Ledger(store).entries()) if store else []
