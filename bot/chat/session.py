"""A terminal group put together: barn, data, forecast; then a script, a live talk or the demo plays on it."""

import argparse
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from bot.barn import Barn, demo_path, forecast_file, load
from bot.barn_day import BarnDay
from bot.chat import script
from bot.chat.terminal import Terminal, converse, midnight, play
from bot.forecast import Forecast, from_file
from bot.store import Store, data_path


@dataclass
class FromFiles:
    """The forecast of the last file named; a script may name another on its way."""

    forecast: Forecast | None = None

    def __call__(self, now: datetime) -> Forecast | None:
        """The forecast in force."""
        return self.forecast

    def swap(self, path: Path, at: datetime) -> None:
        """From now on this file counts, as if fetched at `at`."""
        self.forecast = from_file(path, at)


@contextmanager
def _opened(barn: Barn, data: Path | None) -> Iterator[tuple[Store, Path]]:
    """The barn's store, and the folder for pictures beside it."""
    path = data_path(barn.barn, data)
    path.parent.mkdir(parents=True, exist_ok=True)
    store = Store.open(path)
    try:
        yield store, path.parent / "pictures"
    finally:
        store.close()


def _named(barn: Barn, forecast: Path | None) -> Path | None:
    """The forecast file of the command line, else of the barn file."""
    filed = next((found for found in map(forecast_file, barn.forecast) if found), None)
    return forecast or (Path(filed) if filed else None)


def scripted(args: argparse.Namespace) -> int:
    """A day written down, played on its own clock."""
    barn = load(args.barn)
    lines = script.load(args.script, barn.zone)
    if not lines:
        return 0
    until = args.until and (args.until if args.until.tzinfo else args.until.replace(tzinfo=barn.zone))
    files = FromFiles()
    named = _named(barn, args.forecast)
    if named:
        files.swap(named, lines[0].at)
    with _opened(barn, args.data) as (store, pictures):
        terminal = Terminal(BarnDay(barn, store, files, since=midnight(lines[0].at)), barn.zone, pictures, args.json)
        play(terminal, lines, until, files.swap)
    return 0


def live(args: argparse.Namespace) -> int:
    """The group typed live; the clock is the machine's."""
    barn = load(args.barn)
    with _opened(barn, args.data) as (store, pictures):
        forecasts = FromFiles()
        named = _named(barn, args.forecast)
        if named:
            forecasts.swap(named, datetime.now(UTC))
        terminal = Terminal(BarnDay(barn, store, forecasts), barn.zone, pictures, args.json)
        converse(terminal, sys.stdin)
    return 0


def demo() -> None:
    """A whole day on the invented farm, in memory: nothing is kept but its pictures."""
    barn = load(demo_path())
    folder = Path(__file__).parents[1] / "demo"
    lines = script.load(folder / "day.txt", barn.zone)
    files = FromFiles()
    files.swap(folder / "morning.csv", lines[0].at.replace(hour=5, minute=50))
    pictures = Path(tempfile.mkdtemp(prefix="haybell-"))
    terminal = Terminal(BarnDay(barn, Store.memory(), files, since=midnight(lines[0].at)), barn.zone, pictures)
    play(terminal, lines, lines[-1].at, files.swap)
