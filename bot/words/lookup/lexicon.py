"""A language's tables made quick to look up: phrases by their first word, and its everyday words."""

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from importlib import import_module, resources
from itertools import chain, zip_longest

from bot.words.heard import LANGUAGES
from bot.words.heard.short_forms import ENDINGS, SHORT_FORMS, SOUNDS
from bot.words.lookup.phrases import Phrases
from bot.words.lookup.spoken_french import in_full
from bot.words.lookup.spoken_spanish import in_one_verb
from bot.words.lookup.tokens import PLAIN_PHRASE, plain, words
from bot.words.lookup.wordlist import REMEMBERED, WordList

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
UNBENT = frozenset((
    "idiom", "habit", "plan", "polite", "long ago", "link", "said", "ask help", "brings weather", "thing", "called",
    "some day", "in short",
))  # fmt: skip


RARER = ("en",)  # languages with a list of them
LONGER = 5  # letters of a word that a slip is set right to


@dataclass(frozen=True)
class Lexicon:
    """One language. phrases: first word → (words, meanings), longest first. everyday: every word it knows.
    rarer: words that are no slip of another either, and that a horse may be called by.

    trade: longer words of the tables by first letter and length, parted by spaces, which a slip of the finger is set
    right to. written: those of every row, which it is set right to where that makes a phrase.
    accented: words that are participles only with their last accent (enlevé, not enlève).
    past: phrases of which only an accent tells that they are over (montó a, not monto a), without it.
    short_forms: what thumbs type → the words meant. endings: how words end in speech, and in a dictionary.
    sounds: letters that sound alike, as written and as meant.
    """

    language: str
    phrases: Phrases
    everyday: WordList
    rarer: WordList
    trade: dict[tuple[str, int], str]
    written: dict[tuple[str, int], str]
    accented: frozenset[str]
    past: frozenset[str]
    short_forms: dict[str, tuple[str, ...]]
    endings: tuple[tuple[str, str], ...]
    sounds: tuple[tuple[str, str], ...]


@cache
def lexicon(language: str) -> Lexicon:
    """The lexicon of "en", "es" or "fr"."""
    table: dict[str, str] = import_module(f"bot.words.heard.{language}").PHRASES
    short_forms = {
        plain(short): tuple(full.split()) if " 's" in full else words(full)
        for short, full in SHORT_FORMS[language].items()
    }
    own: set[str] = set()
    telling: set[str] = set()
    more = [("'s", "is")] if language == "en" else []
    rewritten: Callable[[str], str] = in_one_verb if language == "es" else str
    phrases = Phrases(chain(_told(table, short_forms, own, telling, rewritten), more))
    return Lexicon(
        language,
        phrases,
        WordList(own | common(language) | short_forms.keys()),
        WordList(_listed("rarer", language) if language in RARER else ()),
        _by_first_letter(telling),
        _by_first_letter(own),
        _accented(table),
        _past(table),
        short_forms,
        ENDINGS[language],
        SOUNDS[language],
    )


def _by_first_letter(of_tables: Iterable[str]) -> dict[tuple[str, int], str]:
    found: dict[tuple[str, int], list[str]] = {}
    for word in sorted(word for word in of_tables if len(word) >= LONGER):
        found.setdefault((word[0], len(word)), []).append(word)
    return {key: " ".join(alike) for key, alike in found.items()}


def _told(
    table: Mapping[str, str],
    short_forms: Mapping[str, tuple[str, ...]],
    own: set[str],
    telling: set[str],
    rewritten: Callable[[str], str],
) -> Iterator[tuple[str, str]]:
    """Each phrase with each of its meanings, a row at a time; its words are noted in `own`, and in `telling` where
    a slip may be set right to them.
    """
    for meaning, row in table.items():
        spoken = _spoken(row, {} if meaning == "gram" else short_forms)  # "g" after a number is no "j'ai"
        said = list(map(rewritten, spoken))
        words_of_row = set(" ".join(said).split(" "))
        own |= words_of_row
        if meaning not in UNBENT:
            telling |= words_of_row
        for phrase in said:
            yield phrase, meaning


