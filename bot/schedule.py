"""The clock: a tick every 20 s, the forecast refresh in a thread, the health file, and the watchdog.

Nothing is due at a scheduler's trigger: a tick asks each barn what is due, so a late, repeated or missing tick
neither doubles nor loses a post.
"""

import asyncio
import logging
import os
import random
import threading
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from datetime import UTC, datetime, timedelta
from typing import Any, TypeVar, cast

from apscheduler.schedulers.asyncio import AsyncIOScheduler  # type: ignore[import-untyped]

from bot.forecast import refresh
from bot.memory import hand_back
from bot.problems import HaybellError
from bot.pulse import Pulse, write_health
from bot.served import Served, describe

LOG = logging.getLogger(__name__)

TICK_S = 20
REFRESH_MIN = 10  # how often a barn's providers are looked at; each then decides by its own Expires
JITTER_S = 90
FORECASTS_AT_ONCE = 8
FIRST_FORECAST_S = 45.0  # a first post waits so long for it
REPORT_S = 60
WATCH_S = 30
EXIT_STUCK = 70  # EX_SOFTWARE: the supervisor starts us anew

Result = TypeVar("Result")

ALWAYS: Mapping[str, Any] = {"misfire_grace_time": None, "coalesce": True, "max_instances": 1}


class Schedule:
    """Ticks for all barns. poke: called after a barn's tick, for what it wrote into the outbox."""

    def __init__(self, barns: Sequence[Served], pulse: Pulse, poke: Callable[[Served], None]) -> None:
        self.barns = tuple(barns)
        self.pulse = pulse
        self.poke = poke
        self.forecasts: dict[str, datetime] = {}  # barn → last refresh with an answer
        self._ready: set[str] = set()  # barns whose first refresh has ended
        self._scheduler = AsyncIOScheduler(timezone=UTC, job_defaults=dict(ALWAYS))

    def start(self) -> None:
        """First the forecasts, then each barn's first tick, then by the clock."""
        now, add = datetime.now(UTC), self._scheduler.add_job
        add(self.begin, next_run_time=now)
        add(self.tick, "interval", seconds=TICK_S)
        add(self.report, "interval", seconds=REPORT_S, next_run_time=now + timedelta(seconds=min(5, REPORT_S)))
        add(self.watch, "interval", seconds=WATCH_S)
        for served in self.barns:
            first = now + timedelta(minutes=REFRESH_MIN, seconds=random.uniform(0, JITTER_S))
            add(self.refresh, "interval", [served], minutes=REFRESH_MIN, jitter=JITTER_S, next_run_time=first)
        self._scheduler.start()

    def stop(self) -> None:
        """No more ticks."""
        self._scheduler.shutdown(wait=False)

    async def begin(self) -> None:
        """At a start: a forecast for each barn, a few at a time, and a tick once it is there or is late."""
        room = asyncio.Semaphore(FORECASTS_AT_ONCE)

        async def one(served: Served) -> None:
            async with room:
                with suppress(TimeoutError):
                    await asyncio.wait_for(self.refresh(served), FIRST_FORECAST_S)
            self._ready.add(served.barn.barn)
            self._tick(served)

        await asyncio.gather(*(one(served) for served in self.barns))

    async def tick(self) -> None:
        """Let every barn do what is due."""
        for served in self.barns:
            if served.barn.barn in self._ready:
                self._tick(served)
            await asyncio.sleep(0)  # messages have their turn between barns
        self.pulse.ticked = datetime.now(UTC)

    async def refresh(self, served: Served) -> None:
        """Ask the barn's forecast providers, in a thread. A reply never waits for this."""
        try:
            now = datetime.now(UTC)
            found = await apart(refresh, served.barn, served.last_good, now)
            if found.source:
                self.forecasts[served.barn.barn] = now
            for line in found.told:
                LOG.info("%s: forecast: %s", served.barn.barn, line)
        except HaybellError as error:
            LOG.error("%s: forecast: %s", served.barn.barn, error)
        except Exception as error:
            LOG.error("%s: forecast: %s", served.barn.barn, describe(error))

    async def watch(self) -> None:
        """The watchdog: what hangs although it should have failed by itself is ended for the supervisor to restart."""
        stuck = self.pulse.stuck(datetime.now(UTC))
        if stuck:
            LOG.critical("%s has been silent for too long; ending, to be started anew", stuck)
            os._exit(EXIT_STUCK)

    def _tick(self, served: Served) -> None:
        served.tick(datetime.now(UTC))
        served.store.rest()
        self.poke(served)

    async def report(self) -> None:
        """Write each barn's health file, and be a small tenant of the machine."""
        hand_back()
        for served in self.barns:
            rest = {
                "barn": served.barn.barn,
                "last_post": served.mailbox.setting("last post"),
                "last_forecast": self.forecasts.get(served.barn.barn),
                "queues": vars(served.mailbox.queues()),
            }
            try:
                if served.store.path:
                    write_health(served.store.path, self.pulse, datetime.now(UTC), rest)
            except OSError as error:
                LOG.error("%s: health file: %s", served.barn.barn, error)


async def apart(work: Callable[..., Result], *args: Any) -> Result:
    """Do slow work in a thread that nobody waits for when the bot is stopped."""
    loop = asyncio.get_running_loop()
    done: asyncio.Future[Result] = loop.create_future()

    def settle(result: Result | None, error: Exception | None) -> None:
        if done.cancelled():
            return
        if error:
            done.set_exception(error)
        else:
            done.set_result(cast("Result", result))

    def run() -> None:
        outcome: tuple[Result | None, Exception | None]
        try:
            outcome = work(*args), None
        except Exception as error:
            outcome = None, error
        with suppress(RuntimeError):  # the loop has ended meanwhile
            loop.call_soon_threadsafe(settle, *outcome)

    threading.Thread(target=run, daemon=True).start()
    return await done
