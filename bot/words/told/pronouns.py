"""Which of several horses "he" or "she" is: Spanish names tell by how they end, any other pair is asked about."""

from collections.abc import Sequence

from bot.words.lookup.gender import only_one_ending
from bot.words.lookup.items import Item

SHOWN = {"el": "masculine", "ella": "feminine"}  # "él está seco, ella tiene frío" of Palomo and Paloma
OF_ONE = ("he", "she", "el", "ella", "il", "elle")


def of_one(items: Sequence[Item], at: int) -> bool:
    """Whether the word at this place is a pronoun for one horse; "el" is one only before "está"."""
    item = items[at]
    if not item.has("she") or item.text not in OF_ONE:
        return False
    return not item.has("article") or (at + 1 < len(items) and items[at + 1].has("is", "was"))


def the_one(pronoun: Item, horses: Sequence[Item]) -> Sequence[Item]:
    """The horse that the pronoun is for; of several that it may be for one that is not sure."""
    names = tuple(dict.fromkeys(name for item in horses for name in item.horses))
    if not names[1:]:
        return horses
    if name := only_one_ending(SHOWN.get(pronoun.text, ""), names):
        return [Item(pronoun.text, pronoun.raw, horses=(name,), exact=False)]
    return [Item(pronoun.text, pronoun.raw, horses=names, sure=False, exact=False)]
