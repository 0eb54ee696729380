"""Words of what is to come, beside what was done: "j'ai rentré Lune tout à l'heure", "luego metí a Luna"."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import takewhile

from bot.words.lookup.items import Item, places, some_mean
from bot.words.mending.another import DONE
from bot.words.thoughts.sentences import ENDS

TO_COME = frozenset(("ahead", "plan"))
MAY_BE_OVER = frozenset(("tout a l' heure", "luego", "al rato", "mas tarde", "later", "later on"))
HELPERS = frozenset(("he", "hemos", "ha", "han", "ai", "j'", "avons", "have", "had"))
WE = "on a "  # "on a rentré", not "put on a sheet"
TO_WHOM = ("a", "al", "la", "le", "lo", "les", "las", "los")
PAST = ("é", "í", "ti", "puse", "brought", "took", "turned", "changed", "rode")  # how a verb ends that is over
REACH = 8  # words on either side, within its clause
WHEN = frozenset(("time", "link"))
SAYS = ("said", "tells", "guess")  # whoever says so may mean what is to be done


def earlier_on(items: Sequence[Item]) -> Sequence[Item]:
    """The items with such a word telling only when, where what is told beside it is done."""
    told = {at for at in places(items, TO_COME) if items[at].text in MAY_BE_OVER and _beside_what_is_done(items, at)}
    if not told:
        return items
    return [replace(item, means=WHEN) if at in told else item for at, item in enumerate(items)]


def _beside_what_is_done(items: Sequence[Item], at: int) -> bool:
    before = takewhile(_in_its_clause, reversed(items[max(0, at - REACH) : at]))
    beside = [*before, *takewhile(_in_its_clause, items[at + 1 : at + 1 + REACH])]
    to_come = some_mean(beside, "afterwards", "keep", "if", "when", *SAYS, *TO_COME)
    deeds = [item for item in beside if item.has(*DONE)]
    return not to_come and bool(deeds) and all(map(_done, deeds))


def _in_its_clause(item: Item) -> bool:
    return item.text not in ENDS and not item.has("and")


def _done(item: Item) -> bool:
    """As in "j'ai rentré", "metí a", "brought": a deed that is over, and no request ("saque a Luna luego")."""
    words = item.text.split()
    verb = next((word for word in reversed(item.raw.casefold().split()) if word not in TO_WHOM), "")
    return not HELPERS.isdisjoint(words) or item.text.startswith(WE) or verb.endswith(PAST)
