"""Many words in little room: what is kept of each is its hash, so that a language takes a sixth of a megabyte."""

from array import array
from bisect import bisect_left
from collections.abc import Collection, Iterable

REMEMBERED = 8_000  # words looked up; people say the same few thousand


class WordList:
    """Answers `word in words`. Two words of one hash are taken for one: among 100,000 words once in a billion lists."""

    __slots__ = ("_answers", "_hashes")

    def __init__(self, words: Iterable[str]) -> None:
        self._hashes = array("q", sorted(map(hash, words)))
        self._answers: dict[str, bool] = {}  # of words looked up before

    def __contains__(self, word: str) -> bool:
        known = self._answers.get(word)
        if known is None:
            if len(self._answers) >= REMEMBERED:
                self._answers.clear()
            known = self._answers[word] = self._found(hash(word))
        return known

    def among(self, words: Collection[str]) -> set[str]:
        """Those of these words that are in it."""
        answers = self._answers
        return {word for word in words if answers.get(word)} | {w for w in words if w not in answers and w in self}

    def _found(self, value: int) -> bool:
        hashes = self._hashes
        at = bisect_left(hashes, value)
        return at < len(hashes) and hashes[at] == value
