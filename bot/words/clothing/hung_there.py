"""Where a piece was before, said only to tell which one: "the spare that was hanging on Otto's door is soaked"."""

from collections.abc import Sequence

from bot.words.lookup.items import NOTHING, Item, of_clothes, places, predicate, some_mean

TELLS_WHICH = frozenset(("relative", "drying", "on", "in", "beside"))
REACH = 10  # words from the piece to how it is
SMALL = ("very", "a little", "time", "link", "not", "wholly")


def without_where_it_hung(items: Sequence[Item]) -> Sequence[Item]:
    """The items without such words; whose a piece is that was on one horse, is told by them."""
    found: list[Item] = []
    end = 0
    for at in places(items, TELLS_WHICH):
        piece = items[at - 1].piece if at > end and _tells_which(items, at) else None
        verb = _verb(items, at) if piece is not None else 0
        if not verb or piece is None:
            continue
        found.extend(items[end : at - 1])
        wearer = _wearer(items[at:verb])
        whose = piece.owners or piece.spare or piece.ids or not wearer
        found.append(items[at - 1] if whose else _of(items[at - 1], wearer))
        end = verb
    return [*found, *items[end:]] if end else items


def _tells_which(items: Sequence[Item], at: int) -> bool:
    """As in "that was …", "on the end hook", "by the door"; not "on Otto", "on now"."""
    there = items[at + 1 : at + 4]
    by_itself = items[at].has("relative", "drying")
    return by_itself or (some_mean(there[:1], "article") and not any(i.horses or i.has("she") for i in there[1:]))


def _of(item: Item, wearer: Sequence[str]) -> Item:
    piece = item.piece._replace(owners=tuple(wearer)) if item.piece is not None else None
    return Item(item.text, item.raw, piece=piece)


def _verb(items: Sequence[Item], at: int) -> int:
    """Where the verb stands with how the piece is right behind it; 0 where there is none."""
    then = _next(items, at + 1)  # "hanging on the gate", "which hung on the gate": a verb of its own, or none
    spoken = items[at].has("drying") or not (then.horses or then.has("is", "was", "she", "i"))
    for k in range(at + 1, min(len(items), at + REACH)):
        item = items[k]
        if item.mark or item.piece is not None or predicate(item) or item.has("and", "she"):
            return 0
        if not item.has("is", "was") or (item.text == "'s" and items[k - 1].horses):
            continue
        if spoken and of_clothes(_next(items, k + 1)):
            return k
        spoken = True
    return 0


def _next(items: Sequence[Item], first: int) -> Item:
    return next((i for i in items[first:] if not i.has(*SMALL) or predicate(i)), NOTHING)


def _wearer(said: Sequence[Item]) -> tuple[str, ...]:
    """As in "that was on Otto": the horse that had it on; none where it only hung on its door."""
    named = [k for k, i in enumerate(said) if i.horses]
    on_her = len(named) == 1 and named[0] == len(said) - 1 and said[-2].has("on") and said[-1].horse
    return said[-1].horses if on_her else ()
