"""Which words that look like names are names here: a horse called Sunday is not meant every Sunday."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.clauses import predicate, soft
from bot.words.items import Item

# a name stands right before one of these, or right after one of those
AFTER_NAME = (
    "is", "was", "wears", "bare", "done", "clipped", "worked", "brought in", "turned out", "stays", "rug again", "has", "not", "stopped",
    "in", "inwards", "outwards", "too", "off", "on",
)  # fmt: skip
BEFORE_NAME = (
    "on", "off", "put on", "took", "took off", "worked", "clipped", "brought", "keep", "except", "said", "ask state", "do not rug",
    "brought in", "turned out", "without", "bare", "rug again", "i mean", "ask why", "done",
)  # fmt: skip


def settle(items: Sequence[Item]) -> list[Item]:
    """The same items; those that only look like a name lose it, those it must ask about stay unsure."""
    return [_settled(items, at) for at in range(len(items))]


def _settled(items: Sequence[Item], at: int) -> Item:
    item = items[at]
    if not item.horses:
        return item
    if not item.exact:
        if item.known and not _only_a_horse(items, at):
            return replace(item, horses=())
        return item if item.sure or item.known else _unless_person(items, at)
    wordlike = item.known or bool(item.means)
    if not wordlike or " " in item.text:
        return replace(item, means=frozenset())
    if _named(items, at):
        return replace(item, means=frozenset(), sure=not _weather_talk(items, at))
    return replace(item, horses=())


def _unless_person(items: Sequence[Item], at: int) -> Item:
    return items[at]


def _named(items: Sequence[Item], at: int) -> bool:
    """Evidence that a word of the language is a name here."""
    item = items[at]
    before = items[at - 1] if at else None
    after = next((i for i in items[at + 1 :] if not i.mark or i.text not in ","), None)
    if before is not None and before.has("article", "of", "her", "very", "a little") and not item.capital:
        return False
    if item.capital and not item.has("weekday"):
        return True
    if item.has("weekday") and before is not None and (before.has("on", "hour", "in", "time") or before.text in ("this", "every")):
        return False
    if len(items) == 1:
        return True
    beside = (before is not None and before.has("and") and at > 1 and items[at - 2].horses) or (
        after is not None and after.has("and") and any(i.horses and not i.known for i in items[at + 1 : at + 4])
    )
    follows = after is not None and (predicate(after) or after.has(*AFTER_NAME) or _piece(after))
    precedes = before is not None and (before.has(*BEFORE_NAME) or bool(before.kinds("sign")))
    if item.raw[:1].islower() and after is not None and after.kinds("everyday"):
        follows = False
    return bool(beside or follows or precedes)


def _piece(item: Item) -> bool:
    return bool(item.kinds("kind") or item.kinds("weight") or item.has("rug") or item.pieces)


def _weather_talk(items: Sequence[Item], at: int) -> bool:
    """ "Sunday is wet", "Storm looks cold": the day, or the horse?"""
    if not items[at].has("weekday", "weather") or items[at].capital:
        return False
    said = next((i for i in items[at + 1 :] if not soft(i) or predicate(i)), None)
    return said is not None and bool(said.kinds("everyday") or said.has("wet", "dry", "damp", "soaked"))


def _only_a_horse(items: Sequence[Item], at: int) -> bool:
    """Where only a horse can stand: the first word of what is said, and then a sign that only animals show."""
    before = items[at - 1] if at else None
    if before is not None and not (before.mark or before.has("said", "polite", "but") or before.has("and")):
        return False
    rest = list(items[at + 1 :])
    while rest and (rest[0].has("is", "link", "very", "a little", "was", "time", "not") and not predicate(rest[0])):
        rest = rest[1:]
    return bool(rest) and bool(rest[0].kinds("sign")) and not items[at].means
