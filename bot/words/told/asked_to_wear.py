"""What a horse wears, or is to wear, as people ask it: "what's Otto in tonight?", "does Otto need a rug tonight?"."""

from collections.abc import Sequence
from itertools import pairwise

from bot.events import Asked
from bot.words.lookup.items import Item, some_mean
from bot.words.thoughts.asking import asking, of_her_what, only_asks
from bot.words.told.asked_of import horse_of, plainly
from bot.words.told.telling import Telling


def this_or_that(items: Sequence[Item], telling: Telling) -> Asked | None:
    """As in "heavy or medium for Juniper tonight?": which of two pieces, for one horse."""
    pieces = [k for k, i in enumerate(items) if i.piece is not None]
    horse = horse_of(items)
    if horse is None or len(pieces) != 2 or not some_mean(items[pieces[0] : pieces[1]], "or"):
        return None
    small = ("or", "ask tonight", "ask wearing", "wears", "put on", "plan")
    return Asked("today", horse=horse) if plainly(items, *small) else None


def wearing(items: Sequence[Item], telling: Telling) -> Asked | None:
    """As in "what's Otto in?", "what should Otto wear tonight?"."""
    horse = horse_of(items)
    opens = next((i for i in items if not i.has("polite")), None)
    if horse is None or opens is None or any(i.piece and not i.piece.rug for i in items):
        return None
    if some_mean(items, "last night", "yesterday"):
        return None  # "Odile, t'as mis quoi à Orage hier soir ?": asked of her who did
    what = (
        any(only_asks(i) or (i.has("ask today") and " " in i.text) for i in items)
        or asking(opens)
        or opens.has("ask today")
    )
    what = what or any(i.has("ask wearing") and then.has("what") for i, then in pairwise(items))  # "porte quoi"
    what = what or of_her_what(items, items)
    if opens.has("ask why", "ask state") or not what:
        return None
    clothes = (
        some_mean(items, "ask wearing", "wears", "put on", "in")
        or any(i.piece or i.has("rug") for i in items)
        or opens.has("ask today")
    )
    if not clothes or not plainly(
        items, "ask wearing", "wears", "put on", "ask tonight", "ask today", "rug", "plan", "habit", "in", "has"
    ):
        return None
    asks_which = any(i.piece or i.has("rug") for i in items) and not some_mean(items, "wears", "is")
    tonight = asks_which or some_mean(items[1:], "ask tonight") or opens.has("ask today")
    return Asked("today" if tonight else "state", horse=horse)


def needs_tonight(items: Sequence[Item], telling: Telling) -> Asked | None:
    """As in "does Otter need a rug tonight?": what is to be worn is what Haybell knows."""
    horses = [i for i in items if i.horses]
    if not some_mean(items, "needs") or len(horses) != 1 or not horses[0].horse or not some_mean(items, "ahead"):
        return None
    worn = any(i.piece or i.has("brings weather", "nothing") for i in items)
    small = ("ahead", "ask tonight", "ask wearing", "plan", "afterwards", "habit", "brings weather", "nothing", "on")
    return Asked("today", horse=horses[0].horses[0]) if worn and plainly(items, *small, "has", "helper") else None
