"""What is said of horses all day is not for the bot: shoes, hay, ribbons, plans, other people's troubles."""

from collections.abc import Iterator

import pytest

from bot.events import Asked
from bot.state import as_filed
from bot.words import read
from tests.words.corpus import HERE, barn

BARNS = {"en": ("oak", "larch", "hard"), "es": ("encina", "sol"), "fr": ("chenaie", "tilleuls")}


def small_talk(language: str) -> Iterator[str]:
    """Each sentence, with {n} where a horse is named."""
    at = ""
    for row in (HERE / "small_talk.txt").read_text(encoding="utf-8").splitlines():
        at = row.strip("[]") if row.startswith("[") else at
        if at == language and "{n}" in row and not row.startswith("#"):
            yield row


@pytest.mark.parametrize("language", BARNS)
def test_small_talk_about_any_horse_is_left_alone(language: str) -> None:
    """Of every horse of every barn, at least 99 of 100 such sentences are met with silence."""
    heard = left = 0
    for name in BARNS[language]:
        here = barn(name)
        now = as_filed(here)
        for horse in here.horses:
            for row in small_talk(language):
                said = read(row.format(n=horse.name), here.people[0], here, now)
                heard += 1
                left += said.ask is None and all(isinstance(event, Asked) for event in said.events)

    assert heard > 500
    assert left >= 0.99 * heard
