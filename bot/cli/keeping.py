"""Commands that keep what matters: backup, restore, export, replay."""

import argparse
import json
import sys

from bot.cli import given
from bot.cli.looking import written


def backup(args: argparse.Namespace) -> int:
    """A consistent copy of the barn's data, also while the bot runs."""
    from bot.backup import backup as copy
    from bot.barn import load
    from bot.store import data_path

    print(copy(data_path(load(args.barn).barn, args.data), args.dest))
    return 0


def restore(args: argparse.Namespace) -> int:
    """A copy put back, after it was checked."""
    from bot.backup import restore as put_back
    from bot.barn import load
    from bot.store import data_path

    print(put_back(args.src, data_path(load(args.barn).barn, args.data)))
    return 0


def export(args: argparse.Namespace) -> int:
    """The barn file as the barn is now, comments kept, on standard output."""
    from bot.barn import load
    from bot.export import export as anew

    barn = load(args.barn)
    listed = given.barn(args)
    sys.stdout.write(anew(args.barn, barn, given.state(listed, args), listed))
    return 0


def replay(args: argparse.Namespace) -> int:
    """A season of recorded hours through the plan, beside a plain temperature chart."""
    from bot.barn import load
    from bot.replay import run

    season = run(load(args.barn), args.weather, args.start, args.end)
    if args.picture:
        from bot.season.picture import draw  # here: most commands need no image library

        written(args.picture, draw(season))
    print(json.dumps(season.as_json(), ensure_ascii=False) if args.json else season.table())
    return 0
