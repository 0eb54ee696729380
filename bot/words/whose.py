"""Whom a sign is about that was said without a name."""

from collections.abc import Sequence

from bot.words.around import excepted
from bot.words.clauses import Clause
from bot.words.items import WETNESS, Item
from bot.words.telling import Telling, named


def unnamed(clause: Clause, telling: Telling, at: int) -> Sequence[Item]:
    """Whom a sign without a name is about: the horse spoken of last, all of them, or nobody."""
    items = clause.items
    everyday = items[at].kinds("everyday")
    several = telling.who[0].horses if len(telling.who) == 1 else ()
    if clause.has("the rest"):
        return named(telling.rest())
    if clause.has("both") and 1 < len(several) < 4:
        return named(several)
    if clause.has("everyone") and items[at].has(*WETNESS) and not clause.has("she", "all horses"):
        return ()  # "everything is wet here"
    left = {name for k, i in enumerate(items) if i.horses and excepted(items, k) for name in i.horses}
    if clause.has("all horses") or (clause.has("everyone") and not clause.has("she") and (left or not everyday)):
        return named([name for name in telling.names if name not in left])
    if (clause.has("it") or (items[at].has(*WETNESS) and telling.last == "piece")) and not clause.has("she"):
        return ()
    if not telling.begun and everyday and len(telling.who) > 1:
        return ()
    if everyday and telling.crowded:
        return ()
    bare = everyday in (["comfortable"], ["good"]) and telling.begun and not clause.has("she")
    bare = bare and not telling.past
    return () if bare and clause.joined != "but" and not items[0].has("is", "time") else telling.who
