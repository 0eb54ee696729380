"""What a command is given: an instant, the barn's data, its state, a forecast."""

import argparse
import sys
from datetime import UTC, date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from bot.barn import Barn
from bot.state import State

if TYPE_CHECKING:  # each brings a library along that only some commands need
    from bot.forecast import Forecast
    from bot.store import Store
    from rules.acclimatised import Weeks


def instant(text: str) -> datetime:
    """An ISO time; without an offset it is the barn's local time, set by `at`."""
    try:
        return datetime.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"“{text}” is no time; write 2026-11-26T06:15") from None


def day(text: str) -> date:
    """An ISO date."""
    try:
        return date.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"“{text}” is no date; write 2026-11-26") from None


def at(args: argparse.Namespace, barn: Barn) -> datetime:
    """The instant of --at, else now."""
    given: datetime | None = args.at
    if given is None:
        return datetime.now(UTC)
    return given if given.tzinfo else given.replace(tzinfo=barn.zone)


def store(barn: Barn, args: argparse.Namespace) -> "Store | None":
    """The barn's data for reading; None where there is none yet."""
    from bot.store import Store, data_path

    path = data_path(barn.barn, args.data)
    return Store.read(path) if path.exists() else None


def barn(args: argparse.Namespace) -> Barn:
    """The barn's list as it is now: the file with what was changed in the chat."""
    from bot.barn import load
    from bot.barn.amend import as_now

    filed = load(args.barn)
    kept = store(filed, args)
    if kept is None:
        return filed
    from bot.ledger import Ledger

    return as_now(filed, Ledger(kept).entries())


def state(barn: Barn, args: argparse.Namespace) -> State:
    """The barn as file and ledger have it; an edit of the file that no start has noticed yet counts as made now."""
    from bot.state import as_filed, fold

    kept = store(barn, args)
    if kept is None:
        return as_filed(barn)
    from bot.filed import unnoticed
    from bot.ledger import Ledger
    from bot.mailbox import Mailbox

    edits = unnoticed(barn, Mailbox(kept).setting("filed"), datetime.now(UTC))
    return fold(barn, [*Ledger(kept).entries(), *edits])


def weeks(barn: Barn, args: argparse.Namespace) -> "Weeks | None":
    """The weather that the horses lived through; None where there is no data yet."""
    from bot.almanac import almanac
    from bot.ledger import Ledger

    kept = store(barn, args)
    return almanac(barn.place.latitude, Ledger(kept)).weeks if kept else None


def lived(barn: Barn, args: argparse.Namespace) -> State:
    """The state, its weather too: what a plan and what was learned depend on."""
    return state(barn, args).after(weeks(barn, args))


def forecast(barn: Barn, args: argparse.Namespace, when: datetime) -> "Forecast | None":
    """The forecast named on the command line, else the barn file's own, asked for now; None where there is none."""
    from bot.barn import forecast_file
    from bot.forecast import from_file, latest, refresh
    from bot.forecast.last_good import LastGood

    named = args.forecast or next((f for f in map(forecast_file, barn.forecast) if f), None)
    if named:
        return from_file(Path(named), when)
    kept = LastGood()
    for line in refresh(barn, kept, when).told:
        print(line, file=sys.stderr)
    return latest(kept, barn, when)


def last_good(barn: Barn, args: argparse.Namespace, when: datetime) -> "Forecast | None":
    """The last good forecast that was kept with the data; nothing is fetched."""
    from bot.forecast import latest
    from bot.forecast.last_good import LastGood
    from bot.mailbox import Kept

    kept = store(barn, args)
    return latest(LastGood(Kept(kept)), barn, when) if kept else None
