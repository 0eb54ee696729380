"""Whether "mine" is a horse or a thing: "la mía está empapada" behind "la chaqueta de Iván" is the speaker's jacket."""

from collections.abc import Sequence
from itertools import takewhile

from bot.words.lookup.gender import NAME_ENDS, gender_of_name
from bot.words.lookup.items import Item, of_clothes, predicate
from bot.words.named.weatherlike import clothing
from bot.words.thoughts.sentences import ENDS

MINE = ("mia", "mias", "mio", "mios", "mien", "mienne", "miens", "miennes")
REACH = 16  # words from the thing to "mine"
NEAR = 4  # words from "mine" to how it is
NO_THING = (
    "weather", "sky", "mass", "place stall", "place field", "work", "time", "hour", "body", "a horse", "i", "visitor",
    "animal", "my horse", "ahead", "part of day",
)  # fmt: skip


def my_thing(items: Sequence[Item], at: int, mine: Sequence[str]) -> bool:
    """As in "llevo la chaqueta de Iván porque la mía está empapada"; not "la mía está sudando", "a la mía …".

    mine: the speaker's horses. "La mía" of somebody whose only horse is Trueno is no horse, where it is wet.
    """
    said = items[at].text.split()
    if said[-1] not in MINE or said[0] in ("a", "al"):
        return False
    how = next((i for i in items[at + 1 : at + 1 + NEAR] if predicate(i) or i.has("too")), None)
    if how is None or not (of_clothes(how) or how.has("too")):
        return False
    last = _spoken_of(items[max(0, at - REACH) : at])
    if last is not None:
        return not last.horses
    gender = gender_of_name(mine[0]) if len(mine) == 1 else ""
    return gender != "" and NAME_ENDS.get(said[-1].rstrip("s")[-1:], gender) != gender


def _spoken_of(before: Sequence[Item]) -> Item | None:
    """The horse or the thing that the sentence spoke of last; None where it spoke of neither."""
    words = list(takewhile(lambda i: i.text not in ENDS, reversed(before)))
    for k, item in enumerate(words):
        determined = k + 1 < len(words) and words[k + 1].has("article", "my", "her")
        of = k + 1 < len(words) and words[k + 1].has("of")
        if item.horses and not of:
            return item
        thing = clothing(item) or item.has("jacket", "idiom") or not item.means
        if determined and thing and not (item.person or item.horses or item.mark or item.has(*NO_THING)):
            return item
    return None
