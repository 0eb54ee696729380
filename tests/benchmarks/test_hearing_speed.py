"""How long reading a message takes, in processor time of this machine. Printed, never asserted."""

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from bot.state import as_filed
from bot.words import read
from tests.words.corpus import barn

MESSAGES = {
    "short": "Tucker sweaty, Willow fine and Bramble's sheet soaked",
    "chatter": "Morning all, the farrier is coming at two and somebody left the gate open again last night",
    "5,000 characters": ("the farrier says Tucker needs shoes, ground is wet and qwerty brambel zxcvb " * 70)[:5000],
}


@pytest.mark.parametrize("kind", MESSAGES)
def test_reading_a_message(benchmark: BenchmarkFixture, kind: str) -> None:
    """A short message, chatter, and the longest message anybody would write."""
    oak = barn("oak")
    now = as_filed(oak)

    assert benchmark(read, MESSAGES[kind], oak.people[0], oak, now).heard == MESSAGES[kind]
