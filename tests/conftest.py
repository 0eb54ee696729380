"""What every test may use: the demo barn, a clock that is a value, no network but loopback."""

import os
import socket
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, settings

from bot.barn import Barn, demo_path, load
from tests.weather_service import Server, all_three

SAMPLES = Path(__file__).parents[2] / "shared" / "samples"
LOOPBACK = ("127.", "::1", "localhost")

# No deadline: a machine with two busy cores is no fault. The same examples each time where nobody watches.
settings.register_profile(
    "haybell",
    deadline=None,
    derandomize=bool(os.environ.get("CI")),
    suppress_health_check=[HealthCheck.too_slow],
    database=None,
)
settings.load_profile("haybell")


@pytest.fixture(autouse=True)
def only_loopback(monkeypatch: pytest.MonkeyPatch) -> None:
    """A test that reaches for the network fails by name."""
    connect = socket.socket.connect

    def guarded(self: socket.socket, address: Any) -> None:
        host = address[0] if isinstance(address, tuple) else ""
        if isinstance(host, str) and host and not host.startswith(LOOPBACK):
            pytest.fail(f"this test reached for the network: {host}")
        connect(self, address)

    monkeypatch.setattr(socket.socket, "connect", guarded)


@pytest.fixture(autouse=True)
def a_folder_of_its_own(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """No test reads or writes the user's own data, and no test sees a token."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data-home"))
    for name in ("HAYBELL_TOKEN", "HAYBELL_TOKEN_FILE", "HAYBELL_API_URL", "HAYBELL_RATE"):
        monkeypatch.delenv(name, raising=False)


@pytest.fixture
def samples() -> Path:
    """Recorded weather answers; a test that needs them is skipped where they are not at hand."""
    if not SAMPLES.is_dir():
        pytest.skip("recorded weather samples are not at hand")
    return SAMPLES


@pytest.fixture
def now() -> datetime:
    """A November morning at a quarter past six in Vermont."""
    return datetime(2026, 11, 26, 11, 15, tzinfo=UTC)


@pytest.fixture
def barn() -> Barn:
    """The demo barn."""
    return load(demo_path())


@pytest.fixture
def services(monkeypatch: pytest.MonkeyPatch) -> Iterator[dict[str, Server]]:
    """A weather service of our own in each provider's place, all of them good."""
    with all_three(monkeypatch) as made:
        yield made
