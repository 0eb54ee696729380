"""A question beside something else: "what's Pip in, Ann isn't answering", "can someone check Pip, he's wet"."""

from collections.abc import Sequence

from bot.events import Asked
from bot.words.lookup.items import Item, some_mean
from bot.words.thoughts.asking import asks
from bot.words.thoughts.begins import begins_to_ask, tells_of_a_piece, told_of_a_horse, told_of_her
from bot.words.thoughts.clauses import Clause
from bot.words.told.questions import read_question
from bot.words.told.telling import Telling

PAUSES = (",", "-", "–", "—", ":", "…", ";")
TWO = 2
OF_THE_ROUND = ("left", "drying")


def question_first(sentence: Sequence[Item], telling: Telling) -> int:
    """Where what is told begins behind a question that the bot can answer, which is told; 0 without one."""
    pause = next((k for k, i in enumerate(sentence) if _pause(i)), 0)
    if pause and sentence[pause].text == ":" and not some_mean(sentence[:1], "what", "question"):
        return 0  # "still to do: bring Fennel in", which is a list
    if pause and _asked(sentence[:pause], telling):
        return pause + 1
    joined = (k for k, i in enumerate(sentence[: pause or len(sentence)]) if k and _joins(i))
    return next((k + 1 for k in joined if _asked(sentence[:k], telling)), 0)  # "who's left because I lost my list"


def _joins(item: Item) -> bool:
    """As in "because", "and"; not "que", which may go on with who."""
    return item.has("but", "and") and not item.has("relative")


def question_last(sentence: Sequence[Item], telling: Telling) -> int:
    """Where a question that the bot can answer begins behind something told, which is yet to be read; 0 without one."""
    pauses = [k for k, i in enumerate(sentence) if k and _pause(i)]
    return next((k + 1 for k in reversed(pauses) if _asked(_without_and(sentence[k + 1 :]), telling)), 0)


def _without_and(part: Sequence[Item]) -> Sequence[Item]:
    """As in "(Otto is cold,) and what should Fig wear, bot?"."""
    return part[1:] if part and part[0].has("and") and not part[0].has("wears") else part


def _pause(item: Item) -> bool:
    """A pause, or a face between two thoughts: "stuck at work 😩 how is Pip?"."""
    return item.mark and (item.text in PAUSES or not item.text.isascii())


def _asked(part: Sequence[Item], telling: Telling) -> bool:
    """Whether a part asks, of a horse, of a piece or of the round: "Dan nieve para el jueves, qué pereza" is talk."""
    before = list(telling.events)
    if not (asks(part, marked=False) and read_question(part, telling)):
        return False
    asked = (event for event in telling.events[len(before) :] if isinstance(event, Asked))
    plainly = any(event.horse or event.garment or event.about in OF_THE_ROUND for event in asked)
    if not plainly:
        telling.retell(before)
    return plainly


def two_questions(clauses: Sequence[Clause], telling: Telling) -> None:
    """As in "what's still drying, and who's left?": each is answered, where both are asked of the bot."""
    parts = [[i for i in clause.items if not i.has("and")] for clause in clauses]
    if len(parts) == TWO and all(part and asks(part, marked=False) for part in parts):
        for part in parts:
            read_question(part, telling)


def told_behind_a_request(sentence: Sequence[Item]) -> int:
    """Where the report begins in "can someone check Pip, his sheet is damp": what people are asked says why; else 0.

    So it does in "someone took the blue one, can't find it".
    """
    if not some_mean(sentence[: 2 if sentence[0].person else 1], "question"):
        return 0
    asked = begins_to_ask(sentence)
    if not asked and not (sentence and sentence[0].has("question") and sentence[0].has("plan")):
        return 0
    pause = next((k + 1 for k, i in enumerate(sentence) if i.mark and i.text == ","), 0)
    rest = sentence[pause:]
    gone = some_mean(rest[:1], "state missing")
    told = tells_of_a_piece(rest) or told_of_a_horse(rest) or told_of_her(sentence[:pause], rest)
    return pause if pause and (gone or (asked and told)) else 0


def asked_about(sentence: Sequence[Item], telling: Telling) -> None:
    """As in "has anyone moved Bart's liner? it's vanished", "who saw Pip? he is wet": who "it" and "he" are."""
    horses = [i for i in sentence if i.horse]
    pieces = [i.piece for i in sentence if i.piece is not None]
    if len(pieces) == 1 and len(horses) <= 1:
        owner = pieces[0].owners[0] if len(pieces[0].owners) == 1 else horses[0].horses[0] if horses else None
        telling.piece, telling.last = telling.meant(pieces[0], owner).ids, "piece"
    if len(horses) == 1 and len(pieces) <= 1:
        telling.who, telling.begun, telling.crowded, telling.asked = (horses[0],), True, True, True
        telling.last = telling.last if pieces else "horse"
