"""What the bot says: one folder a language, each a Phrasebook; names go in as they are written, never as markup.

A template holds `{name}` where a value goes, and `[…]` around what is left out when a value inside is not known.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib import import_module

from rules.reason import Code

LANGUAGES = ("en", "es", "fr")

_OPTIONAL = re.compile(r"\[([^\[\]]*)\]")
_FIELD = re.compile(r"\{(\w+)\}")


@dataclass(frozen=True)
class Phrasebook:
    """Everything the bot says in one language.

    reasons: a sentence (without its full stop) for each code. signs, states, styles, places: words for what events
    say. kinds: a piece of clothing by kind; short_kinds: the same where it only stays on. rounds: usual names of
    rounds. lines: all other sentences, by name. safety: knowledge on request, by topic. days, months: short names.
    decimal, percent: how numbers are written. twelve_hours: am and pm are said, to readers of US units.
    """

    language: str
    reasons: Mapping[Code, str]
    signs: Mapping[str, str]
    states: Mapping[str, str]
    kinds: Mapping[str, str]
    short_kinds: Mapping[str, str]
    styles: Mapping[str, str]
    places: Mapping[str, str]
    rounds: Mapping[str, str]
    lines: Mapping[str, str]
    safety: Mapping[str, str]
    days: tuple[str, ...]
    months: tuple[str, ...]
    decimal: str = "."
    percent: str = "%"
    twelve_hours: bool = False

    def say(self, line: str, **values: object) -> str:
        """The sentence of this name with its values in place. KeyError where there is no such sentence."""
        return fill(self.lines[line], **values)


def fields(template: str) -> set[str]:
    """The names of the values a template takes."""
    return set(_FIELD.findall(template))


def fill(template: str, **values: object) -> str:
    """The template with its values in place; what a value holds is never read as a template."""
    there = {name for name, value in values.items() if value is not None}

    def optional(found: re.Match[str]) -> str:
        return found[1] if fields(found[1]) <= there else ""

    return _FIELD.sub(lambda found: str(values[found[1]]), _OPTIONAL.sub(optional, template))


@cache
def phrasebook(language: str) -> Phrasebook:
    """The phrasebook of a language; English for one that has none."""
    name = language if language in LANGUAGES else "en"
    found: Phrasebook = import_module(f"bot.words.said.{name}").BOOK
    return found
