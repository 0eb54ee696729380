"""The phrases of a language by their first word; each first word's are laid out when a message first says it."""

from collections.abc import Container, Iterable, Iterator, Mapping
from sys import intern

Words = tuple[str, ...]
Rows = tuple[tuple[Words, frozenset[str]], ...]
Longer = tuple[tuple[int, ...], dict[Words, frozenset[str]]]  # the phrases' lengths, longest first; their meanings
Beginning = tuple[frozenset[str], dict[str, Longer]]
NOTHING: tuple[frozenset[str], int] = (frozenset(), 0)


class Phrases(Mapping[str, Rows]):
    """First word → (words, meanings), longest first. A message says few of the ten thousands there are."""

    def __init__(self, said: Iterable[tuple[str, str]]) -> None:
        """said: each phrase, its words parted by spaces, and one meaning of it."""
        self._rows: dict[str, Rows] = {}
        self._begun: dict[str, Beginning] = {}
        self._alike: dict[frozenset[str], frozenset[str]] = {}  # many phrases mean the same: one set for all of them
        told: dict[str, list[str]] = {}
        for phrase, meaning in said:
            told.setdefault(phrase.partition(" ")[0], []).append(f"{phrase}\t{meaning}")
        self._told = {first: "\n".join(lines) for first, lines in told.items()}  # a third of the memory of tuples

    def __getitem__(self, first: str) -> Rows:
        """The phrases that begin with this word."""
        if first not in self._rows:
            self._rows[first] = self._laid_out(self._told[first])
        return self._rows[first]

    def __contains__(self, first: object) -> bool:
        """Whether a phrase begins with this word; nothing is laid out for the answer."""
        return first in self._told

    def get(self, first: str, default: Rows = ()) -> Rows:  # type: ignore[override]
        """The phrases that begin with this word; none for most words."""
        return self[first] if first in self._told else default

    def longest(self, words: Words, at: int) -> tuple[frozenset[str], int]:
        """The longest phrase at this place: its meanings, how many words it has; none and 0 where there is none."""
        if at >= len(words) or words[at] not in self._told:
            return NOTHING
        alone, going_on = self._begun.get(words[at]) or self._beginning(words[at])
        if at + 1 < len(words) and words[at + 1] in going_on:
            lengths, longer = going_on[words[at + 1]]
            for length in lengths:
                said = words[at : at + length]
                if said in longer:
                    return longer[said], len(said)
        return (alone, 1) if alone else NOTHING

    def going_on(self, first: str) -> Container[str]:
        """The words behind this one with which it begins a phrase."""
        return self._beginning(first)[1] if first in self._told else ()

    def __iter__(self) -> Iterator[str]:
        """Every first word."""
        return iter(self._told)

    def __len__(self) -> int:
        """How many first words there are."""
        return len(self._told)

    def _beginning(self, first: str) -> Beginning:
        if first not in self._begun:
            self._begun[first] = _by_second_word(self[first])
        return self._begun[first]

    def _laid_out(self, told: str) -> Rows:
        meanings: dict[Words, set[str]] = {}
        for line in told.split("\n"):
            phrase, meaning = line.split("\t")
            said = tuple(map(intern, phrase.split(" ")))
            meanings.setdefault(said, set()).add(meaning)
            if "is" in said[1:]:  # "who's" for "who is"
                short = (said[0], *("'s" if word == "is" else word for word in said[1:]))
                meanings.setdefault(short, set()).add(meaning)
        rows = [(said, self._shared(frozenset(found))) for said, found in meanings.items()]
        return tuple(sorted(rows, key=lambda row: -len(row[0])))

    def _shared(self, means: frozenset[str]) -> frozenset[str]:
        return self._alike.setdefault(means, means)


def _by_second_word(rows: Rows) -> Beginning:
    """What the first word means by itself, and the longer phrases by their second: "the" alone begins hundreds."""
    alone: frozenset[str] = frozenset()
    going_on: dict[str, dict[Words, frozenset[str]]] = {}
    for phrase, means in rows:
        if len(phrase) == 1:
            alone = means
        else:
            going_on.setdefault(phrase[1], {})[phrase] = means
    return alone, {second: (tuple(dict.fromkeys(map(len, longer))), longer) for second, longer in going_on.items()}
