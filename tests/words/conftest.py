"""A barn with everyday names, said by hand in a few lines."""

import pytest

from bot.barn import Barn
from bot.state import State, as_filed
from tests.words.corpus import barn as barn_of_corpus


@pytest.fixture(scope="session")
def oak() -> Barn:
    """The English barn of the corpus."""
    return barn_of_corpus("oak")


@pytest.fixture(scope="session")
def oak_now(oak: Barn) -> State:
    """That barn as its file has it."""
    return as_filed(oak)
