"""Whom somebody meant who mends while speaking: "Tucker is sweaty, no, Willow" is of Willow, and of nobody else."""

from collections.abc import Sequence
from dataclasses import replace

from bot.words.clauses import soft
from bot.words.items import Item, places
from bot.words.mending import TAKES_BACK, mend_each

REACH = 12  # words between who was said and who was meant
PAUSES = frozenset(",…-–—:")
ENDS = ".!…\n,;)"
SENTENCE_ENDS = ".!…\n"
TOLD = ("place stall", "place field", "inwards", "outwards", "work")
LEADS = frozenset(("of", "toward", "on", "off"))
VERBS = ("brought", "brought in", "turned out", "put on", "took off", "worked")  # "he metido a"
SMALL = (*TAKES_BACK, "polite", "time", "is", "it", "was", "article")


def meant_instead(items: Sequence[Item]) -> list[Item]:
    """The items as they were meant: the horse that was said first gives way to the one said after "no, …"."""
    return mend_each(items, TAKES_BACK, _mend)


def _mend(items: Sequence[Item], at: int, kept: list[Item]) -> int:
    behind = _named_before(items, at)
    who = at - 1 if behind else second_thought(items, at)
    if not who:
        return at
    if behind:
        kept.pop()
    first = _told_last(kept)
    said = _whose(kept[first])
    kept[first] = _of_the_other(kept[first], items[who])
    while kept[-1].mark:
        kept.pop()
    return at + 1 if behind else _behind_other(items, who + 1, said)


def _named_before(items: Sequence[Item], at: int) -> bool:
    """As in "(Tucker is sweaty.) Willow I mean": who was meant stands before the words that say so."""
    alone = at > 1 and bool(items[at - 1].horses) and items[at - 2].mark and items[at].has("i mean")
    ends = at + 1 >= len(items) or items[at + 1].text in ENDS
    return alone and ends and _told_last(items[max(0, at - 2 * REACH) : at - 1]) >= 0


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
    lead = before[first - 1].means if first else frozenset[str]()
    leading = LEADS if before[first].piece is not None or not lead.isdisjoint(VERBS) else lead & LEADS
    for who in range(at + 1, min(len(items), at + REACH)):
        if items[who].horses and items[who].horses != _whose(before[first]):
            ends = _ends_there(items, _behind_other(items, who + 1, _whose(before[first])))
            return who if ends and (who - 1 == at or not items[who - 1].has("not")) else 0
        denied = items[who].has("not") and any(i.horses == _whose(before[first]) for i in items[who + 1 : who + 3])
        if not (items[who].horses or denied or _passed(items, who, leading)):
            return 0
    return 0


def _opens(items: Sequence[Item], at: int, said: tuple[str, ...]) -> bool:
    """As in "no", "I meant", "wrong horse", "not Tucker"; "not Willow", "c'est Lune" and "actually" mend nothing."""
    item, behind = items[at], items[at + 1] if at + 1 < len(items) else None
    if behind is None or item.has("is", "was", "link", "very") or (at and items[at - 1].has("and")):
        return False  # "c'est Lune qui tremble et non Max"
    if not item.has("not") or item.has("no to that") or behind.horses == said:
        return True
    if item.has("without") and behind.horses and at and items[at - 1].text in SENTENCE_ENDS:
        alone = at + 2 >= len(items) or items[at + 2].text in ENDS
        return alone and any(i.kinds("sign") for i in items[max(0, at - REACH) : at])  # "Tucker shivers! No Willow!"
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


def _behind_other(items: Sequence[Item], at: int, said: tuple[str, ...]) -> int:
    """Behind what says no more than who was meant: "(no, Willow) is", "(it's Willow) not Tucker"."""
    if at < len(items) and items[at].has("is", "was") and (at + 1 >= len(items) or items[at + 1].text in ENDS):
        return at + 1
    denied = at + 1 < len(items) and items[at].has("not") and items[at + 1].horses == said
    return at + 2 if denied else at


def _goes_on_list(behind: Sequence[Item]) -> bool:
    """As in "(sorry, Willow), Fig, Otto fine": more of them come."""
    return len(behind) > 1 and bool(behind[0].horses) and (behind[1].text == "," or behind[1].has("and"))


def _of_the_other(first: Item, meant: Item) -> Item:
    """The other horse, or the same piece of the other."""
    if first.piece is None:
        return meant
    return replace(first, piece=first.piece._replace(owners=meant.horses, either=len(meant.horses) > 1))
