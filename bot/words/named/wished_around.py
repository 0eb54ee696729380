"""A wish told around a name: "no quiero que Luna lleve manta" wishes what "no quiero que lleve manta" does."""

from collections.abc import Sequence
from itertools import accumulate, takewhile

from bot.words.lookup.items import Item, named_near, since_mark, some_mean
from bot.words.lookup.lexicon import Lexicon

WISHED = frozenset(("do not rug", "rug again"))
WANTS = ("plan", "keep", "please", "not", "habit", "bare", "no")
WANTED = frozenset(WANTS)
SMALL = ("article", "toward", "and")
NEAR = 6  # words before a name, and behind it


def wished_around(items: Sequence[Item], lexicon: Lexicon) -> list[Item]:
    """The items with such a phrase behind the name that stands in it."""
    found = list(items)
    for at in reversed(named_near(items, WANTED, before=3 * NEAR)):
        if at and items[at - 1].horses:
            continue
        first = at
        while first and items[first - 1].has(*SMALL):
            first -= 1
        before = since_mark(items, first, NEAR)
        if not some_mean(before, *WANTS):
            continue
        behind = at + len(list(takewhile(lambda i: i.horses or i.has(*SMALL), items[at:])))
        after = list(takewhile(lambda i: not (i.mark or i.horses), items[behind : behind + NEAR]))
        said = _wish(before, after, lexicon)
        if said is not None:
            start, end, wish = said
            found[first - len(before) + start : behind + end] = [*items[first:behind], wish]
    return found


def _wish(before: Sequence[Item], after: Sequence[Item], lexicon: Lexicon) -> tuple[int, int, Item] | None:
    """From which word before the name to which behind it a phrase goes that wishes something; None where none does."""
    words = tuple(word for i in (*before, *after) for word in i.text.split())
    ends = list(accumulate(len(i.text.split()) for i in (*before, *after)))
    for start in range(len(before)):
        first = ends[start - 1] if start else 0
        means, taken = lexicon.phrases.longest(words, first)
        if first + taken in ends[len(before) :] and not WISHED.isdisjoint(means):
            text = " ".join(words[first : first + taken])
            return start, ends.index(first + taken) + 1 - len(before), Item(text, text, means)
    return None
