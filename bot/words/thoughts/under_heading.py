"""What is told before it is named: "Shivering: / - Otto / - Fig", "Torn: the plaid, Fig's heavy", "Soaked, the plaid".

Each that is named is given what heads it, so that whoever reads on finds one thought a name.
"""

from collections.abc import Callable, Container, Iterable, Iterator, Sequence
from itertools import chain

from bot.words.lookup.items import Item, all_mean, meanings_of, predicate, some_mean
from bot.words.thoughts.clauses import CLIPS, soft
from bot.words.thoughts.of_now import AT_MOST, dressed_so, of_now, of_one, only_dressed, only_moved, over_rows
from bot.words.thoughts.sentences import STOPS
from bot.words.thoughts.strange_rows import without_marks

BULLETS = frozenset("-•*–—·")
NEW_LINE = Item("\n", "\n", mark=True)
DONE_TO_IT = CLIPS | frozenset(
    ("clipped", "worked", "bare", "done", "took off", "put on", "brought in", "turned out", "broken")
)
SMALL_OF_A_PLAN = ("plan", "for later", "time", "article", "of", "toward", "polite", "rug")
NO_HEADING = frozenset((
    "if", "when", "plan", "habit", "guess", "question", "weekday", "yesterday", "long ago", "some day", "idiom",
    "weather", "it is", "not", "i mean", "no", "undo", "except", "the rest", "everyone", "all horses",
))  # fmt: skip


def under_heading(items: Sequence[Item]) -> Sequence[Item]:
    """The items with each that is only named told for itself: "Otto, shivering / Fig, shivering"."""
    lined = _on_lines(items) if marked(items, "\n") else items
    if not marked(lined, ":,"):
        return lined
    return list(chain.from_iterable(map(_in_one_line, parts([*lined, NEW_LINE], marked(lined, STOPS)))))


def _on_lines(items: Sequence[Item]) -> list[Item]:
    """A heading with a line for each that it is told of."""
    lines = [line for line in parts([*items, NEW_LINE], marked(items, "\n")) if len(line) > 1]
    told: list[Item] = []
    heading: Sequence[Item] = []
    untold: Callable[[Sequence[Item]], bool] = _none
    for line, behind in zip(map(without_marks, lines, [[], *lines]), [*lines[1:], []]):
        if untold(line):
            continue
        line = _as_headed(line, heading)
        untold = untold if of_one(line) else _untold_under(line, behind)
        if untold is of_one and over_rows(line, behind):
            continue  # "Plan for tonight / Otto: heavy" asks nothing
        if heading and dressed_so(heading) and only_dressed(line):
            told += line  # "Changed: / Otto → heavy" is a row, that Otto was changed is no more
            continue
        if heading and (_names_only(line) or (_seen_after(heading) and any(i.horses for i in line))):
            told += _each([line], heading)
            continue
        listed = line[-2].text == ":" or (bool(behind) and _bulleted(behind))
        of_names = heads(line) and _names_only(_as_headed(behind, line))
        heading = line if listed and (_seen_after(line) or of_names) else []
        told += [] if heading else line
    return told


def _bulleted(line: Sequence[Item]) -> bool:
    """As in "- Otto", "1. Otto"."""
    numbered = line[0].number is not None and line[1].text in ".)"
    return line[0].text in BULLETS or numbered


def _as_headed(line: Sequence[Item], heading: Sequence[Item]) -> Sequence[Item]:
    """The line without what only goes with its heading: "Ridden: / - Otto (hack)", "Clips: / - Otto: bib, done"."""
    if some_mean(heading, "worked", "done"):
        end = next((k for k, i in enumerate(line) if i.text == "("), len(line))
    elif some_mean(heading, "clipped"):
        end = next((k for k, i in enumerate(line) if i.has("done") and some_mean(line[:k], *CLIPS)), len(line))
    else:
        return line
    return line if end in (0, len(line)) else [*line[:end], line[-1]]


def _untold_under(line: Sequence[Item], behind: Sequence[Item]) -> Callable[[Sequence[Item]], bool]:
    """Which lines below this one tell nothing: under "Tomorrow:" each of a horse, under "For sale" who wears what."""
    heading = over_rows(line, behind)
    if (heading or line[-2].text == ":") and _to_come(line):
        return of_one
    asked = line[-2].text == "?"  # "Ready for the show?"
    if not heading or (not asked and (of_now(line) or heads(line))):
        return _none
    return only_moved if some_mean(line, "weekday", "ahead", "plan") else only_dressed


