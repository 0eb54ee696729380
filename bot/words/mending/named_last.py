"""Who is named when all is said: "cold but not shivering Otto" is of Otto, the cold as well."""

from collections.abc import Sequence

from bot.words.lookup.items import Item, all_mean, of_a_horse

ENDS = ".!?;…\n"
PAUSES = (",", ":", "-", "–", "—")
SMALL = ("not", "not behind", "but", "and", "very", "a little", "link", "is", "she", "time", "as of now", "polite")
BEHIND = ("time", "as of now", "polite")


def named_first(items: Sequence[Item]) -> Sequence[Item]:
    """The items with the names in front of all that is told of them, where more than one thing is."""
    if sum(map(_how, items)) < 2 or items[0].horses:
        return items
    ends = [at for at, item in enumerate(items) if item.text in ENDS]
    starts = [0, *(at + 1 for at in ends)]
    sentences = zip(starts, [*ends, len(items)], strict=True)
    return [item for start, end in sentences for item in (*_reordered(items[start:end]), *items[end : end + 1])]


def _reordered(sentence: Sequence[Item]) -> Sequence[Item]:
    """A sentence with its names first, where nothing else is in it but how they are."""
    named = [at for at, item in enumerate(sentence) if item.horses]
    if not named or not named[0]:
        return sentence
    before, names, behind = sentence[: named[0]], sentence[named[0] : named[-1] + 1], sentence[named[-1] + 1 :]
    listed = all(i.horses or i.text == "," or i.has("and") for i in names)
    if listed and _only_how(before) and _only_how(behind) and _told_of_them(before, behind):
        return [*names, *(before[:-1] if before[-1].text in PAUSES else before), *behind]
    return sentence


def _how(item: Item) -> bool:
    """Says how a horse is, or that it wears nothing."""
    return of_a_horse(item) or item.has("bare")


def _only_how(said: Sequence[Item]) -> bool:
    return all(_how(i) or i.text in PAUSES or i.has(*SMALL) for i in said)


def _told_of_them(before: Sequence[Item], behind: Sequence[Item]) -> bool:
    """As in "cold, not shivering Otto", "cold Otto but not shivering"; not "cold but not Otto"."""
    last = before[-2] if before[-1].text in PAUSES and len(before) > 1 else before[-1]
    if behind and behind[0].has("but"):
        return _how(last)
    joined = max((at for at, i in enumerate(before) if i.has("but", "and")), default=0)
    told = sum(map(_how, before)) > 1 and any(map(_how, before[joined:]))
    return told and not last.has("but", "and") and all_mean((i for i in behind if not i.mark), *BEHIND)
