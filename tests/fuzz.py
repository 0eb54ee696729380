"""Noise for as long as one likes: mangled messages, barn files and updates, and nothing may fall over.

    python -m tests.fuzz SECONDS [SEED]

Each third of the time goes to one of the three. Seeds are real inputs; each is cut, doubled, spliced with another and
strewn with what has broken programs before. The first input that breaks something is printed with the seed that makes
it again, and the exit status is 1.
"""

import asyncio
import json
import logging
import os
import random
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack, closing, contextmanager
from datetime import UTC, datetime
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from bot.barn import check, demo_path, load
from bot.barn_day import BarnDay
from bot.chat.telegram import Telegram
from bot.forecast import from_file
from bot.pulse import Pulse
from bot.served import Served
from bot.state import as_filed
from bot.store import Store
from bot.words import read

HERE = Path(__file__).parent
WEATHER = HERE.parent / "bot" / "demo" / "morning.csv"
STREWN = [
    "",
    " ",
    "\n",
    "\0",
    "%s",
    "{0}",
    "<b>",
    "'; --",
    "../../x",
    "🦄",
    "é",
    "\u202e",
    "ﬁ",
    "9" * 40,
    "-1",
    "~",
    "!!python/x",
]
STREWN += ["&a [*a]", "null", "NaN", "1e999", "\ud83d\ude00", "T" * 3000, "?", ":", ",", "Maple", "wet", "not"]
JUNK: list[Any] = [
    None,
    True,
    0,
    -1,
    2**63,
    1.5,
    "",
    "x" * 5000,
    "\0",
    [],
    {},
    [[]],
    {"id": None},
    "Maple sweaty",
    "undo",
]
UPDATES_A_DAY = 400  # after so many a fresh barn is begun


def mangled(text: str, other: str, chance: random.Random) -> str:
    """A text with a few things done to it."""
    for _ in range(chance.randint(1, 4)):
        low, high = sorted(chance.randrange(len(text) + 1) for _ in range(2))
        middle = chance.choice(
            [
                "",
                text[low:high] * 2,
                other[low:high],
                chance.choice(STREWN),
                "".join(chance.sample(text[low:high], high - low)),
            ]
        )
        text = text[:low] + middle + text[high:]
    return text


def junked(value: Any, chance: random.Random) -> Any:
    """A JSON value with one part of it replaced, left out or put elsewhere."""
    if isinstance(value, dict) and value and chance.random() < 0.85:
        key = chance.choice(sorted(value))
        change = chance.random()
        if change < 0.1:
            return {k: v for k, v in value.items() if k != key}
        return value | {key if change < 0.97 else "text": junked(value[key], chance)}
    if isinstance(value, str) and value and chance.random() < 0.5:
        return mangled(value, value[::-1], chance)
    return chance.choice(JUNK)


def messages() -> list[str]:
    """What people say, from the tests' own collections."""
    lines = [line for path in sorted((HERE / "words").glob("corpus_*.txt")) for line in path.read_text().splitlines()]
    return [line.partition(" = ")[0] for line in lines if line and line[0] not in "#["]


def updates() -> list[dict[str, Any]]:
    """One of each kind of update, as Telegram sends them to the demo barn."""
    barn = load(demo_path())
    chat, who = {"id": barn.chat, "type": "supergroup"}, {"id": 1001, "first_name": "Theo", "is_bot": False}
    told = {"message_id": 7, "date": int(time.time()), "chat": chat, "from": who, "text": "Maple sweaty"}
    reply = told | {"reply_to_message": told | {"message_id": 6}}
    mine = {"chat": chat, "from": who, "date": 0, "old_chat_member": {"status": "left"}}
    return [
        {"message": told},
        {"message": reply | {"text": "undo"}},
        {"message": told | {"text": "new spare turnout 200 g 75 in"}},
        {"message": told | {"photo": [{"file_id": "x"}], "caption": "Pip shivering", "text": None}},
        {"edited_message": told | {"text": "Juniper sweaty"}},
        {"callback_query": {"id": "4", "from": who, "data": "done:Maple", "message": told}},
        {"my_chat_member": mine | {"new_chat_member": {"status": "member"}}},
        {"message": told | {"migrate_to_chat_id": -1009}},
    ]


