"""Lines that fit a phone: wrapped at words, counted in columns as a screen shows them."""

from unicodedata import combining, east_asian_width

from bot.units import NBSP

COLUMNS = 45


def columns(text: str) -> int:
    """How many columns a line takes: wide characters two, marks that combine none."""
    return sum(0 if combining(c) else 2 if east_asian_width(c) in "WF" else 1 for c in text)


def wrap(text: str, indent: str = "") -> str:
    """The text in lines of at most COLUMNS where its words allow; `indent` before every line but the first."""
    lines: list[str] = []
    line = ""
    for word in text.split(" "):
        longer = f"{line} {word}" if line else word
        if line.strip() and columns(longer) > COLUMNS:
            lines.append(line)
            longer = indent + word
        line = longer
    return "\n".join([*lines, line])


def lay_out(*parts: str | None) -> str:
    """Parts as lines, nothing for those that are None; quantities were kept whole, now they are plain text."""
    return "\n".join(p for p in parts if p is not None).replace(NBSP, " ").strip("\n")
