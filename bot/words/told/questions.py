"""What people ask of the bot; a question put to people is left alone."""

from collections.abc import Callable, Sequence
from dataclasses import replace
from itertools import dropwhile, pairwise

from bot.events import About, Asked
from bot.words.lookup.items import NOTHING, WETNESS, Item, all_mean, meanings_of, predicate, some_mean
from bot.words.thoughts.asking import WHOLE, asking, exclaims
from bot.words.thoughts.clauses import soft
from bot.words.told.asked_of import garment_of, horse_of, plainly
from bot.words.told.asked_to_wear import needs_tonight, this_or_that, wearing
from bot.words.told.telling import Telling

# what may stand beside the phrase: "qué hay colgado secándose", "qué les toca ponerse", "quién falta por cambiar"
SAID_WITH: dict[About, tuple[str, ...]] = {
    "drying": ("drying", "or", "dry"),  # "anything still drying or is it all dry"
    "today": ("ask wearing",), "left": ("ask wearing", "without", "swapped", "put on"),
    "forecast": ("ask forecast marked", "ahead"),
}  # fmt: skip
GUESSED = ("sky", "ahead", "idiom", "or")  # "what's the forecast then, will it be a cold one"
LEAST_FILL = 40  # a bare number from here on is a rug's: "why does Dusty need 250?"
BESIDE_WHY = (
    "ask wearing", "bare", "wears", "plan", "habit", "off", "put on", "took off", "not", "everyone", "has", "without",
    "yes", "nothing", "ask tonight", "ask ready", "sky", "when", "toward", "brought", "keeps", "helper", "only", "gram",
    "keep", "do not rug", "afterwards",
    "brings weather",  # "por qué lleva tanto": much, also of rain
)  # fmt: skip


def read_question(sentence: Sequence[Item], telling: Telling) -> bool:
    """Whether the sentence asks something that the bot can answer; the question is told."""
    items = _but_for(_indirect([i for i in sentence if not i.mark]))
    if exclaims(items):
        return False
    means = meanings_of(items)
    for needed, reader in READERS:
        asked = reader(items, telling) if not means.isdisjoint(needed) else None
        if asked is not None:
            for horse in _all_named(asked, items):
                telling.say(replace(asked, horse=horse))
            return True
    return False


def _indirect(items: Sequence[Item]) -> Sequence[Item]:
    """As in "could you tell me whether the liner is dry": what is asked, without the word that only leads to it."""
    leads = next((k for k, i in enumerate(items) if not i.has("polite", "please", "habit")), 0)
    if not items or not items[leads].has("if") or items[leads].has("what"):
        return items  # "con qué tapo a Luna" asks
    return [*items[:leads], *items[leads + 1 :]]


def _but_for(items: Sequence[Item]) -> Sequence[Item]:
    """As in "what's still drying, except my jeans": what is asked, without what needs no answer."""
    left = next((k for k, i in enumerate(items) if k and i.has("except")), len(items))
    return items[:left] if some_mean(items[left + 1 : left + 3], "thing") else items


def _all_named(asked: Asked, items: Sequence[Item]) -> list[str | None]:
    """As in "How are Maple and Pip?" is a question for each."""
    names = [i.horses[0] for i in items if i.horse]
    several = asked.about in ("state", "today") and asked.garment is None and len(names) > 1
    return [*names] if several else [asked.horse]


def _why(items: Sequence[Item], telling: Telling) -> Asked | None:
    opening = ("polite", "plan", "i", "question", "please", "and", "article", "link")
    at = next(k for k, i in enumerate(items) if i.has("ask why") or not (i.horses or i.has(*opening)))
    if not items[at].has("ask why"):
        return None
    items = [i for i in items[:at] if i.horses] + list(items[at:])  # "y Canela por qué …", "might I ask why Pip …"
    horse = horse_of(items)
    about = telling.reply.horses
    if horse is None and len(about) == 1:
        horse = about[0]
    if horse is None and some_mean(items, "she") and len(telling.who) == 1 and telling.who[0].horse:
        horse = telling.who[0].horses[0]  # "Otto's sweaty again. Why is he in so much?"
    if horse is None and not any(i.piece for i in items):
        return Asked("why") if about and len(items) <= 2 else None
    rest = _up_to_the_reason([i for i in items if not i.has("ask why")])
    clothing = (
        any(i.piece or (i.number or 0) >= LEAST_FILL for i in items)
        or some_mean(rest, "bare", "nothing", "wears", "ask wearing", "off", "on", "do not rug")
        or len(rest) <= 2
        or _that_for_her(rest)
    )
    if not clothing or not plainly(rest, *BESIDE_WHY):
        return None
    return Asked("why", horse=horse, garment=garment_of([i for i in items if not _any_rug(i)], telling, horse))


