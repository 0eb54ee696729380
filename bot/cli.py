"""The commands; each a few calls and one printed result. Imports stand inside: a command pays for its own only."""

import argparse
import json
import os
import sys
from collections.abc import Sequence
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

from bot.problems import HaybellError, WrongInput

if TYPE_CHECKING:
    from bot.barn import Barn, Person
    from bot.state import State
    from bot.store import Store


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

    def command(name: str, run: Any, text: str, barns: str | None = None) -> argparse.ArgumentParser:
        made = commands.add_parser(name, help=text, description=text)
        made.set_defaults(run=run)
        if name not in {"demo"}:
            made.add_argument("barn", metavar="BARN", type=Path, nargs=barns, help="the barn file")
        if name not in {"demo", "check"}:
            made.add_argument("--data", type=Path, metavar="DIR", help="where everything that must last is kept")
        return made

    command("demo", demo, "a whole day on an invented farm: no token, no network")
    command("check", check, "read the barn file and say everything that is wrong with it")
    made = command("plan", plan, "the plan for the windows of the next 24 hours")
    made.add_argument("--at", type=instant, metavar="ISO", help="from when (default: now)")
    made.add_argument("--forecast", type=Path, metavar="FILE", help="a forecast file instead of the weather services")
    made.add_argument("--json", action="store_true", help="one JSON object")
    made.add_argument("--explain", metavar="HORSE", help="the hours behind the decision for one horse")
    made.add_argument("--csv", action="store_true", help="with --explain: as CSV")
    made = command("read", read, "what a message would be understood as; writes nothing")
    made.add_argument("text", metavar="TEXT", nargs="*", help="the message, or - for `Name: message` lines")
    made.add_argument("--as", dest="person", metavar="PERSON", help="who says it")
    made.add_argument("--at", type=instant, metavar="ISO", help="when (default: now)")
    made.add_argument("--json", action="store_true", help="one JSON object a message")
    made = command("chat", chat, "the group in a terminal, or a script on its own clock")
    made.add_argument("--script", type=Path, metavar="FILE", help="a day written down")
    made.add_argument("--forecast", type=Path, metavar="FILE", help="a forecast file instead of the weather services")
    made.add_argument("--until", type=instant, metavar="ISO", help="with --script: play to here")
    made.add_argument("--json", action="store_true", help="one JSON object a line")
    command("serve", serve, "the group in Telegram (HAYBELL_TOKEN or HAYBELL_TOKEN_FILE)", barns="+")
    made = command("show", show, "the state: a horse with its offset, a garment, or everything")
    made.add_argument("name", metavar="NAME", nargs="?", help="a horse or a garment")
    made.add_argument("--at", type=instant, metavar="ISO", help="as of when (default: now)")
    made.add_argument("--json", action="store_true", help="one JSON object")
    made = command("log", log, "the ledger, readable")
    made.add_argument("--horse", metavar="NAME", help="one horse only")
    made.add_argument("--since", metavar="DATE", help="from this day on")
    made.add_argument("--csv", action="store_true", help="as CSV")
    return top


def instant(text: str) -> datetime:
    """An ISO time from the command line; without an offset it is the barn's local time, set later."""
    try:
        return datetime.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"“{text}” is no time; write 2026-11-26T06:15") from None


def _at(args: argparse.Namespace, barn: "Barn") -> datetime:
    at: datetime | None = args.at
    if at is None:
        return datetime.now(UTC)
    return at if at.tzinfo else at.replace(tzinfo=barn.zone)


def _store(barn: "Barn", args: argparse.Namespace) -> "Store | None":
    """The barn's data for reading; None where there is none yet."""
    from bot.store import Store, data_path

    path = data_path(barn.barn, args.data)
    return Store.read(path) if path.exists() else None


def _state(barn: "Barn", args: argparse.Namespace) -> "State":
    """The barn as file and ledger have it."""
    from bot.state import as_filed, fold

    store = _store(barn, args)
    if store is None:
        return as_filed(barn)
    from bot.ledger import Ledger

    return fold(barn, Ledger(store).entries())


def check(args: argparse.Namespace) -> int:
    """All faults and warnings of a barn file."""
    from bot.barn import check as checked
    from bot.words import warnings

    barn, problems = checked(args.barn)
    for problem in problems:
        print(problem, file=sys.stderr)
    if barn is None:
        return 2
    for warning in warnings(barn):
        print(f"{args.barn}: warning: {warning}", file=sys.stderr)
    print(f"{barn.barn}: {len(barn.horses)} horses, {len(barn.garments)} garments, {len(barn.people)} people: good")
    return 0


