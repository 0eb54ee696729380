"""Words that are clothes only where a horse wears them: "la chaqueta de Moro", "box mise"."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.items import Item, places

PERHAPS = frozenset(("jacket", "place stall"))


def with_jackets(items: list[Item]) -> list[Item]:
    """The items where "la chaqueta de Moro", "Moro's jacket" is a rug; any other is what people wear.

    And where "box mise", "la box de Lune" is what Lune wears in her stall, which itself is masculine.
    """
    found = list(items)
    for at in places(items, PERHAPS):
        if items[at].text == "box" and items[at].has("place stall") and _worn_in_it(items, at):
            found[at] = replace(items[at], means=frozenset({"kind stable"}))
        if items[at].has("jacket") and _of_a_horse(items, at):
            found[at] = replace(items[at], means=frozenset({"rug"}))
    return found


def _of_a_horse(items: Sequence[Item], at: int) -> bool:
    behind = [i for i in items[at + 1 : at + 4] if i.horses or not i.has("article") or i.has("of")]
    whose = at > 1 and items[at - 1].text == "'s" and bool(items[at - 2].horses)
    return whose or (len(behind) > 1 and behind[0].has("of") and bool(behind[1].horses))


def _worn_in_it(items: Sequence[Item], at: int) -> bool:
    """As in "box mise", "sa box est trempée", "la box de Lune": French tells by the article or the participle."""
    before = items[at - 1].text if at else ""
    behind = next((i for i in items[at + 1 : at + 3] if not i.has("is")), items[at])
    moved = behind.has("put on", "took off") and behind.text.split()[-1].endswith(("mise", "ee", "ees"))
    return before in ("la", "sa") or (moved and before not in ("en", "le", "son", "au"))
