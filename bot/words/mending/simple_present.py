"""English "Otto sweats" of one who sweats now, as people say it whose own language has no "is sweating"."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.lookup.items import NOTHING, Item, places

VERBS = {"sweats": frozenset(("sign sweating",)), "shivers": frozenset(("sign shivering",))}
BEHIND = ("very", "and", "but", "time", "as of now")
PLACED = ("place stall", "place field")
BEFORE = ("if", "when", "habit", "question", "meanwhile", "relative", "kin", "my")
NEAR = 5  # words before and behind


def sweats_now(items: Sequence[Item]) -> Sequence[Item]:
    """The items with "sweats" as what the horse before it does, where nothing supposes it or tells how often."""
    found = list(items)
    for verb, sign in VERBS.items():
        for at in places(items, frozenset((verb,))):
            if _now(items, at):
                found[at] = replace(items[at], means=sign)
    return found


def _now(items: Sequence[Item], at: int) -> bool:
    before, behind = items[max(0, at - NEAR) : at], items[at + 1 : at + 1 + NEAR]
    named = next(
        (i for i in reversed(before) if not (i.has("in", "article", "her", *PLACED) or i.text == "'s")), NOTHING
    )
    then = behind[0] if behind else NOTHING
    ends = then is NOTHING or then.mark or then.has(*BEHIND)
    there = any(i.has(*PLACED) or i.piece is not None for i in behind[:3]) and not any(i.mark for i in behind[:2])
    return named.horse and (ends or there) and not any(i.has(*BEFORE) for i in (*before, *behind) if not i.horses)