def plan(args: argparse.Namespace) -> int:
    """The plan as text or JSON."""
    from bot.barn import load
    from bot.planning import Planner
    from bot.post import plan_json, plan_text
    from bot.rounds import windows

    barn = load(args.barn)
    at = _at(args, barn)
    forecast = _forecast(barn, args, at)
    planner, state = Planner(barn), _state(barn, args)
    if args.explain:
        from bot.explain import hours_csv, hours_text, known_horse
        from rules.plan import explain

        asked = planner.question(state, forecast, windows(barn, at), at)
        rows = explain(asked, known_horse(barn, args.explain))
        print((hours_csv if args.csv else hours_text)(rows, barn, asked.hours.start_s), end="")
        return 0
    sheet = planner.sheet(state, forecast, windows(barn, at), at)
    print(json.dumps(plan_json(sheet, barn), ensure_ascii=False) if args.json else plan_text(sheet, barn, state))
    return 0


def _forecast(barn: "Barn", args: argparse.Namespace, at: datetime) -> Any:
    """The forecast named on the command line, else the barn file's own, asked for now; None where there is none."""
    from bot.barn import forecast_file
    from bot.forecast import from_file, latest, refresh
    from bot.forecast.last_good import LastGood

    named = args.forecast or next((f for f in map(forecast_file, barn.forecast) if f), None)
    if named:
        return from_file(Path(named), at)
    kept = LastGood()
    for line in refresh(barn, kept, at).told:
        print(line, file=sys.stderr)
    return latest(kept, barn, at)


def read(args: argparse.Namespace) -> int:
    """What messages would be understood as."""
    from bot.barn import load

    barn = load(args.barn)
    state = _state(barn, args)
    if args.text == ["-"]:
        for line in sys.stdin:
            if line.strip():
                name, _, text = line.rstrip("\n").partition(":")
                _read_one(barn, state, barn.person(name.strip()), text.strip(), args.json)
        return 0
    if args.person is None:
        raise WrongInput("read: say who speaks: --as NAME (a name of the barn file's people)")
    _read_one(barn, state, barn.person(args.person), " ".join(args.text), args.json)
    return 0


def _read_one(barn: "Barn", state: "State", person: "Person | None", text: str, as_json: bool) -> None:  # noqa: FBT001
    from bot.roles import judge
    from bot.words import read as understand

    heard = judge(understand(text, person, barn, state), person, barn)
    shown = heard.as_json()
    if as_json:
        print(json.dumps(shown, ensure_ascii=False), flush=True)
        return
    for event in shown["events"]:
        print(", ".join(f"{key} {value}" for key, value in event.items()))
    if heard.ask:
        print(f"asks back: which {heard.ask.about}? {', '.join(heard.ask.options)}")
    if heard.refused:
        print(f"refused: {heard.refused.reason}; needs {heard.refused.needs}")
    if heard.chatter:
        print("nothing for Haybell: it stays silent")


def chat(args: argparse.Namespace) -> int:
    """The group in a terminal."""
    from bot.chat.session import live, scripted

    return scripted(args) if args.script else live(args)


def demo(args: argparse.Namespace) -> int:
    """A whole day on the invented farm."""
    from bot.chat.session import demo as play

    play()
    print(
        "\nNext: type to it yourself    haybell chat demo_barn.yaml"
        "\n      ask what it understands haybell read demo_barn.yaml --as Inés 'mapel sweaty'"
        "\n      write your own barn     copy demo_barn.yaml, then haybell check my_barn.yaml"
    )
    return 0


def show(args: argparse.Namespace) -> int:
    """The state as text or JSON."""
    from bot.barn import load
    from bot.planning import cutter
    from bot.show import show_json, show_text

    barn = load(args.barn)
    at = _at(args, barn)
    shown = show_json(barn, _state(barn, args), at, args.name, cutter(_last_good(barn, args, at)))
    print(json.dumps(shown, ensure_ascii=False) if args.json else show_text(shown, barn))
    return 0


def _last_good(barn: "Barn", args: argparse.Namespace, at: datetime) -> Any:
    """The last good forecast that was kept with the data; nothing is fetched."""
    from bot.forecast import latest
    from bot.forecast.last_good import LastGood
    from bot.mailbox import Kept

    store = _store(barn, args)
    return latest(LastGood(Kept(store)), barn, at) if store else None


def log(args: argparse.Namespace) -> int:
    """The ledger as lines or CSV."""
    from bot.barn import load
    from bot.ledger import Ledger
    from bot.record import as_csv, as_lines, chosen

    barn = load(args.barn)
    store = _store(barn, args)
    entries = chosen(Ledger(store).entries() if store else [], barn, args.horse, args.since)
    print(as_csv(entries, barn) if args.csv else as_lines(entries, barn), end="")
    return 0


def serve(args: argparse.Namespace) -> int:
    """The groups of these barns in Telegram, until stopped."""
    from bot.serving import run

    return run(args.barn, args.data)
