"""The command line: each command a few calls and one printed result. Imports stand inside: each pays for its own.

given     what a command is given: an instant, the data, a forecast
looking   check plan read show log board health
running   demo chat serve
past      history mirror
keeping   backup restore export replay
"""

import argparse
import os
import sys
from collections.abc import Callable, Sequence
from pathlib import Path

from bot.cli import keeping, looking, past, running
from bot.cli.given import day, instant
from bot.problems import HaybellError


def main(argv: Sequence[str] | None = None) -> None:
    """Run one command. Exit status 0 good, 1 failed in use, 2 wrong input; never a traceback."""
    try:
        args = parsed(list(sys.argv[1:] if argv is None else argv))
        sys.exit(args.run(args) or 0)
    except HaybellError as error:
        print(error, file=sys.stderr)
        sys.exit(error.status)
    except BrokenPipeError:  # the reader of our output has gone: nothing to say, nobody to say it to
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        sys.exit(1)
    except KeyboardInterrupt:
        print("stopped", file=sys.stderr)
        sys.exit(1)
    except Exception as error:
        if os.environ.get("HAYBELL_TRACEBACK"):
            raise
        print(
            f"haybell: something went wrong inside ({type(error).__name__}: {error}); nothing was lost. "
            "Please report it with the command you typed.",
            file=sys.stderr,
        )
        sys.exit(1)


def parsed(argv: list[str]) -> argparse.Namespace:
    """The words of a command; options may stand anywhere among them, which argparse allows for one command only."""
    top = parser()
    commands = next(action.choices for action in top._actions if isinstance(action.choices, dict))
    if argv and argv[0] in commands:
        found: argparse.Namespace = commands[argv[0]].parse_intermixed_args(argv[1:])
        return found
    return top.parse_args(argv)


def parser() -> argparse.ArgumentParser:
    """Every command and its options."""
    top = argparse.ArgumentParser(
        prog="haybell",
        description="A barn bot for the group chat: what every horse wears until the next round, and why.",
    )
    commands = top.add_subparsers(required=True, metavar="COMMAND")

    def command(name: str, run: Callable[[argparse.Namespace], int], text: str) -> argparse.ArgumentParser:
        made: argparse.ArgumentParser = commands.add_parser(name, help=text, description=text)
        made.set_defaults(run=run)
        return made

    command("demo", running.demo, "a whole day on an invented farm: no token, no network")
    _barn(command("check", looking.check, "read the barn file and say everything that is wrong with it"))
    _plan(command("plan", looking.plan, "the plan for the windows of the next 24 hours"))
    _board(command("board", looking.board, "the plan as a picture, or on pages to print"))
    _read(command("read", looking.read, "what a message would be understood as; writes nothing"))
    _chat(command("chat", running.chat, "the group in a terminal, or a script on its own clock"))
    serve = command("serve", running.serve, "the group in Telegram (HAYBELL_TOKEN or HAYBELL_TOKEN_FILE)")
    serve.add_argument("barn", metavar="BARN", type=Path, nargs="+", help="the barn files")
    _data(serve)
    _show(command("show", looking.show, "the state: a horse with its offset, a garment, or everything"))
    _log(command("log", looking.log, "the ledger, readable"))
    _history(command("history", past.history, "one horse's month, or every horse's changes of clothes"))
    _mirror(command("mirror", past.mirror, "what was expected of horses against what people saw"))
    _replay(command("replay", keeping.replay, "a season of recorded hours through the plan, beside a plain chart"))
    _copy(command("backup", keeping.backup, "a consistent copy of the data, also while the bot runs"), "dest")
    _copy(command("restore", keeping.restore, "a copy put back, after it was checked"), "src")
    _data(_barn(command("export", keeping.export, "the barn file as the barn is now, comments kept")))
    _json(_data(_barn(command("health", looking.health, "what the running bot says of itself"))))
    return top


def _barn(made: argparse.ArgumentParser) -> argparse.ArgumentParser:
    made.add_argument("barn", metavar="BARN", type=Path, help="the barn file")
    return made


def _data(made: argparse.ArgumentParser) -> argparse.ArgumentParser:
    made.add_argument("--data", type=Path, metavar="DIR", help="where everything that must last is kept")
    return made


