"""Which languages a message may be written in, the likeliest first."""

from collections.abc import Collection, Iterator, Sequence

from bot.barn import Person
from bot.words.heard import LANGUAGES
from bot.words.lookup.lexicon import lexicon
from bot.words.lookup.names import Roster
from bot.words.lookup.tokens import Token

LONG = 300  # words; a longer message is read in one language, so that time stays in proportion
DENYING = frozenset(("ne", "pas", "ni", "sin"))  # in another language than English: no slip of anything


def languages(tokens: Sequence[Token], names: Roster, person: Person | None) -> Iterator[str]:
    """The languages most of the words belong to; the speaker's own first where several do.

    Another is not even looked into where the speaker's tables have every word: "Otto to check" is no Spanish. Words it
    only knows prove nothing: everyday Spanish has "green" and "sheet".
    """
    words = {t.text for t in tokens if t.kind == "word"} - names.named
    speaker = person.language if person else "en"
    order = [speaker, *(x for x in LANGUAGES if x != speaker)]
    if words and all(word in lexicon(speaker).phrases for word in words):
        yield speaker
        return
    known = {x: _known(words, x) for x in order}
    own, best = known[speaker], max(known.values())
    if best == 0:
        yield from dict.fromkeys((speaker, "en"))
        return
    alike = [x for x in order if known[x] == best]
    if not DENYING.isdisjoint(words):  # "Quill ne tremble plus" by somebody who speaks English
        alike.sort(key=lambda x: not all(word in lexicon(x).phrases for word in words))
    elif speaker not in alike and 0 < own == best - 1:
        alike.insert(0, speaker)  # "quil hot" by somebody who speaks English
    yield from alike if len(tokens) < LONG else alike[:1]


def _known(words: Collection[str], language: str) -> int:
    return len(lexicon(language).everyday.among(words))
