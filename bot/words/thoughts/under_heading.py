"""Lines under a heading: in "Shivering: / - Otto / - Fig" each horse does what the heading says."""

from collections.abc import Iterator, Sequence

from bot.words.lookup.items import Item, meanings_of, predicate
from bot.words.thoughts.clauses import CLIPS, soft

BULLETS = frozenset("-•*–—·")
COMMA, NEW_LINE = Item(",", ",", mark=True), Item("\n", "\n", mark=True)
AT_MOST = 8  # words of a heading; more is a sentence
DONE_TO_IT = frozenset(("clipped", "worked", "bare", "done", "took off", "put on", "brought in", "turned out")) | CLIPS
NO_HEADING = frozenset((
    "if", "when", "plan", "habit", "guess", "question", "weekday", "yesterday", "long ago", "some day", "idiom",
    "weather", "it is", "not", "i mean", "no", "undo", "except", "the rest", "everyone", "all horses",
))  # fmt: skip


def under_heading(items: Sequence[Item]) -> Sequence[Item]:
    """The items with each line that only names something told for itself: "Otto, shivering / Fig, shivering"."""
    if not any(item.text == "\n" for item in items):
        return items
    lines = list(_lines(items))
    told: list[Item] = []
    heading: list[Item] = []
    for line, behind in zip(lines, [*lines[1:], []]):
        if heading and _names_only(line):
            told += [*line, COMMA, *_of_this(heading, line), NEW_LINE]
            continue
        heading = [item for item in line if not item.mark] if _heads(line, behind) else []
        told += [] if heading else [*line, NEW_LINE]
    return told


def _lines(items: Sequence[Item]) -> Iterator[list[Item]]:
    """What stands on each line, empty ones left out."""
    line: list[Item] = []
    for item in [*items, NEW_LINE]:
        if item.text != "\n":
            line.append(item)
        elif line:
            yield line
            line = []


def _heads(line: Sequence[Item], behind: Sequence[Item]) -> bool:
    """Whether this line says how they are that the next one names, and names none itself."""
    if len(line) > AT_MOST or not (line[-1].text == ":" or (behind and behind[0].text in BULLETS)):
        return False
    owned = any(i.horses or (i.piece is not None and i.piece.owners) for i in line)
    told = any(predicate(i) for i in line) or not DONE_TO_IT.isdisjoint(meanings_of(line))
    to_come = any(i.has("ahead") and not i.has("ask today") for i in line)  # "Cold tonight:" is the weather
    return told and not (owned or to_come) and NO_HEADING.isdisjoint(meanings_of(line)) and _names_only(behind)


def _names_only(line: Sequence[Item]) -> bool:
    """Whether a line names horses or pieces, with a clip at the most: "- Otto, bib", "2. the blue one"."""
    named = any(i.horses or i.piece is not None for i in line)
    return named and not any(predicate(i) for i in line) and all(_names(i) or soft(i) for i in line)


def _names(item: Item) -> bool:
    return bool(item.horses or item.piece is not None or item.kinds("style")) or item.text == "'s"


def _of_this(heading: Sequence[Item], line: Sequence[Item]) -> list[Item]:
    """The heading without the sort of piece where the line names the piece itself: "Wet rugs: …"."""
    named = any(i.piece is not None for i in line)
    return [i for i in heading if not (named and i.piece is not None)]