def _json(made: argparse.ArgumentParser) -> argparse.ArgumentParser:
    made.add_argument("--json", action="store_true", help="as JSON")
    return made


def _at(made: argparse.ArgumentParser) -> argparse.ArgumentParser:
    made.add_argument("--at", type=instant, metavar="ISO", help="as of when (default: now)")
    return made


def _forecast(made: argparse.ArgumentParser) -> argparse.ArgumentParser:
    made.add_argument("--forecast", type=Path, metavar="FILE", help="a forecast file instead of the weather services")
    return made


def _plan(made: argparse.ArgumentParser) -> None:
    _json(_forecast(_at(_data(_barn(made)))))
    made.add_argument("--explain", metavar="HORSE", help="the hours behind the decision for one horse")
    made.add_argument("--csv", action="store_true", help="with --explain: as CSV")


def _board(made: argparse.ArgumentParser) -> None:
    _forecast(_at(_data(_barn(made))))
    made.add_argument("--png", type=Path, metavar="FILE", help="where the picture goes (default: board.png)")
    made.add_argument("--pdf", type=Path, metavar="FILE", help="pages to print instead")
    made.add_argument("--dark", action="store_true", help="light on dark, for a phone at six in the morning")


def _read(made: argparse.ArgumentParser) -> None:
    _json(_at(_data(_barn(made))))
    made.add_argument("text", metavar="TEXT", nargs="*", help="the message, or - for `Name: message` lines")
    made.add_argument("--as", dest="person", metavar="PERSON", help="who says it")


def _chat(made: argparse.ArgumentParser) -> None:
    _json(_forecast(_data(_barn(made))))
    made.add_argument("--script", type=Path, metavar="FILE", help="a day written down")
    made.add_argument("--until", type=instant, metavar="ISO", help="with --script: play to here")


def _show(made: argparse.ArgumentParser) -> None:
    _json(_at(_data(_barn(made))))
    made.add_argument("name", metavar="NAME", nargs="?", help="a horse or a garment")


def _log(made: argparse.ArgumentParser) -> None:
    _data(_barn(made))
    made.add_argument("--horse", metavar="NAME", help="one horse only")
    made.add_argument("--since", metavar="DATE", help="from this day on")
    made.add_argument("--csv", action="store_true", help="as CSV")


def _history(made: argparse.ArgumentParser) -> None:
    _data(_barn(made))
    made.add_argument("horse", metavar="HORSE", nargs="?", help="one horse; left out: every horse's changes")
    made.add_argument("--month", type=past.month, metavar="MONTH", help="such as 2026-11 (default: this one)")
    made.add_argument("--csv", action="store_true", help="as CSV, for the owner")
    made.add_argument("--png", type=Path, metavar="FILE", help="as a calendar")
    made.add_argument("--vet", type=Path, metavar="FILE", help="signs, clothes and weather on one page (PDF)")
    made.add_argument("--wardrobe", action="store_true", help="what the last weeks say of the clothes: to buy, to mend")
    made.add_argument("--weeks", type=past.weeks, metavar="N", default=26, help="with --wardrobe: how far back (26)")
    made.add_argument("--at", type=instant, metavar="ISO", help="with --wardrobe: as of when (default: now)")
    made.add_argument("--json", action="store_true", help="with --wardrobe: as JSON")


def _mirror(made: argparse.ArgumentParser) -> None:
    _json(_data(_barn(made)))
    made.add_argument("--png", type=Path, metavar="FILE", help="as a picture")
    made.add_argument("--study", action="store_true", help="as CSV without names, to give away")


def _replay(made: argparse.ArgumentParser) -> None:
    _json(_data(_barn(made)))
    made.add_argument("--weather", type=Path, metavar="FILE", required=True, help="recorded hours: EPW or CSV")
    made.add_argument("--from", dest="start", type=day, metavar="DATE", help="the first day")
    made.add_argument("--to", dest="end", type=day, metavar="DATE", help="the last day")
    made.add_argument("--picture", type=Path, metavar="FILE", help="the season as a picture")


def _copy(made: argparse.ArgumentParser, place: str) -> None:
    _data(_barn(made))
    made.add_argument(place, metavar=place.upper(), type=Path, help="the copy")