def _accented(table: dict[str, str]) -> frozenset[str]:
    words_of_verbs = {word for meaning in VERBS for phrase in spelled_out(table[meaning]) for word in phrase.split()}
    return (
        frozenset(plain(word) for word in words_of_verbs if word.endswith("é")) if table.get("helper") else frozenset()
    )


def _past(table: dict[str, str]) -> frozenset[str]:
    """Phrases with a verb like Spanish "montó", which "monto" lacks; no "metió", which is "meto" of the speaker."""
    phrases = {phrase for meaning in (*VERBS, "stripped") for phrase in spelled_out(table[meaning]) if "ó" in phrase}
    return frozenset(plain(phrase) for phrase in phrases if any(map(_first_conjugation, phrase.split())))


def _first_conjugation(verb: str) -> bool:
    return verb == "cambió" or (verb.endswith("ó") and not verb.endswith(("ió", "yó")))


def spelled_out(row: str) -> list[str]:
    """The phrases of one row, written out: `mojad|o|a` gives mojado, mojada; `triste|s` both; `(a / de) pie` two."""
    choices = chain.from_iterable(_with_choices(each) if "(" in each else (each,) for each in row.split(","))
    phrases = (" ".join(phrase.split()) for phrase in choices)
    return [said for phrase in phrases if phrase for said in (_with_endings(phrase) if "|" in phrase else (phrase,))]


def _with_choices(phrase: str) -> list[str]:
    before, _, rest = phrase.partition("(")
    choices, _, after = rest.partition(")")
    return (
        [before + choice + end for choice in choices.split("/") for end in _with_choices(after)] if rest else [phrase]
    )


def _with_endings(phrase: str) -> list[str]:
    spellings = [""]
    for word in phrase.split():
        stem, *endings = word.split("|")
        spellings = [f"{before} {stem}{end}".strip() for before in spellings for end in _optional(endings)]
    return spellings


def _optional(endings: list[str]) -> list[str]:
    return ["", *endings] if len(endings) < 2 else endings


def _spoken(row: str, short_forms: Mapping[str, tuple[str, ...]]) -> list[str]:
    """The phrases of a row, their words parted by spaces, short forms written out."""
    said = []
    shorts = short_forms.keys()
    for phrase in spelled_out(plain(row)):
        spoken = phrase.split(" ") if PLAIN_PHRASE(phrase) else words(phrase)
        if not shorts.isdisjoint(spoken):
            spoken = [whole for word in spoken for whole in short_forms.get(word, (word,))]
        if "'" in phrase:  # as `spoken_french` writes what people say
            spoken = [in_full(word, then) for word, then in zip_longest(spoken, spoken[1:], fillvalue="a")]
        if spoken:
            said.append(" ".join(spoken))
    return said


def common(language: str) -> frozenset[str]:
    """The everyday words of a language, from its list."""
    return _listed("common", language)


def _listed(kind: str, language: str) -> frozenset[str]:
    text = resources.files("bot.words.heard").joinpath(f"{kind}_{language}.txt").read_text(encoding="utf-8")
    return frozenset(word for line in text.splitlines() if not line.startswith("#") for word in line.split())


@cache
def first_names() -> frozenset[str]:
    """Names that people bear."""
    return common("names")


@lru_cache(maxsize=REMEMBERED)
def everyday(word: str) -> bool:
    """Whether a word is an everyday one of any language, or a first name: never bent into the name of a horse."""
    rare = any(word in lexicon(language).rarer for language in RARER)
    return rare or of_a_language(word) or word in first_names()


@lru_cache(maxsize=REMEMBERED)
def of_a_language(word: str) -> bool:
    """Whether a word is an everyday one of any language."""
    return any(word in lexicon(language).everyday for language in LANGUAGES)
