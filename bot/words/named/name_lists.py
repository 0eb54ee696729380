"""Names in a list, or in turns with what is said of each: one that is surely a name is evidence for the next."""

from collections.abc import Collection, Sequence

from bot.words.lookup.items import Item, all_mean, predicate, some_mean
from bot.words.named.told_apart import describes, only_a_horse, said_how, told_apart
from bot.words.named.weatherlike import SKY
from bot.words.thoughts.sentences import REACH
from bot.words.thoughts.under_heading import NEW_LINE, heads, marked, parts

LIST_GAP = 4  # commas and "and"s that may stand between two names of a list


def one_of_list(items: Sequence[Item], named: Sequence[bool], at: int) -> bool:
    """Whether this word stands in a list or a row with words that are names. named: those known to be so far."""
    if _one_thing(items, at) or _more_weather(items, at):
        return False
    if _between_names(items, named, at):
        return True
    joined = any(named[k] or _two_names(items, at, k) or _either(items, at, k) for k in _neighbours(items, at))
    return joined or _in_row(items, named, at)


def opening_lines(items: Sequence[Item]) -> Collection[int]:
    """Where names open the lines of a list under a heading that tells something: "Sin manta: / - Moro / - Canela"."""
    breaks = marked(items, "\n")
    if not breaks:
        return ()
    found: list[int] = []
    heading = False
    first = 0
    for line in parts([*items, NEW_LINE], breaks):
        opens = next((k for k, i in enumerate(line) if not (i.mark or i.number is not None)), 0)
        if heading and line[opens].horses and line[opens + 1].mark:
            found.append(first + opens)
        elif opens or not line[0].mark:
            heading = heads([i for i in line if not i.mark])
        first += len(line)
    return found


def _either(items: Sequence[Item], one: int, other: int) -> bool:
    """As in "no sé si es canela o tormenta la que está tiritando": neither spice nor storm does."""
    first, last = sorted((one, other))
    behind = items[last + 1 : last + 3]
    moved = bool(behind) and behind[0].has("turned out", "brought in") and (len(behind) == 1 or behind[1].mark)
    if moved or (behind and behind[0].has("both")):
        return True  # "lady n thunder both cold", "ruby n storm turned out"
    parted = some_mean(items[first:last], "or")
    return parted and some_mean(items[last + 1 :], "sign shivering", "sign sweating")


def _between_names(items: Sequence[Item], named: Sequence[bool], at: int) -> bool:
    """As in "listos capu niebla y pinta": right behind a name, and joined to another."""
    joined = at + 2 < len(items) and (items[at + 1].has("and") or items[at + 1].text == ",") and items[at + 2].horses
    return bool(joined) and at > 0 and bool(items[at - 1].horses) and named[at - 1] and not items[at].has("weekday")


def _more_weather(items: Sequence[Item], at: int) -> bool:
    """As in "its 45 and sunny and Gus got a clip": the second half of what the sky does."""
    before = items[at - 2] if at > 1 and items[at - 1].has("and") else None
    sky = items[at].has("weather", "sky", "bare weather")
    return sky and before is not None and not before.horses and (before.number is not None or before.has(*SKY))


def _one_thing(items: Sequence[Item], at: int) -> bool:
    """Told apart from a name; but "el trueno y la gitana" are two of one kind."""
    return told_apart(items, at) and not (at and items[at - 1].has("article") and not items[at - 1].has("some", "of"))


def _neighbours(items: Sequence[Item], at: int) -> list[int]:
    """The places of names joined to this one by commas and "and"."""
    found = []
    for step in (1, -1):
        k = at + step
        k -= 1 if step < 0 and at and _only_article(items[at - 1]) else 0
        joined = False
        while 0 <= k < len(items) and abs(k - at) < LIST_GAP and _joins(items[k]):
            k, joined = k + step, True
        k += 1 if step > 0 and joined and k < len(items) and _only_article(items[k]) else 0
        k += 1 if step > 0 and joined and k < len(items) and _fond_word(items[k]) else 0
        if not joined or not 0 <= k < len(items) or not items[k].horses:
            continue
        if items[k].exact or items[k].sure or only_a_horse(items, k):
            found.append(k)
    return found


def _joins(item: Item) -> bool:
    """As in "Pip, Ned and Otto", "ni el lucero ni el cardo"."""
    return item.has("and", "or") or item.text in ",&+/" or item.text == "ni"


def _fond_word(item: Item) -> bool:
    """As in "Brume et la petite Nono", "Ned and poor old Pip"."""
    return not item.horses and item.has("young", "any adjective", "polite") and not item.has("and")


def _only_article(item: Item) -> bool:
    toward = item.has("toward")  # "metí a Lucero y a nube"
    return not item.horses and not item.has("and") and (toward or (item.has("article") and not item.has("of")))


def _two_names(items: Sequence[Item], one: int, other: int) -> bool:
    """As in "(biscuit and penny)": two of the barn's names in a list, neither of them weather or a day."""
    pair = (items[one], items[other])
    return not any(
        told_apart(items, at) or item.has(*SKY) or describes(item) for at, item in zip((one, other), pair, strict=True)
    )


def _in_row(items: Sequence[Item], named: Sequence[bool], at: int) -> bool:
    """As in "Gus ok misty cold star fine": names and what is said of them in turns, with no other word between."""
    first = next((k for k in range(at, max(at - LIST_GAP, 0) - 1, -1) if not items[k].horses), at - LIST_GAP)
    last = next((k for k in range(at, min(at + LIST_GAP, len(items))) if not items[k].horses), at + LIST_GAP)
    if last - first > LIST_GAP:  # four names and no word between
        return any(named[max(first + 1, 0) : last])
    if _in_turn(items, named, at) or _begins_list(items, named, at):
        return True
    if at + 1 >= len(items) or not said_how(items[at + 1]):
        return False
    before = at > 1 and said_how(items[at - 1]) and named[at - 2]
    after = at + 3 < len(items) and named[at + 2] and said_how(items[at + 3])
    ends = at + 2 >= len(items) or items[at + 2].mark or bool(items[at + 2].horses)
    return after or (before and ends)


def _begins_list(items: Sequence[Item], named: Sequence[bool], at: int) -> bool:
    """As in "hi all, dolly biscuit and bo are done": right before a name that is one of a list."""
    opens = at == 0 or items[at - 1].mark or items[at - 1].has("polite")
    opens = opens or (at > 1 and items[at - 1].has("is") and items[at - 2].has("it"))  # "that's storm flo and thistle"
    if not opens or at + 3 >= len(items) or items[at].has("weekday", "mass"):
        return False
    listed = items[at + 2].has("and") or items[at + 2].text == ","
    return listed and all(named[k] and items[k].horses for k in (at + 1, at + 3))


def _in_turn(items: Sequence[Item], named: Sequence[bool], at: int) -> bool:
    """As in "Dolly and Kitty fine, storm a bit chilly": behind what is said of others, and nothing more said."""
    if not (at > 2 and items[at - 1].text == "," and not items[at].has("mass", "weekday")):
        return False
    rest = items[at + 1 : at + 4]
    how = next((k for k, i in enumerate(rest) if predicate(i)), 0)
    small = how and all_mean(rest[:how], "a little", "very")
    ends = how + 1 >= len(items[at + 1 :]) or (how + 1 < len(rest) and rest[how + 1].mark)
    others = any(named[k] and items[k].horses for k in range(max(0, at - REACH), at - 1)) and any(
        map(said_how, items[:at])
    )
    return bool(small) and ends and others
