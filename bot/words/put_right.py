"""What somebody puts right while speaking: "Maple sweaty, no sorry, Juniper", "no, the sweaty one is Juniper"."""

from bot.events import Wearing
from bot.words.clauses import Clause, gathered
from bot.words.elided import of_another
from bot.words.outfits import tell_same
from bot.words.telling import Telling, named
from bot.words.thread import picks_out


def correct(clause: Clause, telling: Telling) -> None:
    """As in "Maple sweaty, no sorry, Juniper": the horse just named was wrong."""
    if not clause.has("no") or len(clause.horses) != 1:
        return
    words, horse = [i for i in clause.items if not i.mark], clause.horses[0]
    if not (words[0].has("no") and horse.sure and telling.events):
        return
    if all(i.horses or i.has("no", "i mean", "polite", "not") for i in words):
        last = telling.events[-1]
        if isinstance(last, Wearing):
            telling.retell(telling.events[:-1])
            tell_same(named(horse.horses), telling)
        elif hasattr(last, "horse"):
            telling.retell([*telling.events[:-1], of_another(last, horse.horses[0])])


def said_anew(clause: Clause) -> Clause | None:
    """As in "no, perdón, el que está empapado es Pirineo", "no sorry, Pip is sweaty": what is said behind the "no"."""
    items = clause.items
    first = next((k for k, i in enumerate(items) if not (i.mark or i.has("no", "polite"))), 0)
    if not first or not clause.told or len(clause.horses) != 1 or not any(i.has("no") for i in items[:first]):
        return None
    behind = gathered(items[first:]).clause(clause.joined)
    plainly = any(i.has("no") and not i.has("not") for i in items[:first])  # "no sorry", not "no"
    picked = picks_out(behind) and behind.items[0].has("relative")
    return behind if picked or plainly else None


def told_anew(first: int, telling: Telling) -> None:
    """The last fact before this place is taken back where one behind it is the same of another horse."""
    before, behind = telling.events[:first], telling.events[first:]
    if not before or not hasattr(before[-1], "horse"):
        return
    if any(hasattr(e, "horse") and e == of_another(before[-1], e.horse) for e in behind):
        telling.retell([*before[:-1], *behind])
