"""What stands over a list of who wears what: "Changed:", "Round 2" tell what is worn now; "Rugs for sale" does not."""

from collections.abc import Sequence

from bot.words.heard.headings import ROUNDS
from bot.words.lookup.items import Item, meanings_of, some_mean
from bot.words.lookup.tokens import plain

AT_MOST = 8  # words of a heading; more is a sentence
DRESSED = ("put on", "wears", "ask wearing", "done", "swapped")
BESIDE = (
    "time", "place field", "place stall", "polite", "rug", "article", "of", "drying", "second", "third", "is", "she",
    "in", "on",
)  # fmt: skip
IN_ROWS = ("bare", "nothing", "only", "and", "article", "her", "in", "wears")
BETWEEN = frozenset(":-–—=→>,|/")
NOT_SO = frozenset((
    "if", "plan", "for later", "ahead", "question", "some day", "undo", "i mean", "yesterday", "long ago", "weekday",
    "habit", "guess",
))  # fmt: skip
CALLED = frozenset(word for words in ROUNDS.values() for word in plain(words).split())


def of_now(heading: Sequence[Item]) -> bool:
    """As in "Hi all!", "On now:", "Round 2, top field": nothing that would make of the list what is to come."""
    if len(heading) > 2 * AT_MOST:
        return False
    means = meanings_of(heading)
    told = dressed_so(heading)
    round_ = any(_called(i) and not i.means for i in heading)
    ahead = any(i.has("ahead") and not (round_ and i.has("part of day")) for i in heading)  # "ronda noche"
    if not (means - {"ahead"}).isdisjoint(NOT_SO) or (ahead and not told):
        return False
    words = [i for i in heading if not (i.mark or i.number is not None or i.clock)]
    return all(i.has(*DRESSED, *BESIDE) or _called(i) or (round_ and i.has("part of day")) for i in words)


def dressed_so(heading: Sequence[Item]) -> bool:
    """As in "Changed:", "On now:", "Llevan ahora:": the rows below say what was put on."""
    return some_mean(heading, *DRESSED)


def _called(item: Item) -> bool:
    """A word for a round, a place or a time, or for rugs as such."""
    return _rugs(item) or all(word in CALLED for word in item.text.split())


def _rugs(item: Item) -> bool:
    return item.piece is not None and item.piece.rug and not (item.piece.owners or item.piece.ids)


def over_rows(line: Sequence[Item], behind: Sequence[Item]) -> bool:
    """Whether this is a heading, with or without a colon: the line behind it opens with a horse or its piece."""
    short = len(line) <= AT_MOST and not any(i.horses or (i.piece is not None and not _rugs(i)) for i in line)
    return short and bool(behind) and of_one(behind) and line[-2].text not in ".!"


def of_one(line: Sequence[Item]) -> bool:
    """As in "- Otto: heavy": a line that opens with a horse or its piece."""
    opens = next((i for i in line if not (i.mark or i.number is not None or i.has("article"))), None)
    return opens is not None and (bool(opens.horses) or (opens.piece is not None and not _rugs(opens)))


def only_dressed(line: Sequence[Item]) -> bool:
    """As in "- Otto: heavy": a horse, a mark, and nothing but what it wears."""
    return _only(line, "bare", "nothing")


def only_moved(line: Sequence[Item]) -> bool:
    """As in "- Otto: top field", "Otto: heavy": and nothing but where it is, or what it wears."""
    return _only(line, "bare", "nothing", "place field", "place stall", "inwards", "outwards")


def _only(line: Sequence[Item], *meanings: str) -> bool:
    named = next((k for k, i in enumerate(line) if i.horses), len(line))
    said = [i for i in line[named + 1 :] if i.piece is not None or i.has(*meanings)]
    between = named + 1 < len(line) and line[named + 1].text in BETWEEN
    return bool(said) and between and all(i.mark or i in said or i.has(*IN_ROWS) for i in line[named + 1 :])
