"""How one is, between brackets behind its name: "Otto (cold), Fig (fine)"."""

from collections.abc import Sequence

from bot.words.lookup.items import Item, predicate

LONGEST = 3  # words between the brackets


def out_of_brackets(items: Sequence[Item]) -> Sequence[Item]:
    """The items without the brackets around what is only how the horse before them is."""
    gone: set[int] = set()
    for at in [at for at, item in enumerate(items) if item.text == "(" and at and items[at - 1].horses]:
        closes = next((k for k in range(at + 2, min(at + LONGEST + 2, len(items))) if items[k].text == ")"), 0)
        if closes and _only_how(items[at + 1 : closes]):
            gone |= {at, closes}
    return [item for at, item in enumerate(items) if at not in gone] if gone else items


def _only_how(words: Sequence[Item]) -> bool:
    return predicate(words[-1]) and all(i.has("very", "a little", "not", "is", "time") for i in words[:-1])
