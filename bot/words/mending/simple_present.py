"""English "Otto sweats" of one who sweats now, as people say it whose own language has no "is sweating"."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.lookup.items import NOTHING, Item, places
from bot.words.thoughts.hers import PLACES

VERBS = {"sweats": frozenset(("sign sweating",)), "shivers": frozenset(("sign shivering",))}
BEHIND = ("very", "and", "but", "time", "as of now")
BEFORE = ("if", "when", "habit", "question", "meanwhile", "relative", "kin", "my")
NEAR = 5  # words before and behind


def sweats_now(items: Sequence[Item]) -> Sequence[Item]:
    """The items with "sweats" as what the horse before it does, where nothing supposes it or tells how often."""
    now = {at: sign for verb, sign in VERBS.items() for at in places(items, frozenset((verb,))) if _now(items, at)}
    return [replace(item, means=now.get(at, item.means)) for at, item in enumerate(items)] if now else items


def _now(items: Sequence[Item], at: int) -> bool:
    before, behind = items[max(0, at - NEAR) : at], items[at + 1 : at + 1 + NEAR]
    named = next(
        (i for i in reversed(before) if not (i.has("in", "article", "her", *PLACES) or i.text == "'s")), NOTHING
    )
    then = behind[0] if behind else NOTHING
    ends = then is NOTHING or then.mark or then.has(*BEHIND)
    there = any(i.has(*PLACES) or i.piece is not None for i in behind[:3]) and not any(i.mark for i in behind[:2])
    return named.horse and (ends or there) and not any(i.has(*BEFORE) for i in (*before, *behind) if not i.horses)
