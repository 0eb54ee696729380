"""Texts with Telegram's HTML in them, as its servers read it: what people see, or a refusal."""

from html.parser import HTMLParser
from typing import Any


class Refused(Exception):
    """A method says no."""

    def __init__(self, code: int, description: str, parameters: dict[str, Any] | None = None) -> None:
        super().__init__(description)
        self.code = code
        self.description = description
        self.parameters = parameters


class Markup(HTMLParser):
    """Telegram's HTML: a few tags, each closed in its turn; no other, and no bare "<"."""

    KNOWN = frozenset({"b", "i", "u", "s", "a", "code", "pre"})

    def __init__(self) -> None:
        super().__init__()
        self.shown, self.open = "", list[str]()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """See HTMLParser."""
        if tag not in self.KNOWN:
            raise Refused(400, f'Bad Request: can\'t parse entities: Unsupported start tag "{tag}"')
        self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        """See HTMLParser."""
        if not self.open or self.open.pop() != tag:
            raise Refused(400, "Bad Request: can't parse entities: Unmatched end tag")

    def handle_data(self, data: str) -> None:
        """See HTMLParser."""
        if "<" in data:
            raise Refused(400, "Bad Request: can't parse entities: Unsupported start tag")
        self.shown += data


def shown(text: str, parse_mode: str | None) -> str:
    """What people see of a text."""
    if parse_mode is None:
        return text
    if parse_mode != "HTML":
        raise Refused(400, "Bad Request: unsupported parse_mode")
    markup = Markup()
    # an entity such as "&lt;" is text to the parser as well: kept apart from a bare "<"
    markup.feed(text.replace("&lt;", "\ue000").replace("&gt;", "\ue001").replace("&amp;", "\ue002"))
    markup.close()
    if markup.open:
        raise Refused(400, "Bad Request: can't parse entities: Can't find end tag")
    return markup.shown.replace("\ue000", "<").replace("\ue001", ">").replace("\ue002", "&")
