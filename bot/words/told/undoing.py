"""Sentences that take back what was said before: "undo", "oops wrong horse, undo that", "annule, j'ai confondu"."""

from collections.abc import Sequence
from itertools import pairwise, takewhile

from bot.events import Undo
from bot.words.heard.wits import FAILING, MESSAGE, WITLESS
from bot.words.lookup.items import Item, all_mean, meanings_of, predicate, some_mean
from bot.words.told.telling import Telling

UNDOING = frozenset(("undo", "undo verb"))
REPORTS = ("place field", "place stall", "clipped", "worked", "took off", "put on", "all done", "done")
# "oops, erase my last"
TAKING_BACK = (
    "undo", "undo verb", "what was said", "polite", "no", "it", "link", "plan", "my", "please", "and", "thanks",
)  # fmt: skip

# no excuse for what was said wrong: "cancel it, we've no hay", "… I've got a lesson"
OF_SOMETHING_ELSE = ("not", "without", "plan", "idiom", "people do", "weekday", "work")

LONGEST_EXCUSE = 9  # words and marks of ", not had my coffee yet"


def undoes(sentence: Sequence[Item]) -> bool:
    """Whether a sentence takes back what was said before it."""
    if meanings_of(sentence).isdisjoint(UNDOING):
        return False
    words = _without_whose([i for i in sentence if any(map(str.isalnum, i.text))])
    if some_mean(words, "undo") and all(i.has(*TAKING_BACK) or (k and i.has("subject")) for k, i in enumerate(words)):
        return True  # "lo puse mal yo, bórrenlo"
    if _at_last(sentence) or _with_an_excuse(sentence):
        return True
    first = _past_opening(words)
    if len(words) < first + 2:
        return False
    verb, *behind = words[first:]
    if verb.has("undo") and _out_of_his_wits(sentence):
        return True
    then = next((i for i in behind if not i.has("polite", "it", "please")), behind[0])  # "oublie ça bot, j'ai confondu"
    told = any(predicate(i) or (i.piece and not _mistaken(words, k)) for k, i in enumerate(words) if k > first)
    paused = any(i.mark for i in takewhile(lambda i: i is not then, sentence))
    excuse = then.has("i", "subject", "was", "undo") or (paused and _wrong(then))
    excuse = excuse and not then.has("my") and not _of_something_else(behind)
    if verb.has("undo") and not told and (excuse or all_mean(behind, *TAKING_BACK)):
        return True  # "annule, j'ai confondu Vanille et Vanina", "undo that please, I had the wrong horse"
    if verb.has("undo") and then.has("i mean") and not (told or any(i.horses for i in behind)):
        return True  # "scratch that last one, I meant a different horse"
    if verb.has("undo verb", "undo") and then.has("what was said"):
        at = next(k for k, i in enumerate(sentence) if i is then)
        return not any(
            i.has("of", "hour") and not i.has("time") for i in sentence[at + 1 : at + 2]
        )  # "… about the hay"
    return verb.has("undo") and " " in verb.text and then.has("what")  # "borra lo último que he puesto"


def _past_opening(words: Sequence[Item]) -> int:
    """Where it is said what is to be done: behind "sorry", "can you"; at the first word where nothing else follows."""
    first = next((k for k, i in enumerate(words) if not i.has("polite", "please", "no", "yes", "but")), 0)
    asked = first + 2 < len(words) and words[first].has("plan", "question") and words[first + 1].has("i")
    return first + 2 if asked and not words[first + 1].has("subject") else first


def _wrong(item: Item) -> bool:
    """As in "(undo that,) wrong group", "… thought it was Gus"; not "no lesson", "sorry"."""
    return item.has("guess", "by mistake") or (item.has("no") and not item.has("not", "polite"))


