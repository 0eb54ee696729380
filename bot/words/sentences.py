"""A message cut into sentences, each with whether it is marked as a question."""

from collections.abc import Iterator, Sequence

from bot.words.items import Item

STOPS = frozenset(".!?;\n¿¡")
REACH = 40  # words; no sentence is read further: what has no full stop for longer is cut, so that time is linear


def sentences(items: Sequence[Item]) -> Iterator[tuple[list[Item], bool]]:
    """Each sentence, and whether it is marked as a question."""
    sentence: list[Item] = []
    opened = False
    for at, item in enumerate(items):
        stop = item.mark and item.text in STOPS
        if (stop or len(sentence) >= REACH) and sentence:
            yield sentence, opened or (stop and _questioned(items, at))
            sentence, opened = [], False
        if stop:
            opened = opened or item.text == "¿"
        else:
            sentence.append(item)
    if sentence:
        yield sentence, opened


def _questioned(items: Sequence[Item], at: int) -> bool:
    """Whether a question mark is among the marks that end a sentence here: "!?"."""
    for item in items[at : at + 4]:
        if not (item.mark and item.text in "!?."):
            return False
        if item.text == "?":
            return True
    return False
