"""Words of the trade with a slip of the finger in them: "swetting", "lnier"."""

from collections.abc import Iterator
from functools import lru_cache

from bot.words.lookup.items import says_how
from bot.words.lookup.lexicon import Lexicon
from bot.words.lookup.lexicon import lexicon as lexicon_of
from bot.words.lookup.names import distance


@lru_cache(maxsize=20_000)
def trade_word(word: str, language: str, limit: int) -> str | None:
    """The word of the tables that this is a slip of; None where it is of none."""
    if len(word) < 4:
        return None
    allowed = min(limit, 1 if len(word) < 10 else 2)
    lexicon = lexicon_of(language)
    near = [
        (apart, other)
        for length in range(len(word) - allowed, len(word) + allowed + 1)
        for other in lexicon.trade.get((word[0], length), "").split()
        if not _inflected(word, other) and (apart := distance(word, other, allowed)) <= allowed
    ]
    return min(near, key=lambda one: (one[0], *_says(one[1], lexicon), one[1]))[1] if near and allowed else None


def _says(word: str, lexicon: Lexicon) -> tuple[bool, bool]:
    """Least of two as near is the one that says how a horse is (sweaty, no shetty), or anything by itself."""
    means, said = lexicon.phrases.longest((word,), 0)
    return not says_how(means), not said


def _inflected(word: str, other: str) -> bool:
    """Whether a word is another form of the other, not a slip: "repairer", "sweats"; but "sweatin", "sweatyy"."""
    if len(word) < len(other) or any(word[:k] + word[k + 1 :] == other for k in _doubled(word)):
        return False  # "sweatty" has a letter twice
    return word[: len(other) - 1] == other[:-1] and word != other + other[-1]


def _doubled(word: str) -> Iterator[int]:
    """The places of letters that are the same as the one before."""
    return (k for k in range(1, len(word) - 1) if word[k] == word[k - 1])
