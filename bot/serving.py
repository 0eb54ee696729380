"""`haybell serve`: the barns, the clock and the groups put together, until somebody says stop."""

import asyncio
import logging
import os
import signal
from collections.abc import Mapping, Sequence
from contextlib import ExitStack, closing, suppress
from datetime import UTC, datetime
from pathlib import Path

from bot import logs
from bot.barn import Barn, load
from bot.barn_day import BarnDay
from bot.chat.telegram import Telegram
from bot.forecast import LastGood, latest
from bot.lookback import beside
from bot.mailbox import Kept
from bot.memory import keep_little
from bot.problems import WrongInput
from bot.pulse import Pulse
from bot.schedule import Schedule
from bot.served import Served
from bot.store import Store, data_path

LOG = logging.getLogger(__name__)

TELEGRAM = "https://api.telegram.org/bot"


def run(files: Sequence[Path], data: Path | None) -> int:
    """Serve these barns in Telegram until stopped; the exit status."""
    barns = [load(path) for path in files]
    _apart(barns)
    token = token_from(os.environ)
    logs.begin(token)
    keep_little()
    with ExitStack() as open_:
        served = [_served(barn, open_, data) for barn in barns]
        own = open_.enter_context(closing(Store.open(data_path("telegram", data))))
        asyncio.run(_serve(served, own, token, os.environ.get("HAYBELL_API_URL") or TELEGRAM))
    LOG.info("stopped")
    return 0


def token_from(environment: Mapping[str, str]) -> str:
    """The bot's token: HAYBELL_TOKEN, or the first line of the file that HAYBELL_TOKEN_FILE names."""
    token = environment.get("HAYBELL_TOKEN", "").strip()
    named = environment.get("HAYBELL_TOKEN_FILE", "").strip()
    if not token and named:
        try:
            token = Path(named).expanduser().read_text().strip().partition("\n")[0].strip()
        except (OSError, UnicodeDecodeError) as error:
            raise WrongInput("HAYBELL_TOKEN_FILE: the file cannot be read; check its path and its rights") from error
    if not token:
        raise WrongInput("no token: put the bot's token into HAYBELL_TOKEN, or into a file named by HAYBELL_TOKEN_FILE")
    if any(c.isspace() or not c.isprintable() or c in "/?#" for c in token):
        raise WrongInput("the token holds characters that no token has; copy it anew from BotFather")
    return token


def _apart(barns: Sequence[Barn]) -> None:
    """Each barn its own name and its own group."""
    named, grouped = [b.barn for b in barns], [str(b.chat) for b in barns if b.chat is not None]
    for what, found in (("name", named), ("chat", grouped)):
        twice = next((one for one in found if found.count(one) > 1), None)
        if twice is not None:
            raise WrongInput(f"two barn files have the same {what}, {twice}; give each barn its own")


def _served(barn: Barn, open_: ExitStack, data: Path | None) -> Served:
    store = open_.enter_context(closing(Store.open(data_path(barn.barn, data))))
    kept = LastGood(Kept(store))
    return Served(barn, store, lambda: BarnDay(barn, store, lambda at: latest(kept, barn, at), aside=beside), kept)


async def _serve(served: Sequence[Served], own: Store, token: str, api_url: str) -> None:
    pulse = Pulse(datetime.now(UTC))
    telegram = Telegram(served, token, api_url, own, pulse)
    schedule = Schedule(served, pulse, telegram.poke)
    loop = asyncio.get_running_loop()
    for name in (signal.SIGTERM, signal.SIGINT):
        with suppress(NotImplementedError):  # where the system has no such signals the keyboard ends us
            loop.add_signal_handler(name, telegram.stopped.set)
    schedule.start()
    LOG.info("serving %s", ", ".join(one.barn.barn for one in served))
    try:
        await telegram.run()
    finally:
        schedule.stop()
