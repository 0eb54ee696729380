"""What stands between a name and what is said of it: which one it is, where it stands, beside whom."""

from collections.abc import Sequence

from bot.words.lookup.items import Item, all_mean, some_mean


def behind_brackets(rest: Sequence[Item]) -> Sequence[Item]:
    """What is said behind "(the one in the far box)"."""
    if not rest or rest[0].text != "(":
        return rest
    closed = next((k for k, i in enumerate(rest) if i.text == ")"), 0)
    return rest[closed + 1 :] if closed else rest


def past_neighbour(rest: Sequence[Item]) -> Sequence[Item]:
    """What is said behind "next to Otto", ", unlike Otto,"."""
    paused = rest[:1] and rest[0].text == ","
    if not some_mean(rest[: 2 if paused else 1], "beside"):
        return rest
    other = next((k for k, i in enumerate(rest) if i.horses or (i.mark and k)), 0)
    behind = rest[other + 1 :] if other and rest[other].horses else rest
    return behind[1:] if paused and behind[:1] and behind[0].text == "," else behind


def past_where(rest: Sequence[Item]) -> Sequence[Item]:
    """As in "lune elle au pré elle grelotte": from the second pronoun on, behind where the horse stands."""
    place = next((k for k, i in enumerate(rest[:4]) if i.has("place stall", "place field")), 0)
    pronouns = [rest[0], *rest[place + 1 : place + 2]] if place else []
    again = len(pronouns) > 1 and all(i.has("she") and i.has("subject") for i in pronouns)
    return rest[place + 1 :] if again and all_mean(rest[1:place], "in", "her", "article") else rest


def strained(behind: Sequence[Item]) -> bool:
    """As in "il a froid", "elle est en sueur": a pronoun, and what only animals do."""
    she = bool(behind) and behind[0].has("she") and behind[0].has("subject")
    return she and any(i.kinds("sign") for i in behind[1:3])
