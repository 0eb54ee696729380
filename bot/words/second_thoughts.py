"""Second thoughts: "Maple sweaty. No wait, that's Pip", "the wet one is Pip, sorry": what they take back, told anew."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from itertools import dropwhile, pairwise, takewhile

from bot.events import Done, Event, Seen, Wearing
from bot.words.clauses import soft
from bot.words.elided import of_another
from bot.words.items import Item, places, predicate
from bot.words.outfits import tell_same
from bot.words.telling import Telling, named
from bot.words.undoing import undoes

TAKES_BACK = frozenset(("second thought",))
Read = Callable[[Sequence[Item]], None]


def thoughts(sentence: Sequence[Item]) -> Iterator[tuple[Sequence[Item], bool]]:
    """The sentence cut where something is taken back, each part with whether it stands behind such words."""
    taken_back = places(sentence, TAKES_BACK)
    turns = [*([] if taken_back and undoes(sentence) else taken_back), len(sentence)]
    if turns[0]:
        yield sentence[: turns[0]], False
    for turn, end in pairwise(turns):
        yield sentence[turn + 1 : end], True


def read_anew(behind: Sequence[Item], telling: Telling, read: Read) -> None:
    """What is said behind a second thought, in place of what was told last. read: reads any other sentence."""
    body = list(dropwhile(lambda i: i.mark or (i.has("polite", "i mean", "time") and not i.has("is")), behind))
    if not body:
        return
    if not telling.events:
        read(body)
        return
    head = list(takewhile(lambda i: not i.mark, body))
    said = [i for i in head if not _leads_up(i)]
    if len(said) == 1 and said[0].horse:
        of_the_other(said[0], telling)
        _go_on(body[len(head) :], read)
    elif _left_out(head, telling):
        _go_on(body[len(head) :], read)
    elif body[0].kinds("sign") or body[0].kinds("everyday"):
        _rather(body, telling, read)
    else:
        _told_otherwise(body, telling, read)


def _leads_up(item: Item) -> bool:
    """As in "that's the …", "je parle de …": no horse, and nothing of one."""
    return item.has("it", "is", "article", "i mean", "polite", "i") and not (item.horses or predicate(item))


def _go_on(rest: Sequence[Item], read: Read) -> None:
    behind = list(dropwhile(lambda i: i.mark, rest))
    if behind:
        read(behind)


def of_the_other(horse: Item, telling: Telling) -> None:
    """As in "no wait, that's Pip": what was told last is told of this horse."""
    last = telling.events[-1]
    if isinstance(last, Wearing):
        telling.retell(telling.events[:-1])
        tell_same(named(horse.horses), telling)
    elif hasattr(last, "horse"):
        telling.retell([*telling.events[:-1], of_another(last, horse.horses[0])])
    telling.who, telling.begun = (horse,), True


def _left_out(head: Sequence[Item], telling: Telling) -> bool:
    """As in "all done. oh wait, not Pip": the others are."""
    last, horses = telling.events[-1], [i for i in head if i.horse]
    denied = any(i.has("not", "except") for i in head) and all(i.horse or i.has("except") or soft(i) for i in head)
    if not (denied and horses) or not isinstance(last, Done):
        return False
    left = {name for i in horses for name in i.horses}
    done = telling.names if last.horses == "all" else last.horses
    telling.retell([*telling.events[:-1], Done(tuple(name for name in done if name not in left))])
    return True


def _rather(body: Sequence[Item], telling: Telling, read: Read) -> None:
    """As in "Pip is cold, no sorry, hot": another sign of the horse spoken of."""
    last = telling.events[-1]
    if isinstance(last, Seen):
        telling.retell(telling.events[:-1])
        read([*named((last.horse,)), body[0]])
        _go_on(body[1:], read)
    else:
        read(body)


def _told_otherwise(body: Sequence[Item], telling: Telling, read: Read) -> None:
    """As in "the wet one is Pip": what was told last goes where the same is told of another, or another of the same.

    It goes as well where nobody can tell what was meant of a horse: an old name is never acted on.
    """
    count, last = len(telling.events), telling.events[-1]
    read(body)
    fresh = telling.events[count:]
    if any(_instead(event, last) for event in fresh) or (not fresh and _somebody_else(body, last)):
        telling.retell([*telling.events[: count - 1], *fresh])


def _instead(event: Event, last: Event) -> bool:
    """Whether one is said in place of the other: the same of another horse, or another sign of the same."""
    if type(event) is not type(last) or not (hasattr(event, "horse") and hasattr(last, "horse")):
        return False
    if event.horse == last.horse:
        return isinstance(event, Seen) and event != last
    return isinstance(event, Seen) and replace(event, horse=last.horse) == last


def _somebody_else(body: Sequence[Item], last: Event) -> bool:
    return any(i.horses and getattr(last, "horse", None) not in i.horses for i in body)
