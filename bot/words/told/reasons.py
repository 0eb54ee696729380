"""Why something is wanted, told behind it: "hay que cambiar a Lola, está empapada", "take his rug off, he's hot"."""

import itertools
from collections.abc import Sequence

from bot.words.heard.genders import GENDERS
from bot.words.heard.numbers import OF_SEVERAL
from bot.words.lookup.gender import gender_of_name, shown_gender
from bot.words.lookup.items import Item, meanings_of, of_clothes, predicate, some_mean
from bot.words.thoughts.hers import something_of_hers
from bot.words.told.telling import Telling, named

WANTED = frozenset(("plan", "afterwards"))
NOT_SURE = ("if", "when", "guess", "habit", "idiom", "yesterday", "long ago", "was")
NO_REPORT = (*NOT_SURE, "plan", "or")
PAUSES = frozenset(",-–—(;")
BEFORE_HOW = (
    "is", "she", "it", "subject", "very", "a little", "time", "helper", "wholly", "has", "link", "strap", "article",
    "both",
)  # fmt: skip
OF_ANIMALS = ("sign sweating", "sign shivering", "sign cold", "sign hot", "sign unwell", "sign rubbed")
CALM = ("sign comfortable", "everyday comfortable", "everyday good", "everyday warm", "dry")
REACH = 5  # words from where the reason begins to how it is


def reason_behind(sentence: Sequence[Item]) -> int:
    """Where the reason begins in "hay que cambiar a Lola, que está empapada"; 0 where there is none.

    Only one horse or one piece may have been spoken of, and what is told is something to see to, now.
    """
    if meanings_of(sentence).isdisjoint(WANTED) or _looks_back(sentence):
        return 0
    wanted = of_one = False
    for at, item in enumerate(sentence):
        if _uneasy(item) or item.has(*NOT_SURE):
            return 0
        if wanted and of_one and (item.text in PAUSES or item.has("but")):
            return at + 1 if _whose(sentence[:at], sentence[at + 1 :]) else 0
        wanted = wanted or item.has(*WANTED)
        of_one = of_one or bool(item.horses) or item.piece is not None
    return 0


def _looks_back(sentence: Sequence[Item]) -> bool:
    """As in "remember Tansy in the big snow, sweating like a racehorse"; not "remember Tansy needs her liner"."""
    opens = len(sentence) > 2 and sentence[0].text == "remember" and bool(sentence[1].horses)
    return opens and sentence[2].has("in", "hour", "when", "time")


def wanted_of(wanted: Sequence[Item], behind: Sequence[Item], telling: Telling) -> None:
    """Of whom, or of which piece, the reason is told."""
    piece, names = next((i.piece for i in wanted if i.piece is not None), None), _names(wanted)
    of_it = piece if _whose(wanted, behind) == "piece" else None
    telling.spoken = of_it
    telling.piece = telling.meant(of_it, next(iter(names), None)).ids if of_it is not None else ()
    owners = (telling.roster.garments[g].horse for g in telling.piece)
    telling.who = named(tuple(names) or tuple(name for name in owners if name is not None))
    telling.last = "horse" if of_it is None else "piece"
    telling.begun, telling.asked, telling.crowded, telling.planned = True, False, False, False


def _uneasy(item: Item) -> bool:
    return (predicate(item) or (item.has("broken") and not item.has("off"))) and not item.has(*CALM)


def _names(wanted: Sequence[Item]) -> list[str]:
    owners = (name for i in wanted if i.piece is not None for name in i.piece.owners)
    return list(dict.fromkeys((*(name for i in wanted for name in i.horses), *owners)))


def _whose(wanted: Sequence[Item], rest: Sequence[Item]) -> str:
    """Whether the reason is told of the "horse" or the "piece" that is wanted; "" where it is none, or of either."""
    how = _why(rest)
    names, pieces = _names(wanted), [i.piece for i in wanted if i.piece is not None]
    unsure = any((i.horses and not i.sure) or i.has("everyone", "all horses") for i in wanted)
    if how is None or unsure or len(pieces) > 1 or (len(names) > 1) != _told_of_several(rest, how):
        return ""
    if how.has(*OF_ANIMALS):
        return "horse" if names else ""
    if _of_another_thing(wanted) or _thing_behind(rest, how):
        return ""
    if not of_clothes(how) and not how.has("broken"):
        return "horse" if names else ""
    if how.kinds("state") or how.has("broken") or not names:
        return "piece" if pieces else ""
    if not pieces:
        return "horse"
    return _of_either(rest, how, pieces[0].gender, names[0])


def _told_of_several(rest: Sequence[Item], how: Item) -> bool:
    """As in "están empapadas", "they are cold"."""
    said = [*itertools.takewhile(lambda i: i is not how, rest), how]
    return any(i.text.partition(" ")[0] in OF_SEVERAL for i in said)


def _of_another_thing(wanted: Sequence[Item]) -> bool:
    """As in "limpiar la cuadra de Lola", "give Pip his water": what else was spoken of, that may be cold or wet."""
    for k, item in enumerate(wanted):
        if item.horses and k and wanted[k - 1].has("of") and not wanted[k - 1].has("toward"):
            return True
        if item.horses and something_of_hers(wanted, k):
            return True
        behind = wanted[k + 1] if k + 1 < len(wanted) else None
        named = behind is None or behind.mark or behind.horses or behind.piece is not None or behind.has("article")
        if item.has("article", "her", "my", "some") and not item.has("toward", "she", "is") and not named:
            return True
    return False


def _thing_behind(rest: Sequence[Item], how: Item) -> bool:
    """As in "está mojado el prado": something of its own, behind how it is."""
    at = next(k for k, i in enumerate(rest) if i is how)
    behind = rest[at + 1 : at + 3]
    return len(behind) > 1 and behind[0].has("article") and not behind[0].has("of", "wholly") and not behind[1].horses


def _of_either(rest: Sequence[Item], how: Item, piece: str, name: str) -> str:
    """Which of the two is wet, by the pronoun or by what agrees; "" where neither tells."""
    pronoun = next((i for i in rest if i.has("it", "she") and not i.has("is")), None)
    if pronoun is not None and pronoun.text not in GENDERS:
        return "piece" if pronoun.has("it") else "horse"
    shown = GENDERS.get(pronoun.text, "") if pronoun is not None else shown_gender(how)
    if not (shown and piece):
        return ""
    if shown != piece:
        return "horse"
    return "piece" if gender_of_name(name) not in ("", shown) else ""


def _why(rest: Sequence[Item]) -> Item | None:
    """As in "(que) está empapada", "he's really cold": how it is, of nothing that was not spoken of."""
    words = [i for i in rest if not i.mark]
    if words and words[0].has("but") and not words[0].has("is"):
        words = words[1:]
    how = next((k for k, i in enumerate(words[: REACH + 1]) if _uneasy(i)), None)
    if how is None:
        return None
    told = (
        " " in words[how].text
        or bool(words[how].kinds("sign"))
        or any(i.has("is", "has") or " " in i.text for i in words[:how])
    )
    small = all(i.has(*BEFORE_HOW) and not i.has("i", "plan", "not") for i in words[:how])
    return words[how] if told and small and not some_mean(words[how:], *NO_REPORT) else None
