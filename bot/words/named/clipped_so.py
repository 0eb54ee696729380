"""How a horse was clipped, told apart from the verb: "tondu Lune en couverture", "Lune a eu sa tonte couverture"."""

from collections.abc import Sequence
from itertools import accumulate, takewhile

from bot.words.lookup.items import Item, places
from bot.words.lookup.lexicon import Lexicon
from bot.words.thoughts.clauses import CLIPS

CLIPPED = frozenset(("clipped",))
BETWEEN = ("article", "toward", "and", "time")
NAMED = 10  # words of a list of names
BEHIND = 4  # words of the style


def clipped_so(items: Sequence[Item], lexicon: Lexicon) -> list[Item]:
    """The items with the words of a style that make a phrase with a verb before them drawn into one."""
    found: list[Item] = []
    end = 0
    for at in places(items, CLIPPED):
        style, first, last = _style_behind(items, at, lexicon)
        if first > end and style:
            found.extend(items[end:first])
            found.append(Item(style.text, " ".join(i.raw for i in items[first:last]), style.means))
            end = last
    return [*found, *items[end:]]


def _style_behind(items: Sequence[Item], at: int, lexicon: Lexicon) -> tuple[Item | None, int, int]:
    """The style, and from where to where its words stand; None where none is told behind the names."""
    names = list(takewhile(_between, items[at + 1 : at + NAMED]))
    first = at + 1 + len(names)
    behind = items[first : first + BEHIND]
    if not behind:
        return None, 0, 0
    said = (items[at].text.split()[-1], *(word for i in behind for word in i.text.split()))
    means, taken = lexicon.phrases.longest(said, 0)
    ends = list(accumulate((len(i.text.split()) for i in behind), initial=1))
    if taken < 2 or means.isdisjoint(CLIPS) or taken not in ends:
        return None, 0, 0
    return Item(" ".join(said[:taken]), "", means), first, first + ends.index(taken)


def _between(item: Item) -> bool:
    return bool(item.horses) or item.text == "," or (item.has(*BETWEEN) and not item.has("in"))