def _of_something_else(reason: Sequence[Item]) -> bool:
    """As in "(cancel it,) we have no hay", "… I can't make it": a plan or a lack, and nobody who was wrong."""
    mistaken = any(i.horses or i.has("was", "i mean", "undo", "what was said") or _wrong(i) for i in reason)
    return not mistaken and some_mean(reason, *OF_SOMETHING_ELSE)


def _out_of_his_wits(sentence: Sequence[Item]) -> bool:
    """As in "cancel that, I can't read", "undo, half asleep": the speaker's own head or hands, behind a pause."""
    pause = next((k for k, i in enumerate(sentence) if i.mark and i.text in ",.;:-–—(…"), len(sentence))
    said, reason = sentence[:pause], sentence[pause:]
    if len(reason) > LONGEST_EXCUSE or not all_mean(said, *TAKING_BACK):
        return False
    if any(i.horses or i.piece is not None or predicate(i) for i in reason):
        return False
    words = [i for i in reason if not i.mark]
    failing = (k for k, i in enumerate(words) if i.text in FAILING)
    denied = any(some_mean(words[max(0, k - 2) : k + 3], "not", "no", "without") for k in failing)
    return denied or any(not WITLESS.isdisjoint(i.text.split()) for i in words)


def _mistaken(words: Sequence[Item], at: int) -> bool:
    """As in "the wrong blanket"."""
    return at > 0 and words[at - 1].has("by mistake", "no")


def _with_an_excuse(sentence: Sequence[Item]) -> bool:
    """As in "scrap that last message of mine, Sam was talking to me": the message by name, then why, and no report."""
    pause = next((k for k, i in enumerate(sentence) if i.mark), len(sentence))
    words = _without_whose([i for i in sentence[:pause] if not i.has("polite", "please") or i.has("undo")])
    if len(words) != 1 or not words[0].has("undo") or MESSAGE.isdisjoint(words[0].text.split()):
        return False
    return not any(i.horses or i.piece is not None or predicate(i) or i.has(*REPORTS) for i in sentence[pause:])


def _without_whose(words: Sequence[Item]) -> Sequence[Item]:
    """As in "ignore that last one from me": what was the speaker's, without saying so again."""
    mine = (k for k, (i, then) in enumerate(pairwise(words)) if k and i.has("of") and then.has("i", "my"))
    first = next(mine, len(words))
    return [*words[:first], *words[first + 2 :]]


def _at_last(sentence: Sequence[Item]) -> bool:
    """As in "oops, wrong group, undo", "my mistake, please take back what I wrote": the last thought takes back, and
    none before it reports; a horse may be named before the bare word: "non c'était pas Moka, annule".
    """
    pause = max((k for k, i in enumerate(sentence) if i.mark), default=-1)
    last = [i for i in sentence[pause + 1 :] if not i.has("polite", "please") or i.has(*UNDOING)]
    if len(last) == 1 and last[0].has("undo") and some_mean(sentence[: max(pause, 0)], "what was said"):
        return True  # "eso que acabo de poner está mal, anúlalo"
    if any(i.piece is not None or predicate(i) for i in sentence):
        return False
    excused = any(map(_wrong, sentence[: max(pause, 0)]))  # "sorry wrong group, undo that"
    by_name = last[1:2] and last[1].has("what was said")  # "excuse me, my fault, please delete what I wrote"
    if pause < 0 or not last or not (last[0].has("undo verb") or ((excused or by_name) and last[0].has("undo"))):
        return False
    if len(last) == 1:
        return last[0].has("undo")
    said = last[1].has("what was said") and all_mean(last, *TAKING_BACK)
    return said and not any(i.horses for i in sentence)


def take_back(telling: Telling) -> None:
    """What the message told so far, as in "Pip is wet. scratch that"; else what was said before the message."""
    if telling.ask or any(not isinstance(e, Undo) for e in telling.events):
        telling.retell([e for e in telling.events if isinstance(e, Undo)])
        telling.ask = None
    else:
        telling.say(Undo())
