"""A language's tables made quick to look up: phrases by their first word, and its everyday words."""

from dataclasses import dataclass
from functools import cache
from importlib import import_module, resources
from sys import intern

from bot.words.heard import LANGUAGES
from bot.words.heard.short_forms import ENDINGS, SHORT_FORMS
from bot.words.tokens import plain, words
from bot.words.wordlist import WordList

VERBS = (
    "took off",
    "put on",
    "worked",
    "turned out",
    "brought in",
    "brought",
    "swapped",
    "clipped",
    "inwards",
    "state in service",
    "state found",
)


# what says nothing by itself: no slip is set right to a word of these rows only
UNBENT = frozenset(("idiom", "habit", "plan", "polite", "long ago", "link", "said", "ask help", "brings weather"))


@dataclass(frozen=True)
class Lexicon:
    """One language. phrases: first word → (words, meanings), longest first. everyday: every word it knows.

    trade: longer words of the tables by first letter and length, which a slip of the finger is set right to.
    accented: words that are participles only with their last accent (enlevé, not enlève).
    short_forms: what thumbs type → the words meant. endings: how words end in speech, and in a dictionary.
    """

    language: str
    phrases: dict[str, tuple[tuple[tuple[str, ...], frozenset[str]], ...]]
    everyday: WordList
    trade: dict[tuple[str, int], tuple[str, ...]]
    accented: frozenset[str]
    short_forms: dict[str, tuple[str, ...]]
    endings: tuple[tuple[str, str], ...]


@cache
def lexicon(language: str) -> Lexicon:
    """The lexicon of "en", "es" or "fr"."""
    table: dict[str, str] = import_module(f"bot.words.heard.{language}").PHRASES
    short_forms = {short: words(full) for short, full in SHORT_FORMS[language].items()}
    meanings: dict[tuple[str, ...], set[str]] = {}
    for meaning, row in table.items():
        for phrase in spelled_out(row):
            written = (whole for word in words(phrase) for whole in short_forms.get(word, (word,)))
            for spoken in _shortened(tuple(map(intern, written))):
                meanings.setdefault(spoken, set()).add(meaning)
    by_first: dict[str, list[tuple[tuple[str, ...], frozenset[str]]]] = {}
    alike: dict[frozenset[str], frozenset[str]] = {}  # many phrases mean the same: one set for all of them
    for phrase_words, found in meanings.items():
        if phrase_words:
            means = alike.setdefault(frozenset(found), frozenset(found))
            by_first.setdefault(phrase_words[0], []).append((phrase_words, means))
    for rows in by_first.values():
        rows.sort(key=lambda row: -len(row[0]))
    if language == "en":
        by_first["'s"] = [(("'s",), frozenset({"is"}))]
    own = {word for phrase in meanings for word in phrase}
    trade: dict[tuple[str, int], list[str]] = {}
    telling = {word for phrase, means in meanings.items() if not means <= UNBENT for word in phrase}
    for word in sorted(word for word in telling if len(word) >= 5):
        trade.setdefault((word[0], len(word)), []).append(word)
    return Lexicon(
        language,
        {k: tuple(v) for k, v in by_first.items()},
        WordList(own | common(language) | short_forms.keys()),
        {k: tuple(v) for k, v in trade.items()},
        _accented(table),
        short_forms,
        ENDINGS[language],
    )


def _accented(table: dict[str, str]) -> frozenset[str]:
    words_of_verbs = {word for meaning in VERBS for phrase in spelled_out(table[meaning]) for word in phrase.split()}
    return (
        frozenset(plain(word) for word in words_of_verbs if word.endswith("é")) if table.get("helper") else frozenset()
    )


def spelled_out(row: str) -> list[str]:
    """The phrases of one row, endings written out: `mojad|o|a` gives mojado, mojada; `triste|s` both."""
    found = []
    for phrase in row.split(","):
        spellings = [""]
        for word in phrase.split():
            stem, *endings = word.split("|")
            spellings = [f"{before} {stem}{end}".strip() for before in spellings for end in _optional(endings)]
        found.extend(spellings)
    return [phrase for phrase in found if phrase]


def _optional(endings: list[str]) -> list[str]:
    return ["", *endings] if len(endings) < 2 else endings


def _shortened(phrase: tuple[str, ...]) -> set[tuple[str, ...]]:
    """A phrase, and the same with "who's" for "who is"."""
    return {phrase, tuple("'s" if word == "is" and at else word for at, word in enumerate(phrase))}


def common(language: str) -> frozenset[str]:
    """The everyday words of a language, from its list."""
    text = resources.files("bot.words.heard").joinpath(f"common_{language}.txt").read_text(encoding="utf-8")
    return frozenset(word for line in text.splitlines() if not line.startswith("#") for word in line.split())


@cache
def first_names() -> frozenset[str]:
    """Names that people bear."""
    return common("names")


def everyday(word: str) -> bool:
    """Whether a word is an everyday one of any language, or a first name: never bent into the name of a horse."""
    return of_a_language(word) or word in first_names()


def of_a_language(word: str) -> bool:
    """Whether a word is an everyday one of any language."""
    return any(word in lexicon(language).everyday for language in LANGUAGES)
