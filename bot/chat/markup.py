"""A piece's text as Telegram's HTML: every character as written, what stands out bold, names called as links. Pure."""

import re
from collections.abc import Iterable, Sequence
from html import escape
from itertools import pairwise

from bot.chat.pieces import Piece

Span = tuple[int, int, str, str]  # from, to (in characters of the plain text), what opens it, what closes it


def html(piece: Piece) -> str:
    """The text as HTML. Where spans cross they are closed and opened again, so that tags are always well nested."""
    text = piece.text
    spans = [*_bold(text, piece.strong), *_links(text, piece.mentions)]
    edges = sorted({0, len(text), *(edge for span in spans for edge in span[:2])})
    return "".join(_run(text[a:b], [s for s in spans if s[0] <= a and b <= s[1]]) for a, b in pairwise(edges))


def _run(text: str, spans: Sequence[Span]) -> str:
    """A stretch of text between two edges, in all that spans it."""
    opened = "".join(span[2] for span in spans)
    closed = "".join(span[3] for span in reversed(spans))
    return f"{opened}{escape(text, quote=False)}{closed}"


def _bold(text: str, strong: Sequence[str]) -> Iterable[Span]:
    """Each of these where it first stands as a word of its own; a line may have been broken at any of its spaces."""
    for words in dict.fromkeys(filter(str.strip, strong)):
        pattern = r"\s+".join(map(re.escape, words.split()))
        if found := re.search(rf"(?<!\w){pattern}(?!\w)", text):
            yield found.start(), found.end(), "<b>", "</b>"


def _links(text: str, mentions: Sequence[tuple[str, int]]) -> Iterable[Span]:
    """Each name where it first stands; one that the text does not hold rings nobody."""
    for name, number in mentions:
        at = text.find(name)
        if name and at >= 0:
            yield at, at + len(name), f'<a href="tg://user?id={number}">', "</a>"
