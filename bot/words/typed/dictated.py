"""Marks said aloud: "canela está sudando punto la de mambo está rota coma …", as a telephone writes what it is told."""

from bot.words.heard.spoken_marks import NO_MARK_BEHIND, SPOKEN_MARKS
from bot.words.lookup.tokens import Token, words

FEW = 2  # marks said, from which on somebody dictates
LONGEST = 3  # words of a mark
SAID = {language: {words(said): mark for said, mark in table.items()} for language, table in SPOKEN_MARKS.items()}


def marks_written(tokens: list[Token], language: str) -> list[Token]:
    """The words with each mark that was said in its place, where somebody dictates and writes hardly any himself."""
    said = SAID[language]
    first = {phrase[0] for phrase in said}
    if sum(token.text in first for token in tokens) < FEW:
        return tokens
    found = _marks(tokens, said, first)
    written = sum(token.kind == "mark" and token.text in ",." for token in tokens)
    if len(found) < max(FEW, written):
        return tokens
    marked: list[Token] = []
    end = 0
    for at, length, mark in found:
        marked += tokens[end:at]
        marked.append(Token(mark, mark, tokens[at].start, tokens[at + length - 1].end, "mark"))
        end = at + length
    return marked + tokens[end:]


def _marks(tokens: list[Token], said: dict[tuple[str, ...], str], first: set[str]) -> list[tuple[int, int, str]]:
    """Where each mark stands, how many words say it, and what it is."""
    found: list[tuple[int, int, str]] = []
    for at, token in enumerate(tokens):
        if token.text not in first or (at and tokens[at - 1].text in NO_MARK_BEHIND):
            continue
        phrases = (tuple(t.text for t in tokens[at : at + length]) for length in range(LONGEST, 0, -1))
        phrase = next((p for p in phrases if p in said), None)
        if phrase is not None and not (found and at < found[-1][0] + found[-1][1]):
            found.append((at, len(phrase), said[phrase]))
    return found
