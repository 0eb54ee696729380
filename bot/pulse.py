"""Signs of life, and the file they are written to: when the bot last reached the chat, looked at the clock, posted."""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

SILENCE = timedelta(minutes=5)  # a poll ends within a minute and ticks come every 20 s: longer means that one is stuck


@dataclass
class Pulse:
    """polled: the last question to the chat's server that ended, well or not; reached: the last that ended well."""

    started: datetime
    polled: datetime | None = None
    reached: datetime | None = None
    ticked: datetime | None = None

    def stuck(self, now: datetime) -> str | None:
        """What has been silent too long although it should have failed by itself; None while all is well."""
        for name, last in (("polling", self.polled), ("the clock", self.ticked)):
            if now - max(last or self.started, self.started) > SILENCE:
                return name
        return None


def health_path(store_path: Path) -> Path:
    """Where a barn's health file is: beside its data."""
    return store_path.with_suffix(".health.json")


def write_health(store_path: Path, pulse: Pulse, now: datetime, rest: Mapping[str, Any]) -> None:
    """Put the health file in place of the one before, in one step. Holds times and numbers, nothing personal."""
    told = {"at": now, "started": pulse.started, "last_poll": pulse.reached, "last_tick": pulse.ticked, **rest}
    beside = health_path(store_path).with_suffix(".new")
    beside.write_text(json.dumps(told, default=_plain, indent=1) + "\n")
    beside.chmod(0o600)
    beside.replace(health_path(store_path))


def read_health(store_path: Path) -> dict[str, Any] | None:
    """What the running bot wrote last; None where it never ran."""
    try:
        found: dict[str, Any] = json.loads(health_path(store_path).read_text())
    except (OSError, ValueError):
        return None
    return found


def well(health: Mapping[str, Any], now: datetime) -> bool:
    """Whether the bot ran and reached its chat within the last minutes."""
    last = health.get("last_poll")
    return all(at is not None and now - datetime.fromisoformat(at) < SILENCE for at in (health.get("last_tick"), last))


def _plain(value: object) -> str:
    return value.astimezone(UTC).isoformat(timespec="seconds") if isinstance(value, datetime) else str(value)
