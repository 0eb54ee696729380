"""Commands that look back: history (a horse's month, the bill, the clothes), mirror (expected against seen)."""

import argparse
import json
from calendar import monthrange
from datetime import UTC, date, datetime, timedelta
from typing import TYPE_CHECKING

from bot.cli import given
from bot.cli.looking import written
from bot.problems import WrongInput

if TYPE_CHECKING:
    from collections.abc import Iterable

    from bot.barn import Barn
    from bot.events import Entry
    from rules.acclimatised import Weeks

MOST_WEEKS = 104


def month(text: str) -> date:
    """The first day of a month."""
    try:
        return date.fromisoformat(f"{text}-01")
    except ValueError:
        raise argparse.ArgumentTypeError(f"“{text}” is no month; write 2026-11") from None


def weeks(text: str) -> int:
    """A number of weeks to look back on."""
    if text.isdecimal() and 0 < int(text) <= MOST_WEEKS:
        return int(text)
    raise argparse.ArgumentTypeError(f"“{text}” is no number of weeks from 1 to {MOST_WEEKS}; write 26")


def history(args: argparse.Namespace) -> int:
    """One horse's month as text, CSV, a calendar or the veterinarian's page; without a name every horse's changes.

    --wardrobe: what the last weeks say of the clothes.
    """
    from bot.season import history as past

    barn = given.barn(args)
    if args.wardrobe:
        return _wardrobe(barn, args)
    entries = _entries(barn, args)
    first = args.month or datetime.now(UTC).astimezone(barn.zone).date().replace(day=1)
    last = first.replace(day=monthrange(first.year, first.month)[1])
    if args.horse is None:
        counts = past.changes(barn, entries, first, last)
        print("\n".join([f"{first:%B %Y}, changes of clothes", *(f"{n:5d}  {name}" for name, n in counts.items())]))
        return 0
    _known(barn, args.horse)
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


def _known(barn: "Barn", horse: str) -> None:
    if horse not in {h.name for h in barn.horses}:
        raise WrongInput(f"history: no horse “{horse}”; the barn has {', '.join(h.name for h in barn.horses)}")


def _wardrobe(barn: "Barn", args: argparse.Namespace) -> int:
    """What the last weeks say of the clothes, of all or of one horse's: to buy, mend or reproof, missed, never worn."""
    from bot.ledger import Ledger
    from bot.season.closet import look_back
    from bot.season.closet_told import told
    from bot.voice import voice

    if args.horse is not None:
        _known(barn, args.horse)
    store, now = given.store(barn, args), given.at(args, barn)
    ledger = Ledger(store) if store else None
    entries = ledger.entries() if ledger else []
    sheets = ledger.sheets(now - timedelta(weeks=args.weeks)) if ledger else []
    closet = look_back(barn, entries, sheets, now, args.weeks)
    if args.json:
        print(json.dumps(closet.as_json(), ensure_ascii=False))
    else:
        print(told(closet, voice(barn, barn.language, barn.units), args.horse))
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
        from bot.season.pages import mirrored  # here: most commands need no image library

        print(written(args.png, mirrored(shown)))
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