def _any_rug(item: Item) -> bool:
    """As in "why a rug for Pip?": clothes, and no one piece."""
    return item.piece is not None and (item.piece.rug or item.piece.some)


def _that_for_her(rest: Sequence[Item]) -> bool:
    """As in "why did you pick that one for Juniper tonight": nothing but "that", and for whom."""
    small = all(i.horses or i.has("it", "one", "yes", "toward", "ask tonight", "time") for i in rest)
    return small and any(i.has("toward") and then.horses for i, then in pairwise(rest))


def _degrees(two: Sequence[Item]) -> bool:
    """As in "par 9 degrés": a small word and a number."""
    return len(two) == 2 and two[0].has("link") and two[1].number is not None


def _it_is(two: Sequence[Item]) -> bool:
    """As in "(why the heavy for Ned) it's so mild"."""
    return len(two) == 2 and two[0].has("it") and two[1].has("is")


def _up_to_the_reason(items: Sequence[Item]) -> Sequence[Item]:
    """As in "why the heavy for Ned when it's so mild": the question, without what makes one ask it."""
    for k, item in enumerate(items):
        asked = any(i.horses or (i.piece and i.piece.owners) for i in items[:k])
        if (
            asked
            and (item.has("if", "when", "but", "and") or _degrees(items[k : k + 2]) or _it_is(items[k : k + 2]))
            and any(i.piece or i.has("bare", "nothing", "ask wearing") for i in items[:k])
        ):
            return items[:k]
    return items


def _state(items: Sequence[Item], telling: Telling) -> Asked | None:
    at = next(k for k, i in enumerate(items) if i.has("ask state"))
    if not all(
        i.horses or i.piece or i.has("polite", "is", "link", "she", "what", "and", "my", "please") or i.text == "'s"
        for i in items[:at]
    ):
        return None
    horse = horse_of(items)
    named = next((k for k, i in enumerate(items) if i.horses), len(items))
    since = next((k for k in range(named + 1, len(items)) if items[k].has("after")), len(items))
    rest = [i for k, i in enumerate(items[:since]) if k != at]  # "how is Otto after his colic"
    if not plainly(rest) or any(predicate(i) and not i.has("everyday comfortable") for i in rest):
        return None
    if any(i.piece for i in items):
        garment = garment_of(items, telling, horse)
        return Asked("state", garment=garment) if garment else None
    if horse is None and len(telling.reply.horses) == 1 and some_mean(items, "she"):
        horse = telling.reply.horses[0]
    return Asked("state", horse=horse) if horse else None


def _ready(items: Sequence[Item], telling: Telling) -> Asked | None:
    """As in "Is Juniper's liner dry yet?", "when will the liner be dry"."""
    piece = next((k for k, i in enumerate(items) if i.piece), None)
    if piece is None:
        return None
    dries = zip(items, items[1:], items[2:], strict=False)
    if any(i.has("dry") and (then.piece or then.horses) and not before.has("is") for before, i, then in dries):
        return None  # "could somebody dry Pip's liner"
    if any(i.horses for i in items[:piece]) and some_mean(items[:piece], "under"):
        return None  # "est-ce que Lulu est mouillé sous sa couverture ?": put to people, of the horse
    if any(i.horses or (i.has("put on", "plan") and not i.has("ask ready")) for i in items[piece + 1 :]):
        return None  # "quand la verte sera sèche mettez-la à Neige"
    if not plainly(items, "ask ready", "ask state", "dry", "wet", "damp", "plan", "when", "has", "nearly"):
        return None
    garment = garment_of(items, telling, horse_of(items))
    return Asked("drying", garment=garment)  # of several liners: all that is drying


def _is_the_question(phrase: Item, rest: Sequence[Item], about: About) -> bool:
    """Whether a phrase with these words around it asks; one word alone may have next to nothing around it."""
    if about == "help" and any(i.text == "bot" for i in rest):
        return True
    if rest and (phrase.has("time") or (about == "help" and " " not in phrase.text)):
        return False
    if about == "forecast" and any(i.has("ahead") and then.has("work") for i, then in pairwise(rest)):
        return False  # "cold on the weekend show"
    if " " not in phrase.text:
        return all_mean(rest, "polite", "time", "article", "ask tonight", "please")
    of_a_horse = about == "today" and sum(bool(i.horses) for i in rest) == 1  # "the plan for Rosie"
    small = ["polite", "time", "ask tonight", "plan", "i", "everyone", "one", "ask help"]
    small += SAID_WITH.get(about, ())
    small += GUESSED if about == "forecast" and phrase.text.startswith(("what", "que")) else ()
    return all(soft(i) or i.has(*small) or (of_a_horse and i.horse) for i in rest)


