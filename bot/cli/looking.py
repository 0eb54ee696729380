"""Commands that look and write nothing: check, plan, read, show, log, board, health."""

import argparse
import json
import sys
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from bot.cli import given
from bot.problems import Failed, WrongInput

if TYPE_CHECKING:
    from bot.barn import Barn, Person
    from bot.state import State


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
    from bot.planning import Planner
    from bot.post import plan_json, plan_text
    from bot.rounds import windows

    barn = given.barn(args)
    at = given.at(args, barn)
    forecast = given.forecast(barn, args, at)
    planner, state = Planner(barn), given.lived(barn, args)
    if args.explain:
        from bot.explain import hours_csv, hours_text, known_horse
        from rules.plan import explain

        ahead = windows(barn, at)
        asked = planner.question(state, forecast, ahead, at)
        rows, start_s = explain(asked, known_horse(barn, args.explain)), asked.hours.start_s
        rounds = [window.round for window in ahead]
        print(hours_csv(rows, barn, start_s) if args.csv else hours_text(rows, barn, start_s, rounds), end="")
        return 0
    sheet = planner.sheet(state, forecast, windows(barn, at), at)
    print(json.dumps(plan_json(sheet, barn), ensure_ascii=False) if args.json else plan_text(sheet, barn, state))
    return 0


def read(args: argparse.Namespace) -> int:
    """What messages would be understood as."""
    barn = given.barn(args)
    state = given.state(barn, args)
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


def show(args: argparse.Namespace) -> int:
    """The state as text or JSON."""
    from bot.brief import used_to_c
    from bot.ledger import Ledger
    from bot.planning import Planner, cutter
    from bot.sheet import load
    from bot.show import show_json, show_text

    barn = given.barn(args)
    at = given.at(args, barn)
    store = given.store(barn, args)
    ledger = Ledger(store) if store else None
    entries = ledger.entries() if ledger else []
    forecast, state = given.last_good(barn, args, at), given.lived(barn, args)
    shown = show_json(barn, state, at, args.name, cutter(forecast), entries)
    if args.json:
        print(json.dumps(shown, ensure_ascii=False))
        return 0
    weeks = next((used_to_c(now, at) for now in state.horses.values()), 0.0)
    planner, one = Planner(barn), [h["horse"] for h in shown["horses"]] if args.name and forecast else []
    kept = ledger.latest_sheet() if ledger else None
    told = load(kept) if kept else None
    tips = {name: planner.all_tips(state, forecast, told, name, at) for name in one}
    print(show_text(shown, barn, weeks, planner.common(state, at), tips))
    return 0


def log(args: argparse.Namespace) -> int:
    """The ledger as lines or CSV."""
    from bot.ledger import Ledger
    from bot.record import as_csv, as_lines, chosen

    barn = given.barn(args)
    store = given.store(barn, args)
    entries = chosen(Ledger(store).entries() if store else [], barn, args.horse, args.since)
    print(as_csv(entries, barn) if args.csv else as_lines(entries, barn), end="")
    return 0


def board(args: argparse.Namespace) -> int:
    """The plan as a picture, or on pages to print."""
    from bot import board as drawn
    from bot.planning import Planner
    from bot.rounds import windows

    barn = given.barn(args)
    at = given.at(args, barn)
    sheet = Planner(barn).sheet(given.lived(barn, args), given.forecast(barn, args, at), windows(barn, at), at)
    if args.pdf:
        saved = written(args.pdf, drawn.pdf(sheet, barn, barn.units, "en"))
    else:
        saved = written(args.png or Path("board.png"), drawn.draw(sheet, barn, barn.units, "en", dark=args.dark))
    print(saved)
    return 0


def written(path: Path, content: bytes) -> Path:
    """The path, once the content is there. Failed where it cannot be."""
    try:
        path.write_bytes(content)
    except OSError as error:
        raise Failed(f"{path}: cannot be written ({error.strerror}); choose another place") from None
    return path


def health(args: argparse.Namespace) -> int:
    """What the running bot wrote last about itself; exit 1 where it is silent."""
    from bot.barn import load
    from bot.pulse import read_health, well
    from bot.store import data_path

    barn = load(args.barn)
    found = read_health(data_path(barn.barn, args.data))
    if found is None:
        raise Failed(f"{barn.barn}: no health file; is `haybell serve` running with the same --data?")
    if args.json:
        print(json.dumps(found, ensure_ascii=False))
    else:
        print("\n".join(f"{key.replace('_', ' ')}: {value}" for key, value in found.items()))
    return 0 if well(found, datetime.now(UTC)) else 1
