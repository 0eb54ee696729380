"""The tables made quick to compare with a message: phrases as words, the places of numbers and names kept."""

from functools import cache
from importlib import import_module
from typing import Any

from bot.barn.amend import SECTIONS
from bot.enrol.tables import TABLES, Rows
from bot.events import Section
from bot.words.lookup.lexicon import lexicon, spelled_out
from bot.words.lookup.tokens import words

Words = tuple[str, ...]
Facts = dict[str, Any]


@cache
def ends(language: str) -> list[tuple[tuple[Words, Words], tuple[Section, ...]]]:
    """Each way to strike a row, as the words before and behind its name, with the sections it is said of."""
    table = TABLES[language]
    sold = [(((), phrase), ("horses", "garments")) for phrase in spoken(table.sold)]
    left = [(((), phrase), ("people",)) for phrase in spoken(table.left)]
    struck = [(around(row), SECTIONS) for row in spelled_out(table.struck)]
    return [*sold, *left, *struck]  # type: ignore[list-item]


def literal(text: str) -> Any:
    """What a row's `key=value` sets: a word, true or false; true where the key alone says it."""
    return {"true": True, "false": False, "": True}.get(text, text)


def means(word: str, language: str) -> bool:
    """Whether a word by itself says something in a language."""
    return any((word,) == phrase for phrase, _ in lexicon(language).phrases.get(word, ()))


@cache
def openings(language: str) -> list[tuple[Words, tuple[str, Facts]]]:
    """Each way to begin a new row, longest first, with its section and what it says already."""
    found = []
    for head, row in TABLES[language].new.items():
        section, _, fact = head.partition(" ")
        key, _, value = fact.partition("=")
        found += [(phrase, (section, {key: value} if fact else {})) for phrase in spoken(row)]
    return sorted(found, key=lambda item: -len(item[0]))


@cache
def pieces(language: str) -> Rows:
    """The facts of clothing: the kinds as the bot hears them everywhere, and the table's own."""
    heard: Rows = import_module(f"bot.words.heard.{language}").PHRASES
    kinds = {f"kind={m.removeprefix('kind ')}": row for m, row in heard.items() if m.startswith("kind ")}
    return kinds | TABLES[language].garments


@cache
def phrases(rows: tuple[tuple[str, str], ...]) -> list[tuple[Words, str]]:
    """Every phrase of these rows with its key, longest first."""
    found = [(_words(phrase), key) for key, row in rows for phrase in spelled_out(row)]
    return sorted(found, key=lambda item: -len(item[0]))


@cache
def spoken(row: str) -> frozenset[Words]:
    """The phrases of one row."""
    return frozenset(_words(phrase) for phrase in spelled_out(row))


def around(phrase: str) -> tuple[Words, Words]:
    """The words before and behind the name in a phrase."""
    before, _, after = phrase.partition("@")
    return _words(before), _words(after)


def _words(phrase: str) -> Words:
    """A phrase as a message shows it, the places of numbers and names kept."""
    found: list[str] = []
    for word in phrase.split():
        place, of, _ = word.partition("'s")
        found += [place] if place in ("#", "@") else words(word)
        found += ["'s"] if place == "@" and of else []
    return tuple(found)