def words_for(until: float, chance: random.Random) -> int:
    """Mangled messages, read."""
    barn, said, count = load(demo_path()), messages(), 0
    state = as_filed(barn)
    while time.monotonic() < until:
        text = mangled(chance.choice(said), chance.choice(said), chance)
        with shown(text):
            heard = read(text, chance.choice(barn.people), barn, state)
            json.dumps([event.as_json() for event in heard.events])
            assert heard.chatter == (not heard.events and heard.ask is None)
        count += 1
    return count


def barns_for(until: float, chance: random.Random) -> int:
    """Mangled barn files, checked: each is a barn, or a list of faults."""
    whole, count = demo_path().read_text(), 0
    with TemporaryDirectory() as folder:
        path = Path(folder) / "barn.yaml"
        while time.monotonic() < until:
            text = mangled(whole, whole[chance.randrange(len(whole)) :], chance)
            path.write_bytes(text.encode("utf-8", "surrogatepass"))
            with shown(text):
                barn, problems = check(path)
                assert barn is not None or problems
            count += 1
    return count


def updates_for(until: float, chance: random.Random) -> int:
    """Mangled updates, acted on: each is done or set aside, and none is left in the way of the next."""
    count = 0
    while time.monotonic() < until:
        with TemporaryDirectory() as folder:
            count += asyncio.run(_a_day(Path(folder), until, chance))
    return count


async def _a_day(folder: Path, until: float, chance: random.Random) -> int:
    barn, kinds, number = load(demo_path()), updates(), 0
    forecast = from_file(WEATHER, datetime.now(UTC))
    with ExitStack() as files:
        store, own = (files.enter_context(closing(Store.open(folder / name))) for name in ("barn", "own"))
        served = Served(barn, store, lambda: BarnDay(barn, store, lambda at: forecast))
        telegram = Telegram([served], "1:x", "http://127.0.0.1:9/bot", own, Pulse(datetime.now(UTC)))
        while number < UPDATES_A_DAY and time.monotonic() < until:
            update = chance.choice(kinds)
            for _ in range(chance.randint(0, 3)):
                update = junked(update, chance)
            number += 1
            update = (update if isinstance(update, dict) else {}) | {"update_id": number}
            with shown(json.dumps(update)):
                telegram._hold([json.loads(json.dumps(update))])
                assert not [one for place in telegram.places for one in place.mailbox.waiting()]
            await asyncio.sleep(0)
        telegram.stopped.set()
        await telegram.run()
    return number


@contextmanager
def shown(given: str) -> Iterator[None]:
    """What breaks inside is told with the input that broke it."""
    try:
        yield
    except Exception as error:
        error.add_note(f"broken by: {given!r}")
        raise


def main(seconds: float, seed: int) -> None:
    """All three, one after the other."""
    os.environ["HAYBELL_RATE"] = "off"
    logging.disable(logging.CRITICAL)
    targets: dict[str, Callable[[float, random.Random], int]] = {
        "messages": words_for,
        "barn files": barns_for,
        "updates": updates_for,
    }
    for name, target in targets.items():
        try:
            count = target(time.monotonic() + seconds / len(targets), random.Random(f"{seed} {name}"))
        except Exception as error:
            error.add_note(f"{name}: python -m tests.fuzz {seconds:g} {seed}")
            raise
        print(f"{name}: {count} mangled, none fell over (seed {seed})")


if __name__ == "__main__":
    main(float(sys.argv[1]), int(sys.argv[2]) if len(sys.argv) > 2 else int(time.time()))
