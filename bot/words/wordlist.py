"""Many words in little room: what is kept of each is its hash, so that a language takes a sixth of a megabyte."""

from array import array
from bisect import bisect_left
from collections.abc import Iterable


class WordList:
    """Answers `word in words`. Two words of one hash are taken for one: among 100,000 words once in a billion lists."""

    __slots__ = ("_hashes",)

    def __init__(self, words: Iterable[str]) -> None:
        self._hashes = array("q", sorted(map(hash, words)))

    def __contains__(self, word: str) -> bool:
        value, hashes = hash(word), self._hashes
        at = bisect_left(hashes, value)
        return at < len(hashes) and hashes[at] == value