def _whole(items: Sequence[Item], telling: Telling) -> Asked | None:
    """Questions that are one phrase and small words around it."""
    for meaning, about in WHOLE:
        asked = _up_to_the_place(items) if about == "drying" else items
        found = [k for k, i in enumerate(asked) if i.has(meaning)]
        if not found:
            continue
        if about == "help" and len(found) > 1:
            return Asked("help")  # "how do I even use you, what can I say to you?"
        at = max(found, key=lambda k: len(asked[k].text))
        rest = [i for k, i in enumerate(asked) if k != at]
        if about == "today" and some_mean(rest, "drying", *WETNESS):
            continue  # "quelles couvertures sont encore au séchoir"
        if _is_the_question(asked[at], rest, about):
            return Asked(about, horse=horse_of(items) if about == "today" else None)
    return None


def _up_to_the_place(items: Sequence[Item]) -> Sequence[Item]:
    """As in "quelles couvertures sèchent dans la chambre": where they hang is left aside."""
    wet = next((k for k, i in enumerate(items) if i.has("drying", "ask drying", *WETNESS)), len(items))
    place = next((k for k in range(wet + 1, len(items)) if items[k].has("in", "on")), len(items))
    return items[:place]


def _drying(items: Sequence[Item], telling: Telling) -> Asked | None:
    """Composed of which, what may be wet, and how wet: "quelles couvertes sont encore en train de sécher"."""
    items = list(
        dropwhile(lambda i: i.has("polite", "is", "i mean", "and") and not asking(i), items)
    )  # "c'est quoi qui"
    verb = next((i for i in items[1:] if not i.has("link", "time") or i.has("is")), NOTHING)
    opens = len(items) > 1 and (asking(items[0]) or (items[0].has("ask today") and verb.has("is")))
    if not opens or any(i.horses or (i.piece and i.piece.owners) for i in items):
        return None
    if items[1].has("sky", "weather", "mass") or any(i.has("i") and then.has(*WETNESS) for i, then in pairwise(items)):
        return None  # "quelle pluie, tout est trempé", "… je suis trempé"
    items = _up_to_the_place(items)
    rest = items[2:] if not items[1].means and items[1].piece is None else items[1:]  # "which things are drying"
    wet = some_mean(rest, "drying", *WETNESS)
    return Asked("drying") if wet and plainly(rest, "drying", *WETNESS, "rug", "nearly", "has", "please") else None


def _weather(items: Sequence[Item], telling: Telling) -> Asked | None:
    """Composed of small words, what the sky does and a time to come: "is there much wind in the morning?"."""
    if any(i.horses or i.piece or i.person or i.has("body", "work", "worked") for i in items):
        return None
    if items[0].text.startswith(("did any", "has any", "have any")):
        return None  # "did anyone check Frost after lunch?"
    if not some_mean(items, "ahead"):
        return None
    small = (
        "sky", "ahead", "ask tonight", "ask forecast", "ask forecast marked", "question", "asked", "plan", "what", "it",
    )  # fmt: skip
    told = [i for i in items if not (soft(i) or i.has(*small, "polite", "first", "second"))]
    of_oneself = any(i.text in ("i", "me", "im", "je", "j'", "yo") for i in items)  # "am I going to be cold tonight?"
    return None if told or of_oneself else Asked("forecast")


# each sort of question, and the meanings of which a sentence must have one to be it
READERS: tuple[tuple[frozenset[str], Callable[[Sequence[Item], Telling], Asked | None]], ...] = (
    (frozenset(("ask why",)), _why),
    (frozenset(("ask ready", "dry", "wet", "damp")), _ready),
    (frozenset(("or",)), this_or_that),
    (frozenset(("what", "ask today")), wearing),
    (frozenset(("ask state",)), _state),
    (frozenset(("afterwards", "plan")), needs_tonight),
    (frozenset(meaning for meaning, _ in WHOLE), _whole),
    (frozenset(("drying", *WETNESS)), _drying),
    (frozenset(("sky",)), _weather),
)
