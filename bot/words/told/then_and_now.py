"""Yesterday and today: in "Pip was shivering yesterday, today she is fine" only how she is now is news."""

from bot.words.lookup.items import predicate
from bot.words.thoughts.clauses import Clause, soft
from bot.words.thoughts.no_report import only_yesterday
from bot.words.told.telling import Telling

NOT_NOW = ("was", "ahead", "plan", "if", "when", "guess", "hearsay", "habit", "some day", "yesterday", "long ago")


def spoken_of_then(clause: Clause, telling: Telling) -> bool:
    """Whether a clause tells how one horse, or one piece, was some time ago: "she", or "it", behind it is that one."""
    horses = [i for i in clause.items if i.horse]
    if not (clause.told and clause.has("yesterday", "last night")) or len(horses) > 1:
        return False
    if horses:
        telling.speak_of(horses[:1])
        return True
    if len(clause.pieces) != 1 or len(clause.pieces[0].owners) > 1:
        return False
    piece = clause.pieces[0]
    telling.piece, telling.last, telling.spoken = telling.meant(piece, *piece.owners or (None,)).ids, "piece", piece
    return True


def as_it_is_now(clause: Clause) -> bool:
    """As in "(she was cold yesterday,) now she's fine", "… she is not shivering any more", "… but I found it"."""
    if clause.joined == "if" or any(i.has(*NOT_NOW) and not i.has("as of now") for i in clause.items):
        return False
    now = clause.has("as of now", "not any more") or any(i.text.endswith(" now") for i in clause.items)  # "dry now"
    now = now or (clause.items[0].has("she", "it") and clause.has("is"))
    over = clause.joined == "but" and all(soft(i) or predicate(i) for i in clause.items)
    return clause.told and (now or over or clause.has("state found"))


def of_another_day(clause: Clause) -> bool:
    """Whether a clause told of yesterday, or of last night, and nothing else makes it no news."""
    return only_yesterday(clause) or clause.has("last night")
