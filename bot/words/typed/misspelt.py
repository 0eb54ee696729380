"""Words of the trade with a slip of the finger in them: "swetting", "lnier"."""

from collections.abc import Iterator, Mapping, Sequence
from functools import lru_cache
from itertools import pairwise

from bot.words.lookup.items import of_rugs, says_how
from bot.words.lookup.lexicon import Lexicon
from bot.words.lookup.lexicon import lexicon as lexicon_of
from bot.words.lookup.names import Roster, distance
from bot.words.lookup.tokens import Token

LEAST, LONG = 4, 10  # letters of a word that may have a slip in it, and of one that may have two
KEYS = {"en": ("qwertyuiop", "asdfghjkl", "zxcvbnm"), "fr": ("azertyuiop", "qsdfghjklm", "wxcvbn")}
DONE = frozenset(("wears", "put on", "took off", "rug", "swapped", "brought", "worked", "clipped"))
WAS_DOING = ("aba", "aban")  # Spanish, of what somebody used to do
BEFORE, BEHIND = 4, 5  # words of a phrase


def trade_word(word: str, language: str, limit: int) -> str | None:
    """The word of the tables that this is a slip of; None where it is of none."""
    return next(iter(trade_words(word, language, limit)), None)


@lru_cache(maxsize=20_000)
def trade_words(word: str, language: str, limit: int) -> tuple[str, ...]:
    """The words of the tables that this is as near a slip of, the likeliest first."""
    lexicon = lexicon_of(language)
    return _nearest(word, lexicon, lexicon.trade, limit)


@lru_cache(maxsize=20_000)
def _written_words(word: str, language: str) -> tuple[str, ...]:
    """As `trade_words`, of every row: "plan", "last week" and "thanks" too."""
    lexicon = lexicon_of(language)
    return _nearest(word, lexicon, lexicon.written, 2)


def _nearest(word: str, lexicon: Lexicon, among: Mapping[tuple[str, int], str], limit: int) -> tuple[str, ...]:
    allowed = min(limit, 1 if len(word) < LONG else 2)
    if len(word) < LEAST or allowed <= 0:
        return ()
    near = [
        (apart, other)
        for length in range(len(word) - allowed, len(word) + allowed + 1)
        for other in among.get((word[0], length), "").split()
        if not _inflected(word, other) and (apart := distance(word, other, allowed)) <= allowed
    ]
    least = min((apart for apart, _ in near), default=0)
    likely = {
        o: (not _usual_slip(word, o, lexicon.language), *_says(o, lexicon), -len(o))
        for apart, o in near
        if apart == least
    }
    return tuple(sorted(likely, key=lambda other: (likely[other], other)))


def _usual_slip(word: str, other: str, language: str) -> bool:
    """Whether a letter stands twice, is left out, or is its neighbour on the keys, or two are swapped."""
    swapped = len(word) == len(other) and sorted(word) == sorted(other)
    return swapped or len(word) < len(other) or _twice(word, other) or _key_beside(word, other, language)


def _key_beside(word: str, other: str, language: str) -> bool:
    """Whether a thumb hit the key beside the one meant: "msnta" is manta, not monta."""
    keys = [(a, b) for a, b in zip(word, other) if a != b]
    pairs = (pair for row in KEYS.get(language, KEYS["en"]) for pair in pairwise(row))
    return len(word) == len(other) and len(keys) == 1 and any({*pair} == {*keys[0]} for pair in pairs)


def in_phrases(tokens: list[Token], lexicon: Lexicon, roster: Roster) -> list[Token]:
    """The tokens, a slip of the finger mended where the word meant makes a phrase with those beside it.

    As in "has nothng on"; alone, a word with a slip may be a name as well.
    """
    words = {token.text for token in tokens if token.kind == "word" and len(token.text) >= LEAST}
    strange = {
        word
        for word in words - lexicon.everyday.among(words) - lexicon.rarer.among(words)
        if not _meant(word, lexicon, roster)
    }
    found = list(tokens)
    for at in [k for k, token in enumerate(tokens) if token.text in strange] if strange else ():
        token = tokens[at]
        texts = tuple(t.text for t in found[max(0, at - BEFORE) : at + BEHIND])
        likely = [o for o in _written_words(token.text, lexicon.language) if o not in roster.named]
        likely = [o for o in likely if _key_beside(token.text, o, lexicon.language)] or likely
        meant = next((o for o in likely if _in_a_phrase(texts, min(at, BEFORE), o, lexicon)), None)
        meant = meant or _said_of_her(token.text, lexicon)
        if meant is not None:
            found[at] = token._replace(text=meant)
    return found


def _meant(word: str, lexicon: Lexicon, roster: Roster) -> bool:
    """Whether a word is one as it stands, or may be a name with a slip."""
    if word in roster.named or word in roster.fond or lexicon.phrases.longest((word,), 0)[1]:
        return True
    nick = roster.nearly_nicknamed(word) or roster.nicknamed(word.removesuffix("s"))  # "stripys ripped"
    return bool(nick or roster.near(word)[0] or roster.begins(word))


def _said_of_her(word: str, lexicon: Lexicon) -> str | None:
    """As in "pickles nakd", "thistles greem sheet": by which the word before it may be known for a name."""
    meant = trade_word(word, lexicon.language, 1)
    means = lexicon.phrases.longest((meant,), 0)[0] if meant else frozenset[str]()
    clothes = of_rugs(means) or not means.isdisjoint(("bare", "colour"))
    return meant if says_how(means) or clothes else None


def _in_a_phrase(texts: Sequence[str], at: int, bent: str, lexicon: Lexicon) -> bool:
    mended = (*texts[:at], bent, *texts[at + 1 :])
    return any(k + lexicon.phrases.longest(mended, k)[1] > max(at, k + 1) for k in range(at + 1))


def _says(word: str, lexicon: Lexicon) -> tuple[bool, bool, bool]:
    """Least of two as near says how a horse is (sweaty, no shetty), what was done, or anything at all."""
    means, said = lexicon.phrases.longest((word,), 0)
    return not says_how(means), means.isdisjoint(DONE), not said


def _inflected(word: str, other: str) -> bool:
    """Whether a word is another form of the other, not a slip: "repairer", "sweats"; but "sweatin", "sweatyy"."""
    if len(word) < len(other) or _twice(word, other):
        return False  # "sweatty" has a letter twice
    if word.endswith(WAS_DOING) and other[-3:-2] == "a":
        return True  # "abrigaba" is no "abrigada"
    if len(word) == len(other) and {word[-1], other[-1]} == {"m", "n"}:
        return False  # "greem": no ending, but the key beside
    return word[: len(other) - 1] == other[:-1] and word != other + other[-1]


def _twice(word: str, other: str) -> bool:
    """Whether a word is the other with one letter twice."""
    return any(word[:k] + word[k + 1 :] == other for k in _doubled(word))


def _doubled(word: str) -> Iterator[int]:
    """The places of letters that are the same as the one before."""
    return (k for k in range(1, len(word) - 1) if word[k] == word[k - 1])
