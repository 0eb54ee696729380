"""All but these, said as what they are not yet: "tous finis, juste Filou pas encore", "all done, Ty still to do"."""

from collections.abc import Sequence

from bot.words.lookup.items import Item, meanings_of, places, some_mean

EVERY = frozenset(("everyone", "all horses", "all done"))
DID = ("all done", "done", "brought in", "turned out")
NOT_YET = ("not", "nearly", "stays", "ask left", "state missing", "plan")  # "pas encore", "reste à faire", "manque"
SMALL = ("link", "time", "is", "article", "and", "but", "except", "only", "no", "of", "she")
TURNS = ("but", "only", "except")  # what may stand between all and these, where no pause does
EXCEPT = Item("except", "except", frozenset({"except"}))


def as_excepted(sentence: Sequence[Item]) -> Sequence[Item]:
    """The sentence with these left out in one word, as in "all done except Ty"; any other as it is.

    Where some are named before, they alone are done: "Canela y Moro cambiadas, Nube en un rato".
    """
    if meanings_of(sentence).isdisjoint(EVERY):
        return sentence
    every = places(sentence, EVERY)[0]
    turn = next((k for k in range(every + 1, len(sentence)) if _turns(sentence, k)), len(sentence))
    opens = max((k + 1 for k, i in enumerate(sentence[:every]) if i.mark), default=0)
    told = sentence[opens:turn]
    if turn + 1 >= len(sentence) or not some_mean(told, *DID) or any(i.horses for i in told):
        return sentence
    end = turn + _as_far_as_these(sentence[turn:])
    these = sentence[turn:end]
    left = any(i.has(*NOT_YET) and not i.has("all done") for i in these)  # "… sont tous faits" are not left
    if not (any(i.horses for i in these) and left):
        return sentence
    return [*sentence[:turn], EXCEPT, *_names(these), *sentence[end:]]


def _as_far_as_these(behind: Sequence[Item]) -> int:
    """How many words are of these; up to the last pause where another thought follows: "reste Ty, Flo is cold"."""
    end = next((k for k, i in enumerate(behind) if not _of_these(i)), len(behind))
    pauses = (k for k in range(end - 1, 0, -1) if behind[k].mark)
    return end if end == len(behind) else next(pauses, 0)


def _turns(sentence: Sequence[Item], at: int) -> bool:
    item = sentence[at]
    return not item.horses and (item.mark or item.has(*TURNS) or (item.has("not") and not item.has("done")))


def _of_these(item: Item) -> bool:
    """A name, or a word of being left; "tous faits, Lune reste au box" tells more."""
    return bool(item.horses) or item.mark or item.has(*SMALL, *NOT_YET)


def _names(these: Sequence[Item]) -> Sequence[Item]:
    """The names with what joins them."""
    named = [k for k, i in enumerate(these) if i.horses]
    return [i for i in these[named[0] : named[-1] + 1] if i.horses or i.text == "," or i.has("and")]
