"""What was wrong and is put right: "Pip was in Ned's heavy, sorted now" leaves nobody knowing what Pip wears."""

from bot.events import Wearing
from bot.words.thoughts.clauses import Clause
from bot.words.told.telling import Telling


def puts_right(clause: Clause, telling: Telling) -> bool:
    """Whether a clause takes back what the one before it said was worn."""
    before = telling.heard
    if before is None or clause.pieces or not clause.has("swapped", "put right"):
        return False
    changed = clause.has("swapped") and clause.has("it") and not clause.has("for another")
    if not (clause.has("put right") or changed) or not before.has("was", "has"):
        return False
    who = {name for item in telling.who for name in item.horses}
    kept = [event for event in telling.events if not (isinstance(event, Wearing) and event.horse in who)]
    wrong = len(kept) < len(telling.events)
    if wrong:
        telling.retell(kept)
    return wrong
