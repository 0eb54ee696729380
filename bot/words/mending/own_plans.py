"""What the speaker is about to do: Spanish "monto yo a Candela", which thumbs write as they write "montó"."""

from bisect import bisect, bisect_left
from collections.abc import Sequence
from dataclasses import replace
from itertools import takewhile

from bot.words.lookup.items import NOTHING, Item
from bot.words.lookup.lexicon import VERBS, Lexicon

ENDS = ".!?;…\n"
REACH = 6  # words behind the verb in which somebody else may be named who did it
PRONOUNS = ("ya", "me", "te", "se", "le", "les", "la", "lo", "las", "los")  # stand before the verb
IT = PRONOUNS[6:]
OF_SPEAKER = ("yo", "me", "te", "nos", "os")
DOERS = frozenset(("i", "visitor", "my", "everyone", "all horses", "subject"))


def without_own_plans(items: Sequence[Item], lexicon: Lexicon) -> Sequence[Item]:
    """As in "esta tarde monto yo a Candela", "a las seis saco a Moro": a plan where nobody else can have done it.

    Not "Toño monto a Candela", "Moro trabajo una hora", which lack an accent.
    """
    verbs = [k for k, i in enumerate(items) if i.text in lexicon.past and "ó" not in i.raw.casefold()]
    if not verbs:
        return items
    found = list(items)
    ends = [at for at, item in enumerate(items) if item.text in ENDS]
    doers = [at for at, item in enumerate(items) if (item.person or not DOERS.isdisjoint(item.means)) and _a_doer(item)]
    horses = [at for at, item in enumerate(items) if item.horses and _stands_bare(items, at)]
    for at in verbs:
        first = ends[bisect(ends, at) - 1] if ends and ends[0] < at else 0
        somebody, horse = _among(doers, first, at), _among(horses, first, at)  # before it, who may have done it
        pronouns = list(takewhile(PRONOUNS.__contains__, items[at].text.split()))
        another = somebody or _of_itself(pronouns) or (horse and not pronouns) or _done_by_another(items, at)
        if not another or any(i.text == "yo" for i in items[max(0, at - 1) : at + 2]):
            found[at] = _about_to(items, at)
    return found


def _among(places: Sequence[int], first: int, end: int) -> bool:
    """Whether one of these places lies from the first on and before the end."""
    return bisect_left(places, first) < bisect_left(places, end)


def _about_to(items: Sequence[Item], at: int) -> Item:
    """The verb as a plan; what else it means where it is that: "trabajo duro", "llevo un rato mirando a Moro"."""
    left = items[at].means - set(VERBS) - {"stripped"}
    behind = [i for i in items[at + 1 : at + 4] if i.horses or not i.has("article") or i.has("toward")]
    to_a_horse = len(behind) > 1 and behind[0].has("toward") and bool(behind[1].horses)
    plan = not left or (to_a_horse and not items[at].has("work"))
    return replace(items[at], means=left | {"plan"} if plan else left)


def _of_itself(pronouns: Sequence[str]) -> bool:
    """As in "se quito la manta", "se le volo"; "se la quito" may be the speaker's."""
    return "se" in pronouns and pronouns[-1] not in IT


def _done_by_another(items: Sequence[Item], at: int) -> bool:
    """As in "monto Toño a Brisa", "entro Duque", "monto la niña": who did it stands behind the verb."""
    behind = list(takewhile(lambda i: not (i.mark or i.has("and", "but")), items[at + 1 : at + 1 + REACH]))
    thing = next((i for i in behind if not i.has("article")), NOTHING)
    noun = len(behind) > 1 and behind[0].has("article") and not (thing.means or thing.piece or thing.horses)
    return noun or any(_a_doer(i) or _stands_bare(items, k) for k, i in enumerate(behind, at + 1))


def _stands_bare(items: Sequence[Item], at: int) -> bool:
    """A horse to which nothing is said to be done: no "a" before it, nor a list that "a" opens."""
    before = items[at - 1] if at else NOTHING
    done_to = before.has("toward", "of", "in", "and") or before.text.endswith((" a", " al", " con"))
    return bool(items[at].horses) and not done_to


def _a_doer(item: Item) -> bool:
    """Somebody, or everyone; not the speaker."""
    return (item.person or item.has(*DOERS)) and item.text not in OF_SPEAKER
