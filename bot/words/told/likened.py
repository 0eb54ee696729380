"""One likened to another: "colder than Max", "sweating like Banjo": of the other nothing is told."""

from collections.abc import Sequence

from bot.words.lookup.items import Item

THAN = " than"  # what compares


def more_than_another(items: Sequence[Item], at: int) -> bool:
    """As in "Lune a plus chaud que Max", "Pip is colder than Max": neither is said to be so or not."""
    behind = items[at + 1 : at + 4]
    if items[at].text.endswith(THAN) and not items[at].kinds("sign"):
        return bool(behind) and bool(behind[0].horses)
    than = len(behind) > 1 and behind[0].has("what") and any(i.horses or i.piece for i in behind[1:])
    return than and at > 0 and items[at - 1].text in ("plus", "moins", "mas", "menos")


def as_another_does(items: Sequence[Item], at: int) -> bool:
    """As in "sweating like Banjo after stacking all that hay", of whoever writes."""
    named = len(items) > at + 2 and items[at + 1].has("compares") and bool(items[at + 2].horses)
    return named or (len(items) > at + 1 and items[at].text.endswith(" like") and bool(items[at + 1].horses))
