"""What stands between quotation marks is a song, a caption, somebody's homework: nothing of it is told of now."""

from collections.abc import Sequence

from bot.words.lookup.items import Item, predicate, some_mean

CLOSES = {"«": "»", "“": "”", '"': '"', "„": "“"}
REACH = 60  # words and marks between the two
QUOTED = Item("…", "…", means=frozenset({"quoted"}))


def without_quotations(items: Sequence[Item]) -> Sequence[Item]:
    """The items with each quoted statement drawn into one; what somebody is quoted to say of a horse stays."""
    found: list[Item] = []
    end = 0
    for at in [at for at, item in enumerate(items) if item.text in CLOSES]:
        last = _closed(items, at) if at >= end else 0
        whole = at == 0 and last == len(items) - 1
        if last and not whole and _states(items[at + 1 : last]) and not some_mean(items[max(0, at - 2) : at], "tells"):
            found.extend((*items[end:at], QUOTED))
            end = last + 1
    return [*found, *items[end:]] if end else items


def _closed(items: Sequence[Item], at: int) -> int:
    """Where the quotation ends that opens here; 0 where none does."""
    closing = CLOSES[items[at].text]
    return next((k for k in range(at + 1, min(len(items), at + REACH)) if items[k].text == closing), 0)


def _states(quoted: Sequence[Item]) -> bool:
    """Whether more than a name is quoted: how something is, or several words with a horse among them."""
    several = sum(not i.mark for i in quoted) > 1
    return several and any(predicate(i) or i.horses for i in quoted)
