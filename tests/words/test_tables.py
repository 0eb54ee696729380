"""The tables of what is heard: every language complete, and kept as a person would edit them."""

import importlib

import pytest

from bot.words.heard import LANGUAGES, MEANINGS
from bot.words.lookup.lexicon import common, spelled_out


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_language_has_every_row(language: str) -> None:
    """A language that lacks a meaning would be deaf to it."""
    table = importlib.import_module(f"bot.words.heard.{language}").PHRASES

    assert set(table) == set(MEANINGS)


@pytest.mark.parametrize("language", LANGUAGES)
def test_everyday_words_are_many_and_plain(language: str) -> None:
    """Thousands of words, lower case without accents, none of which is bent into a name."""
    words = common(language)

    assert len(words) > 5_000
    assert all(word.isascii() and word.islower() for word in words)


@pytest.mark.parametrize(
    ("row", "phrases"),
    [
        ("sweaty, in a sweat", ["sweaty", "in a sweat"]),
        ("mojad|o|a", ["mojado", "mojada"]),
        ("triste|s", ["triste", "tristes"]),
        ("calient|e|es y sec|o|a", ["caliente y seco", "caliente y seca", "calientes y seco", "calientes y seca"]),
        (
            "(tuve / hubo) que (/ volver a) meter",
            ["tuve que meter", "tuve que volver a meter", "hubo que meter", "hubo que volver a meter"],
        ),
        ("", []),
    ],
)
def test_endings_and_choices_are_written_out(row: str, phrases: list[str]) -> None:
    """A row says each ending once, and each choice of words."""
    assert spelled_out(row) == phrases
