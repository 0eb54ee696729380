"""Of whom "who is shivering" tells: of whoever stands right before it, a horse or somebody else."""

from collections.abc import Sequence

from bot.words.lookup.items import Item, of_clothes, places, predicate, some_mean
from bot.words.thoughts.sentences import ENDS

RELATIVE = frozenset(("relative",))
WHO = (
    "qui", "celle qui", "celui qui", "lequel", "laquelle",
    "who", "who 's", "the one who", "the one that", "which",
    "que", "quien", "la que", "el que",
)  # fmt: skip
JOINS = ("que",)  # Spanish: who, and that: "avisa a Marta que está tiritando"
STRANGERS = ("i", "kin", "animal", "visitor", "a horse", "thing")
IS_ME = ("is", "it", "i")
NEAR = 6  # words from "the one" to "me"
REACH = 40  # words of a sentence
PAST = ("any adjective", "time", "polite", "link")  # "le stagiaire nouveau", "Clara ce matin"
STOP = Item(".", ".", mark=True)


def of_whom(items: Sequence[Item]) -> list[Item]:
    """The items, where "who" behind a horse is that horse, if another was named before; without what tells of others.

    As in "Ulysse est avec Filou, qui tousse", "monté par Clara, qui est rentrée gelée".
    """
    found: list[Item] = []
    heard = 0
    named = next((k for k, i in enumerate(items) if i.horses or i.piece is not None), len(items))
    for at in places(items, RELATIVE):
        if at < max(heard, 1) or items[at].text not in WHO:
            continue
        paused = items[at - 1].text == "," and at > 1
        before = _noun(items, at - 2 if paused else at - 1)
        end = _end(items, at)
        how = next((i for i in items[at:end] if predicate(i)), None)
        if how is None or _asked(items, at) or some_mean(items[at + 1 : at + 2], "own"):
            continue  # ", que la suya está mojada" says why
        found.extend(items[heard:at])
        heard = at
        if paused and (_another_before(items, before) or _of_the_piece(items[before], how)):
            found[-1] = STOP
            found.append(items[before])
            heard = at + 1
        elif named < before and _somebody_else(items, before, at):
            heard = end
    return [*found, *items[heard:]]


def without_me(items: Sequence[Item]) -> Sequence[Item]:
    """As in "(Max no suda,) el que suda soy yo": what is told of the speaker, up to the next mark or horse."""
    for at in reversed(places(items, RELATIVE)):
        near = items[at + 1 : at + 1 + NEAR]
        me = next((k for k, i in enumerate(near) if i.has("i") and not i.has("article", "my")), 0)
        told = all(predicate(i) or i.has("is", "it", "she", "very", "subject") for i in near[:me])
        if at and me and told and any(predicate(i) for i in near[:me]) and some_mean(near[: me + 1], *IS_ME):
            ends = (k for k in range(at + me, len(items)) if items[k].mark or items[k].horses or items[k].piece)
            return [*items[:at], *items[next(ends, len(items)) :]]
    return items


def _noun(items: Sequence[Item], at: int) -> int:
    """Where the noun stands that "who" is for, past "nouveau", "ce matin", "de passage"."""
    while at > 1 and items[at].has(*PAST) and not (items[at].horses or items[at].has("article", *STRANGERS)):
        at -= 1
    return at - 2 if at > 1 and items[at - 1].has("of") and items[at - 2].has(*STRANGERS) else at


def _asked(items: Sequence[Item], at: int) -> bool:
    return next((i.text for i in items[at : at + REACH] if i.text in ENDS), "") == "?"


def _end(items: Sequence[Item], at: int) -> int:
    """Where what "who" opens ends: at a mark, or at the "and" before another horse; at once where one is in it."""
    last = min(len(items), at + REACH)
    end = next((k for k in range(at + 1, last) if items[k].mark or items[k].horses or items[k].piece), last)
    if end == last or items[end].mark:
        return end
    return next((k for k in range(end - 1, at, -1) if items[k].has("and", "but")), at)


def _another_before(items: Sequence[Item], at: int) -> bool:
    """Whether another horse stands before this one in the sentence, which it was not listed with."""
    if not items[at].horse:
        return False
    before = _sentence(items, at)
    joined = bool(before) and before[-1].has("and") and not before[-1].has("has", "wears", "beside")
    return any(i.horses and i.horses != items[at].horses for i in before) and not joined


def _of_the_piece(item: Item, how: Item) -> bool:
    """As in "Gaspard a sa doublure, qui est trempée"; of "la verte à Orage, qui …" it may be Orage."""
    return item.piece is not None and not item.piece.owners and of_clothes(how)


def _sentence(items: Sequence[Item], at: int) -> Sequence[Item]:
    first = max(0, at - REACH)
    return items[next((k + 1 for k in range(at - 1, first - 1, -1) if items[k].text in ENDS), first) : at]


def _somebody_else(items: Sequence[Item], before: int, at: int) -> bool:
    """As in "la jument de Chloé, celle (qui)", "par Clara, (qui)": neither a horse of the barn nor a garment."""
    item, led_by = items[before], items[before - 1] if before else items[before]
    if item.horses or item.piece is not None or item.mark or predicate(item) or item.has("she", "subject", "body"):
        return False
    if items[at].text in JOINS and led_by.has("toward") and not led_by.has("and"):
        return False
    return item.person or item.has(*STRANGERS) or not item.means
