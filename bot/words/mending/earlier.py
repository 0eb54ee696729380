"""Words of what is to come, beside what was done: "j'ai rentré Lune tout à l'heure", "luego metí a Luna"."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import takewhile

from bot.words.lookup.items import Item, places, some_mean
from bot.words.mending.another import DEEDS
from bot.words.thoughts.sentences import ENDS

TO_COME = frozenset(("ahead", "plan"))
MAY_BE_OVER = frozenset(("tout a l' heure", "luego", "al rato", "mas tarde", "later", "later on"))
HELPERS = frozenset(("he", "hemos", "ha", "han", "ai", "j'", "avons", "on", "have", "had"))
TO_WHOM = ("a", "al", "la", "le", "lo", "les", "las", "los")
PAST = ("é", "í", "ti", "puse", "brought", "took", "turned", "changed", "rode")  # how a verb ends that is over
REACH = 8  # words on either side
WHEN = frozenset(("time", "link"))
DONE = frozenset((*DEEDS, "brought"))


def earlier_on(items: Sequence[Item]) -> Sequence[Item]:
    """The items with such a word telling only when, where what is told beside it is done."""
    told = {at for at in places(items, TO_COME) if items[at].text in MAY_BE_OVER and _beside_what_is_done(items, at)}
    if not told:
        return items
    return [replace(item, means=WHEN) if at in told else item for at, item in enumerate(items)]


def _beside_what_is_done(items: Sequence[Item], at: int) -> bool:
    before = list(takewhile(lambda i: i.text not in ENDS, reversed(items[max(0, at - REACH) : at])))
    behind = list(takewhile(lambda i: i.text not in ENDS, items[at + 1 : at + 1 + REACH]))
    beside = [*before[::-1], *behind]
    to_come = some_mean(beside, "afterwards", "keep", "if", "when", *TO_COME)
    return not to_come and any(map(_done, beside))


def _done(item: Item) -> bool:
    """As in "j'ai rentré", "metí a", "brought": a deed that is over, and no request ("saque a Luna luego")."""
    if not item.has(*DONE):
        return False
    words = item.text.split()
    verb = next((word for word in reversed(item.raw.casefold().split()) if word not in TO_WHOM), "")
    return not HELPERS.isdisjoint(words) or verb.endswith(PAST)
