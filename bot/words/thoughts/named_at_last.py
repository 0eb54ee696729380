"""Horses named at the end of what is told of them: "no longer shivering, Pip", "el que está mojado es Moro"."""

from collections.abc import Sequence
from itertools import takewhile

from bot.words.lookup.items import Item, all_mean, predicate, some_mean
from bot.words.thoughts.clauses import only_small, soft


def named_last(items: Sequence[Item], at: int) -> bool:
    """As in "no longer shivering, Pip", "sweaty after the lesson, Ned": small words, then the horse, and no more."""
    if not items[at].kinds("sign"):
        return False
    after = next((k for k in range(at + 1, len(items)) if items[k].horses), None)
    between = items[at + 1 : after]
    if after is None or not all(soft(i) or i.has("worked") or predicate(i) for i in between):
        return False
    if some_mean(between, "work", "worked") and not items[after - 1].mark:
        return False  # "too cold to ride Pip", "sweaty after riding Pip": who sweats is not said
    return all(i.horses or only_small(i) for i in items[after + 1 :])


def came_so(items: Sequence[Item], at: int) -> bool:
    """As in "soaking wet, Ned came in from the field": how the one came who is named behind the pause."""
    opens = all_mean(items[:at], "polite", "very")
    if not opens or at + 3 >= len(items) or items[at + 1].text != "," or not items[at + 2].horses:
        return False
    came, *rest = items[at + 3 :]
    from_there = came.has("after") or some_mean(rest[:1], "after")
    if not (from_there or (came.has("brought in", "fetched") and came.has("is"))) or came.has("plan", "not"):
        return False
    return all(only_small(i) or i.has("inwards", "after") for i in rest)


def told_at_last(items: Sequence[Item], at: int) -> bool:
    """Whether the horse that is so is named at the end, behind a pronoun or "the one who"."""
    return at + 1 < len(items) and (_taken_up_at_last(items, at) or _picked_out_behind(items, at))


def _picked_out_behind(items: Sequence[Item], at: int) -> bool:
    """As in "el que está mojado es Moro", "celui qui est trempé c'est Filou": who it is that is so, told at last."""
    before = items[:at]
    the_one = bool(before) and all_mean(before, "article", "polite", "but")  # "el mojado es Moro"
    if not (the_one or some_mean(before, "relative")) or any(i.horses for i in before):
        return False
    behind = [i for i in items[at + 1 :] if not i.mark]
    said = [i for i in behind if not i.has("is", "it", "article", "i mean", "time", "polite") or i.horses]
    return len(behind) > 1 and behind[0].has("is", "it") and len(said) == 1 and said[0].horse


def picks_out(rest: Sequence[Item]) -> bool:
    """As in ", la que tiembla es Canela", ", es Canela la que tiembla", ", it was Ned that was cold": who it is."""
    if rest and rest[0].horses:
        return False
    said = list(takewhile(lambda i: not i.mark, rest))
    first = next((k for k, i in enumerate(said) if i.horses), 0)
    is_it = first > 0 and all(i.has("it", "is", "was") and not i.has("not") for i in said[:first])
    if is_it and some_mean(said[first + 1 : first + 2], "relative", "question", "is"):
        return True
    how = next((k for k, i in enumerate(said) if predicate(i)), 0)
    return how > 0 and _picked_out_behind(said, how)


def _taken_up_at_last(items: Sequence[Item], at: int) -> bool:
    """As in "elle est trempée, la Réglisse", "elle va bien la Brume": a pronoun, and whom it means at the end."""
    if not items[0].has("she"):
        return False
    behind = [i for i in items[at + 1 :] if not (i.mark or (i.has("article", "time") and not i.horses))]
    return len(behind) == 1 and bool(behind[0].horses) and not any(i.horses for i in items[:at])
