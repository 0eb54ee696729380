"""A message cut into words, numbers and marks, with case and accents set aside."""

import re
import unicodedata
from functools import lru_cache
from typing import NamedTuple

# end of line | dots | arrow | time of day | number | word with inner apostrophes | any other mark
PIECE = re.compile(r"\n|\.{2,}|[-=]+>|\d{1,2}[:h]\d\d|\d+(?:[.,]\d+)?|[^\W\d_]+(?:['’`´][^\W\d_]+)*|[^\s\w]|_")
APOSTROPHE = re.compile(r"['’`´]")
PLAIN_PHRASE = re.compile(r"[a-z]+( [a-z]+)*").fullmatch
ACCENTS = re.compile("[\u0300-\u036f]+")
HYPHENS = "-‐‑_"
TYPED_AS = {"..": "…", "->": "→", "--": "→", "=>": "→", "==": "→"}  # what marks of several signs begin with
APOSTROPHES = frozenset("'’`´")
LETTERS = {"ø": "o", "ł": "l", "đ": "d", "œ": "oe", "æ": "ae", "ı": "i"}

# what stands before an apostrophe in French; what stands after one in English
ELIDED = frozenset(["l", "d", "n", "j", "c", "qu", "s", "m", "t", "jusqu", "lorsqu", "puisqu", "quelqu", "aujourd"])
# most phrases that have an apostrophe: "qu'il a", "d'Ulysse"; the tables have thousands
ELIDED_PHRASE = re.compile(rf"(?:(?:{'|'.join(sorted(ELIDED - {'aujourd'}))})'|[a-z]+(?: |$))+").fullmatch
ELIDED_WORDS = re.compile(r"[a-z]+'?").findall
SUFFIX = {"s": "'s", "re": "are", "ll": "will", "d": "would", "ve": "have", "m": "am"}
NEGATED = {"won": "will", "can": "can", "shan": "shall", "ain": "is"}
REMEMBERED = 8_000  # words as written


class Token(NamedTuple):
    """One word or mark. text: lower case, no accents; raw: as written; start, end: place in the message.

    A tuple: a thousand are made for a long message, each in a third of a frozen dataclass's time.
    """

    text: str
    raw: str
    start: int
    end: int
    kind: str  # word | number | clock | mark
    tied: bool = False  # joined to the word before by a hyphen

    @property
    def capital(self) -> bool:
        """Written with a capital first letter."""
        return self.raw[:1].isupper()


def plain(text: str) -> str:
    """Lower case, without accents or compatibility forms."""
    if text.isascii():
        return text.lower()
    spread = _latin(ACCENTS.sub("", unicodedata.normalize("NFKD", _latin(text.casefold()))))
    return spread if spread.isascii() else "".join(c for c in spread if not unicodedata.combining(c))


def _latin(text: str) -> str:
    for letter, written in LETTERS.items():
        text = text.replace(letter, written)
    return text


def tokenise(text: str) -> list[Token]:
    """Every word, number and mark in order; contractions opened ("isn't" → is, not), hyphens inside words dropped."""
    tokens: list[Token] = []
    tied = False
    for found in PIECE.finditer(text):
        raw, (start, end) = found.group(), found.span()
        if raw[0].isalpha():
            elided = text[end : end + 1] in APOSTROPHES and plain(raw) in ELIDED
            opened = ((plain(raw) + "'", raw),) if elided else _words(raw)
            for word, written in opened:
                tokens.append(Token(word, written, start, end, "word", tied))
            tied = False
        elif raw[0].isdecimal():
            kind = "clock" if ":" in raw or "h" in raw else "number"
            tokens.append(Token(raw.replace(",", "."), raw, start, end, kind, tied))
            tied = False
        else:
            inside = _inside_word(text, start, raw)
            if not inside:
                tokens.append(Token(TYPED_AS.get(raw[:2], raw), raw, start, end, "mark"))
            tied = inside and raw in HYPHENS
    return tokens


def words(phrase: str) -> tuple[str, ...]:
    """A phrase as the plain words and numbers a message would show for it."""
    if PLAIN_PHRASE(phrase):
        return tuple(phrase.split())
    if "'" in phrase and ELIDED_PHRASE(phrase):
        return tuple(ELIDED_WORDS(phrase))
    return tuple(t.text for t in tokenise(phrase) if t.kind != "mark" or t.raw in "&+" or not t.raw.isascii())


def _inside_word(text: str, at: int, mark: str) -> bool:
    joins = mark in HYPHENS and 0 < at < len(text) - 1
    return (joins and text[at - 1].isalnum() and text[at + 1].isalnum()) or mark in "\ufe0f\u200d♀♂'’`´"


@lru_cache(maxsize=REMEMBERED)
def _words(raw: str) -> tuple[tuple[str, str], ...]:
    """The words in one written word, each with what was written for it."""
    if raw.isalpha():
        return ((plain(raw), raw),)
    parts, written = APOSTROPHE.split(plain(raw)), APOSTROPHE.split(raw)
    opened: list[tuple[str, str]] = []
    while len(parts) > 1 and parts[0] in ELIDED:
        opened.append((parts.pop(0) + "'", written.pop(0)))
    if [word for word, _ in opened] == ["aujourd'"]:
        return (("aujourd'hui", raw),)
    word, *rest = parts
    if rest == ["t"] and word.endswith("n"):
        return (*opened, (NEGATED.get(word, word[:-1]), raw), ("not", raw))
    if rest and rest[-1] in SUFFIX:  # "Pip's", "a'body's"
        return (*opened, ("".join(parts[:-1]), "'".join(written[:-1])), (SUFFIX[rest[-1]], "'" + written[-1]))
    return (*opened, ("".join(parts), "'".join(written)))
