"""refresh: the sources in the barn's order until one is good; nothing raises."""

from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path

from bot.barn import Barn, forecast_file
from bot.forecast import file, wire
from bot.forecast.age import covers, fault, sound
from bot.forecast.asking import Asking, place_key
from bot.forecast.last_good import Answer, LastGood
from bot.forecast.providers import PROVIDERS
from bot.forecast.readings import Parsed, Unreadable
from bot.problems import HaybellError


@dataclass(frozen=True)
class Outcome:
    """How one source fared. said: what was wrong, in one line; empty where all is well."""

    source: str
    good: bool
    said: str = ""

    def __str__(self) -> str:
        return f"{self.source}: {self.said or 'good'}"


@dataclass(frozen=True)
class Fetched:
    """What a refresh came to. source: whose forecast is good now; None where nobody's is."""

    source: str | None
    outcomes: tuple[Outcome, ...]

    @property
    def told(self) -> tuple[str, ...]:
        """A line for every source that something is wrong with."""
        return tuple(str(outcome) for outcome in self.outcomes if outcome.said)


def refresh(barn: Barn, last_good: LastGood, now: datetime) -> Fetched:
    """Ask the barn's sources in order until one is good, and keep what they say. Slow: for a thread of its own."""
    outcomes: list[Outcome] = []
    for source in barn.forecast:
        outcomes.append(_tried(barn, source, last_good, now))
        if outcomes[-1].good:
            return Fetched(source, tuple(outcomes))
    return Fetched(None, tuple(outcomes))


def _tried(barn: Barn, source: str, last_good: LastGood, now: datetime) -> Outcome:
    try:
        path = forecast_file(source)
        said = _from_disk(Path(path), source, barn, last_good, now) if path else _asked(source, barn, last_good, now)
    except (wire.Trouble, Unreadable, HaybellError) as error:
        return Outcome(source, good=False, said=str(error))
    except Exception as error:  # whatever a stranger's server makes of us: the next source is tried
        return Outcome(source, good=False, said=f"failed unexpectedly ({type(error).__name__})")
    return Outcome(source, good=True, said=said)


def _from_disk(path: Path, source: str, barn: Barn, last_good: LastGood, now: datetime) -> str:
    body = file.read(path)
    _, parsed = file.parse(body)
    _keep(last_good, source, Answer(place_key(barn.place), now, body), parsed, None)
    return ""


def _asked(source: str, barn: Barn, last_good: LastGood, now: datetime) -> str:
    """Ask one provider, unless what we have still holds or it wants to be left alone; what is to be said anyway."""
    provider, place, pause = PROVIDERS[source], place_key(barn.place), f"{source} pause"
    if provider.NEEDS_CONTACT and not barn.contact:
        raise wire.Trouble("wants a contact; give 'contact' in the barn file")
    resting = last_good.get(pause)
    if resting and resting.expires and now < resting.expires:
        raise wire.Trouble(f"asked to be left alone until {resting.expires.astimezone(barn.zone):%H:%M}")
    kept, read = last_good.get(source), last_good.read(source, provider.parse)
    of_use = kept is not None and read is not None and kept.place == place and sound(read.parsed, now)
    if kept and of_use and kept.expires and now < kept.expires:
        return ""
    asking = Asking(provider, barn, last_good, now)
    try:
        answer = asking.answer(kept if of_use else None)
    except wire.Trouble as trouble:
        if trouble.wait_s:
            last_good.put(pause, Answer(place, now, b"", now + timedelta(seconds=trouble.wait_s)))
        raise
    _keep(last_good, source, answer, provider.parse(answer.body), read.parsed if read and of_use else None)
    return asking.warning


def _keep(last_good: LastGood, source: str, answer: Answer, parsed: Parsed, before: Parsed | None) -> None:
    """Keep an answer that is of use, a faulty one only where there is no better; Trouble where it is not good."""
    now = answer.fetched_at
    if not covers(parsed.hours, now):
        raise wire.Trouble("has no hours from now on")
    wrong = fault(parsed, now)
    older = before and before.issued and parsed.issued and parsed.issued < before.issued
    if before is None or not (wrong or older):  # a stale copy never replaces a newer run
        last_good.put(source, answer)
    if wrong:
        raise wire.Trouble(wrong)
