"""A terminal group put together: barn, data, forecast; then a script, a live talk or the demo plays on it."""

import argparse
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager, nullcontext
from dataclasses import dataclass
from datetime import UTC, datetime
from io import TextIOWrapper
from pathlib import Path
from threading import Event, Thread

from bot.barn import Barn, demo_path, forecast_file, load
from bot.barn_day import BarnDay, Forecasts
from bot.chat import script
from bot.chat.terminal import Terminal, converse, midnight, play
from bot.forecast import Forecast, LastGood, from_file, latest, refresh
from bot.mailbox import Kept
from bot.store import Store, data_path

FIRST_S = 5.0  # how long a talk waits for its first forecast
REFRESH_S = 600.0


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
    for line in lines:  # a forecast that cannot be read is said before anything is played
        if line.who == script.FORECAST:
            from_file(Path(line.text), line.at)
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
        named = _named(barn, args.forecast)
        with _fetched(barn, store) if named is None else nullcontext(FromFiles(_from(named))) as forecasts:
            terminal = Terminal(BarnDay(barn, store, forecasts), barn.zone, pictures, args.json)
            if isinstance(sys.stdin, TextIOWrapper):
                sys.stdin.reconfigure(errors="replace")
            converse(terminal, sys.stdin)
    return 0


def _from(path: Path) -> Forecast:
    return from_file(path, datetime.now(UTC))


@contextmanager
def _fetched(barn: Barn, store: Store) -> Iterator[Forecasts]:
    """The last good forecast of the barn's services, asked anew in a thread while people talk."""
    kept, ended, first = LastGood(Kept(store)), Event(), Event()

    def ask() -> None:
        while not ended.is_set():
            told = refresh(barn, kept, datetime.now(UTC)).told
            if not ended.is_set():
                sys.stderr.writelines(f"forecast: {line}\n" for line in told)
            first.set()
            ended.wait(REFRESH_S)

    thread = Thread(target=ask, daemon=True)
    thread.start()
    first.wait(FIRST_S)
    try:
        yield lambda at: latest(kept, barn, at)
    finally:
        ended.set()
        thread.join(1.0)


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
