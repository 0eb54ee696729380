"""Two horses of which one does something to the other, and what is told of one of them: "Otto kicked Fig, he's hot"."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from bot.words.lookup.gender import only_one_ending, shown_gender
from bot.words.lookup.items import Item, some_mean
from bot.words.thoughts.clauses import Clause

LISTING = ("article", "toward", "too", "both", "or", "neither", "not", "time")
SAME_SUBJECT = ("is", "was", "has", "est", "etait", "a")  # behind "and", of whoever did it: "and is shaking"
GOES_ON = ("and", "but", "she")


def does_something_to(items: Sequence[Item], at: int) -> Sequence[Item]:
    """Who stands before the horse at this place, with a verb and no pause between: "Otto kicked (Fig)"."""
    if not at:
        return ()
    before = next((k for k in range(at - 1, -1, -1) if items[k].horses or items[k].has("no name")), None)
    if before is None:
        return ()
    between = items[before + 1 : at]
    a_verb = any(not i.has(*LISTING) for i in between)
    pause = any(i.mark or (i.has("and") and not i.has("has", "wears")) for i in between)  # not "fought with Fig"
    return items[before : before + 1] if a_verb and not pause else ()


def which_goes_on(
    items: Sequence[Item], at: int, met: Sequence[Item], others: Sequence[Item], spelled: Mapping[str, str]
) -> Sequence[Item]:
    """Of whom the sign at this place is told in "Otto kicked Fig and he is shaking": of either, for all one knows."""
    last = max((k for k in range(at) if items[k] in met), default=at)
    goes_on = next((k for k in range(last + 1, at) if items[k].mark or items[k].has(*GOES_ON)), None)
    if goes_on is None or some_mean(items[goes_on : goes_on + 2], "relative"):
        return met  # "Lune s'est collée contre Perle, qui tremble"
    if items[goes_on].has("and") and items[goes_on + 1].text in SAME_SUBJECT:
        return _named(others, spelled)
    return either((*_named(others, spelled), *met), items[at])


def goes_on_of_either(
    clause: Clause, at: int, met: Sequence[Item], others: Sequence[Item], spelled: Mapping[str, str]
) -> Sequence[Item]:
    """The same where a clause of its own tells it: "(Trueno está con Lola,) está sudado"."""
    opens = next((i for i in clause.items if not i.mark), clause.items[0])
    if opens.has("relative"):
        return met
    if clause.joined == "and" and opens.text in SAME_SUBJECT:
        return _named(others, spelled)
    return either((*_named(others, spelled), *met), clause.items[at])


def _named(others: Sequence[Item], spelled: Mapping[str, str]) -> Sequence[Item]:
    """Those that are horses, or words that a horse is called by as well: "zafiro mordió a Lola"."""
    return [i if i.horses else replace(i, horses=(spelled[i.text],)) for i in others if i.horses or i.text in spelled]


def either(horses: Sequence[Item], how: Item) -> Sequence[Item]:
    """One of these horses: the only one whose Spanish name ends as the word agrees, else it is not sure which."""
    names = tuple(dict.fromkeys(name for item in horses for name in item.horses))
    if name := only_one_ending(shown_gender(how), names):
        return [Item(name, name, horses=(name,), exact=False)]
    raw = " / ".join(item.raw for item in horses)
    return [Item(raw, raw, horses=names, sure=False, exact=False, known=False)]
