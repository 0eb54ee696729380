"""Words that are clothes only where a horse wears them: "la chaqueta de Moro", "box mise"."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.lookup.items import NOTHING, Item, places, some_mean
from bot.words.named.weatherlike import clothing

WHOSE = ("article", "her")
ENDS = ("time", "she", "and", "but", "polite", "too", "again", "hour")
REACH = 12  # words back to the piece that came off for it

PERHAPS = frozenset(("jacket", "place stall"))


def with_jackets(items: Sequence[Item]) -> list[Item]:
    """The items where "la chaqueta de Moro", "Moro's jacket" is a rug; any other is what people wear.

    And where "box mise", "la box de Lune" is what Lune wears in her stall, which itself is masculine; so is "stable"
    where it is put on, taken off, worn or torn.
    """
    found = list(items)
    for at in places(items, PERHAPS):
        feminine = items[at].text == "box" and items[at].has("place stall") and _worn_in_it(items, at)
        rug = items[at].has("stall or rug")
        if feminine or (rug and (_moved(items, at) or _worn(items, at) or _beside_another(items, at))):
            found[at] = replace(items[at], means=frozenset({"kind stable"}))
        if items[at].has("jacket") and _of_a_horse(items, at):
            found[at] = replace(items[at], means=frozenset({"rug"}))
    return found


def _of_a_horse(items: Sequence[Item], at: int) -> bool:
    behind = [i for i in items[at + 1 : at + 4] if i.horses or not i.has("article") or i.has("of")]
    whose = at > 1 and items[at - 1].text == "'s" and bool(items[at - 2].horses)
    return whose or (len(behind) > 1 and behind[0].has("of") and bool(behind[1].horses))


def _worn_in_it(items: Sequence[Item], at: int) -> bool:
    """As in "box mise", "sa box est trempée", "la box de Lune": French tells by the article or the participle."""
    before = items[at - 1].text if at else ""
    behind = next((i for i in items[at + 1 : at + 3] if not i.has("is")), items[at])
    moved = behind.has("put on", "took off") and behind.text.split()[-1].endswith(("mise", "ee", "ees"))
    return before in ("la", "sa") or (moved and before not in ("en", "le", "son", "au"))


def _moved(items: Sequence[Item], at: int) -> bool:
    """As in "has his stable on", "stable off", "took off her stable"; not "mucked out his stable on Monday"."""
    is_so = any(i.has("is") and not i.has("has") for i in items[at + 1 : at + 2])
    behind, then = [*items[at + 1 + is_so : at + 3 + is_so], NOTHING, NOTHING][:2]
    if behind.has("on", "off") and not behind.has("wears"):
        return _ends(then) and not _past_owner(items, at).has("in")
    before = _past_owner(items, at)
    return _ends(behind) and before.has("took off", "put on", "state torn") and not before.has("brought")


def _ends(then: Item) -> bool:
    """No noun that it describes, and no place: "stable door", "the stable on the left"."""
    return then is NOTHING or then.mark or bool(then.horses) or then.has(*ENDS)


def _worn(items: Sequence[Item], at: int) -> bool:
    """As in "wearing his stable", "in only her stable", "in his liner and stable", "his stable is in the wash"."""
    verb, then = [*items[at + 1 : at + 3], NOTHING, NOTHING][:2]
    if verb.kinds("state") or (verb.has("is", "has") and (then.kinds("state") or then.has("some", "strap"))):
        return some_mean(items[at + 1 : at + 4], "state washing", "state torn")
    before = _past_owner(items, at)
    if before.has("wears", "only"):
        return not (before.has("in", "inwards", "and") or before.text.endswith(" in"))  # "now in her stable"
    if before.has("over") and before.has("under"):
        return _ends(verb) or verb.has("is")  # "sweating under his stable"
    dressed = any(clothing(i) for i in items[max(0, at - REACH) : at])
    return dressed and (before.has("for another", "over") or (before.has("and") and clothing(items[at - 2])))


def _beside_another(items: Sequence[Item], at: int) -> bool:
    """As in "Sorrel: stable + heavy", "Sorrel has his stable under the heavy"; not "in his stable and heavy"."""
    behind = [i for i in items[at + 1 : at + 4] if not i.has(*WHOSE) or i.has("and")]
    joins, other = [*behind, NOTHING, NOTHING][:2]
    before = _past_owner(items, at)
    heads = before is NOTHING or before.text == ":" or (before.has("has") and not before.has("brought"))
    listed = joins.has("and") or joins.text in ("under", "over") or (before.text == ":" and joins.text == ",")
    return heads and listed and clothing(other)


def _past_owner(items: Sequence[Item], at: int) -> Item:
    """The word before whose it is: "took off | Otto's stable"."""
    while at and (items[at - 1].has(*WHOSE) or items[at - 1].text == "'s" or items[at - 1].horses):
        at -= 1
    return items[at - 1] if at else NOTHING
