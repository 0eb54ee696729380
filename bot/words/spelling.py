"""Words as a dictionary has them, from words as thumbs type them: "q" → que, "jai" → j'ai, "sweatin", "soooo"."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace

from bot.words.lexicon import Lexicon
from bot.words.names import Roster
from bot.words.tokens import Token

THRICE: re.Pattern[str] = re.compile(r"([^\W\d_])\1{2,}")  # one letter three times or more
LEAST = 5  # letters of a word whose ending is mended


def spelled(tokens: Sequence[Token], lexicon: Lexicon, roster: Roster) -> list[Token]:
    """The tokens with every word written out; a short form of several words is several tokens."""
    found: list[Token] = []
    for at, token in enumerate(tokens):
        if lexicon.language == "fr" and found and _participle(token, found, lexicon):
            token = replace(token, text=token.text[:-1])
        counted = at > 0 and tokens[at - 1].kind == "number"  # "200 g"
        found.extend([token] if counted else _written_out(token, lexicon, roster))
    return found


def _participle(token: Token, before: Sequence[Token], lexicon: Lexicon) -> bool:
    """As in "j'ai passer la main", which sounds like "passé"; not "elle va passer"."""
    verb = token.kind == "word" and len(token.text) >= LEAST and token.text.endswith("er")
    if not verb or token.text[:-1] not in lexicon.everyday:
        return False
    helped = before[-1].text in ("ai", "est", "avons", "avez", "ont")
    return helped or (
        before[-1].text == "a" and len(before) > 1 and before[-2].text in ("on", "il", "elle", "qui", "pluie", "eau")
    )


def _written_out(token: Token, lexicon: Lexicon, roster: Roster) -> Iterator[Token]:
    if token.kind != "word" or token.text in roster.named:
        yield token
        return
    for word in lexicon.short_forms.get(token.text) or (_mended(token.text, lexicon, roster),):
        yield token if word == token.text else replace(token, text=word)


def _mended(word: str, lexicon: Lexicon, roster: Roster) -> str:
    """A word that somebody drew out or cut short, as it is spelled; any other as it is."""
    if word in lexicon.everyday:
        return word
    if THRICE.search(word):
        drawn_in = (THRICE.sub(kept, word) for kept in (r"\1\1", r"\1"))
        return next((short for short in drawn_in if short in lexicon.everyday or short in roster.spelled), word)
    if len(word) < LEAST:
        return word
    whole = (word[: -len(end)] + full for end, full in lexicon.endings if word.endswith(end))
    return next((other for other in whole if other in lexicon.everyday), word)