def _none(line: Sequence[Item]) -> bool:
    return not line


def _to_come(line: Sequence[Item]) -> bool:
    """As in "Tomorrow:", "Pour ce soir :", "Still to change:": nothing under it is so yet."""
    words = [i for i in line if not i.mark]
    if not all_mean(words, "ahead", "ask today", "ask left", *SMALL_OF_A_PLAN):
        return False
    return any(i.has("plan", "for later", "ask left") or (i.has("ask today") and not i.has("time")) for i in words)


def _in_one_line(sentence: Sequence[Item]) -> Sequence[Item]:
    """A heading with all it is told of behind a colon, or one piece behind a pause."""
    at = next(iter(marked(sentence, ":,")), 0)
    heading, rest = sentence[:at], [*sentence[at + 1 :], NEW_LINE]
    if not at or sentence[-1].text == "?" or not heads(heading):
        return sentence
    pauses = [k for k, item in enumerate(rest) if item.text == "," or "and" in item.means]
    named = [part for part in parts(rest, pauses) if len(part) > 1]
    pieces = named and all(any(i.piece is not None for i in part) for part in named)
    clips = named and all(any(i.kinds("style") for i in part) and any(i.horses for i in part) for part in named)
    alone = pieces and len(named) == 1 and all(i.piece is None for i in heading)  # not in "quilt off, zebra on"
    listed = alone or sentence[at].text == ":"
    told = listed and (pieces or clips) and all(map(_names_only, named))
    return _each(named, heading) if told else sentence


def parts(items: Sequence[Item], ends: Iterable[int]) -> Iterator[list[Item]]:
    """What stands up to each place where a part ends, the mark last; and what is left behind the last of them."""
    first = 0
    for end in ends:
        yield list(items[first : end + 1])
        first = end + 1
    yield list(items[first:])


def marked(items: Sequence[Item], marks: Container[str]) -> list[int]:
    """Where one of these marks stands."""
    return [at for at, item in enumerate(items) if item.mark and item.text in marks]


def heads(heading: Sequence[Item]) -> bool:
    """Whether this says how something is that it does not name."""
    if len(heading) > AT_MOST or any(i.horses or (i.piece is not None and i.piece.owners) for i in heading):
        return False
    means = meanings_of(heading)
    told = any(predicate(i) for i in heading) or not DONE_TO_IT.isdisjoint(means) or _where_or_on(heading)
    tonight = [i for i in heading if i.has("ahead") and i.has("ask tonight") and not i.has("ask today")]
    means -= {"habit", "plan"} if "please" in means else frozenset()  # "from today always bare:"
    return told and not tonight and NO_HEADING.isdisjoint(means)  # "Cold tonight:" is the weather


def _where_or_on(heading: Sequence[Item]) -> bool:
    """As in "In:", "Out:", "On:": where they are, or what was put on, in one word."""
    words = [i for i in heading if not i.mark]
    return len(words) == 1 and words[0].has("inwards", "outwards", "on", "off")


def _seen_after(heading: Sequence[Item]) -> bool:
    """As in "After the lesson:": when all of it was seen that follows."""
    return some_mean(heading, "after") and some_mean(heading, "work") and all(map(soft, heading))


def _names_only(part: Sequence[Item]) -> bool:
    """Whether this names horses or pieces, with a clip at the most: "- Otto, bib", "2. the blue one"."""
    named = any(i.horses or i.piece is not None for i in part)
    return named and not any(predicate(i) for i in part) and all(_names(i) or soft(i) for i in part)


def _names(item: Item) -> bool:
    return bool(item.horses or item.piece is not None or item.kinds("style")) or item.text == "'s"


def _each(named: Sequence[Sequence[Item]], heading: Sequence[Item]) -> list[Item]:
    """Each with what heads it behind it; without the sort of piece where the piece is named: "Wet rugs: …"."""
    told: list[Item] = []
    for part in named:
        piece = any(i.piece is not None for i in part)
        said = [i for i in heading if not (i.mark or (piece and (i.piece is not None or i.has("one"))))]
        if piece and any(map(predicate, said)):
            said = [i for i in said if not i.has("done", "and")]  # "sewn and ready:", of no horse
        told += [i for i in part if not (i.mark and (i.text in STOPS or i is part[-1]))] + [*said, NEW_LINE]
    return told
