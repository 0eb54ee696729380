"""Thoughts written without a mark between them: "rode Sparrow June is cold" tells nothing of how Sparrow is."""

from collections.abc import Sequence

from bot.words.lookup.items import PAUSE, Item, places, predicate, some_mean
from bot.words.mending.also import paused_at_also
from bot.words.mending.another import DEEDS, DONE, led, tells_of_another, told_at_once, whole_before
from bot.words.mending.meanwhile import told_meanwhile

LEADS = (
    "on", "off", "of", "in", "toward", "beside", "between", "and", "or", "but", "not", "relative", "what", "when", "if",
    "subject", "i", "said", "plan", "her", "article", "like", "compares", "with", "for another", "after", "too", "is",
    "all", "both", "except", "keep", *DONE,
)  # fmt: skip
PRONOUNS = frozenset(("la", "lo", "le", "l'", "lui"))
WHOLE = 4  # words of a thought: "I got a medal"


def paused_where_another_begins(items: Sequence[Item]) -> Sequence[Item]:
    """The items with a pause before each thought of another horse that follows a whole one without a mark."""
    items = told_meanwhile(paused_at_also(items))
    named = {at for at, item in enumerate(items) if item.horse or item.piece is not None}
    begins = named.union(places(items, DONE))
    found: list[Item] = []
    end = 0
    for at in sorted(begins):
        follows = at and not items[at - 1].mark
        if follows and any(begins_here(items, at) for begins_here in (_another, _done_to_her, _behind_a_thing)):
            found.extend((*items[end:at], PAUSE))
            end = at
    return [*found, *items[end:]] if end else items


def _another(items: Sequence[Item], at: int) -> bool:
    """Whether what begins here is told of none of those before it, of whom all is said."""
    if items[at].has("brought") and not (items[at].horse or items[at].has(*DEEDS) or led(items, at)):
        return False
    before = whole_before(items[:at])
    return bool(before) and tells_of_another(before, items, at) and not _leads_to(items, at, before)


def _behind_a_thing(items: Sequence[Item], at: int) -> bool:
    """As in "I should get a medal | Molly is rubbed": right behind a thing, what was said of no horse."""
    if at < WHOLE or not items[at].horse or not told_at_once(items, at):
        return False
    thing, before = items[at - 1], items[at - 2]
    noun = thing.known and not (thing.means or thing.capital or thing.person or thing.number is not None)
    return noun and before.has("article", "my", "some") and not before.has("she", "it", "relative", "that of")


def _done_to_her(items: Sequence[Item], at: int) -> bool:
    """As in "June is cold brought her in", "June tiene frío la metí": right behind how she is, what was done."""
    last, behind = items[at - 1], items[at + 1 : at + 2]
    how = (predicate(last) and not last.kinds("state")) or last.has("not any more")
    if not how or not items[at].has(*DONE):
        return False
    whom = some_mean(behind, "she", "her") or any(i.piece is not None and not i.piece.owners for i in behind)
    whom = whom or not PRONOUNS.isdisjoint(items[at].text.split(" "))
    return whom and bool(whole_before(items[:at]))


def _leads_to(items: Sequence[Item], at: int, before: Sequence[Item]) -> bool:
    """Whether the word before this one needs it: "in Fig's box" is no thought of Fig."""
    last = items[at - 1]
    way = last.has("inwards", "outwards")
    if items[at].horse or items[at].piece is not None:
        owns = items[at + 1 : at + 2] and items[at + 1].text == "'s"  # "in Fig's poop"
        taken_off = last.has("off") and any(i.piece is not None and i.piece.owners for i in before)
        return last.has(*LEADS) and bool(owns or not way) and not taken_off
    taken_off = last.has("off") and some_mean(before, "took", "took off")
    if last.has(*LEADS) and not (last.horses or way or taken_off):
        return True
    of_its_own = led(items, at) or any(i.piece is not None for i in items[at + 1 : at + 3])
    of_its_own = of_its_own or (items[at].has("worked") and bool(items[at + 1].horses))  # "… in his light rode Sparrow"
    return last.piece is not None and " " not in items[at].text and not of_its_own  # "couv enlevée Ulysse sec"
