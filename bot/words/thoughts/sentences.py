"""A message cut into sentences, each with whether it is marked as a question."""

from collections.abc import Iterator, Sequence

from bot.words.lookup.items import Item, places

STOPS = frozenset(".!?;\n¿¡")
ENDS = frozenset(".!?\n")  # of a sentence, whatever else makes a stop
IN_SHORT = frozenset(("in short",))
TO_THE_BOT = frozenset(("to the bot",))
ASKED = 3  # words behind the bot's name that ask
PAUSES = frozenset("–—→·•«»“”‘’„‹›¿¡")
POLITE = frozenset(("polite",))
REACH = 40  # words; no sentence is read further: what has no full stop for longer is cut, so that time is linear


def sentences(items: Sequence[Item]) -> Iterator[tuple[Sequence[Item], bool]]:
    """Each sentence, and whether it is marked as a question."""
    first, opened = 0, False
    marks = [at for at, item in enumerate(items) if item.mark and (item.text in STOPS or _face(items, at))]
    marks += [at for at in places(items, POLITE) if _face(items, at)]
    anew = [at for at in places(items, IN_SHORT) if at and items[at - 1].mark]  # "…, bref, Perle est rentrée"
    anew += [at for at in places(items, TO_THE_BOT) if at > 1 and _asks_it(items, at)]
    for stop in [*sorted({*marks, *anew}), len(items)]:
        while first + REACH < stop:
            pause = _last_pause(items, first + REACH)
            yield items[first:pause], opened
            first, opened = pause, False
        if first < stop:
            yield items[first:stop], opened or _questioned(items, stop)
            opened = False
        opened = opened or (stop < len(items) and items[stop].text == "¿")
        first = stop + 1


def _asks_it(items: Sequence[Item], at: int) -> bool:
    """As in "(I'm stuck in traffic) haybell who's left to change": the bot is spoken to, and asked something."""
    if any(item.mark and item.text in STOPS for item in items[at - 2 : at]):
        return False  # "Hi. Haybell, help"
    if items[at - 2].has("undo") or items[at - 1].has("undo"):
        return True  # "undo that bot I can't see straight"
    return any(meaning.startswith("ask ") for item in items[at + 1 : at + 1 + ASKED] for meaning in item.means)


def _face(items: Sequence[Item], at: int) -> bool:
    """As in "vive l'automne 😂 Ortie va bien": a picture that says nothing of a horse, and a capital behind it."""
    text = items[at].text
    return not text.isascii() and text not in PAUSES and _capital(items, at + 1) and not any(map(str.isalnum, text))


def _capital(items: Sequence[Item], at: int) -> bool:
    return at < len(items) and items[at].raw[:1].isupper()


def _last_pause(items: Sequence[Item], end: int) -> int:
    """Where what is too long is cut: at its last comma, if that leaves enough; else where the reach ends."""
    return next((at for at in range(end, end - REACH // 2, -1) if items[at].text == ","), end)


def _questioned(items: Sequence[Item], at: int) -> bool:
    """Whether a question mark is among the marks that end a sentence here: "!?"."""
    for item in items[at : at + 4]:
        if not (item.mark and item.text in "!?."):
            return False
        if item.text == "?":
            return True
    return False
