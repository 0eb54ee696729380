"""Whom somebody meant who mends while speaking: "Tucker is sweaty, no, Willow" is of Willow, and of nobody else."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.clauses import soft
from bot.words.items import Item, places
from bot.words.mending import TAKES_BACK, mend_each

REACH = 12  # words between who was said and who was meant
PAUSES = frozenset(",…-–—:")
ENDS = ".!…\n,;)"
TOLD = ("place stall", "place field", "inwards", "outwards", "work")
LEADS = frozenset(("of", "toward", "on", "off"))
SMALL = (*TAKES_BACK, "polite", "time", "is", "it", "was", "article")


def meant_instead(items: Sequence[Item]) -> list[Item]:
    """The items as they were meant: the horse that was said first gives way to the one said after "no, …"."""
    return mend_each(items, TAKES_BACK, _mend)


def _mend(items: Sequence[Item], at: int, kept: list[Item]) -> int:
    who = second_thought(items, at)
    if not who:
        return at
    first = _told_last(kept)
    kept[first] = _of_the_other(kept[first], items[who])
    while kept[-1].mark:
        kept.pop()
    return who + 1


def names_second_thought(items: Sequence[Item], at: int) -> bool:
    """Whether the word at this place is whom somebody meant instead: "Igor a chaud, non pardon, c'est bandit"."""
    first = max(0, at - REACH)
    return any(second_thought(items, first + k) == at for k in places(items[first:at], TAKES_BACK))


def second_thought(items: Sequence[Item], at: int) -> int:
    """Where the horse stands that was meant, behind the word at this place that mends; 0 where nothing is mended."""
    before = items[max(0, at - 2 * REACH) : at]
    first = _told_last(before)
    if first < 0 or not _opens(items, at, _whose(before[first])):
        return 0
    leading = LEADS if before[first].piece is not None else before[first - 1].means & LEADS
    for who in range(at + 1, min(len(items), at + REACH)):
        if items[who].horses and items[who].horses != _whose(before[first]):
            meant = not items[who - 1].has("not") and _ends_there(items, who + 1)
            return who if meant else 0
        if not (items[who].horses or _passed(items, who, leading)):
            return 0
    return 0


def _opens(items: Sequence[Item], at: int, said: tuple[str, ...]) -> bool:
    """As in "no", "I meant", "wrong horse", "not Tucker"; "not Willow", "c'est Lune" and "actually" mend nothing."""
    item, behind = items[at], items[at + 1] if at + 1 < len(items) else None
    if behind is None or item.has("is", "was", "link", "very") or (at and items[at - 1].has("and")):
        return False  # "c'est Lune qui tremble et non Max"
    if not item.has("not") or item.has("no to that") or behind.horses == said:
        return True
    denied = behind.has("not") and at + 2 < len(items) and items[at + 2].horses == said
    return at > 0 and items[at - 1].mark and (behind.mark or behind.has(*TAKES_BACK, "polite") or denied)


def _told_last(before: Sequence[Item]) -> int:
    """The place of the horse named last, or of a piece of one, of whom something is told; −1 where nothing is."""
    last = next((k for k in range(len(before) - 1, -1, -1) if _whose(before[k])), -1)
    if last < 0 or (last and before[last - 1].has("not")) or any(i.text == "?" for i in before[last:]):
        return -1
    unowned = next((k for k in range(last + 1, len(before)) if before[k].piece is not None), last)
    if any(i.mark for i in before[last:unowned]):
        return -1  # "Faro va bien, la bleue est trempée, non, Igor"
    told = any(i.piece is not None or i.has(*TOLD) or not (i.horses or soft(i)) for i in before)
    return last if told else -1


def _whose(item: Item) -> tuple[str, ...]:
    return item.horses or (item.piece.owners if item.piece is not None else ())


def _passed(items: Sequence[Item], at: int, leading: frozenset[str]) -> bool:
    """A word that may stand between "no" and who was meant. leading: what the word before the first one means."""
    item = items[at]
    if item.mark:
        return item.text in PAUSES
    if not LEADS.isdisjoint(item.means) and not item.has(*TAKES_BACK):
        sorry_for = item.has("toward") and items[at - 1].has("polite")  # "désolé pour Lune"
        return not (sorry_for or item.means.isdisjoint(leading))
    return item.piece is None and item.has(*SMALL) and not item.has("but")


def _ends_there(items: Sequence[Item], at: int) -> bool:
    """Whether no more is told of whom was meant but what was told before."""
    while at < len(items) and not items[at].mark and items[at].has("no", "i mean", "polite", "time"):
        at += 1
    if at >= len(items) or items[at].has("relative"):
        return True
    return items[at].text in ENDS and not _goes_on_list(items[at + 1 : at + 3])


def _goes_on_list(behind: Sequence[Item]) -> bool:
    """As in "(sorry, Willow), Fig, Otto fine": more of them come."""
    return len(behind) > 1 and bool(behind[0].horses) and (behind[1].text == "," or behind[1].has("and"))


def _of_the_other(first: Item, meant: Item) -> Item:
    """The other horse, or the same piece of the other."""
    if first.piece is None:
        return meant
    return replace(first, piece=first.piece._replace(owners=meant.horses, either=len(meant.horses) > 1))
