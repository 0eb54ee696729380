"""Who is named when all is said: "cold but not shivering Otto" is of Otto, "cold Otto, fine Fig" is of each his own.

Of pieces as of horses: "wet and torn, Otto's sheet".
"""

from collections.abc import Iterator, Sequence

from bot.words.lookup.items import PAUSE, Item, all_mean, predicate
from bot.words.thoughts.hers import PLACES

ENDS = ".!?…\n"
PAUSES = (",", ";", ":", "-", "–", "—")
JOINS = ("but", "and", "meanwhile")
SMALL = ("not", "not behind", *JOINS, "very", "a little", "link", "is", "she", "time", "as of now", "polite")
WHERE = (*PLACES, "her", "inwards", "outwards", "in", "on", "article")
BEHIND = ("time", "as of now", "polite")


def named_first(items: Sequence[Item]) -> Sequence[Item]:
    """The items with the names in front of all that is told of them, where more than one thing is."""
    ends = [*(at for at, item in enumerate(items) if item.text in ENDS), len(items)]
    found, last = list[Item](), 0
    for start, end in zip((0, *(at + 1 for at in ends)), ends, strict=False):
        if _opens_with_how(items, start, end):
            found += [*items[last:start], *_reordered(items[start:end])]
            last = end
    return [*found, *items[last:]] if found else items


def _opens_with_how(items: Sequence[Item], start: int, end: int) -> bool:
    """Whether a sentence begins with how somebody is, and goes on with whom."""
    at = start
    while at < end and not _named(items[at]) and _of_how(items[at]):
        at += 1
    return start < at < end and _named(items[at])


def _reordered(sentence: Sequence[Item]) -> Sequence[Item]:
    """A sentence with its names first, where nothing else is in it but how they are."""
    *told, (behind, _) = _told(sentence)
    if not all(_tells_how(how) for how, _ in told):
        return sentence
    if len(told) > 1 and _nothing_more(behind) and all(not _pause(how[-1]) for how, _ in told):
        return [item for how, names in told for item in (*names, *_unjoined(how), PAUSE)] + list(behind)
    how, names = told[0]
    if len(told) == 1 and _only_how(behind) and _of_them(how, behind):
        return [*names, *(how[:-1] if _pause(how[-1]) else how), *behind]
    return sentence


def _told(sentence: Sequence[Item]) -> Iterator[tuple[Sequence[Item], Sequence[Item]]]:
    """What is said, and the names behind it, in turn; at last what is said behind all of them."""
    start = at = 0
    while at < len(sentence):
        end = at
        while end < len(sentence) and (_alike(sentence, at, end) or (end > at and _listed(sentence, at, end))):
            end += 1
        if end > at:
            yield sentence[start:at], sentence[at:end]
            start = end
        at = max(end, at + 1)
    yield sentence[start:], ()


def _alike(sentence: Sequence[Item], first: int, at: int) -> bool:
    """Names a horse or a piece, as the first of the list does."""
    return _named(sentence[at]) and (sentence[at].piece is None) == (sentence[first].piece is None)


def _listed(sentence: Sequence[Item], first: int, at: int) -> bool:
    """Stands between two of a list: "Otto, Fig and Clem"."""
    joins = sentence[at].text == "," or sentence[at].has("and")
    return joins and at + 1 < len(sentence) and _alike(sentence, first, at + 1)


def _named(item: Item) -> bool:
    """Names a horse or a piece."""
    return bool(item.horses) or item.piece is not None


def _how(item: Item) -> bool:
    """Says how a horse or a piece is, that a horse wears nothing, or where it stands."""
    return predicate(item) or item.has("bare", *PLACES)


def _pause(item: Item) -> bool:
    return item.text in PAUSES


def _joining(item: Item) -> bool:
    return item.has(*JOINS)


def _tells_how(said: Sequence[Item]) -> bool:
    """As in "and not cold"; not as in "cold and"."""
    return _only_how(said) and any(map(_how, said)) and not _joining(said[-1])


def _only_how(said: Sequence[Item]) -> bool:
    return all(map(_of_how, said))


def _of_how(item: Item) -> bool:
    """Says how or where a horse is, or stands among such words."""
    return _how(item) or _pause(item) or item.has(*SMALL, *WHERE)


def _nothing_more(behind: Sequence[Item]) -> bool:
    return all_mean((i for i in behind if not i.mark), *BEHIND)


def _unjoined(how: Sequence[Item]) -> Sequence[Item]:
    """Without what joins it to the one before: ", and"."""
    while _pause(how[0]) or _joining(how[0]):
        how = how[1:]
    return how


def _of_them(how: Sequence[Item], behind: Sequence[Item]) -> bool:
    """As in "cold, not shivering Otto", "cold Otto but not shivering"; not "cold but not Otto"."""
    if behind and behind[0].has("but"):
        return _how(how[-1])
    joined = max((at for at, item in enumerate(how) if item.has("but", "and")), default=0)
    return sum(map(_how, how)) > 1 and any(map(_how, how[joined:])) and _nothing_more(behind)
