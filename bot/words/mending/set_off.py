"""What is set off between two pauses and only joins: "Otto's sheet, on the other hand, is soaked"."""

from collections.abc import Sequence

from bot.words.lookup.items import Item, places, predicate

JOINS = frozenset(("but", "meanwhile"))


def without_what_is_set_off(items: Sequence[Item]) -> Sequence[Item]:
    """The items without such words, where how the one before them is, or does, comes behind them."""
    found: list[Item] = []
    end = 0
    for at in places(items, JOINS):
        if at > end + 1 and at + 2 < len(items) and _set_off(items, at):
            found.extend(items[end : at - 1])
            end = at + 2
    return [*found, *items[end:]] if end else items


def _set_off(items: Sequence[Item], at: int) -> bool:
    subject, verb = items[at - 2], items[at + 2]
    told = verb.has("is", "was", "has", "ask wearing", "wears", "needs", "stays") or predicate(verb)
    of_it = bool(subject.horses or subject.piece is not None) and not (verb.horses or verb.has("she", "it"))
    return items[at - 1].text == items[at + 1].text == "," and of_it and told
