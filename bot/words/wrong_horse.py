"""The horse just named was the wrong one: "Maple sweaty, no sorry, Juniper", "… not Maple, Juniper", "… not Maple"."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.events import Done, Event, Seen, Wearing
from bot.words.around import sign_of
from bot.words.clauses import Clause
from bot.words.elided import of_another
from bot.words.items import Item, predicate
from bot.words.outfits import tell_same
from bot.words.telling import Telling, named

MENDING = ("no", "i mean", "polite", "not")
THAT_IS = ("it", "is", "article", "relative")  # "no, that's Juniper", "it's Juniper that's wet"
NOTHING = Item("", "")


def corrected(clause: Clause, telling: Telling) -> None:
    """The fact told last becomes one of the horse in this clause, or none of it, where it says so."""
    words = [i for i in clause.items if not i.mark]
    first = next((i for i in words if not i.has("polite") or i.has("no")), NOTHING)
    if not (first.has("no") and clause.horses and telling.events and all(i.horse for i in clause.horses)):
        return
    last = telling.events[-1]
    if not all(i.horses or i.has(*MENDING, *THAT_IS) or _says_it_again(i, last) for i in words):
        return
    wrong = [i.horses[0] for i in _denied(clause.items)]
    right = [i for i in clause.horses if i.horses[0] not in wrong]
    if isinstance(last, Done) and wrong and not right:
        _left_undone(last, wrong, telling)
    elif hasattr(last, "horse") and set(wrong) <= {last.horse} and len(right) <= 1:
        _of_the_other(last, right, telling)


def _denied(items: Sequence[Item]) -> list[Item]:
    """The horses behind a "not" and nothing between: in "no, not Pip" Pip, in "no, Pip" none."""
    return [i for before, i in pairwise(items) if i.horses and before.has("not") and not before.has("without")]


def _says_it_again(item: Item, last: Event) -> bool:
    return isinstance(last, Seen) and predicate(item) and sign_of(item) == last.sign


def _left_undone(last: Done, wrong: Sequence[str], telling: Telling) -> None:
    """As in "all done. oh wait, not Pip"."""
    done = telling.names if last.horses == "all" else last.horses
    telling.retell([*telling.events[:-1], replace(last, horses=tuple(name for name in done if name not in wrong))])


def _of_the_other(last: Event, right: Sequence[Item], telling: Telling) -> None:
    """As in "no, Juniper"; of a horse that it is not, and no other, the fact is gone."""
    telling.retell(telling.events[:-1])
    if not right:
        return
    if isinstance(last, Wearing):
        tell_same(named(right[0].horses), telling)
    else:
        telling.say(of_another(last, right[0].horses[0]))
