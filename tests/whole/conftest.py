"""A local Bot API server for every test that carries messages."""

from collections.abc import AsyncIterator

import pytest

from tests.whole.local_bot_api import LocalBotApi


@pytest.fixture
async def api() -> AsyncIterator[LocalBotApi]:
    """A Bot API server on this machine."""
    async with LocalBotApi() as server:
        yield server
