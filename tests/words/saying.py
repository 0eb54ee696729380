"""Something said in a barn of the corpus, and what is understood, in short."""

from bot.barn import Barn
from bot.state import as_filed
from bot.words import Heard, read
from tests.words.corpus import barn

FIELDS = ("horse", "sign", "setting", "garment", "state", "wear", "about", "style", "keep_bare", "where", "horses")


def said_in(here: Barn, text: str, who: str = "") -> Heard:
    """The message as somebody of this barn writes it, its manager where nobody is named."""
    person = next(p for p in here.people if who in ("", p.name))
    return read(text, person, here, as_filed(here))


def said(text: str, name: str = "oak", who: str = "") -> Heard:
    """The message as somebody writes it in a barn of the corpus."""
    return said_in(barn(name), text, who)


def told(heard: Heard) -> list[tuple[object, ...]]:
    """Each event's subject and what is said of it; a setting only where it is not the field."""
    rows = [[(name, getattr(event, name, None)) for name in FIELDS] for event in heard.events]
    return [
        tuple(v for name, v in row if v is not None and not (name == "setting" and v == "turnout") and name != "where")
        + tuple(v for name, v in row if name == "where" and v is not None)
        for row in rows
    ]
