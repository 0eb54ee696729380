"""The noise of tests/fuzz.py for a moment; `.ci/run` makes it for longer, with another seed each time."""

import logging
import random
import time
from collections.abc import Callable

import pytest

from tests import fuzz


@pytest.mark.parametrize("target", [fuzz.words_for, fuzz.barns_for, fuzz.updates_for])
def test_noise_breaks_nothing(
    target: Callable[[float, random.Random], int], caplog: pytest.LogCaptureFixture, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Mangled messages, barn files and updates: each is read, refused or set aside."""
    monkeypatch.setenv("HAYBELL_RATE", "off")
    caplog.set_level(logging.CRITICAL + 1)
    assert target(time.monotonic() + 1, random.Random(1)) > 0
