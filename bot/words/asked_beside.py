"""A question beside something else in one sentence: "what's Pip in, Ann isn't answering", "Pip's in, who's left?"."""

from collections.abc import Sequence

from bot.events import Asked
from bot.words.asking import asks
from bot.words.items import Item
from bot.words.questions import read_question
from bot.words.telling import Telling

PAUSES = (",", "-", "–", "—", ":", "…", ";")
OF_THE_ROUND = ("left", "drying")


def question_first(sentence: Sequence[Item], telling: Telling) -> int:
    """Where what is told begins behind a question that the bot can answer, which is told; 0 without one."""
    pause = next((k for k, i in enumerate(sentence) if i.text in PAUSES), 0)
    return pause + 1 if pause and _asked(sentence[:pause], telling) else 0


def question_last(sentence: Sequence[Item], telling: Telling) -> int:
    """Where a question that the bot can answer begins behind something told, which is yet to be read; 0 without one."""
    pause = max((k for k, i in enumerate(sentence) if i.text in PAUSES), default=0)
    return pause + 1 if pause and _asked(sentence[pause + 1 :], telling) else 0


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
