"""Second thoughts of what was told before: "all done. oh wait, not Pip", "no sorry, the wet one is Pip"."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from itertools import dropwhile, pairwise, takewhile

from bot.events import Done, Event, GarmentIs, Placed, Seen
from bot.words.lookup.items import NOTHING, Item, all_mean, meanings_of, places, some_mean
from bot.words.thoughts.clauses import soft
from bot.words.told.telling import Telling
from bot.words.told.undoing import undoes

MAY_TAKE_BACK = frozenset(("second thought", "no"))
Read = Callable[[Sequence[Item]], None]


def thoughts(sentence: Sequence[Item]) -> Iterator[tuple[Sequence[Item], bool]]:
    """The sentence cut where something is taken back, each part with whether it stands behind such words."""
    if meanings_of(sentence).isdisjoint(MAY_TAKE_BACK):
        yield sentence, False
        return
    taken_back = [at for at in places(sentence, MAY_TAKE_BACK) if _takes_back(sentence, at)]
    turns = [*([] if taken_back and undoes(sentence) else taken_back), len(sentence)]
    if turns[0]:
        yield sentence[: turns[0]], _only_denies(sentence[: turns[0]])
    for turn, end in pairwise(turns):
        yield sentence[turn + 1 : end], True


def _takes_back(sentence: Sequence[Item], at: int) -> bool:
    """Words that do nothing else, or a plain "no" between two pauses: "Pip is wet, no, the one that's wet is Ned"."""
    paused = 0 < at < len(sentence) - 1 and sentence[at - 1].mark and sentence[at + 1].mark
    if sentence[at].has("second thought") or (paused and sentence[at].has("not")):
        return True
    opens = all(i.mark or i.has("polite") for i in sentence[:at]) and sentence[at].has("not")
    behind = sentence[at + 1 : at + 4]
    return opens and len(behind) > 1 and behind[0].has("she") and some_mean(behind, "not")  # "no he isn't"


def read_anew(behind: Sequence[Item], telling: Telling, read: Read) -> None:
    """What is said behind a second thought, in place of what was told last. read: reads any other sentence."""
    body = list(dropwhile(lambda i: i.mark or (i.has("polite", "i mean", "time") and not i.has("is")), behind))
    if not body or (telling.events and (_left_out(body, telling) or _not_of_her(body, telling))):
        return
    head = list(takewhile(lambda i: not i.mark, body))
    if telling.events and _only_not_so(head):
        _not_so(telling)
        body = body[len(head) + 1 :]
    if body:
        _told_otherwise(body, telling, read)


def _only_denies(sentence: Sequence[Item]) -> bool:
    """As in "(Pip is cold.) oh, not Pip": no, and a horse, and no more."""
    said = (i for i in sentence if not (i.mark or i.has("polite")))
    first = next(said, NOTHING)
    if not (first.has("not") and first.has("no")):
        return False
    rest = list(said)
    return bool(rest) and all(i.horse for i in rest)


def _not_of_her(body: Sequence[Item], telling: Telling) -> bool:
    """As in "(Pip is cold.) oh, not Pip": nothing is told of her after all."""
    last = telling.events[-1]
    if not _only_denies(body) or getattr(last, "horse", None) not in [i.horses[0] for i in body if i.horse]:
        return False
    telling.retell(telling.events[:-1])
    return True


def _only_not_so(head: Sequence[Item]) -> bool:
    """As in "(Pip is sweaty.) oh wait, he isn't"."""
    words = [i for i in head if not i.has("polite", "time")]
    plainly = some_mean(words, "not") and some_mean(words, "she", "it")
    return plainly and all_mean(words, "she", "it", "is", "was", "not", "article")


def _not_so(telling: Telling) -> None:
    """The last fact taken back: she who is said to have no such sign is well, unless it was said before."""
    last, at = telling.events[-1], len(telling.events) - 1
    if at in telling.denied:
        return  # "Pip isn't sweating. no he isn't"
    well = [replace(last, sign="comfortable")] if isinstance(last, Seen) and last.sign != "comfortable" else []
    telling.retell([*telling.events[:-1], *well])


def _left_out(body: Sequence[Item], telling: Telling) -> bool:
    """As in "all done. oh wait, not Pip": the others are."""
    head = list(takewhile(lambda i: not i.mark, body))
    last, left = telling.events[-1], {name for i in head if i.horse for name in i.horses}
    denied = some_mean(head, "not", "except") and all(i.horse or i.has("except") or soft(i) for i in head)
    if not (denied and left and isinstance(last, Done)):
        return False
    done = telling.names if last.horses == "all" else last.horses
    telling.retell([*telling.events[:-1], Done(tuple(name for name in done if name not in left))])
    return True


def _told_otherwise(body: Sequence[Item], telling: Telling, read: Read) -> None:
    """As in "the wet one is Pip": what was told last goes where the same is told of another, or another of the same.

    It goes as well where nobody can tell what was meant of a horse: an old name is never acted on.
    """
    count, last = len(telling.events), telling.events[-1] if telling.events else None
    read(body)
    if _only_denies(body):
        return  # "(Pip is cold.) not Ned"
    fresh = telling.events[count:]
    if last is None or some_mean(body, "too"):
        return  # "oh no wait, Pip too"
    if any(_instead(event, last) for event in fresh) or (not fresh and _another(body, last)):
        telling.retell([*telling.events[: count - 1], *fresh])


def _instead(event: Event, last: Event) -> bool:
    """Whether one is said in place of the other: the same of another horse or piece, or another sign of the same."""
    if isinstance(event, Seen) and isinstance(last, Seen):
        return event != last if event.horse == last.horse else replace(event, horse=last.horse) == last
    if isinstance(event, Placed) and isinstance(last, Placed):
        return event.horse != last.horse and event.where == last.where
    if isinstance(event, GarmentIs) and isinstance(last, GarmentIs):
        return event.garment != last.garment and event.state == last.state
    return isinstance(event, Done) and isinstance(last, Done) and "all" not in (event.horses, last.horses)


def _another(body: Sequence[Item], last: Event) -> bool:
    return any(i.horses and getattr(last, "horse", None) not in i.horses for i in body)
