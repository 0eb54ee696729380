"""French "et" and "est", written for each other: "Orage é Réglisse mouillés", "Filou et trempé"."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.lookup.items import WETNESS, Item, places, says_how
from bot.words.named.weatherlike import clothing

AND_OR_IS = frozenset(("and", "is"))
SPELLED_SHORT = ("e", "é", "è")  # both words, to whoever writes them so
SKY = ("weather", "sky", "bare weather", "mass")
OPENS = ("polite", "and", "but")
OFTEN = ("very", "a little", "link")


def et_or_est(items: Sequence[Item]) -> list[Item]:
    """The items with each "est" between two horses an "et", and each "et" between a horse and its sign an "est"."""
    found = list(items)
    for at in places(items, AND_OR_IS):
        if not 0 < at < len(items) - 1:
            continue
        if items[at].text == "est" and _joins(items, at):
            found[at] = replace(items[at], text="et", means=frozenset({"and"}))
        elif items[at].text == "et" and _says(items, at):
            found[at] = replace(items[at], text="est", means=frozenset({"is", "helper"}))
    return found


def _joins(items: Sequence[Item], at: int) -> bool:
    """Between two horses, or before an article; where it may be "est", only if what follows is said of several."""
    several = any(_of_several(i) for i in items[at + 2 : at + 6])
    short = items[at].raw.casefold() in SPELLED_SHORT
    if items[at - 1].horses and items[at + 1].horses:
        return short or several
    worn = items[at - 1].number is not None or clothing(items[at - 1])
    if short and worn and any(map(clothing, items[at + 1 : at + 3])):
        return True  # "sa 150 é l'imper"
    return short and several and items[at + 1].has("article", "her")  # "la verte é la grise sont mouillées"


def _of_several(item: Item) -> bool:
    return item.text in ("sont", "ont") or (says_how(item.means) and item.raw.endswith(("s", "nt")))


def _says(items: Sequence[Item], at: int) -> bool:
    """Behind a horse or a pronoun that opens what is said, and before a sign that no weather shows."""
    named, before = items[at - 1], items[at - 2] if at > 1 else None
    opens = before is None or before.mark or before.has(*OPENS)
    whose = (named.horses and not named.has(*SKY)) or (named.has("she") and named.has("subject"))
    then = next((i for i in items[at + 1 : at + 4] if not i.has(*OFTEN) or says_how(i.means)), None)
    told = then is not None and (bool(then.kinds("sign")) or (then.has(*WETNESS) and not then.has("dry")))
    return bool(opens and whose and told)
