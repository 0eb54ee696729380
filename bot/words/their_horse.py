"""A horse told by whose it is: "Walt's pony is shivering", "le cheval à Patrick". Of several it is asked."""

from collections.abc import Mapping, Sequence

from bot.words.items import Item

OF = ("of", "de", "d'", "del", "du", "a", "al")  # "le cheval à Patrick"


def with_their_horses(items: Sequence[Item], owned: Mapping[str, tuple[str, ...]]) -> list[Item]:
    """The items with each such saying drawn into one. owned: people's names as written plainly → their horses."""
    if not any(i.person for i in items):
        return list(items)
    found: list[Item] = []
    at = 0
    while at < len(items):
        taken = _said(items, at)
        person = next((i for i in items[at : at + taken] if i.person), None)
        horses = owned.get(person.text, ()) if person is not None else ()
        if horses:
            said = " ".join(dict.fromkeys(i.raw for i in items[at : at + taken])).replace(" '", "'")
            found.append(Item(items[at].text, said, horses=horses, sure=len(horses) == 1, exact=False, known=False))
            at += taken
        else:
            found.append(items[at])
            at += 1
    return found


def _said(items: Sequence[Item], at: int) -> int:
    """How many words tell of somebody's horse here; 0 where none do."""
    after = items[at + 1 : at + 4]
    if items[at].person and len(after) > 1 and after[0].text == "'s" and after[1].has("a horse"):
        return 3
    if items[at].has("a horse") and len(after) > 1 and after[0].text in OF and after[1].person:
        return 3
    linked = len(after) > 2 and after[0].text in OF and after[1].has("article")
    return 4 if items[at].has("a horse") and linked and after[2].person else 0
